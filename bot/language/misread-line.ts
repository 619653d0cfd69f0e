// What a line came to, and what one that did not read is answered with: where the reading stopped, what is needed, an example,
// and lines that may have been meant. Each is tried on the reader before it is offered.

import { gases } from '../../core/calc/monitor-limits.ts';
import type { Question } from '../../core/commands.ts';
import { known } from '../../core/known.ts';
import { type Alarm, alarmNamed } from '../../core/session/session-commands.ts';
import { type SettingName, settingRows } from '../../core/settings.ts';
import type { ActRead } from './acts/act-line.ts';
import { slotsByUnit } from './acts/slots-by-unit.ts';
import { criedWords } from './cry.ts';
import { isWarned } from './cry-warned.ts';
import type { Hearing } from './hearing.ts';
import { fieldFor } from './line-fields.ts';
import { looksLikePart } from './names-typed.ts';
import { alarmsWanted } from './need.ts';
import { ownUnits, ownUnitsFirst } from './own-units.ts';
import type { Fault, LineContext, Misread, Need, Reading } from './reading.ts';
import { exampleOfSetting, unitsOfSetting } from './setting-units.ts';
import { slots } from './slots.ts';
import { inTypedLanguage } from './suggest-in-typed-language.ts';
import { isGrave, mayBeAlarm, nearest, nearestVerbs, thoseThatRead } from './suggestions.ts';
import { notNames, places as usualPlaces } from './tongues/english/line-words.ts';
import { type Token, wordIn } from './typed/token.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbNamed, verbOfWord } from './verbs-typed.ts';
import type { VocabularyName } from './vocabulary.ts';

export interface Misunderstood {
  readonly failed: Fault;
  readonly line: string;
  readonly verb?: VerbNamed;
}

/** `reads` tries a line; what does not read is not offered. */
export function misreadOf(
  { failed: fault, line, verb }: Misunderstood,
  context: LineContext,
  reads: (line: string) => boolean,
): Misread {
  const { token } = fault;
  const near = verb ?? (token === undefined ? undefined : nearestVerbs(token.text, context.hearing)[0]);
  const needed = neededIn(line, verb?.row.name, context);
  // `help me` is answered with what can be cried, and with no act.
  const shown = near?.row.name === 'help' ? (needed[0] ?? 'help') : near?.row.name;
  const name: VocabularyName = shown ?? needed[0] ?? 'mix';
  const isNeed = fault.failed === 'which-cry';
  const likely = likelyLines({ failed: fault, line, ...known({ verb }) }, context);
  const offered = isNeed ? likely : fault.failed === 'unknown-verb' ? [...needed, ...likely] : [...likely, ...needed];
  const tries = eachAlarmOnce(inTypedLanguage(line, near, offered, context.hearing), context.hearing);
  // Which of them it is nobody knows: none is left out.
  const isPaste = line.length > longestOffered;
  const suggestions = thoseThatRead(
    isPaste ? tries.filter((each) => alarmOf(each, context.hearing)) : tries,
    reads,
    isNeed ? tries.length : undefined,
  );
  const [own] = inTypedLanguage(line, near, fault.example === undefined ? [] : [fault.example], context.hearing);
  const example = own ?? (fault.setting && exampleOfSetting(fault.setting, context));
  const calls = suggestions.flatMap((each) => {
    const alarm = alarmOf(each, context.hearing);
    return alarm === undefined ? [] : [[each, alarm] as const];
  });
  const calms = suggestions.find((each) => verbNamed(each, context.hearing)?.row.name === 'no-alarm');
  const quoted = fault.failed === 'unknown-verb' && suggestions.length === 0 ? phraseFrom(line, token) : token;
  return {
    code: fault.failed,
    ...(near !== undefined && { verb: near.row.name }),
    token: quoted?.text ?? '',
    from: quoted?.start ?? line.length,
    to: quoted?.end ?? line.length,
    needs: [
      ...(fault.needs ?? []).map((slot) => ({ slot, units: ownUnits(slots[slot].units, context.units) })),
      ...(fault.setting === undefined ? [] : [settingNeeded(fault.setting, context)]),
    ],
    couldBe: fault.couldBe ?? [],
    ...(fault.limits !== undefined && { limits: fault.limits }),
    exampleOf: name,
    ...(example !== undefined && { example }),
    suggestions,
    ...(calls.length > 0 && { calls: Object.fromEntries(calls) }),
    ...(calms !== undefined && { calms }),
    ...known({ asks: askedBy(fault, line, context) }),
  };
}

/** The lines that it may have been, whether or not they read, the shop's own units first. */
export function likelyLines({ failed: fault, line, verb }: Misunderstood, context: LineContext): readonly string[] {
  const usual = fault.tries ?? usualTries(fault, line, verb, context);
  return ownUnitsFirst(
    usual.map((each) => each.replace(/[ ?]+$/, '')),
    context.units,
  );
}

