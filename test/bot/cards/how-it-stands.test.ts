// One status a noun: every list says the same of it, and its buttons are what the rules would take now.

import { afterEach, expect, it } from 'vitest';
import { openRecordsShop, type RecordsShop } from '../records/records-shop.ts';

let shop: RecordsShop;
afterEach(() => shop.close());

async function after(...lines: readonly string[]): Promise<void> {
  shop = openRecordsShop();
  for (const line of lines) await shop.say(line);
}

const mixed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const onBoard = async (id: string) => (await shop.board()).items.find((item) => item.id === id);
const tapsOf = async (id: string) => (await onBoard(id))?.taps.map((tap) => tap.id);

it('given a pot whose life is over by the clock, then board, now, handover and the kept message all say so', async () => {
  await after(...mixed, '09:45 filter 1');
  await shop.until('13:00');
  const { phase = '', tone } = (await onBoard('batch/1')) ?? {};
  expect([phase, tone]).toEqual(['pot life over, to be emptied', 'stop']);
  expect((await shop.say('13:00 now')).text).toContain(`1 Demo Clear: ${phase}`);
  expect((await shop.say('13:01 handover rosa')).text).toContain(`1 Demo Clear: ${phase}`);
  expect((await shop.standing('batch/1')).title).toContain(phase);
  expect(await tapsOf('batch/1')).toEqual(['empty']);
});

it('given a mix that was filtered too early, then no coat is offered until its stirring would have been done', async () => {
  await after(...mixed, '08:30 filter 1 already');
  expect(await tapsOf('batch/1')).not.toContain('coat');
  expect((await shop.say('08:31 coat new a1 1 brush')).code).toBe('blend-not-done');
});

it('given what was caught from a flow coat, then it is filtered before the next coat', async () => {
  await after(...mixed, '09:45 filter 1', '09:50 coat new a1 1 flow', '09:52 catch 1 300g');
  expect(await tapsOf('batch/1')).toEqual(['filter', 'thick', 'empty']);
});

it('given a cure that is proved, then taking out comes before another reading', async () => {
  await after(...mixed, '09:45 filter 1', '09:50 coat new a1 1 brush', '10:05 dry a1', '10:06 cure a1 oven 90C');
  expect(await tapsOf('part/a1')).toEqual(['temp', 'door', 'out']);
  await shop.say('10:07 temp a1 91C');
  await shop.until('11:30');
  expect(await tapsOf('part/a1')).toEqual(['temp', 'door', 'out']);
  await shop.say('11:30 temp a1 91C');
  expect(await tapsOf('part/a1')).toEqual(['out', 'temp', 'door']);
});

it('given a cure that is not proved, then whoever takes the part out is offered the reading that proves it', async () => {
  await after(...mixed, '09:45 filter 1', '09:50 coat new a1 1 brush', '10:05 dry a1', '10:06 cure a1 oven 90C');
  const { code, card } = await shop.say('10:30 out a1');
  expect(code).toBe('cure-not-given');
  expect(card.actions.map(({ id }) => id)).toContain('temp');
});

it('given a can in doubt, then its colour is that of its place in the list: red while air is over it, else it waits', async () => {
  await after('08:00 open A lot 7731 5kg gas', '08:40 now');
  expect(await onBoard('can/1')).toMatchObject({ tone: 'stop', urgency: { is: 'over' } });
  await shop.say('08:41 blanket 1');
  expect(await onBoard('can/1')).toMatchObject({ tone: 'warn', urgency: { is: 'waits' } });
  expect(await tapsOf('can/1')).toEqual(['check', 'prestir-gas', 'lid', 'discard']);
});
