// Parts that came in, told in other words than a line of theirs: `rails 1 to 12 came in for job 90`, `llegaron 12 rieles`, or their
// names alone. It is always a tap first: how they are called may be meant otherwise.

import { mayNamePart } from '../names-typed.ts';
import type { LineContext } from '../reading.ts';
import { onlyAsksOrDenies } from '../slots-heard/slots-heard.ts';
import { canMarks } from '../tongues/english/line-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Strictly, Understands } from '../understood.ts';
import { isOnlyNames } from './parts-typed.ts';

const opening = 'parts in';

export const partsCameIn: Understands = (line, context, strictly) => {
  if (line.endsWith('?')) return undefined;
  const rests = isOnlyNames(line, context.hearing) ? [line] : restsOf(line, context);
  if (rests.length === 0 || onlyAsksOrDenies(line, context)) return undefined;
  const lines = rests
    .flatMap((rest) => namedIn(rest, context))
    .map((rest) => `${opening} ${rest}`)
    .filter((each) => isNews(each, context, strictly));
  return lines.length === 0 ? undefined : { is: 'likely', lines };
};

/** Somebody has not booked them yet. */
function isNews(line: string, { parts }: LineContext, strictly: Strictly): boolean {
  const read = strictly(line);
  if (read.kind !== 'command' || read.command.verb !== 'part') return false;
  return [read.command, ...(read.command.more ?? [])].some(({ part }) => !parts.includes(part));
}

/** The line without the words that say that they came in. */
function restsOf(line: string, { hearing }: LineContext): readonly string[] {
  const typed = withoutAccents(line.toLowerCase());
  for (const { partsIn } of [...hearing.tongues].reverse()) {
    for (const said of partsIn.arrived.split(', ')) {
      const at = new RegExp(`(?<![\\p{L}\\d])${said}(?![\\p{L}\\d])`, 'u').exec(typed);
      if (at === null) continue;
      return [`${line.slice(0, at.index)} ${line.slice(at.index + said.length)}`.replaceAll(/\s+/g, ' ').trim()];
    }
  }
  return [];
}

const stretch = /^(?:\p{L}{2,3}\s+)?(?<many>\p{L}{3,})\s+(?<numbers>\d+\s*(?:-|\.\.|\p{L}+)\s*\d+)(?<rest>.*)$/iu;
const counted = /^(?<count>\d{1,3})\s+(?<many>\p{L}{3,})(?<rest>.*)$/iu;

/** By the name of one of them: `rails 1 to 12` is rail-1 to rail-12, `12 rails` those that come behind the last of the shop. */
function namedIn(rest: string, context: LineContext): readonly string[] {
  const row = stretch.exec(rest)?.groups;
  if (row !== undefined) {
    const { many = '', numbers = '', rest: behind = '' } = row;
    return [`${oneOf(many, context)} ${numbers}${behind}`];
  }
  const { count = '', many = '', rest: behind = '' } = counted.exec(rest)?.groups ?? {};
  if (many === '') return [rest];
  const one = oneOf(many, context);
  // Of people, and of what has words of its own, nothing is booked.
  if (one === many.toLowerCase() || canMarks.has(one) || !mayNamePart(one, context.hearing)) return [];
  const last = lastOf(one, context);
  return [`${one}-${last + 1}..${one}-${last + Number(count)}${behind}`];
}

/** `rieles` is of riel, `valves` of valve: as a part of the shop is called, else by the letters before the ending. */
function oneOf(many: string, { hearing, parts }: LineContext): string {
  const word = many.toLowerCase();
  const ones = hearing.tongues
    .flatMap(({ lists }) => lists.plurals)
    .flatMap((plural) => (word.endsWith(plural) ? [word.slice(0, -plural.length)] : []));
  const known = ones.find((one) => parts.some((part) => part.startsWith(`${one}-`)));
  const isOfLongEnding = /[lrnd]es$/u.test(word) && hearing.tongues.length > 1;
  return known ?? ones.find((one) => !isOfLongEnding || !one.endsWith('e')) ?? word;
}

const lastOf = (one: string, { parts }: LineContext): number =>
  Math.max(0, ...parts.flatMap((part) => (part.startsWith(`${one}-`) ? [Number(/\d+$/.exec(part)?.[0] ?? 0)] : [])));
