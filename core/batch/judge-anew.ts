// A batch judged anew by the newest edition of the rules, as a lead may have it: what it comes to is marked from then on.
// Nothing is reopened by it: no hold, no bell, no part that was released.

import type { CommandOf } from '../commands.ts';
import { peopleFrom, roleMissing } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import type { Entry } from '../history.ts';
import { batchStream } from '../ids.ts';
import { type Edition, editionOfToday } from '../rule-editions.ts';
import type { Shop } from '../shop.ts';
import type { Batch } from './batch.ts';
import { findBatch } from './batch-decide.ts';

/** A decision counts from when it is given, whatever time is said with it. */
export function decideJudge(shop: Shop, { by, now, command }: Said<CommandOf<'judge'>>): Decision {
  const wanted = roleMissing(shop.crew, by, { say: 'judge' });
  if (wanted !== undefined) return unclear({ code: 'may-not-judge', wanted, who: peopleFrom(shop.crew, wanted) });
  const batch = findBatch(shop, command.batch, () => true);
  if (isFailed(batch)) return unclear(batch.failed);
  const body = { type: 'JudgedAnew', edition: editionOfToday } as const;
  return accepted({ streams: [batchStream(batch.number)], happenedAt: now, body });
}

/** By which rules an act of this batch is asked about: those of its day, or those by which the batch was judged anew. */
export function editionFor({ entries }: Batch, entry: Entry): Edition {
  const anew = entries.findLast(({ seq, fact }) => fact.type === 'JudgedAnew' && seq > entry.seq)?.fact;
  return anew?.type === 'JudgedAnew' && anew.edition > entry.edition ? anew.edition : entry.edition;
}
