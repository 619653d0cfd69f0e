// Whoever puts themselves right within one line: `flange 1 brush... no wait, I mean flange 5`, `910 de A, digo 901, y de B 899`. What
// is said behind it stands in the place of the last thing of its kind; nothing that was said before that line is touched.

import { type Said, saysAt, wordsOf } from '../as-said/words.ts';
import type { LineContext } from '../reading.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { asTaps, type Understands } from '../understood.ts';

/** `reads`: the line as it was meant. */
export const selfCorrected =
  (reads: Understands): Understands =>
  (line, context, strictly) => {
    if (line.endsWith('?')) return undefined;
    const words = wordsOf(line);
    for (let at = 1; at < words.length - 1; at++) {
      const to = markEnd(words, at, line, context);
      if (to === undefined) continue;
      const meant = inItsPlace(
        line.slice(0, words[at]?.start).replace(/[\s,;:.…–-]+$/u, ''),
        line.slice(words[to]?.start),
        context,
      );
      const found = meant === undefined ? undefined : reads(meant, context, strictly);
      if (found !== undefined) return asTaps(found);
    }
    return undefined;
  };

/** Where what was meant begins; a small word, `sorry`, only behind a mark. */
function markEnd(words: readonly Said[], at: number, line: string, { hearing }: LineContext): number | undefined {
  const before = words[at - 1];
  const isMarked = before !== undefined && /[,;:.…–-]/u.test(line.slice(before.end, words[at]?.start));
  const { midLine, midLineMarked } = hearing.otherwise;
  let to = at;
  for (;;) {
    const phrase = [...midLine, ...(isMarked ? midLineMarked : [])].find(
      (each) => saysAt(words, to, each) && !isContrast(words, to, each, line),
    );
    if (phrase === undefined) return to === at ? undefined : to;
    to += phrase.split(' ').length;
  }
}

/** `es 8802, no 8820`: without a mark behind it, it says what it is not. */
const isContrast = (words: readonly Said[], at: number, phrase: string, line: string): boolean =>
  phrase === 'no' && !/[,;:.…–-]/u.test(line.slice(words[at]?.end, words[at + 1]?.start));

/** `undefined` where the first half holds nothing of the kind. */
function inItsPlace(told: string, instead: string, context: LineContext): string | undefined {
  const before = piecesOf(told, context) ?? [];
  const behind = piecesOf(instead, context) ?? [];
  const { claims } = claimed(behind, context.hearing.said);
  const meant = behind.find((piece, i) => piece.is !== 'word' && claims[i]?.is !== 'light');
  const was = meant && before.findLast((piece) => isOfKind(piece, meant));
  if (meant === undefined || was === undefined) return undefined;
  const at = told.toLowerCase().lastIndexOf(was.typed.toLowerCase());
  const end = instead.toLowerCase().indexOf(meant.typed.toLowerCase()) + meant.typed.length;
  if (at < 0 || end < meant.typed.length) return undefined;
  return told.slice(0, at) + put(was, meant) + told.slice(at + was.typed.length) + instead.slice(end);
}

const isNamed = ({ is }: Piece): boolean => is === 'parts' || is === 'one-of';
const isFigure = ({ is }: Piece): boolean => is === 'figure' || is === 'number';

function isOfKind(was: Piece, meant: Piece): boolean {
  if (was.is === meant.is) return true;
  if (isFigure(was) && isFigure(meant)) return true;
  // `bracket 7, no, 8`
  return (isNamed(was) && (isNamed(meant) || meant.is === 'number')) || (was.is === 'number' && isNamed(meant));
}

/** A bare number takes what it has no word for from what it stands in place of: the name, the unit. */
const put = (was: Piece, meant: Piece): string =>
  meant.is === 'number' && was.is !== 'number' && /\d/.test(was.typed)
    ? was.typed.replace(/\d+(?:[.,]\d+)?/, meant.typed)
    : meant.typed;
