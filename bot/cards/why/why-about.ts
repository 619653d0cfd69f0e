// What a why is about that names no figure as it is shown: a figure of the thing that it names, by what it says of it; else what the
// sheet asks for; else what the word means.

import type { AskedFirst, ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import type { TermId } from '../../language/tongues/glossary.ts';
import { type WhyTopic, whyTopics } from '../../language/tongues/why-typed.ts';
import { withoutAccents } from '../../language/typed/without-accents.ts';
import { topicCard } from '../asked/topic-card.ts';
import type { Card } from '../card.ts';
import type { Telling } from '../card-context.ts';
import type { FactId } from '../fact-ids.ts';
import { glossaryCard } from '../glossary-card.ts';
import { type FigureAtHand, figureNamed } from './figures-at-hand.ts';

interface About {
  /** The first that is at hand. */
  readonly facts: readonly FactId[];
  readonly sheet?: Topic;
  readonly term: TermId;
}

const abouts: Readonly<Record<WhyTopic, About>> = {
  'gas-needed': { facts: [], term: 'blanket' },
  'oven-heat': { facts: [], sheet: 'sheet-cure', term: 'cure' },
  'touch-up': { facts: ['open-until'], term: 'open-time' },
  recoat: { facts: ['recoat-opens-at', 'recoat-closes-at'], sheet: 'sheet-recoat', term: 'recoat-window' },
  surface: { facts: ['surface-ends-at', 'surface-temperature'], sheet: 'sheet-surface', term: 'surface' },
  ratio: { facts: ['ratio-error', 'part-b-exact', 'part-b', 'part-a'], sheet: 'ratio', term: 'ratio' },
  spread: { facts: ['spread', 'dew-point'], sheet: 'sheet-air', term: 'spread' },
  'dew-point': { facts: ['dew-point', 'spread'], term: 'dew-point' },
  cure: { facts: ['cure-done-at', 'cure-given'], sheet: 'sheet-cure', term: 'cure' },
  hour: { facts: ['cure-done-at', 'cure-given'], sheet: 'sheet-cure', term: 'cure' },
  flash: { facts: ['flash-least-at', 'flash-most-at'], sheet: 'sheet-flash', term: 'flash-off' },
  'pot-life': { facts: ['pot-life-ends', 'pot-margin-at'], sheet: 'sheet-pot-life', term: 'pot-life' },
  blend: { facts: ['stir-done-at', 'stir-wanted', 'can-stir-wanted'], sheet: 'sheet-blend', term: 'stirring' },
  film: { facts: ['film-mean', 'wet-film-wanted'], sheet: 'sheet-film', term: 'film' },
  air: { facts: ['air-temperature', 'humidity'], sheet: 'sheet-air', term: 'air' },
};

const ofPots: readonly WhyTopic[] = ['gas-needed', 'ratio', 'pot-life', 'blend'];

/** `why is 2 gone by then`: pots die, films dry. */
export function askedFirstOfWhy(telling: Telling, about: string): AskedFirst {
  const [first] = topicsIn(telling, about);
  return first !== undefined && ofPots.includes(first) ? 'pots' : 'parts';
}

function topicsIn({ hearing }: Telling, about: string): readonly WhyTopic[] {
  const said = withoutAccents(about.toLowerCase());
  const found = hearing.tongues.flatMap(({ questions: { why } }) => {
    // What stands behind the word before what led in to it.
    const topicsOf = (text: string) => whyTopics.filter((topic) => why.topics[topic].test(text));
    const after = topicsOf(said.replace(why.word, ''));
    return after.length > 0 ? after : topicsOf(said);
  });
  return found.toSorted((one, other) => whyTopics.indexOf(one) - whyTopics.indexOf(other));
}

/** The figure that it holds, or that it says something of; of what it names before whatever else there is. */
export function figureAbout(
  telling: Telling,
  about: string,
  ofThings: readonly FigureAtHand[],
  others: readonly FigureAtHand[],
): FigureAtHand | undefined {
  const held = telling.hearing.tongues.flatMap(({ questions }) => about.match(questions.why.figure) ?? []);
  for (const pool of [ofThings, others]) {
    for (const figure of held) {
      const named = figureNamed(figure, pool, () => []);
      if (named !== undefined) return named;
    }
  }
  const [topic] = topicsIn(telling, about);
  if (topic === undefined) return undefined;
  const pool = ofThings.length > 0 ? ofThings : others;
  return abouts[topic].facts.flatMap((id) => pool.find(({ fact }) => fact.id === id) ?? [])[0];
}

/** What the sheet asks for, or what the word means; `undefined` where it speaks of neither. */
export function cardAbout(telling: Telling, about: string, things: readonly ThingMeant[]): Card | undefined {
  const [topic] = topicsIn(telling, about);
  if (topic === undefined) return undefined;
  const { sheet, term } = abouts[topic];
  const meaning = glossaryCard(telling, term);
  if (sheet === undefined) return meaning;
  const card = topicCard(telling, { ask: 'how-stands', topic: sheet, of: [] }, things, '');
  return { ...card, lines: [...card.lines, ...meaning.lines.slice(0, 1)] };
}
