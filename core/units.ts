// Branded units and their checked makers, with the exact conversions between them. Metric inside; imperial only at
// the edges. A brand stops a wrong argument; the unit in the name stops a wrong reading. No wording, no rounding.

declare const unit: unique symbol;
type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Grams = Quantity<'g'>;
export type Litres = Quantity<'L'>;
export type Millilitres = Quantity<'mL'>;
export type KilogramsPerLitre = Quantity<'kg/L'>;
export type GramsPerLitre = Quantity<'g/L'>;
export type Fraction = Quantity<'fraction'>;
export type Percent = Quantity<'%'>;
export type Celsius = Quantity<'degC'>;
/** A difference of two temperatures: 5 degF of spread is 2.8 degC, never -15. */
export type CelsiusSpread = Quantity<'degC difference'>;
export type Kelvin = Quantity<'K'>;
export type Pascals = Quantity<'Pa'>;
export type MilligramsPerCubicMetre = Quantity<'mg/m3'>;
export type PartsPerMillion = Quantity<'ppm'>;
export type Minutes = Quantity<'min'>;
export type Hours = Quantity<'h'>;
export type EpochMs = Quantity<'ms since 1970'>;
export type Micrometres = Quantity<'um'>;
export type Millimetres = Quantity<'mm'>;
export type Metres = Quantity<'m'>;
export type SquareMetres = Quantity<'m2'>;
export type SquareMetresPerHour = Quantity<'m2/h'>;
export type SquareCentimetres = Quantity<'cm2'>;
export type CubicMetres = Quantity<'m3'>;
export type CubicMetresPerHour = Quantity<'m3/h'>;
export type CubicMetresPerLitre = Quantity<'m3/L'>;
export type LitresPerMinute = Quantity<'L/min'>;
export type MetresPerSecond = Quantity<'m/s'>;
export type SquareMetresPerLitre = Quantity<'m2/L'>;
export type KilojoulesPerMole = Quantity<'kJ/mol'>;
export type GramsPerMole = Quantity<'g/mol'>;
export type MicrosiemensPerCentimetre = Quantity<'uS/cm'>;
export type Megapascals = Quantity<'MPa'>;
export type Volts = Quantity<'V'>;
export type MilligramsPerSquareMetre = Quantity<'mg/m2'>;
export type RevolutionsPerMinute = Quantity<'rpm'>;

function maker<Q extends number>(name: string, lowest = Number.NEGATIVE_INFINITY, highest = Number.POSITIVE_INFINITY) {
  return (value: number): Q => {
    if (!Number.isFinite(value) || value < lowest || value > highest) {
      throw new RangeError(`${value} is not a value in ${name} (from ${lowest} to ${highest})`);
    }
    return value as Q;
  };
}

export const grams = maker<Grams>('grams', 0);
export const litres = maker<Litres>('litres', 0);
export const millilitres = maker<Millilitres>('millilitres', 0);
export const kilogramsPerLitre = maker<KilogramsPerLitre>('kilograms per litre', 0);
export const gramsPerLitre = maker<GramsPerLitre>('grams per litre', 0);
export const fraction = maker<Fraction>('a fraction', 0, 1);
export const percent = maker<Percent>('per cent');
export const celsius = maker<Celsius>('degrees Celsius', -273.15);
export const celsiusSpread = maker<CelsiusSpread>('degrees Celsius of difference');
export const kelvin = maker<Kelvin>('kelvin', 0);
export const pascals = maker<Pascals>('pascals', 0);
export const milligramsPerCubicMetre = maker<MilligramsPerCubicMetre>('milligrams per cubic metre', 0);
export const partsPerMillion = maker<PartsPerMillion>('parts per million', 0);
export const minutes = maker<Minutes>('minutes');
export const hours = maker<Hours>('hours');
export const epochMs = maker<EpochMs>('milliseconds since 1970');
export const micrometres = maker<Micrometres>('micrometres');
export const millimetres = maker<Millimetres>('millimetres', 0);
export const metres = maker<Metres>('metres', 0);
export const squareMetres = maker<SquareMetres>('square metres', 0);
export const squareMetresPerHour = maker<SquareMetresPerHour>('square metres per hour', 0);
export const squareCentimetres = maker<SquareCentimetres>('square centimetres', 0);
export const cubicMetres = maker<CubicMetres>('cubic metres', 0);
export const cubicMetresPerHour = maker<CubicMetresPerHour>('cubic metres per hour', 0);
export const cubicMetresPerLitre = maker<CubicMetresPerLitre>('cubic metres per litre', 0);
export const litresPerMinute = maker<LitresPerMinute>('litres per minute', 0);
export const metresPerSecond = maker<MetresPerSecond>('metres per second', 0);
export const squareMetresPerLitre = maker<SquareMetresPerLitre>('square metres per litre', 0);
export const kilojoulesPerMole = maker<KilojoulesPerMole>('kilojoules per mole', 0);
export const gramsPerMole = maker<GramsPerMole>('grams per mole', 0);
export const microsiemensPerCentimetre = maker<MicrosiemensPerCentimetre>('microsiemens per centimetre', 0);
export const milligramsPerSquareMetre = maker<MilligramsPerSquareMetre>('milligrams per square metre', 0);
export const megapascals = maker<Megapascals>('megapascals', 0);
export const volts = maker<Volts>('volts', 0);
export const revolutionsPerMinute = maker<RevolutionsPerMinute>('revolutions per minute', 0);

