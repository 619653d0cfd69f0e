// A conversation over the real thing in which somebody practises, and what the record of the shop holds meanwhile. Invented.

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { onTestFinished } from 'vitest';
import { unmarked } from '../../../bot/cards/practice-card.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { sessionTalk } from '../cards/session-talk.ts';

/** Every row of every table. */
function rowsOf(file: string): string {
  const record = new Database(file, { readonly: true });
  const tables = record.prepare("select name from sqlite_master where type = 'table' order by name").pluck().all();
  const rows = tables.map((table) => [table, record.prepare(`select * from "${String(table)}"`).all()]);
  record.close();
  return JSON.stringify(rows);
}

/** One that these lines have been said in. */
export async function practiceTalk(...lines: readonly string[]) {
  const file = join(mkdtempSync(join(tmpdir(), 'practice-')), 'record.sqlite');
  const talk = sessionTalk(file);
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  /** What rang for them last stands before them, as a front end shows it. */
  const seesBell = (): void => {
    const bell = talk.heard.findLast(({ key }) => key !== null);
    if (bell !== undefined) talk.terminal.speakers.saw(bell);
  };
  return { ...talk, seesBell, record: () => rowsOf(file), card: async (line: string) => (await talk.say(line)).card };
}

export const isPractice = ({ card }: Pick<Answer, 'card'>): boolean => /^PR[AÁ]CTIC[EA] /.test(card.title);
export const isOffered = ({ card }: Answer, id: string): boolean => card.actions.some((action) => action.id === id);
/** What its taps say, without their mark. */
export const tapLines = ({ card }: Answer): readonly string[] => card.actions.map(({ line }) => unmarked(line).text);
