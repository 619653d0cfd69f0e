// A crew sets itself up from the home tab, and each its own; what is set there is recorded like any line.

import type { ModalView } from '@slack/types';
import { afterEach, describe, expect, test } from 'vitest';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

/** No file says anything yet. */
const unset = { name: 'crew', zone: 'UTC', people: [] };

async function unsetCrew(): Promise<void> {
  shop = await openWorkshop({ crews: [{ crew: 'crew', file: unset }] });
  shop.fake.users.set('UANA', { name: 'Ana María', tz: 'Europe/Madrid' });
  shop.fake.users.set('UBEA', { name: 'Bea' });
  shop.fake.users.set('ULEO', { name: 'Leo' });
}

const home = (user: string): string => JSON.stringify(shop.fake.homes.get(user));
const form = (): ModalView | undefined => [...shop.fake.views.values()].at(-1);
const field = (id: string) => form()?.blocks.find(({ block_id }) => block_id === id);
const crew = async () => shop.wired.get('crew')?.overview.crew();
const errorsIn = ({ body }: { readonly body: string }): Readonly<Record<string, string>> =>
  (JSON.parse(body) as { errors: Record<string, string> }).errors;

describe('a crew of which nothing is set', () => {
  test('is welcomed at the first opening, told what is missing, and set up with one form', async () => {
    await unsetCrew();
    await shop.opensHome('UANA');
    expect(home('UANA')).toContain('Welcome');
    expect(home('UANA')).toContain('Nobody leads this crew yet');
    expect(home('UANA')).toContain('No channel yet');

    await shop.tapsHome('Set up the crew…', 'UANA');
    // The zone stands there as Slack knows it of whoever opened the form.
    expect(JSON.stringify(field('zone'))).toContain('Europe/Madrid');
    const sent = await shop.fills(
      { crew: 'Bay two (invented)', channel: 'C7', leads: 'UANA', supervisors: 'UBEA', quiet: '22-6' },
      'UANA',
    );
    expect(sent.body).toBe('');
    expect(await crew()).toMatchObject({
      name: 'Bay two (invented)',
      zone: 'Europe/Madrid',
      people: expect.arrayContaining([
        expect.objectContaining({ name: 'Ana María', role: 'lead' }),
        expect.objectContaining({ name: 'Bea', role: 'supervisor' }),
      ]),
    });
    expect((await crew())?.settled.get('quiet')).toEqual([{ name: 'quiet', fromHour: 22, toHour: 6 }]);
    expect(home('UANA')).not.toContain('Nobody leads');
    expect(home('UANA')).toContain('Europe/Madrid');

    // Its channel is welcomed, and told once what was set and by whom.
    const [welcome, told, ...more] = shop.fake.inChannel('C7').map(({ text }) => text);
    expect(welcome).toContain('one message for each');
    expect(told).toContain('Crew: Bay two (invented)');
    expect(told).toContain('Ana María (lead)');
    expect(told).toContain('Said by Ana María');
    expect(more).toEqual([]);
    await shop.types('air 24C 48%', 'UANA', 'C7');
    await shop.types('mix 2.4kg', 'UANA', 'C7');
    expect(shop.batch('C7').text).toContain('Batch 1 Demo Clear');
    // By the crew's wall clock.
    expect(shop.batch('C7').text).toContain('09:00 Ana María');
  });

  test('may be set up by somebody who then is none of its leads', async () => {
    await unsetCrew();
    await shop.opensHome('ULEO');
    await shop.tapsHome('Set up the crew…', 'ULEO');
    const sent = await shop.fills({ crew: 'Bay two', leads: 'UANA', supervisors: 'UBEA' }, 'ULEO');
    expect(sent.body).toBe('');
    expect((await crew())?.people.map(({ name, role }) => `${name} ${role}`)).toEqual(
      expect.arrayContaining(['Ana María lead', 'Bea supervisor', 'Leo crew']),
    );
    // From now on it is theirs to set.
    expect(home('ULEO')).not.toContain('Set up the crew…');
    await shop.opensHome('ULEO');
    await expect(shop.tapsHome('Set up the crew…', 'ULEO')).rejects.toThrow('no button');
  });

  test('with nothing changed in its form records nothing, and says nothing in the channel', async () => {
    await unsetCrew();
    await shop.opensHome('UBEA');
    await shop.tapsHome('Set up the crew…', 'UBEA');
    await shop.fills({ zone: 'UTC' }, 'UBEA');
    expect(await shop.store.eventsAfter('crew', 0)).toEqual([]);
    expect(shop.fake.messages).toEqual([]);
  });

  test('is rung directly while it has no channel', async () => {
    await unsetCrew();
    await shop.writes('air 24C 48%', 'UANA');
    await shop.writes('mix 2.4kg', 'UANA');
    await shop.writes('weigh 1 1201g 1198g', 'UANA');
    await shop.passes(103);
    const bell = shop.fake.inChannel('DUANA').find(({ text }) => text.startsWith('Batch 1: stirring done'));
    expect(bell?.text).toContain('Stop the stirrer');
  });
});

