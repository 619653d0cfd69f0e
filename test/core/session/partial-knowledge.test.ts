// Thirty sessions and more of which something is not known, or known to be wrong: what was missing, and what spraying was objected to for.
// Sheets and people invented; the sums rest on test/standards.

import { describe, expect, it } from 'vitest';
import { solvents } from '../../../core/calc/solvents.ts';
import type { ObjectionCode } from '../../../core/objections.ts';
import type { SheetShelf } from '../../../core/products/sheet.ts';
import { given } from '../given.ts';
import { shelfWith, sprayOf } from './own-sheets.ts';

interface PartlyKnown {
  readonly missing: string;
  readonly objects: readonly ObjectionCode[];
  readonly lines: readonly string[];
  readonly shelf?: SheetShelf;
  readonly act?: string;
}

// Stirred by 9:42 at 24 degC: see batch/pot-life.test.ts.
const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const booth = '09:43 @omar: set booth 4m2';
const brief = '09:43 brief 1 in booth spray kari';
const read = '09:43 ack';
const fan = '09:44 fan on 0.6m/s';
const supplied = '09:44 supplied yes';
const start = '09:50 spray on';
const whole = [...filtered, booth, brief, read, fan, supplied];
/** The whole without these, or with others in their place. */
const but = (...changed: readonly (readonly [was: string, is?: string])[]) =>
  whole.flatMap((line) => {
    const change = changed.find(([was]) => was === line);
    return change === undefined ? [line] : change.slice(1).flatMap((is) => (is === undefined ? [] : [is]));
  });
const assess = (until: string, place = 'booth') =>
  `09:45 @rosa: assess demo-clear in ${place} spray without-supplied-air until ${until}`;
const withoutLel = Object.entries(solvents).find(([, { lowerExplosiveLimits }]) => lowerExplosiveLimits.length === 0);
const named = { named: [{ kind: 'isocyanates' }], source: 'invented' };

