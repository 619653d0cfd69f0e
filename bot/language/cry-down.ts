// Who is down: a person of the crew, somebody, a name; a machine, a tool and a price never call.

import { isCalm } from './cry-calm.ts';
import { alarmOf, type CryContext, isPerson, isPlace, opens, without } from './cry-round.ts';

/** `kari is down`, `man down`, `down in the booth`; not `the printer is down`, `down to 20C`. */
export function isPersonDown(before: readonly string[], after: readonly string[], context: CryContext): boolean {
  const { cries } = context;
  const isThere = (each: string): boolean => isPlace(each, context);
  const [word] = after;
  const article = cries.articles.has(word ?? '') ? without(after, cries.articles)[0] : word;
  const saysWho = article !== undefined && isPerson(article, context);
  const [who, ...others] = without(before, cries.lying);
  const isSomebody =
    who !== undefined &&
    !cries.putting.has(others[0] ?? '') &&
    (isPerson(who, context) || isBareName(who, others, before, context));
  if (isSomebody) return !isCalm('down', 'down', after, context);
  const isCalled =
    without(before, cries.lying).length === before.length &&
    opens(
      before.filter((each) => !isThere(each)),
      context,
    ) &&
    !before.some(isThere);
  if (saysWho) return isCalled || who === undefined;
  if (!isCalled) return false;
  if (word === undefined || cries.endings.has(word) || isThere(word) || alarmOf(word, context) !== undefined)
    return true;
  return cries.whereabouts.has(word) && after.slice(1, 5).some(isThere);
}

/** `Jens is down`, whoever that is: typed with a capital, without an article, and no thing. */
function isBareName(who: string, others: readonly string[], before: readonly string[], context: CryContext): boolean {
  const { cries, capitals } = context;
  const isAlone = others.every((word) => cries.openings.has(word) || alarmOf(word, context) !== undefined);
  const isThing =
    cries.everyday.has(who) ||
    isPlace(who, context) ||
    cries.liquids.has(who) ||
    cries.pots.has(who) ||
    cries.openings.has(who);
  return (
    capitals.has(who) && before.length > others.length && isAlone && !isThing && alarmOf(who, context) === undefined
  );
}
