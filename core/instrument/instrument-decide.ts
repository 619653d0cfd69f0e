// An instrument is kept by its name, and its checks are told by whoever knows of them: what a check said has happened. What was
// read since the last good one is looked at anew by the rules of its day (core/records/holds-that-follow.ts).

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import type { EventBody } from '../history.ts';
import { crewStream, instrumentStream } from '../ids.ts';
import { instrumentName, instrumentNamed } from '../instruments.ts';
import { known } from '../known.ts';
import type { Shop } from '../shop.ts';

export function decideInstrument({ crew }: Shop, { command, at }: Said<CommandOf<'instrument'>>): Decision {
  const { due, retired } = command;
  const instrument = instrumentName(command.name);
  const of = command.kind ?? instrumentNamed(crew.instruments, instrument)?.kind;
  if (of === undefined) return unclear({ code: 'which-kind', instrument });
  return told(instrument, at, { type: 'InstrumentKept', instrument, of, ...known({ due, retired }) });
}

export function decideCalibrated({ crew }: Shop, { command, at }: Said<CommandOf<'calibrated'>>): Decision {
  const { result, next } = command;
  const instrument = instrumentName(command.name);
  if (instrumentNamed(crew.instruments, instrument) === undefined) {
    const kept = crew.instruments.map(({ name }) => name);
    return unclear({ code: 'no-such-instrument', instrument, kept, of: [] });
  }
  return told(instrument, at, { type: 'InstrumentChecked', instrument, result, ...known({ next }) });
}

const told = (instrument: string, happenedAt: Said['at'], body: EventBody): Decision =>
  accepted({ streams: [crewStream, instrumentStream(instrument)], happenedAt, body });
