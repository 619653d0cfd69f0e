// A quality manager decides what becomes of held parts, from the cards alone and in both languages: what lacks is asked with taps, the
// concession is printed wherever the release is, and what is said of leftovers, asked or hedged becomes of nothing.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew, taps } from './session-talk.ts';

const crew = {
  ...sprayCrew,
  people: [
    ...sprayCrew.people,
    { name: 'bea', role: 'supervisor' as const, language: 'en', units: 'metric' as const },
    { name: 'inés', role: 'supervisor' as const, language: 'es', units: 'metric' as const },
  ],
};

const cured = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat new hub-7 1 brush', 'wait 12m'],
  ...['dry hub-7', 'cure hub-7 oven 90C', 'temp hub-7 90C', 'wait 60m', 'temp hub-7 90C', 'out hub-7'],
];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', crew);
  for (const line of [...cured, ...lines]) await talk.say(line);
  return talk;
}

const linesOf = async (answer: ReturnType<ReturnType<typeof sessionTalk>['say']>) =>
  (await answer).card.lines.join('\n');

describe('a hold on cards', () => {
  it('given one, then who sees to it stands on its card, in what is on hold and in the day, and the morning says what to type', async () => {
    const { say, heard } = await said('@kari: hold hub-7 runs owner bea to-do measure it again');
    for (const asked of ["what's on hold", 'day', 'trace hub-7']) {
      expect(await linesOf(say(asked)), asked).toContain('bea sees to it: measure it again');
    }
    await say('wait 24h');
    const ring = heard.find(({ key }) => key === 'crew/held/bea');
    expect(ring?.card.ping).toEqual(['bea']);
    expect(ring?.card.lines.join('\n')).toMatch(/hub-7: On hold: runs.*\n.*type rework, concession, scrap or return/);
  });
});

describe('what becomes of it, by taps', () => {
  it('given rework without why, then the reason of the hold is a tap, and the card says what comes next', async () => {
    const { say } = await said('hold hub-7 runs at the flange');
    const asked = await say('@bea: rework hub-7');
    expect(asked.recorded).toBe(false);
    expect(taps(asked)).toMatchObject({
      'hold-why': 'rework hub-7 "runs at the flange"',
      rework: 'rework hub-7 {why}',
    });
    const done = await say('@bea: tap hold-why');
    expect(done.card.lines.join(' ')).toContain('take the old coat off');
    expect(taps(done)).toHaveProperty('strip');
    expect(await linesOf(say('trace hub-7'))).toMatch(/Coats before it was reworked: 1[\s\S]*Coat 1:/);
  });

  it('given a concession, then trace and traveller print whose, by which document and of which day', async () => {
    const { say } = await said('film hub-7 4 5 5um');
    const asked = await say('@bea: concession hub-7 Ms. Hale, letter QA-118');
    expect(taps(asked)['dated-today']).toContain('dated 2026-03-02');
    const done = await say('@bea: tap dated-today');
    expect(done.card).toMatchObject({ title: 'hub-7: released by concession', tone: 'good' });
    for (const told of ['trace hub-7', 'shipped hub-7']) {
      expect(await linesOf(say(told)), told).toContain('By concession of the customer: Ms. Hale, QA-118');
    }
  });

  it('given scrap, then nothing is offered any more', async () => {
    const { say } = await said('hold hub-7 cracked', '@bea: scrap hub-7 cracked');
    expect(taps(await say('trace hub-7'))).toEqual({ traveller: 'traveller hub-7' });
    expect((await say("what's on hold")).card.title).toBe('Nothing is on hold');
    expect(taps(await say('@bea: release hub-7'))).not.toHaveProperty('happened');
  });
});

describe('a release that a hold and a cure stand against', () => {
  const half = cured.filter((line) => line !== 'temp hub-7 90C' && !line.startsWith('out'));

  it.each([
    ['bea', 'release hub-7', 'permit hold customer saw it', 'permit cure "oven log 12"'],
    ['inés', 'liberar hub-7', 'permiso retención el cliente la vio', 'permiso curado "hoja del horno"'],
  ])(
    'given %s lifts the one, then the other is still asked, with the first in its tap',
    async (who, line, hold, cure) => {
      const { say } = sessionTalk(':memory:', crew);
      for (const each of [...half, 'out hub-7 already', 'hold hub-7 runs']) await say(each);
      expect(Object.keys(taps(await say(`@${who}: ${line} permit because`)))).toEqual(
        expect.arrayContaining(['lift', 'lift-cure']),
      );
      const one = await say(`@${who}: ${line} ${hold}`);
      expect([one.recorded, taps(one)['lift-cure']]).toEqual([
        false,
        expect.stringMatching(/^release hub-7 permit hold "[^"]+" permit cure \{why\}$/),
      ]);
      expect((await say(`@${who}: ${line} ${hold} ${cure}`)).recorded).toBe(true);
    },
  );
});

describe('as people say it', () => {
  it.each([
    ['bea', 'scrap 7', 'scrap hub-7 {why}'],
    ['bea', '7 goes back to the customer', 'return customer hub-7'],
    ['bea', 'strip and redo 7', 'rework hub-7'],
    [
      'bea',
      'customer accepts 7 as it is, Ms. Hale, letter QA-118 of 1 March',
      'concession hub-7 Ms. Hale, letter QA-118 of 1 March',
    ],
    ['inés', 'la 7 a chatarra', 'scrap hub-7 {why}'],
    ['inés', 'la 7 vuelve al cliente', 'return customer hub-7'],
    ['inés', 'decapar y rehacer la 7', 'rework hub-7'],
    ['inés', 'manda la 7 al scrap', 'scrap hub-7'],
    [
      'inés',
      'el cliente acepta la 7 como está, Sra. Vega, carta QA-118 del 1 de marzo',
      'concession hub-7 Sra. Vega, carta QA-118 del 1 de marzo',
    ],
  ])('given %s says "%s", then "%s" is a tap and nothing is recorded before', async (who, line, tapped) => {
    const { say } = await said();
    const answer = await say(`@${who}: ${line}`);
    expect(answer.recorded).toBe(false);
    expect(Object.values(taps(answer))).toContain(tapped);
  });

  it.each([
    ['bea', 'is 7 scrap?'],
    ['bea', 'should we scrap 7'],
    ['bea', 'we might scrap 7'],
    ['bea', "don't scrap 7"],
    ['bea', 'going to scrap 7 after lunch'],
    ['inés', '¿es chatarra la 7?'],
    ['inés', 'no tires la 7'],
    ['inés', 'a lo mejor la 7 es chatarra'],
  ])('given %s says "%s", then it is neither recorded nor offered', async (who, line) => {
    const { say } = await said();
    const answer = await say(`@${who}: ${line}`);
    expect(answer.recorded).not.toBe(true);
    expect(Object.values(taps(answer)).filter((tap) => /^(?:scrap|rework|return|concession) hub/.test(tap))).toEqual(
      [],
    );
  });

  it('given leftovers are scrap, then no part is', async () => {
    const { say } = await said();
    const answer = await say('@bea: scrap the rest of pot 1');
    expect(Object.values(taps(answer)).join(' ')).not.toContain('scrap hub');
    expect(answer.card.title).not.toContain('hub-7');
  });

  it('given a can and a part of one number, then the number alone throws nothing away', async () => {
    const { say } = await said('open A lot 7731 5kg gas', 'part hub-2');
    const answer = await say('@bea: scrap 2 cracked');
    expect([answer.kind, answer.recorded]).toEqual(['misread', false]);
    expect((await say('@bea: scrap can 2 cracked')).card.title).toContain('2');
  });
});
