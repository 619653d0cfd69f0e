// What an act may take, and in which units it may be typed. Read by the parser, the help and the misread cards.

/** What a piece of a line can be. */
export type Kind =
  | 'mass'
  | 'volume'
  | 'temperature'
  | 'percent'
  | 'length'
  | 'area'
  | 'film'
  | 'duration'
  | 'number'
  | 'word';

/** In the base unit of the kind. What lies outside is a slip of the thumb, never a reading. */
export interface Limits {
  readonly lowest: number;
  readonly highest: number;
  readonly unit: string;
  /** The lowest itself cannot be either: nobody mixes 0 kg. */
  readonly above?: boolean;
}

export interface SlotRow {
  readonly kinds: readonly Kind[];
  readonly units: readonly string[];
  readonly limits?: Limits;
}

const massUnits = ['g', 'kg', 'lb', 'oz'];
const temperatureUnits = ['C', 'F'];
const filmUnits = ['um', 'mil'];
const word: SlotRow = { kinds: ['word'], units: [] };
const temperature = (lowest: number, highest: number): SlotRow => ({
  kinds: ['temperature'],
  units: temperatureUnits,
  limits: { lowest, highest, unit: 'degC' },
});
const film: SlotRow = { kinds: ['film'], units: filmUnits, limits: { lowest: 0, highest: 10_000, unit: 'um' } };

