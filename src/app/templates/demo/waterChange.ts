import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
import { table } from '../plan/table.js';
import { demoSheet } from './demoSheet.js';

const litres = [10, 20, 30, 40, 50, 60, 80];

const levelKept = [
  form({
    at: 'A3',
    title: 'The tank',
    lines: [
      { key: 'volume', label: 'Net volume', given: 168, beside: 'L' },
      { key: 'level', label: 'Level now, by a test', given: 2.2, format: '0.00', beside: 'mg/L' },
      { key: 'strength', label: 'Strength of the solution', given: 4, format: '0.00', beside: 'mg/mL' },
    ],
  }),
  form({
    at: 'A8',
    title: 'A change that keeps the level',
    lines: [
      { key: 'change', label: 'Water to change', given: 30, beside: 'L' },
      {
        label: 'Copper into the new water first',
        answer: '=QT.CHANGEDOSE({change},{level},{strength},{volume})',
        format: '0.0',
        beside: 'mL',
      },
      {
        label: 'Level after it, if that is forgotten',
        answer: '=QT.AFTERCHANGE({volume},{level},{change},0)',
        format: '0.00',
        beside: 'mg/L',
      },
    ],
  }),
  form({
    at: 'A13',
    title: 'Evaporation',
    lines: [
      { key: 'lost', label: 'Water lost since the last top-off', given: 4, beside: 'L' },
      {
        label: 'Level before topping off',
        answer: '=QT.AFTEREVAPORATION({volume},{level},{lost})',
        format: '0.00',
        beside: 'mg/L',
      },
    ],
  }),
];

const levelLowered = [
  form({
    at: 'A17',
    title: 'Lowering the level',
    lines: [
      { key: 'wanted', label: 'Level wanted', given: 2, format: '0.00', beside: 'mg/L' },
      {
        label: 'Copper-free water to change in one go',
        answer: '=QT.CHANGETOLOWER({volume},{level},{wanted},0)',
        format: '0.0',
        beside: 'L',
      },
    ],
  }),
  form({
    at: 'A21',
    title: 'Taking the copper out, after the hold',
    lines: [
      { key: 'down to', label: 'Down to', given: 0.02, format: '0.00', beside: 'mg/L' },
      { key: 'share', label: 'Changed each time', given: 0.3, format: '0%' },
      { label: 'Copper-free changes', answer: '=QT.CHANGESTOCLEAR({level},{down to},{share})', format: '0' },
    ],
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
          look: 'spillNumber',
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
