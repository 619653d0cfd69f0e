// A paper or an export in Slack: the file itself, where it was asked for, and never a path.

import { afterEach, describe, expect, test } from 'vitest';
import { makeCard } from '../../../bot/cards/card.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { cardMessage } from '../../../bot/slack/card-blocks.ts';
import { gate } from './fake/gate.ts';
import { bayTwo, openWorkshop, type Workshop, type WorkshopOptions } from './fake/workshop.ts';

const pdfName = 'traveller-impeller-7.pdf';
/** As a path of this machine would begin. */
const anyPath = /(?:^|\s)\/(?:\w|\.)+\//;

let shop: Workshop;
let logged: string[];
afterEach(() => shop.close());

async function aPartWithItsBatch(options: WorkshopOptions = {}): Promise<void> {
  logged = [];
  shop = await openWorkshop({ logged, ...options });
  await shop.types('air 24C 48%');
  await shop.types('part impeller-7 cast-iron 12mm 0.8m2 max 120C');
  await shop.types('mix 2.4kg 24C 48%');
}

const onDisk = (paper: string): Buffer => Buffer.from(shop.wired.get('crew')?.papers.read(paper) ?? []);
const places = () => shop.fake.files.map(({ channel, thread, name }) => [channel, thread, name]);
const lastWhisper = () => shop.fake.whispers.at(-1)?.text ?? '';

describe('a traveller', () => {
  test('asked for in a batch’s thread, comes as a file into that thread', async () => {
    await aPartWithItsBatch();
    const thread = shop.batch().ts;
    await shop.mentions('traveller impeller-7', thread);
    expect(places()).toEqual([['C1', thread, pdfName]]);
    const [file] = shop.fake.files;
    expect(file?.content.subarray(0, 4).toString()).toBe('%PDF');
    expect(file?.content.equals(onDisk(`travellers/${pdfName}`))).toBe(true);
    expect([file?.title, file?.alternative]).toEqual(['Traveller: impeller-7', '']);
    expect(lastWhisper()).toContain(`${pdfName} follows here.`);
    expect(lastWhisper()).not.toMatch(anyPath);
  });

  test('asked for in a direct message, comes into it', async () => {
    await aPartWithItsBatch();
    await shop.writes('traveller impeller-7', 'UJO');
    expect(places()).toEqual([['DUJO', undefined, pdfName]]);
    const card = shop.fake.inChannel('DUJO').at(-1);
    expect(card?.text).toContain(`${pdfName} follows here.`);
    expect(card?.text).not.toMatch(anyPath);
  });

  test('asked for by a command in the channel, comes to that person alone, and the card says so', async () => {
    await aPartWithItsBatch();
    const before = shop.fake.inChannel('C1').length;
    await shop.types('traveller impeller-7', 'UJO');
    expect(places()).toEqual([['DUJO', undefined, pdfName]]);
    expect(lastWhisper()).toContain(`${pdfName} follows as a direct message, to you alone.`);
    expect(shop.fake.inChannel('C1')).toHaveLength(before);
  });

  test('of a part that nobody knows, is no file and no promise of one', async () => {
    await aPartWithItsBatch();
    await shop.types('traveller ghost-1');
    expect(shop.fake.files).toEqual([]);
    expect(lastWhisper()).not.toContain('follows');
  });
});

describe('a maker’s paper', () => {
  test('asked for by its tap, comes as a file to who asked', async () => {
    await aPartWithItsBatch();
    await shop.writes('papers demo-clear 1', 'UJO');
    expect(places()).toEqual([['DUJO', undefined, 'demo-clear-tds.txt']]);
    expect(shop.fake.files[0]?.content.toString()).toContain('INVENTED FOR PRACTICE');
    expect(shop.fake.inChannel('DUJO').at(-1)?.text).not.toMatch(anyPath);
  });

  test('that lies elsewhere on the net, is a link', () => {
    const links = [{ label: 'Open: instructions', address: 'https://shop.example/own.pdf?a=1&b=2' }];
    const card = makeCard('Papers of Own Clear', 'plain', { links });
    const { text, blocks } = cardMessage(card, { words: shipped.wordsIn('en'), showing: 'x' });
    expect(JSON.stringify(blocks)).toContain(
      '{"type":"link","url":"https://shop.example/own.pdf?a=1&b=2","text":"Open: instructions"}',
    );
    expect(text).toContain('Open: instructions: https://shop.example/own.pdf?a=1&amp;b=2');
  });
});

describe('an export', () => {
  test.each(['csv', 'jsonl'])('as %s is byte for byte what lies on the machine', async (form) => {
    await aPartWithItsBatch();
    await shop.writes(`export today ${form}`);
    const name = `crew-2026-03-02.${form}`;
    expect(places()).toEqual([['DUKARI', undefined, name]]);
    const content = shop.fake.files[0]?.content;
    expect(content?.byteLength).toBeGreaterThan(500);
    expect(content?.equals(onDisk(`exports/${name}`))).toBe(true);
  });

  test('of a day on which nothing happened, as JSON Lines, is no file: Slack takes none that is empty', async () => {
    await aPartWithItsBatch();
    await shop.writes('export yesterday jsonl');
    expect(shop.fake.files).toEqual([]);
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain('Exported: 0 events');
  });

  test('of two crews, comes from the tray of whoever asked', async () => {
    const other = { ...bayTwo, people: [{ name: 'ola', role: 'lead', slack: 'UOLA' }], slackChannels: ['C9'] };
    const crews = [
      { crew: 'bay-2', file: bayTwo },
      { crew: 'bay-9', file: other },
    ];
    await aPartWithItsBatch({ crews });
    await shop.types('air 19C 61%', 'UOLA', 'C9');
    await shop.types('export today csv', 'UOLA', 'C9');
    const [file, ...more] = shop.fake.files;
    expect(more).toEqual([]);
    expect([file?.channel, file?.name]).toEqual(['DUOLA', 'bay-9-2026-03-02.csv']);
    expect(file?.content.toString()).not.toContain('impeller-7');
  });
});

