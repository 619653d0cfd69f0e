// How a batch stands, with the parts coated from it: the card that a chat platform keeps as the batch's one message and
// changes in place. What can be tapped is what is allowed now; what was done stands below, newest last, with who did it.

import type { Batch } from '../../core/batch/batch.ts';
import { type Entry, isAct } from '../../core/history.ts';
import { type BatchNumber, batchStream, nameIn, nounOf } from '../../core/ids.ts';
import { isPartLive, type Part } from '../../core/part/part.ts';
import { type BatchNow, type PartNow, statusOf } from '../../core/status.ts';
import { unreadUnder } from '../../core/unread.ts';
import { atWorstLines, batchFacts, batchTaps, openedCard, potState } from './batch-cards.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { partFacts, partLine, partTaps } from './part-cards.ts';
import { tapsTogether } from './parts-together.ts';
import { unreadLines } from './unread-lines.ts';

export interface Standing {
  readonly card: Card;
  /** Somebody still waits for something: of the pot, or of a part coated from it. */
  readonly live: boolean;
  /** The parts coated from it, so that a thread's words can name one. */
  readonly parts: readonly string[];
}

/** The newest acts shown while it runs; the record has them all. */
const actsShown = 8;

/** Figures that grow by the minute would be wrong as soon as they stand there; the times beside them stay true. */
const growing: readonly CardFact['id'][] = ['cure-given', 'stir-given'];

/** `undefined` for the batch: taken back. */
export function standingOf(telling: Telling, number: BatchNumber, batch: Batch | undefined): Standing {
  const { chat } = telling.words;
  if (batch === undefined) return { card: makeCard(chat.takenBack(number), 'plain'), live: false, parts: [] };
  const parts = statusOf.parts(telling, partsFrom(telling, batch));
  const waiting = parts.filter(({ part }) => isPartLive(part));
  const live = batch.emptied === undefined || waiting.length > 0;
  const pot = statusOf.batch(telling, batch);
  const [only, ...others] = waiting;
  const alone = others.length === 0 ? only : undefined;
  const opened = pot.phase.is === 'to-weigh' ? openedCard(telling, pot) : undefined;
  const state = live
    ? [potState(telling, pot), ...(alone === undefined ? [] : [partLine(telling, alone)])]
    : [chat.finished];
  const acts = actsOf(
    batch,
    parts.map(({ part }) => part),
  );
  const shown = live ? acts.slice(-actsShown) : acts;
  const card = makeCard(chat.standing(number, batch.sheet.name, state.join(' · ')), toneOf(pot.phase.is, waiting), {
    facts: [
      ...(opened?.facts ?? batchFacts(telling, pot)),
      ...(alone === undefined ? [] : partFacts(telling, alone)),
    ].filter(({ id }) => !growing.includes(id)),
    lines: [
      ...unreadLines(telling.words, unreadUnder(telling.shop, batchStream(number))),
      ...(opened?.lines ?? atWorstLines(telling, batch)),
      ...parts.filter((part) => part !== alone).map((part) => partLine(telling, part)),
      ...(shown.length < acts.length ? [chat.earlierActs(acts.length - shown.length)] : []),
      ...shown.map((act) => chat.act(act.happenedAt, act.by, actSaid(telling, act), telling.figures)),
    ],
    actions: live ? (opened?.actions ?? tapsOf(telling, pot, waiting)) : [],
    fields: opened?.fields ?? [],
  });
  return { card, live, parts: parts.map(({ part }) => part.name) };
}

/** A part's act names the part; a coat does so itself. */
function actSaid(telling: Telling, { stream, fact }: Entry): string {
  const said = telling.words.fact(fact, telling.figures);
  return nounOf(stream) === 'part' && fact.type !== 'CoatApplied' ? `${nameIn(stream)} ${said}` : said;
}

/** Of several parts first what they all wait for, then the pot, then each by its name: there is room for a few. */
function tapsOf(telling: Telling, batch: BatchNow, waiting: readonly PartNow[]): readonly CardAction[] {
  const byPart = waiting.map((status) => ({ part: status.part.name, taps: partTaps(telling, status) }));
  const each = byPart.flatMap(({ part, taps }) =>
    taps.map((action) => ({
      ...action,
      id: `${action.id}-${part}`,
      label: waiting.length > 1 ? `${part}: ${action.label}` : action.label,
    })),
  );
  const pot = batchTaps(telling, batch);
  return waiting.length > 1 ? [...tapsTogether(byPart), ...pot, ...each] : [...each, ...pot];
}

function partsFrom(telling: Telling, batch: Batch): readonly Part[] {
  const names = [...new Set(batch.coats.map((coat) => coat.part))];
  return names.flatMap((name) => {
    const part = telling.shop.parts.get(name);
    return part?.coats.at(-1)?.batch === batch.number ? [part] : [];
  });
}

/** One line for each act of the batch and of its parts since they were coated from it. */
function actsOf(batch: Batch, parts: readonly Part[]): readonly Entry[] {
  const bySeq = new Map<number, Entry>();
  for (const entry of batch.entries) if (isAct(entry)) bySeq.set(entry.seq, entry);
  for (const part of parts) {
    const from = batch.coats.find((coat) => coat.part === part.name)?.at ?? 0;
    for (const entry of part.entries) if (isAct(entry) && entry.happenedAt >= from) bySeq.set(entry.seq, entry);
  }
  return [...bySeq.values()].sort((a, b) => a.happenedAt - b.happenedAt || a.seq - b.seq);
}

function toneOf(phase: BatchNow['phase']['is'], waiting: readonly PartNow[]): Tone {
  if (phase === 'dead') return 'stop';
  return waiting.some(({ heldBy }) => heldBy.length > 0) ? 'warn' : 'plain';
}
