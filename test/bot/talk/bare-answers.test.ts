// Answers that say no more than what was asked: read by the speaker's own last card or a bell that went to them, for ten minutes,
// where one such question is open. Through the whole bot, on a clock of its own. All figures are invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoShelf } from '../../core/given.ts';
import { sessionTalk, sprayCrew, talkAfter, taps } from '../cards/session-talk.ts';

const answerTo = async (...lines: readonly string[]) => {
  const talk = await talkAfter(...lines.slice(0, -1));
  return talk.say(lines.at(-1) ?? '');
};
const spanish = {
  ...sprayCrew,
  people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })),
};
async function afterInSpanish(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', spanish);
  onTestFinished(talk.close);
  for (const line of lines.slice(0, -1)) await talk.say(line);
  return talk.say(lines.at(-1) ?? '');
}
const mixed = ['air 24C 48%', 'mix 2.4kg'];
const inUse = [...mixed, 'weigh 1 1201g 1198g already', 'part pump-1', 'part pump-2', 'coat pump-1 1 brush already'];
const opened = ['air 24C 48%', 'open A lot A42 2.5kg'];

describe('a thing that is not named again', () => {
  it('given it, then the part of the speaker’s last act is the only one that is offered', async () => {
    const parts = ['part pump-1', 'part pump-2', 'part pump-3', 'prep pump-2 sa2.5'];
    const answer = await answerTo(...parts, 'wiped it down with acetone, no grease left');
    expect(answer.recorded).toBe(false);
    expect(Object.values(taps(answer))).toEqual(['prep pump-2 wiping acetone grease-off']);
  });
});

