// A tap worded as what it will do, where a line may mean several acts: as the record would tell of it.

import { wouldLeave } from '../../core/would-leave.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { Meant } from '../language/reading.ts';
import type { Telling } from './card-context.ts';
import { correctionMeant } from './correction-meant.ts';

/** `undefined` where it would leave nothing that can be told in half a line. */
export function actMeant(telling: Telling, meant: Meant): string | undefined {
  const act = newAct(telling, meant);
  return correctionMeant(telling, meant, act) ?? (act === undefined ? undefined : firstUpper(act));
}

function newAct(telling: Telling, { command, at = telling.now }: Meant): string | undefined {
  const { now, words, figures } = telling;
  const events = wouldLeave(telling, command, at);
  const alike = events.filter(({ body }) => body.type === events[0]?.body.type);
  const acts = alike.flatMap(({ streams: [stream], body }) =>
    body.type === 'Amended' ? [] : [words.undo.act({ stream, fact: body }, figures)],
  );
  if (acts.length === 0 || acts.length > mostTold) return undefined;
  const said = acts.join(', ');
  return at < now ? `${said} (${figures.timeDown(at)})` : said;
}

/** A part each: more is no label any more. */
const mostTold = 3;
