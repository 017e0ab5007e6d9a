/** How a cell looks, apart from its number format; what is left out is as in a cell without any style. */
export interface CellLook {
  readonly bold?: true;
  readonly italic?: true;
  readonly underline?: true;
  readonly struck?: true;
  readonly font?: string;
  /** Of the letters, in points. */
  readonly size?: number;
  /** Of the letters, such as `#1c2b33`. */
  readonly colour?: string;
  /** Of the paper. */
  readonly fill?: string;
  /** Left out: texts to the left, numbers to the right. */
  readonly across?: 'left' | 'center' | 'right' | 'justify';
  /** Left out: at the bottom. */
  readonly upright?: 'top' | 'center';
  readonly wrap?: true;
  /** Steps of about one letter and a half. */
  readonly indent?: number;
  readonly borders?: Readonly<Partial<Record<BorderSide, BorderLine>>>;
}

export type BorderSide = 'top' | 'right' | 'bottom' | 'left';

export interface BorderLine {
  readonly line: LineKind;
  /** Left out: that of the letters. */
  readonly colour?: string;
}

export type LineKind = 'hair' | 'thin' | 'medium' | 'thick' | 'dotted' | 'dashed' | 'dash-dot' | 'double';
