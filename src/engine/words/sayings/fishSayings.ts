import { fish, invertebrate, count } from './fishWords.js';
import { said, type Saying } from './saying.js';

const notFish =
  /\b(?:phone|batt(?:ery)?|meter|heater|pump|light|bulb|filter|laptop|screen|motor|timer|skimmer|chiller|wifi|internet|car|probe|pen|printer|outlet|socket|stick|fan|blower|circuit|snails?|shrimps?|crabs?|hermits?|corals?|rock|frags?|worms?|algae|bacteria|parasites?|cycle|spots? behind|flukes)\b/;
const turnsOfPhrase =
  /\bdead (?:spots?|zones?|space|lin[ek]|weight|flow|calm|end|tired|cent(?:er|re)|on my|leg|coral|rock|sure|easy|slow|skin|heads?|bolt|air)\b|\bover my dead\b|\bhalf dead\b|\bdying to\b|\bdead (?:bed|beat)\b|\bkilled (?:the lights?|an? hour|it at|time|the power)|\bto die for\b|\bdeathly\b|\bdrop dead gorgeous\b|\bdeadline\b|\bsudden death\b/;
const notFishMoved =
  /\buv\b|canister|heater|pump|skimmer|probe|bottle|carbon|doser|\bnet (?:from|went)|release of|acclimation box|\bout of (?:the )?bag|out and about|\bouts?ide\b/;
const boxes =
  'bags?|box(?:es)?|cartons?|sacks?|opening|shipping|mail|courier|transport|delivery|transit|parcel|arrival';

const some = `(?:(?:the|my|his|her|all|both|${count}|new|last|other|remaining|\\d+ ?x|rest of the|\\+\\d+) )*`;
const dest =
  '(?:display|dt|reef|observation|obs|isolation|sump|main tank|sales|pond|own(?:er)?|another tank|store|shop floor|buyer|customer|other tank|clean tank)';
const inVerbs =
  '(?:put|added|adding|dropped|introduced|moved|transferred|placed|released|dumped|plopped|chucked|popped|snuck|slipped|threw|tossed|acclimated|stocked|stuck)';

