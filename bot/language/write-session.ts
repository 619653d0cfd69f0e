// Spray sessions, trouble and their settings as the reader takes them back.

import type { CommandOf } from '../../core/commands.ts';
import type { Alarm, Qualification, SpraySetting } from '../../core/session/session-commands.ts';
import { writeName } from './people-typed.ts';
import { isoLocal } from './times/wall-clock.ts';
import { englishVerbs } from './tongues/english/verbs.ts';
import { written } from './write-quantities.ts';

type SessionVerb =
  | 'brief'
  | 'near'
  | 'ack'
  | 'fan'
  | 'supplied'
  | 'spray-on'
  | 'spray-off'
  | 'flush'
  | 'rags'
  | 'close';
type OtherVerb = Qualification | Alarm | 'near-miss' | 'bell';

export function writeSessionAct(command: CommandOf<SessionVerb | OtherVerb>, zone: string): readonly string[] {
  const verb = englishVerbs[command.verb].words[0] ?? command.verb;
  switch (command.verb) {
    case 'brief':
      return [verb, ...writeBrief(command, zone)];
    case 'near':
      return [verb, number(command.session), ...command.people.map(writeName), command.goes];
    case 'ack':
      return [verb, number(command.session), ...(command.people ?? []).map(writeName)];
    case 'fan': {
      const { running, faceMetresPerSecond: face } = command;
      return [verb, number(command.session), running ? 'on' : 'off', face === undefined ? '' : written(face, 'm/s')];
    }
    case 'supplied':
      return [verb, number(command.session), command.supplied ? 'yes' : 'no'];
    case 'spray-on':
      return [verb, number(command.session), command.place === undefined ? '' : `in ${command.place}`];
    case 'spray-off':
    case 'rags':
    case 'close':
      return [verb, number(command.session)];
    case 'flush': {
      const amount = command.litres === undefined ? '' : written(command.litres, 'L');
      return [verb, number(command.session), command.gear, command.solvent ?? '', amount];
    }
    case 'fit':
    case 'medical':
    case 'training':
      return [verb, writeName(command.person), command.until];
    case 'near-miss':
      return [verb, command.anonymous ? 'anonymous' : '', JSON.stringify(command.text)];
    case 'eyes':
    case 'spill':
    case 'fire':
    case 'down':
    case 'hot':
      return [
        verb,
        command.verb === 'hot' ? number(command.batch) : '',
        command.note === undefined ? '' : JSON.stringify(command.note),
      ];
    case 'bell':
      return [verb];
    default: {
      const never: never = command;
      return never;
    }
  }
}

function writeBrief(command: CommandOf<'brief'>, zone: string): readonly string[] {
  const { batch, startsAt, place, sprayers, stays, out, attendant, insideVessel, gramsPerHour } = command;
  const named = (label: string, people: readonly string[] | undefined) =>
    people === undefined || people.length === 0 ? [] : [label, ...people.map(writeName)];
  return [
    number(batch),
    startsAt === undefined ? '' : isoLocal(startsAt, zone),
    place === undefined ? '' : `in ${place}`,
    ...named('spray', sprayers),
    ...named('stays', stays),
    ...named('out', out),
    ...named('outside', attendant === undefined ? undefined : [attendant]),
    insideVessel === true ? 'vessel' : '',
    gramsPerHour === undefined ? '' : written(gramsPerHour, 'g'),
  ];
}

export function writeSpraySetting(setting: SpraySetting): readonly string[] {
  const name = `set ${setting.name}`;
  switch (setting.name) {
    case 'brief':
    case 'bell':
      return [name, setting.on ? 'on' : 'off'];
    case 'brief-ahead':
      return [name, written(setting.minutes, 'min')];
    case 'sprayers':
      return [name, ...(setting.people.length === 0 ? ['nobody'] : setting.people.map(writeName))];
    case 'booth': {
      const room = setting.cubicMetres === undefined ? '' : written(setting.cubicMetres, 'm3');
      return [name, setting.place, written(setting.faceSquareMetres, 'm2'), room];
    }
    case 'lel':
      return [name, written(setting.percent, '%')];
    case 'mixing':
      return [name, written(setting.factor, '')];
    case 'emergency':
      return [name, setting.field, JSON.stringify(setting.text)];
    case 'quiet':
      return [name, setting.fromHour === setting.toHour ? 'off' : `${setting.fromHour}-${setting.toHour}`];
    default: {
      const never: never = setting;
      return never;
    }
  }
}

const number = (value: number | undefined): string => (value === undefined ? '' : String(value));
