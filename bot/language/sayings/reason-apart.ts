// The clause that says why: `took 8 out because we needed the shelf`. The line is read without it: nothing in it fills a slot, and
// what it denies is not the act. An act that takes a reason is read with it.

import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { isSaidAct } from '../tongues/said-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { type Phrases, phraseAt } from './reason-table.ts';

export interface WithoutReason {
  readonly line: string;
  /** The reason names or counts something, which the act may be told of; or doubts. */
  readonly isNamed: boolean;
}

interface Word {
  readonly word: string;
  readonly from: number;
  readonly mark: string;
}

/** What is left of the line; `undefined` where nothing of it says why. */
export function withoutReason(line: string, context: LineContext): WithoutReason | undefined {
  const words = wordsIn(line);
  const { reasons, said } = context.hearing;
  for (const [at, { from }] of words.entries()) {
    const before = words[at - 1];
    // `the cause of it`
    const always = said.articles.has(before?.word ?? '') ? undefined : phraseAt(words, at, reasons.always);
    const isBehind = before !== undefined && /[,;:–-]/.test(before.mark);
    const besides = isBehind ? phraseAt(words, at, reasons.besides) : undefined;
    const joint = always ?? (isBehind ? phraseAt(words, at, reasons.behindMark) : undefined) ?? besides;
    if (isBehind && phraseAt(words, at, reasons.hence) !== undefined && isOnlyWhy(line.slice(0, from), context)) {
      const told = words[at + (phraseAt(words, at, reasons.hence) ?? 0)];
      if (told !== undefined && tellsAct(line.slice(told.from), context))
        return { line: line.slice(told.from), isNamed: false };
    }
    if (joint === undefined) continue;
    const to = at === 0 ? words.findIndex(({ mark }) => mark === ',') + 1 : endOf(words, at, said.joints);
    if (to === 0) return undefined;
    const end = words[to]?.from ?? line.length;
    const why = line.slice(words[at + joint]?.from ?? end, end);
    const reason = reasonOf(why, always !== undefined ? 'always' : joint === besides ? 'besides' : 'why', context);
    if (reason !== undefined) return { line: leftOf(line, from, end), isNamed: reason.isNamed };
  }
  return undefined;
}

/** `89 degrees is what 8 reads`: the other way round. */
export function turnedRound(line: string, { hearing: { reasons } }: LineContext): string | undefined {
  if (line.endsWith('?')) return undefined;
  const words = wordsIn(line);
  const told = phraseAt(words, 0, reasons.toldOf);
  if (told !== undefined) return toldOf(line.slice(words[told]?.from), reasons.is);
  for (const at of words.keys()) {
    const phrase = at === 0 ? undefined : phraseAt(words, at, reasons.comesFirst);
    const behind = phrase === undefined ? undefined : words[at + phrase];
    if (behind === undefined) continue;
    const head = line.slice(0, words[at]?.from).trim();
    const [, clause = '', rest = ''] = /^(.*?)([,;.!].*)?$/su.exec(line.slice(behind.from)) ?? [];
    return `${clause} ${head[0]?.toLowerCase() ?? ''}${head.slice(1)}${rest}`;
  }
  return undefined;
}

/** `the probe shows is 91 degrees`: the figure behind its verb; `looked 10min ago, 8 was at 89`: when, behind what is told. */
function toldOf(line: string, is: Phrases): string | undefined {
  const words = wordsIn(line);
  const at = words.findIndex((_, i) => i > 0 && phraseAt(words, i, is) !== undefined);
  const figure = words[at + 1];
  const isPlain = words.slice(0, -1).every(({ mark }) => mark === '');
  if (isPlain && figure !== undefined && /^\d/.test(figure.word))
    return `${line.slice(0, words[at]?.from)}${line.slice(figure.from)}`;
  const [, when, told] = /^([^,;.!?]+), ([^?]*\d[^?]*)$/su.exec(line) ?? [];
  return when === undefined || told === undefined ? undefined : `${told.replace(/[.!]$/, '')}, ${when}`;
}

const wordsIn = (line: string): readonly Word[] =>
  [...line.matchAll(/\S+/g)].map(({ 0: typed, index }) => ({
    word: withoutAccents(typed.toLowerCase()).replace(/[,;:.!?–-]+$/, ''),
    from: index,
    mark: /[,;:.!?–-]$/.exec(typed)?.[0] ?? '',
  }));

/** Up to the end of its sentence, or where another act is told behind it. */
function endOf(words: readonly Word[], at: number, joints: ReadonlySet<string>): number {
  const ends = words.findIndex(
    ({ mark }, i) => i >= at && (/[.;!?]/.test(mark) || (mark === ',' && joints.has(words[i + 1]?.word ?? ''))),
  );
  return ends < 0 ? words.length : ends + 1;
}

function leftOf(line: string, from: number, end: number): string {
  const ahead = line.slice(0, from).replace(/[\s,;:–-]+$/, '');
  const behind = line.slice(end).trim();
  const left = [ahead, behind].filter((words) => words !== '').join(/[.!?]$/.test(ahead) ? ' ' : ', ');
  return line.endsWith('?') && !left.endsWith('?') ? `${left}?` : left;
}

/** What asks is no reason; behind a mark alone, neither is what doubts, names or tells an act of its own. */
function reasonOf(
  words: string,
  is: 'always' | 'why' | 'besides',
  context: LineContext,
): { readonly isNamed: boolean } | undefined {
  const { says, isNamed } = saidIn(words, context);
  if (says.has('ask')) return undefined;
  if (is === 'always') return { isNamed: isNamed || says.has('hedge') };
  const isDenied = is === 'besides' && says.has('denial');
  return isNamed || says.has('hedge') || isDenied || tellsAct(words, context) ? undefined : { isNamed };
}

/** `somebody had to make room`: it names nothing, and tells no act. What it doubts is not what follows. */
function isOnlyWhy(words: string, context: LineContext): boolean {
  const { says, isNamed } = saidIn(words, context);
  return !isNamed && !says.has('ask') && !tellsAct(words, context);
}

function saidIn(words: string, context: LineContext) {
  const pieces = piecesOf(words, context) ?? [];
  return {
    says: new Set(claimed(pieces, context.hearing.said).claims.map((claim) => claim?.is)),
    isNamed: /\d/.test(words) || pieces.some(({ is }) => !isUnnamed.has(is)),
  };
}

/** `that will cover the impellers`: which of them is not said. */
const isUnnamed: ReadonlySet<Piece['is']> = new Set(['word', 'person', 'place', 'one-of']);

function tellsAct(words: string, { hearing }: LineContext): boolean {
  const [first] = hearing.weighed.weigh(words);
  return first !== undefined && isSaidAct(first.meaning) && first.share >= clearlyTells;
}

const clearlyTells = 0.5;
