import { parseHTML } from 'linkedom';
import { cardSection } from './cardSection.js';
import { findingsSection } from './findingsSection.js';
import { holdsSection } from './holdsSection.js';
import { Markup, markup } from './markup.js';
import { cautionsSection, methodSection, sourcesOf } from './methodSection.js';
import { plotSection } from './plotSection.js';
import { reportStyle } from './reportStyle.js';
import { reportName, reportTitle, type ReportInput } from './reportTitle.js';
import { verdictSection } from './verdictSection.js';

/** Nothing runs and nothing is fetched; the style is in the file itself. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * The report of an audited treatment: one file that needs nothing else, for the screen, for paper and for a screen reader.
 *
 * @param input the audited treatment, and when and of what the report is made
 * @returns HTML
 */
export function reportHtml(input: ReportInput): string {
  const { audited } = input;
  const { findings } = audited;
  const sources = sourcesOf(findings, audited.card);
  const document = input.document ?? parseHTML('<!doctype html><html></html>').document;
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${reportName(input)}: audit of a copper quarantine</title>
<style>${new Markup(reportStyle)}</style>
</head>
<body>
<main>
${reportTitle(input)}
<div class="overview">
${verdictSection(findings)}
${cardSection(audited)}
</div>
${plotSection(audited, document)}
${findingsSection(findings, sources)}
${holdsSection(audited)}
${methodSection(audited.card, sources)}
${cautionsSection()}
</main>
</body>
</html>
`.html;
}
