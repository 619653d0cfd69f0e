// Dry-film acceptance against the published rules and worked cases.

import { filmCount, leastReadingsOfSpot, spotsOfArea } from '../../core/calc/film-count.ts';
import {
  correctedReading,
  judgeNominal,
  type NominalRule,
  type Profile,
  readingsNeeded,
  thinnestNominal,
} from '../../core/calc/film-nominal.ts';
import {
  type FilmLimits,
  filmLimits,
  judgeArea,
  type RestrictionLevel,
  spotMeasurement,
} from '../../core/calc/film-spots.ts';
import {
  type Micrometres,
  micrometres,
  micrometresFromMils,
  milsFromMicrometres,
  squareMetres,
  squareMetresFromSquareFeet,
} from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, type PublishedCase, seen } from './published-case.ts';

const newsletter = 'SSPC newsletter article on PA 2';
const slides = 'SSPC-PA 2 training slides';
const pa2 = 'SSPC-PA 2 (2012)';

const mils = (...values: readonly number[]): readonly Micrometres[] => values.map(micrometresFromMils);
const um = (...values: readonly number[]): readonly Micrometres[] => values.map(micrometres);
const eightToTwelve = { leastMicrometres: micrometresFromMils(8), mostMicrometres: micrometresFromMils(12) };
const areasFor = (feet: number) => answered(filmCount(squareMetresFromSquareFeet(feet))).areas;
const limitsAt = (level: RestrictionLevel) => answered(filmLimits(eightToTwelve, level));
const inMils = (film: Micrometres | undefined) =>
  film === undefined ? 'unrestricted' : Math.round(milsFromMicrometres(film) * 1e6) / 1e6;
const allInMils = (limits: FilmLimits) =>
  [
    limits.spotLeastMicrometres,
    limits.spotMostMicrometres,
    limits.areaLeastMicrometres,
    limits.areaMostMicrometres,
  ].map(inMils);
const accepted = (level: RestrictionLevel, ...spots: readonly number[]) =>
  answered(judgeArea(mils(...spots), eightToTwelve, level)).accepted;
const findings = (level: RestrictionLevel, ...spots: readonly number[]) =>
  answered(judgeArea(mils(...spots), eightToTwelve, level)).findings.map((finding) => finding.what);
const meanMils = (...spots: readonly number[]) =>
  milsFromMicrometres(answered(judgeArea(mils(...spots), eightToTwelve, 3)).meanMicrometres);

const counts: readonly PublishedCase[] = [
  seen(
    'a spot is the mean of at least three readings',
    `${pa2}, 3.2`,
    () => [leastReadingsOfSpot, spotMeasurement(um(100, 110))],
    [3, { failed: 'does-not-apply', what: 'readings of a spot', given: 2, limit: 3 }],
  ),
  seen('an area is five spots', newsletter, () => [spotsOfArea, judgeArea(um(200, 200, 200, 200), eightToTwelve, 3)], [
    5,
    { failed: 'does-not-apply', what: 'spots of an area', given: 4, limit: 5 },
  ]),
  seen(
    'up to 300 ft2 every 100 ft2 is an area',
    newsletter,
    () => [areasFor(90), areasFor(100), areasFor(101), areasFor(200), areasFor(201)],
    [1, 1, 2, 2, 3],
  ),
  seen('300 to 1,000 ft2 are three areas', newsletter, () => [areasFor(301), areasFor(999)], [3, 3]),
  seen(
    'above 1,000 ft2 each further 1,000 ft2 or part is one more',
    `${newsletter}; ${slides}`,
    () => [areasFor(1999), areasFor(2001), areasFor(3000)],
    [4, 5, 5],
  ),
  seen(
    '12,500 ft2 are 15 areas, 75 spots, 225 readings',
    'trade-news account of a PA 2 lesson',
    () => filmCount(squareMetresFromSquareFeet(12_500)),
    { areas: 15, spots: 75, gaugeReadings: 225 },
  ),
  derived('250 ft2 are 3 areas, 15 spots, 45 readings', newsletter, () => filmCount(squareMetresFromSquareFeet(250)), {
    areas: 3,
    spots: 15,
    gaugeReadings: 45,
  }),
  derived('300 ft2 are 3 areas', `${newsletter}: not exceeding 300`, () => areasFor(300), 3),
  derived('1,000 ft2 are 3 areas', newsletter, () => areasFor(1000), 3),
  derived('1,001 ft2 are 4 areas', newsletter, () => areasFor(1001), 4),
  derived('2,000 ft2 are 4 areas', newsletter, () => areasFor(2000), 4),
];

