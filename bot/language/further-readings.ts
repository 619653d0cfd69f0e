// The readings that a line goes to which the strict reader cannot read, in their order: the first that understands it counts.

import { actsInTurn } from './acts-in-turn.ts';
import { asSaid, plainlySaid } from './as-said/as-said.ts';
import { askedInWords, askedMostly, askedOutright, namedAlone } from './asked/asked.ts';
import { askedFor, askedForPlainly } from './asked-for/asked-for.ts';
import { remindSaid } from './asked-for/remind-said.ts';
import { clauseByClause } from './clause-by-clause.ts';
import { type InFigures, inFigures, inFirstFigures, unlisted } from './in-figures.ts';
import { checkSaid } from './instrument-said.ts';
import { labelSaid } from './labels/label-said.ts';
import { lotCalledBack, lotOfCan } from './labels/lot-told.ts';
import { linesApart } from './lines-apart.ts';
import { knownPartTold } from './parts-in/known-part-told.ts';
import { partTold } from './parts-in/part-told.ts';
import { partsCameIn } from './parts-in/parts-came-in.ts';
import type { LineContext } from './reading.ts';
import { requestedMostly, requestedOf, strictlyTold } from './requested.ts';
import { actsApart } from './said-of-last/acts-apart.ts';
import { answerInSentence } from './said-of-last/answer-in-sentence.ts';
import { bareAnswer } from './said-of-last/bare-answer.ts';
import { coatPutRight } from './said-of-last/coat-put-right.ts';
import { correction, nothingToPutRight } from './said-of-last/correction.ts';
import { nextPartRead } from './said-of-last/next-part-read.ts';
import { offeredAct } from './said-of-last/offered-act.ts';
import { ownWordsAnswer, reasonAnswer } from './said-of-last/reason-answer.ts';
import { sameFor } from './said-of-last/same-for.ts';
import { selfCorrected } from './said-of-last/self-corrected.ts';
import { withoutAsides, withoutClean } from './sayings/asides.ts';
import { conceded } from './sayings/conceded.ts';
import { actOfLine, likeliestActs, likeliestBeside, shareOf } from './sayings/likeliest.ts';
import { mixOrdered } from './sayings/mix-ordered.ts';
import { turnedRound, withoutReason } from './sayings/reason-apart.ts';
import { withoutThereupon, withoutTime, withoutWhich } from './sayings/time-apart.ts';
import { withoutHeld, withoutUnnamed } from './sayings/unnamed-beside.ts';
import { actRows } from './slots-heard/act-rows.ts';
import { onlyAsksOrDenies, slotsHeard } from './slots-heard/slots-heard.ts';
import { testTold } from './test-told.ts';
import { isSaidAct } from './tongues/said-words.ts';
import { withoutAccents } from './typed/without-accents.ts';
import { asTaps, type Strictly, type Understood } from './understood.ts';
import { numberOfPart } from './verb-and-number.ts';

/** `por qué no puedo pintar la 8` takes nothing back, though it holds a no. Figures in words are put so where they have one way. */
const corrected: InFigures = (line, context, strictly, plainly) => {
  if (asksWhyFirst(line, context)) return undefined;
  const [plain, otherwise] = plainly();
  const isPlain = plain?.isSure === true && otherwise === undefined && plain.line !== line;
  return correction(line, context, strictly) ?? (isPlain ? correction(plain.line, context, strictly) : undefined);
};

const asksWhyFirst = (line: string, { hearing }: LineContext): boolean =>
  hearing.tongues.some(({ questions: { why } }) => {
    const upTo = why.word.exec(withoutAccents(line.toLowerCase()).replace('¿', ''))?.[0];
    return upTo !== undefined && upTo.trim().split(' ').length <= mostBeforeWhy;
  });

/** `por que` are two. */
const mostBeforeWhy = 2;

/** Only where it has the form of a question: any other order is read as an act. */
const asksToMix: InFigures = (line, context, strictly, plainly) =>
  line.endsWith('?') || onlyAsksOrDenies(line, context)
    ? inFigures(mixOrdered)(line, context, strictly, plainly)
    : undefined;

/** `flange 1, no wait, flange 5` */
const ownCorrection = selfCorrected((line, context, strictly) => understood(line, context, strictly));

