// One reader a verb: an act is read off its row where it has none of its own.

import { ofEachVerb, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type FilmTestName, filmTestNames } from '../../../core/film-tests.ts';
import type { ToldAs } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { wordIn } from '../typed/token.ts';
import type { ActLine, ActRead, OwnReader, Reader, ReaderToTheEnd } from './act-line.ts';
import { freeTextFrom, withoutQuotes } from './free-text.ts';
import { hourOrTemperature } from './hour-or-temperature.ts';
import { labelledApart } from './labelled-fields.ts';
import { alarmReader, readNearMiss } from './read-alarms.ts';
import { readAmend } from './read-amend.ts';
import { readBrief } from './read-brief.ts';
import { readConcession } from './read-concession.ts';
import { commandOf, fieldsReader } from './read-fields.ts';
import { readCalibrated, readInstrument } from './read-instrument.ts';
import { readPart } from './read-part.ts';
import { readDiscard, readDisposed, readHold, readReturn, readSeeTo } from './read-reasoned.ts';
import { readRecall } from './read-recall.ts';
import { readRemind } from './read-remind.ts';
import { readSet } from './read-set.ts';
import { readFilm } from './read-spots.ts';
import { readUsed } from './read-used.ts';
import { readAdd, readDrawn, readWeigh } from './read-weigh.ts';
import { timesApart } from './times-apart.ts';

const ownReaders: Readonly<Partial<Record<Verb, OwnReader>>> = {
  weigh: readWeigh,
  drawn: readDrawn,
  add: readAdd,
  part: readPart,
  used: readUsed,
};
const readReceived: Reader = (act, labelled) => fieldsReader('received')(timesApart(act), labelled);
/** Of lines that hold a time or words of somebody's own. */
const readersToTheEnd: Readonly<Partial<Record<Verb, ReaderToTheEnd>>> = {
  set: readSet,
  hold: readHold,
  'see-to': readSeeTo,
  rework: readDisposed('rework'),
  scrap: readDisposed('scrap'),
  return: readReturn,
  concession: readConcession,
  amend: readAmend,
  discard: readDiscard,
  recall: readRecall('recall'),
  'recall-over': readRecall('recall-over'),
  brief: readBrief,
  'near-miss': readNearMiss,
  remind: readRemind,
  eyes: alarmReader('eyes'),
  spill: alarmReader('spill'),
  fire: alarmReader('fire'),
  down: alarmReader('down'),
  hot: alarmReader('hot'),
  'skin-burn': alarmReader('skin-burn'),
  breathless: alarmReader('breathless'),
  emergency: alarmReader('emergency'),
};

/** Names of several words, in quotes: else only words of one's own need theirs. */
const named: ReadonlySet<ToldAs> = new Set(['person', 'people', 'ring', 'own-way']);
const holdsNames = ofEachVerb((verb) => Object.values(verbRows[verb].fields).some(({ told }) => named.has(told)));

/** The last day of something to come: no time at which it was said. */
const holdsDay = ofEachVerb((verb) =>
  Object.values(verbRows[verb].fields).some(({ told, options }) => told === 'day' && options?.behind === undefined),
);

/** What is labelled, times and leave come off before the act's own reader sees the line. */
function withoutManner(verb: Verb, reader: Reader): ReaderToTheEnd {
  return (typed) => {
    const doubt = hourOrTemperature(typed);
    if (doubt !== undefined) return doubt;
    const apart = labelledApart(verb, typed);
    if (isFailed(apart)) return apart;
    const { act, said: labelled } = apart;
    const manner = mannerOf(act.tokens, act.line, act.context, !holdsDay[verb]);
    if (isFailed(manner)) return manner;
    const hasQuotes = !holdsNames[verb] && manner.tokens.some((token) => token.kind === 'quoted');
    const tokens = hasQuotes
      ? manner.tokens.flatMap((token) => withoutQuotes(token, act.context.hearing))
      : manner.tokens;
    const command = reader(tokens === act.tokens ? act : { ...act, tokens }, labelled);
    return isFailed(command) ? command : { command, ...manner.how };
  };
}

/** With what stood behind a word of its own. */
function withLabelled(reader: OwnReader): Reader {
  return (act, labelled) => {
    const read = reader(act);
    return isFailed(read) || Object.keys(labelled).length === 0 ? read : commandOf(read.verb, { ...read, ...labelled });
  };
}

type Retested = 'film' | 'adhesion' | 'rub' | FilmTestName;
const retested: readonly Retested[] = ['film', 'adhesion', 'rub', ...filmTestNames];
const isRead = (verb: Verb): verb is Retested => retested.some((each) => each === verb);

/** `film impeller-7 12 13 12um retest gauge was not zeroed`: the rest of the line is why. */
function withRetest(verb: Retested, reader: ReaderToTheEnd): ReaderToTheEnd {
  return (act) => {
    const at = act.tokens.findIndex((token) => wordIn(token) === 'retest');
    if (at < 0) return reader(act);
    const why = freeTextFrom(act, at + 1);
    if (isFailed(why)) return why;
    if (why.words === '') return { failed: 'incomplete', needs: ['retest'] };
    const read = reader({ ...act, tokens: act.tokens.slice(0, at) });
    return isFailed(read)
      ? read
      : { ...read, command: commandOf(verb, { ...read.command, retest: why.words }), ...why.how };
  };
}

const readers = ofEachVerb((verb): ReaderToTheEnd => {
  const own = ownReaders[verb];
  if (isRead(verb)) return withRetest(verb, withoutManner(verb, verb === 'film' ? readFilm : fieldsReader(verb)));
  if (verb === 'received') return withoutManner(verb, readReceived);
  if (verb === 'instrument') return withoutManner(verb, readInstrument);
  if (verb === 'calibrated') return withoutManner(verb, readCalibrated);
  return readersToTheEnd[verb] ?? withoutManner(verb, own === undefined ? fieldsReader(verb) : withLabelled(own));
});

export function readAct(verb: Verb, act: ActLine): ActRead | Fault {
  return readers[verb](act);
}
