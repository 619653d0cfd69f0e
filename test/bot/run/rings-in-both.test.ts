import { describe, expect, test } from 'vitest';
import { makeCard } from '../../../bot/cards/card.ts';
import { ringsInBoth } from '../../../bot/run/rings-in-both.ts';
import { type Answer, makeAnswer } from '../../../bot/talk/answer.ts';
import { openConversation } from '../../../bot/web/conversation.ts';

const silent = { info: () => undefined, error: () => undefined };

function bell(key: string | null): Answer {
  return makeAnswer({
    ...{ at: '2026-03-02T09:42:00Z', kind: 'reminder', in: null, as: null, to: ['kari'], key, code: null },
    ...{ recorded: true, card: makeCard('Batch 1: stirring done', 'plain') },
  });
}

type Outcome = 'posted' | 'rejected' | 'unknown';

/** Slack that answers as told, in turn; and a page that keeps what it is told. */
function crewWithBoth(outcomes: readonly Outcome[], hasIt: 'yes' | 'no' | 'unknown' = 'no') {
  const told: Answer[] = [];
  const slack = {
    tell: async (answer: Answer) => {
      told.push(answer);
      return outcomes[told.length - 1] ?? 'posted';
    },
    wasTold: async () => hasIt,
  };
  const page = openConversation(undefined, silent);
  return { told, onPage: () => page.newest(9, 'kari'), both: ringsInBoth(slack, page) };
}

describe('a crew with Slack and the page', () => {
  test('given a bell, then it rings in both', async () => {
    const { told, onPage, both } = crewWithBoth(['posted']);
    expect(await both.tell(bell('batch/1/stir-done/1'))).toBe('posted');
    expect([told.length, onPage().length]).toEqual([1, 1]);
  });

  test('given a Slack that refuses it, then it is told again there, and stands on the page once, from the first', async () => {
    const { told, onPage, both } = crewWithBoth(['rejected', 'posted']);
    expect(await both.tell(bell('batch/1/stir-done/1'))).toBe('rejected');
    expect(onPage()).toHaveLength(1);
    expect(await both.tell(bell('batch/1/stir-done/1'))).toBe('posted');
    expect([told.length, onPage().length]).toEqual([2, 1]);
  });

  test('given two notices without a key, then both stand on the page', async () => {
    const { onPage, both } = crewWithBoth([]);
    await both.tell(bell(null));
    await both.tell(bell(null));
    expect(onPage()).toHaveLength(2);
  });

  test.each(['yes', 'no', 'unknown'] as const)(
    'given Slack says %s, then that is the answer, though the page has it: its copy wakes nobody',
    async (hasIt) => {
      const { both } = crewWithBoth(['unknown'], hasIt);
      expect(await both.wasTold('batch/1/stir-done/1')).toBe(hasIt);
      await both.tell(bell('batch/1/stir-done/1'));
      expect(await both.wasTold('batch/1/stir-done/1')).toBe(hasIt);
    },
  );
});