describe('an answer that says no more than what was asked', () => {
  it.each<[string, readonly string[], string]>([
    ['two weights after a mix', [...mixed, '1201 1198'], 'weigh 1 1201g 1198g'],
    ['each with its unit', [...mixed, '1201g and 1198g'], 'weigh 1 1201g 1198g'],
    ['each with its letter, in any order', [...mixed, 'b 1198 a 1201'], 'weigh 1 b 1198g a 1201g'],
    ['gas, where the card says: gas or whole', [...opened, 'gas'], 'open A lot A42 2500g gas'],
    [
      'two weights, though a line between was not understood',
      [...mixed, 'hello there', '1201 1198'],
      'weigh 1 1201g 1198g',
    ],
    ['two weights after a question', [...mixed, 'now', '1201 1198'], 'weigh 1 1201g 1198g'],
    ['the whole can', [...opened, 'whole please'], 'open A lot A42 2500g whole'],
    ['how a part is coated', [...mixed, 'part pump-1', 'coat pump-1', 'brush'], 'coat pump-1 brush'],
    ['the same in words', [...mixed, 'part pump-1', 'coat pump-1', 'with a brush'], 'coat pump-1 brush'],
    ['which part, by its number', ['part pump-1', 'part pump-2', 'temp 23C', 'the 2 one'], 'temp pump-2 23C'],
    ['a temperature', ['part pump-1', 'temp pump-1', '23'], 'temp pump-1 23C'],
    ['the same, as it is read out', ['part pump-1', 'temp pump-1', 'it shows 23'], 'temp pump-1 23C'],
    ['the air', ['air', '24 48'], 'air 24C 48%'],
    ['yes to a new part', [...mixed, 'prep pump-1 sa2.5', 'yes'], 'prep new pump-1 sa2.5'],
    ['ok to it, where no bell waits', [...mixed, 'prep pump-1 sa2.5', 'ok'], 'prep new pump-1 sa2.5'],
    ['a button by its own words', [...opened, 'gas at hand'], 'open A lot A42 2500g gas'],
    ['which batch', ['air 24C 48%', 'mix 1kg', 'mix 1kg', 'stir', '2'], 'stir 2'],
    ['which batch, by its order', ['air 24C 48%', 'mix 1kg', 'mix 1kg', 'stir', 'the second batch'], 'stir 2'],
    ['which batch, with its mark', ['air 24C 48%', 'mix 1kg', 'mix 1kg', 'stir', 'batch 2'], 'stir 2'],
    [
      'the way and the pot',
      [
        ...[...mixed, 'weigh 1 1201g 1198g', 'wait 105m', 'filter 1', 'part pump-4', 'part pump-5'],
        ...['coat pump-4 1 brush', 'coat pump-5', 'brush, from pot 1'],
      ],
      'coat pump-5 1 brush',
    ],
    ['which of the taps', ['air 24C 48%', 'mix 1kg', 'mix 1kg', 'stir', 'the second one'], 'stir 2'],
    ['two weights as dictated', [...mixed, 'twelve oh one and eleven ninety eight'], 'weigh 1 1201g 1198g'],
    ['a temperature, with talk round it', ['part pump-1', 'temp pump-1', 'probe shows 23'], 'temp pump-1 23C'],
    ['a size, with talk round it', ['air 24C 48%', 'open B lot B42', '5 kg in it'], 'open B lot B42 5 kg'],
    ['a part that the card had no room for', ['parts in pump-1..pump-8', 'temp 23C', 'the 8'], 'temp pump-8 23C'],
    [
      'why, in words that are said of it',
      ['part pump-1', 'hold pump-1', 'orange peel all over'],
      'hold pump-1 "orange peel all over"',
    ],
    ['a temperature in degrees', ['part pump-1', 'temp pump-1', '23 degrees'], 'temp pump-1 23C'],
    ['a temperature in words', ['part pump-1', 'temp pump-1', 'twenty three'], 'temp pump-1 23C'],
    ['gas, with words round it', [...opened, 'yes we got gas'], 'open A lot A42 2500g gas'],
    ['all of it', [...opened, 'using it all'], 'open A lot A42 2500g whole'],
    ['a yes of several words', [...mixed, 'prep pump-1 sa2.5', 'yep do it'], 'prep new pump-1 sa2.5'],
    ['what is behind the line', ['part pump-1', 'prep pump-1', 'Sa 2.5; 60 µm'], 'prep pump-1 Sa 2.5; 60 µm'],
    ['who takes over', ['handover', 'to kari'], 'handover kari'],
    ['what alone the card offers', [...inUse, 'coat pump-2', 'brush'], 'coat pump-2 brush'],
    [
      'a weight that lacked a digit',
      [...mixed, 'open A lot A42 5kg gas', 'open B lot B42 5kg', 'weigh 1 120g 1198g', '1201'],
      'weigh 1 1201g 1198g',
    ],
  ])('given %s, then it is taken, and the card says as what', async (_, lines, as) => {
    const answer = await answerTo(...lines);
    expect(answer.card.lines).toContain(`Taken as: ${as}`);
    expect(answer.code).not.toBe('unknown-verb');
  });

  it('given one way is offered, when another is said, then it is taken with all else that the tap says', async () => {
    const answer = await answerTo(
      ...inUse.slice(0, -1),
      'filter 1 1um glass-fibre second-vessel already',
      inUse.at(-1) ?? '',
      'coat pump-2 1',
      'with the roller',
    );
    expect(answer.card.lines).toContain('Taken as: coat pump-2 1 roller');
  });

  it.each([
    ['argon, done', 'blanket 1'],
    ['nitrogen on', 'blanket 1'],
  ])('given a card offered it, when %s tells that it is done, then it is one tap', async (said, line) => {
    const answer = await answerTo('air 24C 48%', 'open A lot A42 2.5kg gas', said);
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions.map((each) => each.line)).toEqual([line]);
  });

  it.each(['argon is nearly out', 'no argon yet'])(
    'given a card offered it, when %s is said, then no tap says it',
    async (said) => {
      const answer = await answerTo('air 24C 48%', 'open A lot A42 2.5kg gas', said);
      expect(answer.recorded).toBe(false);
      expect(answer.card.actions.map((each) => each.line)).not.toContain('blanket 1');
    },
  );

  it('given a handover to nobody of the crew, then it asks to whom, by taps of the people', async () => {
    const answer = await answerTo('handing over to the next shift');
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions.map((each) => each.line)).toContain('handover kari');
  });

  it.each(['could you get another kilo ready', 'put me down for one more kilo'])(
    'given %s, then it is a mix of one',
    async (said) => {
      const answer = await answerTo('air 24C 48%', said);
      const lines = [...answer.card.lines, ...answer.card.actions.map((each) => each.line)];
      expect(lines.some((each) => /mix 1 ?k/.test(each))).toBe(true);
    },
  );

  it('given it was recorded, then one tap takes it back', async () => {
    const answer = await answerTo(...mixed, 'part pump-1', 'temp pump-1', '23');
    expect(answer).toMatchObject({ recorded: true });
    expect(taps(answer)).toHaveProperty('undo');
  });

  it.each<[string, readonly string[], string]>([
    ['dos pesos', ['aire 24C 48%', 'mezclar 2,4kg', '1201 y 1198'], 'pesar 1 1201g 1198g'],
    ['gas', ['aire 24C 48%', 'abrir A lote A42 2,5kg', 'gas'], 'abrir A lote A42 2500g gas'],
    ['sí', ['aire 24C 48%', 'mezclar 2,4kg', 'preparar pump-1 sa2.5', 'sí'], 'preparar nueva pump-1 sa2.5'],
    [
      'a brocha',
      ['aire 24C 48%', 'mezclar 2,4kg', 'pieza pump-1', 'aplicar pump-1', 'a brocha'],
      'aplicar pump-1 brocha',
    ],
    ['sí, dale', ['aire 24C 48%', 'mezclar 2,4kg', 'preparar pump-1 sa2.5', 'si dale'], 'preparar nueva pump-1 sa2.5'],
    ['91 grados', ['pieza pump-1', 'sonda pump-1', '91 grados'], 'sonda pump-1 91C'],
    [
      'dos pesos dictados',
      ['aire 24C 48%', 'mezclar 2,4kg', 'mil doscientos uno y mil ciento noventa y ocho'],
      'pesar 1 1201g 1198g',
    ],
    ['el segundo', ['aire 24C 48%', 'mezclar 1kg', 'mezclar 1kg', 'agitar', 'el segundo'], 'agitar 2'],
    ['la 2', ['pieza pump-1', 'pieza pump-2', 'sonda 23C', 'la 2'], 'sonda pump-2 23C'],
    ['brocha', ['aire 24C 48%', 'mezclar 2,4kg', 'pieza pump-1', 'aplicar pump-1', 'brocha'], 'aplicar pump-1 brocha'],
  ])('given %s in Spanish, then it is taken', async (_, lines, as) => {
    const answer = await afterInSpanish(...lines);
    expect(answer.card.lines).toContain(`Entendido como: ${as}`);
  });
});