export const fishSayings: readonly Saying[] = [
  said(
    'dead on arrival',
    `\\bdoas?\\b|\\bd\\.o\\.a\\b|\\b(?:dead|died|stiffs?|floaters?|perished|gone|lost|expired) (?:[a-z']+ ){0,3}(?:arrival|opening|transit|transport|${boxes})\\b|
    \\b(?:arrived?|came|come|comes) (?:already |in )?dead|\\bdead when (?:the |i |we )?(?:[a-z]+ ){0,3}(?:arriv|open|unpack|came|${boxes})|\\b(?:bag|box|carton|sack)[a-z]* (?:[a-z0-9]+ ){0,5}dead\\b|\\bstiffs?\\b(?=.{0,20}\\b(?:${boxes})\\b)|\\barrived? dead`,
  ),
  said('dead on arrival', `\\b(?:dead|stiff|died|floating belly up)\\b`, {
    beside: new RegExp(
      `\\b(?:${boxes})\\b.{0,30}\\b(?:dead|stiff)|\\b(?:dead|stiff|died)\\b.{0,30}\\b(?:in|on|when)\\b.{0,14}\\b(?:${boxes}|open|arriv)|never came out of the bag`,
    ),
    unless: turnsOfPhrase,
  }),
  said(
    'deaths',
    `\\b(?:stone |found )?dead\\b|\\bdied\\b|\\bdies\\b|\\bdie\\b|\\bdeaths?\\b|\\bpassed(?: away| in the night| overnight| this (?:morning|am)| last night)|\\bfloating (?:this|upside|dead|by|on)|\\bfound (?:him|her|it|them) (?:floating|dried|stiff|on the floor|outside)|\\bjumped (?:out|ship)|\\bdried up on\\b|\\bno longer with us\\b|\\bdeceased\\b|\\bmortalit(?:y|ies)\\b|\\bmorts?\\b|\\bcasualt(?:y|ies)\\b|\\bfloaters?\\b|\\bbelly[ -]?up\\b|\\bstiffs?\\b|\\brip\\b|\\beuthani[sz]ed\\b|\\bdid(?:n't| not) make it\\b|\\b(?:is|are|was) gone\\b(?= (?:floating|overnight|too))|\\bcroaked\\b|\\bperished\\b|\\bcarcass(?:es)?\\b|\\bcorpses?\\b|\\bbodies\\b|\\bwiped out\\b|\\bwiped\\b(?=\\s*$)|\\bkilled (?:nobody|my|the fish|a fish|one|two|all)\\b|\\bkicked the bucket\\b|\\bput (?:it|him|her|them) down\\b|\\bbought the farm\\b`,
    {
      unless: new RegExp(
        `${turnsOfPhrase.source}|${notFish.source.replace('\\b(?:', '\\b(?:')}(?=.{0,14}\\b(?:dead|died|dies|dying|die)\\b)|\\bdead (?:snail|shrimp|crab|hermit|coral|rock|worm)|until (?:he|she|it|they) dies?`,
      ),
    },
  ),
  said(
    'deaths',
    `\\b(?:lost|lose|loosed?|losing|loss of) (?:(?:the|my|our|all|another|${count}|\\d+ of(?: \\d+)?)[ ]?)*(?:${fish}|more|overnight|o/n|this|last|in the|of \\d+)|\\blost (?:the|my|our) (?:[a-z]+ ){0,4}(?:${fish})|\\blost ${count}(?= |$)(?! (?:[a-z]+ )?(?:cm|days?|hours?|h|l|ml|gal|litres?|liters?|inch(?:es)?|degrees?|kg|g|lbs?)\\b)|\\b(?:no|nil|zero|0|without(?: any)?|\\d+|one|two|three) loss(?:es)?\\b|\\bnone lost\\b|\\blost nobody\\b`,
  ),
  said(
    'deaths',
    `\\b${count}(?: more)? (?:[a-z]+ )?(?:are |r )?gone (?:since|overnight|this|last|o/n|by)\\b|\\bhalf the tank\\b(?=.*\\bdead)|\\b\\d+ (?:down|to go)\\b(?= (?:overnight|since|today))`,
  ),
  said(
    'deaths',
    `\\b(?:everybody|everyone|all(?: of them)?) (?:made it|alive|still (?:here|alive|with us))|\\ball present\\b|\\bfull count\\b|\\bclean count\\b|\\ball (?:\\d+ )?alive\\b`,
    { polarity: 'denied' },
  ),
  ...arrivals(),
  ...departures(),
  said('invertebrates', `\\b${invertebrate}\\b`, {
    unless:
      /\bfed\b|\bfeed|\b(?:eat|ate|eating|tast|took|begs?)\w*\b.{0,20}\b(?:shrimp|clam|mussel|krill)|shrimp (?:flakes?|gob(?:y|ies)|pellets?|food|meat|mix)|\b(?:brine|mysis|frozen|chopped|dried|cooked|raw|gut-loaded|enriched) shrimp|clam on|crab meat|fed |\bgob(?:y|ies)\b.{0,12}not shrimp|coral (?:beaut|gravel|sand|rubble|skeleton|row|dip|hind|cod|grouper|catshark|banded(?! shrimp))|beaut|dead coral|moved corals|soaked in|gets? his shrimp|coral trout|crab-eye|dusky jawfish|brine|anemone ?fish|crab(?:by|s? claws)|clam(?:my|ped)|sponge filter|oyster shell/,
  }),
];

