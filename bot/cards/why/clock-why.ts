// Why a clock ends when it does: what each stretch of temperature wanted and earned, which readings it rests on, and what ran for
// want of one.

import type { Stretch } from '../../../core/calc/clock-sum.ts';
import type { Caution } from '../../../core/calc/dose.ts';
import type { Entry } from '../../../core/history.ts';
import type { Sheet } from '../../../core/products/sheet.ts';
import type { Duration } from '../../../core/products/sheet-duration.ts';
import { type EpochMs, minutesBetween } from '../../../core/units.ts';
import type { Telling } from '../card-context.ts';
import type { StretchTold } from './told.ts';
import { entriesOf, type Subjects, sheetSource, type Why, why } from './why.ts';

export interface ClockTold {
  readonly sheet: Sheet;
  /** The sheet's field, and what stands in it. */
  readonly field: string;
  readonly duration: Duration;
  readonly caution: Caution;
  readonly stretches: readonly Stretch[];
  readonly now: string | undefined;
}

/** More would not be read on a phone: the last ones tell. */
const mostStretches = 4;
const mostRead = 3;

export function clockWhy(telling: Telling, of: Subjects, told: ClockTold): Why {
  const { words, figures, shop } = telling;
  const { stretches, caution, sheet, field, duration } = told;
  const [first] = stretches;
  const last = stretches.at(-1);
  const read =
    first === undefined || last === undefined
      ? []
      : readBetween(entriesOf(shop.places.get(of.place)?.entries, 'AirRead', 'LowestRead'), first.from, last.to);
  return why(sheetSource(sheet, field, duration.source), {
    sum: [words.why.law(duration, figures), ...stretchLines(telling, stretches, caution)],
    read: read.slice(-mostRead),
    assumed: [
      ...new Set(
        stretches.flatMap(({ why: without, expected, celsius }) => [
          ...(without === undefined ? [] : [words.why.withoutFigure(without, caution)]),
          ...(expected && celsius !== undefined ? [words.why.heldOn] : []),
        ]),
      ),
    ],
    now: told.now,
  });
}

export function stretchLines(
  { words, figures }: Telling,
  stretches: readonly Stretch[],
  caution: Caution,
): readonly string[] {
  const lines = stretches.map((stretch) => words.why.stretch(stretchTold(stretch), caution, figures));
  const over = lines.length - mostStretches;
  return over > 0 ? [words.why.before(over), ...lines.slice(over)] : lines;
}

function stretchTold({ from, to, celsius, perMinute, why: without, expected }: Stretch): StretchTold {
  const lasted = minutesBetween(from, to);
  return {
    ...{ lasted, celsius, expected, why: without },
    whole: perMinute > 0 ? 1 / perMinute : undefined,
    share: lasted * perMinute,
  };
}

/** The one that served at the start, and those since. */
export function readBetween(entries: readonly Entry[], from: EpochMs, to: EpochMs): readonly Entry[] {
  const before = entries.findLast(({ happenedAt }) => happenedAt <= from);
  const since = entries.filter(({ happenedAt }) => happenedAt > from && happenedAt <= to);
  return [...(before === undefined ? [] : [before]), ...since];
}
