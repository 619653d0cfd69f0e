// A line that may be a cry rings everybody by itself, unless somebody says no; an alarm is on until a lead or supervisor ends
// it, and nothing new begins where it is; a drill is plainly one. Twenty seconds are our own choice, no source.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk, sprayCrew, taps } from '../cards/session-talk.ts';

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

function talkOf(record?: string, crew = sprayCrew) {
  const talk = sessionTalk(record, crew);
  closing.push(talk.close);
  return talk;
}

const everybody = sprayCrew.people.map(({ name }) => name).sort();
const cries = (heard: readonly Answer[]) => heard.filter(({ key }) => key?.startsWith('crew/cry/') === true);

describe('a line that may be a cry', () => {
  it('given nobody says no, then after 20 s everybody is called, with what to do first', async () => {
    const { say, heard } = talkOf();
    const asked = await say('@kari: lia is hurt in the hall');
    // What to do now stands first, whatever comes of it.
    expect([asked.recorded, asked.to, asked.card.lines[1]]).toEqual([
      true,
      ['kari'],
      'Everybody is called in 20 s, unless somebody says no.',
    ]);
    expect(asked.card.lines[0]).toContain('Call the number now');
    expect(asked.card.actions.map(({ label }) => label)).toEqual(['Ring everybody', 'No alarm']);
    await say('wait 1m');
    const [rung] = cries(heard);
    expect([rung?.at, [...(rung?.to ?? [])].sort()]).toEqual([asked.at.replace('08:00:00', '08:00:20'), everybody]);
    expect(rung?.card.title).toBe('Somebody may need help');
    expect(rung?.card.lines.join(' ')).toContain('Call the number now');
    expect(rung?.text).toContain('lia is hurt in the hall');
    expect(rung?.card.alarm).toBe(true);
  });

  it.each(['no', 'No!', 'no alarm', 'tap no-alarm'])('given "%s" in time, then nobody is called', async (line) => {
    const { say, heard } = talkOf();
    await say('@kari: lia is hurt');
    const said = await say(line.startsWith('tap') ? `@kari: ${line}` : `@omar: ${line}`);
    expect([said.recorded, said.card.title]).toEqual([true, 'No alarm: nobody is called']);
    await say('wait 1h');
    expect(cries(heard)).toEqual([]);
  });

  it('given the tap that rings everybody, then it rings at once, and not again by itself', async () => {
    const { say, heard } = talkOf();
    await say('@kari: lia is hurt');
    const called = await say('@kari: tap ring-everybody');
    expect([called.card.title, [...called.to].sort()]).toEqual(['Somebody needs help', everybody]);
    expect(called.text).toContain('lia is hurt');
    await say('wait 1h');
    expect(cries(heard)).toEqual([]);
  });

  it('given the program stops meanwhile, then it rings when it is back', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'cry-'));
    closing.push(() => rmSync(folder, { recursive: true }));
    const file = join(folder, 'batchbell.sqlite');
    const before = sessionTalk(file);
    await before.say('@kari: lia is hurt');
    before.close();
    const { say, heard } = talkOf(file);
    await say('wait 1m');
    expect(cries(heard)).toHaveLength(1);
  });

  it('given no countdown, then "no" is asked what it is about and offers no alarm to call off; "no alarm" says that none runs', async () => {
    const { say } = talkOf();
    await say('air 24C 48%');
    const no = await say('No, no!');
    expect([no.recorded, no.code, taps(no)]).toEqual([false, 'no-alone', { 'meant-1': 'undo' }]);
    const said = await say('no alarm');
    expect([said.recorded, said.code]).toEqual([false, 'no-countdown']);
  });

  it('given it has rung, then a no comes too late, and who may end it is said', async () => {
    const { say } = talkOf();
    await say('@kari: lia is hurt');
    await say('wait 1m');
    const late = await say('@kari: no alarm');
    expect([late.recorded, late.card.lines[0]]).toEqual([false, expect.stringContaining('alarm over')]);
  });
});

