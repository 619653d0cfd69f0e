// What people breathed over a working day: as it was told, and as it is asked. Over the limit it calls whoever leads, and says what
// to do now.

import type { CommandOf } from '../../core/commands.ts';
import { peopleLeading } from '../../core/crew/crew.ts';
import { localDay } from '../../core/crew/local-day.ts';
import type { PersonName } from '../../core/ids.ts';
import { retentionUnder } from '../../core/records/retention.ts';
import type { Span } from '../../core/records/span.ts';
import { type Breathed, type ExposureDay, exposureDayAt, exposureDays } from '../../core/session/exposure-day.ts';
import { namedAbroad } from '../../core/session/figure-sources.ts';
import { type Minutes, minutes } from '../../core/units.ts';
import { type Card, type CardAction, makeCard, type Tone } from './card.ts';
import { lineOf, type Telling, undoTap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { limitNotes } from './limit-lines.ts';
import { type Act, leftBy } from './recorded-act.ts';
import { toTellLine } from './whom-to-call.ts';

export function exposureCard({ telling, outcome, request }: Act<CommandOf<'exposure'>>): Card {
  const words = telling.words.session.exposure;
  const { crew } = telling.shop;
  const [told] = outcome.envelopes;
  const [fact] = leftBy(outcome, 'ExposureMeasured');
  const at = told?.happenedAt ?? telling.now;
  const day = fact && exposureDayAt(crew.spray, fact.person, at);
  if (told === undefined || day === undefined) return makeCard(words.titleOfAll, 'plain');
  const isOver = day.is === 'over' || day.is === 'may-be';
  const called = isOver ? peopleLeading(crew).filter((name) => name !== request.by) : [];
  return makeCard(words.title(day.person, localDay(crew.zone, at), telling.figures), toneOf(day), {
    lines: [
      ...whatToDo(telling, day),
      ...toTellLine(telling, called),
      ...dayLines(telling, day),
      words.outsideMask,
      ...limitNotes(telling),
      ...keptLines(telling),
      ...cautionLines(telling),
    ],
    actions: [...restTaps(telling, day), undoTap(telling, told.seq)],
    ping: called,
  });
}

/** Of those days, of one person or of all. */
export function exposuresCard(telling: Telling, span: Span, person: PersonName | undefined): Card {
  const words = telling.words.session.exposure;
  const isAsked = (name: PersonName) => person === undefined || name.toLowerCase() === person.toLowerCase();
  const days = exposureDays(telling.shop.crew.spray, span, telling.now).filter((day) => isAsked(day.person));
  if (days.length === 0) return makeCard(words.titleOfAll, 'plain', { lines: [words.nothing] });
  const worst = (['stop', 'warn', 'plain'] as const).find((tone) => days.some((day) => toneOf(day) === tone));
  return makeCard(words.titleOfAll, worst ?? 'plain', {
    lines: [
      ...days.flatMap((day) => [...dayLines(telling, day, `${day.person}: `), ...whatToDo(telling, day)]),
      words.outsideMask,
      ...limitNotes(telling),
      ...cautionLines(telling),
    ],
  });
}

/** For the day's card: a line a substance. */
export const exposureDayLines = (telling: Telling, span: Pick<Span, 'from' | 'to'>): readonly string[] =>
  exposureDays(telling.shop.crew.spray, span, telling.now).flatMap((day) => [
    ...day.breathed.map((each) => `${day.person}: ${substanceLine(telling, each)}`),
    ...mixtureLine(telling, day).map((line) => `${day.person}: ${line}`),
  ]);

function toneOf({ is }: ExposureDay): Tone {
  switch (is) {
    case 'over':
      return 'stop';
    case 'may-be':
    case 'not-measured':
      return 'warn';
    case 'within':
      return 'plain';
  }
}

function whatToDo({ words: { session } }: Telling, { is }: ExposureDay): readonly string[] {
  return is === 'over' ? [session.exposure.over] : is === 'may-be' ? [session.exposure.mayBe] : [];
}

function dayLines(telling: Telling, day: ExposureDay, before = ''): readonly string[] {
  const { words, figures } = telling;
  const { exposure } = words.session;
  return [
    ...day.breathed.flatMap((breathed) => [
      `${before}${substanceLine(telling, breathed)}`,
      ...(breathed.rest > 0 && breathed.highest > 0 ? [exposure.rest(breathed, figures)] : []),
      ...(breathed.limit?.advised === undefined ? [] : [exposure.advised(breathed, figures)]),
      ...breathed.short.map((short) => exposure.short(short, words.names.source(short.limit.source), figures)),
      ...(breathed.advisedShort === undefined ? [] : [exposure.advisedShort(breathed.advisedShort, figures)]),
    ]),
    ...mixtureLine(telling, day).map((line) => `${before}${line}`),
  ];
}

function substanceLine({ words, figures }: Telling, breathed: Breathed): string {
  const source = breathed.limit?.limit?.source;
  const { exposure } = words.session;
  return exposure.substance(breathed, source === undefined ? exposure.setHere : words.names.source(source), figures);
}

function mixtureLine({ words, figures, shop }: Telling, { mixture }: ExposureDay): readonly string[] {
  if (mixture === undefined) return [];
  const source = words.names.source(namedAbroad('29 CFR 1910.1000(d)(2)', shop.crew.spray.law.frame));
  return [words.session.exposure.mixture(mixture, source, figures)];
}

function keptLines({ words, shop }: Telling): readonly string[] {
  const { years, source } = retentionUnder(shop.crew.spray.law.frame).find(({ id }) => id === 'exposure') ?? {};
  return years === undefined || source === undefined
    ? []
    : [words.session.exposure.kept(years, words.names.source(source))];
}

/** Whoever had none of it for the rest of the shift says so. */
function restTaps(telling: Telling, { person, breathed }: ExposureDay): readonly CardAction[] {
  return breathed
    .filter(({ rest, highest }) => rest > 0 && highest > 0)
    .map(({ rest, substance }) => {
      const taskMinutes: Minutes = minutes(rest * 60);
      const command = { verb: 'exposure' as const, person, substance, taskMinutes, ppm: 0 };
      return {
        id: `no-${substance}`,
        label: telling.words.session.exposure.noneInRest(rest, substance, telling.figures),
        line: lineOf(telling, { command, stance: { is: 'asked' } }),
      };
    });
}
