// Imports go one way, clocks and chance come in from outside, and files stay small: read off the source by a rule table.

import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Import, importsOf, pureTests, type Source, sourcesIn } from './imports.ts';

interface Rule {
  readonly who: RegExp;
  readonly never: RegExp;
  /** Types couple nothing at run time: allowed where the row says so. */
  readonly typesToo: boolean;
  readonly except?: RegExp;
}

const nouns = 'batch|part|can|place|session|crew|coat|instrument';
const rules: readonly Rule[] = [
  { who: /^core\//, never: /^bot\//, typesToo: true },
  { who: /^core\/calc\//, never: /./, except: /^core\/((units|failed)\.ts$|calc\/)/, typesToo: true },
  { who: /^core\/(units|ids)\.ts$/, never: /./, typesToo: true },
  // A noun knows its own, the sums and the sheet; not the write path, the record, the bell or the store.
  {
    who: new RegExp(`^core/(${nouns}|products|corrections)/`),
    never:
      /^core\/(store\/|records\/|(execute|write-queue|decide|shop-keeper|shop-memory|ports|allowed)\.ts$|reminders\/(run|plan|posts)\.ts$)/,
    typesToo: true,
  },
  // A verb's row says what can be said, before anything is known or decided.
  {
    who: /^core\/verbs\//,
    except: /-commands\.ts$/,
    never: new RegExp(
      `^core/((${nouns}|products|records|corrections|reminders|store)/|(history|shop|decide|execute)\\.ts$)`,
    ),
    typesToo: true,
  },
  { who: /^core\/products\//, never: new RegExp(`^core/(${nouns})/`), typesToo: false },
  {
    who: /^core\/store\//,
    never: new RegExp(
      `^core/((${nouns}|records|corrections)/|(execute|write-queue|decide|shop-keeper|shop-memory)\\.ts$)`,
    ),
    typesToo: false,
  },
  { who: /^core\/(?!store\/)/, never: /^better-sqlite3$/, typesToo: true },
  // The language turns lines into commands: nothing of a noun but its commands and types, and never the store.
  {
    who: /^bot\/language\//,
    except: /-commands\.ts$/,
    never: new RegExp(`^core/((${nouns}|records)/|(execute|write-queue|decide|shop-keeper|shop-memory)\\.ts$)`),
    typesToo: false,
  },
  { who: /^bot\/(language|cards|messages|terminal|web|slack)\//, never: /^core\/store\//, typesToo: true },
  // What a chat platform shows is the same for all of them.
  { who: /^bot\/(cards|messages)\//, never: /^bot\/(terminal|web|slack)\//, typesToo: true },
  {
    who: /^bot\/cards\//,
    never: /^core\/((execute|write-queue|decide|shop-keeper|shop-memory)\.ts$|reminders\/run\.ts$)/,
    typesToo: false,
  },
  // A front end renders and sends; it knows neither nouns nor its neighbours.
  {
    who: /^bot\/(messages|terminal|web|slack)\//,
    except: /-commands\.ts$/,
    never: new RegExp(
      `^core/((${nouns}|records|corrections|reminders)/|(execute|write-queue|decide|shop-keeper|shop-memory)\\.ts$)`,
    ),
    typesToo: false,
  },
  { who: /^bot\/terminal\//, never: /^bot\/(web|slack)\//, typesToo: true },
  { who: /^bot\/web\//, never: /^bot\/(terminal|slack)\//, typesToo: true },
  { who: /^bot\/slack\//, never: /^bot\/(terminal|web)\//, typesToo: true },
  { who: /^(?!bot\/slack\/)/, never: /^@slack\//, typesToo: true },
  // A line and its answer are the same whatever the front end, the start and the clock.
  { who: /^bot\/talk\//, never: /^bot\/(config|time|terminal|web|slack|practice)\//, typesToo: true },
  { who: /^bot\/practice\//, never: /^bot\/(config|time|terminal|web|slack|messages|run)\//, typesToo: true },
  // Practice stands in front of the host, and no front end knows of it.
  { who: /^bot\/(cards|language|messages|terminal|web|slack)\//, never: /^bot\/practice\//, typesToo: true },
  {
    who: /^bot\/(config|time)\//,
    except: /-commands\.ts$/,
    never: new RegExp(`^core/(${nouns}|records|corrections)/|^bot/(cards|records|talk|terminal|web)/`),
    typesToo: false,
  },
  // They alone construct, and nobody but the entrance asks them to.
  {
    who: /^bot\/(?!main\.ts$|run\/)/,
    never: /^core\/(execute|write-queue|shop-keeper|shop-memory)\.ts$|^core\/reminders\/run\.ts$|^core\/store\//,
    typesToo: false,
  },
  { who: /^bot\/(?!main\.ts$|run\/)/, never: /^bot\/run\//, typesToo: true },
];

/** Nouns read each other's state; what follows from a command stays with its own. A coat is where batch and part meet. */
function isOthersDecision({ from, to }: Import): boolean {
  const home = new RegExp(`^core/(${nouns})/`);
  const [, mine] = home.exec(from) ?? [];
  const [, theirs] = home.exec(to) ?? [];
  if (mine === undefined || theirs === undefined || mine === theirs || mine === 'coat') return false;
  return /-(decide|reminders)\.ts$/.test(to);
}

function wrongImports(sources: readonly Source[]): readonly string[] {
  const wrong = (one: Import) =>
    isOthersDecision(one) ||
    rules.some(
      ({ who, never, except, typesToo }) =>
        who.test(one.from) && never.test(one.to) && !(except?.test(one.to) ?? false) && (typesToo || !one.onlyTypes),
    );
  return sources.flatMap(importsOf).flatMap((one) => (wrong(one) ? [`${one.from} -> ${one.to}`] : []));
}

const clockOrChance =
  /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bset(?:Timeout|Interval|Immediate)\b|\bperformance\.now\b/;
const pure = new RegExp(
  `^core/(${nouns}|calc|corrections|products|records)/|^core/[a-z-]+\\.ts$|^bot/(cards|language)/`,
);

function readsAClock({ path, text }: Source): boolean {
  return pure.test(path) && clockOrChance.test(text);
}

const ours = [...sourcesIn('core'), ...sourcesIn('bot')];
const all = [...ours, ...sourcesIn('test')];

describe('imports go one way', () => {
  it('given every file of core and bot, then none imports what its room may not', () => {
    expect(ours.length).toBeGreaterThan(100);
    expect(ours.flatMap(importsOf).length).toBeGreaterThan(400);
    expect(wrongImports(ours)).toEqual([]);
  });

  it.each([
    ['core/calc/dose.ts', "import { z } from 'zod';"],
    ['core/calc/dose.ts', "import type { Batch } from '../batch/batch.ts';"],
    ['core/calc/deep/dose.ts', "import { readFileSync } from 'node:fs';"],
    ['core/units.ts', "import { batchStream } from './ids.ts';"],
    ['core/batch/batch.ts', "import type { Card } from '../../bot/cards/card.ts';"],
    ['core/batch/batch-decide.ts', "import type { Store } from '../ports.ts';"],
    ['core/batch/batch-decide.ts', "import { decideDry } from '../part/part-decide.ts';"],
    ['core/part/part.ts', "import { batchReminders } from '../batch/batch-reminders.ts';"],
    ['core/part/part.ts', "export { planReminders } from '../reminders/plan.ts';"],
    ['core/records/day.ts', "import Database from 'better-sqlite3';"],
    ['core/store/sqlite-store.ts', "import { foldBatch } from '../batch/batch.ts';"],
    ['core/shop.ts', "const cards = await import('../bot/cards/card.ts');"],
    ['bot/language/read-line.ts', "import { foldPart } from '../../core/part/part.ts';"],
    ['bot/cards/card.ts', "import type { Store } from '../../core/store/sqlite-store.ts';"],
    ['bot/cards/card.ts', "import { decide } from '../../core/decide.ts';"],
    ['bot/terminal/terminal.ts', "import { openSqliteStore } from '../../core/store/sqlite-store.ts';"],
    ['bot/terminal/terminal.ts', "import {\n  type Batch,\n  foldBatch,\n} from '../../core/batch/batch.ts';"],
    ['bot/web/page.ts', "import { printJson } from '../terminal/output.ts';"],
    ['bot/terminal/terminal.ts', "import { WebClient } from '@slack/web-api';"],
    ['bot/talk/host.ts', "import { createExecutor } from '../../core/execute.ts';"],
    ['bot/talk/host.ts', "import '../../core/store/sqlite-store.ts';"],
    ['bot/talk/host.ts', "import type { Flags } from '../config/config.ts';"],
    ['bot/config/crew-files.ts', "import { personIn } from '../../core/crew/crew.ts';"],
    ['bot/talk/overview.ts', "import type { Roster } from '../slack/roster.ts';"],
    ['bot/messages/mail.ts', "import type { Call } from '../slack/slack-client.ts';"],
    ['bot/messages/mail.ts', "import { foldBatch } from '../../core/batch/batch.ts';"],
    ['bot/web/page.ts', "import type { Wired } from '../run/wiring.ts';"],
  ])('given a planted one, %s: %s, then it is found', (path, text) => {
    expect(wrongImports([{ path, text: `// a file\n${text}\n` }])).toHaveLength(1);
  });

  it.each([
    ['core/calc/dose.ts', "import { minutes } from '../units.ts';"],
    ['core/batch/batch-decide.ts', "import { airServing } from '../place/place.ts';"],
    ['core/coat/coat-decide.ts', "import { findBatch } from '../batch/batch-decide.ts';"],
    ['bot/language/tongues/english/sentences.ts', "import type { Fact } from '../../../../core/history.ts';"],
    ['bot/terminal/terminal.ts', "import { type CrewFile, type Role } from '../../core/crew/crew.ts';"],
    ['bot/talk/host.ts', "import type { Executor } from '../../core/execute.ts';"],
    ['bot/run/wiring.ts', "import { createExecutor } from '../../core/execute.ts';"],
  ])('given a good one, %s: %s, then it stands', (path, text) => {
    expect(wrongImports([{ path, text }])).toEqual([]);
  });
});

describe('the sums, the nouns, the cards and the language', () => {
  it('given every file of them, then none reads a clock, draws chance or sets a timer', () => {
    expect(ours.filter(readsAClock).map(({ path }) => path)).toEqual([]);
  });

  it.each(['Date.now()', 'new Date()', 'Math.random()', 'setTimeout(f, 1)'])(
    'given a planted %s, then it is found',
    (text) => {
      expect(readsAClock({ path: 'core/batch/batch.ts', text: `const x = ${text};` })).toBe(true);
      expect(readsAClock({ path: 'bot/time/ticker.ts', text: `const x = ${text};` })).toBe(false);
    },
  );
});

/** `word in table`, and `table[word]` of a table open to any word, find what every object has: `constructor` and its kin. */
function looksPastOwnKeys({ path, text }: Source): readonly string[] {
  if (path === 'core/own-key.ts') return [];
  const code = text
    .replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$|^.*\bObject\.hasOwn\(.*$/gm, '')
    .replaceAll(/`[^`]*`|'(?:[^'\\\n]|\\.)*'/g, "''");
  const open = [...code.matchAll(/\b(\w+)\??: (?:Readonly<)?(?:Partial<)?Record<string,/g)].map(
    ([, name = '']) => name,
  );
  const indexed = open.filter((name) => new RegExp(`\\b${name}(?:\\?\\.)?\\[(?!\\])`).test(code));
  const tested = [...code.matchAll(/(?<!\[(?:-?readonly )?)(?<!\w)\w[\w.]*\)? in (?!keyof)[\w(]/g)].map(
    ([found]) => found,
  );
  return [...indexed, ...tested].map((found) => `${path}: ${found}`);
}

describe('tables that are looked up by a word', () => {
  it('given every file of core and bot, then each looks only at the keys of its own', () => {
    expect(ours.flatMap(looksPastOwnKeys)).toEqual([]);
  });

  it.each([
    'const isVerb = (name: string) => name in readers;',
    'if (token.word in readers || isOther) return;',
    'const units: Readonly<Record<string, number>> = {};\nconst of = units[word];',
    'const units: Partial<Record<string, () => void>> = {};\nunits[word]?.();',
  ])('given a planted %s, then it is found', (text) => {
    expect(looksPastOwnKeys({ path: 'bot/language/x.ts', text })).toHaveLength(1);
  });

  it.each([
    "if ('fault' in page) return;",
    'type Labelled = { -readonly [Name in Label]?: string };',
    '// a word in a table\nconst of = ownValue(units, word);',
  ])('given a good one, %s, then it stands', (text) => {
    expect(looksPastOwnKeys({ path: 'bot/language/x.ts', text })).toEqual([]);
  });
});

describe('the house', () => {
  it('given every file of bot, then each has a room but the entrance', () => {
    expect(ours.filter(({ path }) => /^bot\/[^/]+$/.test(path)).map(({ path }) => path)).toEqual(['bot/main.ts']);
  });

  it('given every source file, then none is over 300 lines', () => {
    // Lists of cases are data.
    const long = ours.filter(({ text }) => text.split('\n').length - 1 > 300);
    expect(long.map(({ path }) => path)).toEqual([]);
  });

  it('given every file and folder, then none is named after a technique', () => {
    const named = /(^|\/)(utils?|helpers?|common|types|constants|index|misc|shared)(\.[a-z.]+)?(\/|$)/;
    expect(all.filter(({ path }) => named.test(path)).map(({ path }) => path)).toEqual([]);
    expect(named.test('core/utils.ts') && named.test('bot/common/x.ts') && named.test('core/calc/index.test.ts')).toBe(
      true,
    );
  });

  it('given every file name, then it is in kebab-case', () => {
    const odd = all.filter(({ path }) => !/^[a-z0-9-]+(\.[a-z0-9-]+)*\.ts$/.test(posix.basename(path)));
    expect(odd.map(({ path }) => path)).toEqual([]);
  });

  it('given every source file, then it begins by saying what it is for', () => {
    expect(ours.filter(({ text }) => !text.startsWith('//')).map(({ path }) => path)).toEqual([]);
  });
});

describe('the tests that need neither store nor process nor browser', () => {
  it('given every test, then sums and readings are among them, and what opens a record is not', () => {
    const pure = pureTests();
    expect(pure).toEqual(expect.arrayContaining(['test/core/calc/dose.test.ts', 'test/boundary.test.ts']));
    expect(pure).not.toContain('test/core/batch/pot-life.test.ts');
    expect(pure).not.toContain('test/browser/bell.test.ts');
    expect(pure).not.toContain('test/bot/terminal/shift.e2e.test.ts');
  });
});
