// How fast air must move into a spray booth. The fire rule of 29 CFR 1910.107(b)(5) asks for one figure of any booth; Table G-10 of
// 29 CFR 1910.94 asks for more of a small one.

import { type MetresPerSecond, metresPerSecondFromFeetPerMinute, type SquareMetres } from '../units.ts';

/** Least average velocity over an open face, 1910.107(b)(5)(i); `air-operated` is any gun that air drives. */
export const leastFaceVelocity = {
  electrostatic: metresPerSecondFromFeetPerMinute(60),
  'air-operated': metresPerSecondFromFeetPerMinute(100),
  /** 1910.94(c)(6)(i), Table G-10: the lower end for a small booth, cross-drafts up to 50 ft/min. */
  'air-operated-small-booth': metresPerSecondFromFeetPerMinute(125),
} as const;

/** Too small a face to stand in: our reading, no source. The table does not say which booth is small. */
export const smallFaceSquareMetres = 1;

/** For air-operated guns; of a booth whose face nobody has said, the fire rule's. */
export function leastFaceVelocityOf(face: SquareMetres | undefined): MetresPerSecond {
  const isSmall = face !== undefined && face < smallFaceSquareMetres;
  return leastFaceVelocity[isSmall ? 'air-operated-small-booth' : 'air-operated'];
}
