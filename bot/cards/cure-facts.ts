// How a cure stands, in figures and lines: what was given, when it is done and whether that was measured, the sheet's
// stages, the oven's door, and what the humidity held back.

import { humidityHeldBack } from '../../core/part/cure-humidity.ts';
import { assumedHeatTransfer, heatUp } from '../../core/part/heat-up.ts';
import { type Cure, type Part, phaseOfPart } from '../../core/part/part.ts';
import { cureClock, cureDue, stagesDue } from '../../core/part/part-clocks.ts';
import type { AirLog } from '../../core/place/place.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import { airLog, batchOf, byName, liveParts } from '../../core/shop.ts';
import { minutes } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import {
  countFact,
  minutesGivenFact,
  minutesWantedFact,
  notBeforeFact,
  type Telling,
  temperatureFact,
} from './card-context.ts';

export function cureFacts(t: Telling, part: Part, sheet: Sheet, air: AirLog): readonly CardFact[] {
  const { cure } = part;
  if (cure === undefined) return [];
  const read = part.temperatures.at(-1);
  const clock = cureClock(part, sheet, air, t.now);
  const warming = cure.run.to === undefined ? heatUp(part, sheet, air) : undefined;
  return [
    ...(read === undefined || cure.way !== 'oven' ? [] : [temperatureFact(t, 'part-temperature', read.celsius)]),
    ...(warming === undefined ? [] : [notBeforeFact(t, 'temp-due-at', warming.reachesAt)]),
    ...(clock === undefined
      ? []
      : [
          minutesGivenFact(
            t,
            'cure-given',
            minutes(clock.dose.ranMinutes - sum(Object.values(clock.dose.withoutFigureMinutes))),
          ),
        ]),
    ...stagesDue(part, sheet, air, t.now).map(({ stage, at }) => notBeforeFact(t, `stage-${stage}-at`, at)),
    ...dueFacts(t, part, sheet, air),
    ...doorFacts(t, cure),
  ];
}

/** A time that no reading on the part stands behind is called what it is. */
function dueFacts(t: Telling, part: Part, sheet: Sheet, air: AirLog): readonly CardFact[] {
  const due = cureDue(part, sheet, air);
  if (due === undefined) return [];
  const fact = notBeforeFact(t, 'cure-done-at', due.at);
  return [due.basis === 'readings' ? fact : { ...fact, label: t.words.parts.notMeasured(fact.label) }];
}

function doorFacts(t: Telling, { doors }: Cure): readonly CardFact[] {
  if (doors.length === 0) return [];
  const open = sum(doors.map(({ openMinutes }) => openMinutes ?? 0));
  return [
    countFact(t, 'door-openings', doors.length),
    ...(open === 0 ? [] : [minutesWantedFact(t, 'door-open', minutes(open))]),
  ];
}

/** What the due time rests on where nothing was measured; what the door and the humidity did. */
export function cureLines(t: Telling, part: Part, sheet: Sheet, air: AirLog): readonly string[] {
  const { cure } = part;
  if (cure === undefined) return [];
  return [...estimateLines(t, part, sheet, air), ...doorLines(t, cure), ...humidityLines(t, cure, sheet, air)];
}

function estimateLines(t: Telling, part: Part, sheet: Sheet, air: AirLog): readonly string[] {
  const due = cureDue(part, sheet, air);
  if (part.cure?.way !== 'oven' || part.cure.run.to !== undefined || due === undefined) return [];
  if (due.basis === 'readings') return [];
  const { parts } = t.words;
  const warming = heatUp(part, sheet, air);
  if (warming === undefined) return [parts.noEstimate];
  return [
    parts.estimate(t.f.temperature(warming.ovenCelsius), parts.start(warming.start), assumedHeatTransfer),
    parts.askAt(t.f.timeUp(warming.reachesAt)),
  ];
}

function doorLines(t: Telling, { doors }: Cure): readonly string[] {
  if (doors.length === 0) return [];
  const open = sum(doors.map(({ openMinutes }) => openMinutes ?? 0));
  return [t.words.parts.doors(doors.length, open === 0 ? undefined : t.f.minutesUp(minutes(open)))];
}

function humidityLines(t: Telling, cure: Cure, sheet: Sheet, air: AirLog): readonly string[] {
  const range = sheet.cure.room?.humidity;
  if (cure.way !== 'room' || range === undefined) return [];
  const { parts } = t.words;
  const held = humidityHeldBack(cure.run, range, air, t.now);
  const nights = air.lowest.some(({ to }) => to > cure.run.from);
  return [
    ...(held.outside < 1
      ? []
      : [
          parts.humidityOutside(
            t.f.minutesDown(held.outside),
            t.f.percent(range.lowestPercent),
            t.f.percent(range.highestPercent),
          ),
        ]),
    ...(held.unknown < 1 ? [] : [parts.humidityUnknown(t.f.minutesDown(held.unknown))]),
    ...(nights ? [parts.nightHumidity] : []),
  ];
}

/** The morning's list with what is in cure: when each rings, and the night that a room cure asks about. */
export function withCures(t: Telling, lines: readonly string[]): readonly string[] {
  const { parts, material } = t.words;
  const curing = byName(liveParts(t.shop).filter((part) => phaseOfPart(part).is === 'curing'));
  if (curing.length === 0) return lines;
  const cures = curing.map((part) => {
    const batch = batchOf(t.shop, part);
    const due = batch && cureDue(part, batch.sheet, airLog(t.shop, batch.place));
    return parts.curesMorning(part.name, due === undefined ? '?' : t.f.timeUp(due.at));
  });
  const inRoom = curing.some(({ cure }) => cure?.way === 'room');
  return [...lines.filter((line) => line !== material.morningNothing), ...cures, ...(inRoom ? [parts.askNight] : [])];
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
