// Where a cry meets the reading of a line. What does not read as anything and cries out calls at once, wherever its word
// stands (`kari is down`); what begins with such a word and does not cry out calls nobody, and is asked about.

import { type Failed, isFailed } from '../../core/failed.ts';
import { type HeatSign, heatSigns } from '../../core/heat-care.ts';
import type { PlaceName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { type Alarm, alarmNamed } from '../../core/session/session-commands.ts';
import { criedWords, criesIn } from './cry.ts';
import { criedBehind } from './cry-behind.ts';
import type { Hearing } from './hearing.ts';
import { aboutAlarms, neededIn, type Read, unknownVerb } from './misread-line.ts';
import { needIn } from './need.ts';
import type { Need } from './no-answer.ts';
import { reactingIn } from './reacting.ts';
import type { Fault, LineContext } from './reading.ts';
import { termNamed } from './terms-asked.ts';
import { mannerOf } from './time-and-permission.ts';
import { isPlaceRoot } from './trade-words.ts';
import { withoutOpening } from './typed/clean-line.ts';
import type { Token } from './typed/token.ts';
import { tokenize } from './typed/tokens.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbNamed } from './verbs-typed.ts';

/** `fire extinguisher checked`; not `fire`, `spill at 9:50`, nor what a tap wrote in quotes. */
export function isOnlySpokenOf(
  { row }: VerbNamed,
  line: string,
  first: Token,
  after: readonly Token[],
  context: LineContext,
): boolean {
  const alarm = alarmNamed(row.name);
  // `hot 1 permit "why?"`: a number after it is the pot.
  const own = alarm === 'hot' && after[0]?.kind === 'number' ? after.slice(1) : after;
  if (alarm === undefined || own[0]?.kind === 'quoted') return false;
  const manner = mannerOf(own, line, context);
  const { onlyOfLiquid, saysLittle, warns } = context.hearing.cries;
  const word = first.text.toLowerCase();
  if (!isFailed(manner) && manner.tokens.length === 0)
    return (
      onlyOfLiquid.has(word) ||
      (warns.has(word) && own.length === 0) ||
      (saysLittle.has(word) && own.length === 0 && criedWords(line, context.hearing.cries).length === 1)
    );
  return !criesIn(line.slice(first.start), context).includes(alarm);
}

export const onlySpokenOf = (verb: VerbNamed, token: Token): Fault => ({
  failed: 'no-cry',
  token,
  tries: [verb.printed],
});

/** The reading as it is, or the alarm that a line cries out which nothing else reads, or what it may cry out. */
export function orCried(read: Read, line: string, typed: string, context: LineContext): Read {
  if ('act' in read) return withNamed(read, line, context);
  if ('question' in read && read.question.ask === 'why' && read.question.about !== undefined) {
    // `air against fire` is a figure's name.
    const isNamed = termNamed(read.question.about, context.hearing) !== undefined;
    return isNamed ? read : askedOrCried(read, line, typed, context);
  }
  const isAsk = 'question' in read && read.question.ask === 'help';
  const verb = isFailed(read) ? read.verb?.row.name : undefined;
  const isAbout = verb !== undefined && verb !== 'help' && aboutAlarms.has(verb);
  if (!(isAsk || isFailed(read)) || isAbout) return read;
  const need = needIn(typed, context);
  const saysTooLittle = need?.is === 'bare' && need.likely.includes('hot');
  const [alarm]: readonly Alarm[] = saysTooLittle ? [] : criesIn(line, context);
  if (alarm !== undefined) return withNamed({ act: { command: { verb: alarm, note: line } }, line }, line, context);
  const reacting = isFailed(read) ? reactingIn(line, context) : undefined;
  if (reacting?.is === 'bare') return { ...whichCry(line, read, ['hot'], context.hearing), line };
  if (reacting !== undefined) {
    const { batch } = reacting;
    return withNamed({ act: { command: { verb: 'hot', note: line, ...known({ batch }) } }, line }, line, context);
  }
  return behindAct(read, line, typed, context) ?? inNeed(read, need, { line, typed }, context);
}

/** `lel 0 fire in booth!`: whatever stands before it. */
function behindAct(read: Read, line: string, typed: string, context: LineContext): Read | undefined {
  const { every } = context.hearing;
  const [first] = tokenize(line, every);
  const named = first && verbNamed(first.text.toLowerCase(), every)?.row.name;
  if (!isFailed(read) || read.failed.failed === 'no-cry' || (named !== undefined && aboutAlarms.has(named)))
    return undefined;
  const cried = criedBehind(withoutOpening(typed), read.failed.token?.text, context);
  if (cried === undefined) return undefined;
  if (cried.is === 'asked') return { ...whichCry(line, read, cried.likely, context.hearing), line };
  return withNamed({ act: { command: { verb: cried.alarm, note: line } }, line }, line, context);
}

/** `why is everybody down`: with a word of need in it, it is heard as if nobody had asked. */
function askedOrCried(read: Read, line: string, typed: string, context: LineContext): Read {
  const unread = { failed: unknownVerb(tokenize(line, context.hearing), 0), line };
  const cried = orCried(unread, line, typed, context);
  return cried === unread && neededIn(line, undefined, context).length === 0 ? read : cried;
}

function inNeed(
  read: Read,
  need: Need | undefined,
  { line, typed }: { readonly line: string; readonly typed: string },
  context: LineContext,
): Read {
  if (need === undefined || 'act' in read) return read;
  const isFar = isFailed(read) && read.failed.failed !== 'unknown-verb' && read.failed.failed !== 'no-cry';
  if (isFar && need.is === 'open') return { ...whichCry(line, read, [need.alarm], context.hearing), line };
  if (isFar && need.is !== 'certain') return read;
  // `help` and `ayuda` alone are the help card, where that is what they say here; `help filter` asks what may be typed.
  const isOnly = need.is === 'open' && new Set(criedWords(line, context.hearing.cries)).size === 1;
  if (!isFailed(read) && need.is !== 'certain' && !isOnly && !/[!¡]/.test(typed)) return read;
  if (need.is === 'bare') {
    return { ...whichCry(line, read, need.likely, context.hearing), line };
  }
  const unsure = need.is === 'open' ? { unsure: true } : {};
  return withNamed({ act: { command: { verb: need.alarm, note: line, ...unsure } }, line }, line, context);
}

/**
 * Nobody is called yet: a tap that rings everybody, one that says that it is no alarm, and what else it may be. The verb says in
 * which language they are written: of a word that is of none the speaker's is taken.
 */
function whichCry(
  line: string,
  read: Read,
  likely: readonly Alarm[],
  hearing: Hearing,
): Failed<Fault> & { readonly verb?: VerbNamed } {
  // Of a line that was read for this one (`fan0lse` as `fan 0lse`) the places are others.
  const token = isFailed(read) && read.line === line ? read.failed.token : undefined;
  const said = criedWords(line, hearing.cries).filter((word) => !/^\d+$/.test(word));
  const cried = hearing.every.tongues.findLast(({ cries }) =>
    [cries.shouts, cries.saysLittle, cries.gels, cries.reacts].some((set) =>
      set.split(/\s+/).some((word) => word !== '' && said.includes(word)),
    ),
  );
  const tongue = cried ?? hearing.tongues.at(-1);
  const verb = verbNamed(tongue?.verbs.fire.words[0] ?? '', hearing.every);
  const tries = ['emergency', 'no-alarm', ...likely.map((alarm) => (alarm === 'hot' ? 'hot-pot' : alarm))];
  return { failed: { failed: 'which-cry', ...(token !== undefined && { token }), tries }, ...(verb && { verb }) };
}

/** `fire in booth???` calls: a cry in words of its own asks nothing. */
export const isCried = ({ act: { command } }: Extract<Read, { act: unknown }>): boolean =>
  alarmNamed(command.verb) !== undefined && 'note' in command && command.note !== undefined;

type ReadAct = Extract<Read, { act: unknown }>;

/** With the place and the pot that it names. */
function withNamed(read: ReadAct, line: string, context: LineContext): Read {
  const { command } = read.act;
  if (alarmNamed(command.verb) === undefined) return read;
  const place = placeIn(line, context);
  const placed = place === undefined ? read : { ...read, act: { ...read.act, command: { ...command, place } } };
  return withHeat(placed, line, context.hearing);
}

/** `fire in bay 2`, where bay-2 is known; `fire in the booth`, whether or not anybody has named one. */
function placeIn(line: string, { places, hearing }: LineContext): PlaceName | undefined {
  const said = tokenize(line, hearing).map((token) => (token.kind === 'word' ? token.word : token.text.toLowerCase()));
  const known = places.find((place) =>
    said.some((word, i) => word === place || `${word}-${said[i + 1] ?? ''}` === place),
  );
  return known ?? said.find(isPlaceRoot);
}

const [, smoking, bulging] = heatSigns;

/** `pot 1 is hot`, `lata 3 hinchada`, `lid bulges`: which one, of what kind, and what is seen of it, wherever it stands. */
function withHeat(read: ReadAct, line: string, { every, cries }: Hearing): Read {
  const { command } = read.act;
  if (command.verb !== 'hot') return read;
  const numberAt = (pattern: RegExp): number | undefined => {
    const number = Number(pattern.exec(line)?.[1]);
    return number >= 1 ? number : undefined;
  };
  const said = criedWords(line, cries);
  const has = (set: ReadonlySet<string>): boolean => said.some((word) => set.has(word));
  const seen: HeatSign | undefined = has(cries.swells) ? bulging : has(cries.fumesOf) ? smoking : undefined;
  const batch = command.batch ?? numberAt(every.potNumbered);
  const can = batch === undefined ? numberAt(every.canNumbered) : undefined;
  const isEither = has(cries.lids) && batch === undefined;
  const heats: 'can' | 'either' | undefined =
    can !== undefined || has(cries.cans) ? 'can' : isEither ? 'either' : undefined;
  return { ...read, act: { ...read.act, command: { ...command, ...known({ batch, can, heats, seen }) } } };
}
