// When a part may be released, and that it left without.

import { type Disposition, mustTell } from '../disposition.ts';
import type { FactOf } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { type RestsOnReadings, readSoundly } from '../instrument/read-soundly.ts';
import type { Rule } from '../rules.ts';
import type { Failed } from './failed-readings.ts';
import { coated, cureGiven, type PartCase, stillOurs } from './part-rules.ts';
import type { ReleaseAsked } from './release-asked.ts';

/** Asked of what has left, never before it: nobody is kept from telling that a part is gone. */
export const leftRules: readonly Rule<PartCase>[] = [
  {
    code: 'not-released',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ part: { verdict } }) => (verdict?.is === 'released' ? undefined : { code: 'not-released' }),
  },
];

export interface ReleaseCase extends PartCase, RestsOnReadings {
  /** Readings that failed and that no hold in the record names: taken before readings held anything. */
  readonly unlifted: readonly Failed[];
  readonly by: PersonName;
  readonly asked: ReleaseAsked | undefined;
  /** Its last set of spots, where that is not whole. */
  readonly half: { readonly told: number; readonly needed: number } | undefined;
}

/** Half a set of spots proves nothing. Whoever may release may do so with a reason that is printed; nobody stands in for second eyes. */
const askedByJob: readonly Rule<ReleaseCase>[] = [
  readSoundly,
  {
    code: 'not-given',
    source: 'asked by the job',
    liftedBy: 'supervisor',
    since: 8,
    check: ({ asked }) =>
      asked === undefined || asked.lacking.length === 0
        ? undefined
        : { code: 'not-given', job: asked.job, lacking: asked.lacking },
  },
  {
    code: 'film-half',
    source: 'the order of the work',
    liftedBy: 'supervisor',
    since: 10,
    // Where its job asks for a film that is what lacks.
    check: ({ half, asked }) =>
      half === undefined || asked?.lacking.some(({ of }) => of === 'film') === true
        ? undefined
        : { code: 'film-half', ...half },
  },
  {
    code: 'second-eyes',
    source: 'asked by the job',
    liftedBy: 'nobody',
    since: 8,
    check: ({ asked, by }) =>
      asked?.secondEyes?.coatedBy.includes(by) === true ? { code: 'second-eyes', ...asked.secondEyes } : undefined,
  },
];

const onHold: Rule<Pick<ReleaseCase, 'part' | 'unlifted'>> = {
  code: 'on-hold',
  source: 'the order of the work',
  liftedBy: 'lead',
  check: ({ part: { verdict }, unlifted }) => {
    if (verdict?.is !== 'held' && unlifted.length === 0) return undefined;
    const { why, because, failed } = verdict?.is === 'held' ? verdict : { why: '', because: [], failed: [] };
    const codes = new Set([...because, ...unlifted.map(({ objection }) => objection.code)]);
    const readings = [...failed, ...unlifted.map(({ reading }) => reading)];
    return { code: 'on-hold', why, because: [...codes], failed: readings };
  },
};

/** Of what is on hold alone. */
export const heldRules: readonly Rule<PartCase>[] = [
  {
    code: 'not-on-hold',
    source: 'the order of the work',
    liftedBy: 'nobody',
    since: 9,
    check: ({ part: { verdict } }) => (verdict?.is === 'held' ? undefined : { code: 'not-on-hold' }),
  },
];

/** What keeps a part until a lead has looked at it. */
export const partHolds = [onHold];

const notReleased: Rule<PartCase> = {
  code: 'already-released',
  source: 'the order of the work',
  liftedBy: 'nobody',
  check: ({ part: { verdict } }) =>
    verdict?.is === 'released' ? { code: 'already-released', at: verdict.at } : undefined,
};

/** What is in the oven cannot go to anybody: it is taken out first, and what is lifted then is lifted by itself. */
const outOfOven: Rule<PartCase> = {
  code: 'still-in-oven',
  source: 'the order of the work',
  liftedBy: 'nobody',
  since: 5,
  check: ({ part: { cure } }) =>
    cure?.way === 'oven' && cure.run.to === undefined ? { code: 'still-in-oven', since: cure.run.from } : undefined,
};

export const releaseRules: readonly Rule<ReleaseCase>[] = [
  coated,
  stillOurs,
  notReleased,
  outOfOven,
  onHold,
  cureGiven,
  ...askedByJob,
];

export interface DisposedCase extends ReleaseCase {
  readonly disposed: FactOf<'PartDisposed'>;
}

const told: Rule<DisposedCase> = {
  code: 'not-told',
  source: 'the order of the work',
  liftedBy: 'nobody',
  since: 9,
  check: ({ disposed, part: { verdict } }) => {
    const { as } = disposed;
    const lacking = mustTell[as].filter((telling) => (disposed[telling] ?? '') === '');
    const hold = verdict?.is === 'held' ? verdict : undefined;
    return lacking.length === 0 ? undefined : { code: 'not-told', as, lacking, hold };
  },
};

/** Something has to be conceded: a part that nothing speaks against is released. */
const conceded: Rule<DisposedCase> = {
  code: 'not-on-hold',
  source: 'the order of the work',
  liftedBy: 'nobody',
  since: 9,
  check: ({ part: { verdict }, unlifted }) =>
    verdict?.is === 'held' || unlifted.length > 0 ? undefined : { code: 'not-on-hold' },
};

/** A concession is for what holds the part and nothing else: what besides stands against its release is asked all the same. */
export const dispositionRules: Readonly<Record<Disposition, readonly Rule<DisposedCase>[]>> = {
  rework: [coated, outOfOven, told],
  concession: [coated, stillOurs, notReleased, outOfOven, conceded, told, cureGiven, ...askedByJob],
  scrap: [stillOurs, outOfOven, told],
  return: [stillOurs, outOfOven, told],
};
