// What a reader gets and what it hands back. A reader turns the words after the verb into one command; times and
// stance have been taken off before, except where the line ends in somebody's own words.

import type { Command } from '../../../core/commands.ts';
import { known } from '../../../core/known.ts';
import type { Fault, LineContext } from '../reading.ts';
import type { How } from '../time-and-permission.ts';
import type { Token } from '../typed/token.ts';
import type { VerbNamed } from '../verbs-of-tongues.ts';

export interface ActLine {
  readonly verb: VerbNamed;
  /** What follows the verb. */
  readonly tokens: readonly Token[];
  /** Where in the line the verb ends. */
  readonly from: number;
  readonly line: string;
  readonly context: LineContext;
}

export interface ActRead extends How {
  readonly command: Command;
}

/** Fields of an act by their names. */
export type Said = Record<string, unknown>;

export type OwnReader = (act: ActLine) => Command | Fault;
/** `labelled`: what stood behind a word of its own, off the line by now. */
export type Reader = (act: ActLine, labelled: Readonly<Said>) => Command | Fault;
export type ReaderToTheEnd = (act: ActLine) => ActRead | Fault;

/** The line with one piece put differently. */
export function lineWith(line: string, span: { readonly start: number; readonly end: number }, text: string): string {
  return line.slice(0, span.start) + text + line.slice(span.end);
}

/** Without `tries` the frame looks for a near word itself. */
export function leftOver(token: Token, tries?: readonly string[]): Fault {
  return { failed: 'left-over', token, ...known({ tries }) };
}
