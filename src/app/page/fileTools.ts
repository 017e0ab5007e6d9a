import { element } from './element.js';
import { FileDesk } from './fileDesk.js';
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

/** The buttons of new workbooks, each where the server has its template. */
function offerTemplates(open: (file: { name: string; bytes: Uint8Array }) => void): void {
  for (const kind of ['tank', 'shop']) {
    const button = element(`template-${kind}`);
    const [address, name] = [`templates/${kind}.xlsx`, `${kind}.xlsx`];
    void fetch(address, { method: 'HEAD' }).then(({ ok }) => (button.hidden = !ok));
    button.addEventListener('click', () => {
      void fetch(address)
        .then((response) => response.arrayBuffer())
        .then((buffer) => open({ name, bytes: new Uint8Array(buffer) }));
    });
  }
}

/** Takes files that are dropped anywhere on the page, and shows while one is held over it that it may be. */
function droppedFiles(dropped: (file: File) => void): void {
  const isFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  // Caught on the way down: the grid takes drops as well.
  const listen = (type: 'dragover' | 'dragleave' | 'drop', act: (event: DragEvent) => void): void =>
    window.addEventListener(
      type,
      (event) => {
        if (!isFile(event)) return;
        event.preventDefault();
        event.stopPropagation();
        act(event);
      },
      { capture: true },
    );
  listen('dragover', () => (document.body.dataset['dragging'] = 'yes'));
  listen('dragleave', (event) => {
    if (event.relatedTarget === null) delete document.body.dataset['dragging'];
  });
  listen('drop', (event) => {
    delete document.body.dataset['dragging'];
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) dropped(file);
  });
}
