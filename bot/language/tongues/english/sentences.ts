// The English catalogue. Every other language has this shape: a missing sentence does not compile.

import type { FactId } from '../../../cards/fact-ids.ts';
import { linesShownIn } from '../../line-shown.ts';
import { englishAsked } from './asked.ts';
import { englishButtons } from './buttons.ts';
import { englishChat } from './chat.ts';
import { englishFact } from './facts.ts';
import { englishFirstShift } from './first-shift.ts';
import { englishGlossary } from './glossary.ts';
import { englishGuide } from './guide.ts';
import { englishHoldReason } from './holds.ts';
import { englishLaw } from './law.ts';
import { englishMaterial } from './material.ts';
import { englishMisread } from './misreads.ts';
import { englishNames, englishNoFigure, englishTyped } from './names.ts';
import { englishHeldBack, englishObjection } from './objections.ts';
import { englishPage } from './page.ts';
import { englishPapers } from './papers.ts';
import { englishParts } from './parts.ts';
import { blend, phases } from './phases.ts';
import { englishPractice } from './practice.ts';
import { englishRecords } from './records.ts';
import { englishReminders } from './reminders.ts';
import { englishReplies } from './replies.ts';
import { englishLate, englishOvertaken, englishRings, englishUnproved } from './rings.ts';
import { englishRuleSources } from './rule-sources.ts';
import { englishSession } from './session.ts';
import { englishSettings } from './settings.ts';
import { slotNames } from './slots.ts';
import { englishSteps } from './steps.ts';
import { englishTermNames } from './terms-typed.ts';
import { englishTopics } from './topics.ts';
import { englishTyped as englishLines } from './typed.ts';
import { englishUnclear } from './unclear.ts';
import { englishUndo } from './undo.ts';
import { englishWhy } from './why.ts';

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

export const english = {
  facts,
  phases,
  blend,
  buttons: englishButtons,
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
  guide: englishGuide,
  firstShift: englishFirstShift,
  practice: englishPractice,
  reminders: englishReminders,
  undo: englishUndo,
  steps: englishSteps('en-GB'),
  papers: englishPapers,
  asked: englishAsked,
  topics: englishTopics,
  why: englishWhy,
  glossary: englishGlossary,
  termNames: englishTermNames,
  lineShown: linesShownIn(englishLines),
};

export type Words = typeof english;
