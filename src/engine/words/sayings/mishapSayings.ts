import { said, type Saying } from './saying.js';

const off =
  "(?:off|out|stopped|stops|stop|dead|died|failed|fail(?:s|ing|ure)?|seized|broke(?:n)?|quit|snapped|tripped|fell|down|unplugged|not (?:running|working|spinning|turning)|isn't (?:running|working)|won't (?:start|run)|went|cut|kaput|jammed|clogged|burn(?:t|ed) out|gave up|packed (?:in|up)|make no more|makes no|silent|no more air|disconnected|conked)";
const pumps =
  '(?:(?:circulation|return|air|main|water|filter|wave ?maker|power ?head|sump|canister|hob|loop|feed) ?pumps?|air ?pumps?|pumps?|power ?heads?|wave ?makers?|(?:sponge |hang on |canister |internal )?filters?|canister|blower(?: belt)?|air ?stones?|air ?line|impeller|compressor|aeration|circulation|airlift|skimmer)';
const power =
  '(?:power|pwr|powers|electric(?:ity|s|al)?|mains|current|breaker(?: for the fish room)?|gfci|rcd|fuse|outlet|power ?strip|grid)';
const heater =
  "(?:heaters?(?: of [a-z0-9]+| \\d)?|heating|thermostat(?: relay)?|titanium(?: stick)?(?:'s)?|(?:immersion )?heat(?:er|ing) element|stick's|temp(?:erature)? controller|inkbird-like)";
const broken =
  "(?:broke(?:n)?|dead|died|stuck(?: on| off)?|crack(?:ed|s)?|exploded|kaput|popped|burst|shatter\\w*|won't|will not|wont|welded|fail(?:ed|s|ure)?|not (?:working|heating|switching)|isn't (?:working|heating)|doesn't (?:work|heat|come on)|stopped|quit|fried|shorted|exposed|tingl\\w+|shock\\w*|off and won't|bust(?:ed)?|gone|malfunction\\w*|packed (?:in|up)|gave up|melted|smok\\w+|faulty|defective|cooked|fell out)";

