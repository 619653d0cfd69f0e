// How people put right what they have just said, without accents and marks: what begins such a line, and what takes all of it back.

export interface SaidOtherwise {
  /** Whole lines. */
  readonly takesBack: readonly string[];
  /** Begins one, in front of what it should have been. */
  readonly opens: readonly string[];
  /** Only behind one of those. */
  readonly goesOn: readonly string[];
  /** Ends one, and says no more than that it was wrong. */
  readonly closes: readonly string[];
  /** Stands before what it was not. */
  readonly nots: readonly string[];
  /** Round a bare answer. */
  readonly rounds: readonly string[];
}

const listed = (words: string): readonly string[] => words.split(', ');

export const englishSaidOtherwise: SaidOtherwise = {
  takesBack: listed(
    'scratch that, scratch it, scrap that, scrap it, bin that, ignore that, disregard that, wipe that, drop that, undo that, undo it, undo last, delete that, delete it, cancel that, strike that, take that back, remove that, forget that',
  ),
  opens: listed(
    'no, nope, sorry, oops, actually, correction, wrong, my mistake, my bad, i meant, i mean, meant, it was, that was, should be, it should be, should have been, make that, make it, rather',
  ),
  goesOn: listed('it is, its, is, was, to, that is'),
  closes: listed('sorry, my mistake, my bad, my fault, i mixed them up, i got it wrong, typo, oops, please'),
  nots: listed('not, instead of'),
  rounds: listed('it, its, with, by, using, the, one, ones, number'),
};
