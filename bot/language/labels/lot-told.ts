// What is told of a lot: that it is called back or may be used again (`the maker is recalling lot 8820`), and which one a can really has
// (`the lot on can 3 is 7732, not 7731`). Each is a tap: many parts may hang on it.

import { isSaid } from '../as-said/words.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { asksFirst, isUnsaid } from '../slots-heard/unsaid.ts';
import { wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Understands } from '../understood.ts';

export const lotCalledBack: Understands = (line, context, strictly) => {
  const { calledBack, calledOver } = context.hearing.labelled;
  if (line.endsWith('?') || strictly(line).kind === 'command' || !isSaid(line, calledBack)) return undefined;
  const lot = lotIn(line, context);
  if (lot === undefined || asksOrDenies(line, context)) return undefined;
  const told = `lot ${JSON.stringify(lot)} ${JSON.stringify(line)}`;
  // `the recall of lot 8820 is over`
  const lines = isSaid(line, calledOver) ? [`recall-over ${told}`] : [`recall ${told}`];
  return { is: 'likely', lines };
};

export const lotOfCan: Understands = (line, context, strictly) => {
  if (line.endsWith('?') || strictly(line).kind === 'command') return undefined;
  const pieces = piecesOf(line, context) ?? [];
  const [can, another] = pieces.flatMap((piece) => (piece.is === 'can' ? [piece.number] : []));
  if (can === undefined || another !== undefined || !tokenize(line, context.hearing).some(isLabel(context))) {
    return undefined;
  }
  const { claims } = claimed(pieces, context.hearing.said);
  const numbers = pieces.flatMap((piece, i) => (piece.is === 'number' ? [{ text: piece.text, at: i }] : []));
  const isNot = (at: number): boolean => claims[at - 1]?.is === 'denial';
  const [is, other] = numbers.filter(({ at }) => !isNot(at));
  const isAct = claims.some((claim) => claim?.is === 'act' || claim?.is === 'hedge' || claim?.is === 'ask');
  if (is === undefined || other !== undefined || isAct || asksFirst(pieces, claims, context.hearing.said))
    return undefined;
  const amend = `amend ${can} open lot ${is.text} ${JSON.stringify(line)}`;
  return strictly(amend).kind === 'command' ? { is: 'likely', lines: [amend] } : undefined;
};

const isLabel =
  ({ hearing }: LineContext) =>
  (token: Parameters<typeof wordIn>[0]): boolean =>
    wordIn(token) === 'lot' || hearing.labels.get(wordIn(token)) === 'lot';

/** What stands behind the word for it. */
function lotIn(line: string, context: LineContext): string | undefined {
  const tokens = tokenize(line, context.hearing);
  const at = tokens.findIndex(isLabel(context));
  const token = at < 0 ? undefined : tokens[at + 1];
  if (token === undefined || !/\d/.test(token.text)) return undefined;
  return token.kind === 'quoted' ? token.words : token.text;
}

function asksOrDenies(line: string, context: LineContext): boolean {
  const pieces = piecesOf(line, context) ?? [];
  return isUnsaid(pieces, claimed(pieces, context.hearing.said), context.hearing.said);
}
