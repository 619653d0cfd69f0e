// Names of a line by the fields of its row: parts, places, people, sheets and bells, in the row's order.

import type { SlotName } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { PartName, PlaceName } from '../../../core/ids.ts';
import type { FieldRow, ToldAs } from '../../../core/verbs/slot.ts';
import type { Hearing } from '../hearing.ts';
import { looksLikePart, partNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { isRingKey } from '../ring-key.ts';
import { isCoatedThing, isPlaceRoot } from '../trade-words.ts';
import { type ActLine, leftOver, type Said } from './act-line.ts';
import { onePartFrom, partsFrom, placeFrom, sheetFrom, wordOf } from './read-names.ts';
import type { NameToken, SortedPieces } from './sort-pieces.ts';

export type NamedField = readonly [name: string, field: FieldRow<SlotName>];

/** What is named goes into `said`; a fault where a word is no name, or one too many. */
export function takeNames(
  act: ActLine,
  fields: readonly NamedField[],
  { words, place }: SortedPieces,
  said: Said,
): Fault | undefined {
  let names = words;
  for (const [name, field] of fields) {
    // Read by the word that it stands behind.
    if (field.told === 'person' && field.options?.behind !== undefined) continue;
    const value = nameIn(act, field, fields, names, place);
    if (value === undefined) continue;
    if (isFailed(value)) return value;
    said[name] = value;
    names = field.told === 'ring' ? names.slice(1) : [];
  }
  // `new` is said of a part or a place.
  if (said.part === undefined && said.parts === undefined && said.place === undefined) delete said.asNew;
  const [stray] = names;
  if (stray === undefined) return undefined;
  // Where no name can stand, the word was meant as what is still to be chosen.
  const open = fields.find(
    ([name, { words: offered, options }]) =>
      offered.size > 0 && options?.usual === undefined && said[name] === undefined,
  )?.[1].slots[0];
  const takesNames = fields.some(([, { told }]) => isName.has(told));
  return open === undefined || takesNames ? leftOver(stray) : { ...leftOver(stray), needs: [open.name] };
}

const isName: ReadonlySet<ToldAs> = new Set(['part', 'parts', 'place', 'sheet', 'ring', 'rings', 'person', 'people']);

function nameIn(
  act: ActLine,
  { told, options }: FieldRow<SlotName>,
  fields: readonly NamedField[],
  names: readonly NameToken[],
  place: PlaceName | undefined,
): string | readonly string[] | Fault | undefined {
  switch (told) {
    case 'part':
      return fields.some(([, other]) => other.told === 'place')
        ? partBesidePlace(act, names, place)
        : onePartFrom(names, act.context);
    case 'parts':
      return names.length === 0 && options?.orNone === true ? [] : partsFrom(names, act.context);
    case 'place':
      return placeFrom(act, names, place);
    case 'sheet':
      return sheetFrom(act, names);
    case 'ring':
      return names[0] && ringFrom(names[0]);
    case 'rings':
      return names.length === 0 ? undefined : allOf(names, ringFrom);
    case 'person':
      return personFrom(names, fields.length === 1, act.context.hearing);
    case 'people':
      return names.length === 0 ? undefined : allOf(names, personFor('people', act.context.hearing));
    default:
      return undefined;
  }
}

/** Of a part where the word is one, or could be one and is no place that anybody has named: who meant a place says `in`. */
function partBesidePlace(
  { context }: ActLine,
  [first, second]: readonly NameToken[],
  place: PlaceName | undefined,
): PartName | undefined {
  if (first === undefined || second !== undefined || place !== undefined) return undefined;
  const word = wordOf(first);
  if (context.parts.includes(word)) return word;
  if (context.places.includes(word)) return undefined;
  return isCoatedThing(word) || (looksLikePart(word) && !isPlaceRoot(word)) ? partNamed(word, context) : undefined;
}

function allOf(tokens: readonly NameToken[], nameOf: (token: NameToken) => string | Fault): readonly string[] | Fault {
  const names = new Set<string>();
  for (const token of tokens) {
    const name = nameOf(token);
    if (isFailed(name)) return name;
    names.add(name);
  }
  return [...names];
}

const personFor =
  (slot: SlotName, hearing: Hearing) =>
  (token: NameToken): string | Fault =>
    personTyped(token, hearing) ?? { ...leftOver(token), needs: [slot] };

/** With the line to itself a name may have several words. */
function personFrom(tokens: readonly NameToken[], isAlone: boolean, hearing: Hearing): string | Fault | undefined {
  const [first, second] = tokens;
  if (first === undefined) return undefined;
  if (second !== undefined && !isAlone) return leftOver(second);
  const names = allOf(tokens, personFor('person', hearing));
  return isFailed(names) ? names : names.join(' ');
}

function ringFrom(token: NameToken): string | Fault {
  const key = token.kind === 'quoted' ? token.words : token.word;
  return isRingKey(key) ? key : leftOver(token);
}
