import { bodies, form, line, table } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

const litres = [10, 20, 30, 40, 50, 60, 80];

const levelKept = [
  form({
    at: 'A3',
    title: 'The tank',
    lines: {
      volume: ['Net volume', 168, 'L'],
      level: ['Level now, by a test', 2.2, 'mg/L', '0.00'],
      strength: ['Strength of the solution', 4, 'mg/mL', '0.00'],
    },
  }),
  form({
    at: 'A8',
    title: 'A change that keeps the level',
    lines: {
      change: ['Water to change', 30, 'L'],
      copper: ['Copper into the new water first', '=QT.CHANGEDOSE({change},{level},{strength},{volume})', 'mL', '0.0'],
      after: ['Level after it, if that is forgotten', '=QT.AFTERCHANGE({volume},{level},{change},0)', 'mg/L', '0.00'],
    },
  }),
  form({
    at: 'A13',
    title: 'Evaporation',
    lines: {
      lost: ['Water lost since the last top-off', 4, 'L'],
      before: ['Level before topping off', '=QT.AFTEREVAPORATION({volume},{level},{lost})', 'mg/L', '0.00'],
    },
  }),
];

const levelLowered = [
  form({
    at: 'A17',
    title: 'Lowering the level',
    lines: {
      wanted: ['Level wanted', 2, 'mg/L', '0.00'],
      free: ['Copper-free water to change in one go', '=QT.CHANGETOLOWER({volume},{level},{wanted},0)', 'L', '0.0'],
    },
  }),
  form({
    at: 'A21',
    title: 'Taking the copper out, after the hold',
    lines: {
      'down to': ['Down to', 0.02, 'mg/L', '0.00'],
      share: ['Changed each time', 0.3, '', '0%'],
      'changes needed': ['Copper-free changes', '=QT.CHANGESTOCLEAR({level},{down to},{share})', '', '0'],
    },
  }),
];

/** Changes that keep the level, lower it, or take the copper out; and what evaporation does. */
export const waterChange = demoSheet({
  name: 'Water changes',
  title: 'Water changes, tank Q2: fill in the blue cells, the answers are in bold',
  widths: [280, 96, 62, 24, 130, 130, 220, 220],
  parts: [
    ...levelKept,
    ...levelLowered,
    line('E3', 'One change of this size, in the tank on the left', 'section', { columns: 4 }),
    table({
      at: 'E4',
      key: 'changes',
      columns: [
        { key: 'litres', heading: 'Change, L', kind: 'number', look: 'inputNumber' },
        {
          heading: 'Of the tank',
          kind: 'share',
          look: 'cellNumber',
          formula: '={litres}/{$volume$}',
        },
        {
          heading: 'Copper for the new water, mL',
          kind: 'number',
          format: '0.0',
          formula: '=QT.CHANGEDOSE({litres},{$level$},{$strength$},{$volume$})',
        },
        {
          heading: 'Level after, if forgotten, mg/L',
          kind: 'number',
          format: '0.00',
          formula: '=QT.AFTERCHANGE({$volume$},{$level$},{litres},0)',
        },
      ],
      rows: litres.map((each) => [each]),
      room: litres.length,
      body: bodies.answer,
    }),
    line(
      'E13',
      'A reading below the band breaks the hold: back to day one. The band of chelated copper begins at 1.95 mg/L.',
      'aside',
    ),
    line(
      'E14',
      'Copper comes back off silicone and sand for weeks: test 48 hours and 7 days after the last change.',
      'aside',
    ),
  ],
});
