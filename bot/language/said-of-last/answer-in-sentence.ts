// What answers a card's question in a sentence: `yes, stirrer and lamps are all rated`. It shares words with the question or with the
// button, and is no more than that button's tap: somebody vouches for it.

import type { LineContext } from '../reading.ts';
import { rootsOf } from '../sayings/signs.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import type { Understands } from '../understood.ts';
import { longestAnswer } from './bare-answer.ts';
import type { Open } from './last.ts';
import { namesOnlyWords } from './offered-act.ts';

/** The answers of one question stand together: which of them, a denial tells. */
export const answerInSentence: Understands = (line, context) => {
  if (line.endsWith('?') || line.length > longestAnswer || !namesOnlyWords(line, context)) return undefined;
  const roots = new Set(tellingRoots(line));
  const isOf = ({ asks, label }: Open): boolean =>
    asks !== undefined &&
    (tellingRoots(label).some((root) => roots.has(root)) ||
      tellingRoots(asks).filter((root) => roots.has(root)).length >= fewestShared);
  const open = context.last?.().open ?? [];
  const question = open.find(isOf)?.asks;
  const answers = answersIn(line, context);
  const lines = open.flatMap(({ asks, bare, line: each }) =>
    asks === question && answers.some((each) => bare.includes(each)) ? [each] : [],
  );
  return question === undefined || lines.length === 0 ? undefined : { is: 'likely', lines };
};

/** Who doubts or asks is shown both. */
function answersIn(line: string, context: LineContext): readonly string[] {
  const { claims } = claimed(piecesOf(line, context) ?? [], context.hearing.said);
  const says = new Set(claims.map((claim) => claim?.is));
  if (says.has('denial')) return ['no'];
  return says.has('hedge') || says.has('ask') ? ['yes', 'no'] : ['yes'];
}

/** One may be chance. */
const fewestShared = 2;
const fewestLetters = 4;
const tellingRoots = (text: string): readonly string[] =>
  (text.match(/\p{L}+/gu) ?? []).filter(({ length }) => length >= fewestLetters).flatMap(rootsOf);
