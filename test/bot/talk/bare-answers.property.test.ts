// Whatever a card asks: a bare answer leaves the same as the tap would with the same figures, and leaves nothing where it was asked
// of somebody else, too long ago, of two things at once, or for what a bare answer never says.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Card } from '../../../bot/cards/card.ts';
import { fieldsOf, fillLine } from '../../../bot/language/line-fields.ts';
import { verbRows, verbs } from '../../../core/commands.ts';
import { onlyCrew } from '../../../core/ids.ts';
import { stepRows } from '../../../core/steps/step-rows.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk } from '../cards/session-talk.ts';

const mixed = ['air 24C 48%', 'mix 2.4kg'];
const coated = [...mixed, 'weigh 1 1200g 1200g', 'part pump-1', 'coat pump-1 1 brush already'];
const situations: readonly (readonly string[])[] = [
  mixed,
  ['air 24C 48%', 'open A lot A42 2.5kg'],
  [...mixed, 'part pump-1', 'coat pump-1'],
  [...mixed, 'part pump-1', 'coat pump-1 brush'],
  ['part pump-1', 'temp pump-1'],
  ['part pump-1', 'surface pump-1'],
  ['air'],
  [...mixed, 'mix 1kg', 'stir'],
  [...mixed, 'prep pump-1 sa2.5'],
  [...mixed, 'mix 2.4'],
  [...mixed, 'weigh 1 a 1200g'],
  [...coated, 'dry pump-1 already', 'cure pump-1 oven 90C already'],
  [...coated, 'wet pump-1'],
  ['open A lot A1 5kg gas', 'open A lot A2 5kg gas', 'open B lot B1 5kg', ...mixed, 'weigh 4 1200g 1200g already'],
  [...mixed, 'wait 12m', 'undo'],
  ['set brief on', ...mixed, 'brief 1'],
];

interface Question {
  readonly bare: string;
  readonly full: string;
}

/** `pick`: which word of those that answer, `figures`: for its fields in their order. */
function questionsOn(card: Card, pick: number, figures: readonly number[]): readonly Question[] {
  const marked = card.actions.flatMap(({ bare = [], line }) => {
    const word = bare[pick % Math.max(1, bare.length)];
    return word === undefined ? [] : [{ bare: word, full: line }];
  });
  const asked = card.actions.filter(({ line }) =>
    fieldsOf(line).every(({ id }) => card.fields.some((one) => one.id === id)),
  );
  const lines = [...asked.map(({ line }) => line), ...(card.asksFor === undefined ? [] : [card.asksFor])];
  const filled = lines.flatMap((line) => {
    const fields = fieldsOf(line);
    if (fields.length === 0 || fields.some(({ holds }) => holds === 'words')) return [];
    const said = fields.map(({ id }, i) => [id, id === 'method' ? 'brush' : String(figures[i] ?? 20)] as const);
    return [{ bare: said.map(([, value]) => value).join(' '), full: fillLine(line, new Map(said)) }];
  });
  return [...marked, ...filled];
}

const vouching = verbs.filter(
  (verb) => verbRows[verb].options?.vouches === true || verbRows[verb].options?.decision === true,
);
const vouchesFor = Object.entries(stepRows).flatMap(([step, row]) => (row.vouches === true ? [step] : []));
const isNeverBare = (line: string): boolean =>
  vouching.some((verb) => line.startsWith(`${verb} `)) ||
  vouchesFor.some((step) => line.startsWith('confirm') && line.includes(` ${step} `)) ||
  / already$| permit /.test(line);

/** What these lines leave in the record, and the last card. */
async function leftBy(...lines: readonly string[]) {
  const store = openSqliteStore(':memory:');
  const talk = sessionTalk(store);
  try {
    let card: Card | undefined;
    for (const line of lines) ({ card } = await talk.say(line));
    const events = await store.eventsAfter(onlyCrew, 0);
    return { card, left: events.map(({ stream, by, body }) => ({ stream, by, body })) };
  } finally {
    talk.close();
  }
}

describe('a bare answer', () => {
  const drawn = fc.record({
    lines: fc.constantFrom(...situations),
    which: fc.nat(20),
    pick: fc.nat(3),
    figures: fc.array(fc.integer({ min: 18, max: 90 }), { minLength: 2, maxLength: 2 }),
  });

  it('leaves the same as the tap, and nothing where it may not be bare', async () => {
    const reached = { same: 0, nothing: 0 };
    await fc.assert(
      fc.asyncProperty(drawn, async ({ lines, which, pick, figures }) => {
        const { card, left } = await leftBy(...lines);
        const questions = card === undefined ? [] : questionsOn(card, pick, figures);
        fc.pre(questions.length > 0);
        const question = questions[which % questions.length];
        if (card === undefined || question === undefined) return;
        const isOpenTwice =
          new Set(questions.filter(({ bare }) => bare === question.bare).map(({ full }) => full)).size > 1;
        const bare = await leftBy(...lines, question.bare);
        if (isOpenTwice || isNeverBare(question.full)) {
          reached.nothing += 1;
          expect(bare.left).toEqual(left);
        } else {
          reached.same += 1;
          expect(bare.left).toEqual((await leftBy(...lines, question.full)).left);
        }
        expect((await leftBy(...lines, `@lia: ${question.bare}`)).left).toEqual(left);
        const late = await leftBy(...lines, 'wait 11m', question.bare);
        expect(late.left).toEqual((await leftBy(...lines, 'wait 11m')).left);
      }),
      { numRuns: 60 },
    );
    expect(Math.min(...Object.values(reached))).toBeGreaterThan(0);
  });
});
