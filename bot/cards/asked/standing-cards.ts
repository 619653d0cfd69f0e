// What is to be done, what is late and what is at risk: lists over all that runs, the most urgent first.

import { potsAtRisk } from '../../../core/asked/pots-at-risk.ts';
import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import { unheardRings } from '../../../core/asked/unheard-rings.ts';
import type { PersonName } from '../../../core/ids.ts';
import { grams, minutes, minutesBetween } from '../../../core/units.ts';
import { makeBoard } from '../board.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { timeShown } from '../clock-text.ts';
import { guideCard } from '../guide-card.ts';
import { ringLabel } from '../ring-label.ts';
import { clockLine, thingTold } from './things-told.ts';

const mostTold = 8;
const mostTaps = 4;

/** Where nothing runs, whoever asks is told what comes first. */
export function toDoCard(telling: Telling, things: readonly ThingMeant[], by: PersonName): Card {
  const { asked } = telling.words;
  const told = things.flatMap((thing) => thingTold(telling, thing) ?? []);
  const [first] = told;
  if (first !== undefined) {
    const next = told.flatMap(({ taps }) => taps);
    return makeCard(asked.nextOf(first.name, first.phase, first.taps[0]?.label), 'plain', {
      facts: told.length === 1 ? first.facts : [],
      lines: [
        ...first.lines,
        ...first.clocks.map((clock) => clockLine(telling, clock)),
        ...told.slice(1).map(({ name, phase, taps }) => asked.nextOf(name, phase, taps[0]?.label)),
        ...(next.length === 0 ? [asked.nothingNext] : []),
      ],
      actions: next.slice(0, mostTaps),
    });
  }
  const items = makeBoard(telling).items.filter(({ taps }) => taps.length > 0);
  if (items.length === 0) return guideCard(telling, by);
  return makeCard(asked.toDoTitle(items.length, telling.figures), 'plain', {
    lines: items.slice(0, mostTold).map(({ name, phase, taps }) => asked.nextOf(name, phase, taps[0]?.label)),
  });
}

export function lateCard(telling: Telling): Card {
  const { asked } = telling.words;
  const board = makeBoard(telling);
  const over = board.items.flatMap(({ name, phase, urgency, clocks }) =>
    urgency.is === 'over'
      ? [
          asked.titled(
            name,
            [
              phase,
              ...clocks.filter((clock) => clock.urgency.is === 'over').map((clock) => clockLine(telling, clock)),
            ].join(', '),
          ),
        ]
      : [],
  );
  const due = board.rings.filter(({ late }) => late).map(({ label, at }) => asked.titled(label, at));
  const unheard = unheardRings(telling).map(({ key, ring }) =>
    asked.unheard(ringLabel(telling, key), ring.rangAt, telling.figures),
  );
  const lines = [...over, ...due, ...unheard];
  if (lines.length === 0) {
    const [next] = board.rings;
    return makeCard(asked.nothingLate, 'plain', { lines: next === undefined ? [] : [`${next.at} ${next.label}`] });
  }
  return makeCard(asked.late(lines.length, telling.figures), 'warn', { lines: lines.slice(0, mostTold) });
}

/** What is mixed and not yet lost; then what is. */
export function atRiskCard(telling: Telling): Card {
  const { asked, page } = telling.words;
  const { figures, now } = telling;
  const pots = potsAtRisk(telling);
  const live = pots.filter(({ pot }) => pot.dueAt > now);
  const lost = pots.filter(({ pot }) => pot.dueAt <= now);
  const lines = [
    ...live.map(({ batch, grams: mass, pot }) =>
      asked.potAtRisk(
        page.batch(batch.number),
        figures.mass(mass),
        timeShown(telling, { ...pot, dueAt: pot.nearAt }),
        timeShown(telling, pot),
        asked.coatsFrom(batch.coats.length, figures),
      ),
    ),
    ...lost.map(({ batch, grams: mass, pot }) =>
      asked.potLost(page.batch(batch.number), figures.mass(mass), timeShown(telling, pot)),
    ),
  ];
  const [first] = live;
  if (first === undefined) return makeCard(asked.nothingAtRisk, lost.length > 0 ? 'warn' : 'plain', { lines });
  const total = grams(live.reduce((sum, { grams: mass }) => sum + mass, 0));
  const left = minutes(Math.max(0, minutesBetween(now, first.pot.dueAt)));
  const isNear = first.pot.nearAt <= now;
  return makeCard(asked.atRisk(total, left, figures), isNear ? 'warn' : 'plain', {
    lines: [...lines, asked.leftUnknown],
    next: live.map(({ batch, pot }) => ({ key: `batch/${batch.number}/pot-end`, dueAt: figures.iso(pot.dueAt) })),
  });
}