describe('a copy of the record', () => {
  test('stays on the machine: its card says its plain name, and nothing is uploaded', async () => {
    await aPartWithItsBatch();
    await shop.types('backup friday.sqlite');
    expect(shop.fake.files).toEqual([]);
    expect(shop.fake.calls.map(({ method }) => method)).not.toContain('files.getUploadURLExternal');
    expect(lastWhisper()).toContain('Copied: friday.sqlite');
    expect(lastWhisper()).toContain('It lies on the machine');
    expect(lastWhisper()).not.toMatch(anyPath);
  });
});

describe('a paper that does not arrive', () => {
  test('is told in the same thread, to who asked, and a tap brings it', async () => {
    await aPartWithItsBatch();
    const thread = shop.batch().ts;
    shop.fake.fail('files.getUploadURLExternal', { is: 'refused', error: 'missing_scope' });
    await shop.mentions('traveller impeller-7', thread);
    expect(shop.fake.files).toEqual([]);
    const told = shop.fake.inThread(thread).at(-1);
    expect(told?.text).toContain(`${pdfName} did not arrive <@UKARI>`);
    expect(told?.text).not.toMatch(anyPath);
    if (told === undefined) throw new Error('nothing was told');
    await shop.taps(told, 'Ask for it again');
    expect(places()).toEqual([['C1', thread, pdfName]]);
  });

  test('to one person alone, is told to them alone; the tap on an export asks for the same days', async () => {
    await aPartWithItsBatch();
    shop.fake.setFilesDown(true);
    await shop.types('export today csv', 'UJO');
    shop.fake.setFilesDown(false);
    const told = shop.fake.inChannel('DUJO').at(-1);
    expect(told?.text).toContain('crew-2026-03-02.csv did not arrive');
    expect(
      shop.fake
        .inChannel('C1')
        .map(({ text }) => text)
        .join('\n'),
    ).not.toContain('did not arrive');
    if (told === undefined) throw new Error('nothing was told');
    await shop.passes(24 * 60);
    // The day card has come meanwhile, with its picture.
    await shop.slack.idle();
    shop.fake.files.length = 0;
    await shop.taps(told, 'Ask for it again', 'UJO');
    expect(places()).toEqual([['DUJO', undefined, 'crew-2026-03-02.csv']]);
  });

  test('in Spanish, is told in Spanish', async () => {
    const people = bayTwo.people.map((person) => ({ ...person, language: 'es' }));
    await aPartWithItsBatch({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    shop.fake.fail('files.completeUploadExternal', { is: 'refused', error: 'file_not_found' });
    await shop.writes('hoja de ruta impeller-7');
    const [card, told] = shop.fake.inChannel('DUKARI').slice(-2);
    expect(card?.text).toContain('hoja-de-ruta-impeller-7.pdf llega aquí enseguida.');
    expect(told?.text).toContain('hoja-de-ruta-impeller-7.pdf no llegó');
    expect(told?.text).toContain('[Pídalo otra vez]');
  });

  test('for all that Slack says, is not called lost: it may be there', async () => {
    await aPartWithItsBatch();
    shop.fake.fail('files.completeUploadExternal', { is: 'dropped' });
    await shop.writes('traveller impeller-7');
    expect(shop.fake.files).toHaveLength(1);
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain(`${pdfName} may not have arrived`);
  });

  test('because there is no direct channel, is told where it was asked', async () => {
    await aPartWithItsBatch();
    shop.fake.fail('conversations.open', { is: 'refused', error: 'missing_scope' });
    await shop.types('traveller impeller-7', 'UJO');
    expect(shop.fake.files).toEqual([]);
    expect(lastWhisper()).toContain(`${pdfName} did not arrive`);
  });
});

describe('Slack that takes its time', () => {
  test('limits are waited out, three times, before a paper is given up', async () => {
    await aPartWithItsBatch();
    const limited = { is: 'limited', seconds: 30 } as const;
    shop.fake.fail('files.getUploadURLExternal', limited, limited);
    shop.fake.fail('files.completeUploadExternal', limited);
    await shop.writes('traveller impeller-7');
    expect(shop.fake.files).toHaveLength(1);
    shop.fake.fail('files.getUploadURLExternal', limited, limited, limited, limited);
    await shop.writes('traveller impeller-7');
    expect(shop.fake.files).toHaveLength(1);
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain(`${pdfName} did not arrive`);
    expect(logged.filter((line) => line.includes('file-not-uploaded'))).toHaveLength(1);
  });

  test('over a paper, holds up no other message', async () => {
    await aPartWithItsBatch();
    const { until, letGo } = gate();
    shop.fake.fail('files.getUploadURLExternal', { is: 'held', until });
    const both = Promise.all([shop.types('export today csv'), shop.types('air 25C 50%')]);
    await expect
      .poll(() =>
        shop.fake
          .inChannel('C1')
          .map(({ text }) => text)
          .join(),
      )
      .toContain('25 °C');
    expect(shop.fake.files).toEqual([]);
    letGo();
    await both;
    const calls = shop.fake.calls.map(({ method }) => method);
    expect(shop.fake.files).toHaveLength(1);
    expect(calls.lastIndexOf('chat.postMessage')).toBeLessThan(calls.indexOf('files.completeUploadExternal'));
  });
});
