// The latest act's line with what was wrong in it put right: another figure, part, batch or way.

import { takesBatch, withBatch } from '../../../core/commands.ts';
import { ownValue } from '../../../core/own-key.ts';
import { ownUnits } from '../own-units.ts';
import type { LineContext } from '../reading.ts';
import { batchMarks, fillers } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { type QuantityToken, type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Strictly } from '../understood.ts';
import { writeLine } from '../write-line.ts';
import type { SaidAct } from './last.ts';

interface Anew {
  readonly line: string;
  /** As a correction in place would say it. */
  readonly figure?: string;
}

interface Change {
  readonly to: string;
  readonly from: string | undefined;
}

export function actsAnew(
  { to, from }: Change,
  act: SaidAct,
  context: LineContext,
  strictly: Strictly,
): readonly Anew[] {
  const { hearing } = context;
  const tokens = tokenize(to, hearing).filter((token) => !fillers.has(wordIn(token)) || batchMarks.has(wordIn(token)));
  const [first, second, ...more] = tokens;
  if (first === undefined || more.length > 0) return [];
  const line = act.line ?? '';
  if (second !== undefined) {
    if (second.kind === 'number' && batchMarks.has(wordIn(first))) return ofBatch(second.text, line, context, strictly);
    return ofPart(`${first.text}-${second.text}`.toLowerCase(), from, line, context);
  }
  switch (first.kind) {
    case 'quantity':
      return ofFigure(first, from, line, context);
    case 'number':
      return [...ofNumber(first, from, line, context), ...numberedPart(first.text, from, line, context)];
    case 'word':
      if (methodsByWord.has(first.word)) return ofWay(first.text, line, context);
      return ofPart(first.word, from, line, context);
    case 'quoted':
    case 'doubt':
    case 'impossible':
      return [];
    default: {
      const never: never = first;
      return never;
    }
  }
}

const put = (line: string, { start, end }: Token, text: string): string =>
  line.slice(0, start) + text + line.slice(end);

/** Those that it was not, where that was said. */
function quantitiesIn(line: string, from: string | undefined, { hearing }: LineContext): readonly QuantityToken[] {
  const was = from === undefined ? undefined : Number.parseFloat(from.replace(',', '.'));
  return tokenize(line, hearing).filter(
    (token): token is QuantityToken => token.kind === 'quantity' && (was === undefined || token.value === was),
  );
}

function ofFigure(to: QuantityToken, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  const same = quantitiesIn(line, undefined, context).filter(({ quantity }) => quantity.is === to.quantity.is);
  const meant = same.length > 1 && from !== undefined ? quantitiesIn(line, from, context) : same;
  const figures = meant.map((old) => ({
    line: put(line, old, to.text),
    figure: `${letterOf(old, line, context)}${to.text}`,
  }));
  return figures.length === 0 ? [{ line: '', figure: to.text }] : figures;
}

/** Of two weights each has its letter. */
function letterOf(old: QuantityToken, line: string, context: LineContext): string {
  const masses = quantitiesIn(line, undefined, context).filter(({ quantity }) => quantity.is === 'mass');
  const at = masses.findIndex(({ start }) => start === old.start);
  return masses.length === 2 && at !== -1 ? `${['a', 'b'][at] ?? ''} ` : '';
}

/** In which of these units it is nearest to what it was. */
const alike: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'kg', 'lb', 'oz'],
  kg: ['kg', 'g', 'lb', 'oz'],
  C: ['C', 'F'],
  F: ['F', 'C'],
  um: ['um', 'mil'],
};

function ofNumber({ text }: Token, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  return quantitiesIn(line, from, context).flatMap((old) => {
    const written = /[A-Za-z%]+$/.exec(old.text)?.[0] ?? '';
    const units = ownUnits(ownValue(alike, written) ?? [written], context.units);
    const said = units.flatMap((unit) => {
      const [token] = tokenize(`${text}${unit}`, context.hearing);
      return token?.kind === 'quantity' ? [token] : [];
    });
    const far = (token: QuantityToken): number =>
      Math.abs(Math.log(Math.abs(token.quantity.value || 1e-9) / Math.abs(old.quantity.value || 1e-9)));
    const [nearest] = said.toSorted((a, b) => far(a) - far(b));
    return nearest === undefined
      ? []
      : [{ line: put(line, old, nearest.text), figure: `${letterOf(old, line, context)}${nearest.text}` }];
  });
}

/** `the 8`, where the part before was `impeller-7`. */
function numberedPart(number: string, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  return partsIn(line, from, context).flatMap((old) => {
    const part = old.text.replace(/\d+$/, number);
    return context.parts.includes(part) && part !== old.text ? [{ line: put(line, old, part) }] : [];
  });
}

function partsIn(line: string, from: string | undefined, { hearing, parts }: LineContext): readonly Token[] {
  const was = from?.toLowerCase().replaceAll(' ', '-');
  return tokenize(line, hearing).filter(
    (token) =>
      parts.includes(wordIn(token)) && (was === undefined || token.text === was || token.text.endsWith(`-${was}`)),
  );
}

function ofPart(part: string, from: string | undefined, line: string, context: LineContext): readonly Anew[] {
  if (!context.parts.includes(part)) return [];
  return partsIn(line, from, context).flatMap((old) => (old.text === part ? [] : [{ line: put(line, old, part) }]));
}

function ofBatch(number: string, line: string, context: LineContext, strictly: Strictly): readonly Anew[] {
  const read = strictly(line);
  const batch = Number(number);
  if (read.kind !== 'command' || !takesBatch(read.command) || !context.batches.includes(batch)) return [];
  if (read.command.batch === batch) return [];
  return [{ line: writeLine({ command: withBatch(read.command, batch), stance: { is: 'asked' } }, context) }];
}

function ofWay(way: string, line: string, { hearing }: LineContext): readonly Anew[] {
  const old = tokenize(line, hearing).find((token) => methodsByWord.has(wordIn(token)));
  return old === undefined ? [] : [{ line: put(line, old, way), figure: way }];
}
