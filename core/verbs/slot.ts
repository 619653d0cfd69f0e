// What an act can be told: one maker for each kind of value. It knows the units that may be typed and the limits beyond
// which a figure is a slip of the thumb, and gives the command's field its type. A slot's name is what each tongue labels.

import type { PartName, PersonName, PlaceName, SheetId } from '../ids.ts';
import type {
  Celsius,
  EpochMs,
  Grams,
  Litres,
  Megapascals,
  MetresPerSecond,
  Micrometres,
  MicrosiemensPerCentimetre,
  MilligramsPerCubicMetre,
  MilligramsPerSquareMetre,
  Millimetres,
  Minutes,
  Percent,
  RevolutionsPerMinute,
  SquareMetres,
  Volts,
} from '../units.ts';
import type { AirSaid, Amount } from './said.ts';
import type { BaseUnit, Kind, Limits, NamedSlot, SlotRow } from './slot-row.ts';

/** How a field stands on a line: its reader and its printing go by it. */
export type ToldAs =
  | 'number'
  | 'numbers'
  | 'figure'
  | 'figures'
  | 'air'
  | 'amount'
  | 'part'
  | 'parts'
  | 'place'
  | 'sheet'
  | 'person'
  | 'people'
  | 'choice'
  | 'choices'
  | 'new'
  | 'text'
  | 'kind'
  | 'ring'
  | 'rings'
  | 'day'
  | 'instant'
  | 'own-words'
  | 'own-way';

export interface Options {
  /** The line does not read without it. */
  readonly required?: true;
  /** Of a list: the command has it in any case, if only empty. */
  readonly orNone?: true;
  /** A correction may put it right; the fact has it under the same name. */
  readonly amend?: true;
  /** Goes into the event as it was said and is told with the act; no rule reads it. */
  readonly noted?: true;
  /** The word that it stands behind, in the reader's spelling, where its unit alone says nothing: `in 5l`, `lot 7731`. */
  readonly behind?: string;
  /** What is offered where it was not said; left out, every word of a choice. */
  readonly offered?: readonly string[];
  /** What holds where nothing else was said. */
  readonly usual?: string;
  /** Of a yes or no: it is so where this field was told. */
  readonly shownBy?: string;
  /** The word before it where the verb's other figure is missing: `weigh 1 A 1201g`. */
  readonly alone?: string;
}

export interface FieldRow<Name extends string = string, O extends Options = Options> {
  readonly told: ToldAs;
  readonly slots: readonly NamedSlot<Name>[];
  readonly options: O | undefined;
  /** What can be chosen, each with the word that is printed of it. */
  readonly words: ReadonlyMap<unknown, string>;
  /** Which of a kind's words its second slot belongs to, and the name that the value has there. */
  readonly figure?: { readonly of: string; readonly as: string };
}

export interface Field<T = unknown, Name extends string = string, O extends Options = Options>
  extends FieldRow<Name, O> {
  /** Of its value; never there. */
  readonly type?: T;
}

/** Where the limits and units of a kind are not those that it has elsewhere. */
interface Span extends Partial<Limits> {
  readonly units?: readonly string[];
}

function row<const N extends string, const O extends Options>(
  told: ToldAs,
  slots: readonly NamedSlot<N>[],
  options: O | undefined,
  more: Partial<Pick<FieldRow, 'words' | 'figure'>> = {},
): FieldRow<N, O> {
  return { told, slots, options, words: new Map(), ...more };
}

function figure(kind: Kind, unit: BaseUnit, units: readonly string[], usual: Limits) {
  return <const N extends string, const O extends Options>(
    name: N,
    options: O | undefined,
    { units: own = units, ...span }: Span = {},
  ): FieldRow<N, O> =>
    row('figure', [{ name, kinds: [kind], units: own, limits: { ...usual, ...span }, unit }], options);
}

