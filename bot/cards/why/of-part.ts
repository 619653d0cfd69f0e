// Why the figures of a part are what they are: what was said of it, its flash-off and recoat window, its cure, its film.

import { stretchesTo } from '../../../core/calc/clock-sum.ts';
import type { Fact } from '../../../core/history.ts';
import { assumedHeatTransfer } from '../../../core/part/heat-up.ts';
import type { Coat, Part } from '../../../core/part/part.ts';
import { cureStretches, openBasis, openUntil, stageBasis } from '../../../core/part/part-clocks.ts';
import { type PartStatus, partStatus } from '../../../core/part/part-status.ts';
import { surfaceBasis } from '../../../core/part/surface-life.ts';
import type { Sheet } from '../../../core/products/sheet.ts';
import type { StageName } from '../../../core/products/sheet-part.ts';
import type { EpochMs, Minutes } from '../../../core/units.ts';
import { timeShown } from '../clock-text.ts';
import { cureFacts, roomLines } from '../cure-facts.ts';
import type { FactId } from '../fact-ids.ts';
import { partFacts } from '../part-cards.ts';
import { clockWhy } from './clock-why.ts';
import { asRead, entriesOf, type FigureAsked, sheetSource, type Why, type WhyOf, why } from './why.ts';

const ofPart =
  (make: (asked: FigureAsked, part: Part) => Why | undefined): WhyOf =>
  (asked) =>
    asked.of.part === undefined ? undefined : make(asked, asked.of.part);

interface Coated {
  readonly status: PartStatus;
  readonly sheet: Sheet;
  readonly coat: Coat;
}

const ofCoat = (make: (asked: FigureAsked, coated: Coated) => Why | undefined): WhyOf =>
  ofPart((asked, part) => {
    const status = partStatus(asked.telling, part);
    const coat = part.coats.at(-1);
    const { sheet } = status;
    return sheet === undefined || coat === undefined ? undefined : make(asked, { status, sheet, coat });
  });

const shownNow = ({ telling, fact }: FigureAsked, status: PartStatus): string | undefined =>
  partFacts(telling, status).find(({ id }) => id === fact.id)?.shown;

interface Span {
  readonly from: EpochMs;
  readonly lasts: Minutes;
  readonly errs: 'at-least' | 'at-most';
  readonly field: string;
  readonly source: string;
}

/** By plain minutes from the coat on. */
const span = (of: (coated: Coated) => Span | undefined): WhyOf =>
  ofCoat((asked, coated) => {
    const told = of(coated);
    if (told === undefined) return undefined;
    const { telling, fact } = asked;
    const from = timeShown(telling, { errs: told.errs, dueAt: told.from });
    return why(sheetSource(coated.sheet, told.field, told.source), {
      sum: [`${from} + ${telling.figures.minutesUp(told.lasts)} = ${fact.shown}`],
      read: [coated.coat.entry],
      assumed: [telling.words.why.warmthCountsNot],
      now: shownNow(asked, coated.status),
    });
  });

const flash = (which: 'leastMinutes' | 'mostMinutes'): WhyOf =>
  span(({ sheet: { flashOff }, coat }) => ({
    ...{ from: coat.at, lasts: flashOff[which], source: flashOff.source, field: `flashOff.${which}` },
    errs: which === 'leastMinutes' ? 'at-least' : 'at-most',
  }));

const recoat = (which: 'opensMinutes' | 'closesMinutes'): WhyOf =>
  span(({ sheet: { recoat: rule }, coat }) => {
    if (rule.rule !== 'window') return undefined;
    const isOpening = which === 'opensMinutes';
    return {
      ...{ from: isOpening ? coat.at : coat.firstAt, lasts: rule[which], source: rule.source },
      ...{ field: `recoat.${which}`, errs: isOpening ? 'at-least' : 'at-most' },
    };
  });

const open = ofCoat((asked, { status, sheet, coat }) => {
  const basis = openBasis(sheet, coat, status.air);
  const end = openUntil(sheet, coat, status.air);
  const { openTime } = sheet;
  if (basis === undefined || end === undefined || openTime === undefined) return undefined;
  const told = { sheet, field: 'openTime', duration: openTime, caution: 'at-most' as const };
  const now = shownNow(asked, status);
  return clockWhy(asked.telling, asked.of, { ...told, stretches: stretchesTo(basis, end), now });
});

const surfaceEnds = ofPart((asked, part) => {
  const status = partStatus(asked.telling, part);
  const { surface, air } = status;
  const duration = surface?.sheet.surfaceLife;
  const basis = surface && surfaceBasis(part, surface.sheet, air);
  if (surface === undefined || basis === undefined || duration === undefined) return undefined;
  const told = { sheet: surface.sheet, field: 'surfaceLife', duration, caution: 'at-most' as const };
  const now = shownNow(asked, status);
  const clock = clockWhy(asked.telling, asked.of, { ...told, stretches: stretchesTo(basis, surface.at), now });
  return { ...clock, read: [...entriesOf(part.entries, 'SurfacePrepared').slice(-1), ...clock.read] };
});

