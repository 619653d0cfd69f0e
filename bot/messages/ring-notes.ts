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

interface Notebook {
  readonly postbox: Postbox;
  readonly now: () => number;
  /** Under what it is kept. */
  readonly note: string;
}

type People = Rings[string]['people'];
type Names = readonly PersonName[];

const wanted = { is: 'wanted' as const };

export function createRingNotes(crew: string, postbox: Postbox, now: () => number) {
  const book: Notebook = { postbox, now, note: `rings/${crew}` };
  const become = (key: string, names: Names, state: People[string]) =>
    change(book, key, (people) => ({ ...people, ...Object.fromEntries(names.map((name) => [name, state])) }));
  return {
    isToldToAll: (key: string): boolean => isToldToAll(ringOf(book, key)),
    /** All of them were told in one message. */
    cover: (keys: readonly string[], names: Names): void => {
      const people = Object.fromEntries(names.map((name) => [name, { is: 'told' as const }]));
      write(book, Object.fromEntries(keys.map((key) => [key, { lookedAt: now(), people, covered: true }])));
    },
    /** True once for a ring that was told with others a moment ago. */
    takeCovered: (key: string): boolean => {
      const ring = ringOf(book, key);
      if (!isFresh(book, ring) || ring.covered !== true) return false;
      write(book, { [key]: { ...ring, covered: false } });
      return true;
    },
    begin: (key: string, names: Names): Names => begin(book, key, names),
    trying: (key: string, names: Names, { channel, thread }: Address): void =>
      become(key, names, { is: 'tried', channel, ...(thread === undefined ? {} : { thread }), at: now() }),
    /** `wanted`: turned away, or looked for and not found. */
    became: (key: string, names: Names, is: 'told' | 'wanted'): void => become(key, names, { is }),
    /** Tries without an answer; `undefined`: nothing of this ring was ever tried. */
    unanswered: (key: string): readonly Tried[] | undefined => {
      const ring = ringOf(book, key);
      if (ring === undefined) return undefined;
      return Object.entries(ring.people).flatMap(([name, { is, channel, thread, at }]) =>
        is === 'tried' && channel !== undefined && at !== undefined ? [{ name, channel, thread, at }] : [],
      );
    },
  };
}

const read = ({ postbox, note }: Notebook): Rings => Rings.safeParse(JSON.parse(postbox.note(note) ?? '{}')).data ?? {};

const ringOf = (book: Notebook, key: string) => ownValue(read(book), key);

/** Rings of long ago go out with it. */
function write(book: Notebook, changed: Rings): void {
  const all = Object.entries({ ...read(book), ...changed });
  const kept = all.filter(([, { lookedAt }]) => book.now() - lookedAt < keptMs);
  book.postbox.setNote(book.note, JSON.stringify(Object.fromEntries(kept)));
}

function change(book: Notebook, key: string, changed: (before: People) => People): void {
  write(book, { [key]: { lookedAt: book.now(), people: changed(ringOf(book, key)?.people ?? {}) } });
}

function isToldToAll(ring: Rings[string] | undefined): boolean {
  const people = Object.values(ring?.people ?? {});
  return people.length > 0 && people.every(({ is }) => is === 'told');
}

const isFresh = ({ now }: Notebook, ring: Rings[string] | undefined): ring is Rings[string] =>
  ring !== undefined && now() - ring.lookedAt <= sameRingMs;

/** Whom this ring has still to reach, of all whom it is for. */
function begin(book: Notebook, key: string, names: Names): Names {
  const before = ringOf(book, key);
  const known = isFresh(book, before) && !isToldToAll(before) ? before.people : {};
  const people = names.map((name) => [name, ownValue(known, name) ?? wanted] as const);
  change(book, key, () => Object.fromEntries(people));
  return people.flatMap(([name, { is }]) => (is === 'told' ? [] : [name]));
}
