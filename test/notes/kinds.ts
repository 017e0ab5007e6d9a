/**
 * Notes as ten differently minded keepers might write them in a log's note, signs, fish in or event cell, labelled before
 * any rule was written. Two thirds of them, in openNotes.ts, may be read while the reader of words is written; the rest
 * is set aside, and its figure is the one that counts.
 *
 * How they were written
 * Invented, from the contract, functions.md and trade-rules.md alone, without a look at any code, keeper by keeper, each
 * in one voice. No note was taken from a real log. Shops, tanks, fish and people are invented; drugs and gear are named
 * by generic words. Misspellings, autocorrect slips, initials and slang are meant.
 *
 * The third set aside: each keeper's n ids in their order, shuffled by Fisher-Yates (i from the last down to 1,
 * j = floor(r x (i + 1))) with r from mulberry32, one stream, seed 20260417, keepers 1 to 10 in turn; the first
 * (n + 1) div 3 of each are aside.
 *
 * How the labels are meant
 * Context. Unless the text says otherwise ("day 0", "d31", "not started") the note stands in a log of the keeper's
 * form (KEEPERS), with copper in, a hold running and several fish in. `ownNames` are the log's own tank; any other tank
 * named is another tank. Where a fish comes in without a word of treatment it is untreated.
 * Severity is the note's gravest, by the table of the contract; `mustRaise` is true for danger and warning, no others.
 * `note` is what must be recorded and no more; so are, here, fish out at the end of the days, a first fish before copper,
 * a missed dose, a dosing pump, a dip, one missed feeding. `none` is what must not be raised.
 * Where the table gives no severity: signs of intolerance (not eating from two missed feedings on) and signs that are not
 * copper's, as well as brooklynella, are warnings, since each wants a step now; signs of disease, white spot and velvet
 * (breathing well) are notes, as `signs of disease on course`; velvet or white spot with breathing signs is a warning.
 * Binders and dechlorinators: danger with amine and chelated copper, warning with copper sulfate.
 * Ammonia without a pH: 1 mg/L total or more is danger; any indicator colour but yellow is danger.
 * Dead on arrival is a note; one or two deaths a warning; danger at 3, or at 2 that are a tenth of the fish told of.
 * Medicines in the water, food or fish while copper is in: warning; formalin and peroxide in the tank: danger.
 * Ten times the dose is danger (overdose), dosed twice a warning.
 *
 * Polarity. now: stands, or was done, in this tank; a suspicion ("velvet?") counts as now. ended: over, taken out, mended,
 * recovered. denied: said not to be; "all eating" denies intolerance, a yellow indicator denies ammonia.
 * planned: meant, ordered, asked, "if". hearsay: others' words and cases. other tank: elsewhere.
 * Absorbers and invertebrates have one kind each: `now` is in, `ended` is out. Moves are fish in and fish out.
 * An end may still be grave: power that was off for hours and is back is `ended` and danger, since ammonia is to be tested
 * after it; a stop mended within minutes is a note.
 * `denied`, `planned`, `hearsay` and `other tank` all mean "not here, not now": which of them is a finer question than
 * whether. A denial left unread does no harm; a denial raised does.
 * Signs are labelled by their words. That velvet turns breathing signs into signs of disease is the judge's to know.
 * A disease named in one breath with its signs may carry both labels. A count is given where the text says one (in words
 * or figures); all of an unknown number has none.
 *
 * After writing, every label was read a second time as by another reader, and corrected.
 */

/**
 * The kinds. `readAs` is the word of the paragraph "What the words say" (NOTES, Read as) under which a kind falls.
 * `severity` is that of the contract's table for a fact that stands now in a log with copper in and a hold running;
 * a note's own `severity` may differ (its form, its day, its count) and is the one that decides.
 */
