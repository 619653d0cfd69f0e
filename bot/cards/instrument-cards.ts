// The shop's instruments on cards: kept, checked, listed; and under a reading what it was made with, with a tap for each other of
// its kind.

import type { CommandOf } from '../../core/commands.ts';
import { amendTargetOf } from '../../core/corrections/act-corrected.ts';
import { localDay } from '../../core/crew/local-day.ts';
import type { Recorded } from '../../core/execute.ts';
import type { Entry, EventBody, Fact } from '../../core/history.ts';
import { nameIn, nounOf } from '../../core/ids.ts';
import {
  dueBy,
  failedCheckOf,
  type Instrument,
  instrumentNamed,
  lastCheckBy,
  overdueAt,
} from '../../core/instruments.ts';
import { isReading, kindsOf, readWith } from '../../core/made-with.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap, undoTap } from './card-context.ts';

export function keptInstrumentCard(
  telling: Telling,
  { name, retired }: CommandOf<'instrument'>,
  { envelopes }: Recorded,
): Card {
  const { instruments } = telling.words.parts;
  const kept = instrumentNamed(telling.shop.crew.instruments, name.toLowerCase());
  const title = retired === true ? instruments.retiredTitle(name) : instruments.keptTitle(name);
  return makeCard(title, 'plain', {
    lines: kept === undefined ? [] : [rowOf(telling, kept)],
    actions: [
      tap(telling, 'instruments', 'instruments'),
      ...envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
    ],
  });
}

/** What rests on one that failed, by name. What has left the shop stands above it, and lead and supervisor are called. */
export function checkedInstrumentCard(telling: Telling, command: CommandOf<'calibrated'>, outcome: Recorded): Card {
  const { shop, words, figures } = telling;
  const { instruments } = words.parts;
  const name = command.name.toLowerCase();
  const instrument = instrumentNamed(shop.crew.instruments, name);
  const [envelope] = outcome.envelopes;
  const isFailed = command.result === 'failed';
  const failed = isFailed && instrument && envelope ? failedCheckOf(instrument, envelope.happenedAt) : undefined;
  const held = outcome.envelopes.flatMap(({ body, stream }) =>
    body.type === 'PartHeld' && nounOf(stream) === 'part' ? [nameIn(stream)] : [],
  );
  return makeCard(instruments.checkTitle(name, command.result), isFailed ? 'warn' : 'good', {
    lines: [
      ...(failed === undefined
        ? []
        : [instruments.since(failed.goodAt, figures), instruments.held(held, figures), instruments.aside(name)]),
      ...(instrument === undefined ? [] : [rowOf(telling, instrument)]),
    ],
    actions: [
      ...(held.length === 0 ? [] : [tap(telling, 'on-hold', 'how-stands on-hold')]),
      tap(telling, 'instruments', 'instruments'),
      ...(envelope === undefined ? [] : [undoTap(telling, envelope.seq)]),
    ],
  });
}

export function instrumentsCard(telling: Telling): Card {
  const { crew } = telling.shop;
  const { instruments } = telling.words.parts;
  if (crew.instruments.length === 0) return makeCard(instruments.title, 'plain', { lines: [instruments.none] });
  const needs = crew.instruments.some((each) => !each.isRetired && needsSomebody(telling, each));
  return makeCard(instruments.title, needs ? 'warn' : 'plain', {
    lines: crew.instruments.map((each) => rowOf(telling, each)),
  });
}

const needsSomebody = ({ shop, now }: Telling, instrument: Instrument): boolean =>
  failedCheckOf(instrument, now) !== undefined || overdueAt(instrument, now, shop.crew.zone) !== undefined;

