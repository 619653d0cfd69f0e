// Acts of which nothing is told but that they were done.

import { type Rows, type Verb, verbRows, verbs } from '../commands.ts';
import type { Fields, VerbRow } from './verb.ts';

type LeftPlainly<Row> =
  Row extends VerbRow<Fields, { plain: true; leaves: { type: infer Type extends string } }> ? Type : never;

export type PlainVerb = { [V in Verb]: LeftPlainly<Rows[V]> extends never ? never : V }[Verb];
type PlainType = LeftPlainly<Rows[Verb]>;

const isPlainVerb = (verb: Verb): verb is PlainVerb => verbRows[verb].options?.plain === true;

const byEvent: ReadonlyMap<string, PlainVerb> = new Map(
  verbs.filter(isPlainVerb).map((verb) => [verbRows[verb].options?.leaves?.type ?? '', verb]),
);

/** A fact that such an act left. */
export interface PlainFact {
  readonly type: PlainType;
}

export function isPlain(fact: { readonly type: string }): fact is PlainFact {
  return byEvent.has(fact.type);
}

/** Which act left it. */
export function plainVerb({ type }: PlainFact): PlainVerb {
  const verb = byEvent.get(type);
  if (verb === undefined) throw new Error(`no plain act leaves "${type}"`);
  return verb;
}
