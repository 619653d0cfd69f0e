// The customer's concession, wherever it is told that a part was released under one.

import type { Concession } from '../../core/disposition.ts';
import type { Figures } from '../language/figures.ts';
import type { Telling } from './card-context.ts';

export const concessionLines = (
  { words, figures }: Telling,
  concession: Concession | undefined,
  as: Figures = figures,
): readonly string[] => (concession === undefined ? [] : [words.parts.held.concession(concession, as)]);
