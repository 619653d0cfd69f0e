// What a single line comes to: an act, a question, or where the reading stopped.

import type { Question } from '../../core/commands.ts';
import type { ActRead } from './acts/act-line.ts';
import type { Misunderstood } from './misread-line.ts';

export type Read =
  | { readonly act: ActRead; readonly line: string }
  | { readonly question: Question; readonly line: string }
  | Misunderstood;