describe('an alarm that is on', () => {
  it('given the crew says all clear, then nothing ends; given a lead does, then everybody is told', async () => {
    const { say } = talkOf();
    await say('@kari: fire in the booth');
    expect((await say('@kari: all clear')).code).toBe('may-not-settle');
    const over = await say('@omar: all clear');
    expect([over.recorded, over.card.title, [...over.card.ping].sort()]).toEqual([
      true,
      'The alarm is over',
      everybody.filter((name) => name !== 'omar'),
    ]);
    expect(over.card.lines[0]).toBe('Over: fire.');
    expect((await say('@omar: all clear')).code).toBe('no-alarm-on');
  });

  it('given whoever cried is the only one listed, then they end it', async () => {
    const { say } = talkOf(':memory:', { ...demoCrew, people: demoCrew.people.filter(({ name }) => name === 'omar') });
    await say('fire');
    expect((await say('all clear')).recorded).toBe(true);
  });

  it('given it names the booth, then nothing new begins there until all is clear, and elsewhere it does', async () => {
    const { say } = talkOf();
    await say('air 24C 48%');
    await say('brief in booth spray kari');
    await say('@kari: fire in the booth');
    const held = await say('brief in booth spray lia');
    expect([held.kind, held.code, held.card.lines.join(' ')]).toEqual([
      'objection',
      'alarm-on',
      expect.stringContaining('cried by kari at 08:00'),
    ]);
    expect((await say('mix 2.4kg')).recorded).toBe(true);
    await say('all clear');
    expect((await say('brief in booth spray lia')).recorded).toBe(true);
  });

  it.each([
    ['en', 'Fire, cried by kari at 08:00, and nobody has ended it. Nothing new begins anywhere until a lead'],
    ['es', 'Fuego: alarma de kari, 8:00, y nadie ha dado el fin de alarma. En ningún sitio empieza nada nuevo hasta'],
  ] as const)('given no place is said, in %s, then nothing begins or goes on anywhere', async (language, told) => {
    const { say } = talkOf(':memory:', {
      ...sprayCrew,
      people: sprayCrew.people.map((person) => ({ ...person, language })),
    });
    await say('air 24C 48%');
    await say('mix 2.4kg');
    await say('@kari: fire');
    const held = await say('weigh 1 1200g 1200g');
    expect([held.code, held.card.lines.join(' ')]).toEqual(['alarm-on', expect.stringContaining(told)]);
  });

  it('given work had begun there all the same, then it is recorded', async () => {
    const { say } = talkOf();
    await say('air 24C 48%');
    await say('brief in booth spray kari');
    await say('@kari: fire in the booth');
    expect((await say('brief in booth spray lia already')).recorded).toBe(true);
  });
});

describe('a drill', () => {
  it('given a lead starts one, then everybody is told that nothing has happened, and no work stops', async () => {
    const { say } = talkOf();
    expect((await say('@kari: start drill fire')).code).toBe('may-not-settle');
    const drill = await say('start drill fire');
    expect([drill.card.title, drill.card.tone]).toEqual(['Drill: Fire', 'warn']);
    expect(drill.card.lines[0]).toContain('nothing has happened');
    expect(drill.card.ping).toEqual(sprayCrew.people.map(({ name }) => name).filter((name) => name !== 'omar'));
    await say('air 24C 48%');
    expect((await say('mix 2.4kg')).recorded).toBe(true);
    expect((await say('all clear')).card.lines[0]).toBe('Over: drill (fire).');
  });
});

describe('where to call while the shop has set nothing', () => {
  // 112: Directive (EU) 2018/1972, article 109. 911 in the Americas: from memory.
  it.each([
    ['Europe/Madrid', '112'],
    ['America/Chicago', '911'],
    ['America/Monterrey', '911'],
  ])('given a crew in %s, then %s stands second', async (zone, number) => {
    const { say } = talkOf(':memory:', { ...sprayCrew, zone });
    const { lines } = (await say('eyes')).card;
    expect(lines[1]).toContain(`Call: ${number} (`);
  });
});

it('given "help" alone, then it is the help, with the alarm first', async () => {
  const { say } = talkOf();
  const help = await say('@kari: help');
  expect([help.recorded, Object.keys(taps(help))[0], help.card.actions[0]?.label]).toEqual([
    false,
    'ring-everybody',
    'Ring everybody',
  ]);
});
