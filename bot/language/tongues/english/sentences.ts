// The English catalogue. Every other language has this shape: a missing sentence does not compile.

import type { BatchPhase } from '../../../../core/batch/batch.ts';
import type { PartPhase } from '../../../../core/part/part.ts';
import type { FactId } from '../../../cards/fact-ids.ts';
import { exampleIn } from '../../example-units.ts';
import { linesShownIn } from '../../line-shown.ts';
import type { Profile } from '../profile.ts';
import { englishChat } from './chat.ts';
import { englishFact } from './facts.ts';
import { englishHoldReason } from './holds.ts';
import { englishLaw } from './law.ts';
import { englishMaterial } from './material.ts';
import { englishMisread } from './misreads.ts';
import { englishNames, englishTyped } from './names.ts';
import { englishHeldBack, englishNoFigure, englishObjection, englishUnclear } from './objections.ts';
import { englishPage } from './page.ts';
import { englishPapers } from './papers.ts';
import { englishParts } from './parts.ts';
import { englishRecords } from './records.ts';
import { englishReplies } from './replies.ts';
import { englishLate, englishOvertaken, englishRings, englishUnproved } from './rings.ts';
import { englishRuleSources } from './rule-sources.ts';
import { englishSession, englishSessionIn } from './session.ts';
import { englishSettings } from './settings.ts';
import { slotNames } from './slots.ts';
import { englishSteps } from './steps.ts';
import { englishTyped as englishLines } from './typed.ts';
import { englishUndo } from './undo.ts';

const facts: Readonly<Record<FactId, string>> = {
  'part-a': 'Part A',
  'part-b': 'Part B',
  'ratio-error': 'Ratio off by',
  'ratio-tolerance': 'Ratio may be off by',
  'stir-wanted': 'Stirring wanted',
  'stir-given': 'Stirred',
  'stir-done-at': 'Stirring done at',
  'pot-life-ends': 'Pot life ends',
  'pot-margin-at': 'Finish by',
  'air-temperature': 'Air',
  'air-read-at': 'Read at',
  humidity: 'Humidity',
  'dew-point': 'Dew point',
  'surface-temperature': 'Surface',
  spread: 'Above the dew point by',
  'night-lowest': 'Lowest',
  'flash-least-at': 'Flash-off, least until',
  'flash-most-at': 'Flash-off, most until',
  'open-until': 'Touch up until',
  'surface-ends-at': 'Coat before',
  'recoat-opens-at': 'Recoat from',
  'recoat-closes-at': 'Recoat until',
  'part-temperature': 'Part',
  'cure-given': 'Cure time given',
  'cure-done-at': 'Cure time given at',
  'temp-due-at': 'At temperature, estimate, at',
  'stage-handle-at': 'Can be handled from',
  'stage-service-at': 'Service by the sheet from',
  'stage-full-at': 'Full resistance from',
  'door-openings': 'Door opened',
  'door-open': 'Door open in all',
  'part-wall': 'Wall',
  'part-area': 'Area',
  'part-bears': 'Bears',
  profile: 'Profile',
  'film-mean': 'Mean',
  'film-lowest': 'Lowest',
  'film-highest': 'Highest',
  'left-over': 'Left over',
  'can-left': 'Left in it',
  headspace: 'Headspace',
  'gas-needed': 'Gas for it',
  'blanket-by': 'Gas over it by',
  'can-stir-wanted': 'To stir in its can',
  'can-stir-done-at': 'Stirred at',
  'part-b-exact': 'Part B wanted',
  'add-part-a': 'Add Part A',
  'add-part-b': 'Add Part B',
  caught: 'Caught',
  uncovered: 'Uncovered',
  cans: 'Cans',
  'part-a-stock': 'Part A in open cans',
  'part-b-stock': 'Part B in open cans',
  'mixed-total': 'Mixed',
  'caught-total': 'Caught',
  'left-over-total': 'Left over',
  area: 'Area',
  'film-wanted': 'Dry film wanted',
  'wet-film-wanted': 'Wet film for it',
  'mixed-volume': 'To mix, volume',
  'mixed-mass': 'To mix, weight',
  'transfer-efficiency': 'Stays on the part',
  'happened-at': 'Happened at',
  'late-minutes': 'Late by',
  'due-at': 'Due at',
  batches: 'Batches',
  'part-a-total': 'Part A weighed',
  'part-b-total': 'Part B weighed',
  parts: 'Parts coated',
  'air-lowest': 'Air, lowest',
  'air-highest': 'Air, highest',
  'humidity-lowest': 'Humidity, lowest',
  'humidity-highest': 'Humidity, highest',
  'solvent-per-hour': 'Solvent per hour',
  'sprayed-per-hour': 'Sprayed per hour',
  'air-for-lel': 'Air against fire',
  'air-for-exposure': 'Air for breathing',
  'fan-gives': 'Fan gives',
  'fan-over-lel': 'Fan over need, against fire',
  'fan-over-exposure': 'Fan over need, for breathing',
  'fan-over-oven': 'Fan over need, oven',
  'face-velocity': 'Face velocity',
  'face-least': 'Face velocity, at least',
  'lel-share': 'Share of the explosive limit',
  'mixing-factor': 'Mixing factor',
  'spell-ends-at': 'Spell ends',
  'fan-until': 'Fan on until',
  'solvent-logged': 'Solvent for flushing',
  'oxygen-left': 'Oxygen left',
  'oven-air': 'Air for the oven',
  'solvent-in-load': 'Solvent in the load',
  rings: 'Rings',
  'rings-late': 'Rings late',
  'rings-unanswered': 'Rings unanswered',
  deviations: 'Deviations',
  permissions: 'Allowed beforehand',
  corrections: 'Corrections',
  'planned-total': 'Planned',
  'applied-total': 'Applied',
  'coated-area': 'Area coated',
  voc: 'VOC',
  'materials-total': 'Coatings and solvents used',
  'answer-median': 'Rings answered within, middle',
  events: 'Events',
  found: 'Found',
};

