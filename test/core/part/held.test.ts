// A hold keeps why, who sees to it and what is to be done; whoever does hears of all of theirs once a day, at the crew's hour of the
// morning, until each is decided. The hour is the setting's usual one.

import { describe, expect, it } from 'vitest';
import { demoCrew, given } from '../given.ts';

const cured = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat new a1 a2 1 brush', '10:12 dry a1 a2', '10:12 cure a1 a2 oven 90C', '10:12 temp a1 90C'],
  ...['10:12 temp a2 90C', '11:12 temp a1 90C', '11:12 temp a2 90C', '11:12 out a1 a2'],
];

type Shift = Awaited<ReturnType<typeof given>>;
const verdictOf = async (shift: Shift, name = 'a1') => (await shift.shop()).parts.get(name)?.verdict;
const ofHolds = (shift: Shift) => shift.rung().filter(({ key }) => key.startsWith('crew/held/'));

describe('a hold', () => {
  it('given somebody and something were named with it, then both stand on it, and a second hold leaves them', async () => {
    const shift = await given([...cured, '11:20 hold a1 runs owner Omar to-do measure it again']);
    expect(await verdictOf(shift)).toMatchObject({ why: 'runs', owner: 'omar', toDo: 'measure it again' });
    await shift.when('11:25 hold a1 bubbles');
    expect(await verdictOf(shift)).toMatchObject({ why: 'runs; bubbles', owner: 'omar', toDo: 'measure it again' });
  });

  it('given a reason with such a word in it and nobody of the crew behind it, then all of it is the reason', async () => {
    const shift = await given([...cured, '11:20 hold a1 the owner Smith must see it']);
    expect(await verdictOf(shift)).toMatchObject({ why: 'the owner Smith must see it', owner: undefined });
  });

  it('given it is said afterwards who sees to it, then the later word counts, and of one not on hold it is objected to', async () => {
    const shift = await given([...cured, '11:20 hold a1 runs', '11:21 see-to a1 kari sand and recoat']);
    expect(await verdictOf(shift)).toMatchObject({ owner: 'kari', toDo: 'sand and recoat' });
    await shift.when('11:22 see-to a1 rosa');
    expect(await verdictOf(shift)).toMatchObject({ owner: 'rosa', toDo: 'sand and recoat' });
    expect(await shift.when('11:23 see-to a2 rosa')).toEqual({ objected: ['not-on-hold'] });
  });

  it('given a stranger is quoted as its owner, then nobody is guessed at', async () => {
    const shift = await given([...cured, '11:20 hold a1 runs']);
    const { when, events } = shift;
    const before = (await events()).length;
    await when('11:21 see-to a1 "Nobody Known"');
    const verdict = await verdictOf(shift);
    expect(verdict).toMatchObject({ owner: undefined });
    expect((await events()).length - before).toBeLessThanOrEqual(1);
  });
});

describe('its bell', () => {
  it('given two held parts, then the supervisor hears of both in one ring a morning, day after day', async () => {
    const shift = await given([...cured, '11:20 hold a1 runs', '11:21 hold a2 bubbles']);
    await shift.until('Thu 12:00');
    expect(ofHolds(shift)).toEqual([
      { at: 'Tue 07:00', key: 'crew/held/rosa', to: ['rosa'] },
      { at: 'Wed 07:00', key: 'crew/held/rosa/2', to: ['rosa'] },
      { at: 'Thu 07:00', key: 'crew/held/rosa/3', to: ['rosa'] },
    ]);
  });

  it('given a crew without a supervisor, then the lead hears; given somebody was named, they alone', async () => {
    const people = demoCrew.people.filter(({ role }) => role !== 'supervisor');
    const shift = await given([...cured, '11:20 hold a1 runs'], { crew: { ...demoCrew, people } });
    expect(Object.keys(await shift.plan())).toContain('crew/held/omar');
    await shift.when('11:21 see-to a1 kari');
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('crew/held/'))).toEqual(['crew/held/kari']);
  });

  it('given it is settled before the morning, then nothing rings; given nothing is on hold, then nothing is planned', async () => {
    const shift = await given(cured);
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('crew/held/'))).toEqual([]);
    await shift.when('11:20 hold a1 runs');
    await shift.when('11:30 @omar: scrap a1 cracked');
    await shift.until('Tue 12:00');
    expect(ofHolds(shift)).toEqual([]);
  });

  it('given it is put off, then it rings again at that time, and the next morning as ever', async () => {
    const shift = await given([...cured, '11:20 hold a1 runs']);
    await shift.until('Tue 07:05');
    await shift.when('Tue 07:05 @rosa: snooze 30m');
    await shift.until('Wed 08:00');
    expect(ofHolds(shift).map(({ at }) => at)).toEqual(['Tue 07:00', 'Tue 07:35', 'Wed 07:00']);
  });
});
