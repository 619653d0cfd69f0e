// How the terminal prints an answer: for people, or as one line of JSON.

import type { Writable } from 'node:stream';
import { DateTime } from 'luxon';
import type { Answer } from '../answer.ts';

export type Print = (answer: Answer) => void | Promise<void>;

/** Nothing but JSON on standard output: `shown` is for people, and they have `text`. */
export function printJson(out: Writable): Print {
  // The shape is fixed; `about` is for front ends that keep a message a batch, `paper` for those elsewhere.
  return ({ about: _, ...answer }) => {
    const { paper: __, ...card } = answer.card;
    const facts = answer.card.facts.map(({ id, label, value, unit }) => ({ id, label, value, unit }));
    out.write(`${JSON.stringify({ ...answer, card: { ...card, facts } })}\n`);
  };
}

const marks = { reply: ' ', objection: '✋', misread: '?', reminder: '🔔', digest: '▤', error: '✖' } as const;

export function printPlain(out: Writable, zone: string): Print {
  return (answer) => {
    const at = DateTime.fromISO(answer.at, { zone }).toFormat('HH:mm');
    const to = answer.key === null || answer.to.length === 0 ? '' : ` @${answer.to.join(' @')}`;
    // What may have been meant has to be read before it is pressed; the other taps say it by their name.
    const taps = answer.card.actions.map(({ id, line }) => (answer.kind === 'misread' ? `${id} (${line})` : id));
    const tapLine = taps.length === 0 ? '' : `\n  taps: ${taps.join(', ')}`;
    out.write(`${at} ${marks[answer.kind]}${to} ${withoutTaps(answer)}${tapLine}\n`);
  };
}

/** The terminal lists its taps by the ids that it takes. */
function withoutTaps(answer: Answer): string {
  return answer.text
    .split('\n')
    .filter((line) => !line.startsWith('  > '))
    .join('\n');
}
