// What an act is done to, and what in it a correction may put right: read off its row.

import { type SlotName, type Verb, verbRows, verbs } from '../commands.ts';
import type { Noun } from '../ids.ts';
import type { AmendableVerb } from './correction-verbs.ts';
import type { Options, ToldAs } from './slot.ts';
import type { NamedSlot } from './slot-row.ts';

/** What an act is done to. A coat is done to its part; its batch may name it too. */
export function actsOn(verb: Verb): Noun | undefined {
  const { fields, options } = verbRows[verb];
  if (options?.on !== undefined) return options.on;
  if (fields.part !== undefined || fields.parts !== undefined) return 'part';
  return nounsNamed.find((noun) => fields[noun] !== undefined);
}
const nounsNamed = ['batch', 'can', 'session', 'place'] as const satisfies readonly Noun[];

/** A figure that a correction may put right. */
export interface Amends {
  /** As the correction names it. */
  readonly name: string;
  readonly slot: NamedSlot<SlotName>;
  readonly told: ToldAs;
  /** As the fact has it. */
  readonly fact: string;
  readonly options: Options | undefined;
}

/** What a correction may put right in an act, besides its time; `undefined` where nothing can be. */
export function amendsOf(verb: Verb): readonly Amends[] | undefined {
  const { fields, options } = verbRows[verb];
  if (options?.leaves === undefined) return undefined;
  const slots = Object.values(fields).flatMap((field) => field.slots);
  return [
    ...Object.entries(fields).flatMap(([name, field]) =>
      field.options?.amend === true
        ? field.slots.map((slot) => ({ name, slot, told: field.told, fact: name, options: field.options }))
        : [],
    ),
    ...Object.entries(options.amends ?? {}).flatMap(([name, { slot, fact, told = 'figure', behind }]) =>
      slots
        .filter((each) => each.name === slot)
        .map((each) => ({ name, slot: each, told, fact, options: behind === undefined ? undefined : { behind } })),
    ),
  ];
}

export function isAmendable(verb: Verb): verb is AmendableVerb {
  return verbRows[verb].options?.leaves !== undefined;
}

export const amendableVerbs: readonly AmendableVerb[] = verbs.filter(isAmendable);
