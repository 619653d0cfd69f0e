// What is known of parts that came in, said once of all of which the same is known, and what nobody has said of them.

import type { PartName } from '../../core/ids.ts';
import type { PartDetails } from '../../core/verbs/said.ts';
import type { DetailAsked } from '../language/tongues/english/parts.ts';
import type { Telling } from './card-context.ts';

export interface Described {
  readonly name: PartName;
  readonly details: PartDetails;
}

/** A list of more that differ is read in the record. */
const mostLines = 12;

export function detailLines(telling: Telling, parts: readonly Described[]): readonly string[] {
  const { parts: words } = telling.words;
  const alike = new Map<string, { readonly names: PartName[]; readonly known: readonly string[] }>();
  for (const { name, details } of parts) {
    const known = knownOf(telling, details);
    const same = alike.get(known.join());
    if (same === undefined) alike.set(known.join(), { names: [name], known });
    else same.names.push(name);
  }
  const each = [...alike.values()];
  const left = each.slice(mostLines).flatMap(({ names }) => names);
  return [
    ...each.slice(0, mostLines).map(({ names, known }) => words.detail(names, known, telling.figures)),
    ...(left.length === 0 ? [] : [words.in.moreDescribed(left, telling.figures)]),
    ...missingLines(telling, parts),
  ];
}

function knownOf(telling: Telling, details: PartDetails): readonly string[] {
  const { serial, job, customer, metal, wallMillimetres, areaSquareMetres, highestCelsius } = details;
  const label = telling.words.records.details;
  return [
    serial === undefined ? '' : `${label.serial} ${serial}`,
    job === undefined ? '' : `${label.job} ${job}`,
    customer ?? '',
    metal === undefined ? '' : telling.words.names.metal(metal),
    wallMillimetres === undefined ? '' : telling.figures.wall(wallMillimetres),
    areaSquareMetres === undefined ? '' : telling.figures.area(areaSquareMetres),
    highestCelsius === undefined ? '' : telling.words.parts.bears(highestCelsius, telling.figures),
  ].filter((text) => text !== '');
}

/** What the plan, the heat-up and the oven would need, with the parts that lack it. */
function missingLines(telling: Telling, parts: readonly Described[]): readonly string[] {
  const { unknownDetails } = telling.words.parts;
  const lacking = (has: (details: PartDetails) => unknown) =>
    parts.filter(({ details }) => has(details) === undefined).map(({ name }) => name);
  const byParts = new Map<string, { readonly names: readonly PartName[]; readonly what: DetailAsked[] }>();
  const wants: readonly (readonly [DetailAsked, (details: PartDetails) => unknown])[] = [
    ['metal', ({ metal }) => metal],
    ['wall', ({ wallMillimetres }) => wallMillimetres],
    ['area', ({ areaSquareMetres }) => areaSquareMetres],
    ['bears', ({ highestCelsius }) => highestCelsius],
  ];
  for (const [what, has] of wants) {
    const names = lacking(has);
    const known = byParts.get(names.join()) ?? { names, what: [] };
    if (names.length > 0) byParts.set(names.join(), { names, what: [...known.what, what] });
  }
  return [...byParts.values()].map(({ names, what }) => unknownDetails(names, what, telling.figures));
}
