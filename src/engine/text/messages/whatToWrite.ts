import type { ValueKind } from '../../result/problem.js';

interface Wanted {
  /** What the value should have been. */
  readonly noun: string;
  /** How to write one. */
  readonly write: string;
}

/** What each kind of value is called, and how to write it. */
export const whatToWrite: Readonly<Record<ValueKind, Wanted>> = {
  litres: { noun: 'a volume', write: 'litres, like 200, "200 L" or "50 gal"' },
  millilitres: { noun: 'a volume', write: 'millilitres, like 12.5, "12.5 mL" or "2 tsp"' },
  centimetres: { noun: 'a length', write: 'centimetres, like 60, "60 cm" or "24 in"' },
  level: { noun: 'a level', write: 'mg/L, like 2.05, "2.05 ppm" or "2050 ug/L"' },
  strength: { noun: 'a strength', write: 'mg of copper per mL, like 1.02 or "1.02 mg/mL"' },
  salinity: { noun: 'a salinity', write: 'g/kg, like 35 or "35 ppt"' },
  hours: { noun: 'a number of hours', write: 'hours, like 96, "96 h" or "4 days"' },
  days: { noun: 'a number of days', write: 'days, like 30 or "30 days"' },
  grams: { noun: 'a mass', write: 'grams, like 3, "3 g" or "500 mg"' },
  celsius: { noun: 'a temperature', write: '°C, like 25, "25 C" or "77 F"' },
  plain: { noun: 'a number', write: 'a bare number without a unit' },
  whole: { noun: 'a whole number', write: 'one, like 5' },
  percent: { noun: 'a percentage', write: 'one like 30 or "30%"' },
  change: { noun: 'a water change', write: 'litres or a share, like 50, "50 L" or "25%"' },
  choice: { noun: 'a choice', write: 'one of the words that the function lists' },
  text: { noun: 'text', write: 'it in words' },
  fish: { noun: 'a name of a fish', write: 'a name, like "yellow tang", or leave it empty' },
  'fish count': { noun: 'a number of fish', write: 'one like 3, "3 tangs" or "1 DOA", or leave it empty' },
  condition: { noun: 'a condition', write: 'one like "white spot", or "unknown"' },
  time: { noun: 'a time', write: '"2026-03-01 08:00", or use a date cell' },
  band: { noun: 'a band', write: '"sulfate", "amine", "chelated", a low limit, or give two cells, low and high' },
  form: { noun: 'a form of copper', write: '"sulfate", "amine" or "chelated"' },
  reading: { noun: 'a reading', write: '2.05, "2.05 ppm" or "<0.05"' },
};
