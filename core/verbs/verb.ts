// A verb's row: what its command may hold. The type of the command is inferred from it, and everything that takes, prints,
// explains or corrects the act reads it.

import type { Role } from '../crew/crew-commands.ts';
import type { Noun } from '../ids.ts';
import type { Field, FieldRow, ToldAs } from './slot.ts';

export type Fields = Readonly<Record<string, Field>>;

/** The event that an act leaves behind; where several verbs leave the same one, with what tells them apart. */
export interface Leaves {
  readonly type: string;
  readonly [field: string]: string;
}

/** Under the name that a correction gives it: what slot it is, and how the fact names it. */
interface AlsoAmends {
  readonly slot: string;
  readonly fact: string;
  /** A figure, where it is left out. */
  readonly told?: ToldAs;
  /** The word that it stands behind on the correction's line. */
  readonly behind?: string;
}

interface RowOptions {
  /** Left out: nothing of such an act can be put right by a correction. */
  readonly leaves?: Leaves;
  /** Its event holds nothing of its own: each tongue tells it in one word, beside what the verb is called by. */
  readonly plain?: true;
  /** Where only a part of it was told. */
  readonly alsoLeaves?: readonly string[];
  /** What else a correction may put right. */
  readonly amends?: Readonly<Record<string, AlsoAmends>>;
  /** What it is done to, where none of its fields names it. */
  readonly on?: Noun;
  /** Of these fields one at least. */
  readonly oneOf?: readonly string[];
  /** The line ends in somebody's own words. */
  readonly endsInWords?: true;
  /** Counts from when it is given: no telling that it was already given makes one. */
  readonly decision?: true;
  /** Who may say it; left out, anybody. */
  readonly leastRole?: Role;
  /** Calls people: nothing after its word may stop the reading, and a thread's batch is not meant by itself. */
  readonly calls?: true;
  /** Vouches for what can hurt somebody: said in full or with its own tap, and never by a bare answer. */
  readonly vouches?: true;
}

export interface VerbRow<F extends Fields = Fields, R extends RowOptions = RowOptions> {
  readonly fields: F;
  readonly options: R | undefined;
}

export function verb<const F extends Fields, const R extends RowOptions = RowOptions>(
  fields: F,
  options?: R,
): VerbRow<F, R> {
  return { fields, options };
}

type Value<F> = F extends Field<infer T> ? T : never;
type IsThere<F> =
  F extends FieldRow<string, infer O>
    ? O extends { required: true } | { orNone: true } | { usual: string }
      ? true
      : false
    : never;
type Flat<T> = { readonly [K in keyof T]: T[K] };
type AtLeastOne<T, Of extends keyof T> = { [One in Of]: Flat<Omit<T, One> & Required<Pick<T, One>>> }[Of];

type SaidFields<F extends Fields> = {
  readonly [K in keyof F as IsThere<F[K]> extends true ? K : never]: Value<F[K]>;
} & {
  readonly [K in keyof F as IsThere<F[K]> extends true ? never : K]?: Value<F[K]>;
};

/** What a row's command holds. */
export type SaidOf<Row> =
  Row extends VerbRow<infer F, infer R>
    ? R extends { readonly oneOf: readonly (infer One extends keyof SaidFields<F>)[] }
      ? AtLeastOne<SaidFields<F>, One>
      : Flat<SaidFields<F>>
    : never;

export type SlotOf<Row> = Row extends VerbRow<infer F> ? F[keyof F]['slots'][number]['name'] : never;

/** The fields that a correction may put right. */
type Amendable<F extends Fields> = {
  [K in keyof F]: F[K] extends FieldRow<string, infer O> ? (O extends { amend: true } ? K : never) : never;
}[keyof F];
type AmendableIn<Rows> = { [V in keyof Rows]: Rows[V] extends VerbRow<infer F> ? Amendable<F> : never }[keyof Rows];
type ValueIn<Rows, K> = {
  [V in keyof Rows]: Rows[V] extends VerbRow<infer F> ? (K extends keyof F ? Value<F[K]> : never) : never;
}[keyof Rows];
export type Amended<Rows> = { readonly [K in AmendableIn<Rows> & string]?: ValueIn<Rows, K> };

export type LeavingIn<Rows> = {
  [V in keyof Rows]: Rows[V] extends VerbRow<Fields, infer R> ? (R extends { leaves: Leaves } ? V : never) : never;
}[keyof Rows];
