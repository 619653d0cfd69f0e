// What is known of each bell that is being rung, person by person: where it was tried, and who has been told. Written down
// before each try, so that after a stop it can be looked for, and nobody who was told is told again.

import { z } from 'zod';
import type { PersonName } from '../../core/ids.ts';
import { ownValue } from '../../core/own-key.ts';
import type { Postbox } from '../../core/ports.ts';
import type { Address } from './platform.ts';

const State = z.object({
  is: z.enum(['wanted', 'tried', 'told']),
  channel: z.string().optional(),
  thread: z.string().optional(),
  at: z.number().optional(),
});
/** `covered`: told by the one message of all that rang with it, and not yet asked for by itself. */
const Ring = z.object({
  lookedAt: z.number(),
  people: z.record(z.string(), State),
  covered: z.boolean().optional(),
});
const Rings = z.record(z.string(), Ring);
type Rings = z.infer<typeof Rings>;

interface Tried extends Address {
  readonly name: PersonName;
  readonly at: number;
}

export type RingNotes = ReturnType<typeof createRingNotes>;

/** A try is repeated within seconds: a ring of the same name after a longer pause is another one, for everybody. */
const sameRingMs = 120_000;
const keptMs = 3_600_000;

export function createRingNotes(crew: string, postbox: Postbox, now: () => number) {
  const note = `rings/${crew}`;
  const read = (): Rings => Rings.safeParse(JSON.parse(postbox.note(note) ?? '{}')).data ?? {};

  const ringOf = (key: string) => ownValue(read(), key);

  /** Rings of long ago go out with it. */
  function write(changed: Rings): void {
    const kept = Object.entries({ ...read(), ...changed }).filter(([, { lookedAt }]) => now() - lookedAt < keptMs);
    postbox.setNote(note, JSON.stringify(Object.fromEntries(kept)));
  }

  function change(key: string, changed: (before: Rings[string]['people']) => Rings[string]['people']): void {
    write({ [key]: { lookedAt: now(), people: changed(ringOf(key)?.people ?? {}) } });
  }

  const isToldToAll = (key: string): boolean => {
    const people = Object.values(ringOf(key)?.people ?? {});
    return people.length > 0 && people.every(({ is }) => is === 'told');
  };

  const isFresh = (ring: Rings[string] | undefined): ring is Rings[string] =>
    ring !== undefined && now() - ring.lookedAt <= sameRingMs;

  return {
    isToldToAll,
    /** All of them were told in one message. */
    cover: (keys: readonly string[], names: readonly PersonName[]): void => {
      const people = Object.fromEntries(names.map((name) => [name, { is: 'told' as const }]));
      write(Object.fromEntries(keys.map((key) => [key, { lookedAt: now(), people, covered: true }])));
    },
    /** True once for a ring that was told with others a moment ago. */
    takeCovered: (key: string): boolean => {
      const ring = ringOf(key);
      if (!isFresh(ring) || ring.covered !== true) return false;
      write({ [key]: { ...ring, covered: false } });
      return true;
    },
    /** Whom this ring has still to reach, of all whom it is for. */
    begin: (key: string, names: readonly PersonName[]): readonly PersonName[] => {
      const before = ringOf(key);
      const goesOn = isFresh(before) && !isToldToAll(key);
      const told = names.filter((name) => goesOn && ownValue(before.people, name)?.is === 'told');
      change(key, (people) =>
        Object.fromEntries(names.map((name) => [name, goesOn ? (ownValue(people, name) ?? wanted) : wanted])),
      );
      return names.filter((name) => !told.includes(name));
    },
    trying: (key: string, names: readonly PersonName[], { channel, thread }: Address): void => {
      const tried = { is: 'tried' as const, channel, ...(thread === undefined ? {} : { thread }), at: now() };
      change(key, (people) => ({ ...people, ...Object.fromEntries(names.map((name) => [name, tried])) }));
    },
    /** `wanted`: turned away, or looked for and not found. */
    became: (key: string, names: readonly PersonName[], is: 'told' | 'wanted'): void =>
      change(key, (people) => ({ ...people, ...Object.fromEntries(names.map((name) => [name, { is }])) })),
    /** Tries without an answer; `undefined`: nothing of this ring was ever tried. */
    unanswered: (key: string): readonly Tried[] | undefined => {
      const ring = ringOf(key);
      if (ring === undefined) return undefined;
      return Object.entries(ring.people).flatMap(([name, { is, channel, thread, at }]) =>
        is === 'tried' && channel !== undefined && at !== undefined ? [{ name, channel, thread, at }] : [],
      );
    },
  };
}

const wanted = { is: 'wanted' as const };
