// The spray brief, its session and what to do in need, in English. No sentence here passes a verdict: it says what was
// said, by whom, what was not, and what the source asks for.

import type { BriefLineId } from '../../../../core/session/brief-lines.ts';
import type { Alarm, Gear, Qualification, Work } from '../../../../core/session/session-commands.ts';

const lines: Readonly<Record<BriefLineId, string>> = {
  vessel: "Not for work inside a tank or vessel: none of this serves there. Use the employer's confined-space permit.",
  extraction: 'Extraction running, and its face velocity measured: at least 0.51 m/s (100 ft/min) over the open face.',
  'supplied-air':
    'Where there is no extraction, supplied air at the least for everybody exposed. Whether extraction alone will do is for the sheet and the employer’s written assessment.',
  downstream:
    'Whoever stands downstream of the part in a booth wears supplied air or the respirator the programme names.',
  'moved-out': 'Everybody else moves out. Who stays is exposed like who sprays.',
  'skin-and-eyes': 'Hood or goggles, the gloves that the safety data sheets name, coverall closed at neck and wrist.',
  bonding: 'Bond and ground both containers for every transfer: pour, stir, gun and flush.',
  earthing: 'Booth, ducts, piping and the part itself are grounded.',
  ignition: 'No open flame or spark-producing equipment within 6 m (20 ft), unless partitioned off.',
  phones: 'Phones, radios and watches stay outside: nobody types inside the spray area.',
  sprinklers: 'Two-component coatings are sprayed only in approved sprinklered booths.',
  'hot-work': 'Hot work nearby is stopped.',
  extinguisher: 'Extinguisher at hand, and its way free.',
  eyewash: 'Eyewash at hand, tried this week.',
  'second-person': 'A second person outside who can see in and call for help.',
  'data-sheets': 'The safety data sheets of both parts have been read.',
  'days-supply': 'No more liquid near the spraying than a day or shift needs.',
  'fan-after': 'The fan runs while they spray and long enough afterwards to clear the drying vapours.',
  'vapour-dip': 'Vapour over the bath, the drain and the wet parts stays below a quarter of the lower explosive limit.',
  'vapour-mix': 'Mix where at least 18 m³/h of air for each m² of floor goes out (1 ft³/min a ft²).',
  'ignition-path': 'No ignition source where vapour can travel: it is heavier than air and runs along the floor.',
  covered: 'Containers stay covered when not in use.',
  gloves: 'The gloves that the safety data sheets name; change them when they are wet through.',
  'bonding-pour': 'Bond nozzle and container when pouring. Plastic cannot be bonded.',
  'air-pressure': 'Never push liquid out of a container with air pressure.',
  rags: 'Rags go into a closed metal can, emptied every day or shift.',
  'wipe-solvent':
    'For wiping, a solvent that flashes at 38 °C (100 °F) or more; lower only for guns, in the booth with the fan on.',
};

const works: Readonly<Record<Work, string>> = {
  spray: 'Spraying',
  mix: 'Mixing',
  flow: 'Flow coating',
  dip: 'Dipping',
  wipe: 'Wiping, brush and roller',
};

const gears: Readonly<Record<Gear, string>> = { gun: 'gun', vessels: 'vessels' };

const qualifications: Readonly<Record<Qualification, string>> = {
  fit: 'fit test',
  medical: 'medical',
  training: 'spray training',
};

interface Trouble {
  readonly title: string;
  /** What to do now, with what it rests on: the first thing that is read. */
  readonly now: { readonly text: string; readonly source: string };
  /** Of a safety data sheet in sixteen sections. */
  readonly section: string;
  readonly never: readonly string[];
}

const practice = 'common practice, no source';

