// The one finder of parts: which are named where a line names some, whatever it spells them like. `impeller-7`, `Impeller #7`,
// `impellers 1 to 3`, `1, 2 and 3`, `the pump housing` for the only one, `impellers` for those that there are, `serial 4407`, `job 87`.

import type { PartName } from '../../../core/ids.ts';
import type { Hearing } from '../hearing.ts';
import { nearest } from '../suggestions.ts';
import type { Atom } from './atoms.ts';
import { bookedUnder, ofJobNumbered, ofMetal } from './booked-under.ts';
import { nthPart } from './nth-part.ts';
import { articlesFrom, isOfParts, jointAt, longestAt, mostParts, numbersListed, wholeAt } from './numbers-listed.ts';
import { numbersOfOneFamily } from './of-one-family.ts';
import type { PartsAt, PartsInLine } from './parts-in-line.ts';
import type { NumberedPart } from './parts-known.ts';

/** What is named from this token on. */
export function partsAt(line: PartsInLine, token: number): PartsAt | undefined {
  if (line.known.names.size === 0) return undefined;
  const at = line.atoms.firstOf[token];
  const atom = at === undefined ? undefined : line.atoms.all[at];
  if (at === undefined || atom === undefined) return undefined;
  const nth = nthPart(line, token);
  if (nth !== undefined) return nth;
  if (atom.is !== 'word') return numbersOfOneFamily(line, token, at) ?? ofJobNumbered(line, token);
  const made = ofMetal(line, token);
  if (made !== undefined) return made;
  if (!mayBegin(atom.text, line)) {
    return (
      rootedAt(line, at, 1) ??
      bookedUnder(line, token) ??
      (articlesFrom(line.atoms.all, at, line.context.hearing.said.lists, false) === at
        ? undefined
        : numbersOfOneFamily(line, token, at))
    );
  }
  return namedAt(line, at) ?? rootedAt(line, at) ?? bookedUnder(line, token) ?? numbersOfOneFamily(line, token, at);
}

/** A word of some name, of one or several, in whatever tongue. */
function mayBegin(word: string, { known: { begins }, context: { hearing } }: PartsInLine): boolean {
  const { nouns, plurals } = hearing.said.lists;
  const isOne = (each: string): boolean => begins.has(each) || nouns.has(each);
  return isOne(word) || plurals.some((plural) => word.endsWith(plural) && isOne(word.slice(0, -plural.length)));
}

const mostAtoms = 6;

/** The longest run of pieces that is a part's own name, with the numbers that go on behind it. */
function namedAt(line: PartsInLine, at: number): PartsAt | undefined {
  const { all } = line.atoms;
  const keys = keysAt(all, at);
  for (const { key, to } of keys.toReversed()) {
    const exact = line.known.names.get(key);
    if (exact === undefined) continue;
    const number = wholeAt(all, to - 1);
    const root = key.slice(0, key.lastIndexOf('-'));
    const family = number === undefined ? undefined : line.known.families.get(root);
    const stretch = family && stretchNamed(line, to, { root, first: number ?? 0, family });
    const list = stretch ?? (family && listNamed(line, to, { root, name: exact }));
    if (list !== undefined) return list;
    const told =
      family && numbersListed(all, { at: to, first: number ?? 0, isPlural: false }, line.context.hearing.said.lists);
    const more = told === undefined || family === undefined ? undefined : familyNamed(told.numbers, family);
    if (told !== undefined && more !== undefined && endsOf(all, told.to) !== undefined)
      return { names: more, is: 'named', isSure: isOfParts(told, line), to: endsOf(all, told.to) ?? 0 };
    const ends = endsOf(all, to);
    if (ends !== undefined) return { names: [exact], is: 'named', isSure: true, to: ends };
  }
  return undefined;
}

interface FirstOf {
  readonly root: string;
  readonly first: number;
  readonly family: ReadonlyMap<number, readonly PartName[]>;
}

/** `gp-1 to gp-3`: from one name to another of its family, with all between; sure where there is each of them. */
function stretchNamed(line: PartsInLine, at: number, { root, first, family }: FirstOf): PartsAt | undefined {
  const { all } = line.atoms;
  const joint = jointAt(all, at, line.context.hearing.said.lists);
  if (joint?.is !== 'to') return undefined;
  for (const { key, to } of keysAt(all, joint.to).toReversed()) {
    const last = wholeAt(all, to - 1);
    const ends = endsOf(all, to);
    const isOfIt = line.known.names.has(key) && key.slice(0, key.lastIndexOf('-')) === root;
    if (!isOfIt || last === undefined || ends === undefined || last <= first || last - first > mostParts) continue;
    const each = Array.from({ length: last - first + 1 }, (_, i) => family.get(first + i) ?? []);
    return { names: each.flat(), is: 'named', isSure: each.every(({ length }) => length === 1), to: ends };
  }
  return undefined;
}

