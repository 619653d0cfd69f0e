// What a respirator is worth for spraying, asked and never recorded. Factors: 29 CFR 1910.134(d)(3)(i)(A), Table 1; the booth and its
// fan invented.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const booth = ['air 24C 48%', 'set booth 4m2', 'mix 2.4kg', 'brief 1 in booth spray kari out lia'];

it('given a half mask with cartridges, then its factor with the source, what it allows of each solvent, and who is fit-tested', async () => {
  const { card } = await talkAfter(...booth, 'fan on 0.6m/s', 'fit kari 2027-03-01');
  const { title, tone, lines, hazards } = await card('respirator halfmask kari');
  expect([title, tone]).toEqual(['Respirator for spraying Demo Clear', 'plain']);
  expect(lines[0]).toBe('Half mask with cartridges: factor 10.');
  // Ten times the lowest published day limit, 50 ppm; below its IDLH of 900 ppm.
  expect(lines.join('\n')).toContain('xylene: up to 500 ppm.');
  expect(lines.join('\n')).toMatch(
    /Estimated in booth, not measured: the vapours together 0\.9\d times their day limits/,
  );
  expect(lines.join('\n')).toContain('Change-out of cartridges: the maker’s figures for these solvents');
  expect(lines.join('\n')).toContain('fit test of kari: until');
  expect(hazards[0]?.source).toBe('29 CFR 1910.134(d)(3)(i)(A), Table 1');
});

it('given nothing named, then all that sprayers wear, with a warning where nobody knows what is breathed', async () => {
  const { card } = await talkAfter();
  const { tone, lines } = await card('what mask for spraying demo-clear');
  expect(tone).toBe('warn');
  expect(lines).toContain('Full face mask with supplied air: factor 1000.');
  expect(lines.join('\n')).toContain('What is breathed there is not known');
});

it('given a sheet that names a sensitiser, then no cartridge whatever its factor', async () => {
  const { card } = await talkAfter();
  const { tone, lines } = await card('mask half cartridge demo-build');
  expect(tone).toBe('stop');
  expect(lines[0]).toContain('NOT here: the sheet names a respiratory sensitiser. Supplied air or no spraying.');
  expect(lines.join('\n')).not.toContain('Change-out');
});

it('given oxygen that was last read low, or a weak fan, then it says so', async () => {
  const { card } = await talkAfter(...booth, 'set booth 1m2', 'fan on 0.2m/s');
  expect((await card('mask half')).lines[0]).toBe('Half mask with cartridges: factor 10, NOT enough here.');
  await card('o2 19.1% in booth');
  expect((await card('mask full cartridge')).lines[0]).toContain('NOT here: the oxygen was last read too low.');
});

it('given supplied air, then what NIOSH counts stands beside the table', async () => {
  const { card } = await talkAfter();
  const { lines } = await card('mask full supplied');
  expect(lines[0]).toBe('Full face mask with supplied air: factor 1000.');
  expect(lines.join('\n')).toContain('NIOSH’s own card counts 50 for supplied air');
});

it('given Spanish, then the same', async () => {
  const { card } = await talkAfter('set language es');
  expect((await card('qué máscara para pintar demo-clear')).lines[0]).toBe('Media máscara con filtros: factor 10.');
});