const massUnits = ['g', 'kg', 'lb', 'oz'];
// The limits only catch slips (240 for 24). From memory of what shops, ovens and pots can be, no source.
const tonne: Limits = { lowest: 0, highest: 1_000_000, unit: 'g', above: true };
const figures = {
  mass: figure('mass', 'g', massUnits, tonne),
  // The number of a tonne, or of 1,000 L, is the same for both.
  volume: figure('volume', 'L', ['L', 'gal'], { ...tonne, unit: 'mL' }),
  temperature: figure('temperature', 'C', ['C', 'F'], { lowest: -50, highest: 70, unit: 'degC' }),
  length: figure('length', 'mm', ['mm', 'cm', 'in'], { lowest: 0, highest: 2_000, unit: 'mm', above: true }),
  area: figure('area', 'm2', ['m2', 'ft2'], { lowest: 0, highest: 10_000, unit: 'm2', above: true }),
  film: figure('film', 'um', ['um', 'mil'], { lowest: 0, highest: 10_000, unit: 'um' }),
  duration: figure('duration', 'min', ['min', 'h'], { lowest: 0, highest: 240, unit: 'min', above: true }),
  speed: figure('word', 'm/s', ['m/s', 'fpm'], { lowest: 0, highest: 20, unit: 'm/s' }),
  salts: figure('word', 'mg/m2', ['mg/m2'], { lowest: 0, highest: 10_000, unit: 'mg/m2' }),
  conductivity: figure('word', 'uS/cm', ['uS/cm'], { lowest: 0, highest: 10_000, unit: 'uS/cm' }),
  share: figure('percent', '%', ['%'], { lowest: 0, highest: 100, unit: '%', above: true }),
  mist: figure('word', 'mg/m3', ['mg/m3', 'mg'], { lowest: 0, highest: 10_000, unit: 'mg/m3' }),
  pressure: figure('word', 'MPa', ['MPa', 'psi'], { lowest: 0, highest: 100, unit: 'MPa' }),
  gloss: figure('word', 'GU', ['GU'], { lowest: 0, highest: 2_000, unit: 'GU' }),
  voltage: figure('word', 'V', ['V', 'kV'], { lowest: 0, highest: 60_000, unit: 'V', above: true }),
  ppm: figure('word', 'ppm', ['ppm'], { lowest: 0, highest: 100_000, unit: 'ppm' }),
  turning: figure('word', 'rpm', ['rpm'], { lowest: 10, highest: 30_000, unit: 'rpm' }),
};

type Maker<T> = <const N extends string, const O extends Options = Options>(
  name: N,
  options?: O,
  span?: Span,
) => Field<T, N, O>;

export const mass: Maker<Grams> = figures.mass;
export const volume: Maker<Litres> = figures.volume;
export const temperature: Maker<Celsius> = figures.temperature;
export const length: Maker<Millimetres> = figures.length;
export const area: Maker<SquareMetres> = figures.area;
export const film: Maker<Micrometres> = figures.film;
export const duration: Maker<Minutes> = figures.duration;
export const share: Maker<Percent> = figures.share;
export const speed: Maker<MetresPerSecond> = figures.speed;
/** Of oil mist in air. */
export const mist: Maker<MilligramsPerCubicMetre> = figures.mist;
/** At which a dolly let go. */
export const pressure: Maker<Megapascals> = figures.pressure;
/** At 60 degrees. */
export const glossUnits: Maker<number> = figures.gloss;
/** Of a holiday test. */
export const voltage: Maker<Volts> = figures.voltage;
/** Of a vapour in air, as a monitor shows it. */
export const ppm: Maker<number> = figures.ppm;
/** Of a stirrer. */
export const turning: Maker<RevolutionsPerMinute> = figures.turning;
export const salts: Maker<MilligramsPerSquareMetre> = figures.salts;
/** Of the water that was on a patch of steel. */
export const conductivity: Maker<MicrosiemensPerCentimetre> = figures.conductivity;
/** Several readings of a gauge; the last unit covers all before it. */
export const films: Maker<readonly Micrometres[]> = (name, options, span) => ({
  ...figures.film(name, options, span),
  told: 'figures',
});

const counted = (lowest: number, highest: number): SlotRow => ({
  kinds: ['number'],
  units: [],
  limits: { lowest, highest, unit: '' },
});
export const count: Maker<number> = (name, options, { lowest = 1, highest = 1_000_000 } = {}) =>
  row('number', [{ name, ...counted(lowest, highest) }], options);
export const counts: Maker<readonly number[]> = (name, options) =>
  row('numbers', [{ name, ...counted(1, 1_000_000) }], options);

const word: SlotRow = { kinds: ['word'], units: [] };
const named =
  <T>(told: ToldAs): Maker<T> =>
  (name, options) =>
    row(told, [{ name, ...word }], options);

