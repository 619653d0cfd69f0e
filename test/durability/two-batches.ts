// What a crew says over two days, as a chat platform would deliver it: two batches, three parts, an objection, an
// amendment, something taken back. Invented.

import type { CrewFile } from '../../core/crew/crew.ts';
import { minutes } from '../../core/units.ts';

export interface Delivery {
  readonly id: string;
  readonly as: string;
  readonly text: string;
  /** After the delivery before it was answered. */
  readonly afterMinutes: number;
}

export const inventedCrew: CrewFile = {
  name: 'Invented crew',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'ada', role: 'lead', language: 'en', units: 'metric' },
    { name: 'kari', role: 'crew', language: 'en', units: 'metric' },
    { name: 'bo', role: 'supervisor', language: 'en', units: 'us' },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};

const said: readonly (readonly [afterMinutes: number, as: string, text: string])[] = [
  [0, 'ada', 'air 24C 48%'],
  [1, 'kari', 'mix 2.4kg'],
  [5, 'kari', 'weigh 1 1201g 1198g'],
  // Neither stirred long enough nor filtered: objected to.
  [30, 'kari', 'coat new impeller-7 1 brush'],
  [20, 'ada', 'air 18C 50%'],
  [130, 'kari', 'ok'],
  [3, 'ada', 'amend 1 weigh 1201g 1189g wrong scale'],
  [5, 'kari', 'filter 1'],
  [6, 'kari', 'coat new impeller-7 flange-2 1 brush already'],
  [17, 'kari', 'dry impeller-7 flange-2 already'],
  [3, 'kari', 'cure impeller-7 oven 90C already'],
  [10, 'kari', 'temp impeller-7 91C'],
  [2, 'kari', 'cure flange-2 room already'],
  [3, 'ada', 'mix 1kg'],
  [3, 'ada', 'weigh 2 500g 501g'],
  [1, 'ada', 'undo'],
  [2, 'ada', 'weigh 2 500g 499g'],
  [60, 'bo', 'air 21C 55%'],
  [19, 'kari', 'temp impeller-7 92C'],
  [1, 'kari', 'out impeller-7 already'],
  [10, 'ada', 'release impeller-7 already'],
  [30, 'kari', 'empty 1 50g'],
  [60, 'kari', 'stop 2'],
  [40, 'ada', 'gel 2'],
  [20, 'ada', 'empty 2'],
  [960, 'kari', 'night 17C'],
  [30, 'kari', 'out flange-2 already'],
  [5, 'ada', 'release flange-2 already'],
];

export const twoBatches: readonly Delivery[] = said.map(([afterMinutes, as, text], i) => ({
  id: `d${i + 1}`,
  ...{ as, text, afterMinutes },
}));
