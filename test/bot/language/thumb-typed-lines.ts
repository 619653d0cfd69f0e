// All invented lines as a thumb types them, each with what it must be read as.

import { crewLines } from './crew-lines.ts';
import { materialLines } from './material-lines.ts';
import { partLines } from './part-lines.ts';
import { potLines } from './pot-lines.ts';
import { sessionLines } from './session-lines.ts';
import { spanishLines } from './spanish-lines.ts';
import { spanishSpokenLines } from './spanish-spoken-lines.ts';
import type { TypedLine } from './typed-line.ts';

export const thumbTypedLines: readonly TypedLine[] = [
  ...potLines,
  ...partLines,
  ...crewLines,
  ...materialLines,
  ...sessionLines,
  ...spanishLines,
  ...spanishSpokenLines,
];
