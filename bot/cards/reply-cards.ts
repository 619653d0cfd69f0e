// The answer to what was recorded: which card the command calls for, with what holds for every record: said late, said
// despite an objection, what rings next.

import type { Batch } from '../../core/batch/batch.ts';
import { isRatioOut } from '../../core/batch/batch-status.ts';
import { methodLikely } from '../../core/coats-waiting.ts';
import type { CommandOf, Verb } from '../../core/commands.ts';
import { peopleLeading } from '../../core/crew/crew.ts';
import { peopleFrom } from '../../core/crew/who-may.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import type { FilmTestName } from '../../core/film-tests.ts';
import { defaultPlace, nameIn } from '../../core/ids.ts';
import { type Method, methodRows, usualMethod } from '../../core/methods.ts';
import { briefingAt } from '../../core/session/spray-settings.ts';
import type { BatchNow, PartNow } from '../../core/status.ts';
import { batchCard, openedCard, stirringCard } from './batch-cards.ts';
import { drawnCard, namingTapsOf } from './can-asked.ts';
import {
  blanketedCard,
  checkedCard,
  discardedCard,
  lidOffCard,
  openedCanCard,
  shutCard,
  stirringCanCard,
} from './can-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap, undoTap } from './card-context.ts';
import { concessionLines } from './concession-lines.ts';
import { amendedCard, heardCard, judgedCard, settledCard, undoneCard } from './correction-cards.ts';
import { handoverCard, remindCard, shiftCard, snoozedCard, takenOverCard } from './crew-cards.ts';
import { heatHazards, potOverLines } from './dead-pot.ts';
import { type Disposing, disposedCard } from './disposed-cards.ts';
import { partInHand } from './example-here.ts';
import { filmCard, filmTestedCard, standsAgainst, testedCard } from './film-cards.ts';
import { firstShiftBegunCard, firstShiftEndedCard } from './first-shift-card.ts';
import { gasesCard } from './gases-card.ts';
import { heldCard } from './held-cards.ts';
import { checkedInstrumentCard, keptInstrumentCard, otherInstrumentTaps, readWithLines } from './instrument-cards.ts';
import { addReply, caughtReply, coverReply, emptiedReply, weighReply } from './material-reply.ts';
import { monitorCard } from './monitor-card.ts';
import { notedFacts } from './noted-facts.ts';
import { withOvenAir, withOvenPurge } from './oven-air-card.ts';
import { coatedCard, curingCard, dryCard, partCard, shippedCard, takenOutCard } from './part-cards.ts';
import { airCard } from './place-cards.ts';
import { recalledCard, recallOverCard } from './recall-cards.ts';
import { type Act, doneTitle, onBatch, onCan, onPart, touchedBatch, touchedParts } from './recorded-act.ts';
import {
  despiteLines,
  isForLeads,
  isForSupervisors,
  lateLine,
  nextRings,
  reopenedLines,
  rewrittenLines,
} from './recorded-lines.ts';
import { receivedCard, sealedLeftLines } from './sealed-cards.ts';
import { sessionReplies } from './session-reply.ts';
import { confirmedCard } from './step-cards.ts';
import { beforeCoat, filterLines } from './step-lines.ts';
import { notedCard, partSurfaceCard, preparedCard, surfacesBeforeCoat, surfaceTap, unreadOf } from './surface-cards.ts';
import { workHazards } from './vent-cards.ts';

export function recordedCard(telling: Telling, request: Request, outcome: Recorded): Card {
  const card = cardOf(request.command.verb, { telling, command: request.command, request, outcome });
  const despite = [...despiteLines(telling, outcome), ...rewrittenLines(telling, outcome)];
  const late = lateLine(telling, outcome);
  return {
    ...card,
    // Whatever went against a rule and whatever is held is for the lead, whoever says it; nobody whom it is for loses it.
    ping: [
      ...new Set([
        ...card.ping,
        ...(despite.length > 0 || isForLeads(outcome) ? peopleLeading(telling.shop.crew) : []),
        ...(isForSupervisors(outcome) ? peopleFrom(telling.shop.crew, 'supervisor') : []),
      ]),
    ],
    tone: despite.length > 0 ? 'warn' : card.tone,
    actions: [...card.actions, ...otherInstrumentTaps(telling, outcome)],
    facts: [...card.facts, ...notedFacts(telling, outcome, card.facts)],
    hazards: [...card.hazards, ...ownHazards(telling, request)],
    lines: [
      // What is out of the house comes first: somebody has to run.
      ...reopenedLines(telling, outcome),
      ...despite,
      ...card.lines,
      ...readWithLines(telling, outcome),
      ...newParts(telling, request, outcome),
      ...late,
    ],
    next: nextRings(telling, outcome),
  };
}

/** Named by the act itself, and by nobody before. */
function newParts(telling: Telling, { command }: Request, outcome: Recorded): readonly string[] {
  const { verb } = command;
  // A reading of its steel says no more of it, and what booked it says all.
  if (verb === 'part' || verb === 'surface') return [];
  const fresh = touchedParts(outcome).flatMap(({ name }) => (outcome.before.parts.has(name) ? [] : [name]));
  return fresh.length === 0 ? [] : [telling.words.replies.newParts(fresh, telling.figures)];
}

