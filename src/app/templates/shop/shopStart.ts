/** The first sheet of the workbook of a shop. */
export const shopStart = {
  title: 'Copper quarantine log: several systems',
  lead: 'One log that everyone writes in, a card for each system, and what the cell functions QT make of them: how every system stands, what each needs now, and one of them at a time in full.',
  steps: [
    [
      'Look round',
      'The rows of Log are the examples of an invented shop; By begins with example. See on Overview and the sheets after it what is made of them.',
    ],
    [
      'Write the cards',
      'On Systems a row for each system: its name, net volume, form of copper, strength of its solution, accuracy of its meter. Write over the six invented ones.',
    ],
    [
      'Delete the examples',
      'Select the example rows in Log and delete them as rows of the table. From then on Overview looks at the clock, no longer at the last row.',
    ],
    [
      'Write a row each time',
      'Choose the system, then write what was tested, dosed, changed or seen, and your initials. Within a row the reading comes first. Nothing tested: leave the cell empty.',
    ],
    [
      'Read Overview every shift',
      'Do what is due, test before every dose. Choose a system on One system for its audit, its gates, its fish and its chart.',
    ],
  ],
  sheets: [
    ['Systems', 'The cards: what is said once about each system'],
    ['Log', 'The rows of all systems, a table that grows; row numbers in answers are the rows of this sheet'],
    ['Overview', 'How every system stands, what it needs now, days left as a chart'],
    ['One system', 'A system chosen from a list: its card, how it stands, what to do'],
    ['Audit', 'The audit of the rows of the chosen system'],
    ['Ready', 'Its gates before fish are let go, each with its reason'],
    ['Fish', 'Hold days of each of its fish'],
    ['Deaths', 'Its deaths by lot, beside the published yardstick'],
    ['Chart', 'Its readings, the level that its rows explain, and the band'],
    ['Cautions', 'The cautions again, for printing and pinning up'],
  ],
} as const;
