// Words what came of an act: as whoever said it is told things, and as the crew is.

import { personIn } from '../../core/crew/crew.ts';
import type { Outcome, Recorded, Request } from '../../core/execute.ts';
import type { PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import type { Shop } from '../../core/shop.ts';
import type { Card } from '../cards/card.ts';
import { lineOf, type Telling, withLinesShown } from '../cards/card-context.ts';
import { withLead } from '../cards/guide-card.ts';
import { objectionCard, unclearCard } from '../cards/objection-cards.ts';
import { recordedCard } from '../cards/reply-cards.ts';
import { withTakenAs } from '../cards/taken-as.ts';
import type { FaultyLine } from '../language/reading.ts';
import type { Answer } from './answer.ts';
import type { Delivery } from './front-end.ts';
import { withLinesKept } from './kept-lines.ts';
import { subjectsNamed, subjectsOf } from './message-subject.ts';
import { answering, type ToldNow, tellingOf } from './telling.ts';

export interface SaidAs {
  /** The strict line of one that was said in other words. */
  readonly takenAs?: string;
  /** Rows of a list that nobody could read. */
  readonly unread?: readonly FaultyLine[];
}

/** Words an outcome inside the write path, so that the same delivery gets the same answer for ever. */
export function wordOutcome(
  told: ToldNow,
  delivery: Delivery,
  request: Request,
  outcome: Outcome,
  { takenAs, unread }: SaidAs = {},
): Answer {
  const { shop } = outcome;
  const taken = (telling: Telling, card: Card): Card =>
    takenAs === undefined ? card : withTakenAs(telling, card, takenAs, outcome);
  switch (outcome.kind) {
    case 'recorded': {
      const moved = [...new Set(outcome.envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]))];
      const cards = toldBothWays(told, shop, delivery.as, (telling) =>
        withLead(telling, taken(telling, recordedCard(telling, request, outcome)), delivery.as, moved),
      );
      const about = subjectsOf(shop, moved);
      const saidAct = saidOf(told, delivery, request, outcome);
      return answering(told, delivery, shop, {
        ...{ kind: 'reply', code: null, recorded: true, ...cards, about, moved },
        ...known({ saidAct }),
      });
    }
    case 'objected': {
      const cards = toldBothWays(told, shop, delivery.as, (telling) =>
        taken(telling, objectionCard(telling, request, outcome)),
      );
      const code = outcome.objections[0]?.code ?? null;
      const about = subjectsNamed(shop, request.command);
      const { command, at } = request;
      const actLine = lineOf(tellingOf(told, shop, delivery.as), { command, at, stance: { is: 'asked' } });
      return answering(told, delivery, shop, { kind: 'objection', code, recorded: false, ...cards, about, actLine });
    }
    case 'unclear': {
      const telling = tellingOf(told, shop, delivery.as);
      const whole = withLinesShown(telling, taken(telling, unclearCard(telling, request, outcome.unclear, unread)));
      const { code } = outcome.unclear;
      const kept = withLinesKept(request.id, whole);
      return answering(told, delivery, shop, { kind: 'misread', code, recorded: false, ...kept });
    }
  }
}

/** As whoever said it is told things, and as the crew is where that differs. */
function toldBothWays(
  told: ToldNow,
  shop: Shop,
  name: PersonName,
  card: (telling: Telling) => Card,
): Pick<Answer, 'card' | 'forAll'> {
  const [person, all] = [personIn(shop.crew, name), personIn(shop.crew, '')];
  const made = (telling: Telling) => withLinesShown(telling, card(telling));
  const own = made(tellingOf(told, shop, name));
  const isSame = person.language === all.language && person.units === all.units;
  return isSame ? { card: own } : { card: own, forAll: made(tellingOf(told, shop, undefined)) };
}

/** What may be put right by its own words. Of a near miss nothing is kept that leads to who told it. */
function saidOf(
  told: ToldNow,
  delivery: Delivery,
  { command, stance }: Request,
  { shop, envelopes }: Recorded,
): Answer['saidAct'] {
  const [first] = envelopes;
  if (first === undefined || command.verb === 'near-miss') return undefined;
  const line = lineOf(tellingOf(told, shop, delivery.as), {
    command,
    // What has happened has happened, whatever of it was said wrong; leave was given for what was said.
    stance: stance.is === 'happened' ? stance : { is: 'asked' },
  });
  return { line, entry: first.seq };
}
