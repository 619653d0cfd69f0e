// What every card is worded from (`Telling`): the words, figures and shop for one person at one moment; and the making
// of its taps.

import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Figures } from '../language/figures.ts';
import type { Hearing } from '../language/hearing.ts';
import type { ButtonId, Words } from '../language/tongues/english/sentences.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { type SaidCommand, writeLine } from '../language/write-line.ts';
import type { Card, CardAction } from './card.ts';
import { inUnitsOf } from './tap-units.ts';

export interface Telling {
  readonly words: Words;
  readonly figures: Figures;
  /** What may be set, and what each calls itself. */
  readonly languages: Tongues['languages'];
  /** Every tongue that is wired in: what a line must put in quotes. */
  readonly hearing: Hearing;
  readonly shop: Shop;
  readonly now: EpochMs;
}

/** The line of an act, as this crew's reader takes it back. */
export const lineOf = ({ shop, hearing }: Telling, said: SaidCommand): string =>
  writeLine(said, { zone: shop.crew.zone, hearing });

export const tap = ({ words, figures }: Telling, id: ButtonId, line: string): CardAction => ({
  id,
  label: words.buttons[id],
  line: inUnitsOf(line, figures.units),
});

/** What a tap would say is told in the words and units of whoever the card is for. */
export function withLinesShown({ words, figures }: Telling, card: Card): Card {
  const actions = card.actions.map((action) => {
    const shown = words.lineShown(action.line, figures);
    return shown === action.line ? action : { ...action, shown };
  });
  return { ...card, actions };
}
