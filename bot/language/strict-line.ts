// The strict reader of one line: verb first, and nothing guessed. What does not read is handed on as it is, since most of it is
// understood otherwise and nobody needs to know what it may have been.

import type { Question, Stance, Verb } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { known } from '../../core/known.ts';
import { isQuestion } from '../../core/verbs/question-rows.ts';
import type { ActLine } from './acts/act-line.ts';
import { readQuestion } from './acts/read-question.ts';
import { readAct } from './acts/readers.ts';
import { breathingSaid } from './breathing-said.ts';
import { criedWords } from './cry.ts';
import type { CryTable } from './cry-words.ts';
import { gasSaid } from './gas-said.ts';
import { gasesSaid } from './gases-said.ts';
import { isCried, isOnlySpokenOf, onlySpokenOf, orCried } from './heard-cry.ts';
import { insideSaid } from './inside-said.ts';
import { longestLine, misreadOf, type Read, tooLong, unknownVerb } from './misread-line.ts';
import { partsTyped } from './parts-in/parts-typed.ts';
import type { Fault, LineContext, Reading } from './reading.ts';
import { type How, isHappenedWord } from './time-and-permission.ts';
import { saidTimeFrom } from './times/said-time.ts';
import { fillers } from './tongues/english/line-words.ts';
import { cleanLine } from './typed/clean-line.ts';
import { type Token, wordIn } from './typed/token.ts';
import { tokenize } from './typed/tokens.ts';
import type { StrictReading, Unread } from './understood.ts';
import { isIgnoredOn, meantOn, type VerbAt, verbAt, verbNamed, verbOfWord } from './verbs-typed.ts';
import { wetBulbSaid } from './wet-bulb-said.ts';

type Misreading = Extract<Reading, { kind: 'misread' }>;

export function readSingle(text: string, context: LineContext): Reading {
  const came = cameTo(text, context);
  return came.kind === 'unread' ? misreadAs(came, context) : came;
}

/** A line that a reading made of another, in which a cry was listened for already. */
export function readMade(line: string, context: LineContext): StrictReading {
  const came = cameTo(line, context, readCalmly);
  return came.kind === 'misread' ? { kind: 'silence' } : came;
}

