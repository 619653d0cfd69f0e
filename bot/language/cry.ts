// Whether a line cries out or only holds a cry's word: `fire in the booth` calls people, `fire extinguisher checked` calls
// nobody. A line that begins with the word calls, unless what follows is calm; elsewhere what stands next to it decides. Whatever
// is no cry is asked about.

import { type Alarm, alarms } from '../../core/session/session-commands.ts';
import { type Called, type CryContext, calledIn, type HeardAs } from './cry-round.ts';
import { isBegun, isCry } from './cry-stands.ts';
import { onlyWarns } from './cry-warned.ts';
import type { CryTable } from './cry-words.ts';
import type { LineContext } from './reading.ts';
import { withoutAccents } from './typed/without-accents.ts';

/** What the line cries out, the gravest first; nothing where it may only speak of it. `standing`: also of its first word what follows decides. */
export function criesIn(
  line: string,
  { people = [], hearing }: LineContext,
  heard: HeardAs = 'begun',
): readonly Alarm[] {
  const { cries } = hearing;
  if (!criedWords(line, cries).some((word) => cries.calling.has(word))) return [];
  const typed = asCried(line, cries);
  const called = people.map((name) => wordsOf(withoutAccents(name.toLowerCase())));
  const context: CryContext = {
    cries,
    heard,
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
      .replace(cries.patterns.noDrill, ' ')
      .match(/[^?]+\?*/g) ?? [];
  const cried = new Set(sentences.flatMap((sentence) => criesOf(sentence, context)));
  return alarms.filter((alarm) => cried.has(alarm));
}

function criesOf(sentence: string, context: CryContext): readonly Alarm[] {
  const { cries, whole } = context;
  const all = wordsOf(sentence);
  if (beginsToAsk(all, cries)) return [];
  const isDrill = sentence.endsWith('?') || all.some((word) => cries.drills.has(word));
  const clauses = sentence
    .replace(cries.patterns.shoutedOn, ' ')
    // `ojo, que la mezcla no la ha pesado nadie`: no comma makes a cry of a warning.
    .replace(/(\p{L}+),\s*(?=(\p{L}+))/gu, (all, word: string, next: string) =>
      cries.calmPhrases.has(`${word} ${next}`) ? `${word} ` : all,
    )
    .split(/[,.;!¡?¿]+/)
    .map((clause) => namesWhole(wordsOf(clause), whole))
    .filter((clause) => clause.length > 0);
  return clauses.flatMap((clause, i) => {
    // A word alone among others is one of a list, unless what stands before it is a shout, too.
    if (i > 0 && clause.length === 1 && (clauses[0] ?? []).length > 2) return [];
    const isDoubted = isDrill || clause.some((word) => cries.anotherTime.has(word));
    return calledIn(clause, context)
      .filter((called) => !onlyWarns(called, all, cries))
      .filter((called) => (!isDoubted || outweighsDoubt(called, context)) && isCry(called, context))
      .map(({ alarm }) => alarm);
  });
}

/** `can 3 is hot` is said of a can. */
const beginsToAsk = ([first = '', second = '']: readonly string[], cries: CryTable): boolean =>
  cries.askings.has(first) && !(cries.askingOrCan.has(first) && (cries.ofCan.has(second) || /^\d+$/.test(second)));

/** `fire in booth???`, `fire in week old rags`: where it is and that help is wanted outweigh a question or another day. */
function outweighsDoubt({ alarm, before, after }: Called, context: CryContext): boolean {
  const { cries } = context;
  if (!isBegun(alarm, before, context)) return false;
  if (after.some((word) => cries.urgent.has(word))) return true;
  return alarm !== 'down' && alarm !== 'hot' && cries.whereabouts.has(after[0] ?? '');
}

/** In whatever letters it was shouted. */
function asCried(line: string, { is, meant, patterns }: CryTable): string {
  const [isWord = ''] = is;
  return (
    withoutAccents(line)
      .replace(/['’]s\b/gi, ` ${isWord}`)
      .replace(/['’]/g, '')
      .replace(patterns.runTogether, `$1 ${isWord}`)
      // `FIREEEE`
      .replace(/(\p{L})\1{2,}/gu, '$1')
      .replace(/\p{L}+/gu, (word) => meant.get(word.toLowerCase()) ?? word)
  );
}

/** The words of a line as a cry is read: lower case, without accents. */
export function criedWords(line: string, cries: CryTable): readonly string[] {
  const known = cried.get(cries)?.get(line);
  if (known !== undefined) return known;
  const words = wordsOf(asCried(line, cries).toLowerCase());
  const kept = cried.get(cries);
  if (kept === undefined || kept.size > mostKept) cried.set(cries, new Map([[line, words]]));
  else kept.set(line, words);
  return words;
}

/** Of one line and its ends this is asked a dozen times. */
const cried = new WeakMap<CryTable, Map<string, readonly string[]>>();
const mostKept = 50;

/** It does not ask, and speaks of no drill and no other day. */
export function saysNow(line: string, cries: CryTable): boolean {
  const all = criedWords(line, cries);
  const isDoubted = all.some((word) => cries.anotherTime.has(word) || cries.drills.has(word));
  return !(line.trimEnd().endsWith('?') || beginsToAsk(all, cries) || isDoubted);
}

const oneWord = (name: readonly string[]): string => name.join('_');

/** A name of several words as one word: `jo vale is down` is said of one person. */
function namesWhole(clause: readonly string[], longer: CryContext['whole']): readonly string[] {
  const whole: string[] = [];
  for (let i = 0; i < clause.length; ) {
    const name = longer.find((words) => words.every((word, k) => clause[i + k] === word));
    whole.push(name === undefined ? (clause[i] ?? '') : oneWord(name));
    i += name?.length ?? 1;
  }
  return whole;
}

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}_-]+/gu) ?? [];