/** A crew that briefs is told the hazards of its other work with the work itself. */
function ownHazards(telling: Telling, { command, at }: Request): Card['hazards'] {
  if (briefingAt(telling.shop.crew.spray, at)?.on !== true) return [];
  if (command.verb === 'mix') return workHazards(telling, 'mix');
  if (command.verb !== 'coat') return [];
  const { atomised, hazards } = methodRows[command.method];
  return atomised ? [] : workHazards(telling, hazards);
}

function cardOf<V extends Verb>(verb: V, act: Act<CommandOf<V>>): Card {
  return cards[verb](act);
}

const cover = onBatch((telling, pot, { outcome }) => coverReply(telling, pot, doneTitle(telling, outcome)));
const stirring = onBatch((telling, pot, { outcome }) => stirringCard(telling, pot, doneTitle(telling, outcome)));
const film = onPart((telling, { part }) => filmCard(telling, part));
const tested = onPart<CommandOf<'adhesion' | 'rub'>>((telling, { part }, { command }) =>
  testedCard(telling, part, command),
);
const filmTested = onPart<CommandOf<FilmTestName>>((telling, { part }) => filmTestedCard(telling, part));

const disposed = (telling: Telling, status: PartNow, { command }: Act<Disposing>) =>
  disposedCard(telling, status, command);

const cards: { readonly [V in Verb]: (act: Act<CommandOf<V>>) => Card } = {
  mix: onBatch(openedCard),
  weigh: onBatch((telling, pot, { outcome }) => weighReply(telling, pot, outcome)),
  drawn: onBatch((telling, pot, { command, outcome }) => drawnCard(telling, pot, command.component, outcome)),
  add: onBatch((telling, pot, { command, outcome }) => addReply(telling, pot, command, outcome)),
  open: onCan((telling, can) => {
    const card = openedCanCard(telling, can);
    return {
      ...card,
      lines: [...card.lines, ...sealedLeftLines(telling, can.can)],
      actions: [...namingTapsOf(telling, can.can), ...card.actions],
    };
  }),
  received: ({ telling, command, outcome }) => receivedCard(telling, command, outcome),
  recall: ({ telling, command, outcome }) => recalledCard(telling, command, outcome),
  'recall-over': ({ telling, command }) => recallOverCard(telling, command),
  instrument: ({ telling, command, outcome }) => keptInstrumentCard(telling, command, outcome),
  calibrated: ({ telling, command, outcome }) => checkedInstrumentCard(telling, command, outcome),
  lid: onCan(lidOffCard),
  shut: onCan(shutCard),
  blanket: onCan(blanketedCard),
  check: onCan(checkedCard),
  prestir: onCan(stirringCanCard),
  discard: onCan(discardedCard),
  cover,
  uncover: cover,
  catch: onBatch((telling, pot, { command }) => caughtReply(telling, pot, command.grams)),
  stir: stirring,
  stop: stirring,
  filter: onBatch(filteredCard),
  thick: onBatch((telling, pot) => overCard(telling, pot, 'thick')),
  gel: onBatch((telling, pot) => overCard(telling, pot, 'gelled')),
  empty: onBatch(emptiedReply),
  judge: onBatch((telling, { batch }, { outcome }) => judgedCard(telling, batch, outcome)),
  part: ({ telling, command, outcome }) => {
    const card = notedCard(telling, touchedParts(outcome), unreadOf(command));
    const [first] = outcome.envelopes;
    const isMany = command.more !== undefined && first !== undefined;
    return isMany ? { ...card, actions: [...card.actions, undoTap(telling, first.seq)] } : card;
  },
  prep: onPart(preparedCard),
  coat: onPart(coatedCard),
  dry: onPart((telling, status) => withOvenPurge(telling, status, dryCard(telling, status))),
  cure: onPart((telling, part, { command }) =>
    withOvenAir(
      telling,
      part,
      curingCard(telling, part, telling.words.replies.curing(part.part.name, command.way.kind)),
    ),
  ),
  temp: (act) => loadRead(act, read(act)),
  door: onPart((telling, part) => curingCard(telling, part, telling.words.parts.doorOpened(part.part.name))),
  out: onPart(takenOutCard),
  wet: film,
  film,
  release: onPart((telling, status) => {
    const { part } = status;
    const title = telling.words.replies.released(part.name);
    const lines = [...concessionLines(telling, part.concession), ...standsAgainst(telling, part)];
    return partCard(telling, status, title, lines, 'good');
  }),
  shipped: onPart(shippedCard),
  adhesion: tested,
  rub: tested,
  'pull-off': filmTested,
  gloss: filmTested,
  hardness: filmTested,
  holidays: filmTested,
  visual: filmTested,
  hold: onPart((telling, part, { command }) =>
    heldCard(telling, part, telling.words.replies.held(part.part.name, command.why)),
  ),
  rework: onPart(disposed),
  concession: onPart(disposed),
  scrap: onPart(disposed),
  return: onPart(disposed),
  'see-to': onPart((telling, part) => heldCard(telling, part, telling.words.parts.held.assigned(part.part.name))),
  lel: monitorCard,
  o2: monitorCard,
  co: monitorCard,
  h2s: monitorCard,
  gases: gasesCard,
  air: airReply,
  surface: (act) => (act.command.part === undefined ? placeRead(act, 'surfaceRead') : surfaceOfPart(act)),
  night: (act) => placeRead(act, 'nightRead'),
  ok: ({ telling, outcome }) => heardCard(telling, outcome),
  snooze: ({ telling, request, outcome }) => snoozedCard(telling, request, outcome),
  shift: ({ telling, request, command }) => shiftCard(telling, request, command),
  handover: ({ telling, outcome }) => handoverCard(telling, outcome),
  remind: ({ telling, command, outcome }) => remindCard(telling, command, outcome),
  takeover: ({ telling, request }) => takenOverCard(telling, request),
  'first-shift': ({ telling, request }) => firstShiftBegunCard(telling, request.by),
  'first-shift-done': ({ telling, outcome }) => firstShiftEndedCard(telling, outcome),
  'first-shift-off': ({ telling, outcome }) => firstShiftEndedCard(telling, outcome),
  undo: ({ telling, outcome }) => undoneCard(telling, outcome),
  amend: ({ telling, outcome }) => amendedCard(telling, outcome, touchedBatch(outcome), touchedParts(outcome)[0]),
  used: usedCard,
  set: ({ telling, outcome }) => settledCard(telling, outcome),
  confirm: ({ telling, command, outcome }) => confirmedCard(telling, command, outcome),
  ...sessionReplies,
};

