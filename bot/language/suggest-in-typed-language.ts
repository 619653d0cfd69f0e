// Puts suggested lines into the language in which the line was typed: `curar impulsor-7` is not completed with `oven`.

import { methods } from '../../core/methods.ts';
import { ownValue } from '../../core/own-key.ts';
import { englishVerbs } from './tongues/english/verbs.ts';
import { isSpanishWord, withoutAccents } from './tongues/spanish/lexicon.ts';
import { spanishMethods } from './tongues/spanish/methods.ts';
import { spanishVerbs } from './tongues/spanish/verbs.ts';
import { tokenize } from './typed/tokens.ts';
import type { VerbNamed } from './verbs-typed.ts';
import { vocabulary } from './vocabulary.ts';

const verbsOfSpanish: ReadonlySet<string> = new Set(
  Object.values(spanishVerbs).flatMap(({ words }) => words.map(withoutAccents)),
);

/** What the readers add to a line that lacks something. */
const inSpanish: Readonly<Record<string, string>> = {
  // A verb that is near a slip is offered by its Spanish name: `buscar`, not `find`.
  ...Object.fromEntries(
    Object.values(vocabulary).map(({ name }) => [
      englishVerbs[name].words[0] ?? name,
      spanishVerbs[name].words[0] ?? name,
    ]),
  ),
  ...Object.fromEntries(methods.map((method) => [method, spanishMethods[method].name])),
  oven: 'horno',
  room: 'sala',
  out: 'fuera',
  stays: 'queda',
  sprays: 'pinta',
  yes: 'sí',
  on: 'sí',
  'no-effect': 'nada',
  softened: 'ablandada',
  through: 'atraviesa',
  wipe: 'limpiar',
  mix: 'mezclar',
  temp: 'sonda',
  yesterday: 'ayer',
  permit: 'permiso',
  batch: 'mezcla',
  help: 'ayuda',
  eyes: 'ojos',
  spill: 'derrame',
  fire: 'fuego',
  down: 'caído',
  hot: 'caliente',
  '5m': '5min',
  '10m': '10min',
};

const ofShift: Readonly<Record<string, string>> = { on: 'entra', off: 'sale' };

export function inTypedLanguage(
  line: string,
  verb: VerbNamed | undefined,
  tries: readonly string[],
): readonly string[] {
  const isTypedSo = verb !== undefined && verbsOfSpanish.has(withoutAccents(verb.printed));
  if (tries.length === 0 || !(isTypedSo || isSpanish(line))) return tries;
  const typed = new Set(line.split(' '));
  const words = verb?.row.name === 'shift' ? ofShift : inSpanish;
  return tries.map((each) =>
    each
      .split(' ')
      .map((word) => (typed.has(word) ? word : (ownValue(words, word) ?? word)))
      .join(' '),
  );
}

function isSpanish(line: string): boolean {
  return tokenize(line).some((token) => {
    const word = withoutAccents(token.text.toLowerCase());
    return token.kind === 'word' && (verbsOfSpanish.has(word) || isSpanishWord(word) || /^a las?$/.test(word));
  });
}
