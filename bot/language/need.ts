// A line that no alarm's word begins and that asks for help all the same: `112`, `me quemé la mano`, `help me`. Where it tells for
// certain that it is so now it calls at once; where who, where or what hurts is told it rings by itself unless somebody says
// no; else nobody is called, and what may be meant stands there, one tap each. Our own choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { criedWords, saysNow } from './cry.ts';
import type { CryTable } from './cry-words.ts';
import { type Need, unanswered } from './no-answer.ts';
import type { LineContext } from './reading.ts';
import { isPlaceRoot } from './trade-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

const around = [
  'asked',
  'anybody',
  'articles',
  'body',
  'calls',
  'callsForOneself',
  'endings',
  'ofBody',
  'onBody',
  'openings',
  'shouts',
  'sizes',
  'things',
  'whereabouts',
] as const satisfies readonly (keyof CryTable)[];

export function needIn(line: string, context: LineContext): Need | undefined {
  const { cries } = context.hearing;
  const plain = withoutAccents(line.toLowerCase());
  const said = criedWords(line, cries);
  const { dialled, gasps } = cries.patterns;
  if (dialled.test(plain)) return { is: 'certain', alarm: 'emergency' };
  if (said.length === 1 && cries.saysLittle.has(said[0] ?? '')) return { is: 'bare', likely: ['hot'] };
  if (!saysNow(line, cries)) return undefined;
  const spelt = said.join(' ');
  if (gasps.test(plain) || gasps.test(spelt)) return { is: 'certain', alarm: 'breathless' };
  const silent = unanswered(line, context, {
    isAround: (word) => isAround(word, context),
    isNamed: (word) => isNamed(word, context),
  });
  if (silent !== undefined) return silent;
  return shouted(line, said, context) ?? toldOf(spelt, said, context) ?? hurt(said, context) ?? splashed(said, cries);
}

/** Every word is a shout, who or where: not `112 plates in the rack`. */
function shouted(line: string, said: readonly string[], context: LineContext): Need | undefined {
  const { cries } = context.hearing;
  // `help help` is shouted; `help` alone may be the card.
  const isRepeated = said.length > 1 && new Set(said).size === 1 && cries.shouts.has(said[0] ?? '');
  if (isRepeated) return { is: 'open', alarm: 'emergency' };
  const isShout = said.some((word) => cries.shouts.has(word) || cries.calls.has(word));
  if (!isShout || !said.every((word) => isAround(word, context))) return undefined;
  if (said.some((word) => cries.calls.has(word)) || /!\s*!/.test(line)) return { is: 'certain', alarm: 'emergency' };
  const isScald = said.some((word) => cries.scalds.has(word));
  const tellsMore = said.some(
    (word) =>
      cries.body.has(word) ||
      cries.things.has(word) ||
      cries.callsForOneself.has(word) ||
      cries.anybody.has(word) ||
      isPlaceRoot(word) ||
      isNamed(word, context),
  );
  if (tellsMore) return { is: 'open', alarm: isScald ? 'skin-burn' : 'emergency' };
  return { is: 'bare', likely: isScald ? ['skin-burn', 'fire'] : [] };
}

const isAround = (word: string, context: LineContext): boolean =>
  around.some((set) => context.hearing.cries[set].has(word)) || isPlaceRoot(word) || isNamed(word, context);

/** `splash in face`, `gas leak`, `kari drank solvent`, `chest pain`: nothing of it is denied. */
function toldOf(spelt: string, said: readonly string[], context: LineContext): Need | undefined {
  const { cries } = context.hearing;
  if (said.some((word) => cries.denials.has(word))) return undefined;
  const found = cries.patterns.needs.find(({ pattern }) => pattern.test(spelt));
  if (found === undefined) return undefined;
  const { is, alarm, pattern } = found;
  const rest = spelt
    .replace(pattern, ' ')
    .split(' ')
    .filter((word) => word !== '');
  const isOfSmell = (word: string): boolean =>
    alarm === 'breathless' && (cries.smells.has(word) || cries.liquids.has(word) || cries.oneself.has(word));
  if (is === 'open' && !rest.every((word) => isAround(word, context) || cries.is.has(word) || isOfSmell(word)))
    return undefined;
  // `the pot is on the floor`.
  if (
    alarm === 'down' &&
    !rest.some((word) => isNamed(word, context) || (cries.anybody.has(word) && !cries.articles.has(word)))
  )
    return undefined;
  return { is, alarm };
}

