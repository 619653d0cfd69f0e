// What a job asks of the steel, and of a part before its release, `set job 88 sa2.5 40-75um salts 20mg/m2 dust 2`: the job's name first, its figures in any order.

import type { ReleaseLimits } from '../../../core/crew/job-limits.ts';
import { isFailed } from '../../../core/failed.ts';
import { surfaceGrades } from '../../../core/grades.ts';
import { known } from '../../../core/known.ts';
import type { SettingValues } from '../../../core/setting-kinds.ts';
import { micrometres, milligramsPerSquareMetre } from '../../../core/units.ts';
import { choices } from '../../../core/verbs/slot.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { leftOver } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { outside } from './figure-of-slot.ts';
import { filmsFrom } from './read-films.ts';
import { releaseLimitAt } from './read-release-limits.ts';
import { missing, type ValueSaid } from './setting-said.ts';

type Limits = SettingValues['job-limits'];

interface Found {
  grades: NonNullable<Limits['grades']>[number][];
  gauge: Token[];
  release: ReleaseLimits;
  salts?: number;
  dust?: number;
  size?: number;
  waterBreak?: true;
}

const grades = choicesOf([['grades', choices('grade', surfaceGrades, {})]]);
const mostDust = 5;

export function readJobLimits(said: ValueSaid): Limits | Fault {
  const [named, ...rest] = said.rest;
  if (named === undefined) return missing(said);
  const job = named.kind === 'quoted' ? named.words : named.text;
  const tokens = rest.flatMap((token) => withoutRange(token, said.context.hearing));
  // Nothing is asked of it any more.
  if (tokens.length === 1 && ['off', 'no'].includes(wordIn(tokens[0]))) return { job };
  const found: Found = { grades: [], gauge: [], release: {} };
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const grade = choiceAt(tokens, i, grades);
    const salts = rareFigureFrom(tokens, i, 'mg/m2');
    const forRelease = releaseLimitAt(tokens, i, said.context.hearing, said.line);
    if (forRelease !== undefined) {
      if (isFailed(forRelease)) return forRelease;
      found.release = together(found.release, forRelease.limit);
      i = forRelease.to - 1;
      continue;
    }
    const isDust = labelOf(token, said.context.hearing) === 'dust' && tokens[i + 1]?.kind === 'number';
    if (grade !== undefined) {
      found.grades.push(...surfaceGrades.filter((each) => each === grade.value));
      i = grade.to - 1;
    } else if (salts !== undefined && found.salts === undefined) {
      const fault = outside('salts', token, salts.value);
      if (fault !== undefined) return fault;
      found.salts = salts.value;
      i = salts.to - 1;
    } else if (isDust || wordIn(token) === 'size') {
      i += 1;
      const of = isDust ? 'dust' : 'size';
      const rating = tokens[i];
      if (rating?.kind !== 'number' || !rating.number.whole || rating.number.value > mostDust)
        return dustOutside(rating);
      if (found[of] !== undefined) return leftOver(rating);
      found[of] = rating.number.value;
    } else if (wordIn(token) === 'water-break') found.waterBreak = true;
    else if (token.kind === 'number' || token.kind === 'quantity') found.gauge.push(token);
    else if (token.kind !== 'word' || !roundsOff(token.word, token, said.context.hearing)) return leftOver(token);
  }
  const films = filmsFrom(found.gauge, said.line, 'profile');
  if (isFailed(films)) return films;
  const [one, other] = films.toSorted((a, b) => a - b);
  // One figure may be the least or the most.
  if (films.length > 2 || (one !== undefined && other === undefined)) return missing(said);
  const asked = known({
    grades: found.grades.length === 0 ? undefined : found.grades,
    profile:
      one === undefined || other === undefined
        ? undefined
        : { leastMicrometres: micrometres(one), mostMicrometres: micrometres(other) },
    mostSaltsMilligramsPerSquareMetre: found.salts === undefined ? undefined : milligramsPerSquareMetre(found.salts),
    mostDustRating: found.dust,
    mostDustSize: found.size,
    waterBreak: found.waterBreak,
    ...found.release,
  });
  return Object.keys(asked).length === 0 ? missing(said) : { job, ...asked };
}

/** Of one kind of test the last counts. */
function together(before: ReleaseLimits, now: ReleaseLimits): ReleaseLimits {
  const tests = [...(before.tests ?? []).filter(({ of }) => now.tests?.[0]?.of !== of), ...(now.tests ?? [])];
  return { ...before, ...now, ...(tests.length > 0 && { tests }) };
}

const dustOutside = (token: Token | undefined): Fault => ({
  ...{ failed: 'impossible', needs: ['dust'], limits: { lowest: 0, highest: mostDust, unit: '' } },
  ...(token !== undefined && { token }),
});

const labelOf = (token: Token, { labels }: Hearing): string | undefined => labels.get(wordIn(token));

const roundsOff = (word: string, token: Token, hearing: Hearing): boolean =>
  fillers.has(word) ||
  isIgnoredOn('set', word, hearing) ||
  ['salts', 'profile', 'dust'].includes(labelOf(token, hearing) ?? '');

const range = /^[\d.,]+[-–][\d.,]+\p{L}*$/u;

/** `40-75um`: both ends of it. */
function withoutRange(token: Token, hearing: Hearing): readonly Token[] {
  if (token.kind !== 'word' || !range.test(token.text)) return [token];
  return tokenize(token.text.replace(/[-–]/, ' '), hearing).map((end) => ({
    ...end,
    start: end.start + token.start,
    end: end.end + token.start,
  }));
}
