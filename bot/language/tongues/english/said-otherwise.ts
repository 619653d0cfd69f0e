// How people put right what they have just said, without accents and marks: what begins such a line, and what takes all of it back.

export interface SaidOtherwise {
  /** All of it was a slip. */
  readonly takesBack: readonly string[];
  /** It was one, and no more is said. */
  readonly wrongs: readonly string[];
  /** Stands in front of what it should have been. */
  readonly opens: readonly string[];
  /** Only behind one of those. */
  readonly goesOn: readonly string[];
  /** Behind what it should have been, and says no more than that it was wrong. */
  readonly closes: readonly string[];
  /** Stands before what it was not. */
  readonly nots: readonly string[];
  /** Behind that, before what it should have been. */
  readonly instead: readonly string[];
  /** Begins why it is taken back. */
  readonly explains: readonly string[];
  /** What was said has its two the wrong way about. */
  readonly swaps: readonly string[];
  /** Before the letter of a part. */
  readonly beforeLetter: readonly string[];
  /** Tells one thing more, and puts nothing right. */
  readonly besides: readonly string[];
  /** Puts right what was told before, of whatever is named. */
  readonly setsRight: readonly string[];
  /** Within a line: what follows stands in the place of what was just said. */
  readonly midLine: readonly string[];
  /** The same only behind a mark. */
  readonly midLineMarked: readonly string[];
  /** Round a bare answer. */
  readonly rounds: readonly string[];
  /** One of them or several are a yes. */
  readonly agrees: readonly string[];
}

const listed = (words: string): readonly string[] => words.split(', ');
const each = (first: string, then: string): readonly string[] =>
  listed(first).flatMap((one) => listed(then).map((other) => `${one} ${other}`));

const lastSaid =
  'that, it, this, last, the last, that last, the last one, that last one, last one, that one, this one, the last entry, last entry, that entry, my last entry, my last, the last bit, that bit, what i said, what i just said, what i just wrote';

const turnedRound =
  'other way round, the other way round, other way around, the other way around, other way about, the other way about, opposite way round, wrong way round, the wrong way round, wrong way around, the wrong way around, way round wrong, swapped, flipped, reversed, the reverse, backwards, backward, back to front, switched';

export const englishSaidOtherwise: SaidOtherwise = {
  takesBack: [
    ...each(
      'scratch, scrap, bin, ignore, disregard, wipe, drop, undo, delete, cancel, strike, remove, erase',
      lastSaid,
    ),
    ...each('revert, reverse, void, take back, kill, lose, get rid of, clear', lastSaid),
    ...each('never mind, forget', 'that, the last one, that last one, that one, the last entry, what i said'),
    ...listed('take that back, take it back, take that off, take that out, take that one back'),
  ],
  wrongs: [
    ...each(
      'wrong, the wrong, thats the wrong',
      'one, part, pot, batch, can, number, figure, piece, line, button, key',
    ),
    ...listed('oops, ooops, whoops, woops, typo, my mistake, my bad, my fault, i got it wrong, i made a mistake, nvm'),
    ...listed('never mind, nevermind, forget it, that was wrong, thats wrong, thats not right, that is wrong, mistake'),
    ...listed('fat thumb, fat fingers, fat finger, misclick, i mistyped, mistyped, crap, damn, dang, shoot, darn'),
  ],
  opens: [
    ...listed(
      'no, nope, nah, sorry, actually, correction, correct that, correct it, wrong, wait, hang on, hold on, please',
    ),
    ...listed(
      'i meant, i mean, meant, it was, that was, it is, should be, it should be, should have been, it should have',
    ),
    ...listed('it should have been, that should have been, that should be, shouldve been, i said, i did say, i wanted'),
    ...listed(
      'make that, make it, rather, change that to, change it to, change to, put, i used, we used, it has to be',
    ),
    ...listed(
      'i beg your pardon, beg your pardon, pardon, pardon me, excuse me, scusi, um, uh, er, ah, oh, hey, ok, no i',
    ),
    ...each(
      'that number, that reading, that figure, that one, that, it',
      'belongs to, was for, is for, was on, goes to',
    ),
    ...listed('should have said, i should have said, shouldve said, should have put, i should have put, shouldve put'),
    ...listed(
      'meant to say, meant to put, meant to type, meant to write, i meant to say, i meant to put, what i meant was',
    ),
    ...listed('my mistake it was, in fact, it actually was, the right one is, it read, it reads, that is, it were'),
  ],
  goesOn: listed(
    'it is, its, is, was, to, that is, just, more like, only, really, actually, about, around, like, meant, say, on, in',
  ),
  closes: [
    ...listed(
      'sorry, sorry about that, my mistake, my bad, my fault, i mixed them up, i got it wrong, typo, oops, please',
    ),
    ...listed('i mean, i meant, i swapped the digits, i swapped them, swapped the digits, digits swapped, fat thumb'),
    ...listed(
      'fat fingers, fat finger, when i finished that, when i did that, when i did it, when i said that, instead',
    ),
    ...listed(
      'sorry fat thumb, actually, did it, did that, did that one, i did, we did, i used, we used, was it, then, i think it was me, misread it, i misread',
    ),
  ],
  nots: listed(
    'not, instead of, and not, i didnt, i did not, we didnt, i didnt use, i did not use, we didnt use, it wasnt, that wasnt, it was not, that was not, it isnt, that isnt, rather than',
  ),
  instead: listed('it was, that was, i used, we used, but, but rather, its, it is, i meant, should be'),
  explains: listed(
    'its, shes, hes, theyre, it is, it was, i, had, because, cause, coz, since, still, was, we, he, she, they, wrong, the, my, nothing, that was',
  ),
  swaps: [
    ...each(
      'got them, i got them, put them, i put them, had them, i had them, wrote them, i wrote them, them, those, its, was, thats, theyre',
      turnedRound,
    ),
    ...listed(turnedRound),
    ...listed('swapped them, swapped those, swapped the two, swap them, swap those, swap the two, swap it, flip them'),
    ...listed('flip those, flip the two, reverse them, reverse those, switch them, switched them, mixed them up'),
    ...listed('got them mixed up, vice versa'),
  ],
  beforeLetter: listed('of, part, of part, for, for part, and, component'),
  besides: listed('also, too, another'),
  midLine: listed(
    'no wait, wait no, no sorry, sorry no, no i mean, i mean, no i meant, i meant, scratch that, strike that, make that, no make that, or rather, no rather, no no, no actually, actually no, er no, oh no, no hang on, no hold on, my mistake',
  ),
  midLineMarked: listed('no, sorry, wait, correction, actually, oops, whoops, rather, ach no, naw'),
  setsRight: listed('really, actually, in fact, in truth, in reality'),
  rounds: listed(
    'weve, ive, theres, here, told, you, some, it, its, with, by, using, the, one, ones, number, i, we, got, have, there, is, was, use, used, using, put, say, said, on, can, about, yes, yep, yeah, ok, okay, um, uh, er, so, well, like, that, this, actually, are, its, now, gone, right, hi, n, obvs, obviously, lol, mate, man, bro, dude, duh, course, ofc, boss, thanks, cheers, ta, please, pls, sorry, sry, then, done, always, as, usual, usually, same',
  ),
  agrees: listed(
    'yes, yep, yeah, yup, ya, aye, sure, sure thing, correct, right, exactly, thats it, thats right, thats the one, that one, this one, do it, do that, go ahead, go on, go for it, spot on, indeed, of course, absolutely, affirmative, confirm, confirmed',
  ),
};
