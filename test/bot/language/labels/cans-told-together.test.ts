// Two cans in one line, cans that stand sealed opened without their label, and one more as the one before. Invented throughout.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew, talkAfter } from '../../cards/session-talk.ts';

const linesOf = async (before: readonly string[], line: string) => {
  const { say } = await talkAfter(...before);
  const { card, recorded, text } = await say(line);
  const taken = [...text.matchAll(/Taken as: (.*)/g)].map(([, as]) => as);
  return { recorded, taken, taps: card.actions.map((action) => action.line) };
};

const stock = ['received 1kg A lot AX-11', 'received 1kg B lot BX-12'];

describe('two cans in one line', () => {
  it.each([
    'got two new cans: part A lot AX-11 1 kg, part B lot BX-12 1 kg',
    'two cans here, A lot AX-11 and B lot BX-12, 1 kg each, both sealed',
    'Part A lot AX-11 1 kg and part B lot BX-12 1 kg came in',
    'just unpacked part A lot AX-11 and part B lot BX-12, 1 kg tins, still sealed',
  ])('given "%s", then both are booked in', async (line) => {
    expect(await linesOf([], line)).toMatchObject({
      recorded: true,
      taken: ['received 1kg A lot AX-11', 'received 1kg B lot BX-12'],
    });
  });

  it.each([
    "we've got a can of A, lot AX-11, 1 kilo, and a can of B, lot BX-12, also 1 kilo, both not opened yet",
    'tengo una lata de A, lote AX-11, de 1 kilo, y una de B, lote BX-12, también de 1 kilo, las dos sin abrir',
  ])('given "%s", then that they are not opened denies nothing', async (line) => {
    const { say } = await talkAfter('set language es');
    expect((await say(line)).recorded).toBe(true);
    expect((await say('stock')).text).toMatch(/AX-11[\s\S]*BX-12/);
  });

  it('given nobody says whether they are open, then one tap opens both and another books both in', async () => {
    const { recorded, taps } = await linesOf([], 'part A lot AX-11 1 kg, part B lot BX-12 1 kg');
    expect(recorded).toBe(false);
    expect(taps).toEqual([
      'open A lot AX-11 1kg; open B lot BX-12 1kg',
      'received 1kg A lot AX-11; received 1kg B lot BX-12',
    ]);
  });

  it('given one of them has no lot, or they are not there yet, then neither is recorded', async () => {
    for (const line of [
      'got two new cans: part A lot AX-11 1 kg, part B 1 kg',
      'we will get part A lot AX-11 1 kg and part B lot BX-12 1 kg',
      'got three new cans: part A lot AX-11 1 kg, part B lot BX-12 1 kg',
    ])
      expect((await linesOf([], line)).recorded, line).toBe(false);
  });

  it('given one more as the one before, then it is booked in like that', async () => {
    const { say } = await talkAfter('received 1kg A lot AX-11');
    expect((await say('and B lot BX-12 1kg too')).text).toContain('Taken as: received 1kg B lot BX-12');
    const opened = await talkAfter('open A lot AX-11 1kg gas');
    expect((await opened.say('and B lot BX-12 1kg too')).text).toContain('Taken as: open B lot BX-12 1kg');
  });
});

describe('cans that stand sealed', () => {
  it.each([
    ['opened both cans', ['open A lot AX-11']],
    ['opened the cans, argon is on', ['open A lot AX-11 gas', 'open B lot BX-12']],
    ['just opened the can of A and the can of B, argon on', ['open A lot AX-11 gas', 'open B lot BX-12']],
    ['opened B', ['open B lot BX-12']],
  ])('given "%s", then each is opened by its lot in the record', async (line, taken) => {
    expect((await linesOf(stock, line)).taken).toEqual(taken);
  });

  it('given Spanish, then the same', async () => {
    const people = sprayCrew.people.map((person) => ({ ...person, language: 'es' as const }));
    const talk = sessionTalk(':memory:', { ...sprayCrew, people });
    for (const line of stock) await talk.say(line);
    expect((await talk.say('abrí las dos latas con argón')).text).toContain('Entendido como: abrir A lote AX-11 gas');
    talk.close();
  });

  it.each([
    ['two lots of it stand there', [...stock, 'received 1kg A lot AX-13'], 'opened A'],
    ['one of it is open', [...stock, 'open B lot BX-9 1kg'], 'opened B'],
    ['two of them stand there', ['received 2 x 1kg A lot AX-11', 'received 1kg B lot BX-12'], 'opened both cans'],
    ['it is asked, or not yet', stock, 'about to open both cans'],
    ['it is denied', stock, 'nobody opened the cans'],
    ['something else was opened', stock, 'opened the can bank'],
  ])('given %s, then no can is opened by what the record has', async (_, before, line) => {
    const { taken } = await linesOf(before, line);
    expect(taken.filter((each) => each?.startsWith('open '))).toEqual([]);
  });

  it('given a tap of the last card that opens B, when A was opened, then it is not offered for it', async () => {
    const { taps } = await linesOf(['received 1kg B lot BX-12'], 'opened the can of A');
    expect(taps.filter((line) => line.startsWith('open B'))).toEqual([]);
  });

  it('given the letter of a can, then no lid of another is meant', async () => {
    const { taps } = await linesOf(['open B lot BX-12 1kg', ...stock.slice(0, 1)], 'popped the lid off A');
    expect(taps.filter((line) => line.includes('lid 1'))).toEqual([]);
  });
});
