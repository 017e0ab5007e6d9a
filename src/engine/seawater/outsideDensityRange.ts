import type { ReferenceKey } from '../references/references.js';
import { outsideValidity } from '../result/outsideValidity.js';
import type { Problem } from '../result/problem.js';
import type { Celsius, PracticalSalinity } from '../units/quantity.js';

/** Where the equation of state is used: the source's range, but no sample or reference below 0 °C. */
export const densityRange = {
  salinity: { min: 0, max: 42, unit: 'g/kg' },
  temperature: { min: 0, max: 40, unit: '°C' },
  source: 'FofonoffMillard1983',
} as const satisfies {
  salinity: { min: number; max: number; unit: string };
  temperature: { min: number; max: number; unit: string };
  source: ReferenceKey;
};

interface Water {
  readonly salinity?: PracticalSalinity;
  readonly temperature: Celsius;
  readonly reference: Celsius;
}

/** The first of salinity, temperature and reference temperature that lies outside, null where none does. */
export function outsideDensityRange(water: Water): Problem | null {
  const { salinity, temperature, reference } = water;
  const { source } = densityRange;
  return (
    (salinity === undefined
      ? null
      : outsideValidity({ field: 'salinity', given: salinity, ...densityRange.salinity, source })) ??
    outsideValidity({ field: 'temperature', given: temperature, ...densityRange.temperature, source }) ??
    outsideValidity({ field: 'reference', given: reference, ...densityRange.temperature, source })
  );
}
