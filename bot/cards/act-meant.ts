// A tap worded as what it will do, where a line may mean several acts: as the record would tell of it.

import type { PartName } from '../../core/ids.ts';
import { wouldLeave } from '../../core/would-leave.ts';
import type { Figures } from '../language/figures.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { ActMeant, Meant } from '../language/reading.ts';
import type { Telling } from './card-context.ts';
import { correctionMeant } from './correction-meant.ts';

/** `undefined` where it would leave nothing that can be told in half a line. */
export function actMeant(telling: Telling, { line, acts }: Meant): string | undefined {
  const told = acts.map((act) => newAct(telling, act));
  const last = acts.at(-1);
  const correction = last === undefined ? undefined : correctionMeant(telling, line, last, told.at(-1));
  if (correction !== undefined) return correction;
  return told.every((act) => act !== undefined) && told.length > 0 ? firstUpper(told.join('; ')) : undefined;
}

function newAct(telling: Telling, { command, at = telling.now }: ActMeant): string | undefined {
  const { now, words, figures } = telling;
  if (command.verb === 'part' && command.more !== undefined) {
    return words.parts.in.book([command, ...command.more], figures);
  }
  const events = wouldLeave(telling, command, at);
  const alike = events.filter(({ body }) => body.type === events[0]?.body.type);
  const acts = alike.flatMap(({ streams: [stream], body }) =>
    body.type === 'Amended' ? [] : [words.undo.act({ stream, fact: body }, figures)],
  );
  const said = inOne(acts, 'parts' in command ? command.parts : [], figures);
  if (said === undefined) return undefined;
  return at < now ? `${said} (${figures.timeDown(at)})` : said;
}

/** Of several parts each is named, and what was done to them all is said once. */
function inOne(acts: readonly string[], parts: readonly PartName[], figures: Figures): string | undefined {
  const [first, ...others] = acts;
  const [name, ...more] = parts;
  if (first === undefined) return undefined;
  const isSame = name !== undefined && others.length === more.length && first.startsWith(name);
  const rest = isSame ? first.slice(name.length) : '';
  if (isSame && others.every((act, i) => act === `${more[i]}${rest}`)) return figures.list(parts) + rest;
  return acts.length > mostTold ? undefined : acts.join(', ');
}

/** More is no label any more. */
const mostTold = 3;
