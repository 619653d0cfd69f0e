// Figures of an act that lie outside what is usual: asked about once, each with the acts that may have been meant. Told as
// what has happened, they stand as they were read.

import type { Command, CommandOf, Verb } from './commands.ts';
import { personIn } from './crew/crew.ts';
import { jobLimits } from './crew/job-limits.ts';
import type { UnitSystem } from './crew/unit-system.ts';
import type { PersonName } from './ids.ts';
import { known } from './known.ts';
import { isBetween, type Meant, type Measure, meantBy } from './misread-units.ts';
import { filmSheet } from './part/film-rule.ts';
import type { Sheet } from './products/sheet.ts';
import type { FilmRule } from './products/sheet-part.ts';
import { batchOf, type Shop } from './shop.ts';
import {
  celsius,
  epochMs,
  grams,
  litres,
  type Micrometres,
  metresPerSecond,
  micrometres,
  minutes,
  percent,
  squareMetres,
} from './units.ts';
import { type RangedSlot, timesTheSheets, usualRanges } from './usual-ranges.ts';

export interface FarFigure {
  readonly slot: RangedSlot;
  /** In the slot's base unit: all readings of the gauge of which one lies outside. */
  readonly values: readonly number[];
  readonly lowest: number;
  readonly highest: number;
  /** By the sheet of the part's last coat. */
  readonly bySheet: boolean;
  readonly meant: readonly { readonly values: readonly number[]; readonly command: Command }[];
}

/** One figure of a command, or several readings of one gauge, and the command with others in their place. */
interface Told {
  readonly slot: RangedSlot;
  readonly measure: Measure;
  readonly values: readonly number[];
  readonly having: (values: readonly number[]) => Command;
  readonly range?: { readonly lowest: number; readonly highest: number } | undefined;
}

/** `by`: who says it, since they read in units of their own. */
export function farFigures(shop: Shop, command: Command, by: PersonName): readonly FarFigure[] {
  const { units } = personIn(shop.crew, by);
  return toldIn(shop, command.verb, command).flatMap((told) => farFrom(told, units));
}

function farFrom({ slot, measure, values, having, range: ofSheet }: Told, units: UnitSystem): readonly FarFigure[] {
  const { lowest, highest } = ofSheet ?? usualRanges[slot];
  const outside = values.filter((value) => !isBetween(value, { lowest, highest }));
  const isThin = ofSheet !== undefined && outside.every((value) => value < lowest);
  const all = meantBy(measure, values, { lowest, highest }, units);
  const meant = isThin ? all.filter((each) => isOfSheet(each, lowest, highest)) : all;
  if (outside.length === 0 || (isThin && meant.length === 0)) return [];
  const acts = meant.map((each: Meant) => ({ values: each.values, command: having(each.values) }));
  return [{ slot, values, lowest, highest, bySheet: ofSheet !== undefined, meant: acts }];
}

/** Little film is a bare spot, unless another unit or a decimal sign makes just the sheet's of it. */
function isOfSheet({ values }: Meant, lowest: number, highest: number): boolean {
  const own = { lowest: lowest * timesTheSheets, highest: highest / timesTheSheets };
  return values.every((value) => isBetween(value, own));
}

type Tellers = { readonly [V in Verb]?: (command: CommandOf<V>, shop: Shop) => readonly Told[] };

function toldIn<V extends Verb>(shop: Shop, verb: V, command: CommandOf<V>): readonly Told[] {
  return tellers[verb]?.(command, shop) ?? [];
}

function temperature(
  slot: RangedSlot,
  value: number | undefined,
  having: (celsius: number) => Command,
): readonly Told[] {
  return one(slot, 'temperature', value, having);
}

function one(
  slot: RangedSlot,
  measure: Measure,
  value: number | undefined,
  having: (value: number) => Command,
): readonly Told[] {
  return value === undefined ? [] : [{ slot, measure, values: [value], having: ([other = value]) => having(other) }];
}

