import type { KnipConfig } from 'knip';

/**
 * Sums that are proved and that nobody asks yet, each with who will ask. What is asked by then leaves the list; what
 * stands here and nowhere else is dead.
 */
const awaited = {
  'core/calc/adhesion.ts': 'what a job asks for before release: the classes of a cross-cut',
  'core/calc/coating-need.ts': 'the traveller: film by what was used, beside what was measured',
  'core/calc/dose-inverse.ts': 'the oven and the warm room: how warm to finish by an hour',
  'core/calc/film-build.ts': 'the traveller: theoretical against practical use',
  'core/calc/film-count.ts': 'what a job asks for before release: how many readings an area takes',
  'core/calc/film-job-rule.ts': 'a film reading: whether the gauge is fit for the range',
  'core/calc/film-readings.ts': 'what a job asks for before release: the statistics of a set of readings',
  'core/calc/flammable.ts': 'before Part B goes in: a warm liquid, and bonding where one is poured',
  'core/calc/heating.ts': 'a reading in the oven far from what the part should have come to',
  'core/calc/thinner.ts': 'the sheet that allows thinner: how much',
  'core/calc/voc.ts': 'the sheet that allows thinner: what it does to the VOC',
} satisfies Readonly<Record<string, string>>;

const config: KnipConfig = {
  // The mark: what a production run looks at as well (`npm run unused` runs both).
  entry: ['bot/main.ts!', ...Object.keys(awaited).map((file) => `${file}!`)],
  project: ['core/**/*.ts!', 'bot/**/*.ts!', 'test/**/*.ts'],
  // A unit that only a sum of the list takes; of core/units.ts everything else must be in use.
  tags: ['-awaited'],
  ignoreExportsUsedInFile: true,
};

export default config;
