// Bells in Slack: whom they reach, and what happens when Slack is busy, broken, slow or silent after taking them.

import { afterEach, describe, expect, test } from 'vitest';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

async function stirring(file: Readonly<Record<string, unknown>> = bayTwo, logged: string[] = []): Promise<void> {
  shop = await openWorkshop({ crews: [{ crew: 'crew', file }], logged });
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
}
const rang = (title: string) => shop.fake.messages.filter(({ text }) => text.startsWith(title));
const done = 'Batch 1: stirring done';

describe('a bell', () => {
  test('mentions the one person who must act, in the thread of the batch', async () => {
    await stirring();
    await shop.passes(102);
    const [bell] = rang(done);
    expect(bell?.thread).toBe(shop.batch().ts);
    expect(bell?.text.split('\n')[0]).toBe(`${done} <@UKARI>`);
    expect(rang(done)).toHaveLength(1);
  });

  test('goes directly to who chose that', async () => {
    const people = bayTwo.people.map((person) => (person.name === 'kari' ? { ...person, rings: 'direct' } : person));
    await stirring({ ...bayTwo, people });
    await shop.passes(102);
    expect(rang(done).map(({ channel }) => channel)).toEqual(['DUKARI']);
  });

  test('whose channel is shut reaches its people directly', async () => {
    await stirring();
    shop.fake.fail('chat.postMessage', { is: 'refused', error: 'is_archived' });
    await shop.passes(102);
    expect(rang(done).map(({ channel }) => channel)).toEqual(['DUKARI']);
  });

  test('goes on to a supervisor by user group who has never said a word', async () => {
    const people = bayTwo.people.filter(({ role }) => role !== 'supervisor');
    const file = { ...bayTwo, people, slackGroups: { supervisor: ['SSUP'] } };
    shop = await openWorkshop({ crews: [{ crew: 'crew', file }] });
    shop.fake.groups.set('SSUP', ['UMAX']);
    shop.fake.users.set('UMAX', { name: 'Max' });
    await shop.readsGroups();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(123);
    expect(rang(done).some(({ text }) => text.includes('<@UMAX>'))).toBe(true);
  });

  test('that nobody answers goes on to the lead by mention and to the supervisor directly', async () => {
    await stirring({ ...bayTwo, people: bayTwo.people.map((person) => ({ ...person })) });
    await shop.types('mix 1kg', 'UJO');
    await shop.types('weigh 2 500g 500g', 'UJO');
    await shop.passes(125);
    const second = rang('Batch 2: stirring done');
    expect(second.map(({ channel, text }) => [channel, /<@(\w+)>/.exec(text)?.[1]])).toEqual([
      ['C1', 'UJO'],
      ['C1', 'UKARI'],
      ['DUINES', undefined],
    ]);
  });

  test('rings in the thread of the batch from which a part was coated', async () => {
    await stirring();
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    await shop.passes(15);
    expect(rang('impeller-7: flash-off, least time over')[0]?.thread).toBe(shop.batch().ts);
  });

  test('about the air of a place rings in the channel, with a mention', async () => {
    await stirring();
    await shop.passes(300);
    const [bell] = rang('Read the air');
    expect(bell?.thread).toBeUndefined();
    expect(bell?.text).toContain('<@UKARI>');
  });
});

describe('a bell that Slack', () => {
  test('turns away is rung again soon, once', async () => {
    await stirring();
    shop.fake.fail('chat.postMessage', { is: 'refused', error: 'not_in_channel' });
    await shop.passes(103);
    expect(rang(done)).toHaveLength(1);
  });

  test('limits is not waited for by the ringer, and rings when the limit is over', async () => {
    const logged: string[] = [];
    await stirring(bayTwo, logged);
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 30 });
    await shop.passes(102);
    const before = shop.fake.calls.filter(({ method }) => method === 'chat.postMessage').length;
    expect(rang(done)).toHaveLength(0);
    expect(logged.join('')).toContain('bell-not-posted');
    // Tried again within the limit: no call is made.
    for (const { ringer } of shop.wired.values()) await ringer.ringDue();
    expect(shop.fake.calls.filter(({ method }) => method === 'chat.postMessage')).toHaveLength(before);
  });

  test('took and then dropped is looked for by its key, and not rung twice', async () => {
    await stirring();
    shop.fake.fail('chat.postMessage', { is: 'dropped' });
    await shop.passes(104);
    expect(rang(done)).toHaveLength(1);
    expect(shop.fake.calls.some(({ method }) => method === 'conversations.replies')).toBe(true);
    const events = await shop.store.eventsUnder('crew', 'batch/1');
    expect(events.filter(({ body }) => body.type === 'Rang' && body.key.endsWith('stir-done'))).toHaveLength(1);
  });

  test('broke on is looked for, not found, and rung once', async () => {
    await stirring();
    shop.fake.fail('chat.postMessage', { is: 'broken', status: 500 });
    await shop.passes(104);
    expect(rang(done)).toHaveLength(1);
  });

  test('broke on and cannot be asked about is rung once more, marked as perhaps told before', async () => {
    await stirring();
    shop.fake.fail('chat.postMessage', { is: 'dropped' });
    shop.fake.fail('conversations.replies', { is: 'broken', status: 500 });
    await shop.passes(104);
    expect(rang(done)).toHaveLength(2);
    expect(rang(done)[1]?.text).toContain('Perhaps told before');
  });
});
