// What a line puts right that begins as people begin it (`no, 1.2kg`, `I meant 8`, `fue hace 10 min`): what it should have been, and
// what it was not where that is said.

import type { Hearing } from '../hearing.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export type Otherwise =
  | { readonly is: 'taken-back' }
  | { readonly is: 'changed'; readonly to: string; readonly from: string | undefined };

/** More is a sentence of its own. */
const longest = 60;

export function saidOtherwise(line: string, { tongues }: Hearing): Otherwise | undefined {
  if (line.length > longest || line.endsWith('?')) return undefined;
  const said = line
    .replaceAll(/(?<!\d)[,.!;:]|[,.!;:](?!\d)/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  const all = tongues.map((tongue) => tongue.saidOtherwise);
  const [takesBack, opens, goesOn, nots] = (['takesBack', 'opens', 'goesOn', 'nots'] as const).map((of) =>
    all.flatMap((words) => words[of]),
  );
  if (takesBack?.includes(plain(said)) === true) return { is: 'taken-back' };
  const closes = all.flatMap((words) => words.closes);
  const starts = [...(opens ?? []), ...(nots ?? [])];
  const opened = withoutFirst(said, starts);
  const [now, was] = apart(
    opened === undefined ? said : further(withoutLast(opened, closes), [...starts, ...(goesOn ?? [])]),
    nots ?? [],
  );
  if (now === '' || (opened === undefined && was === undefined)) return undefined;
  const [first = '', ...rest] = now.split(' ');
  const isNotFirst = was === undefined && withoutFirst(said, nots ?? []) !== undefined && rest.length > 0;
  // `not 7, 8`: what it was not comes first.
  return isNotFirst && /^\S+ \S+[,;]/.test(line)
    ? { is: 'changed', to: rest.join(' '), from: first }
    : { is: 'changed', to: now, from: was };
}

const plain = (text: string): string => withoutAccents(text.toLowerCase().replaceAll("'", ''));

/** Without the longest of these that it begins with. */
function withoutFirst(said: string, phrases: readonly string[]): string | undefined {
  const [phrase] = phrases.filter((each) => plain(said).startsWith(`${each} `)).toSorted((a, b) => b.length - a.length);
  if (phrase === undefined) return undefined;
  const words = phrase.split(' ').length;
  return said.split(' ').slice(words).join(' ');
}

/** Without what it ends in: `era con rodillo, me he liado`. */
function withoutLast(said: string, phrases: readonly string[]): string {
  const phrase = phrases.find((each) => plain(said).endsWith(` ${each}`));
  return phrase === undefined ? said : withoutLast(said.slice(0, -phrase.length - 1), phrases);
}

function further(said: string, phrases: readonly string[]): string {
  const rest = withoutFirst(said, phrases);
  return rest === undefined ? said : further(rest, phrases);
}

/** `9:40 not 9:50`. */
function apart(said: string, nots: readonly string[]): readonly [string, string | undefined] {
  for (const not of nots) {
    const at = plain(said).indexOf(` ${not} `);
    if (at > 0) return [said.slice(0, at).trim(), said.slice(at + not.length + 2).trim()];
  }
  return [said, undefined];
}
