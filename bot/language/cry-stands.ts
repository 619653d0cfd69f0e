// Whether a word that calls stands as a cry. Where the line begins with it, it is one unless what follows is calm; elsewhere
// what stands next to it must be of a cry.

import type { Alarm } from '../../core/session/session-commands.ts';
import { isCalm, isOnlyWet, type Known } from './cry-calm.ts';
import { isPersonDown } from './cry-down.ts';
import { isLiquidOut } from './cry-liquid.ts';
import {
  alarmOf,
  type Called,
  endsWell,
  isCanOf,
  isDropped,
  isPerson,
  isPlace,
  type Names,
  opens,
  type People,
  without,
} from './cry-round.ts';
import {
  anybody,
  articles,
  between,
  denials,
  endings,
  fallsOfWork,
  harmless,
  heard,
  heardPhrases,
  itself,
  liquids,
  of,
  oh,
  onlyOfLiquid,
  openings,
  pots,
  sizes,
  smoke,
  sore,
  supposed,
} from './cry-words.ts';

const ofBody = heard('ofBody');
/** `mucho ojo` is a warning. */
const wary = heard('wary');
const fell = heard('fell');
const fallsOfWorkFarther = heardPhrases('fallsOfWorkFarther');
/** `on fire`, `caught fire`, `no puedo apagar el fuego`. */
const takingFire = heard('takingFire');
const inEye = heard('inEye');
const soreBy = heard('soreBy');
/** Only people faint. */
const faints = heardPhrases('faints');
/** Said of a tile, a price, a network and a break as well. */
const ofAnything = heardPhrases('ofAnything');
const spilling = heard('spilling');
const much = heard('much');
const heatedOf: ReadonlySet<string> = new Set([...articles, ...of]);
/** `estoy calentando la mezcla` is work. */
const heating = heardPhrases('heating');

/** Nothing but shouts, names and small words stands before it. */
export function isBegun(alarm: Alarm, before: readonly string[], names: Names): boolean {
  return before.every(
    (word) =>
      openings.has(word) ||
      (sizes.has(word) && !(alarm === 'eyes' && wary.has(word))) ||
      names.has(word) ||
      alarmOf(word) !== undefined ||
      (alarm === 'eyes' && ofBody.has(word)),
  );
}

function isDenied(before: readonly string[]): boolean {
  const [nearest, next] = without(before, between);
  if (nearest !== undefined && denials.has(nearest) && !oh.has(next ?? '')) return true;
  return before.slice(0, 4).some((word) => supposed.has(word));
}

/** Whether what stands round the word makes it a cry. */
export function isCry(called: Called, people: People): boolean {
  const { alarm, word, before, after } = called;
  const { names } = people;
  if (isDenied(before)) return false;
  // `my eyes are burning` is no fire.
  if (alarm === 'fire' && sore.has(word) && [...before, ...after].some((each) => alarmOf(each) === 'eyes'))
    return false;
  const known: Known = {
    isPerson: (each) => isPerson(each, names),
    isAlarm: (each) => alarmOf(each) !== undefined,
  };
  // Before anything else: what is poured or dropped is told by what it is.
  if (isDropped(word, after)) return isLiquidOut(word, before, after, names);
  // `se cayó`, `caliente`: they are said of any thing, so that what is said must be a person or a pot.
  const callsAlone = alarm === 'hot' ? word.split(' ').some((each) => pots.has(each)) : !ofAnything.has(word);
  if (callsAlone && isBegun(alarm, before, names)) return !isCalm(alarm, word, after, known);
  switch (alarm) {
    case 'fire':
      if (smoke.has(word) && after.length === 0 && before.length === 0) return false;
      return opensFire(before, names) && endsWell(after, names, () => true);
    case 'eyes':
      return opensEyes(before, names) && (isSore(after) || endsWell(after, names, isPlace));
    case 'down':
      if (faints.has(word) && !denials.has(after[0] ?? '')) return true;
      if (fell.has(word) && (fallsOfWork.has(after[0] ?? '') || fallsOfWorkFarther.has(after.slice(0, 2).join(' '))))
        return false;
      return isPersonDown(before, after, people, known);
    case 'spill':
      // Of no liquid it may be a coat.
      return !onlyOfLiquid.has(word) && (isCanOf(after) || isSpill(before, after, names));
    case 'hot':
      return isPotHot(called, names);
  }
}

function opensFire(before: readonly string[], names: Names): boolean {
  const [word] = without(before, sizes);
  if (word !== undefined && takingFire.has(word)) return true;
  return opens(before, names) || (word !== undefined && liquids.has(word));
}

/** `got some in my eye`: what is in an eye needs no other word; `an eye for it` does. */
function opensEyes(before: readonly string[], names: Names): boolean {
  const [word] = without(before, ofBody);
  if (word === undefined || openings.has(word) || names.has(word) || sore.has(word)) return true;
  return inEye.has(word) || alarmOf(word) !== undefined;
}

function isSore(after: readonly string[]): boolean {
  const [verb = '', how = ''] = after;
  return sore.has(verb) || (soreBy.has(verb) && sore.has(how));
}

function isSpill(before: readonly string[], after: readonly string[], names: Names): boolean {
  if (isOnlyWet([...before, ...after])) return false;
  const [who] = without(before, sizes);
  const isOpen =
    opens(before, names) || (who !== undefined && (liquids.has(who) || anybody.has(who) || spilling.has(who)));
  const [word, next = ''] = without(after, sizes);
  if (word === undefined) return isOpen;
  const isMuch = liquids.has(word) || /^\d/.test(word) || much.has(word);
  const isOf = of.has(word) && liquids.has(next);
  return isOpen && (isMuch || isOf || endsWell(after, names, () => true));
}

/** A pot or a can that heats; weather, coffee and ovens are hot every day. */
function isPotHot({ word: cried, before, after }: Called, names: Names): boolean {
  if ([...before, ...after].some((word) => harmless.has(word))) return false;
  if (before.length + after.length === 0) return true;
  if (heating.has(cried) && !before.some((word) => itself.has(word))) return false;
  // `hot pot by the oven`: the word itself names the pot, so that only where it is may follow.
  if (cried.split(' ').some((word) => pots.has(word))) {
    return opens(before, names) && (/^\d+$/.test(after[0] ?? '') || endsWell(after, names, isPlace));
  }
  // `echa humo la mezcla`, `sale humo de la mezcla`.
  const near = [...before.slice(0, 4), ...without(after, heatedOf).slice(0, 1)];
  const isPot = near.some((word) => pots.has(word));
  return (
    isPot ||
    (before.length === 0 && /^\d+$/.test(after[0] ?? '')) ||
    (before.length === 0 && endings.has(after[0] ?? ''))
  );
}
