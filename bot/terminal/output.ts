// How the terminal prints an answer: for people, or as one line of JSON.

import type { Writable } from 'node:stream';
import { type Card, leadLines } from '../cards/card.ts';
import { stampOf } from '../language/ending.ts';
import type { Profile } from '../language/tongues/profile.ts';
import type { Answer } from '../talk/answer.ts';

export type Print = (answer: Answer) => void | Promise<void>;

/**
 * Nothing but JSON on standard output: `shown` is for people, and they have `text`. `fileOn`: where the file lies that a
 * card is about; it stands there as `file`.
 */
export function printJson(out: Writable, fileOn: (card: Card) => string | undefined): Print {
  return (answer) => {
    const facts = answer.card.facts.map(({ id, label, value, unit }) => ({ id, label, value, unit }));
    const file = fileOn(answer.card);
    const actions = answer.card.actions.map(({ id, label, line }) => ({ id, label, line }));
    const lines = [...answer.card.lines, ...leadLines(answer.card)];
    const card = { ...without(answer.card, notOfCard), lines, facts, actions, ...(file === undefined ? {} : { file }) };
    out.write(`${JSON.stringify({ ...without(answer, notOfAnswer), card })}\n`);
  };
}

/** The shape is fixed: these are for front ends that many read at once, a paper's name for those elsewhere. */
const notOfAnswer = [
  'about',
  'moved',
  'asked',
  'actLine',
  'saidAct',
  'forAll',
  'together',
] as const satisfies readonly (keyof Answer)[];
const notOfCard = [
  'paper',
  'paperAgain',
  'copy',
  'links',
  'alarm',
  'leads',
  'asksFor',
] as const satisfies readonly (keyof Card)[];

function without(whole: object, names: readonly string[]) {
  return Object.fromEntries(Object.entries(whole).filter(([name]) => !names.includes(name)));
}

const marks = { reply: ' ', objection: '✋', misread: '?', reminder: '🔔', digest: '▤', error: '✖' } as const;

/** Each answer brings the crew's wall clock with it, as `profile` reads one. */
export function printPlain(out: Writable, profile: Profile): Print {
  return (answer) => {
    const to = answer.key === null || answer.to.length === 0 ? '' : ` @${answer.to.join(' @')}`;
    // What may have been meant has to be read before it is pressed; the other taps say it by their name.
    const taps = answer.card.actions.map(({ id, line, shown = line }) =>
      answer.kind === 'misread' ? `${id} (${shown})` : id,
    );
    const tapLine = taps.length === 0 ? '' : `\n  taps: ${taps.join(', ')}`;
    out.write(`${stampOf(profile, answer)} ${marks[answer.kind]}${to} ${withoutTaps(answer)}${tapLine}\n`);
  };
}

/** The terminal lists its taps by the ids that it takes. */
function withoutTaps(answer: Answer): string {
  return answer.text
    .split('\n')
    .filter((line) => !line.startsWith('  > '))
    .join('\n');
}
