// How a cure stands, in figures and lines: what was given, when it is done and whether that was measured, the sheet's
// stages, the oven's door, and what the humidity held back.

import { humidityHeldBack } from '../../core/part/cure-humidity.ts';
import { assumedHeatTransfer } from '../../core/part/heat-up.ts';
import { type Cure, phaseOfPart } from '../../core/part/part.ts';
import { type CureStatus, type PartStatus, partStatus } from '../../core/part/part-status.ts';
import { byName, liveParts } from '../../core/shop.ts';
import type { ClockId } from '../../core/status.ts';
import { minutes } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { countFact, minutesGivenFact, minutesWantedFact, type Telling, temperatureFact } from './card-context.ts';
import { clockFacts } from './clock-text.ts';

const stages: readonly ClockId[] = ['stage-handle', 'stage-service', 'stage-full'];

export function cureFacts(t: Telling, { part, cure: status, clocks }: PartStatus): readonly CardFact[] {
  const { cure } = part;
  if (cure === undefined || status === undefined) return [];
  const read = part.temperatures.at(-1);
  const { given } = status;
  return [
    ...(read === undefined || cure.way !== 'oven' ? [] : [temperatureFact(t, 'part-temperature', read.celsius)]),
    ...clockFacts(t, clocks, ['warm']),
    ...(given === undefined
      ? []
      : [
          minutesGivenFact(
            t,
            'cure-given',
            minutes(given.dose.ranMinutes - sum(Object.values(given.dose.withoutFigureMinutes))),
          ),
        ]),
    ...clockFacts(t, clocks, stages),
    // A time that no reading on the part stands behind is called what it is.
    ...clockFacts(t, clocks, ['cure']).map((fact) =>
      status.clock.assumed ? { ...fact, label: t.words.parts.notMeasured(fact.label) } : fact,
    ),
    ...doorFacts(t, cure),
  ];
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
export function cureLines(t: Telling, status: PartStatus): readonly string[] {
  const { cure } = status.part;
  if (cure === undefined || status.cure === undefined) return [];
  return [...estimateLines(t, cure, status.cure), ...doorLines(t, cure), ...humidityLines(t, cure, status)];
}

function estimateLines(t: Telling, { way, run }: Cure, { clock, warming }: CureStatus): readonly string[] {
  if (way !== 'oven' || run.to !== undefined || !clock.assumed) return [];
  const { parts } = t.words;
  if (warming === undefined) return [parts.noEstimate];
  return [
    parts.estimate(warming.ovenCelsius, warming.start, assumedHeatTransfer, t.f),
    parts.askAt(warming.reachesAt, t.f),
  ];
}

function doorLines(t: Telling, { doors }: Cure): readonly string[] {
  if (doors.length === 0) return [];
  const open = sum(doors.map(({ openMinutes }) => openMinutes ?? 0));
  return [t.words.parts.doors(doors.length, open === 0 ? undefined : minutes(open), t.f)];
}

function humidityLines(t: Telling, cure: Cure, { sheet, air }: PartStatus): readonly string[] {
  const range = sheet?.cure.room?.humidity;
  if (cure.way !== 'room' || range === undefined) return [];
  const { parts } = t.words;
  const held = humidityHeldBack(cure.run, range, air, t.now);
  const nights = air.lowest.some(({ to }) => to > cure.run.from);
  return [
    ...(held.outside < 1 ? [] : [parts.humidityOutside(held.outside, range.lowestPercent, range.highestPercent, t.f)]),
    ...(held.unknown < 1 ? [] : [parts.humidityUnknown(held.unknown, t.f)]),
    ...(nights ? [parts.nightHumidity] : []),
  ];
}

/** The morning's list with what is in cure: when each rings, and the night that a room cure asks about. */
export function withCures(t: Telling, lines: readonly string[]): readonly string[] {
  const { parts, material } = t.words;
  const curing = byName(liveParts(t.shop).filter((part) => phaseOfPart(part).is === 'curing'));
  if (curing.length === 0) return lines;
  const cures = curing.map((part) => {
    const { errs = 'at-least', dueAt } = partStatus(t, part).cure?.clock ?? {};
    return parts.curesMorning(part.name, dueAt === undefined ? undefined : { errs, dueAt }, t.f);
  });
  const inRoom = curing.some(({ cure }) => cure?.way === 'room');
  return [
    ...lines.filter((line) => line !== material.morningNothing),
    ...cures,
    ...(inRoom ? [parts.askNight(t.f)] : []),
  ];
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
