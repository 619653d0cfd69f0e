// A bell to several people, each told their own way: nobody is left out because a post failed, nobody is told twice, and
// who cannot be woken in Slack has somebody who can.

import { afterEach, describe, expect, test } from 'vitest';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { startFakeSlack } from './fake/fake-slack.ts';
import { quickPace } from './fake/quick-pace.ts';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

/** kari is called in the thread, omar directly; jo works. */
const twoLeads = {
  ...bayTwo,
  people: [
    { name: 'kari', role: 'lead', slack: 'UKARI' },
    { name: 'omar', role: 'lead', slack: 'UOMAR', rings: 'direct' },
    { name: 'jo', role: 'crew', slack: 'UJO' },
  ],
};
const done = 'Batch 1: stirring done';
const rang = (title = done) => shop.fake.messages.filter(({ text }) => text.startsWith(title));
const called = () => rang().map(({ channel, text }) => [channel, /<@(\w+)>/.exec(text)?.[1]]);

/** Until just before what jo leaves unanswered goes on to both leads. */
async function unanswered(): Promise<void> {
  shop = await openWorkshop({ crews: [{ crew: 'crew', file: twoLeads }] });
  await shop.types('mix 2.4kg 24C 48%', 'UJO');
  await shop.types('weigh 1 1201g 1198g', 'UJO');
  await shop.passes(111.5);
}

describe('a bell to two people with different ways', () => {
  test('whose one post is turned away reaches that one in a moment, and the other not again', async () => {
    await unanswered();
    expect(called()).toEqual([['C1', 'UJO']]);
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 1 });
    await shop.passes(2);
    expect(called().slice(1)).toEqual([
      ['C1', 'UKARI'],
      ['DUOMAR', undefined],
    ]);
    const events = await shop.store.eventsUnder('crew', 'batch/1');
    const rings = events.flatMap(({ body }) => (body.type === 'Rang' ? [body.to] : []));
    expect(rings).toEqual([['jo'], ['kari', 'omar']]);
  });

  test('whose one post had no answer is looked for, and rung again for nobody', async () => {
    await unanswered();
    shop.fake.fail('chat.postMessage', { is: 'dropped' });
    await shop.passes(2);
    expect(called().slice(1)).toEqual([
      ['DUOMAR', undefined],
      ['C1', 'UKARI'],
    ]);
  });

  test('whose one post broke is rung for that one again', async () => {
    await unanswered();
    shop.fake.fail('chat.postMessage', { is: 'broken', status: 500 });
    await shop.passes(2);
    expect(called().slice(1)).toEqual([
      ['C1', 'UKARI'],
      ['DUOMAR', undefined],
    ]);
  });

  test('who cannot be written to directly is called in the thread', async () => {
    await unanswered();
    shop.fake.fail('conversations.open', { is: 'refused', error: 'user_disabled' });
    await shop.passes(2);
    expect(called().slice(1)).toEqual([['C1', 'UKARI']]);
    expect(rang().at(-1)?.text).toContain('<@UKARI> <@UOMAR>');
  });
});

describe('a bell that was posted just before a stop', () => {
  test('is known after it, and not rung again', async () => {
    const now = () => shop.clock.now();
    const [store, postbox] = [openSqliteStore(':memory:'), openSqlitePostbox(':memory:')];
    const fake = await startFakeSlack(() => now());
    let isFull = false;
    const failing = {
      ...store,
      commit: (change: Parameters<typeof store.commit>[0]) =>
        isFull ? Promise.reject(new Error('disk full')) : store.commit(change),
    };
    shop = await openWorkshop({ store: failing, postbox, fake });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(101);
    isFull = true;
    shop.clock.moveTo(epochMs(now() + 60_000));
    for (const { ringer } of shop.wired.values()) await ringer.ringDue();
    expect(rang()).toHaveLength(1);
    const at = new Date(now() + 60_000).toISOString();
    await shop.close();
    isFull = false;
    shop = await openWorkshop({ store, postbox, fake, at });
    await shop.passes(2);
    expect(rang()).toHaveLength(1);
    const events = await store.eventsUnder('crew', 'batch/1');
    expect(events.filter(({ body }) => body.type === 'Rang' && body.key.endsWith('stir-done'))).toHaveLength(1);
    await shop.close();
    await fake.close();
    postbox.close();
    store.close();
  });
});

describe('a bell of a batch that has no message yet', () => {
  test('waits for no limit, and rings in the channel when that is over', async () => {
    const pace = quickPace();
    shop = await openWorkshop({ pace });
    const [wired] = shop.wired.values();
    const says = (text: string) => wired?.host.handle({ text, as: 'kari', in: text, id: undefined });
    await says('mix 2.4kg 24C 48%');
    await says('weigh 1 1201g 1198g');
    shop.clock.moveTo(epochMs(shop.clock.now() + 102 * 60_000));
    shop.fake.fail('chat.postMessage', ...Array.from({ length: 5 }, () => ({ is: 'limited' as const, seconds: 30 })));
    await wired?.ringer.ringDue();
    expect(pace.waits.filter((ms) => ms > 1_000)).toEqual([]);
    expect(shop.fake.calls.filter(({ method }) => method === 'chat.postMessage')).toHaveLength(1);
    await pace.wait(31_000);
    // The other four limits were for tries that nobody made.
    for (let left = 0; left < 4; left += 1) {
      shop.clock.moveTo(epochMs(shop.clock.now() + 30_000));
      await wired?.ringer.ringDue();
      await pace.wait(31_000);
    }
    shop.clock.moveTo(epochMs(shop.clock.now() + 30_000));
    await wired?.ringer.ringDue();
    expect(called()).toEqual([['C1', 'UKARI']]);
    expect(rang()[0]?.thread).toBeUndefined();
  });
});

describe('a bell to somebody whom Slack does not know', () => {
  test('mentions a lead, and says for whom it is', async () => {
    const people = [...bayTwo.people, { name: 'bo', role: 'crew' }];
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    const [wired] = shop.wired.values();
    const says = (text: string) => wired?.host.handle({ text, as: 'bo', in: text, id: undefined });
    await says('mix 2.4kg 24C 48%');
    await says('weigh 1 1201g 1198g');
    await shop.slack.refresh();
    await shop.passes(102);
    expect(called()).toEqual([['C1', 'UKARI']]);
    expect(rang()[0]?.text).toContain('For bo, whom Slack does not know here: pass it on.');
  });
});

describe('what a bell says', () => {
  test('directly too begins with what to do, in its text and on its face', async () => {
    const people = bayTwo.people.map((person) => (person.name === 'kari' ? { ...person, rings: 'direct' } : person));
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(102);
    const [bell] = rang();
    expect(bell?.channel).toBe('DUKARI');
    expect(bell?.text.split('\n')[1]).toBe('Stop the stirrer, then filter.');
    const face = JSON.stringify(bell?.blocks);
    expect(face.indexOf('Stop the stirrer')).toBeLessThan(face.indexOf('Finish by'));
    // What the ring has used up is left out.
    expect(bell?.text).not.toContain('Stirring wanted');
    expect(bell?.text).not.toContain('Stirred');
  });

  test('when nobody answered says that after what to do', async () => {
    await unanswered();
    await shop.passes(2);
    const lines = rang().at(-1)?.text.split('\n') ?? [];
    expect(lines[1]).toBe('Stop the stirrer, then filter.');
    expect(lines.indexOf('Ring 2: nobody has answered.')).toBeGreaterThan(1);
  });
});
