// What each act is done to and which figures it takes, so that a strict line of it can be made from the slots that were heard.

import type { BatchPhase } from '../../../core/batch/batch.ts';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import type { PartPhase } from '../../../core/part/part.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import type { FigureOf } from './piece.ts';

export interface FigureRow {
  readonly of: FigureOf;
  /** What a bare number is read in; none: it stays bare, and the strict reader asks. */
  readonly bare?: Readonly<Record<UnitSystem, { readonly unit: string; readonly from: number; readonly to: number }>>;
  readonly most: number;
}

export interface ActRow {
  readonly on: 'parts' | 'batch' | 'can' | 'nothing';
  /** Of those that are live, the ones that it can be done to now: where none is named, the only one. */
  readonly parts?: readonly PartPhase['is'][];
  readonly batches?: readonly (BatchPhase['is'] | 'over')[];
  readonly figures?: readonly FigureRow[];
  /** Without a thing it is still an act: `out`, of the only load; `surface`, of the room. */
  readonly thingMayLack?: true;
  readonly isDecision?: true;
  /** What the same words rather tell of what it cannot be done to now. */
  readonly instead?: SaidAct;
  /** Its strict line takes one part: of several, each has a line of its own. */
  readonly isOfOne?: true;
  readonly takes?: readonly (
    | 'method'
    | 'solvent'
    | 'person'
    | 'place'
    | 'batch'
    | 'reason'
    | 'letters'
    | 'grade'
    | 'gas'
  )[];
}

const range = (
  metric: readonly [string, number, number],
  us: readonly [string, number, number],
): FigureRow['bare'] => ({
  metric: { unit: metric[0], from: metric[1], to: metric[2] },
  us: { unit: us[0], from: us[1], to: us[2] },
});

/** Beyond these a bare number is more likely something else. Our own figures, no source. */
const roomTemperature = range(['C', 5, 45], ['F', 41, 113]);
const ovenTemperature = range(['C', 30, 250], ['F', 90, 480]);
const humidity = range(['%', 10, 99], ['%', 10, 99]);
const scale = range(['g', 20, 50_000], ['g', 20, 50_000]);
/** From none to all of it. */
const rating = range(['', 0, 5], ['', 0, 5]);
const film = range(['um', 1, 1_000], ['mil', 0.1, 40]);

const one = (of: FigureRow['of'], bare?: FigureRow['bare']): FigureRow => ({ of, most: 1, ...(bare && { bare }) });
const many = (of: FigureRow['of'], bare?: FigureRow['bare']): FigureRow => ({ of, most: 12, ...(bare && { bare }) });

const pot = (batches: ActRow['batches'], more: Partial<ActRow> = {}): ActRow => ({
  on: 'batch',
  ...(batches && { batches }),
  ...more,
});
const onParts = (parts: ActRow['parts'], more: Partial<ActRow> = {}): ActRow => ({
  on: 'parts',
  ...(parts && { parts }),
  ...more,
});
const alone = (more: Partial<ActRow> = {}): ActRow => ({ on: 'nothing', ...more });

const oven = onParts(['dry'], { figures: [one('temperature', ovenTemperature)] });
/** What becomes of a part is decided, and offered only to whoever says so clearly. */
const disposed = onParts(undefined, { isDecision: true });
const prepared = onParts(['bare'], {
  takes: ['solvent', 'grade'],
  figures: [one('film')],
});
const brush = alone({ figures: [one('volume')], takes: ['solvent'] });
const gun = alone({ figures: [one('volume')], takes: ['solvent', 'batch'] });

