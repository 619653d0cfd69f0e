// Which acts come next: those that a noun lists, in the order in which hands do them, and that would be taken if they were
// said at this moment. Asked of the decisions themselves, so that no button says other than they do.

import type { Command, Stance } from './commands.ts';
import { peopleFrom } from './crew/who-may.ts';
import { decide } from './decide.ts';
import type { PersonName } from './ids.ts';
import type { Objection, ObjectionCode, Unclear } from './objections.ts';
import type { Shop } from './shop.ts';
import type { EpochMs } from './units.ts';

export interface Moment {
  readonly shop: Shop;
  readonly now: EpochMs;
}

/** What a noun lists: whether it comes next is for the rules to say. */
export interface Candidate<Id extends string = string> {
  readonly id: Id;
  /** Its number or name, as a line calls it. */
  readonly of: string;
  /** The act, with an example in place of what is asked first. Of several, one that is taken will do. */
  readonly said: readonly [Command, ...Command[]];
  /** It stays though these object: the next thing that hands do, and pressed it says why not yet. */
  readonly despite?: readonly ObjectionCode[];
  /** Who says it, where it is not for anybody. */
  readonly by?: PersonName | undefined;
  readonly stance?: Stance;
}

/** Makes the candidates of one thing. */
export const actsOf =
  <Id extends string>(of: string) =>
  (id: Id, command: Command, more: Partial<Candidate<Id>> = {}): Candidate<Id> => ({
    ...{ id, of, said: [command] },
    ...more,
  });

export interface NextAct<Id extends string = string> {
  readonly id: Id;
  readonly of: string;
  readonly command: Command;
  readonly stance: Stance;
  /** Of those that it stays despite, what objects at this moment. Empty: said now, it is taken. */
  readonly against: readonly Objection[];
}

/** What is asked back for one value more is not refused. */
const asksForMore: readonly Unclear['code'][] = [
  'which-can',
  'which-sheet',
  'no-such-sheet',
  'new-part',
  'parts-in',
  'new-place',
  'far-reading',
  'film-asked',
];

export function nextActs<Id extends string>(
  { shop, now }: Moment,
  candidates: readonly Candidate<Id>[],
): readonly NextAct<Id>[] {
  const anybody = whoeverMay(shop);
  return candidates.flatMap(({ id, of, said, despite = [], by = anybody, stance = { is: 'asked' } }) => {
    const judged = said.map((command) => ({ command, against: against(shop, { command, by, now, stance }) }));
    const taken = judged.find(({ against }) => against?.length === 0);
    const chosen = taken ?? judged[0];
    if (chosen?.against === undefined || chosen.against.some(({ code }) => !despite.includes(code))) return [];
    return [{ id, of, stance, command: chosen.command, against: chosen.against }];
  });
}

/** What objects; `undefined` where it could not even be said so. */
function against(
  shop: Shop,
  said: { readonly command: Command; readonly by: PersonName; readonly now: EpochMs; readonly stance: Stance },
): readonly Objection[] | undefined {
  const decision = decide(shop, { ...said, at: said.now });
  switch (decision.kind) {
    case 'accepted':
      return [];
    case 'objected':
      return decision.objections;
    case 'unclear':
      return asksForMore.includes(decision.unclear.code) ? [] : undefined;
  }
}

/** Somebody of the highest role that there is: what they may say is shown to all, and says of itself whose it is. */
function whoeverMay({ crew }: Shop): PersonName {
  return peopleFrom(crew, 'supervisor')[0] ?? peopleFrom(crew, 'lead')[0] ?? crew.people[0]?.name ?? '';
}
