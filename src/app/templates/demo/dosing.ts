import { answerTable, form } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from '../sheets/rowsOf.js';

const moment = 'yyyy-mm-dd hh:mm';
const firstDose = serialOf('2026-03-01 08:00');

const volumeAndStrength = [
  form({
    at: 'A3',
    title: '1  Net volume',
    widths: [200, 80, 90],
    lines: {
      length: ['Length, inside', 90, 'cm'],
      width: ['Width, inside', 45, 'cm'],
      depth: ['Water depth, from the glass', 42, 'cm'],
      sand: ['Sand depth', 0, 'cm'],
      displaced: ['Displaced by pipe and decor', 2, 'L'],
      filter: ['Plus filter and pipes', 0, 'L'],
      net: ['Net volume', '=QT.NETVOLUME({length},{width},{depth},{sand},{displaced},{filter})', 'L', '0.0'],
    },
  }),
  form({
    at: 'A12',
    title: '2  Strength, from the label',
    lines: {
      'label dose': ['A dose of', 5, 'mL'],
      treats: ['treats', 40, 'L'],
      raises: ['and raises copper by', 0.5, 'mg/L', '0.00'],
      'label strength': ['Strength', '=QT.STRENGTH({label dose},{treats},{raises})', 'mg/mL', '0.00'],
    },
  }),
];

const dose = [
  form({
    at: 'A18',
    title: '3  Dose',
    lines: {
      volume: ['Volume, once you trust it', 168, 'L'],
      strength: ['Strength, once you trust it', 4, 'mg/mL', '0.00'],
      // With its unit: a bare 0 may be an empty cell.
      level: ['Level now, by a test', '0 mg/L'],
      wanted: ['Level wanted', 2.25, 'mg/L', '0.00'],
      copper: ['Copper', 'chelated'],
      dose: ['Dose in all, never at once', '=QT.DOSE({volume},{level},{wanted},{strength},{copper})', 'mL', '0.0'],
    },
  }),
  form({
    at: 'A26',
    title: '4  Was the volume right?',
    lines: {
      added: ['Added in one dose', 20, 'mL'],
      before: ['Reading before', 0, 'mg/L', '0.00'],
      after: ['Reading after', 0.46, 'mg/L', '0.00'],
      accuracy: ['The test is good to ±', 0.05, 'mg/L', '0.00'],
      rise: ['Rise expected', '=QT.RISE({volume},{added},{strength})', 'mg/L', '0.00'],
      'volume by the rise': [
        'Volume by the rise',
        '=QT.VOLUMEBYDOSE({added},{strength},{before},{after},{accuracy})',
        'L',
        '0.0',
      ],
    },
  }),
];

const split = [
  form({
    at: 'A34',
    title: '5  A day’s dose in parts',
    valueColumns: 2,
    isMerged: true,
    lines: {
      'to split': ['To split, mL', 23.6, '', '0.0'],
      'a day': ['Doses a day', 5],
      days: ['Days', 1],
      first: ['First dose at', firstDose, '', moment],
    },
  }),
  answerTable({
    at: 'A40',
    id: 'DOSESPLIT',
    given: '{to split},{a day},{days},{first}',
    columns: { When: 200, 'Dose mL': 80, 'Running mL': 90 },
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
    lines: {
      'raise from': ['First dose at', firstDose, '', moment],
      pace: ['Pace', 'gradual', 'write "gradual", "sensitive", "urgent" or a number of days'],
      'raise a day': ['Doses a day', 5],
    },
  }),
  answerTable({
    at: 'E8',
    id: 'RAMP',
    given: '{volume},{level},{wanted},{strength},{raise from},{pace},{raise a day},{copper}',
    columns: {
      When: 132,
      'Dose mL': 72,
      'Level after': 92,
      Do: { width: 690, look: 'small' },
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
