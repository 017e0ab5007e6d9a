import type { Clause } from './clauses.js';

/**
 * Words of other people: they frame the clause they stand in and those after it, until the keeper speaks of his own tank
 * again.
 */
const hearsay =
  /\b(?:(?:i )?read (?:that|up|about|on|in|somewhere)|they (?:say|said|tell|claim|told)|people (?:say|swear)|some say|says? (?:a|the|his|my)|said to|(?:somebody|someone|anybody|anyone)(?:'s)?|apparently|supposedly|allegedly|rumou?r|forum|thread|on the board|board consensus|dealer on|poster|post(?:ed|s)? (?:says?|said)|a (?:tip|reader|member|guy|customer)|tip:|tip (?:says|i liked)|the (?:blog|sticky|article|book|label)|care ?sheet|copied from|label (?:of|says)|in internet|on the internet|online|(?:seller|supplier|dealer|vendor|buddy|friend|shop|guy|lady|owner|everyone|everybody|experts?|vet|boss|mate|colleague|neighbou?r)s? (?:say|swear|claim|tell|disagree|said|thinks?|told me)s?|seller say|heard (?:that|of|about|from)|i'm told|(?:he|she) (?:said|says|told)|ttm people|anecdote|old wives|according to (?:the )?(?:forum|book|shop|internet)|new boy asked|asked what|owner anecdote|warned (?:me|us)|advice|they asked|supposed to|horror thread)\b/;
/** "As the radio said": said by others, and so here. */
const likewise =
  /\b(?:(?:just |exactly )?(?:as|like|what) (?:they |the [a-z]+ )?(?:described|warned|said|in that|predicted|told)|following (?:a|the)|like in that|exactly what|as feared|as they say)\b/;
const ownVoice =
  /^\s*(?:so|and so|anyway)\b|\b(?:mine(?:'s| is)?|my (?:tank|qt)|i(?:'ve| have) got|i added|i put|went in|is on|still on|still in|all in|at \d[\d.]* now|it'?s my tank|since (?:yesterday|friday|last night)|today|copper's coming out|in as of)\b/;
const plans =
  /\b(?:will(?! not)|won't be|shall|plan(?:s|ned|ning)?(?! (?:is void|says|brought|change brought))|to[- ]do|tomorrow|tmrw|tmr|ordered|on order|o\/o|eta|due|if|unless|in case|when(?=.{0,30}\b(?:over|done|day|eats|is day|arriv|come))|once|until|till|not before|before (?:winter|christmas|day)|after day|after (?:copper|he|it|they) (?:is|are|comes?|goes|leaves?)|next (?:time|week|month|sat\w*|sun\w*|mon\w*|tue\w*|wed\w*|thu\w*|fri\w*)|maybe|might|may need|perhaps|thinking (?:about|of)|consider\w*|wants?|wanted to|wish|would|could (?:get|use|try|add|do|go)|should|'d come|they'd|going to|gonna|goin to|intend\w*|hop(?:e|ing)|schedul\w+|on the list|reminder|pencilled|buy(?! .{0,40}\bbought)|need to|needs? (?:a|to)|have to|requirement|for later|deposit|pick up|probably|prob|watch(?:ing)? (?:out )?for|look(?:ing)? (?:out )?for|keep(?:ing)? an eye|check(?:ing|ed)? for|expect\w*|reserved|holding (?:a|it|one)|looking for|anyone know|where to get|to follow|starts? (?:on|in) (?:mon|tue|wed|thu|fri|sat|sun)|goes in on|not yet|arrives?(?! already)|not connected|not started|lists? next|incoming|the 2\dth|the \dth|later|someday|eventually|instead of copper next)\b/;
/** It has happened all the same. */
const already =
  /\b(?:already|as of|since|has been on|went|done\b|is in\b|in now|going in now|still|started|finished|connected and live|from now on|put (?:in|it)|added|forgot to|couldn't|arrived|came|dosed|gave|used)\b/;
const negator =
  /\b(?:no|not|never|none|nothing|nobody|nil|zero|without|neither|nor|cannot|can't|can not|don'?t|doesn'?t|didn'?t|isn'?t|wasn'?t|aren'?t|weren'?t|won'?t|hasn'?t|haven'?t|wouldn'?t|couldn'?t|shouldn'?t|avoid(?:ed|ing|s)?|instead of|rather than|free (?:of|from)|neg(?:ative)?|0|0x|nearly|almost|refused|declined|disproved|denies|ruled out|r\/o)\b(?!-)/g;
const afterwards =
  /^[^.;]{0,30}?(?:-free\b|[:=]\s*(?:none|no|nil|0|neg\w*|clear|unremarkable)\b|\b(?:was |is |were |are |has been |not |never )*(?:not used|never used|not added|not needed|not required|none|nil|neg(?:ative)?|never (?:hit|went|happened)|not (?:in (?:system|the tank|use|here)|going in|going|started|seen|observed|mixed|affected|needed|used)|refused|declined|locked|lockd|put the bottle back|discarded|binned|self-test passed|intercepted|0 s|unopened|unaffected|crossed off|: no)\b|\b0\/\d+)/;

export function isHearsay({ low }: Clause): boolean {
  return hearsay.test(low) && !likewise.test(low);
}

export function isOwnVoice({ low }: Clause): boolean {
  return ownVoice.test(low) || likewise.test(low);
}

export function isPlan({ low }: Clause): boolean {
  return plans.test(low) && !(already.test(low) && !/\b(?:if|once|will|would|ordered|o\/o|next|want)\b/.test(low));
}

/** Whether words in a clause are denied there. */
export function isDenied({ low }: Clause, from: number, to: number): boolean {
  const after = low.slice(to);
  if (afterwards.test(after)) return true;
  if (/\b(?:no|none|nobody|no one|nothing|nil|zero|stays?|survived)\b/.test(low.slice(from, to))) return true;
  for (const match of low.slice(0, from).matchAll(negator)) {
    const between = low.slice(match.index + match[0].length, from);
    if (match[0] === '0' && /[\d.,]$|\d$/.test(low.slice(0, match.index))) continue;
    if (match[0] === 'not' && /^ (?:only|just|yet caught|sure|again|thinking)/.test(between)) continue;
    if (match[0] === '0' && !/^(?: ?x)? (?:of \d+ )?[a-z]*\s*(?:[a-z]+ )?$/.test(between)) continue;
    if (/^(?:nearly|almost)$/.test(match[0])) return true;
    if (between.trim().split(/\s+/).length <= 6 && !/\b(?:added|put|used|but|dosed|gave|with|until)\b/.test(between))
      return true;
  }
  return false;
}

/** A clause after the words that takes them back: "…, declined", "…. Not in system." */
export function takesBack({ low }: Clause): boolean {
  return /^\s*(?:no\s*$|none\b|nil\b|neg(?:ative)?\b|never (?:hit|went|happened|got)|not (?:in (?:system|the (?:tank|qt)|use)|connected|started|added|used|here|going)|(?:has|have|had) not\b|declined|refused|intercepted|discarded|disproved|binned|caught in time|false alarm|put the bottle back|crossed off|locke?d|unopened|put (?:it )?back|but (?:it )?(?:was|turned))|\bput the bottle back\b|\bdisproved\b/.test(
    low,
  );
}

/** "For a second I thought …", "thought I saw …". */
export function isMistaken({ low }: Clause): boolean {
  return /\b(?:thought (?:i|he|she|it|they|that|we)|for a (?:second|moment)|false alarm|looked like|near miss|turned out)\b/.test(
    low,
  );
}

/** "…, they say", "says a chemist". */
export function endsAsHearsay({ low }: Clause): boolean {
  return /^\s*(?:they say|says? (?:a|the|my)|or so|i(?:'ve| have)? (?:read|heard)|apparently|supposedly|they claim)\b|\b(?:they say|says (?:a|the) [a-z ]+)\s*$/.test(
    low,
  );
}

/** Words that begin a list of what is not: "no spots, flashing or sores". */
export function beginsDenials({ low }: Clause): boolean {
  return /^\s*(?:[#\w-]+ ){0,2}(?:no|not|never|without|nil|zero|neither|don't|any|do not use with)\b/.test(low);
}

/** Short, and with no verb of its own: it goes on with the list before it. */
export function continuesList({ low, joint }: Clause): boolean {
  const words = low.trim().split(/\s+/);
  return (
    joint === ',' &&
    (words.length <= 3 || /^\s*(?:or|nor|and)\b/.test(low)) &&
    !/\b(?:but|is|are|added|put|died|dead|gone)\b/.test(low)
  );
}