describe('the crew’s form', () => {
  test('says beside its field what cannot be, keeps what could be set, and takes the correction', async () => {
    await unsetCrew();
    await shop.opensHome('UANA');
    await shop.tapsHome('Set up the crew…', 'UANA');
    shop.fake.strange.add('C9');
    const wrong = await shop.fills({ crew: 'Bay two', zone: 'Madrit', channel: 'C9' }, 'UANA');
    expect(Object.keys(errorsIn(wrong)).sort()).toEqual(['channel', 'zone']);
    expect(errorsIn(wrong).channel).toContain('/invite');
    expect(errorsIn(wrong).zone).toContain('Madrit');
    expect((await crew())?.name).toBe('Bay two');
    shop.fake.strange.delete('C9');
    const right = await shop.fills({ crew: 'Bay two', zone: 'madrid', channel: 'C9' }, 'UANA');
    expect(right.body).toBe('');
    expect((await crew())?.zone).toBe('Europe/Madrid');
    expect(shop.fake.inChannel('C9')).not.toEqual([]);
  });

  test('opened before a lead was named is refused afterwards, field by field', async () => {
    await unsetCrew();
    await shop.opensHome('ULEO');
    await shop.tapsHome('Set up the crew…', 'ULEO');
    await shop.writes('set role "Ana María" lead', 'UANA');
    const sent = await shop.fills({ crew: 'Bay of Leo', channel: 'C7', zone: 'UTC' }, 'ULEO');
    expect(errorsIn(sent).crew).toContain('That is for a lead to set: Ana María.');
    expect(errorsIn(sent).channel).toContain('That is for a lead to set: Ana María.');
    expect((await crew())?.name).toBe('crew');
  });

  test('does not ask for a channel that the file names, and takes no role from whom Slack does not know', async () => {
    const people = [...bayTwo.people, { name: 'olga', role: 'lead' }];
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    await shop.opensHome('UKARI');
    await shop.tapsHome('Set up the crew…', 'UKARI');
    expect(field('channel')).toBeUndefined();
    await shop.fills({ leads: 'UKARI UJO', zone: 'UTC' }, 'UKARI');
    expect((await crew())?.people.map(({ name, role }) => `${name} ${role}`)).toEqual([
      'kari lead',
      'jo lead',
      'ines supervisor',
      'olga lead',
    ]);
  });

  test('takes no channel that is another crew’s', async () => {
    const others = { ...bayTwo, people: [], slackChannels: ['C1'] };
    const own = { ...bayTwo, people: [{ name: 'kari', role: 'lead', slack: 'UKARI' }], slackChannels: undefined };
    shop = await openWorkshop({
      crews: [
        { crew: 'one', file: others },
        { crew: 'two', file: own },
      ],
    });
    await shop.opensHome('UKARI');
    await shop.tapsHome('Set up the crew…', 'UKARI');
    expect(errorsIn(await shop.fills({ channel: 'C1', zone: 'UTC' })).channel).toBe('That is another crew’s channel.');
    expect((await shop.fills({ channel: 'C2', zone: 'UTC' })).body).toBe('');
    await shop.types('air 24C 48%', 'UKARI', 'C2');
    expect(await shop.store.eventsAfter('two', 0)).toHaveLength(1);
  });
});

describe('one’s own settings', () => {
  test('language, units and where bells go are set by each for themselves', async () => {
    shop = await openWorkshop();
    await shop.opensHome('UJO');
    await shop.tapsHome('My settings…', 'UJO');
    await shop.fills({ language: 'es', units: 'us', rings: 'direct' }, 'UJO');
    expect(home('UJO')).toContain('Usted: jo');
    expect(shop.fake.inChannel('C1')).toEqual([]);

    await shop.types('air 24C 48%', 'UJO');
    await shop.types('mix 2.4kg', 'UJO');
    await shop.types('weigh 1 1201g 1198g', 'UJO');
    await shop.passes(103);
    const [bell] = shop.fake.inChannel('DUJO').filter(({ text }) => text.includes('Mezcla 1'));
    expect(bell?.text).toContain('agitado');
    // The others' stay as they were.
    await shop.opensHome('UKARI');
    expect(home('UKARI')).toContain('You are kari');
  });

  test('are for everybody: who may not set up the crew still has them', async () => {
    shop = await openWorkshop();
    await shop.opensHome('UJO');
    expect(home('UJO')).not.toContain('Set up the crew…');
    expect(home('UJO')).toContain('My settings…');
  });
});

describe('the home tab of somebody without a crew', () => {
  test('says so, and how to come into one', async () => {
    const one = { ...bayTwo, slackChannels: ['C1'] };
    const two = { ...bayTwo, people: [{ name: 'rosa', role: 'lead', slack: 'UROSA' }], slackChannels: ['C2'] };
    shop = await openWorkshop({
      crews: [
        { crew: 'one', file: one },
        { crew: 'two', file: two },
      ],
    });
    await shop.opensHome('UNEW');
    expect(home('UNEW')).toContain('I do not know your crew');
  });
});
