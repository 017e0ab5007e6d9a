import { readyGates, type Ready } from '../../../src/engine/audit/readyGates.js';
import type { GateName } from '../../../src/engine/audit/gates/gate.js';
import { isoFromSerial } from '../../../src/base/isoFromSerial.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated\nmeter accuracy | 0.05';
const start = 46082 + 8 / 24;
/** copper, change, fish in, dead, signs, note: a day's cells; '' for the usual reading. */
type Said = Readonly<Record<number, string>>;

/** Day 0 raises, days 1 to 31 hold, on day 32 the copper is taken out; a row a day to `last`. */
function course(last: number, said: Said = {}): string {
  const rows = Array.from({ length: last + 1 }, (_, day) => {
    const when = isoFromSerial(start + day);
    const usual =
      day === 0
        ? '0 | | 10 chromis | | eating |'
        : day < 32
          ? '2.25 | | | | |'
          : day === 32
            ? '0.01 | | | | | all water changed'
            : '0.01 | | | | eating |';
    return `${when} | ${said[day] ?? usual}`;
  });
  return ['Date | Copper | WC | Fish in | Dead | Signs | Note', ...rows].join('\n');
}
const baths: Said = { 33: '0.01 | | | | | praziquantel 2 mg/L', 41: '0.01 | | | | | praziquantel again' };
const ready = (text: string, day: number, more = ''): Ready =>
  readyGates(treatmentFrom(text, `${card}\n${more}`, isoFromSerial(start + day)));
const met = (given: Ready): Record<string, string> =>
  Object.fromEntries(given.gates.map((gate) => [gate.name, gate.met]));
const gate = (given: Ready, name: GateName) => given.gates.find((each) => each.name === name);

