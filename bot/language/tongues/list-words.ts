// How several parts are told by tongue, in lower case and without accents.

/** Many parts by one word: all to which an act can be done, two of them, those that are left, so many others, the first or the last so many. */
export const manies = ['all', 'both', 'rest', 'other', 'first', 'last'] as const;
export type Many = (typeof manies)[number];

export interface ListWords {
  /** What makes a name that of several; the longest that fits is taken off. */
  readonly plurals: readonly string[];
  readonly and: readonly string[];
  /** Between the ends of a stretch. */
  readonly to: readonly string[];
  /** Before a number, and no number itself. */
  readonly articles: readonly string[];
  /** Before a number they say how many, not which: `las dos`. */
  readonly articlesOfMany: readonly string[];
  /** Before a number they may say either: `the three`. */
  readonly articlesOfEither?: readonly string[];
  /** Behind a number they say that it is so many of what is named: `the 2 of them`. */
  readonly ofThem: readonly string[];
  /** Behind a number they count what was put on, and no part: `7, one thin coat each`. */
  readonly counted: readonly string[];
  /** Behind a number they count what was read, and name nothing: `9, three readings`. */
  readonly readings: readonly string[];
  /** In front of a list, and what then joins it: `tanto la 7 como la 8`. */
  readonly asMuch?: { readonly before: string; readonly joint: string };
  /** Between what a thing is and what it is of: `carcasa de la bomba`. */
  readonly of: readonly string[];
  /** Before a thing that only says where another is: `next to 8`. */
  readonly beside: readonly string[];
  /** Before the serial, and before the job, that a part is booked under. */
  readonly serials: readonly string[];
  readonly jobs: readonly string[];
  /** Behind a metal: `the steel one`. */
  readonly ones: readonly string[];
  /** All of them but those that stand behind it. */
  readonly except: readonly string[];
  readonly many: Readonly<Record<Many, string>>;
  /** What the things that crews coat are called, by the word that names may have for them: so a part is found in either tongue. */
  readonly nouns: Readonly<Record<string, string>>;
  /** The latest act with its figures, of other parts: what stands before them, what stands behind, and that it was out of the same pot. */
  readonly sameFor: { readonly before: string; readonly behind: string; readonly samePot: string };
}
