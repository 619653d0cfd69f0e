// Practice in front of the host: whose line goes where, what is told of it, and what ends it. Invented throughout.

import { describe, expect, it } from 'vitest';
import { idleMs, mostAtOnce } from '../../../bot/practice/practices.ts';
import { isOffered, isPractice, practiceTalk, tapLines } from './practice-talk.ts';

describe('what is typed in practice', () => {
  it('given one who practises, then theirs is marked, and another’s is recorded', async () => {
    const { say } = await practiceTalk('@kari: practice on');
    const own = await say('@kari: air 24C 48%');
    expect([isPractice(own), own.recorded, own.to, own.about]).toEqual([true, false, ['kari'], undefined]);
    const other = await say('@lia: air 20C 50%');
    expect([isPractice(other), other.recorded]).toEqual([false, true]);
  });

  it('given what practice recorded, then neither the day nor the trace nor anybody’s bells know of it', async () => {
    const { say, board, heard } = await practiceTalk(
      '@kari: practice on',
      ...['@kari: air 24C 48%', '@kari: part rail-1', '@kari: mix 2kg', '@kari: wait 3h'],
    );
    expect((await say('day')).text).not.toContain('kari');
    expect((await say('trace rail-1')).text).not.toContain('kari');
    expect((await board()).items).toEqual([]);
    expect(heard.filter(({ key }) => key !== null)).toEqual([]);
  });

  it('given a question about the shop, then it says that this is practice and how to leave', async () => {
    const { card } = await practiceTalk('@omar: mix 2.4kg 24C 48%', '@kari: practice on');
    for (const line of ['now', 'who has batch 1', 'stop 1', 'day']) {
      expect((await card(`@kari: ${line}`)).lines[0]).toMatch(/^This is practice: .* practice off\.$/);
    }
  });

  it('given what is only not understood, then nothing is said of the shop', async () => {
    const { card } = await practiceTalk('@kari: practice on');
    const { lines, actions } = await card('@kari: I need a coffee');
    expect(lines.join()).not.toContain('knows nothing of the shop');
    expect(actions.map(({ id }) => id)).toContain('invented');
  });

  it('given what leaves a file, then none is written', async () => {
    const { say } = await practiceTalk('@kari: practice on', '@kari: part rail-1');
    for (const line of ['traveller rail-1', 'export week csv', 'backup friday.sqlite', 'voc month']) {
      const { card } = await say(`@kari: ${line}`);
      expect([card.title, card.paper, card.copy, card.image]).toEqual([
        'PRACTICE 08:00 · no papers',
        undefined,
        undefined,
        null,
      ]);
    }
  });

  it('given the same delivery twice, then it is one act, and one step of the clock', async () => {
    const { say } = await practiceTalk(
      '@kari: practice on',
      '@kari: mix 2kg 24C 48%',
      '@kari: weigh 1 1000g 1000g already',
    );
    const wait = JSON.stringify({ id: 'w1', as: 'kari', text: 'wait 20m' });
    const [first, again] = [await say(wait), await say(wait)];
    expect([first.card.title, again.card.title]).toEqual([expect.stringMatching(/^PRACTICE 08:20/), first.card.title]);
  });

  it('given practice asked for again, then it goes on where it is', async () => {
    const { card } = await practiceTalk('@kari: practice on', '@kari: air 24C 48%');
    const again = await card('@kari: practice on');
    expect([again.title, again.leads]).toEqual([
      'PRACTICE 08:00 · it goes on',
      'Next: name the parts that you will coat.',
    ]);
  });
});

