// Corrects the last act of a kind on one batch, part or place: only what is named changes; who, when and why are kept.

import { findBatch } from '../batch/batch-decide.ts';
import type { Amendment, AmendTarget, CommandOf, Verb } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import type { Entry, Fact } from '../history.ts';
import { batchStream, defaultPlace, partStream, placeStream, type StreamId } from '../ids.ts';
import { entriesIn, liveParts, type Shop } from '../shop.ts';

/** Which event a verb leaves behind; verbs that are not here cannot be amended. */
const eventOf = {
  mix: 'BatchOpened',
  weigh: 'PartsWeighed',
  stir: 'StirrerStarted',
  stop: 'StirrerStopped',
  filter: 'MixFiltered',
  thick: 'MixThickened',
  gel: 'MixThickened',
  empty: 'PotEmptied',
  part: undefined,
  coat: 'CoatApplied',
  dry: 'FilmDry',
  cure: 'CureStarted',
  temp: 'PartTemperatureRead',
  out: 'CureEnded',
  wet: 'FilmRead',
  film: 'FilmRead',
  release: 'PartReleased',
  hold: 'PartHeld',
  air: 'AirRead',
  surface: 'SurfaceRead',
  night: 'LowestRead',
  ok: undefined,
  undo: undefined,
  amend: undefined,
  set: undefined,
} satisfies Record<Verb, Fact['type'] | undefined>;

export function decideAmend(shop: Shop, said: Said<CommandOf<'amend'>>): Decision {
  const { of, change, why } = said.command;
  const stream = streamOf(shop, of);
  if (typeof stream !== 'string') return stream;
  const entry = entriesIn(shop)
    .filter((candidate) => candidate.stream === stream && matches(candidate.fact, of.verb))
    .at(-1);
  if (entry === undefined) return unclear({ code: 'nothing-to-amend' });
  if (change.at !== undefined && change.at > said.now) {
    return unclear({ code: 'in-the-future', at: change.at, now: said.now });
  }
  const fact = changed(entry.fact, change);
  const happenedAt = change.at ?? entry.happenedAt;
  if (happenedAt === entry.happenedAt && JSON.stringify(fact) === JSON.stringify(entry.fact)) {
    return unclear({ code: 'nothing-changed' });
  }
  return {
    kind: 'accepted',
    events: [
      {
        streams: [entry.stream, ...entry.alsoUnder],
        happenedAt: said.now,
        body: { type: 'Amended', amends: entry.seq, to: { kind: 'corrected', fact, happenedAt }, why },
        saidWith: { despite: [] },
      },
    ],
  };
}

function streamOf(shop: Shop, of: AmendTarget): StreamId | Extract<Decision, { kind: 'unclear' }> {
  if (of.part !== undefined) {
    const live = liveParts(shop).map((part) => part.name);
    return shop.parts.has(of.part)
      ? partStream(of.part)
      : { kind: 'unclear', unclear: { code: 'no-such-part', part: of.part, live } };
  }
  if (of.verb === 'air' || of.verb === 'surface' || of.verb === 'night') {
    return placeStream(of.place ?? defaultPlace);
  }
  const batch = findBatch(shop, of.batch, () => true);
  return 'kind' in batch ? batch : batchStream(batch.number);
}

function matches(fact: Entry['fact'], verb: Verb): boolean {
  if (fact.type === 'FilmRead') return fact.state === (verb === 'wet' ? 'wet' : 'dry') && eventOf[verb] === 'FilmRead';
  return fact.type === eventOf[verb];
}

function changed(fact: Fact, change: Amendment): Fact {
  switch (fact.type) {
    case 'PartsWeighed':
      return {
        ...fact,
        partAGrams: change.partAGrams ?? fact.partAGrams,
        partBGrams: change.partBGrams ?? fact.partBGrams,
      };
    case 'CoatApplied':
      return { ...fact, method: change.method ?? fact.method };
    case 'PotEmptied':
      return change.leftGrams === undefined ? fact : { ...fact, leftGrams: change.leftGrams };
    case 'AirRead': {
      const celsius = change.celsius ?? fact.celsius;
      const relativeHumidityPercent = change.relativeHumidityPercent ?? fact.relativeHumidityPercent;
      return {
        type: 'AirRead',
        ...(celsius === undefined ? {} : { celsius }),
        ...(relativeHumidityPercent === undefined ? {} : { relativeHumidityPercent }),
      };
    }
    case 'SurfaceRead':
    case 'PartTemperatureRead':
      return { ...fact, celsius: change.celsius ?? fact.celsius };
    case 'LowestRead':
      return { ...fact, lowestCelsius: change.celsius ?? fact.lowestCelsius };
    case 'CureStarted':
      return change.celsius === undefined ? fact : { ...fact, setCelsius: change.celsius };
    case 'FilmRead':
      return change.filmMicrometres === undefined ? fact : { ...fact, micrometres: [...change.filmMicrometres] };
    default:
      return fact;
  }
}
