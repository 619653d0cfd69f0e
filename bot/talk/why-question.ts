// Answers `why`: finds the card that the asker was given last, loads what it told of, and asks the rules again where it was an
// objection.

import { streamsAsked as streamsMeant, thingsMeant } from '../../core/asked/things-meant.ts';
import type { Question } from '../../core/commands.ts';
import { decide } from '../../core/decide.ts';
import type { Executor } from '../../core/execute.ts';
import {
  batchStream,
  canStream,
  nameIn,
  nounOf,
  type PersonName,
  partStream,
  type StreamId,
  sessionStream,
} from '../../core/ids.ts';
import { streamOfRing } from '../../core/ring-log.ts';
import { batchOf, type Shop } from '../../core/shop.ts';
import type { Card } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { askedWhy, type CardAsked } from '../cards/why/asked-why.ts';
import { showsFigure } from '../cards/why/figures-at-hand.ts';
import { askedFirstOfWhy } from '../cards/why/why-about.ts';
import { readStrictly } from '../language/read-line.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { Answer } from './answer.ts';
import type { LastCards } from './last-cards.ts';
import { lineContext } from './line-context.ts';

export interface WhyDeps {
  readonly executor: Executor;
  readonly lastCards: LastCards;
  readonly tongues: Tongues;
}

export async function whyAnswer(
  deps: WhyDeps,
  telling: Telling,
  { about, of = [] }: Extract<Question, { ask: 'why' }>,
  asker: PersonName,
): Promise<Card> {
  const cards = (await deps.lastCards.of(asker)).filter(isAskedAbout);
  // An older card of theirs is asked about by a figure that only it shows.
  const last = (about === undefined ? undefined : cards.find(({ card }) => showsFigure(card, about))) ?? cards[0];
  const named = [...(last === undefined ? [] : streamsTold(last)), ...streamsMeant(of)];
  const loaded = await deps.executor.look(named);
  const batches = named.flatMap((stream) => batchOfPart(loaded, stream));
  const shop = batches.length === 0 ? loaded : await deps.executor.look([...named, ...batches]);
  const told = { ...telling, shop };
  const things = about === undefined ? [] : thingsMeant(shop, of, askedFirstOfWhy(telling, about)).things;
  return askedWhy(told, { about, things }, last && cardAsked(deps, told, last, asker));
}

/** What only asks back is not what is asked about. */
const isAskedAbout = ({ kind, card }: Answer): boolean =>
  kind !== 'error' && (kind !== 'misread' || card.facts.length > 0);

function streamsTold({ moved = [], about = [], key, asked }: Answer): readonly StreamId[] {
  return [...about, ...moved, ...streamOfRing(key ?? undefined), ...(asked === undefined ? [] : streamsAsked(asked))];
}

function streamsAsked(question: Question): readonly StreamId[] {
  switch (question.ask) {
    case 'trace':
    case 'card': {
      const { of } = question;
      if ('part' in of) return [partStream(of.part)];
      if ('batch' in of) return [batchStream(of.batch)];
      return 'can' in of ? [canStream(of.can)] : [];
    }
    case 'vent':
      return question.asked.of === 'session' && question.asked.session !== undefined
        ? [sessionStream(question.asked.session)]
        : [];
    case 'purge':
      return question.asked.can === undefined ? [] : [canStream(question.asked.can)];
    default:
      return [];
  }
}

function batchOfPart(shop: Shop, stream: StreamId): readonly StreamId[] {
  const part = nounOf(stream) === 'part' ? shop.parts.get(nameIn(stream)) : undefined;
  const coat = part?.coats.at(-1);
  return part === undefined || coat === undefined || batchOf(shop, part) !== undefined ? [] : [batchStream(coat.batch)];
}

function cardAsked({ tongues }: WhyDeps, telling: Telling, last: Answer, asker: PersonName): CardAsked {
  const { shop, now } = telling;
  const streams = streamsTold(last);
  const open = last.asked?.ask === 'vent' && streams.length === 0 ? [...shop.sessions.keys()].map(sessionStream) : [];
  const told = { card: last.card, streams: [...streams, ...open], question: last.asked };
  const read =
    last.actLine === undefined ? undefined : readStrictly(last.actLine, lineContext(tongues, shop, asker, now));
  if (last.kind !== 'objection' || read?.kind !== 'command') return { ...told, against: undefined };
  const { command, at = now } = read;
  const decision = decide(shop, { by: asker, now, command, at, stance: { is: 'asked' } });
  const objections = decision.kind === 'objected' ? decision.objections : [];
  return { ...told, against: { command, objections } };
}
