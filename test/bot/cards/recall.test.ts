// What the cards say of a lot that is called back: who has some of it on, what is gone, what is in use, and who is called.

import { expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const people = [
  ...sprayCrew.people,
  { name: 'bea', role: 'supervisor' as const, language: 'en', units: 'metric' as const },
];
const coated = [
  ...[
    'open B lot 8820 5kg',
    'received 2 x 5kg B lot 8820',
    'air 24C 48%',
    'mix 2.4kg',
    'weigh 2 1200g 1200g can 1',
    'wait 102m',
  ],
  ...[
    'filter 2',
    'coat new a1 a2 2 brush',
    'wait 12m',
    'dry a1 a2',
    'cure a1 a2 oven 90C',
    'temp a1 90C',
    'temp a2 90C',
  ],
  ...['wait 60m', 'temp a1 90C', 'temp a2 90C', 'out a1 a2', '@omar: release a1', 'shipped a1'],
];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  for (const line of lines) await talk.say(line);
  return talk;
}

it('given parts here and gone have some of it on, then the card names both, and calls lead and supervisor', async () => {
  const { say } = await said(...coated);
  const { card } = await say('@omar: recall lot 8820 gels in the can');
  const text = card.lines.join('\n');
  expect(text).toMatch(/Left the shop before this was known: a1\. Tell the customer/);
  expect(text).toContain('On hold, with some of it on: a1, a2.');
  expect(text).toContain('In use with it, and not put on any more: batch 2.');
  expect(text).toContain('Set aside, and mark: can 1.');
  expect(text).toContain('Sealed cans of it by the record: 2.');
  expect(card.ping).toEqual(expect.arrayContaining(['omar', 'bea']));
});

it('given it is on, then stock, day, trace and what comes next say so', async () => {
  const { say } = await said(...coated, '@omar: recall lot 8820 gels in the can');
  expect((await say('stock')).card.lines.filter((line) => line.includes('RECALLED'))).toHaveLength(2);
  expect((await say('day')).card.lines.join('\n')).toMatch(/Lot 8820 recalled, .*gels in the can/);
  expect((await say('trace lot 8820')).card.lines.join('\n')).toContain('lot 8820 recalled, gels in the can');
  expect((await say('@omar: what now')).card.lines.join('\n')).not.toContain('coat what else waits');
});

it('given the stirring of a pot ends after its lot was called back, then its bell invites nobody to use it', async () => {
  const { heard } = await said(
    ...['open B lot 8820 5kg', 'air 24C 48%', 'mix 2.4kg', 'weigh 2 1200g 1200g can 1', '@omar: recall lot 8820 gels'],
    'wait 103m',
  );
  const rung = heard.map(({ card }) => card).find(({ title }) => title.startsWith('Batch 2: ') && /stir/i.test(title));
  expect(rung?.lines.join('\n')).toContain('Its lot 8820 was recalled: none of it is applied');
});
