// When an act happened and by whose leave, its manner: a said time anywhere on the line, `already` anywhere, `permit`
// and its reason at the end. They are taken off before the act's own reader sees the line.

import type { Stance } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { known } from '../../core/known.ts';
import { type Lift, liftNames } from '../../core/lift-names.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Fault, LineContext } from './reading.ts';
import { saidTimeFrom } from './times/said-time.ts';
import { fillers } from './tongues/english/line-words.ts';
import type { Token } from './typed/token.ts';
import { verbAt } from './verbs-typed.ts';

export interface How {
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

export interface Manner {
  /** What is left for the reader. */
  readonly tokens: readonly Token[];
  readonly how: How;
}

const happenedWords: ReadonlySet<string> = new Set(['already']);
const permitWords: ReadonlySet<string> = new Set(['permit']);
const timeWords: ReadonlySet<string> = new Set(['at', 'ago', 'before-now', 'yesterday', 'today', 'noon', 'midnight']);

export const isPermitWord = (token: Token): boolean => token.kind === 'word' && permitWords.has(token.word);

export function isHappenedWord(token: Token | undefined): boolean {
  return token?.kind === 'word' && happenedWords.has(token.word);
}

/** `bareTimes`: a time of day needs no `at` before it. False where an act has such a value of its own. */
export function mannerOf(
  tokens: readonly Token[],
  line: string,
  context: LineContext,
  bareTimes = true,
): Manner | Fault {
  if (!tokens.some(isHint)) return { tokens, how: {} };
  const permitAt = tokens.findIndex(isPermitWord);
  const permitted = permitAt === -1 ? undefined : permission(tokens.slice(permitAt), line, context);
  if (permitted !== undefined && isFailed(permitted)) return permitted;
  const rest: Token[] = [];
  let at: EpochMs | undefined;
  let happened = false;
  const end = permitAt === -1 ? tokens.length : permitAt;
  for (let i = 0; i < end; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    if (isHappenedWord(token)) {
      happened = true;
      continue;
    }
    const isBareTime = token.kind === 'word' && /^\d/.test(token.word);
    const time =
      at === undefined && (bareTimes || !isBareTime) ? saidTimeFrom(tokens.slice(0, end), i, context) : undefined;
    if (time === undefined) rest.push(token);
    else if (isFailed(time)) return time;
    else {
      at = time.at;
      i = time.to - 1;
    }
  }
  const stance = permitted ?? (happened ? ({ is: 'happened' } as const) : undefined);
  return { tokens: rest, how: known({ at, stance }) };
}

function isHint(token: Token): boolean {
  if (token.kind !== 'word') return false;
  const { word } = token;
  const first = word.charCodeAt(0);
  return (first >= 48 && first <= 57) || timeWords.has(word) || happenedWords.has(word) || permitWords.has(word);
}

/** `permit` and the rest of the line, as typed or in quotes. */
export function permission(tokens: readonly Token[], line: string, context: LineContext): Stance | Fault {
  const [permit, first, second] = tokens;
  const last = tokens.at(-1);
  if (permit === undefined || first === undefined || last === undefined) {
    return { failed: 'incomplete', needs: ['reason'], ...known({ token: permit }) };
  }
  const lifts = liftsIn(tokens, line, context);
  if (lifts !== undefined) return { is: 'permitted', why: lifts.map(({ why }) => why).join('; '), lifts };
  if (first.kind === 'quoted' && second === undefined) {
    return first.words === ''
      ? { failed: 'incomplete', token: permit, needs: ['reason'] }
      : { is: 'permitted', why: first.words };
  }
  const trailing = trailingTime(tokens, 1, context);
  if (trailing !== undefined) return timeOfWhat(tokens, trailing, permit, line);
  return { is: 'permitted', why: line.slice(first.start, last.end) };
}

/** `permit hold the customer looked permit cure oven log 12`: each thing by its name, with its own reason. */
function liftsIn(tokens: readonly Token[], line: string, { hearing }: LineContext): readonly Lift[] | undefined {
  const starts = tokens.flatMap((token, i) => (isPermitWord(token) ? [i] : []));
  const lifts = starts.map((at, i): Lift | undefined => {
    const said = tokens.slice(at + 1, starts[i + 1]);
    const from = said.findIndex((token) => !(token.kind === 'word' && fillers.has(token.word)));
    const verb = verbAt(said, from, hearing);
    const of = liftNames.find((name) => name === verb?.row.name);
    const words = said.slice(verb?.to ?? from + 1);
    const [first, last] = [words[0], words.at(-1)];
    if (of === undefined || first === undefined || last === undefined) return undefined;
    const isQuoted = first.kind === 'quoted' && words.length === 1;
    return { of, why: isQuoted ? first.words : line.slice(first.start, last.end) };
  });
  const named = lifts.filter((lift) => lift !== undefined);
  return named.length === lifts.length ? named : undefined;
}

/** The index at which a said time begins that ends the line, if one does. */
export function trailingTime(tokens: readonly Token[], from: number, context: LineContext): number | undefined {
  for (let i = from; i < tokens.length; i++) {
    const time = saidTimeFrom(tokens, i, context);
    if (time !== undefined && !isFailed(time) && time.to === tokens.length) return i;
  }
  return undefined;
}

/** `permit kari agreed at 9:40`: was it coated at 9:40, or agreed? Ask. */
function timeOfWhat(tokens: readonly Token[], index: number, permit: Token, line: string): Fault {
  const time = tokens[index] ?? permit;
  const timeText = line.slice(time.start);
  const reason = line.slice(permit.end, time.start).trim();
  const head = line.slice(0, permit.start);
  return {
    failed: 'ambiguous-time',
    token: { text: timeText, start: time.start, end: line.length },
    couldBe: [timeText, `"${reason} ${timeText}"`],
    tries: [`${head}${timeText} permit ${reason}`, `${head}permit "${`${reason} ${timeText}`.trim()}"`],
  };
}
