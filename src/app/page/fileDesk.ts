import { type Book, type CsvOptions, readBook, readCsv } from '../../sheet/index.js';
import { fileSentence, refusalSentence } from './fileSentence.js';
import { gridSheets } from './gridSheets.js';
import type { OpenedSheet } from './openSheet.js';
import { savedCopy } from './savedCopy.js';
import { showBook } from './showBook.js';
import type { ShownFile } from './shownFile.js';
import { element, showText } from './element.js';
import { UnsavedEdits } from './unsavedEdits.js';

interface FileBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const plainText = /\.(?:csv|tsv|tab|txt)$/i;

/** Opens files into the grid and saves copies of what it shows. */
export class FileDesk {
  private readonly edits: UnsavedEdits;

  constructor(
    private readonly sheet: OpenedSheet,
    private current: ShownFile,
    private readonly shown: (file: ShownFile) => void,
  ) {
    this.edits = new UnsavedEdits(sheet);
  }

  /** Whether an opened file has unsaved changes. */
  mayLose(): boolean {
    return this.current.isDemo !== true && this.edits.exist();
  }

  async open(file: FileBytes, options: CsvOptions = {}): Promise<void> {
    const question = `${this.current.name} has unsaved changes. Open ${file.name} anyway?`;
    if (this.mayLose() && !window.confirm(question)) return;
    document.body.dataset['busy'] = 'yes';
    showText('file-line', `Reading ${file.name}.`);
    await painted();
    try {
      await this.show(file, options);
    } catch (fault) {
      showText('file-line', refusalSentence(file.name, fault), 'refusal');
      csvChoice(plainText.test(file.name) ? { options, again: (chosen) => void this.open(file, chosen) } : undefined);
    }
    delete document.body.dataset['busy'];
  }

  save(): void {
    try {
      const { bytes, name, type, remark } = savedCopy(this.current, gridSheets(this.sheet));
      download(bytes, name, type);
      this.edits.saved();
      showText('file-line', `${name} is in your downloads. ${remark}`);
    } catch (fault) {
      showText('file-line', refusalSentence(this.current.name, fault), 'refusal');
    }
  }

  private async show(file: FileBytes, options: CsvOptions): Promise<void> {
    const start = performance.now();
    const book = bookOf(file, options);
    performance.measure('file read', { start });
    csvChoice(undefined);
    this.current = await showBook(this.sheet, { ...file, book });
    performance.measure('file shown', { start });
    this.edits.saved();
    this.shown(this.current);
    showText('file-line', fileSentence(this.current, book));
  }
}

/** Only a table of plain text can be read in more than one way. */
function bookOf({ bytes, name }: FileBytes, options: CsvOptions): Book {
  return Object.keys(options).length > 0 ? readCsv(bytes, name, options) : readBook(bytes, name, { looks: true });
}

/** Resolves when what was written is on the screen. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
}

interface CsvChoice {
  readonly options: CsvOptions;
  readonly again: (options: CsvOptions) => void;
}

/** The select boxes for what a table of plain text leaves open; undefined hides them. */
function csvChoice(choice: CsvChoice | undefined): void {
  element('csv-choice').hidden = choice === undefined;
  if (choice === undefined) return;
  const box = (id: string): HTMLSelectElement => element(id) as HTMLSelectElement;
  const [delimiter, decimal, dates] = [box('csv-delimiter'), box('csv-decimal'), box('csv-dates')] as const;
  delimiter.value = choice.options.delimiter ?? '';
  decimal.value = choice.options.decimal ?? '';
  dates.value = choice.options.dates ?? '';
  element('csv-again').onclick = () =>
    choice.again({
      ...(delimiter.value === '' ? {} : { delimiter: delimiter.value }),
      ...(decimal.value === 'point' || decimal.value === 'comma' ? { decimal: decimal.value } : {}),
      ...(dates.value === 'day first' || dates.value === 'month first' ? { dates: dates.value } : {}),
    });
}

/** Long enough for the browser to have taken the bytes over. [ms] */
const kept = 60_000;

/** Hands bytes to the person as a file of their browser's downloads. */
function download(bytes: Uint8Array, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), kept);
}
