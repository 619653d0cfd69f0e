// What can be asked, one row each, of the same kind as an act's: a question only reads, and leaves nothing.

import { substanceIds } from '../calc/exposure-limits.ts';
import type { Question, StateQuestion } from '../commands.ts';
import { methods } from '../methods.ts';
import { isOwnKey } from '../own-key.ts';
import { works } from '../session/session-commands.ts';
import {
  area,
  choice,
  count,
  type FieldRow,
  films,
  mass,
  ownWords,
  part,
  person,
  ppm,
  sheet,
  speed,
  spoken,
  temperature,
} from './slot.ts';
import { type VerbRow, verb } from './verb.ts';

/** A figure in a unit that few acts take. From memory, no source. */
const volume = <const N extends string>(name: N, units: readonly string[], highest?: number): FieldRow<N> => ({
  ...spoken(name),
  slots: [
    {
      ...{ name, kinds: ['word'], units },
      ...(highest !== undefined && { limits: { lowest: 0, highest, unit: 'm3', above: true } }),
    },
  ],
});
const needed = <const N extends string>(field: FieldRow<N>): FieldRow<N> => ({ ...field, options: { required: true } });
const which = verb({ which: spoken('which') });
const ofThings = verb({ of: spoken('asked-of') });

const stateRows = {
  'can-i': verb({ act: needed(spoken('asked-act')), of: spoken('asked-of') }),
  'how-long': ofThings,
  'who-did': ofThings,
  'where-is': ofThings,
  'how-hot': ofThings,
  'how-much': ofThings,
  'to-do': ofThings,
  'what-late': verb({}),
  'went-wrong': verb({}),
  'at-risk': verb({}),
  'how-stands': verb({ topic: needed(spoken('asked-topic')), of: spoken('asked-of') }),
} satisfies { readonly [Ask in StateQuestion['ask']]: VerbRow };

export const questionRows = {
  stock: verb({}),
  instruments: verb({}),
  plan: verb({
    areas: area('area', { required: true }),
    method: choice('method', methods, { required: true }),
    film: films('dry-film'),
    part: part('part'),
    sheet: sheet('sheet'),
    readyAt: spoken('ready-time'),
  }),
  day: verb({ day: spoken('day') }),
  now: verb({}),
  'what-now': verb({}),
  practice: verb({}),
  'practice-off': verb({}),
  week: which,
  month: which,
  from: verb({ span: needed(spoken('span')) }),
  trace: verb({ of: needed(spoken('traced')) }),
  card: verb({ of: needed(spoken('traced')) }),
  find: verb({ value: ownWords('sought', { required: true }) }, { endsInWords: true }),
  traveller: verb({ of: needed(spoken('traced')) }),
  export: verb({ span: spoken('span'), form: spoken('form') }),
  voc: verb({ span: spoken('span') }),
  exposures: verb({ person: person('person'), span: spoken('span') }),
  verify: verb({ hash: spoken('hash') }),
  backup: verb({ file: ownWords('file', { required: true }) }, { endsInWords: true }),
  keep: verb({}),
  papers: verb({ sheet: sheet('sheet'), paper: count('paper') }),
  vent: verb({
    session: count('session'),
    load: mass('wet-load'),
    oven: temperature('oven-temperature', {}, { lowest: 0, highest: 400 }),
    face: speed('face-velocity'),
    gas: spoken('gas'),
    released: volume('gas-volume', ['L', 'm3']),
    room: volume('room-volume', ['m3', 'L'], 100_000),
  }),
  purge: verb({
    can: count('can'),
    headspace: spoken('headspace'),
    flow: {
      ...spoken('gas-flow'),
      slots: [
        {
          name: 'gas-flow',
          kinds: ['word'],
          units: ['L/min'],
          limits: { lowest: 0, highest: 100, unit: 'L/min', above: true },
        },
      ],
    },
    ran: spoken('gas-time'),
  }),
  mask: verb({ mask: spoken('mask'), sheet: sheet('sheet') }),
  cartridge: verb({ substance: choice('substance', substanceIds), ppm: ppm('breathed') }),
  hazards: verb({ work: choice('work', works, { required: true }) }),
  'what-is': verb({ term: ownWords('sought', { required: true }) }, { endsInWords: true }),
  why: verb({ about: ownWords('sought') }, { endsInWords: true }),
  help: verb({ about: spoken('verb') }),
  ...stateRows,
} satisfies { readonly [Ask in Question['ask']]: VerbRow };

/** Lines that a question in words comes to: nobody types their names, so that no slip is one of them. */
export const isStateQuestion = (name: string): name is StateQuestion['ask'] => isOwnKey(stateRows, name);
export const isQuestion = (name: string): name is Question['ask'] => isOwnKey(questionRows, name);
