/** What an example shows of its function. */
export interface Example {
  /** The function's name without its namespace. */
  readonly name: string;
  /** As typed in a cell; every argument stands in it. */
  readonly formula: string;
  /**
   * What the cell shows: a whole number exactly, another number to its last decimal; of a table the first rows, each
   * number in the same way.
   */
  readonly answer: ExampleCell | readonly (readonly ExampleCell[])[];
  /** One short sentence. */
  readonly shows: string;
}

export type ExampleCell = number | string | boolean;

const waterAndStrength: readonly Example[] = [
  {
    name: 'NETVOLUME',
    formula: '=QT.NETVOLUME(90,45,42,0,2)',
    answer: 168.1,
    shows: 'A tank of 90 × 45 cm filled to 42 cm, with 2 L of pipe and decor in it, holds 168.1 L.',
  },
  {
    name: 'VOLUMEBYDOSE',
    formula: '=QT.VOLUMEBYDOSE(20,4,0,0.5)',
    answer: 160,
    shows: 'If 20 mL of a 4 mg/mL solution raise the reading from 0 to 0.5, the tank really holds 160 L.',
  },
  {
    name: 'STRENGTH',
    formula: '=QT.STRENGTH(5,40,0.5)',
    answer: 4,
    shows: 'A label on which 5 mL raise 40 L by 0.5 mg/L stands for 4 mg of copper per mL.',
  },
  {
    name: 'STOCKSTRENGTH',
    formula: '=QT.STOCKSTRENGTH(3,"750 mL")',
    answer: 1.01805,
    shows: '3 g of the pentahydrate made up to 750 mL make a stock of 1.018 mg of copper per mL.',
  },
  {
    name: 'STOCKGRAMS',
    formula: '=QT.STOCKGRAMS(1,"500 mL")',
    answer: 1.9645,
    shows: 'Half a litre of a 1 mg/mL stock takes 1.96 g of the pentahydrate.',
  },
  {
    name: 'THIN',
    formula: '=QT.THIN(10,1,500)',
    answer: [
      ['Stock mL', 'Water mL'],
      [50, 450],
    ],
    shows: '500 mL of a 1 mg/mL working solution are 50 mL of a 10 mg/mL stock and 450 mL of water.',
  },
  {
    name: 'MGPERL',
    formula: '=QT.MGPERL("2,05 ppm")',
    answer: 2.05,
    shows: 'A reading with a decimal comma and a unit is 2.05 mg/L.',
  },
];

const dosing: readonly Example[] = [
  {
    name: 'DOSE',
    formula: '=QT.DOSE(168,"0 mg/L",2.25,4,"chelated")',
    answer: 94.5,
    shows: 'From 0 to 2.25 mg/L in 168 L takes 94.5 mL of a 4 mg/mL solution in all, never at once.',
  },
  {
    name: 'RISE',
    formula: '=QT.RISE(200,10,4)',
    answer: 0.2,
    shows: '10 mL of a 4 mg/mL solution raise 200 L by 0.2 mg/L.',
  },
  {
    name: 'DOSESPLIT',
    formula: '=QT.DOSESPLIT(9.5,4)',
    answer: [
      ['Hours', 'Dose mL', 'Running mL'],
      [0, 2.4, 2.4],
      [4, 2.4, 4.8],
      [8, 2.3, 7.1],
      [12, 2.4, 9.5],
    ],
    shows: '9.5 mL in four doses over twelve hours, in steps that a 0.1 mL syringe can measure.',
  },
  {
    name: 'RAMP',
    formula: '=QT.RAMP(168,0,2.25,4,"2026-03-01 08:00","gradual",5,"chelated")',
    answer: [
      ['When', 'Dose mL', 'Level after', 'Do'],
      [46082.3333, 4.7, 0.1119, 'test first, then dose'],
      [46082.4583, 4.8, 0.2262, 'dose'],
    ],
    shows: 'Twenty doses over four days, each with the level to expect after it and when to test.',
  },
];

