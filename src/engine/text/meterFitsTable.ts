import type { LimitShown, MeterFit } from '../chance/meterFit.js';
import { columnsOf, type Table } from '../result/table.js';
import { shownNumber } from '../units/shown.js';

export const meterFitsColumns = columnsOf({
  'Can show the low': 'text',
  'Can show the top': 'text',
  'Keep at least': 'number',
  Why: 'text',
});

/** What a meter can show of a band, as METERFITS spills it. */
export function meterFitsTable(fit: MeterFit): Table {
  const { low, top } = fit;
  const keep = low.kind === 'shown' ? low.reading : '';
  return {
    columns: meterFitsColumns,
    rows: [[yesOrNo(low), top === null ? 'no top given' : yesOrNo(top), keep, reasons(fit)]],
  };
}

function yesOrNo(limit: LimitShown): string {
  return limit.kind === 'shown' ? 'yes' : 'no';
}

function reasons(fit: MeterFit): string {
  const { band, readsFrom, readsTo, low, top } = fit;
  if (readsFrom > band.high) return `it reads from ${shownNumber(readsFrom)}, above the top ${shownNumber(band.high)}`;
  if (readsTo < band.low) return `it reads to ${shownNumber(readsTo)}, below the low limit ${shownNumber(band.low)}`;
  if (low.kind === 'shown' && top?.kind === 'shown') return bothShown(low.reading, top.reading);
  return [limitReason(fit, low, 'low'), top === null ? '' : limitReason(fit, top, 'top')]
    .filter((reason) => reason !== '')
    .join('; ');
}

function bothShown(from: number, to: number): string {
  return from <= to
    ? `readings from ${rounded(from)} to ${rounded(to)} show both limits with a chance of 95 %`
    : `one limit at a time: the low from ${rounded(from)}, the top up to ${rounded(to)}`;
}

function limitReason(fit: MeterFit, shown: LimitShown, which: 'low' | 'top'): string {
  const { band, readsFrom, readsTo } = fit;
  const isLow = which === 'low';
  const limit = isLow ? `the low limit ${shownNumber(band.low)}` : `the top ${shownNumber(band.high)}`;
  switch (shown.kind) {
    case 'shown':
      return isLow
        ? `readings from ${rounded(shown.reading)} show the low limit with a chance of 95 %`
        : `readings up to ${rounded(shown.reading)} show the top with a chance of 95 %`;
    case 'limit-unread':
      return (isLow ? band.low : band.high) < readsFrom
        ? `it reads from ${shownNumber(readsFrom)}, above ${limit}`
        : `it reads to ${shownNumber(readsTo)}, below ${limit}`;
    case 'outside-band':
      if (shown.reading === null) return `no reading shows ${limit}: its percent grows as fast as the reading`;
      return isLow
        ? `${needed(limit, shown.reading)}, above the top ${shownNumber(band.high)}`
        : `${needed(limit, shown.reading)}, below the low limit ${shownNumber(band.low)}`;
    case 'outside-range':
      return shown.reading > readsTo
        ? `${needed(limit, shown.reading)}, and it reads to ${shownNumber(readsTo)}`
        : `${needed(limit, shown.reading)}, and it reads from ${shownNumber(readsFrom)}`;
  }
}

function needed(limit: string, reading: number): string {
  return `to show ${limit} it would have to read ${rounded(reading)}`;
}

function rounded(level: number): string {
  return shownNumber(Number(level.toFixed(3)));
}
