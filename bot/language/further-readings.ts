// The readings that a line goes to which the strict reader cannot read, in their order: the first that understands it counts.

import { known } from '../../core/known.ts';
import { actsInTurn } from './acts-in-turn.ts';
import { asSaid, type Plainly, plainlySaid } from './as-said/as-said.ts';
import type { Heard } from './as-said/heard.ts';
import { askedInWords, askedMostly, askedOutright, namedAlone } from './asked/asked.ts';
import { askedFor, askedForPlainly } from './asked-for/asked-for.ts';
import { labelSaid } from './labels/label-said.ts';
import { actsJoint, linesApart } from './lines-apart.ts';
import { partTold } from './parts-in/part-told.ts';
import { partsCameIn } from './parts-in/parts-came-in.ts';
import type { LineContext } from './reading.ts';
import { actsApart } from './said-of-last/acts-apart.ts';
import { bareAnswer } from './said-of-last/bare-answer.ts';
import { correction, nothingToPutRight } from './said-of-last/correction.ts';
import { offeredAct } from './said-of-last/offered-act.ts';
import { ownWordsAnswer, reasonAnswer } from './said-of-last/reason-answer.ts';
import { sameFor } from './said-of-last/same-for.ts';
import { withoutAsides } from './sayings/asides.ts';
import { actOfLine, likeliestActs, likeliestBeside, shareOf } from './sayings/likeliest.ts';
import { mixOrdered } from './sayings/mix-ordered.ts';
import { actRows } from './slots-heard/act-rows.ts';
import { onlyAsksOrDenies, slotsHeard } from './slots-heard/slots-heard.ts';
import { isSaidAct } from './tongues/said-words.ts';
import { withoutAccents } from './typed/without-accents.ts';
import { asTaps, type Strictly, type Understands, type Understood } from './understood.ts';
import { numberOfPart } from './verb-and-number.ts';

/** A reading that may want the line in figures, which is put so once for all of them. */
type InFigures = (
  ...[line, context, strictly, plainly]: [...Parameters<Understands>, Plainly]
) => Understood | undefined;

/** Each way to say the line in figures goes on: what is sure stays so only where the line has one such way. */
const inFigures =
  (reading: Understands, put: (each: Heard) => Heard = (each) => each): InFigures =>
  (_, context, strictly, plainly) => {
    const heard = plainly().map(put);
    const found = heard.flatMap((each) => {
      const made = reading(each.line, context, strictly);
      return made === undefined ? [] : [made];
    });
    const [first] = found;
    if (first === undefined) return undefined;
    if (first.is !== 'likely' && found.length === 1 && heard[0]?.isSure === true) return first;
    const taps = found.map(asTaps);
    const [untaken] = taps.flatMap((each) => (each.untaken === undefined ? [] : [each.untaken]));
    return { is: 'likely', lines: [...new Set(taps.flatMap(({ lines }) => lines))], ...known({ untaken }) };
  };

const unlisted = ({ line, isSure, unlisted: before = line }: Heard): Heard => ({ line: before, isSure });

/** A question records nothing: it is asked in the first figures that it can be put in. */
const inFirstFigures =
  (reading: Understands): InFigures =>
  (line, context, strictly, plainly) =>
    reading(plainly()[0]?.line ?? line, context, strictly);

/** `me preparas 3 kilos?`, `puedes apuntar superficie 21 grados`: what it asks to be noted is a tap; `prepara 3 kilos` is an order. */
const requested: Understands = (line, context, strictly) => {
  const alone = requestAt(line, context, strictly);
  if (alone !== undefined) return alone;
  // `23 grados, 47 de humedad y quiero kilo y medio`: what is told first is told.
  for (const { 0: joint, index } of line.matchAll(/[,;.]+ (?:[a-z] )?| [a-z] /gi)) {
    const asked = requestAt(line.slice(index + joint.length), context, strictly);
    if (asked === undefined) continue;
    const told = line.slice(0, index);
    const before = strictlyTold(told, strictly) ?? readFurther(told, context, strictly, plainlySaid(told, context));
    return before === undefined ? undefined : bothDone(before, asked, strictly);
  }
  return undefined;
};

function bothDone(before: Understood, asked: Understood, strictly: Strictly): Understood | undefined {
  if (before.is === 'sure' && asked.is === 'sure' && isDone(before.line, strictly))
    return { is: 'several', lines: [before.line, asked.line] };
  const ways = asTaps(before).lines.filter((way) => isDone(way, strictly));
  const each = ways.flatMap((way) => asTaps(asked).lines.map((request) => `${way}${actsJoint}${request}`));
  return each.length === 0 ? undefined : { is: 'likely', lines: [...new Set(each)].slice(0, mostWays) };
}

const isDone = (way: string, strictly: Strictly): boolean =>
  linesApart(way).every((each) => strictly(each).kind === 'command');

