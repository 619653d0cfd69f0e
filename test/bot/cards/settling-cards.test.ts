// What a person may not settle is not offered to them; said all the same, the answer says whose it is. And what is settled
// is shown with the names as the crew's list has them. The crew is invented: omar leads, rosa supervises.

import { describe, expect, it } from 'vitest';
import { englishSettings } from '../../../bot/language/tongues/english/settings.ts';
import { wire } from '../../../bot/run/wiring.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';
import { sessionTalk, taps } from './session-talk.ts';

const named: CrewFile = {
  ...demoCrew,
  people: [
    { name: 'Ane', role: 'crew', language: 'es', units: 'metric' },
    { name: 'Omar', role: 'lead', language: 'en', units: 'metric' },
  ],
};

function overview(crewFile: CrewFile) {
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const log = { info: () => undefined, error: (event: string) => expect.fail(event) };
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  return wire({ store: openSqliteStore(':memory:'), clock, log, crewFile, shelf: demoShelf, frontEnd }).overview;
}

describe('what is not theirs to settle', () => {
  it('is not on their settings: of the crew’s only their own units are left', async () => {
    const { settings, setUp } = overview(demoCrew);
    const lines = async (name: string) => (await settings(name)).actions.map(({ line }) => line);
    expect(await lines('kari')).toEqual(['set units us']);
    expect(await lines('omar')).toContain('set sheet demo-build');
    expect(await setUp('kari')).toMatchObject({ mayCrew: false, who: ['omar', 'rosa'] });
    expect((await setUp('omar')).mayCrew).toBe(true);
    expect((await setUp('kari')).personal.map(({ id }) => id)).toEqual(['language', 'units', 'rings']);
  });

  it('is there for everybody while nobody leads', async () => {
    const { settings, setUp } = overview({ ...demoCrew, people: [] });
    expect((await settings('ola')).actions.map(({ line }) => line)).toContain('set sheet demo-build');
    expect((await setUp('ola')).mayCrew).toBe(true);
  });

  it('is no tap under now: the shop’s numbers are the lead’s to say', async () => {
    const { say } = sessionTalk();
    expect(taps(await say('@kari: now'))).toEqual({});
    expect(taps(await say('now'))).toEqual({ numbers: 'set emergency call {numbers}' });
  });

  it('is told whose it is, and nothing is recorded', async () => {
    const { say } = sessionTalk();
    const { recorded, code, text } = await say('@kari: set brief off');
    expect([recorded, code]).toEqual([false, 'may-not-settle']);
    expect(text).toContain('That is for a supervisor to set: rosa.');
    expect((await say('@kari: set quiet 0-23')).text).toContain('That is for a lead to set: omar, rosa.');
  });

  it('is in the help of set and of the dates', async () => {
    const { say } = sessionTalk();
    expect((await say('help set')).text).toMatch(
      /A supervisor sets: Brief before spraying: off, Whose law holds, Day limit of a solvent\./,
    );
    expect((await say('help set')).text).toMatch(/Anybody sets: Coated in an hour, Units, Your language, Your bells\./);
    expect((await say('help fit')).text).toMatch(/A lead or a supervisor sets: fit test\./);
    expect((await say('help bell')).text).not.toMatch(/sets:/);
  });

  it('is told with what the line may say besides', async () => {
    const { say } = sessionTalk();
    expect((await say('help weigh')).text).toContain(
      'It may also say: batch number, can number, gas at hand, or used whole, what it was read with.',
    );
    expect((await say('help bell')).text).not.toContain('may also');
  });

  it('is in the help of what only a lead says', async () => {
    const { say } = sessionTalk();
    for (const verb of ['check', 'judge', 'backup']) {
      expect((await say(`help ${verb}`)).text).toContain('For a lead or a supervisor to say.');
    }
    expect((await say('help release')).text).not.toContain('to say.');
  });

  it('stands among all the settings, each as it is now, under whoever may change it', async () => {
    const { settings } = overview(demoCrew);
    const { lines } = await settings('kari');
    for (const { label } of Object.values(englishSettings.names)) expect(lines.join('\n')).toContain(`\n${label}: `);
    const underLead = lines.slice(lines.indexOf('A lead or a supervisor sets:'));
    expect(underLead).toEqual(
      expect.arrayContaining(['Air serves for: 4 h.', 'VOC limit: not set.', 'Quiet hours: off.']),
    );
    expect(lines.indexOf('Your language: English.')).toBeLessThan(lines.indexOf('A lead or a supervisor sets:'));
  });

  it('given leave where nobody supervises, then the answer names who may', async () => {
    const { say } = sessionTalk(':memory:', { ...demoCrew, people: demoCrew.people.slice(0, 2) });
    for (const line of ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'set brief on']) {
      await say(line);
    }
    const refused = await say('@kari: coat new lid-1 1 spray permit late');
    expect(refused.text).toContain('That may be lifted by a lead or supervisor: omar.');
    expect((await say('coat new lid-1 1 spray permit VA-1')).recorded).toBe(true);
  });
});

describe('names', () => {
  it.each([
    ['set sprayers ane', 'May spray: Ane'],
    ['set role ANE crew', 'Role: Ane (crew)'],
  ])('given "%s", then the card has them as the crew does', async (line, shown) => {
    const { say } = sessionTalk(':memory:', named);
    expect((await say(`@Omar: ${line}`)).card.lines).toContain(shown);
    expect((await say('@OMAR: fit ane 2026-05-01')).card.title).toContain('Ane');
  });

  it('given among those who may spray a name that nobody has, then who is known, and the near one for a tap', async () => {
    const { say } = sessionTalk(':memory:', named);
    const refused = await say('@Omar: set sprayers zed');
    expect([refused.recorded, refused.code]).toEqual([false, 'no-such-person']);
    expect(refused.text).toContain('There is no zed in the crew. People: Ane, Omar.');
    const near = await say('@Omar: set sprayers ame omar');
    expect(taps(near)).toEqual({ 'person-1': 'set sprayers "Ane" omar' });
    expect((await say('@Omar: tap person-1')).card.lines).toContain('May spray: Ane, Omar');
    const alone = sessionTalk(':memory:', { ...named, people: [] });
    expect((await alone.say('set sprayers zed')).recorded).toBe(true);
  });

  it('given a slip on a brief or a handover, then the near one is a tap', async () => {
    const { say } = sessionTalk(':memory:', named);
    expect(taps(await say('@Omar: handover ame'))).toEqual({ 'person-1': 'handover "Ane"' });
    expect(taps(await say('@Omar: brief spray ame outside omar'))).toMatchObject({
      'person-1': expect.stringContaining('"Ane"'),
    });
  });

  it('given somebody whom nobody knows, then as typed', async () => {
    const { say } = sessionTalk(':memory:', named);
    expect((await say('@ane: relevo a Pedro')).text).toContain('nadie se llama Pedro');
  });
});
