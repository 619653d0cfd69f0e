// `from b1`, `de la m2`: a pot by its letter and number, where there is such a pot and no part is called so.

import type { LineContext } from '../reading.ts';
import type { Heard } from './heard.ts';

/** In either tongue: batch, and mezcla; never `0.4 m2`. */
const lettered = /(?<![\p{L}\d-]|\d )[bm](\d{1,4})(?![\p{L}\d-])/giu;

/** None where it names none so. */
export function potsSaid(line: string, { batches, parts }: LineContext): readonly Heard[] {
  const put = line.replace(lettered, (typed, number: string) => {
    const isPart = parts.some((part) => part.replace('-', '').toLowerCase() === typed.toLowerCase());
    return batches.includes(Number(number)) && !isPart ? `batch ${number}` : typed;
  });
  return put === line ? [] : [{ line: put, isSure: true }];
}