describe('the clock of practice', () => {
  it.each([
    ['wait 20m', '08:20'],
    ['20 minutes later', '08:20'],
    ['wait until 9:30', '09:30'],
    ['go on', '09:42'],
    ['wait', '09:42'],
    ['next bell', '09:42'],
    // No farther than what rings first.
    ['wait 5h', '09:42'],
  ])('given `%s`, then it shows %s', async (line, clock) => {
    const { card, now } = await practiceTalk(
      ...['@kari: practice on', '@kari: mix 2kg 24C 48%', '@kari: weigh 1 1000g 1000g already'],
    );
    const before = now();
    expect((await card(`@kari: ${line}`)).title).toContain(`PRACTICE ${clock} · `);
    expect(now()).toBe(before);
  });

  it('given Spanish, then it is sent on in Spanish', async () => {
    const { card } = await practiceTalk('@kari: set language es', '@kari: práctica');
    expect((await card('@kari: espera 20 min')).title).toContain('PRÁCTICA 8:20');
    expect((await card('@kari: una hora después')).title).toContain('PRÁCTICA 9:20');
    expect((await card('@kari: wait 10m')).title).toContain('PRÁCTICA 9:30');
  });

  it('given “wait” before a correction, then no clock is moved', async () => {
    const { card } = await practiceTalk('@kari: practice on');
    expect((await card('@kari: wait, that was batch 2')).title).toContain('PRACTICE 08:00');
  });
});

describe('a cry in practice', () => {
  it.each(['fire in the booth', 'omar is down', 'practice: fire', 'fuego', 'my eyes burn'])(
    'given `%s`, then it is real, calls everybody, and practice is over',
    async (cry) => {
      const { say } = await practiceTalk('@kari: practice on');
      const { recorded, card, forAll } = await say(`@kari: ${cry}`);
      expect([recorded, card.alarm]).toEqual([true, true]);
      expect(card.ping).toEqual(expect.arrayContaining(['omar', 'lia', 'rosa']));
      expect(card.lines.at(-1)).toMatch(/^This is real: .*undo\.$/);
      expect(forAll?.lines.at(-1)).not.toMatch(/practice/);
      expect(isPractice(await say('@kari: what now'))).toBe(false);
      expect((await say('@kari: undo')).recorded).toBe(true);
    },
  );

  it('given what its own rules take for an alarm, then it is said for real', async () => {
    const { say } = await practiceTalk('@kari: practice on');
    const { recorded, card } = await say('@kari: co 500ppm');
    expect([isPractice({ card }), recorded, card.alarm]).toEqual([false, true, true]);
  });

  it('given a word that may be a cry, then the shop asks, and what it offers calls people', async () => {
    const { say } = await practiceTalk('@kari: practice on');
    const asked = await say('@kari: fire extinguisher checked');
    expect([isPractice(asked), asked.recorded]).toEqual([false, false]);
    expect((await say('@kari: tap meant-1')).card.alarm).toBe(true);
  });

  it('given any card of practice, then none of its taps calls anybody', async () => {
    const { say } = await practiceTalk('@kari: practice on');
    for (const line of ['help', 'mix 2kg 24C 48%', 'weigh 1 1000g 1000g already', 'thick 1']) {
      expect(tapLines(await say(`@kari: ${line}`)).filter((tap) => /^(hot|emergency|fire)/.test(tap))).toEqual([]);
    }
  });

  it('given another’s alarm, then practice is over for everybody in it, and none begins', async () => {
    const { say } = await practiceTalk('@kari: practice on', '@lia: fire in the booth');
    const { recorded, card } = await say('@kari: air 24C 48%');
    expect([recorded, card.lines.at(-1)]).toEqual([
      true,
      'An alarm is on: practice is over, and this went to the shop.',
    ]);
    expect((await say('@kari: practice on')).card.title).toBe('No practice while an alarm is on');
  });
});

