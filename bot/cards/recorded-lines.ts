// What stands under the card of whatever was recorded: what it went against, what a correction has made wrong, that it was
// said late, and what rings next.

import { personIn } from '../../core/crew/crew.ts';
import type { Recorded } from '../../core/execute.ts';
import { type Entry, isLate } from '../../core/history.ts';
import { nameIn } from '../../core/ids.ts';
import { isReading } from '../../core/made-with.ts';
import type { Objection } from '../../core/objections.ts';
import type { Part } from '../../core/part/part.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { rewrites } from '../../core/records/holds-that-follow.ts';
import { minutesBetween } from '../../core/units.ts';
import { byDueTime } from '../../core/wanted-reminder.ts';
import type { Card } from './card.ts';
import type { Telling } from './card-context.ts';
import { ringNext } from './clock-text.ts';
import { newlyWrong } from './deviation-lines.ts';

/** Its own card tells of its ratio. */
const isWeighing = ({ fact }: Entry): boolean =>
  fact.type === 'PartsWeighed' || fact.type === 'PartWeighed' || fact.type === 'PartAdded';

export function despiteLines(telling: Telling, outcome: Recorded): readonly string[] {
  const seqs = new Set(outcome.envelopes.map((envelope) => envelope.seq));
  const { recordedDespite } = telling.words.replies;
  const { lifted, roles } = telling.words.parts;
  const told = deviationsIn(outcome.shop, ({ seq }) => seqs.has(seq))
    .filter(({ entry, objection }) => !(objection.code === 'ratio-out' && isWeighing(entry)))
    // What a reading was made with stands under it.
    .filter(({ entry, objection }) => !(isOfInstrument(objection) && isReading(entry.fact)))
    .map(({ entry: { by }, objection, permitted }) => {
      const reason = telling.words.objection(objection, telling.figures);
      return permitted === undefined
        ? recordedDespite(reason)
        : lifted(by, roles[personIn(telling.shop.crew, by).role], permitted, reason);
    });
  return [...new Set(told)];
}

const isOfInstrument = ({ code }: Objection): boolean => code === 'instrument-failed' || code === 'instrument-overdue';

/** What this correction or late reading has made wrong of what was done before. */
export function rewrittenLines(telling: Telling, { envelopes, before, shop }: Recorded): readonly string[] {
  // A failed check marks all that was read since the last good one: its card names what that comes to.
  if (!rewrites(envelopes) || envelopes.some(({ body }) => body.type === 'InstrumentChecked')) return [];
  return newlyWrong(telling, before, shop);
}

/** A hold, by word or by what a figure says. The weighing's own card tells of its ratio, which is the lead's as well. */
export function isForLeads({ envelopes, shop }: Recorded): boolean {
  if (envelopes.some(({ body }) => body.type === 'PartHeld')) return true;
  const seqs = new Set(envelopes.map(({ seq }) => seq));
  return deviationsIn(shop, ({ seq }) => seqs.has(seq)).some(({ objection }) => objection.code === 'ratio-out');
}

/** What is out of the shop and should not be: whoever speaks with the customer must know at once. */
export function isForSupervisors(outcome: Recorded): boolean {
  const left = ({ body }: Recorded['envelopes'][number]): boolean =>
    body.type === 'PartHeld' && body.because?.includes('not-released') === true;
  return outcome.envelopes.some(left) || heldAgain(outcome).length > 0;
}

/** Parts that were released, or have left, and that this holds. */
function heldAgain({ envelopes, before }: Recorded): readonly Part[] {
  const held = envelopes.flatMap(({ body, stream }) => (body.type === 'PartHeld' ? [nameIn(stream)] : []));
  return [...new Set(held)].flatMap((name) => {
    const part = before.parts.get(name);
    return part !== undefined && (part.verdict?.is === 'released' || part.leftAt !== undefined) ? [part] : [];
  });
}

/** By name: of what has left the shop it says so, since that has to be fetched back. */
export function reopenedLines({ words, figures }: Telling, outcome: Recorded): readonly string[] {
  const again = heldAgain(outcome);
  const here = again.filter(({ leftAt }) => leftAt === undefined).map(({ name }) => name);
  const gone = again.filter(({ leftAt }) => leftAt !== undefined).map(({ name }) => name);
  return [
    ...(here.length === 0 ? [] : [words.parts.heldAgain(here, figures)]),
    ...(gone.length === 0 ? [] : [words.parts.heldThoughGone(gone, figures)]),
  ];
}

export function lateLine(telling: Telling, { envelopes }: Recorded): readonly string[] {
  const late = envelopes.find((envelope) => isLate(envelope));
  if (late === undefined) return [];
  return [
    telling.words.replies.happenedAt(
      late.happenedAt,
      minutesBetween(late.happenedAt, late.recordedAt),
      telling.figures,
    ),
  ];
}

export function nextRings(telling: Telling, outcome: Recorded): Card['next'] {
  const touched = outcome.envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]);
  const places = touched.some((stream) => stream.startsWith('place/'));
  return [...outcome.plan]
    .filter(([stream]) => touched.includes(stream) || (places && !stream.startsWith('crew/')))
    .flatMap(([, reminders]) => reminders)
    .sort(byDueTime)
    .map(({ numberedKey, dueAt }) => ringNext(telling, numberedKey, dueAt));
}
