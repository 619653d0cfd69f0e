// Puts suggested lines into the language in which the line was typed: `curar impulsor-7` is not completed with `oven`.

import { methods } from '../../core/methods.ts';
import { ownValue } from '../../core/own-key.ts';
import type { Hearing } from './hearing.ts';
import { firstSpellings } from './line-shown.ts';
import type { Typed } from './tongues/typed.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbOfWord } from './verbs-typed.ts';

export function inTypedLanguage(
  line: string,
  verb: VerbNamed | undefined,
  tries: readonly string[],
  hearing: Hearing,
): readonly string[] {
  const [first, ...others] = hearing.tongues;
  if (tries.length === 0 || first === undefined) return tries;
  const tongue = others.find((each) => verb?.tongue === each || isTypedIn(each, line, hearing));
  if (tongue === undefined) return tries;
  const typed = new Set(line.split(' '));
  const words = verb === undefined ? {} : tongue.offeredOn[verb.row.name];
  return tries.map((each) =>
    each
      .split(' ')
      .map((word) =>
        typed.has(word) ? word : (ownValue(words ?? {}, word) ?? offeredFor(word, tongue, first) ?? word),
      )
      .join(' '),
  );
}

/** What the readers add to a line that lacks something; a verb near a slip by its own name: `buscar`, not `find`. */
function offeredFor(word: string, tongue: Typed, english: Typed): string | undefined {
  const offered = ownValue(tongue.offered, word);
  if (offered !== undefined) return offered;
  if (word === 'at') return tongue.times.atHour?.join(' ');
  const method = methods.find((each) => each === word);
  if (method !== undefined) return tongue.methods[method].name;
  const [name] = Object.entries(english.verbs).find(([, { words }]) => words[0] === word) ?? [];
  return name === undefined ? firstSpellings(tongue).get(word) : ownValue(tongue.verbs, name)?.words[0];
}

/** `huele a disolvente`: of what is need and no cry. Made once a tongue. */
function needsOf(tongue: Typed): ReadonlySet<string> {
  const { cries } = tongue;
  const made =
    needs.get(tongue) ??
    new Set([cries.smokes, cries.burnt, cries.leaks, cries.splashes].flatMap((words) => words.trim().split(/\s+/)));
  needs.set(tongue, made);
  return made;
}
const needs = new WeakMap<Typed, ReadonlySet<string>>();

function isTypedIn(tongue: Typed, line: string, hearing: Hearing): boolean {
  return tokenize(line, hearing).some(
    (token) =>
      token.kind === 'word' &&
      (verbOfWord(token, hearing)?.tongue === tongue ||
        hearing.wordsOf.get(tongue)?.has(withoutAccents(token.text.toLowerCase())) === true ||
        needsOf(tongue).has(withoutAccents(token.text.toLowerCase())) ||
        // `a las 9:40`
        (token.word === 'at' && token.text.includes(' '))),
  );
}
