// A prepared shop over the real host and real SQLite, made once and copied for each line that is tried in it.

import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stderrLog } from '../../bot/run/log.ts';
import { wire } from '../../bot/run/wiring.ts';
import type { Answer } from '../../bot/talk/answer.ts';
import { ringUntil } from '../../bot/terminal/script.ts';
import { virtualClock } from '../../bot/time/clocks.ts';
import { onlyCrew } from '../../core/ids.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { epochMs } from '../../core/units.ts';
import { crew, type Prepared, type State, states } from './states.ts';

/** Madrid, in winter. */
const at = (hour: string) => epochMs(Date.parse(`2026-03-02T${hour}:00+01:00`));
const shelf = readSheetFolders(['core/products/sheets']);
const more = 100_000;

function shopIn(file: string, start: string) {
  const clock = virtualClock(at(start));
  const store = openSqliteStore(file);
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const { host, ringer } = wire({ store, clock, log: stderrLog, crewFile: crew, shelf, frontEnd });
  return { store, host, passes: (hour: string) => ringUntil(at(hour), ringer, clock) };
}

export interface Came {
  readonly answers: readonly (Answer | undefined)[];
  /** What the lines left, bells aside, comparable with what other lines left. */
  readonly left: readonly string[];
}

export function openShops() {
  const folder = mkdtempSync(join(tmpdir(), 'understand-'));
  const made = new Map<State, Promise<string>>();
  let tries = 0;
  const prepare = async (state: State): Promise<string> => {
    const { said, now }: Prepared = states[state];
    const file = join(folder, `${state}.sqlite`);
    const shop = shopIn(file, said[0]?.[0] ?? now);
    for (const [i, [hour, text]] of said.entries()) {
      await shop.passes(hour);
      const answer = await shop.host.handle({ text, as: 'Ines', in: `${i}`, id: `${state}-${i}` });
      if (answer?.recorded !== true) throw new Error(`${state}: ${text}: ${answer?.text}`);
    }
    await shop.passes(now);
    shop.store.close();
    return file;
  };
  return {
    /** What comes of lines said there one after the other. */
    say: async (state: State, as: string, lines: readonly string[]): Promise<Came> => {
      const from = await (made.get(state) ?? made.set(state, prepare(state)).get(state));
      const file = join(folder, `try-${tries++}.sqlite`);
      copyFileSync(from ?? '', file);
      const shop = shopIn(file, states[state].now);
      try {
        const before = shop.store.archive.rowsAfter(onlyCrew, 0, more).length;
        const answers: (Answer | undefined)[] = [];
        for (const [i, text] of lines.entries()) {
          answers.push(await shop.host.handle({ text, as, in: `${i}`, id: `${tries}-${i}` }));
        }
        const rows = shop.store.archive.rowsAfter(onlyCrew, 0, more).slice(before);
        const left = rows
          .filter(({ type }) => type !== 'Rang')
          .map(({ stream, type, happened_at, body }) => `${stream} ${type} ${happened_at} ${rounded(body)}`);
        return { answers, left: left.toSorted() };
      } finally {
        shop.store.close();
        rmSync(file);
      }
    },
    close: () => rmSync(folder, { recursive: true }),
  };
}

export type Shops = ReturnType<typeof openShops>;

/** Figures to four digits: ounces said as grams are the same weight. */
const rounded = (body: string): string =>
  body.replace(/-?\d+\.\d+/g, (figure) => Number(figure).toPrecision(4)).replace(/"amends":\d+/g, '"amends":0');
