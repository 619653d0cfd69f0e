// What whoever asks does now: one step, how long, and one thing not to do; and the same in half a line, for the end of a card.

import { isGasSensitive } from '../../core/can/can.ts';
import type { Component } from '../../core/components.ts';
import { leastRole, peopleFrom, roleShort } from '../../core/crew/who-may.ts';
import { isFailed } from '../../core/failed.ts';
import { firstShiftStep } from '../../core/guide/first-shift.ts';
import type { Doing, Guidance, Lasts } from '../../core/guide/guidance.ts';
import { guideAfter, guideFor } from '../../core/guide/guide.ts';
import { nameIn, nounOf, numberIn, type PartName, type PersonName, type StreamId } from '../../core/ids.ts';
import { sheetFor } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { minutes, minutesBetween } from '../../core/units.ts';
import { firstUpper } from '../language/first-upper.ts';
import { mixTaps } from './board.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { nextTaps } from './next-taps.ts';
import { vapourHazard } from './oven-air-card.ts';
import { sealedInStock } from './sealed-cards.ts';

export function guideCard(telling: Telling, name: PersonName): Card {
  const { words } = telling;
  const led = firstShiftStep(telling, name);
  const guidance = led ?? guideFor(telling, name);
  const { doing, lasts, never } = guidance;
  const step = guidance.of === undefined ? firstUpper(stepOf(telling, guidance)) : stepOf(telling, guidance);
  return makeCard(
    words.guide.title,
    guidance.weight === 'danger' ? 'stop' : guidance.weight === 'ends' ? 'warn' : 'plain',
    {
      // Whoever is led reads it under each answer, and in full.
      lines:
        led === undefined
          ? [
              `${step}.`,
              lastingLine(telling, lasts),
              words.guide.never(never, telling.figures),
              ...whoseLines(telling, doing, name),
            ]
          : [],
      hazards: doing.is === 'act' && doing.act.id === 'cure-oven' ? [vapourHazard(telling)] : [],
      actions: tapsOf(telling, doing),
    },
  );
}

/** Of what was done to these streams: the next step, or while something only lasts what must not be done to it. */
export function withLead(telling: Telling, card: Card, name: PersonName, streams: readonly StreamId[]): Card {
  if (card.alarm === true || streams.every((stream) => nounOf(stream) === 'crew')) return card;
  const guidance = guideAfter(telling, name, streams);
  if (guidance === undefined || asksItself(card, guidance)) return card;
  const { guide } = telling.words;
  const leads =
    guidance.doing.is === 'wait'
      ? guide.never(guidance.never, telling.figures)
      : guide.leads(stepOf(telling, isOfCard(telling, card, guidance) ? { doing: guidance.doing } : guidance));
  return { ...card, leads };
}

/** The next spot of a film is asked for by the card of the one before. */
const asksItself = ({ fields }: Card, { doing }: Guidance): boolean =>
  doing.is === 'act' && doing.act.id === 'film' && fields.some(({ id }) => id === 'dry-films');

function halfOf(telling: Telling, name: PartName) {
  const part = telling.shop.parts.get(name);
  return part && statusOf.part(telling, part).half;
}

/** Its title has its name already. */
const isOfCard = (telling: Telling, { title }: Card, { of }: Guidance): boolean =>
  of !== undefined && title.startsWith(nameOf(telling, of));

/** `Batch 1: weigh Part A, then Part B`. */
export function stepOf(telling: Telling, { of, doing }: Pick<Guidance, 'of' | 'doing'>): string {
  const { guide } = telling.words;
  const step = doingOf(telling, doing);
  return of === undefined ? step : guide.of(nameOf(telling, of), step);
}

function doingOf(telling: Telling, doing: Doing): string {
  const { words, figures } = telling;
  const { firstShift, guide, names, material, records } = words;
  switch (doing.is) {
    case 'wait':
      return guide.wait;
    case 'read-air':
      return guide.readAir;
    case 'mix':
      return guide.mix;
    case 'stay-out':
      return guide.stayOut;
    case 'name-parts':
      return firstShift.nameParts;
    case 'countersign':
      return firstShift.countersign(doing.by, figures);
    case 'name-can':
      return guide.nameCan(material.component[doing.component]);
    case 'open-can':
      return guide.openCan(material.component[doing.component]);
    case 'stir-can':
      return guide.stirCan(records.canLabel(doing.can));
    case 'use-up':
      return guide.useUp;
    case 'act': {
      const { command, id } = doing.act;
      const half = command.verb === 'film' ? halfOf(telling, command.part) : undefined;
      if (half?.next !== undefined) return words.parts.spots.measure(half.next.spot, half.told, half.terms.spots);
      return id === 'coat-part' && command.verb === 'coat'
        ? `${guide.steps[id]} ${command.parts.join(', ')}, ${names.method(command.method)}`
        : guide.steps[id];
    }
  }
}

