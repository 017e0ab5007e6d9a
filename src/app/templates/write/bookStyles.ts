import type { NewFile, Style } from 'excelize-wasm';
import { done } from './loadExcelize.js';
import { type Look, looks, type Tone, tones } from '../plan/looks.js';

/** The styles of one workbook, each made once. */
export class BookStyles {
  private readonly cells = new Map<string, number>();
  private readonly tones = new Map<Tone, number>();

  constructor(private readonly file: NewFile) {}

  /** A look with a number format; `''` for none. */
  cell(look: Look, format: string): number {
    const key = `${look} ${format}`;
    const known = this.cells.get(key);
    if (known !== undefined) return known;
    const style: Style = format === '' ? looks[look] : { ...looks[look], CustomNumFmt: format };
    const made = done(this.file.NewStyle(style), `style ${key}`).style;
    this.cells.set(key, made);
    return made;
  }

  tone(tone: Tone): number {
    const known = this.tones.get(tone);
    if (known !== undefined) return known;
    const made = done(this.file.NewConditionalStyle(tones[tone]), `tone ${tone}`).style;
    this.tones.set(tone, made);
    return made;
  }
}