describe('what is no answer', () => {
  const unread = { recorded: false, code: expect.stringMatching(/^(unknown-verb|no-alone)$/) };

  it.each<[string, readonly string[]]>([
    ['what is not so', [...mixed, 'not 1201 1198']],
    ['one figure too many', [...mixed, '1201 1198 3']],
    ['more than ten minutes later', [...mixed, 'wait 11m', '1201 1198']],
    ['said by somebody else', [...mixed, '@lia: 1201 1198']],
    ['when somebody is back', ['part pump-1', 'temp pump-1', 'back in 10']],
    ['what is only thought', ['part pump-1', 'temp pump-1', 'i guess it shows 23']],
    ['to a card before the last', [...mixed, 'part pump-1', '1201 1198']],
    ['yes, where nothing is asked', ['air 24C 48%', 'yes']],
  ])('given %s, then nothing is taken', async (_, lines) => {
    expect(await answerTo(...lines)).toMatchObject(unread);
  });

  it('given an act of its own on the part that the card is of, then its name is not said twice', async () => {
    const answer = await answerTo('part pump-1', 'wiped pump-1 with acetone', 'pump 1 blasted sa2.5 60um');
    expect(answer.text).not.toContain('pump-1 pump-1');
  });

  it('given a figure with talk of another thing, then it is at most a tap', async () => {
    const answer = await answerTo('part pump-1', 'temp pump-1', '23 over at the door');
    expect(answer).toMatchObject({ recorded: false, code: expect.stringMatching(/^(?:unknown-verb|which-act)$/) });
  });

  it('given thanks, which is no yes, then nothing is taken and what to do now is told', async () => {
    const answer = await answerTo(...inUse, 'coat pump-2', 'thanks');
    expect(answer).toMatchObject({ recorded: false, asked: { ask: 'what-now' } });
  });

  it('given one tap that says several acts, when it is agreed to, then each is recorded', async () => {
    const answer = await answerTo(...inUse, 'part pump-3', 'coat pump-2 1 brush already', 'no, pump-3', 'yes');
    expect(answer).toMatchObject({ recorded: true });
  });

  it('given a question, then nothing is taken', async () => {
    const answer = await answerTo(...mixed, '1201 1198?');
    expect(answer.recorded).toBe(false);
    expect(answer.text).not.toMatch(/Taken as|weigh 1 1201/);
  });

  it('given a reason was asked, when it is said, then it is a tap: it would be whatever is typed', async () => {
    const answer = await answerTo('part pump-1', 'hold pump-1', 'a long run on the edge');
    expect(answer).toMatchObject({ recorded: false, code: 'which-act' });
    expect(Object.values(taps(answer))).toEqual(['hold pump-1 "a long run on the edge"']);
  });

  it('given a button by its first word, then it is a tap', async () => {
    const answer = await answerTo(...mixed, 'weigh 1 1201g 1198g already', 'stirrer');
    expect(answer).toMatchObject({ recorded: false });
    expect(Object.values(taps(answer))).toEqual(['stop 1']);
  });

  it('given an act that a rule objects to, when it is said to have gone ahead in the words of its button, then only a tap says so', async () => {
    const answer = await answerTo(...mixed, 'part pump-1', 'coat pump-1 brush', 'went ahead');
    expect(answer).toMatchObject({ recorded: false });
    expect((await answerTo(...mixed, 'part pump-1', 'coat pump-1 brush', 'yes')).recorded).toBe(false);
  });

  it('given the card asks for what can hurt somebody, when yes is said, then it is a tap', async () => {
    const answer = await answerTo(...mixed, 'yes');
    expect(answer).toMatchObject({ recorded: false, code: 'which-act' });
    expect(Object.values(taps(answer))).toEqual(['confirm 1 equipment yes']);
  });

  it('given a brief, when yes is said, then nobody has read it', async () => {
    const talk = await talkAfter('set brief on', ...mixed, 'brief 1');
    const answer = await talk.say('yes');
    expect(answer.recorded).toBe(false);
    expect(Object.values(taps(answer)).join()).not.toContain('supplied');
  });
});

