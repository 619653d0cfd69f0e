// In need: one word brings the shop's own numbers and steps, the sheet's section and what not to do; lead and supervisor
// are told. Near misses without a name; a bell that each person answers; quiet hours that mute nothing critical.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { readCrew, readFlags } from '../../../bot/config/config.ts';
import { isFailed } from '../../../core/failed.ts';
import { given } from '../../core/given.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

describe('trouble in one word', () => {
  it.each([
    ['eyes', 'Something in the eyes', 'section 4'],
    ['SPILL!!', 'Spill', 'section 6'],
    ['fire in the booth at the back', 'Fire', 'section 5'],
    ['man down', 'Somebody is down', 'section 4'],
    ['hot pot', 'A pot is heating', 'section'],
  ])('given "%s" from the crew, then one card, and lead and supervisor are told', async (line, title, section) => {
    const { say } = sessionTalk();
    const { card, text, to, kind } = await say(`@kari: ${line}`);
    expect([kind, card.title, card.tone]).toEqual(['reply', title, 'stop']);
    expect(text).toContain(section);
    expect(text).toContain('Call: 112 (from any mobile phone; the shop’s own numbers are not set)');
    // Whoever cried, and everybody else.
    expect([...to].sort()).toEqual(sprayCrew.people.map(({ name }) => name).sort());
    expect(card.hazards.filter(({ text: each }) => each.startsWith('Do not')).length).toBeGreaterThan(0);
    expect(card.hazards.every(({ source }) => source === 'common practice, no source')).toBe(true);
  });

  it('given the shop’s own numbers and steps, then they stand next after what to do now, and who is told after them', async () => {
    const { say } = sessionTalk();
    await say('set emergency call 112, gate 2');
    await say('set emergency eyes eyewash by the north door, fifteen minutes');
    const { card } = await say('@kari: eyes');
    expect(card.lines[0]).toContain('Rinse now with plenty of water, lids held open, for 15 minutes at least');
    expect(card.lines.slice(1, 4)).toEqual([
      'Call: 112, gate 2',
      'Here: eyewash by the north door, fifteen minutes',
      expect.stringMatching(/^To tell: .*omar.*rosa/),
    ]);
  });

  it.each([
    ['eyes', 'Rinse now with plenty of water', '15 minutes: ANSI/ISEA Z358.1'],
    ['fire', 'Out, everybody, now', 'common practice, no source'],
    ['down', 'Do not go in without breathing air of your own', 'common practice, no source'],
    ['spill', 'Everybody who is not needed goes out', 'common practice, no source'],
    ['hot pot', 'Away from people', 'common practice, no source'],
  ])(
    'given "%s" where nothing is set, then what to do now stands first, and what to set stands last',
    async (line, now, source) => {
      const { say } = sessionTalk();
      const { lines } = (await say(`@kari: ${line}`)).card;
      expect(lines[0]).toContain(now);
      expect(lines[0]).toContain(source);
      expect(lines[1]).toContain('Call: 112');
      expect(lines.findIndex((each) => each.startsWith('To tell:'))).toBe(2);
      expect(lines.at(-1)).toContain('not set');
    },
  );

  it('given somebody who is told in Spanish, then the same stands first in theirs', async () => {
    const people = sprayCrew.people.map((person) => (person.name === 'kari' ? { ...person, language: 'es' } : person));
    const { say } = sessionTalk(':memory:', { ...sprayCrew, people });
    const { lines } = (await say('@kari: ojos')).card;
    expect(lines[0]).toContain('Lave ya con mucha agua, con los párpados abiertos, 15 minutos como mínimo');
    expect(lines.at(-1)).toContain('fijar emergencia');
  });

  it('given them in the crew’s file, then they hold until somebody says otherwise', async () => {
    const flags = readFlags([]);
    if (isFailed(flags)) throw new Error(flags.failed);
    const content = JSON.stringify({ name: 'x', people: [{ name: 'omar', role: 'lead' }], emergency: { call: '112' } });
    const crew = readCrew('crew.json', content, flags);
    if (isFailed(crew)) throw new Error(crew.failed);
    const { say } = sessionTalk(':memory:', crew);
    expect((await say('fire')).card.lines[1]).toBe('Call: 112');
    await say('set emergency call 112, gate 2');
    expect((await say('fire')).card.lines[1]).toBe('Call: 112, gate 2');
  });

  it('given that it is told late, then the record has its true time', async () => {
    for (const line of ['spill at 9:50', 'at 9:50 spill']) {
      const shift = await given([`10:00 @kari: ${line}`]);
      const [event] = await shift.events();
      expect(event?.body).toEqual({ type: 'AlarmRaised', what: 'spill' });
      expect(event?.happenedAt).toBe(shift.time('09:50'));
    }
  });
});

