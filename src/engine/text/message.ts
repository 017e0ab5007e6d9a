import type { Problem } from '../result/problem.js';
import { answerSentences, meterSentences } from './messages/answerSentences.js';
import { logSentences } from './messages/logSentences.js';
import { rangeSentences, readingSentences } from './messages/readingSentences.js';
import type { ByCode, Sentences } from './messages/sentences.js';
import { valueSentences } from './messages/valueSentences.js';
import { waterSentences } from './messages/waterSentences.js';

/** What a cell's error card can hold without being cut. [characters] */
const longest = 200;
/** What is left of a given text where the sentence would be longer. [characters] */
const shortened = 20;

const sentences: Sentences = {
  ...valueSentences,
  ...readingSentences,
  ...rangeSentences,
  ...logSentences,
  ...waterSentences,
  ...meterSentences,
  ...answerSentences,
} satisfies Sentences;

/** A problem as one sentence of at most 200 characters: where, what was given, what is allowed, what to write. */
export function message(problem: Problem): string {
  const sentence = written(problem.code, problem);
  if (sentence.length <= longest) return sentence;
  // Wide characters count double: repeat less of what was given rather than lose what to write.
  return cut(written(problem.code, withShortGiven(problem)), longest);
}

function written<C extends Problem['code']>(code: C, problem: ByCode[C]): string {
  return sentences[code](problem);
}

/** The texts that a problem repeats as a person wrote them. */
const repeated = ['given', 'first', 'second', 'heading', 'card'];

function withShortGiven(problem: Problem): Problem {
  const shorter: Record<string, string> = {};
  for (const [name, value] of Object.entries(problem)) {
    if (typeof value === 'string' && repeated.includes(name)) shorter[name] = cut(value, shortened);
  }
  return Object.assign({ ...problem }, shorter);
}

function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const quote = text.startsWith('"') && text.endsWith('"') ? '"' : '';
  const room = most - 1 - quote.length;
  let kept = '';
  for (const letter of text) {
    if (kept.length + letter.length > room) break;
    kept += letter;
  }
  return `${kept}…${quote}`;
}
