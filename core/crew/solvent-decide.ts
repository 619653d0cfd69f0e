// Solvent that was used is recorded as it is said: how much of what, and for what.

import type { CommandOf } from '../commands.ts';
import type { Decision, Said } from '../decision.ts';
import { crewStream } from '../ids.ts';

export function decideUsed({ command, at }: Said<CommandOf<'used'>>): Decision {
  const { material, use, amount } = command;
  const body = { type: 'SolventUsed' as const, material, use, amount };
  return { kind: 'accepted', events: [{ streams: [crewStream], happenedAt: at, body, saidWith: { despite: [] } }] };
}
