// The acts that a question may mean, with as much of them as was said and an example in place of what is asked first: `can I
// coat impeller-7` is asked of each pot in use, by each method of its sheet.

import type { Batch } from '../batch/batch.ts';
import { batchActs, batchStatus } from '../batch/batch-status.ts';
import { canActs, canStatus } from '../can/can-status.ts';
import { methodLikely } from '../coats-waiting.ts';
import type { Command, StateQuestion, Verb } from '../commands.ts';
import type { PartName } from '../ids.ts';
import { methods } from '../methods.ts';
import type { Candidate, Moment } from '../next-acts.ts';
import type { Part } from '../part/part.ts';
import { partActs, partStatus } from '../part/part-status.ts';
import { sessionActs, sessionStatus } from '../session/session-status.ts';
import { batchOf, liveBatches, liveCans, liveParts, openSessions } from '../shop.ts';
import { grams } from '../units.ts';
import type { ThingMeant } from './things-meant.ts';

type CanI = Extract<StateQuestion, { ask: 'can-i' }>;

/** The likeliest first; none where nobody can tell what such an act would be. */
export function actsLike(
  moment: Moment,
  { act, said, method, of }: CanI,
  things: readonly ThingMeant[],
): readonly Command[] {
  const parts = things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));
  const own = said === undefined || isOfNoNumber(moment, said) ? [] : [said];
  if (act === 'coat') {
    // Of a part that nobody has named yet: it would be a new one.
    const unknown = things.length > 0 ? [] : of.flatMap((thing) => (thing.is === 'name' ? [thing.name] : []));
    return [...own, ...coats(moment, method, things, parts.length > 0 ? parts.map(({ name }) => name) : unknown)];
  }
  if (act === 'mix') return [...own, { verb: 'mix', amount: { kind: 'mass', grams: grams(1_000) } }];
  if (act === 'cure') return [...own, ...cures(moment, parts)];
  if (act === 'open' && own.length === 0) return openings(of);
  if (own.length > 0) return own;
  const plain = parts.length > 0 ? onParts(act, parts) : [];
  return [...plain, ...listed(moment, things).flatMap((each) => each.said.filter(({ verb }) => verb === act))];
}

/** `can I take out 7`: read as a batch that nobody has. */
const isOfNoNumber = ({ shop }: Moment, said: Command): boolean =>
  'batch' in said && said.batch !== undefined && !shop.batches.has(said.batch);

function onParts(act: Verb, parts: readonly Part[]): readonly Command[] {
  const named = parts.map(({ name }) => name);
  return act === 'dry' || act === 'out' || act === 'release' ? [{ verb: act, parts: named }] : [];
}

/** Of a pot in use before one that is still made. */
function coats(
  { shop, now }: Moment,
  said: CanI['method'],
  things: readonly ThingMeant[],
  parts: readonly PartName[],
): readonly Command[] {
  const named = things.flatMap((thing) => (thing.is === 'batch' ? (shop.batches.get(thing.number) ?? []) : []));
  const rank = (batch: Batch): number =>
    ({ filtered: 0, blending: 1, paused: 1, 'to-weigh': 2, over: 3, dead: 4, emptied: 5 })[
      batchStatus({ shop, now }, batch).phase.is
    ];
  const pots = (named.length > 0 ? named : liveBatches(shop)).toSorted((one, other) => rank(one) - rank(other));
  const on = parts.length > 0 ? parts : ['-'];
  const asNew = parts.some((part) => shop.parts.has(part)) ? {} : { asNew: true as const };
  const [way = 'brush'] = said === undefined ? methods : [said];
  if (pots.length === 0) return [{ verb: 'coat', parts: on, ...asNew, method: way }];
  return pots.flatMap((batch) => {
    const likely = methodLikely(shop, batch);
    const ways = said === undefined ? [...(likely === undefined ? [] : [likely]), ...batch.sheet.methods] : [said];
    return ways.map((method) => ({ verb: 'coat' as const, parts: on, ...asNew, batch: batch.number, method }));
  });
}

/** Of Part A where nobody says which: that is the one that air spoils. */
function openings(of: CanI['of']): readonly Command[] {
  const isB = of.some((thing) => thing.is === 'name' && thing.name === 'b');
  return [{ verb: 'open', component: isB ? 'part-b' : 'part-a', lot: '-', grams: grams(1_000) }];
}

function cures({ shop }: Moment, parts: readonly Part[]): readonly Command[] {
  return parts.flatMap((part): readonly Command[] => {
    const named = [part.name];
    const sheet = batchOf(shop, part)?.sheet;
    // No sheet says how a part without a coat cures: what stands against it does so in every way.
    if (sheet === undefined) return [{ verb: 'cure', parts: named, way: { kind: 'oven' } }];
    const { oven, room } = sheet.cure;
    return [
      ...(oven === undefined
        ? []
        : [{ verb: 'cure' as const, parts: named, way: { kind: 'oven' as const, setCelsius: oven.atCelsius } }]),
      ...(room === undefined ? [] : [{ verb: 'cure' as const, parts: named, way: { kind: 'room' as const } }]),
    ];
  });
}

/** What the named things list next, whether or not it would be taken; without a name, all that run. */
function listed(moment: Moment, things: readonly ThingMeant[]): readonly Candidate[] {
  const { shop } = moment;
  const all = things.length === 0;
  const numbers = (is: ThingMeant['is']) =>
    things.flatMap((thing) => ('number' in thing && thing.is === is ? [thing.number] : []));
  const batches = all ? liveBatches(shop) : numbers('batch').flatMap((number) => shop.batches.get(number) ?? []);
  const cans = all ? liveCans(shop) : numbers('can').flatMap((number) => shop.cans.get(number) ?? []);
  const sessions = all ? openSessions(shop) : numbers('session').flatMap((number) => shop.sessions.get(number) ?? []);
  const parts = all ? liveParts(shop) : things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));
  return [
    ...sessions.flatMap((session) => sessionActs(sessionStatus(moment, session))),
    ...batches.flatMap((batch) => batchActs(batchStatus(moment, batch))),
    ...parts.flatMap((part) => partActs(partStatus(moment, part))),
    ...cans.flatMap((can) => canActs(canStatus(moment, can))),
  ];
}
