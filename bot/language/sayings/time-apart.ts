// The clause that only says when: `washed the brush as soon as I was finished`, `he removido la lata 4 antes de verterla`. What it puts
// off, doubts or asks is not the act where the line tells that this was done; of an order it may be.

import { wordsOf } from '../as-said/words.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { asksFirst, saysNot } from '../slots-heard/unsaid.ts';
import { phraseAt } from './reason-table.ts';

export interface WithoutTime {
  readonly line: string;
  /** What was left out. */
  readonly when: string;
}

/** What is left of the line; `undefined` where it tells nothing that was done, or nothing in it puts that off. */
export function withoutTime(line: string, context: LineContext): WithoutTime | undefined {
  if (/[?¿]/.test(line)) return undefined;
  const { when: phrases } = context.hearing.done;
  const words = wordsOf(line);
  for (const [at, { start: from }] of words.entries()) {
    const phrase = phraseAt(words, at, phrases);
    if (phrase === undefined) continue;
    const first = words[at + phrase];
    if (first === undefined) return undefined;
    const mark = /[,;:.!](?=\s|$)/.exec(line.slice(first.start));
    const end = mark === null ? line.length : first.start + mark.index;
    const when = line.slice(from, end).trim();
    const left =
      at === 0 ? line.slice(end).replace(/^[\s,;:.!]+/, '') : line.slice(0, from).trim() + line.slice(end).trimEnd();
    const main =
      at === 0
        ? left
        : (line
            .slice(0, from)
            .split(/[,;:.!]\s+/)
            .at(-1) ?? '');
    if (putsOff(when, context) && isDone(main, context) && !asks(left, context)) return { line: left, when };
  }
  return undefined;
}

function asks(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  return asksFirst(pieces, claimed(pieces, context.hearing.said).claims, context.hearing.said);
}

/** What it says is no time that could be recorded. */
function putsOff(words: string, context: LineContext): boolean {
  const pieces = piecesOf(words, context);
  if (pieces === undefined || pieces.some(({ is }) => is === 'time' || is === 'figure')) return false;
  return saysNot(claimed(pieces, context.hearing.said).claims);
}

/** `I washed`, `he lavado`, `Omar stirred`; neither `wash`, `is washed` nor `leave it covered`. */
export const isDone = (line: string, context: LineContext): boolean => tells('is', line, context);

/** `I filtered it`; behind a denial `filtered it` may be of the same list. */
export const isDoneByItself = (line: string, context: LineContext): boolean => tells('byItself', line, context);

function tells(how: 'is' | 'byItself', line: string, { hearing: { done }, people = [] }: LineContext): boolean {
  const said = people.reduce((words, name) => words.replace(name.toLowerCase(), '~'), line.toLowerCase());
  return done[how].some((pattern) => pattern.test(said));
}

/** `apagué el agitador y luego la filtré`: what was done next is put off no more. */
export function withoutThereupon(line: string, context: LineContext): string | undefined {
  const words = wordsOf(line);
  for (const [at, { start }] of words.entries()) {
    const phrase = at === 0 ? undefined : phraseAt(words, at, context.hearing.done.thereupon);
    const next = phrase === undefined ? undefined : words[at + phrase];
    if (next !== undefined && isDone(line.slice(next.start), context))
      return line.slice(0, start) + line.slice(next.start);
  }
  return undefined;
}

/** `impeller 8, the one in the oven, reads 90`: what only says which is meant, and names or reads nothing of its own. */
export function withoutWhich(line: string, context: LineContext): string | undefined {
  for (const { 0: clause, 1: said = '', index } of line.matchAll(/,\s+([^,;:.!?]+),\s+/g)) {
    const words = wordsOf(said);
    const phrase = phraseAt(words, 0, context.hearing.done.which);
    const behind = phrase === undefined ? undefined : words[phrase];
    const pieces = behind === undefined ? undefined : piecesOf(said.slice(behind.start), context);
    if (pieces === undefined || !pieces.every(({ is }) => is === 'word' || is === 'place')) continue;
    if (saysNot(claimed(pieces, context.hearing.said).claims)) continue;
    return `${line.slice(0, index)} ${line.slice(index + clause.length)}`;
  }
  return undefined;
}