/** Of the oven its plain minutes at the sheet's temperature. */
function cureTime({ cure: { oven, room } }: Sheet, way: 'oven' | 'room') {
  if (way === 'room') return room && { field: 'cure.room.time', duration: room.time };
  if (oven === undefined) return undefined;
  const range = { lowestCelsius: oven.atCelsius, highestCelsius: oven.highestCelsius };
  const duration = { kind: 'plain', minutes: oven.minutes, range, source: oven.source } as const;
  return { field: 'cure.oven', duration };
}

const cure = ofCoat((asked, { status, sheet }) => {
  const { part, cure: standing } = status;
  const { telling, of, fact } = asked;
  if (part.cure === undefined || standing === undefined) return undefined;
  const time = cureTime(sheet, part.cure.way);
  const { words } = telling;
  if (time === undefined) return why({ is: 'record' }, { read: [part.cure.entry], assumed: [words.why.noCureOnSheet] });
  const end = fact.id === 'cure-given' ? telling.now : (standing.clock.dueAt ?? telling.now);
  const told = clockWhy(telling, of, {
    ...{ sheet, ...time, caution: 'at-least' as const },
    stretches: cureStretches(part, sheet, status.air, telling.now, end),
    now: cureFacts(telling, status).find(({ id }) => id === fact.id)?.shown,
  });
  if (part.cure.way === 'room')
    return { ...told, assumed: [...told.assumed, ...roomLines(telling, status).slice(0, 1)] };
  return {
    ...told,
    read: entriesOf(part.entries, 'CureStarted', 'PartTemperatureRead', 'DoorOpened').slice(-4),
    assumed: [
      words.why.bracketed,
      ...(standing.clock.assumed ? [words.why.notMeasured] : []),
      ...warmingLines(asked, status),
    ],
  };
});

function warmingLines({ telling: { words, figures } }: FigureAsked, { cure: standing }: PartStatus): readonly string[] {
  const warming = standing?.warming;
  if (warming === undefined) return [];
  return warming.by === 'last-readings'
    ? [words.parts.byPace(warming.ovenCelsius, warming.startAt, figures)]
    : [words.parts.estimate(warming, assumedHeatTransfer, figures)];
}

const warm = ofPart((asked, part) => {
  const status = partStatus(asked.telling, part);
  return why(
    { is: 'published', what: 'Incropera, Fundamentals of Heat and Mass Transfer, ch. 5' },
    {
      read: entriesOf(part.entries, 'PartReceived', 'CureStarted', 'PartTemperatureRead').slice(-3),
      assumed: warmingLines(asked, status),
      now: shownNow(asked, status),
    },
  );
});

const stage = (name: StageName): WhyOf =>
  ofCoat((asked, { status, sheet }) => {
    const basis = stageBasis(status.part, sheet, status.air, name);
    const time = sheet.cure.room?.stages.find((each) => each.stage === name)?.time;
    const due = status.clocks.find(({ id }) => id === `stage-${name}`)?.dueAt;
    if (basis === undefined || time === undefined || due === undefined) return undefined;
    const told = { sheet, field: 'cure.room.stages', duration: time, caution: 'at-least' as const };
    return clockWhy(asked.telling, asked.of, {
      ...told,
      stretches: stretchesTo(basis, due),
      now: shownNow(asked, status),
    });
  });

const said = (...types: readonly Fact['type'][]): WhyOf =>
  ofPart((_, part) => asRead(entriesOf(part.entries, ...types)));

/** Of the last readings of the film. */
const film = ofPart(({ telling: { figures }, fact }, part) => {
  const read = entriesOf(part.entries, 'FilmRead').slice(-1);
  const readings = part.films.at(-1)?.micrometres ?? [];
  if (readings.length === 0) return undefined;
  const shown = readings.map((reading) => figures.film(reading));
  const sum =
    fact.id === 'film-mean' ? `(${shown.join(' + ')}) ÷ ${readings.length} = ${fact.shown}` : figures.list(shown);
  return why({ is: 'reading' }, { sum: [sum], read });
});

const doors = ofPart(({ fact, telling: { figures } }, part) => {
  const told = part.cure?.doors.flatMap(({ openMinutes }) => openMinutes ?? []) ?? [];
  const isTime = fact.id === 'door-open' && told.length > 0;
  return why(
    { is: 'reading' },
    {
      sum: isTime ? [`${told.map((each) => figures.minutesUp(each)).join(' + ')} = ${fact.shown}`] : [],
      read: entriesOf(part.entries, 'DoorOpened').slice(-3),
    },
  );
});

export const partWhys = {
  'flash-least-at': flash('leastMinutes'),
  'flash-most-at': flash('mostMinutes'),
  'open-until': open,
  'surface-ends-at': surfaceEnds,
  'recoat-opens-at': recoat('opensMinutes'),
  'recoat-closes-at': recoat('closesMinutes'),
  'part-temperature': said('PartTemperatureRead'),
  'cure-given': cure,
  'cure-done-at': cure,
  'temp-due-at': warm,
  'stage-handle-at': stage('handle'),
  'stage-service-at': stage('service'),
  'stage-full-at': stage('full'),
  'door-openings': doors,
  'door-open': doors,
  'part-wall': said('PartReceived'),
  'part-area': said('PartReceived'),
  'part-bears': said('PartReceived'),
  profile: said('SurfacePrepared'),
  'film-mean': film,
  'film-lowest': film,
  'film-highest': film,
} as const satisfies Partial<Record<FactId, WhyOf>>;
