// What stands against an act at this moment, and from when each of it would not: the rules are asked, nothing is recorded.
// Asked again at the end of each clock that runs, as if nothing else happened until then.

import type { Command } from '../commands.ts';
import { decide } from '../decide.ts';
import type { PersonName } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import type { Objection, Unclear } from '../objections.ts';
import { liveBatches, liveCans, liveParts, openSessions } from '../shop.ts';
import { statusOf } from '../status.ts';
import { type EpochMs, epochMs } from '../units.ts';

/** `until`: from then on it would not stand, as far as a clock tells. */
export interface Stands {
  readonly objection: Objection;
  readonly until: EpochMs | undefined;
}

export type Against =
  | { readonly is: 'nothing'; readonly command: Command }
  | {
      readonly is: 'objections';
      readonly command: Command;
      readonly stands: readonly Stands[];
      /** When all of them are gone, what would stand against it by then. */
      readonly afterwards: readonly Objection[];
    }
  | { readonly is: 'unclear'; readonly command: Command; readonly unclear: Unclear };

/** Of several that it may mean the one that the least stands against; `undefined` where it may mean none. */
export function standsAgainst(moment: Moment, by: PersonName, commands: readonly Command[]): Against | undefined {
  const judged = commands.map((command) => judge(moment, by, command));
  const least = (each: Against): number =>
    each.is === 'nothing' ? 0 : each.is === 'objections' ? each.stands.length : Number.MAX_SAFE_INTEGER;
  const [best] = judged.toSorted((one, other) => least(one) - least(other));
  return best?.is === 'objections' ? inTime(moment, by, best) : best;
}

function judge(moment: Moment, by: PersonName, command: Command): Against {
  const decision = decide(moment.shop, asked(command, by, moment.now));
  switch (decision.kind) {
    case 'accepted':
      return { is: 'nothing', command };
    case 'objected':
      return {
        ...{ is: 'objections', command, afterwards: [] },
        stands: decision.objections.map((objection) => ({ objection, until: undefined })),
      };
    case 'unclear':
      return isForMore(decision.unclear)
        ? { is: 'nothing', command }
        : { is: 'unclear', command, unclear: decision.unclear };
  }
}

/** Asked before it is recorded, and no reason against it. */
const isForMore = ({ code }: Unclear): boolean => ['which-can', 'new-part', 'new-place', 'far-reading'].includes(code);

const asked = (command: Command, by: PersonName, now: EpochMs) =>
  ({ command, by, now, at: now, stance: { is: 'asked' } }) as const;

/** More clocks than this at once have the same ends, or are not waited for. */
const mostMoments = 60;

function inTime({ shop, now }: Moment, by: PersonName, against: Extract<Against, { is: 'objections' }>): Against {
  const { command } = against;
  const later = endsOfClocks({ shop, now }).map((at) => {
    const decision = decide(shop, asked(command, by, at));
    return {
      at,
      objections: decision.kind === 'objected' ? decision.objections : [],
      known: decision.kind !== 'unclear',
    };
  });
  const goneAt = (code: Objection['code']): EpochMs | undefined =>
    later.find(({ known, objections }) => known && objections.every((each) => each.code !== code))?.at;
  const stands = against.stands.map(({ objection }) => ({ objection, until: goneAt(objection.code) }));
  const all = stands.map(({ until }) => until ?? Number.POSITIVE_INFINITY);
  const afterwards = later.find(({ at }) => at === Math.max(...all))?.objections ?? [];
  return { ...against, stands, afterwards };
}

/** To the full minute that is not too early. */
function endsOfClocks(moment: Moment): readonly EpochMs[] {
  const { shop, now } = moment;
  const clocks = [
    ...liveBatches(shop).flatMap((batch) => statusOf.batch(moment, batch).clocks),
    ...statusOf.parts(moment, liveParts(shop)).flatMap((part) => part.clocks),
    ...openSessions(shop).flatMap((session) => statusOf.session(moment, session).clocks),
    ...liveCans(shop).flatMap((can) => statusOf.can(moment, can).clocks),
  ];
  const ends = clocks.flatMap(({ dueAt }) =>
    dueAt === undefined || dueAt <= now ? [] : [Math.ceil(dueAt / 60_000) * 60_000],
  );
  return [...new Set(ends)]
    .sort((one, other) => one - other)
    .slice(0, mostMoments)
    .map(epochMs);
}
