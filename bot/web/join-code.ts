// The code that lets a phone of the crew in. New at every start; who has joined stays joined.

import { randomInt } from 'node:crypto';
import { isSame } from './session.ts';

/** Without the letters and digits that a glove takes for one another: 0 O, 1 I L, 2 Z, 5 S, 8 B. */
const signs = 'ACDEFGHJKMNPQRTUVWXY34679';

/** Eight of 25 signs, 37 bits: at the rate that is let through, longer than anybody's patience. */
export function newJoinCode(): string {
  const drawn = Array.from({ length: 8 }, () => signs.charAt(randomInt(signs.length)));
  return `${drawn.slice(0, 4).join('')}-${drawn.slice(4).join('')}`;
}

/** Capitals, spaces and the dash do not matter. */
export function opens(typed: string, code: string): boolean {
  const plain = (text: string) => text.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
  return isSame(plain(typed), plain(code));
}
