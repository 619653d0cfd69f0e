// What somebody says round an act and no part of it: `couldn't get my gloves off`, `forgot to say`. Such words deny or plan nothing
// of the act, so that the line is read without them.

import { wordsOf } from '../as-said/words.ts';
import { intendedAt } from '../intended.ts';
import type { LineContext } from '../reading.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { rootsOf } from './signs.ts';

/** Hardly anything else can be meant by these words. */
const clearlyAside = 0.75;
/** The same where no mark parts it from what is told. */
const clearlyUnmarked = 0.8;
const fewestWords = 2;
/** Whoever goes on longer tells of something. */
const mostWords = 14;

/** The line that is left, or undefined where nothing is said beside what it tells. Numbers and times of it are in figures. */
export function withoutAsides(line: string, context: LineContext): string | undefined {
  const ahead = withoutLast(line, context) ?? line;
  const left = withoutFirst(ahead, context) ?? ahead;
  return left === line || left === '' ? undefined : left;
}

/** `wiped br-1, no dust on it`: without the clauses that say only that all is as it should be. */
export function withoutClean(line: string, context: LineContext): string {
  const clauses = line.split(/(?<=[,;.!])\s+/);
  const left = clauses.filter((clause) => !saysClean(clause, context));
  return left.length === 0 || left.length === clauses.length ? line : left.join(' ').replace(joint, '');
}

function saysClean(clause: string, { hearing: { said } }: LineContext): boolean {
  const words = wordsOf(clause).map(({ word }) => word);
  let found = false;
  for (let at = 0; at < words.length; ) {
    const length = [3, 2, 4].find((many) => said.clean.has(words.slice(at, at + many).join(' ')));
    const word = words[at] ?? '';
    const isSmall =
      said.joints.has(word) || said.pronouns.has(word) || said.light.has(word) || said.beforeThing.has(word);
    if (length === undefined && !isSmall) return false;
    found ||= length !== undefined;
    at += length ?? 1;
  }
  return found;
}

/** Of all ends of a line the one that is most clearly beside it, behind a mark where there is one. */
function withoutLast(line: string, context: LineContext): string | undefined {
  const ends = startsOfEnds(line, context).flatMap(({ at, isMarked }) => {
    const share = line.slice(0, at).trim().includes(' ') ? asideShare(line.slice(at), context) : 0;
    return share >= (isMarked ? clearlyAside : clearlyUnmarked) ? [{ at, isMarked, share }] : [];
  });
  const marked = ends.filter(({ isMarked }) => isMarked);
  const [most] = (marked.length > 0 ? marked : ends).toSorted((one, other) => other.share - one.share);
  return most === undefined ? undefined : line.slice(0, most.at).replace(joint, '');
}

/** Up to a mark: what follows it is told. */
function withoutFirst(line: string, context: LineContext): string | undefined {
  for (const { index } of [...line.matchAll(/[,;:.!]+\s/g)].toReversed()) {
    const first = line.slice(0, index);
    const isLead = context.hearing.leadsIn.has(rootsOf(first).join(' '));
    if (isLead || asideShare(first, context) >= clearlyAside) return line.slice(index).replace(/^[,;:.!\s]+/, '');
  }
  return behindLead(line, context);
}

/**
 * `forgot to tell you 8 was at 87`: no mark parts them, so that only what people say whole is left aside. `forgot to tell Omar to
 * brush 3` goes on with what is to be done.
 */
function behindLead(line: string, { hearing }: LineContext): string | undefined {
  const ends = [...line.matchAll(/[\p{L}\d%'’]+(?=\s)/gu)]
    .slice(0, mostWords)
    .map(({ 0: word, index }) => index + word.length);
  for (const end of ends.slice(fewestWords - 1).toReversed()) {
    const words = line.slice(0, end);
    const left = line.slice(end).trim();
    const [next = '', another] = left.split(/\s+/);
    if (another === undefined || isIntended(line, hearing) || !hearing.leadsIn.has(rootsOf(words).join(' '))) continue;
    const isToDo = hearing.every.said.lists.to.some(
      (phrase) => phrase.length === 1 && phrase[0] === next.toLowerCase(),
    );
    return isToDo ? undefined : left;
  }
  return undefined;
}

/** `ahora mismo la meto`: what leads in says that it is still to come. */
const isIntended = (line: string, { said }: LineContext['hearing']): boolean =>
  intendedAt(
    wordsOf(line).map(({ word, text: typed }) => ({ word, typed })),
    said,
  ).length > 0;

/** A question keeps its mark. */
const joint = /[\s,;:.!–-]+$/u;

/** Words in front of which a line may be parted: a mark stands there, or an aside begins so. */
function startsOfEnds(line: string, { hearing }: LineContext) {
  return [...line.matchAll(/[\p{L}\d]\S*/gu)].flatMap(({ 0: word, index: at }) => {
    const isMarked = /[,;:.!?–-]\s*$/u.test(line.slice(0, at));
    return isMarked || hearing.asidesBegin.has(rootsOf(word)[0] ?? '') ? [{ at, isMarked }] : [];
  });
}

/** What names something or reads something is none. */
function asideShare(words: string, { hearing, parts, people }: LineContext): number {
  const many = words.split(/\s+/).length;
  if (/[\d?¿]/.test(withoutCount(words, hearing)) || many < fewestWords || many > mostWords) return 0;
  const said = words.toLowerCase();
  if ([...parts, ...(people ?? [])].some((name) => said.includes(name.toLowerCase()))) return 0;
  if (saysMany(words, hearing.said)) return 0;
  return hearing.asideWeighed.shareOf(words, 'aside');
}

/** `las dos, la 7 y la 8, están a 90`: all of them, and no talk. */
const saysMany = (words: string, { byFirst }: LineContext['hearing']['said']): boolean => {
  const said = withoutAccents(words.toLowerCase())
    .replace(/[^\p{L}\d ]/gu, '')
    .trim()
    .split(/\s+/);
  return (byFirst.get(said[0] ?? '') ?? []).some(
    ({ words: phrase, says }) => says.is === 'many' && phrase.join(' ') === said.join(' '),
  );
};

/** `he medido las 2`: how many, and nothing's name. */
const withoutCount = (words: string, { said }: LineContext['hearing']): string =>
  words.replace(/(\p{L}+) \d(?=\s|$)/u, (all, article: string) =>
    said.lists.articlesOfMany.has(article.toLowerCase()) ? article : all,
  );
