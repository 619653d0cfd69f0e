// A question about how things stand, in the asker's own words, to its strict line: how long, when, who, where, how hot, how
// much, may I, is it, and what of one thing. It is only ever answered; what asks the listener to do something is no question.

import type { LineContext } from '../reading.ts';
import { manyIn } from '../slots-heard/many-in.ts';
import { claimed } from '../slots-heard/phrases.ts';
import type { Piece } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { termNamed } from '../terms-asked.ts';
import type { QuestionsTyped, TopicAsked } from '../tongues/questions-typed.ts';
import { isSaidAct } from '../tongues/said-words.ts';
import type { Understands } from '../understood.ts';
import { lineOf, standingLine, stateLine, topicLine } from './asked-line.ts';
import { type Asking, askingIn } from './asking.ts';
import { howAsked } from './how-asked.ts';
import { type AskedIn, likeliestAsked, shareOfAsking, shareOfQuestions } from './likeliest-asked.ts';
import { canI, type Said, saidIn } from './said-in.ts';
import { askedWhether, asksWhatRang, meaningAsked, whyAsked } from './why-asked.ts';

/** Nobody asks at such length. */
const longestQuestion = 240;

export const askedInWords: Understands = (line, context) => {
  if (line.length > longestQuestion) return undefined;
  const tongues = context.hearing.tongues.map(({ questions }) => questions).toReversed();
  const read = tongues.map((questions) => ({ questions, asking: askingIn(line, questions, context) }));
  const beginsAsking = read.some(
    ({ questions, asking }) => questions.asking.test(asking.asked) || questions.mayFirst.test(asking.pattern),
  );
  if (!/[?¿]/.test(line) && (beginsAsking ? tellsWith(line, read, context) : tellsAnAct(line, context)))
    return undefined;
  for (const { questions, asking } of read) {
    const strict = explainedBy(asking, questions, context);
    if (strict !== undefined) return { is: 'sure', line: strict };
  }
  if (read.some(({ questions, asking }) => questions.others.test(asking.asked))) return undefined;
  const foundBy = (reading: typeof strictLine): string | undefined => {
    for (const { questions, asking } of read) {
      const strict = reading(asking, questions, context);
      if (strict !== undefined) return strict;
    }
    return undefined;
  };
  const found = foundBy(strictLine) ?? foundBy(bareQuestion);
  const asks = found !== undefined || read.some(({ asking }) => asking.isAsked);
  const asked = asks ? likeliestAsked(line, found, read, context) : undefined;
  // `ya está la 7 en el horno`: where nothing asks for certain, what tells an act tells it.
  const mayTell = !read.some(({ asking }) => asking.isMarked) && tellsAnAct(line, context);
  const strict = asked ?? (asks && !mayTell ? foundBy(fallback) : undefined);
  return strict === undefined ? undefined : { is: 'sure', line: strict };
};

/** `chucked what's left of batch 2 in the drum`: a word that asks elsewhere asks nothing where all the others tell what was done. */
function tellsAnAct(line: string, context: LineContext): boolean {
  const [first] = context.hearing.weighed.weigh(line);
  const isTold = first !== undefined && isSaidAct(first.meaning) && first.share >= clearlyTells;
  return isTold && shareOfAsking(line, context) < hardlyAsks;
}

/** `the pump housing got its coat from batch 1`; what names no part may still ask, as `got enough A for 2 kilos`. */
const tellsOfPart = (line: string, context: LineContext): boolean =>
  tellsAnAct(line, context) && (piecesOf(line, context) ?? []).some(({ is }) => is === 'parts');

const clearlyTells = 0.93;
const hardlyAsks = 0.02;

/** `ya están las tres primeras con brocha`: it may ask as well, but whoever says by what, or what was read, most likely tells it. */
function tellsWith(line: string, read: readonly AskedIn[], context: LineContext): boolean {
  const mayTell = read.some(({ questions, asking }) => questions.tellsToo?.test(asking.asked) === true);
  if (!mayTell || read.some(({ asking }) => asking.isMarked)) return false;
  const pieces = piecesOf(line, context) ?? [];
  const numbers = pieces.filter(({ is }) => is === 'number').length;
  const { claims } = claimed(pieces, context.hearing.said);
  const says =
    numbers > 1 ||
    manyIn({ pieces, claims }, context.hearing.said.lists) !== undefined ||
    pieces.some(({ is }) => is === 'method' || is === 'figure' || is === 'solvent');
  const [first] = context.hearing.weighed.weigh(line);
  const isTold = first !== undefined && isSaidAct(first.meaning) && first.share >= mostlyTells;
  return says && isTold && shareOfAsking(line, context) < hardlyAsks;
}

const mostlyTells = 0.7;

/** `customer wants the serial of 3`: neither its mark nor a word in front asks; its words do. */
const askedByWords =
  (shareOf: typeof shareOfAsking, least: number): Understands =>
  (line, context) => {
    if (line.length > longestQuestion || line.split(' ').length < fewestWords) return undefined;
    if (shareOf(line, context) < least || tellsOfPart(line, context)) return undefined;
    const read = readIn(line, context);
    if (read.some(({ questions, asking }) => questions.others.test(asking.asked))) return undefined;
    const strict = likeliestAsked(line, undefined, read, context);
    return strict === undefined ? undefined : { is: 'sure', line: strict };
  };

