// How English speakers ask, in further words: enough. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking4: Sayings<AskedMeaning> = {
  enough: `
    got enough hardener left for one more pot / got enough left for the last base / got enough A to make another pot
    got enough B for a further kilo / is there enough A for another pot / is there enough B to mix one more kilo
    have we enough A and B for a 3 kilo mix / do I have enough for another small mix
    have you got enough A to mix two more / enough A for one more mix / enough B for a new pot
    enough of both for another kilo / enough in the tin for another mix / enough in the can for a 2 kg pot
    is what's in can 3 enough for a new batch / will can 3 do for one more mix
    can we get another mix out of the A that's left
  `,
};
