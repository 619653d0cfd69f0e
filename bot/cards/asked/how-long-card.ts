// How long still, when, and whether it is so already: the clocks of what was named, or of all that runs, the soonest first.

import { actsDone } from '../../../core/asked/acts-done.ts';
import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Verb } from '../../../core/commands.ts';
import { makeBoard } from '../board.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { actCalled, doneLine } from './done-line.ts';
import { clockLine, type ThingTold, tapsThatAsk, thingTold } from './things-told.ts';
import { whereIsCard } from './where-is-card.ts';
import { whoDidCard } from './who-did-card.ts';

/** The clock that whoever asks about the act waits for. */
const clockOf: Readonly<Partial<Record<Verb, readonly string[]>>> = {
  filter: ['stir', 'induction'],
  stir: ['stir', 'induction'],
  stop: ['stir', 'induction'],
  dry: ['flash'],
  cure: ['cure', 'flash'],
  out: ['cure'],
  release: ['cure'],
  coat: ['recoat-opens', 'recoat-closes', 'surface', 'stir', 'induction', 'pot'],
  empty: ['pot'],
  gel: ['pot'],
  thick: ['pot'],
  prep: ['surface'],
  blanket: ['lid-off'],
  lid: ['lid-off'],
};

const mostTold = 6;

export function howLongCard(telling: Telling, act: Verb | undefined, things: readonly ThingMeant[]): Card {
  const told = things.flatMap((thing) => thingTold(telling, thing) ?? []);
  const [first, second] = told;
  if (first === undefined) {
    const [thing] = things;
    if ((thing?.is === 'place' || thing?.is === 'person') && act === undefined) return whereIsCard(telling, things);
    const isUntimed = act !== undefined && clockOf[act] === undefined;
    return thing !== undefined || isUntimed ? whoDidCard(telling, act, things) : allClocks(telling, act);
  }
  const said = act === undefined ? [] : things.flatMap((thing) => saidLine(telling, thing, act));
  const main = mainClock(first, act);
  const isOne = second === undefined;
  const title = main === undefined ? first.phase : clockLine(telling, main);
  return makeCard(telling.words.asked.titled(first.name, title), 'plain', {
    facts: isOne ? first.facts : [],
    lines: [
      ...(main === undefined ? [] : [first.phase]),
      ...said,
      ...first.lines,
      ...first.clocks.filter((clock) => clock !== main).map((clock) => clockLine(telling, clock)),
      ...(first.clocks.length === 0 ? [telling.words.asked.nothingRuns] : []),
      ...told.slice(1, mostTold).map((each) => oneLine(telling, each, act)),
    ],
    actions: isOne ? tapsThatAsk(first.taps, act) : [],
  });
}

function mainClock({ clocks }: ThingTold, act: Verb | undefined): ThingTold['clocks'][number] | undefined {
  const wanted = act === undefined ? [] : (clockOf[act] ?? []);
  const ofAct = wanted.flatMap((id) => clocks.filter((clock) => clock.id === id))[0];
  return ofAct ?? clocks.find(({ urgency }) => urgency.is === 'over' || urgency.is === 'soon') ?? clocks[0];
}

/** Whether anybody said so, of the last coat where it is a part. */
function saidLine(telling: Telling, thing: ThingMeant, act: Verb): readonly string[] {
  const { asked } = telling.words;
  const since = thing.is === 'part' && act !== 'coat' && act !== 'prep' ? (thing.part.coats.at(-1)?.at ?? 0) : 0;
  const last = actsDone(telling.shop, [thing], act).findLast(({ happenedAt }) => happenedAt >= since);
  if (last === undefined) return [asked.notDone(actCalled(telling, act))];
  return [doneLine(telling, last)];
}

function oneLine(telling: Telling, each: ThingTold, act: Verb | undefined): string {
  const clock = mainClock(each, act);
  return telling.words.asked.titled(
    each.name,
    [each.phase, ...(clock === undefined ? [] : [clockLine(telling, clock)])].join(', '),
  );
}

/** Of everything: what is over first, then what ends soonest. */
function allClocks(telling: Telling, act: Verb | undefined): Card {
  const wanted = act === undefined ? undefined : clockOf[act];
  const lines = makeBoard(telling).items.flatMap(({ name, clocks }) =>
    clocks
      .filter(({ id }) => wanted === undefined || wanted.includes(id))
      .map((clock) => telling.words.asked.titled(name, clockLine(telling, clock))),
  );
  const [first, ...others] = lines;
  if (first === undefined) return makeCard(telling.words.asked.noClocks, 'plain');
  return makeCard(first, 'plain', { lines: others.slice(0, mostTold) });
}
