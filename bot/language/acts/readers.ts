// One reader a verb. An act without a reader does not compile.

import type { Verb } from '../../../core/commands.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { sessionVerbs } from '../../../core/verbs/session-verbs.ts';
import { type Fault, isFault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { type ActLine, type ActRead, leftOver, type Reader, type ReaderToTheEnd } from './act-line.ts';
import { hourOrTemperature } from './hour-or-temperature.ts';
import { readAir, readNight, readSurface } from './read-air.ts';
import { alarmReader, qualificationReader, readNearMiss } from './read-alarms.ts';
import { readAmend } from './read-amend.ts';
import { readBrief } from './read-brief.ts';
import { canReader, readDiscard } from './read-can.ts';
import { readHandover, readOk, readShift, readSnooze, readTakeover } from './read-crew-acts.ts';
import { readAdhesion, readRub } from './read-film-tests.ts';
import { filmReader } from './read-films.ts';
import { readHold } from './read-hold.ts';
import { readMix } from './read-mix.ts';
import { readOpen } from './read-open.ts';
import { readPart } from './read-part.ts';
import { partsReader, readCoat, readCure, readDoor, readTemp } from './read-part-acts.ts';
import { potReader, readCatch, readEmpty } from './read-pot-acts.ts';
import { readPrep } from './read-prep.ts';
import { readAck, readFan, readFlush, readNear, readSprayOn, readSupplied, sessionReader } from './read-session.ts';
import { readSet } from './read-set.ts';
import { readUndo } from './read-undo.ts';
import { readUsed } from './read-used.ts';
import { readAdd, readWeigh } from './read-weigh.ts';
import { withManner, withoutQuotes } from './with-manner.ts';

type VerbToTheEnd = 'set' | 'hold' | 'amend' | 'open' | 'discard' | keyof typeof sessionVerbs;

/** What may be said round `rags 4`, in either language. */
const ragWords = [
  ...['can', 'filters', 'closed', 'rags', 'inside'],
  ...['filtros', 'cerrado', 'guardados', 'recogidos', 'su', 'tirados'],
];

const readers: { readonly [V in Exclude<Verb, VerbToTheEnd>]: Reader } = {
  mix: readMix,
  weigh: readWeigh,
  add: readAdd,
  lid: canReader('lid'),
  blanket: canReader('blanket'),
  check: canReader('check'),
  prestir: canReader('prestir'),
  stir: potReader('stir'),
  stop: potReader('stop'),
  cover: potReader('cover'),
  uncover: potReader('uncover'),
  filter: potReader('filter'),
  catch: readCatch,
  thick: potReader('thick'),
  gel: potReader('gel'),
  empty: readEmpty,
  judge: potReader('judge'),
  part: readPart,
  prep: readPrep,
  coat: readCoat,
  dry: partsReader('dry'),
  cure: readCure,
  temp: readTemp,
  door: readDoor,
  out: partsReader('out'),
  wet: filmReader('wet'),
  film: filmReader('film'),
  adhesion: readAdhesion,
  rub: readRub,
  release: partsReader('release'),
  air: readAir,
  surface: readSurface,
  night: readNight,
  ok: readOk,
  snooze: readSnooze,
  shift: readShift,
  handover: readHandover,
  takeover: readTakeover,
  undo: readUndo,
  used: readUsed,
};
const readersToTheEnd: { readonly [V in VerbToTheEnd]: ReaderToTheEnd } = {
  set: readSet,
  hold: readHold,
  amend: readAmend,
  open: readOpen,
  discard: readDiscard,
  brief: readBrief,
  near: withManner(readNear),
  ack: withManner(readAck),
  fan: withManner(readFan),
  supplied: withManner(readSupplied),
  'spray-on': withManner(readSprayOn),
  'spray-off': withManner(sessionReader('spray-off')),
  flush: withManner(readFlush),
  rags: withManner(sessionReader('rags', ragWords)),
  close: withManner(sessionReader('close', ['session', 'brief'])),
  fit: qualificationReader('fit'),
  medical: qualificationReader('medical'),
  training: qualificationReader('training'),
  'near-miss': readNearMiss,
  eyes: alarmReader('eyes'),
  spill: alarmReader('spill'),
  fire: alarmReader('fire'),
  down: alarmReader('down'),
  hot: alarmReader('hot'),
  bell: withManner((_, [stray]) => (stray === undefined ? { verb: 'bell' } : leftOver(stray))),
};

function isToTheEnd(verb: Verb): verb is VerbToTheEnd {
  return isOwnKey(readersToTheEnd, verb);
}

export function readAct(verb: Verb, act: ActLine): ActRead | Fault {
  if (isToTheEnd(verb)) return readersToTheEnd[verb](act);
  const doubt = hourOrTemperature(act);
  if (doubt !== undefined) return doubt;
  const manner = mannerOf(act.tokens, act.line, act.context);
  if (isFault(manner)) return manner;
  const hasQuotes = !holdsNames(verb) && manner.tokens.some((token) => token.kind === 'quoted');
  const tokens = hasQuotes ? manner.tokens.flatMap(withoutQuotes) : manner.tokens;
  const command = readers[verb](tokens === act.tokens ? act : { ...act, tokens });
  if (isFault(command)) return command;
  const { said, stance } = manner;
  return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
}
/** Of several words, in quotes. */
function holdsNames(verb: Verb): boolean {
  return verb === 'part' || verb === 'ok' || verb === 'snooze' || verb === 'handover';
}
