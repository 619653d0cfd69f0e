// What a pot wants of somebody now, from the weighing to the gear that it leaves behind.

import { type Can, isGasSensitive } from '../can/can.ts';
import { components } from '../components.ts';
import { batchStream, canStream } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import type { AtLeastClock } from '../noun-clock.ts';
import { liveCans, liveParts } from '../shop.ts';
import { type BatchNow, type NextActId, statusOf } from '../status.ts';
import { acting, firstAct, type Guidance, lastsBy, type MustNot, waiting } from './guidance.ts';

export function potGuidance(moment: Moment, status: BatchNow): readonly Guidance[] {
  const { batch, phase, pot, blend } = status;
  const of = batchStream(batch.number);
  const weight = pot !== undefined && pot.nearAt <= moment.now ? 'ends' : 'hands';
  const byPot = { lasts: lastsBy(pot), weight } as const;
  const first = (...ids: readonly NextActId[]) => firstAct(status.next(), ids);
  // Whatever its clock says: nobody is led to put it on.
  const isRecalled = status.heldBy.some(({ code }) => code === 'lot-recalled');
  if (isRecalled && phase.is !== 'to-weigh' && phase.is !== 'emptied') {
    return acting(of, first('empty', 'stop', 'hot', ...cleaning), { never: { is: 'use-recalled' }, weight: 'danger' });
  }
  switch (phase.is) {
    case 'to-weigh':
      return (
        fromCans(moment, status) ??
        acting(of, first('weigh', 'weigh-a', 'weigh-b'), { never: { is: 'pour-unweighed' }, lasts: thenBlends(status) })
      );
    case 'blending':
    case 'paused': {
      if (blend?.goes === 'given') {
        return acting(of, first('filter', 'stop', ...coating), { never: { is: 'coat-unfiltered' }, ...byPot });
      }
      const never: MustNot = { is: 'use-too-early', at: blend?.dueAt };
      if (phase.is === 'paused') return acting(of, first('stir'), { never, lasts: lastsBy(blend), weight: 'open' });
      return blend === undefined ? [] : [waiting(of, blend, never)];
    }
    case 'filtered': {
      const told = { never: { is: 'coat-too-late', at: pot?.dueAt }, ...byPot } as const;
      const empty = first('empty');
      const isWaitedFor = batch.coats.length === 0 || liveParts(moment.shop).some(({ coats }) => coats.length === 0);
      const before = first('filter', 'stir', ...(isWaitedFor ? coating : (['catch'] as const)));
      if (before !== undefined || empty === undefined) return acting(of, before, told);
      return [{ of, doing: { is: 'use-up', act: empty }, ...told, weight: weight === 'ends' ? weight : 'last' }];
    }
    case 'dead':
    case 'over':
      return acting(of, first('empty', 'hot', ...cleaning), { never: { is: 'use-dead-pot' }, weight: 'danger' });
    case 'emptied':
      return acting(of, first(...cleaning), { never: { is: 'let-it-set' }, weight: 'ahead' });
  }
}

const coating = ['coat-part', 'coat'] as const;
const cleaning = ['flush-step', 'gear-cleaned'] as const;

function thenBlends({ wantedMinutes }: BatchNow): Guidance['lasts'] {
  return wantedMinutes === undefined ? { by: 'nothing' } : { by: 'blend', takes: wantedMinutes };
}

/** Before anything is weighed: a can of each part is open, and stirred where its sheet asks for that. */
function fromCans(moment: Moment, { batch }: BatchNow): readonly Guidance[] | undefined {
  const { sheet, inVessel } = batch;
  const of = batchStream(batch.number);
  const told = { of, lasts: { by: 'nothing' }, weight: 'hands' } as const;
  const stirring: Guidance[] = [];
  for (const component of components.filter((each) => inVessel[each] === undefined)) {
    const cans = liveCans(moment.shop).filter((can) => can.sheet.id === sheet.id && can.component === component);
    if (cans.length === 0) {
      const isSensitive = isGasSensitive({ component, sheet });
      const never: MustNot = { is: isSensitive ? 'open-without-gas' : 'pour-unweighed' };
      return [{ ...told, doing: { is: 'open-can', component }, never }];
    }
    const stands = cans.map((can) => ({ ...statusOf.can(moment, can), stirs: stirOf(moment, can) }));
    if (stands.some(({ preStir, isStirred, stirs }) => preStir === undefined || (isStirred && stirs === undefined))) {
      continue;
    }
    const running = stands.find(({ stirs }) => stirs !== undefined);
    if (running?.stirs !== undefined) {
      stirring.push({
        ...waiting(canStream(running.can.number), running.stirs, { is: 'pour-unstirred' }),
        weight: 'ahead',
      });
      continue;
    }
    for (const { can, next } of stands) {
      const act = firstAct(next(), ['prestir', 'prestir-gas']);
      if (act !== undefined) {
        return [{ ...told, doing: { is: 'stir-can', can: can.number, act }, never: { is: 'pour-unstirred' } }];
      }
    }
  }
  return stirring.length === 0 ? undefined : stirring.slice(0, 1);
}

/** While it lasts: its bell may ring within the last thousandth of a second. */
function stirOf(moment: Moment, can: Can): AtLeastClock<'pre-stir'> | undefined {
  const clock = statusOf.can(moment, can).clocks.find(({ id }) => id === 'pre-stir');
  return clock?.errs === 'at-least' && clock.goes === 'runs' && clock.dueAt - moment.now >= 1 ? clock : undefined;
}
