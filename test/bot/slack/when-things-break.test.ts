// What the crew sees when a message is deleted, an address has run out, the record cannot be written, or Slack was away.

import { afterEach, describe, expect, test } from 'vitest';
import { respond } from '../../../bot/slack/respond.ts';
import type { KeptPost, Store } from '../../../core/ports.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { post } from './fake/deliveries.ts';
import { startFakeSlack } from './fake/fake-slack.ts';
import { gate } from './fake/gate.ts';
import { quickPace } from './fake/quick-pace.ts';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

describe('a batch’s message', () => {
  test('that somebody deleted is posted again, and goes on from there', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    shop.fake.messages.length = 0;
    await shop.types('weigh 1 1201g 1198g');
    await shop.types('air 25C 48%');
    expect(shop.batch().text).toContain('Batch 1 Demo Clear: mixing time runs');
  });

  test('whose post was taken and dropped is found, and not posted twice', async () => {
    shop = await openWorkshop();
    shop.fake.fail('chat.postMessage', { is: 'dropped' });
    await shop.types('mix 2.4kg 24C 48%');
    expect(shop.fake.inChannel('C1')).toHaveLength(1);
    await shop.types('weigh 1 1201g 1198g');
    expect(shop.batch().text).toContain('mixing time runs');
  });

  test('is made for a batch that was begun elsewhere, as soon as something is recorded', async () => {
    const store = openSqliteStore(':memory:');
    shop = await openWorkshop({ store });
    const [wired] = shop.wired.values();
    await wired?.host.handle({ text: 'mix 2.4kg 24C 48%', as: 'kari', in: '1', id: undefined });
    await shop.slack.refresh();
    expect(shop.batch().text).toContain('to be weighed');
    await shop.close();
    store.close();
  });

  test('when taken back by undo says so', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    const batch = shop.batch();
    await shop.taps(batch, 'Undo');
    expect(batch.text).toBe('Batch 1: taken back');
  });
});

describe('an answer', () => {
  test('whose one-time address has run out is whispered instead', async () => {
    const clock = Date.now();
    const fake = await startFakeSlack(() => clock);
    const url = fake.responseUrl();
    for (let uses = 1; uses <= 5; uses += 1) expect(await respond(url, { text: 'x', blocks: [] })).toBe(true);
    expect(await respond(url, { text: 'x', blocks: [] })).toBe(false);
    await fake.close();
    shop = await openWorkshop();
    const spent = shop.fake.responseUrl();
    for (let uses = 1; uses <= 5; uses += 1) await respond(spent, { text: 'x', blocks: [] });
    await shop.types('now', 'UKARI', 'C1', spent);
    expect(shop.fake.whispers.at(-1)?.to).toBe('UKARI');
  });

  test('that Slack limits is shown when the limit is over, once', async () => {
    shop = await openWorkshop();
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 20 }, { is: 'limited', seconds: 5 });
    await shop.types('air 24C 48%');
    expect(shop.fake.inChannel('C1').map(({ text }) => text.split('\n')[0])).toEqual(['Air, room']);
  });

  test('to a form that takes longer than Slack waits closes the form at once and is shown afterwards', async () => {
    const sound = openSqliteStore(':memory:');
    let written = Promise.resolve();
    const store: Store = {
      ...sound,
      commit: async (change) => {
        await written;
        return sound.commit(change);
      },
    };
    shop = await openWorkshop({ store });
    await shop.types('air 24C 48%');
    await shop.opensHome();
    await shop.tapsHome('New batch…');
    const { until, letGo } = gate();
    written = until;
    const { status, body } = await post(shop.slack.port() ?? 0, shop.filledIn({ amount: '2.4' }));
    expect([status, body]).toEqual([200, '']);
    expect(shop.fake.inChannel('C1').map(({ text }) => text.split('\n')[0])).toEqual(['Air, room']);
    letGo();
    await shop.slack.idle();
    expect(shop.batch().text).toContain('to be weighed');
    await shop.close();
    sound.close();
  });

  test('that neither can be given goes directly', async () => {
    shop = await openWorkshop();
    shop.fake.fail('chat.postEphemeral', { is: 'refused', error: 'channel_not_found' });
    await shop.mentions('now', undefined);
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain('Now');
  });
});

describe('a one-time address', () => {
  test('takes five answers within half an hour: a sixth, or one a millisecond later, goes another way', async () => {
    let now = Date.now();
    const fake = await startFakeSlack(() => now);
    const [often, early, late] = [fake.responseUrl(), fake.responseUrl(), fake.responseUrl()];
    const answer = { text: 'x', blocks: [] };
    for (let uses = 1; uses <= 5; uses += 1) expect(await respond(often, answer)).toBe(true);
    expect(await respond(often, answer)).toBe(false);
    now += 30 * 60_000;
    expect(await respond(early, answer)).toBe(true);
    now += 1;
    expect(await respond(late, answer)).toBe(false);
    await fake.close();
    shop = await openWorkshop();
    const url = shop.fake.responseUrl();
    shop.clock.moveTo(epochMs(shop.clock.now() + 30 * 60_000 + 1));
    await shop.types('now', 'UKARI', 'C1', url);
    expect(shop.fake.whispers.at(-1)?.to).toBe('UKARI');
  });
});