const troubles: Readonly<Record<Alarm, Trouble>> = {
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

export const englishSession = {
  lines,
  works,
  gears,
  qualifications,
  troubles,
  callForHelp: (what: string) => `Call for help: ${what}`,
  briefed: (session: number) => `Session ${session}: brief recorded`,
  titled: (session: number, what: string) => `Session ${session}: ${what}`,
  insideVessel: "Inside a vessel: this brief does not serve. Use the employer's confined-space permit.",
  what: (place: string, sheet: string, batch: string) => `${place}; ${sheet}${batch === '' ? '' : `; batch ${batch}`}`,
  startsAt: (time: string) => `Starts ${time}.`,
  sprays: (people: string) => `Sprays: ${people}`,
  stays: (people: string) => `Stays near, exposed: ${people}`,
  nobodyNear: 'Nobody was named as near. Who else is there? Say near lia out, or near lia stays.',
  movedOut: (people: string) => `Moved out: ${people}`,
  attendant: (person: string) => `Outside, with the timers: ${person}`,
  noAttendant: (people: string) => `Nobody is named outside: the timers go to ${people}.`,
  acknowledged: (person: string, time: string, witness: string | undefined) =>
    `Read by ${person}, ${time}${witness === undefined ? '' : `, before ${witness}`}`,
  notAcknowledged: (people: string) =>
    `Not acknowledged yet: ${people}. Each says ack, outside, or a witness says ack with the name.`,
  extractionNotSaid: 'Extraction: nobody has said. Say fan on 0.6m/s, fan on (not measured), or fan no.',
  extractionOff: (by: string, time: string) => `Extraction: no, by ${by} at ${time}`,
  extractionOn: (velocity: string, by: string, time: string) => `Extraction: running, ${velocity}, by ${by} at ${time}`,
  notMeasured: 'face velocity not measured',
  suppliedNotSaid: 'Supplied air: nobody has said. Say supplied yes, or supplied no.',
  supplied: (yes: boolean, by: string, time: string) => `Supplied air: ${yes ? 'yes' : 'no'}, by ${by} at ${time}`,
  outOfDate: (person: string, what: string, until: string) => `Out of date: ${what} of ${person}, ${until}`,
  undated: (person: string, what: string) => `No date known: ${what} of ${person}`,
  noSpray: (sheet: string) => `The sheet ${sheet} gives neither a longest spell nor its solvents: ask the maker.`,
  lapses: (spell: string) =>
    `It lapses with a new person, batch, booth or shift${spell === '' ? '' : `, and ${spell} after spraying starts`}.`,
  emergencyNotSet: 'The shop’s own numbers are not set. Say set emergency call, and the numbers.',
  emergencyCall: (text: string) => `Numbers: ${text}`,
  allAcknowledged: 'Acknowledged by everybody who is exposed.',
  read: 'brief read',
  extraction: 'extraction',
  suppliedAir: 'supplied air',
  starts: 'spraying starts',
  stops: 'spraying stops',
  started: 'Spraying starts. From here on nobody types inside; the timers go outside.',
  stopped: 'Spraying stops. Flush the gun now, in the booth with the fan on.',
  flushed: (gear: string) => `${gear} flushed`,
  flushNext: (gear: string, steps: string) => `Still for the ${gear}: ${steps}.`,
  flushSequence: (steps: string, source: string) => `Flush with ${steps} (${source}).`,
  noFlushOnSheet: 'The sheet gives no flush: use what the maker names.',
  flushConflict: (flush: string, coating: string) =>
    `Flash points below the coating's own solvents (${coating}): ${flush}. The code asks for a flush solvent that flashes no lower; the sheet's sequence says otherwise. The employer decides which.`,
  ragsIn: 'Filters and rags in their closed can',
  closed: 'closed',
  fanUntil: (time: string) => `Leave the fan on until ${time}.`,
  stillToDo: (what: string) => `Still to do: ${what}.`,
  todo: { gun: 'flush the gun', vessels: 'flush the vessels', rags: 'filters and rags into their closed can' },
  neverSprayed: 'Nothing was sprayed in it.',
  sumOnly: 'A sum that passes is not a check that was made. No gas monitor was read for it.',
  sumTerms: (share: string, factor: string, assumed: boolean) =>
    `To stay below ${share} of the lower explosive limit; mixing factor ${factor}${assumed ? ', assumed: nobody has set it' : ''}.`,
  wholePot: 'Nobody said how much is sprayed in an hour: the whole pot is assumed.',
  fanFromSum: (minutes: string) =>
    `By the sum the booth's air has gone out four times in ${minutes}; the longer of that and the sheet's time counts.`,
  fanUnknown:
    'Neither the sheet nor a sum says how long the fan stays on: leave it on until nothing wet is left in the booth.',
  noSum: 'No sum: the sheet gives no solvents, or nobody knows how much is sprayed.',
  noBooth: (place: string) => `The open face of ${place} is not set: say set booth ${place} 4m2.`,
  withoutFigure: (solvents: string) => `Left out, since no published figure was read: ${solvents}.`,
  fanNotMeasured: 'What the fan gives is not known.',
  worstOven: 'Counted as if all its solvent left in the oven.',
  oven: (mass: string, temperature: string) => `Oven load: ${mass} wet, ${temperature}`,
  purge: (gas: string, amount: string, room: string) => `${gas}: ${amount} let out into ${room}`,
  purgeMixed: 'Well mixed, with no fresh air. Only a monitor knows what is breathed.',
  purgeDeficient: (limit: string) => `Below ${limit}: oxygen-deficient. Nobody goes in without the employer's permit.`,
  settles: 'Argon settles: near the floor and in pits there is less oxygen than this.',
  hazardsOf: (work: string) => `${work}: what to look at`,
  callNumber: (text: string) => `Call: ${text}`,
  doNow: (text: string, source: string) => `${text} (${source})`,
  callNotSet: 'The shop’s own numbers are not set.',
  shopSteps: (text: string) => `Here: ${text}`,
  shopStepsNotSet: (field: string) => `The shop’s own steps are not set: set emergency ${field}, and the words.`,
  note: (text: string) => `Said: ${text}`,
  deferTo: (section: string) => `${section}. It and the employer’s programme go before these lines.`,
  nearMiss: 'Near miss noted',
  nearMissText: (text: string) => `"${text}"`,
  anonymous: 'No name is kept with it.',
  bellTest: (people: string) => `Bell test: ${people}`,
  bellLines:
    'It rings for each of them, and each says ok on their own phone. Who does not answer is named to the lead.',
  qualified: (person: string, what: string, until: string) => `${what} of ${person}: until ${until}`,
  near: (people: string, goes: string) => `${people}: ${goes}`,
  goes: { sprays: 'sprays', stays: 'stays near, exposed', out: 'moved out' },
  daySession: (session: number, people: string, solvent: string, open: string) =>
    `Session ${session}: exposed ${people}${solvent === '' ? '' : `; flushed with ${solvent}`}${open === '' ? '' : `; still to do: ${open}`}`,
  dayTold: (time: string, who: string, what: string) => `${time} ${who}: ${what}`,
  settings: {
    on: 'on',
    off: 'off',
    nobodyNamed: 'anybody: no list',
    quiet: (from: string, to: string) => `${from} to ${to}; what is critical rings through it`,
  },
};