/** What goes wrong with the tank, the dose and the tests. */
export const mishapSayings: readonly Saying[] = [
  said(
    'power or pump off',
    `\\b${power}(?:'s)? (?:is |was |has |has been |went |had |just )*(?:${off}|no)\\b|\\bno (?:power|current|electric\\w*|mains|air|flow|circulation|aeration)\\b(?! (?:in the (?:bag|line) |stone))|\\b(?:power|pwr|electric\\w*) ?(?:cut|outage|failure|loss)s?\\b|\\bblack ?out\\b|\\bpower ?cuts?\\b|\\boutage\\b|\\beverything (?:dark|off|dead|silent)\\b|\\bflow 0\\b|\\bpower went\\b|\\blost power\\b`,
    {
      unless:
        /\bheater\b|no air ?stone|air con|power cuts? tonight|no (?:power|electric\w*) (?:cuts?|outages?|failures?)/,
      ownsNegation: true,
    },
  ),
  said(
    'power or pump off',
    `\\b${pumps}(?:'s)? (?:[a-z]+ )?(?:is |was |has |has been |went |had |just |got |found )*${off}\\b|\\b(?:unplugged|forgot to (?:plug|turn|switch)|left off|turned off|switched off|knocked out) (?:[a-z']+ ){0,4}?${pumps}|\\b${pumps}[^.;,]{0,18}\\b(?:impeller|belt|motor) (?:seized|snapped|broke\\w*|jammed)`,
    {
      ownsNegation: true,
      unless: /\bskimmer (?:off )?for feeding|media|dosing|doser|\bcarbon|filter (?:sock|floss|pad)|\bdosing pump/,
    },
  ),
  said('power or pump off', `\\bups\\b|\\bnever missed a bubble\\b|\\bair on\\b`, {
    polarity: 'denied',
    ownsNegation: true,
  }),
  said(
    'broken heater',
    `\\b${heater}(?:'s)?[^.;,]{0,20}?\\b${broken}|\\bstuck heater|\\b(?:broken|cracked|dead|faulty|busted) heater|\\bheater: replace|\\bnew heater\\b|\\bboiled\\b(?=.{0,20}tank)|\\breplace (?:the )?heater|\\bglass everywhere\\b`,
    { unless: /stopped (?:by|at|to)|shop (?:is|closed)/, ownsNegation: true },
  ),
  said(
    'broken heater',
    `\\bheaters?\\b[^.;]{0,46}?\\b(?:ok|okay|fine|normal(?:ly)?|replaced|verified|working|works|26|25|all ticked)\\b`,
    { polarity: 'denied', unless: /\breplaced? before|won't|stuck|new one|dead|exploded/ },
  ),
  said(
    'leak',
    `\\b(?:spill?t?|spilled|bag spill|splashed?)\\b|\\bdry as a bone\\b|\\bdry now\\b|\\bvats fine\\b|\\bleak tray dry\\b`,
    { polarity: 'denied', beside: /floor|leak|wet|dry/ },
  ),
  said(
    'leak',
    `\\b(?:leaks?|leaking|leaked|leaky|weep(?:s|ing|ed)?|seep(?:s|ing|ed)?|drip(?:s|ping) (?:from|out of|onto) (?:the )?(?:seam|tank|bottom|corner|floor|bulkhead|union|stand)|burst(?: seam)?|seam (?:weep|gone|split|failed)|split seam|cracked (?:glass|pane|tank|panel)|crack in the (?:glass|tank|pane|bottom)|losing water|water (?:on|all over) the (?:floor|carpet)|wet (?:floor|carpet|stand|cabinet)|(?:carpet|floor|stand|cabinet|rug|tray)(?: is)? (?:wet|soaked|flooded|not dry)|wet the floor|flood(?:ed|ing)?|puddle|tank burst|water (?:under|beneath|around) the (?:tank|stand|qt)|level (?:is )?(?:dropping|falling|down \\d))\\b|\\bleak tray\\b|\\btank level down\\b|\\b[A-Za-z]+'s is down \\d+ ?(?:cm|in)\\b`,
    {
      unless:
        /\bspil|\bsplash|copper level|roof leaks over|hours? of leak|leak(?:ed)? (?:the news|to)|leaky? (?:gut)|mg\/l|ppm|skipped/,
    },
  ),
  said(
    'wrong bottle',
    `\\bwrong (?:bottle|jug|jar|container|product|solution|stock|syringe|stuff|one)\\b|\\b(?:used?|grabbed|drew|picked up|took|dosed|poured|pulled)\\b[^.;]{0,40}\\b(?:instead of|insted of|not|in place of|rather than|thinking (?:it was|its|it's|it were)|mistook)\\b[^.;]{0,40}?\\b(?:bottle|copper|cu|bluestone|stock|mg\\/ml|jug|white|right one|juice)\\b|\\bmix-?up\\b|\\b(?:mixed up|confused|swapped|mistook) (?:the |my |two )*(?:bottles?|stocks?|syringes?|solutions?|jugs?|labels?)\\b|\\bmislabell?ed (?:bottle|stock)|\\bgrabbed the (?:iodine|alk\\w*|calcium|mag\\w*)\\b|\\bin place of (?:cu|copper)\\b|\\b(?:alk\\w*|calcium|iodine|bleach|vinegar|magnesium|alkalinity) [^.;,]{0,24}\\binstead of copper\\b|\\bpart two went into\\b`,
    { unless: /\bnot meant|net instead|[\d.,]+ ?ml ins?te?a?d of [\d.,]+/, ownsNegation: true },
  ),
  said(
    'dosed twice',
    `\\b(?:dos(?:e|ed|ing)|gave|given|copper|cu|medicated|juiced)\\b[^.;]{0,40}?\\b(?:twice|two times|double|again to be sure|x ?2|2x|by both)\\b|\\b(?:double|two|second|2|both)(?: full| cu| copper)? dos(?:e|es|ed|ing)\\b(?! (?:of prazi|planned|a day))|\\bdoses? executed twice\\b|\\bso (?:yes )?two doses\\b|\\b\\d+ ?ml x ?2\\b|\\bwas double this day\\b|\\bdosed again\\b|\\bs?o thats 2\\b|\\bsame amount\\b|\\balso (?:dosed|gave (?:the )?(?:dose|copper))\\b|\\b(?:gave|gived|given|dosed)[^.;]{0,30}\\bagain\\b|\\bnight man juiced\\b|\\bhad its dose and\\b|\\balso the copper\\b|\\b(?:has |had )?(?:also )?dosed (?:it )?(?:too|as well|already)\\b|\\bboth (?:of us )?dosed\\b|\\bdosed x2\\b`,
    { unless: /\b(?:prazi|metro|food|fed|bacteria|a day|daily|per day|every)\b/ },
  ),
  said('dosed twice', `\\b(?:single|one dose only|disproved)\\b`, {
    polarity: 'denied',
    beside: /\bdos|double|x2|syringe/,
  }),
  said(
    'missed dose',
    `\\b(?:miss(?:ed)?|forgot|forget|forgotten|skipp?ed|skip|omitted|omit)\\b(?: (?:to|the|my|a|one|last|am|pm|evening|morning|night's|night|todays?|last night's|this|its|to give))*(?: (?:to )?(?:dos(?:e|es|ing)|copper|one all|cu))|\\b(?:am |pm |evening |morning )?dose (?:was |got )?(?:missed|forgotten|skipped|omitted|not given)\\b|\\bno dose (?:last|this|today|yesterday|for|given)\\b|\\bdose [^.;]{0,20}\\bnot given\\b|\\bmissed one\\b|\\bi forget the dose\\b`,
    { unless: /\bmiss a dose|remember if/ },
  ),
  said(
    'missed dose',
    `\\bno dose (?:last|this|today|yesterday|for|given)\\b|\\bdose [^.;]{0,20}\\bnot given\\b|\\b(?:didn'?t|did not) dose\\b`,
    { ownsNegation: true },
  ),
  said(
    'overdose',
    `\\b(?:over-?dos(?:e|ed|ing)|decimal (?:error|slip|point)|ten times|10x (?:dose|the dose|too much|over)|tenfold|10 times|misread a comma)\\b`,
  ),
  said(
    'overdose',
    `\\b(\\d+) ?(?:ml)? (?:instead|insted|in stead|and not|not) (?:of )?(?:\\d+[.,]\\d+|\\d)\\b|\\b\\d+ ?ml went in and not\\b`,
    { unless: /\bmg\/ml\b/, ownsNegation: true, beside: /\bml\b|copper|dose/ },
  ),
  said(
    'new kit or meter',
    `\\b(?:new|another|different|other|fresh|changed?|replacement|switched)(?: to)?(?: a| the)?(?: brand of| lot of| batch of| bottle of)*(?: copper| cu| hand\\w*)? ?(?:test(?: ?kits?)?(?! result)|kits?|meters?|checker|colorimeter|photometer|reagents?(?: lot)?|probe|lot|brand of test|test lot)\\b|\\bused? [a-z0-9]+ row meter\\b|\\busing this (?:one )?from now\\b|\\bmeter (?:batt )?(?:dead|died|broke\\w*)[^.;]{0,10}$|\\bnew lot of the (?:cu|copper) test\\b|\\b(?:row n|new|new lot) vs (?:the )?old\\b|\\bkits? vs\\b`,
    { unless: /\bammonia test|ph probe|nothing new|new test tomorrow|retest|lot \d/ },
  ),
];
