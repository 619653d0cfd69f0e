// Whom a card calls is called: by a mention in a message that is new, or by one to them alone. Told is said of those whom
// Slack took it to, and of nobody else.

import { afterEach, describe, expect, test } from 'vitest';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

/** Invented: anna and bea lead and supervise, cato works, omar leads and is written to directly. */
const people = [
  { name: 'anna', role: 'lead', slack: 'UANNA' },
  { name: 'bea', role: 'supervisor', slack: 'UBEA' },
  { name: 'cato', role: 'crew', slack: 'UCATO' },
];
const file = { ...bayTwo, people };
const openWith = async (more: readonly object[] = [], of: Readonly<Record<string, unknown>> = {}) => {
  shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...file, people: [...people, ...more], ...of } }] });
};

const mentioned = (text: string) => [...text.matchAll(/<@(\w+)>/g)].map(([, id]) => id);
const direct = (user: string) => shop.fake.inChannel(`D${user}`).map(({ text }) => text);
const lastIn = (channel = 'C1') => shop.fake.inChannel(channel).at(-1);
const linesOf = (text = '') => text.split('\n');

describe('an alarm', () => {
  test.each([
    ['fire', 'Fire'],
    ['down', 'Somebody is down'],
    ['eyes', 'Something in the eyes'],
    ['spill', 'Spill'],
    ['hot pot', 'A pot is heating'],
  ])(
    '%s mentions everybody else in the channel, writes to each, and says then that they were told',
    async (line, title) => {
      await openWith();
      await shop.types(line, 'UCATO');
      const alarm = lastIn();
      expect(linesOf(alarm?.text)[0]).toBe(`${title} <@UANNA> <@UBEA>`);
      expect(linesOf(alarm?.text)).toContain('To tell: anna, bea');
      expect(linesOf(alarm?.text).at(-1)).toBe('Told: anna, bea');
      expect(JSON.stringify(alarm?.blocks)).toContain('Told: anna, bea');
      for (const user of ['UANNA', 'UBEA']) expect(direct(user).map((text) => linesOf(text)[0])).toEqual([title]);
      expect(direct('UCATO')).toEqual([]);
    },
  );

  test('said to the bot alone calls in the crew’s channel, and whoever cried reads there who was told', async () => {
    await openWith();
    await shop.writes('fire', 'UCATO');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UANNA', 'UBEA']);
    expect(direct('UANNA')).toHaveLength(1);
    expect(linesOf(lastIn()?.text).at(-1)).toBe('Told: anna, bea');
  });

  test('names who has no Slack id, who is switched off and whose message fails: somebody has to call them', async () => {
    await openWith([
      { name: 'dora', role: 'lead' },
      { name: 'emil', role: 'lead', slack: 'UEMIL' },
      { name: 'fia', role: 'lead', slack: 'UFIA' },
    ]);
    shop.fake.users.set('UEMIL', { name: 'emil', deleted: true });
    await shop.types('air 24C 48%', 'UCATO');
    shop.fake.fail('conversations.open', { is: 'refused', error: 'cannot_dm_bot' });
    await shop.types('fire', 'UCATO');
    const [told = '', missed = ''] = linesOf(lastIn()?.text).slice(-2);
    expect(missed).toMatch(/^Not reached: .*\. Call them by voice or phone\.$/);
    const all = ['anna', 'bea', 'dora', 'emil', 'fia'];
    const named = (line: string) => all.filter((name) => line.includes(name));
    expect([...named(told), ...named(missed)].sort()).toEqual(all);
    // One of those with an account had the message that failed.
    expect(named(missed)).toHaveLength(3);
    expect(named(missed)).toEqual(expect.arrayContaining(['dora', 'emil']));
    for (const name of named(told)) expect(direct(`U${name.toUpperCase()}`)).toHaveLength(1);
  });

  test('of the one who leads calls the others, and not whoever cried', async () => {
    await openWith();
    await shop.types('fire', 'UANNA');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UBEA', 'UCATO']);
    expect(direct('UANNA')).toEqual([]);
  });

  test('where only whoever cried leads calls everybody else', async () => {
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...file, people: [people[0], people[2]] } }] });
    await shop.types('fire', 'UANNA');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UCATO']);
    expect(linesOf(lastIn()?.text).at(-1)).toBe('Told: cato');
  });

  test('with the channel shut is a message to each, and whoever cried is told who has it', async () => {
    await openWith();
    shop.fake.fail('chat.postMessage', { is: 'refused', error: 'is_archived' });
    await shop.types('fire', 'UCATO');
    expect(shop.fake.inChannel('C1')).toEqual([]);
    expect([direct('UANNA'), direct('UBEA')].map(({ length }) => length)).toEqual([1, 1]);
    expect(shop.fake.whispers.map(({ text }) => linesOf(text)[0])).toEqual(['Fire', 'Told: anna, bea']);
  });

  test('in Spanish says it in Spanish', async () => {
    const spanish = [...people, { name: 'dora', role: 'lead' }].map((person) => ({ ...person, language: 'es' }));
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...file, people: spanish } }] });
    await shop.types('fuego', 'UCATO');
    expect(linesOf(lastIn()?.text)).toContain('Por avisar: anna, bea y dora');
    expect(linesOf(lastIn()?.text).slice(-2)).toEqual([
      'Avisados: anna, bea',
      'Sin avisar: dora. Avíseles de viva voz o por teléfono.',
    ]);
  });
});