describe('a card of the shop while somebody practises', () => {
  const pot = ['@kari: mix 2.4kg 24C 48%', '@kari: weigh 1 1201g 1198g already'];

  it('given its tap, then it is recorded, and the card says where', async () => {
    const talk = await practiceTalk(...pot);
    await talk.say('@kari: practice on');
    await talk.say('@omar: wait 103m');
    talk.seesBell();
    const { recorded, card } = await talk.say('@kari: tap stop');
    expect([recorded, card.lines.at(-1)]).toEqual([true, 'This is the shop’s own record, not practice.']);
  });

  it('given a bell of theirs, then their next card of practice says so, once', async () => {
    const { card } = await practiceTalk(...pot, '@kari: practice on', '@omar: wait 103m');
    expect((await card('@kari: help')).lines[0]).toMatch(/^In the shop, for you: Batch 1: stirring done\./);
    expect((await card('@kari: help')).lines[0]).not.toMatch(/^In the shop/);
  });

  it('given a line for the shop said so, then it is recorded', async () => {
    const { say } = await practiceTalk('@kari: practice on');
    expect((await say('@kari: shop: air 24C 48%')).recorded).toBe(true);
  });
});

describe('the end of practice', () => {
  it('given practice left, then what is said counts again', async () => {
    const { say } = await practiceTalk('@kari: practice on', '@kari: practice off');
    expect((await say('@kari: air 24C 48%')).recorded).toBe(true);
    expect((await say('@kari: practice off')).card.title).toBe('You are not practising');
  });

  it('given a card of a practice that is over, then its tap records nothing', async () => {
    const talk = await practiceTalk('@kari: practice on', '@kari: air 24C 48%');
    const before = talk.record();
    const tap = (await talk.say('@kari: part rail-1')).card.actions.find(({ id }) => id === 'mix' || id === 'invented');
    await talk.say('@kari: practice off');
    for (const name of ['kari', 'lia']) {
      const answer = await talk.say(`@${name}: ${tap?.line}`);
      expect([answer.recorded, answer.card.title]).toEqual([false, 'Practice is over: nothing was recorded']);
    }
    expect(talk.record()).toBe(before);
  });

  it('given nothing said for long, then their next line is not recorded, and a tap says it for the shop', async () => {
    const { say } = await practiceTalk('@kari: practice on', `@omar: wait ${idleMs / 60_000}m`);
    const ended = await say('@kari: air 24C 48%');
    expect([ended.recorded, ended.card.title]).toEqual([false, 'Practice is over: nothing was recorded']);
    expect(ended.card.lines[0]).toBe('Nobody had said anything in it for 2 h.');
    expect((await say('@kari: tap for-shop')).recorded).toBe(true);
    expect((await say('@kari: air 23C 48%')).recorded).toBe(true);
  });

  it('given more than there is room for, then the one that was quiet longest is over', async () => {
    const talk = await practiceTalk();
    for (let i = 0; i <= mostAtOnce; i += 1) {
      await talk.say(`@hand-${i}: practice on`);
      await talk.say('wait 1m');
    }
    expect(isPractice(await talk.say('@hand-1: air 24C 48%'))).toBe(true);
    const ended = await talk.card('@hand-0: air 24C 48%');
    expect(ended.lines[0]).toMatch(/^Others began to practise/);
  });
});

describe('the offer to practise', () => {
  it('given help, or a first shift, then it stands there', async () => {
    const { say } = await practiceTalk('air 24C 48%');
    expect(isOffered(await say('help'), 'practice')).toBe(true);
    expect(isOffered(await say('@kari: what now'), 'practice')).toBe(true);
    expect(isOffered(await say('@lia: first shift'), 'practice')).toBe(true);
  });

  it.each(['practice', 'let me practise', 'I want to practice', 'can i practise', 'begin practice'])(
    'given `%s`, then it begins',
    async (line) => {
      const { say } = await practiceTalk();
      expect(isPractice(await say(`@kari: ${line}`))).toBe(true);
      expect((await say('@kari: end practice')).card.title).toBe('Practice over');
    },
  );

  it.each(['practicar', 'quiero practicar', 'vamos a practicar'])(
    'given `%s` in Spanish, then it begins',
    async (line) => {
      const { say } = await practiceTalk('@kari: set language es');
      expect(isPractice(await say(`@kari: ${line}`))).toBe(true);
      expect((await say('@kari: salir de la práctica')).card.title).toBe('Fin de la práctica');
    },
  );
});
