// Whether a line cries out or only holds a cry's word: `fire in the booth` calls people, `fire extinguisher checked` calls
// nobody. A line that begins with the word calls, unless what follows is calm; elsewhere what stands next to it decides. Whatever
// is no cry is asked about.

import type { PersonName } from '../../core/ids.ts';
import type { Alarm } from '../../core/session/session-commands.ts';
import { type Called, calledIn, type People } from './cry-round.ts';
import { isBegun, isCry } from './cry-stands.ts';
import { anotherTime, askings, drills, heard, heardAny, is, ofCan, urgent, whereabouts } from './cry-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

/** The gravest first, where a line cries out twice. */
const order: readonly Alarm[] = ['fire', 'eyes', 'down', 'spill', 'hot'];

/** What the line cries out, the gravest first; nothing where it may only speak of it. `people`: the crew's. */
export function criesIn(line: string, people: readonly PersonName[]): readonly Alarm[] {
  const typed = asCried(line);
  const called = people.map((name) => wordsOf(withoutAccents(name.toLowerCase())));
  const known: People = {
    names: new Set(called.flatMap((name) => [...name.slice(0, 1), oneWord(name)])),
    whole: called.filter((name) => name.length > 1),
    capitals: new Set(
      wordsOf(typed === typed.toUpperCase() ? '' : typed).flatMap((word) =>
        /^\p{Lu}\p{Ll}/u.test(word) ? [word.toLowerCase()] : [],
      ),
    ),
  };
  const sentences =
    typed
      .toLowerCase()
      .replace(noDrill, ' ')
      .match(/[^?]+\?*/g) ?? [];
  const cried = new Set(sentences.flatMap((sentence) => criesOf(sentence, known)));
  return order.filter((alarm) => cried.has(alarm));
}

const noDrill = new RegExp(`\\b(?:${heardAny('noDrill')})\\b`, 'g');

/** `can` asks, and is a can. */
const askingOrCan = heard('askingOrCan');

function criesOf(sentence: string, people: People): readonly Alarm[] {
  const all = wordsOf(sentence);
  const [first = '', second = ''] = all;
  if (askings.has(first) && !(askingOrCan.has(first) && (ofCan.has(second) || /^\d+$/.test(second)))) return [];
  const isDrill = sentence.endsWith('?') || all.some((word) => drills.has(word));
  const clauses = sentence
    .replace(shoutedOn, ' ')
    .split(/[,.;!¡?¿]+/)
    .map((clause) => namesWhole(wordsOf(clause), people.whole))
    .filter((clause) => clause.length > 0);
  return clauses.flatMap((clause, i) => {
    // A word alone among others is one of a list, unless what stands before it is a shout, too.
    if (i > 0 && clause.length === 1 && (clauses[0] ?? []).length > 2) return [];
    const isDoubted = isDrill || clause.some((word) => anotherTime.has(word));
    return calledIn(clause)
      .filter((called) => (!isDoubted || outweighsDoubt(called, people)) && isCry(called, people))
      .map(({ alarm }) => alarm);
  });
}

/** `fire extinguisher!! quick` is one shout. */
const shoutedOn = new RegExp(`!+\\s*(?=(?:${[...heard('shoutedOn')].join('|')})\\b)`, 'g');

/** `fire in booth???`, `fire in week old rags`: where it is and that help is wanted outweigh a question or another day. */
function outweighsDoubt({ alarm, before, after }: Called, { names }: People): boolean {
  if (!isBegun(alarm, before, names)) return false;
  if (after.some((word) => urgent.has(word))) return true;
  return alarm !== 'down' && alarm !== 'hot' && whereabouts.has(after[0] ?? '');
}

const [isWord = ''] = is;
/** `hes down`. */
const runTogether = new RegExp(`\\b(${[...heard('runTogether')].join('|')})s\\b`, 'gi');

/** In whatever letters it was shouted. */
const asCried = (line: string): string =>
  withoutAccents(line)
    .replace(/['’]s\b/gi, ` ${isWord}`)
    .replace(/['’]/g, '')
    .replace(runTogether, `$1 ${isWord}`)
    // `FIREEEE`
    .replace(/(\p{L})\1{2,}/gu, '$1');

/** The words of a line as a cry is read: lower case, without accents. */
export const criedWords = (line: string): readonly string[] => wordsOf(asCried(line).toLowerCase());

/** It does not ask, and speaks of no drill and no other day. */
export function saysNow(line: string): boolean {
  const all = criedWords(line);
  const isDoubted = all.some((word) => anotherTime.has(word) || drills.has(word));
  return !(line.trimEnd().endsWith('?') || askings.has(all[0] ?? '') || isDoubted);
}

const oneWord = (name: readonly string[]): string => name.join('_');

/** A name of several words as one word: `jo vale is down` is said of one person. */
function namesWhole(clause: readonly string[], longer: People['whole']): readonly string[] {
  const whole: string[] = [];
  for (let i = 0; i < clause.length; ) {
    const name = longer.find((words) => words.every((word, k) => clause[i + k] === word));
    whole.push(name === undefined ? (clause[i] ?? '') : oneWord(name));
    i += name?.length ?? 1;
  }
  return whole;
}

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}_-]+/gu) ?? [];
