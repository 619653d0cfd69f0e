// What is said of a pot that gelled or heats, and of one off its ratio: nobody is told to empty, flush, filter or apply it.
// Waste by the two demo sheets, which are invented: Demo Clear asks for it vented, Demo Build does not.

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { sessionTalk, taps } from './session-talk.ts';

const clear = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g'];
const build = ['air 25C 48%', 'mix 25kg build', 'weigh 1 20000g 4000g'];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk();
  for (const line of lines) await talk.say(line);
  return talk;
}

const hazards = ({ card }: Answer) => card.hazards.map(({ text }) => text).join(' ');
const ring = (heard: readonly Answer[], key: string) => heard.find((answer) => answer.key === key)?.card;

describe('a gelled pot', () => {
  it.each([
    ['vented, as the sheet says', clear],
    ['set the waste aside as the sheet says', build],
  ])('given a sheet whose waste is "%s", then that is said, and never to empty and flush', async (waste, mixed) => {
    const { say } = await said(...mixed);
    const gelled = await say('gel 1');
    expect(gelled.text).toContain(waste);
    expect(gelled.text).toContain('do not tip it out');
    expect(gelled.text).not.toMatch(/Empty and flush/);
    if (mixed === build) expect(gelled.text).not.toContain('vented');
    expect(hazards(gelled)).toContain('stand off');
    expect(gelled.card.actions.map(({ id }) => id)).toEqual(['hot', 'empty']);
  });

  it('given a thick one, then it is emptied and flushed, vented only where the sheet says so', async () => {
    expect((await (await said(...clear)).say('thick 1')).text).toContain('Empty and flush; waste vented');
    expect((await (await said(...build)).say('thick 1')).text).not.toContain('vented');
  });
});

describe('a hot pot', () => {
  it('given one pot, then the card says that nothing more goes in or comes out, and what not to do', async () => {
    const { say } = await said(...clear);
    const hot = await say('hot pot');
    expect(hot.card.lines).toContain(
      'Batch 1: nothing more goes in or comes out. Say empty 1 once it is cold and set aside.',
    );
    expect(hazards(hot)).toContain('Do not close it tight');
  });

  it('when a coat is asked, then only that is told: not to start its stirrer, nor to filter it', async () => {
    const { say } = await said(...clear, 'hot 1');
    const asked = await say('coat new a1 1 spray');
    expect([asked.kind, asked.code]).toEqual(['objection', 'pot-dead']);
    expect(asked.text).toContain('Stand off until it is cold');
    expect(asked.text).not.toMatch(/stirrer|filter/i);
    expect(hazards(asked)).toContain('Do not close it tight');
  });

  it('given two pots, then each is a tap', async () => {
    const { say } = await said(...clear, 'mix 2.4kg', 'weigh 2 1200g 1200g');
    const asked = await say('hot pot by the oven');
    expect(taps(asked)).toEqual({ 'hot-1': 'hot 1', 'hot-2': 'hot 2' });
    expect((await say('tap hot-2')).text).toContain('Batch 2: nothing more');
  });

  it('when it is emptied or what runs is asked, then the hazard stays, and nothing asks to empty it', async () => {
    const { say } = await said(...clear, 'hot 1', 'wait 8h');
    expect((await say('now')).text).toContain('1 Demo Clear: thick, gelled or hot: waste');
    expect(hazards(await say('empty 1'))).toContain('Do not close it tight');
  });

  it('given a can that is discarded, then what has begun to react is told of', async () => {
    const { say } = await said('open A lot 7731 5kg gas');
    const discarded = await say('discard 1 gelled and hot');
    expect(hazards(discarded)).toContain('lid loose');
  });

  it('given a session over that pot, when its vessels are to be flushed, then not that one', async () => {
    const { say, heard } = await said(
      ...clear,
      'wait 102m',
      'filter 1',
      'set booth booth 4m2',
      'brief 1 in booth spray kari',
    );
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied yes', 'spray on', 'spray off']) await say(line);
    await say('gel 1');
    await say('wait 2h');
    const bell = heard.find(({ key }) => key?.startsWith('session/2/vessels'))?.card;
    expect(bell?.lines.join(' ')).toContain('Not the pot of batch 1: it is gelled');
  });
});

