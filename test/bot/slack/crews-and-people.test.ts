// Who is who, and whose channel it is: several crews side by side, roles by user group, names that nobody can borrow; and
// what is logged of all that.

import { afterEach, describe, expect, test } from 'vitest';
import { mentions } from './fake/deliveries.ts';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const bayThree = {
  name: 'bay 3 (invented)',
  zone: 'UTC',
  people: [{ name: 'ole', role: 'lead', slack: 'UOLE' }],
  slackChannels: ['C3'],
};
const two = {
  crews: [
    { crew: 'bay-2', file: bayTwo },
    { crew: 'bay-3', file: bayThree },
  ],
};

describe('two crews in one workspace', () => {
  test('have their own batches, numbers and bells, and neither sees the other’s', async () => {
    shop = await openWorkshop(two);
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('mix 1kg 22C 50%', 'UOLE', 'C3');
    expect(shop.batch('C1').text).toContain('Batch 1 Demo Clear: to be weighed\nPart A: 1200 g');
    expect(shop.batch('C3').text).toContain('Batch 1 Demo Clear: to be weighed\nPart A: 500 g');
    await shop.types('weigh 1 500g 500g', 'UOLE', 'C3');
    await shop.passes(110);
    const bells = shop.fake.messages.filter(({ text }) => text.startsWith('Batch 1: stirring done'));
    expect(new Set(bells.map(({ channel }) => channel))).toEqual(new Set(['C3']));
    await shop.types('now', 'UJO', 'C1');
    expect(shop.fake.whispers.at(-1)?.text).not.toContain('500 g');
  });

  test('are told apart in a direct message by where somebody belongs', async () => {
    shop = await openWorkshop(two);
    await shop.types('mix 1kg 22C 50%', 'UOLE', 'C3');
    await shop.writes('weigh 1 500g 500g', 'UOLE');
    expect(shop.batch('C3').text).toContain('weighed A 500 g');
  });
});

describe('a channel', () => {
  test('that is no crew’s is told which id belongs in the file, and records nothing', async () => {
    shop = await openWorkshop();
    await shop.types('air 24C 48%', 'UKARI', 'C9');
    expect(shop.fake.whispers.at(-1)?.text).toContain('C9');
    expect((await shop.store.head('crew')).seq).toBe(0);
  });

  test('becomes the crew’s where its file names none: the first into which it is invited, with a welcome once', async () => {
    const { slackChannels: _, ...file } = bayTwo;
    shop = await openWorkshop({ crews: [{ crew: 'crew', file }] });
    await shop.joins('C7');
    await shop.joins('C7');
    expect(shop.fake.inChannel('C7').map(({ text }) => text.split('\n')[0])).toEqual(['Batchbell']);
    await shop.types('mix 2.4kg 24C 48%', 'UKARI', 'C7');
    expect(shop.batch('C7').text).toContain('to be weighed');
    await shop.types('now', 'UKARI', 'C8');
    expect(shop.fake.whispers.at(-1)?.text).toContain('no crew’s');
  });
});

describe('an invitation', () => {
  test('into a channel of no crew is answered there: which id belongs in the file', async () => {
    shop = await openWorkshop();
    await shop.joins('C9');
    expect(shop.fake.inChannel('C9').map(({ text }) => text)).toEqual([
      expect.stringContaining('This channel is no crew’s. Its id is C9'),
    ]);
  });
});

describe('a workspace that is not ours', () => {
  test('whose people are guests here speaks in the batch’s thread like anybody', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('mix 1kg');
    const [first] = shop.fake.inChannel('C1').filter(({ key }) => key?.includes('standing/'));
    const { is, body } = mentions('weigh 1201g 1198g', { thread_ts: first?.ts, ts: '1772438400.000100' });
    await shop.deliver({ is, body: { ...body, team_id: 'T2' } });
    expect(first?.text).toContain('mixing time runs');
  });

  test('or an app installed for a whole organisation, whose taps name no team, changes nothing', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.taps(shop.batch(), 'Stirrer off', 'UKARI', { body: { team: null, is_enterprise_install: true } });
    expect(shop.batch().text).toContain('stirrer off');
  });
});

