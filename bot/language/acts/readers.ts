// One reader a verb: an act is read off its row where it has none of its own.

import { ofEachVerb, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { ToldAs } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import type { ActLine, ActRead, Reader, ReaderToTheEnd } from './act-line.ts';
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

const ownReaders: Readonly<Partial<Record<Verb, Reader>>> = {
  mix: readMix,
  weigh: readWeigh,
  add: readAdd,
  part: readPart,
  prep: readPrep,
  cure: readCure,
  wet: filmReader('wet'),
  film: filmReader('film'),
  air: readAir,
  surface: readSurface,
  ok: readOk,
  shift: readShift,
  handover: readHandover,
  undo: readUndo,
  used: readUsed,
};
/** Of lines that hold a time or words of somebody's own. */
const readersToTheEnd: Readonly<Partial<Record<Verb, ReaderToTheEnd>>> = {
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
};

/** Names of several words, in quotes: else only words of one's own need theirs. */
const named: ReadonlySet<ToldAs> = new Set(['person', 'people', 'ring', 'own-way']);
const holdsNames = ofEachVerb((verb) => Object.values(verbRows[verb].fields).some(({ told }) => named.has(told)));

/** Times and leave come off before the act's own reader sees the line. */
function withoutManner(verb: Verb, reader: Reader): ReaderToTheEnd {
  return (act) => {
    const doubt = hourOrTemperature(act);
    if (doubt !== undefined) return doubt;
    const manner = mannerOf(act.tokens, act.line, act.context);
    if (isFailed(manner)) return manner;
    const hasQuotes = !holdsNames[verb] && manner.tokens.some((token) => token.kind === 'quoted');
    const tokens = hasQuotes
      ? manner.tokens.flatMap((token) => withoutQuotes(token, act.context.hearing))
      : manner.tokens;
    const apart = labelledApart(verb, tokens === act.tokens ? act : { ...act, tokens });
    if (isFailed(apart)) return apart;
    const read = reader(apart.act);
    if (isFailed(read)) return read;
    const command = apart.said.size === 0 ? read : commandOf(verb, { ...read, ...Object.fromEntries(apart.said) });
    const { said, stance } = manner;
    return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
  };
}

const readers = ofEachVerb(
  (verb): ReaderToTheEnd => readersToTheEnd[verb] ?? withoutManner(verb, ownReaders[verb] ?? fieldsReader(verb)),
);

export function readAct(verb: Verb, act: ActLine): ActRead | Fault {
  return readers[verb](act);
}