/** Whether an alarm may be among what such a line is answered with. */
export function offersAlarm(unread: Misunderstood, context: LineContext): boolean {
  const { failed: fault, line, verb } = unread;
  if (neededIn(line, verb?.row.name, context).length > 0) return true;
  const isSlip = fault.failed === 'unknown-verb' && fault.tries === undefined && fault.token?.start === 0;
  const slip = fault.token?.text ?? '';
  if (isSlip) return mayBeAlarm(lettersOf(slip) ?? slip, context.hearing);
  return likelyLines(unread, context).some((each) => alarmOf(each, context.hearing) !== undefined);
}

/** `coat impeller-7`, `temp impeller-7`: what alone answers it stands behind the line. */
function askedBy({ failed: code, token, needs = [] }: Fault, line: string, { units }: LineContext): string | undefined {
  const lacking = needs.map((slot) => ({ slot, unit: ownUnits(slots[slot].units, units)[0] ?? '' }));
  const isOne = lacking.length === 1 || (lacking.length > 1 && lacking.every(({ unit }) => unit !== ''));
  if (code !== 'incomplete' || token !== undefined || !isOne) return undefined;
  return [line, ...lacking.map(({ slot, unit }) => fieldFor(slot, unit))].join(' ');
}

/** Nothing like a verb begins it: of a sentence no single word is what was not understood. */
function phraseFrom(line: string, token: Fault['token']): Fault['token'] {
  const phrase = line.slice(token?.start ?? line.length).replace(/[ .!?]+$/, '');
  if (token === undefined || phrase === '' || phrase.length > longestPhrase || !/^[\p{L}' ,-]+$/u.test(phrase))
    return token;
  return { text: phrase, start: token.start, end: token.start + phrase.length };
}

const longestPhrase = 80;
/** Of a longer line nobody would tap the whole again; what calls is offered all the same. */
const longestOffered = 300;

function settingNeeded(setting: SettingName, { hearing, units }: LineContext): Need {
  const languages = settingRows[setting].kind === 'language' ? [...new Set(hearing.languages.values())] : [];
  const choices = languages.length === 0 ? {} : { choices: languages };
  return { slot: 'setting', units: ownUnits(unitsOfSetting(setting), units), setting, ...choices };
}

const alarmOf = (line: string, hearing: Hearing) => alarmNamed(verbNamed(line, hearing)?.row.name);

/** `ojos` and `eyes` would do the same. */
function eachAlarmOnce(lines: readonly string[], hearing: Hearing): readonly string[] {
  const called = lines.map((line) => alarmOf(line, hearing));
  return lines.filter((_, i) => called[i] === undefined || called.indexOf(called[i]) === i);
}

/** In their lines an alarm is only spoken of. */
export const aboutAlarms: ReadonlySet<VocabularyName> = new Set(['set', 'help', 'find', 'near-miss']);

/** `se cayó en los ojos`: whoever needs help does not begin with the word for it. `typed`: the verb that was. */
export function neededIn(line: string, typed: VocabularyName | undefined, { hearing }: LineContext): readonly Alarm[] {
  // `fijar emergencia`, also where nobody speaks Spanish.
  if (typed === undefined && verbNamed(line.split(' ', 1)[0] ?? '', hearing.every)?.row.name === 'set') return [];
  if (typed === undefined || !aboutAlarms.has(typed))
    return [...alarmsIn(withoutThings(line, hearing), hearing), ...alarmsWanted(line, hearing.cries)];
  // `help me`, `accidente`; a setting of the emergency number needs nobody.
  return typed === 'help' || typed === 'near-miss' ? alarmsWanted(line, hearing.cries) : [];
}

/** `after my smoke` is a break, `ojos de pez` a fault of a film; `..., ojo Lia` warns. */
function withoutThings(line: string, { cries }: Hearing): string {
  const things = withoutAccents(line.toLowerCase()).replace(cries.patterns.ofThings, ' ');
  if (!isWarned(criedWords(line, cries), cries)) return things;
  return things.replace(/\p{L}+/gu, (word) => (cries.warns.has(word) ? ' ' : word));
}

function alarmsIn(line: string, hearing: Hearing): readonly Alarm[] {
  return tokenize(line, hearing).flatMap((token) => {
    const alarm = token.kind === 'word' ? alarmNamed(verbOfWord(token, hearing)?.row.name) : undefined;
    return alarm === undefined || (alarm === 'down' && isPutDown(line.slice(0, token.start), hearing)) ? [] : [alarm];
  });
}

/** `turn that radio down`, `the gun is down`: what goes down is a thing. */
function isPutDown(before: string, { cries }: Hearing): boolean {
  const said = criedWords(before, cries).toReversed();
  const who = said.find((word) => !cries.articles.has(word) && !cries.is.has(word) && !cries.lying.has(word)) ?? '';
  const isThing = [cries.everyday, cries.things, cries.pots, cries.liquids].some((set) => set.has(who));
  return isThing || said.slice(0, farthestPut).some((word) => cries.putting.has(word));
}

/** Words between `turn` and `down`. */
const farthestPut = 4;

/** Where the reader names no lines of its own: each unit that would do; a time to come as yesterday's; a near word. */
function usualTries(
  { failed: code, token, needs: deps, couldBe }: Fault,
  line: string,
  verb: VerbNamed | undefined,
  context: LineContext,
): readonly string[] {
  if (token === undefined) return [];
  const instead = (text: string): string => line.slice(0, token.start) + text + line.slice(token.end);
  if (code === 'unit-missing') {
    return (deps ?? []).flatMap((slot) => slots[slot].units.map((unit) => instead(`${token.text}${unit}`)));
  }
  if (code === 'impossible' || code === 'ambiguous-time') return (couldBe ?? []).map(instead);
  if (code === 'in-the-future') return [instead(`${token.text} yesterday`)];
  if (code === 'unknown-verb') return verbTries(line, token, context.hearing);
  if (code !== 'left-over' || token.start === 0) return [];
  const word = token.text.toLowerCase();
  // `lel 12% booth because of a leak`: what was read matters more than the words behind it.
  if (gases.some((gas) => gas === verb?.row.name)) return [readingAlone(line, context)];
  // `not` is one letter from `now`, and the opposite.
  if (notNames.has(word)) return [];
  const [, figure, unit = ''] = /^(\d+[.,]?\d*)(\p{L}{2,4})$/u.exec(word) ?? [];
  if (figure !== undefined) return unitsLike(unit, verb).map((each) => instead(`${figure}${each}`));
  const wordsOfLines = ['already', 'permit', 'oven', 'room', 'yesterday', 'ago', ...context.parts, ...context.places];
  const verbs = nearestVerbs(word, context.hearing).filter((near) => !isGrave(near));
  return [...nearest(word, wordsOfLines), ...verbs.map(({ printed }) => printed)].map(instead);
}

/** As far as its last figure or place. */
function readingAlone(line: string, { hearing, places }: LineContext): string {
  const isPlace = (word: string): boolean => usualPlaces.has(word) || places.some((place) => place === word);
  const last = tokenize(line, hearing).findLast(
    (token) => token.kind !== 'word' || /\d/.test(token.text) || isPlace(wordIn(token)),
  );
  return line.slice(0, last?.end ?? line.length);
}

/** `60uwn`: the units of what the act takes that begin as the slip does. */
function unitsLike(slip: string, verb: VerbNamed | undefined): readonly string[] {
  const takes = verb === undefined ? [] : slotsByUnit(verb.row);
  const units = new Set(takes.flatMap((slot) => slots[slot].units));
  return [...units].filter((unit) => unit.toLowerCase().startsWith(slip.slice(0, 1)));
}

export function unknownVerb(tokens: readonly Token[], index: number): Fault {
  const token = tokens[index];
  return { failed: 'unknown-verb', needs: ['verb'], ...known({ token }) };
}

/** The digits of `weigj1` are no part of the slip. */
const lettersOf = (text: string): string | undefined => /^[a-z]+(?=\d)/i.exec(text)?.[0];

/** A verb near the first word, or the one that stands later in the line. */
function verbTries(line: string, token: NonNullable<Fault['token']>, hearing: Hearing): readonly string[] {
  const before = line.slice(0, token.start);
  const after = line.slice(token.end);
  const letters = lettersOf(token.text);
  const slip = letters ?? token.text;
  const rest = letters === undefined ? after : ` ${token.text.slice(letters.length)}${after}`;
  const tokens = tokenize(line, hearing);
  const first = tokens.find(({ start }) => start === token.start);
  const later = tokens.find(
    (each) => each.start > token.start && each.kind === 'word' && verbOfWord(each, hearing) !== undefined,
  );
  const tries = nearestVerbs(slip, hearing)
    // `casi seca impulsor-7` is not yet dry; one tap would tell a supervisor of a near miss.
    .filter(({ row }) => !(later !== undefined && row.name === 'near-miss'))
    .map((verb) => before + verb.printed + rest);
  // `impeller-7 dry`, `1 stir`: the verb stands elsewhere.
  if (later !== undefined && (first?.kind !== 'word' || first.word === 'can' || looksLikePart(first.word))) {
    const others = `${line.slice(token.start, later.start).trim()} ${line.slice(later.end).trim()}`.trim();
    tries.push(`${before}${later.text.toLowerCase()} ${others}`);
  }
  if (first?.kind !== 'word')
    tries.push(`mix ${line}`, `air ${line}`, `air ${line.replace(/^(\d\d) (\d\d)$/, '$1C $2%')}`);
  return tries;
}

/** Nobody types more with a thumb; a paste is no act. */
export const longestLine = 2_000;

export function tooLong(text: string): Extract<Reading, { kind: 'misread' }> {
  const line = text.slice(0, longestLine + 20);
  const token = line.slice(longestLine);
  const misread: Misread = {
    code: 'left-over',
    token,
    from: longestLine,
    to: longestLine + token.length,
    needs: [],
    couldBe: [],
    limits: { lowest: 0, highest: longestLine, unit: '' },
    exampleOf: 'mix',
    suggestions: [],
  };
  return { kind: 'misread', misread, line };
}

export type Read =
  | { readonly act: ActRead; readonly line: string }
  | { readonly question: Question; readonly line: string }
  | Misunderstood;
