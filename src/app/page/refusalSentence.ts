import { FileProblem } from '../../sheet/index.js';

/** Why a file could not be read or written, as one sentence. */
export function refusalSentence(name: string, fault: unknown): string {
  const why = fault instanceof Error ? fault.message : String(fault);
  const sentence = fault instanceof FileProblem ? `${name}: ${why}` : `${name} could not be worked on: ${why}`;
  return sentence.endsWith('.') ? sentence : `${sentence}.`;
}
