// The answer to what was recorded: which card the command calls for, with what holds for every record: said late, said
// despite an objection, what rings next.

import type { Batch } from '../../core/batch/batch.ts';
import { isRatioOut } from '../../core/batch/batch-status.ts';
import { peopleLeading, personIn } from '../../core/crew/crew.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import { type Entry, isLate } from '../../core/history.ts';
import { defaultPlace, nameIn, numberIn, type StreamId } from '../../core/ids.ts';
import { methodRows } from '../../core/methods.ts';
import type { Part } from '../../core/part/part.ts';
import { deviationsIn, newDeviations } from '../../core/records/deviations.ts';
import { rewrites } from '../../core/records/holds-that-follow.ts';
import { byDueTime } from '../../core/reminders/wanted-reminder.ts';
import { briefsAt } from '../../core/session/spray-settings.ts';
import { type BatchNow, type PartNow, statusOf } from '../../core/status.ts';
import { minutesBetween } from '../../core/units.ts';
import { batchCard, openedCard, stirringCard } from './batch-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { ringNext } from './clock-text.ts';
import { amendedCard, heardCard, judgedCard, settledCard, undoneCard } from './correction-cards.ts';
import { handoverCard, shiftCard, snoozedCard, takenOverCard } from './crew-cards.ts';
import { heatHazards, potOverLines } from './dead-pot.ts';
import { doneTitle } from './done-title.ts';
import { filmCard, standsAgainst, testedCard } from './film-cards.ts';
import { addReply, canReply, caughtReply, coverReply, emptiedReply, weighReply } from './material-reply.ts';
import { notedFacts } from './noted-facts.ts';
import { coatedCard, curingCard, dryCard, partCard, takenOutCard } from './part-cards.ts';
import { airCard } from './place-cards.ts';
import { sessionReply } from './session-reply.ts';
import { notedCard, partSurfaceCard, preparedCard, surfacesBeforeCoat, surfaceTap } from './surface-cards.ts';
import { undoTap } from './undo-tap.ts';
import { workHazards } from './vent-cards.ts';

export function recordedCard(t: Telling, request: Request, outcome: Recorded): Card {
  const card = cardFor(t, request, outcome);
  const despite = [...despiteLines(t, outcome), ...rewrittenLines(t, outcome)];
  const late = lateLine(t, outcome);
  return {
    ...card,
    // Whatever went against a rule and whatever is held is for the lead, whoever says it; nobody whom it is for loses it.
    ping: [
      ...new Set([...card.ping, ...(despite.length > 0 || isForLeads(outcome) ? peopleLeading(t.shop.crew) : [])]),
    ],
    tone: despite.length > 0 ? 'warn' : card.tone,
    facts: [...card.facts, ...notedFacts(t, outcome, card.facts)],
    hazards: [...card.hazards, ...ownHazards(t, request)],
    lines: [...despite, ...card.lines, ...late],
    next: nextRings(t, outcome),
  };
}