function rowOf(telling: Telling, instrument: Instrument): string {
  const { words, figures, now, shop } = telling;
  const { instruments } = words.parts;
  const check = lastCheckBy(instrument, now);
  const last = instrument.taken.at(-1);
  return instruments.row(instrument.name, instrument.kind, [
    ...(instrument.isRetired ? [instruments.retired] : []),
    check === undefined ? instruments.notChecked : instruments.checked(check.result, check.at, figures),
    ...dueTold(telling, instrument, localDay(shop.crew.zone, now)),
    ...(last === undefined ? [] : [instruments.usedIn([words.names.place(last.place)], figures)]),
  ]);
}

function dueTold({ words, figures, now }: Telling, instrument: Instrument, today: string): readonly string[] {
  const { instruments } = words.parts;
  if (lastCheckBy(instrument, now)?.result === 'failed') return [];
  const until = dueBy(instrument, now);
  if (until === undefined) return [instruments.dueNotGiven];
  return [today > until ? instruments.overdue(until, figures) : instruments.due(until, figures)];
}

/** With the check that stood then, as it belongs on a paper; nothing where no instrument was told. */
export function readWithTold(
  { words, figures, shop }: Telling,
  { fact, happenedAt: at }: Pick<Entry, 'fact' | 'happenedAt'>,
): string {
  const name = readWith(fact);
  const instrument = name === undefined ? undefined : instrumentNamed(shop.crew.instruments, name);
  if (instrument === undefined) return '';
  const { instruments } = words.parts;
  const check = lastCheckBy(instrument, at);
  const until = dueBy(instrument, at);
  return instruments.checkThen([
    check === undefined ? instruments.notChecked : instruments.checked(check.result, check.at, figures),
    ...(until === undefined ? [] : [instruments.due(until, figures)]),
  ]);
}

/** Under what was read; of a shop that keeps none of that kind nothing. */
export function readWithLines(telling: Telling, { envelopes }: Recorded): readonly string[] {
  const { instruments } = telling.words.parts;
  const told = envelopes.flatMap(({ body, happenedAt }): readonly string[] => {
    if (!isFact(body) || !isReading(body)) return [];
    const kinds = kindsOf(body);
    const keeps = telling.shop.crew.instruments.some(({ kind, isRetired }) => !isRetired && kinds?.includes(kind));
    if (body.instrument === undefined) return keeps ? [instruments.notTaken] : [];
    const instrument = instrumentNamed(telling.shop.crew.instruments, body.instrument);
    if (instrument === undefined) return [];
    if (failedCheckOf(instrument, happenedAt) !== undefined) return [instruments.takenFailed(instrument.name)];
    const overdue = overdueAt(instrument, happenedAt, telling.shop.crew.zone);
    return [
      overdue?.code === 'instrument-overdue'
        ? instruments.takenOverdue(instrument.name, overdue.until, telling.figures)
        : instruments.takenFrom(instrument.name),
    ];
  });
  return [...new Set(told)];
}

/** One for each other of a kind that such a reading is made with. */
export function otherInstrumentTaps(telling: Telling, { envelopes }: Recorded): readonly CardAction[] {
  const read = envelopes.flatMap(({ body, stream, happenedAt }) =>
    isFact(body) && isReading(body) ? [{ fact: body, stream, happenedAt }] : [],
  );
  const last = read.at(-1);
  const of = last && amendTargetOf(last);
  const kinds = last && kindsOf(last.fact);
  if (last === undefined || of === undefined || kinds === undefined) return [];
  return telling.shop.crew.instruments
    .filter(({ name, kind, isRetired }) => kinds.includes(kind) && !isRetired && name !== last.fact.instrument)
    .slice(0, mostOffered)
    .map(({ name }, i) => ({
      id: `instrument-${i + 1}`,
      label: `${telling.words.buttons.meant} ${name}`,
      line: lineOf(telling, {
        command: { verb: 'amend', of, change: { instrument: name }, why: '' },
        stance: { is: 'asked' },
      }),
    }));
}
const mostOffered = 3;

const isFact = (body: EventBody): body is Fact => body.type !== 'Amended';
