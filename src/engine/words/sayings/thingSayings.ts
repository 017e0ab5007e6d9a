import { said, type Saying } from './saying.js';

const drugs =
  'prazi(?:quantel)?|praziquantel|metro(?:nidazole?)?|metronidazole?|nitrofura\\w+|furan(?:ace)?|kanamycin|formalin|formaldehyde|formol|peroxide|h2o2|hydrogen peroxide|oxigen water|oxygen(?:ated)? water|antibiotics?|enrofloxacin|erythromycin|minocycline|doxycycline|tetracycline|oxytetracycline|neomycin|amoxicillin|cipro(?:floxacin)?|sulfa\\w*|methylene(?: blue)?|methyl(?:ene)? blue|chloroquine|quinine|levamisole|fenbendazole|malachite(?: green)?|acriflavine|levamisol|trichlorfon|epsom(?: salts?)?|dewormer|wormer|nitrofurazone|sulphadiazine|trimethoprim|cephalexin|gentamicin|florfenicol|dimetridazole|secnidazole|flubendazole|ivermectin';
const vessel = '(?:dips?|dipped|bath(?:s|ed)?|buckets?|jugs?|drip)';
const freshWater = '(?:fresh ?water|fw|sweet ?water|rodi?|freshwater)';

const absorbing =
  '(?:activated )?carbon(?!ate)(?: bag| pad| pouch)?|\\bcarb\\b|\\bgac\\b|charcoal|coal active|active coal|(?:live|dead|dry|lava|base) ?rocks?|\\brocks?\\b(?! ?(?:beaut|hind|cod|goby|blenn|wrasse|flagtail|bass|salt|solid))|\\bstones?\\b(?=[^.]{0,12}tank)|coral (?:sand|rubble|skeletons?|gravel)|dead corals?|aragonite|crushed (?:coral|shells?|aragonite)|\\bresins?\\b|\\bresine\\b|calcareous(?: \\w+)?|limestone|oyster shells?|cuttlebone|zeolite|(?:ceramic|bio|bio-|filter|new|phosphate|porous) ?media|phosphate (?:remover|pad)|gfo|(?:polymer|copper|cu|poly) (?:pads?|sponge|remover|eater(?: stuff)?|filter pad)|copper[- ]selective (?:resin|pad)|\\bpad\\b(?= (?:is )?in\\b)|\\bthe pad\\b|\\(pad\\)|chemi-?pure|bone char|purigen-like';