function arrivals(): readonly Saying[] {
  return [
    said(
      'fish in',
      `\\bnew (?:fish|arrivals?|admissions?)\\b(?! (?:food|store|tank|list|is eating))|\\bnewcomers?\\b|\\bnew admission\\b|\\badmissions? (?:of|:)|\\btransfer(?:red)? in\\b|\\bintake\\b(?= *:| of)|\\bfish (?:was |were )?(?:added|put in)\\b|\\bnobody new\\b|\\bnothing in\\b`,
    ),
    said(
      'fish in',
      `\\b${inVerbs} (?:in )?${some}(?:[a-z']+ ){0,2}${fish}(?: (?:pair|pr))?\\b(?! (?:food|out\\b))(?=[^,;]{0,26}?\\b(?:in\\b|into|inside|with|today|on top|$|\\())|\\b(?:bought|got|brought home|picked up|came home(?: from the shop)? with|received|took in|rescued|adopted) ${some}(?:[a-z']+ ){0,2}${fish}`,
      {
        unless:
          /\bout of (?:the )?(?:qt|quarantine)|\b(?:to|into) (?:the |my )?(?:display|dt|reef|sump|acclimation box|breeder|obs)|holding|food|\bfed\b/,
      },
    ),
    said(
      'fish in',
      `\\b${some}(?:[a-z']+ ){0,2}${fish}\\b(?=.{0,40}\\b(?:off the (?:truck|plane)|into (?:[a-z]+ )?(?:${'b4|qt|the qt|cu'})|live into|added|arrived|(?:is|are|went|goes|go|live|lives|put|moved|coming) (?:also )?in (?:with|here|the (?:qt|quaran))|in a breeder))`,
      { unless: /\bfood|\bout of\b.*\b(?:qt)\b|shrimp|snail|crab|\bbit\b|\bate\b|^.{0,20}hang/ },
    ),
    said(
      'fish in',
      `\\b(?:from|of) [a-z0-9]+(?:'s)? into [a-z0-9]+: ${count}(?: [a-z]+){1,3}|\\bcoming an? (?:[a-z]+ ){0,2}${fish}|\\blive in\\b(?! (?:the wild|rock|mud))|\\b(?:he|she|it|they)(?:'s| is| are) in (?:a breeder|with the others|with them)|\\bput also in\\b|\\bi put (?:also )?in (?:the )?quaran\\w+|\\b${fish} in (?:7|seven|qt)\\b(?= for)|\\bboxed in \\d+`,
    ),
    said(
      'fish in',
      `\\b${fish} (?:went|going|goes|gone|came|put) in\\b(?!to (?:the )?(?:display|dt|reef|sump|obs))|(?:^|[\\s,])\\+ ?\\d+ (?:[a-z]+ )?${fish}|\\bput (?:him|her|it|them) in(?:to|side)?(?: the)? (?:tank|qt|quaran\\w+|system|with)|\\bjoined (?:the|by)\\b`,
      { unless: /\bdoa|spots?\b|food|\bdead\b/ },
    ),
  ];
}

function departures(): readonly Saying[] {
  return [
    said(
      'fish out',
      `\\b(?:moved?|mvd|transferred|relocated|took|taken|takes?|pulled|caught|netted|swapped|sold|sell|released|discharged?|discharges|paroled|rehomed|shipped|traded|gave away|went|go|goes|gone) ${some}(?:out )?(?:[a-z#0-9]+ ){0,3}?(?:${fish})?(?: [a-z]+){0,2}? ?(?:->|to|into|in|over to|out|out to) (?:the |my |big |his )*(?:[a-z]+ )?(?:${dest})\\b|\\b(?:all|every|\\d+|the|all \\d+)? ?(?:fish(?:e?s)?|${fish}) (?:all )?(?:were |was |are )?(?:moved|transferred|relocated|sold|discharged|paroled|swapped|mvd|released)\\b|\\bfish (?:removed|out)\\b`,
      { unless: notFishMoved },
    ),
    said(
      'fish out',
      `\\b(?:took|pulled|caught|netted|let|letting) ${some}${fish} out\\b|\\b${fish} (?:out|mvd|moved|relocated|transferred|swapped)\\b(?! of (?:sorts|the bag|hiding))|\\b(?:fish|pt|pts) ?#?\\d+(?: \\+ \\d+)? (?:relocated|transferred|moved|out|discharged)|\\bdischarge (?:pts?|fish|of)\\b|\\b(?:two|three|four|\\d+|${count}) sold\\b|\\bsold (?:off )?${some}${fish}|\\ball ${count} over to\\b|\\bfishe?s? go out\\b|\\bwent into the (?:display|reef|dt)|\\bmoved (?:all |the |every )*fish\\b|\\b(?:or|and) out of\\b|\\bbagged nothing|\\bparoled to\\b|\\bswapped: (?:[a-z]+ ){1,4}|\\bmove the fish\\b|\\bfish moved\\b`,
      { unless: notFishMoved },
    ),
  ];
}
