// The terminal is its own machine: it says where the paper, the export and the copy lie, in words and in JSON.

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { chat, folder } from './chat.ts';

const booked = ['air 24C 48%', 'part impeller-7 cast-iron 12mm 0.8m2 max 120C'];

test.each([
  ['traveller impeller-7', 'travellers/traveller-impeller-7.pdf', '%PDF'],
  ['export today csv', 'exports/crew-2026-03-02.csv', '\uFEFF'],
  ['export today jsonl', 'exports/crew-2026-03-02.jsonl', '{'],
  ['backup friday.sqlite', 'copies/friday.sqlite', 'SQLite format 3'],
])('given "%s" with --json, then "file" is where it lies, and the text says so too', async (line, place, begins) => {
  const data = folder();
  const { answers } = await chat([...booked, line], { flags: ['--data', data] });
  const { card, text } = answers.at(-1) ?? {};
  expect(card?.file).toBe(join(data, place));
  expect(text).toContain(`Written: ${join(data, place)}`);
  expect(readFileSync(join(data, place), 'utf8').startsWith(begins)).toBe(true);
  expect(answers[0]?.card.file).toBeUndefined();
});

test('given a path typed at the console, then the copy is there, and the title says its plain name', async () => {
  const data = folder();
  const copy = join(folder(), 'of-the-week', 'friday.sqlite');
  const { out } = await chat([...booked, `backup ${copy}`], { flags: ['--data', data], json: false });
  expect(existsSync(copy)).toBe(true);
  expect(out).toContain('Copied: friday.sqlite');
  expect(out).toContain(`  Written: ${copy}\n`);
  expect(out).not.toContain('in its folder');
});
