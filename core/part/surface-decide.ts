// What is said of a part before its coat: how its surface was prepared, and how warm it is. A name that nobody has used is
// asked about, as with a coat.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said } from '../decision.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { crewStream, type PartName, partStream, type StreamId } from '../ids.ts';
import { known } from '../known.ts';
import { lastSaid } from '../settled.ts';
import { liveBatches, type Shop } from '../shop.ts';
import { litresFromMillilitres } from '../units.ts';
import { askedAsNew } from './new-part.ts';
import { sheetsAtHand } from './surface-life.ts';

export function decidePrep(shop: Shop, said: Said<CommandOf<'prep'>>): Decision {
  const { parts, asNew = false, grade, removed, solvents, prepWays, grit, waterBreak } = said.command;
  const patch = said.command.saltsMicrosiemensPerCentimetre === undefined ? undefined : patchAtHand(shop);
  const of = known({
    grade,
    removed: removed && [...removed],
    solvents: solvents && [...solvents],
    prepWays: prepWays && [...prepWays],
    grit,
    waterBreak,
    extractLitres: patch && litresFromMillilitres(patch.waterMillilitres),
    patchSquareCentimetres: patch?.areaSquareCentimetres,
  });
  // The first of all puts the keeping of them on: filed under the crew too.
  const isFirst = lastSaid(shop.crew, 'prep') === undefined;
  return onNew(
    shop,
    said,
    { names: parts, asNew, mayName: true },
    { type: 'SurfacePrepared', ...of },
    isFirst ? [crewStream] : [],
  );
}

/** As the sheet has it that most likely counts. */
function patchAtHand(shop: Shop) {
  const sheet = liveBatches(shop).at(-1)?.sheet ?? sheetsAtHand(shop)[0];
  return sheet?.surface?.salts?.patch;
}

export function decidePartSurface(shop: Shop, said: Said<CommandOf<'surface'>>, part: PartName): Decision {
  const { asNew = false, celsius } = said.command;
  return onNew(shop, said, { names: [part], asNew }, { type: 'SurfaceRead', celsius });
}

function onNew(
  shop: Shop,
  said: Said,
  named: Parameters<typeof askedAsNew>[1],
  body: EventBody,
  firstUnder: readonly StreamId[] = [],
): Decision {
  const asked = askedAsNew(shop, named);
  if (asked !== undefined) return asked;
  return accepted(
    ...named.names.map((name, i): NewEvent => {
      return { streams: [partStream(name), ...(i === 0 ? firstUnder : [])], happenedAt: said.at, body };
    }),
  );
}
