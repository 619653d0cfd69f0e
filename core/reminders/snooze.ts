// Which bells may be put off, and the decision to do so: the last ring to the speaker rings again so much later. What a
// clock of "at most" tells of goes on by itself; no snooze moves it.

import type { CommandOf } from '../commands.ts';
import { ringsOpen } from '../crew/crew-decide.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import type { Shop } from '../shop.ts';
import { minutesAfter } from '../units.ts';

/** Kinds that begin so: the pot's end, gas over a can, gear that is to be cleaned. */
const unmovable = ['pot-margin', 'pot-end', 'blanket', 'flush', 'vessels', 'gear', 'spell-end', 'air-recheck'] as const;

/** By the key of a ring, with or without its number. */
export function isMovable(key: string): boolean {
  const [, , kind = ''] = key.split('/');
  return !unmovable.some((begins) => kind.startsWith(begins));
}

export function decideSnooze(shop: Shop, said: Said<CommandOf<'snooze'>>): Decision {
  const { key, minutes } = said.command;
  const theirs = ringsOpen(shop)
    .filter((ring) => ring.rangAt <= said.at && (key === undefined ? ring.to.includes(said.by) : ring.key === key))
    .sort((a, b) => a.rangAt - b.rangAt);
  const last = theirs.at(-1);
  if (last === undefined) return unclear({ code: 'nothing-rang' });
  if (!isMovable(last.key)) return unclear({ code: 'not-snoozed', key: last.key, rangAt: last.rangAt });
  const body = { type: 'RingSnoozed' as const, key: last.key, until: minutesAfter(said.at, minutes) };
  return accepted({ streams: [last.stream], happenedAt: said.at, body });
}
