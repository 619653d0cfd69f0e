// What is set: `set air-limit 3h`, `set quiet 22-6`, `set role kari lead`. Which setting is named, and its value as the kind
// of its row is typed.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { SettingKind, SettingValues } from '../../../core/setting-kinds.ts';
import { Setting, type SettingName, settingNames, settingRows } from '../../../core/settings.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { nearest } from '../suggestions.ts';
import { mannerOf } from '../time-and-permission.ts';
import { fillers } from '../tongues/english/line-words.ts';
import type { Token } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { type ActLine, type ActRead, lineWith } from './act-line.ts';
import { withoutQuotes } from './free-text.ts';
import { readDayLimit } from './read-day-limit.ts';
import { readEmergency } from './read-emergency.ts';
import { readJobLimits } from './read-job-limits.ts';
import { readLastDay } from './read-last-day.ts';
import { readScale } from './read-scale.ts';
import {
  readDuration,
  readFactor,
  readGasFlow,
  readHour,
  readHours,
  readPercent,
  readQuota,
  readRate,
} from './setting-figures.ts';
import type { ValueSaid } from './setting-said.ts';
import {
  readBooth,
  readCrewName,
  readLanguage,
  readLaw,
  readPeople,
  readPlaceSwitch,
  readRings,
  readRoles,
  readSheetName,
  readSwitch,
  readUnits,
  readZone,
} from './setting-words.ts';

/** Whoever's own words it ends in, is read to the end of the line. */
type PlainKind = Exclude<SettingKind, 'emergency'>;

const readers: { readonly [Kind in PlainKind]: (said: ValueSaid) => SettingValues[Kind] | Fault } = {
  sheet: readSheetName,
  duration: readDuration,
  hour: readHour,
  hours: readHours,
  switch: readSwitch,
  'place-switch': readPlaceSwitch,
  percent: readPercent,
  factor: readFactor,
  rate: readRate,
  'gas-flow': readGasFlow,
  'last-day': readLastDay,
  quota: readQuota,
  law: readLaw,
  'day-limit': readDayLimit,
  'crew-name': readCrewName,
  zone: readZone,
  language: readLanguage,
  units: readUnits,
  rings: readRings,
  people: readPeople,
  roles: readRoles,
  booth: readBooth,
  scale: readScale,
  'job-limits': readJobLimits,
};

/** Names may stand in quotes; anything else is what it is without them. */
const ofNames: ReadonlySet<SettingKind> = new Set<SettingKind>([
  'crew-name',
  'people',
  'roles',
  'booth',
  'scale',
  'job-limits',
]);

export function readSet(act: ActLine): ActRead | Fault {
  const named = settingOn(act, act.tokens);
  if (named?.name === 'emergency') return readEmergency(act, named.rest);
  const manner = mannerOf(act.tokens, act.line, act.context, false);
  if (isFailed(manner)) return manner;
  const command = readSetting(act, manner.tokens);
  return isFailed(command) ? command : { command, ...manner.how };
}

/** `job 88 asks dust 2`: the verb itself names it. */
function settingOn({ verb, context }: ActLine, tokens: readonly Token[]): SettingNamed | undefined {
  return verb.setting === undefined ? settingNamed(tokens, context.hearing) : { name: verb.setting, rest: tokens };
}

function readSetting(act: ActLine, tokens: readonly Token[]): CommandOf<'set'> | Fault {
  const { line, context } = act;
  const [first] = tokens;
  const named = settingOn(act, tokens);
  if (first === undefined) return { failed: 'incomplete', needs: [named === undefined ? 'setting' : 'job'] };
  if (named === undefined || named.name === 'emergency') {
    const likely = settingNames.filter((name) => name.startsWith(`${first.text.toLowerCase()}-`));
    const tries = [...likely, ...nearest(first.text.toLowerCase(), settingNames)];
    const lines = tries.map((name) => lineWith(line, first, name));
    return { failed: 'left-over', token: first, needs: ['setting'], tries: lines };
  }
  const { name, rest } = named;
  const { kind } = settingRows[name];
  const plain = ofNames.has(kind) ? rest : rest.flatMap((token) => withoutQuotes(token, context.hearing));
  const value = readers[kind]({ name, line, context, rest, values: plain.filter(isValue(kind)) });
  return isFailed(value) ? value : { verb: 'set', setting: Setting.parse({ name, ...value }) };
}

/** Without the words that only round a sentence off; `on` is a value, and so is `en`, the language. */
const isValue =
  (kind: SettingKind) =>
  (token: Token): boolean => {
    if (token.kind !== 'word' || token.word === 'on') return true;
    return kind === 'language' ? token.word !== 'to' && token.word !== 'at' : !fillers.has(token.word);
  };

interface SettingNamed {
  readonly name: SettingName;
  readonly rest: readonly Token[];
}

/** `límite del aire 3h`: the first words, else the first one. `teléfono 112`: the shop's numbers, without the word before. */
function settingNamed(tokens: readonly Token[], { settings }: Hearing): SettingNamed | undefined {
  const wordAt = (index: number): string => {
    const token = tokens[index];
    return token?.kind === 'word' ? withoutAccents(token.word) : '';
  };
  const first = wordAt(0);
  const next = wordAt(1) === 'of' ? (wordAt(2) === 'the' ? 3 : 2) : 1;
  const joined = settings.get(`${first} ${wordAt(next)}`);
  if (joined !== undefined) return { name: joined, rest: tokens.slice(next + 1) };
  if (first === 'call') return { name: 'emergency', rest: tokens };
  const name = isOwnKey(settingRows, first) ? first : settings.get(first);
  return name === undefined ? undefined : { name, rest: tokens.slice(1) };
}
