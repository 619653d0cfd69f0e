// What each message or home tab that changes in place has shown in the last moments: a thumb may still be on its way to it.
// Of one of them only one showing is on its way at a time.

import { type Place, type Showing, withShowing } from '../talk/pressed.ts';

export type Showings = ReturnType<typeof createShowings>;

export interface OnItsWay {
  readonly arrived: () => void;
  readonly lost: () => void;
}

/** Those changed longest ago go first: what a thumb may still be on its way to was changed just now. */
const kept = 200;

export function createShowings(now: () => number) {
  const all = new Map<string, readonly Showing[]>();
  return {
    of: (key: string): readonly Showing[] => all.get(key) ?? [],
    /** On its way: some see it already. Nobody knows until the platform has answered. */
    sending: (key: string, places: () => readonly Place[]): OnItsWay => {
      const before = all.get(key) ?? [];
      const show = () => set(all, key, withShowing(before, showing(now(), places)));
      show();
      return { arrived: show, lost: () => set(all, key, before) };
    },
  };
}

/** Where its taps stand is asked only by a press. */
const showing = (since: number, places: () => readonly Place[]): Showing => ({
  since,
  get places() {
    return places();
  },
});

function set(all: Map<string, readonly Showing[]>, key: string, showings: readonly Showing[]): void {
  all.delete(key);
  all.set(key, showings);
  for (const [other] of all) if (all.size > kept) all.delete(other);
}
