// Examples of the vocabulary as this crew would type them: in its units, of the part, pot or can in hand, by its people.

import { byName, liveBatches, liveCans, liveParts, openSessions } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { exampleIn } from '../language/example-units.ts';
import { type VocabularyName, vocabulary } from '../language/vocabulary.ts';
import type { Telling } from './card-context.ts';

/** Who stands in the examples of every tongue. */
const peopleOfExamples = ['kari', 'lia', 'omar'];

export function exampleHere(telling: Telling, name: VocabularyName): string {
  const { words, figures } = telling;
  return namedHere(telling, exampleIn(words.typed.example(name), figures.units), name);
}

/** What a line of the act `name` calls by the examples' names, by those of the crew. */
export function namedHere(telling: Telling, example: string, name: VocabularyName): string {
  const { namedPart } = telling.words.typed;
  const crew = telling.shop.crew.people.map((person) => person.name).filter((person) => !/\s/.test(person));
  const names = new Map(peopleOfExamples.map((person, i) => [person, crew[i] ?? crew.at(-1) ?? person]));
  const number = numberInHand(telling, name);
  return example
    .split(' ')
    .map((word) => (word === namedPart ? partInHand(telling, name) : (names.get(word) ?? word)))
    .join(' ')
    .replace(/(?<= )\d{1,2}(?= |$)(?! fl oz)/, (shown) => (number === undefined ? shown : `${number}`));
}

/** Enough to find one that waits for the act. */
const partsAsked = 12;

/** The part that waits for the act, else the first that there is. */
export function partInHand(telling: Telling, name: VocabularyName): string {
  const parts = byName(liveParts(telling.shop)).slice(0, partsAsked);
  const waiting = statusOf.parts(telling, parts).find((part) => hasNext(part, name));
  return (waiting?.part ?? parts[0])?.name ?? telling.words.typed.namedPart;
}

/** Of what the act is numbered by: a pot, a can or a session. */
function numberInHand(telling: Telling, name: VocabularyName): number | undefined {
  const { needs, may } = vocabulary[name];
  const kind = [...needs, ...may].find((slot) => slot === 'batch' || slot === 'can' || slot === 'session');
  switch (kind) {
    case 'batch':
      return newest(liveBatches(telling.shop), (batch) => hasNext(statusOf.batch(telling, batch), name));
    case 'can':
      return newest(liveCans(telling.shop), (can) => hasNext(statusOf.can(telling, can), name));
    case 'session':
      return newest(openSessions(telling.shop), (session) => hasNext(statusOf.session(telling, session), name));
    case undefined:
      return undefined;
  }
}

interface Listed {
  readonly next: () => readonly { readonly command: { readonly verb: string } }[];
}
const hasNext = ({ next }: Listed, name: VocabularyName): boolean =>
  next().some(({ command }) => command.verb === name);

function newest<Of extends { readonly number: number }>(live: readonly Of[], waits: (one: Of) => boolean) {
  return (live.findLast(waits) ?? live.at(-1))?.number;
}
