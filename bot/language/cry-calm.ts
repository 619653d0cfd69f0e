// What makes a line calm that begins with an alarm's word: `fire extinguisher checked`, `down to 20C`, `eyes on the scale`. Only
// what is listed is calm: a false ring costs a minute, a cry that only asks may cost a person. Common practice and our own
// choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { alarmOf, type CryContext, isPerson } from './cry-round.ts';
import type { CryTable } from './cry-words.ts';

const companions = {
  fire: 'calmFire',
  eyes: 'calmEyes',
  down: 'calmDown',
  spill: 'calmSpill',
  hot: 'calmHot',
  'skin-burn': 'calmSkin',
  breathless: 'calmBreathless',
  emergency: 'calmEmergency',
} as const;

const isCount = (word: string, { counts }: CryTable): boolean =>
  /^\d/.test(word) || [...counts].some((count) => word.startsWith(count));

/** `before` and `after` are the words round `word`, `after` nearest first. */
export function isCalm(alarm: Alarm, word: string, after: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  const [first = '', second = '', third = ''] = after;
  // `fire door burning`, `down the shaft not breathing`.
  if (
    after.some(
      (each) =>
        cries.desperate.has(each) || (each !== first && alarmOf(each, context) !== undefined && alarm !== 'down'),
    )
  )
    return false;
  const next = cries.is.has(second) ? third : second;
  if (cries.summoned.has(first)) return !(cries.summons.has(next) || alarmOf(next, context) !== undefined);
  if (alarm === 'fire' && cries.comesToFire.has(first)) {
    const hour = cries.is.has(second) ? '' : third;
    return cries.oftenOfThem.has(next) || (cries.atHour.has(next) && (/^\d/.test(hour) || cries.noons.has(hour)));
  }
  if (cries.contact.has(first) && after.some((each) => cries.liquids.has(each))) return false;
  if (alarm === 'down' && isCount(first, cries)) return !after.some((each) => isPerson(each, context));
  if (cries[companions[alarm]].has(first)) return true;
  if (cries.calmPhrases.has(`${word} ${first}`) || cries.calmPhrases.has(`${word} ${first} ${second}`)) return true;
  const isFine = isSeen(cries.seenTo, after, cries);
  switch (alarm) {
    case 'fire':
      if (cries.orders.has(`${word} ${first}`) && !cries.is.has(second) && !cries.has.has(second)) return true;
      if (cries.kindling.has(first)) return cries.kindled.has(`${first} ${second}`);
      return !cries.fireItself.has(word) && (isFine || after.some((each) => cries.ofHome.has(each)));
    case 'eyes':
      return isFine || isLooking(after, context);
    case 'down':
      // `down 5 degrees`, `down the hall`, `collapsed the boxes`.
      if (cries.suffers.has(first)) return after.some((each) => cries.illness.has(each));
      if (cries.byHowMuch.has(first) && isCount(second, cries)) return true;
      if (cries.listed.has(first) && after.some((each) => cries.onPaper.has(each))) return true;
      return (
        cries.articles.has(first) && !after.slice(1, 3).some((each) => isPerson(each, context) || cries.falls.has(each))
      );
    case 'spill':
      // `vertido en la mezcla`: it was poured where it belongs.
      if (isPouring(word, cries) && cries.pots.has(after.find((each) => !cries.articles.has(each)) ?? '')) return true;
      return (
        isSeen(cries.cleaned, after, cries) ||
        isFine ||
        isOnlyWet(after, cries) ||
        cries.spilledInJest.has(`${first} ${second}`)
      );
    case 'skin-burn':
    case 'breathless':
    case 'emergency':
      return isFine;
    case 'hot':
      return after.some((each) => cries.harmless.has(each));
  }
}

const isPouring = (word: string, { onlyOfLiquid }: CryTable): boolean =>
  [...onlyOfLiquid].some((each) => word.startsWith(each));

/** `spill in the booth cleaned up`; not `not cleaned`. */
const isSeen = (seen: ReadonlySet<string>, after: readonly string[], cries: CryTable): boolean =>
  after.some((each, i) => seen.has(each) && !cries.notSeenTo.has(after[i - 1] ?? ''));

/** Coffee and no solvent: not `spilled acetone by the water tap`. */
export const isOnlyWet = (near: readonly string[], cries: CryTable): boolean =>
  near.some((word) => cries.harmless.has(word)) && !near.some((word) => cries.liquids.has(word));

/** `eyes on the pot`, `ojos en la báscula`, `eye of the needle`; not `eyes on fire`, `eyes of kari`. */
function isLooking(after: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  const [first = ''] = after;
  const [at = ''] = after.slice(1).filter((word) => !cries.articles.has(word));
  if (alarmOf(at, context) !== undefined || isPerson(at, context) || cries.liquids.has(at)) return false;
  if (cries.lookingInto.has(first)) return cries.pots.has(at) || cries.scales.has(at);
  return cries.lookingAt.has(first);
}
