// A tap's line as whoever reads it would type it: in their words, units and decimal sign, by the clock of today. The tap
// itself says the canonical one, to the last digit.

import { methods } from '../../core/methods.ts';
import { isOwnKey, ownValue } from '../../core/own-key.ts';
import { settingNames, settingRows } from '../../core/settings.ts';
import type { Figures } from './figures.ts';
import { figuresShown } from './line-figures-shown.ts';
import { actsJoint, linesApart } from './lines-apart.ts';
import { englishVerbs } from './tongues/english/verbs.ts';
import type { Typed } from './tongues/typed.ts';
import { isMetalWord } from './trade-words.ts';
import { vocabulary } from './vocabulary.ts';

export type LineShown = (line: string, figures: Figures) => string;

const pieces = /"(?:[^"\\]|\\.)*"|\S+/g;

/** Made once a tongue. */
export function linesShownIn(tongue: Typed): LineShown {
  const printed = firstSpellings(tongue);
  const { atHour, atOne } = tongue.times;
  const shown = (line: string, figures: Figures): string => {
    const here = ownValue(tongue.printedIn ?? {}, figures.profile.locale) ?? {};
    const all = asAPersonSays(inOneWord(line, tongue).match(pieces) ?? []);
    const [verb = ''] = all;
    const own = isOwnKey(vocabulary, verb) ? (tongue.offeredOn[verb] ?? {}) : {};
    const said = all.map((piece, i) => {
      const next = all[i + 1] ?? '';
      if (/^["{]/.test(piece) || isName(all, i, piece, all[i - 1] ?? '')) return piece;
      if (i === 0 && isOwnKey(vocabulary, verb)) return ownValue(here, verb) ?? tongue.verbs[verb].words[0] ?? verb;
      if (i === 1 && verb === 'set')
        return ownValue(here, piece) ?? printed.get(`set ${piece}`) ?? printed.get(piece) ?? piece;
      if (piece === 'at' && isInstant(next)) return (hourOf(next, figures) === 1 ? atOne : atHour)?.join(' ') ?? piece;
      if (isInstant(piece) && all[i - 1] === 'at') return figures.typed(piece);
      return ownValue(own, piece) ?? ownValue(here, piece) ?? printed.get(piece) ?? piece;
    });
    return figuresShown(said, figures).join(' ');
  };
  return (line, figures) => {
    const acts = linesApart(line);
    const areActs = acts.length > 1 && acts.every((act) => isOwnKey(vocabulary, act.split(' ', 1)[0] ?? ''));
    return areActs ? acts.map((act) => shown(act, figures)).join(actsJoint) : shown(line, figures);
  };
}

/** Without what only the tap knows: which entry is taken back though others rest on it, which bell is heard, and that what has its hour happened. */
function asAPersonSays(all: readonly string[]): readonly string[] {
  const [verb = ''] = all;
  if (verb === 'undo') return [verb];
  const hasHour = all.some((piece, i) => isInstant(piece) && all[i - 1] === 'at');
  return all.filter((piece) => !(piece === 'already' && hasHour) && !(isOfBells(verb) && /^[a-z]+\//.test(piece)));
}

const isOfBells = (verb: string): boolean => verb === 'ok' || verb === 'snooze';

/** `take over` by the name of its row, in whose words it is then told. */
function inOneWord(line: string, { verbs }: Typed): string {
  const name = verbs === englishVerbs ? undefined : ofTwoWords.get(line.split(' ', 2).join(' '));
  return name === undefined ? line : [name, ...line.split(' ').slice(2)].join(' ');
}

const ofTwoWords: ReadonlyMap<string, string> = new Map(
  Object.entries(englishVerbs).flatMap(([name, { words }]) =>
    words.filter((word) => word.includes(' ')).map((word) => [word, name] as const),
  ),
);

/** As it was given, though it be spelt like a word that the readers know. */
function isName([verb, setting = '']: readonly string[], i: number, piece: string, before: string): boolean {
  if (verb === 'set' && i > 1) {
    const kind = isOwnKey(settingRows, setting) ? settingRows[setting].kind : undefined;
    return kind === 'people' || (kind === 'roles' && i % 2 === 0);
  }
  return ['lot', 'serial', 'job', 'customer'].includes(before) || (before === 'metal' && !isMetalWord(piece));
}

const isInstant = (piece: string): boolean => /^\d{4}-\d\d-\d\dT/.test(piece);
const hourOf = (instant: string, figures: Figures): number => Number.parseInt(figures.typed(instant), 10);

/** Of each word that the readers know. What is offered is spelt with its accents. Made once a tongue. */
export function firstSpellings(tongue: Typed): ReadonlyMap<string, string> {
  const made = spellings.get(tongue) ?? spellingsOf(tongue);
  spellings.set(tongue, made);
  return made;
}
const spellings = new WeakMap<Typed, ReadonlyMap<string, string>>();

function spellingsOf({ verbs, terms, meanings, settings, methods: ways, offered }: Typed) {
  const rows: readonly (readonly [string, string | undefined])[] = [
    ...Object.values(vocabulary).map(
      ({ name }) => [name, verbs[name].words.find((word) => !word.includes(' '))] as const,
    ),
    ...Object.entries(meanings).map(([meaning, words]) => [meaning, words.split(' ')[0]] as const),
    ...Object.entries(terms).map(([concept, { typed }]) => [concept, typed.split(' ')[0]] as const),
    ...settingNames.map((name) => [`set ${name}`, settings[name].typed?.split(', ')[0]] as const),
    ...methods.map((method) => [method, ways[method].name] as const),
    ...Object.entries(offered),
  ];
  return new Map(rows.flatMap(([word, said]) => (said === undefined || said === '' ? [] : [[word, said] as const])));
}
