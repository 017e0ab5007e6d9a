import { shopRows, shopMoment } from '../../../src/shell/demo/shop/shopRows.js';
import { shopSystems } from '../../../src/shell/demo/shop/shopSystems.js';
import { copperForms } from '../../../src/index.js';
it('x', () => {
  const out: string[] = [String(shopRows.length)];
  for (const s of shopSystems) {
    const own = shopRows.filter((r) => r.system === s.name);
    const b = copperForms[s.form].band;
    const read = own.filter((r) => typeof r.copper === 'number');
    const out2 = read.filter((r) => r.when > own[0]!.when + 5 && ((r.copper as number) < b.low || (r.copper as number) > b.high));
    out.push(`${s.name} ${own.length} last ${read[read.length-1]!.copper} ${shopMoment - read[read.length-1]!.when} out: ${out2.map((r) => `${(r.when - own[0]!.when).toFixed(1)}:${r.copper}`).join(' ')}`);
  }
  console.log(out.join('\n'));
});
