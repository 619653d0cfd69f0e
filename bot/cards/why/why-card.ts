// The answer to `why`: how the figure is made, in words and figures; who read what it rests on; its source; what was taken for
// want of better; which way it errs.

import type { Entry } from '../../../core/history.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { type Card, makeCard } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { factUnits } from '../fact-ids.ts';
import { figureSource } from '../figure-source.ts';
import type { WhySource } from './told.ts';
import type { FigureAsked, Why } from './why.ts';
import { errsOf, whys } from './whys.ts';

export function whyCard(asked: FigureAsked): Card {
  const { telling, fact } = asked;
  const { why: words } = telling.words;
  const title = words.title(fact.label, fact.shown);
  // What was noted with an act stands as it was said.
  if (!isOwnKey(factUnits, fact.id)) return makeCard(title, 'plain', { facts: [fact], lines: [words.errs['as-read']] });
  const found = whys[fact.id](asked);
  return makeCard(title, 'plain', {
    lines: [
      words.how(words.formulas[fact.id]),
      ...(found === undefined ? [words.gone] : whyLines(telling, found, fact.shown)),
      words.errs[errsOf(fact.id)],
    ],
  });
}

/** Without how it is made: what it comes to, from what. */
export function whyLinesOf(asked: FigureAsked): readonly string[] {
  const { telling, fact } = asked;
  const found = isOwnKey(factUnits, fact.id) ? whys[fact.id](asked) : undefined;
  return found === undefined ? [] : whyLines(telling, found, fact.shown);
}

function whyLines(telling: Telling, { sum, read, source, assumed, now }: Why, shown: string): readonly string[] {
  const { why: words } = telling.words;
  return [
    ...sum,
    ...(read.length === 0 ? [] : [words.read(read.map((entry) => readLine(telling, entry)))]),
    sourceLine(telling, source),
    ...(assumed.length === 0 ? [] : [words.assumed(assumed)]),
    ...(now === undefined || now === shown ? [] : [words.nowIs(now)]),
  ];
}

export function readLine({ words, figures }: Telling, entry: Entry): string {
  return words.why.by(words.undo.act(entry, figures), entry.by, entry.happenedAt, figures);
}

export function sourceLine(telling: Telling, source: WhySource): string {
  const { why: words, names } = telling.words;
  if (source.is === 'law') return words.lawSource(figureSource(telling, source.of));
  const quoted = source.is === 'sheet' ? source.source : source.is === 'published' ? source.what : '';
  return words.source(source, names.source(quoted));
}