describe('what smokes or swells', () => {
  it('given a can that swells, then it stays where it stands and nobody touches it; board and now say so', async () => {
    const { say } = await said('open A lot 7731 5kg gas');
    const cried = await say('@kari: can bulging');
    expect(cried.card.lines[0]).toMatch(/^Stand off, everybody: it can burst\. It stays where it stands/);
    expect(cried.text).toContain('Can 1: nobody opens, closes, stirs or pours it');
    expect(cried.text).not.toMatch(/lid loose/i);
    expect((await say('now')).text).toContain('swollen since 08:00: stand off');
    const thrown = await say('discard 1 swollen');
    expect(hazards(thrown)).toMatch(/^Stand off/);
  });

  it('given a pot that smokes, then everybody is out of the fumes first, and nothing is offered but to leave it', async () => {
    const { say } = await said(...clear);
    const cried = await say('@kari: smoke from pot 1');
    expect(cried.card.lines[0]).toMatch(/^Out of the fumes, everybody, now/);
    const card = await say('card 1');
    expect(hazards(card)).toContain('Out of the fumes');
    expect(card.text).not.toMatch(/empty and flush/i);
    expect(card.card.actions.map(({ id }) => id)).not.toContain('empty');
  });

  it('given a can past its limit, then its bell tells nobody to close it tight', async () => {
    const { heard } = await said('open A lot 7731 5kg gas', 'wait 21m');
    const bell = heard.filter(({ key }) => key?.startsWith('can/1/blanket')).at(-1)?.card;
    expect(bell?.title).toBe('Can 1: in doubt');
    expect(bell?.lines.join(' ')).toContain('lid loose, not tight');
    expect(bell?.lines.join(' ')).not.toMatch(/lid on/i);
  });

  it('given waste of a sheet that wants no vent and names isocyanates, then no tight lid over it', async () => {
    const { say } = await said(...build);
    expect((await say('gel 1')).text).toContain('under no tight lid');
  });
});

describe('a pot off its ratio', () => {
  it('given 20 % too little B of an induction, then its bell invites nobody to apply it, nor does any tap', async () => {
    const { heard } = await said('air 25C 48%', 'mix 6.45kg build', 'weigh 1 5400g 840g', 'wait 20m');
    const bell = ring(heard, 'batch/1/induction-done');
    expect(bell?.tone).toBe('warn');
    expect(bell?.lines.join(' ')).toContain('off its ratio: none of it is applied unless a supervisor says so');
    expect(bell?.lines.join(' ')).not.toContain('It can be applied');
    expect(bell?.actions.map(({ id }) => id)).not.toContain('coat');
  });

  it('given one that is stirred, then its bell stops the stirrer and leads to no filter', async () => {
    const { heard } = await said('air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 960g', 'wait 103m');
    const bell = ring(heard, 'batch/1/stir-done');
    expect(bell?.lines.join(' ')).toMatch(/^Stop the stirrer\. It is off its ratio/);
    expect(bell?.actions.map(({ id }) => id)).not.toContain('filter');
  });
});

describe('parts that wait', () => {
  // The build at 25 degC: 15 minutes of induction, its recoat window from four hours on (all invented).
  const coated = ['air 25C 48%', 'mix 6.45kg build', 'weigh 1 5400g 1050g', 'wait 16m', 'coat new r1 1 brush'];

  it('given a rail that nobody said is dry, when its window opens, then it is to be touched, not coated', async () => {
    const { heard } = await said(...coated, 'wait 20h');
    const bell = ring(heard, 'part/r1/recoat-opens');
    expect(bell?.lines[0]).toBe('Nobody has said that it is dry. Touch it first; no coat on film that is still wet.');
  });

  it('given one on hold, then no coat before a lead says so, and why', async () => {
    const { heard } = await said(...coated, 'wait 50m', 'dry r1', 'hold r1 runs', 'wait 20h');
    const bell = ring(heard, 'part/r1/recoat-opens');
    expect(bell?.lines).toEqual(['No coat on it before a lead says so.', 'On hold: runs', 'rosa sees to it']);
  });

  it('given one that is dry and not held, then it may have its next coat', async () => {
    const { heard } = await said(...coated, 'wait 50m', 'dry r1', 'wait 20h');
    expect(ring(heard, 'part/r1/recoat-opens')?.lines[0]).toBe('It may have its next coat.');
  });
});
