// Figures that are noted with an act: they stand in its event as they were said and are told with it; no rule reads them.

import { type Command, type SlotName, verbRows, verbs } from '../commands.ts';
import type { NamedSlot } from './slot-row.ts';

interface NotedField {
  readonly name: string;
  readonly slot: NamedSlot<SlotName>;
}

export interface Noted extends NotedField {
  readonly value: number;
}

const byEvent: ReadonlyMap<string, readonly NotedField[]> = new Map(
  verbs.flatMap((verb) => {
    const { fields, options } = verbRows[verb];
    const noted = Object.entries(fields).flatMap(([name, field]) =>
      field.options?.noted === true ? field.slots.map((slot) => ({ name, slot })) : [],
    );
    const types = options?.leaves === undefined ? [] : [options.leaves.type, ...(options.alsoLeaves ?? [])];
    return noted.length === 0 ? [] : types.map((type) => [type, noted] as const);
  }),
);

export function notedIn(fact: { readonly type: string }): readonly Noted[] {
  const said: ReadonlyMap<string, unknown> = new Map(Object.entries(fact));
  return (byEvent.get(fact.type) ?? []).flatMap((field) => {
    const value = said.get(field.name);
    return typeof value === 'number' ? [{ ...field, value }] : [];
  });
}

/** What of a command is noted in an event of this type, by its name there. */
export function notedFrom(command: Command, type: string): Readonly<Record<string, unknown>> {
  const names = new Set(byEvent.get(type)?.map(({ name }) => name));
  return Object.fromEntries(Object.entries(command).filter(([name]) => names.has(name)));
}