/** What is put into the water and taken out of it. */
export const thingSayings: readonly Saying[] = [
  said(
    'dip, bath or bucket',
    `\\b(?:${freshWater}|formalin|peroxide|h2o2|methylene blue|${drugs}|coral) ${vessel}\\b|\\b${vessel} (?:of|in|with) (?:${freshWater}|${drugs})|\\b(?:through|thru) the (?:[a-z]+ )?bucket\\b|\\b(?:dips?|dipped|bath|bathed)\\b(?=[^.;]{0,30}\\b(?:\\d+ ?(?:s|min|minutes?|minuts|h)|peroxide|formalin|flukes?|${freshWater})\\b)|\\b(?:bath|dip)\\b[^.;]{0,10}\\(?(?:peroxide|formalin|${freshWater})\\b`,
  ),
  said('medicines', `\\b(?:${drugs})\\b(?:[- ]soaked)?`, {
    unless: new RegExp(
      `\\b${vessel}\\b|biopsy|fixed in|\\blab\\b|wash|discard|sediment|\\bshelf\\b|expired|epsom salt bae|where to get|\\bbottle\\b`,
    ),
  }),
  said(
    'medicines',
    `\\bprices\\b(?=[^.;]{0,30}worms?)|\\b(?:medicated|soaked) (?:food|pellets?|flakes?|mysis)\\b(?!-)`,
    { unless: /garlic|vitamin|selco/ },
  ),
  said(
    'ammonia binder',
    `\\b(?:ammonia|ammo|amm|amonia|nh3|nitrogen)[- ]?(?:binders?|binding(?: conditioner)?|detoxifiers?|detox|removers?|neutrali[sz](?:ers?|ing)|killers?|lockers?|blockers?|eaters?|away)\\b|\\b(?:liquid|stuff|drops|product|something) (?:against|for|that (?:binds|locks)) (?:the )?(?:ammonia|amonia)\\b|\\b(?:detox(?:ifying)?|ammonia-?\\w* ?) ?(?:water )?conditioners?\\b|\\bconditioners?\\b(?=[^.;]{0,24}\\b(?:lock|bind|detox|neutral|ammonia))|\\bhydroxymethane ?sul(?:f|ph)[oi]nate\\b|\\b(?:sodium )?dithionite\\b|\\bbinder\\b(?! bottle)|\\bdetoxif(?:ier|ied)\\b(?: the)?(?: ammonia)?`,
  ),
  said('ammonia binder', `\\b(?:the |got |tap |water )*conditioners?\\b`, {
    unless: /\bair[- ]condition|hair|bio|clor|chlor|a\/c\b|ammonia[- ]?bind|detox/,
  }),
  said(
    'reducing dechlorinator',
    `\\bde-?chlor\\w*|\\b(?:sodium )?thiosul(?:f|ph)ate?\\b|\\bhypo crystals\\b|\\bascorbic(?: acid)?\\b|\\bsodium ascorbate\\b|\\bvitamin c\\b(?! soak)|\\bsodium (?:bi)?sul(?:f|ph)ite\\b|\\bmetabisul(?:f|ph)ite\\b|\\bchlor(?:ine|amine) (?:removers?|neutrali[sz]ers?|reducers?|killers?)\\b|\\bconditioners?\\b(?=[^.;]{0,24}\\bc(?:h)?lor)|\\bbio conditioners?\\b|\\bchlorine to kill\\b|\\bdechlor\\b`,
    { unless: /food|soaked in vitamin/ },
  ),
  said('absorbers', `(?:\\b(?:${absorbing})\\b|${'\\(pad\\)'})`, {
    unless:
      /\bcarbon(?: dioxide|ate| fib)|\bbicarbonate\b(?!.*aragonite)|rocks? (?:star|n roll|hard|bottom|the boat)|\brocking|solid as|pet rock|like a rock|bed ?rock|rock'?s? solid|rock dweller|behind the rock/,
  }),
  said(
    'UV and ozone',
    `\\bu\\.?v\\.?c?\\b(?:'s)?(?: (?:steril\\w+|lamp|light|thing))?|\\bozon\\w*|\\bultraviolet\\b|\\bsterili[sz]er\\b`,
  ),
  said(
    'a dosing pump',
    `\\bdosers?\\b|\\b(?:dosing|dosage|doser|peristaltic|metering) (?:pump|doser)\\b(?: channel \\d)?|\\bperistaltic\\b|\\bdrip rig\\b|\\bauto-?dos(?:er|ing)\\b|\\bsyringe (?:driver|pump)\\b|\\binfusion\\b|\\bpump's been dripping\\b|\\bdripp?(?:ing|er)? (?:copper|cu)\\b|\\bdose by pump\\b|\\bdrip(?:s)? (?:of|line|bag)\\b(?=.{0,20}copper)`,
  ),
  said(
    'copper taken out',
    `\\b(?:copper|cu|juice|bluestone)(?:'s)? (?:is |was |comes? |coming |being |to come )*(?:out|removed|removal|withdrawal|withdrawn|pulled|stripped|remover (?:in|went)|eater|pad (?:in|is))\\b(?! ?(?:of (?:the )?(?:bottle|stock)|by))|\\b(?:pull\\w*|took|take|taking|remov\\w*|strip\\w*|dump\\w*|getting) (?:out )?(?:all )?(?:the |of )?(?:copper|cu|juice)\\b(?! (?:bottle|test|sample|kit|tubing))(?: out)?|\\bcopper (?:stays?|stay) in(?:side)?\\b|\\bcu stays in\\b|\\bcopper (?:pad|sponge|eater|remover)\\b(?=[^.;]{0,20}\\b(?:in|filter|this)\\b)|\\b(?:take|took|comes?) (?:it )?out before\\b|\\bthe copper sponge\\b`,
  ),
];
