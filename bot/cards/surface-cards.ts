// A part before its coat: what came in, how it was prepared, how warm it is and how far from the dew point.

import { dewPointOf } from '../../core/calc/air.ts';
import { heatProperties } from '../../core/calc/metals.ts';
import { coatClimate } from '../../core/coat/coat-climate.ts';
import type { CommandOf } from '../../core/commands.ts';
import { defaultPlace, type PlaceName } from '../../core/ids.ts';
import { keysOf } from '../../core/own-key.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import { sheetsAtHand } from '../../core/part/surface-life.ts';
import { surfaceAsked, surfaceBreaches } from '../../core/part/surface-limits.ts';
import { patchTold } from '../../core/patch-test.ts';
import { batchOf, byName, liveParts } from '../../core/shop.ts';
import { type PartNow, statusOf } from '../../core/status.ts';
import type { PartDetails } from '../../core/verbs/said.ts';
import { limitsBroken, spreadOver } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { partInHand } from './example-here.ts';
import { factsOf } from './facts.ts';
import { nextTaps } from './next-taps.ts';
import { detailLines } from './part-details.ts';
import type { Act } from './recorded-act.ts';
import { stillAskedLines } from './still-asked.ts';
import { removalQuestion, toRemoveLines, wipingLines } from './surface-asked.ts';

export const surfaceTap = (telling: Telling, part: string): CardAction =>
  tap(telling, 'surface', `surface ${part} {surface-temperature}C`);

/** The words of its lines that nobody could read. */
export const unreadOf = ({ unread = [], more = [] }: CommandOf<'part'>): readonly string[] => [
  ...unread,
  ...more.flatMap((each) => each.unread ?? []),
];

/** One part, or a whole pasted list: what is known of each, what is missing, and what was not read. */
export function notedCard(telling: Telling, parts: readonly Part[], unread: readonly string[]): Card {
  const { replies, parts: words } = telling.words;
  const [first] = parts;
  if (first === undefined) return makeCard(replies.settled, 'plain');
  const only = parts.length === 1;
  return makeCard(only ? replies.partNoted(first.name) : words.several(parts.length), 'plain', {
    facts: only ? detailFacts(telling, first.details) : [],
    lines: [
      ...(unread.length === 0 ? [] : [words.unread(unread, keysOf(heatProperties), telling.figures)]),
      ...detailLines(telling, parts),
      ...toRemoveLines(telling, parts),
    ],
    actions: only ? nextTaps(telling, statusOf.part(telling, first).next()) : [],
  });
}

function detailFacts(telling: Telling, details: PartDetails): readonly CardFact[] {
  const { wallMillimetres, areaSquareMetres, highestCelsius } = details;
  const figures = { 'part-wall': wallMillimetres, 'part-area': areaSquareMetres, 'part-bears': highestCelsius };
  return factsOf(telling, figures);
}

export function surfaceFacts(telling: Telling, { part, phase, clocks }: PartStatus): readonly CardFact[] {
  if (phase.is !== 'bare') return [];
  return [
    ...factsOf(telling, { profile: part.prepared?.profileMicrometres }),
    ...clockFacts(telling, clocks, ['surface']),
  ];
}

export function preparedCard(
  telling: Telling,
  status: PartNow,
  { request, command }: Pick<Act<CommandOf<'prep'>>, 'request' | 'command'>,
): Card {
  const { part, surface } = status;
  const { prepared } = part;
  const { parts, replies } = telling.words;
  if (prepared === undefined) return makeCard(replies.partNoted(part.name), 'plain');
  const asked = sheetsAtHand(telling.shop).flatMap((sheet) => surfaceAsked(telling.shop, part, sheet, telling.now));
  const breaches = surfaceBreaches(asked, prepared).map((breach) => `${parts.breach(breach, telling.figures)}.`);
  const question = removalQuestion(telling, part, { by: request.by, parts: command.parts });
  return makeCard(
    parts.prepared(part.name, parts.preparation(prepared, telling.figures)),
    breaches.length > 0 ? 'warn' : 'plain',
    {
      facts: surfaceFacts(telling, status),
      lines: [
        ...new Set(breaches),
        ...stillAskedLines(telling, status),
        ...patchLines(telling, part),
        ...wipingLines(telling, command.parts),
        ...question.lines,
        surface === undefined
          ? parts.noSurfaceLife(
              sheetsAtHand(telling.shop).map(({ name }) => name),
              telling.figures,
            )
          : parts.surfaceLifeOf(surface.sheet.name),
      ],
      actions: [...question.actions, ...nextTaps(telling, status.next())],
    },
  );
}

/** How a patch test came to its figure, where the last line of it had one. */
function patchLines({ words, figures }: Telling, { entries }: Part): readonly string[] {
  const fact = entries.findLast((entry) => entry.fact.type === 'SurfacePrepared')?.fact;
  const told = fact?.type === 'SurfacePrepared' ? patchTold(fact) : undefined;
  return told === undefined ? [] : [words.parts.patchTest(told, figures)];
}

/** The part's own surface against the air of the place, and against the sheets at hand. */
export function partSurfaceCard(telling: Telling, { part, phase, next }: PartNow): Card {
  const { parts } = telling.words;
  const place = batchOf(telling.shop, part)?.place ?? defaultPlace;
  const read = coatClimate(telling.shop, place, part, telling.now);
  const { celsius, relativeHumidityPercent: humidity, surfaceCelsius } = read;
  const dew = dewPointOf(celsius, humidity);
  const breaches = limitsBroken(telling, read);
  return makeCard(parts.surfaceRead(part.name), breaches.length > 0 ? 'warn' : 'plain', {
    facts: factsOf(telling, {
      'surface-temperature': surfaceCelsius,
      'dew-point': dew,
      spread: spreadOver(dew, surfaceCelsius),
      humidity,
    }),
    lines: [...breaches, ...(dew === undefined ? [parts.spreadNeeds] : [])],
    actions: phase.is === 'bare' ? nextTaps(telling, next(), ['prep']) : [],
  });
}

/** Said before a coat: whose steel nobody has read. A short line, never an objection. */
export function surfacesBeforeCoat(telling: Telling, place: PlaceName): readonly string[] {
  const waiting = byName(liveParts(telling.shop).filter((part) => phaseOfPart(part).is === 'bare'));
  const unread = waiting.filter((part) => coatClimate(telling.shop, place, part, telling.now).surfaceOf !== 'part');
  if (waiting.length > 0 && unread.length === 0) return [];
  const names = unread.map(({ name }) => name);
  const { readSurfaces, surfaceNotRead } = telling.words.parts;
  return [
    waiting.length === 0
      ? readSurfaces(partInHand(telling, 'surface'), telling.figures)
      : surfaceNotRead(names, telling.figures),
  ];
}

/** Said on a coat: what its distance from the dew point rests on. */
export function surfaceOfCoat(telling: Telling, part: Part): readonly string[] {
  const coat = part.coats.at(-1);
  const place = batchOf(telling.shop, part)?.place ?? defaultPlace;
  if (coat === undefined) return [];
  switch (coatClimate(telling.shop, place, part, coat.at).surfaceOf) {
    case 'part':
      return [];
    case 'place':
      return [telling.words.parts.surfaceOfPlace(part.name)];
    case undefined:
      return [telling.words.parts.surfaceNotRead([part.name], telling.figures)];
  }
}
