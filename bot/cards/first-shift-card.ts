// What somebody in their first shift reads under every answer: the next step in full (what, how, why, what not) and what to
// tap or type; and what is told of first shifts: begun, countersigned, left, still waiting.

import { splitMass } from '../../core/calc/mixing.ts';
import { isGasSensitive } from '../../core/can/can.ts';
import { countersigners } from '../../core/crew/first-shift-decide.ts';
import type { Recorded } from '../../core/execute.ts';
import { isFailed } from '../../core/failed.ts';
import { firstShiftStep, isReadyToCountersign } from '../../core/guide/first-shift.ts';
import type { Doing } from '../../core/guide/guidance.ts';
import { lessonOf } from '../../core/guide/lessons.ts';
import type { PersonName } from '../../core/ids.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import type { DayRecord } from '../../core/records/day.ts';
import type { Stretch } from '../../core/records/stretch.ts';
import { type Shop, sheetFor } from '../../core/shop.ts';
import { fieldsOf, fillLine } from '../language/line-fields.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap, undoTap } from './card-context.ts';
import { exampleHere } from './example-here.ts';
import { lastingLine, stepOf, tapsOf, whoseLines } from './guide-card.ts';
import { leftBy } from './recorded-act.ts';
import { verbOfStep } from './verb-of-step.ts';

interface Led {
  /** The answer itself asks something, whose taps come before those of the step. */
  readonly asks: boolean;
  /** What they were told last: how and why are not taught again at once. */
  readonly before: readonly Card[];
  /** Whether who may countersign is called, once it waits for them. */
  readonly calls: boolean;
}

export function withFirstShift(telling: Telling, card: Card, name: PersonName, { asks, before, calls }: Led): Card {
  const step = card.alarm === true ? undefined : firstShiftStep(telling, name);
  if (step === undefined) return card;
  const { words, figures } = telling;
  const { firstShift, guide } = words;
  const { doing } = step;
  const lesson = lessonOf(doing);
  const taught =
    lesson === undefined
      ? []
      : [firstShift.how(firstShift.lessons[lesson].how), firstShift.why(firstShift.lessons[lesson].why)];
  const taps = tapsOf(telling, doing);
  const lasting = step.lasts.by === 'nothing' ? [] : [lastingLine(telling, step.lasts)];
  const toldBefore = new Set(before.flatMap(({ leadsOn = [] }) => leadsOn));
  const leads = guide.leads(stepOf(telling, step));
  const called = calls && doing.is === 'countersign' ? doing.by.filter((by) => by !== name) : [];
  const countersign = called.length === 0 ? [] : [countersignTap(telling, name)];
  return {
    ...card,
    leads,
    leadsOn: [
      ...taught.filter((line) => !toldBefore.has(line)),
      ...lasting,
      guide.never(step.never, figures),
      ...whoseLines(telling, doing, name),
      ...toType(telling, doing, taps),
      // What the card itself says already is not said twice.
    ].filter((line) => !card.lines.includes(line)),
    ping: [...new Set([...card.ping, ...called])],
    actions: withoutTwins(asks ? [...card.actions, ...taps] : [...taps, ...countersign, ...card.actions]),
  };
}

/** Of one id the first: who types it means one. */
const withoutTwins = (actions: readonly CardAction[]): readonly CardAction[] =>
  actions.filter(({ id, line }, i) => actions.findIndex((other) => other.id === id || other.line === line) === i);

function toType(telling: Telling, doing: Doing, taps: readonly CardAction[]): readonly string[] {
  const { words, figures } = telling;
  const [first] = taps;
  if (first === undefined) return [];
  if (fieldsOf(first.line).length === 0) return [words.firstShift.tapOrType(words.lineShown(first.line, figures))];
  return [words.firstShift.type(words.lineShown(exampleOf(telling, doing, first), figures))];
}

/** The next step's line with figures in it, where it asks for any. */
export function filledStep(telling: Telling, name: PersonName): string | undefined {
  const step = firstShiftStep(telling, name);
  const [first] = step === undefined ? [] : tapsOf(telling, step.doing);
  if (step === undefined || first === undefined || fieldsOf(first.line).length === 0) return undefined;
  return exampleOf(telling, step.doing, first);
}