export const KINDS = [
  {
    name: 'fish in',
    readAs: 'fish in',
    severity: 'warning',
    openUntil: '24 h',
    covers: 'fish put into this tank, bought in, moved in; untreated fish into a running hold or into copper',
  },
  {
    name: 'fish out',
    readAs: 'fish out',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'fish taken, sold or moved out of this tank; a warning when early, else a note',
  },
  {
    name: 'deaths',
    readAs: 'deaths',
    severity: 'warning',
    openUntil: '48 h',
    covers: 'fish that died in this tank; danger at 3, or at 2 that are a tenth of the fish, within 26 h',
  },
  {
    name: 'dead on arrival',
    readAs: 'deaths',
    severity: 'note',
    openUntil: '48 h',
    covers: 'fish dead in the bag or box',
  },
  {
    name: 'invertebrates',
    readAs: 'invertebrates',
    severity: 'danger',
    openUntil: 'a row that it is out',
    covers: 'now: in this tank; ended: taken out of it',
  },
  {
    name: 'ammonia',
    readAs: 'ammonia',
    severity: 'danger',
    openUntil: 'a later test < 0.05',
    covers: 'words, numbers and indicator colours; denied: none, or the clean colour',
  },
  {
    name: 'medicines',
    readAs: 'medicines',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers:
      'another medicine with copper, in the water, the food or the fish; formalin and peroxide in the tank: danger',
  },
  {
    name: 'dip, bath or bucket',
    readAs: 'medicines',
    severity: 'note',
    openUntil: '48 h',
    covers: "treated outside the tank: not this tank's medicine, salinity or copper",
  },
  {
    name: 'absorbers',
    readAs: 'absorbers in and out',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'now: in the water; ended: taken out',
  },
  {
    name: 'ammonia binder',
    readAs: 'binders',
    severity: 'danger',
    openUntil: '24 h without signs',
    covers: 'ammonia binders, detoxifying conditioners; sulfate: warning',
  },
  {
    name: 'reducing dechlorinator',
    readAs: 'binders',
    severity: 'danger',
    openUntil: '24 h without signs',
    covers: 'thiosulfate, ascorbic acid and the like; sulfate: warning',
  },
  {
    name: 'disease',
    readAs: 'disease',
    severity: 'note',
    openUntil: '-',
    covers: 'named or suspected: white spot, velvet; brooklynella, which copper does not reach: warning',
  },
  {
    name: 'signs: disease',
    readAs: 'signs',
    severity: 'note',
    openUntil: '-',
    covers: 'spots, dust, flashing, scratching',
  },
  {
    name: 'signs: not copper',
    readAs: 'signs',
    severity: 'warning',
    openUntil: '-',
    covers: 'slime or skin coming off, sores, worms, flukes, black spots',
  },
  {
    name: 'signs: intolerance',
    readAs: 'signs',
    severity: 'warning',
    openUntil: '-',
    covers: 'not eating (from two missed feedings), lethargic, breathing heavily, gasping, lying, darting',
  },
  {
    name: 'signs: other',
    readAs: 'signs',
    severity: 'note',
    openUntil: '-',
    covers: 'torn fin, rot, one cloudy eye, stringy faeces, bullying',
  },
  {
    name: 'all fish at the surface',
    readAs: 'signs',
    severity: 'danger',
    openUntil: 'a note, oxygen >= 5',
    covers: 'every fish gasping at the top',
  },
  {
    name: 'power or pump off',
    readAs: 'mishaps',
    severity: 'danger',
    openUntil: 'a note, oxygen >= 5',
    covers: 'power cut, filter, circulation or air pump stopped',
  },
  {
    name: 'broken heater',
    readAs: 'mishaps',
    severity: 'danger',
    openUntil: 'a note',
    covers: 'broken, cracked, stuck on or off',
  },
  {
    name: 'leak',
    readAs: 'mishaps',
    severity: 'danger',
    openUntil: 'a note',
    covers: 'this tank loses water',
  },
  {
    name: 'wrong bottle',
    readAs: 'mishaps',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'dosed from another bottle than meant',
  },
  {
    name: 'dosed twice',
    readAs: 'mishaps',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'one dose given twice',
  },
  {
    name: 'missed dose',
    readAs: 'mishaps',
    severity: 'note',
    openUntil: '-',
    covers: 'a dose not given',
  },
  {
    name: 'overdose',
    readAs: 'mishaps',
    severity: 'danger',
    openUntil: 'a reading in the band',
    covers: 'far more than the dose meant, by a slip of the decimal',
  },
  {
    name: 'copper in the top-off',
    readAs: 'copper in the top-off',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'ended, denied: plain water',
  },
  {
    name: 'gear or water from another tank',
    readAs: 'gear or water from another tank',
    severity: 'note',
    openUntil: '-',
    covers: 'nets, hoses, filters, rock, water',
  },
  {
    name: 'UV and ozone',
    readAs: 'UV and ozone',
    severity: 'note',
    openUntil: '-',
    covers: 'now: it runs on this tank',
  },
  {
    name: 'a dosing pump',
    readAs: 'a dosing pump',
    severity: 'note',
    openUntil: '-',
    covers: 'now: a pump or drip doses copper here',
  },
  {
    name: 'copper taken out',
    readAs: 'absorbers in and out',
    severity: 'warning',
    openUntil: 'ended by a row, or 48 h',
    covers: 'removal of copper begun; a warning when early, else a note',
  },
  {
    name: 'hyposalinity',
    readAs: 'medicines',
    severity: 'danger',
    openUntil: '>= 20',
    covers: 'low salinity with copper; before copper: note',
  },
  {
    name: 'new kit or meter',
    readAs: 'mishaps',
    severity: 'warning',
    openUntil: 'a row that they were compared',
    covers: 'another test, lot or meter, not compared',
  },
] as const;

