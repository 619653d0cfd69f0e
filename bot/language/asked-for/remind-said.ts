// A bell that somebody wants for themselves, in their own words: `poke me in 15`, `recuérdame en media hora cerrar la lata`, `set a
// timer for 20 min`, `remind me at 14:30 to order argon`. It rings by the clock alone: what goes by the record rings by itself.

import { DateTime } from 'luxon';
import { spanAt } from '../as-said/duration-said.ts';
import type { TimeLine } from '../as-said/time-line.ts';
import { lengthOf, longestAt, wordsOf } from '../as-said/words.ts';
import { askedInWords } from '../asked/asked.ts';
import type { LineContext } from '../reading.ts';
import { readTimeOfDay } from '../times/time-typed.ts';
import type { Typed } from '../tongues/typed.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Understands } from '../understood.ts';

export const remindSaid: Understands = (line, context, strictly) => {
  for (const tongue of [...context.hearing.every.tongues].reverse()) {
    const asked = tongue.reminders.asks.exec(withoutAccents(line.toLowerCase()));
    if (asked === null) continue;
    const told = line.slice(asked[0].length).replace(/[.!? ]+$/, '');
    // `ring me when 8 is dry`: that rings by itself, and when is told.
    if (tongue.reminders.whenDone.test(withoutAccents(told.trim().toLowerCase())))
      return askedInWords(`${told.trim()}?`, context, strictly);
    // `timer rang for 8`: a word alone asks only where a time stands right behind it.
    const wish = wishIn(told, tongue, context, asked.groups?.alone === undefined ? 'anywhere' : 'first');
    if (wish === undefined) continue;
    const strict = `remind ${wish.minutes}min${wish.text === '' ? '' : ` ${JSON.stringify(wish.text)}`}`;
    if (strictly(strict).kind === 'command') return { is: 'sure', line: strict };
  }
  return undefined;
};

interface Wish {
  readonly minutes: number;
  readonly text: string;
}

/** `told`: behind what asks for the bell. */
function wishIn(
  told: string,
  { reminders, times, numbers }: Typed,
  context: LineContext,
  time: 'anywhere' | 'first',
): Wish | undefined {
  const said = wordsOf(told);
  // In whatever tongue the crew reads its cards, its own minutes are heard.
  const every = { ...context, hearing: context.hearing.every };
  const on: TimeLine = { said, times: times.spoken, numbers: numbers.spoken, context: every };
  for (const [at, { start }] of (time === 'first' ? said.slice(0, 1) : said).entries()) {
    const found = spanFrom(on, at, reminders.within) ?? clockFrom(on, at, reminders.atHour);
    if (found === undefined) continue;
    const end = said[found.to - 1]?.end ?? told.length;
    const text = [told.slice(0, start), told.slice(end)].map((half) => half.trim()).filter((half) => half !== '');
    return { minutes: Math.round(found.minutes), text: withoutJoint(text.join(' '), reminders.joints) };
  }
  return undefined;
}

interface TimeFound {
  readonly minutes: number;
  readonly to: number;
}

/** `in 15`, `in half an hour`; without its word only with a unit: `timer 20 min`. */
function spanFrom(on: TimeLine, at: number, within: readonly string[]): TimeFound | undefined {
  const before = longestAt(on.said, at, within);
  const span = spanAt(on, before === undefined ? at : at + lengthOf(before));
  return span !== undefined && (before !== undefined || span.hasUnit) ? span : undefined;
}

/** Its next one; of an hour alone, by day or by night. */
function clockFrom({ said, context }: TimeLine, at: number, atHour: readonly string[]): TimeFound | undefined {
  const before = longestAt(said, at, atHour);
  if (before === undefined) return undefined;
  const to = at + lengthOf(before);
  const typed = said[to]?.word ?? '';
  const time = readTimeOfDay(/^\d{1,2}$/.test(typed) ? `${typed}:00` : typed);
  if (time === undefined || time === 'no-such-time') return undefined;
  const now = DateTime.fromMillis(context.now, { zone: context.zone });
  const today = now.startOf('day').set(time);
  const halves = /^\d{1,2}$/.test(typed) && time.hour < 12 ? [0, 12, 24] : [0, 24];
  const next = halves.map((hours) => today.plus({ hours })).find((each) => each > now);
  return next?.isValid === true
    ? { minutes: Math.ceil((next.toMillis() - context.now) / 60_000), to: to + 1 }
    : undefined;
}

/** `to check the gun`, `que cierre la lata`. */
function withoutJoint(text: string, joints: readonly string[]): string {
  const said = wordsOf(text);
  const joint = longestAt(said, 0, joints);
  return joint === undefined ? text : text.slice(said[lengthOf(joint)]?.start ?? text.length);
}
