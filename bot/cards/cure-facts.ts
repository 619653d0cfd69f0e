// How a cure stands, in figures and lines: what was given, when it is done and whether that was measured, the sheet's
// stages, the oven's door, and what the humidity held back.

import { humidityHeldBack } from '../../core/part/cure-humidity.ts';
import { atTemperature, isBracketed } from '../../core/part/cure-proof.ts';
import { assumedHeatTransfer } from '../../core/part/heat-up.ts';
import { type Cure, phaseOfPart } from '../../core/part/part.ts';
import { type CureStatus, type PartStatus, partStatus } from '../../core/part/part-status.ts';
import { byName, liveParts } from '../../core/shop.ts';
import type { ClockId } from '../../core/status.ts';
import { type Minutes, minutes } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { factsOf } from './facts.ts';

const stages: readonly ClockId[] = ['stage-handle', 'stage-service', 'stage-full'];

export function cureFacts(telling: Telling, { part, cure: status, clocks }: PartStatus): readonly CardFact[] {
  const { cure } = part;
  if (cure === undefined || status === undefined) return [];
  const read = part.temperatures.at(-1);
  const { given } = status;
  const withoutFigure = given && sum(Object.values(given.dose.withoutFigureMinutes));
  return [
    ...factsOf(telling, { 'part-temperature': cure.way === 'oven' ? read?.celsius : undefined }),
    ...clockFacts(telling, clocks, ['warm']),
    ...factsOf(telling, { 'cure-given': given && minutes(given.dose.ranMinutes - (withoutFigure ?? 0)) }),
    ...clockFacts(telling, clocks, stages),
    // A time that no reading on the part stands behind is called what it is.
    ...clockFacts(telling, clocks, ['cure']).map((fact) =>
      status.clock.assumed ? { ...fact, label: telling.words.parts.notMeasured(fact.label) } : fact,
    ),
    ...doorFacts(telling, cure),
  ];
}

function doorFacts(telling: Telling, { doors }: Cure): readonly CardFact[] {
  return doors.length === 0 ? [] : factsOf(telling, { 'door-openings': doors.length, 'door-open': openFor(doors) });
}

/** As far as anybody said. */
function openFor(doors: Cure['doors']): Minutes | undefined {
  const open = sum(doors.map(({ openMinutes }) => openMinutes ?? 0));
  return open === 0 ? undefined : minutes(open);
}

/** What the due time rests on where nothing was measured; what the door and the humidity did. */
export function cureLines(telling: Telling, status: PartStatus): readonly string[] {
  const { cure } = status.part;
  if (cure === undefined || status.cure === undefined) return [];
  return [
    ...estimateLines(telling, cure, status.cure),
    ...againLines(telling, cure, status.cure),
    ...doorLines(telling, cure),
    ...roomLines(telling, status),
    ...humidityLines(telling, cure, status),
  ];
}

function estimateLines(telling: Telling, { way, run }: Cure, { clock, warming }: CureStatus): readonly string[] {
  if (way !== 'oven' || run.to !== undefined || !clock.assumed) return [];
  const { parts } = telling.words;
  if (warming === undefined) return [parts.noEstimate];
  return [
    warming.by === 'last-readings'
      ? parts.byPace(warming.ovenCelsius, warming.startAt, telling.figures)
      : parts.estimate(warming, assumedHeatTransfer, telling.figures),
    parts.askAt(warming.reachesAt, telling.figures),
  ];
}

/** Past the last reading nothing is proved: whoever reads once only is told that it takes another. */
function againLines(telling: Telling, cure: Cure, { clock, given }: CureStatus): readonly string[] {
  const waits = isBracketed(cure) && cure.run.to === undefined && !clock.assumed && clock.goes !== 'given';
  if (!waits || given?.readAt === undefined || clock.dueAt === undefined) return [];
  const due = clock.dueAt > telling.now ? clock.dueAt : undefined;
  return [telling.words.parts.readAgain(given.readAt, due, telling.figures)];
}

/** What its readings prove of a cure in the oven, for trace and paper. */
export function provedLines(telling: Telling, { part, sheet, air }: PartStatus): readonly string[] {
  const oven = sheet?.cure.oven;
  if (part.cure?.way !== 'oven' || oven === undefined) return [];
  const { totalMinutes, longestMinutes } = atTemperature(part, part.cure, oven.atCelsius, air.staleAfter);
  if (totalMinutes === 0) return [];
  return [telling.words.parts.provedAt(oven.atCelsius, totalMinutes, longestMinutes, telling.figures)];
}

function doorLines(telling: Telling, { doors }: Cure): readonly string[] {
  return doors.length === 0 ? [] : [telling.words.parts.doors(doors.length, openFor(doors), telling.figures)];
}

/** One progress, what it rests on, one end; what nobody read, and what to say for it. */
export function roomLines(telling: Telling, { part, sheet, air, cure }: PartStatus): readonly string[] {
  const { parts, replies } = telling.words;
  if (part.cure === undefined || cure?.given === undefined || cure.roomEnd === undefined) return [];
  const { run } = part.cure;
  const byHumidity = humidityHeldBack(run, sheet?.cure.room?.humidity, air, telling.now).unknown;
  const unread = minutes(Math.max(cure.given.dose.withoutFigureMinutes.unknown, byHumidity));
  const night = air.lowest.some(({ to }) => to > run.from);
  const said = parts.roomCure(cure.clock.progress, night, unread < 1 ? undefined : unread, telling.figures);
  const end = unread < 1 ? 'read-on' : cure.roomEnd.isLate ? 'untold' : 'told';
  return [
    `${said} ${parts.roomCureEnds(end, cure.roomEnd.at, telling.figures)}`,
    unread < 1 ? replies.roomClock : replies.askNight,
    ...telling.words.heldBack({ ...cure.given.dose.withoutFigureMinutes, unknown: minutes(0) }, telling.figures),
  ];
}

function humidityLines(telling: Telling, cure: Cure, { sheet, air, cure: status }: PartStatus): readonly string[] {
  const range = sheet?.cure.room?.humidity;
  if (cure.way !== 'room' || range === undefined) return [];
  const { parts } = telling.words;
  const held = humidityHeldBack(cure.run, range, air, telling.now);
  const nights = air.lowest.some(({ to }) => to > cure.run.from);
  return [
    ...(held.outside < 1
      ? []
      : [parts.humidityOutside(held.outside, range.lowestPercent, range.highestPercent, telling.figures)]),
    ...(held.unknown < 1 || status?.roomEnd !== undefined
      ? []
      : [parts.humidityUnknown(held.unknown, telling.figures)]),
    ...(nights ? [parts.nightHumidity] : []),
  ];
}

/** The morning's list with what is in cure: when each rings, and the night that a room cure asks about. */
export function withCures(telling: Telling, lines: readonly string[]): readonly string[] {
  const { parts, material } = telling.words;
  const curing = byName(liveParts(telling.shop).filter((part) => phaseOfPart(part).is === 'curing'));
  if (curing.length === 0) return lines;
  const cures = curing.map((part) => {
    const { errs = 'at-least', dueAt } = partStatus(telling, part).cure?.clock ?? {};
    return parts.curesMorning(part.name, dueAt === undefined ? undefined : { errs, dueAt }, telling.figures);
  });
  const inRoom = curing.some(({ cure }) => cure?.way === 'room');
  return [
    ...lines.filter((line) => line !== material.morningNothing),
    ...cures,
    ...(inRoom ? [parts.askNight(telling.figures)] : []),
  ];
}

const sum = (figures: readonly number[]): number => figures.reduce((total, figure) => total + figure, 0);