describe('somebody whom the file does not name', () => {
  test('speaks under the name that Slack shows, kept for good', async () => {
    shop = await openWorkshop();
    shop.fake.users.set('UANA', { name: 'Ana' });
    await shop.types('air 24C 48%', 'UANA');
    shop.fake.users.set('UANA', { name: 'Ana Maria' });
    await shop.types('air 23C 48%', 'UANA');
    const events = await shop.store.eventsAfter('crew', 0);
    expect(events.map(({ by }) => by)).toEqual(['Ana', 'Ana']);
  });

  test('is asked for again while Slack does not tell of them, and then spoken to in their language', async () => {
    shop = await openWorkshop();
    shop.fake.users.set('UANA', { name: 'Ana', locale: 'es-ES' });
    await shop.types('now', 'UANA');
    const { fake, store, postbox } = shop;
    const again = await openWorkshop({ fake, store, postbox });
    fake.fail('users.info', { is: 'broken', status: 500 });
    await again.types('now', 'UANA');
    expect(fake.whispers.at(-1)?.text).toContain('Now');
    await again.types('now', 'UANA');
    expect(fake.whispers.at(-1)?.text).toContain('Ahora');
    await again.close();
  });

  test('whose name another had before has another name, also after a restart', async () => {
    shop = await openWorkshop();
    shop.fake.users.set('UANA', { name: 'Ana' });
    shop.fake.users.set('UOTHER', { name: 'ana' });
    await shop.types('air 24C 48%', 'UANA');
    const { fake, store, postbox } = shop;
    const again = await openWorkshop({ fake, store, postbox });
    await again.types('air 23C 48%', 'UOTHER');
    const events = await store.eventsAfter('crew', 0);
    expect(events.map(({ by }) => by)).toEqual(['Ana', 'ana (UOTHER)']);
    await again.close();
  });

  test.each(['Kari', 'KARÍ'])('does not become the lead by calling himself %s', async (name) => {
    shop = await openWorkshop();
    shop.fake.users.set('UBAD', { name });
    await shop.types('mix 2.4kg permit hurry', 'UBAD');
    expect((await shop.store.head('crew')).seq).toBe(0);
    await shop.types('air 24C 48%', 'UBAD');
    const [event] = await shop.store.eventsAfter('crew', 0);
    expect(event?.by).toBe(`${name} (UBAD)`);
    await shop.types('set sheet demo-build', 'UBAD');
    expect((await shop.store.head('crew')).seq).toBe(1);
  });

  test('has the role that a user group gives', async () => {
    const file = { ...bayTwo, slackGroups: { supervisor: ['SSUP'] } };
    shop = await openWorkshop({ crews: [{ crew: 'crew', file }] });
    shop.fake.groups.set('SSUP', ['UMAX']);
    shop.fake.users.set('UMAX', { name: 'Max' });
    const [desk] = shop.wired.values();
    await shop.readsGroups();
    await shop.types('air 24C 48%', 'UMAX');
    expect((await desk?.overview.voice('Max'))?.role).toBe('supervisor');
  });

  test('whom Slack cannot name for now is recorded by id, and by name the next time', async () => {
    shop = await openWorkshop();
    shop.fake.users.set('UANA', { name: 'Ana' });
    shop.fake.fail('users.info', { is: 'broken', status: 500 });
    await shop.types('air 24C 48%', 'UANA');
    await shop.types('air 23C 48%', 'UANA');
    const events = await shop.store.eventsAfter('crew', 0);
    expect(events.map(({ by }) => by)).toEqual(['UANA', 'Ana']);
  });
});

describe('the log', () => {
  test('holds no token and none of what people typed, also where things go wrong', async () => {
    const logged: string[] = [];
    shop = await openWorkshop({ logged });
    shop.fake.fail('chat.postMessage', { is: 'refused', error: 'is_archived' });
    shop.fake.fail('views.open', { is: 'broken', status: 500 });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('hold impeller-7 secretword');
    await shop.types('mix 2.4kg');
    await shop.taps(shop.batch(), 'Weighed…');
    const said = mentions('secretword', { thread_ts: undefined, ts: '1772438400.000100' });
    await shop.deliver(said);
    await shop.deliver(said);
    const log = logged.join('');
    expect(log).toContain('form-not-opened');
    expect(log).toContain('delivered-again');
    for (const secret of ['xoxb', 'xapp', 'invented-signing-secret', 'secretword', '2.4kg', 'hooks.slack.com']) {
      expect(log).not.toContain(secret);
    }
  });
});
