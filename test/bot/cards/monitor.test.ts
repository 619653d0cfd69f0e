// A gas monitor's reading, typed in: what to do now, the limit and whose it is, whom it rings, what it stops until when, and where
// it is found again.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

describe('a reading beyond its limit', () => {
  it.each([
    ['lel 12%', 'Stop spraying, everybody out', 'The limit is 10 % (29 CFR 1910.146(b)): 1.2 times it.'],
    ['o2 19.1%', 'Everybody out now.', 'At least 19.5 % (29 CFR 1910.146(b)) is asked for.'],
    ['o2 24%', 'Everybody out now: no spark', 'The limit is 23.5 %'],
    ['co 60', 'Everybody out into fresh air now', 'The limit is 50 ppm'],
    ['h2s 25ppm', 'Everybody out into fresh air now, upwind', 'The limit is 20 ppm'],
  ])(
    'given %s, then what to do stands first, it rings everybody, and it is on until a lead says all clear',
    async (line, now, limit) => {
      const { say } = await talkAfter('set emergency call 112, gate 2');
      const { card, text, to } = await say(`@kari: ${line} in booth`);
      expect(card.lines[0]).toContain(now);
      expect(card.lines[1]).toBe('Call: 112, gate 2');
      expect(text).toContain(limit);
      expect(card.tone).toBe('stop');
      expect(to).toEqual(['kari', 'omar', 'rosa', 'lia']);
      expect((await say('@kari: alarm over')).code).toBe('may-not-settle');
      expect((await say('alarm over')).recorded).toBe(true);
    },
  );

  it('given a crew under the law of the European Union, then its limit counts, and no advice of another country', async () => {
    const { say } = await talkAfter('@rosa: set law eu', 'set monitor 2026-12-31');
    const { card, text, to } = await say('@kari: co 25ppm in booth');
    expect([card.tone, to]).toEqual(['stop', ['kari', 'omar', 'rosa', 'lia']]);
    expect(text).toContain('The limit is 20 ppm (Directive (EU) 2017/164, from memory): 1.25 times it.');
    await say('alarm over');
    expect((await say('brief in booth spray kari')).code).toBe('gas-beyond');
    await say('@lia: co 20 in booth');
    expect((await say('brief in booth spray kari')).recorded).toBe(true);
  });

  it('given words behind it that nobody reads, then the reading is one tap', async () => {
    const { say } = await talkAfter();
    const asked = await say('@kari: lel 12% in booth because of a leak');
    expect(asked.card.actions.map(({ line }) => line)).toEqual(['lel 12% in booth', 'spill']);
    expect((await say('@kari: tap meant-1')).card.tone).toBe('stop');
  });

  it('given it is on, when it is read beyond again, then nobody is rung twice, and another gas rings', async () => {
    const { say } = await talkAfter('@kari: lel 12% in booth');
    expect((await say('@kari: lel 15% in booth')).to).toEqual(['kari']);
    expect((await say('@kari: h2s 25 in booth')).to).toEqual(['kari', 'omar', 'rosa', 'lia']);
  });

  it('given the alarm is over, then nothing begins there until somebody has read it within its limit', async () => {
    const { say } = await talkAfter('set monitor 2026-12-31', '@kari: lel 12% in booth');
    expect((await say('alarm over')).text).toContain(
      'The gas monitor last showed LEL 12 % in booth, read by kari at 08:00. Nothing new begins there until',
    );
    expect((await say('brief in booth spray kari')).code).toBe('gas-beyond');
    await say('@lia: lel 3% in booth');
    expect((await say('brief in booth spray kari')).recorded).toBe(true);
  });

  it('given it is said of an earlier moment and was read there since, then it is recorded and nobody is rung', async () => {
    const { say } = await talkAfter('wait 1h', '@kari: lel 4% in booth');
    const { card, to } = await say('@kari: lel 12% in booth at 8:10');
    expect([card.tone, to]).toEqual(['warn', ['kari']]);
    expect(card.lines[0]).toBe('Read again since: LEL 4 % at 09:00, kari. Nobody is called.');
  });

  it('given work began there all the same, then it stays a deviation when the alarm is over and the gas is gone', async () => {
    const { say } = await talkAfter('@kari: lel 12% in room', 'wait 2m', 'air 24C 48%', 'already mix 2.4kg', 'wait 2m');
    for (const line of ['lel 2% in room', 'alarm over', 'wait 2m']) await say(line);
    const { text } = await say('day');
    expect(text).toContain('Deviations: 2');
    expect(text).toContain('The gas monitor last showed LEL 12 % in room');
    expect(text).toContain('Somebody needs help in room, cried by kari');
  });
});

