// Where a pot or a part stands in its run: the steps that its sheet has, in the order in which hands do them, each done,
// next, to come, lacking, or passed without a word. What is done is told by its entry in the record.

import type { Batch } from '../batch/batch.ts';
import type { Entry, Fact } from '../history.ts';
import { defaultPlace } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import type { Part } from '../part/part.ts';
import type { Sheet } from '../products/sheet.ts';
import { batchOf } from '../shop.ts';
import type { AskedStep } from './step-rows.ts';
import { answerTo, stepCaseOf, stepsAskedBy } from './steps-answered.ts';

export const workSteps = [
  'air',
  'mix',
  'weigh',
  'blend',
  'filter',
  'surface',
  'prep',
  'coat',
  'dry',
  'cure',
  'cured',
  'film',
  'release',
] as const;
export type WorkStep = (typeof workSteps)[number];

export type RunStep =
  | { readonly step: AskedStep; readonly stands: 'kept' | 'lacking' | 'not-answered' }
  | { readonly step: WorkStep; readonly stands: 'done'; readonly entry: Entry }
  | { readonly step: WorkStep; readonly stands: 'next' | 'to-come' | 'passed' };

interface WorkRow {
  readonly step: WorkStep;
  /** What leaves it done; the last of them tells. */
  readonly facts: readonly Fact['type'][];
  /** Nobody waits for it: later work passes it by. */
  readonly mayPass?: true;
}

const potRows = ({ filter, blend }: Sheet): readonly WorkRow[] => [
  { step: 'air', facts: ['AirRead'], mayPass: true },
  { step: 'mix', facts: ['BatchOpened'] },
  { step: 'weigh', facts: ['PartsWeighed', 'PartWeighed'] },
  ...(blend.way === 'stir' ? [{ step: 'blend', facts: ['StirrerStopped'], mayPass: true } as const] : []),
  ...(filter === undefined ? [] : [{ step: 'filter', facts: ['MixFiltered'] } as const]),
];

const partRows: readonly WorkRow[] = [
  { step: 'prep', facts: ['SurfacePrepared'], mayPass: true },
  { step: 'surface', facts: ['SurfaceRead'], mayPass: true },
  { step: 'coat', facts: ['CoatApplied'] },
  { step: 'dry', facts: ['FilmDry'] },
  { step: 'cure', facts: ['CureStarted'] },
  { step: 'cured', facts: ['CureEnded'] },
  { step: 'film', facts: ['FilmRead'], mayPass: true },
  { step: 'release', facts: ['PartReleased'] },
];

/** Up to its first coat. */
export function runOfBatch({ shop, now }: Moment, batch: Batch): readonly RunStep[] {
  const place = shop.places.get(batch.place);
  const air = place?.entries.filter(({ happenedAt }) => happenedAt <= batch.openedAt).slice(-1) ?? [];
  const coats = batch.entries.filter(({ fact }) => fact.type === 'CoatApplied');
  return [
    ...answersOf({ shop, now }, batch),
    ...standing([...potRows(batch.sheet), { step: 'coat', facts: ['CoatApplied'] }], [...air, ...batch.entries], coats),
  ];
}

/** With what was done to the pot of its last coat. */
export function runOfPart(moment: Moment, part: Part): readonly RunStep[] {
  const batch = batchOf(moment.shop, part);
  const place = moment.shop.places.get(batch?.place ?? defaultPlace);
  const air = place?.entries.filter(({ happenedAt }) => happenedAt <= (batch?.openedAt ?? moment.now)).slice(-1) ?? [];
  const pot = batch === undefined ? [] : standing(potRows(batch.sheet), [...air, ...batch.entries], part.entries);
  const asked = batch === undefined ? [] : answersOf(moment, batch);
  return [...asked, ...pot, ...standing(partRows, part.entries, [])];
}

function answersOf({ shop, now }: Moment, batch: Batch): readonly RunStep[] {
  return stepsAskedBy(batch.sheet).map((step) => {
    const answer = answerTo(shop.crew.stepAnswers, step, stepCaseOf(batch), now);
    return { step, stands: answer === undefined ? 'not-answered' : answer.kept ? 'kept' : 'lacking' };
  });
}

/** `after`: what was done later elsewhere, by which these are over. */
function standing(rows: readonly WorkRow[], entries: readonly Entry[], after: readonly Entry[]): readonly RunStep[] {
  const found = rows.map((row) => ({ row, entry: entries.findLast(({ fact }) => row.facts.includes(fact.type)) }));
  const lastDone = after.length > 0 ? rows.length : found.findLastIndex(({ entry }) => entry !== undefined);
  const next = found.findIndex(({ entry, row }, i) => entry === undefined && i > lastDone && row.mayPass !== true);
  return found.map(({ row: { step, mayPass }, entry }, i): RunStep => {
    if (entry !== undefined) return { step, stands: 'done', entry };
    if (i < lastDone) return { step, stands: 'passed' };
    return { step, stands: i === next || (mayPass === true && i < next) ? 'next' : 'to-come' };
  });
}