// The limits only catch slips (240 for 24). From memory of what shops, ovens and pots can be, no source.
const rows = {
  amount: {
    kinds: ['mass', 'volume'],
    units: ['kg', 'lb', 'L', 'g', 'oz', 'mL', 'gal', 'fl oz'],
    // A tonne, or 1,000 L: the number is the same for both.
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  sheet: word,
  batch: { kinds: ['number'], units: [], limits: { lowest: 1, highest: 1_000_000, unit: '' } },
  'part-a': {
    kinds: ['mass'],
    units: massUnits,
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  'part-b': {
    kinds: ['mass'],
    units: massUnits,
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  component: word,
  lot: word,
  expiry: word,
  handling: word,
  can: { kinds: ['number'], units: [], limits: { lowest: 1, highest: 1_000_000, unit: '' } },
  'can-mass': {
    kinds: ['mass'],
    units: ['kg', 'lb', 'g'],
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  'can-volume': {
    kinds: ['volume'],
    units: ['L', 'gal'],
    limits: { lowest: 0, highest: 1_000_000, unit: 'mL', above: true },
  },
  vessel: {
    kinds: ['volume'],
    units: ['L', 'gal'],
    limits: { lowest: 0, highest: 1_000_000, unit: 'mL', above: true },
  },
  added: { kinds: ['mass'], units: massUnits, limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true } },
  caught: { kinds: ['mass'], units: massUnits, limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true } },
  left: { kinds: ['mass'], units: massUnits, limits: { lowest: 0, highest: 1_000_000, unit: 'g' } },
  part: word,
  parts: word,
  method: word,
  way: word,
  place: word,
  reason: word,
  serial: word,
  job: word,
  customer: word,
  metal: word,
  wall: {
    kinds: ['length'],
    units: ['mm', 'cm', 'in'],
    limits: { lowest: 0, highest: 2_000, unit: 'mm', above: true },
  },
  area: { kinds: ['area'], units: ['m2', 'ft2'], limits: { lowest: 0, highest: 10_000, unit: 'm2', above: true } },
  'air-temperature': temperature(-40, 60),
  // Below it there is no dew point in any room that is coated in, and no hygrometer shows it.
  humidity: { kinds: ['percent'], units: ['%'], limits: { lowest: 0.1, highest: 100, unit: '%' } },
  'surface-temperature': temperature(-40, 120),
  'lowest-temperature': temperature(-40, 60),
  'part-temperature': temperature(-40, 400),
  'oven-temperature': temperature(0, 400),
  'highest-temperature': temperature(0, 1_500),
  'wet-film': film,
  'dry-film': film,
  grade: word,
  profile: { kinds: ['film'], units: filmUnits, limits: { lowest: 0, highest: 1_000, unit: 'um', above: true } },
  salts: { kinds: ['word'], units: ['mg/m2'], limits: { lowest: 0, highest: 10_000, unit: 'mg/m2' } },
  dust: { kinds: ['number'], units: [], limits: { lowest: 0, highest: 5, unit: '' } },
  pass: word,
  'door-time': {
    kinds: ['duration'],
    units: ['min', 'h'],
    limits: { lowest: 0, highest: 240, unit: 'min', above: true },
  },
  rating: word,
  rubs: { kinds: ['number'], units: [], limits: { lowest: 1, highest: 1_000, unit: '' } },
  'rub-result': word,
  coupon: word,
  // Longer is no snooze: whoever puts a bell off for an hour has forgotten it.
  'snooze-time': { kinds: ['duration'], units: ['min'], limits: { lowest: 1, highest: 60, unit: 'min' } },
  ring: word,
  'on-or-off': word,
  person: word,
  act: word,
  change: word,
  setting: word,
  'air-limit': { kinds: ['duration'], units: ['h', 'min'], limits: { lowest: 1, highest: 10_080, unit: 'min' } },
  'digest-hour': { kinds: ['number'], units: [], limits: { lowest: 0, highest: 23, unit: 'h' } },
  'morning-hour': { kinds: ['number'], units: [], limits: { lowest: 0, highest: 23, unit: 'h' } },
  rate: { kinds: ['word'], units: ['m2/h', 'ft2/h'] },
  'ready-time': word,
  'unit-system': word,
  'crew-name': word,
  zone: word,
  role: word,
  language: word,
  rings: word,
  time: { kinds: ['word'], units: [] },
  'time-ago': { kinds: ['duration'], units: ['min', 'h'] },
  session: { kinds: ['number'], units: [], limits: { lowest: 1, highest: 1_000_000, unit: '' } },
  'starts-at': word,
  people: word,
  whereabouts: word,
  'fan-state': word,
  'face-velocity': { kinds: ['word'], units: ['m/s', 'fpm'], limits: { lowest: 0, highest: 20, unit: 'm/s' } },
  'yes-or-no': word,
  'spray-rate': {
    kinds: ['mass'],
    units: massUnits,
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  gear: word,
  solvent: word,
  'flush-volume': {
    kinds: ['volume'],
    units: ['mL', 'L', 'fl oz'],
    limits: { lowest: 0, highest: 200_000, unit: 'mL' },
  },
  'until-day': word,
  told: word,
  'wet-load': { kinds: ['mass'], units: massUnits, limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true } },
  gas: word,
  'gas-volume': { kinds: ['word'], units: ['L', 'm3'] },
  'room-volume': {
    kinds: ['word'],
    units: ['m3', 'L'],
    limits: { lowest: 0, highest: 100_000, unit: 'm3', above: true },
  },
  work: word,
  'brief-ahead': { kinds: ['duration'], units: ['min', 'h'], limits: { lowest: 1, highest: 1_440, unit: 'min' } },
  'lel-share': { kinds: ['percent'], units: ['%'], limits: { lowest: 1, highest: 25, unit: '%' } },
  'mixing-factor': { kinds: ['number'], units: [], limits: { lowest: 1, highest: 100, unit: '' } },
  'quiet-hours': word,
  'emergency-field': word,
  verb: word,
  material: word,
  'solvent-amount': {
    kinds: ['mass', 'volume'],
    units: ['mL', 'L', 'g', 'kg', 'fl oz', 'gal', 'oz', 'lb'],
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  use: word,
  which: word,
  span: word,
  traced: word,
  sought: word,
  form: word,
  hash: word,
  file: word,
  // Of a time: what is typed is `300kg/month`.
  'voc-limit': { kinds: ['word'], units: ['kg/month', 'lb/month', 'kg/day', 'kg/year'] },
  day: word,
} satisfies Record<string, SlotRow>;

export type Slot = keyof typeof rows;
export const slots: Readonly<Record<Slot, SlotRow>> = rows;

export function isOutside(limits: Limits, value: number): boolean {
  return value < limits.lowest || value > limits.highest || (limits.above === true && value === limits.lowest);
}
