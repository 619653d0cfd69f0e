// What a further reading makes of a line that the strict reader cannot read: strict lines, which that reader then reads. None
// of them makes a command by itself, so there is one grammar and one place where an act is made.

import { actsJoint } from './lines-apart.ts';
import type { Misunderstood } from './misread-line.ts';
import type { LineContext, Reading } from './reading.ts';

export type Understood =
  /** Every word is accounted for, one reading fits, nothing denies, doubts or only plans it: it is taken. */
  | { readonly is: 'sure'; readonly line: string }
  /** As sure, of several acts one after the other. */
  | { readonly is: 'several'; readonly lines: readonly string[] }
  /** A tap each, the likeliest first. `untaken`: what of the line no tap says; `mayBeElse`: behind these stands what else it may be. */
  | {
      readonly is: 'likely';
      readonly lines: readonly string[];
      readonly untaken?: readonly string[];
      readonly mayBeElse?: 'an answer' | 'anything';
    };

/** As taps: of several acts one that says them all. */
export function asTaps(understood: Understood): Extract<Understood, { is: 'likely' }> {
  switch (understood.is) {
    case 'sure':
      return { is: 'likely', lines: [understood.line] };
    case 'several':
      return { is: 'likely', lines: [understood.lines.join(actsJoint)] };
    case 'likely':
      return understood;
    default: {
      const never: never = understood;
      return never;
    }
  }
}

/** `line` is cleaned. `undefined`: nothing that this reading knows of. */
export type Understands = (line: string, context: LineContext, strictly: Strictly) => Understood | undefined;

/** What the strict reader makes of a line. */
export type Strictly = (line: string) => StrictReading;

export type StrictReading = Exclude<Reading, { kind: 'misread' | 'several' }> | Unread;

/** What it may have meant is looked for only where somebody is told: most lines are understood otherwise. */
export interface Unread {
  readonly kind: 'unread';
  readonly read: Misunderstood;
}
