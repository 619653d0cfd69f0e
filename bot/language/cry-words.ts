// The words round a cry, of every tongue: whoever needs help is heard, whatever is spoken here. A cry is short and stands among few
// words: who, where, how big, that help is wanted.

import { solvents } from '../../core/calc/solvents.ts';
import { everyTongue } from './every-tongue.ts';
import type { CryWords } from './tongues/english/cries.ts';

const saidIn = (set: keyof CryWords, apart = /\s+/): readonly string[] =>
  everyTongue.tongues.flatMap(({ cries }) => cries[set].trim().split(apart)).filter((word) => word !== '');
export const heard = (set: keyof CryWords): ReadonlySet<string> => new Set(saidIn(set));
/** Where several words may stand for one. */
export const heardPhrases = (set: keyof CryWords): ReadonlySet<string> => new Set(saidIn(set, /,\s*/));
/** Patterns and words of every tongue, one or the other. */
export const heardAny = (set: keyof CryWords): string =>
  everyTongue.tongues.flatMap(({ cries }) => cries[set] || []).join('|');

/** Who may be down, besides the people of the crew. */
export const anybody = heard('anybody');

/** What stands before the word without changing it. */
export const sizes = heard('sizes');

/** What begins a cry. */
export const openings = heard('openings');

/** They ask for help and do not say what has happened. */
export const shouts = heard('shouts');

/** Somebody is hurt, and no cry of its own says so. */
export const hurts = heard('hurts');

/** Of them, those whose bare name follows: `se quemó Chuy`. */
export const ofSomebody = heard('ofSomebody');

/** Whoever speaks, hurt. */
export const oneself = heard('oneself');

/** `por favor`, `help me`. */
export const asked = heard('asked');

/** What ends one. */
export const endings = heard('endings');

/** Where: what follows is a place, whatever it is called. */
export const whereabouts = heard('whereabouts');

export const articles = heard('articles');

/** What stands about in a shop and can burn, leak or lie in the way. */
export const things = heard('things');

/** With the word before them these name a thing of every day: a fire door, a fire bucket. */
export const compounds = heard('compounds');

export const liquids: ReadonlySet<string> = new Set([...Object.keys(solvents), ...saidIn('liquids')]);

export const harmless = heard('harmless');

/** A spill only of a liquid; alone it may be a coat. */
export const onlyOfLiquid = heard('onlyOfLiquid');

/** What a liquid belongs in. */
export const drums = heard('drums');

export const pots = heard('pots');

/** Directly before the word: it is denied, or long over. */
export const denials = heard('denials');

/** What may stand between a denial and its word: `nothing is burning`, `no me duelen los ojos`. */
export const between = heard('between');

/** Before the word, within four: it is only supposed. */
export const supposed = heard('supposed');

/** It goes on, it grows, somebody is in it, help is wanted: no drill, no question and no other day outweighs it. */
export const urgent = heard('urgent');

/** Who goes so or lies so needs somebody. */
export const falling = heardPhrases('falling');

export const burningOf = heard('burningOf');

/** What a pot or a can does that heats. */
export const boiling = heardPhrases('boiling');

/** `kari fell behind with the sheets`. */
export const fallsOfWork = heard('fallsOfWork');

/** Anywhere in the line: nothing of it is real. */
export const drills = heard('drills');

/** It speaks of another day, of what has been seen to, or of what is as it should be. */
export const anotherTime = heard('anotherTime');

/** A line that begins so asks. */
export const askings = heard('askings');

/** `can 3 is hot`, `can on fire`: the can, no question. */
export const ofCan = heard('ofCan');

/** What eyes do that need help. */
export const sore = heard('sore');

/** What is down every other day and is nobody: a bare word before `is down` that is none of these is a name. */
export const everyday = heard('everyday');

export const is = heard('is');

export const of = heard('of');

/** `oh no`: no denial. */
export const oh = heard('oh');

/** `se me cayó`: it fell, nobody let it. */
export const itself = heard('itself');

/** A break, too. */
export const smoke = heard('smoke');
