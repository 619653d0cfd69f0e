// `argon on`, `nitrogen bottle next to me`: whether what is said of the gas says that it is there.

import type { LineContext } from '../reading.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { isOfAct, type Label, type Said } from './label-read.ts';

export const spoken = (said: readonly Said[]): string => said.map(({ typed }) => typed).join(' ');

/** All that is said with it says so. */
export function isGasThere({ ofGas }: Label, context: LineContext): boolean {
  const { said, labelled, weighed } = context.hearing;
  if (onlyAsksOrDenies(spoken(ofGas), context)) return false;
  return ofGas.every(({ typed, of }) => {
    if (isOfAct(of) || of === 'gas') return true;
    return withoutAccents(typed.toLowerCase())
      .split(' ')
      .every(
        (word) =>
          said.light.has(word) ||
          said.joints.has(word) ||
          labelled.gasThere.has(word) ||
          weighed.isWordOf(word, 'open'),
      );
  });
}