const waterChanges: readonly Example[] = [
  {
    name: 'CHANGEDOSE',
    formula: '=QT.CHANGEDOSE("25%",2.2,4,168)',
    answer: 23.1,
    shows: 'The new water of a 25 % change gets 23.1 mL first, so that the tank stays at 2.2 mg/L.',
  },
  {
    name: 'AFTERCHANGE',
    formula: '=QT.AFTERCHANGE(200,2.2,"25%")',
    answer: 1.65,
    shows: 'A quarter changed without copper in the new water leaves 1.65 mg/L, below the band.',
  },
  {
    name: 'AFTEREVAPORATION',
    formula: '=QT.AFTEREVAPORATION(200,2.4,8)',
    answer: 2.5,
    shows: '8 L evaporated from 200 L raise 2.4 mg/L to 2.5; topping off without copper brings it back.',
  },
  {
    name: 'CHANGETOLOWER',
    formula: '=QT.CHANGETOLOWER(200,2.5,2)',
    answer: 40,
    shows: 'From 2.5 down to 2 mg/L takes a change of 40 L of 200 L.',
  },
  {
    name: 'CHANGESTOCLEAR',
    formula: '=QT.CHANGESTOCLEAR(0.2,0.01,25%)',
    answer: 11,
    shows: 'Eleven changes of 25 % bring 0.20 mg/L to 0.01 or below.',
  },
  {
    name: 'LOSSRATE',
    formula: '=QT.LOSSRATE({46082;46083;46084;46085},{2.4;2.33;2.25;2.19})',
    answer: [
      ['% a day', 'Low', 'High', 'R²', 'Verdict'],
      [3.05, 2.62, 3.47, 0.998, 'absorbs'],
    ],
    shows: 'A bucket with a rock in it loses 3 % of its copper a day: the rock absorbs.',
  },
];

const hold: readonly Example[] = [
  {
    name: 'BAND',
    formula: '=QT.BAND("chelated")',
    answer: [[1.95, 2.55]],
    shows: 'The band of chelated copper, low and high limit side by side.',
  },
  {
    name: 'HOLDDAYS',
    formula: '=QT.HOLDDAYS({46082;46083;46084},{2.1;2.2;2.15},"chelated")',
    answer: 2,
    shows: 'Three daily readings in the band are two days held.',
  },
  {
    name: 'HOLDSTART',
    formula: '=QT.HOLDSTART({46082;46083;46084;46085},{2.1;1.8;2;2.1},"chelated")',
    answer: 46084,
    shows: 'After the dip on 2026-03-02 the hold starts again on 2026-03-03.',
  },
  {
    name: 'HOLDENDS',
    formula: '=QT.HOLDENDS({46082;46083;46084},{2.1;2.2;2.15},"chelated",14)',
    answer: 46096,
    shows: 'If it holds, 14 days are full on 2026-03-15.',
  },
  {
    name: 'HOLDROWS',
    formula: '=QT.HOLDROWS({46082;46083;46084.5;46085},{1.9;"~2.1";2.2;1.8},"chelated")',
    answer: [
      ['When', 'Copper', 'Status', 'Hold day', 'Days done', 'Row', 'Note'],
      [46082, 1.9, 'below', '', '', 1, ''],
      [46083, 2.1, 'in band', 1, 0, 2, 'approximate; hold starts'],
      [46084.5, 2.2, 'in band', 2, 1.5, 3, ''],
      [46085, 1.8, 'below', '', '', 4, 'hold broken after 1.5 days'],
    ],
    shows: 'Every reading with its status and its day of the hold.',
  },
  {
    name: 'HOLDS',
    formula: '=QT.HOLDS({46082;46083;46084;46085;46086},{2.1;2.2;1.8;2;2.1},"chelated",14)',
    answer: [
      ['From', 'To', 'Days', 'Enough', 'Ended by', 'Row'],
      [46082, 46083, 1, 'no', 'below', 3],
      [46085, 46086, 1, 'running', 'still running', ''],
    ],
    shows: 'Two holds: one broken by the reading in row 3, one that still runs.',
  },
];

const trust: readonly Example[] = [
  {
    name: 'HOLDCHANCE',
    formula: '=QT.HOLDCHANCE({46082;46083;46084},{2.02;1.98;2.05},"chelated",0.1)',
    answer: 0.93,
    shows: 'Three readings near the low limit, by a meter good to 0.1 mg/L: a chance of 93 % that it never dipped.',
  },
  {
    name: 'AIM',
    formula: '=QT.AIM("chelated",0.1)',
    answer: 2.034,
    shows: 'With a meter good to 0.1 mg/L a reading of 2.034 shows the low limit, 1.95, with a chance of 95 %.',
  },
  {
    name: 'METERFITS',
    formula: '=QT.METERFITS("sulfate",0.21,5,0.05)',
    answer: [
      ['Can show the low', 'Can show the top', 'Keep at least', 'Why'],
      [
        'no',
        'no',
        '',
        'it reads from 0.21, above the low limit 0.18; to show the top 0.21 it would have to read 0.168, below the low limit 0.18',
      ],
    ],
    shows: 'A kit that reads from 0.21 mg/L cannot show the sulfate band.',
  },
];

