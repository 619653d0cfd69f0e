// What a part wants of somebody now, from its preparation to its release.

import { partStream } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import type { PartClockId } from '../part/part-status.ts';
import { liveBatches } from '../shop.ts';
import type { NextActId, PartNow } from '../status.ts';
import { acting, firstAct, type Guidance, lastsBy, waiting } from './guidance.ts';

export function partGuidance(moment: Moment, status: PartNow): readonly Guidance[] {
  const { part, phase } = status;
  const of = partStream(part.name);
  const first = (...ids: readonly NextActId[]) => firstAct(status.next(), ids);
  switch (phase.is) {
    case 'bare':
      // It is made ready while a pot stirs; without one no clock runs against it.
      return part.prepared !== undefined || liveBatches(moment.shop).length === 0
        ? []
        : acting(of, first('prep'), { never: { is: 'touch-prepared' }, weight: 'ahead' });
    case 'rework':
      return part.prepared === undefined
        ? acting(of, first('strip', 'abrade'), { never: { is: 'touch-prepared' }, weight: 'last' })
        : [];
    case 'flashing':
      return flashing(status) ?? acting(of, first('dry'), untilMost(moment, status));
    case 'dry':
      return flashing(status) ?? acting(of, first('cure-oven', 'cure-room'), untilMost(moment, status));
    case 'curing':
      return curing(moment, status);
    case 'cured':
      return acting(of, first('release', 'lift', 'film'), { never: { is: 'hand-over-unreleased' }, weight: 'last' });
    case 'released':
    case 'left':
    case 'scrapped':
    case 'returned':
      return [];
  }
}

const clockOf = ({ clocks }: PartNow, id: PartClockId) => clocks.find((clock) => clock.id === id);

/** Before its flash-off is over nothing is done to it. */
function flashing(status: PartNow): readonly Guidance[] | undefined {
  const flash = clockOf(status, 'flash');
  if (flash?.errs !== 'at-least' || flash.goes !== 'runs') return undefined;
  return [waiting(partStream(status.part.name), flash, { is: 'heat-too-early', at: flash.dueAt })];
}

function untilMost({ now }: Moment, status: PartNow): Pick<Guidance, 'never' | 'lasts' | 'weight'> {
  const most = clockOf(status, 'flash-most');
  const isNear = most?.errs === 'at-most' && most.nearAt <= now;
  return { weight: isNear ? 'ends' : 'hands', never: { is: 'stand-too-long', at: most?.dueAt }, lasts: lastsBy(most) };
}

function curing({ now }: Moment, status: PartNow): readonly Guidance[] {
  const { part, phase, cure, next } = status;
  if (cure === undefined || phase.is !== 'curing') return [];
  const of = partStream(part.name);
  const isHot = phase.cure.way === 'oven';
  const lasts = lastsBy(cure.clock);
  if (cure.clock.goes === 'given') {
    return acting(of, firstAct(next(), ['out']), {
      never: { is: isHot ? 'touch-hot' : 'hand-over-unreleased' },
      lasts,
    });
  }
  const warm = clockOf(status, 'warm');
  if (isHot && warm?.errs === 'at-least' && warm.dueAt !== undefined && warm.dueAt > now) {
    return [waiting(of, warm, { is: 'take-out-unproved' })];
  }
  // Its time begins with a reading of the part itself.
  const isUnread = cure.clock.progress === 0 && cure.clock.assumed;
  return isHot && (cure.clock.goes !== 'runs' || isUnread)
    ? acting(of, firstAct(next(), ['temp']), { never: { is: 'take-out-unproved' }, lasts })
    : [waiting(of, cure.clock, { is: 'take-out-unproved' })];
}
