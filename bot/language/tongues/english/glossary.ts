// What the words of the trade mean, in our own words of English, and what the bot does with each.

import type { Glossary } from '../glossary.ts';
import { englishGlossaryOfMix } from './glossary-mix.ts';

export const englishGlossary: Glossary = {
  ...englishGlossaryOfMix,
  air: {
    means: 'Temperature and humidity of the room, read off an instrument.',
    bot: 'Clocks run by the last reading while it is fresh; it asks for the next.',
  },
  humidity: {
    means: 'How much water the air holds, as a share of what it could hold at that temperature.',
    bot: "It is held against the sheet's range, and gives the dew point with the temperature.",
  },
  'dew-point': {
    means: 'The temperature at which water begins to settle out of this air.',
    bot: 'It is worked out from temperature and humidity, and compared with the steel.',
  },
  spread: {
    means: 'How many degrees the surface is warmer than the dew point; too few, and water may sit on it unseen.',
    bot: 'It objects to a coat below the least that the sheet asks.',
  },
  surface: {
    means: 'What the coating goes on; prepared steel keeps its state only for a time.',
    bot: 'It asks for its temperature, and rings when prepared steel must be coated.',
  },
  'wet-bulb': {
    means: 'A thermometer with a wet sleeve in moving air: the drier the air, the colder it reads.',
    bot: 'It works out the humidity from both bulbs.',
  },
  grade: {
    means: 'How clean the surface is after its preparation, by a picture standard.',
    bot: 'It is held against what the sheet or the job asks.',
  },
  profile: {
    means: 'How rough the prepared steel is, from valley to peak.',
    bot: 'It is held against what the sheet or the job asks.',
  },
  salts: {
    means: 'Salt on the steel that cannot be seen and draws water under the film.',
    bot: 'It works out the amount from a patch test, and holds it against the most allowed.',
  },
  dust: {
    means: 'Dust on prepared steel, rated from 0 to 5 by what sticks to a tape.',
    bot: 'It is held against the most that is allowed.',
  },
  wall: {
    means: 'How thick the metal of a part is: a heavy one warms slowly.',
    bot: 'It estimates from it when the part is at temperature.',
  },
  area: {
    means: 'How much surface is to be coated.',
    bot: 'It is what a plan counts from.',
  },
  bears: {
    means: 'The hottest that a part may get.',
    bot: 'It objects to an oven that is hotter.',
  },
  'flow-coat': {
    means: 'Pouring the mix over the part and catching what runs off.',
    bot: 'It offers to note what was caught.',
  },
  dip: {
    means: 'Lowering the part into the mix once, slowly, and out again.',
    bot: 'It objects to a second dip.',
  },
  film: {
    means: 'The coating on the part; its thickness is read in several places when it is dry.',
    bot: "It judges the readings by the sheet's own rule.",
  },
  'wet-film': {
    means: 'The thickness of the coating while it is wet, before its solvent has left.',
    bot: 'It works out what it means dry.',
  },
  'volume-solids': {
    means: 'The share of a litre that stays on the part when the solvent is gone.',
    bot: 'It turns the dry film into wet film and into what must be mixed.',
  },
  'transfer-efficiency': {
    means: 'How much of what leaves the gun or the brush stays on the part.',
    bot: 'It adds the loss to what must be mixed.',
  },
  'open-time': {
    means: 'How long a wet film takes another pass of the same coat without a mark.',
    bot: 'It objects to a pass over a film that has begun to dry.',
  },
  'flash-off': {
    means: 'The wait after a coat in which solvent leaves the film, before heat or the next coat.',
    bot: "It waits for the sheet's least and for somebody to say that it is dry.",
  },
  'touch-dry': {
    means: 'A light touch leaves no mark and takes nothing off.',
    bot: 'It is what somebody says after flash-off; the clock alone proves it not.',
  },
  'recoat-window': {
    means: 'The time from which and until which another coat may go on.',
    bot: 'It rings when it opens and before it closes; some sheets forbid a second coat.',
  },
  cure: {
    means: "The reaction that makes the film hard: so long at a temperature of the part's own.",
    bot: 'It counts what readings on the part prove; cure time given is not released.',
  },
  stage: {
    means: 'What a curing film bears by then: handling, service, everything.',
    bot: 'It adds up the time to each by the temperatures that were read.',
  },
  adhesion: {
    means: 'How well the film holds, by cutting a grid in it and pulling a tape off.',
    bot: 'A failed one holds the part.',
  },
  rub: {
    means: 'Rubbing the film with a solvent cloth to see whether it is cured through.',
    bot: 'A film that is rubbed through holds the part.',
  },
  coupon: {
    means: 'A small plate that goes through everything with the parts, so that it can be tested in their place.',
    bot: 'A test on it says so.',
  },
  release: {
    means: 'The decision that a part may leave.',
    bot: 'It is never made by a clock, and names who made it.',
  },
  hold: {
    means: 'A part that may not leave until somebody who leads has settled what becomes of it.',
    bot: 'It says why, and stops no clock.',
  },
  deviation: {
    means: 'Something done that a rule speaks against, whether or not it was allowed beforehand.',
    bot: 'It is marked from the record as it stands, and goes away only with a correction.',
  },
  traveller: {
    means: 'The paper that goes with a part: all that was done to it.',
    bot: 'It writes it from the record.',
  },
  lead: {
    means: 'Who leads the crew or answers for it; some things only they may allow.',
    bot: 'It calls them, and asks them where a rule says so.',
  },
  brief: {
    means: 'What is said before spraying: where, who, which air, what is dangerous.',
    bot: 'It tells it, and asks each who is exposed to acknowledge it.',
  },
  session: {
    means: 'One stretch of spraying in one place, from its brief to its closing.',
    bot: 'It has its own number, clocks and message.',
  },
  spell: {
    means: 'How long somebody sprays without a break.',
    bot: "It rings at the sheet's longest.",
  },
  extraction: {
    means: 'Air drawn through the booth, so that mist and vapour leave it.',
    bot: 'It compares what was measured with what the sum asks; a sum is no reading.',
  },
  'face-velocity': {
    means: "How fast air moves into the booth's open face.",
    bot: 'It is what somebody measures, and times the face gives the flow.',
  },
  lel: {
    means: 'The least vapour in air that can burn.',
    bot: 'It works out the air that keeps vapour at a share of it, by the lowest published.',
  },
  'day-limit': {
    means: 'How much of a vapour there may be in the air that people breathe over a day.',
    bot: 'It works out the air for it; breathing air is for the sheet and the employer.',
  },
  'mixing-factor': {
    means: 'How many times more air is taken, since no room mixes perfectly.',
    bot: 'It is set by the crew, or assumed and said so.',
  },
  solvent: {
    means: 'The liquid that makes the coating thin enough to apply, and then leaves it as vapour.',
    bot: 'It counts it for air, for the oven and for the ledger.',
  },
  voc: {
    means: 'What leaves a coating as organic vapour, by mass.',
    bot: 'It adds it up from what was used, for the limits that the shop has set.',
  },
  flush: {
    means: 'Cleaning gun, hose and vessels at once, before the mix sets in them.',
    bot: 'It rings until somebody says that it is done.',
  },
  earthed: {
    means: 'Joining metal vessels and the ground by wire, so that no spark jumps.',
    bot: 'It asks for it where the sheet does.',
  },
  'data-sheet': {
    means: "The maker's paper on what is dangerous and what to do then.",
    bot: 'It hands it out with papers.',
  },
  sheet: {
    means: "The maker's figures for a product, as the shop keeps them, each with its source.",
    bot: 'A batch keeps the sheet that it was opened with.',
  },
  ring: {
    means: 'A reminder that calls somebody by name.',
    bot: 'It follows from the record: what moves a clock moves its bell.',
  },
  door: {
    means: 'Open: the oven loses heat, or the pot takes in moist air.',
    bot: 'Time with it open counts for nothing, or against the pot life.',
  },
  event: {
    means: 'One thing that somebody said or did, with when and who.',
    bot: 'It is never changed; a correction stands beside it.',
  },
};
