// What a line that may ask is made of: without what leads in to it, with its slips mended and people's names put as one word, and
// whether it asks at all: by its mark, by its first words or its last, by an accent, or by what led in to it.

import type { LineContext } from '../reading.ts';
import type { QuestionsTyped } from '../tongues/questions-typed.ts';
import { isSaidAct } from '../tongues/said-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface Asking {
  /** In lower case, without accents. */
  readonly asked: string;
  /** The same, without people's names. */
  readonly pattern: string;
  /** It ends or begins in its mark, or asks what may be done to what it names first. */
  readonly isMarked: boolean;
  readonly isAsked: boolean;
  /** What is said before it and asks nothing: `customer on the phone, what went on 7`. */
  readonly aside: string | undefined;
  /** It only tells what was read or done. */
  readonly isStated: boolean;
}

export function askingIn(line: string, typed: QuestionsTyped, context: LineContext): Asking {
  const { people = [] } = context;
  const lower = line.toLowerCase().replace(/[¿¡]/g, '');
  const plain = withoutAccents(lower).trim();
  const whole = typed.shortened === undefined ? plain : plain.replace(typed.shortened, '$1 is');
  const text = mended(whole, typed.slips).replace(typed.nowInside, '');
  const behind = afterAside(text, typed, context);
  const led = behind.replace(typed.leadIns, '');
  const asked = led.replace(typed.whether, '').replace(/[ ?!.,]+$/, '');
  const lead = text.slice(0, text.length - led.length);
  const isLedIn = lead !== '' && (typed.whether.test(led) || typed.tells.test(lead));
  const isStated = !/[?¿]/.test(line) && !isLedIn && typed.stated.test(asked);
  const pattern = withoutPeople(asked, people, typed.somebody);
  const isMayFirst = typed.mayFirst.test(pattern) || typed.mayFirst.test(led);
  const isMarked = !isStated && (/[?¿]/.test(line) || typed.asksAtEnd.test(asked) || isLedIn || isMayFirst);
  const isAsked =
    isMarked ||
    (!isStated && asksByWords({ asked, pattern }, typed)) ||
    typed.thingFirst.test(pattern) ||
    typed.thingFirst.test(led) ||
    typed.accented?.test(lower) === true;
  return {
    asked,
    pattern,
    isMarked,
    isAsked,
    aside: behind === text ? undefined : text.slice(0, -behind.length),
    isStated: isStated && !isAsked,
  };
}

/** A name in front asks nothing, where the word that stands for it does. */
const asksByWords = (
  { asked, pattern }: Pick<Asking, 'asked' | 'pattern'>,
  { asking, somebody }: QuestionsTyped,
): boolean => asking.test(pattern.startsWith(somebody) ? asked : pattern);

const mended = (text: string, slips: QuestionsTyped['slips']): string =>
  text.replace(/[a-z0-9]+/g, (word) => (Object.hasOwn(slips, word) ? (slips[word] ?? word) : word));

/** `customer on the phone, what went on 7`, `7's dry so what do I do`: what is asked stands behind it. */
function afterAside(
  text: string,
  { asking, joinsAsked, leadIns, tellsToo, whether }: QuestionsTyped,
  { hearing }: LineContext,
): string {
  const asks = (words: string): boolean => asking.test(words.replace(leadIns, '').replace(whether, ''));
  for (const { 0: joint, index } of text.matchAll(joinsAsked)) {
    const after = text.slice(index + joint.length);
    if (index === 0 || index > longestAside || asks(text.slice(0, index))) return text;
    // `brushed 3 from pot 1 right after lunch, when it was bare`: told at length, it asks nothing.
    const mayTell = index > shortAside || tellsToo?.test(after) === true;
    if (asks(after)) return mayTell && !text.includes('?') && tellsAct(text.slice(0, index), hearing) ? text : after;
  }
  return text;
}

/** Reasons are told at length: `the customer is on the phone and is asking me about his parts`. */
const longestAside = 110;
const shortAside = 40;

const tellsAct = (words: string, { weighed }: LineContext['hearing']): boolean => {
  const [first] = weighed.weigh(words);
  return first !== undefined && isSaidAct(first.meaning) && first.share >= leastTold;
};
const leastTold = 0.5;

function withoutPeople(asked: string, people: readonly string[], somebody: string): string {
  const names = new Set(people.map((name) => withoutAccents(name.toLowerCase())));
  return asked.replace(/[a-z]+/g, (word) => (names.has(word) ? somebody : word));
}
