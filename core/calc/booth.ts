// How fast air must move into a spray booth: the fire rule of 29 CFR 1910.107(b)(5).

import { metresPerSecondFromFeetPerMinute } from '../units.ts';

/** Least average velocity over an open face, 1910.107(b)(5)(i); `air-operated` is any gun that air drives. */
export const leastFaceVelocity = {
  electrostatic: metresPerSecondFromFeetPerMinute(60),
  'air-operated': metresPerSecondFromFeetPerMinute(100),
} as const;