/** As hands would fill it in. */
function exampleOf(telling: Telling, doing: Doing, { line }: CardAction): string {
  const { shop, figures, words } = telling;
  const values = new Map([...examples[figures.units], ...massesOf(shop, doing)]);
  if (doing.is === 'name-parts') values.set('part', words.typed.namedPart);
  const isKnown = fieldsOf(line).every(({ id }) => values.has(id));
  return isKnown
    ? `${fillLine(line, values)}${withGas(shop, doing)}`
    : exampleHere(telling, verbOfStep(doing) ?? 'first-shift');
}

const examples = {
  metric: new Map([
    ...([
      ['lot', '7731'],
      ['can-mass', '5'],
      ['grade', 'sa2.5'],
      ['flush-volume', '300'],
      ['part-temperature', '90'],
    ] as const),
  ]),
  us: new Map([
    ...([
      ['lot', '7731'],
      ['can-mass', '10'],
      ['grade', 'sa2.5'],
      ['flush-volume', '10'],
      ['part-temperature', '195'],
    ] as const),
  ]),
};

/** What its tap would otherwise be asked back about. */
function withGas(shop: Shop, doing: Doing): string {
  if (doing.is !== 'open-can') return '';
  const sheet = sheetFor(shop);
  return !isFailed(sheet) && isGasSensitive({ component: doing.component, sheet }) ? ' gas' : '';
}

/** As they were worked out for the pot. */
function massesOf(shop: Shop, doing: Doing): readonly (readonly [string, string])[] {
  const batch = doing.is === 'act' ? shop.batches.get(Number(doing.act.of)) : undefined;
  const split = batch && splitMass(batch.plannedGrams, mixRatio(batch.sheet.ratio));
  if (split === undefined || isFailed(split)) return [];
  return [
    ['part-a', `${Math.round(split.partAGrams)}`],
    ['part-b', `${Math.round(split.partBGrams)}`],
  ];
}

export function firstShiftBegunCard(telling: Telling, by: PersonName): Card {
  const { words } = telling;
  const { begun, begunLine, tryFirst } = words.firstShift;
  return makeCard(begun(by), 'plain', {
    lines: [begunLine, tryFirst],
    actions: [tap(telling, 'practice', 'practice')],
  });
}

export function firstShiftEndedCard(telling: Telling, outcome: Recorded): Card {
  const { firstShift } = telling.words;
  const actions = outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq));
  const [done] = leftBy(outcome, 'FirstShiftCountersigned');
  const [left] = leftBy(outcome, 'FirstShiftLeft');
  if (done === undefined) return makeCard(firstShift.left(left?.person ?? ''), 'plain', { actions });
  const lines = done.samePerson === true ? [firstShift.samePerson] : [];
  return makeCard(firstShift.done(done.person), 'good', { lines, actions });
}

/** Who is in theirs, for whoever may countersign it. */
export function firstShiftsToldTo(telling: Telling, name: PersonName): Pick<Card, 'lines' | 'actions'> {
  const theirs = [...telling.shop.crew.firstShifts.keys()].filter((person) => mayCountersign(telling, name, person));
  const ready = theirs.filter((person) => isReadyToCountersign(telling, person));
  return { lines: standsLines(telling, theirs), actions: ready.map((person) => countersignTap(telling, person)) };
}

function mayCountersign({ shop }: Telling, name: PersonName, person: PersonName): boolean {
  const by = countersigners(shop.crew, person);
  return by.includes(name) || (by.length === 0 && name === person);
}

function countersignTap(telling: Telling, person: PersonName): CardAction {
  const command = { verb: 'first-shift-done', person } as const;
  const action = tap(telling, 'countersign', lineOf(telling, { command, stance: { is: 'asked' } }));
  return { ...action, id: `countersign-${person}`, label: `${action.label}: ${person}` };
}

function standsLines(telling: Telling, people: readonly PersonName[]): readonly string[] {
  const { firstShift } = telling.words;
  return people.map((person) =>
    isReadyToCountersign(telling, person)
      ? firstShift.waits(person)
      : firstShift.on(person, telling.shop.crew.firstShifts.get(person)?.at ?? telling.now, telling.figures),
  );
}

/** What was said of them in that time. */
export function firstShiftLines(
  { words, figures }: Telling,
  { firstShifts }: Pick<Stretch, 'firstShifts'>,
): readonly string[] {
  return firstShifts.map(({ happenedAt, by, fact }) =>
    words.session.dayTold(happenedAt, by, words.fact(fact, figures), figures),
  );
}

/** With what still waits. */
export function firstShiftDayLines(telling: Telling, day: DayRecord): readonly string[] {
  return [...firstShiftLines(telling, day), ...standsLines(telling, [...telling.shop.crew.firstShifts.keys()])];
}
