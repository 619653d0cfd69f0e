// A thousand ordinary lines that hold a word of need: each of the written ones as it stands, shouted, after a word of its own
// and with one behind it. A fixed list: the same on every machine and every day.

import { ordinaryEnglish } from './ordinary-english.ts';
import { ordinarySpanish } from './ordinary-spanish.ts';

const framed = (lines: readonly string[], before: string, behind: string): readonly string[] =>
  lines.flatMap((line) => [line, line.toUpperCase(), `${before} ${line}`, `${line} ${behind}`]);

export const ordinaryLines: readonly string[] = [
  ...framed(ordinaryEnglish, 'fyi', 'thanks'),
  ...framed(ordinarySpanish, 'nota:', 'gracias'),
];