/** A crew that briefs is told the hazards of its other work with the work itself. */
function ownHazards(t: Telling, { command, at }: Request): Card['hazards'] {
  if (!briefsAt(t.shop.crew.spray, at)) return [];
  if (command.verb === 'mix') return workHazards(t, 'mix');
  if (command.verb !== 'coat') return [];
  const { atomised, hazards } = methodRows[command.method];
  return atomised ? [] : workHazards(t, hazards);
}

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each verb
function cardFor(t: Telling, request: Request, outcome: Recorded): Card {
  const { replies } = t.words;
  const { command } = request;
  const batch = touchedBatch(outcome);
  const parts = touchedParts(outcome);
  switch (command.verb) {
    case 'mix':
      return onBatch((it) => openedCard(t, it));
    case 'weigh':
      return onBatch((it) => weighReply(t, it, outcome));
    case 'add':
      return onBatch((it) => addReply(t, it, command, outcome));
    case 'open':
    case 'lid':
    case 'blanket':
    case 'check':
    case 'prestir':
    case 'discard':
      return canReply(t, command.verb, outcome);
    case 'cover':
    case 'uncover':
      return onBatch((it) => coverReply(t, it, doneTitle(t, outcome)));
    case 'catch':
      return onBatch((it) => caughtReply(t, it, command.grams));
    case 'stir':
    case 'stop':
      return onBatch((it) => stirringCard(t, it, doneTitle(t, outcome)));
    case 'filter':
      return onBatch((it) => {
        const { number, place } = it.batch;
        const isOut = isRatioOut(it);
        const use = isOut ? [replies.ratioOffUse] : [replies.sayCoat(number), ...surfacesBeforeCoat(t, place)];
        const card = batchCard(t, it, replies.filtered(number), use, isOut ? 'warn' : 'good');
        return { ...card, actions: [...card.actions, surfaceTap(t, '{part}')] };
      });
    case 'thick':
    case 'gel': {
      const seen = command.verb === 'gel' ? 'gelled' : 'thick';
      return onBatch((it) => ({
        ...batchCard(t, it, replies.thick(it.batch.number, seen), potOverLines(t, it.batch), 'stop'),
        hazards: heatHazards(t, it.batch.thickened?.seen),
      }));
    }
    case 'empty':
      return onBatch((it) => emptiedReply(t, it));
    case 'judge':
      return onBatch((it) => judgedCard(t, it.batch, outcome));
    case 'part':
      return notedCard(t, parts);
    case 'prep':
      return onPart((it) => preparedCard(t, it));
    case 'coat':
      return onPart((it) => coatedCard(t, it, !outcome.before.parts.has(it.part.name)));
    case 'dry':
      return onPart((it) => dryCard(t, it));
    case 'cure':
      return onPart((it) => curingCard(t, it, replies.curing(it.part.name, command.way.kind)));
    case 'temp':
      return loadRead(onPart((it) => curingCard(t, it, replies.partRead(it.part.name))));
    case 'door':
      return onPart((it) => curingCard(t, it, t.words.parts.doorOpened(it.part.name)));
    case 'out':
      return onPart((it) => takenOutCard(t, it));
    case 'wet':
    case 'film':
      return onPart((it) => filmCard(t, it.part));
    case 'release':
      return onPart((it) => partCard(t, it, replies.released(it.part.name), standsAgainst(t, it.part), 'good'));
    case 'adhesion':
    case 'rub':
      return onPart((it) => testedCard(t, it.part, command));
    case 'hold':
      return onPart((it) => partCard(t, it, replies.held(it.part.name, command.why), [], 'warn'));
    case 'air':
      return airCard(t, command.place ?? defaultPlace, replies.airRead(command.place ?? defaultPlace));
    case 'surface':
      if (command.part !== undefined) return onPart((it) => partSurfaceCard(t, it));
      return airCard(t, command.place ?? defaultPlace, replies.surfaceRead(command.place ?? defaultPlace));
    case 'night':
      return airCard(t, command.place ?? defaultPlace, replies.nightRead(command.place ?? defaultPlace));
    case 'ok':
      return heardCard(t, outcome);
    case 'snooze':
      return snoozedCard(t, request, outcome);
    case 'shift':
      return shiftCard(t, request, command);
    case 'handover':
      return handoverCard(t, outcome);
    case 'takeover':
      return takenOverCard(t, request);
    case 'undo':
      return undoneCard(t, outcome);
    case 'amend':
      return amendedCard(t, outcome, batch, parts[0]);
    case 'used': {
      const { amount, material } = command;
      const shown = amount.kind === 'mass' ? t.f.mass(amount.grams) : t.f.volume(amount.litres);
      return makeCard(t.words.records.solventNoted(material, shown), 'plain', {
        actions: [tap(t, 'voc', 'voc day'), ...outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(t, seq))],
      });
    }
    case 'set':
      return settledCard(t, outcome);
    // What is left are the acts of a session; a verb that is none of them does not compile here.
    default:
      return sessionReply(t, command, outcome, request.by);
  }

  function onBatch(make: (status: BatchNow) => Card): Card {
    return batch === undefined ? makeCard(replies.settled, 'plain') : make(statusOf.batch(t, batch));
  }

  /** A reading on nobody in particular says whose it was, and for whom else it counts. */
  function loadRead(card: Card): Card {
    const [envelope] = outcome.envelopes;
    const others = (envelope?.alsoUnder ?? []).map((stream) => nameIn(stream));
    if (envelope?.body.type !== 'PartTemperatureRead' || envelope.body.on === undefined) return card;
    return { ...card, lines: [t.words.parts.readOn(envelope.body.on, others, t.f), ...card.lines] };
  }

  /** Several parts in one line share one card, with each part's figures under its name. */
  function onPart(make: (status: PartNow) => Card): Card {
    const cards = parts.map((part) => make(statusOf.part(t, part)));
    const [first, ...others] = cards;
    if (first === undefined) return makeCard(replies.settled, 'plain');
    if (others.length === 0) return first;
    return {
      ...first,
      title: cards.map((card) => card.title).join(', '),
      facts: latestCure(cards)?.facts ?? first.facts,
      lines: sharedLines(cards, parts),
      actions: merged(cards),
    };
  }
}

/** Of parts that cure together the one that is done last speaks for the load. */
function latestCure(cards: readonly Card[]): Card | undefined {
  const doneAt = (card: Card) => String(card.facts.find(({ id }) => id === 'cure-done-at')?.value ?? '');
  return cards.filter((card) => doneAt(card) !== '').toSorted((a, b) => (doneAt(a) < doneAt(b) ? 1 : -1))[0];
}

