// What is answered where the acts are clear and the line is none: each that may be meant as a tap, or what one lacks here.

import { known } from '../../core/known.ts';
import type { ActMeant, Misread, Reading } from './reading.ts';

/** What was understood, to be tapped: in place of why the line did not read. */
export const whichActOf = (meant: readonly LineMeant[], untaken?: readonly string[]): Misread => ({
  ...{ code: 'which-act', token: '', from: 0, to: 0, needs: [], couldBe: [], exampleOf: 'mix' },
  suggestions: meant.map(({ line }) => line),
  meant: meant.flatMap(({ line, acts: reads }) => {
    const acts = reads.flatMap((each) => (each.kind === 'command' ? [actIn(each)] : []));
    return acts.length === 0 ? [] : [{ line, acts }];
  }),
  ...known({ untaken }),
});

/** `its dry`, where no film dries: the act is clear, and what it was done to is asked. */
export const nothingHereFor = (misread: Misread, line: string): Misread => ({
  ...misread,
  ...{ code: 'nothing-here', token: '', from: line.length, to: line.length, suggestions: [] },
});

interface LineMeant {
  readonly line: string;
  readonly acts: readonly Extract<Reading, { kind: 'command' | 'question' }>[];
}

const actIn = ({ command, stance, at }: Extract<Reading, { kind: 'command' }>): ActMeant => ({
  command,
  stance,
  ...known({ at }),
});