const table: readonly PartlyKnown[] = [
  {
    missing: 'no brief at all',
    objects: ['no-brief'],
    lines: [...filtered, booth],
    act: '09:50 coat new rail-1 1 spray',
  },
  { missing: 'nobody has read the brief', objects: ['brief-not-acknowledged'], lines: but([read]) },
  {
    missing: 'who stays near has not read it',
    objects: ['brief-not-acknowledged'],
    lines: but([brief, '09:43 brief 1 in booth spray kari near rosa']),
  },
  {
    missing: 'who came later has not read it',
    objects: ['brief-not-acknowledged'],
    lines: [...whole, '09:45 near rosa stays'],
  },
  {
    missing: 'neither fan nor supplied air was told',
    objects: ['no-extraction-no-air'],
    lines: but([fan], [supplied]),
  },
  {
    missing: 'no fan, and supplied air not told',
    objects: ['no-extraction-no-air', 'fan-too-weak'],
    lines: but([fan, '09:44 fan no'], [supplied]),
  },
  { missing: 'the fan, beside supplied air', objects: ['fan-not-measured'], lines: but([fan]) },
  { missing: 'the velocity at the face', objects: ['fan-not-measured'], lines: but([fan, '09:44 fan on']) },
  { missing: 'the open face of the booth', objects: ['fan-not-measured'], lines: but([booth]) },
  { missing: 'a face velocity that is enough', objects: ['fan-too-weak'], lines: but([fan, '09:44 fan on 0.3m/s']) },
  {
    missing: 'supplied air, with no assessment yet',
    objects: ['no-assessment'],
    lines: but([supplied, '09:44 supplied no']),
  },
  { missing: 'whether there is supplied air', objects: ['no-assessment'], lines: but([supplied]) },
  {
    missing: 'an assessment that has not ended',
    objects: ['no-assessment'],
    lines: [...but([supplied, '09:44 supplied no']), assess('2026-03-01')],
  },
  {
    missing: 'an assessment for this booth',
    objects: ['no-assessment'],
    lines: [...but([supplied, '09:44 supplied no']), assess('2026-12-31', 'booth-2')],
  },
  {
    missing: 'the velocity, without supplied air',
    objects: ['fan-not-measured', 'supplied-air-or-none'],
    lines: but([fan, '09:44 fan on'], [supplied, '09:44 supplied no']),
  },
  {
    missing: 'whether the sheet holds a sensitiser, without supplied air',
    objects: ['supplied-air-or-none'],
    lines: [...but([supplied, '09:44 supplied no']), assess('2026-12-31')],
    shelf: shelfWith({ sensitisers: undefined }),
  },
  {
    missing: 'supplied air where the sheet names isocyanates',
    objects: ['supplied-air-or-none'],
    lines: [...but([supplied, '09:44 supplied no']), assess('2026-12-31')],
    shelf: shelfWith({ sensitisers: named }),
  },
  {
    missing: 'what the sheet says of spraying',
    objects: ['air-not-summed'],
    lines: whole,
    shelf: shelfWith({ spray: undefined }),
  },
  {
    missing: 'the same, without supplied air',
    objects: ['supplied-air-or-none', 'air-not-summed'],
    lines: [...but([supplied, '09:44 supplied no']), assess('2026-12-31')],
    shelf: shelfWith({ spray: undefined }),
  },
  {
    missing: 'the explosive limit of a solvent',
    objects: ['air-not-summed'],
    lines: whole,
    shelf: shelfWith({ spray: sprayOf(withoutLel?.[0] ?? '') }),
  },
  {
    missing: 'how much is sprayed in an hour',
    objects: ['air-not-summed'],
    lines: [booth, '09:43 brief in booth spray kari', read, fan, supplied],
  },
  {
    missing: 'who else is near, where the crew says so in its briefs',
    objects: ['near-not-named'],
    lines: [
      ...[...filtered, '09:42 @omar: set booth 4m2', '09:42 brief 1 in booth spray kari out rosa', '09:42 close'],
      ...[brief, read, fan, supplied],
    ],
  },
  {
    missing: 'a date of the fit test, where the crew keeps them',
    objects: ['dates-not-known'],
    lines: [...whole, '09:45 @omar: fit rosa 2027-03-01'],
  },
  {
    missing: 'the medical of who stays near, where the crew keeps them',
    objects: ['dates-not-known'],
    lines: [
      ...[...filtered, booth, '09:43 brief 1 in booth spray kari near rosa', read, '09:43 @rosa: ack', fan, supplied],
      '09:45 @omar: medical kari 2027-03-01',
    ],
  },
  {
    missing: 'a spray training that has not run out',
    objects: ['not-qualified'],
    lines: [...whole, '09:45 @omar: training kari 2026-03-01'],
  },
  {
    missing: 'a name on the crew’s list of sprayers',
    objects: ['may-not-spray'],
    lines: [...whole, '09:45 @omar: set sprayers omar'],
  },
  {
    missing: 'whether a pit is sprayed from outside',
    objects: ['confined-place'],
    lines: but([booth, '09:43 @omar: set booth pit-1 4m2'], [brief, '09:43 brief 1 in pit-1 spray kari']),
  },
  {
    missing: 'the permit for a vessel’s inside',
    objects: ['inside-vessel'],
    lines: but([brief, '09:43 brief 1 in booth spray kari vessel']),
  },
  {
    missing: 'breathing air that passed its last check',
    objects: ['breathing-air-not-fit'],
    lines: [...whole, '09:45 @omar: breathing air o2 20.9% co 14ppm co2 400ppm oil 0.1mg no-smell'],
  },
  {
    missing: 'the carbon monoxide of the breathing air',
    objects: ['breathing-air-unchecked'],
    lines: [...whole, '09:45 @omar: breathing air o2 20.9% co2 400ppm oil 0.1mg no-smell'],
  },
  { missing: 'a brief for this booth', objects: ['brief-lapsed'], lines: whole, act: '09:50 spray on in booth-2' },
  { missing: 'a brief of this shift', objects: ['brief-lapsed'], lines: [...whole, '09:45 shift on'] },
];

describe('a session of which something is not known', () => {
  it.each(table)(
    'given that $missing is missing, then it objects: $objects',
    async ({ lines, objects, shelf, act }) => {
      const shift = await given(lines, shelf === undefined ? {} : { shelf });
      expect(await shift.when(act ?? start)).toEqual({ objected: objects });
    },
  );

  it('given them all, then there are thirty-two, no two alike, and with nothing missing the gun runs', async () => {
    expect(new Set(table.map(({ lines, shelf, act }) => JSON.stringify([lines, shelf && [...shelf], act]))).size).toBe(
      32,
    );
    expect(await (await given(whole)).when(start)).toEqual({ recorded: ['SprayStarted'] });
  });
});
