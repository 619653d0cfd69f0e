// Answers to "heard", undo, amend and set.

import type { Batch } from '../../core/batch/batch.ts';
import type { Recorded } from '../../core/execute.ts';
import type { Amended, Entry } from '../../core/history.ts';
import { nameIn, nounOf } from '../../core/ids.ts';
import { filmReading, type Part } from '../../core/part/part.ts';
import { partStatus } from '../../core/part/part-status.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { entriesIn, type Shop } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { alarmOverTaps, alarmsOfReading } from './alarm-of-reading.ts';
import { batchFacts, batchTaps, ratioFacts } from './batch-cards.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { wasAndIs } from './corrected.ts';
import { newlyWrong } from './deviation-lines.ts';
import { heldLines, partFacts, partTaps } from './part-cards.ts';
import { leftBy } from './recorded-act.ts';
import { ringLabel } from './ring-label.ts';
import { settingShown } from './setting-shown.ts';
import { spotsTold } from './spot-cards.ts';

export function heardCard(telling: Telling, { envelopes }: Recorded): Card {
  const lines = envelopes.flatMap(({ body, by }) =>
    body.type === 'RingAnswered' ? [telling.words.replies.heardKey(ringLabel(telling, body.key), by)] : [],
  );
  return makeCard(telling.words.replies.heard, 'good', { lines });
}

export function undoneCard(telling: Telling, { envelopes, before, shop }: Recorded): Card {
  const amended = (kind: Amended['to']['kind']) =>
    envelopes.flatMap(({ body }) => (body.type === 'Amended' && body.to.kind === kind ? [body.amends] : []));
  const touched = envelopes.flatMap(({ stream }) => (nounOf(stream) === 'part' ? [nameIn(stream)] : []));
  // A hold for a reading that failed does not go with the reading.
  const held = [...new Set(touched)].flatMap((name) => {
    const part = shop.parts.get(name);
    return part === undefined ? [] : heldLines(telling, partStatus({ shop, now: telling.now }, part));
  });
  const lines = [
    ...correctionLines(telling, before, shop, amended('corrected')),
    ...undoneLines(telling, before, amended('undone')),
    ...coatsBack(telling, envelopes),
    ...held,
  ];
  return makeCard(telling.words.replies.undone, held.length > 0 ? 'warn' : 'plain', { lines });
}

/** By which rules it is judged from now on, and what those mark that was not marked before. */
export function judgedCard(telling: Telling, batch: Batch, { before, shop }: Recorded): Card {
  const { replies } = telling.words;
  const found = newlyWrong(telling, before, shop);
  const lines = found.length === 0 ? [replies.judgedTheSame] : found;
  return makeCard(replies.judgedAnew(batch.number, editionOfToday), found.length === 0 ? 'plain' : 'warn', {
    lines: [...lines, replies.nothingReopened],
    actions: [tap(telling, 'trace', `trace batch ${batch.number}`)],
  });
}

/** With an amendment go the holds that followed from it. */
function undoneLines(telling: Telling, before: Shop, seqs: readonly number[]): readonly string[] {
  const undone = entriesIn(before).filter(({ seq }) => seqs.includes(seq));
  const acts = telling.words.undo.acts(undone, telling.figures);
  return undone.length === 0 ? [] : [telling.words.replies.undoneActs(acts)];
}

/** Where a coat is told again, once the correction is taken back that had moved it. */
function coatsBack({ words, figures }: Telling, envelopes: Recorded['envelopes']): readonly string[] {
  return envelopes.flatMap(({ stream, body }) =>
    body.type === 'CoatApplied' ? [words.replies.nowStands(words.undo.act({ stream, fact: body }, figures))] : [],
  );
}

/** The act itself stands, as it did before the correction. */
function correctionLines(telling: Telling, before: Shop, shop: Shop, seqs: readonly number[]): readonly string[] {
  const { replies } = telling.words;
  return entriesIn(before)
    .filter(({ seq }) => seqs.includes(seq))
    .flatMap((old) => {
      const entry = entriesIn(shop).find(({ seq }) => seq === old.seq);
      if (entry === undefined) return [];
      const say = (each: Entry) =>
        `${telling.words.undo.act(each, telling.figures)}, ${telling.figures.timeDown(each.happenedAt)}`;
      return [replies.takenBack(say(old)), replies.nowStands(say(entry))];
    });
}

export function amendedCard(
  telling: Telling,
  outcome: Recorded,
  batch: Batch | undefined,
  touched: Part | undefined,
): Card {
  const { replies } = telling.words;
  const [envelope] = outcome.envelopes;
  if (envelope?.body.type !== 'Amended') return makeCard(replies.amended, 'plain');
  const { amends, why } = envelope.body;
  const find = (entries: readonly Entry[], seq: number) => entries.find((entry) => entry.seq === seq);
  const was = find(entriesIn(outcome.before), amends);
  // A coat that was of another part or another pot lies there now.
  const moved = outcome.envelopes.find(({ body }) => body.type === 'CoatApplied');
  const is = find(entriesIn(outcome.shop), moved?.seq ?? amends);
  const part = moved === undefined ? touched : outcome.shop.parts.get(nameIn(moved.stream));
  const change = was === undefined || is === undefined ? { was: '', is: '' } : wasAndIs(telling, was, is);
  const rung = alarmsOfReading(telling, is);
  const film = part && statusOf.part(telling, part);
  const pot = part === undefined && batch !== undefined ? statusOf.batch(telling, batch) : undefined;
  const spots = part === undefined || is === undefined ? undefined : spotPutRight(telling, part, is);
  return makeCard(replies.amended, 'plain', {
    fields: spots?.fields ?? [],
    facts: [
      ...(film === undefined || spots !== undefined ? [] : partFacts(telling, film)),
      ...(pot === undefined ? [] : [...ratioFacts(telling, pot.batch), ...batchFacts(telling, pot)]),
    ],
    lines: [
      ...(film === undefined ? [] : heldLines(telling, film)),
      ...[replies.was(change.was), replies.is(change.is)],
      ...(rung.length === 0 ? [] : [telling.words.session.monitor.alarmStays]),
      ...(why === '' ? [] : [replies.why(why)]),
      ...(spots?.lines ?? []),
    ],
    actions: [
      ...alarmOverTaps(telling, rung),
      ...(spots?.actions ?? []),
      ...(film !== undefined ? partTaps(telling, film) : pot !== undefined ? batchTaps(telling, pot) : []),
    ],
  });
}

/** As it is filed: names as the crew writes them. */
/** What the spot comes to as it is now, and what its set still asks. */
function spotPutRight(telling: Telling, part: Part, { fact, happenedAt }: Entry) {
  const told = fact.type === 'FilmRead' ? filmReading(fact, happenedAt).told : undefined;
  return told && spotsTold(telling, part, [told]);
}

export function settledCard(telling: Telling, outcome: Recorded): Card {
  const { replies, settings } = telling.words;
  const lines = leftBy(outcome, 'SettingChanged').map(({ setting }) =>
    replies.settledTo(settings.names[setting.name].label, settingShown(telling, setting)),
  );
  return makeCard(replies.settled, 'plain', { lines });
}
