import { said, type Saying } from './saying.js';

const surface = '(?:surface|surf|top|up top|at the top|air line|waterline)';
const all =
  "(?:all|every(?:one|body|thing)?(?: (?:last one|single one|fish))?|each|whole (?:tank|lot|rack|bunch)|the lot|they'?re all|both and all)";
const food = '(?:food|pellets?|mysis|flakes?|nori|chow|brine|meals?|feed)';

/** Signs of illness, of the four kinds, and of health. */
export const signSayings: readonly Saying[] = [
  said(
    'all fish at the surface',
    `\\b${all}\\b[^.;,:]{0,34}?\\b(?:at|on|up|to|near|under|hang\\w*|gasp\\w*|suck\\w*)\\b[^.;,:]{0,22}?\\b${surface}\\b|\\b${all}\\b[^.;:]{0,20}\\b(?:gasping|sucking (?:air|wind)|gulping(?: air)?|piping)\\b|\\bnone at surf\\w*|\\bno one is on the surface|\\bsurface respiration\\b|\\bfish (?:all )?(?:at|hanging at|gasping at) the (?:surface|top)\\b`,
    { unless: /top[- ]?(?:off|up)|eating at the top|begging|for (?:the )?(?:food|flakes)|top shape|on top of/ },
  ),
  said(
    'disease',
    `\\bvelvet\\b(?! ?(?:hoodie|curtain|glove|crab|angel|wrasse|fairy|ribbon|dress|rope|sofa))|\\b(?:amyl)?oodinium\\b|\\bich\\b|\\bick\\b|\\bmarine ich\\b|\\bitch (?:is|dies|again|on|back)|\\bitch\\b(?=.{0,14}\\b(?:again|back|spots)\\b)|\\bthe itch\\b|\\bwhite ?(?:spots?|points?) (?:disease|at|on the)\\b|\\bwhite spot\\b|\\bwhite point\\b|\\bcrypt(?:ocaryon)?(?: irritans)?\\b|\\bbrook(?:lynella)?\\b|\\buronema\\b|\\btrichodina\\b|\\blymph(?:ocystis)?\\b|\\bciliates?\\b|\\bno disease\\b`,
    { unless: /\bblack velvet|velvety|red velvet|velvet (?:hoodie|dress)|brook trout|babbling/ },
  ),
  said(
    'signs: not copper',
    `\\bskin\\b[^.;,]{0,26}?\\b(?:hang\\w*|off|peel\\w*|shed\\w*|cloud\\w*|in (?:rags|strips|shreds|tatters)|strips|flak\\w*|slough\\w*|goes off|loose|lifting|com(?:es|ing) away)\\b|\\b(?:coats?|slime coat)\\b[^.;,]{0,20}\\b(?:off|peel\\w*|shed\\w*|com(?:es|ing))\\b|\\b(?:excess |white |much |thick |lots of |heavy )*(?:slime|slimy(?: coat)?|mucus|mucous)\\b(?! (?:eel|blenny|head))|\\bslim(?:ing|ed)(?: up)?\\b|\\bslough\\w*|\\bsores?\\b|\\bulcers?\\b|\\bwounds?\\b|\\blesions?\\b(?! pale)|\\bred (?:sores?|patch(?:es)?|streaks?|blotch(?:es)?)\\b|\\bopen (?:flesh|wound)\\b|\\bflukes?\\b|\\b(?:little |small |white |tiny |intestinal )*worms?\\b(?=[^.;]{0,20}\\b(?:in|from|wav|hang|poop|on|off|gill))|\\bblack (?:spots|spot disease|ich|dots)\\b|\\bturbellarian\\w*|\\bskin (?:coming|peeling|hanging)|\\bsheet(?:s|ing) of (?:slime|skin)|\\bpeeling\\b(?! paint)|\\bbrook\\b(?=: slime)`,
    {
      unless:
        /\bblood ?worms?|black ?worms?|white worms|feather|coco worm|fed|heart ?worm|bristle|worms? (?:for|as) (?:food|dinner|treat)|mandarin.{0,10}slime|no (?:gross )?lesions/,
    },
  ),
  said(
    'signs: disease',
    `\\b(?:(?:white |gold(?:en)? |tiny |few |some |more |new |grainy |salt |\\d+ )*(?:spots?|dots?|specks?|grains)|(?:(?:white |tiny |few |some |more |new |salt |\\d+ )+)points?)\\b(?! ?(?:tests?|checks?|feed|foxface|angel|tang|puffer|grouper|rabbit|damsel|on the (?:glass|meter|test|map)|behind|treat))|\\bpowdered sugar\\b|\\blike salt\\b|\\bsalt(?:ed|y)? all over\\b|\\bsalt (?:grains|all)|\\bsugar(?:ed|y)?\\b(?= all| on|-)|\\bdust(?:y|ed|ing)?\\b(?! (?:cover|filter|cap|the|off the|on the (?:lid|light|glass)))|\\bflash(?:es|ed|ing)?\\b(?!er|light)|\\bscratch(?:es|ed|ing)?\\b(?! (?:on the (?:glass|acrylic|heater)|and dent|head))|\\bscrac?h(?:e|ing)\\b|\\bglanc(?:es|ed|ing)\\b(?! (?:at|over) )|\\bflick(?:s|ed|ing)\\b(?!er)|\\brubb?(?:s|ed|ing)\\b(?! (?:my|alcohol))|\\bprurit\\w+|\\bitch(?:y|ing)\\b|\\bhitting the (?:pipes?|sand|tubes?|walls?)|\\bcoin with the dust\\b`,
    {
      unless:
        /\bdead spots?|one[- ]spot foxface|spots? on the (?:glass|meter|lens|floor|carpet)|hot ?spot|spot check|spot on\b|other spot|water spots|sweet ?spot|parking spot|dust(?:ed|ing)? (?:the|off)|flashing (?:light|red|led|display)|light.{0,14}flash|camera|meter.{0,10}flash|blind spot|-spots?\b|\bpoints? (?:to|out|of|is that)|good point|point to|set ?point|decimal|g-?spot|black spots|one spot\b/,
    },
  ),
  said(
    'signs: intolerance',
    `\\b(?:not|n't|won'?t|wont|never|no longer|nobody|none|stopped|quit|still not|hasn'?t|refus\\w+(?: to)?|ceased|hardly|barely) (?:been |yet |really |even |to )*(?:eat(?:ing|en|s)?|ate|feed(?:ing|s)?|touch(?:ed|ing)? (?:his |her |the |its )?${food}|look at (?:the )?${food}|tak(?:e|en|ing) (?:any )?${food}|interested in (?:the )?${food})\\b|\\bwon'?t look at ${food}|\\b(?:went |gone |still |is |been )?off (?:his |her |their |its |the )?(?:${food}|feed(?:ing)?|chow)\\b|\\b(?:no|zero|lost|poor|without) (?:appetite|appetit|interest in ${food}|feeding response)\\b|\\bno ${food} (?:since|for|taken|in|today)\\b|\\brefus\\w+ (?:all )?${food}|\\bfeeding refused\\b|\\b(?:ignor|reject|spit|spat)\\w* (?:his |her |their |the |out )*${food}|\\banorexi[ac]\\b|\\bhunger strike\\b|\\bfasting\\b|\\bskipped (?:meals|two|three)\\b|\\binappeten\\w+|\\bnot eating\\b`,
    { ownsNegation: true },
  ),
  said(
    'signs: intolerance',
    `\\bletharg\\w+|\\blistless\\w*|\\brecumbent\\b|\\bmoribund\\b|\\bl(?:ying|aying|ies|ays|ay|ie) (?:flat |down |still )?(?:on|at|in) (?:his|her|its|the|their|a)(?: |$)(?:side|bottom|floor|sand|deck|glass|gravel|corner)?|\\bflat (?:out )?on the (?:deck|bottom|floor)\\b|\\bgasp\\w*|\\bpanting?\\b|\\bpant like\\b|\\bhuff\\w+|\\bgulping\\b|\\bhyperventilat\\w+|\\b(?:breath\\w*|resp(?:iration|s)?|resps|gill(?:s|ing)?(?: (?:rate|movement))?|ventilat\\w+|opercul\\w+(?: rate)?)\\b[^.;,]{0,16}?\\b(?:hard|heav\\w+|hvy|fast|rapid\\w*|quick\\w*|labou?red|elevated|high|up|pumping|going|double|1[2-9]\\d|2\\d\\d|flar\\w*|like crazy|like mad)\\b|\\b(?:hard|heavy|hvy|fast|rapid|labou?red|quick|shallow) (?:breath\\w*|resp\\w*|gill\\w*)\\b|\\brr (?:1[2-9]\\d|2\\d\\d)\\b|\\bdarting\\b|\\bhang(?:s|ing)? (?:at|in|by|near) (?:the )?(?:outflow|flow|return|surface|filter|top|power ?head|air ?stone)\\b|\\bsuck(?:s|ing) (?:air|wind)\\b|\\bsluggish\\b|\\bhid(?:es|ing) and (?:won't|not|doesn't)|\\bswimming (?:in circles|erratically|upside down|sideways)|\\bopercular flare\\b|\\bdyspn\\w+|\\btachypn\\w+|\\bcan'?t swim\\b|\\blisting\\b|\\bon (?:his|her|its) side\\b|\\bdepressed\\b|\\bnot right\\b|\\bclamped\\b`,
    {
      unless:
        /\bsleep|asleep|lying about|how wrasses|breathing (?:easy|normal\w*|slow)|\bgasping at the price|meter|normal|stuff lying|hoses? lying/,
    },
  ),
  said(
    'signs: intolerance',
    `\\b(?:all|both|everyone|everybody|they|he|she|\\d+\\/\\d+)? ?(?:eat(?:s|ing)? (?:well|good|great|like (?:a )?pigs?|again|everything)|ate (?:all|well|everything|it all|like|on day)|eating (?:well|fine|normal\\w*|good))\\b|\\b(?:all|everyone|everybody|every fish|everything|fish|others?|rest) (?:is |are |still )*(?:eating|fed|ate|active|fine|normal|good|swimming|happy|well|lively)\\b|\\bfat and happy\\b|\\bfat as butter\\b|\\bappetite (?:5\\/5|good|normal|fine|ok|great|is good|strong)\\b|\\bgood appetite\\b|\\bfeeding response (?:\\d+\\/\\d+|good|strong|normal|great)\\b|\\bbar\\b|\\beupn\\w+|\\bswim good\\b|\\beat good\\b|\\bcolou?r good\\b|\\bgood colou?r\\b|\\bin the pink\\b|\\bripped it apart\\b|\\bthey like(?:d)?(?: it)?\\b|\\bpigs as usual\\b|\\bate all of it\\b|\\bbegging\\b|\\blively\\b|\\blook(?:s|ing)? (?:good|fine|ok|great|well|healthy)\\b|\\bmine look ok\\b|\\bno (?:signs|symptoms)\\b|\\basymptomatic\\b|\\beating\\b(?=\\s*$)`,
    { polarity: 'denied', unless: /\bnot\b|n't|stopped|never|refus|fed up/ },
  ),
  said(
    'signs: intolerance',
    `\\b(?:eating again|resumed (?:feeding|eating)|(?:appetite?|appetit)(?: is| has)? (?:come |came )?back|back on (?:food|his food|feed)|took (?:nori|food|mysis|pellets?)|started (?:eating|to eat)|is eating now|eats again|ate again|breathing (?:easier|normal\\w*|slower|better) (?:now|again)|recovered|then normal|ate like a pig)\\b`,
    { polarity: 'ended' },
  ),
  said(
    'signs: other',
    `\\b(?:torn|ripped|split|ragged|frayed|tattered|bitten|nipped|damaged|broke(?:n)?|kinda ripped|shredded|chewed)\\b[^.;,]{0,20}?\\b(?:fins?|tails?|membranes?|dorsal|caudal|pectoral)\\b|\\b(?:fins?|tails?|membranes?|dorsal|caudal|pectoral)\\b[^.;,]{0,20}?\\b(?:torn|ripped|split|ragged|frayed|tattered|bitten|nipped|damaged|broke(?:n)?|rot\\w*|shredded|chewed)\\b|\\bfin rot\\b|\\btail rot\\b|\\bcloudy(?: left| right)? eyes?\\b|\\beyes? (?:is |are )?(?:a bit )?(?:cloudy|milky|hazy)\\b|\\bpop-?eye\\w*|\\bpop eye|\\bexophthalm\\w+|\\bcorneal\\b|\\bstringy\\b|\\bwhite (?:poop|poo|fa?eces)\\b|\\bbull(?:y|ied|ying|ies)\\b|\\bchas(?:es|ed|ing)\\b|\\baggress\\w+|\\bnipp(?:ed|ing)\\b|\\bbit(?:es?|ing|ten)? (?:him|her|it|the other|each other)\\b|\\b(?:trig|tang|fish) bites\\b|\\bbumped himself\\b|\\bscrapes? on (?:his|her|the) (?:side|nose|flank)`,
    { unless: /\bchasing (?:the )?(?:food|flakes|ph|level|numbers)|bottle/ },
  ),
];