export const part: Maker<PartName> = named('part');
export const parts: Maker<readonly PartName[]> = named('parts');
export const place: Maker<PlaceName> = named('place');
export const sheet: Maker<SheetId> = named('sheet');
export const person: Maker<PersonName> = named('person');
export const people: Maker<readonly PersonName[]> = named('people');
export const ring: Maker<string> = named('ring');
/** Still to come. */
export const instant: Maker<EpochMs> = named('instant');
/** As typed; in quotes where it could be read as anything else. */
export const text: Maker<string> = named('text');
/** ISO, `2026-12-31`. */
export const day: Maker<string> = named('day');
/** The rest of the line, in somebody's own words. */
export const ownWords: Maker<string> = named('own-words');

/** One of several words; `printed`: where another word is printed of it. */
export function choice<const V extends string, const N extends string, const O extends Options = Options>(
  name: N,
  words: readonly V[],
  options?: O,
  printed?: Readonly<Partial<Record<V, string>>>,
): Field<V, N, O> {
  return row('choice', [{ name, ...word }], options, {
    words: new Map(words.map((each) => [each, printed?.[each] ?? each])),
  });
}

/** Any of these words, each printed as it is told apart on the line. */
export const choices = <const V extends string, const N extends string, const O extends Options = Options>(
  name: N,
  words: readonly V[],
  options: O,
  printed: (word: V) => string = (said) => said,
): Field<readonly V[], N, O> =>
  row('choices', [{ name, ...word }], options, { words: new Map(words.map((each) => [each, printed(each)])) });

/** One of several words, of which one may have a figure: `oven 90C`. */
export const kind =
  <T extends { readonly kind: string }>() =>
  <const N extends string, const M extends string, const O extends Options = Options>(
    name: N,
    words: readonly T['kind'][],
    { slots, ...figure }: { readonly of: T['kind']; readonly as: string } & Pick<FieldRow<M>, 'slots'>,
    options?: O,
  ): Field<T, N | M, O> =>
    row<N | M, O>('kind', [{ name, ...word }, ...slots], options, {
      words: new Map(words.map((each) => [each, each])),
      figure: { of: figure.of, as: figure.as },
    });

/** `on` or `off`, `yes` or `no`. */
export const yesOrNo = <const N extends string, const O extends Options = Options>(
  name: N,
  options: O,
  [yes, no]: readonly [string, string] = ['on', 'off'],
): Field<boolean, N, O> =>
  row('choice', [{ name, ...word }], options, {
    words: new Map([
      [true, yes],
      [false, no],
    ]),
  });

/** There or not: `coupon`. */
export const mark = <const N extends string>(name: N, printed: string): Field<true, N> =>
  row('choice', [{ name, ...word }], undefined, { words: new Map([[true, printed]]) });
/** `new`: whichever of the names nobody knows is a new part, or a new place. */
export const newPart: Field<true, never> = row('new', [], undefined, { words: new Map([[true, 'new']]) });

const liquidUnits = ['kg', 'lb', 'L', 'g', 'oz', 'mL', 'gal', 'fl oz'];
/** By weight or by volume. */
export const amount: Maker<Amount> = (name, options, { units = liquidUnits } = {}) =>
  row('amount', [{ name, kinds: ['mass', 'volume'], units, limits: tonne }], options);

const airTemperature = figures.temperature('air-temperature', undefined).slots;
// Below it there is no dew point in any room that is coated in, and no hygrometer shows it.
const humidity = figure('percent', '%', ['%'], { lowest: 0.1, highest: 100, unit: '%' })('humidity', undefined).slots;
/** Temperature, humidity or both. */
export const air = <const O extends Options>(options: O): Field<AirSaid, 'air-temperature' | 'humidity', O> =>
  row('air', [...airTemperature, ...humidity], options);

/** Read and printed by the verb's own reader; `slots`: what the line may hold of it. */
export const ownWay =
  <T>() =>
  <const N extends string, const O extends Options = Options>(
    slots: readonly FieldRow<N>[],
    options?: O,
  ): Field<T, N, O> =>
    row(
      'own-way',
      slots.flatMap((field) => field.slots),
      options,
    );
/** A slot of such a value that is told by a word or a name. */
export const spoken = <const N extends string>(name: N): FieldRow<N> => row('own-way', [{ name, ...word }], undefined);
/** What comes with the line of a tap, and nobody is asked for. */
export const unasked = <T, O extends Options = Options>(told: ToldAs, options?: O): Field<T, never, O> =>
  row(told, [], options);