const fishAndPlan: readonly Example[] = [
  {
    name: 'TOLERANCE',
    formula: '=QT.TOLERANCE("clownfish, cleaner shrimp")',
    answer: [
      ['Fish', 'Advice', 'Why', 'Source'],
      [
        'clownfish',
        'usual care',
        'Usually tolerates copper that is raised slowly; but Brooklynella, common in clownfish, is not treated by copper.',
        'from memory, unchecked',
      ],
    ],
    shows: 'A row for each name: clownfish with usual care, and for the shrimp never.',
  },
  {
    name: 'TREATMENTFOR',
    formula: '=QT.TREATMENTFOR("velvet")',
    answer: [
      ['Condition', 'Copper', 'Give', 'When', 'Source'],
      [
        'velvet (Amyloodinium ocellatum)',
        'kills the free-swimming stage only: stops reinfection, gives no immediate relief',
        'copper, in the band of its form (QT.BAND)',
        'with the disease showing: in the band within 24 h, round the clock; the delay is the greater risk',
        'common practice, no published source',
      ],
    ],
    shows: 'What copper does to velvet, what else is given, and when.',
  },
  {
    name: 'SIGNS',
    formula: '=QT.SIGNS({46090;46091;46096},{"not eating";"eating again";"breathing heavily"})',
    answer: [
      ['When', 'Seen', 'Step'],
      [46090, 'not eating', 'test first'],
      [46091, 'eating again', 'raise slowly'],
      [46096, 'breathing heavily', 'stop copper'],
    ],
    shows: 'Signs, a recovery, and signs again: the step that each calls for.',
  },
  {
    name: 'PLAN',
    formula: '=QT.PLAN("2026-03-01 08:00","chelated",30,"gradual")',
    answer: [['When', 'Day', 'Do', 'Why']],
    shows: 'A quarantine from screening the fish to the end of observation, a row for each step.',
  },
  {
    name: 'OBSERVEUNTIL',
    formula: '=QT.OBSERVEUNTIL("2026-04-10")',
    answer: [[46136, 46150]],
    shows: 'Copper out on 2026-04-10: observe to 2026-04-24 at least, better to 2026-05-08.',
  },
];

const waterQuality: readonly Example[] = [
  {
    name: 'FREEAMMONIA',
    formula: '=QT.FREEAMMONIA(0.5,8.2,25,35)',
    answer: 0.033,
    shows: 'Of 0.5 mg/L of total ammonia at pH 8.2 and 25 °C, 0.033 are un-ionised.',
  },
  {
    name: 'AMMONIACHANGE',
    formula: '=QT.AMMONIACHANGE(200,0.5,0.25,2.2,4)',
    answer: [
      ['Change L', 'Copper mL for the new water'],
      [100, 55],
    ],
    shows: 'A change of 100 L halves the ammonia; 55 mL in the new water keep the copper where it is.',
  },
  {
    name: 'SALINITY',
    formula: '=QT.SALINITY(1.0264,25)',
    answer: 35.04,
    shows: 'A specific gravity of 1.0264 at 25 °C is 35 g/kg.',
  },
  {
    name: 'SPECIFICGRAVITY',
    formula: '=QT.SPECIFICGRAVITY(35,25)',
    answer: 1.02637,
    shows: 'Sea water of 35 g/kg at 25 °C has a specific gravity of 1.0264.',
  },
];

const checks: readonly Example[] = [
  {
    name: 'SELFCHECK',
    formula: '=QT.SELFCHECK()',
    answer: [['Check', 'Published', 'Computed', 'Agrees', 'Source']],
    shows: 'A row for each published value, with TRUE where this copy agrees with it.',
  },
  {
    name: 'CAUTIONS',
    formula: '=QT.CAUTIONS()',
    answer: [['Caution']],
    shows: 'A row for each caution.',
  },
];

const card = '{"Volume","200 L";"Form","chelated";"Strength",10}';
const log = '{"When","Cu ppm","Dose mL";46082,1.6,10;46083,2.1,"";46084,1.8,9;46085,2.25,""}';
const fishLog =
  '{"When","Cu ppm","Fish in","Dead";46082,2.2,"4 green chromis","";46083,2.2,"","";46084,2.2,"","1 chromis"}';

