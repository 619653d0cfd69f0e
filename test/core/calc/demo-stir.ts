// The invented demo sheet's stir, and pieces of a day to run it over.

import type { DoseRules, Piece } from '../../../core/calc/dose.ts';
import type { RateLaw } from '../../../core/calc/rate-law.ts';
import { celsius, epochMs, minutes, minutesAfter } from '../../../core/units.ts';

/** 90 to 120 minutes, the colder the longer (common practice, no source); the temperatures are invented. */
export const stirLaw: RateLaw = {
  kind: 'table',
  points: [
    { celsius: celsius(15), minutes: minutes(120) },
    { celsius: celsius(30), minutes: minutes(90) },
  ],
};

export const stir: DoseRules = { law: stirLaw, caution: 'at-least', withoutFigure: 'nothing' };
export const stirAtSlowest: DoseRules = { law: stirLaw, caution: 'at-least', withoutFigure: 'slowest' };
export const potLife: DoseRules = { law: stirLaw, caution: 'at-most', withoutFigure: 'nothing' };

export const morning = epochMs(Date.UTC(2026, 2, 2, 8));
export const minutesIn = (lasted: number) => minutesAfter(morning, minutes(lasted));

/** Pieces one after another from eight in the morning: minutes and temperature, `undefined` where nobody read it. */
export function day(...lasting: readonly (readonly [lasted: number, at: number | undefined])[]): readonly Piece[] {
  let from = 0;
  return lasting.map(([lasted, at]) => {
    const piece = {
      from: minutesIn(from),
      to: minutesIn(from + lasted),
      celsius: at === undefined ? undefined : celsius(at),
    };
    from += lasted;
    return piece;
  });
}
