// The lines of the spray brief and of the hazards of other work, in English.

import type { BriefLineId } from '../../../../core/session/brief-lines.ts';

export const briefLinesIn = (earthed: string): Readonly<Record<BriefLineId, string>> => ({
  vessel: "Not for work inside a tank or vessel: none of this serves there. Use the employer's confined-space permit.",
  extraction:
    'Extraction running, and its face velocity measured: at least 0.51 m/s (100 ft/min) over the open face, 0.64 m/s (125 ft/min) of a booth too small to stand in.',
  'supplied-air':
    'Where there is no extraction, supplied air at the least for everybody exposed. Whether extraction alone will do is for the sheet and the employer’s written assessment.',
  downstream:
    'Whoever stands downstream of the part in a booth wears supplied air or the respirator the programme names.',
  'moved-out': 'Everybody else moves out. Who stays is exposed like who sprays.',
  'skin-and-eyes': 'Hood or goggles, the gloves that the safety data sheets name, coverall closed at neck and wrist.',
  bonding: `Bond and ${earthed.slice(0, -2)} both containers for every transfer: pour, stir, gun and flush.`,
  earthing: `Booth, ducts, piping and the part itself are ${earthed}.`,
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
  'vapour-wipe':
    'Air moves where it is wiped, brushed or rolled: vapour stays below a quarter of the lower explosive limit.',
  'vapour-mix': 'Mix where at least 18 m³/h of air for each m² of floor goes out (1 ft³/min a ft²).',
  'ignition-path': 'No ignition source where vapour can travel: it is heavier than air and runs along the floor.',
  covered: 'Containers stay covered when not in use.',
  gloves: 'The gloves that the safety data sheets name; change them when they are wet through.',
  'bonding-pour': 'Bond nozzle and container when pouring. Plastic cannot be bonded.',
  'air-pressure': 'Never push liquid out of a container with air pressure.',
  rags: 'Rags go into a closed metal can, emptied every day or shift.',
  'wipe-solvent':
    'For wiping, a solvent that flashes at 38 °C (100 °F) or more; lower only for guns, in the booth with the fan on.',
});
