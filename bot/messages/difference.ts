// What is to be done so that a message shows what it should: the difference between the wish and what is shown.

/** `live`: it goes on changing, or offers taps; a message that is not may be left for good. */
export interface Wish {
  readonly face: string;
  readonly live: boolean;
}

/** `open`: it may still be changed. */
export interface Shown {
  readonly face: string;
  readonly open: boolean;
}

export type Step = 'post' | 'change' | 'nothing';

/** `shown`: what is known to be there. `undefined`: nothing is. */
export function stepTo(wish: Wish, shown: Shown | undefined): Step {
  if (shown === undefined) return 'post';
  // What is finished keeps its message; what lost its message and goes on gets another.
  if (!shown.open) return wish.live ? 'post' : 'nothing';
  return wish.live && wish.face === shown.face ? 'nothing' : 'change';
}