const surfaceOfPart = onPart(partSurfaceCard);
const read = onPart((telling, part) => curingCard(telling, part, telling.words.replies.partRead(part.part.name)));

/** The usual one of the pot, else the one that most sheets know. */
function methodOf({ shop }: Telling, batch: Batch): Method {
  const { methods } = batch.sheet;
  const [first] = methods;
  return methodLikely(shop, batch) ?? (methods.includes(usualMethod) ? usualMethod : (first ?? usualMethod));
}

function filteredCard(telling: Telling, pot: BatchNow): Card {
  const { replies } = telling.words;
  const { number, place } = pot.batch;
  const isOut = isRatioOut(pot);
  const before = isOut ? undefined : beforeCoat(telling, pot.batch);
  const use =
    before === undefined
      ? [replies.ratioOffUse]
      : [
          ...filterLines(telling, pot.batch),
          ...before.lines,
          replies.sayCoat(partInHand(telling, 'coat'), number, methodOf(telling, pot.batch)),
          ...surfacesBeforeCoat(telling, place),
        ];
  const card = batchCard(telling, pot, replies.filtered(number), use, isOut ? 'warn' : 'good');
  return { ...card, actions: [...card.actions, surfaceTap(telling, '{part}'), ...(before?.actions ?? [])] };
}

function overCard(telling: Telling, pot: BatchNow, seen: 'thick' | 'gelled'): Card {
  const { batch } = pot;
  const title = telling.words.replies.thick(batch.number, seen);
  const card = batchCard(telling, pot, title, potOverLines(telling, batch), 'stop');
  return { ...card, hazards: heatHazards(telling, batch.thickened?.seen) };
}

/** A reading on nobody in particular says whose it was, and for whom else it counts. */
function loadRead({ telling, outcome }: Act, card: Card): Card {
  const [envelope] = outcome.envelopes;
  const others = (envelope?.alsoUnder ?? []).map((stream) => nameIn(stream));
  if (envelope?.body.type !== 'PartTemperatureRead' || envelope.body.on === undefined) return card;
  return { ...card, lines: [telling.words.parts.readOn(envelope.body.on, others, telling.figures), ...card.lines] };
}

/** With how the humidity was had, where nobody read it off a hygrometer. */
function airReply(act: Act<CommandOf<'air'>>): Card {
  const card = placeRead(act, 'airRead');
  const { air, wetBulbCelsius } = act.command;
  if (wetBulbCelsius === undefined || air.relativeHumidityPercent !== undefined) return card;
  return { ...card, lines: [...card.lines, act.telling.words.replies.fromWetBulb] };
}

function placeRead(
  { telling, command: { place = defaultPlace } }: Act<CommandOf<'air' | 'surface' | 'night'>>,
  title: 'airRead' | 'surfaceRead' | 'nightRead',
): Card {
  return airCard(telling, place, telling.words.replies[title](place));
}

function usedCard({ telling, command: { amount, material }, outcome }: Act<CommandOf<'used'>>): Card {
  const undo = outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq));
  const title = telling.words.records.solventNoted(material, amount, telling.figures);
  return makeCard(title, 'plain', { actions: [tap(telling, 'voc', 'voc day'), ...undo] });
}
