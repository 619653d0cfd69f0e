// The shop's own numbers to call, and its steps for each kind of trouble, in its own words: `set emergency call 112`.

import { isFailed } from '../../../core/failed.ts';
import type { EmergencyField } from '../../../core/session/session-commands.ts';
import { alarms } from '../../../core/session/session-commands.ts';
import type { Fault } from '../reading.ts';
import { emergencyCalls } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import type { ActLine, ActRead } from './act-line.ts';
import { freeTextFrom } from './free-text.ts';

const fields: ReadonlyMap<string, EmergencyField> = new Map([
  ...emergencyCalls,
  ...alarms.map((alarm) => [alarm, alarm] as const),
]);

export function readEmergency(act: ActLine, [token, second]: readonly Token[]): ActRead | Fault {
  if (token === undefined) return { failed: 'incomplete', setting: 'emergency' };
  const field = token.kind === 'word' ? fields.get(token.word) : undefined;
  if (field === undefined) return { failed: 'left-over', token, setting: 'emergency' };
  const isPot = field === 'hot' && wordIn(second) === 'pot';
  const own = freeTextFrom(act, act.tokens.indexOf(token) + (isPot ? 2 : 1));
  if (isFailed(own)) return own;
  if (own.words === '') return { failed: 'incomplete', needs: ['told'] };
  return { command: { verb: 'set', setting: { name: 'emergency', field, text: own.words } }, ...own.how };
}
