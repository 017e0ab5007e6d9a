import type { Finding } from '../../rules/finding.js';
import { fishAndWaterFindings } from './fishAndWaterFindings.js';
import type { ByFindingCode, FindingSentences, FindingWords } from './findingWords.js';
import { holdFindings } from './holdFindings.js';
import { recordFindings } from './recordFindings.js';
import { slipFindings } from './slipFindings.js';
import { verdictFindings } from './verdictFindings.js';

const sentences: FindingSentences = {
  ...verdictFindings,
  ...holdFindings,
  ...recordFindings,
  ...slipFindings,
  ...fishAndWaterFindings,
} satisfies FindingSentences;

/** A finding in words: what was found, and the rule behind it. */
export function findingText(finding: Finding): FindingWords {
  return written(finding.code, finding);
}

function written<C extends Finding['code']>(code: C, finding: ByFindingCode[C]): FindingWords {
  return sentences[code](finding);
}
