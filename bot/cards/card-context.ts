// What every card is worded from (`Telling`): the words, figures and shop for one person at one moment; and the making
// of its taps.

import type { CommandOf } from '../../core/commands.ts';
import type { UnitSystem } from '../../core/crew/unit-system.ts';
import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Figures } from '../language/figures.ts';
import type { Hearing } from '../language/hearing.ts';
import type { ButtonId } from '../language/tongues/english/buttons.ts';
import type { Words } from '../language/tongues/english/sentences.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { type SaidCommand, writeLine } from '../language/write-line.ts';
import type { Card, CardAction } from './card.ts';
import { blankLine } from './tap-fields.ts';

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
    const shown = blankLine(words.lineShown(action.line, figures), words);
    return shown === action.line ? action : { ...action, shown };
  });
  return { ...card, actions };
}

const pairs = [
  ['C', 'F'],
  ['kg', 'lb'],
  ['um', 'mil'],
  ['m2', 'ft2'],
  ['mps', 'fpm'],
  ['mL', 'floz'],
] as const;
const unitsOf: Readonly<Record<UnitSystem, ReadonlyMap<string, string>>> = {
  us: new Map(pairs),
  metric: new Map(pairs.map(([metric, us]) => [us, metric])),
};

/**
 * In the units that its person reads: what is asked for in a form is then what stands on their gauge. Scales in the shop weigh
 * in grams, so masses of A and B stay. Either way, since a card that was worded for somebody else is tapped too.
 */
export function inUnitsOf(line: string, units: UnitSystem): string {
  return line.replaceAll(
    /\{([\w-]+)\}([A-Za-z]+)/g,
    (_, id: string, unit: string) => `{${id}}${unitsOf[units].get(unit) ?? unit}`,
  );
}

/** It names its act, so that pressed later, or by somebody else, it takes back no other. */
export function undoTap(telling: Telling, entry: number): CardAction {
  return tap(telling, 'undo', undoLine(telling, { entry }));
}

export function undoLine(telling: Telling, named: Omit<CommandOf<'undo'>, 'verb'>): string {
  return lineOf(telling, { command: { verb: 'undo', ...named }, stance: { is: 'asked' } });
}