const wholeLog: readonly Example[] = [
  {
    name: 'HEADINGS',
    formula: '=QT.HEADINGS({"Date","Cu ppm","WC gal","Eating?";46082,2.1,5,"yes"})',
    answer: [
      ['Heading', 'Read as', 'Unit'],
      ['Date', 'time', ''],
      ['Cu ppm', 'copper', 'ppm'],
      ['WC gal', 'change', 'gal'],
      ['Eating?', 'signs', ''],
    ],
    shows: 'Headings in your own words, and what each is taken for.',
  },
  {
    name: 'CARD',
    formula: `=QT.CARD(${card})`,
    answer: [
      ['Name', 'Value', 'Unit', 'Read as'],
      ['Volume', 200, 'L', 'volume'],
      ['Form', 'chelated', '', 'form or band'],
      ['Strength', 10, 'mg/mL', 'strength'],
    ],
    shows: 'A card of three rows, and what each is taken for.',
  },
  {
    name: 'LEVELS',
    formula: `=QT.LEVELS(${log},${card})`,
    answer: [
      ['When', 'Expected', 'Low', 'High', 'Reading', 'Off by'],
      [46082, 1.62, 1.57, 1.67, 1.6, -0.02],
    ],
    shows: 'The level that doses, changes and loss explain, with a 95 % band, beside each reading.',
  },
  {
    name: 'AUDIT',
    formula: `=QT.AUDIT(${log},${card})`,
    answer: [['Severity', 'When', 'Row', 'Finding', 'Why', 'Source']],
    shows: 'The verdict first, then what was wrong, row by row: here the hold broken by the reading of 1.8.',
  },
  {
    name: 'DONOW',
    formula: `=QT.DONOW(${log},${card},46085.5)`,
    answer: [
      ['Do', 'Amount', 'Unit', 'By', 'Why'],
      ['test copper', '', '', 46085.916666666664, '2.25 mg/L at the last test; the next one is due then'],
      ['days left', 29.5, 'days', 46115, '0.5 days done, if no reading falls below'],
    ],
    shows: 'Nothing to dose at noon: the next test, and how long is left.',
  },
  {
    name: 'READY',
    formula: `=QT.READY(${log},${card},46085.5)`,
    answer: [
      ['Gate', 'Met', 'Since', 'Why'],
      [
        'days reached',
        'no',
        '',
        '0.5 of 30 days held; would be reached on 2026-04-03 00:00, if a test then or later is still in the band',
      ],
    ],
    shows: 'A row for each gate, and release, not yet, or a vet decides in the last.',
  },
  {
    name: 'FISHDAYS',
    formula: `=QT.FISHDAYS(${fishLog},${card})`,
    answer: [
      ['Fish', 'Arrived', 'Hold days', 'Ready on', 'Note'],
      ['4 green chromis', 46082, 2, 46112, '1 of 4 died 2026-03-03 00:00'],
    ],
    shows: "Each group's own days, from its own arrival.",
  },
  {
    name: 'DEATHS',
    formula: `=QT.DEATHS(${fishLog},${card})`,
    answer: [
      ['Lot', 'Came in', 'Dead on arrival', 'Raising', 'Hold', 'Observation', 'Left', '% after arrival'],
      ['all', 4, 0, 0, 1, 0, 3, 25],
    ],
    shows: 'One of four fish died in the hold: 25 %, above a row with the published figures.',
  },
  {
    name: 'SYSTEMS',
    formula:
      '=QT.SYSTEMS({"Rack","When","Cu";"North",46084,2.2;"South",46084,0.4},{"System","Volume","Form","Strength";"North",400,"chelated",10;"South",400,"amine",10},46084.25)',
    answer: [
      ['System', 'Last test', 'Copper', 'Status', 'Hold day', 'Days left', 'Do now', 'Stage', 'Hours since test'],
      ['North', 46084, 2.2, 'in band', 1, 29.75, 'nothing now', 'holding', 6],
      ['South', 46084, 0.4, 'below', '', '', 'dose 2.5 mL', 'raising', 6],
    ],
    shows: 'Two racks of a shop, how each stands and what to do next.',
  },
  {
    name: 'NOTES',
    formula:
      '=QT.NOTES({"Date","Cu","Note";46082,2.2,"two clowns dead, carbon removed";46083,2.2,"ordered carbon for the display"})',
    answer: [
      ['When', 'Row', 'Text', 'Read as', 'Used for'],
      [46082, 2, 'two clowns dead, carbon removed', 'deaths; absorbers out', 'deaths'],
      [46083, 3, 'ordered carbon for the display', 'absorbers in (another tank)', ''],
    ],
    shows: 'What each note was taken for, and what was told apart.',
  },
];

export interface ExampleTopic {
  readonly topic: string;
  readonly examples: readonly Example[];
}

/** One runnable example for every cell function, in the order in which people meet them. */
export const exampleTopics: readonly ExampleTopic[] = [
  { topic: 'Water and strength', examples: waterAndStrength },
  { topic: 'Dosing', examples: dosing },
  { topic: 'Water changes', examples: waterChanges },
  { topic: 'The hold', examples: hold },
  { topic: 'How far to trust the meter', examples: trust },
  { topic: 'Fish and plan', examples: fishAndPlan },
  { topic: 'Water quality', examples: waterQuality },
  { topic: 'The whole log', examples: wholeLog },
  { topic: 'Checks', examples: checks },
];

export const examples: readonly Example[] = exampleTopics.flatMap((topic) => topic.examples);
