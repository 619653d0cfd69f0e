// `at 20` where an act may have a temperature: 20:00 or 20 degC? Asked, since both would be recorded without a sign.

import type { Fault } from '../reading.ts';
import { type Slot, slots } from '../slots.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, lineWith } from './act-line.ts';

/** `at 9` is an hour: nobody coats in such a cold often enough to be asked each time. */
const firstDoubtful = 10;
const lastHour = 23;

export function hourOrTemperature(act: ActLine): Fault | undefined {
  const index = act.tokens.findIndex((token) => wordIn(token) === 'at');
  if (index === -1) return undefined;
  const slot = temperatureSlot(act);
  const token = act.tokens[index + 1];
  if (slot === undefined || token?.kind !== 'number' || !/^\d{2,3}$/.test(token.text)) return undefined;
  if (token.number.value < firstDoubtful || isPartOfTime(act.tokens[index + 2]) || isClock(token.text))
    return undefined;
  const degrees = slots[slot].units.map((unit) => `${token.text}${unit}`);
  const isHour = token.number.value <= lastHour;
  const couldBe = isHour ? [`${token.text}:00`, ...degrees] : degrees;
  const tries = couldBe.map((text) => lineWith(act.line, token, text));
  return isHour
    ? { failed: 'ambiguous-number', token, needs: [slot], couldBe, tries }
    : { failed: 'unit-missing', token, needs: [slot], tries };
}

/** The temperature that this act may have and this line has not. */
function temperatureSlot(act: ActLine): Slot | undefined {
  const { needs, may } = act.verb.row;
  const wanted = [...needs, ...may].find((slot) => slots[slot].kinds.includes('temperature'));
  const has = act.tokens.some((token) => token.kind === 'quantity' && token.quantity.is === 'temperature');
  return has ? undefined : wanted;
}

function isPartOfTime(next: Token | undefined): boolean {
  return next?.kind === 'word' && /^(?:[ap]\.?m\.?|today|yesterday)$/.test(next.word);
}

/** `940` is twenty to ten. */
function isClock(text: string): boolean {
  return text.length === 3 && Number(text.slice(1)) < 60;
}
