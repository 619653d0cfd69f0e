// What a question asks by what its words speak for: where no pattern of it fits, and where one does that hardly any saying bears out.

import { isVerb } from '../../../core/commands.ts';
import type { Hearing } from '../hearing.ts';
import type { LineContext } from '../reading.ts';
import type { Weighed } from '../sayings/weigher.ts';
import { termNamed } from '../terms-asked.ts';
import type { QuestionsTyped } from '../tongues/questions-typed.ts';
import { type AskedMeaning, isAsks } from '../tongues/sayings-typed.ts';
import { lineOf } from './asked-line.ts';
import type { Asking } from './asking.ts';
import { type Said, saidIn } from './said-in.ts';

export interface AskedIn {
  readonly questions: QuestionsTyped;
  readonly asking: Asking;
}

/** What is less likely is not answered. */
const leastShare = 0.15;
/** What a pattern found gives way only to what is as likely as this; so does a question of nothing that is named. */
const leastInstead = 0.5;
/** Borne out so little, what a pattern found is another question. */
const leastBorneOut = 0.03;
/** So likely it must be that the line asks at all, and does not tell or want something. */
const leastAsking = 0.3;
/** The same where it begins as questions do, and what it asks is not clear. */
const leastUnmarked = 0.1;

/** What is asked by words that most questions begin with: of these a pattern tells least. */
const general: ReadonlySet<string> = new Set<AskedMeaning>([
  ...(['can-i', 'how-long', 'who-did', 'how-hot', 'how-much', 'to-do'] as const),
]);

/** `found`: the strict line that a pattern made of it. */
export function likeliestAsked(
  line: string,
  found: string | undefined,
  read: readonly AskedIn[],
  context: LineContext,
): string | undefined {
  const asked = context.hearing.askedWeighed.weigh(line);
  if (found !== undefined && !mayBeOther(found, asked)) return found;
  const heard = heardIn(read, context);
  if (heard === undefined) return found;
  if (found !== undefined)
    return (
      (shareOfAsking(line, context) + shareOfShowing(line, found, context) < leastAsking
        ? undefined
        : lineFor(asked[0], heard, context)) ?? found
    );
  const isClear = heard.asking.isMarked || (asked[0]?.share ?? 0) >= leastInstead;
  if (!isClear && shareOfAsking(line, context) < leastUnmarked) return undefined;
  for (const each of asked) {
    const strict = each.share < leastFor(each.meaning, heard.said) ? undefined : lineFor(each, heard, context);
    if (strict !== undefined) return strict;
  }
  return undefined;
}

/** How likely it is that a line asks. */
export const shareOfAsking = (line: string, { hearing }: LineContext): number =>
  hearing.weighed.shareOf(line, 'asking');

/** The same with each question by itself: where its words are of one, hardly a line that tells an act has as much. */
export const shareOfQuestions = (line: string, { hearing }: LineContext): number =>
  hearing.saidOrAsked.weigh(line).reduce((sum, { meaning, share }) => (isAsks(meaning) ? sum + share : sum), 0);

/** `I need to see what we have in stock`, where what was found names nothing: what is to be shown is asked. */
const shareOfShowing = (line: string, found: string, { hearing: { weighed } }: LineContext): number =>
  found !== 'how-long' ? 0 : weighed.shareOf(line, 'now', 'card', 'find');

const leastFor = (meaning: AskedMeaning, { things, places, act }: Said): number =>
  general.has(meaning) && things.length + places.length === 0 && act === undefined ? leastInstead : leastShare;

/** A general question, where the sayings have one of its own for it; what it asks of a thing and an act is told enough. */
function mayBeOther(found: string, asked: readonly Weighed<AskedMeaning>[]): boolean {
  const [own = '', ...of] = found.split(' ');
  const [likeliest] = asked;
  if (!general.has(own) || likeliest === undefined || general.has(likeliest.meaning)) return false;
  if (of.some(isVerb) && !of.every(isVerb)) return false;
  const borneOut = asked.find(({ meaning }) => meaning === own)?.share ?? 0;
  return likeliest.share >= leastInstead && borneOut < leastBorneOut;
}

interface Heard extends AskedIn {
  readonly said: Said;
}

/** In the tongue in which it asks; where none tells, in the one in which it names the most. */
function heardIn(read: readonly AskedIn[], context: LineContext): Heard | undefined {
  const asks = read.filter(({ asking }) => asking.isAsked);
  const heard = (asks.length > 0 ? asks : read).map((each) => ({
    ...each,
    said: saidIn(each.asking, each.questions, { ...context, hearing: context.hearing.every }),
  }));
  const names = ({ said }: Heard): number => said.things.length + said.acts.length;
  return heard.toSorted((one, other) => names(other) - names(one))[0];
}

function lineFor(
  weighed: Weighed<AskedMeaning> | undefined,
  { questions, asking: { asked, aside }, said }: Heard,
  { hearing }: LineContext,
): string | undefined {
  const meaning = weighed?.meaning;
  // `cuánto queda de vida a la mezcla 1` is asked of that pot, and not of the sheet.
  const notOf = questions.topics.find(({ asks }) => asks === meaning)?.notOf;
  if (notOf !== undefined && said.named.includes(notOf)) return undefined;
  switch (meaning) {
    case undefined:
      return undefined;
    case 'can-i':
      return said.act === undefined ? undefined : lineOf(meaning, asked, said, questions);
    case 'stock':
      return meaning;
    case 'why':
      // `quiero practicar, que estoy oxidado`: what it says of itself is no why.
      return aside === undefined ? `${meaning} ${asked}` : undefined;
    case 'what-is': {
      const term = termIn(asked, hearing.every);
      return term && `${meaning} ${term}`;
    }
    default:
      return lineOf(meaning, asked, said, questions);
  }
}

const longestTerm = 4;

/** The longest that it holds. */
function termIn(asked: string, hearing: Hearing): string | undefined {
  const words = asked.split(/[ ,;:?!.]+/);
  for (let length = longestTerm; length > 0; length--) {
    const phrases = words.map((_, at) => words.slice(at, at + length).join(' '));
    const term = phrases.find((phrase) => termNamed(phrase, hearing) !== undefined);
    if (term !== undefined) return term;
  }
  return undefined;
}
