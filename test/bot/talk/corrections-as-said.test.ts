// What was said last is put right as people say it: each correction is a tap that shows what changes, and nothing is recorded before.
// Through the whole bot, on a clock of its own. All figures are invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const inSpanish = {
  ...sprayCrew,
  people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })),
};

/** The labels and lines of the taps; the answer to the last line. */
async function offered(crew: typeof sprayCrew, ...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', crew);
  onTestFinished(talk.close);
  for (const line of lines.slice(0, -1)) await talk.say(line);
  const answer = await talk.say(lines.at(-1) ?? '');
  return { answer, labels: answer.card.actions.map(({ label }) => label), say: talk.say };
}

const mixed = ['air 24C 48%', 'mix 2.4kg'];
const weighed = [...mixed, 'weigh 1 1201g 1198g'];
const parts = ['part impeller-7', 'part impeller-8'];
const coated = [...weighed, ...parts, 'coat impeller-7 1 brush already'];

describe('one thing more', () => {
  it.each(['Part B is also a 1 kg can, lot B5520, sealed too', 'another one, lot B5520, 1 kg of part B'])(
    'given %s behind a can of Part A, then nothing of that one is put right',
    async (said) => {
      const { labels } = await offered(sprayCrew, 'received 1kg A lot 7731 exp 2026-12-31', said);
      expect(labels.filter((label) => /^Change|^Take back|instead/.test(label))).toEqual([]);
    },
  );

  it('given three parts were booked in a row with commas, then them is all three', async () => {
    const { labels } = await offered(sprayCrew, 'part br-1, br-2, br-3 job 88 steel 4mm', 'cleaned them with acetone');
    expect(labels).toEqual([expect.stringMatching(/br-1.*br-3|br-1, br-2 and br-3/i)]);
  });
});

