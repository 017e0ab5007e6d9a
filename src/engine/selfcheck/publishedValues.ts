import { copperValues, safetyValues } from './copperValues.js';
import { dilutionValues } from './dilutionValues.js';
import type { PublishedValue } from './publishedValue.js';
import { saltValues } from './saltValues.js';
import { unitValues } from './unitValues.js';
import { waterQualityValues } from './waterQualityValues.js';

/** Everything that is recomputed in place, a file a topic. */
export const publishedValues: readonly PublishedValue[] = [
  ...copperValues,
  ...saltValues,
  ...dilutionValues,
  ...unitValues,
  ...safetyValues,
  ...waterQualityValues,
];
