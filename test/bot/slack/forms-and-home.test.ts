// Taps that ask for figures, and the home tab.

import { afterEach, describe, expect, test } from 'vitest';
import { epochMs } from '../../../core/units.ts';
import { quickPace } from './fake/quick-pace.ts';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const opened = async (): Promise<Workshop> => {
  shop = await openWorkshop();
  await shop.types('mix 2.4kg 24C 48%');
  return shop;
};
const lastForm = () => [...shop.fake.views.values()].at(-1);
const errorsIn = (body: string): unknown => JSON.parse(body === '' ? '{}' : body);

describe('a form', () => {
  test('opens empty within the life of its trigger, then is filled with its fields and the masses wanted', async () => {
    await opened();
    await shop.taps(shop.batch(), 'Weighed…');
    const calls = shop.fake.calls.map(({ method }) => method);
    expect(calls.indexOf('views.open')).toBeLessThan(calls.indexOf('views.update'));
    const form = JSON.stringify(lastForm());
    expect(form).toContain('Part A: 1200 g');
    expect(form).toContain('"type":"number_input"');
    expect(form).toContain('"block_id":"part-b"');
  });

  test('with a figure missing says so beside its field, keeps the rest, and takes the correction', async () => {
    await opened();
    await shop.taps(shop.batch(), 'Weighed…');
    const missing = await shop.fills({ 'part-a': '1201' });
    expect(errorsIn(missing.body)).toEqual({
      response_action: 'errors',
      errors: { 'part-b': 'A number is wanted here.' },
    });
    const corrected = await shop.fills({ 'part-a': '1201', 'part-b': '1198' });
    expect(corrected.body).toBe('');
    expect(shop.batch().text).toContain('weighed A 1201 g, B 1198 g');
  });

  test('with a figure that cannot be says so beside the field in which it stands', async () => {
    await opened();
    await shop.taps(shop.batch(), 'Weighed…');
    const answer = await shop.fills({ 'part-a': '1201', 'part-b': '99999999' });
    expect(errorsIn(answer.body)).toMatchObject({
      response_action: 'errors',
      errors: { 'part-b': expect.any(String) },
    });
    expect(shop.batch().text).toContain('to be weighed');
  });

  test('sent twice with the same figures is one act', async () => {
    await opened();
    await shop.taps(shop.batch(), 'Weighed…');
    await shop.fills({ 'part-a': '1201', 'part-b': '1198' });
    await shop.fills({ 'part-a': '1201', 'part-b': '1198' });
    const events = await shop.store.eventsUnder('crew', 'batch/1');
    expect(events.filter(({ body }) => body.type === 'PartsWeighed')).toHaveLength(1);
  });

  test('asks in the units of whoever tapped it', async () => {
    const people = bayTwo.people.map((person) => ({ ...person, units: 'us' }));
    shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
    await shop.types('mix 5lb');
    const objection = shop.fake.inChannel('C1').at(-1);
    if (objection === undefined) throw new Error('nothing was objected to');
    await shop.taps(objection, 'Air…');
    expect(JSON.stringify(lastForm())).toContain('(°F)');
    await shop.fills({ 'air-temperature': '75', humidity: '48' });
    // What many read is in the crew's units.
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Air: 23.9 °C');
  });

  test('opens 3 s after the tap, and a millisecond later no more: what to type is said instead', async () => {
    await opened();
    await shop.taps(shop.batch(), 'Weighed…', 'UKARI', { afterMs: 3_000 });
    expect(shop.fake.whispers.filter(({ text }) => text.includes('did not open'))).toEqual([]);
    expect(shop.fake.views.size).toBe(1);
    await shop.taps(shop.batch(), 'Weighed…', 'UKARI', { afterMs: 3_001 });
    expect(shop.fake.views.size).toBe(1);
    expect(shop.fake.whispers.at(-1)?.text).toContain('or type: weigh 1 [Part A]g [Part B]g');
  });

  test('that Slack fails to fill once is filled a moment later', async () => {
    await opened();
    shop.fake.fail('views.update', { is: 'limited', seconds: 2 });
    await shop.taps(shop.batch(), 'Weighed…');
    expect(JSON.stringify(lastForm())).toContain('"block_id":"part-b"');
    shop.fake.fail('views.update', { is: 'broken', status: 500 });
    await shop.taps(shop.batch(), 'Weighed…');
    expect(JSON.stringify(lastForm())).toContain('"block_id":"part-b"');
  });

  test('that Slack does not fill at all does not stay "One moment" without a word', async () => {
    await opened();
    shop.fake.fail('views.update', { is: 'broken', status: 500 }, { is: 'broken', status: 500 });
    await shop.taps(shop.batch(), 'Weighed…');
    expect(JSON.stringify(lastForm())).toContain('One moment');
    expect(shop.fake.whispers.at(-1)?.text).toContain('or type: weigh 1 [Part A]g [Part B]g');
  });

  test('that Slack will not open any more records nothing, is logged, and says what to type instead', async () => {
    const logged: string[] = [];
    shop = await openWorkshop({ logged });
    await shop.types('mix 2.4kg 24C 48%');
    shop.fake.fail('views.open', { is: 'refused', error: 'expired_trigger_id' });
    await shop.taps(shop.batch(), 'Weighed…');
    expect(lastForm()).toBeUndefined();
    expect(logged.join('')).toContain('form-not-opened');
    const told = [...shop.fake.whispers, ...shop.fake.inChannel('DUKARI')].map(({ text }) => text);
    expect(told.at(-1)).toContain('Slack did not open the form');
    expect(told.at(-1)).toContain('weigh 1');
  });
});

