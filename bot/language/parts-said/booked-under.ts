// Parts by what they are booked under: `serial 4407`, `job 87`, `all of 87`, `the steel one`.

import { isMetalWord, metalNamed } from '../trade-words.ts';
import { wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { PartsAt, PartsInLine } from './parts-in-line.ts';

const numbers: ReadonlySet<string> = new Set(['no', 'number', '#', 'num', 'of']);

export function bookedUnder({ tokens, context }: PartsInLine, token: number): PartsAt | undefined {
  const text = (at: number): string => withoutAccents(tokens[at]?.text.toLowerCase() ?? '');
  const { serials, jobs } = context.hearing.said.lists;
  const isJob = wordIn(tokens[token]) === 'job' || jobs.has(text(token));
  const slot = serials.has(text(token)) ? 'serial' : isJob ? 'job' : undefined;
  if (slot === undefined) return undefined;
  const at = numbers.has(text(token + 1)) ? token + 2 : token + 1;
  const names = (context.live?.().parts ?? []).flatMap((part) =>
    part[slot]?.toLowerCase() === text(at) ? [part.name] : [],
  );
  if (names.length === 0) return undefined;
  const isOne = slot === 'serial' && names.length === 1;
  const is = isOne ? 'named' : slot === 'serial' ? 'one-of' : 'fitting';
  return { names, is, isSure: true, to: at + 1 };
}

/** `the rest of 87`: a number that is no part's, but a job's. */
export function ofJobNumbered({ tokens, known, context }: PartsInLine, token: number): PartsAt | undefined {
  const text = tokens[token]?.text ?? '';
  const before = withoutAccents(tokens[token - 1]?.text.toLowerCase() ?? '');
  const isOf = context.hearing.said.lists.of.some((phrase) => phrase.length === 1 && phrase[0] === before);
  if (!isOf || !/^\d+$/.test(text) || known.numbers.has(Number(text))) return undefined;
  const names = (context.live?.().parts ?? []).flatMap(({ name, job }) => (job === text ? [name] : []));
  return names.length === 0 ? undefined : { names, is: 'fitting', isSure: true, to: token + 1 };
}

/** `the steel one`, `la de acero`, `las de acero`: those whose metal is told. Of a metal that none has, none is meant. */
export function ofMetal({ tokens, context }: PartsInLine, token: number): PartsAt | undefined {
  const { ones, articles, articlesOfMany, of } = context.hearing.said.lists;
  const text = (at: number): string => withoutAccents(tokens[at]?.text.toLowerCase() ?? '');
  const says = (phrases: readonly (readonly string[])[], at: number): boolean =>
    phrases.some((phrase) => phrase.length === 1 && phrase[0] === text(at));
  const isBehind = says(articles, token) && says(of, token + 1);
  const at = isBehind ? token + 2 : token;
  const word = wordIn(tokens[at]);
  if (!isMetalWord(word) || (!isBehind && !ones.has(text(at + 1)))) return undefined;
  const metal = metalNamed([word]);
  const names = (context.live?.().parts ?? []).flatMap((part) => (part.metal === metal ? [part.name] : []));
  const isMany = isBehind ? articlesOfMany.has(text(token)) : text(at + 1).endsWith('s');
  const is = names.length === 1 && !isMany ? 'named' : isMany ? 'fitting' : 'one-of';
  return { names, is, isSure: true, to: isBehind ? at + 1 : at + 2 };
}
