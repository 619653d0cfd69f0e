// What was read, what is needed, an example, and the lines that may have been meant as taps. Nothing is recorded.

import { guideFor } from '../../core/guide/guide.ts';
import type { PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { ownValue } from '../../core/own-key.ts';
import { byName, liveParts } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { exampleIn } from '../language/example-units.ts';
import type { Misread } from '../language/reading.ts';
import { actMeant } from './act-meant.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap, withLinesShown } from './card-context.ts';
import { exampleHere, namedHere } from './example-here.ts';
import { nextTaps } from './next-taps.ts';
import { tapsTogether } from './parts-together.ts';
import { verbOfStep } from './verb-of-step.ts';

/** A front end that knows no shop yet has examples of its own. */
export function misreadCard(telling: Telling | Pick<Telling, 'words'>, misread: Misread, by?: PersonName): Card {
  const { replies, session, buttons } = telling.words;
  /** What will be said, to be read before it is pressed; a tap that calls people says so. */
  const label = (line: string): string => {
    const alarm = ownValue(misread.calls ?? {}, line);
    if (alarm !== undefined) return session.callForHelp(alarm);
    if (misread.calms === line) return buttons['no-alarm'];
    const act = misread.meant?.find((each) => each.line === line);
    if (!('shop' in telling)) return replies.lineMeant(line);
    const meant = act && actMeant(telling, act);
    return meant ?? replies.lineMeant(telling.words.lineShown(line, telling.figures));
  };
  const asksForHelp = misread.code === 'which-cry';
  const asksWhich = misread.code === 'which-act';
  const title = asksWhich ? replies.whichAct(misread.suggestions.length) : replies.notRead;
  const call = asksForHelp && 'shop' in telling ? telling.shop.crew.spray.emergency.call : undefined;
  const isUnderstood = asksForHelp || misread.code === 'nothing-here';
  const card = makeCard(isUnderstood ? replies.notClear : title, 'warn', {
    lines: [
      // Whatever it is, the shop's own number comes first.
      ...(call === undefined ? [] : [session.callNumber(call)]),
      ...telling.words.misread(misread, exampleOf(telling, misread, by)),
      ...(misread.untaken ?? []).map(replies.untaken),
      ...(asksWhich ? [] : [replies.nothingRecorded]),
    ],
    actions: [
      ...misread.suggestions.map((line, i) => ({
        id: `meant-${i + 1}`,
        label: label(line),
        line,
        ...bareOf(misread, i),
      })),
      ...('shop' in telling ? [...partTaps(telling, misread), ...waysOn(telling, misread)] : []),
    ],
    ...known({ asksFor: misread.asks }),
  });
  return 'shop' in telling ? withLinesShown(telling, card) : card;
}

const isLost = ({ code, suggestions }: Misread): boolean => code === 'unknown-verb' && suggestions.length === 0;

/** Nothing near was found: what may be asked instead, and records nothing. */
function waysOn(telling: Telling, misread: Misread): readonly CardAction[] {
  return isLost(misread) ? [tap(telling, 'what-now', 'next-step'), tap(telling, 'help', 'help')] : [];
}

/** What alone names the suggestion of this place: yes to the only one, else the unit or the reading that was missing. */
function bareOf({ code, suggestions, couldBe, needs, calls, token }: Misread, i: number): Pick<CardAction, 'bare'> {
  if (calls !== undefined) return {};
  if (suggestions.length === 1) return { bare: ['yes'] };
  if (couldBe.length === suggestions.length)
    return known({ bare: couldBe[i] === undefined ? undefined : [couldBe[i]] });
  if (code !== 'unit-missing') return {};
  const units = needs.flatMap((need) => need.units);
  return { bare: units.filter((unit) => suggestions[i]?.split(' ').includes(`${token}${unit}`) === true) };
}

/** What is still to be said of a line of several acts. */
export const meantTap = ({ words, figures }: Telling, line: string, i: number): CardAction => ({
  id: `meant-${i + 1}`,
  label: words.replies.lineMeant(words.lineShown(line, figures)),
  line,
});

/** `dry` alone: the parts that wait for it, all together and each, as many as a phone shows. */
function partTaps(telling: Telling, { code, needs, exampleOf: name }: Misread): readonly CardAction[] {
  if (code !== 'incomplete' || !needs.some(({ slot }) => slot === 'parts' || slot === 'part')) return [];
  const waiting = statusOf.parts(telling, byName(liveParts(telling.shop))).flatMap(({ part, next }) => {
    const acts = next().filter(({ command, against }) => command.verb === name && against.length === 0);
    return acts.length === 0 ? [] : [{ part: part.name, taps: nextTaps(telling, acts) }];
  });
  const each = waiting.flatMap(({ part, taps }) =>
    taps.map((tap) => ({ ...tap, id: `${tap.id}-${part}`, label: `${tap.label.replace(/…$/, '')} ${part}` })),
  );
  return [...tapsTogether(waiting), ...each].slice(0, mostTaps);
}

const mostTaps = 4;

/** Of more words quoted together none is near. */
const fewNear = 2;
/** Which example stands where no word of a line is near any act. */
const lastResort = 'mix';

function exampleOf(telling: Telling | Pick<Telling, 'words'>, misread: Misread, by: PersonName | undefined): string {
  const { example, faulty, exampleOf: name } = misread;
  const { typed, lineShown } = telling.words;
  if (!('shop' in telling)) return example ?? typed.example(name);
  // Of a word that is near no act any example would be of another: it is what comes next.
  const isNearNone = isLost(misread) && (name === lastResort || misread.token.split(' ').length > fewNear);
  const next = isNearNone && by !== undefined ? verbOfStep(guideFor(telling, by).doing) : undefined;
  if (next !== undefined) return exampleHere(telling, next);
  if (example !== undefined) return lineShown(namedHere(telling, example, name), telling.figures);
  return faulty === undefined ? exampleHere(telling, name) : exampleIn(typed.listExample, telling.figures.units);
}