const tellers: Tellers = {
  air: (said) => [
    ...temperature('air-temperature', said.air.celsius, (to) => ({
      ...said,
      air: { ...said.air, celsius: celsius(to) },
    })),
    ...one('humidity', 'percent', said.air.relativeHumidityPercent, (to) => ({
      ...said,
      air: { ...said.air, relativeHumidityPercent: percent(to) },
    })),
  ],
  mix: (said) => [
    ...temperature('air-temperature', said.air?.celsius, (to) => ({
      ...said,
      air: { ...said.air, celsius: celsius(to) },
    })),
    ...one('humidity', 'percent', said.air?.relativeHumidityPercent, (to) => ({
      ...said,
      air: { ...said.air, relativeHumidityPercent: percent(to) },
    })),
  ],
  surface: (said) => temperature('surface-temperature', said.celsius, (to) => ({ ...said, celsius: celsius(to) })),
  night: (said) =>
    temperature('lowest-temperature', said.lowestCelsius, (to) => ({ ...said, lowestCelsius: celsius(to) })),
  temp: (said) => temperature('part-temperature', said.celsius, (to) => ({ ...said, celsius: celsius(to) })),
  cure: (said) => {
    const { way } = said;
    return way.kind === 'oven'
      ? temperature('oven-temperature', way.setCelsius, (to) => ({ ...said, way: { ...way, setCelsius: celsius(to) } }))
      : [];
  },
  part: (said) =>
    temperature('highest-temperature', said.details.highestCelsius, (to) => ({
      ...said,
      details: { ...said.details, highestCelsius: celsius(to) },
    })),
  wet: (said, shop) => [
    {
      ...{ slot: 'wet-film', measure: 'film', values: said.wetFilmMicrometres },
      having: (to) => ({ ...said, wetFilmMicrometres: to.map(micrometres) }),
      range: wetAsked(shop, said.part),
    },
  ],
  film: (said, shop) => {
    const values = [
      ...(said.dryFilmMicrometres ?? []),
      ...(said.spots ?? []).flatMap(({ micrometres }) => micrometres),
    ];
    const range = dryAsked(shop, said.part);
    return values.length === 0
      ? []
      : [{ slot: 'dry-film', measure: 'film', values, range, having: (to) => filmHaving(said, to.map(micrometres)) }];
  },
  open: (said) => one('can-mass', 'mass', said.grams, (to) => ({ ...said, grams: grams(to) })),
  received: (said) => one('can-mass', 'mass', said.grams, (to) => ({ ...said, grams: grams(to) })),
  door: (said) => one('door-time', 'duration', said.openMinutes, (to) => ({ ...said, openMinutes: minutes(to) })),
  // A brush or a tray takes little.
  flush: (said) =>
    said.gear === 'gun' ? one('flush-volume', 'volume', said.litres, (to) => ({ ...said, litres: litres(to) })) : [],
  fan: (said) =>
    one('face-velocity', 'speed', said.faceMetresPerSecond, (to) => ({
      ...said,
      faceMetresPerSecond: metresPerSecond(to),
    })),
  o2: (said) => one('gas-share', 'gas-share', said.value, (to) => ({ ...said, value: percent(to) })),
  gases: (said) => one('gas-share', 'gas-share', said.o2, (to) => ({ ...said, o2: percent(to) })),
  set: (said) => {
    const { setting } = said;
    return setting.name === 'booth'
      ? one('area', 'area', setting.faceSquareMetres, (to) => ({
          ...said,
          setting: { ...setting, faceSquareMetres: squareMetres(to) },
        }))
      : [];
  },
};

/** The same readings of the same spots, each with another figure. */
function filmHaving(said: CommandOf<'film'>, to: readonly Micrometres[]): CommandOf<'film'> {
  let from = said.dryFilmMicrometres?.length ?? 0;
  const spots = said.spots?.map((spot) => {
    const micrometres = to.slice(from, from + spot.micrometres.length);
    from += spot.micrometres.length;
    return { ...spot, micrometres };
  });
  const readings = said.dryFilmMicrometres && to.slice(0, said.dryFilmMicrometres.length);
  return { ...said, ...known({ dryFilmMicrometres: readings, spots }) };
}

function sheetOn(shop: Shop, name: string): Sheet | undefined {
  const part = shop.parts.get(name);
  return part && batchOf(shop, part)?.sheet;
}

/** What its job asks as it stands; a figure within it is no slip, however far from the sheet's film. */
const everAfter = epochMs(Number.MAX_SAFE_INTEGER);

function dryAsked(shop: Shop, name: string): Told['range'] {
  const part = shop.parts.get(name);
  const sheet = part && filmSheet(shop, part, everAfter);
  const isAsked = part && sheet?.filmRule !== batchOf(shop, part)?.sheet.filmRule;
  return isAsked === true ? ofRule(sheet?.filmRule) : dryFilmsOf(sheetOn(shop, name));
}

function wetAsked(shop: Shop, name: string): Told['range'] {
  const limits = jobLimits(shop.crew, shop.parts.get(name)?.details.job, everAfter);
  const asked = limits?.tests?.find(({ of }) => of === 'wet');
  if (asked?.of !== 'wet') return filmsOf(sheetOn(shop, name), 'wet');
  return { lowest: asked.leastMicrometres / timesTheSheets, highest: asked.mostMicrometres * timesTheSheets };
}

function ofRule(rule: FilmRule | undefined): Told['range'] {
  if (rule === undefined) return undefined;
  const least = rule.rule === 'iso-19840' ? rule.nominalMicrometres : rule.leastMicrometres;
  return { lowest: least / timesTheSheets, highest: rule.mostMicrometres * timesTheSheets };
}

/** By its range, or where the sheet gives none by the rule that judges it. */
function dryFilmsOf(sheet: Sheet | undefined): Told['range'] {
  const rule = sheet?.filmRule;
  return sheet?.film !== undefined || rule === undefined ? filmsOf(sheet, 'dry') : ofRule(rule);
}

/** Of one coat; `undefined` where the sheet gives none. */
function filmsOf(sheet: Sheet | undefined, state: 'wet' | 'dry'): Told['range'] {
  const film = sheet?.film;
  if (film === undefined) return undefined;
  const perDry = state === 'wet' ? 100 / film.volumeSolidsPercent : 1;
  return {
    lowest: (film.lowestDryMicrometres * perDry) / timesTheSheets,
    highest: film.highestDryMicrometres * perDry * timesTheSheets,
  };
}
