// What is told of a spray session: `near lia out`, `ack`, `fan on 0.6m/s`, `supplied yes`, `spray on`, `spray off`,
// `flush gun acetone 300ml`, `rags`, `close`. Which session may be left out where only one is open.

import { type SolventId, solventIds } from '../../../core/calc/solvents.ts';
import type { Command, CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { SessionNumber } from '../../../core/ids.ts';
import type { Litres, MetresPerSecond } from '../../../core/units.ts';
import { placeNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import {
  fillers,
  guns,
  runs,
  sessionMarks,
  solventsCalled,
  unmeasured,
  vessels,
} from '../tongues/english/line-words.ts';
import { speedFrom } from '../typed/air-figures.ts';
import type { Token } from '../typed/token.ts';
import { ounce } from '../typed/units-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { batchFrom, doubtful } from './sort-pieces.ts';

interface Apart {
  readonly session?: SessionNumber;
  readonly rest: readonly Token[];
}

/** A bare whole number is the session. */
function sessionApart(tokens: readonly Token[]): Apart | Fault {
  let session: SessionNumber | undefined;
  const rest: Token[] = [];
  for (const [i, token] of tokens.entries()) {
    if (token.kind === 'word' && sessionMarks.has(token.word) && tokens[i + 1]?.kind === 'number') continue;
    if (token.kind !== 'number') {
      rest.push(token);
      continue;
    }
    const number = batchFrom(token);
    if (typeof number !== 'number') return { ...number, needs: ['session'] };
    if (session !== undefined) return leftOver(token);
    session = number;
  }
  return { rest, ...(session !== undefined && { session }) };
}

type Read = (act: ActLine, tokens: readonly Token[]) => Command | Fault;

export const readSprayOn: Read = (_, tokens) => {
  const apart = sessionApart(tokens);
  if (isFailed(apart)) return apart;
  const words = apart.rest.filter((token) => token.kind !== 'word' || !(fillers.has(token.word) || token.word === 'a'));
  const [first, second] = words;
  if (second !== undefined) return leftOver(second);
  const place = first?.kind === 'word' ? placeNamed(first.word) : undefined;
  if (first !== undefined && place === undefined) return leftOver(first);
  return {
    verb: 'spray-on',
    ...(apart.session !== undefined && { session: apart.session }),
    ...(place !== undefined && { place }),
  };
};

export const readFan: Read = (act, tokens) => {
  let running = act.verb.says === undefined ? undefined : act.verb.says === 'yes';
  let velocity: MetresPerSecond | undefined;
  const rest: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const isRunning = token.kind === 'word' ? runs.get(token.word) : undefined;
    const speed = speedFrom(tokens, i);
    if (speed !== undefined) {
      if (velocity !== undefined) return leftOver(token);
      const { limits } = slots['face-velocity'];
      if (limits !== undefined && isOutside(limits, speed.value)) {
        return { failed: 'impossible', token, needs: ['face-velocity'], limits };
      }
      velocity = speed.value;
      i = speed.to - 1;
    } else if (isRunning !== undefined) {
      if (running !== undefined && running !== isRunning) return leftOver(token);
      running = isRunning;
    } else if (token.kind === 'number' && !token.number.whole) {
      const tries = ['m/s', 'fpm'].map((unit) => lineWith(act.line, token, `${token.text}${unit}`));
      return { failed: 'unit-missing', token, needs: ['face-velocity'], tries };
    } else if (token.kind !== 'word' || !(unmeasured.has(token.word) || fillers.has(token.word))) rest.push(token);
  }
  const apart = sessionApart(rest);
  if (isFailed(apart)) return apart;
  const [stray] = apart.rest;
  if (stray !== undefined) return leftOver(stray);
  // What is measured runs.
  const state = running ?? (velocity === undefined ? undefined : true);
  if (state === undefined || (!state && velocity !== undefined)) return yesOrNo(act, 'fan-state', ['on', 'no']);
  return {
    verb: 'fan',
    ...(apart.session !== undefined && { session: apart.session }),
    running: state,
    ...(velocity !== undefined && { faceMetresPerSecond: velocity }),
  };
};

function yesOrNo(act: ActLine, slot: Slot, words: readonly string[]): Fault {
  return { failed: 'incomplete', needs: [slot], tries: words.map((word) => `${act.line} ${word}`) };
}

const solventsByWord: ReadonlyMap<string, SolventId> = new Map([
  ...solventIds.map((id) => [id, id] as const),
  ...solventsCalled,
]);

export const readFlush: Read = (act, tokens) => {
  const apart = sessionApart(tokens);
  if (isFailed(apart)) return apart;
  // `recipientes lavados`: the verb itself may name them.
  let command: CommandOf<'flush'> = { verb: 'flush', gear: act.verb.gear ?? 'gun' };
  let amount: Litres | undefined;
  for (const token of apart.rest) {
    const word = token.kind === 'word' ? token.word : '';
    const solvent = solventsByWord.get(word);
    if (token.kind === 'doubt') return doubtful(token, act.line, 'flush-volume');
    // A solvent is poured by volume: an ounce of it is a fluid one, which only who typed it can say.
    if (token.kind === 'quantity' && token.unit === ounce && amount === undefined) {
      const tries = [lineWith(act.line, token, `${token.value} fl oz`)];
      return { failed: 'unit-missing', token, needs: ['flush-volume'], tries };
    }
    if (token.kind === 'quantity' && token.quantity.is === 'volume' && amount === undefined) {
      const { limits } = slots['flush-volume'];
      amount = token.quantity.litres;
      if (limits !== undefined && isOutside(limits, amount * 1000)) {
        return { failed: 'impossible', token, needs: ['flush-volume'], limits };
      }
    } else if (solvent !== undefined && (command.solvent ?? solvent) === solvent) command = { ...command, solvent };
    else if (vessels.has(word)) command = { ...command, gear: 'vessels' };
    else if (!guns.has(word) && !fillers.has(word)) return { ...leftOver(token), needs: ['solvent'] };
  }
  return {
    ...command,
    ...(apart.session !== undefined && { session: apart.session }),
    ...(amount !== undefined && { litres: amount }),
  };
};
