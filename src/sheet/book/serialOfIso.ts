const form = /^(\d{4,5})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::(\d\d(?:[.,]\d+)?))?)?(?:Z|[+-]\d\d:?\d\d)?$/;
/** 30 December 1899, from which days count so that those of our century come out as in a workbook. */
const origin = Date.UTC(1899, 11, 30);

/** A date as XML writes it, in days counted from 1900; undefined for what is no date. A zone is not applied: a log keeps its clock. */
export function serialOfIso(text: string): number | undefined {
  const parts = form.exec(text.trim());
  if (parts === null) return undefined;
  const [year, month, day, hour, minute, second] = parts
    .slice(1)
    .map((part) => Number((part ?? '0').replace(',', '.')));
  const date = new Date(Date.UTC(year ?? 0, (month ?? 1) - 1, day ?? 1));
  if (date.getUTCMonth() !== (month ?? 1) - 1 || date.getUTCDate() !== day) return undefined;
  const days = Math.round((date.getTime() - origin) / 86_400_000);
  return days + ((hour ?? 0) * 3600 + (minute ?? 0) * 60 + (second ?? 0)) / 86_400;
}
