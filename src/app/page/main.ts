import '@univerjs/preset-sheets-core/lib/index.css';
import './index.html';
import './page.css';
import { element } from './element.js';
import { fileTools } from './fileTools.js';
import { loadBundle } from './loadBundle.js';
import { Refusals } from '../calls/refusals.js';
import { openDemo } from './openDemo.js';
import { openSheet } from './openSheet.js';
import { panelTools } from './panelTools.js';
import { showStatus, watchSelection } from './watchSelection.js';
import type { ShownFile } from './shownFile.js';
import { walkParts } from './walkParts.js';
import { watchTables } from './watchTables.js';

/** The cautions that always stay in view. */
const cautionLine =
  'Copper is a poison to fish and to people: gloves and goggles, away from children and food. ' +
  'Never with invertebrates, never with fish meant for eating. Check every computed dose with a test before the next one. ' +
  'Dispose of treated water as local rules require. An aquatic veterinarian decides; the law and the label come before anything computed here.';

async function main(): Promise<void> {
  element('cautions').textContent = cautionLine;
  element('panel-cautions').textContent = cautionLine;
  const bundle = await loadBundle();
  const refusals = new Refusals();
  const sheet = openSheet({ container: element('sheet'), bundle, refusals });
  // For the browser's console, and for tests of the page.
  Object.assign(window, { univerAPI: sheet.api });
  let shown: ShownFile = await openDemo(sheet);
  const showSelected = watchSelection({
    sheet,
    refusals,
    entries: bundle.map(({ entry }) => entry),
    known: (cell) => shown.formulas.get(cell),
  });
  watchTables(sheet, () => shown);
  const plotAnew = panelTools(sheet, () => shown);
  fileTools({
    sheet,
    first: shown,
    shown: (file) => {
      shown = file;
      showSelected();
      plotAnew();
    },
  });
  walkParts(sheet);
  document.body.dataset['ready'] = 'yes';
}

main().catch((error: unknown) => {
  document.body.dataset['ready'] = 'no';
  showStatus(
    { address: '', value: '' },
    {
      kind: 'refusal',
      text: `The sheet did not open: ${error instanceof Error ? error.message : String(error)}`,
    },
  );
});