describe('readyGates', () => {
  it('releases when every gate is met', () => {
    const given = ready(course(70, baths), 70);
    expect(given.gates.map(({ name, met: is }) => [name, is])).toEqual([
      ['days reached', 'yes'],
      ['no untested stretch', 'yes'],
      ['no open row', 'yes'],
      ['signs', 'yes'],
      ['deaths', 'yes'],
      ['flukes treated', 'yes'],
      ['copper out', 'yes'],
      ['observation', 'yes'],
    ]);
    expect(given).toMatchObject({ verdict: 'release', against: [], mayTransfer: false });
  });

  it('dates each gate', () => {
    const given = ready(course(70, baths), 70);
    expect(gate(given, 'days reached')?.since).toBeCloseTo(start + 31, 6);
    expect(gate(given, 'no untested stretch')?.since).toBeCloseTo(start + 1, 6);
    expect(gate(given, 'flukes treated')?.since).toBeCloseTo(start + 41, 6);
    expect(gate(given, 'copper out')?.since).toBeCloseTo(start + 39, 6);
    // The last bath is on day 41; two weeks of observation after it.
    expect(gate(given, 'observation')?.since).toBeCloseTo(start + 55, 6);
  });

  it('is not yet in the hold, and not at 30 days that no test has reached', () => {
    expect(ready(course(20), 20)).toMatchObject({ verdict: 'not yet' });
    expect(met(ready(course(20), 20))['days reached']).toBe('no');
    expect(gate(ready(course(30), 31.2), 'days reached')).toMatchObject({
      met: 'no',
      why: { code: 'days', wanted: 30, readyOn: start + 31 },
    });
    expect(met(ready(course(31), 31))['days reached']).toBe('yes');
  });

  it('says when fish may move to a copper-free tank', () => {
    expect(ready(course(16, { 14: '2.25 | | | 0 | eating |' }), 16).mayTransfer).toBe(true);
    expect(ready(course(12, { 10: '2.25 | | | 0 | eating |' }), 12).mayTransfer).toBe(false);
    expect(ready(course(16, { 14: '2.25 | | | 0 | flashing |' }), 16).mayTransfer).toBe(false);
    const untested = { 6: ' | | | | |', 7: ' | | | | |', 14: '2.25 | | | 0 | eating |' };
    expect(ready(course(16, untested), 16).mayTransfer).toBe(false);
  });

  it('waits for each fish that came in later', () => {
    const late = { ...baths, 12: '2.25 | | wrasse | | |' };
    const given = ready(course(70, late), 70);
    expect(gate(given, 'days reached')).toMatchObject({ met: 'no', why: { code: 'fish-short', fish: ['wrasse'] } });
    expect(given.verdict).toBe('not yet');
  });

  it('has a stretch of 96 h in the standard hold, of 48 h before a transfer', () => {
    const none = ' | | | | |';
    const stretch = { 10: none, 11: none };
    expect(met(ready(course(31, stretch), 31))['no untested stretch']).toBe('yes');
    expect(met(ready(course(31, stretch), 31, 'days | 14'))['no untested stretch']).toBe('no');
    expect(gate(ready(course(20), 25), 'no untested stretch')).toMatchObject({ met: 'no', why: { isSince: true } });
  });

  it('lets a vet decide about signs and deaths once the days are reached, and about a second time at once', () => {
    const sign = { ...baths, 68: '0.01 | | | | flashing |' };
    expect(ready(course(70, sign), 70)).toMatchObject({ verdict: 'a vet decides', against: ['signs', 'observation'] });
    const death = { ...baths, 68: '0.01 | | | 1 | eating |' };
    expect(ready(course(70, death), 70)).toMatchObject({ verdict: 'a vet decides', against: ['deaths'] });
    expect(ready(course(10, { 8: '2.25 | | | | flashing |' }), 10).verdict).toBe('not yet');
    const twice = { 3: '2.25 | | | | flashing |', 5: '2.25 | | | | eating |', 8: '2.25 | | | | flashing |' };
    expect(ready(course(10, twice), 10).verdict).toBe('a vet decides');
  });

  it('lets a vet decide about a row that cannot be read', () => {
    const given = ready(course(70, { ...baths, 10: 'LOW | | | | |' }), 70);
    expect(gate(given, 'no open row')).toMatchObject({ met: 'no', why: { code: 'open-rows', rows: [12] } });
    expect(given.verdict).toBe('a vet decides');
  });

  it('does not know of fish that nobody wrote about', () => {
    const plain = `Date | Copper\n${isoFromSerial(start)} | 2.25`;
    expect(met(ready(plain, 1))).toMatchObject({ signs: 'not known', deaths: 'not known' });
    expect(gate(ready(course(60, { 60: '0.01 | | | | purple |' }), 60), 'signs')).toMatchObject({ met: 'not known' });
    const given = ready(course(70, baths), 90);
    expect(gate(given, 'signs')).toMatchObject({ met: 'not known' });
    expect(given.verdict).toBe('not yet');
  });

  it('counts praziquantel that was given, not what was bought or denied', () => {
    const noted = (note: string): string =>
      met(ready(course(35, { 33: `0.01 | | | | | ${note}` }), 35))['flukes treated'] ?? '';
    for (const note of ['praziquantel 2 mg/L', 'Praziquantal bath', 'prazi dosed'])
      expect([note, noted(note)]).toEqual([note, 'yes']);
    for (const note of [
      'no praziquantel',
      'ordered praziquantel',
      'praziquantel tomorrow',
      'will dose prazi',
      'metronidazole',
    ])
      expect([note, noted(note)]).toEqual([note, 'no']);
  });

  it('wants the copper out by a test after 48 h and one after 7 days', () => {
    expect(gate(ready(course(33), 33), 'copper out')).toMatchObject({ met: 'no', why: { after: 'first' } });
    expect(gate(ready(course(36), 36), 'copper out')).toMatchObject({
      met: 'no',
      why: { after: 'second', due: start + 39 },
    });
    expect(met(ready(course(39), 39))['copper out']).toBe('yes');
    expect(gate(ready(course(39, { 38: '0.3 | | | | |' }), 39), 'copper out')?.met).toBe('no');
    expect(gate(ready(course(39, { 39: '0.3 | | | | |' }), 39), 'copper out')?.why.code).toBe('copper-in');
    expect(gate(ready(course(20), 20), 'copper out')?.why.code).toBe('not-tested-out');
    const bound = Object.fromEntries([32, 33, 34, 35, 36, 37, 38, 39].map((day) => [day, '<0.05 | | | | |']));
    expect(met(ready(course(39, bound), 39))['copper out']).toBe('yes');
  });

  it('counts those days from the last change that took copper out', () => {
    const changed = { 32: '0.5 | 150 | | | |', 33: '0.1 | 150 | | | |' };
    expect(gate(ready(course(36, changed), 36), 'copper out')).toMatchObject({
      why: { after: 'second', change: start + 33, due: start + 40 },
    });
    // A later change of copper-free water does not begin the wait anew.
    const later = { ...changed, 39: '0.01 | 50 | | | |' };
    expect(met(ready(course(41, later), 41))['copper out']).toBe('yes');
  });

  it('observes two weeks, four after a chelated hold that was run low', () => {
    expect(met(ready(course(45), 45))['observation']).toBe('no');
    expect(met(ready(course(46), 46))['observation']).toBe('yes');
    const low = Object.fromEntries(Array.from({ length: 31 }, (_, day) => [day + 1, '2.0 | | | | |']));
    expect(met(ready(course(46, low), 46))['observation']).toBe('no');
    expect(met(ready(course(60, low), 60))['observation']).toBe('yes');
  });

  it('answers a log without a hold and without a reading', () => {
    const none = ready(`Date | Copper | Signs\n${isoFromSerial(start)} | | eating`, 1);
    expect(gate(none, 'days reached')).toMatchObject({ met: 'no', why: { code: 'no-hold' } });
    expect(none.verdict).toBe('not yet');
  });

  it('does not look ahead', () => {
    const whole = ready(course(70, { 60: '2.25 | | | 3 | flashing |' }), 40);
    expect(whole).toEqual(ready(course(40), 40));
  });
});
