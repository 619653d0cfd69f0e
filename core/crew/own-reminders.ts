// Bells that people want for themselves: `remind 15m check the gun`. Each rings once for who asked, and for nobody else.

import type { CommandOf } from '../commands.ts';
import { type Decision, onCrew, type Said } from '../decision.ts';
import { crewStream } from '../ids.ts';
import type { Shop } from '../shop.ts';
import { minutesAfter } from '../units.ts';
import { type Reminder, remind } from '../wanted-reminder.ts';
import type { Crew } from './crew.ts';

export function decideRemind(_: Shop, said: Said<CommandOf<'remind'>>): Decision {
  const { minutes, text } = said.command;
  return onCrew(said, { type: 'ReminderWanted', until: minutesAfter(said.at, minutes), text });
}

export const ownReminders = ({ entries }: Crew): readonly Reminder[] =>
  entries.flatMap(({ fact, seq, by }) =>
    fact.type === 'ReminderWanted' ? [remind(crewStream, 'own', fact.until, [by], { key: ownKey(seq) })] : [],
  );

const ownKey = (seq: number): string => `crew/own/${seq}`;

/** What the bell of this key is to say; nothing where it was wanted without words, or taken back. */
export function ownWords({ entries }: Crew, key: string): string {
  const wanted = entries.find(({ seq }) => key === ownKey(seq))?.fact;
  return wanted?.type === 'ReminderWanted' ? wanted.text : '';
}
