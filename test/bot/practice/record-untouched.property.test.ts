// Whatever is said or tapped in practice, the record of the shop stays as it is to the last byte, nobody else is told anything, and
// every card says that it is practice. A cry alone is another matter.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isPractice, practiceTalk } from './practice-talk.ts';

const shop = ['air 22C 50%', 'mix 2.4kg', 'weigh 1 1201g 1198g already', '@kari: part real-1', '@kari: practice on'];

const lines = fc.constantFrom(
  ...[
    'air 24C 48%',
    'mix 2kg',
    'weigh 1 1200g 1200g already',
    'part rail-1',
    'prep rail-1 sa2.5',
    'open A lot 7 5kg gas',
  ],
  ...['coat rail-1 1 brush already', 'dry rail-1', 'cure rail-1 oven 90C already', 'temp rail-1 91C', 'release rail-1'],
  ...['stop 1', 'filter 1', 'empty 1 200g', 'gel 1', 'discard 2 lumps', 'coat real-1 1 brush already', 'undo', 'no, 3'],
  ...[
    'first shift',
    'first shift off',
    'shift on',
    'handover omar',
    'near-miss slipped',
    'set digest 5',
    'set language es',
  ],
  ...[
    'brief 1 in booth spray kari',
    'fan on 0.6m/s',
    'flush gun acetone 300ml',
    'bell',
    'snooze 5m',
    'ok',
    'drill fire',
  ],
  ...['day', 'now', 'help', 'why', 'what now', 'trace real-1', 'traveller real-1', 'backup x', 'verify', 'hello', ''],
  ...['wait', 'wait 20m', 'wait until 7:00', '3 h later', 'practice on', 'espera'],
);
const taps = fc.nat(6).map((place) => ({ place }));

describe('given whatever somebody who practises says and taps', () => {
  it('then the record stays as it is', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.oneof(lines, taps), { minLength: 1, maxLength: 12 }), async (said) => {
        const talk = await practiceTalk(...shop);
        const before = talk.record();
        const heardBefore = talk.heard.length;
        for (const each of said) {
          const tapped = typeof each === 'string' ? undefined : talk.terminal.speakers.tapsOf('kari')[each.place];
          const line = typeof each === 'string' ? each : tapped && `tap ${tapped.id} 20 50`;
          if (line !== undefined) await talk.say(`@kari: ${line}`);
          // Left by its own tap: from then on all of it counts.
          if (tapped?.id === 'practice-off') break;
        }
        expect(talk.record()).toBe(before);
        const told = talk.heard.slice(heardBefore);
        expect(
          told.filter(({ recorded, to, key }) => recorded || key !== null || to.some((name) => name !== 'kari')),
        ).toEqual([]);
        const unmarked = told.filter((answer) => !isPractice(answer)).map(({ card }) => card.title);
        expect(unmarked.filter((title) => !/^(Practice over|Not (clear|understood))/.test(title))).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});
