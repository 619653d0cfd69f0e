// What people say of themselves and of a bell: `shift on`, `handover kari`, `take over`, `snooze 5m`.

import type { Command, CommandOf } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { gather } from './gather.ts';
import { wordOf } from './read-names.ts';

export function readShift(act: ActLine): CommandOf<'shift'> | Fault {
  const [first, second] = act.tokens;
  if (second !== undefined) return leftOver(second);
  const word = first?.kind === 'word' ? first.word : '';
  if (first === undefined) {
    return { code: 'incomplete', needs: ['on-or-off'], tries: ['on', 'off'].map((way) => `${act.line} ${way}`) };
  }
  if (word !== 'on' && word !== 'off') return { code: 'left-over', token: first, needs: ['on-or-off'] };
  return { verb: 'shift', on: word === 'on' };
}

/** A name may have two words. */
export function readHandover(act: ActLine): CommandOf<'handover'> | Fault {
  const tokens = act.tokens.filter(
    (token) => token.kind !== 'word' || !(token.word === 'to' || token.word === 'for' || token.word === 'a'),
  );
  const names = tokens.filter((token) => token.kind === 'word' || token.kind === 'quoted');
  const stray = tokens.find((token) => token.kind !== 'word' && token.kind !== 'quoted');
  if (stray !== undefined) return { code: 'left-over', token: stray, needs: ['person'] };
  if (names.length === 0) return { code: 'incomplete', needs: ['person'] };
  return { verb: 'handover', to: names.map(wordOf).join(' ') };
}

export function readTakeover(act: ActLine): Command | Fault {
  const gathered = gather(act);
  return isFault(gathered) ? gathered : { verb: 'takeover' };
}

const ringKey = /^(?:batch|part|can|place|session)\/[^/]+\/[a-z-]+$|^crew\/[a-z0-9/-]+$/;

export function readSnooze(act: ActLine): CommandOf<'snooze'> | Fault {
  const gathered = gather(act);
  if (isFault(gathered)) return gathered;
  const { duration, words } = gathered;
  const [first, second] = words;
  if (second !== undefined) return leftOver(second);
  if (first !== undefined && !ringKey.test(wordOf(first))) return leftOver(first);
  if (duration === undefined) {
    return { code: 'incomplete', needs: ['snooze-time'], tries: ['5m', '10m'].map((time) => `${act.line} ${time}`) };
  }
  return { verb: 'snooze', minutes: duration, ...(first !== undefined && { key: wordOf(first) }) };
}
