/** A chart as plain data. */
export interface ChartPlan {
  /** The cell of its upper left corner. */
  readonly at: string;
  readonly kind: 'scatter' | 'columns';
  /** In pixels. */
  readonly size: { readonly width: number; readonly height: number };
  readonly name: string;
  readonly title: string;
  /** The text alternative. */
  readonly alt: string;
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  readonly series: readonly ChartSeries[];
}

export interface ChartAxis {
  readonly title: string;
  readonly format: string;
  readonly from?: number;
}

/** Points of one kind. Cells are absolute references with their sheet, such as `Chart!$H$40:$H$439`. */
export interface ChartSeries {
  readonly name: string;
  readonly across: string;
  readonly up: string;
  readonly draws: 'marks' | 'line' | 'thinLine' | 'limit' | 'columns';
}
