// What a tongue brings: how it says things, and what its speakers type. Everything of a language lies in its folder.

import type { Words } from './english/sentences.ts';
import type { Countries, Profile } from './profile.ts';
import type { Typed } from './typed.ts';

export interface Tongue {
  /** As settings name it, `es`. */
  readonly code: string;
  /** What it calls itself. */
  readonly name: string;
  readonly countries: Countries;
  readonly words: (country: Profile) => Words;
  readonly typed: Typed;
}