/** `gp-1, gp-2 and gp-3`: three or more of a family, the last behind its joint: no mark between them parts what is told of them. */
function listNamed(
  line: PartsInLine,
  at: number,
  { root, name }: { root: string; name: PartName },
): PartsAt | undefined {
  const { all } = line.atoms;
  const { lists } = line.context.hearing.said;
  const names = [name];
  let [to, isClosed] = [at, false];
  while (!isClosed) {
    const joint = jointAt(all, to, lists);
    if (joint === undefined || joint.is === 'to') break;
    const from = articlesFrom(all, joint.to, lists, true);
    const next = keysAt(all, from).findLast(
      ({ key }) => line.known.names.has(key) && key.slice(0, key.lastIndexOf('-')) === root,
    );
    const named = next && line.known.names.get(next.key);
    if (next === undefined || named === undefined) break;
    names.push(named);
    [to, isClosed] = [next.to, joint.is === 'and'];
  }
  const ends = endsOf(all, to);
  const isList = isClosed && names.length >= fewestListed && ends !== undefined;
  return isList ? { names: [...new Set(names)], is: 'named', isSure: true, to: ends } : undefined;
}

const fewestListed = 3;

/** Pieces joined as names are, each longer than the one before; marks inside a name say nothing. */
function keysAt(all: readonly Atom[], at: number): readonly { readonly key: string; readonly to: number }[] {
  const keys: { key: string; to: number }[] = [];
  let key = '';
  for (let to = at; to < all.length && keys.length < mostAtoms; to++) {
    const atom = all[to];
    if (atom === undefined || (atom.is === 'mark' && !isInName(atom))) break;
    if (atom.is === 'mark') continue;
    key = key === '' ? atom.text : `${key}-${atom.text}`;
    keys.push({ key, to: to + 1 });
    if (/[,;:!'’]/.test(atom.gap)) break;
  }
  return keys;
}

const isInName = ({ text }: Atom): boolean => text === '-' || text === '#' || text === '.' || text === '/';

const endsOf = (all: readonly Atom[], to: number): number | undefined => all[to - 1]?.ends;

function familyNamed(
  numbers: readonly number[],
  family: ReadonlyMap<number, readonly PartName[]>,
): readonly PartName[] | undefined {
  const named = numbers.map((number) => family.get(number));
  return named.every((found) => found?.length === 1) ? named.flatMap((found) => found ?? []) : undefined;
}

/** The word before the number, of one or of several, with or without numbers behind it. */
/** `most`: of how many pieces it may be. */
function rootedAt(line: PartsInLine, at: number, most = mostAtoms): PartsAt | undefined {
  const { all } = line.atoms;
  const { lists } = line.context.hearing.said;
  for (const { key, to } of keysAt(all, at).slice(0, most).toReversed()) {
    const root = rootOf(key, line);
    const ends = endsOf(all, to);
    if (root === undefined) continue;
    const { parts, isPlural, isSure } = root;
    if (root.isGlued === true && ends !== undefined) continue;
    const behind = behindNoun(all, to, root, line.context.hearing);
    const from = articlesFrom(all, behind, lists, true);
    const isEnded = /^['’]/.test(all[to - 1]?.gap ?? '');
    const told = isEnded
      ? undefined
      : numbersListed(all, { at: all[from]?.text === '-' ? from + 1 : from, isPlural }, lists);
    const after = told && endsOf(all, told.to);
    // `brackets, 1 coat each`: behind a mark one number alone is none of theirs.
    const isApart = isPlural && told?.numbers.length === 1 && (all[to - 1]?.gap ?? '').startsWith(',');
    if (told !== undefined && after !== undefined && !isApart) {
      const named = told.numbers.map((number) => parts.filter((part) => part.number === number));
      // A number that no such part has: nothing is guessed.
      if (named.some((found) => found.length !== 1)) return undefined;
      const names = named.flatMap((found) => found.map(({ name }) => name));
      return {
        names,
        is: 'named',
        isSure: isSure && isOfParts(told, line),
        ...(root.isSlip && { isSlip: true }),
        to: after,
      };
    }
    const endsBehind = endsOf(all, behind);
    if (ends === undefined || endsBehind === undefined || root.isShort) continue;
    const names = parts.map(({ name }) => name);
    if (names.length === 1) return { names, is: 'named', isSure, to: endsBehind };
    return { names, is: isPlural ? 'fitting' : 'one-of', isSure, to: endsBehind };
  }
  return undefined;
}

interface Root {
  readonly key: string;
  readonly parts: readonly NumberedPart[];
  readonly isPlural: boolean;
  readonly isSure: boolean;
  /** Only its beginning: it needs its number. */
  readonly isShort?: true;
  readonly isSlip?: true;
  /** Its number is of the same word. */
  readonly isGlued?: true;
}

function rootOf(key: string, line: PartsInLine): Root | undefined {
  const { roots } = line.known;
  const { lists } = line.context.hearing.said;
  const own = roots.get(key);
  if (own !== undefined) return { key, parts: own, isPlural: false, isSure: true };
  for (const plural of lists.plurals) {
    const single = key.endsWith(plural) ? key.slice(0, -plural.length) : '';
    const parts = roots.get(single);
    if (parts !== undefined) return { key: single, parts, isPlural: true, isSure: true };
  }
  if (key.includes('-')) return ofNouns(key, line);
  return inAnotherTongue(key, line) ?? ofInitial(key, line) ?? begunOrSlipped(key, line);
}

/** `la carcasa`, of a part that is booked as `pump-housing-3`. */
function inAnotherTongue(key: string, { known: { roots }, context: { hearing } }: PartsInLine): Root | undefined {
  const { lists } = hearing.said;
  const singles = [
    key,
    ...lists.plurals.flatMap((plural) => (key.endsWith(plural) ? [key.slice(0, -plural.length)] : [])),
  ];
  for (const [i, single] of singles.entries()) {
    for (const noun of lists.nouns.get(single) ?? []) {
      const parts = roots.get(noun);
      if (parts !== undefined) return { key: noun, parts, isPlural: i > 0, isSure: true };
    }
  }
  return undefined;
}

/** `pump hsg`, of a part that is booked as `pump-housing-3`. */
function ofNouns(key: string, { known: { roots }, context: { hearing } }: PartsInLine): Root | undefined {
  const { nouns } = hearing.said.lists;
  const words = key.split('-');
  if (words.length > 3 || !words.some((word) => nouns.has(word))) return undefined;
  const keys = words.reduce<readonly string[]>(
    (so, word) =>
      so.flatMap((each) => [word, ...(nouns.get(word) ?? [])].map((one) => (each === '' ? one : `${each}-${one}`))),
    [''],
  );
  const found = keys.find((each) => roots.has(each));
  const parts = found === undefined ? undefined : roots.get(found);
  return parts && { key: found ?? key, parts, isPlural: false, isSure: true };
}

/** `i8`: the only family that begins so; `b2`, `m2` are pots, `a`, `b` parts of the product. */
function ofInitial(key: string, { known: { families, roots } }: PartsInLine): Root | undefined {
  if (key.length !== 1 || 'abm'.includes(key)) return undefined;
  const [family, another] = [...families.keys()].filter((each) => each.startsWith(key));
  const parts = family === undefined || another !== undefined ? undefined : roots.get(family);
  return parts && { key, parts, isPlural: false, isSure: true, isShort: true, isGlued: true };
}

/** `imp 7` and `impeler 7`, where one root alone may be meant and the word says nothing else. */
function begunOrSlipped(key: string, { known: { roots }, context: { hearing } }: PartsInLine): Root | undefined {
  const { said, verbs, meanings, units, noSlips } = hearing;
  if (key.length < 3 || said.byFirst.has(key) || said.light.has(key) || verbs.has(key)) return undefined;
  if (meanings.has(key) || units.has(key) || noSlips.has(key)) return undefined;
  const single = key.replace(/s$/, '');
  const begun = [...roots].filter(([root]) => single.length > 2 && root.startsWith(single));
  const families = new Set(begun.flatMap(([, parts]) => parts.map(({ name }) => name)));
  const [longest] = begun.toSorted(([, one], [, other]) => other.length - one.length);
  if (longest !== undefined && longest[1].length === families.size) {
    return { key: longest[0], parts: longest[1], isPlural: single !== key, isSure: true, isShort: true };
  }
  if (key.length < 5) return undefined;
  const [near] = nearest(key, [...roots.keys()]);
  const [ofMany] = near === undefined ? nearest(single, [...roots.keys()]) : [near];
  const parts = ofMany === undefined ? undefined : roots.get(ofMany);
  return parts && ofMany !== undefined
    ? { key: ofMany, parts, isPlural: near === undefined, isSure: false, isShort: true, isSlip: true }
    : undefined;
}

/** `carcasa de bomba 3`, of a `pump-housing`: what else its name says may stand behind it. */
function behindNoun(all: readonly Atom[], to: number, { parts }: Root, { said: { lists } }: Hearing): number {
  const of = longestAt(all, to, lists.of);
  if (of === undefined) return to;
  const at = to + of;
  const nouns = lists.nouns.get(all[at]?.text ?? '') ?? [];
  return nouns.some((noun) => parts.some(({ name }) => name.includes(noun))) ? at + 1 : to;
}
