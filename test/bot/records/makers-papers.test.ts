// The maker's papers on a card: what the sheet names, who has read it, and each opened by a tap. Only what a sheet names is
// read, from its own folder, and no more of it than a paper is big. The sheets are invented.

import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { paperTray } from '../../../bot/records/paper-tray.ts';
import { readSheet, type Sheet } from '../../../core/products/sheet.ts';
import { readSheetFolders } from '../../../core/store/sheet-files.ts';
import { demoShelf } from '../../core/given.ts';
import { sessionTalk, talkAfter, taps } from '../cards/session-talk.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const steps = ['equipment', 'bonding', 'vessel', 'clean-oven', 'clean-room'].map((step) => `confirm ${step} yes`);

describe('papers', () => {
  it('given the demo, then its papers are listed with their revisions, each a tap, and who has read them', async () => {
    const { say } = await talkAfter();
    const told = await say('papers');
    expect(told.card.title).toBe('Papers of Demo Clear');
    expect(told.card.lines.slice(0, 4)).toEqual([
      '1. Demo Clear: instructions, revision 1',
      '2. Demo Clear A: safety data sheet of Part A, revision 1',
      '3. Demo Clear B: safety data sheet of Part B, revision 1',
      'Nobody has said that they have read them.',
    ]);
    expect(taps(told)).toMatchObject({ 'open-1': 'papers demo-clear 1', 'step-yes': 'confirm papers yes' });
    await say('confirm papers yes');
    const read = await say('papers demo-clear');
    expect(read.card.lines).toContain('Read by omar 08:00.');
    expect(taps(read)).not.toHaveProperty('step-yes');
    expect((await say('@lia: papers')).card.actions.map(({ id }) => id)).toContain('step-yes');
  });

  it('given one is opened, then its file lies in the tray as the maker gave it, and it can be asked for again', async () => {
    const { say } = await talkAfter();
    const { card } = await say('papers 2');
    expect([card.title, card.paper]).toEqual(['Demo Clear A', 'makers-papers/demo-clear-sds-a.txt']);
    expect(card.paperAgain?.line).toBe('papers demo-clear 2');
    expect((await say('papers demo-clear 9')).card.title).toBe('There is no paper 9: there are 3');
  });

  it('given the step that asks whether they are read, then opening them is one tap, and the batch asks no more than that', async () => {
    const { say } = await talkAfter('air 22C 50%', ...steps);
    const asked = await say('mix 1kg');
    expect(asked.card.lines.filter((line) => line.endsWith('?'))).toHaveLength(1);
    expect(taps(asked)['open-papers']).toBe('papers demo-clear');
    const papers = await say('tap open-papers');
    expect(taps(papers)['step-yes']).toBe('confirm 1 papers yes');
    await say('tap step-yes');
    expect((await say('trace 1')).text).toContain('Papers of Demo Clear (revision 1): read by omar 08:00');
  });

  it('given a sheet that names none, then it says so and whom to ask', async () => {
    const { card } = await talkAfter();
    expect((await card('papers demo-build')).lines[0]).toBe(
      'The sheet of Demo Build names no papers. Ask the supplier for them.',
    );
  });

  it('given a Spanish speaker, then in Spanish', async () => {
    const { say } = await talkAfter('set language es');
    const told = await say('documentos');
    expect([told.card.title, told.card.lines[0]]).toEqual([
      'Documentos de Demo Clear',
      '1. Demo Clear: instrucciones, revisión 1',
    ]);
    expect((await say('documentos demo-clear 2')).card.paper).toBe('makers-papers/demo-clear-sds-a.txt');
  });
});

const demo = (): Sheet => {
  const read = demoShelf.get('demo-clear');
  if (read?.kind !== 'sheet') throw new Error('no demo sheet');
  return read.sheet;
};

type Named = { readonly of: string; readonly title?: string; readonly file?: string; readonly address?: string };
const content = (...named: readonly Named[]): string => {
  const papers = named.map((each) => ({ title: 'Own Clear', revision: '3', ...each }));
  const group = { papers: { named: papers, source: 'invented for the test' } };
  return JSON.stringify({ ...demo(), id: 'own-clear', name: 'Own Clear', steps: group });
};

/** A shop with a sheet of its own, whose folder holds what the test laid there. */
function ownShop(...named: readonly Named[]) {
  const folder = mkdtempSync(join(tmpdir(), 'papers-'));
  folders.push(folder);
  writeFileSync(join(folder, 'own-clear.json'), content(...named));
  const beside = join(folder, 'own-clear');
  mkdirSync(beside);
  const shelf = readSheetFolders(['core/products/sheets', folder]);
  return { beside, talk: sessionTalk(undefined, undefined, shipped, undefined, shelf) };
}

describe('what a sheet names', () => {
  it('given a link in its folder that leads elsewhere, or nothing there, then it is not read', async () => {
    const { beside, talk } = ownShop({ of: 'instructions', file: 'lent.pdf' }, { of: 'safety-a', file: 'none.pdf' });
    symlinkSync('/etc/passwd', join(beside, 'lent.pdf'));
    for (const [line, why] of [
      ['papers 1', 'lent.pdf is not in the sheet’s folder'],
      ['papers 2', 'none.pdf is not in the sheet’s folder'],
    ] as const) {
      const { card } = await talk.say(line);
      expect([card.title, card.paper]).toEqual([why, undefined]);
    }
    talk.close();
  });

  it('given a file that is far bigger than a paper, then it is not read', async () => {
    const { beside, talk } = ownShop({ of: 'instructions', file: 'film.pdf' });
    writeFileSync(join(beside, 'film.pdf'), '');
    truncateSync(join(beside, 'film.pdf'), 20_000_001);
    expect((await talk.say('papers 1')).card.title).toBe('film.pdf is over 20 MB');
    talk.close();
  });

  it('given an address, then it is a link, in the text too', async () => {
    const { talk } = ownShop({ of: 'instructions', address: 'https://shop.example/own-clear.pdf' });
    const { card, text } = await talk.say('papers');
    expect(card.links).toEqual([{ label: 'Open: instructions', address: 'https://shop.example/own-clear.pdf' }]);
    expect(text).toContain('Open: instructions: https://shop.example/own-clear.pdf');
    talk.close();
  });

  it.each([
    [{ of: 'instructions', file: '../own-build.json' }, 'file'],
    [{ of: 'instructions', file: '/etc/passwd' }, 'file'],
    [{ of: 'instructions', file: 'a/b.pdf' }, 'file'],
    [{ of: 'instructions', file: 'page.html' }, 'file'],
    [{ of: 'instructions', address: 'http://shop.example/a.pdf' }, 'address'],
    [{ of: 'instructions', address: 'javascript:alert(1)' }, 'address'],
    [{ of: 'price-list', file: 'a.pdf' }, 'of'],
    [{ of: 'instructions' }, ''],
    [{ of: 'instructions', file: 'a.pdf', address: 'https://shop.example/a.pdf' }, ''],
  ])('given %j, then the sheet’s fault is told by its field', (named, field) => {
    const read = readSheet('own-clear.json', content(named));
    expect(read.kind === 'faulty' && read.faults.map((fault) => fault.field)).toEqual([
      ['steps.papers.named.0', ...(field === '' ? [] : [field])].join('.'),
    ]);
  });
});

it('given a paper laid in the tray, then its name leads nowhere else', () => {
  const tray = paperTray(undefined);
  expect(tray.put('makers-papers', '../../etc/own clear.pdf', 'x')).toBe('makers-papers/-..-etc-own-clear.pdf');
  expect(tray.read('makers-papers/../page-secret')).toBeUndefined();
});
