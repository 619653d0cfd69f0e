// One reader a verb. An act without a reader does not compile.

import type { Verb } from '../../../core/commands.ts';
import { type Fault, isFault } from '../reading.ts';
import { mannerOf } from '../stance.ts';
import { type Token, tokensAt } from '../typed/tokens.ts';
import type { ActLine, ActRead, Reader, ReaderToTheEnd } from './act-line.ts';
import { gather } from './gather.ts';
import { hourOrTemperature } from './hour-or-temperature.ts';
import { readAir, readNight, readSurface } from './read-air.ts';
import { readAmend } from './read-amend.ts';
import { filmReader } from './read-films.ts';
import { readHold } from './read-hold.ts';
import { readMix } from './read-mix.ts';
import { readPart } from './read-part.ts';
import { partsReader, readCoat, readCure, readTemp } from './read-part-acts.ts';
import { potReader, readEmpty } from './read-pot-acts.ts';
import { readSet } from './read-set.ts';
import { readWeigh } from './read-weigh.ts';

type VerbToTheEnd = 'hold' | 'amend';

const readers: { readonly [V in Exclude<Verb, VerbToTheEnd>]: Reader } = {
  mix: readMix,
  weigh: readWeigh,
  stir: potReader('stir'),
  stop: potReader('stop'),
  filter: potReader('filter'),
  thick: potReader('thick'),
  gel: potReader('gel'),
  empty: readEmpty,
  part: readPart,
  coat: readCoat,
  dry: partsReader('dry'),
  cure: readCure,
  temp: readTemp,
  out: partsReader('out'),
  wet: filmReader('wet'),
  film: filmReader('film'),
  release: partsReader('release'),
  air: readAir,
  surface: readSurface,
  night: readNight,
  ok: bareReader('ok'),
  undo: bareReader('undo'),
  set: readSet,
};
const readersToTheEnd: { readonly [V in VerbToTheEnd]: ReaderToTheEnd } = { hold: readHold, amend: readAmend };

/** Takes nothing. */
function bareReader(verb: 'ok' | 'undo'): Reader {
  return (act) => {
    const gathered = gather(act);
    return isFault(gathered) ? gathered : { verb };
  };
}

export function readAct(verb: Verb, act: ActLine): ActRead | Fault {
  if (verb === 'hold' || verb === 'amend') return readersToTheEnd[verb](act);
  const doubt = hourOrTemperature(act);
  if (doubt !== undefined) return doubt;
  const manner = mannerOf(act.tokens, act.line, act.context, verb !== 'set');
  if (isFault(manner)) return manner;
  const hasQuotes = verb !== 'part' && manner.tokens.some((token) => token.kind === 'quoted');
  const tokens = hasQuotes ? manner.tokens.flatMap(withoutQuotes) : manner.tokens;
  const command = readers[verb](tokens === act.tokens ? act : { ...act, tokens });
  if (isFault(command)) return command;
  const { said, stance } = manner;
  return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
}
/** Only words of one's own need their quotes: “1201g” is a weight all the same. */
function withoutQuotes(token: Token): readonly Token[] {
  return token.kind === 'quoted' ? tokensAt(token.words, token.start + 1) : [token];
}
