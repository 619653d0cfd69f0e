// What the words round A, B, their pot and their cans mean, in our own words of English.

import type { TermSaid } from '../glossary.ts';

export const englishGlossaryOfMix = {
  'part-a': {
    means: 'The first of the two parts that make the coating; here the one that moisture spoils.',
    bot: 'It says how much to weigh, asks for gas over what is left, and keeps count of each can.',
  },
  'part-b': {
    means: 'The second part: once it meets A they react, and the pot life runs.',
    bot: 'It says how much belongs to the A that was weighed, and starts the clocks when B is in.',
  },
  ratio: {
    means: 'How much A goes to how much B, by weight or by volume, and how far off it may be.',
    bot: 'It works out how far a weighing is off, and says what to add while that is possible.',
  },
  batch: {
    means: 'One mix of A and B in one vessel, with a number of its own.',
    bot: 'It has its own clocks, lots, coats and message.',
  },
  'pot-life': {
    means: 'How long a mix can be used once A and B have met; warmth and a big pot shorten it.',
    bot: 'It adds it up over the temperatures that were read, and rings before it ends. Thick or gelled ends it whatever the clock.',
  },
  margin: {
    means: 'The last moment to stop applying, so that time is left to empty the pot and flush the gear.',
    bot: 'It rings then, before the pot life ends.',
  },
  stirring: {
    means: 'Running the stirrer until the two parts are one; the colder, the longer.',
    bot: 'It counts only minutes with the stirrer running.',
  },
  induction: {
    means: 'Letting a mix stand after it is mixed, so that it begins to react before it is applied.',
    bot: 'It counts from B into A, and the pot life counts it too.',
  },
  vortex: {
    means: 'The funnel that a stirrer draws; a deep one beats air and moisture in.',
    bot: "It reminds of the sheet's speed, and shortens the pot life where the sheet says so.",
  },
  filter: {
    means: 'A fine sieve that the mix is poured through, so that specks do not stand in the film.',
    bot: 'It offers the step and names the grade of the sheet.',
  },
  vessel: {
    means: 'What A and B are mixed in.',
    bot: 'It asks whether its material and size are what the sheet allows.',
  },
  'pre-stir': {
    means: 'Stirring Part A in its own can before the pour: what has settled gives a wrong portion.',
    bot: 'It says how long by what is in the can, and objects to a pour without it where the sheet asks.',
  },
  blanket: {
    means: 'Dry gas such as argon or nitrogen over what is left in a can, so that moist air does not reach it.',
    bot: 'It rings from the lid coming off until somebody says that gas is over it.',
  },
  headspace: {
    means: 'The room in a can above the liquid.',
    bot: 'It works out how much gas fills it.',
  },
  purge: {
    means: 'Letting gas in until it has pushed the air out.',
    bot: 'It works out how long the gas runs and what oxygen is left; it is no gas monitor.',
  },
  can: {
    means: 'One container of A or B as it was bought, with its lot.',
    bot: 'It has a number, and its weight goes down with each pour.',
  },
  lot: {
    means: "The maker's number of one making of A or B.",
    bot: 'It leads from any part back to the cans, and from a lot to every part.',
  },
  caught: {
    means: 'Mix that drains off a flow coat and is used again.',
    bot: 'It asks for it to be filtered before it goes on another part.',
  },
  'left-over': {
    means: 'Mix that is not used: it may heat by itself, and is waste.',
    bot: 'It notes how much, and says how the sheet wants it kept.',
  },
} as const satisfies Readonly<Record<string, TermSaid>>;
