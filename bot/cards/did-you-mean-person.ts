// A name that the crew's list does not have: the same line with each person who may have been meant, for one tap.

import type { Command } from '../../core/commands.ts';
import type { PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { nearNames } from '../../core/part/near-names.ts';
import { withoutMarks } from '../../core/person-named.ts';

export interface PersonMeant {
  readonly person: PersonName;
  readonly command: Command;
}

/** More taps are a list. */
const mostPeople = 8;

interface Stranger {
  readonly person: PersonName;
  readonly known: readonly PersonName[];
}

export function personsMeant(command: Command, { person: typed, known: people }: Stranger): readonly PersonMeant[] {
  const near = nearNames(withoutMarks(typed), people.map(withoutMarks));
  // `handover to the next shift`: whoever it is, it is one of them.
  if (near.length === 0 && command.verb === 'handover')
    return people.slice(0, mostPeople).map((person) => ({ person, command: { ...command, to: person } }));
  return near.flatMap((plain) =>
    people
      .filter((person) => withoutMarks(person) === plain)
      .flatMap((person) => {
        const meant = renamed(command, (name) => (name === typed ? person : name));
        return meant === undefined ? [] : [{ person, command: meant }];
      }),
  );
}

/** The command with each name put differently; `undefined` where it holds none that must be the crew's. */
function renamed(command: Command, meant: (name: PersonName) => PersonName): Command | undefined {
  const all = (names: readonly PersonName[]) => [...new Set(names.map(meant))];
  switch (command.verb) {
    case 'handover':
      return { ...command, to: meant(command.to) };
    case 'near':
      return { ...command, people: all(command.people) };
    case 'ack':
      return command.people === undefined ? undefined : { ...command, people: all(command.people) };
    case 'brief': {
      const { sprayers, stays, out, attendant } = command;
      const each = { sprayers: sprayers && all(sprayers), stays: stays && all(stays), out: out && all(out) };
      return { ...command, ...known({ ...each, attendant: attendant && meant(attendant) }) };
    }
    case 'set':
      return command.setting.name === 'sprayers'
        ? { ...command, setting: { ...command.setting, people: all(command.setting.people) } }
        : undefined;
    default:
      return undefined;
  }
}
