// Oven or room goes by what the part bears: asked before the oven, once a part, where the crew notes it of its parts. That
// it is asked: common practice, no source; all figures are invented.

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 103m', 'filter 1'];
const asked = 'Does the part bear 90 °C? Nobody has said. If not, it cures in the room where the sheet allows it.';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of [...filtered, ...lines]) await say(line);
  return async (line: string) => (await say(line)).card;
}
const noted = ['part valve-3 brass 6mm max 120C', 'coat new lid-6 1 brush', 'wait 12m'];

describe('what a part bears', () => {
  it('given the crew notes it of its parts, then it is asked of one that is dry, with a tap that says so', async () => {
    const say = await talkAfter(...noted);
    const { lines, actions } = await say('dry lid-6');
    expect(lines).toContain(asked);
    expect(actions.at(-1)).toMatchObject({ id: 'bears', label: 'Bears 90 °C', line: 'part lid-6 max 90C' });
    await say('tap bears');
    expect((await say('cure lid-6 oven 90C')).lines).not.toContain(asked);
    expect((await say('trace lid-6')).lines.join(' ')).toContain('part noted');
  });

  it('given it was never answered, then the oven is objected to, and one tap answers for all that go in', async () => {
    const say = await talkAfter(...noted, 'dry lid-6', 'coat new lid-7 1 brush', 'wait 12m', 'dry lid-7');
    const { tone, lines, actions } = await say('cure lid-6 lid-7 oven 90C');
    expect(tone).toBe('stop');
    expect(lines).toContain(asked);
    const line = 'part lid-6, lid-7 max 90C';
    expect(actions.at(-1)).toMatchObject({ id: 'bears', label: 'Bears 90 °C (2)', line });
    await say('tap bears');
    expect((await say('cure lid-6 lid-7 oven 90C')).lines).not.toContain(asked);
  });

  it('given somebody knows it, then bears says so, of which the oven then takes account', async () => {
    const say = await talkAfter(...noted, 'dry lid-6');
    expect((await say('bears lid-6 60C')).facts).toContainEqual(
      expect.objectContaining({ id: 'part-bears', value: 60 }),
    );
    expect((await say('part lid-6 bears 120C')).lines.join(' ')).not.toContain('Not read');
    expect((await say('cure lid-6 oven 90C')).tone).toBe('plain');
  });

  it('given the part of which it was noted is long released, then the crew still notes it', async () => {
    const oven = ['dry valve-3', 'cure valve-3 oven 90C', 'temp 90C', 'wait 60m', 'temp 90C', 'out valve-3'];
    const gone = ['part valve-3 max 120C', 'coat valve-3 1 brush', 'wait 12m', ...oven, 'release valve-3'];
    const say = await talkAfter(...gone, 'coat new lid-6 1 brush', 'wait 12m');
    expect((await say('dry lid-6')).lines).toContain(asked);
  });

  it('given it went in all the same, then it is asked once it is in the oven, at the temperature that was set', async () => {
    const say = await talkAfter(...noted, 'dry lid-6');
    const { lines, actions } = await say('cure lid-6 oven 100C already');
    expect(lines.join(' ')).toContain('Does the part bear 100 °C?');
    expect(actions.map(({ line }) => line)).toContain('part lid-6 max 100C');
    expect((await say('temp lid-6 40C')).lines.join(' ')).not.toContain('Does the part bear');
  });

  it('given it bears less, then the oven is objected to', async () => {
    const say = await talkAfter(...noted, 'dry lid-6', 'part lid-6 max 60C');
    expect((await say('cure lid-6 oven 90C')).lines.join(' ')).toContain('60 °C');
    expect((await say('cure lid-6 room')).lines).not.toContain(asked);
  });

  it('given a crew that notes it of no part, or one that was told, then nothing is asked', async () => {
    const none = await talkAfter('coat new lid-6 1 brush', 'wait 12m');
    expect((await none('dry lid-6')).lines).not.toContain(asked);
    const told = await talkAfter('part valve-3 max 120C', 'coat valve-3 1 brush', 'wait 12m');
    expect((await told('dry valve-3')).lines).not.toContain(asked);
  });
});
