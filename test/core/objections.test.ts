// Object before, record after: every reason not to, once before the act, once after it has happened, and once with leave.

import { describe, expect, it } from 'vitest';
import { allowed } from '../../core/allowed.ts';
import { given } from './given.ts';
import { type Case, objectionCases as rows } from './objection-cases.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const filtered = [...weighed, '09:42 filter 1'];
const dry = [...filtered, '10:00 coat new impeller-7 1 brush', '10:12 dry impeller-7'];

describe.each(rows)('%s', (code, { given: before, at, act, also = [], deviates, liftedBy }) => {
  it(`given the case, when "${act}" is asked, then it is objected to and nothing is recorded`, async () => {
    const shift = await given(before);
    await shift.until(at);
    const recorded = (await shift.events()).length;
    expect(await shift.when(`${at} ${act}`)).toEqual({ objected: [code, ...also] });
    expect(await shift.events()).toHaveLength(recorded);
  });

  it(`given leave before the act, then it takes ${liftedBy} or above, and the reason stays with the record`, async () => {
    const roles = { kari: 0, omar: 1, rosa: 2 };
    const needed = { lead: 1, supervisor: 2, nobody: 3 }[liftedBy];
    for (const [name, rank] of Object.entries(roles)) {
      const shift = await given([...before]);
      const heard = await shift.when(`${at} @${name}: ${act} permit agreed with the customer`);
      if (rank < needed) expect(heard).toEqual({ unclear: 'may-not-permit' });
      else {
        expect(heard).toHaveProperty('recorded');
        expect(await shift.deviations()).toContain(`${deviates} permitted: agreed with the customer`);
      }
    }
  });
});

const isRelease = ([, { act }]: readonly [string, Case]) => act.startsWith('release');

describe.each(rows.filter((row) => !isRelease(row)))('%s', (code, { given: before, at, act, deviates }) => {
  it(`given that it already happened, when "${act}" is told, then it is recorded and marked a deviation`, async () => {
    const shift = await given([...before]);
    const heard = await shift.when(`${at} ${act} already`);
    expect(heard).toHaveProperty('recorded');
    expect(await shift.deviations()).toContain(deviates);
    expect((await shift.events()).flatMap(({ saidWith }) => saidWith.despite)).toContain(code);
  });
});

describe.each(rows.filter(isRelease))('%s, a decision', (code, { given: before, at, act, also = [] }) => {
  it('given that it was told as done, then that makes no decision: it is objected to all the same', async () => {
    const shift = await given([...before]);
    await shift.until(at);
    const recorded = (await shift.events()).length;
    expect(await shift.when(`${at} ${act} already`)).toEqual({ objected: [code, ...also] });
    expect(await shift.events()).toHaveLength(recorded);
  });
});

describe('the table of what is allowed', () => {
  it('given every rule of every verb, then this file has a case for it, lifted by the same people', () => {
    const wanted = Object.values(allowed).flatMap((rules) => rules.map(({ code, liftedBy }) => `${code} ${liftedBy}`));
    const found = new Set(rows.map(([code, { liftedBy }]) => `${code} ${liftedBy}`));
    // Who speaks is the rule itself: see can/blanket.test.ts.
    found.add('check-by-lead lead');
    // Of a line that ends in somebody's words, and of what is a lead's to say: see part/held.test.ts and part/disposed.test.ts.
    found.add('not-on-hold nobody').add('not-told nobody');
    expect(wanted.filter((rule) => !found.has(rule))).toEqual([]);
  });
});

describe('ratio-out', () => {
  it('given a tolerance of 2 % (invented), when B is 2.5 % over, then it is recorded as weighed and marked', async () => {
    const shift = await given(weighed.slice(0, 2));
    // 1230 / 1200 - 1 = 0.025.
    expect(await shift.when('08:05 weigh 1 1200g 1230g')).toEqual({ recorded: ['PartsWeighed'] });
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:05 ratio-out']);
  });

  it('given B exactly 2 % over, then it is within, and at 2.1 % it is not', async () => {
    const within = await given([...weighed.slice(0, 2), '08:05 weigh 1 1000g 1020g']);
    expect(await within.deviations()).toEqual([]);
    const over = await given([...weighed.slice(0, 2), '08:05 weigh 1 1000g 1021g']);
    expect(await over.deviations()).toEqual(['PartsWeighed 08:05 ratio-out']);
  });
});

describe('the other side of each edge', () => {
  it('given acts in their order within the same minute, then none is a deviation of a later one', async () => {
    const shift = await given([...filtered, '10:00 coat new impeller-7 1 brush', '10:00 thick 1', '10:00 empty 1']);
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a batch stirred to the minute, filtered, coated, dried, cured by the part and released, then none', async () => {
    const shift = await given([
      ...dry,
      '10:12 cure impeller-7 oven 90C',
      '10:12 temp impeller-7 90C',
      '11:12 temp impeller-7 90C',
      '11:12 out impeller-7',
      '11:12 release impeller-7',
    ]);
    expect(await shift.deviations()).toEqual([]);
  });
});
