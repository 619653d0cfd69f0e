// A tap worded as what it will do, where a line may mean several acts: as the record would tell of it.

import { wouldLeave } from '../../core/would-leave.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { Meant } from '../language/reading.ts';
import type { Telling } from './card-context.ts';

/** `undefined` where it would leave nothing that can be told in half a line. */
export function actMeant(telling: Telling, { command, at = telling.now }: Meant): string | undefined {
  const { now, words, figures } = telling;
  const [event, ...others] = wouldLeave(telling, command, at);
  if (event === undefined || others.some(({ body }) => body.type === event.body.type)) return undefined;
  if (event.body.type === 'Amended') return undefined;
  const [stream] = event.streams;
  const said = firstUpper(words.undo.act({ stream, fact: event.body }, figures));
  return at < now ? `${said} (${figures.timeDown(at)})` : said;
}
