/**
 * What a word or phrase does in a keeper's sentence about a fish.
 *
 * negator, stopped, nothing: turn what follows (or, at the end, what goes before) into its opposite; gone: what goes
 * before. less, some, little: weaken a good word; asMuch: weakens a denial. bad, badNoun, place, breathBad, slow: a sign, the last three only
 * beside the right words. feeds, lively, swimming, fine: a fish that is well; fine says it of water too.
 */
export type WordKind =
  | 'negator'
  | 'stopped'
  | 'nothing'
  | 'gone'
  | 'less'
  | 'some'
  | 'little'
  | 'asMuch'
  | 'bad'
  | 'badNoun'
  | 'place'
  | 'breathing'
  | 'breathBad'
  | 'slow'
  | 'slower'
  | 'partial'
  | 'feeds'
  | 'lively'
  | 'swimming'
  | 'fine'
  | 'easing'
  | 'same'
  | 'seen'
  | 'maybe'
  | 'irreal'
  | 'past'
  | 'now'
  | 'still'
  | 'water'
  | 'fish'
  | 'filler'
  | 'except'
  | 'but'
  | 'and'
  | 'after';

const own = '(?:its |his |her |their |the |any |some |all )?';
const food = '(?:food|feed|pellets?|mysis|mysids?|brine|nori|flakes?|krill|shrimps?|clams?|algae|seaweed|meals?)';
const fish =
  '(?:clown|tang|wrasse|angel|butterfly|damsel|cardinal|trigger|puffer|file|rabbit|lion|jaw|dart|fire|box|cow|pipe|bat|squirrel|parrot|surgeon|banner|hog|hawk|cat)(?:fish|s|es)?|gob(?:y|ies)|blenn(?:y|ies)|butterflies|chromis|anthias|basslets?|grammas?|dottybacks?|fox(?:face|faces)|eels?|morays?|groupers?|mandarins?|dragonets?|moll(?:y|ies)|seahorses?|sweetlips|idols?|sharks?|rays?|assessors?';
const flow =
  '(?: (?:the|a|an|its|strong|direct))* (?:(?:pump|power ?head|filter|return|wave ?maker|water)s? )?(?:flow|current|outflow|outlet|output|jet|stream|power ?head|pump|wave ?maker)s?';
const colour = 'colou?r(?:s|ing|ation)?';

/**
 * The words in the order in which they are tried, phrases before the words they begin with. Items stand between commas;
 * each is the source of a regular expression for lower-case text without apostrophes or hyphens.
 */
