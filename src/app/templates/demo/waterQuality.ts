import { answerTable, bodies, form, line, table, type TableColumn } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

const acidities = [7.8, 7.9, 8, 8.1, 8.2, 8.3, 8.4];
const temperatures = [24, 26, 28];
const salinities = [25, 27, 29, 31, 33, 35];
/** The columns beside the forms, to the end of the sheet. */
const columns = 5;

const ammonia = [
  form({
    at: 'A3',
    title: '1  Un-ionised ammonia',
    lines: {
      total: ['Total ammonia, by a test', 0.5, 'mg/L', '0.00'],
      counts: ['The test counts it as', 'NH3'],
      pH: ['pH', 8.1, '', '0.0'],
      temperature: ['Temperature', 25.5, '°C', '0.0'],
      salinity: ['Salinity', 33, 'g/kg'],
      un: [
        'Un-ionised ammonia, NH₃',
        '=QT.FREEAMMONIA({total},{pH},{temperature},{salinity},{counts})',
        'mg/L',
        '0.000',
      ],
    },
  }),
  line(
    'A10',
    'Liquid ammonia tests read falsely positive in copper-treated water. An in-tank indicator still works.',
    'warning',
    { columns: 3, rows: 2, isMerged: true },
  ),
  line('A12', '0.02 mg/L is a note, 0.05 a warning, 0.10 danger (common practice).', 'caption', {
    columns: 3,
    rows: 2,
    isMerged: true,
  }),
  line('E3', 'The same total ammonia and salinity in other water, mg/L NH₃', 'section', { columns }),
  line('E4', 'pH', 'numberHeading'),
  line('F4', 'Temperature, °C', 'heading', { columns: temperatures.length, isMerged: true }),
  line('E5', '', 'numberHeading'),
  table({
    at: 'E5',
    key: 'waters',
    columns: [
      { key: 'pH', heading: '', kind: 'number', look: 'inputNumber', format: '0.0' },
      ...temperatures.map((celsius): TableColumn => ({
        ...{ heading: String(celsius), headingNumber: celsius, headingLook: 'inputNumber' },
        ...{ kind: 'number', format: '0.000' },
        formula: `=QT.FREEAMMONIA({$total$},{$pH},{waters.${celsius} heading$},{$salinity$},{$counts$})`,
      })),
    ],
    rows: acidities.map((each) => [each]),
    room: acidities.length,
    body: bodies.answer,
  }),
];

const dilution = [
  form({
    at: 'A15',
    title: '2  Diluting ammonia without losing the hold',
    lines: {
      volume: ['Net volume', 168, 'L'],
      'ammonia now': ['Ammonia now', 0.5, 'mg/L', '0.00'],
      'ammonia wanted': ['Ammonia wanted', 0.25, 'mg/L', '0.00'],
      copper: ['Copper now, by a test', 2.2, 'mg/L', '0.00'],
      strength: ['Strength of the solution', 4, 'mg/mL', '0.00'],
    },
  }),
  line('E15', 'The change that does it', 'section', { columns }),
  answerTable({
    at: 'E16',
    id: 'AMMONIACHANGE',
    given: '{volume},{ammonia now},{ammonia wanted},{copper},{strength}',
    columns: { 'Change L': 112, 'Copper mL for the new water': 200 },
    room: 1,
  }),
  line(
    'E18',
    'Never an ammonia binder: it sets copper free from amine and chelated products and can kill in hours.',
    'warning',
    { columns, isMerged: true },
  ),
];

const hydrometer = [
  form({
    at: 'A22',
    title: '3  Salinity from the hydrometer',
    lines: {
      gravity: ['Specific gravity, as read', 1.0247, '', '0.0000'],
      sample: ['Temperature of the sample', 25.5, '°C', '0.0'],
      compared: ['Compared with pure water at', 25, '°C'],
      'salinity read': ['Salinity', '=QT.SALINITY({gravity},{sample},{compared})', 'g/kg', '0.0'],
    },
  }),
  form({
    at: 'A28',
    title: '4  What the hydrometer should read',
    lines: {
      'salinity wanted': ['Salinity wanted', 33, 'g/kg'],
      specific: ['Specific gravity', '=QT.SPECIFICGRAVITY({salinity wanted},{sample},{compared})', '', '0.0000'],
    },
  }),
  line('E22', 'Specific gravity to mix to, by the hydrometer of part 3', 'section', { columns }),
  table({
    at: 'E23',
    key: 'mixes',
    columns: [
      { key: 'salt', heading: 'Salinity, g/kg', kind: 'number', look: 'inputNumber' },
      ...[20, 25, 28].map((celsius): TableColumn => ({
        ...{ heading: `at ${celsius} °C`, kind: 'number', format: '0.0000' },
        formula: `=QT.SPECIFICGRAVITY({salt},${celsius},{$compared$})`,
      })),
    ],
    rows: salinities.map((each) => [each]),
    room: salinities.length,
    body: bodies.answer,
  }),
  line(
    'E31',
    'Copper in water below 25 g/kg is a warning: the course of Zec and others (2021) kept 25 g/L and over.',
    'aside',
  ),
];

/** Ammonia and salinity beside the copper. */
export const waterQuality = demoSheet({
  name: 'Water quality',
  title: 'Ammonia and salinity, tank Q2: fill in the blue cells, the answers are in bold',
  widths: [290, 96, 70, 24, 112, 200, 190, 190, 186],
  parts: [...ammonia, ...dilution, ...hydrometer],
});
