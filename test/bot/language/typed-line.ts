// A line as it is typed, with what it must be read as. A misread names the piece that stopped it; `offers` is the first line
// offered instead.

import type { MisreadCode } from '../../../bot/language/reading.ts';
import type { Command, Question, Stance } from '../../../core/commands.ts';
import type { EpochMs } from '../../../core/units.ts';
import { utc } from './shop-at-ten.ts';

export type Expected =
  | { readonly kind: 'command'; readonly command: Command; readonly at?: EpochMs; readonly stance?: Stance }
  | { readonly kind: 'question'; readonly question: Question }
  | { readonly kind: 'silence' }
  | { readonly kind: 'misread'; readonly code: MisreadCode; readonly token: string; readonly offers?: string };

export interface TypedLine {
  readonly line: string;
  readonly expected: Expected;
}

interface Manner {
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

export const act = (line: string, command: Command, manner: Manner = {}): TypedLine => ({
  line,
  expected: { kind: 'command', command, ...manner },
});
export const ask = (line: string, question: Question): TypedLine => ({
  line,
  expected: { kind: 'question', question },
});
export const miss = (line: string, code: MisreadCode, token: string, offers?: string): TypedLine => ({
  line,
  expected: { kind: 'misread', code, token, ...(offers !== undefined && { offers }) },
});

export const happened: Stance = { is: 'happened' };
export const happenedAt = (iso: string): Manner => ({ at: utc(iso), stance: happened });
