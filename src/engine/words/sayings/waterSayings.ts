import { said, type Saying } from './saying.js';

const ammonia = '(?:ammonia|ammonium|amonia|ammoniac|ammo|amm|nh3|nh4|tan)';
const indicator = '(?:indicator|badge|disc|disk|button|alert|stick-on|sticker|dot|patch|ammonia (?:thing|card)|thing)';
const notClean =
  '(?:green(?:ish)?|teal|blue(?:ish)?|lime|turquoise|aqua|olive|purple|pea soup|peas?|grass|dark(?:er|est)?|not yellow|off yellow|no longer yellow|toxic|alarm|harmful|unsafe|colou?r (?:of|like))';
const notDose =
  /\bbinder|\bdetox|neutrali[sz]|remover|killer|lock|conditioner|against|liquid tests?|main killer|cycle|bottled|source/;

/** What is said of the water itself. */
export const waterSayings: readonly Saying[] = [
  said(
    'ammonia',
    `\\b${indicator}\\b[^.]{0,40}?\\b${notClean}\\b|\\b${notClean}\\b[^.]{0,18}\\b(?:on|at) the ${indicator}`,
    { unless: /\bgreen (?:light|led)|stick(?:s|ing)? (?:must|should)|must stay/, ownsNegation: true },
  ),
  said('ammonia', `\\b(?:more (?:like|of) )?(?:a |some )?(?:sort of )?${notClean}(?: colou?r)?\\b`, {
    beside: new RegExp(`\\byellow\\b|\\b${ammonia}\\b|\\bbadge\\b`),
    unless: /\bgreen (?:light|led|water|algae|chromis)|yellow (?:tang|wrasse)|\bdark(?:er|ened)? (?:room|tank|light)/,
    ownsNegation: true,
  }),
  said('ammonia', `\\byellow\\b`, {
    polarity: 'denied',
    beside: new RegExp(`\\b${indicator}\\b|\\b${ammonia}\\b`),
    unless: /\bnot |n't|no longer|tang|wrasse|never/,
  }),
  said(
    'ammonia',
    `\\b${ammonia}\\b[^.,;]{0,24}?\\b(?:0|0[.,]0+|zero|nil|none|undetectable|fine|ok|okay|clear|normal|nothing|gone|resolved|good)\\b(?![.,]\\d)|\\b(?:zero|no|nil|0|0[.,]0+) ${ammonia}\\b`,
    { polarity: 'denied', unless: notDose, ownsNegation: true },
  ),
  said(
    'ammonia',
    `\\b${ammonia}\\b[^.,;]{0,20}?(?:\\bis |\\bat |\\breads? |[=:] ?|\\b|\\s)(?:[1-9]\\d*(?:[.,]\\d+)?|0[.,][2-9]\\d*)(?: ?(?:mg\\/l|ppm|total))?\\b(?! ?(?:h|hours|days|ml|drops|x|caps?|capfuls?|l)\\b)|\\b(?:[1-9]\\d*(?:[.,]\\d+)?|0[.,][2-9]\\d*) (?:ppm |mg\\/l |total )*(?:of )?${ammonia}\\b`,
    { unless: new RegExp(`${notDose.source}|tank 2`) },
  ),
  said(
    'ammonia',
    `\\b${ammonia}\\b[^.;]{0,40}?\\b(?:high|hight|higher|elevated|spik\\w+|spike|through the roof|alarm|rising|rose|going up|climb\\w+|jumped|up|shot up|off the chart|very|scare|blues|bad|toxic|burns?|darkest|danger|alert|present|detected|trouble|problem|creeping|way over)\\b|\\b(?:high|elevated|rising|spiking|stinks? of|stinking of|smells? of|reeks of|traces? of|some|detectable) ${ammonia}\\b|\\b${ammonia} (?:spike|alarm|alert|scare|burn|problem)\\b|\\bit was going up\\b`,
    { unless: /\bbinder (?:frees|kill)|remover|main killer|lies?\b|\btest kit|liquid tests/ },
  ),
  said('ammonia', `\\b${ammonia}\\b`, { beside: /\b(?:3 ppm|\d ppm|tested positive)\b/, unless: notDose }),
  said(
    'copper in the top-off',
    `\\b(?:ato|top(?:ped)?[- ]?(?:off|up)|topping[- ]?(?:off|up)|auto[- ]?top[- ]?(?:off|up)?|float valve|refill(?:ed|s)?|top-off)\\b[^.;]{0,60}?\\b(?:syst(?:em)? water|tank water|copper(?!-? ?free)|cu|coppered|dosed|medicated|treated|premix(?:ed)?|pre-mixed|leftover|blue water|stock|qt water|water change|wc water|old water|(?:mixed|mix) barrel)\\b|\\b(?:copper|coppered|medicated|dosed|treated|cu|premix(?:ed)?|leftover) (?:[a-z]+ ){0,4}(?:in|into|to|for) (?:the )?(?:auto )?(?:ato|top[- ]?(?:off|up)|refill|reservoir)\\b|\\b(?:medicated|dosed|coppered|copper|cu|premixed|treated) (?:water )?(?:ato|top[- ]?off)\\b`,
    {
      unless:
        /\bno (?:copper|cu)\b|without|copper-free|\bplain\b|only ro\b|\b0[.,]00|\b(?:test|dose|change)d? (?:after|before|then)|\bthen (?:test|dose)|unmedicated|undosed|before|after|\bro\b|rodi|fresh/,
    },
  ),
  said(
    'copper in the top-off',
    `\\b(?:ato|top(?:ped)?[- ]?(?:off|up)|topping[- ]?(?:off|up)|auto top off|refill(?:ed)?|float valve)\\b[^.;]{0,40}\\b(?:ro|rodi|ro\\/di|plain|osmose|osmosis|distilled|fresh ?water|fresh|0[.,]0+|without copper|no copper|copper-free|emptied)\\b`,
    { polarity: 'denied', ownsNegation: true },
  ),
  said(
    'copper in the top-off',
    `\\bwas filled from [A-Z]?[a-z]+\\b|\\bfilled (?:the )?(?:ato|top-off can|reservoir) (?:from|with)\\b`,
    { beside: /\b(?:ato|top[- ]?off|reservoir)\b/, unless: /\bro\b|rodi|plain|fresh/ },
  ),
  said(
    'hyposalinity',
    `\\bhypo\\b(?!crit)|\\bhyposalinity\\b|\\b(?:sal|salinity|sg|s\\.g\\.|salt)\\b[^.;]{0,22}?(?:\\b|\\s)(?:1[.,]0(?:0\\d|1[0-5])\\d?|(?:9|1\\d)(?: ?(?:ppt|psu|g\\/kg|\\b(?![.,:\\d]| ?(?:ml|l|days?|h)\\b))))|\\b1[.,]0(?:0\\d|1[0-4])\\b|\\b1\\d ?(?:g\\/kg|ppt|psu)\\b`,
    { unless: /\bhypo crystals|drop(?:s|ped)? in ammonia/ },
  ),
  said(
    'gear or water from another tank',
    `\\b(?:used?|using|borrow\\w*|took|put|moved|swapped|brought|grabbed|shared?|shares?|stole|with|threw|topped up)\\b[^.;]{0,40}?\\b(?:nets?|hoses?|siphon|magnet|bucket|sponge(?: filter)?|filter|canister|heater|pump|powerhead|air ?pump|air ?stone|probe|tongs|scraper|tools?|rock|gravel|water|thermometer|cup|specimen|pipes?|media|endoscope)\\b[^.;]{0,24}?\\b(?:from|out of|off) (?:the )?(?:another|other|dt|display|reef|frag\\w*|[0-9]+|[a-z]+'?s?)\\b`,
    {
      beside: /./,
      unless:
        /\bbucket (?:for|of|is|has)|from the (?:tap|shop|store|box|cupboard|plan|barrel|premix|stock|sink)|water change|test(?:ed)?|dose|new|cooler|from (?:now|today|tomorrow|here|below|above|there|where|it|yesterday|mon|tues|wednes|thurs|fri|satur|sun)|copper|ato|from vegas|rock (?:beaut|wool)/,
    },
  ),
  said(
    'gear or water from another tank',
    `\\b(?:same|shared|only one|common) (?:net|hose|siphon|bucket|sponge)\\b|\\b(?:net|hose|siphon|bucket|magnet|sponge|tools?|probe|tongs) (?:is|are|was|were)? ?(?:the )?(?:same|shared)\\b|\\b(?:net|hose|siphon(?: hose)?|bucket|algae magnet|magnet|sponge|probe|tongs|scraper|endoscope|thermometer|heater|pump|canister|gravel|tools?)\\b[^.;]{0,30}?\\bfrom\\b[^.;]{0,30}?\\b(?:used|in|into)\\b`,
    { unless: /from (?:the )?(?:tap|shop|store|box|cupboard)|heater set/ },
  ),
  said(
    'gear or water from another tank',
    `\\b[a-z0-9-]+'s (?:net|hose|siphon(?: hose)?|bucket|magnet|sponge|canister|heater|pump|probe|coral gravel|gravel|rock|water|filter|tools?|tongs)\\b(?=[^.;]{0,40}\\b(?:in|into|under|over to|to)\\b)|\\btook (?:[a-z0-9]+'s\\b|the one from)`,
    { unless: /^\s*blue's (?:net|heater)/ },
  ),
  said(
    'gear or water from another tank',
    `\\bnot mixed\\b|\\bno crossover\\b|\\bown (?:hook|net|bucket|hose)|\\bdedicated (?:nets?|hoses?|buckets?)|\\bnever mix\\w*|\\bshare nothing\\b|\\b(?:nets?|tools) (?:tagged|disinfected)`,
    { polarity: 'denied', ownsNegation: true },
  ),
];