describe('lines that read by themselves', () => {
  it('given no question of its kind is open, then a temperature alone is of the air, as ever', async () => {
    const answer = await answerTo('part pump-1', '21C');
    expect(answer.card.title).toBe('Air, room');
  });

  it('given a temperature was asked for, then it answers that; with the humidity it is the air', async () => {
    expect((await answerTo('part pump-1', 'surface pump-1', '21C')).card.lines).toContain(
      'Taken as: surface pump-1 21C',
    );
    expect((await answerTo('part pump-1', 'surface pump-1', '21C 48%')).card.title).toBe('Air, room');
  });

  it('given a bell waits, then ok takes it, whatever else is asked', async () => {
    const talk = await talkAfter(...mixed, 'weigh 1 1200g 1200g', 'wait 103m', 'prep pump-1 sa2.5');
    const answer = await talk.say('ok');
    expect(answer).toMatchObject({ recorded: true });
    expect(answer.card.title).toBe('Heard');
  });

  it('given an alarm counts down, then no calls it off, whatever else is asked', async () => {
    const talk = await talkAfter('@kari: lia is hurt in the hall', 'confirm vessel');
    const answer = await talk.say('no');
    expect(answer.card.title).toBe(
      (await talkAfter('@kari: lia is hurt in the hall').then(({ say }) => say('no'))).card.title,
    );
    expect(answer.recorded).toBe(true);
  });
});

describe('after a restart', () => {
  it('given the card was answered before it, then it is still answered bare', async () => {
    const store = openSqliteStore(':memory:');
    onTestFinished(store.close);
    const first = sessionTalk(store);
    for (const line of [...mixed, 'open A lot A42 2.5kg']) await first.say(line);
    const again = sessionTalk(store, sprayCrew, undefined, epochMs(Date.UTC(2026, 2, 2, 8, 5)), demoShelf);
    expect((await again.say('gas')).card.lines).toContain('Taken as: open A lot A42 2500g gas');
  });
});