/** What holds for all is said once; what holds for one says for which. */
function sharedLines(cards: readonly Card[], parts: readonly Part[]): readonly string[] {
  const lines = cards.flatMap((card, i) => {
    const name = parts[i]?.name ?? '';
    return card.lines.map((line) =>
      cards.every((other) => other.lines.includes(line)) || line.includes(name) ? line : `${name}: ${line}`,
    );
  });
  return [...new Set(lines)];
}

/** One tap for all the parts of a line: `dry impeller-7 valve-3`. */
function merged(cards: readonly Card[]): Card['actions'] {
  const names = cards.flatMap((card) => card.actions.slice(0, 1)).map((action) => action.line.split(' ')[1] ?? '');
  const [first] = cards;
  return (
    (first?.actions ?? [])
      .filter((action) => cards.every((card) => card.actions.some((other) => other.id === action.id)))
      // The surface is each part's own.
      .filter(({ id }) => id !== 'surface')
      .map((action) => {
        const [verb, , ...rest] = action.line.split(' ');
        // A load is read once, on the part that warms last.
        if (action.id === 'temp') return { ...action, line: [verb, ...rest].join(' ') };
        return { ...action, line: [verb, ...names, ...rest].join(' ') };
      })
  );
}

function touchedBatch({ envelopes, shop }: Recorded): Batch | undefined {
  const stream = envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]).find(isBatch);
  return stream === undefined ? undefined : shop.batches.get(numberIn(stream));
}

function touchedParts({ envelopes, shop }: Recorded): readonly Part[] {
  const streams = envelopes.map((envelope) => envelope.stream).filter((stream) => stream.startsWith('part/'));
  return [...new Set(streams)].flatMap((stream) => shop.parts.get(nameIn(stream)) ?? []);
}

const isBatch = (stream: StreamId): boolean => stream.startsWith('batch/');

/** Its own card tells of its ratio. */
const isWeighing = ({ fact }: Entry): boolean =>
  fact.type === 'PartsWeighed' || fact.type === 'PartWeighed' || fact.type === 'PartAdded';

function despiteLines(t: Telling, outcome: Recorded): readonly string[] {
  const seqs = new Set(outcome.envelopes.map((envelope) => envelope.seq));
  const permitted = outcome.envelopes.find((envelope) => envelope.saidWith.permitted !== undefined);
  const why = permitted?.saidWith.permitted;
  const reasons = deviationsIn(outcome.shop, ({ seq }) => seqs.has(seq))
    .filter(({ entry, objection }) => !(objection.code === 'ratio-out' && isWeighing(entry)))
    .map(({ objection }) => t.words.objection(objection, t.f));
  const { recordedDespite } = t.words.replies;
  const { lifted, roles } = t.words.parts;
  return [...new Set(reasons)].map((reason) =>
    permitted === undefined || why === undefined
      ? recordedDespite(reason)
      : lifted(permitted.by, roles[personIn(t.shop.crew, permitted.by).role], why, reason),
  );
}

/** What this correction or late reading has made wrong of what was done before. */
function rewrittenLines(t: Telling, { envelopes, before, shop }: Recorded): readonly string[] {
  if (!rewrites(envelopes)) return [];
  return newDeviations(before, shop).map(({ entry, objection }) =>
    t.words.replies.nowDeviates(t.words.fact(entry.fact, t.f), t.words.objection(objection, t.f)),
  );
}

/** A hold, by word or by what a figure says. The weighing's own card tells of its ratio, which is the lead's as well. */
function isForLeads({ envelopes, shop }: Recorded): boolean {
  if (envelopes.some(({ body }) => body.type === 'PartHeld')) return true;
  const seqs = new Set(envelopes.map(({ seq }) => seq));
  return deviationsIn(shop, ({ seq }) => seqs.has(seq)).some(({ objection }) => objection.code === 'ratio-out');
}

function lateLine(t: Telling, { envelopes }: Recorded): readonly string[] {
  const late = envelopes.find((envelope) => isLate(envelope));
  if (late === undefined) return [];
  return [t.words.replies.happenedAt(late.happenedAt, minutesBetween(late.happenedAt, late.recordedAt), t.f)];
}

function nextRings(t: Telling, outcome: Recorded): Card['next'] {
  const touched = outcome.envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]);
  const places = touched.some((stream) => stream.startsWith('place/'));
  return [...outcome.plan]
    .filter(([stream]) => touched.includes(stream) || (places && !stream.startsWith('crew/')))
    .flatMap(([, reminders]) => reminders)
    .sort(byDueTime)
    .map(({ numberedKey, dueAt }) => ringNext(t, numberedKey, dueAt));
}