/** `reads`: how the line is heard, once it is clean. */
export function cameTo(
  text: string,
  context: LineContext,
  reads: typeof readCleaned = readCleaned,
): StrictReading | Misreading {
  const trimmed = text.trim();
  // `#7 dry` is of the part with this number.
  if (trimmed === '' || /^#(?!\d)/.test(trimmed)) return { kind: 'silence' };
  if (trimmed.length > longestLine) return tooLong(trimmed);
  const line = cleanLine(text);
  if (/^\?+$/.test(line)) return { kind: 'question', question: { ask: 'what-now' }, line };
  const isNo = saysNo(line, context.hearing.cries);
  if (isNo && context.mayCallOff === true) {
    return { kind: 'command', command: { verb: 'no-alarm' }, stance: { is: 'asked' }, line };
  }
  const read = isNo ? noAlone(line, context) : withoutAsking(reads(line, context, text));
  if (isFailed(read)) return { kind: 'unread', read };
  if ('question' in read) return { kind: 'question', question: read.question, line };
  const { command, at, stance } = read.act;
  return { kind: 'command', command, ...known({ at }), stance: stanceOf(stance, at, context), line: read.line };
}

/** With what it may have meant. */
export function misreadAs({ read }: Unread, context: LineContext): Misreading {
  // What one line may have meant is never a pasted list.
  const reads = (each: string): boolean =>
    partsTyped(each, context.hearing) === undefined && !isFailed(withoutAsking(readCleaned(cleanLine(each), context)));
  return { kind: 'misread', misread: misreadOf(read, context, reads), line: read.line };
}

/** `no`, `no!`, `no no`. */
function saysNo(line: string, cries: CryTable): boolean {
  const said = criedWords(line, cries);
  return said.length > 0 && said.every((word) => cries.no.has(word));
}

/** Of what, nobody knows: the bot asks with taps, and each of them says its own no. */
function noAlone(line: string, { hearing }: LineContext): Read {
  const undo = hearing.tongues.at(-1)?.verbs.undo.words[0] ?? '';
  const verb = verbNamed(undo, hearing);
  return { failed: { failed: 'no-alone', example: 'supplied no', tries: [undo] }, line, ...known({ verb }) };
}

/** What happened earlier has happened, whether or not the speaker says so. */
function stanceOf(stance: Stance | undefined, at: number | undefined, context: LineContext): Stance {
  if (stance !== undefined) return stance;
  return at !== undefined && at < context.now ? { is: 'happened' } : { is: 'asked' };
}

/** `coat impeller-7 1 spray?` asks and must not record; `fire in booth???` calls. */
function withoutAsking(read: Read): Read {
  if (!('act' in read) || !read.line.endsWith('?') || isCried(read)) return read;
  const { line } = read;
  const token = { text: '?', start: line.length - 1, end: line.length };
  return { failed: { failed: 'left-over', token, tries: [line.replace(/[ ?]+$/, '')] }, line };
}

const asksAbout = /^(\p{L}+) ?\?+$/iu;

/** `typed`: before it was cleaned; a shout is known by it. */
function readCleaned(line: string, context: LineContext, typed = line): Read {
  const asked = line.endsWith('?') ? asksAbout.exec(line)?.[1] : undefined;
  const verb = asked === undefined ? undefined : verbNamed(asked.toLowerCase(), context.hearing);
  if (verb !== undefined && verb.row.name !== 'why') return readCalmly(`help ${asked}`, context);
  return orCried(readCalmly(line, context), line, typed, context);
}

function readCalmly(line: string, context: LineContext): Read {
  const tokens = tokenize(line, context.hearing);
  const { hearing } = context;
  const reading =
    gasesSaid(line, tokens, hearing) ?? gasSaid(line, tokens, hearing) ?? breathingSaid(line, tokens, context.hearing);
  if (reading !== undefined) return readCleaned(reading, context);
  const lead = leadOf(tokens, context);
  if (isFailed(lead)) return { failed: lead, line };
  const first = tokens[lead.next];
  // A picture alone is no record of anything, and silence would look as if it were heard.
  if (first === undefined) {
    return { failed: { failed: 'incomplete', needs: ['verb'], tries: lead.first === undefined ? ['ok'] : [] }, line };
  }
  if (first.kind !== 'word') return readWithoutVerb(line, tokens, lead, context);
  const verb = verbAt(tokens, lead.next, context.hearing);
  if (verb !== undefined) {
    const after = tokens.slice(verb.to);
    // `how long purge can 3`: of the gas, not of the clocks that run.
    const asked = verb.row.name === 'now' ? after.findIndex((token) => !fillers.has(wordIn(token))) : -1;
    const of = asked === -1 ? undefined : verbAt(after, asked, context.hearing);
    if (of?.row.name === 'purge') return readCleaned(line.slice(after[asked]?.start), context);
    const bulbs = wetBulbSaid(line, verb, after, context);
    if (bulbs !== undefined) return readCleaned(bulbs, context);
    return isOnlySpokenOf(verb, line, first, after, context)
      ? { failed: onlySpokenOf(verb, first), line, verb }
      : readVerb(line, tokens, verb, lead, context);
  }
  if (first.word === 'permit') return permitAlone(line, first, context);
  const apart = verbApart(line, first, context);
  if (apart !== undefined) return readCleaned(apart, context);
  const why = tokens.findIndex((_, i) => i > lead.next && verbAt(tokens, i, context.hearing)?.row.name === 'why');
  // `but why`, `y eso por qué`.
  if (why !== -1 && tokens.slice(lead.next, why).every((token) => isRoundWhy(token, context)))
    return readCleaned(line.slice(tokens[why]?.start), context);
  return { failed: unknownVerb(tokens, lead.next), line };
}

function readVerb(line: string, typed: readonly Token[], verb: VerbAt, lead: Lead, context: LineContext): Read {
  const { name } = verb.row;
  const from = typed[verb.to - 1]?.end ?? 0;
  const tokens = meantOn(name, typed.slice(verb.to), context.hearing);
  if (isQuestion(name)) {
    const stray = lead.at === undefined && lead.stance === undefined ? undefined : lead.first;
    const question: Question | Fault =
      stray === undefined
        ? readQuestion(name, { verb, tokens, from, line, context })
        : { failed: 'left-over', token: stray };
    return isFailed(question) ? { failed: question, line, verb } : { question, line };
  }
  return readVerbAct({ verb, tokens, from, line, context }, name, lead);
}

function readVerbAct(typed: ActLine, name: Verb, lead: Lead): Read {
  const { line, verb } = typed;
  const act = readAct(name, typed);
  if (isFailed(act)) return { failed: insideSaid(typed) ?? act, line, verb };
  if (lead.at === undefined && lead.stance === undefined) return { act, line };
  if (lead.at !== undefined && act.at !== undefined && lead.first !== undefined) {
    return { failed: { failed: 'left-over', token: lead.first }, line, verb };
  }
  return { act: { ...lead, ...act }, line };
}

/** The reason alone: what it would release is offered with it. */
function permitAlone(line: string, permit: Token, { hearing, held = [] }: LineContext): Read {
  const verb = verbNamed('release', hearing);
  // `permit hub-1 looked at again`: what it names is no part of the reason.
  const words = line.slice(permit.end).trim().split(' ');
  const named = held.filter((part) => words.some((word) => word.toLowerCase() === part));
  const why = words.filter((word) => !named.includes(word.toLowerCase())).join(' ');
  const tries = (named.length > 0 ? named : held).map((part) => `release ${part} permit ${why}`);
  return { failed: { failed: 'permit-alone', token: permit, tries }, line, ...known({ verb }) };
}

const isRoundWhy = (token: Token, { hearing }: LineContext): boolean =>
  token.kind === 'word' && [token.word, token.text.toLowerCase()].some((word) => isIgnoredOn('why', word, hearing));

interface Lead extends How {
  readonly first?: Token;
  /** Index of the verb. */
  readonly next: number;
}

/** What may stand before the verb: please, `at 9:40`, `already`. */
function leadOf(tokens: readonly Token[], context: LineContext): Lead | Fault {
  let at: How['at'];
  let happened = false;
  let next = 0;
  for (; next < tokens.length; next++) {
    const token = tokens[next];
    if (wordIn(token) === 'please') continue;
    if (wordIn(token) === 'the' && verbAt(tokens, next + 1, context.hearing) !== undefined) continue;
    if (isHappenedWord(token)) {
      happened = true;
      continue;
    }
    if (token?.kind === 'word' && verbOfWord(token, context.hearing) !== undefined) break;
    const time = at === undefined ? saidTimeFrom(tokens, next, context) : undefined;
    if (time === undefined) break;
    if (isFailed(time)) return time;
    at = time.at;
    next = time.to - 1;
  }
  const [first] = tokens;
  return { next, ...known({ first, at }), ...(happened && { stance: { is: 'happened' } as const }) };
}

/** `24C 48%`: a line of nothing else is a reading of the air. */
function readWithoutVerb(line: string, tokens: readonly Token[], lead: Lead, context: LineContext): Read {
  const verb = verbNamed('air', context.hearing);
  const first = tokens[lead.next];
  const isAir = (token: Token): boolean =>
    (token.kind === 'quantity' && (token.quantity.is === 'temperature' || token.quantity.is === 'percent')) ||
    (token.kind === 'doubt' && (token.is === 'temperature' || token.is === 'percent'));
  if (verb !== undefined && first !== undefined && isAir(first)) {
    const read = readVerbAct({ verb, tokens: tokens.slice(lead.next), from: 0, line, context }, 'air', lead);
    // `88C` alone is no air, but may be a part's reading.
    if (isFailed(read) && read.failed.failed === 'impossible' && first.text === line) {
      return { ...read, failed: { ...read.failed, tries: [`temp ${line}`] } };
    }
    const rest = tokens.slice(lead.next).filter((token) => !isAir(token) && !roundsAirOff(token));
    if (isFailed(read) || rest.length === 0 || isOnlyManner(rest, context)) return read;
  }
  return { failed: unknownVerb(tokens, lead.next), line };
}

/** `24C y 48% de humedad`. */
function roundsAirOff(token: Token): boolean {
  return token.kind === 'word' && ['and', 'of', 'with', 'humidity'].includes(token.word);
}

function isOnlyManner(rest: readonly Token[], context: LineContext): boolean {
  const time = saidTimeFrom(rest, 0, context);
  return (time !== undefined && 'at' in time && time.to === rest.length) || rest.every(isHappenedWord);
}

/** `mix2.4kg`: the verb run into its number. */
function verbApart(line: string, first: Token, { hearing }: LineContext): string | undefined {
  if (hearing.noSlips.has(first.text.toLowerCase())) return undefined;
  const letters = /^[a-z]+(?=[\d.])/i.exec(first.text)?.[0];
  if (letters === undefined || verbNamed(letters.toLowerCase(), hearing) === undefined) return undefined;
  const cut = first.start + letters.length;
  return `${line.slice(0, cut)} ${line.slice(cut)}`;
}
