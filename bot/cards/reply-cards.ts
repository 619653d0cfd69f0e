// The answer to what was recorded: which card the command calls for, with what holds for every record: said late, said
// despite an objection, what rings next.

import type { Batch } from '../../core/batch/batch.ts';
import { isRatioOut } from '../../core/batch/batch-status.ts';
import { peopleLeading } from '../../core/crew/crew.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import { defaultPlace, nameIn, numberIn, type StreamId } from '../../core/ids.ts';
import { methodRows } from '../../core/methods.ts';
import type { Part } from '../../core/part/part.ts';
import { briefsAt } from '../../core/session/spray-settings.ts';
import { type BatchNow, type PartNow, statusOf } from '../../core/status.ts';
import { batchCard, openedCard, stirringCard } from './batch-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { amendedCard, heardCard, judgedCard, settledCard, undoneCard } from './correction-cards.ts';
import { handoverCard, shiftCard, snoozedCard, takenOverCard } from './crew-cards.ts';
import { heatHazards, potOverLines } from './dead-pot.ts';
import { doneTitle } from './done-title.ts';
import { filmCard, standsAgainst, testedCard } from './film-cards.ts';
import { addReply, canReply, caughtReply, coverReply, emptiedReply, weighReply } from './material-reply.ts';
import { notedFacts } from './noted-facts.ts';
import { coatedCard, curingCard, dryCard, partCard, takenOutCard } from './part-cards.ts';
import { airCard } from './place-cards.ts';
import { despiteLines, isForLeads, lateLine, nextRings, rewrittenLines } from './recorded-lines.ts';
import { sessionReply } from './session-reply.ts';
import { notedCard, partSurfaceCard, preparedCard, surfacesBeforeCoat, surfaceTap } from './surface-cards.ts';
import { undoTap } from './undo-tap.ts';
import { workHazards } from './vent-cards.ts';

export function recordedCard(telling: Telling, request: Request, outcome: Recorded): Card {
  const card = cardFor(telling, request, outcome);
  const despite = [...despiteLines(telling, outcome), ...rewrittenLines(telling, outcome)];
  const late = lateLine(telling, outcome);
  return {
    ...card,
    // Whatever went against a rule and whatever is held is for the lead, whoever says it; nobody whom it is for loses it.
    ping: [
      ...new Set([
        ...card.ping,
        ...(despite.length > 0 || isForLeads(outcome) ? peopleLeading(telling.shop.crew) : []),
      ]),
    ],
    tone: despite.length > 0 ? 'warn' : card.tone,
    facts: [...card.facts, ...notedFacts(telling, outcome, card.facts)],
    hazards: [...card.hazards, ...ownHazards(telling, request)],
    lines: [...despite, ...card.lines, ...late],
    next: nextRings(telling, outcome),
  };
}

