import { droppedFiles } from './droppedFiles.js';
import { element } from './element.js';
import { FileDesk } from './fileDesk.js';
import { offerTemplates } from './offerTemplates.js';
import type { OpenedSheet } from './openSheet.js';
import type { ShownFile } from './shownFile.js';

interface FileTools {
  readonly sheet: OpenedSheet;
  readonly first: ShownFile;
  /** Another file is in the grid. */
  readonly shown: (file: ShownFile) => void;
}

/** Opening files, by the button or by dropping them on the page, and saving a copy of what is shown. */
export function fileTools({ sheet, first, shown }: FileTools): void {
  const desk = new FileDesk(sheet, first, shown);
  const input = element('open-input') as HTMLInputElement;
  const openFile = async (file: File): Promise<void> =>
    desk.open({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
  input.addEventListener('change', () => {
    const [file] = input.files ?? [];
    if (file !== undefined) void openFile(file);
    // The same file may be opened again.
    input.value = '';
  });
  droppedFiles((file) => void openFile(file));
  offerTemplates((file) => void desk.open(file));
  element('save-button').addEventListener('click', () => desk.save());
  window.addEventListener('beforeunload', (event) => {
    if (desk.mayLose()) event.preventDefault();
  });
}
