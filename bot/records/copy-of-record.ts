// `backup friday.sqlite`: a copy of the whole record, which stays on the machine. Only whoever may ask for one gets it.

import { peopleFrom, roleMissing } from '../../core/crew/who-may.ts';
import { type Card, makeCard } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { backupCard } from '../cards/proof-cards.ts';
import type { RecordSource } from './loading.ts';
import type { PaperTray } from './paper-tray.ts';

export interface Asker {
  readonly name: string;
  /** Sits at the machine itself: may name any path. */
  readonly atConsole: boolean;
}

export async function copyOfRecord(
  { executor, store, papers }: RecordSource & { readonly papers: PaperTray },
  telling: Telling,
  file: string,
  asker: Asker,
): Promise<Card> {
  const { records } = telling.words;
  const missing = roleMissing(telling.shop.crew, asker.name, { say: 'backup' });
  if (missing !== undefined) {
    const who = peopleFrom(telling.shop.crew, missing);
    return makeCard(records.backupRole, 'stop', { lines: [records.backupWho(who, telling.figures)] });
  }
  const path = papers.copyPath(file, asker.atConsole);
  if (path === undefined) return makeCard(records.backupName, 'warn');
  try {
    await executor.giveHash('backup', telling.now);
    await store.archive.backup(path);
    return backupCard(telling, file);
  } catch (error) {
    return makeCard(records.backupFailed(error instanceof Error ? error.message : String(error)), 'stop');
  }
}
