// One reader a verb. An act without a reader does not compile.

import { ofEachVerb, type Verb, verbRows } from '../../../core/commands.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { sessionVerbs } from '../../../core/verbs/session-verbs.ts';
import type { ToldAs } from '../../../core/verbs/slot.ts';
import { type Fault, isFault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { type ActLine, type ActRead, leftOver, type Reader, type ReaderToTheEnd } from './act-line.ts';
import { hourOrTemperature } from './hour-or-temperature.ts';
import { labelledApart } from './labelled-figures.ts';
import { readAir, readSurface } from './read-air.ts';
import { alarmReader, qualificationReader, readNearMiss } from './read-alarms.ts';
import { readAmend } from './read-amend.ts';
import { readBrief } from './read-brief.ts';
import { readHandover, readOk, readShift } from './read-crew-acts.ts';
import { readCure } from './read-cure.ts';
import { readDiscard } from './read-discard.ts';
import { commandOf, fieldsReader } from './read-fields.ts';
import { readAdhesion } from './read-film-tests.ts';
import { filmReader } from './read-films.ts';
import { readHold } from './read-hold.ts';
import { readMix } from './read-mix.ts';
import { readOpen } from './read-open.ts';
import { readPart } from './read-part.ts';
import { readPrep } from './read-prep.ts';
import { readFan, readFlush, readSprayOn } from './read-session.ts';
import { readSet } from './read-set.ts';
import { readUndo } from './read-undo.ts';
import { readUsed } from './read-used.ts';
import { readAdd, readWeigh } from './read-weigh.ts';
import { withManner, withoutQuotes } from './with-manner.ts';

type VerbToTheEnd =
  | ('set' | 'hold' | 'amend' | 'open' | 'discard')
  | Exclude<keyof typeof sessionVerbs, 'near' | 'ack' | 'supplied' | 'spray-off' | 'rags' | 'close'>;

const readers: { readonly [V in Exclude<Verb, VerbToTheEnd>]: Reader } = {
  mix: readMix,
  weigh: readWeigh,
  add: readAdd,
  lid: fieldsReader('lid'),
  blanket: fieldsReader('blanket'),
  check: fieldsReader('check'),
  prestir: fieldsReader('prestir'),
  stir: fieldsReader('stir'),
  stop: fieldsReader('stop'),
  cover: fieldsReader('cover'),
  uncover: fieldsReader('uncover'),
  filter: fieldsReader('filter'),
  catch: fieldsReader('catch'),
  thick: fieldsReader('thick'),
  gel: fieldsReader('gel'),
  empty: fieldsReader('empty'),
  judge: fieldsReader('judge'),
  part: readPart,
  prep: readPrep,
  coat: fieldsReader('coat'),
  dry: fieldsReader('dry'),
  cure: readCure,
  temp: fieldsReader('temp'),
  door: fieldsReader('door'),
  out: fieldsReader('out'),
  wet: filmReader('wet'),
  film: filmReader('film'),
  adhesion: readAdhesion,
  rub: fieldsReader('rub'),
  release: fieldsReader('release'),
  air: readAir,
  surface: readSurface,
  night: fieldsReader('night'),
  ok: readOk,
  snooze: fieldsReader('snooze'),
  shift: readShift,
  handover: readHandover,
  takeover: fieldsReader('takeover'),
  undo: readUndo,
  used: readUsed,
  near: fieldsReader('near'),
  ack: fieldsReader('ack'),
  supplied: fieldsReader('supplied'),
  'spray-off': fieldsReader('spray-off'),
  rags: fieldsReader('rags'),
  close: fieldsReader('close'),
};
const readersToTheEnd: { readonly [V in VerbToTheEnd]: ReaderToTheEnd } = {
  set: readSet,
  hold: readHold,
  amend: readAmend,
  open: readOpen,
  discard: readDiscard,
  brief: readBrief,
  fan: withManner(readFan),
  'spray-on': withManner(readSprayOn),
  flush: withManner(readFlush),
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
  const hasQuotes = !holdsNames[verb] && manner.tokens.some((token) => token.kind === 'quoted');
  const tokens = hasQuotes
    ? manner.tokens.flatMap((token) => withoutQuotes(token, act.context.hearing))
    : manner.tokens;
  const apart = labelledApart(verb, tokens === act.tokens ? act : { ...act, tokens });
  if (isFault(apart)) return apart;
  const read = readers[verb](apart.act);
  if (isFault(read)) return read;
  const command = apart.said.size === 0 ? read : commandOf(verb, new Map([...Object.entries(read), ...apart.said]));
  const { said, stance } = manner;
  return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
}

/** Names of several words, in quotes: else only words of one's own need theirs. */
const named: ReadonlySet<ToldAs> = new Set(['person', 'people', 'ring', 'own-way']);
const holdsNames = ofEachVerb((verb) => Object.values(verbRows[verb].fields).some(({ told }) => named.has(told)));
