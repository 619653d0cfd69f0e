// Cans and weights as the reader takes them back.

import type { CommandOf } from '../../core/commands.ts';
import type { Component } from '../../core/components.ts';
import { written } from './write-quantities.ts';

export const letter = (component: Component): string => (component === 'part-a' ? 'A' : 'B');

export function writeWeights({ partAGrams, partBGrams }: CommandOf<'weigh'>): readonly string[] {
  if (partAGrams !== undefined && partBGrams !== undefined) return [written(partAGrams, 'g'), written(partBGrams, 'g')];
  return partAGrams !== undefined ? [`A ${written(partAGrams, 'g')}`] : [`B ${written(partBGrams ?? 0, 'g')}`];
}

/** Others could be read as numbers with units, `12/7` as two numbers: they stand in quotes. */
const plainLot = /^(?:\d+|[a-z][a-z0-9-]*)$/i;

export function writeOpen(command: CommandOf<'open'>): readonly string[] {
  const { component, lot, grams, litres, expires, sheet, handling } = command;
  return [
    letter(component),
    `lot ${plainLot.test(lot) ? lot : JSON.stringify(lot)}`,
    written(grams, 'g'),
    litres === undefined ? '' : written(litres, 'L'),
    expires === undefined ? '' : `exp ${expires}`,
    sheet ?? '',
    handling ?? '',
  ];
}
