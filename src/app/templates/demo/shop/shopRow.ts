/** A row of the shop's shared sheet, as somebody wrote it. */
export interface ShopRow {
  readonly system: string;
  /** [serial day] */
  when: number;
  /** mg/L, or what stands in the cell. */
  copper?: number | string;
  /** [mL] */
  dose?: number;
  /** [L] */
  change?: number;
  topOff?: number;
  /** [g/kg] */
  salinity?: number;
  /** [°C] */
  temperature?: number;
  fishIn?: string;
  fishOut?: string;
  dead?: number;
  eating?: string;
  note?: string;
  by: string;
}