const levels: readonly PublishedCase[] = [
  seen(
    '8 to 12 mil at level 3: a spot from 6.4 to 14.4 mil',
    slides,
    () => allInMils(limitsAt(3)).slice(0, 2),
    [6.4, 14.4],
  ),
  seen(
    'the mean of an area lies within the range as specified',
    slides,
    () => [
      findings(3, 7.9, 7.9, 7.9, 7.9, 7.9),
      findings(3, 12.1, 12.1, 12.1, 12.1, 12.1),
      findings(3, 8, 8, 8, 8, 8),
      findings(3, 12, 12, 12, 12, 12),
    ],
    [['area-below'], ['area-above'], [], []],
  ),
  seen(
    'no spot below 80 % of the least, none above 120 % of the most',
    slides,
    () => [
      findings(3, 6.39, 10, 10, 10, 10),
      findings(3, 6.4, 10, 10, 10, 10),
      findings(3, 14.4, 10, 10, 10, 10),
      findings(3, 14.41, 10, 10, 10, 10),
    ],
    [['spot-below'], [], [], ['spot-above']],
  ),
  seen(
    'level 1 allows spots and areas no deviation',
    newsletter,
    () => [
      allInMils(limitsAt(1)),
      findings(1, 7.99, 10, 10, 10, 10),
      findings(1, 12.01, 10, 10, 10, 10),
      findings(1, 8, 12, 10, 10, 10),
    ],
    [[8, 12, 8, 12], ['spot-below'], ['spot-above'], []],
  ),
  derived('spots 6.5, 9, 8.2, 8.0, 8.4 mil have a mean of 8.02', pa2, () => meanMils(6.5, 9, 8.2, 8, 8.4), 8.02, 1e-9),
  derived(
    'they pass at level 3 and fail at 1 and 2, for 6.5 is below 8',
    pa2,
    () => ([3, 1, 2] as const).map((level) => accepted(level, 6.5, 9, 8.2, 8, 8.4)),
    [true, false, false],
  ),
  derived(
    'spots 6.3, 9.5, 9, 9, 9 mil have a mean of 8.56 and yet fail at level 3',
    pa2,
    () => [Math.round(meanMils(6.3, 9.5, 9, 9, 9) * 100) / 100, findings(3, 6.3, 9.5, 9, 9, 9)],
    [8.56, ['spot-below']],
  ),
  fromMemory('level 2: spots from the least to 120 % of the most', pa2, () => allInMils(limitsAt(2)), [8, 14.4, 8, 12]),
  fromMemory(
    'level 4: spots from 80 % of the least to 150 % of the most (uncertain)',
    pa2,
    () => allInMils(limitsAt(4)),
    [6.4, 18, 8, 12],
  ),
  fromMemory(
    'level 5: spots from 80 % of the least, no upper end for spots or areas',
    pa2,
    () => [allInMils(limitsAt(5)), findings(5, 40, 40, 40, 40, 40)],
    [[6.4, 'unrestricted', 8, 'unrestricted'], []],
  ),
];

const association = 'Dutch industry association quoting NEN-ISO 19840:2005';
const twoHundred: NominalRule = { nominalMicrometres: micrometres(200), mostMicrometres: micrometres(600) };
const three = squareMetres(3);
const wrong = (...corrected: readonly number[]) =>
  answered(judgeNominal(um(...corrected), three, twoHundred)).findings.map((finding) => finding.what);
