import '@univerjs/preset-sheets-core/lib/index.css';
import './index.html';
import './page.css';
import { demoWorkbook } from '../demo/demoWorkbook.js';
import { cautionLine } from './cautionLine.js';
import { loadBundle } from './loadBundle.js';
import { Refusals } from '../grid/refusals.js';
import { openSheet } from './openSheet.js';
import { showStatus } from './showStatus.js';
import { watchSelection } from './watchSelection.js';
import { workbookData } from './workbookData.js';

async function main(): Promise<void> {
  element('cautions').textContent = cautionLine;
  const bundle = await loadBundle();
  const refusals = new Refusals();
  const sheet = openSheet({ container: element('sheet'), bundle, refusals, workbook: workbookData(demoWorkbook) });
  // For the browser's console, and for tests of the page.
  Object.assign(window, { univerAPI: sheet.api });
  await sheet.api.getFormula().onCalculationResultApplied();
  document.body.dataset['ready'] = 'yes';
  watchSelection(
    sheet,
    refusals,
    bundle.map(({ entry }) => entry),
  );
}

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`index.html has no #${id}`);
  return found;
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
