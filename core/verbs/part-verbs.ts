// What can be said of parts: their surface, their coats, their cure, their film.

import { solventIds } from '../calc/solvents.ts';
import { returnsTo } from '../disposition.ts';
import { adhesionRatings, contaminants, grits, prepWays, rubResults, surfaceGrades, waterBreaks } from '../grades.ts';
import { methods, offeredMethods } from '../methods.ts';
import { filmTestVerbs } from './film-test-verbs.ts';
import { readWith } from './instrument-verbs.ts';
import type { CureWay, NamedPart, PartDetails, SpotSaid } from './said.ts';
import {
  area,
  choice,
  choices,
  conductivity,
  count,
  day,
  duration,
  films,
  kind,
  length,
  mark,
  film as micrometres,
  newPart,
  ownWay,
  ownWords,
  part,
  parts,
  person,
  place,
  salts,
  spoken,
  temperature,
  text,
  unasked,
  volume,
} from './slot.ts';
import { verb } from './verb.ts';

const one = part('part', { required: true });
const several = parts('parts', { required: true });
/** Nobody named is the only load. */
const orTheLoad = parts('parts', { orNone: true });
/** Who may release may say what becomes of a part instead. */
const decided = { decision: true, leastRole: 'lead' } as const;
/** Why it was read again. */
const retest = ownWords('retest', { behind: 'retest' });
/** Who sees to a hold. */
const owner = person('owner', { behind: 'owner' });
const toDo = ownWords('to-do', { behind: 'to-do' });
const coupon = mark('coupon', 'coupon');
const steel = { lowest: -40, highest: 400 };