/** Somebody is hurt: `kari cut her hand`, `se quemó Chuy`, `I burned my hand`. */
function hurt(said: readonly string[], context: LineContext): Need | undefined {
  const { cries } = context.hearing;
  // `cut her hand`; not `cut the tape by hand`.
  const isCut = (i: number): boolean =>
    cries.cuts.has(said[i] ?? '') && cries.ofBody.has(said[i + 1] ?? '') && cries.body.has(said[i + 2] ?? '');
  const at = said.findIndex(
    (each, i) => (cries.hurts.has(each) || isCut(i)) && !isDenied(said, i, cries) && isOfSomebody(said, i, context),
  );
  const word = said[at];
  if (word === undefined) return undefined;
  const after = said[at + 1];
  const isFree = after === undefined || cries.whereabouts.has(after) || cries.endings.has(after);
  if (cries.held.has(word) && (!isFree || said.some((each) => cries.denials.has(each)))) return undefined;
  if (cries.grave.has(word)) return { is: 'certain', alarm: 'emergency' };
  if (cries.scalds.has(word))
    return { is: said.some((each) => cries.body.has(each)) ? 'certain' : 'open', alarm: 'skin-burn' };
  if (cries.fumes.has(word)) return { is: 'open', alarm: 'breathless' };
  return { is: 'open', alarm: cries.tumbles.has(word) ? 'down' : 'emergency' };
}

/** `kari is not hurt`, `no me mareo`; not breathing is what hurts. */
function isDenied(said: readonly string[], at: number, cries: CryTable): boolean {
  if (cries.breathes.has(said[at] ?? '')) return false;
  const before = said.slice(0, at).reverse();
  const nearest = before.find((word) => !cries.is.has(word) && !cries.between.has(word) && !cries.feels.has(word));
  return nearest !== undefined && (cries.denials.has(nearest) || cries.no.has(nearest));
}

function isOfSomebody(said: readonly string[], at: number, context: LineContext): boolean {
  const { cries } = context.hearing;
  const isReflexive = cries.ofSomebody.has(said[at] ?? '');
  // `se cortó Jon`, `Jon se cortó`; not `Jon cortó el cable`.
  const isItself = cries.itself.has(said[at - 1] ?? '');
  if (isReflexive && !isItself) return false;
  // `se electrocutó`: of nobody else.
  if (isItself && cries.grave.has(said[at] ?? '')) return true;
  // `se quemó Chuy`; not `se quemó el fusible`.
  const after = said[at + 1];
  if (isReflexive && after !== undefined && !cries.articles.has(after)) return true;
  return said.some(
    (each, i) =>
      cries.oneself.has(each) ||
      isNamed(each, context) ||
      (cries.anybody.has(each) && !cries.articles.has(each)) ||
      // `jens is hurt`, whoever that is: nothing of the shop.
      (i === at - 2 && cries.lying.has(said[at - 1] ?? '') && isNoThing(each, cries)) ||
      // `burned her hand`: whoever that is.
      (cries.body.has(each) && cries.ofBody.has(said[i - 1] ?? '') && !cries.sizes.has(said[i - 1] ?? '')),
  );
}

const isNoThing = (word: string, cries: CryTable): boolean =>
  ![cries.everyday, cries.things, cries.liquids, cries.pots, cries.denials].some((set) => set.has(word)) &&
  !/^\d/.test(word) &&
  !isPlaceRoot(word);

/** `acid on my hand`, `resina en el brazo`: what it does to skin is for the sheet to say. */
function splashed(said: readonly string[], cries: CryTable): Need | undefined {
  const liquid = said.findIndex((word) => cries.liquids.has(word));
  const part = said.findIndex((word, i) => i > liquid && cries.body.has(word) && cries.ofBody.has(said[i - 1] ?? ''));
  if (liquid === -1 || part === -1) return undefined;
  const isOn = said.slice(liquid, part).some((word) => cries.onBody.has(word));
  // `paint on the arm of the robot`.
  const isOfThing = cries.of.has(said[part + 1] ?? '');
  const isDenied = isOfThing || said.some((word) => cries.denials.has(word));
  return isOn && !isDenied ? { is: 'open', alarm: 'skin-burn' } : undefined;
}

const isNamed = (word: string, { people = [], hearing: { cries } }: LineContext): boolean =>
  people.some((name) => criedWords(name, cries).includes(word));

const offers = [
  ['smokes', ['fire', 'hot']],
  ['burnt', ['fire', 'hot', 'eyes']],
  ['brigade', ['fire']],
  ['leaks', ['spill']],
  ['splashes', ['eyes', 'spill']],
  ['calamities', ['down', 'fire', 'eyes']],
] as const satisfies readonly (readonly [keyof CryTable, readonly Alarm[]])[];

/** What a line that is answered with a misread may want help with: `burned my hand`, `it smokes`. */
export function alarmsWanted(line: string, cries: CryTable): readonly Alarm[] {
  const typed = withoutAccents(line.toLowerCase());
  if (cries.patterns.blind.test(typed)) return ['eyes'];
  const said = typed.replace(cries.patterns.ofThings, ' ').match(/\p{L}+/gu) ?? [];
  return offers.flatMap(([set, alarms]) => (said.some((word) => cries[set].has(word)) ? alarms : []));
}