const ten = [210, 205, 195, 220, 230, 215, 208, 212, 199, 221] as const;
const nineAnd = (last: number) => [210, 205, 205, 220, 230, 215, 208, 212, 209, last] as const;
const correction = (profile: Profile) => 100 - answered(correctedReading(micrometres(100), profile));

const nominal: readonly PublishedCase[] = [
  seen(
    'the mean of all readings reaches the nominal film',
    `${association}, rule 1`,
    () => [
      wrong(200, 200, 200, 200, 200, 200, 200, 200, 200, 200),
      wrong(199.8, 200, 200, 200, 200, 200, 200, 200, 200, 200),
    ],
    [[], ['mean-below']],
  ),
  seen(
    'each reading reaches 80 % of it',
    `${association}, rule 2`,
    () => [wrong(...nineAnd(159.9)), wrong(...nineAnd(160))],
    [['reading-below'], []],
  ),
  seen(
    'less than 20 % of the readings lie from 80 % up to nominal',
    `${association}, rule 3`,
    () => [wrong(...nineAnd(199)), wrong(...ten)],
    [[], ['too-many-thin']],
  ),
  seen(
    'each reading stays within the most',
    `${association}, rule 4`,
    () => [wrong(...nineAnd(600)), wrong(...nineAnd(600.1))],
    [[], ['reading-above']],
  ),
  seen(
    'the rule is for nominal films of 40 um and above',
    'ISO 19840:2012, catalogue abstract',
    () => [
      thinnestNominal,
      judgeNominal(um(39.9), three, { nominalMicrometres: micrometres(39.9), mostMicrometres: micrometres(90) }),
      answered(
        judgeNominal(um(41, 41, 41, 41, 41, 41, 41, 41, 41, 41), three, {
          nominalMicrometres: micrometres(40),
          mostMicrometres: micrometres(90),
        }),
      ).accepted,
    ],
    [40, { failed: 'does-not-apply', what: 'nominal film', given: 39.9, limit: 40 }, true],
  ),
  derived(
    'two of ten below 200 um are 20 % and fail, with a mean of 211.5',
    `${association}, the wording taken strictly`,
    () => answered(judgeNominal(um(...ten), three, twoHundred)),
    { accepted: false, meanMicrometres: 211.5, findings: [{ what: 'too-many-thin', thin: 2, of: 10 }] },
  ),
  derived(
    'one reading of 158 um fails the limit of 160',
    `${association}, rule 2`,
    () => answered(judgeNominal(um(...nineAnd(158)), three, twoHundred)).findings,
    [{ what: 'reading-below', measuredMicrometres: 158, limitMicrometres: 160 }],
  ),
  derived(
    'a mean of 198 um fails',
    `${association}, rule 1`,
    () => wrong(198, 198, 198, 198, 198, 198, 198, 198, 198, 198),
    ['mean-below', 'too-many-thin'],
  ),
  ...(
    [
      [1, 5],
      [1.1, 10],
      [3, 10],
      [3.1, 15],
      [10, 15],
      [10.1, 20],
      [30, 20],
      [30.1, 30],
      [100, 30],
      [100.1, 40],
      [200, 40],
      [200.1, 50],
    ] as const
  ).map(([area, readings]) =>
    fromMemory(
      `${area} m2 want ${readings} readings`,
      'ISO 19840, sampling table',
      () => readingsNeeded(squareMetres(area)),
      readings,
    ),
  ),
  ...(
    [
      ['fine', 10],
      ['medium', 25],
      ['coarse', 40],
      ['not-known', 25],
      ['gauge-set-on-profile', 0],
    ] as const
  ).map(([profile, micrometresOff]) =>
    fromMemory(
      `profile ${profile} takes ${micrometresOff} um off a reading`,
      'ISO 19840, profile correction',
      () => correction(profile),
      micrometresOff,
    ),
  ),
];

checkPublished('film thickness acceptance', { seen: 15, run: 0, derived: 11, 'from-memory': 20 }, [
  ...counts,
  ...levels,
  ...nominal,
]);