describe('the home tab', () => {
  const home = (user = 'UKARI'): string => JSON.stringify(shop.fake.homes.get(user));

  test('welcomes at the first opening and not again', async () => {
    await opened();
    await shop.opensHome();
    expect(home()).toContain('Welcome');
    await shop.opensHome();
    expect(home()).not.toContain('Welcome');
  });

  test('keeps its welcome until the next opening, whatever others record meanwhile', async () => {
    await opened();
    await shop.opensHome('UJO');
    await shop.types('weigh 1 1201g 1198g');
    expect(home('UJO')).toContain('Welcome');
    expect(home('UJO')).toContain('mixing time runs');
    await shop.opensHome('UJO');
    expect(home('UJO')).not.toContain('Welcome');
  });

  test('that Slack did not take once is shown with the next act', async () => {
    await opened();
    shop.fake.fail('views.publish', { is: 'broken', status: 500 });
    await shop.opensHome('UJO');
    expect(shop.fake.homes.get('UJO')).toBeUndefined();
    await shop.types('weigh 1 1201g 1198g');
    expect(home('UJO')).toContain('mixing time runs');
  });

  test('no longer says that something rings next once it has rung', async () => {
    let over: () => void = () => undefined;
    const recorded = new Promise<void>((resolve) => {
      over = resolve;
    });
    const quick = quickPace();
    let holding = false;
    // Homes follow a second after a bell: here, once it is in the record.
    const wait = (ms: number) => (holding && ms === 1_000 ? recorded : quick.wait(ms));
    shop = await openWorkshop({ pace: { ...quick, wait } });
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.opensHome();
    const next = '09:42 Batch 1: stirring done';
    expect(home()).toContain(next);
    shop.clock.moveTo(epochMs(Date.parse('2026-03-02T09:42:30Z')));
    // Slack takes the next message at once: nothing else waits a second now.
    await quick.wait(60_000);
    holding = true;
    for (const { ringer } of shop.wired.values()) await ringer.ringDue();
    over();
    await shop.slack.idle();
    expect(home()).not.toContain(next);
  });

  test('shows what runs, what rings next and for whom, the air with its age, and how one is set', async () => {
    await opened();
    await shop.types('weigh 1 1201g 1198g');
    await shop.opensHome('UJO');
    expect(home('UJO')).toContain('Demo Clear, 2400 g: mixing time runs');
    expect(home('UJO')).toMatch(/09:42 Batch 1: stirring done, in \d.*\(kari\)/);
    expect(home('UJO')).toContain('24 °C · 48 %');
    expect(home('UJO')).toContain('You are jo, crew.');
    expect(home('UJO')).toContain('no gas monitor');
  });

  test('offers nobody what is not theirs to set, and an old tab of theirs sets nothing either', async () => {
    await opened();
    await shop.opensHome('UJO');
    await shop.opensHome();
    expect(home('UJO')).not.toContain('Sheet demo-build');
    expect(home('UJO')).not.toContain('Quiet hours…');
    const leads = shop.fake.homes.get('UKARI');
    if (leads === undefined) throw new Error('the lead has no home tab');
    shop.fake.homes.set('UJO', leads);
    await shop.tapsHome('Sheet demo-build', 'UJO');
    const told = [...shop.fake.whispers, ...shop.fake.inChannel('DUJO')].map(({ text }) => text).join('\n');
    expect(told).toContain('That is for a lead to set: kari, ines.');
    await shop.types('mix 1kg');
    expect(JSON.stringify(shop.fake.messages)).not.toContain('Demo Build');
  });

  test('starts a batch with one tap and a figure, and shows it at once', async () => {
    shop = await openWorkshop();
    await shop.types('air 24C 48%');
    await shop.opensHome();
    await shop.tapsHome('New batch…');
    await shop.fills({ amount: '2.4' });
    expect(shop.batch().text).toContain('Batch 1 Demo Clear: to be weighed');
    expect(home()).toContain('to be weighed');
  });

  test('sets units by person with one tap', async () => {
    await opened();
    await shop.opensHome('UJO');
    await shop.tapsHome('US units', 'UJO');
    expect(home('UJO')).toContain('75 °F');
    await shop.opensHome('UKARI');
    expect(home('UKARI')).toContain('24 °C');
  });

  test('shows the cans that need somebody, one tap away, and the quiet hours once they are set', async () => {
    shop = await openWorkshop();
    await shop.types('open A lot 7731 5kg gas at hand');
    await shop.opensHome();
    expect(home()).toContain('Cans that need somebody');
    await shop.tapsHome('Quiet hours…');
    await shop.fills({ 'quiet-from': '22', 'quiet-to': '6' });
    expect(home()).toContain('22:00 to 6:00');
    await shop.types('training kari until 2027-01-31');
    expect(home()).toContain('spray training of kari: until Sun 31 Jan 2027');
  });

  test('raises an alarm with one tap: the crew’s channel and whoever tapped read what to do', async () => {
    await opened();
    await shop.opensHome('UJO');
    const [first] = (await shop.wired.get('crew')?.overview.board('jo'))?.alarms ?? [];
    await shop.tapsHome(first?.label ?? '', 'UJO');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Said by jo');
    expect(shop.fake.inChannel('DUJO')).toHaveLength(1);
  });

  test('answers an objection there to that person directly', async () => {
    shop = await openWorkshop();
    await shop.opensHome();
    await shop.tapsHome('New batch…');
    await shop.fills({ amount: '2.4' });
    expect(shop.fake.inChannel('DUKARI').at(-1)?.text).toContain('Not yet');
    expect(shop.fake.inChannel('C1')).toHaveLength(0);
  });
});