/** now: here, it stands. ended: over, taken out. denied: said not to be. planned: meant, ordered, asked, "if". */
export const POLARITIES = ['now', 'ended', 'denied', 'planned', 'hearsay', 'other tank'] as const;

export const SEVERITIES = ['danger', 'warning', 'note', 'none'] as const;

export const COLUMNS = ['note', 'signs', 'fish in', 'event'] as const;

export type KindName = (typeof KINDS)[number]['name'];
export type Polarity = (typeof POLARITIES)[number];
export type Severity = (typeof SEVERITIES)[number];
export type Column = (typeof COLUMNS)[number];

export interface Label {
  readonly kind: KindName;
  readonly polarity: Polarity;
  /** How many, where the note says so (in figures or in words). */
  readonly count?: number;
  /** Fish, drug, thing; in plain words, singular, not as misspelt. */
  readonly name?: string;
}

export interface Note {
  readonly id: string;
  /** 1 to 10, see KEEPERS. */
  readonly keeper: number;
  readonly column: Column;
  readonly text: string;
  /** Empty where the note says nothing a judge knows. */
  readonly labels: readonly Label[];
  /** The gravest thing the note says of this tank. */
  readonly severity: Severity;
  /** True for danger and warning. */
  readonly mustRaise: boolean;
  readonly reason: string;
}

/**
 * The ten keepers. `ownNames` are the names of the log's own tank: every other tank named is another tank.
 * Unless a note says otherwise it stands in a log of this form, copper in, hold running, fish in.
 */
export const KEEPERS = [
  {
    keeper: 1,
    who: 'terse shop worker: abbreviations, initials',
    form: 'chelated',
    ownNames: ['B4', 'rack B', 'B rack'],
  },
  { keeper: 2, who: 'chatty hobbyist', form: 'chelated', ownNames: ['the QT', 'the hospital tank', 'the quarantine'] },
  { keeper: 3, who: 'careful engineer', form: 'amine', ownNames: ['QT-A', 'the treatment tank'] },
  {
    keeper: 4,
    who: 'writes in a foreign language, misspells',
    form: 'sulfate',
    ownNames: ['the quaranteen', 'the quarantine'],
  },
  { keeper: 5, who: 'types on a phone: autocorrect, no punctuation', form: 'chelated', ownNames: ['qt', 'the qt'] },
  { keeper: 6, who: "veterinarian's assistant", form: 'sulfate', ownNames: ['H3', 'Holding 3'] },
  { keeper: 7, who: 'plans in the log', form: 'chelated', ownNames: ['QT', 'the QT'] },
  { keeper: 8, who: 'several tanks in one log', form: 'amine', ownNames: ['Blue', 'B'] },
  { keeper: 9, who: 'copies hearsay and advice', form: 'chelated', ownNames: ['my QT', 'the QT'] },
  { keeper: 10, who: 'old hand, trade slang', form: 'sulfate', ownNames: ['vat 7', '7', 'Seven'] },
] as const;
