// Every reason not to, of every verb: what makes it, and who may lift it beforehand.

import type { ObjectionCode } from '../../core/objections.ts';
import { materialCases } from './material-cases.ts';
import { sessionCases } from './session-cases.ts';

export interface Case {
  readonly given: readonly string[];
  /** Time, speaker aside, and the act. */
  readonly at: string;
  readonly act: string;
  /** Other reasons that come with it. */
  readonly also?: readonly ObjectionCode[];
  readonly deviates: string;
  readonly liftedBy: 'lead' | 'supervisor' | 'nobody';
}

// Air at 24 degC and 48 %: the demo stir takes 102 minutes (common practice, no source; the temperatures invented), so a
// batch weighed at eight is stirred at 9:42; its pot life ends at 12:33:20 (see pot-life.test.ts).
const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const filtered = [...weighed, '09:42 filter 1'];
const coated = [...filtered, '10:00 coat new impeller-7 1 brush'];
const dry = [...coated, '10:12 dry impeller-7'];
// The demo build at 25 degC: 15 minutes of induction, 4 parts of A to 1 of B by volume (all invented).
const built = ['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g'];
const builtCoat = [...built, '08:20 coat new rail-2 1 brush'];

const cases = {
  'alarm-on': {
    given: ['08:00 @kari: fire in the booth'],
    at: '08:05',
    act: 'brief in booth spray kari',
    deviates: 'SessionBriefed 08:05 alarm-on',
    liftedBy: 'nobody',
  },
  'gas-beyond': {
    given: ['08:00 @kari: lel 12% in booth', '08:04 @omar: alarm over'],
    at: '08:05',
    act: 'brief in booth spray kari',
    deviates: 'SessionBriefed 08:05 gas-beyond',
    liftedBy: 'nobody',
  },
  'air-needed': {
    given: [],
    at: '08:00',
    act: 'mix 2.4kg',
    deviates: 'BatchOpened 08:00 air-needed',
    liftedBy: 'lead',
  },
  'air-outside': {
    given: ['08:00 air 24C 90%'],
    at: '08:05',
    act: 'mix 2.4kg',
    deviates: 'BatchOpened 08:05 air-outside',
    liftedBy: 'supervisor',
  },
  'more-than-sheet-mixes': {
    given: ['08:00 air 24C 48%'],
    at: '08:05',
    act: 'mix 10.1kg',
    deviates: 'BatchOpened 08:05 more-than-sheet-mixes',
    liftedBy: 'lead',
  },
  // 0.5 g of Demo Clear's B is off by half a step of 0.1 g on its own: 10 %.
  'scale-too-coarse': {
    given: ['08:00 air 24C 48%', '08:00 @omar: set scale bench 0.1g to 2kg'],
    at: '08:05',
    act: 'mix 1g',
    deviates: 'BatchOpened 08:05 scale-too-coarse',
    liftedBy: 'lead',
  },
  'already-weighed': {
    given: weighed,
    at: '08:00',
    act: 'weigh 1 1201g 1199g',
    deviates: 'PartsWeighed 08:00 already-weighed',
    liftedBy: 'nobody',
  },
  'step-lacking': {
    given: [...weighed.slice(0, 2), '08:01 confirm equipment no'],
    at: '08:02',
    act: 'weigh 1 1201g 1199g',
    deviates: 'PartsWeighed 08:02 step-lacking',
    liftedBy: 'supervisor',
  },
  'not-weighed': {
    given: weighed.slice(0, 2),
    at: '08:10',
    act: 'stir 1',
    deviates: 'StirrerStarted 08:10 not-weighed',
    liftedBy: 'nobody',
  },
  'already-filtered': {
    given: filtered,
    at: '09:42',
    act: 'filter 1',
    deviates: 'MixFiltered 09:42 already-filtered',
    liftedBy: 'lead',
  },
  'filter-not-as-sheet': {
    given: weighed,
    at: '09:42',
    act: 'filter 1 5um',
    deviates: 'MixFiltered 09:42 filter-not-as-sheet',
    liftedBy: 'lead',
  },
  'blend-not-done': {
    given: weighed,
    at: '09:41',
    act: 'filter 1',
    deviates: 'MixFiltered 09:41 blend-not-done',
    liftedBy: 'lead',
  },
  'not-filtered': {
    given: weighed,
    at: '09:42',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 09:42 not-filtered',
    liftedBy: 'lead',
  },
  'past-pot-life': {
    given: filtered,
    at: '12:34',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 12:34 past-pot-life',
    liftedBy: 'nobody',
  },
  'pot-dead': {
    given: [...filtered, '10:00 thick 1'],
    at: '10:05',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 10:05 pot-dead',
    liftedBy: 'nobody',
  },
  'pot-empty': {
    given: [...filtered, '10:00 empty 1'],
    at: '10:05',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 10:05 pot-empty',
    liftedBy: 'nobody',
  },
  'method-not-on-sheet': {
    given: built,
    at: '08:20',
    act: 'coat new rail-2 1 flow',
    deviates: 'CoatApplied 08:20 method-not-on-sheet',
    liftedBy: 'lead',
  },
  'recoat-forbidden': {
    given: coated,
    at: '10:05',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 10:05 recoat-forbidden',
    liftedBy: 'supervisor',
  },
  'recoat-too-early': {
    given: builtCoat,
    at: '08:30',
    act: 'coat new rail-2 1 brush',
    deviates: 'CoatApplied 08:30 recoat-too-early',
    liftedBy: 'supervisor',
  },
  'recoat-too-late': {
    // The window closes after 72 h (invented): Thursday, 8:20.
    given: [...builtCoat, 'Thu 08:00 air 25C 48%', 'Thu 08:00 mix 6.45kg demo-build', 'Thu 08:00 weigh 2 5400g 1050g'],
    at: 'Thu 08:21',
    act: 'coat new rail-2 2 brush',
    deviates: 'CoatApplied Thu 08:21 recoat-too-late',
    liftedBy: 'supervisor',
  },
  'not-coated': {
    given: ['08:00 part impeller-7 cast-iron'],
    at: '08:10',
    act: 'dry impeller-7',
    deviates: 'FilmDry 08:10 not-coated',
    liftedBy: 'nobody',
  },
  'flash-off-not-over': {
    given: [...coated, '10:05 dry impeller-7'],
    at: '10:09',
    act: 'cure impeller-7 oven 90C',
    deviates: 'CureStarted 10:09 flash-off-not-over',
    liftedBy: 'nobody',
  },
  'not-dry': {
    given: coated,
    at: '10:20',
    act: 'cure impeller-7 oven 90C',
    deviates: 'CureStarted 10:20 not-dry',
    liftedBy: 'nobody',
  },
  'hotter-than-part-bears': {
    given: ['08:00 part impeller-7 max 80C', ...dry],
    at: '10:15',
    act: 'cure impeller-7 oven 90C',
    deviates: 'CureStarted 10:15 hotter-than-part-bears',
    liftedBy: 'supervisor',
  },
  'heat-not-known': {
    given: ['08:00 part valve-3 max 120C', ...dry],
    at: '10:15',
    act: 'cure impeller-7 oven 90C',
    deviates: 'CureStarted 10:15 heat-not-known',
    liftedBy: 'lead',
  },
  'no-such-cure': {
    given: [...builtCoat, '08:50 dry rail-2'],
    at: '09:00',
    act: 'cure rail-2 oven 90C',
    deviates: 'CureStarted 09:00 no-such-cure',
    liftedBy: 'supervisor',
  },
  'oven-outside-sheet': {
    given: dry,
    at: '10:15',
    act: 'cure impeller-7 oven 120C',
    deviates: 'CureStarted 10:15 oven-outside-sheet',
    liftedBy: 'supervisor',
  },
  'already-curing': {
    given: [...dry, '10:15 cure impeller-7 room'],
    at: '10:20',
    act: 'cure impeller-7 oven 90C',
    deviates: 'CureStarted 10:20 already-curing',
    liftedBy: 'lead',
  },
  'stirrer-off': {
    given: [...weighed, '08:30 stop 1'],
    at: '08:40',
    act: 'stop 1',
    deviates: 'StirrerStopped 08:40 stirrer-off',
    liftedBy: 'lead',
  },
  'ratio-out': {
    // 1230 / 1200 - 1 is 2.5 %, where 2 % are allowed (invented).
    given: ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1230g'],
    at: '09:48',
    act: 'filter 1',
    deviates: 'MixFiltered 09:48 ratio-out',
    liftedBy: 'supervisor',
  },
  'already-released': {
    given: [
      ...dry,
      '10:15 cure impeller-7 oven 90C',
      '10:15 temp impeller-7 90C',
      '11:15 temp impeller-7 90C',
      '11:15 out impeller-7',
      '11:20 release impeller-7',
    ],
    at: '11:30',
    act: 'release impeller-7',
    deviates: 'PartReleased 11:30 already-released',
    liftedBy: 'nobody',
  },
  'not-curing': {
    given: dry,
    at: '10:20',
    act: 'out impeller-7',
    also: ['cure-not-given'],
    deviates: 'CureEnded 10:20 not-curing',
    liftedBy: 'nobody',
  },
  'cure-not-given': {
    given: [...dry, '10:15 cure impeller-7 oven 90C', '10:15 temp impeller-7 90C'],
    at: '11:14',
    act: 'out impeller-7',
    deviates: 'CureEnded 11:14 cure-not-given',
    liftedBy: 'supervisor',
  },
  'still-in-oven': {
    given: [...dry, '10:15 cure impeller-7 oven 90C'],
    at: '10:20',
    act: 'release impeller-7',
    also: ['cure-not-given'],
    deviates: 'PartReleased 10:20 still-in-oven',
    liftedBy: 'nobody',
  },
  'on-hold': {
    given: [
      ...dry,
      '10:15 cure impeller-7 oven 90C',
      '10:15 temp impeller-7 90C',
      '11:15 temp impeller-7 90C',
      '11:15 out impeller-7',
      '11:20 hold impeller-7 orange peel',
    ],
    at: '11:30',
    act: 'release impeller-7',
    deviates: 'PartReleased 11:30 on-hold',
    liftedBy: 'lead',
  },
  'not-given': {
    given: [
      '08:00 @omar: set job 88 film',
      '08:00 part impeller-7 job 88',
      ...dry.map((line) => line.replace('coat new', 'coat')),
      ...['10:15 cure impeller-7 oven 90C', '10:15 temp impeller-7 90C', '11:15 temp impeller-7 90C'],
      '11:15 out impeller-7',
    ],
    at: '11:30',
    act: 'release impeller-7',
    deviates: 'PartReleased 11:30 not-given',
    liftedBy: 'supervisor',
  },
  'film-half': {
    given: [
      ...dry,
      ...['10:15 cure impeller-7 oven 90C', '10:15 temp impeller-7 90C', '11:15 temp impeller-7 90C'],
      ...['11:15 out impeller-7', '11:20 film impeller-7 12um'],
    ],
    at: '11:30',
    act: 'release impeller-7',
    deviates: 'PartReleased 11:30 film-half',
    liftedBy: 'supervisor',
  },
  disposed: {
    given: [...filtered, '09:50 part impeller-7', '09:55 @omar: scrap impeller-7 cracked'],
    at: '10:00',
    act: 'coat impeller-7 1 brush',
    deviates: 'CoatApplied 10:00 disposed',
    liftedBy: 'supervisor',
  },
  'second-eyes': {
    // All three had a hand in its coat: nobody is left.
    given: [
      '08:00 @omar: set job 88 second eyes',
      '08:00 part impeller-7 job 88',
      ...dry.slice(0, -1).map((line) => line.replace('coat new', 'coat')),
      ...[
        '10:02 @omar: touch-up impeller-7 1 brush',
        '10:04 @rosa: touch-up impeller-7 1 brush',
        '10:16 dry impeller-7',
      ],
      ...['10:20 cure impeller-7 oven 90C', '10:20 temp impeller-7 90C', '11:20 temp impeller-7 90C'],
      '11:20 out impeller-7',
    ],
    at: '11:30',
    act: 'release impeller-7',
    deviates: 'PartReleased 11:30 second-eyes',
    liftedBy: 'nobody',
  },
  'film-drying': {
    // The demo clear at 24 degC: 8 - 9/15 * 3 = 6.2 minutes of open time (invented), to 10:06:12.
    given: coated,
    at: '10:07',
    act: 'coat new impeller-7 1 brush touch-up',
    deviates: 'CoatApplied 10:07 film-drying',
    liftedBy: 'supervisor',
  },
  'dip-once': {
    given: [...filtered, '10:00 coat new lid-1 1 dip'],
    at: '10:03',
    act: 'coat new lid-1 1 dip touch-up',
    deviates: 'CoatApplied 10:03 dip-once',
    liftedBy: 'supervisor',
  },
  'surface-life-over': {
    // Four hours on the demo build (invented).
    given: ['04:20 prep new rail-2 sa2.5', ...built],
    at: '08:20',
    act: 'coat new rail-2 1 brush',
    deviates: 'CoatApplied 08:20 surface-life-over',
    liftedBy: 'lead',
  },
  'not-prepared': {
    // The demo clear asks for a grade, and this crew has said how another part was prepared.
    given: [...filtered, '09:50 prep new lid-2 sa2.5 60um', '09:51 part lid-1'],
    at: '10:00',
    act: 'coat lid-1 1 brush',
    deviates: 'CoatApplied 10:00 not-prepared',
    liftedBy: 'lead',
  },
  'surface-outside': {
    // The demo clear asks for a profile of 25 to 75 um (invented).
    given: [...filtered, '09:50 prep new lid-1 sa2.5 90um'],
    at: '10:00',
    act: 'coat lid-1 1 brush',
    deviates: 'CoatApplied 10:00 surface-outside',
    liftedBy: 'lead',
  },
} satisfies Partial<Record<ObjectionCode, Case>>;

export const objectionCases: readonly (readonly [string, Case])[] = Object.entries({
  ...cases,
  ...materialCases,
  ...sessionCases,
});
