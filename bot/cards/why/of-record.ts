// Why counts and totals over a stretch of days are what they are: they are counted from the record, and nothing else.

import type { FactId } from '../fact-ids.ts';
import { entriesOf, type WhyOf, why } from './why.ts';

/** Each of them stands in the record by itself: the card's own lines list them, and the export has all. */
const counted: WhyOf = () => why({ is: 'record' });

const rang: WhyOf = ({ of: { batch, part, can, session } }) => {
  const noun = part ?? batch ?? can ?? session;
  return why({ is: 'record' }, { read: entriesOf(noun?.entries, 'Rang').slice(-1) });
};

const read: WhyOf = ({ telling: { shop }, of: { place } }) =>
  why({ is: 'record' }, { read: entriesOf(shop.places.get(place)?.entries, 'AirRead').slice(-3) });

export const recordWhys = {
  'happened-at': counted,
  'late-minutes': rang,
  'due-at': rang,
  batches: counted,
  'part-a-total': counted,
  'part-b-total': counted,
  parts: counted,
  'air-lowest': read,
  'air-highest': read,
  'humidity-lowest': read,
  'humidity-highest': read,
  'mixed-total': counted,
  'caught-total': counted,
  'left-over-total': counted,
  rings: counted,
  'rings-late': counted,
  'rings-unanswered': counted,
  deviations: counted,
  permissions: counted,
  corrections: counted,
  'planned-total': counted,
  'applied-total': counted,
  'coated-area': counted,
  voc: () => why({ is: 'published', what: '40 CFR 59.406(a)' }),
  'materials-total': counted,
  'answer-median': counted,
  events: counted,
  found: counted,
} as const satisfies Partial<Record<FactId, WhyOf>>;
