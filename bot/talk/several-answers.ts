// The answers to the acts of one line, as one: `bracket-8 is dry, in the oven at 90`. What was not recorded comes last, and what
// would have come behind it is a tap each.

import type { Card, CardAction, Tone } from '../cards/card.ts';
import { type Answer, makeAnswer } from './answer.ts';

const tones: readonly Tone[] = ['plain', 'good', 'warn', 'stop'];

/** `waiting`: what is still to be said. */
export function oneAnswer(answers: readonly Answer[], waiting: readonly CardAction[]): Answer | undefined {
  const last = answers.at(-1);
  if (last === undefined) return undefined;
  const card = oneCard(
    answers.map((answer) => answer.card),
    waiting,
  );
  const forAll = answers.some((answer) => answer.forAll !== undefined)
    ? {
        forAll: oneCard(
          answers.map((answer) => answer.forAll ?? answer.card),
          waiting,
        ),
      }
    : {};
  const all = <Each>(of: (answer: Answer) => readonly Each[] | undefined): readonly Each[] => [
    ...new Set(answers.flatMap((answer) => of(answer) ?? [])),
  ];
  return makeAnswer({
    ...last,
    ...{ recorded: answers.some(({ recorded }) => recorded), card, ...forAll },
    ...{ to: all(({ to }) => to), about: all(({ about }) => about), moved: all(({ moved }) => moved) },
  });
}

/** The taps are those of the last: what comes next, and what takes it back; the latest goes first. */
function oneCard(cards: readonly Card[], waiting: readonly CardAction[]): Card {
  const [first, ...others] = cards;
  if (first === undefined) throw new Error('no card of none');
  const last = others.at(-1) ?? first;
  return {
    ...last,
    title: cards.map(({ title }) => title).join(', '),
    tone: tones[Math.max(...cards.map(({ tone }) => tones.indexOf(tone)))] ?? last.tone,
    facts: cards.flatMap(({ facts }) => facts),
    lines: [...new Set(cards.flatMap(({ lines }) => lines))],
    hazards: cards.flatMap(({ hazards }) => hazards),
    actions: [...last.actions.slice(0, 2), ...waiting, ...last.actions.slice(2)],
    next: cards.flatMap(({ next }) => next),
    ping: [...new Set(cards.flatMap(({ ping }) => ping))],
  };
}
