// Whether a line cries out or only holds a cry's word: `fire in the booth` calls people, `fire extinguisher checked` calls
// nobody. What stands next to the word decides, so that a cry may go on in any words. Whatever is no cry is asked about.

import type { PersonName } from '../../core/ids.ts';
import { type Alarm, alarms } from '../../core/session/session-commands.ts';
import {
  anotherTime,
  anybody,
  articles,
  askings,
  compounds,
  denials,
  endings,
  everyday,
  harmless,
  liquids,
  openings,
  pots,
  sizes,
  sore,
  things,
  whereabouts,
} from './cry-words.ts';
import { isPlaceRoot } from './trade-words.ts';
import { withoutAccents } from './typed/spanish-words.ts';
import { verbNamed } from './verbs-typed.ts';

/** The gravest first, where a line cries out twice. */
const order: readonly Alarm[] = ['fire', 'eyes', 'down', 'spill', 'hot'];

/** A word that calls, with what stands round it. */
interface Called {
  readonly alarm: Alarm;
  readonly word: string;
  /** Nearest first. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** What the line cries out, the gravest first; nothing where it may only speak of it. `people`: the crew's. */
export function criesIn(line: string, people: readonly PersonName[]): readonly Alarm[] {
  const typed = asCried(line);
  if (!saysNow(line)) return [];
  const called = people.map((name) => wordsOf(withoutAccents(name.toLowerCase())));
  const names = new Set(called.flatMap((name) => [...name.slice(0, 1), oneWord(name)]));
  const clauses = typed
    .split(/[,.;!¡]+/)
    .map((clause) => namesWhole(wordsOf(clause), called))
    .filter((clause) => clause.length > 0);
  const cried = new Set(
    clauses.flatMap((clause, i) =>
      // A word alone among others is one of a list, unless what stands before it is a shout, too.
      i > 0 && clause.length === 1 && (clauses[0] ?? []).length > 2
        ? []
        : calledIn(clause).flatMap((cry) => (isCry(cry, names) ? [cry.alarm] : [])),
    ),
  );
  return order.filter((alarm) => cried.has(alarm));
}

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}_-]+/gu) ?? [];

