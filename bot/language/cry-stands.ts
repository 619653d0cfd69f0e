// Whether a word that calls stands as a cry. Where the line begins with it, it is one unless what follows is calm; elsewhere
// what stands next to it must be of a cry.

import type { Alarm } from '../../core/session/session-commands.ts';
import { isCalm, isOnlyWet } from './cry-calm.ts';
import { isPersonDown } from './cry-down.ts';
import { isLiquidOut } from './cry-liquid.ts';
import {
  alarmOf,
  type Called,
  type CryContext,
  endsWell,
  isCanOf,
  isDropped,
  isOfPot,
  opens,
  without,
} from './cry-round.ts';
import type { CryTable } from './cry-words.ts';

/** Nothing but shouts, names and small words stands before it. */
export function isBegun(alarm: Alarm, before: readonly string[], context: CryContext): boolean {
  const { cries, names } = context;
  return before.every(
    (word) =>
      cries.openings.has(word) ||
      (cries.sizes.has(word) && !(alarm === 'eyes' && cries.wary.has(word))) ||
      names.has(word) ||
      alarmOf(word, context) !== undefined ||
      (alarm === 'eyes' && cries.ofBody.has(word)),
  );
}

function isDenied(alarm: Alarm, before: readonly string[], cries: CryTable): boolean {
  // `no cans bulging`.
  const between = alarm === 'hot' ? new Set([...cries.between, ...cries.pots, ...cries.soon]) : cries.between;
  const [nearest, next] = without(before, between);
  if (nearest !== undefined && cries.denials.has(nearest) && !cries.oh.has(next ?? '')) return true;
  return before.slice(0, 4).some((word) => cries.supposed.has(word));
}

/** Whether what stands round the word makes it a cry. */
export function isCry(called: Called, context: CryContext): boolean {
  const { cries } = context;
  const { alarm, word, before, after } = called;
  if (isDenied(alarm, before, cries)) return false;
  // `my eyes are burning` is no fire.
  if (
    alarm === 'fire' &&
    cries.sore.has(word) &&
    [...before, ...after].some((each) => alarmOf(each, context) === 'eyes')
  )
    return false;
  // Before anything else: what is poured or dropped is told by what it is.
  if (isDropped(word, after, context)) return isLiquidOut(word, before, after, context);
  // `se cayó`, `caliente`: they are said of any thing, so that what is said must be a person or a pot.
  const callsAlone =
    alarm === 'hot' ? word.split(' ').some((each) => cries.pots.has(each)) : !cries.ofAnything.has(word);
  if (callsAlone && isBegun(alarm, before, context)) {
    if (isCalm(alarm, word, after, context)) return false;
    if (context.heard === 'begun') return true;
  }
  switch (alarm) {
    case 'fire':
      if (cries.smoke.has(word) && after.length === 0 && before.length === 0) return false;
      return opensFire(before, context) && endsWell(after, context, () => true);
    case 'eyes':
      return opensEyes(before, context) && (isSore(after, cries) || endsWell(after, context));
    case 'down':
      if (
        cries.faintsAlone.has(word) &&
        endsWell(after, context, () => true) &&
        !before.some((each) => cries.everyday.has(each) || cries.things.has(each) || cries.denials.has(each))
      )
        return true;
      if (cries.faints.has(word) && !cries.denials.has(after[0] ?? '')) return true;
      if (
        cries.fell.has(word) &&
        (cries.fallsOfWork.has(after[0] ?? '') || cries.fallsOfWorkFarther.has(after.slice(0, 2).join(' ')))
      )
        return false;
      return isPersonDown(before, after, context);
    case 'spill':
      // Of no liquid it may be a coat.
      return !cries.onlyOfLiquid.has(word) && (isCanOf(after, context) || isSpill(before, after, context));
    case 'hot':
      if (isOfPot(word, after, context)) return opens(before, context);
      return isPotHot(called, context);
    case 'breathless':
      return !isCalm(alarm, word, after, context);
    case 'skin-burn':
    case 'emergency':
      return opens(before, context) && endsWell(after, context, () => true) && !isCalm(alarm, word, after, context);
  }
}

function opensFire(before: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  const [word] = without(before, cries.sizes);
  if (word !== undefined && cries.takingFire.has(word)) return true;
  return opens(before, context) || (word !== undefined && cries.liquids.has(word));
}

/** `got some in my eye`: what is in an eye needs no other word; `an eye for it` does. */
function opensEyes(before: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  const [word] = without(before, new Set([...cries.ofBody, ...cries.sizes]));
  if (word === undefined || cries.openings.has(word) || context.names.has(word) || cries.sore.has(word)) return true;
  return cries.inEye.has(word) || alarmOf(word, context) !== undefined;
}

function isSore(after: readonly string[], cries: CryTable): boolean {
  const [verb = '', how = ''] = after;
  return cries.sore.has(verb) || (cries.soreBy.has(verb) && cries.sore.has(how));
}

function isSpill(before: readonly string[], after: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  if (isOnlyWet([...before, ...after], cries)) return false;
  const [who] = without(before, cries.sizes);
  const isOpen =
    opens(before, context) ||
    (who !== undefined && (cries.liquids.has(who) || cries.anybody.has(who) || cries.spilling.has(who)));
  const [word, next = ''] = without(after, cries.sizes);
  if (word === undefined) return isOpen;
  const isMuch = cries.liquids.has(word) || /^\d/.test(word) || cries.much.has(word);
  const isOf = cries.of.has(word) && cries.liquids.has(next);
  return isOpen && (isMuch || isOf || endsWell(after, context, () => true));
}

/** A pot or a can that heats; weather, coffee and ovens are hot every day. */
function isPotHot({ word: cried, before, after }: Called, context: CryContext): boolean {
  const { cries } = context;
  if ([...before, ...after].some((word) => cries.harmless.has(word))) return false;
  if (before.length + after.length === 0) return true;
  if (cries.heating.has(cried) && !before.some((word) => cries.itself.has(word))) return false;
  // `hot pot by the oven`: the word itself names the pot, so that only where it is may follow.
  if (cried.split(' ').some((word) => cries.pots.has(word))) {
    return opens(before, context) && (/^\d+$/.test(after[0] ?? '') || endsWell(after, context));
  }
  // `echa humo la mezcla`, `sale humo de la mezcla`.
  const near = [...before.slice(0, 4), ...without(after, new Set([...cries.articles, ...cries.of])).slice(0, 1)];
  const isPot = near.some((word) => cries.pots.has(word));
  return (
    isPot ||
    (before.length === 0 && /^\d+$/.test(after[0] ?? '')) ||
    (before.length === 0 && cries.endings.has(after[0] ?? ''))
  );
}
