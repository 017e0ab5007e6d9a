declare const unit: unique symbol;

/** A number in a stated unit and basis. The unit exists only in the type; makers stand here and nowhere else. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Litres = Quantity<'L'>;
export type Millilitres = Quantity<'mL'>;
export type Centimetres = Quantity<'cm'>;
/** Copper as the element, dissolved. */
export type CopperMgPerLitre = Quantity<'mg Cu/L'>;
/** Copper as the element in a dosing solution. */
export type CopperMgPerMl = Quantity<'mg Cu/mL'>;
/** Standard deviation of what a level wanders in one day. */
export type CopperPerRootDay = Quantity<'mg Cu/L/√day'>;
export type CopperMilligrams = Quantity<'mg Cu'>;
export type SaltGrams = Quantity<'g salt'>;
export type GramsPerMole = Quantity<'g/mol'>;
/** Days of the wall clock since the sheet's day 0; a day has 24 hours, there is no zone. */
export type SerialDay = Quantity<'serial day'>;
export type Days = Quantity<'days'>;
export type Hours = Quantity<'h'>;
export type Celsius = Quantity<'°C, ITS-90'>;
export type Celsius68 = Quantity<'°C, IPTS-68'>;
/** Practical salinity, written g/kg by keepers. */
export type PracticalSalinity = Quantity<'PSS-78'>;
/** From 0 to 1. */
export type Fraction = Quantity<'1'>;
export type AmmoniaMgPerLitre = Quantity<'mg NH3/L'>;
export type AmmoniaNitrogenMgPerLitre = Quantity<'mg N/L'>;
/** Total ammonia in a basis that is said beside it. */
export type TotalAmmoniaMgPerLitre = Quantity<'mg/L, as N or as NH3'>;
export type PhNbs = Quantity<'pH, NBS'>;
export type KilogramsPerCubicMetre = Quantity<'kg/m3'>;
export type SpecificGravity = Quantity<'specific gravity'>;
/** Negative decimal logarithm of the dissociation constant of ammonium, at the water's own temperature and salinity. */
export type AmmoniumPka = Quantity<'pKa'>;
export type IonicStrength = Quantity<'mol/kg'>;

export const litres = (x: number): Litres => x as Litres;
export const millilitres = (x: number): Millilitres => x as Millilitres;
export const centimetres = (x: number): Centimetres => x as Centimetres;
export const copperMgPerLitre = (x: number): CopperMgPerLitre => x as CopperMgPerLitre;
export const copperMgPerMl = (x: number): CopperMgPerMl => x as CopperMgPerMl;
export const copperPerRootDay = (x: number): CopperPerRootDay => x as CopperPerRootDay;
export const copperMilligrams = (x: number): CopperMilligrams => x as CopperMilligrams;
export const saltGrams = (x: number): SaltGrams => x as SaltGrams;
export const gramsPerMole = (x: number): GramsPerMole => x as GramsPerMole;
export const serialDay = (x: number): SerialDay => x as SerialDay;
export const days = (x: number): Days => x as Days;
export const hours = (x: number): Hours => x as Hours;
export const celsius = (x: number): Celsius => x as Celsius;
export const celsius68 = (x: number): Celsius68 => x as Celsius68;
export const practicalSalinity = (x: number): PracticalSalinity => x as PracticalSalinity;
export const fraction = (x: number): Fraction => x as Fraction;
export const ammoniaMgPerLitre = (x: number): AmmoniaMgPerLitre => x as AmmoniaMgPerLitre;
export const ammoniaNitrogenMgPerLitre = (x: number): AmmoniaNitrogenMgPerLitre => x as AmmoniaNitrogenMgPerLitre;
export const totalAmmoniaMgPerLitre = (x: number): TotalAmmoniaMgPerLitre => x as TotalAmmoniaMgPerLitre;
export const phNbs = (x: number): PhNbs => x as PhNbs;
export const kilogramsPerCubicMetre = (x: number): KilogramsPerCubicMetre => x as KilogramsPerCubicMetre;
export const specificGravity = (x: number): SpecificGravity => x as SpecificGravity;
export const ammoniumPka = (x: number): AmmoniumPka => x as AmmoniumPka;
export const ionicStrength = (x: number): IonicStrength => x as IonicStrength;

/** Hours in a day: the wall clock of a sheet knows no summer time. */
export const hoursPerDay = 24;
/** Less than this apart is one instant. */
export const instantDays = 0.5 / 86400;
/** Limits of time hold to within this. */
export const secondDays = 1 / 86400;
/** Levels are compared to within this. [mg/L] */
export const levelTolerance = 1e-9;