/** Three are shown. */
const mostWays = 3;

function requestAt(line: string, context: LineContext, strictly: Strictly): Understood | undefined {
  const typed = withoutAccents(line.toLowerCase()).replace(/^¿/, '');
  for (const { said, verb, upTo, isOrder } of context.hearing.said.requests) {
    const asked = said.exec(typed);
    if (asked === null) continue;
    const behind = line.replace(/^¿/, '').slice(asked[0].length);
    const cut = upTo === undefined ? -1 : typed.slice(asked[0].length).search(upTo);
    const rests = [...(cut < 0 ? [] : [behind.slice(0, cut)]), behind].map(
      (each) => verb + each.replace(/[?!. ]+$/, ''),
    );
    for (const rest of new Set(rests)) {
      const taken = strictlyTold(rest, strictly) ?? toldOf(rest, context, strictly);
      if (taken !== undefined && linesOf(taken).every((each) => linesApart(each).length === 1))
        return isOrder === true ? taken : asTaps(taken);
    }
  }
  return undefined;
}

const linesOf = (found: Understood): readonly string[] => asTaps(found).lines;

const toldOf: Understands = (rest, context, strictly) => {
  const plainly = plainlySaid(rest, context);
  return asSaid(rest, context, strictly, plainly) ?? inFigures(slotsHeard)(rest, context, strictly, plainly);
};

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

/** What puts the last act right, then a question about the state, what answers the last card, and an act told in the speaker's own words. */
const further: readonly InFigures[] = [
  actsApart,
  labelSaid,
  inFigures(partTold, unlisted),
  requested,
  corrected,
  inFigures(sameFor),
  asksToMix,
  askedForPlainly,
  inFirstFigures(askedInWords),
  bareAnswer,
  reasonAnswer,
  askedFor,
  inFirstFigures(askedOutright),
  asSaid,
  partsCameIn,
  numberOfPart,
  inFigures(actsInTurn),
  inFigures(slotsHeard),
  inFigures(likeliestActs),
  offeredAct,
  ownWordsAnswer,
  inFirstFigures(askedMostly),
  inFirstFigures(namedAlone),
  nothingToPutRight,
];

/** What puts right, or asks for something, is no act besides. */
const noAct: ReadonlySet<InFigures> = new Set([corrected, askedForPlainly, askedFor]);

/** `le pusieron gas al bote 3`: whoever writes without marks asks it in the same words, so that a tap says which. */
const mayBeAsked = (line: string, { hearing }: LineContext): boolean =>
  hearing.tongues.some(({ questions }) => questions.mayAsk?.test(withoutAccents(line.toLowerCase())) === true);

/** Without what is said beside it; else as it stands. */
export function understood(line: string, context: LineContext, strictly: Strictly): Understood | undefined {
  const plainly = plainlySaid(line, context);
  return toldWithoutAsides(line, context, strictly, plainly) ?? readFurther(line, context, strictly, plainly);
}

function toldWithoutAsides(...[line, context, strictly, plainly]: Parameters<InFigures>): Understood | undefined {
  const [plain, otherwise] = plainly();
  const told = plain === undefined || otherwise !== undefined ? undefined : withoutAsides(plain.line, context);
  // `81, los guantes`: what is said beside it may tell that it puts something right.
  if (told === undefined || corrected(line, context, strictly, plainly) !== undefined) return undefined;
  const found = strictlyTold(told, strictly) ?? readFurther(told, context, strictly, plainlySaid(told, context));
  return found === undefined || plain?.isSure === true ? found : asTaps(found);
}

function strictlyTold(told: string, strictly: Strictly): Understood | undefined {
  const came = strictly(told);
  return came.kind === 'command' ? { is: 'sure', line: told } : undefined;
}

function readFurther(...[line, context, strictly, plainly]: Parameters<InFigures>): Understood | undefined {
  let ahead: Likely | undefined;
  for (const reading of further) {
    if (ahead?.mayBeElse === 'an answer' && reading !== bareAnswer) continue;
    const found = reading(line, context, strictly, plainly);
    if (found === undefined) continue;
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

/** A question records nothing: it is answered. */
const isOnlyAsked = (found: Understood, strictly: Strictly): boolean =>
  found.is === 'sure' && strictly(found.line).kind === 'question';

/** What is asked is no tap beside an act. */
function bothOf(ahead: Likely, other: Understood, strictly: Strictly): Likely {
  const lines = asTaps(other).lines.filter((each) => strictly(each).kind !== 'question');
  return { ...ahead, lines: [...new Set([...ahead.lines, ...lines])] };
}

/** What both make of it is taken where its words leave no doubt; else ahead of what was found stands what the line speaks for more. */
function bothLikely(found: Likely, other: Understood, context: LineContext, line: string): Understood {
  const more = asTaps(other);
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
