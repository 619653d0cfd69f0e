// Of the shop's instruments in English: what they are, how their checks stand, and what rests on one that failed.

import type { FactOf } from '../../../../core/history.ts';
import type { PartName, PlaceName } from '../../../../core/ids.ts';
import type { CheckResult, InstrumentKind } from '../../../../core/instrument-kinds.ts';
import type { InstrumentObjection } from '../../../../core/instruments.ts';
import type { Unclear } from '../../../../core/objections.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { partsNamed } from './parts-in.ts';

const kinds: Readonly<Record<InstrumentKind, string>> = {
  gauge: 'dry film gauge',
  scale: 'scale',
  hygrometer: 'hygrometer',
  thermometer: 'thermometer',
  'holiday-tester': 'holiday tester',
};

const results: Readonly<Record<CheckResult, string>> = { ok: 'passed', failed: 'FAILED' };

type InstrumentFact = FactOf<'InstrumentKept' | 'InstrumentChecked' | 'InstrumentTaken'>;

export function englishInstrumentFact(fact: InstrumentFact, figures: Figures): string {
  switch (fact.type) {
    case 'InstrumentKept':
      return `${fact.instrument}, ${kinds[fact.of]}: ${fact.retired === true ? 'out of use' : 'kept'}${fact.due === undefined ? '' : `, check due ${figures.date(fact.due)}`}`;
    case 'InstrumentChecked':
      return `${fact.instrument}: check ${results[fact.result]}${fact.next === undefined ? '' : `, next ${figures.date(fact.next)}`}`;
    case 'InstrumentTaken':
      return `${fact.instrument} used in ${fact.place} from here on`;
  }
}

export const englishReadWith = (instrument: string | undefined): string =>
  instrument === undefined ? '' : `, with ${instrument}`;

export function englishInstrumentObjection(objection: InstrumentObjection, figures: Figures): string {
  if (objection.code === 'instrument-overdue') {
    return `The check of ${objection.instrument} was overdue: it held until ${figures.date(objection.until)}.`;
  }
  const { instrument, failedAt, goodAt } = objection;
  const since =
    goodAt === undefined ? 'and no good one is on record before' : `the last good one was ${figures.dated(goodAt)}`;
  return `Rests on what ${instrument} read, and that failed its check, ${figures.dated(failedAt)}; ${since}. Read it again with another, or have a lead decide.`;
}

type InstrumentUnclear = Extract<Unclear, { code: 'no-such-instrument' | 'which-kind' }>;

export function englishInstrumentUnclear(unclear: InstrumentUnclear, figures: Figures): string {
  if (unclear.code === 'which-kind') {
    return `What is ${unclear.instrument}? ${figures.list(Object.values(kinds))}: say which.`;
  }
  const { instrument, kept, of } = unclear;
  const what = of.length === 0 ? 'instrument' : of.map((kind) => kinds[kind]).join(' or ');
  return `No ${what} is kept under ${instrument}. ${kept.length === 0 ? 'None is kept yet' : `Kept: ${figures.list([...kept])}`}; a new one is told as: instrument ${instrument} ${of[0] ?? 'gauge'}.`;
}

export const englishInstruments = {
  title: 'Instruments',
  none: 'No instruments are kept. One is told as: instrument gauge-2 gauge due 2027-03-01.',
  kinds,
  row: (name: string, kind: InstrumentKind, told: readonly string[]) =>
    [`${name}, ${kinds[kind]}`, ...told].join(' · '),
  checked: (result: CheckResult, at: EpochMs, figures: Figures) => `checked ${figures.dated(at)}, ${results[result]}`,
  notChecked: 'no check on record',
  due: (until: string, figures: Figures) => `check holds until ${figures.date(until)}`,
  overdue: (until: string, figures: Figures) => `check OVERDUE since ${figures.date(until)}`,
  dueNotGiven: 'next check not given',
  usedIn: (places: readonly PlaceName[], figures: Figures) => `last used: ${figures.list([...places])}`,
  retired: 'out of use',
  keptTitle: (name: string) => `${name}: kept`,
  retiredTitle: (name: string) => `${name}: out of use`,
  checkTitle: (name: string, result: CheckResult) => `${name}: check ${results[result]}`,
  since: (at: EpochMs | undefined, figures: Figures) =>
    at === undefined
      ? 'No good check is on record before: all that was ever read with it is marked.'
      : `Marked: all that was read with it since its last good check, ${figures.dated(at)}.`,
  held: (parts: readonly PartName[], figures: Figures) =>
    parts.length === 0
      ? 'By the record no part rests on it that is not on hold for it already.'
      : `On hold, since they rest on it: ${partsNamed(parts, figures)}. Decide of each what becomes of it, or read again.`,
  marked: (readings: number) => `Readings marked: ${readings}.`,
  aside: (name: string) => `Set ${name} aside. The next reading takes another of its kind, if one is kept.`,
  takenFrom: (name: string) => `Read with ${name}`,
  takenFailed: (name: string) => `Read with ${name}, which failed its check: what rests on it is on hold.`,
  takenOverdue: (name: string, until: string, figures: Figures) =>
    `Read with ${name}, whose check was due ${figures.date(until)}: marked.`,
  notTaken: 'With which instrument was not said.',
  checkThen: (told: readonly string[]) => ` (${told.join(', ')})`,
};