/** A crew that briefs is told the hazards of its other work with the work itself. */
function ownHazards(telling: Telling, { command, at }: Request): Card['hazards'] {
  if (!briefsAt(telling.shop.crew.spray, at)) return [];
  if (command.verb === 'mix') return workHazards(telling, 'mix');
  if (command.verb !== 'coat') return [];
  const { atomised, hazards } = methodRows[command.method];
  return atomised ? [] : workHazards(telling, hazards);
}

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each verb
function cardFor(telling: Telling, request: Request, outcome: Recorded): Card {
  const { replies } = telling.words;
  const { command } = request;
  const batch = touchedBatch(outcome);
  const parts = touchedParts(outcome);
  switch (command.verb) {
    case 'mix':
      return onBatch((batchNow) => openedCard(telling, batchNow));
    case 'weigh':
      return onBatch((batchNow) => weighReply(telling, batchNow, outcome));
    case 'add':
      return onBatch((batchNow) => addReply(telling, batchNow, command, outcome));
    case 'open':
    case 'lid':
    case 'blanket':
    case 'check':
    case 'prestir':
    case 'discard':
      return canReply(telling, command.verb, outcome);
    case 'cover':
    case 'uncover':
      return onBatch((batchNow) => coverReply(telling, batchNow, doneTitle(telling, outcome)));
    case 'catch':
      return onBatch((batchNow) => caughtReply(telling, batchNow, command.grams));
    case 'stir':
    case 'stop':
      return onBatch((batchNow) => stirringCard(telling, batchNow, doneTitle(telling, outcome)));
    case 'filter':
      return onBatch((batchNow) => {
        const { number, place } = batchNow.batch;
        const isOut = isRatioOut(batchNow);
        const use = isOut ? [replies.ratioOffUse] : [replies.sayCoat(number), ...surfacesBeforeCoat(telling, place)];
        const card = batchCard(telling, batchNow, replies.filtered(number), use, isOut ? 'warn' : 'good');
        return { ...card, actions: [...card.actions, surfaceTap(telling, '{part}')] };
      });
    case 'thick':
    case 'gel': {
      const seen = command.verb === 'gel' ? 'gelled' : 'thick';
      return onBatch((batchNow) => ({
        ...batchCard(
          telling,
          batchNow,
          replies.thick(batchNow.batch.number, seen),
          potOverLines(telling, batchNow.batch),
          'stop',
        ),
        hazards: heatHazards(telling, batchNow.batch.thickened?.seen),
      }));
    }
    case 'empty':
      return onBatch((batchNow) => emptiedReply(telling, batchNow));
    case 'judge':
      return onBatch((batchNow) => judgedCard(telling, batchNow.batch, outcome));
    case 'part':
      return notedCard(telling, parts);
    case 'prep':
      return onPart((partNow) => preparedCard(telling, partNow));
    case 'coat':
      return onPart((partNow) => coatedCard(telling, partNow, !outcome.before.parts.has(partNow.part.name)));
    case 'dry':
      return onPart((partNow) => dryCard(telling, partNow));
    case 'cure':
      return onPart((partNow) => curingCard(telling, partNow, replies.curing(partNow.part.name, command.way.kind)));
    case 'temp':
      return loadRead(onPart((partNow) => curingCard(telling, partNow, replies.partRead(partNow.part.name))));
    case 'door':
      return onPart((partNow) => curingCard(telling, partNow, telling.words.parts.doorOpened(partNow.part.name)));
    case 'out':
      return onPart((partNow) => takenOutCard(telling, partNow));
    case 'wet':
    case 'film':
      return onPart((partNow) => filmCard(telling, partNow.part));
    case 'release':
      return onPart((partNow) =>
        partCard(telling, partNow, replies.released(partNow.part.name), standsAgainst(telling, partNow.part), 'good'),
      );
    case 'adhesion':
    case 'rub':
      return onPart((partNow) => testedCard(telling, partNow.part, command));
    case 'hold':
      return onPart((partNow) => partCard(telling, partNow, replies.held(partNow.part.name, command.why), [], 'warn'));
    case 'air':
      return airCard(telling, command.place ?? defaultPlace, replies.airRead(command.place ?? defaultPlace));
    case 'surface':
      if (command.part !== undefined) return onPart((partNow) => partSurfaceCard(telling, partNow));
      return airCard(telling, command.place ?? defaultPlace, replies.surfaceRead(command.place ?? defaultPlace));
    case 'night':
      return airCard(telling, command.place ?? defaultPlace, replies.nightRead(command.place ?? defaultPlace));
    case 'ok':
      return heardCard(telling, outcome);
    case 'snooze':
      return snoozedCard(telling, request, outcome);
    case 'shift':
      return shiftCard(telling, request, command);
    case 'handover':
      return handoverCard(telling, outcome);
    case 'takeover':
      return takenOverCard(telling, request);
    case 'undo':
      return undoneCard(telling, outcome);
    case 'amend':
      return amendedCard(telling, outcome, batch, parts[0]);
    case 'used': {
      const { amount, material } = command;
      const shown = amount.kind === 'mass' ? telling.figures.mass(amount.grams) : telling.figures.volume(amount.litres);
      return makeCard(telling.words.records.solventNoted(material, shown), 'plain', {
        actions: [
          tap(telling, 'voc', 'voc day'),
          ...outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
        ],
      });
    }
    case 'set':
      return settledCard(telling, outcome);
    // What is left are the acts of a session; a verb that is none of them does not compile here.
    default:
      return sessionReply(telling, command, outcome, request.by);
  }

  function onBatch(make: (status: BatchNow) => Card): Card {
    return batch === undefined ? makeCard(replies.settled, 'plain') : make(statusOf.batch(telling, batch));
  }

  /** A reading on nobody in particular says whose it was, and for whom else it counts. */
  function loadRead(card: Card): Card {
    const [envelope] = outcome.envelopes;
    const others = (envelope?.alsoUnder ?? []).map((stream) => nameIn(stream));
    if (envelope?.body.type !== 'PartTemperatureRead' || envelope.body.on === undefined) return card;
    return { ...card, lines: [telling.words.parts.readOn(envelope.body.on, others, telling.figures), ...card.lines] };
  }

  /** Several parts in one line share one card, with each part's figures under its name. */
  function onPart(make: (status: PartNow) => Card): Card {
    const cards = statusOf.parts(telling, parts).map(make);
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
