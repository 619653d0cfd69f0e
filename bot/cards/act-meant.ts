// A tap worded as what it will do, where a line may mean several acts: as the record would tell of it.

import { decide } from '../../core/decide.ts';
import { firstUpper } from '../language/first-upper.ts';
import type { Meant } from '../language/reading.ts';
import type { Telling } from './card-context.ts';

/** `undefined` where it would leave nothing that can be told in half a line. */
export function actMeant({ shop, now, words, figures }: Telling, { command, at = now }: Meant): string | undefined {
  // As if it had happened: what a rule has against it is told by the tap's own answer.
  const by = shop.crew.people[0]?.name ?? '';
  const decision = decide(shop, { command, by, now, at, stance: { is: 'happened' } });
  if (decision.kind !== 'accepted') return undefined;
  const [event, ...others] = decision.events;
  if (event === undefined || others.some(({ body }) => body.type === event.body.type)) return undefined;
  if (event.body.type === 'Amended') return undefined;
  const [stream] = event.streams;
  const said = firstUpper(words.undo.act({ stream, fact: event.body }, figures));
  return at < now ? `${said} (${figures.timeDown(at)})` : said;
}