function nameOf({ words, shop }: Telling, of: StreamId): string {
  const noun = nounOf(of);
  if (noun === 'part') return nameIn(of);
  const number = numberIn(of);
  if (noun === 'can') return firstUpper(words.records.canLabel(number));
  const session = noun === 'session' ? shop.sessions.get(number) : undefined;
  return session === undefined
    ? firstUpper(words.records.batchLabel(number))
    : words.session.titled(number, words.names.place(session.place));
}

export function lastingLine(telling: Telling, lasts: Lasts): string {
  const { guide, page } = telling.words;
  const { figures, now } = telling;
  switch (lasts.by) {
    case 'nothing':
      return guide.noClock;
    case 'reading':
      return guide.serves(lasts.serves, figures);
    case 'blend':
      return guide.blendTakes(lasts.takes, figures);
    case 'clock': {
      const { clock } = lasts;
      const [end] = clockFacts(telling, [clock], [clock.id]);
      if (end === undefined || clock.dueAt === undefined) return guide.noClock;
      const left = minutes(minutesBetween(now, clock.dueAt));
      return guide.ends(
        end.label,
        end.shown,
        left < 0
          ? page.overFor(minutes(-left), figures)
          : page.left(left, clock.errs === 'at-least' ? 'up' : 'down', figures),
      );
    }
  }
}

/** Whose it is to say, where this person may not. */
export function whoseLines({ words, shop, figures }: Telling, doing: Doing, name: PersonName): readonly string[] {
  if (doing.is !== 'act') return [];
  const { command, stance } = doing.act;
  const wanted = stance.is === 'permitted' ? 'lead' : leastRole({ say: command.verb });
  if (roleShort(shop.crew, name, wanted) === undefined) return [];
  return [words.guide.whose(figures.list(peopleFrom(shop.crew, wanted)))];
}

export function tapsOf(telling: Telling, doing: Doing): readonly CardAction[] {
  switch (doing.is) {
    case 'act':
    case 'use-up':
    case 'stir-can':
      return nextTaps(telling, [doing.act]);
    case 'read-air':
      return [tap(telling, 'air', 'air {air-temperature}C {humidity}%')];
    case 'mix':
      return mixTaps(telling);
    case 'name-can':
      return nameCanTaps(telling, doing.component);
    case 'open-can':
      return openTaps(telling, doing.component);
    case 'name-parts':
      return [tap(telling, 'name-part', 'part {part}')];
    case 'countersign':
      return doing.by.includes(doing.person)
        ? [
            tap(
              telling,
              'countersign',
              lineOf(telling, { command: { verb: 'first-shift-done', person: doing.person }, stance: { is: 'asked' } }),
            ),
          ]
        : [];
    case 'wait':
    case 'stay-out':
      return [];
  }
}

/** It came in sealed, or its lid comes off now. */
function nameCanTaps(telling: Telling, component: Component): readonly CardAction[] {
  const received = tap(telling, 'name-can', `received {can-mass}kg ${letterOf(component)} lot {lot}`);
  return [received, ...openTaps(telling, component)];
}

const letterOf = (component: Component): string => (component === 'part-a' ? 'A' : 'B');

/** One that stands sealed by the record; else its label is asked. */
function openTaps(telling: Telling, component: Component): readonly CardAction[] {
  const [sealed] = sealedInStock(telling).filter((each) => each.component === component);
  if (sealed === undefined) {
    return [tap(telling, 'open-one', `open ${letterOf(component)} lot {lot} {can-mass}kg`)];
  }
  const { lot, sheet } = sealed;
  const shown = sheetFor(telling.shop, sheet);
  // What air spoils is offered with gas at hand: without it there is nothing to offer.
  const isWithGas = isFailed(shown) || isGasSensitive({ component, sheet: shown });
  const command = { verb: 'open', component, lot, sheet, ...(isWithGas && { handling: 'gas' as const }) } as const;
  return [tap(telling, isWithGas ? 'open-gas' : 'open-one', lineOf(telling, { command, stance: { is: 'asked' } }))];
}