describe('an answer that others wait behind', () => {
  test('is posted before what was said earlier loses its taps', async () => {
    let over: () => void = () => undefined;
    const isOver = new Promise<void>((resolve) => {
      over = resolve;
    });
    const quick = quickPace();
    const wait = (ms: number) => (ms > 20_000 ? isOver.then(() => quick.wait(ms)) : quick.wait(ms));
    shop = await openWorkshop({ pace: { ...quick, wait } });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    const { ts } = shop.batch();
    shop.fake.fail('chat.update', { is: 'limited', seconds: 30 });
    const said = shop.mentions('stop', ts);
    await expect.poll(() => shop.fake.inThread(ts).at(-1)?.text).toContain('Batch 1: stirrer off');
    expect(shop.batch().text).toContain('[Stirrer off]');
    over();
    await said;
    expect(shop.batch().text).not.toContain('[Stirrer off]');
  });
});

describe('a record that cannot be read', () => {
  test('is "not recorded" to whoever typed, tapped or filled in a form, in the words of the crew’s file', async () => {
    const sound = openSqliteStore(':memory:');
    let lost = false;
    const fails = () => Promise.reject(new Error('disk lost'));
    const store: Store = {
      ...sound,
      head: (...asked) => (lost ? fails() : sound.head(...asked)),
      answersTo: (...asked) => (lost ? fails() : sound.answersTo(...asked)),
    };
    const people = bayTwo.people.map((person) => (person.name === 'jo' ? { ...person, language: 'es' } : person));
    shop = await openWorkshop({ store, crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.taps(shop.batch(), 'Weighed…', 'UJO');
    lost = true;
    await shop.types('air 24C 48%', 'UKARI');
    expect(shop.fake.whispers.at(-1)?.text).toContain('Not recorded');
    await shop.types('air 24C 48%', 'UJO');
    // The lead has it directly; whoever typed reads who was told only after that.
    expect(shop.fake.whispers.slice(-2).map(({ text }) => text.split('\n')[0])).toEqual([
      'Sin anotar',
      'Avisados: kari',
    ]);
    const before = shop.fake.whispers.length;
    await shop.fills({ 'part-a': '1201', 'part-b': '1198' }, 'UJO');
    await shop.taps(shop.batch(), 'Undo', 'UJO');
    expect(shop.fake.whispers.slice(before).map(({ text }) => text.split('\n')[0])).toEqual([
      'Sin anotar',
      'Avisados: kari',
      'Sin anotar',
      'Avisados: kari',
    ]);
    lost = false;
    await shop.close();
    sound.close();
  });
});

describe('a record that cannot be written', () => {
  test('is "not recorded" to whoever typed, and the lead is told directly', async () => {
    const sound = openSqliteStore(':memory:');
    let full = false;
    const store: Store = {
      ...sound,
      commit: (change) => (full ? Promise.reject(new Error('disk full')) : sound.commit(change)),
    };
    shop = await openWorkshop({ store });
    full = true;
    await shop.types('air 24C 48%', 'UJO');
    const [answer, told] = shop.fake.whispers.slice(-2).map(({ text }) => text.split('\n'));
    expect(answer).toEqual(expect.arrayContaining(['Not recorded', 'To tell: kari']));
    expect(answer?.join(' ')).not.toContain('is told');
    expect(told).toEqual(['Told: kari']);
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain('Not recorded');
    full = false;
    await shop.types('air 24C 48%', 'UJO');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Said by jo');
    await shop.close();
    sound.close();
  });
});

describe('Slack', () => {
  test('being away while a bell is due makes it ring late, once, and say how late', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(101);
    shop.fake.setDown(true);
    for (let minute = 0; minute < 5; minute += 1) {
      shop.clock.moveTo(epochMs(shop.clock.now() + 60_000));
      for (const { ringer } of shop.wired.values()) await ringer.ringDue();
    }
    shop.fake.setDown(false);
    await shop.passes(2);
    const bells = shop.fake.messages.filter(({ text }) => text.startsWith('Batch 1: stirring done'));
    expect(bells).toHaveLength(1);
    expect(bells[0]?.text).toMatch(/Late by \d+ min/);
  });
});

describe('the front end’s memory', () => {
  const at = epochMs(1_772_438_400_000);
  const twoDays = 2 * 24 * 3_600_000;

  test('takes a delivery in once, keeps what is unfinished, and forgets what is long done', () => {
    const postbox = openSqlitePostbox(':memory:');
    expect(postbox.takeIn({ id: 'a', at, content: '1' })).toBe(true);
    expect(postbox.takeIn({ id: 'a', at, content: '1' })).toBe(false);
    expect(postbox.unfinished()).toEqual([{ id: 'a', content: '1' }]);
    postbox.finish('a');
    expect(postbox.unfinished()).toEqual([]);
    expect(postbox.takeIn({ id: 'a', at: epochMs(at + twoDays), content: '1' })).toBe(false);
    expect(postbox.takeIn({ id: 'a', at: epochMs(at + twoDays + 1), content: '1' })).toBe(true);
    postbox.close();
  });

  test('keeps the name of a message as the string that it is', () => {
    const postbox = openSqlitePostbox(':memory:');
    const post: KeptPost = {
      ...{ team: 'T1', channel: 'C1', ts: '1772438400.000100', crew: 'crew', subject: 'batch/1', role: 'standing' },
      ...{ thread: undefined, version: 1, shown: '', open: true },
    };
    postbox.keep(post);
    expect(postbox.postAt('T1', 'C1', '1772438400.0001')).toBeUndefined();
    expect(postbox.standingOf('crew', 'batch/1')).toEqual(post);
    expect(postbox.standingOf('other', 'batch/1')).toBeUndefined();
    postbox.keep({ ...post, open: false });
    expect(postbox.openPosts('crew')).toEqual([]);
    postbox.close();
  });
});
