// What is noted with an act has its place in the event that the act leaves, and can be put right there. Invented figures.

import { describe, expect, it } from 'vitest';
import type { Rows, Verb } from '../../core/commands.ts';
import type { Fact } from '../../core/history.ts';
import type { FieldRow } from '../../core/verbs/slot.ts';
import type { VerbRow } from '../../core/verbs/verb.ts';
import { given } from './given.ts';

type NotedIn<F> = { [K in keyof F]: F[K] extends FieldRow<string, { noted: true }> ? K : never }[keyof F];
type Left<Type extends string> = Extract<Fact, { type: Type }>;
type TypesLeft<Options> =
  | (Options extends { leaves: { type: infer Type extends string } } ? Type : never)
  | (Options extends { alsoLeaves: readonly (infer Type extends string)[] } ? Type : never);
/** Of each event that the act may leave, by itself. */
type Unplaced<F, Type extends string> = Type extends string ? Exclude<NotedIn<F>, keyof Left<Type>> : never;
type LacksPlace<Row> = Row extends VerbRow<infer F, infer Options> ? Unplaced<F, TypesLeft<Options>> : never;

/** A figure that is noted and that its event has no place for would be lost: then this does not compile. */
const withoutPlace: { readonly [V in Verb as LacksPlace<Rows[V]> extends never ? never : V]: LacksPlace<Rows[V]> } = {};

describe('what is noted with an act', () => {
  it('given the rows of all verbs, then each figure has its place', () => {
    expect(withoutPlace).toEqual({});
  });

  it('given a preparation with salts and dust, then its event has them, and a correction puts the dust right', async () => {
    const shift = await given(['08:00 part impeller-7', '08:10 prep impeller-7 sa2.5 60um salts 12mg/m2 dust 1']);
    const noted = { profileMicrometres: 60, saltsMilligramsPerSquareMetre: 12, dustRating: 1 };
    expect((await shift.events()).at(-1)?.body).toMatchObject({ type: 'SurfacePrepared', grade: 'sa2.5', ...noted });
    expect(await shift.when('08:20 amend impeller-7 prep dust 2 misread')).toEqual({ recorded: ['Amended'] });
    expect((await shift.events()).at(-1)?.body).toMatchObject({ to: { fact: { ...noted, dustRating: 2 } } });
  });
});