export const actRows: Readonly<Record<SaidAct, ActRow>> = {
  mix: alone({ figures: [one('mass')] }),
  weigh: pot(['to-weigh'], { figures: [{ of: 'mass', most: 2, ...(scale && { bare: scale }) }], takes: ['letters'] }),
  stir: pot(['paused']),
  stop: pot(['blending']),
  filter: pot(['blending', 'paused'], { figures: [one('film')] }),
  thick: pot(['blending', 'paused', 'filtered', 'over']),
  gel: pot(['blending', 'paused', 'filtered', 'over']),
  empty: pot(['filtered', 'dead', 'over'], { figures: [one('mass', scale)] }),
  cover: pot(['blending', 'paused', 'filtered']),
  uncover: pot(['blending', 'paused', 'filtered']),
  catch: pot(['filtered'], { figures: [one('mass', scale)] }),
  lid: { on: 'can', takes: ['gas'] },
  shut: { on: 'can', takes: ['gas'] },
  blanket: { on: 'can' },
  prestir: { on: 'can' },
  coat: onParts(['bare'], { takes: ['method', 'batch', 'person'] }),
  'touch-up': onParts(['flashing'], { takes: ['method', 'batch', 'person'] }),
  dry: onParts(['flashing']),
  'cure oven': oven,
  'cure room': onParts(['dry']),
  cure: oven,
  out: onParts(['curing'], { thingMayLack: true }),
  // `metal temp on 2 is 19 C`
  temp: onParts(['curing'], {
    ...{ figures: [one('temperature', ovenTemperature)], thingMayLack: true, isOfOne: true },
    instead: 'surface',
  }),
  wet: onParts(['flashing'], { figures: [many('film', film)], isOfOne: true }),
  film: onParts(['cured'], { figures: [many('film', film)], isOfOne: true }),
  adhesion: onParts(['cured'], { figures: [one('rating', rating)], isOfOne: true }),
  release: onParts(['cured']),
  // Whatever was done to it: what is gone is gone.
  shipped: onParts(undefined),
  hold: onParts(undefined, { takes: ['reason'] }),
  // What becomes of it: its reason is asked for, in whose words nobody guesses, so that none of it is recorded as it was heard.
  rework: disposed,
  scrap: disposed,
  'return customer': disposed,
  'return supplier': disposed,
  concession: disposed,
  prep: prepared,
  'prep blasting': prepared,
  'prep sanding': prepared,
  'prep wiping': prepared,
  'prep grease-off': prepared,
  'prep old-coat-off': prepared,
  surface: onParts(['bare'], {
    figures: [one('temperature', roomTemperature)],
    thingMayLack: true,
    isOfOne: true,
    takes: ['place'],
  }),
  air: alone({ figures: [one('temperature', roomTemperature), one('percent', humidity)], takes: ['place'] }),
  'fan on': alone({ figures: [one('speed')] }),
  'fan off': alone(),
  'fan no': alone(),
  'supplied yes': alone(),
  'supplied no': alone(),
  'spray on': alone(),
  'spray off': alone(),
  flush: alone({ figures: [one('volume')], takes: ['solvent', 'batch'] }),
  'flush gun': gun,
  'flush brush': brush,
  'flush roller': brush,
  rags: alone(),
  close: alone(),
  ack: alone(),
};

/** Of two acts that one clause names, the first of a pair is meant: `the first coat is dry`, `the air temp is`. */
export const strongerThan: Readonly<Partial<Record<SaidAct, readonly SaidAct[]>>> = {
  out: ['cure oven', 'cure', 'temp'],
  // `chucked it in the oven`
  'cure oven': ['cure', 'temp', 'empty'],
  'cure room': ['cure', 'air'],
  surface: ['temp', 'air', 'dry'],
  air: ['temp', 'surface'],
  film: ['dry', 'coat', 'temp'],
  adhesion: ['film', 'coat', 'prep'],
  wet: ['film', 'coat'],
  dry: ['coat', 'film', 'mix'],
  blanket: ['shut'],
  // `destapé la 3 con el argón a mano`
  lid: ['blanket'],
  'flush gun': ['flush', 'prep'],
  'flush brush': ['flush', 'prep', 'coat'],
  'flush roller': ['flush', 'prep', 'coat'],
  'prep blasting': ['prep', 'surface'],
  'prep sanding': ['prep', 'surface'],
  'prep wiping': ['prep', 'surface'],
  'prep grease-off': ['prep', 'surface'],
  'prep old-coat-off': ['prep', 'surface', 'coat', 'prep blasting', 'prep sanding'],
  prep: ['surface'],
  'fan on': ['air'],
  empty: ['mix', 'weigh', 'air'],
  filter: ['mix', 'weigh'],
  weigh: ['mix'],
  thick: ['mix', 'filter'],
  gel: ['mix'],
  stop: ['stir', 'mix'],
  stir: ['mix'],
  cover: ['mix'],
  coat: ['mix'],
  hold: ['coat', 'film', 'dry', 'wet', 'prep', 'surface', 'out', 'temp', 'release'],
  release: ['film', 'coat'],
  rework: ['coat', 'prep', 'hold', 'scrap'],
  scrap: ['hold', 'release', 'empty'],
  'return customer': ['release', 'hold'],
  'return supplier': ['release', 'hold'],
  concession: ['release', 'hold', 'film'],
  shipped: ['out', 'release', 'coat'],
  'supplied no': ['supplied yes', 'air'],
  'supplied yes': ['air'],
  'spray off': ['coat', 'spray on', 'stop'],
  'spray on': ['coat'],
  'touch-up': ['coat', 'dry'],
  catch: ['empty', 'mix', 'coat'],
  prestir: ['stir'],
};
