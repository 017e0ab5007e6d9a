/** Serial days of the 1900 system; derived by counting days. */
export const serialCheck = {
  source: { key: 'Serials1900', at: 'three dates' },
  rows: [
    ['1970-01-01', '25569'],
    ['2024-02-29', '45351'],
    ['2026-01-01', '46023'],
  ],
} as const;
