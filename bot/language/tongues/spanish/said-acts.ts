// What Spanish-speaking crews call their acts, besides the verbs that begin a line: every form of the verb, and what it is said of.

import type { Acts } from '../said-words.ts';
import { saidOfParts } from './said-of-parts.ts';
import { saidOfPots } from './said-of-pots.ts';
import { saidOfWork } from './said-of-work.ts';

/** Tens of thousands of phrases: made when somebody first says one. */
export const spanishActs = (): Acts => ({ ...saidOfPots(), ...saidOfParts(), ...saidOfWork() });