/** What puts the last act right, then a question about the state, what answers the last card, and an act told in the speaker's own words. */
const further: readonly InFigures[] = [
  remindSaid,
  ownCorrection,
  actsApart,
  coatPutRight,
  lotCalledBack,
  checkSaid,
  lotOfCan,
  labelSaid,
  inFigures(partTold, unlisted),
  inFigures(knownPartTold),
  requestedOf(toldFirst),
  corrected,
  inFigures(sameFor),
  inFigures(nextPartRead),
  asksToMix,
  requestedMostly,
  askedForPlainly,
  inFirstFigures(askedInWords),
  bareAnswer,
  reasonAnswer,
  askedFor,
  inFirstFigures(askedOutright),
  conceded,
  asSaid,
  partsCameIn,
  numberOfPart,
  inFigures(actsInTurn),
  inFigures(slotsHeard),
  inFigures(likeliestActs),
  offeredAct,
  answerInSentence,
  ownWordsAnswer,
  inFirstFigures(askedMostly),
  inFirstFigures(namedAlone),
  nothingToPutRight,
];

/** What puts right, or asks for something, is no act besides. */
const noAct: ReadonlySet<InFigures> = new Set([ownCorrection, corrected, askedForPlainly, askedFor]);

/** `le pusieron gas al bote 3`: whoever writes without marks asks it in the same words, so that a tap says which. */
const mayBeAsked = (line: string, { hearing }: LineContext): boolean =>
  hearing.tongues.some(({ questions }) => questions.mayAsk?.test(withoutAccents(line.toLowerCase())) === true);

/** Without what is said beside it; else as it stands. */
export function understood(typed: string, all: LineContext, strictly: Strictly): Understood | undefined {
  const found = understoodIn(typed, all, strictly);
  return found?.is === 'likely' ? { ...found, lines: withoutHeld(found.lines) } : found;
}

function understoodIn(typed: string, all: LineContext, strictly: Strictly): Understood | undefined {
  // Before what only says that all is as it should be: `no holidays at 500 V` is a test.
  const test = testTold(typed, all, strictly);
  if (test !== undefined) return test;
  const line = withoutClean(typed, all);
  const context: LineContext = line === typed ? all : { ...all, saysClean: true };
  const told = line === typed ? undefined : strictlyTold(line, strictly);
  if (told !== undefined) return told;
  const plainly = plainlySaid(line, context);
  const found = toldWithoutAsides(line, context, strictly, plainly) ?? readFurther(line, context, strictly, plainly);
  if (found !== undefined && (found.is !== 'likely' || found.untaken === undefined)) return found;
  const [plain, otherwise] = plainly();
  if (plain === undefined || otherwise !== undefined) return found;
  const reads = (clause: string): Understood | undefined => actTold(clause, context, strictly);
  const readsLabel = (clause: string): Understood | undefined =>
    labelSaid(clause, context, strictly, plainlySaid(clause, context));
  return clauseByClause(plain.line, found, { context, strictly, reads, readsLabel });
}

function toldWithoutAsides(...[line, context, strictly, plainly]: Parameters<InFigures>): Understood | undefined {
  const [plain, otherwise] = plainly();
  if (plain === undefined || otherwise !== undefined) return undefined;
  const meant = withoutWhich(plain.line, context);
  const without = withoutReason(meant ?? plain.line, context);
  const bare = withoutAsides(without?.line ?? meant ?? plain.line, context) ?? without?.line ?? meant;
  const timed = withoutTime(bare ?? plain.line, context);
  const inTurn = withoutThereupon(timed?.line ?? bare ?? plain.line, context) ?? timed?.line ?? bare;
  const told = turnedRound(inTurn ?? plain.line, context) ?? inTurn;
  // `81, los guantes`: what is said beside it may tell that it puts something right.
  if (told === undefined || corrected(line, context, strictly, plainly) !== undefined) return undefined;
  if (ownCorrection(line, context, strictly) !== undefined) return undefined;
  const found = toldFirst(told, context, strictly);
  if (found === undefined || (without !== undefined && takesReason(found))) return undefined;
  if (timed !== undefined) return isOnlyAsked(found, strictly) ? undefined : leavingOut(found, timed.when);
  const isSure = plain.isSure && without?.isNamed !== true;
  return isSure || isOnlyAsked(found, strictly) ? found : asTaps(found);
}

function leavingOut(found: Understood, words: string): Understood {
  const taps = asTaps(found);
  return { ...taps, untaken: [...(taps.untaken ?? []), words] };
}

/** What a clause tells that was done. */
const tellsAct: readonly InFigures[] = [
  ...[inFigures(partTold, unlisted), inFigures(knownPartTold), asSaid, numberOfPart],
  ...[inFigures(actsInTurn), inFigures(slotsHeard), inFigures(likeliestActs)],
];

