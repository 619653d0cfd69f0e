// What a can wants of somebody now: it is left alone while it reacts, looked at while it is in doubt, and never stands open.

import { canStream } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import { liveBatches } from '../shop.ts';
import type { CanNow } from '../status.ts';
import { acting, firstAct, type Guidance, lastsBy } from './guidance.ts';

export function canGuidance({ shop, now }: Moment, { can, phase, clocks, next }: CanNow): readonly Guidance[] {
  const of = canStream(can.number);
  const lidOff = clocks.find(({ id }) => id === 'lid-off');
  const lasts = lastsBy(lidOff);
  /** Its lid is off for a pot that waits for it, and there is time for that. */
  const isPouredNext = (): boolean => {
    const isInTime = lidOff?.errs === 'at-most' && lidOff.dueAt > now;
    const waits = liveBatches(shop).some(
      ({ sheet, inVessel, weighing }) =>
        weighing === undefined && sheet.id === can.sheet.id && inVessel[can.component] === undefined,
    );
    return isInTime && waits;
  };
  switch (phase.is) {
    case 'reacts':
      return acting(of, firstAct(next(), ['discard']), { never: { is: 'use-reacting-can' }, weight: 'danger' });
    case 'doubtful':
      return acting(of, firstAct(next(), ['check', 'discard']), {
        never: { is: 'pour-in-doubt' },
        lasts,
        weight: 'open',
      });
    case 'lid-off':
      return acting(of, firstAct(next(), ['blanket']), {
        ...{ never: { is: 'leave-lid-off' }, lasts, weight: isPouredNext() ? 'ahead' : 'open' },
      });
    case 'blanketed':
    case 'not-needed':
      return [];
  }
}
