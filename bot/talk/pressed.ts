// How a card stood when somebody pressed on it: cards change in place, under a thumb that is on its way. The same for
// every front end that changes what it has shown.

/** What a button says to people, and what it says to us. */
export interface Said {
  readonly label: string;
  readonly line: string;
}

/** Of a tap: its button, and how its card had moved. */
export interface Pressed {
  readonly label: string;
  readonly moved: Moved;
}

export type Moved =
  | { readonly is: 'not' }
  /** Until a moment ago that place said something else; `offered`: it is still to be had on the card. */
  | { readonly is: 'under-the-thumb'; readonly before: Said; readonly offered: boolean }
  /** Pressed on a card of which there is a newer one; `now`: what that says in this place, where it says another thing. */
  | { readonly is: 'older'; readonly now: Said | undefined };

/** Of a form: what was filled in was meant, wherever its button stood. Only what is decided rests on what the card said. */
export const movedUnderForm = (moved: Moved): Moved => (moved.is === 'not' ? moved : { is: 'older', now: undefined });

/**
 * Milliseconds. Our own choice, no source: what is pressed sooner after a change was aimed at what stood there before.
 * Whoever sees the change needs about a second to read and to move a gloved thumb.
 */
export const thumbMs = 1_500;

export interface Place extends Said {
  /** What the row of buttons is about: it keeps it wherever it stands. */
  readonly row: string;
  /** Where the row stands, and where in it the button; an entry of a menu has no place of its own. */
  readonly at: { readonly row: number; readonly button: number } | undefined;
}

export interface Showing {
  /** Milliseconds since 1970: shown from then on. */
  readonly since: number;
  readonly places: readonly Place[];
}

export interface Press {
  readonly row: string;
  /** `undefined`: chosen from a menu. */
  readonly button: number | undefined;
  readonly line: string;
  /** The earlier of its own time and of ours: two clocks differ, and a press that waited was no later for it. */
  readonly at: number;
  /** It says itself that there is a newer card. */
  readonly isOlder: boolean;
}

/** `showings`: of the card, the newest last, as many as there were in the last moments. */
export function howItMoved(showings: readonly Showing[], press: Press): Moved {
  const newest = showings.at(-1);
  if (newest === undefined) return press.isOlder ? { is: 'older', now: undefined } : { is: 'not' };
  const inPlace = newest.places.filter(({ row, at }) => row === press.row && at?.button === press.button);
  const here = inPlace.find(({ line }) => line === press.line);
  if (here === undefined) return { is: 'older', now: press.button === undefined ? undefined : inPlace[0] };
  // The one before each showing stood until then.
  const justLeft = showings.slice(0, -1).filter((_, i) => press.at - (showings[i + 1]?.since ?? 0) < thumbMs);
  const before = justLeft
    .map(({ places }) => places.find(({ at }) => isSamePlace(at, here.at)))
    .findLast((place) => place !== undefined && place.line !== press.line);
  if (before !== undefined) {
    const offered = newest.places.some(({ line }) => line === before.line);
    return { is: 'under-the-thumb', before: { label: before.label, line: before.line }, offered };
  }
  return press.isOlder || justLeft.length > 0 ? { is: 'older', now: undefined } : { is: 'not' };
}

const isSamePlace = (one: Place['at'], other: Place['at']): boolean =>
  one !== undefined && other !== undefined && one.row === other.row && one.button === other.button;

/** The showings with a newer one; those that nobody can have aimed at any more go. */
export function withShowing(showings: readonly Showing[], showing: Showing): readonly Showing[] {
  const lasting = showings.filter((_, i) => {
    const until = showings[i + 1]?.since;
    return until === undefined || showing.since - until < thumbMs;
  });
  return [...lasting, showing];
}
