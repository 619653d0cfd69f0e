// A check of breathing air: item by item against the standard of the crew's country; and its line on the brief.

import { limitsOf } from '../../core/calc/breathing-air.ts';
import type { CommandOf } from '../../core/commands.ts';
import { checkServesUntil, judgedCheck, whyNotFed } from '../../core/session/breathing-check.ts';
import { lastChecks } from '../../core/session/breathing-rules.ts';
import type { Session } from '../../core/session/session.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, undoTap } from './card-context.ts';
import { type Act, leftBy } from './recorded-act.ts';

export function breathingAirCard({ telling, outcome }: Act<CommandOf<'breathing-check'>>): Card {
  const words = telling.words.session.breathing;
  const [fact] = leftBy(outcome, 'BreathingAirChecked');
  if (fact === undefined) return makeCard(words.title('within'), 'plain');
  const judged = judgedCheck(fact);
  const worst = judged.some(({ is }) => is === 'outside')
    ? 'outside'
    : judged.some(({ is }) => is === 'not-read')
      ? 'not-read'
      : 'within';
  return makeCard(words.title(worst), worst === 'within' ? 'good' : worst === 'outside' ? 'stop' : 'warn', {
    lines: [
      ...judged.map((each) => words.item(each, fact, limitsOf[fact.standard], telling.figures)),
      words.by(fact.standard, fact.compressor),
      ...(worst === 'outside' ? [words.feedsNobody] : []),
      words.notMonitor,
    ],
    actions: outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
  });
}

export interface BreathingLines {
  readonly known: readonly string[];
  readonly unknown: readonly string[];
}

/** Nothing where no supplied air was said. */
export function breathingAirLines(telling: Telling, { suppliedAir }: Session): BreathingLines {
  if (suppliedAir?.supplied !== true) return { known: [], unknown: [] };
  const words = telling.words.session.breathing;
  const checks = lastChecks(telling.shop.crew.spray, telling.now);
  if (checks.length === 0) return { known: [], unknown: [words.neverChecked] };
  const told = (isFit: boolean) =>
    checks
      .filter((check) => (whyNotFed(check, telling.now) === undefined) === isFit)
      .map((check) => words.checked(check, whyNotFed(check, telling.now), checkServesUntil(check), telling.figures));
  return { known: told(true), unknown: told(false) };
}

export const breathingTap = ({ words }: Telling): CardAction => ({
  id: 'breathing-check',
  label: words.session.breathing.tap,
  line: 'breathing-check o2 {air-oxygen}% co {air-co}ppm co2 {air-co2}ppm oil {air-oil}mg dew {air-dew}C no-smell',
});
