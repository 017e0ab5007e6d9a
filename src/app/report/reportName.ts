import type { ReportInput } from './reportInput.js';

/** What the report is about, in a few words. */
export function reportName({ audited, file }: ReportInput): string {
  return audited.system ?? file;
}
