// What became of one line of the corpus: right at once, by one tap of the first three, rightly nothing, recorded otherwise, or not
// understood; and whether a tap would have done harm.

import type { CardAction } from '../../bot/cards/card.ts';
import type { Answer } from '../../bot/talk/answer.ts';
import type { Shops } from './shop-copy.ts';
import type { SpokenLine } from './spoken-line.ts';

export type Became = 'at once' | 'one tap' | 'nothing' | 'not understood' | 'recorded otherwise';
export interface Understanding {
  readonly spoken: SpokenLine;
  readonly became: Became;
  readonly harmful: readonly string[];
  readonly answer: string;
}

const shownTaps = 3;

export async function understandingOf(shops: Shops, spoken: SpokenLine): Promise<Understanding> {
  const { state, by, line, after, means, shows } = spoken;
  const say = (...lines: readonly string[]) => shops.say(state, by, [...after, ...lines]);
  const before = await say();
  const came = await say(line);
  const answer = came.answers.at(-1);
  const isRecorded = came.left.length > before.left.length;
  const taps = tapsOf(answer);
  const told = (became: Became, harmful: readonly string[] = []): Understanding => ({
    ...{ spoken, became, harmful, answer: answer?.text ?? '' },
  });
  if (means.length === 0) {
    const harmful = isRecorded ? [] : await tapsThatRecord(say, line, taps, came.left);
    if (isRecorded) return told('recorded otherwise');
    if (shows === undefined) return told('nothing', harmful);
    return told(shows.test(answer?.text ?? '') ? 'at once' : 'not understood', harmful);
  }
  const goals = await Promise.all(means.map((lines) => say(...lines)));
  // Of a question, what it answers; of an act, what it leaves.
  const isOne = (text: string | undefined, left: readonly string[]): boolean =>
    goals.some((goal) =>
      goal.left.length > before.left.length
        ? goal.left.join('\n') === left.join('\n')
        : goal.answers.at(-1)?.card.title === text,
    );
  if (isOne(answer?.card.title, came.left)) return told('at once');
  if (isRecorded) return told('recorded otherwise');
  for (const tap of taps) {
    const tapped = await say(line, tap.line);
    if (isOne(tapped.answers.at(-1)?.card.title, tapped.left)) return told('one tap');
  }
  return told('not understood');
}

/** Nobody looks further; one that asks for a figure first is no single tap. */
const tapsOf = (answer: Answer | undefined): readonly CardAction[] =>
  (answer?.card.actions ?? []).slice(0, shownTaps).filter(({ line }) => !line.includes('{'));

/** Taps that record only how the bot leads somebody, and no work. */
const noWork: ReadonlySet<string> = new Set(['first-shift']);

async function tapsThatRecord(
  say: (...lines: readonly string[]) => ReturnType<Shops['say']>,
  line: string,
  taps: readonly CardAction[],
  before: readonly string[],
): Promise<readonly string[]> {
  const harmful: string[] = [];
  for (const tap of taps) {
    const tapped = await say(line, tap.line);
    if (tapped.left.length > before.length && !noWork.has(tap.line)) harmful.push(tap.line);
  }
  return harmful;
}
