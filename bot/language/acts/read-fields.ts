// An act read off its row: figures by their units, choices by their words, names by what is left. What is missing is told
// in the order of the row.

import { type Command, ofEachVerb, type SlotName, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { FieldRow, ToldAs } from '../../../core/verbs/slot.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { isRingKey } from '../ring-key.ts';
import type { Token } from '../typed/token.ts';
import type { VerbNamed } from '../verbs-of-tongues.ts';
import { type ActLine, leftOver, type Reader } from './act-line.ts';
import { wordsFor } from './choice-words.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { onePartFrom, partsFrom, placeFrom } from './read-names.ts';
import { type NameToken, type SortedPieces, sortPieces } from './sort-pieces.ts';

type Said = Record<string, unknown>;

interface Plan {
  readonly fields: readonly (readonly [name: string, field: FieldRow<SlotName>])[];
  readonly required: readonly string[];
  /** Every word that says a choice, with what it chooses. */
  readonly choices: readonly (readonly [name: string, meanings: ReadonlyMap<string, unknown>])[];
  /** Then `l201g` may be one: no figure is read into it. */
  readonly takesNames: boolean;
}

const plans = ofEachVerb((verb): Plan => {
  const fields = Object.entries(verbRows[verb].fields);
  return {
    fields,
    required: fields.flatMap(([name, { options }]) => (options?.required === true ? [name] : [])),
    choices: fields.flatMap(([name, field]) => (field.words.size === 0 ? [] : [[name, wordsFor(field)] as const])),
    takesNames: fields.some(([, { slots }]) => slots.some(({ kinds }) => kinds.includes('word'))),
  };
});

/** What is told in another way wants a reader of the verb's own. */
const readable: ReadonlySet<ToldAs> = new Set([
  ...(['number', 'figure', 'choice', 'new', 'part', 'parts', 'place', 'people', 'ring'] as const),
]);

export function fieldsReader(verb: Verb): Reader {
  const { fields, choices, takesNames } = plans[verb];
  const [odd] = fields.filter(([, { told }]) => !readable.has(told));
  if (odd !== undefined) throw new Error(`"${odd[0]}" of "${verb}" wants a reader of its own`);
  return (typed) => {
    const act = withChoicesAsWords(takesNames ? typed : withLeadingOnes(typed), choices);
    const pieces = sortPieces(act);
    if (isFailed(pieces)) return pieces;
    const said: Said = {};
    const names = takeChoices(act, choices, pieces.words, said);
    if (isFailed(names)) return names;
    const stray = takeNames(act, fields, names, pieces, said);
    if (stray !== undefined) return stray;
    for (const [name, field] of fields) {
      const value = said[name] ?? figureIn(pieces, field);
      if (value !== undefined) said[name] = value;
      else if (field.options?.required === true) return missing(act, field);
    }
    return commandOf(verb, said);
  };
}

function figureIn(pieces: SortedPieces, { told, slots }: FieldRow): unknown {
  if (told === 'number') return pieces.batch;
  const kind = slots[0]?.kinds[0];
  return told === 'figure' && kind !== undefined && isOwnKey(pieces, kind) ? pieces[kind] : undefined;
}

/** `adhesion x 4`: a number that is a choice is no batch. */
function withChoicesAsWords(act: ActLine, choices: Plan['choices']): ActLine {
  const isChoice = ({ kind, text }: Token): boolean =>
    kind === 'number' && choices.some(([, meanings]) => meanings.has(text));
  if (!act.tokens.some(isChoice)) return act;
  const asWord = (token: Token): Token => {
    const { text, start, end } = token;
    return isChoice(token) ? { kind: 'word', word: text, text, start, end } : token;
  };
  return { ...act, tokens: act.tokens.map(asWord) };
}

/** What is left of the words is a name. */
function takeChoices(
  act: ActLine,
  choices: Plan['choices'],
  words: readonly NameToken[],
  said: Said,
): readonly NameToken[] | Fault {
  let names = words;
  for (const [name, meanings] of choices) {
    let value = saidByVerb(act.verb, name);
    for (const token of names) {
      const meant = token.kind === 'word' ? meanings.get(token.word) : undefined;
      if (meant === undefined) continue;
      if (value !== undefined && value !== meant) return leftOver(token);
      value = meant;
      names = names.filter((other) => other !== token);
    }
    if (value !== undefined) said[name] = value;
  }
  return names;
}

function takeNames(
  act: ActLine,
  fields: Plan['fields'],
  words: readonly NameToken[],
  pieces: SortedPieces,
  said: Said,
): Fault | undefined {
  let names = words;
  for (const [name, field] of fields) {
    const value = nameIn(act, field, names, pieces);
    if (value === undefined) continue;
    if (typeof value === 'object' && isFailed(value)) return value;
    said[name] = value;
    names = [];
  }
  const [stray] = names;
  return stray === undefined ? undefined : leftOver(stray);
}

/** `al horno x`, `pincel x`, `sin extracción`: the verb itself says it. */
function saidByVerb({ method, pass, says }: VerbNamed, field: string): unknown {
  if (field === 'supplied') return says === undefined ? undefined : says === 'yes';
  return field === 'method' ? method : field === 'pass' ? pass : undefined;
}

function nameIn(
  act: ActLine,
  { told, options }: FieldRow,
  words: readonly NameToken[],
  pieces: SortedPieces,
): string | readonly string[] | Fault | undefined {
  switch (told) {
    case 'part':
      return onePartFrom(words);
    case 'parts':
      return words.length === 0 && options?.orNone === true ? [] : partsFrom(words, act.context);
    case 'place':
      return placeFrom(act, words, pieces.place);
    case 'ring':
      return ringFrom(words);
    case 'people':
      return peopleFrom(words);
    default:
      return undefined;
  }
}

function peopleFrom(words: readonly NameToken[]): readonly string[] | Fault | undefined {
  const people = new Set<string>();
  for (const token of words) {
    const person = personTyped(token);
    if (person === undefined) return { ...leftOver(token), needs: ['people'] };
    people.add(person);
  }
  return people.size === 0 ? undefined : [...people];
}

function ringFrom([first, second]: readonly NameToken[]): string | Fault | undefined {
  if (first === undefined) return undefined;
  const key = first.kind === 'quoted' ? first.words : first.word;
  if (second !== undefined || !isRingKey(key)) return leftOver(second ?? first);
  return key;
}

function missing(act: ActLine, { told, slots, options, words }: FieldRow<SlotName>): Fault {
  const needs = slots.slice(0, 1).map(({ name }) => name);
  const offered = options?.offered ?? (told === 'choice' ? [...words.values()] : undefined);
  return {
    failed: 'incomplete',
    needs,
    ...(offered !== undefined && { tries: offered.map((each) => `${act.line} ${each}`) }),
  };
}

/** With all that its row requires. */
export function commandOf(verb: Verb, said: Readonly<Said>): Command {
  const command = { ...said, verb };
  if (!isWhole(command)) throw new Error(`a line of "${verb}" read without what it needs`);
  return command;
}

function isWhole(command: { readonly verb: Verb }): command is Command {
  return plans[command.verb].required.every((name) => isOwnKey(command, name));
}