const asCried = (line: string): string =>
  withoutAccents(line.toLowerCase())
    .replace(/['’]s\b/g, ' is')
    .replace(/['’]/g, '')
    .replace(/\bnot a drill\b/g, '');

/** The words of a line as a cry is read: lower case, without accents. */
export const criedWords = (line: string): readonly string[] => wordsOf(asCried(line));

/** It does not ask, and speaks of no other day. */
export function saysNow(line: string): boolean {
  const all = criedWords(line);
  return !(line.trimEnd().endsWith('?') || askings.has(all[0] ?? '') || all.some((word) => anotherTime.has(word)));
}

const oneWord = (name: readonly string[]): string => name.join('_');

/** A name of several words as one word: `jo vale is down` is said of one person. */
function namesWhole(clause: readonly string[], people: readonly (readonly string[])[]): readonly string[] {
  const longer = people.filter((name) => name.length > 1);
  const whole: string[] = [];
  for (let i = 0; i < clause.length; ) {
    const name = longer.find((words) => words.every((word, k) => clause[i + k] === word));
    whole.push(name === undefined ? (clause[i] ?? '') : oneWord(name));
    i += name?.length ?? 1;
  }
  return whole;
}

function calledIn(clause: readonly string[]): readonly Called[] {
  const found: Called[] = [];
  for (let i = 0; i < clause.length; i++) {
    const [word = '', next = ''] = clause.slice(i, i + 2);
    const pair = alarmOf(`${word} ${next}`);
    const alarm = isOfLiquid(word, clause.slice(i + 1)) ? 'spill' : (pair ?? alarmOf(word));
    if (alarm === undefined) continue;
    const to = i + (pair === undefined ? 1 : 2);
    found.push({
      alarm,
      word: pair === undefined ? word : `${word} ${next}`,
      before: clause.slice(0, i).reverse(),
      after: clause.slice(to),
    });
    i = to - 1;
  }
  return found;
}

/** `vertido de acetona`, `se me cayó el thinner`: of a liquid they are a spill; else a coat, and somebody who fell. */
function isOfLiquid(word: string, after: readonly string[]): boolean {
  const [of = ''] = after.filter((each) => !(each === 'de' || articles.has(each)));
  return (word === 'vertido' || word === 'cayo') && liquids.has(of);
}

function alarmOf(word: string): Alarm | undefined {
  const name = verbNamed(word)?.row.name;
  return alarms.find((alarm) => alarm === name);
}

type Names = ReadonlySet<string>;

function isCry(called: Called, names: Names): boolean {
  const { before, after } = called;
  if (before.slice(0, 4).some((word, i) => denials.has(word) && before[i + 1] !== 'oh')) return false;
  switch (called.alarm) {
    case 'fire':
      // `my eyes are burning` is no fire.
      if (sore.has(called.word) && [...before, ...after].some((word) => alarmOf(word) === 'eyes')) return false;
      return opensFire(before, names) && endsWell(after, names, () => true);
    case 'eyes':
      return opensEyes(before, names) && (isSore(after) || endsWell(after, names, isPlace));
    case 'down':
      return (faints.has(called.word) && !denials.has(after[0] ?? '')) || isPersonDown(before, after, names);
    case 'spill':
      return isSpill(called.word, before, after, names);
    case 'hot':
      return isPotHot(called, names);
  }
}

const isPlace = (word: string): boolean => things.has(word) || isPlaceRoot(word);
const isPerson = (word: string, names: Names): boolean => names.has(word) || anybody.has(word);
const without = (list: readonly string[], dropped: ReadonlySet<string>): readonly string[] => {
  const first = list.findIndex((word) => !dropped.has(word));
  return first === -1 ? [] : list.slice(first);
};

function opens(before: readonly string[], names: Names): boolean {
  const [word] = without(before, sizes);
  if (word === undefined || openings.has(word) || alarmOf(word) !== undefined) return true;
  return (word === 'no' && before.includes('oh')) || names.has(word) || isPlace(word);
}

function opensFire(before: readonly string[], names: Names): boolean {
  const [word] = without(before, sizes);
  if (word === 'on' || word === 'something' || word === 'algo' || word === 'esta' || word === 'se') return true;
  return opens(before, names) || (word !== undefined && liquids.has(word));
}

/** Nothing more, who, where, or that help is wanted. `where`: what a place after `in` must look like. */
function endsWell(after: readonly string[], names: Names, where: (word: string) => boolean): boolean {
  const [word] = after;
  if (word === undefined || endings.has(word) || names.has(word) || (isPlace(word) && !compounds.has(word)))
    return true;
  if (alarmOf(word) !== undefined) return true;
  if (whereabouts.has(word)) return after.slice(1, 5).some(where);
  // `arde la cabina`, `se quema el horno`.
  return articles.has(word) && isPlace(without(after, articles)[0] ?? '');
}

const ofBody: ReadonlySet<string> = new Set(
  'my his her their the both one an left right mi su sus los las el la ambos'.split(' '),
);

/** `got some in my eye`: what is in an eye needs no other word; `an eye for it` does. */
function opensEyes(before: readonly string[], names: Names): boolean {
  const [word] = without(before, ofBody);
  if (word === undefined || openings.has(word) || names.has(word) || sore.has(word)) return true;
  return ['in', 'into', 'en', 'inside'].includes(word) || alarmOf(word) !== undefined;
}

function isSore(after: readonly string[]): boolean {
  const [verb = '', how = ''] = after;
  return sore.has(verb) || (['is', 'are', 'hurts', 'me', 'le'].includes(verb) && sore.has(how));
}

const lying: ReadonlySet<string> = new Set(
  'is are has went fell goes lies lying just se ha esta quedo cayo'.split(' '),
);

/** Only people faint. */
const faints: ReadonlySet<string> = new Set(['se desmayo', 'desmayo', 'desmayado', 'desmayada']);

/** `kari is down`, `man down`, `down in the booth`; not `the printer is down`, `down to 20C`. */
function isPersonDown(before: readonly string[], after: readonly string[], names: Names): boolean {
  const [word] = after;
  const article = articles.has(word ?? '') ? without(after, articles)[0] : word;
  const saysWho = article !== undefined && isPerson(article, names);
  const [who, ...others] = without(before, lying);
  const isSomebody =
    who !== undefined &&
    (isPerson(who, names) || others.slice(0, 2).some((each) => names.has(each)) || isBareName(who, others, before));
  const isCalled =
    without(before, lying).length === before.length &&
    opens(
      before.filter((each) => !isPlace(each)),
      names,
    );
  if (saysWho) return isSomebody || isCalled || who === undefined;
  if (!(isSomebody || isCalled)) return false;
  if (word === undefined || endings.has(word) || isPlace(word) || alarmOf(word) !== undefined) return true;
  return whereabouts.has(word) && (isSomebody || after.slice(1, 5).some(isPlace));
}

/** `jens is down`, whoever that is: a name stands without an article and is no thing. */
function isBareName(who: string, others: readonly string[], before: readonly string[]): boolean {
  const isAlone = others.every((word) => openings.has(word) || alarmOf(word) !== undefined);
  const isThing = everyday.has(who) || isPlace(who) || liquids.has(who) || pots.has(who) || openings.has(who);
  return (
    before.length > others.length + 1 && isAlone && !isThing && /^\p{L}+$/u.test(who) && alarmOf(who) === undefined
  );
}

function isSpill(word: string, before: readonly string[], after: readonly string[], names: Names): boolean {
  if ([...before, ...after].some((each) => harmless.has(each))) return false;
  if (isOfLiquid(word, after)) return isLiquidOut(word, before, after, names);
  const [who] = without(before, sizes);
  const isOpen = opens(before, names) || (who !== undefined && (liquids.has(who) || anybody.has(who) || who === 'se'));
  const [what, next = ''] = without(after, sizes);
  if (what === undefined) return isOpen;
  const isMuch =
    liquids.has(what) || /^\d/.test(what) || ['part', 'parte', 'everywhere', 'big', 'mucho'].includes(what);
  const isOf = (what === 'of' || what === 'de') && liquids.has(next);
  return isOpen && (isMuch || isOf || endsWell(after, names, () => true));
}

/** Nothing more, or where: on the floor, not in the drum that it belongs in. */
function isLiquidOut(word: string, before: readonly string[], after: readonly string[], names: Names): boolean {
  const rest = after.slice(after.findIndex((each) => liquids.has(each)) + 1);
  // `cayó el nitrógeno` is its pressure, `se cayó la pintura` may be off the part; `se me cayó la pintura` is on the floor.
  const falls = word === 'cayo';
  // To pour what one coats with is work; a tap offers the spill.
  if (!falls && after.some((each) => poured.has(each))) return false;
  if (falls && !before.includes('se')) return false;
  if (falls && !before.some((each) => dropping.has(each)) && after.some((each) => falling.has(each))) return false;
  const isOpen = opens(before, names) || before.includes('se');
  return isOpen && endsWell(rest, names, isPlace) && !rest.some((each) => pots.has(each) || drums.has(each));
}

const dropping: ReadonlySet<string> = new Set(['me', 'te', 'le', 'nos', 'les']);
const poured: ReadonlySet<string> = new Set(['pintura', 'resina', 'producto', 'paint', 'resin', 'coating', 'mix']);
const falling: ReadonlySet<string> = new Set(['gas', 'nitrogeno', 'argon', 'pintura', 'producto']);
const drums: ReadonlySet<string> = new Set('bidon deposito tanque residuos'.split(' '));

/** A pot or a can that heats; weather, coffee and ovens are hot every day. */
function isPotHot({ word: cried, before, after }: Called, names: Names): boolean {
  if ([...before, ...after].some((word) => harmless.has(word))) return false;
  if (before.length + after.length === 0) return true;
  // `estoy calentando la mezcla` is work.
  if (cried === 'esta calentando' && !before.includes('se')) return false;
  // `hot pot by the oven`: the word itself names the pot, so that only where it is may follow.
  if (cried.split(' ').some((word) => pots.has(word))) {
    return opens(before, names) && (/^\d+$/.test(after[0] ?? '') || endsWell(after, names, isPlace));
  }
  const near = [...before.slice(0, 4), ...without(after, articles).slice(0, 1)];
  const isPot = near.some((word) => pots.has(word));
  return (
    isPot ||
    (before.length === 0 && /^\d+$/.test(after[0] ?? '')) ||
    (before.length === 0 && endings.has(after[0] ?? ''))
  );
}
