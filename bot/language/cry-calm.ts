// What makes a line calm that begins with an alarm's word: `fire extinguisher checked`, `down to 20C`, `eyes on the scale`. Only
// what is listed is calm: a false ring costs a minute, a cry that only asks may cost a person. Common practice and our own
// choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { articles, harmless, heard, heardPhrases, is, liquids, onlyOfLiquid, pots } from './cry-words.ts';

/** Who and what the line may name. */
export interface Known {
  readonly isPerson: (word: string) => boolean;
  readonly isAlarm: (word: string) => boolean;
}

/** They are brought to a fire or to an eye: calm, unless they are wanted now: `fire extinguisher now`, `eye wash where`. */
const summoned = heard('summoned');
/** They come when there is one: a cry, unless it is their test or their visit: `fire brigade`, `fire alarm going off`. */
const comesToFire = heard('comesToFire');
const oftenOfThem = heard('oftenOfThem');
const summons = heard('summons');

const companions: Readonly<Record<Alarm, ReadonlySet<string>>> = {
  fire: heard('calmFire'),
  eyes: heard('calmEyes'),
  down: heard('calmDown'),
  spill: heard('calmSpill'),
  hot: heard('calmHot'),
};

/** With any word but fire itself: the sun, the bread, the neighbour. */
const ofHome = heard('ofHome');
const fireItself = heard('fireItself');

/** `fire the oven`, `llamas a kari por teléfono`, `ojo con la manguera`: the word and what follows. */
const calmPhrases = heardPhrases('calmPhrases');
/** `fire it`; not `fire it is`. */
const orders = heardPhrases('orders');
const has = heard('has');
/** `fire up the oven`; not `fire up on the roof`. */
const kindled = heardPhrases('kindled');
const kindling: ReadonlySet<string> = new Set([...kindled].map((phrase) => phrase.replace(/ .*/, '')));

/** `kari is down with a cold`; not with chest pain. */
const suffers = heard('suffers');
const illness = heard('illness');

/** `down by 5%`, `down two`. */
const byHowMuch = heard('byHowMuch');
const counts = [...heard('counts')];
const isCount = (word: string): boolean => /^\d/.test(word) || counts.some((count) => word.startsWith(count));

/** `down on the list`. */
const listed = heard('listed');
const onPaper = heard('onPaper');

/** People fall down these. */
const falls = heard('falls');

const cleaned = heard('cleaned');
const seenTo = heard('seenTo');
const notSeenTo = heard('notSeenTo');
const spilledInJest = heardPhrases('spilledInJest');

/** Nothing is calm beside them. */
const desperate = heard('desperate');

/** `eye contact with hardener`. */
const contact = heard('contact');

const lookingAt = heard('lookingAt');
const lookingInto = heard('lookingInto');
const scales = heard('scales');

/** `fire brigade at 10`, `at noon`. */
const atHour = heard('atHour');
const noons = heard('noons');

/** `before` and `after` are the words round `word`, `after` nearest first. */
export function isCalm(alarm: Alarm, word: string, after: readonly string[], known: Known): boolean {
  const [first = '', second = '', third = ''] = after;
  // `fire door burning`, `down the shaft not breathing`.
  if (after.some((each) => desperate.has(each) || (each !== first && known.isAlarm(each) && alarm !== 'down')))
    return false;
  const next = is.has(second) ? third : second;
  if (summoned.has(first)) return !(summons.has(next) || known.isAlarm(next));
  if (alarm === 'fire' && comesToFire.has(first)) {
    const hour = is.has(second) ? '' : third;
    return oftenOfThem.has(next) || (atHour.has(next) && (/^\d/.test(hour) || noons.has(hour)));
  }
  if (contact.has(first) && after.some((each) => liquids.has(each))) return false;
  if (alarm === 'down' && isCount(first)) return !after.some(known.isPerson);
  if (companions[alarm].has(first)) return true;
  if (calmPhrases.has(`${word} ${first}`) || calmPhrases.has(`${word} ${first} ${second}`)) return true;
  const isFine = isSeen(seenTo, after);
  switch (alarm) {
    case 'fire':
      if (orders.has(`${word} ${first}`) && !is.has(second) && !has.has(second)) return true;
      if (kindling.has(first)) return kindled.has(`${first} ${second}`);
      return !fireItself.has(word) && (isFine || after.some((each) => ofHome.has(each)));
    case 'eyes':
      return isFine || isLooking(after, known);
    case 'down':
      // `down 5 degrees`, `down the hall`, `collapsed the boxes`.
      if (suffers.has(first)) return after.some((each) => illness.has(each));
      if (byHowMuch.has(first) && isCount(second)) return true;
      if (listed.has(first) && after.some((each) => onPaper.has(each))) return true;
      return articles.has(first) && !after.slice(1, 3).some((each) => known.isPerson(each) || falls.has(each));
    case 'spill':
      // `vertido en la mezcla`: it was poured where it belongs.
      if (isPouring(word) && pots.has(after.find((each) => !articles.has(each)) ?? '')) return true;
      return isSeen(cleaned, after) || isFine || isOnlyWet(after) || spilledInJest.has(`${first} ${second}`);
    case 'hot':
      return after.some((each) => harmless.has(each));
  }
}

const isPouring = (word: string): boolean => [...onlyOfLiquid].some((each) => word.startsWith(each));

/** `spill in the booth cleaned up`; not `not cleaned`. */
const isSeen = (seen: ReadonlySet<string>, after: readonly string[]): boolean =>
  after.some((each, i) => seen.has(each) && !notSeenTo.has(after[i - 1] ?? ''));

/** Coffee and no solvent: not `spilled acetone by the water tap`. */
export const isOnlyWet = (near: readonly string[]): boolean =>
  near.some((word) => harmless.has(word)) && !near.some((word) => liquids.has(word));

/** `eyes on the pot`, `ojos en la báscula`, `eye of the needle`; not `eyes on fire`, `eyes of kari`. */
function isLooking(after: readonly string[], known: Known): boolean {
  const [first = ''] = after;
  const [at = ''] = after.slice(1).filter((word) => !articles.has(word));
  if (known.isAlarm(at) || known.isPerson(at) || liquids.has(at)) return false;
  if (lookingInto.has(first)) return pots.has(at) || scales.has(at);
  return lookingAt.has(first);
}