const buttons = {
  happened: 'It already happened',
  numbers: 'Emergency numbers…',
  'minus-5': '5 min earlier',
  'minus-10': '10 min earlier',
  gas: 'Gas at hand',
  whole: 'Whole can now',
  blanket: 'Gas over it',
  lid: 'Lid off, gas at hand',
  'used-whole': 'Used whole',
  check: 'Looked at: take it',
  prestir: 'Stirring in the can',
  'prestir-gas': 'Lid off with gas, stirring',
  discard: 'Discard…',
  'weigh-a': 'Part A…',
  'weigh-b': 'Part B…',
  add: 'Added',
  catch: 'Caught…',
  cover: 'Covered',
  stock: 'Stock',
  mix: 'Mix',
  'as-said': 'As said',
  'another-can': 'Another can…',
  'open-one': 'Open one',
  weigh: 'Weighed…',
  stop: 'Stirrer off',
  stir: 'Stirrer on',
  filter: 'Filtered',
  coat: 'Coated…',
  'coat-part': 'Coated',
  thick: 'Thick',
  hot: 'It is hot',
  empty: 'Pot empty',
  judge: 'Judge anew',
  surface: 'Surface reads…',
  prep: 'Prepared…',
  'touch-up': 'Touched up',
  dry: 'Dry',
  door: 'Door opened',
  'cure-oven': 'Into the oven',
  'cure-room': 'Cure in the room',
  temp: 'Part reads…',
  out: 'Out',
  wet: 'Wet film…',
  film: 'Dry film…',
  lift: 'Lift the hold…',
  'left-unreleased': 'It left all the same',
  release: 'Release',
  hold: 'Hold…',
  ok: 'Heard',
  'ring-everybody': 'Ring everybody',
  'no-alarm': 'No alarm',
  'alarm-over': 'Alarm over',
  snooze: '5 min later',
  handover: 'Hand over…',
  takeover: 'Take over',
  ack: 'I have read it',
  'ack-for': 'Read out to…',
  'fan-on': 'Fan on, measured…',
  'fan-unmeasured': 'Fan on, not measured',
  'fan-off': 'No extraction',
  'supplied-yes': 'Supplied air: yes',
  'supplied-no': 'Supplied air: no',
  'moved-out': 'Moved out…',
  'from-outside': 'From outside, nobody in it',
  'not-confined': 'Only a name',
  assess: 'Assessed, until…',
  'go-on': 'Go on, knowing it…',
  'spray-on': 'Spraying starts',
  'spray-off': 'Spraying stops',
  'flush-step': 'Flushed with',
  flush: 'Gun flushed',
  vessels: 'Vessels flushed',
  'gear-cleaned': 'All of it cleaned',
  rags: 'Rags and filters in their can',
  close: 'Close the session',
  brief: 'Brief',
  vent: 'Air figures',
  'brief-rest': 'All lines',
  undo: 'Undo',
  air: 'Air…',
  night: 'Night lowest…',
  day: 'The day',
  'whole-day': 'The whole day',
  trace: 'Trace',
  traveller: 'Traveller',
  export: 'Export',
  voc: 'Solvent and VOC',
  verify: 'Verify',
  meant: 'You meant',
  again: 'Say it again',
  'ask-again': 'Ask for it again',
  'open-papers': 'Open the papers',
  bears: 'Bears it',
  'step-yes': 'It is so',
  'step-no': 'It is not so',
  way: 'How:',
};

