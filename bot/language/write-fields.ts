// What an act was told, as the reader takes it back: each field of its row in the row's order.

import { type Command, verbRows } from '../../core/commands.ts';
import { epochMs } from '../../core/units.ts';
import type { FieldRow } from '../../core/verbs/slot.ts';
import type { Hearing } from './hearing.ts';
import { writeName } from './people-typed.ts';
import { writeRingKey } from './ring-key.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeParts } from './write-names.ts';
import { writeAir, writeAmount, writeFilms, written } from './write-quantities.ts';
import { writeSpots } from './write-spots.ts';

/** The crew whose reader takes the line back. */
export interface WrittenFor {
  readonly zone: string;
  readonly hearing: Hearing;
}

export function writeFields(command: Command, crew: WrittenFor): readonly string[] {
  const { fields, options } = verbRows[command.verb];
  const said: ReadonlyMap<string, unknown> = new Map(Object.entries(command));
  const isAlone = options?.oneOf?.some((name) => !said.has(name)) === true;
  return Object.entries(fields).flatMap(([name, field]) => {
    const value = said.get(name);
    if (value === undefined || (Array.isArray(value) && value.length === 0)) return [];
    const { behind = isAlone ? field.options?.alone : undefined } = field.options ?? {};
    return [...(behind === undefined ? [] : [behind]), ...piecesOf(field, value, command, crew)];
  });
}

function piecesOf(
  { told, slots, words, figure }: FieldRow,
  value: unknown,
  command: Command,
  { zone, hearing }: WrittenFor,
): readonly string[] {
  const list = Array.isArray(value) ? value : [value];
  switch (told) {
    case 'number':
      return [String(value)];
    case 'numbers':
      return [`can ${list.join(' ')}`];
    case 'figure':
      return [written(Number(value), slots[0]?.unit ?? '')];
    case 'figures':
      return [writeFilms(list.map(Number))];
    case 'air':
      return 'air' in command ? writeAir(command.air) : [];
    case 'amount':
      return 'amount' in command ? [writeAmount(command.amount)] : [];
    case 'parts':
      return writeParts(list.map(String));
    case 'part':
    case 'sheet':
    case 'day':
      return list.map(String);
    case 'instant':
      return [isoLocal(epochMs(Number(value)), zone)];
    case 'place':
      return [`in ${String(value)}`];
    case 'person':
    case 'people':
      return list.map((name) => writeName(String(name), hearing));
    case 'choice':
    case 'choices':
    case 'new':
      return list.map((each) => words.get(each) ?? '');
    case 'kind':
      return 'way' in command ? writeKind(command.way, figure, slots[1]?.unit) : [];
    case 'ring':
    case 'rings':
      return list.map((key) => writeRingKey(String(key)));
    case 'text':
      return [writeText(String(value))];
    case 'own-words':
      return [JSON.stringify(value)];
    case 'own-way':
      return 'spots' in command ? writeSpots(command.spots ?? []) : [];
    default: {
      const never: never = told;
      return never;
    }
  }
}

export const writeText = (text: string): string => (plainText.test(text) ? text : JSON.stringify(text));

/** Others could be read as numbers with units, `12/7` as two numbers: they stand in quotes. */
const plainText = /^(?:\d+|[a-z][a-z0-9-]*)$/i;

function writeKind(
  value: { readonly kind: string },
  figure: FieldRow['figure'],
  unit: string | undefined,
): readonly string[] {
  const said = new Map<string, unknown>(Object.entries(value)).get(figure?.as ?? '');
  return [value.kind, said === undefined ? '' : written(Number(said), unit ?? '')];
}