describe('what can be corrected in place', () => {
  it.each(['looked at impeller-8, no runs, fine', 'checked impeller-8, no bubbles'])(
    'given %s behind a hold of another, then the hold is not put right',
    async (said) => {
      const { labels } = await offered(sprayCrew, ...parts, 'hold impeller-7 run on the edge', said);
      expect(labels.filter((label) => /^Change|instead|impeller-8/.test(label))).toEqual([]);
    },
  );

  it.each<[readonly string[], string, readonly string[]]>([
    [['air 32C 48%'], 'sorry 23 not 32', ['Change: air 23 °C 48 % instead of air 32 °C 48 %']],
    [['air 24C 48%'], 'make that 25C', ['Change: air 25 °C 48 % instead of air 24 °C 48 %']],
    [['air 24C 48%'], 'humidity was 58 actually', ['Change: air 24 °C 58 % instead of air 24 °C 48 %']],
    [
      weighed,
      'B should be 1189, I swapped the digits',
      ['Change: weighed A 1201 g, B 1189 g instead of weighed A 1201 g, B 1198 g'],
    ],
    [
      mixed,
      'actually make that one and a half kilos only',
      [expect.stringMatching(/^Change: batch 2 opened, 1500 g .* instead of batch 1 opened, 2400 g/)],
    ],
    [['air 24C 48%'], 'Read it wrong. Humidity is at 58.', ['Change: air 24 °C 58 % instead of air 24 °C 48 %']],
    [['air 24C 48%'], 'no, 50%', ['Change: air 24 °C 50 % instead of air 24 °C 48 %']],
    [weighed, 'not 1198, 1189', ['Change: weighed A 1201 g, B 1189 g instead of weighed A 1201 g, B 1198 g']],
    [
      coated,
      'actually roller',
      [expect.stringMatching(/^Change: impeller-7 coated \(roller.* instead of impeller-7 coated \(brush/)],
    ],
    [[...parts, 'temp impeller-7 88C'], 'I meant 91', [expect.stringMatching(/^Change: .*91 °C instead of .*88 °C/)]],
    [[...coated, 'wait 5m'], 'it was 10 min ago', [expect.stringMatching(/^Change: 07:55 instead of .*08:00$/)]],
    [[...coated, 'wait 5m'], 'at 8:01 not 8:00', [expect.stringMatching(/^Change: 08:01 instead of .*08:00$/)]],
    [
      weighed,
      'B was 1189, I swapped the digits',
      [expect.stringMatching(/^Change: weighed A 1201 g, B 1189 g instead/)],
    ],
    [['air 42C 48%'], '24!! not 42', ['Change: air 24 °C 48 % instead of air 42 °C 48 %']],
    [
      [...parts, 'temp impeller-7 81C'],
      '91 sorry fat thumb',
      [expect.stringMatching(/^Change: .*91 °C instead of .*81/)],
    ],
    [
      [...parts, 'temp impeller-7 81C'],
      'I beg your pardon, that should have been 91.',
      [expect.stringMatching(/91 °C/)],
    ],
    [
      coated,
      'it was a roller not a brush',
      [expect.stringMatching(/^Change: impeller-7 coated \(roller.* instead of/)],
    ],
    [[...coated, 'wait 5m'], 'it was more like 8:01', [expect.stringMatching(/^Change: 08:01 instead of .*08:00$/)]],
  ])('given %j, when %s is said, then one tap shows what changes', async (before, said, labels) => {
    const { answer, labels: shown } = await offered(sprayCrew, ...before, said);
    expect(shown).toEqual(labels);
    expect(answer.recorded).toBe(false);
  });

  it('given a crew that reads in Fahrenheit, when it was not 84, then that figure is the one', async () => {
    const people = sprayCrew.people.map((person) => ({ ...person, units: 'us' as const }));
    const { labels } = await offered({ ...sprayCrew, units: 'us', people }, 'air 84F 48%', 'hang on 74 not 84');
    expect(labels).toEqual(['Change: air 74 °F 48 % instead of air 84 °F 48 %']);
  });

  it('given the tap, then the reason is what was said', async () => {
    const { answer } = await offered(sprayCrew, 'air 32C 48%', 'sorry 23 not 32');
    expect(answer.card.actions[0]?.line).toMatch(/ "sorry 23 not 32"$/);
  });

  it('given the tap, then the act stands corrected', async () => {
    const { say } = await offered(sprayCrew, 'air 32C 48%', 'sorry 23 not 32');
    expect((await say('tap meant-1')).card.lines).toContain('Is: air 23 °C 48 %');
  });

  it('given another reading came before the tap, then that one stays as it is', async () => {
    const { say } = await offered(sprayCrew, 'air 32C 48%', 'sorry 23 not 32');
    await say('wait 2m');
    await say('@lia: air 30C 48%');
    const { lines } = (await say('tap meant-1')).card;
    expect(lines).toContain('Was: air 32 °C 48 %');
  });

  it.each<[readonly string[], string]>([
    [['air 32C 48%'], 'me equivoqué, son 23 grados'],
    [['air 32C 48%'], 'no, eran 23 grados'],
    [[...coated, 'wait 5m'], 'fue hace 10 min'],
    [[...weighed], 'era 1189, no 1198'],
    [[...weighed], 'de B eran 1189'],
    [[...coated, 'wait 5m'], 'eso fue a las 8:01'],
    [['air 32C 48%'], 'cámbialo a 50%'],
  ])('given %j in Spanish, when %s is said, then one tap shows what changes', async (before, said) => {
    const { answer, labels } = await offered(inSpanish, ...before, said);
    expect(labels).toEqual([expect.stringMatching(/^Cambiar: .* en vez de /)]);
    expect(answer.recorded).toBe(false);
  });
});

describe('with talk round it', () => {
  const inOven = [...coated, 'wait 12m', 'dry impeller-7', 'cure impeller-7 oven 90C'];
  it.each<[readonly string[], string, RegExp]>([
    [mixed, 'oh hell no, 1.4 kilos, need coffee', /^Change: batch \d opened, 1400 g.* instead of batch 1 opened/i],
    [mixed, "that's way too much, 1.4 will do", /^Change: batch \d opened, 1400 g.* instead of batch 1 opened/i],
    [['air 24C 48%'], 'wait no 22 degrees over here', /^Change: air 22 °C 48 % instead of air 24 °C 48 %$/],
    [['air 24C 48%'], 'hang on its 58% my visor fogged up', /^Change: air 24 °C 58 % instead of air 24 °C 48 %$/],
    [coated, 'naw that was impeller 8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'er I used the roller on that lol', /^Change: impeller-7 coated \(roller.* instead of/],
    [[...coated, 'wait 6m'], 'I finished that one ten minutes back', /^Change: 07:56 instead of .*08:00$/],
    [[...parts, 'temp impeller-7 88C'], 'no that probe is on 8', /^Change: impeller-8: part at 88 °C instead of/],
    [inOven, "sorry, that one's curing on the shelf, not in the oven", /^Change: impeller-7: cure \(room\) instead of/],
    [inOven, 'no oven for it, it cures at room temperature', /^Change: impeller-7: cure \(room\) instead of/],
    [[...inOven.slice(0, -1), 'cure impeller-7 room'], 'sorry it went in the oven at 90', /^Change: .*\(oven, 90 °C\)/],
    [[...weighed, 'empty 1 300g'], 'more like 250, the drum was wet', /^Change: .*250 g.* instead of .*300 g/],
  ])('given %j, when %s is said, then the first tap shows what changes', async (before, said, label) => {
    const { answer, labels } = await offered(sprayCrew, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels[0]).toMatch(label);
  });

  it.each<[readonly string[], string, RegExp]>([
    [mixed, 'mejor 1,4', /1400 g.* en vez de/],
    [mixed, 'joder, que son dos kilos', /2000 g.* en vez de/],
    [coated, 'nel, le di con rodillo', /rodillo.* en vez de .*brocha/],
    [coated, 'no con brocha, con rodillo', /rodillo.* en vez de .*brocha/],
    [[...parts, 'temp impeller-7 88C'], 'esa sonda la tenía la 8, qué cabeza', /impeller-8: .* en vez de impeller-7/],
    [
      [...coated, 'wait 12m', 'dry impeller-7', 'cure impeller-7 oven 90C'],
      'perdona, se queda a temperatura ambiente, no va al horno',
      /^Cambiar: impeller-7: .*\(sala\) en vez de .*\(horno/,
    ],
    [[...weighed, 'empty 1 300g'], 'quita esos 300, que sobraban 200', /200 g.* en vez de .*300 g/],
  ])('given %j in Spanish, when %s is said, then the first tap shows what changes', async (before, said, label) => {
    const { answer, labels } = await offered(inSpanish, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels[0]).toMatch(label);
  });

  it('given it may answer the card as well, then it is no record: a tap each', async () => {
    const { answer, labels } = await offered(inSpanish, ...parts, 'temp impeller-7 88C', 'esa sonda la tenía la 8');
    expect(answer.recorded).toBe(false);
    expect(labels[0]).toMatch(/^Cambiar: /);
  });

  it('given it is said why beside the figure, then it is no new reading: a tap puts the last one right', async () => {
    const said = '78 compa, traigo los guantes puestos';
    const inCure = [...parts, 'cure impeller-7 oven 90C already', 'temp impeller-7 88C'];
    const { answer, labels } = await offered(inSpanish, ...inCure, said);
    expect(answer.recorded).toBe(false);
    expect(labels[0]).toMatch(/^Cambiar: .*78 °C en vez de .*88 °C/);
  });

  it('given a pot that nothing waits for any more, when its last act is put right, then the tap changes it', async () => {
    const { say } = await offered(sprayCrew, ...mixed, 'empty 1 300g', 'more like 250, the drum was wet');
    expect((await say('tap meant-1')).card.lines).toContain('Is: pot empty, 250 g left over');
  });
});

describe('what was objected to', () => {
  const twoPots = [...weighed, 'mix 1kg', 'weigh 2 500g 500g', 'part impeller-7'];
  it('given a coat was objected to, when it came from another pot, then a tap says it from that one', async () => {
    const { answer, say } = await offered(sprayCrew, ...twoPots, 'coat impeller-7 2 brush', 'that came from pot 1');
    expect(answer.card.actions.map(({ line }) => line)).toEqual(['coat impeller-7 1 brush']);
    await say('wait 3m');
    expect(await say('tap meant-1')).toMatchObject({ kind: 'objection', recorded: false });
  });
});

describe('with nothing of their own to put right', () => {
  it.each([
    ...['no, 1.2kg', 'that was impeller 2', 'it was the 2 not the 3', 'scratch that', 'oops wrong part'],
    ...['no, eran 1,2 kilos', 'era la 2, no la 3'],
  ])('given %s, then it is told so, and nothing is recorded', async (said) => {
    const { answer } = await offered(sprayCrew, '@kari: air 24C 48%', ...parts.map((part) => `@kari: ${part}`), said);
    expect(answer).toMatchObject({ recorded: false, code: 'nothing-to-undo' });
  });

  it.each(['no', "sorry I'm late", 'hang on'])(
    'given %s, which puts nothing right, then it is not told so',
    async (said) => {
      const { answer } = await offered(sprayCrew, '@kari: air 24C 48%', said);
      expect(answer.code).not.toBe('nothing-to-undo');
    },
  );
});

describe('what cannot be corrected in place', () => {
  it.each<[readonly string[], string, RegExp]>([
    [mixed, 'no, 1.2kg', /^Change: batch \d opened, 1200 g.* instead of batch 1 opened, 2400 g/i],
    [mixed, 'my mistake, 1.2', /^Change: batch \d opened, 1200 g.* instead of batch 1 opened, 2400 g/i],
    [coated, 'I meant 8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'oops, it was 8 I did, not 7', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [[...parts, 'temp impeller-7 91C'], 'sorry that number belongs to 8', /^Change: impeller-8: .*91 °C instead of/],
    [coated, 'not 7, 8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'no, the 8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'no wait, that was impeller 8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'wrong part, it was impeller-8', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [coated, 'it was lia not me', /^Change: impeller-7 coated .*by lia.* instead of impeller-7 coated/],
    [
      [...parts, 'prep impeller-7 wipe'],
      "wait, I didn't wipe it, I blasted it",
      /^Change: .*blasted.* instead of .*wiped/,
    ],
    [mixed, 'no I said one point two kilos', /^Change: batch \d opened, 1200 g/i],
    [
      [...coated, 'mix 1kg', 'weigh 2 500g 500g', 'coat impeller-8 1 brush already'],
      'that was batch 2',
      /^Change: impeller-8 coated \(brush, batch 2\) instead of impeller-8 coated \(brush, batch 1\)/,
    ],
  ])('given %j, when %s is said, then one tap takes it back and says it anew', async (before, said, label) => {
    const { answer, labels } = await offered(sprayCrew, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels).toEqual([expect.stringMatching(label)]);
  });

  it('given the tap, then the one is undone and the other stands, at the time of the first', async () => {
    const { say } = await offered(sprayCrew, ...coated, 'wait 3m', 'I meant 8');
    const answer = await say('tap meant-1');
    expect(answer).toMatchObject({ recorded: true });
    expect(answer.card.title).toMatch(/^Undone, impeller-8: coated/);
    expect((await say('trace impeller-8')).text).toMatch(/08:00/);
  });

  it.each<[readonly string[], string]>([
    [['aire 24C 48%', 'mezclar 2,4kg'], 'no, eran 1,2 kilos'],
    [['aire 24C 48%', 'mezclar 2,4kg'], 'me equivoqué, 1,2'],
    [coated, 'era la 8'],
    [coated, 'no, la 8'],
    [coated, 'no era la 7, fue la 8'],
    [coated, 'no era la 7 era la 8'],
    [coated, 'me equivoqué era la 8'],
    [['aire 24C 48%', 'mezclar 2,4kg'], 'no he dicho un kilo doscientos'],
  ])('given %j in Spanish, when %s is said, then one tap changes it', async (before, said) => {
    const { labels } = await offered(inSpanish, ...before, said);
    expect(labels).toEqual([expect.stringMatching(/^Cambiar: .* en vez de /)]);
  });
});

describe('what is taken back', () => {
  it.each([
    ...['scratch that', 'undo that', 'Delete that.', 'scrap that, wrong pot', 'delete the last one'],
    ...['Please take that back, I have not looked at it yet.', 'nvm scratch that, had the probe on the rack'],
  ])('given an act, when %s is said, then it is undone', async (said) => {
    const { answer } = await offered(sprayCrew, ...coated, said);
    expect(answer).toMatchObject({ recorded: true, card: { title: 'Undone' } });
  });

  it('given a cure, when it never began, then it is undone and no other way of it is told', async () => {
    const dried = [...coated, 'wait 20m', 'dry impeller-7 already', 'cure impeller-7 oven 90C already'];
    const { answer } = await offered(sprayCrew, ...dried, "forget that, she's still hanging on the rack");
    expect(answer).toMatchObject({ recorded: true, card: { title: 'Undone' } });
  });

  it.each(['bórralo', 'borra eso', 'quítalo', 'borra lo último', 'quita eso que sigue en el carro'])(
    'given an act, when %s is said in Spanish, then it is undone',
    async (said) => {
      const { answer } = await offered(inSpanish, ...coated, said);
      expect(answer).toMatchObject({ recorded: true });
    },
  );

  it('given the last card was of something that was not recorded, then a tap says first which act would go', async () => {
    const { answer, labels } = await offered(sprayCrew, ...mixed, 'stir 9', 'scratch that');
    expect(answer.recorded).toBe(false);
    expect(labels).toEqual([expect.stringMatching(/^Take back: batch 1 opened/)]);
  });

  it.each<[typeof sprayCrew, string]>([
    [sprayCrew, 'oops'],
    [sprayCrew, 'oops, wrong part'],
    [sprayCrew, 'forget it'],
    [inSpanish, 'ups'],
    [inSpanish, 'me equivoqué'],
  ])('given only that it was wrong is said, then a tap takes it back', async (crew, said) => {
    const { answer, labels } = await offered(crew, ...coated, said);
    expect(answer.recorded).toBe(false);
    expect(labels).toEqual([expect.stringMatching(/^(Take back|Anular): impeller-7/)]);
  });

  it('given it is older than ten minutes, then it is shown and asked', async () => {
    const { answer } = await offered(sprayCrew, ...mixed, 'wait 12m', 'scratch that');
    expect(answer).toMatchObject({ recorded: false, code: 'undo-asks' });
  });

  it('given an alarm counts down, then cancel that takes no act back', async () => {
    const { answer } = await offered(sprayCrew, ...mixed, '@kari: lia is hurt in the hall', 'cancel that');
    expect(answer).toMatchObject({ recorded: false });
  });
});

describe('what is no correction', () => {
  it.each<[readonly string[], string]>([
    [coated, '@lia: no, roller'],
    [coated, 'no'],
    [coated, 'not dry yet'],
    [coated, 'was it roller?'],
    [coated, 'no, I did not'],
    [coated, 'sorry, lunch'],
    [coated, 'hold on a second'],
    [[...coated, 'hold impeller-8 dust'], 'sorry, lunch'],
    [['air 24C 48%'], 'no, 1.2kg'],
    [weighed, 'no gas on can 3'],
  ])('given %j, when %s is said, then nothing is offered to be changed', async (before, said) => {
    const { answer, labels } = await offered(sprayCrew, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels.filter((label) => /^(Change|Take back)/.test(label))).toEqual([]);
  });

  it.each(['and for the small one it was 601 and 598', 'and for the small one it was 601g and 598g'])(
    'given another pot with its own two weights, %s, then that is an act of its own',
    async (said) => {
      const pots = ['air 24C 48%', 'mix 2.4kg', 'mix 1.2kg', 'weigh 1 1201g 1198g'];
      const { answer } = await offered(sprayCrew, ...pots, said);
      expect([answer.recorded, answer.text]).toEqual([true, expect.stringMatching(/weigh 2 601g 598g/)]);
    },
  );

  it('given somebody else has read the air since, then theirs is not put right', async () => {
    const { labels } = await offered(sprayCrew, 'air 24C 48%', 'wait 1m', '@lia: air 26C 48%', 'no, 25C');
    expect(labels.filter((label) => label.includes('26'))).toEqual([]);
  });
});

describe('what is put right in words that no list begins with', () => {
  it.each<[readonly string[], string, RegExp]>([
    [['air 24C 84%'], 'flipped those, 48 percent', /^Change: air 24 °C 48 % instead of air 24 °C 84 %/],
    [['air 24C 48%'], 'looked again, its more like 26 and 55%', /^Change: air 26 °C 55 % instead of air 24 °C 48 %/],
    [
      [...parts, 'temp impeller-7 81C'],
      'gauge says 91 now that I wiped my visor, fix that',
      /91 °C instead of .*81 °C/,
    ],
    [
      [...parts, 'temp impeller-7 91C'],
      'that probe is on the 8, silly me',
      /^Change: impeller-8: .*91 °C instead of impeller-7/,
    ],
    [coated, 'I had the roller out for that one, not the brush', /^Change: impeller-7 coated \(roller.* instead of/],
    [coated, 'ugh gloves, 8 not 7', /^Change: impeller-8 coated .* instead of impeller-7 coated/],
    [
      [...coated, 'mix 1kg', 'weigh 2 500g 500g', 'coat impeller-8 1 brush already'],
      'shucks, that one came out of pot 2, not 1',
      /^Change: impeller-8 coated \(brush, batch 2\) instead of impeller-8 coated \(brush, batch 1\)/,
    ],
    [mixed, 'two kilos is plenty, change it', /^Change: batch 2 opened, 2000 g.* instead of batch 1 opened, 2400 g/],
  ])('given %j, when %s is said, then one tap shows what changes', async (before, said, label) => {
    const { answer, labels } = await offered(sprayCrew, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels).toEqual([expect.stringMatching(label)]);
  });

  it.each<[readonly string[], string, RegExp]>([
    [['air 24C 84%'], 'la humedad la puse volteada, va 48', /aire 24 °C 48 % en vez de aire 24 °C 84 %/],
    [[...parts, 'temp impeller-7 81C'], 'traía empañada la careta, marca 91', /91 °C en vez de .*81 °C/],
    [coated, 'ahí fue rodillo, la brocha no la usé', /\(rodillo.* en vez de .*\(brocha/],
    [mixed, 'con 1,8 kilos alcanza, cámbialo', /1800 g.* en vez de .*2400 g/],
  ])('given %j in Spanish, when %s is said, then one tap shows what changes', async (before, said, label) => {
    const { answer, labels } = await offered(inSpanish, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels).toEqual([expect.stringMatching(label)]);
  });

  it.each<[readonly string[], string]>([
    [[...parts, 'temp impeller-7 88C'], 'I think it must be around 92 by now'],
    [coated, 'once lia is back the 8 gets one'],
    [mixed, 'are 3 kilos enough?'],
    [coated, 'my shift ends at 8'],
  ])('given %j, when %s is said, which puts nothing right, then no tap changes anything', async (before, said) => {
    const { answer, labels } = await offered(sprayCrew, ...before, said);
    expect(answer.recorded).toBe(false);
    expect(labels.filter((label) => label.startsWith('Change'))).toEqual([]);
  });
});

describe('a list in place of the parts of the latest act', () => {
  const four = [1, 2, 3, 4].map((number) => `part impeller-${number}`);
  const before = [...weighed, ...four, 'coat impeller-1..4 1 dip already'];

  it.each(['wait only 1 to 3', 'no just 1 to 3', 'sorry, 1 2 and 3'])(
    'given a coat of four, when %s is said, then one tap takes all four back and says those',
    async (said) => {
      const { answer } = await offered(sprayCrew, ...before, said);
      const lines = answer.card.actions.map(({ line }) => line);
      expect(lines).toEqual([expect.stringMatching(/^undo entry \d+; coat impeller-1 impeller-2 impeller-3 1 dip/)]);
      expect(answer.recorded).toBe(false);
    },
  );
});

describe('what was said the other way round', () => {
  const twoPots = ['air 24C 48%', 'mix 2.4kg', 'mix 1.2kg', 'weigh 2 601g 599g'];
  const turned = /^Change: batch 2: weighed A 599 g, B 601 g instead of batch 2: weighed A 601 g, B 599 g$/;
  const girada = /^Cambiar: mezcla 2: pesadas A 599 g, B 601 g en vez de mezcla 2: pesadas A 601 g, B 599 g$/;

  it.each([
    'other way round, A 599 and B 601',
    'swapped, 599 and 601',
    'sorry, the other way around',
    'I got them backwards, B 601',
  ])('given a weighing of one of two pots, when %s is said, then one tap turns that one round', async (said) => {
    const { answer, labels } = await offered(sprayCrew, ...twoPots, said);
    expect(labels).toEqual([expect.stringMatching(turned)]);
    expect(answer.recorded).toBe(false);
  });

  it.each(['al revés: A 599 y B 601', 'al contrario, 599 y 601', 'no, al revés', 'perdón, es al revés'])(
    'given the same in Spanish, when %s is said, then one tap turns that one round',
    async (said) => {
      const { answer, labels } = await offered(inSpanish, ...twoPots, said);
      expect(labels).toEqual([expect.stringMatching(girada)]);
      expect(answer.recorded).toBe(false);
    },
  );

  it.each(['A 599 B 601', 'weigh 599g 601g'])(
    'given no more than the figures in each other’s place, %s, then it may be the other pot too',
    async (said) => {
      const { answer, labels } = await offered(sprayCrew, ...twoPots, said);
      expect(labels).toEqual([expect.stringMatching(turned), expect.stringMatching(/^Batch 1: weighed A 599 g/)]);
      expect(answer.recorded).toBe(false);
    },
  );

  it('given the air with its figures in each other’s place, then one tap turns them round', async () => {
    const { labels } = await offered(sprayCrew, 'air 50C 24%', 'other way round');
    expect(labels).toEqual([expect.stringMatching(/^Change: air 24 °C 50 % instead of air 50 °C 24 %/)]);
  });

  it.each([
    'other way round, first 8 and then 7',
    'swapped them, 8 first',
    'not swapped',
    'swapped the filter on can 1',
  ])('given a coat, when %s is said, which is nothing of that coat alone, then nothing is changed', async (said) => {
    const { answer, labels } = await offered(sprayCrew, ...coated, 'coat impeller-8 1 brush already', said);
    expect([answer.recorded, labels.filter((label) => /^Change|coated/.test(label))]).toEqual([false, []]);
  });
});

describe('weights right after those of another pot', () => {
  const twoPots = ['air 24C 48%', 'mix 2.4kg', 'mix 1.2kg', 'weigh 2 601g 599g'];

  it.each(['weigh 1201g 1198g', '1201 of A and 1198 of B', 'A 1201 B 1198'])(
    'given no pot is named, %s, then it is a tap',
    async (said) => {
      const { answer, labels } = await offered(sprayCrew, ...twoPots, said);
      expect([answer.recorded, labels]).toEqual([false, ['Batch 1: weighed A 1201 g, B 1198 g']]);
    },
  );

  it.each(['weigh 1 1201g 1198g', 'batch 1 got 1201 of A and 1198 of B', 'pot one: 1201 and 1198'])(
    'given the pot is named, %s, then it is recorded',
    async (said) => {
      const { answer } = await offered(sprayCrew, ...twoPots, said);
      expect([answer.recorded, answer.card.title]).toEqual([true, expect.stringMatching(/^Batch 1/)]);
    },
  );
});