function actTold(clause: string, context: LineContext, strictly: Strictly): Understood | undefined {
  const plainly = plainlySaid(clause, context);
  for (const reading of tellsAct) {
    const found = reading(clause, context, strictly, plainly);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** `hold 9 because of the runs`: the reason is told with it. */
const takesReason = (found: Understood): boolean =>
  asTaps(found)
    .lines.flatMap(linesApart)
    .map(actOfLine)
    .some((act) => isSaidAct(act) && actRows[act].takes?.includes('reason') === true);

/** What is told ahead of a request. */
function toldFirst(told: string, context: LineContext, strictly: Strictly): Understood | undefined {
  return strictlyTold(told, strictly) ?? readFurther(told, context, strictly, plainlySaid(told, context));
}

function readFurther(...[line, context, strictly, plainly]: Parameters<InFigures>): Understood | undefined {
  let ahead: Likely | undefined;
  for (const reading of further) {
    if (ahead?.mayBeElse === 'an answer' && reading !== bareAnswer) continue;
    const found = reading(line, context, strictly, plainly);
    if (found === undefined || (!noAct.has(reading) && asksRather(found, line, context))) continue;
    if (ahead !== undefined) return bothOf(ahead, found, strictly);
    if (found.is === 'likely' && found.mayBeElse !== undefined) {
      ahead = found;
      continue;
    }
    if (found.is !== 'likely')
      return mayBeAsked(line, context) && !noAct.has(reading) && !isOnlyAsked(found, strictly) ? asTaps(found) : found;
    if (noAct.has(reading)) return found;
    const weighed = inFigures(likeliestBeside)(line, context, strictly, plainly);
    return weighed === undefined ? found : bothLikely(found, weighed, context, line);
  }
  return ahead;
}

/** `can u pull up all that was done`: a word of an act in a line that asks, and hardly speaks for that act. */
function asksRather(found: Understood, line: string, context: LineContext): boolean {
  if (found.is !== 'likely') return false;
  const weighed = context.hearing.weighed.weigh(line);
  const asks = weighed.find(({ meaning }) => meaning === 'asking')?.share ?? 0;
  return asks >= mostlyAsks && found.lines.every((each) => shareOf(each, weighed) < hardlyTold);
}
const mostlyAsks = 0.5;
const hardlyTold = 0.05;

/** A question records nothing: it is answered. */
const isOnlyAsked = (found: Understood, strictly: Strictly): boolean =>
  found.is === 'sure' && strictly(found.line).kind === 'question';

/** What is asked is no tap beside an act. */
function bothOf(ahead: Likely, other: Understood, strictly: Strictly): Likely {
  const lines = asTaps(other).lines.filter((each) => strictly(each).kind !== 'question');
  return { ...ahead, lines: [...new Set([...ahead.lines, ...lines])] };
}

/** What both make of it is taken where its words leave no doubt; else ahead of what was found stands what the line speaks for more. */
function bothLikely(all: Likely, other: Understood, context: LineContext, line: string): Understood {
  const more = asTaps(other);
  const named = withoutUnnamed(all.lines, line, context);
  const found = named.length === all.lines.length ? all : { ...all, lines: named.length > 0 ? named : more.lines };
  const isSame = found.untaken === undefined && found.lines.includes(more.lines[0] ?? '');
  if (other.is !== 'likely' && isSame && !mayBeAsked(line, context)) return other;
  const [told = ''] = found.lines;
  // `slid 7 in the oven, she's set for 194`: the line as a whole tells what a clause of it left untold.
  if (found.untaken !== undefined && more.lines[0]?.startsWith(`${told} `) === true) return more;
  const [whole] = more.lines;
  const isMore = whole !== undefined && tellsMore(whole, told);
  const weighed = context.hearing.weighed.weigh(line);
  const most = Math.max(...found.lines.map((each) => shareOf(each, weighed)));
  // One of several acts that were found together stands behind them.
  const ofSeveral = new Set(found.lines.map(linesApart).flatMap((acts) => (acts.length > 1 ? acts : [])));
  const likelier = more.lines.filter((each) => shareOf(each, weighed) > most || isInstead(each, told));
  const alone = likelier.filter((each) => !ofSeveral.has(each));
  return { ...found, lines: [...new Set([...(isMore ? [whole] : []), ...alone, ...found.lines, ...likelier])] };
}

/** `surface flange-2 19C` for `temp flange-2 19C`. */
function isInstead(line: string, other: string): boolean {
  const act = actOfLine(other);
  return isSaidAct(act) && actRows[act].instead === actOfLine(line);
}

/** `weigh 1 1203g 1199g` and `weigh 1 b 1199g`: of one act, all the figures of the other and more. */
function tellsMore(line: string, other: string): boolean {
  const [verb, ...words] = line.split(' ');
  const [otherVerb, ...others] = other.split(' ');
  const isFigure = (word: string): boolean => /\d/.test(word);
  const figures = words.filter(isFigure);
  const fewer = others.filter(isFigure);
  return verb === otherVerb && figures.length > fewer.length && fewer.every((word) => figures.includes(word));
}

type Likely = Extract<Understood, { is: 'likely' }>;
