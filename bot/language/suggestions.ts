// Lines that could have been meant. Each is tried on the reader before it is offered.

import { distance } from 'fastest-levenshtein';
import { alarms } from '../../core/session/session-commands.ts';
import { isStateQuestion } from '../../core/verbs/question-rows.ts';
import type { Hearing } from './hearing.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';

const most = 3;

/** The first that read, each once. */
export function thoseThatRead(
  tries: readonly string[],
  reads: (line: string) => boolean,
  mostOffered = most,
): readonly string[] {
  const good: string[] = [];
  for (const line of tries) {
    if (good.length === mostOffered) break;
    if (!good.includes(line) && reads(line)) good.push(line);
  }
  return good;
}

/** One tap more and everybody is called, or something is signed for: only the nearest slip of such a word is one, and where no act is as near. */
const alarmWords: ReadonlySet<string> = new Set(alarms);
const graveWords: ReadonlySet<string> = new Set([...alarms, 'no-alarm', 'alarm-over', 'ok', 'ack', 'first-shift-done']);

/** Never what a word behind an act may have been. */
export const isGrave = ({ row }: VerbNamed): boolean => graveWords.has(row.name);

/** Verbs near a slip of the thumb, nearest first: a letter wrong, missing, doubled, two swapped, or only the beginning. */
export function nearestVerbs(typed: string, hearing: Hearing): readonly VerbNamed[] {
  const slip = withoutAccents(typed.toLowerCase());
  if (slip.length < 2 || hearing.noSlips.has(slip)) return [];
  // `recibido`, `llamar`: a word that is known, in whatever tongue, is no slip of such a one.
  const isKnown = hearing.every.verbs.has(slip) || hearing.every.noSlips.has(slip);
  const mostSlips = (verb: VerbNamed): number => {
    if (!isGrave(verb)) return hearing.verbs.has(slip) ? 0 : furthest(slip);
    return isKnown ? 0 : alarmWords.has(verb.row.name) ? furthest(slip) - 1 : 1;
  };
  const verbWords = offeredWords(hearing);
  const letters = lettersIn(slip);
  const near = verbWords
    .filter((each) => each.isOne && mayBeSlip(slip, letters, each))
    .map(({ word, verb }) => ({ verb, far: slipsBetween(slip, word) }))
    .filter(({ verb, far }) => far <= mostSlips(verb));
  const nearestAct = Math.min(...near.filter(({ verb }) => !isGrave(verb)).map(({ far }) => far));
  const begun = verbWords
    .filter(({ word, verb, isOne }) => word.startsWith(slip) && !isGrave(verb) && (slip.length > 2 || isOne))
    .map(({ verb }) => ({ verb, far: 1.5 }));
  // `gas` begins one act in two tongues: it is offered once, in the speaker's own.
  const own = new Set(begun.filter(({ verb }) => verb.tongue === hearing.tongues.at(-1)).map(({ verb }) => verb.row));
  const ranked = [
    ...near.filter(({ verb, far }) => !isGrave(verb) || far < nearestAct),
    ...begun.filter(({ verb }) => verb.tongue === hearing.tongues.at(-1) || !own.has(verb.row)),
  ].sort((one, other) => one.far - other.far);
  const verbs: VerbNamed[] = [];
  for (const { verb } of ranked) {
    if (!verbs.some(({ printed }) => printed === verb.printed)) verbs.push(verb);
  }
  return verbs;
}

/** Whether an alarm is as near as any slip goes, however near an act is. */
export function mayBeAlarm(typed: string, hearing: Hearing): boolean {
  const slip = withoutAccents(typed.toLowerCase());
  const letters = lettersIn(slip);
  return offeredWords(hearing).some(
    (each) => each.isAlarm && mayBeSlip(slip, letters, each) && slipsBetween(slip, each.word) <= furthest(slip),
  );
}

interface OfferedWord {
  readonly word: string;
  readonly verb: VerbNamed;
  /** Of one word, and longer than a letter. */
  readonly isOne: boolean;
  readonly isAlarm: boolean;
  readonly letters: number;
}

/** Made once for each set of tongues: every slip is held against all of them. */
const offered = new WeakMap<Hearing, readonly OfferedWord[]>();

function offeredWords(hearing: Hearing): readonly OfferedWord[] {
  const known = offered.get(hearing);
  if (known !== undefined) return known;
  const words = [...hearing.verbs]
    .filter(([, { row }]) => !isStateQuestion(row.name))
    .map(([word, verb]) => ({
      ...{ word, verb, letters: lettersIn(word) },
      isOne: word.length > 1 && !word.includes(' '),
      isAlarm: alarmWords.has(verb.row.name),
    }));
  offered.set(hearing, words);
  return words;
}

/** Which letters a word has, a bit each; all others share one. */
function lettersIn(word: string): number {
  let letters = 0;
  for (let i = 0; i < word.length; i++) {
    const at = word.charCodeAt(i) - 97;
    letters |= 1 << (at >= 0 && at < 26 ? at : 26);
  }
  return letters;
}

/** A slip changes two letters at most: most words are told apart without counting edits. */
function mayBeSlip(slip: string, letters: number, { word, letters: others }: OfferedWord): boolean {
  const most = furthest(slip);
  if (Math.abs(word.length - slip.length) > most) return false;
  let differs = 0;
  for (let left = letters ^ others; left !== 0 && differs <= 2 * most; left &= left - 1) differs += 1;
  return differs <= 2 * most;
}

/** Short words allow one slip, longer ones two. */
function furthest(slip: string): number {
  return slip.length < 4 ? 1 : 2;
}

/** Those of `known` that a slip may have been, nearest first. */
export function nearest(slip: string, known: readonly string[]): readonly string[] {
  // One letter or digit is near to every other.
  if (slip.length < 2) return [];
  return known
    .map((word) => ({ word, far: slipsBetween(slip, word) }))
    .filter(({ far }) => far <= furthest(slip))
    .sort((one, other) => one.far - other.far)
    .map(({ word }) => word);
}

/** Edits between two words; two neighbours swapped are one slip. */
export function slipsBetween(typed: string, word: string): number {
  return areSwapped(typed, word) ? 1 : distance(typed, word);
}

function areSwapped(typed: string, word: string): boolean {
  if (typed.length !== word.length) return false;
  let i = 0;
  while (i < word.length && typed[i] === word[i]) i += 1;
  return typed[i] === word[i + 1] && typed[i + 1] === word[i] && typed.slice(i + 2) === word.slice(i + 2);
}
