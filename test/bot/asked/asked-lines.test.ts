// The lines that questions come to, as taps say them: each is answered from the record, and none of them records.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { epochMs } from '../../../core/units.ts';
import { sessionTalk, sprayCrew, talkAfter } from '../cards/session-talk.ts';

const pot = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g'];

describe('what stands against an act', () => {
  it('given a pot that is stirred, then a coat says what stands against it and until when, and no tap coats', async () => {
    const { say } = await talkAfter(...pot);
    const { card, recorded } = await say('can-i coat impeller-7');
    expect(recorded).toBe(false);
    expect(card.title).toBe('coat impeller-7: not as things stand');
    expect(card.lines.join('\n')).toMatch(/stirring.*By its clock until \d\d:\d\d/i);
    expect(card.actions.filter(({ line }) => line.startsWith('coat'))).toEqual([]);
  });

  it('given a part without a coat, then its cure is asked for by its number too', async () => {
    const { card } = await talkAfter('part impeller-7');
    expect((await card('can-i cure 7 oven')).lines.join('\n')).toMatch(/No coat is recorded/);
  });

  it('given nothing stands against it, then it says so and on what it rests, and neither yes nor safe', async () => {
    const { say } = await talkAfter('air 24C 48%');
    const { card, text } = await say('can-i mix');
    expect(card.title).toBe('mix: nothing here stands against it');
    expect(card.facts.map(({ id }) => id)).toEqual(['air-temperature', 'air-read-at', 'humidity']);
    expect(text).not.toMatch(/\b(yes|safe)\b/i);
  });
});

describe('how much is to be mixed', () => {
  it('given it is asked in words, then each way is a tap that asks the whole plan', async () => {
    const { say } = await talkAfter('air 24C 48%');
    const { card } = await say('how much should I mix for three parts of 0.4 m2');
    expect(card.actions.map(({ line }) => line)).toContain('plan 3x0.4m2 brush');
    expect((await say('plan 3x0.4m2 brush')).text).toMatch(/brush/i);
  });
});

describe('what is told by where it is', () => {
  it('given nothing is wet, then the wet one is no wet film that nobody has read', async () => {
    const { say } = await talkAfter('part impeller-7');
    expect((await say('when does the wet one get dry')).text).not.toMatch(/^Wet/);
  });

  it('given a pot that is stirred, then whether it is too damp to start is asked of its coats', async () => {
    const { say } = await talkAfter(...pot);
    expect((await say('is it too damp in here to start')).card.title).toMatch(/^coat/);
  });
});

describe('while an alarm is on', () => {
  it('given a question, then the alarm stands before its answer', async () => {
    const { say } = await talkAfter(...pot, 'fire');
    const { card, recorded } = await say('how long left on pot 1?');
    expect([recorded, card.title]).toEqual([false, expect.stringContaining('Batch 1')]);
    expect(card.lines[0]).toMatch(/fire/i);
  });
});

describe('who did it', () => {
  it('given nobody has said so, then it says of which part', async () => {
    const { card } = await talkAfter('part impeller-7');
    expect((await card('who sprayed impeller-7')).title).toBe('impeller-7: Coat: nobody has said so');
  });
});

describe('a part that has gone out', () => {
  const shift = [
    ...pot,
    ...['wait 105m', 'air 24C 48%', 'stirred 1', 'filter 1 1um'],
    ...['part impeller-7', 'surface impeller-7 22C', 'coat impeller-7 1 brush', 'wait 15m', 'dry impeller-7'],
    ...['cure impeller-7 oven 90C', 'wait 20m', 'temp impeller-7 91C', 'wait 65m', 'temp impeller-7 91C'],
    ...['out impeller-7', 'film impeller-7 17um 18um 18um', 'release impeller-7', 'empty 1'],
  ];

  it('given the program was started again months later, then it is asked for by its name and its number', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'gone-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const record = join(folder, 'record.sqlite');
    const released = sessionTalk(record);
    for (const line of shift) await released.say(line);
    expect((await released.say('where is 7')).card.title).toBe('impeller-7: released');
    released.close();
    const later = sessionTalk(record, sprayCrew, shipped, epochMs(Date.UTC(2026, 5, 2, 8)));
    onTestFinished(later.close);
    await later.say('part impeller-8');
    for (const asked of ['what went on impeller 7', 'what went on 7', 'who coated Impeller 07', '¿qué lleva la 7?'])
      expect((await later.say(asked)).card.title, asked).toMatch(/impeller-7/);
    expect((await later.say('where is 9')).card.title).toBe('Nothing here is called 9');
  });
});

describe('what nobody has named', () => {
  it('given a slip of a name, then the same question of the near one is a tap', async () => {
    const { say } = await talkAfter('part impeller-7');
    const { card } = await say('how-long impeler-7 dry');
    expect([card.title, card.actions.map(({ line }) => line)]).toEqual([
      'Nothing here is called impeler-7',
      ['how-long impeller-7 dry'],
    ]);
  });

  it('given a bare number that ends two names, then it asks which', async () => {
    const { say } = await talkAfter('part impeller-7', 'part valve-7');
    const { card } = await say('where-is 7');
    expect(card.actions.map(({ line }) => line)).toEqual(['where-is impeller-7', 'where-is valve-7']);
  });
});

describe('what is to be done', () => {
  it('given nothing runs yet, then whoever asks is told what comes first', async () => {
    const { say } = await talkAfter();
    const asked = await say('to-do');
    expect(asked.recorded).toBe(false);
    expect(asked.card.title).toBe((await say('next-step')).card.title);
  });
});
