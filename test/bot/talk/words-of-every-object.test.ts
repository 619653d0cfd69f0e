// Words that every object of the language answers to, typed like any other: after a verb, in place of each word of every
// example, as every setting and as every kind of name, in English and Spanish. Each is answered, nothing breaks, and what
// was recorded reads whole after a restart.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import { englishVerbs } from '../../../bot/language/tongues/english/verbs.ts';
import { spanishVerbs } from '../../../bot/language/tongues/spanish/verbs.ts';
import { paperTray } from '../../../bot/records/paper-tray.ts';
import { wire } from '../../../bot/run/wiring.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

/** In place of each word of each example; the others after each verb, as settings and as names. */
const everywhere = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf'];
const words = [
  ...new Set([...everywhere, ...Object.getOwnPropertyNames(Object.prototype), 'prototype', 'length', 'at']),
];
const spoken = { language: 'en', units: 'metric' } as const;

/** One is called like a word of every object, one speaks a language of that name. */
const crewFile: CrewFile = {
  ...demoCrew,
  // So that lines of both tongues are read.
  language: 'es',
  people: [
    ...demoCrew.people,
    { name: 'constructor', role: 'crew', ...spoken },
    { name: 'lea', role: 'crew', language: 'toString', units: 'metric' },
    { name: 'eva', role: 'lead', language: 'es', units: 'metric' },
  ],
};

const settings = [
  ...['sheet', 'air-limit', 'digest', 'morning', 'rate', 'voc-limit', 'units', 'crew-units', 'crew', 'zone', 'role'],
  ...['language', 'crew-language', 'rings', 'brief', 'bell', 'brief-ahead', 'sprayers', 'booth', 'lel', 'mixing'],
  ...['quiet', 'emergency', 'emergency call', 'role kari', 'booth 4m2', 'voc-limit 2kg/'],
];

/** Where a name of each kind stands on a line. */
const named = (word: string): readonly string[] => [
  `set sprayers ${word}`,
  `set sprayers "${word}"`,
  `set role "${word}" lead`,
  `brief ${word} sprays`,
  `fit ${word} 2026-12-01`,
  `handover "${word}"`,
  `part ${word} steel 6mm`,
  `part imp-9 ${word} 6mm`,
  `part imp-8 "${word}" 6mm serial ${word} job "${word}" customer ${word}`,
  `coat ${word} brush`,
  `prep ${word} blast Sa 2.5`,
  `hold "${word}" ${word}`,
  `air ${word} 24C 48%`,
  `set booth ${word} 4m2`,
  `set booth -0 ${word} 4m2`,
  `vent ${word} 4m2`,
  `open A lot ${word} 5kg`,
  `open B lot "${word}" 5kg`,
  `flush gun ${word}`,
  `flush ${word} acetone 200ml`,
  `used ${word} 500ml gun-cleaning`,
  `used "${word}" 500ml ${word}`,
  `mix 1kg ${word}`,
  `set sheet "${word}"`,
  `hazards ${word}`,
  `trace ${word}`,
  `find job ${word}`,
  `find ${word} 88`,
  `help ${word}`,
  `ok ${word}`,
  `snooze ${word} 10m`,
];

/** An example with each of its words in turn replaced. */
function examplesWith(example: string, word: string): readonly string[] {
  const parts = example.split(' ');
  return parts.map((_, i) => parts.map((part, at) => (at === i ? word : part)).join(' '));
}

function linesOf(word: string): readonly string[] {
  const rows = Object.values(englishVerbs).map(({ words: [verb = ''], example }) => ({ verb, example }));
  const spanish = Object.values(spanishVerbs).map(({ words: [verb = ''], example }) => ({ verb, example }));
  return [
    word,
    ...[...rows, ...spanish].flatMap(({ verb, example }) => [
      `${verb} ${word}`,
      ...(everywhere.includes(word) ? examplesWith(example, word) : []),
    ]),
    ...settings.flatMap((setting) => [`set ${setting} ${word}`, `fijar ${setting} ${word}`]),
    ...[`set ${word}`, `set ${word} on`, `set ${word} 4m2`, `fijar ${word}`],
    ...named(word),
  ];
}

const folder = mkdtempSync(join(tmpdir(), 'words-of-every-object-'));
const opened: (() => void)[] = [];
afterEach(() => {
  for (const close of opened.splice(0)) close();
  rmSync(folder, { recursive: true, force: true });
});

function openShop(file: string, from: number) {
  const clock = virtualClock(epochMs(from));
  const store = openSqliteStore(file);
  opened.push(store.close);
  const faults: unknown[] = [];
  const log = { info: () => undefined, error: (...fault: readonly unknown[]) => faults.push(fault) };
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const papers = paperTray(folder);
  return { store, clock, faults, ...wire({ store, clock, log, crewFile, shelf: demoShelf, papers, frontEnd }) };
}

it('given the words that every object has, when each is typed everywhere, then all are answered and the record reads', async () => {
  const file = join(folder, 'batchbell.sqlite');
  const start = Date.UTC(2026, 2, 2, 8);
  const shop = openShop(file, start);
  for (const line of ['air 24C 48%', 'part imp-1 steel 6mm', 'mix 2kg', 'weigh 1 1000g 1000g']) {
    expect(await shop.host.handle({ text: line, as: 'omar', in: line, id: undefined })).toMatchObject({
      recorded: true,
    });
  }
  const unanswered: string[] = [];
  for (const word of words) {
    const speakers = ['kari', 'eva', 'constructor', 'lea', word];
    await Promise.all(
      linesOf(word).map(async (text, i) => {
        const as = speakers[i % speakers.length] ?? 'kari';
        const answer = await shop.host.handle({ text, as, in: text, id: undefined });
        if (answer === undefined || answer.kind === 'error') unanswered.push(`@${as}: ${text}`);
      }),
    );
    await ringUntil(epochMs(shop.clock.now() + 3_600_000), shop.ringer, shop.clock);
  }
  expect({ unanswered, faults: shop.faults }).toEqual({ unanswered: [], faults: [] });
  const heads = await shop.store.head('crew');
  expect(heads.seq).toBeGreaterThan(400);
  shop.store.close();

  const again = openShop(file, shop.clock.now());

  expect(await again.store.eventsAfter('crew', 0)).toHaveLength(heads.seq);
  const verified = await again.host.handle({ text: 'verify', as: 'omar', in: 'v', id: undefined });
  expect(verified?.card.tone).toBe('good');
  const air = await again.host.handle({ text: 'air 22C 50%', as: 'constructor', in: 'a', id: undefined });
  expect(air).toMatchObject({ kind: 'reply', recorded: true });
  await ringUntil(epochMs(again.clock.now() + 86_400_000), again.ringer, again.clock);
  expect(again.faults).toEqual([]);
});
