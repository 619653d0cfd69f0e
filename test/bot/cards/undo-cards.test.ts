// What a card says before an act is taken back, and its tap: which act, what rests on it, whose it is. Through the whole
// bot, on a clock of its own, over a real record. omar leads, kari is crew, rosa supervises. All invented.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { sessionTalk, sprayCrew, taps } from './session-talk.ts';

const spanishCrew: CrewFile = {
  ...sprayCrew,
  language: 'es',
  people: sprayCrew.people.map((person) => ({ ...person, language: 'es' })),
};
const coated = [
  'air 24C 48%',
  'mix 2.4kg',
  'weigh 1 1201g 1198g',
  'wait 102m',
  'filter 1',
  'coat new impeller-7 1 brush',
];

async function talkAfter(lines: readonly string[], crew: CrewFile = sprayCrew) {
  const talk = sessionTalk(':memory:', crew);
  for (const line of lines) await talk.say(line);
  return talk;
}

describe('an undo', () => {
  it('with nothing resting on it goes at once, and names the act with its batch', async () => {
    const { say } = await talkAfter(coated.slice(0, 3));
    const { card, recorded } = await say('undo');
    expect(recorded).toBe(true);
    expect(card.lines.join()).toContain('batch 1: weighed A 1201 g, B 1198 g');
  });

  it('on which a coat of one’s own rests shows both first; the second tap says what it will do, and does it', async () => {
    const { say } = await talkAfter([...coated, 'stop 1 at 09:00']);
    const asked = await say('undo');
    expect(asked).toMatchObject({ kind: 'misread', code: 'undo-asks', recorded: false });
    expect(asked.text).toContain('This would be taken back: batch 1: stirrer off (09:00).');
    expect(asked.text).toContain('impeller-7 coated (brush, batch 1) (09:42) by omar');
    expect(asked.card.actions.map(({ label }) => label)).toEqual(['Take back: batch 1: stirrer off']);
    const done = await say('tap undo');
    expect(done.card.title).toBe('Undone');
    expect(done.text).toContain('batch 1: stirrer off');
  });

  it('says all of it in Spanish too', async () => {
    const { say } = await talkAfter([...coated, 'stop 1 at 09:00'], spanishCrew);
    const asked = await say('deshacer');
    expect(asked.text).toContain('Se anularía: mezcla 1: agitador parado (9:00).');
    expect(asked.card.actions.map(({ label }) => label)).toEqual(['Anular: mezcla 1: agitador parado']);
    expect((await say('tap undo')).recorded).toBe(true);
  });

  it.each([
    [sprayCrew, 'undo', 'batch 1: pot empty, 1200 g left over (Mon 2 Mar 09:42)', 'amend 1 empty, then'],
    [spanishCrew, 'deshacer', 'mezcla 1: vaciada, sobran 1200 g', 'corregir 1 vaciar, y después'],
  ] as const)('of yesterday says which act that was, and how it is put right', async (crew, line, act, how) => {
    const { say } = await talkAfter([...coated, 'empty 1 1200g', 'wait 20h'], crew);
    const { card, recorded } = await say(line);
    expect(recorded).toBe(false);
    expect(card.lines.join()).toContain(act);
    expect(card.lines.join()).toContain(how);
  });

  it('by the tap of a batch’s card names that batch: pressed by another it is told whose it is', async () => {
    const { say } = await talkAfter(['air 24C 48%']);
    expect(taps(await say('@kari: mix 2.4kg')).undo).toBe('undo entry 2');
    await say('surface 21C');
    const { card, recorded } = await say('undo entry 2');
    expect(recorded).toBe(false);
    expect(card.lines[0]).toBe(
      'That is said by kari: batch 1 opened, 2400 g of Demo Clear (08:00). Only kari takes it back; else correct it with amend.',
    );
    expect((await say('@kari: undo entry 2')).recorded).toBe(true);
  });

  it('of what somebody else went on from says which entry that is', async () => {
    const { say } = await talkAfter(['air 24C 48%', '@kari: mix 2.4kg', '@kari: weigh 1 1201g 1198g', 'stop 1']);
    expect((await say('@kari: undo')).text).toContain(
      'Your last act is batch 1: weighed A 1201 g, B 1198 g (08:00). A later entry by omar rests on it: batch 1: stirrer off (08:00). Correct it with amend instead.',
    );
  });
});
