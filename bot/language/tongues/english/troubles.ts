// What to do in need, in English: the first thing that is read, and what never to do.

import type { Alarm } from '../../../../core/session/session-commands.ts';

export interface Trouble {
  readonly title: string;
  /** What to do now, with what it rests on: the first thing that is read. */
  readonly now: { readonly text: string; readonly source: string };
  /** Of a safety data sheet in sixteen sections. */
  readonly section: string;
  readonly never: readonly string[];
}

const practice = 'common practice, no source';

/** What heats, where more is told of it than that it is hot. */
export const englishHeats: Readonly<Record<'smoking' | 'bulging', Trouble>> = {
  smoking: {
    title: 'A pot or can smokes',
    now: {
      text: 'Out of the fumes, everybody, now. Leave it where it is, its lid loose. Call the number from outside: it may burn.',
      source: practice,
    },
    section: 'Safety data sheets: sections 5 and 10, fire-fighting and reactivity',
    never: ['Do not breathe what comes off it, do not lean over it. No water into it. Do not close it tight.'],
  },
  bulging: {
    title: 'A pot or can swells',
    now: {
      text: 'Stand off, everybody: it can burst. It stays where it stands, nobody opens, moves or cools it. Call the number; no spark near it.',
      source: 'it stays where it stands: DGUV Information 213-078, 10.15.1; the rest: common practice, no source',
    },
    section: 'Safety data sheets: sections 7 and 10, handling and reactivity',
    never: ['Do not lean over its lid. Whoever lets the pressure off knows how: ask the maker. Never fill it again.'],
  },
};

export const englishTroubles: Readonly<Record<Alarm, Trouble>> = {
  eyes: {
    title: 'Something in the eyes',
    now: {
      text: 'Rinse now with plenty of water, lids held open, for 15 minutes at least: at the eyewash, or any clean water. Somebody else calls while they rinse.',
      source: '15 minutes: ANSI/ISEA Z358.1 for eyewashes, and first-aid practice',
    },
    section: 'Safety data sheet of what splashed: section 4, first aid',
    never: ['Do not rub. Do not stop to look for the sheet first.'],
  },
  spill: {
    title: 'Spill',
    now: {
      text: 'Everybody who is not needed goes out. No spark, no switch. Stop what flows if it can be done from where you stand.',
      source: practice,
    },
    section: 'Safety data sheet of what spilled: section 6, accidental release',
    never: ['Do not switch anything on or off in the vapour. Do not close what reacts with moisture in a tight lid.'],
  },
  fire: {
    title: 'Fire',
    now: {
      text: 'Out, everybody, now. Raise the alarm, call the number from outside, meet whoever comes.',
      source: practice,
    },
    section: 'Safety data sheets: section 5, fire-fighting',
    never: ['Do not go back in. Do not throw water on burning solvent.'],
  },
  down: {
    title: 'Somebody is down',
    now: {
      text: 'Do not go in without breathing air of your own: the second person is the next one down. Call the number now, and look from outside for what felled them: vapour, inert gas, a fall, power.',
      source: practice,
    },
    section: 'Safety data sheets: section 4, first aid',
    never: ['Do not touch them while power may be on them.'],
  },
  'skin-burn': {
    title: 'Burnt or splashed skin',
    now: {
      text: 'Rinse now with plenty of cool running water, off with what is soaked: 15 minutes at least, a burn 20. Somebody else calls while they rinse.',
      source:
        '15 minutes: ANSI/ISEA Z358.1 for drench showers; 20 for burns: European Resuscitation Council 2021, from memory',
    },
    section: 'Safety data sheet of what splashed: section 4, first aid',
    never: ['No cream, no ice, no solvent on it. Do not pull off what sticks to a burn.'],
  },
  breathless: {
    title: 'Somebody cannot breathe well',
    now: {
      text: 'Out into fresh air now, sitting up, collar open; whoever fetches them breathes air of their own. Call the number now: it may get worse for hours. Stay with them.',
      source: practice,
    },
    section: 'Safety data sheets: section 4, first aid',
    never: ['Do not go into the vapour without breathing air. Do not send them home alone.'],
  },
  emergency: {
    title: 'Somebody needs help',
    now: {
      text: 'Go there and look first for what could fell you too. Call the number now, say where, stay on the line.',
      source: practice,
    },
    section: 'Safety data sheets: section 4, first aid',
    never: ['Do not go in without breathing air of your own where vapour or gas may be.'],
  },
  hot: {
    title: 'A pot is heating',
    now: {
      text: 'Away from people and from whatever burns, lid loose, if it can still be moved. Then stand off.',
      source: practice,
    },
    section: 'Safety data sheets: sections 7 and 10, handling and reactivity',
    never: ['Do not close it tight. Do not breathe what comes off it.'],
  },
};
