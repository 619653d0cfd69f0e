// Who is down: a person of the crew, somebody, a name; a machine, a tool and a price never call.

import { isCalm, type Known } from './cry-calm.ts';
import { alarmOf, isPlace, opens, type People, without } from './cry-round.ts';
import { articles, endings, everyday, heard, liquids, openings, pots, whereabouts } from './cry-words.ts';

const lying = heard('lying');

/** `put kari down for friday`. */
const putting = heard('putting');

/** `kari is down`, `man down`, `down in the booth`; not `the printer is down`, `down to 20C`. */
export function isPersonDown(
  before: readonly string[],
  after: readonly string[],
  people: People,
  known: Known,
): boolean {
  const { names } = people;
  const [word] = after;
  const article = articles.has(word ?? '') ? without(after, articles)[0] : word;
  const saysWho = article !== undefined && known.isPerson(article);
  const [who, ...others] = without(before, lying);
  const isSomebody =
    who !== undefined &&
    !putting.has(others[0] ?? '') &&
    (known.isPerson(who) || isBareName(who, others, before, people));
  if (isSomebody) return !isCalm('down', 'down', after, known);
  const isCalled =
    without(before, lying).length === before.length &&
    opens(
      before.filter((each) => !isPlace(each)),
      names,
    ) &&
    !before.some(isPlace);
  if (saysWho) return isCalled || who === undefined;
  if (!isCalled) return false;
  if (word === undefined || endings.has(word) || isPlace(word) || alarmOf(word) !== undefined) return true;
  return whereabouts.has(word) && after.slice(1, 5).some(isPlace);
}

/** `Jens is down`, whoever that is: typed with a capital, without an article, and no thing. */
function isBareName(who: string, others: readonly string[], before: readonly string[], { capitals }: People): boolean {
  const isAlone = others.every((word) => openings.has(word) || alarmOf(word) !== undefined);
  const isThing = everyday.has(who) || isPlace(who) || liquids.has(who) || pots.has(who) || openings.has(who);
  return capitals.has(who) && before.length > others.length && isAlone && !isThing && alarmOf(who) === undefined;
}
