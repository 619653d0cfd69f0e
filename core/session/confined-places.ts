// Places whose name says that whoever is in one breathes what is in it: a tank, a pit, a cellar, the hold of a ship. By what a
// place is called in either tongue, since the record outlives a crew's languages. A crew may say of a name what it means.

import type { PlaceName } from '../ids.ts';

const words = (spaced: string): readonly string[] => spaced.split(' ');

const confined: ReadonlySet<string> = new Set([
  ...words(
    'tank pit cellar basement silo vessel duct manhole vault well hold bilge trench hopper bin sewer sump shaft',
  ),
  ...words('tunnel culvert cistern crawlspace boiler drum'),
  ...words(
    'tanque foso fosa sotano bodega sentina silo deposito recipiente cuba cisterna conducto arqueta boveda pozo',
  ),
  ...words('zanja tolva contenedor alcantarilla sumidero tunel galeria caldera'),
]);

/** `tank-3`, `Tanks`, `sótano`. `said`: what the crew has said of names. */
export function isConfined(place: PlaceName, said: ReadonlyMap<PlaceName, boolean>): boolean {
  return said.get(place) ?? pieces(place).some((piece) => confined.has(piece) || confined.has(singular(piece)));
}

const pieces = (place: PlaceName): readonly string[] =>
  place
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^a-z]+/);

const singular = (piece: string): string => piece.replace(/(?:(?<=[lr])e)?s$/, '');
