// All that a gas monitor shows at once: what is beyond its limit stands first, with what to do; the rest in a line each.

import { gases, isBeyond } from '../../core/calc/monitor-limits.ts';
import type { CommandOf } from '../../core/commands.ts';
import { type Card, makeCard } from './card.ts';
import { undoTap } from './card-context.ts';
import { shownCard } from './monitor-card.ts';
import type { Act } from './recorded-act.ts';

export function gasesCard({ telling, command, request, outcome }: Act<CommandOf<'gases'>>): Card {
  const law = telling.shop.crew.spray.law.frame;
  const told = gases.flatMap((gas) => {
    const value = command[gas];
    if (value === undefined) return [];
    const of = outcome.envelopes.filter(({ body }) => body.type !== 'GasRead' || body.gas === gas);
    const card = shownCard(telling, { gas, value }, { ...outcome, envelopes: of }, request.by);
    return [{ card, isOver: isBeyond({ gas, value, law }) }];
  });
  const ranked = [...told.filter(({ isOver }) => isOver), ...told.filter(({ isOver }) => !isOver)].map(
    ({ card }) => card,
  );
  const [worst, ...others] = ranked;
  if (worst === undefined) return makeCard('', 'plain');
  const undo = outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq));
  const tone = ranked.some((card) => card.tone === 'warn') && worst.tone === 'plain' ? 'warn' : worst.tone;
  const lines = others.flatMap(({ title, lines }) => [title, ...lines]);
  return { ...worst, tone, lines: [...new Set([...worst.lines, ...lines])], actions: undo };
}
