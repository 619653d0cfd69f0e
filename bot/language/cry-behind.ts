// A cry behind an act or a reading: `lel 0 fire in booth!`, `stir 1 help!!!`. Only in a line that did not read; it is heard from
// each place on where the act may have ended, and must end as a cry does: `fire scale` behind a part is no cry. Our own choice,
// no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { criedWords, criesIn, saysNow } from './cry.ts';
import { needIn } from './need.ts';
import type { LineContext } from './reading.ts';

export type Behind =
  | { readonly is: 'certain'; readonly alarm: Alarm }
  /** Asked about with two taps; `likely`: what else is offered. */
  | { readonly is: 'asked'; readonly likely: readonly Alarm[] };

/** `typed`: before it was cleaned. `stop`: the word at which the reader stopped. */
export function criedBehind(typed: string, stop: string | undefined, context: LineContext): Behind | undefined {
  const heard = startsIn(typed, stop).flatMap((start) => heardFrom(typed, start, context) ?? []);
  return heard.find(({ is }) => is === 'certain') ?? heard[0];
}

/** Nobody goes on for longer before they cry out. */
const mostStarts = 20;
/** Nor cries out in more letters. */
const longestCry = 120;

/** Behind each figure and at the word where the reader stopped; of a shout, at every word. */
function startsIn(typed: string, stop: string | undefined): readonly number[] {
  const at = stop === undefined || stop === '' ? -1 : typed.toLowerCase().lastIndexOf(stop.toLowerCase());
  const behind = /[!¡]/.test(typed) ? /(?<=[\s,;:¡-])(?=\p{L})/gu : /(?<=\d[\p{L}%°²³/]*[\s,;.:]+)(?=\p{L})/gu;
  return [...(at > 0 ? [at] : []), ...Array.from(typed.matchAll(behind), ({ index }) => index)].slice(-mostStarts);
}

function heardFrom(typed: string, start: number, context: LineContext): Behind | undefined {
  const { cries } = context.hearing;
  const [head, tail] = [typed.slice(0, start), typed.slice(start, start + longestCry)];
  const last = head.split(/[\d,.;]/).at(-1) ?? '';
  if (criedWords(last, cries).some((word) => isHeldBack(word, context))) return undefined;
  const isShouted = tail.includes('!');
  const [alarm] = criesIn(tail, context, 'standing');
  const saysLittle = alarm !== undefined && !isShouted && saysTooLittle(alarm, tail, context);
  if (alarm !== undefined && !saysLittle)
    return saysNow(head, cries) && !saysTooLittle(alarm, tail, context)
      ? { is: 'certain', alarm }
      : { is: 'asked', likely: [alarm] };
  const need = needIn(tail, context);
  if (need?.is === 'certain') return { is: 'certain', alarm: need.alarm };
  if (need?.is === 'open') return { is: 'asked', likely: [need.alarm] };
  return need?.is === 'bare' && (isShouted || !need.likely.includes('hot'))
    ? { is: 'asked', likely: need.likely }
    : undefined;
}

const isHeldBack = (word: string, { hearing: { cries } }: LineContext): boolean =>
  cries.denials.has(word) || cries.no.has(word) || cries.supposed.has(word) || cries.drills.has(word);

/** `air 24C 48% down`, `temp impeller-7 80C hot`: said of figures every day. */
function saysTooLittle(alarm: Alarm, tail: string, { people = [], hearing: { cries } }: LineContext): boolean {
  if (alarm !== 'down' && alarm !== 'hot') return false;
  const [first = '', second = ''] = criedWords(tail, cries);
  const isOwn = cries.alarms.has(first) || cries.ofAnything.has(first) || cries.saysLittle.has(first);
  const saysWhat =
    cries.alarms.has(`${first} ${second}`) ||
    cries.anybody.has(second) ||
    people.some((name) => criedWords(name, cries).includes(second));
  return isOwn && !saysWhat;
}
