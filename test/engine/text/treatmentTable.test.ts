import { conditionIn } from '../../../src/engine/fish/conditionIn';
import { conditions } from '../../../src/engine/fish/conditions';
import { treatments } from '../../../src/engine/fish/treatments';
import { treatmentsFor } from '../../../src/engine/fish/treatmentsFor';
import { treatmentTable } from '../../../src/engine/text/fishTables.js';
import { copperWords, remedyWords, timingWords } from '../../../src/engine/text/treatmentWords';

const table = (condition: string) => {
  const found = conditionIn(condition)('condition');
  if (!found.ok) throw new Error(found.problem.code);
  return treatmentTable(treatmentsFor(found.value));
};
const text = (condition: string): string => table(condition).rows.flat().join('\n');

describe('treatmentTable', () => {
  it('has its headings and as many cells under them', () => {
    for (const { name } of conditions) {
      const { columns, rows } = table(name);
      for (const row of rows) {
        expect(row).toHaveLength(columns.length);
        for (const [i, cell] of row.entries()) if (i !== 1) expect(String(cell).length).toBeGreaterThan(3);
      }
    }
  });

  it('uses every word it has', () => {
    expect(new Set(treatments.map(({ copper }) => copper))).toEqual(new Set(Object.keys(copperWords)));
    expect(new Set(treatments.map(({ give }) => give))).toEqual(new Set(Object.keys(remedyWords)));
    expect(new Set(treatments.map(({ when }) => when))).toEqual(new Set(Object.keys(timingWords)));
  });

  it('says what copper does and does not do', () => {
    expect(text('ich')).toMatch(/free-swimming stage only.*no immediate relief/);
    expect(text('brooklynella')).toMatch(/does not treat it/);
    expect(text('flukes')).toMatch(/sources disagree.*never count/);
    expect(text('unknown')).toMatch(/no copper on a guess/);
  });

  it('gives the published praziquantel bath with its source, and the derived repeat as derived', () => {
    const rows = table('flukes').rows;
    expect(rows[0]?.[2]).toBe('praziquantel bath; 2 mg/L in a study of how long it lasts');
    expect(rows[0]?.[4]).toBe('common practice, no published source; Thomas et al. (2016), PeerJ 4:e1857');
    expect(rows[1]?.[2]).toBe('second praziquantel bath, about day 7 to day 15 at 25 °C');
    expect(rows[1]?.[4]).toMatch(/^derived from Bondad-Reantaso et al\. \(1995\)/);
  });

  it('marks as weak what is weak', () => {
    expect(text('brooklynella')).toMatch(/metronidazole; weak evidence, no study in sea water found/);
    expect(text('uronema')).toMatch(/uncertain/);
    expect(text('brooklynella')).toMatch(/formalin, through a veterinarian, where it is legal/);
  });

  it('ends with the veterinarian and promises nothing', () => {
    for (const { name } of conditions) {
      expect(table(name).rows.at(-1)?.[2]).toBe('an aquatic veterinarian decides');
      expect(text(name)).not.toMatch(/\b(safe|safely|cures?|cured|clean|guarantee\w*)\b/i);
    }
  });
});
