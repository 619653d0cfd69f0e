// One published value and ours beside it: how it is written down, checked and counted.

import { describe, expect, it } from 'vitest';
import { isFailed } from '../../core/failed.ts';

/**
 * How well the published value is known. `seen`: read in the source. `run`: from a reference library. `derived`:
 * arithmetic from seen numbers or exact definitions. `from-memory`: the paper standard was not at hand.
 */
export type Standing = 'seen' | 'run' | 'derived' | 'from-memory';

export interface PublishedCase {
  readonly standing: Standing;
  readonly says: string;
  readonly source: string;
  readonly ours: () => unknown;
  readonly published: unknown;
  /** Largest difference allowed between two numbers, in their own unit; nothing for an exact one. */
  readonly within: number;
}

type Written = (
  says: string,
  source: string,
  ours: () => unknown,
  published: unknown,
  within?: number,
) => PublishedCase;

const as =
  (standing: Standing): Written =>
  (says, source, ours, published, within = 0) => ({ standing, says, source, ours, published, within });

export const seen = as('seen');
export const run = as('run');
export const derived = as('derived');
export const fromMemory = as('from-memory');

/** Every case is a test; the counts make a dropped case fail. */
export function checkPublished(
  section: string,
  counts: Readonly<Record<Standing, number>>,
  cases: readonly PublishedCase[],
): void {
  describe(section, () => {
    for (const { standing, says, source, ours, published, within } of cases) {
      const mark = standing === 'from-memory' ? 'from memory: ' : '';
      it(`${mark}${says} [${source}]`, () => {
        const found = ours();
        if (typeof found === 'number' && typeof published === 'number') {
          expect(Math.abs(found - published), `ours ${found}, published ${published}`).toBeLessThanOrEqual(within);
        } else {
          expect(found).toEqual(published);
        }
      });
    }
    it('holds every case of the section', () => {
      const held = (standing: Standing) => cases.filter((one) => one.standing === standing).length;
      expect({
        seen: held('seen'),
        run: held('run'),
        derived: held('derived'),
        'from-memory': held('from-memory'),
      }).toEqual(counts);
    });
  });
}

/** For a sum that the test expects to be answered: a refusal fails with its own figures. */
export function answered<T>(result: T): Exclude<T, { readonly failed: unknown }> {
  if (isFailed(result)) throw new Error(`refused: ${JSON.stringify(result)}`);
  return result as Exclude<T, { readonly failed: unknown }>;
}
