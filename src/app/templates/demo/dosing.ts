import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from './serialOf.js';

const moment = 'yyyy-mm-dd hh:mm';
const firstDose = serialOf('2026-03-01 08:00');

const volumeAndStrength = [
  form({
    at: 'A3',
    title: '1  Net volume',
    widths: [200, 80, 90],
    lines: [
      { key: 'length', label: 'Length, inside', given: 90, beside: 'cm' },
      { key: 'width', label: 'Width, inside', given: 45, beside: 'cm' },
      { key: 'depth', label: 'Water depth, from the glass', given: 42, beside: 'cm' },
      { key: 'sand', label: 'Sand depth', given: 0, beside: 'cm' },
      { key: 'displaced', label: 'Displaced by pipe and decor', given: 2, beside: 'L' },
      { key: 'filter', label: 'Plus filter and pipes', given: 0, beside: 'L' },
      {
        label: 'Net volume',
        answer: '=QT.NETVOLUME({length},{width},{depth},{sand},{displaced},{filter})',
        format: '0.0',
        beside: 'L',
      },
    ],
  }),
  form({
    at: 'A12',
    title: '2  Strength, from the label',
    lines: [
      { key: 'label dose', label: 'A dose of', given: 5, beside: 'mL' },
      { key: 'treats', label: 'treats', given: 40, beside: 'L' },
      { key: 'raises', label: 'and raises copper by', given: 0.5, format: '0.00', beside: 'mg/L' },
      { label: 'Strength', answer: '=QT.STRENGTH({label dose},{treats},{raises})', format: '0.00', beside: 'mg/mL' },
    ],
  }),
];

const dose = [
  form({
    at: 'A18',
    title: '3  Dose',
    lines: [
      { key: 'volume', label: 'Volume, once you trust it', given: 168, beside: 'L' },
      { key: 'strength', label: 'Strength, once you trust it', given: 4, format: '0.00', beside: 'mg/mL' },
      { key: 'level', label: 'Level now, by a test', given: 0, format: '0.00', beside: 'mg/L' },
      { key: 'wanted', label: 'Level wanted', given: 2.25, format: '0.00', beside: 'mg/L' },
      { key: 'copper', label: 'Copper', given: 'chelated' },
      {
        label: 'Dose in all, never at once',
        answer: '=QT.DOSE({volume},{level},{wanted},{strength},{copper})',
        format: '0.0',
        beside: 'mL',
      },
    ],
  }),
  form({
    at: 'A26',
    title: '4  Was the volume right?',
    lines: [
      { key: 'added', label: 'Added in one dose', given: 20, beside: 'mL' },
      { key: 'before', label: 'Reading before', given: 0, format: '0.00', beside: 'mg/L' },
      { key: 'after', label: 'Reading after', given: 0.46, format: '0.00', beside: 'mg/L' },
      { key: 'accuracy', label: 'The test is good to ±', given: 0.05, format: '0.00', beside: 'mg/L' },
      { label: 'Rise expected', answer: '=QT.RISE({volume},{added},{strength})', format: '0.00', beside: 'mg/L' },
      {
        label: 'Volume by the rise',
        answer: '=QT.VOLUMEBYDOSE({added},{strength},{before},{after},{accuracy})',
        format: '0.0',
        beside: 'L',
      },
    ],
  }),
];

const split = [
  form({
    at: 'A34',
    title: '5  A day’s dose in parts',
    valueColumns: 2,
    isMerged: true,
    lines: [
      { key: 'to split', label: 'To split, mL', given: 23.6, format: '0.0' },
      { key: 'a day', label: 'Doses a day', given: 5 },
      { key: 'days', label: 'Days', given: 1 },
      { key: 'first', label: 'First dose at', given: firstDose, format: moment },
    ],
  }),
  answerTable({
    at: 'A40',
    id: 'DOSESPLIT',
    given: '{to split},{a day},{days},{first}',
    columns: { When: { width: 200 }, 'Dose mL': { width: 80 }, 'Running mL': { width: 90 } },
    room: 39,
  }),
];

const raise = [
  form({
    at: 'E3',
    title: '6  The whole raise, from the volume, strength, levels and copper of part 3',
    columns: 4,
    valueColumns: 2,
    isMerged: true,
    looks: { beside: 'aside' },
    lines: [
      { key: 'raise from', label: 'First dose at', given: firstDose, format: moment },
      {
        key: 'pace',
        label: 'Pace',
        given: 'gradual',
        beside: 'write "gradual", "sensitive", "urgent" or a number of days',
      },
      { key: 'raise a day', label: 'Doses a day', given: 5 },
    ],
  }),
  answerTable({
    at: 'E8',
    id: 'RAMP',
    given: '{volume},{level},{wanted},{strength},{raise from},{pace},{raise a day},{copper}',
    columns: {
      ...{ When: { width: 132 }, 'Dose mL': { width: 72 }, 'Level after': { width: 92 } },
      Do: { width: 690, look: 'spillSmall' },
    },
    room: 71,
  }),
];

/**
 * Volume, strength, dose, split and ramp. Volume and strength are written again where the dose is computed: a person looks at
 * an answer before it becomes a dose.
 */
export const dosing = demoSheet({
  name: 'Dosing',
  title: 'Dosing, tank Q2: fill in the blue cells, the answers are in bold',
  gap: 14,
  parts: [...volumeAndStrength, ...dose, ...split, ...raise],
});