describe('a reading within it', () => {
  it('given a share below the limit, then it is recorded with the limit, and rings nobody', async () => {
    const { say } = await talkAfter('set monitor 2026-12-31');
    const { card, to } = await say('@kari: lel 4%');
    expect([card.title, card.tone, to]).toEqual(['Gas monitor, room: LEL 4 %', 'plain', ['kari']]);
    expect(card.lines).toEqual([
      'The limit is 10 % (29 CFR 1910.146(b)).',
      'One moment at one spot: it says nothing of the next. Batchbell is no gas monitor.',
    ]);
  });

  it('given nobody said until when the monitor is in check, or that day is past, then the card says that nothing is proved', async () => {
    const { say } = await talkAfter();
    const never = await say('lel 4%');
    expect([never.card.tone, never.card.lines[1]]).toEqual([
      'warn',
      'Nobody has said until when the gas monitor is in check: what it shows is not proved. Say set monitor and the day.',
    ]);
    expect((await say('@kari: set monitor 2026-03-31')).code).toBe('may-not-settle');
    await say('set monitor until 2026-03-01');
    expect((await say('lel 4%')).card.lines[1]).toContain('was in check until');
    await say('set monitor 2026-03-02');
    expect((await say('lel 4%')).card.tone).toBe('plain');
  });

  it('given more than is advised and less than the law’s limit, then the ratio is told and nobody rings', async () => {
    const { card, to } = await (await talkAfter()).say('@kari: co 40ppm');
    expect([card.tone, to]).toEqual(['warn', ['kari']]);
    expect(card.lines[0]).toBe(
      '1.14 times what is advised, 35 ppm (NIOSH, from memory). The law’s limit: 50 ppm (29 CFR 1910.1000 Table Z-1, from memory).',
    );
  });

  it('given one session is open and no place named, then it is of that session’s place, and the day has it', async () => {
    const { say } = await talkAfter('air 24C 48%', 'mix 2.4kg', 'brief 1 in hall spray kari');
    expect((await say('lel 4')).card.title).toBe('Gas monitor, hall: LEL 4 %');
    expect((await say('day')).text).toContain('08:00 omar: LEL 4 %, hall');
  });

  it('given a slip of the thumb, when it is undone, then its alarm goes with it and work begins again', async () => {
    const { say } = await talkAfter('@kari: lel 40% in booth', '@kari: undo');
    expect((await say('brief in booth spray kari')).recorded).toBe(true);
  });

  it('given a Spanish reader, then it is told in Spanish', async () => {
    const { say } = await talkAfter('@kari: set language es');
    expect((await say('@kari: lie 12')).text).toContain('Paren de pintar, todos fuera');
  });
});

describe('a place closed by a reading beyond its limit, and a monitor that nobody is known to have checked', () => {
  it('given it then reads within, then the place stays closed and the card says what to do; checked and read again, it opens', async () => {
    const { card, say } = await talkAfter('@kari: lel 12% in booth', 'alarm over', 'wait 5m');
    const within = await card('@kari: lel 2% in booth');
    expect(within.tone).toBe('warn');
    expect(within.lines[0]).toBe(
      'This opens nothing: booth stays closed. Check the monitor, say set monitor and the day until which that holds, then read again.',
    );
    const held = await say('brief in booth spray kari');
    expect([held.code, held.recorded]).toEqual(['gas-beyond', false]);
    expect(held.text).toContain('The reading within, at 08:05, is of a monitor that is not known to be in check');
    await say('set monitor 2026-12-31');
    expect((await say('brief in booth spray kari')).code).toBe('gas-beyond');
    await say('@kari: lel 2% in booth');
    expect((await say('brief in booth spray kari')).recorded).toBe(true);
  });

  it('given it was in check only until yesterday, then it opens nothing; in Spanish too', async () => {
    const { card, say } = await talkAfter(
      'set monitor 2026-03-01',
      '@kari: co 60 in booth',
      'alarm over',
      'set language es',
    );
    expect((await card('co 2 in booth')).lines[0]).toContain('Esto no abre nada:');
    expect((await say('brief in booth spray kari')).text).toContain('no abre nada: revisen el medidor');
  });

  it('given no reading was beyond, then nothing is closed', async () => {
    const { say } = await talkAfter();
    expect((await say('lel 2% in booth')).text).not.toContain('opens nothing');
    expect((await say('brief in booth spray kari')).recorded).toBe(true);
  });
});

describe('a reading beyond its limit, corrected to one within', () => {
  it('then its alarm stays on, which the card says, and the lead ends that one with a tap', async () => {
    const { card, say } = await talkAfter('@kari: lel 12% in booth');
    const amended = await card('amend lel in booth 2% because the decimal was missed');
    expect(amended.lines.join(' ')).toContain('Its alarm is still on: only a lead ends it');
    expect(amended.actions.map(({ id, line }) => [id, line])).toContainEqual([
      ...['alarm-over', 'alarm-over emergency in booth'],
    ]);
    expect((await say('alarm over emergency in booth')).recorded).toBe(true);
  });

  it('given another emergency is on there, or it is beyond all the same, then no tap ends it', async () => {
    const { card, say } = await talkAfter('@kari: lel 12% in booth');
    expect((await card('amend lel in booth 11%')).actions.map(({ id }) => id)).not.toContain('alarm-over');
    await say('@kari: emergency in booth');
    const { actions, lines } = await card('amend lel in booth 2%');
    expect(actions.map(({ id }) => id)).not.toContain('alarm-over');
    expect(lines.join(' ')).toContain('Its alarm is still on');
  });
});
