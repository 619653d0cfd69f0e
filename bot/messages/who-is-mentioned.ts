// Whom a bell in a channel mentions. Somebody whom the platform does not know cannot be woken there: a lead is, else a
// supervisor, and the bell says for whom.

import type { PersonName } from '../../core/ids.ts';
import type { MessageDesk } from './desk.ts';

export interface Mentioned {
  readonly mention: readonly string[];
  /** What the bell says of it. */
  readonly lines: readonly string[];
}

/** `reader`: in whose words. */
export async function whoIsMentioned(
  { roster, overview }: Pick<MessageDesk, 'roster' | 'overview'>,
  team: string,
  names: readonly PersonName[],
  reader: PersonName | undefined,
): Promise<Mentioned> {
  const idsOf = (people: readonly PersonName[]) => people.flatMap((name) => roster.idOf(team, name) ?? []);
  const mention = idsOf(names);
  const unknown = names.filter((name) => name !== '' && roster.idOf(team, name) === undefined);
  if (unknown.length === 0) return { mention, lines: [] };
  const { words } = await overview.voice(reader);
  const lines = [words.chat.notInSlack(unknown)];
  if (mention.length > 0) return { mention, lines };
  const { people } = await overview.crew();
  const ofRole = (role: 'lead' | 'supervisor') =>
    idsOf(people.filter((person) => person.role === role).map(({ name }) => name));
  const leads = ofRole('lead');
  return { mention: leads.length > 0 ? leads : ofRole('supervisor'), lines };
}
