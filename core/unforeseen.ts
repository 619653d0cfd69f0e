// What goes wrong in the program itself while a line is read, decided, sealed or worded. It is no fault of the store, which
// can write all the same: only this line is not recorded, and nobody else's is hurt.

import { RestsOnUnread } from './unread-event.ts';

export class Unforeseen extends Error {}

/** Runs what is ours alone, and names what it was about where that breaks. Throws `Unforeseen`, and `RestsOnUnread` as it is. */
export function oursAlone<T>(about: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof RestsOnUnread) throw error;
    throw error instanceof Unforeseen ? error : new Unforeseen(`${about}: ${String(error)}`, { cause: error });
  }
}