export const signWords: readonly (readonly [WordKind, string])[] = [
  ['some', `all but, not all, not every(?:one|body|thing)?`],
  ['except', `except(?:ing)?(?: for)?, apart from, aside from, other than, besides`],
  ['but', `but, though, although, however, while, whilst, whereas`],
  ['and', `and, plus, then`],
  ['after', `after, following`],
  [
    'filler',
    `(?:signs?|symptoms?|evidence) of, than (?:usual|normal|before|yesterday), as well, any ?more, settl\\w+ down, calm\\w* down, (?:blood|black|white) ?worms?,
    (?:(?:one|two|three|four|five|many|blue|yellow|red|black|pink|orange|white|gold|false) ?)?spot(?:s|ted)?(?= (?:${fish}))`,
  ],
  [
    'maybe',
    `maybe, perhaps, possibly, possible, probably, might(?: be| have)?, suspect(?:ed)?, think, thinks, guess,
    (?:not (?:sure|certain)|unsure|unclear|unknown)(?: if| whether)?, hard to (?:tell|say), cant (?:tell|say)`,
  ],
  [
    'irreal',
    `if, unless, in case, (?:watch|monitor|check)(?:ing|ed)?(?: out)? for, look(?:ing)? out for,
    hop(?:e|es|ing)(?: for| that)?, should, tomorrow, to (?:prevent|avoid)`,
  ],
  [
    'same',
    `no change (?:in|to|of) ${own}\\w+, no change, unchanged, no(?:t any)? different, not worse, no worse,
    same as (?:before|yesterday|last time|above), the same, same, as before, ditto`,
  ],
  [
    'water',
    `(?:cloudy|milky|hazy|murky|green) water, water (?:is |was |looks |a bit |slightly |very )*(?:cloudy|milky|hazy|murky|green)`,
  ],
  [
    'bad',
    `(?:gone |going |went )?off ${own}(?:${food}|feeding|eating|${colour}), skip\\w* (?:an? |one |two |another )?${own}(?:${food}|feeds?|breakfast|dinner),
    turn\\w* (?:away from|down|away|${own}nose up at|up ${own}nose at) ${own}${food}, (?:took|takes?|taking|accept\\w*|touch\\w*) (?:nothing|none|no ${food}),
    (?:into|towards?)${flow}, (?:against|facing(?: into)?|fighting)${flow}, not (?:quite )?(?:right|itself|himself|herself|themselves),
    appetite (?:is |was |still |a bit |a little |slightly )*off, (?:a )?(?:bit|little) off, still off, (?:look|looks|looking|seem|seems|act|acts|acting|appears?)(?: slightly)? off,
    ignor\\w+ ${own}${food}, reject\\w+ ${own}${food}, refus\\w+, spits?, spat, spitting, uneaten, left ?over, left (?:its |the )?food, food (?:left|ignored|refused), anorexic, mouth (?:is )?(?:open|agape),
    los(?:t|ing|es) ${own}(?:appetite|interest|${colour}|balance|weight|condition)(?: in ${own}${food})?, no show,
    lost (?:a|an|one|two|three|another|the|\\d+), lost ${own}(?=(?:${fish})), lost fish, fish (?:lost|gone|missing)`,
  ],
  ['easing', `not (?:too |so |that )?bad`],
  ['asMuch', `as (?:much|often|many|badly), so (?:much|often|many)`],
  [
    'less',
    `not (?:as|so|very|too|that|fully|completely|entirely|quite|much|many|a lot|enough)(?: much| many)?, less, barely,
    hardly(?: any)?, scarcely, rarely, seldom, poor, low, lower, reduc\\w+, decreas\\w+, diminish\\w+, very little, taper\\w*, wan(?:es|ed|ing), dwindl\\w+, dropp(?:ed|ing)(?! off), suppress\\w*,
    sporadic\\w*, intermittent\\w*, inconsisten\\w+, occasional\\w*, limited, minimal\\w*, down`,
  ],
  [
    'little',
    `a (?:little|tiny) bit, a (?:little|bit|tad|touch), slight, slightly, somewhat, almost, nearly, mostly, partly,
    partially, more(?! food), tentatively, (?:beginning|starting) to, tr(?:ied|ies|ying) to, attempt\\w+(?: to)?, returning, coming back`,
  ],
  [
    'lively',
    `(?:all|fully|completely|totally) better, (?:out of|no longer in) hiding, out and about, out exploring, symptomless,
    asymptomatic, ${colour}(?: is| has)? (?:back|good|normal|fine|ok|returned|bright), interest(?:ed)?, respons(?:e|ive), respond\\w*,
    react(?:s|ing|ion|ive), alert, active, actively, activity, bright, lively, energetic, strongly, vigorous\\w*, curious, playful,
    inquisitive, health(?:y|ily), happy, happily, relaxed, comfortable, settled, settling, recovered, recovery, thriving, perky, fat, explor\\w+, fins (?:are )?(?:open|erect|up|out|spread)`,
  ],
  [
    'partial',
    `nibbl\\w+, pick(?:s|ed|ing)? at(?: ${own}${food})?, peck\\w+, (?:mouth|tast)(?:s|es|ing|ed) ${own}${food}, (?:took|tak(?:es?|ing|en)|tr(?:y|ies|ied)) (?:a few|a little|a bit of|one|two|an?) ${food}`,
  ],
  [
    'easing',
    `better, improv\\w+, recovering, on the mend, perk(?:ing|ed|s) up, picking up, coming (?:round|around), stable, stabili[sz]\\w+, healing`,
  ],
  ['stopped', `stopped, stops, stop, stopping, ceas\\w+, quit, quits, quitting`],
  ['negator', `(?:free|clear) (?:of|from)`],
  [
    'gone',
    `gone, disappeared, vanished, resolved, subsided, healed, cleared(?: up)?, fallen off, fell off, dropped off, absent, free`,
  ],
  ['nothing', `none(?: of (?:them|the|my))?, nothing, nil, nobody, no one`],
  [
    'negator',
    `no longer, no more, not any, not, no, never, neither, nor, without, zero, 0(?= (?:\\w+ )?(?:signs?|symptoms?|spots?|dead|deaths|losses|flashing)),
    lack(?:s|ing)?(?: of)?, absence of, cannot, (?:is|are|was|were|has|have|had|does|do|did|wo|would|could|ca|ai|should)nt, non, skip(?:s|ped|ping)?`,
  ],
  [
    'breathing',
    `breath\\w*, resps?, respirat\\w+, respir(?:es?|ing), gilling, gills?(?: (?:movements?|rate|beats?|action))?, ventilat\\w+, opercul\\w+`,
  ],
  ['swimming', `swim\\w*, swam, moves?, moving, movements?`],
  [
    'badNoun',
    `flash(?:es|ed|ing)?, scratch(?:es|ed|ing)?, rub(?:s|bed|bing)?, flick(?:s|ed|ing)?, glanc(?:es|ed|ing), gap(?:es|ing), piping, hyperventilat\\w+, gasp\\w*, gulp\\w*, pant(?:s|ing), twitch\\w*, convuls\\w*, trembl\\w*, tremors?, spasms?, seizures?, shiver\\w*,
    (?:head )?shak(?:es?|ing)(?: ${own}head)?, yawn\\w*, cough\\w*, dart(?:s|ed|ing), spin(?:s|ning), jump\\w*, clamp\\w*, hid(?:es?|ing|den)?,
    spots?(?! (?:tests?|checks?|feed\\w*)), dots?, specks?, patch(?:es|y)?, dust(?:ing|ed|y)?, ich, ick, crypt\\w*, velvet, flukes?, brook\\w*, uronema, trichodina,
    parasit\\w+, fungus, fungal, infect\\w+, diseas\\w+, lesions?, sores?, ulcers?, wounds?, slime, slimy, mucus, mucous, film, peeling, (?:fin )?rot, isolat\\w+, separated, blind\\w*, milky,
    pop ?eyed?, exophthalm\\w+, cloud(?:y|iness|ed), haz(?:y|e|iness), redness, reddened, red (?:gills?|fins?|skin|patch\\w*|streaks?|marks?),
    swell\\w+, swollen, bloat\\w*, dropsy, bleed\\w*, blood\\w*, ha?emorrhag\\w*, (?:stringy|white|stringy white) (?:poops?|poo|fa?eces|waste),
    discolou?r\\w*, pale, paler, darken\\w*, darker, blanch\\w*, bleached, fad(?:ed|ing|es), signs?, symptoms?, problems?, issues?, trouble, distress\\w*, stress\\w*,
    concerns?, letharg\\w+, anorexia, deaths?, dead, died, dies, dying, doa, loss(?:es)?(?: of ${own}\\w+)?, mort(?:s|ality|alities), casualt\\w+,
    difficult\\w*, worms?`,
  ],
  [
    'bad',
    `listless\\w*, lifeless, slugg\\w+, inactiv\\w+, motionless, apathetic, subdued, withdrawn, weak\\w*, limp, dull, drows\\w+, dazed, disorient\\w+,
    dizz\\w+, tilt(?:s|ed|ing), wobbl\\w+, unsteady, unbalanced, uninterested, disinterested, starv\\w+, skinny, thin, emaciated, sunken, pinched, sick\\w*, ill, unwell, poorly, bad, badly,
    terrible, awful, horrible, wors\\w+, deteriorat\\w+, declin\\w+, struggl\\w+, suffer\\w*, unhappy, miserable, sad, moribund, comatose, unresponsive,
    wrong, odd\\w*, weird\\w*, strange\\w*, erratic\\w*, abnormal\\w*, unusual\\w*, funny, concerning, worr\\w+, irregular\\w*, labou?r\\w*, skittish, panick\\w*,
    spook\\w*, startl\\w+, frantic\\w*, agitat\\w+, restless, nervous, upside down, sideways, vertical\\w*, (?:head|nose) (?:down|up), in circles, circling,
    on ${own}sides?, on one side, lays?, laying, lies, lying, listing, float(?:s|ing), tumbl\\w+, roll(?:s|ing), frayed, ragged, torn, damaged, split, eroded,
    pumping, flar(?:ed|ing), bulging, missing, gills? (?:are |is )?red, hunched, pacing, glass surf\\w*, crazy, symptomatic`,
  ],
  [
    'place',
    `(?:at|on|near|by|along|to) (?:the )?(?:very )?(?:surface|top|bottom|substrate|floor), bottom, surface, in (?:a |the |one )?corners?, against (?:the )?glass,
    in (?:the )?(?:flow|current|outflow), (?:near|at|in|by|against|in front of) (?:the )?(?:power ?head|pump|filter|outlet|wave ?maker|air ?stone|bubbler|return)`,
  ],
  [
    'breathBad',
    `(?:\\d+(?:[.,]\\d+)? ?(?:x|times)|twice|double|triple|above|over)(?: the)? (?:normal|usual), heav\\w+, fast\\w*, rapid\\w*, quick\\w*, hard, harder, shallow, deep\\w*, elevated, high, higher, increas\\w+, up, accelerated, strain\\w*, excessive\\w*`,
  ],
  ['slow', `slow, slowly`],
  ['slower', `slower, slows, slowed, slowing, calmer, easier`],
  [
    'feeds',
    `eat, eats, eating, ate, eaten, eatin, eatign, etaing, feeds?, feeding, graz(?:es|ed|ing), munch\\w*, appetites?, hungry, hungrily, ravenous\\w*, greed(?:y|ily),
    begs?, begging, (?:took|tak(?:es?|ing|en)|accept\\w*|touch\\w*|going for|went for) ${own}${food}, ${food} (?:accepted|taken)`,
  ],
  [
    'fine',
    `normal, normally, fine, ok, okay, good, well, great, perfect\\w*, excellent, usual, unaffected, clear, steady, regular, calm, easy, easily, nice, nicely`,
  ],
  ['seen', `seen, visible, visibly, showing, spotted, noticed, observed, present, evident, apparent`],
  ['past', `was, were, had been, earlier, yesterday, last night, previously, before, this morning`],
  ['now', `now, today, tonight, currently, again, finally, this (?:afternoon|evening)`],
  ['still', `still, continu\\w+, remain\\w*, ongoing, persist\\w*, keeps`],
  ['some', `most(?: of (?:the|them))?, some(?: of (?:the|them))?, few, half, only`],
  ['less', `little`],
  [
    'water',
    `water, copper, cu, ammonia, nh3, nh4, nitrites?, nitrates?, ph, salinity, sg, temp, temps, temperature, parameters?, params?, levels?, oxygen, o2,
    filters?, heaters?, skimmers?, chemistry`,
  ],
  ['fish', fish],
  [
    'filler',
    `${food}, an?, the, this, that, these, those, it, its, he, she, his, her, him, they, them, their, we, i, im, my, all, both, each, every, everyone, everybody,
    everything, any, anymore, one, two, three, four, five, fish, fishes, tank, qt, is, are, am, be, been, being, has, have, had, does, do, did, to, of, in, on, at, by, for,
    from, as, with, about, around, out, up, off, over, too, so, very, really, quite, just, much, many, or, yet, report, fed, test, tests, tested, testing, dos(?:e|es|ed|ing),
    changed?, changes, wc, pwc, added, raised?, raising, lowered, lowering, cleaned, cleaning, siphon\\w*, days?, hours?, hrs?, am, pm, times?, weeks?, morning, evening,
    night, noon, checked, looked, looks?, looking, seems?, appears?, acts?, acting, acted, behav\\w+, moved, photos?, lights?, ml, mg, ppm, flush\\w*, chas\\w+, nips?,
    nipping, bull(?:y|ied|ying), started, began, came, back, returned`,
  ],
];
