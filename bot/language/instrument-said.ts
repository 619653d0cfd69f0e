// What is told of an instrument's check in other words: `the gauge failed its check`, `gauge-2 was calibrated today, good till
// March`. Its kind names it where one of that kind is kept. Each is a tap, since many parts may hang on it; only `checked gauge-2
// ok`, which says it in the reader's own order, is taken.

import { DateTime } from 'luxon';
import { verbRows } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import type { CheckResult } from '../../core/instrument-kinds.ts';
import { isSaid, longestAt, wordsOf } from './as-said/words.ts';
import type { LineContext } from './reading.ts';
import { monthNamed } from './times/date-typed.ts';
import { lastDayOf } from './times/expiry-typed.ts';
import type { InstrumentWords } from './tongues/instrument-words.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { Understands } from './understood.ts';

export const checkSaid: Understands = (line, context, strictly) => {
  const { instruments = [], hearing } = context;
  if (instruments.length === 0 || strictly(line).kind === 'command') return undefined;
  const said = (of: Exclude<keyof InstrumentWords, 'kinds'>): readonly string[] =>
    hearing.tongues.flatMap((tongue) => withoutAccents(tongue.instruments[of]).split(', '));
  const inOrder = `calibrated ${line.split(' ').slice(1).join(' ')}`;
  const isInOrder =
    longestAt(wordsOf(line), 0, said('wasChecked')) !== undefined && strictly(inOrder).kind === 'command';
  if (isInOrder) return { is: 'sure', line: inOrder };
  const name = nameIn(line, context);
  const isOfCheck = isSaid(line, said('ofCheck')) || isSaid(line, said('wasChecked'));
  // Whether it is in check stands in the list of them.
  if (line.endsWith('?')) return name !== undefined && isOfCheck ? { is: 'sure', line: 'instruments' } : undefined;
  const reads = tokenize(line, hearing).some(({ kind }) => kind === 'quantity');
  if (reads || isSaid(line, said('untold'))) return undefined;
  const isFailedSaid = isSaid(line, said('hasFailed'));
  if (name === undefined || !isOfCheck) return undefined;
  if (isFailedSaid) return { is: 'likely', lines: [`calibrated ${name} ${printed('failed')}`] };
  const next = dayBehind(line, context, said('upTo'));
  if (next === undefined && !isSaid(line, said('hasPassed')) && !isSaid(line, said('wasChecked'))) return undefined;
  return { is: 'likely', lines: [`calibrated ${name} ${printed('ok')}${next === undefined ? '' : ` next ${next}`}`] };
};

/** As the line of a check has it. */
const printed = (result: CheckResult): string => verbRows.calibrated.fields.result?.words.get(result) ?? result;

/** By its name, or by what it is where one alone of that kind is kept. */
function nameIn(line: string, { instruments = [], hearing }: LineContext): string | undefined {
  const words = new Set(wordsOf(line).map(({ word }) => word));
  const named = instruments.filter(({ name }) => words.has(withoutAccents(name)));
  const [one, another] = named;
  if (one !== undefined) return another === undefined ? one.name : undefined;
  const ofKind = instruments.filter(({ kind }) =>
    hearing.tongues.some(({ instruments: { kinds } }) => isSaid(line, withoutAccents(kinds[kind]).split(', '))),
  );
  return ofKind.length === 1 ? ofKind[0]?.name : undefined;
}

/** ISO. A month alone is its first day, when it next comes: the sooner is the safer to be checked by. */
function dayBehind(line: string, context: LineContext, leads: readonly string[]): string | undefined {
  const words = wordsOf(line);
  for (const i of words.keys()) {
    const lead = longestAt(words, i, leads);
    if (lead === undefined) continue;
    const rest = words.slice(i + lead.split(' ').length).find(({ word }) => !leads.includes(word));
    if (rest === undefined) continue;
    const text = line.slice(rest.start);
    const day = lastDayOf(tokenize(text, context.hearing), 0, { line: text, context });
    if (day !== undefined && !isFailed(day)) return day.date;
    const month = monthNamed(rest.text, context.country);
    if (month !== undefined) return firstOf(month, context);
  }
  return undefined;
}

function firstOf(month: number, { now, zone }: LineContext): string | undefined {
  const today = DateTime.fromMillis(now, { zone });
  const year = month > today.month ? today.year : today.year + 1;
  return DateTime.utc(year, month).toISODate() ?? undefined;
}
