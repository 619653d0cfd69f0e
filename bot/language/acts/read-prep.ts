// `prep impeller-7 sa2.5 60um salts 12mg/m2`: how the steel was prepared. The grade is one of the published ones,
// however it is spaced; profile is a film's unit, salts have their label.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type SurfaceGrade, surfaceGrades } from '../../../core/grades.ts';
import { type Micrometres, milligramsPerSquareMetre } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { isOutside, slots } from '../slots.ts';
import { saltsMarks } from '../tongues/english/line-words.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { newApart, partsFrom } from './read-names.ts';
import { partOfTwoPieces, sortPieces } from './sort-pieces.ts';

type Prepared = Omit<CommandOf<'prep'>, 'verb' | 'parts' | 'grade'>;
type Said = { -readonly [Key in keyof Prepared]: Prepared[Key] };

export function readPrep(act: ActLine): CommandOf<'prep'> | Fault {
  const said: Said = {};
  const rest: Token[] = [];
  let grade: SurfaceGrade | undefined;
  for (let i = 0; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined) continue;
    const found = gradeFrom(act.tokens, i);
    if (found !== undefined) {
      if (grade !== undefined && grade !== found.grade) return leftOver(token);
      grade = found.grade;
      i = found.last;
      continue;
    }
    const label = token.kind === 'word' ? token.word : '';
    if (saltsMarks.has(label)) {
      const used = takeSalts(said, act, i);
      if (typeof used === 'object') return used;
      i += used;
      continue;
    }
    const film = token.kind === 'quantity' && token.quantity.is === 'film' ? token.quantity.micrometres : undefined;
    if (film === undefined) rest.push(token);
    else {
      const fault = takeProfile(said, token, film);
      if (fault !== undefined) return fault;
    }
  }
  return commandFrom(act, rest, grade, said);
}

function commandFrom(
  act: ActLine,
  rest: readonly Token[],
  grade: SurfaceGrade | undefined,
  said: Said,
): CommandOf<'prep'> | Fault {
  const bareAt = rest.findIndex((token) => token.kind === 'number');
  const bare = rest[bareAt];
  if (bare?.kind === 'number') {
    const joined = partOfTwoPieces({ ...act, tokens: rest }, bareAt, bare);
    if (joined !== undefined) return joined;
    const tries = slots.profile.units.map((unit) => lineWith(act.line, bare, `${bare.text}${unit}`));
    return { failed: 'unit-missing', token: bare, needs: ['profile'], tries };
  }
  const gathered = sortPieces({ ...act, tokens: rest });
  if (isFailed(gathered)) return gathered;
  const { words, asNew } = newApart(gathered.words);
  const parts = partsFrom(words, act.context);
  if (isFailed(parts)) return parts;
  if (grade === undefined) {
    const tries = ['sa2.5', 'sp10', 'sp1'].map((word) => `${act.line} ${word}`);
    return { failed: 'incomplete', needs: ['grade'], tries };
  }
  return { verb: 'prep', parts, grade, ...said, ...(asNew && { asNew }) };
}

const gradeNamed: ReadonlyMap<string, SurfaceGrade> = new Map(surfaceGrades.map((grade) => [grade, grade]));

/** `sa2.5`, `Sa 2 1/2`, `sp-10`, `SSPC SP 10`, `near` nothing: the standards' own words only. */
function gradeFrom(
  tokens: readonly Token[],
  from: number,
): { readonly grade: SurfaceGrade; readonly last: number } | undefined {
  const first = tokens[from];
  if (first?.kind !== 'word') return undefined;
  let text = '';
  let found: { readonly grade: SurfaceGrade; readonly last: number } | undefined;
  for (let i = from; i < Math.min(from + 5, tokens.length); i++) {
    const token = tokens[i];
    if (token?.kind !== 'word' && token?.kind !== 'number') break;
    text += token.text.toLowerCase().replaceAll(/sspc|[-_]/g, '');
    const grade = gradeNamed.get(text.replace(/^sa(?:212|21\/2|2,5)$/, 'sa2.5'));
    if (grade !== undefined) found = { grade, last: i };
    else if (!/^(?:$|s[apt]?)/.test(text)) break;
  }
  return found;
}

function takeProfile(said: Said, token: Token, film: Micrometres): Fault | undefined {
  if (said.profileMicrometres !== undefined) return leftOver(token);
  const { limits } = slots.profile;
  if (limits !== undefined && isOutside(limits, film))
    return { failed: 'impossible', token, needs: ['profile'], limits };
  said.profileMicrometres = film;
  return undefined;
}

const saltsShape = /^(\d+(?:[.,]\d+)?)(mg\/m\^?2)?$/;

/** How many tokens after the label were its value. */
function takeSalts(said: Said, act: ActLine, label: number): number | Fault {
  const token = act.tokens[label + 1];
  const after = act.tokens[label + 2];
  const [, number, glued] = saltsShape.exec(token?.text.toLowerCase() ?? '') ?? [];
  const labelToken = act.tokens[label];
  if (token === undefined || number === undefined) {
    return { failed: 'incomplete', needs: ['salts'], ...(labelToken !== undefined && { token: labelToken }) };
  }
  const apart = after?.kind === 'word' && /^mg\/m\^?2$/.test(after.word);
  if (glued === undefined && !apart) {
    return {
      failed: 'unit-missing',
      token,
      needs: ['salts'],
      tries: [lineWith(act.line, token, `${token.text}mg/m2`)],
    };
  }
  const value = Number(number.replace(',', '.'));
  const { limits } = slots.salts;
  if (limits !== undefined && isOutside(limits, value))
    return { failed: 'impossible', token, needs: ['salts'], limits };
  if (said.saltsMilligramsPerSquareMetre !== undefined) return leftOver(token);
  said.saltsMilligramsPerSquareMetre = milligramsPerSquareMetre(value);
  return glued === undefined ? 2 : 1;
}