describe('whom an alarm calls', () => {
  it('given a terminal, which reaches nobody, then its card says whom to tell, never that they were told', async () => {
    const { say } = sessionTalk();
    for (const line of ['fire', 'down', 'eyes', 'spill', 'hot pot 1', 'near miss hose lay about']) {
      const { card, text } = await say(`@kari: ${line}`);
      expect(text, line).toMatch(/\n {2}To tell: .*rosa/);
      expect(text, line).not.toMatch(/\btold\b/i);
      expect(card.ping, line).not.toContain('kari');
    }
  });
});

describe('a near miss', () => {
  it('given a name, then it stays with it, and the supervisor is told', async () => {
    const { say } = sessionTalk();
    const { to, text } = await say('@kari: near miss hose lay across the walkway');
    expect(to).toEqual(['kari', 'rosa']);
    expect(text).toContain('"hose lay across the walkway"');
  });

  it('given that no name is wanted, then none stands in any row, also where it is delivered twice', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'batchbell-near-miss-'));
    try {
      const file = join(folder, 'record.sqlite');
      const { say, close } = sessionTalk(file);
      const delivery = JSON.stringify({ id: 'by-kari-1', as: 'kari', text: 'near miss anonymous fan was off' });
      const first = await say(delivery);
      const second = await say(delivery);
      expect(second.text).toBe(first.text);
      expect(first.to).toEqual(['rosa']);
      expect(first.text).toContain('No name is kept with it.');
      close();
      const rows = new Database(file, { readonly: true });
      const events = rows.prepare('select * from event').all();
      const answers = rows.prepare('select * from answer').all();
      rows.close();
      expect(events).toHaveLength(1);
      expect(answers).toHaveLength(1);
      expect(JSON.stringify([events, answers])).toContain('fan was off');
      const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
      expect(bytes.join('')).not.toMatch(/kari/);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

describe('is the bell alive?', () => {
  it('given a test, then each person’s own answer counts; who gives none is named to lead, then supervisor', async () => {
    const shift = await given(['08:00 @omar: bell', '08:01 @kari: ok', '08:02 @omar: ok'], { crew: sprayCrew });
    await shift.until('08:21');
    const rung = shift.rung().filter(({ key }) => key.startsWith('crew/bell/'));
    expect(rung.slice(0, 4).map(({ to }) => to)).toEqual([['kari'], ['lia'], ['omar'], ['rosa']]);
    // rosa and lia gave none: ten minutes on to the lead, and ten more to the supervisor.
    expect(rung.slice(4).map(({ at, key, to }) => [at, key.replace(/\/\d+\//, '/n/'), to[0]])).toEqual([
      ['08:10', 'crew/bell/n/lia/2', 'omar'],
      ['08:10', 'crew/bell/n/rosa/2', 'omar'],
      ['08:20', 'crew/bell/n/lia/3', 'rosa'],
      ['08:20', 'crew/bell/n/rosa/3', 'rosa'],
    ]);
  });

  it('given a crew that wants it at each shift, then it rings for whoever begins one; else not', async () => {
    const wanted = await given(['07:00 @omar: set bell on', '08:00 @kari: shift on']);
    expect(wanted.rung().map(({ key, to }) => [key, to])).toEqual([['crew/bell/2/kari', ['kari']]]);
    const plain = await given(['08:00 @kari: shift on']);
    expect(plain.rung()).toEqual([]);
  });
});

describe('quiet hours', () => {
  const night = ['19:00 air 24C 48%', '20:00 mix 2.4kg', '20:00 weigh 1 1200g 1200g'];

  it('given the night muted, then what can wait rings at its end, and what is critical at its own time', async () => {
    const muted = await given(['18:00 @omar: set quiet 22-6', ...night]);
    const plain = await given(['18:00 air 24C 48%', ...night]);
    const [quiet, loud] = [await muted.plan(), await plain.plan()];
    // Four hours after the reading (FHWA-RD-98-084, MIL-HDBK-1110).
    expect(loud).toMatchObject({ 'place/room/air-due': '23:00' });
    expect(quiet).toMatchObject({ 'place/room/air-due': 'Tue 06:00' });
    expect(quiet['batch/1/pot-end']).toBe(loud['batch/1/pot-end']);
    expect(quiet['batch/1/stir-done']).toBe(loud['batch/1/stir-done']);
  });

  it('given a gun that is not flushed, then it rings through the night', async () => {
    const lines = [
      '18:00 @omar: set quiet 19-6',
      '18:30 brief spray kari',
      '18:31 ack',
      '22:00 spray on already',
      '22:10 spray off',
    ];
    const shift = await given(lines);
    expect(await shift.plan()).toMatchObject({ 'session/1/flush/2': '22:15' });
  });
});
