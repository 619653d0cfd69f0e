// `customer accepts 7 as it is, Ms. Hale, letter QA-118 of 1 March`: where what stands before the first comma speaks for a concession,
// the rest is whose, by which document and of which day, as its strict line takes them.

import { asTaps, type Understands } from '../understood.ts';
import { likeliestActs } from './likeliest.ts';

/** So likely it speaks of a concession, or of something else. */
const leastShare = 0.5;

export const conceded: Understands = (line, context, reads) => {
  const [, head = '', tail = ''] = /^([^,;:]+)[,;:]\s*(.+)$/.exec(line) ?? [];
  // `las dos, la 1 y la 2, están a 90`: two words speak for nothing.
  if (tail === '' || context.hearing.weighed.shareOf(head, 'concession') < leastShare) return undefined;
  const found = likeliestActs(head, context, reads);
  const [first, ...others] = found === undefined ? [] : asTaps(found).lines;
  if (first?.startsWith('concession ') !== true || others.length > 0) return undefined;
  const whole = `${first} ${tail}`;
  return reads(whole).kind === 'command' ? { is: 'likely', lines: [whole] } : undefined;
};