// Exact by definition; the same values as NIST SP 811 lists.
const gramsPerPound = 453.59237;
const gramsPerOunce = 28.349523125;
const litresPerUsGallon = 3.785411784;
const litresPerUsFluidOunce = 0.0295735295625;
const micrometresPerMil = 25.4;
const squareMetresPerSquareFoot = 0.09290304;
const millimetresPerInch = 25.4;
const cubicMetresPerCubicFoot = 0.028316846592;
const metresPerFoot = 0.3048;
/** Of a pound-force (4.4482216152605 N) on a square inch. */
const megapascalsPerPsi = 4.4482216152605 / (25.4 * 25.4);

export const megapascalsFromPsi = (pressure: number): Megapascals => megapascals(pressure * megapascalsPerPsi);
export const psiFromMegapascals = (pressure: Megapascals): number => pressure / megapascalsPerPsi;
export const gramsFromKilograms = (kilograms: number): Grams => grams(kilograms * 1000);
export const gramsFromPounds = (pounds: number): Grams => grams(pounds * gramsPerPound);
export const gramsFromOunces = (ounces: number): Grams => grams(ounces * gramsPerOunce);
export const ouncesFromGrams = (mass: Grams): number => mass / gramsPerOunce;
export const litresFromMillilitres = (volume: number): Litres => litres(volume / 1000);
export const litresFromUsGallons = (gallons: number): Litres => litres(gallons * litresPerUsGallon);
export const poundsPerGallonFromGramsPerLitre = (content: GramsPerLitre): number =>
  (content * litresPerUsGallon) / gramsPerPound;
export const usGallonsFromLitres = (volume: Litres): number => volume / litresPerUsGallon;
export const litresFromUsFluidOunces = (ounces: number): Litres => litres(ounces * litresPerUsFluidOunce);
export const celsiusFromFahrenheit = (fahrenheit: number): Celsius => celsius(((fahrenheit - 32) * 5) / 9);
export const fahrenheitFromCelsius = (temperature: Celsius): number => (temperature * 9) / 5 + 32;
export const celsiusSpreadFromFahrenheit = (fahrenheit: number): CelsiusSpread => celsiusSpread((fahrenheit * 5) / 9);
export const fahrenheitSpreadFromCelsius = (spread: CelsiusSpread): number => (spread * 9) / 5;
export const kelvinFromCelsius = (temperature: Celsius): Kelvin => kelvin(temperature + 273.15);
export const micrometresFromMils = (mils: number): Micrometres => micrometres(mils * micrometresPerMil);
export const milsFromMicrometres = (film: Micrometres): number => film / micrometresPerMil;
export const millimetresFromInches = (inches: number): Millimetres => millimetres(inches * millimetresPerInch);
export const inchesFromMillimetres = (length: Millimetres): number => length / millimetresPerInch;
export const squareMetresFromSquareFeet = (feet: number): SquareMetres =>
  squareMetres(feet * squareMetresPerSquareFoot);
export const squareFeetFromSquareMetres = (area: SquareMetres): number => area / squareMetresPerSquareFoot;
export const cubicMetresFromCubicFeet = (feet: number): CubicMetres => cubicMetres(feet * cubicMetresPerCubicFoot);
export const litresPerMinuteFromCubicFeetPerHour = (flow: number): LitresPerMinute =>
  litresPerMinute((flow * cubicMetresPerCubicFoot * 1000) / 60);
export const cubicFeetPerHourFromLitresPerMinute = (flow: LitresPerMinute): number =>
  (flow * 60) / (cubicMetresPerCubicFoot * 1000);
export const cubicFeetFromCubicMetres = (volume: CubicMetres): number => volume / cubicMetresPerCubicFoot;
export const cubicFeetPerMinuteFromCubicMetresPerHour = (flow: CubicMetresPerHour): number =>
  flow / (cubicMetresPerCubicFoot * 60);
export const cubicMetresPerLitreFromCubicFeetPerUsGallon = (feet: number): CubicMetresPerLitre =>
  cubicMetresPerLitre((feet * cubicMetresPerCubicFoot) / litresPerUsGallon);
export const metresPerSecondFromFeetPerMinute = (feet: number): MetresPerSecond =>
  metresPerSecond((feet * metresPerFoot) / 60);
export const feetPerMinuteFromMetresPerSecond = (speed: MetresPerSecond): number => (speed * 60) / metresPerFoot;

const msPerMinute = 60_000;
export const minutesBetween = (from: EpochMs, to: EpochMs): Minutes => minutes((to - from) / msPerMinute);
export const minutesAfter = (from: EpochMs, duration: Minutes): EpochMs => epochMs(from + duration * msPerMinute);
