// Which number to call: asked ahead, `a qué número llamo si hay una emergencia`, the words of an alarm are no cry. Only what is asked
// whole in such words is calm; whatever else stands in the line may be one. Common practice and our own choice, no source.

import type { LineContext } from './reading.ts';
import { cleanLine } from './typed/clean-line.ts';
import { withoutAccents } from './typed/without-accents.ts';

export function asksNumber(text: string, { hearing }: LineContext): boolean {
  const line = withoutAccents(cleanLine(text).toLowerCase()).replace(/^¿/, '');
  return hearing.every.tongues.some(({ questions }) => questions.emergencyNumber.test(line));
}
