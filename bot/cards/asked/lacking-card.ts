// What is still missing of all that a part's job asks, what of it failed, who may tell it and who may release: the answer to `what is
// missing on 7?`.

import { peopleLeading } from '../../../core/crew/crew.ts';
import { type Part, phaseOfPart } from '../../../core/part/part.ts';
import { askedForRelease, type ReleaseAsked } from '../../../core/part/release-asked.ts';
import { byName, liveParts } from '../../../core/shop.ts';
import { statusOf } from '../../../core/status.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { givenTaps } from '../instead.ts';
import { heldLine, heldLines } from '../part-cards.ts';
import type { OfTopic } from './topic-asked.ts';

const mostTold = 8;

export function lackingCard({ telling, things }: OfTopic): Card {
  const named = things.flatMap((thing) => (thing.is === 'part' ? [thing.part] : []));
  const [part, another] = named;
  return part !== undefined && another === undefined ? ofOne(telling, part) : ofSeveral(telling, named);
}

function ofOne(telling: Telling, part: Part): Card {
  const { words, figures, shop, now } = telling;
  const { lacking: said } = words.parts;
  const asked = askedForRelease(shop, part, now);
  const held = heldLines(telling, statusOf.part(telling, part));
  if (asked === undefined)
    return makeCard(said.noneAsked(part.name), held.length > 0 ? 'warn' : 'plain', { lines: held });
  const { job, lacking } = asked;
  const title = lacking.length === 0 ? said.nothing(part.name, job) : said.title(part.name, lacking.length, job);
  const isToRelease = lacking.length === 0 && held.length === 0;
  return makeCard(title, isToRelease ? 'plain' : 'warn', {
    lines: [
      ...held,
      ...lacking.map((one) => `– ${said.one(one, figures)}`),
      ...(lacking.length === 0 ? [] : [said.whoTells]),
      ...releasersLines(telling, asked),
    ],
    // What a film says is read once it is dry and cured.
    actions: phaseOfPart(part).is === 'cured' ? lacking.flatMap((each) => givenTaps(telling, part.name, each)) : [],
  });
}

/** Of those that their job still asks something of. */
function ofSeveral(telling: Telling, named: readonly Part[]): Card {
  const { words, figures, shop, now } = telling;
  const { lacking: said } = words.parts;
  const parts = named.length > 0 ? named : byName(liveParts(shop));
  const lines = parts.flatMap((part) => {
    const asked = askedForRelease(shop, part, now);
    const lacks = asked === undefined || asked.lacking.length === 0 ? [] : asked.lacking;
    const held = part.verdict?.is === 'held' ? [heldLine(telling, part)] : [];
    return [
      ...held,
      ...(lacks.length === 0
        ? []
        : [words.asked.titled(part.name, figures.list(lacks.map((each) => said.one(each, figures))))]),
    ];
  });
  if (lines.length === 0) return makeCard(said.nothingAnywhere, 'plain');
  return makeCard(said.several, 'warn', { lines: lines.slice(0, mostTold) });
}

function releasersLines({ words, figures, shop }: Telling, { secondEyes }: ReleaseAsked): readonly string[] {
  const leading = peopleLeading(shop.crew);
  const may = leading.filter((person) => secondEyes?.coatedBy.includes(person) !== true);
  return leading.length === 0 ? [] : [words.parts.lacking.releasers(may, secondEyes !== undefined, figures)];
}
