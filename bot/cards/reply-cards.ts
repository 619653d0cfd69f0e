// The answer to what was recorded: which card the command calls for, with what holds for every record: said late, said
// despite an objection, what rings next.

import type { Batch } from '../../core/batch/batch.ts';
import type { Outcome, Request } from '../../core/execute.ts';
import { isLate } from '../../core/history.ts';
import { defaultPlace, type StreamId } from '../../core/ids.ts';
import type { Part } from '../../core/part/part.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { minutesBetween } from '../../core/units.ts';
import { batchCard, openedCard, stirringCard, weighedCard } from './batch-cards.ts';
import { type Card, makeCard } from './card.ts';
import { amendedCard, heardCard, settledCard, undoneCard } from './correction-cards.ts';
import { coatedCard, curingCard, dryCard, filmCard, partCard } from './part-cards.ts';
import { airCard } from './place-cards.ts';
import type { Telling } from './telling.ts';

export type Recorded = Extract<Outcome, { kind: 'recorded' }>;

export function recordedCard(t: Telling, request: Request, outcome: Recorded): Card {
  const card = cardFor(t, request, outcome);
  const despite = despiteLines(t, outcome);
  const late = lateLine(t, outcome);
  return {
    ...card,
    tone: despite.length > 0 ? 'warn' : card.tone,
    lines: [...despite, ...card.lines, ...late],
    next: nextRings(t, outcome),
  };
}

function cardFor(t: Telling, request: Request, outcome: Recorded): Card {
  const { replies } = t.words;
  const { command } = request;
  const batch = touchedBatch(outcome);
  const parts = touchedParts(outcome);
  switch (command.verb) {
    case 'mix':
      return onBatch((it) => openedCard(t, it));
    case 'weigh':
      return onBatch((it) => weighedCard(t, it));
    case 'stir':
      return onBatch((it) => stirringCard(t, it, replies.stirring(it.number)));
    case 'stop':
      return onBatch((it) => stirringCard(t, it, replies.stopped(it.number)));
    case 'filter':
      return onBatch((it) => batchCard(t, it, replies.filtered(it.number), [replies.sayCoat(it.number)], 'good'));
    case 'thick':
    case 'gel': {
      const seen = command.verb === 'gel' ? 'gelled' : 'thick';
      return onBatch((it) => batchCard(t, it, replies.thick(it.number, seen), [replies.emptyNow], 'stop'));
    }
    case 'empty':
      return onBatch((it) => batchCard(t, it, replies.emptied(it.number), []));
    case 'part':
      return onPart((it) => partCard(t, it, replies.partNoted(it.name), []));
    case 'coat':
      return onPart((it) => coatedCard(t, it, !outcome.before.parts.has(it.name)));
    case 'dry':
      return onPart((it) => dryCard(t, it));
    case 'cure':
      return onPart((it) => curingCard(t, it, replies.curing(it.name, command.way.kind)));
    case 'temp':
      return onPart((it) => curingCard(t, it, replies.partRead(it.name)));
    case 'out':
      return onPart((it) => partCard(t, it, replies.takenOut(it.name), [replies.cureTimeGiven]));
    case 'wet':
    case 'film':
      return onPart((it) => filmCard(t, it));
    case 'release':
      return onPart((it) => partCard(t, it, replies.released(it.name), [], 'good'));
    case 'hold':
      return onPart((it) => partCard(t, it, replies.held(it.name, command.why), [], 'warn'));
    case 'air':
      return airCard(t, command.place ?? defaultPlace, replies.airRead(command.place ?? defaultPlace));
    case 'surface':
      return airCard(t, command.place ?? defaultPlace, replies.surfaceRead(command.place ?? defaultPlace));
    case 'night':
      return airCard(t, command.place ?? defaultPlace, replies.nightRead(command.place ?? defaultPlace));
    case 'ok':
      return heardCard(t, outcome);
    case 'undo':
      return undoneCard(t, outcome);
    case 'amend':
      return amendedCard(t, outcome, batch, parts[0]);
    case 'set':
      return settledCard(t, command.setting);
  }

  function onBatch(make: (batch: Batch) => Card): Card {
    return batch === undefined ? makeCard(replies.settled, 'plain') : make(batch);
  }

  /** Several parts in one line share one card, with each part's figures under its name. */
  function onPart(make: (part: Part) => Card): Card {
    const cards = parts.map(make);
    const [first, ...others] = cards;
    if (first === undefined) return makeCard(replies.settled, 'plain');
    if (others.length === 0) return first;
    return {
      ...first,
      title: t.f.list(cards.map((card) => card.title)),
      lines: [...new Set(cards.flatMap((card) => card.lines))],
      actions: merged(cards),
    };
  }
}

/** One tap for all the parts of a line: `dry impeller-7 valve-3`. */
function merged(cards: readonly Card[]): Card['actions'] {
  const names = cards.flatMap((card) => card.actions.slice(0, 1)).map((action) => action.line.split(' ')[1] ?? '');
  const [first] = cards;
  return (first?.actions ?? [])
    .filter((action) => cards.every((card) => card.actions.some((other) => other.id === action.id)))
    .map((action) => {
      const [verb, , ...rest] = action.line.split(' ');
      return { ...action, line: [verb, ...names, ...rest].join(' ') };
    });
}

function touchedBatch({ envelopes, shop }: Recorded): Batch | undefined {
  const stream = envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]).find(isBatch);
  return stream === undefined ? undefined : shop.batches.get(Number(stream.slice('batch/'.length)));
}

function touchedParts({ envelopes, shop }: Recorded): readonly Part[] {
  const streams = envelopes.map((envelope) => envelope.stream).filter((stream) => stream.startsWith('part/'));
  return [...new Set(streams)].flatMap((stream) => shop.parts.get(stream.slice('part/'.length)) ?? []);
}

const isBatch = (stream: StreamId): boolean => stream.startsWith('batch/');

function despiteLines(t: Telling, outcome: Recorded): readonly string[] {
  const seqs = new Set(outcome.envelopes.map((envelope) => envelope.seq));
  const why = outcome.envelopes.find((envelope) => envelope.saidWith.permitted !== undefined)?.saidWith.permitted;
  const reasons = deviationsIn(outcome.shop)
    // The weighing's own card tells of its ratio.
    .filter(({ entry, objection }) => seqs.has(entry.seq) && objection.code !== 'ratio-out')
    .map(({ objection }) => t.words.objection(objection, t.f));
  const { recordedDespite, permittedDespite } = t.words.replies;
  return [...new Set(reasons)].map((reason) =>
    why === undefined ? recordedDespite(reason) : permittedDespite(reason, why),
  );
}

function lateLine(t: Telling, { envelopes }: Recorded): readonly string[] {
  const late = envelopes.find((envelope) => isLate(envelope));
  if (late === undefined) return [];
  const by = t.f.minutesUp(minutesBetween(late.happenedAt, late.recordedAt));
  return [t.words.replies.happenedAt(t.f.timeDown(late.happenedAt), by)];
}

function nextRings(t: Telling, outcome: Recorded): Card['next'] {
  const touched = outcome.envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]);
  const places = touched.some((stream) => stream.startsWith('place/'));
  return [...outcome.plan]
    .filter(([stream]) => touched.includes(stream) || (places && !stream.startsWith('crew/')))
    .flatMap(([, reminders]) => reminders)
    .sort((a, b) => a.dueAt - b.dueAt || (a.numberedKey < b.numberedKey ? -1 : 1))
    .map((reminder) => ({ key: reminder.numberedKey, dueAt: t.f.iso(reminder.dueAt) }));
}
