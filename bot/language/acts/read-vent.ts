// The sums of the air: `vent 4`, `vent oven 800g 90C 0.5m/s`, `vent purge argon 500l 12m3`; and `hazards dip`.

import type { Question } from '../../../core/commands.ts';
import { known } from '../../../core/known.ts';
import { methodRows } from '../../../core/methods.ts';
import { ownValue } from '../../../core/own-key.ts';
import { type Work, works } from '../../../core/session/session-commands.ts';
import {
  type Celsius,
  type CubicMetres,
  celsius,
  type Grams,
  grams,
  litres,
  type MetresPerSecond,
} from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { roomFrom, speedFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { countFrom, outside } from './figure-of-slot.ts';

export function readVent(act: ActLine): Question | Fault {
  const tokens = act.tokens.filter((token) => !fillers.has(wordIn(token)));
  const word = wordIn(tokens[0]);
  if (word === 'oven') return ventOven(tokens);
  if (word === 'purge') return ventPurge(tokens);
  const [first, second] = tokens;
  if (second !== undefined) return leftOver(second);
  if (first === undefined) return { ask: 'vent', asked: { of: 'session' } };
  if (first.kind !== 'number') return leftOver(first);
  const session = countFrom(first);
  return typeof session === 'number' ? { ask: 'vent', asked: { of: 'session', session } } : session;
}

function ventOven(tokens: readonly Token[]): Question | Fault {
  let load: Grams | undefined;
  let oven: Celsius | undefined;
  let velocity: MetresPerSecond | undefined;
  for (let i = 1; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const speed = speedFrom(tokens, i);
    if (speed !== undefined && velocity === undefined) {
      velocity = speed.value;
      i = speed.to - 1;
    } else if (token.kind === 'quantity' && token.quantity.is === 'mass' && load === undefined) {
      load = grams(token.quantity.value);
    } else if (token.kind === 'quantity' && token.quantity.is === 'temperature' && oven === undefined) {
      oven = celsius(token.quantity.value);
      const fault = outside('oven-temperature', token, oven);
      if (fault !== undefined) return fault;
    } else return leftOver(token);
  }
  if (load === undefined) return { failed: 'incomplete', needs: ['wet-load'] };
  if (oven === undefined) return { failed: 'incomplete', needs: ['oven-temperature'] };
  const face = velocity === undefined ? {} : { faceMetresPerSecond: velocity };
  return { ask: 'vent', asked: { of: 'oven', grams: load, celsius: oven, ...face } };
}

/** The gas first, then the room. */
function ventPurge(tokens: readonly Token[]): Question | Fault {
  const volumes: CubicMetres[] = [];
  let gas: 'argon' | 'nitrogen' | undefined;
  for (let i = 1; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const volume = roomFrom(tokens, i);
    const word = wordIn(token);
    if (volume !== undefined && volumes.length < 2) {
      const fault = outside('room-volume', token, volume.value);
      if (fault !== undefined) return fault;
      volumes.push(volume.value);
      i = volume.to - 1;
    } else if (word === 'argon' || word === 'nitrogen') gas = word;
    else if (word !== 'room') return leftOver(token);
  }
  const [released, room] = volumes;
  if (released === undefined) return { failed: 'incomplete', needs: ['gas-volume'] };
  if (room === undefined) return { failed: 'incomplete', needs: ['room-volume'] };
  // Argon is the worse of the two: it settles.
  const asked = { of: 'purge' as const, gas: gas ?? ('argon' as const) };
  return { ask: 'vent', asked: { ...asked, gasLitres: litres(released * 1000), roomLitres: litres(room * 1000) } };
}

const workWords: Readonly<Record<string, Work>> = {
  mix: 'mix',
  mixing: 'mix',
  wipe: 'wipe',
  wiping: 'wipe',
};

export function readHazards({ tokens, line }: ActLine): Question | Fault {
  const [first, second] = tokens.filter((token) => !fillers.has(wordIn(token)));
  if (second !== undefined) return leftOver(second);
  const word = wordIn(first);
  const method = methodsByWord.get(word);
  const work = ownValue(workWords, word) ?? (method === undefined ? undefined : methodRows[method].hazards);
  if (first === undefined)
    return { failed: 'incomplete', needs: ['work'], tries: works.map((each) => `${line} ${each}`) };
  if (work === undefined) return { failed: 'left-over', token: first, needs: ['work'] };
  return { ask: 'hazards', work, ...known({ method }) };
}