describe('a near miss', () => {
  test('mentions the supervisor, once', async () => {
    await openWith();
    await shop.types('near miss hose lay across the walkway', 'UCATO');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UBEA']);
    expect(direct('UBEA')).toEqual([]);
  });

  test('without a name calls the supervisor even where it is their own: whom it left out would be who told it', async () => {
    await openWith();
    await shop.types('near miss anonymous fan was off', 'UBEA');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UBEA']);
    const shown = JSON.stringify([shop.fake.messages.map(({ text }) => text), shop.fake.whispers]);
    expect(shown).not.toContain('Said by bea');
  });
});

describe('what goes against a rule, and what is held', () => {
  async function weighed(by = 'UCATO'): Promise<void> {
    await shop.types('air 24C 48%', by);
    await shop.types('mix 2.4kg', by);
    await shop.types('weigh 1 1201g 1400g', by);
  }
  const thread = () => shop.fake.inThread(shop.batch().ts).map(({ text }) => text);

  test('a ratio that is out mentions the lead in the batch’s thread, in a message that is new', async () => {
    await openWith();
    await weighed();
    const last = shop.fake.inThread(shop.batch().ts).at(-1);
    expect(mentioned(last?.text ?? '')).toEqual(['UANNA']);
    expect(last?.text).toContain('+16.57 %');
    expect(last?.edits).toBe(0);
  });

  test('a hold mentions the lead; their own hold nobody', async () => {
    await openWith();
    await shop.types('part imp-7', 'UCATO');
    await shop.types('hold imp-7 dust in the film', 'UCATO');
    expect(mentioned(lastIn()?.text ?? '')).toEqual(['UANNA']);
    await shop.types('part imp-9', 'UANNA');
    await shop.types('hold imp-9 dust in the film', 'UANNA');
    expect(mentioned(lastIn()?.text ?? '')).toEqual([]);
  });

  test('where nobody leads mentions the supervisor', async () => {
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...file, people: people.slice(1) } }] });
    await weighed();
    expect(mentioned(thread().at(-1) ?? '')).toEqual(['UBEA']);
  });

  test('a lead who is written to directly gets it so, and the thread says that they were told', async () => {
    shop = await openWorkshop({
      crews: [{ crew: 'crew', file: { ...file, people: [{ ...people[0], rings: 'direct' }, people[2]] } }],
    });
    await weighed();
    expect(direct('UANNA')).toHaveLength(1);
    expect(mentioned(thread().at(-1) ?? '')).toEqual([]);
    expect(thread().at(-1)).toContain('Told: anna');
    const last = shop.fake.inThread(shop.batch().ts).at(-1);
    // Its taps are still there, below.
    expect(last?.blocks.at(-1)?.type).toBe('actions');
  });

  test('on the home tab, where nothing is shown, is a message to them, and one to say so', async () => {
    await openWith([], { slackChannels: [] });
    await shop.writes('part imp-7', 'UCATO');
    await shop.writes('hold imp-7 dust in the film', 'UCATO');
    expect(direct('UANNA')).toHaveLength(1);
    expect(direct('UCATO').at(-1)).toBe('Told: anna');
  });
});

describe('a brief', () => {
  test('mentions in its thread who has to read it, and later who comes near', async () => {
    await openWith([{ name: 'gil', role: 'crew', slack: 'UGIL' }]);
    const lines = ['set brief on', 'air 24C 48%', 'brief in booth spray anna near cato'];
    for (const line of lines) await shop.types(line, 'UANNA');
    const session = shop.fake.messages.find(({ key }) => key?.includes('standing/session/'));
    const called = () => shop.fake.inThread(session?.ts ?? '').map(({ text }) => mentioned(text));
    // Whoever says it is not called by it.
    expect(called()).toEqual([['UCATO']]);
    await shop.types('near gil stays', 'UANNA');
    expect(called().at(-1)).toEqual(['UGIL']);
    await shop.types('near gil out', 'UANNA');
    expect(called().at(-1)).toEqual([]);
  });
});