const phases: Readonly<Record<BatchPhase['is'] | PartPhase['is'], string>> = {
  'to-weigh': 'to be weighed',
  blending: 'mixing time runs',
  paused: 'stirrer off',
  filtered: 'in use',
  dead: 'thick, gelled or hot: waste',
  emptied: 'empty',
  bare: 'bare',
  flashing: 'flash-off',
  dry: 'dry, waits for its cure',
  curing: 'in cure',
  cured: 'out of cure',
  released: 'released',
};

const blend = {
  stir: { wanted: 'Stirring wanted', given: 'Stirred', doneAt: 'Stirring done at' },
  induction: { wanted: 'Induction wanted', given: 'Stood', doneAt: 'Induction over at' },
};

/** The ids of taps, with their labels. */
export type ButtonId = keyof typeof buttons;

export const english = {
  facts,
  phases,
  blend,
  buttons,
  names: englishNames,
  typed: englishTyped,
  session: englishSession,
  law: englishLaw,
  settings: englishSettings,
  page: englishPage,
  chat: englishChat,
  replies: englishReplies,
  material: englishMaterial,
  records: englishRecords,
  parts: englishParts,
  objection: englishObjection,
  unclear: englishUnclear,
  ruleSources: englishRuleSources,
  noFigure: englishNoFigure,
  heldBack: englishHeldBack,
  holdReason: englishHoldReason,
  misread: englishMisread,
  fact: englishFact,
  slots: slotNames,
  rings: englishRings,
  unproved: englishUnproved,
  overtaken: englishOvertaken,
  late: englishLate,
  undo: englishUndo,
  steps: englishSteps('en-GB'),
  papers: englishPapers,
  lineShown: linesShownIn(englishLines),
};

export type Words = typeof english;

/** The sentences that are the same for everybody, their examples in the units of the country. */
const customary = <Table extends object>(table: Table): Table => ({
  ...table,
  ...Object.fromEntries(Object.entries(table).map(([key, value]: [string, unknown]) => [key, inCustomary(value)])),
});
function inCustomary(value: unknown): unknown {
  if (typeof value === 'string') return exampleIn(value, 'us');
  if (Array.isArray(value)) return value.map(inCustomary);
  return typeof value === 'object' && value !== null ? customary(value) : value;
}

const american: Words = {
  ...english,
  session: customary(englishSessionIn('en-US')),
  steps: englishSteps('en-US'),
  replies: customary(englishReplies),
  material: customary(englishMaterial),
  rings: customary(englishRings),
  overtaken: customary(englishOvertaken),
  chat: customary(englishChat),
};

/** What a country says otherwise. */
export const englishIn = (locale: Profile['locale']): Words => (locale === 'en-US' ? american : english);
