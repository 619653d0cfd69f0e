// The readers' own words put in place of what people call a serial, a job, and the heat that a part bears.

import type { Hearing } from '../hearing.ts';
import { withoutAccents } from '../typed/without-accents.ts';

/** As the strict reader has it. */
export const labels = ['serial', 'job', 'max'] as const;
export type Label = (typeof labels)[number];

/** The line with the readers' own words in place of what people call a serial, a job, and the heat that a part bears. */
export function labelled(line: string, hearing: Hearing): string {
  let put = dozensCounted(line, hearing);
  for (const { label, said } of labelsOf(hearing)) {
    const plain = withoutAccents(put.toLowerCase());
    const at = plain.length === put.length ? [...plain.matchAll(said)] : [];
    for (const { index, 0: phrase } of at.toReversed())
      put = `${put.slice(0, index)} ${label} ${put.slice(index + phrase.length)}`;
  }
  return put;
}

/** `a dozen elbows` are 12 of them. */
function dozensCounted(line: string, { tongues }: Hearing): string {
  const typed = withoutAccents(line.toLowerCase());
  if (typed.length !== line.length) return line;
  for (const { partsIn } of tongues) {
    for (const [phrase, count] of Object.entries(partsIn.dozens)) {
      const at = typed.search(new RegExp(`(?<![\\p{L}\\d])${phrase}(?![\\p{L}\\d])`, 'u'));
      if (at !== -1) return `${line.slice(0, at)}${count}${line.slice(at + phrase.length)}`;
    }
  }
  return line;
}

interface LabelSaid {
  readonly label: Label;
  readonly said: RegExp;
}
const made = new WeakMap<Hearing, readonly LabelSaid[]>();

function labelsOf(hearing: Hearing): readonly LabelSaid[] {
  const before = made.get(hearing);
  if (before !== undefined) return before;
  const all = labels.map((label) => {
    const phrases = hearing.tongues
      .flatMap(({ partsIn }) => partsIn.told[label].split(', '))
      .toSorted((one, other) => other.length - one.length)
      .map((phrase) => phrase.replaceAll('.', '\\.'));
    return { label, said: new RegExp(`(?<![\\p{L}\\d-])(?:${phrases.join('|')})[:.#]?(?![\\p{L}-])`, 'gu') };
  });
  made.set(hearing, all);
  return all;
}
