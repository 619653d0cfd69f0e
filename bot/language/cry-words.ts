// The words round a cry, of every tongue that the shop has: whoever needs help is heard, whatever is spoken here. A cry is short and
// stands among few words: who, where, how big, that help is wanted.

import { solvents } from '../../core/calc/solvents.ts';
import { keysOf, tableOf } from '../../core/own-key.ts';
import { type Alarm, alarmNamed } from '../../core/session/session-commands.ts';
import { englishCalm } from './tongues/english/calm.ts';
import { type CryWords, englishCries } from './tongues/english/cries.ts';
import type { Typed } from './tongues/typed.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VerbTable } from './verbs-of-tongues.ts';

type Sets = { readonly [Set in keyof CryWords]: ReadonlySet<string> };

/** Each set by its name, and what is made of them. */
export interface CryTable extends Sets {
  /** The verbs of the vocabulary that call. */
  readonly alarms: ReadonlyMap<string, Alarm>;
  /** What none of them says and cries all the same. */
  readonly alsoCries: ReadonlyMap<string, Alarm>;
  /** The first word of everything that may call: a line without any of them cries nothing. */
  readonly calling: ReadonlySet<string>;
  /** What was meant by a word as thumbs type it. */
  readonly meant: ReadonlyMap<string, string>;
  /** How a phrase of `kindled` begins. */
  readonly kindling: ReadonlySet<string>;
  readonly patterns: {
    readonly noDrill: RegExp;
    /** `fire extinguisher!! quick` is one shout. */
    readonly shoutedOn: RegExp;
    /** `hes down`. */
    readonly runTogether: RegExp;
    /** The whole line: elsewhere 112 is a number. */
    readonly dialled: RegExp;
    readonly blind: RegExp;
    /** It came into somebody, or hurts them. */
    readonly comesIn: RegExp;
    /** Of a thing, what said of somebody is a calamity: `hemos tirado la mezcla`. */
    readonly ofThings: RegExp;
    readonly gasps: RegExp;
    /** Somebody, or something, does not answer. */
    readonly noAnswer: RegExp;
    /** Of these, what only whoever needs somebody does. */
    readonly stirsNot: RegExp;
    /** What tells of whom or what, for certain or perhaps. */
    readonly needs: readonly { readonly is: 'certain' | 'open'; readonly alarm: Alarm; readonly pattern: RegExp }[];
  };
}

/** Where several words may stand for one. */
const phrases: ReadonlySet<keyof CryWords> = new Set([
  ...([
    'boiling',
    'calmPhrases',
    'dropped',
    'faints',
    'faintsAlone',
    'falling',
    'fallsOfWorkFarther',
    'heating',
    'kindled',
  ] as const),
  ...(['gasping', 'ofAnything', 'orders', 'spilledInJest'] as const),
]);

const noLetter = '[^\\p{L}\\p{N}_]';
/** With no letter on either side, of whatever script. */
const whole = (pattern: string): string => `(?<![\\p{L}\\p{N}_])(?:${pattern})(?![\\p{L}\\p{N}_])`;

export function cryTableOf(tongues: readonly Typed[], verbs: VerbTable): CryTable {
  const setOf = (name: keyof CryWords): ReadonlySet<string> =>
    new Set(
      tongues
        .flatMap(({ cries }) => cries[name].trim().split(phrases.has(name) ? /,\s*/ : /\s+/))
        .filter((word) => word !== ''),
    );
  /** Patterns and words of every tongue, one or the other. */
  const anyOf = (name: keyof CryWords): string => tongues.flatMap(({ cries }) => cries[name] || []).join('|');
  const told = (is: 'certain' | 'open', alarm: Alarm, name: keyof CryWords, liquids: Iterable<string>) => ({
    ...{ is, alarm },
    pattern: new RegExp(whole(anyOf(name).replaceAll('{}', `(?:${[...liquids].join('|')})`)), 'u'),
  });
  const sets = tableOf(keysOf({ ...englishCries, ...englishCalm }).map((name) => [name, setOf(name)] as const));
  const liquids = new Set([...Object.keys(solvents), ...sets.liquids]);
  const alarms = new Map(
    [...verbs].flatMap(([word, { row }]) => {
      const alarm = alarmNamed(row.name);
      return alarm === undefined ? [] : [[word, alarm] as const];
    }),
  );
  const alsoCries = new Map<string, Alarm>([
    ...[...sets.falling].map((word) => [word, 'down'] as const),
    ...[...sets.burningOf].map((word) => [word, 'fire'] as const),
    ...[...sets.boiling].map((word) => [word, 'hot'] as const),
    ...[...sets.gasping].map((word) => [word, 'breathless'] as const),
    ...[...sets.smoke].map((word) => [word, 'fire'] as const),
  ]);
  return {
    ...sets,
    liquids,
    alarms,
    alsoCries,
    calling: new Set(
      [...alarms.keys(), ...alsoCries.keys(), ...sets.dropped].map(
        (word) => withoutAccents(word).split(' ', 1)[0] ?? '',
      ),
    ),
    meant: new Map([...sets.spelt].map((pair) => [pair.replace(/=.*/, ''), pair.replace(/.*=/, '')])),
    kindling: new Set([...sets.kindled].map((phrase) => phrase.replace(/ .*/, ''))),
    patterns: {
      noDrill: new RegExp(whole(anyOf('noDrill')), 'gu'),
      shoutedOn: new RegExp(`!+\\s*(?=${whole([...sets.shoutedOn].join('|'))})`, 'gu'),
      runTogether: new RegExp(whole(`(${[...sets.runTogether].join('|')})s`), 'giu'),
      dialled: new RegExp(`^${noLetter}*(?:(?:${anyOf('dialling')}) )?(?:${anyOf('numbers')})${noLetter}*$`, 'u'),
      gasps: new RegExp(whole(anyOf('gasps')), 'u'),
      noAnswer: new RegExp(whole(anyOf('noAnswer')), 'u'),
      stirsNot: new RegExp(whole(anyOf('stirsNot')), 'u'),
      blind: new RegExp(whole(anyOf('blind')), 'u'),
      comesIn: new RegExp(whole(anyOf('comesIn')), 'u'),
      ofThings: new RegExp(whole(anyOf('ofThings')), 'gu'),
      needs: [
        told('certain', 'eyes', 'nowEyes', liquids),
        told('certain', 'emergency', 'nowEmergency', liquids),
        told('certain', 'spill', 'nowSpill', liquids),
        told('open', 'breathless', 'mayBreathless', liquids),
        told('open', 'emergency', 'mayEmergency', liquids),
        told('open', 'fire', 'mayFire', liquids),
        told('open', 'down', 'mayDown', liquids),
      ],
    },
  };
}
