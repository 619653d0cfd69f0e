// Why, in the speaker's own words, where a card asked for it: `a long run on the edge`.

import { fieldsOf } from '../line-fields.ts';
import type { LineContext } from '../reading.ts';
import { rootsOf } from '../sayings/signs.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import type { SaidMeaning } from '../tongues/sayings-typed.ts';
import type { Strictly, Understands } from '../understood.ts';
import { beforeFields, longestAnswer } from './bare-answer.ts';
import { mayBeBare } from './may-be-bare.ts';

/** So clearly such words are said of why that is done, and of nothing else. */
const surely = 0.6;

/** Taken where its words speak for what is to be accounted for, and it names nothing else. */
export const reasonAnswer: Understands = (line, context, reads) => {
  const [only, ...others] = reasonsIn(line, context, reads);
  if (only === undefined || others.length > 0 || onlyAsksOrDenies(line, context)) return undefined;
  const read = reads(only);
  const [top] = context.hearing.weighed.weigh(line);
  const isOfIt = top !== undefined && top.share >= surely && only.startsWith(`${top.meaning} `);
  return isOfIt && isAllOfIt(line, top.meaning, context) && read.kind === 'command' && mayBeBare(read, false)
    ? { is: 'sure', line: only }
    : undefined;
};

/** `orange peel is gone now` holds a word that is none of the reasons. */
function isAllOfIt(line: string, meaning: SaidMeaning, context: LineContext): boolean {
  const { said, weighed } = context.hearing;
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, said);
  return pieces.every((piece, i) => {
    if (piece.is !== 'word') return false;
    const saysNothing = claims[i]?.is === 'light' || claims[i]?.is === 'filler';
    return saysNothing || rootsOf(piece.word).every((root) => weighed.speaksFor(root, meaning) > 0);
  });
}

/** Whatever is typed, so it is a tap, and only where nothing else is understood. */
export const ownWordsAnswer: Understands = (line, context, reads) => {
  const lines = reasonsIn(line, context, reads);
  return lines.length === 0 ? undefined : { is: 'likely', lines };
};

function reasonsIn(line: string, { last }: LineContext, reads: Strictly): readonly string[] {
  if (line.endsWith('?') || line.length > longestAnswer || !/\p{L}{3}/u.test(line)) return [];
  const lines = (last?.().open ?? []).flatMap(({ line: each, isAsked }) => {
    const [field, ...more] = fieldsOf(each);
    const isReason = isAsked && more.length === 0 && (field?.id === 'why' || field?.id === 'reason');
    return isReason ? [`${beforeFields(each)} ${JSON.stringify(line)}`] : [];
  });
  return lines.some((each) => reads(each).kind === 'command') ? lines : [];
}