export const partVerbs = {
  part: verb({
    part: one,
    details: ownWay<PartDetails>()(
      [
        spoken('serial'),
        spoken('job'),
        spoken('customer'),
        spoken('metal'),
        length('wall'),
        area('area'),
        temperature('highest-temperature', {}, { lowest: 0, highest: 3_000 }),
      ],
      { orNone: true },
    ),
    unread: unasked<readonly string[]>('own-way'),
    /** The others of a row or a list. */
    more: unasked<readonly NamedPart[]>('own-way'),
    /** Told in another way than a line of its own: what would be booked is shown first. */
    isAsked: unasked<true>('own-way'),
  }),
  prep: verb(
    {
      asNew: newPart,
      parts: several,
      grade: choice('grade', surfaceGrades, { amend: true, offered: ['sa2.5', 'sp10', 'sp1'] }),
      removed: choices('removed', contaminants, { amend: true }, (what) => `${what}-off`),
      solvents: choices('solvent', solventIds, { amend: true }),
      prepWays: choices('prep-way', prepWays, { amend: true }),
      grit: choice('grit', grits, { amend: true }),
      profileMicrometres: micrometres('profile', { noted: true, amend: true }, { highest: 1_000, above: true }),
      saltsMilligramsPerSquareMetre: salts('salts', { noted: true, amend: true, behind: 'salts' }),
      /** What a patch test shows over the water's own, and the water that was on the patch. */
      saltsMicrosiemensPerCentimetre: conductivity('conductivity', { noted: true, amend: true, behind: 'salts' }),
      extractLitres: volume(
        'extract',
        { noted: true, amend: true, behind: 'extract' },
        { units: ['mL'], highest: 1_000, above: true },
      ),
      /** ISO 8502-3, how much: 0 to 5. */
      dustRating: count('dust', { noted: true, amend: true, behind: 'dust' }, { lowest: 0, highest: 5 }),
      /** ISO 8502-3, how big: 0 to 5. */
      dustSize: count('dust-size', { noted: true, amend: true, behind: 'size' }, { lowest: 0, highest: 5 }),
      /** ASTM F22. */
      waterBreak: choice('water-break', waterBreaks, { amend: true }, { held: 'water-held', broke: 'water-broke' }),
    },
    {
      leaves: { type: 'SurfacePrepared' },
      oneOf: [
        ...(['grade', 'removed', 'solvents', 'prepWays', 'grit'] as const),
        ...(['profileMicrometres', 'saltsMilligramsPerSquareMetre', 'dustRating'] as const),
        ...(['saltsMicrosiemensPerCentimetre', 'dustSize', 'waterBreak'] as const),
      ],
    },
  ),
  coat: verb(
    {
      asNew: newPart,
      parts: several,
      batch: count('batch'),
      method: choice('method', methods, { required: true, amend: true, offered: offeredMethods }),
      /** Another pass of the coat that is there and still wet. */
      pass: choice('pass', ['same-coat'], {}, { 'same-coat': 'touch-up' }),
      appliedBy: person('applied-by', { behind: 'by', amend: true }),
      /** Where the part stands, if that is not where its pot is. */
      place: place('place'),
      /** Into a tank, a pit or their like: nobody in it. */
      fromOutside: mark('from-outside', 'from-outside'),
    },
    {
      leaves: { type: 'CoatApplied' },
      amends: {
        ofBatch: { slot: 'batch', fact: 'batch', told: 'number', behind: 'batch' },
        onPart: { slot: 'parts', fact: 'part', told: 'part', behind: 'part' },
      },
    },
  ),
  dry: verb({ asNew: newPart, parts: several }, { leaves: { type: 'FilmDry' }, plain: true }),
  cure: verb(
    {
      asNew: newPart,
      parts: several,
      way: kind<CureWay>()(
        'way',
        ['oven', 'room'],
        { of: 'oven', as: 'setCelsius', ...temperature('oven-temperature', {}, { lowest: 0, highest: 400 }) },
        { required: true },
      ),
    },
    {
      leaves: { type: 'CureStarted' },
      amends: { celsius: { slot: 'oven-temperature', fact: 'setCelsius' } },
    },
  ),
  temp: verb(
    {
      asNew: newPart,
      part: part('part'),
      celsius: temperature('part-temperature', { required: true, amend: true }, steel),
      instrument: readWith,
    },
    { leaves: { type: 'PartTemperatureRead' } },
  ),
  /** The oven's door. */
  door: verb({ parts: orTheLoad, openMinutes: duration('door-time') }, { leaves: { type: 'DoorOpened' } }),
  /** Out of the oven, or taken from its curing place. */
  out: verb({ parts: orTheLoad }, { leaves: { type: 'CureEnded' }, plain: true }),
  wet: verb(
    { asNew: newPart, part: one, wetFilmMicrometres: films('wet-film', { required: true }) },
    {
      leaves: { type: 'FilmRead', state: 'wet' },
      amends: { filmMicrometres: { slot: 'wet-film', fact: 'micrometres' } },
    },
  ),
  film: verb(
    {
      asNew: newPart,
      part: one,
      /** Without them the next spot is asked for. */
      dryFilmMicrometres: films('dry-film'),
      spots: ownWay<readonly SpotSaid[]>()([spoken('spot')]),
      /** Though the set before it is not whole. */
      anew: mark('new-set', 'new-set'),
      /** What the gauge shows on the bare metal: taken off each reading. */
      baseMicrometres: micrometres('base-metal', { behind: 'base' }),
      instrument: readWith,
      retest,
    },
    {
      leaves: { type: 'FilmRead', state: 'dry' },
      amends: { filmMicrometres: { slot: 'dry-film', fact: 'micrometres' } },
    },
  ),
  /** Cross-cut, as the gauge's scale has it; of the part, or of a witness coupon that went with it. */
  adhesion: verb({
    asNew: newPart,
    part: one,
    rating: choice('rating', adhesionRatings, { required: true, offered: ['5B', '4B', '3B'] }),
    coupon,
    retest,
  }),
  rub: verb({
    asNew: newPart,
    part: one,
    doubleRubs: count('rubs', { required: true }, { highest: 1_000 }),
    result: choice('rub-result', rubResults, { required: true }),
    coupon,
    retest,
  }),
  ...filmTestVerbs,
  release: verb({ parts: several }, { leaves: { type: 'PartReleased' }, plain: true, decision: true }),
  /** It has left the shop, released or not: a fact, whoever says it. */
  shipped: verb({ asNew: newPart, parts: several }, { leaves: { type: 'PartLeft' }, plain: true }),
  hold: verb(
    { asNew: newPart, parts: several, why: ownWords('reason', { required: true }), owner, toDo },
    {
      leaves: { type: 'PartHeld' },
      endsInWords: true,
      amends: { holdWhy: { slot: 'reason', fact: 'why', told: 'own-words' } },
    },
  ),
  /** What becomes of it, by whoever may release. What is left out is asked for. */
  rework: verb(
    { parts: several, why: ownWords('reason') },
    { leaves: { type: 'PartDisposed', as: 'rework' }, endsInWords: true, ...decided },
  ),
  concession: verb(
    {
      parts: several,
      person: text('customer-person', { behind: 'person' }),
      document: text('document', { behind: 'document' }),
      date: day('concession-date', { behind: 'dated' }),
    },
    { leaves: { type: 'PartDisposed', as: 'concession' }, ...decided },
  ),
  scrap: verb(
    { parts: several, why: ownWords('reason') },
    { leaves: { type: 'PartDisposed', as: 'scrap' }, endsInWords: true, ...decided },
  ),
  return: verb(
    { parts: several, to: choice('return-to', returnsTo), why: ownWords('reason') },
    { leaves: { type: 'PartDisposed', as: 'return' }, endsInWords: true, ...decided },
  ),
  /** Of what is on hold: who sees to it, what is to be done. */
  'see-to': verb(
    { parts: several, owner, toDo },
    { leaves: { type: 'HoldAssigned' }, endsInWords: true, oneOf: ['owner', 'toDo'], decision: true },
  ),
};