/** One word names a thing. */
const fewestWords = 3;

/** `impeller-8`, `batch 2`, `the 8 and the 9`: whoever only names it asks how it stands. A number alone may be a figure of anything. */
export const namedAlone: Understands = (line, context, strictly) => {
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, context.hearing.said);
  const isThing = ({ is }: Piece): boolean => is === 'parts' || is === 'batch' || is === 'can';
  const isOnlyNamed = pieces.every(
    (piece, i) => isThing(piece) || claims[i]?.is === 'light' || claims[i]?.is === 'filler',
  );
  return isOnlyNamed && pieces.some(isThing) && /\p{L}/u.test(line)
    ? askedInWords(`${line}?`, context, strictly)
    : undefined;
};

/** Before any act is read in it. */
export const askedOutright: Understands = askedByWords(shareOfQuestions, 0.9);
/** Where no other reading understands it. */
export const askedMostly: Understands = askedByWords(shareOfAsking, 0.6);

/** The speaker's own tongue last: it tells the most. */
const readIn = (line: string, context: LineContext): readonly AskedIn[] =>
  context.hearing.every.tongues
    .map(({ questions }) => ({ questions, asking: askingIn(line, questions, context) }))
    .toReversed();

/** What a word means; what stands against an act; why. */
function explainedBy(asking: Asking, typed: QuestionsTyped, context: LineContext): string | undefined {
  const { asked, aside } = asking;
  if (asksWhatRang(`${aside ?? ''}${asked}`, context.hearing)) return 'how-stands last-ring';
  const term = typed.readsNow.test(asked) ? undefined : meaningAsked(asked, typed.why, context.hearing);
  if (term !== undefined) return `what-is ${term}`;
  const about = whyAsked(asked, typed.why);
  if (about === undefined) return howAsked(asking, typed, context);
  // `why can't I touch 7 till 9:52`: the hour is what it asks about.
  const [hour] = /\b\d{1,2}:\d\d\b/.exec(about) ?? [];
  if (hour !== undefined) return `why ${hour}`;
  const may = askedWhether(about.replace(typed.why.word, ''), context.hearing);
  if (may === undefined) return `why ${about}`.trim();
  const whether = { ...asking, asked: may, pattern: may, isAsked: true, isStated: false };
  return strictLine(whether, typed, context) ?? bareQuestion(whether, typed, context) ?? 'why not';
}

function strictLine(asking: Asking, typed: QuestionsTyped, context: LineContext): string | undefined {
  const { asked, pattern, isMarked, isAsked, isStated } = asking;
  if (isStated) return undefined;
  let found: Said | undefined;
  // Of most lines nothing is asked: what they name is looked for only where something is.
  const said = (): Said => {
    found ??= saidIn(asking, typed, context);
    return found;
  };
  const topic = isAsked
    ? typed.topics.find((each) => each.said.test(pattern) && isOf(each, said(), pattern, typed))
    : undefined;
  if (topic !== undefined) return topicLine(topic.asks, asked, said(), typed);
  for (const { asks, said: kind, anywhere, marked } of typed.kinds) {
    const at = pattern.search(kind);
    const stands = marked === true ? at >= 0 && isMarked : at === 0 || (at > 0 && (anywhere === true || isMarked));
    const strict = stands ? lineOf(asks, asked, said(), typed) : undefined;
    if (strict !== undefined) return strict;
  }
  return undefined;
}

/** Whether what it names is what that topic is asked of. */
function isOf(
  { asks, notOf, ofPart, ofPerson }: TopicAsked,
  { named, endsPart }: Said,
  pattern: string,
  { who }: QuestionsTyped,
): boolean {
  if (notOf !== undefined && named.includes(notOf)) return false;
  // `how long must 8 cure` is asked of the part, `how long does it cure at 90` of the sheet.
  if (notOf === 'part' && asks.startsWith('sheet-') && endsPart) return false;
  if (ofPerson === true) return named.includes('person') || who.test(pattern);
  return ofPart !== true || named.includes('part') || named.includes('number');
}

/** It asks, and of what nobody can tell: how what it names stands. */
function fallback(asking: Asking, typed: QuestionsTyped, context: LineContext): string | undefined {
  const { asked, isAsked, isMarked } = asking;
  // Figures alone ask of nothing.
  if (!isAsked || !/[a-z]/.test(asked)) return undefined;
  const said = saidIn({ asked, aside: undefined }, typed, context);
  return said.things.length + said.places.length > 0 && (isMarked || !said.beginsInAct)
    ? standingLine(said)
    : undefined;
}

/** `filtered 2?` asks whether it was; `coat impeller-7 1 brush?` whether it may be. */
function bareQuestion(asking: Asking, typed: QuestionsTyped, context: LineContext): string | undefined {
  const { asked, isMarked } = asking;
  if (!isMarked) return undefined;
  if (termNamed(asked, context.hearing) !== undefined) return `what-is ${asked}`;
  const said = saidIn({ asked, aside: undefined }, typed, context);
  const [first = ''] = asked.split(' ');
  if (said.act === undefined) {
    const [only, second] = said.things;
    if (second !== undefined) return standingLine(said);
    return only === undefined ? undefined : `how-long ${only}`;
  }
  return typed.isDone.test(first) || !said.beginsInAct ? stateLine('how-long', said) : canI(said);
}
