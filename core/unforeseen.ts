// What goes wrong in the program itself while a line is read, decided, sealed or worded. It is no fault of the store, which
// can write all the same: only this line is not recorded, and nobody else's is hurt.

export class Unforeseen extends Error {}

/** Runs what is ours alone, and names what it was about where that breaks. Throws `Unforeseen`. */
export function oursAlone<T>(about: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof Unforeseen ? error : new Unforeseen(`${about}: ${String(error)}`, { cause: error });
  }
}
