// What the cards say of what was put right: where a coat lies now, what its undo brings back, and whose correction it would be.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const coated = [
  'air 24C 48%',
  'mix 2.4kg',
  'weigh 1 1200g 1200g',
  'wait 102m',
  'filter 1',
  'part fin-2',
  'coat new fin-1 1 brush',
];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', sprayCrew);
  for (const line of lines) await talk.say(line);
  return talk;
}

describe('a coat that was told of the wrong part', () => {
  it('given it is put right, then the card shows both, and the flash-off of the right one', async () => {
    const { say } = await said(...coated);
    const { card } = await say('amend fin-1 coat part fin-2 "wrong tag"');
    expect(card.lines.join('\n')).toContain('Was: fin-1 coated (brush, batch 1)');
    expect(card.lines.join('\n')).toContain(
      'Is: fin-2 coated (brush, batch 1); first told of fin-1, batch 1 (wrong tag)',
    );
    expect(card.actions.find(({ id }) => id === 'dry')?.line).toBe('dry fin-2');
    expect((await say('trace fin-2')).card.lines.join('\n')).toContain('first told of fin-1');
  });

  it('given that is undone, then the card says what stands', async () => {
    const { say } = await said(...coated, 'amend fin-1 coat part fin-2 "wrong tag"');
    expect((await say('undo')).card.lines.join('\n')).toContain('fin-1 coated (brush, batch 1)');
  });
});

it('given a crew corrects what another told, then the card names the act, who told it, and who else may', async () => {
  const { say } = await said(...coated, '@omar: hold fin-2 customer looks');
  const { card, recorded } = await say('@kari: amend fin-2 hold customer has looked');
  expect(recorded).toBe(false);
  expect(card.lines[0]).toMatch(/^omar said that: fin-2: on hold, customer looks .*put right by omar, or by a lead/);
});
