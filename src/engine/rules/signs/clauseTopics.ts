import type { SignToken } from './signTokens.js';
import { statements } from './statements.js';

/**
 * What a sign, or a word that the fish is well, is about. listless: too little activity; acting: odd activity or a place
 * where a sick fish stays. 'feeding well' is said of a well fish only. all: the fish as a whole.
 */
export type SignTopic =
  'feeding' | 'feeding well' | 'breathing' | 'listless' | 'acting' | 'rubbing' | 'looks' | 'deaths' | 'all';

/** Words of signs, in the order in which they are tried; a sign of none of them is one of looks or of acting. */
const topicWords: readonly (readonly [SignTopic, RegExp])[] = [
  ['looks', /colou?r|weight|condition/],
  [
    'feeding',
    /food|feed|\beat|\bate\b|appetite|refus|reject|ignor|spit|spat|anorexi|uneaten|left ?over|took|tak(?:es?|ing)\b|meal/,
  ],
  ['breathing', /breath|gasp|gulp|^pant|piping|hyperventil|pumping|flar|gill|mouth|yawn|cough/],
  [
    'deaths',
    /^dea(?:d|th)|^di(?:ed|es)|^dying|^doa|^mort|casualt|^loss|^lost (?!balance)|fish (?:lost|gone|missing)|^missing|no show/,
  ],
  ['rubbing', /flash|scratch|^rub|flick|glanc/],
  ['acting', /^hid|isolat|separat|spin|jump|dart|twitch|convuls|trembl|tremor|spasm|seizure|shiver|shak/],
  [
    'listless',
    /letharg|listless|lifeless|slugg|inactiv|motionless|apathetic|subdued|withdrawn|^weak|drows|unresponsive/,
  ],
  [
    'all',
    /^(?:signs?|symptom\w*|problems?|issues?|trouble|concern\w*|distress\w*|stress\w*|sick\w*|ill|unwell|poorly|bad|badly|wors\w+|wrong|unusual\w*|abnormal\w*|not (?:quite )?right)$/,
  ],
];

const ofTheWhole = /recover|healthy|health|better|symptomless|asymptomatic|thriving|happ|settl/;
const bodyPart =
  /^(?:eyes?|fins?|tails?|skin|scales?|body|belly|stomach|mouth|weight|poops?|poo|fa?eces|waste|vent|nose|face|slime)$/;
/** What makes "eating" a note of a fish that eats as it should. */
const wellFed = /^(?:again|finally|all|both|each|every\w*|back|returned|pigs?|vigorous\w*|strongly|happily|actively)$/;
const keen = /hungr|ravenous|greed|beg/;

/** What a clause is about; empty where no word of it says. Of a clause that reads as a sign only the signs count. */
export function clauseTopics(tokens: readonly SignToken[], isSign: boolean): readonly SignTopic[] {
  const said = statements(tokens);
  const bad = said.filter((statement) => statement.bad);
  const told = (isSign && bad.length > 0 ? bad : said).flatMap(({ token }) => topicsOf(token, tokens));
  return told.length === 0 && has(tokens, 'breathing') ? ['breathing'] : told;
}

function topicsOf({ kind, text }: SignToken, tokens: readonly SignToken[]): readonly SignTopic[] {
  if (kind === 'feeds' || kind === 'partial')
    return isWellFed(text, tokens) ? ['feeding', 'feeding well'] : ['feeding'];
  if (kind === 'breathBad' || kind === 'slow' || kind === 'slower') return [activityBeside(tokens)];
  if (kind === 'fine' || kind === 'easing') return topicsOfFine(tokens);
  if (kind === 'place') return ['acting'];
  if (kind === 'swimming') return ['acting', 'listless'];
  if (kind === 'lively') return topicsOfLively(text, tokens);
  if (text === 'loss' && namesBodyPart(tokens)) return ['looks'];
  const listed = topicWords.find(([, words]) => words.test(text))?.[0];
  return [listed ?? (kind === 'badNoun' ? 'looks' : 'acting')];
}

function activityBeside(tokens: readonly SignToken[]): SignTopic {
  if (has(tokens, 'breathing')) return 'breathing';
  return has(tokens, 'feeds') ? 'feeding' : 'listless';
}

/** "Normal" is said of what stands beside it, else of the fish. */
function topicsOfFine(tokens: readonly SignToken[]): readonly SignTopic[] {
  const beside: SignTopic[] = [];
  if (has(tokens, 'breathing')) beside.push('breathing');
  if (has(tokens, 'swimming')) beside.push('acting', 'listless');
  if (namesBodyPart(tokens)) beside.push('looks');
  return beside.length > 0 || has(tokens, 'feeds') ? beside : ['all'];
}

function topicsOfLively(text: string, tokens: readonly SignToken[]): readonly SignTopic[] {
  if (/colou?r|fins|^fat$/.test(text)) return ['looks'];
  if (ofTheWhole.test(text)) return ['all'];
  const ofFood = /interest|respon|react/.test(text) && tokens.some((token) => /food|feed/.test(token.text));
  return ofFood ? ['feeding'] : ['acting', 'listless'];
}

function isWellFed(text: string, tokens: readonly SignToken[]): boolean {
  const fine = has(tokens, 'fine') && topicsOfFine(tokens).length === 0;
  return fine || keen.test(text) || tokens.some((token) => wellFed.test(token.text));
}

function namesBodyPart(tokens: readonly SignToken[]): boolean {
  return tokens.some(({ kind, text }) => kind === 'word' && bodyPart.test(text));
}

function has(tokens: readonly SignToken[], kind: SignToken['kind']): boolean {
  return tokens.some((token) => token.kind === kind);
}
