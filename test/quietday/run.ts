// `npm run quietday`: what a shift without a fault costs its people, and whom ordinary lines call.

import { countShift } from './count.ts';
import { ordinaryLines as lines } from './ordinary-lines.ts';
import { playLines } from './play-lines.ts';
import { playShift } from './play-shift.ts';
import { ordinaryLines, shiftLines } from './print.ts';
import { shift } from './shift.ts';

const counted = countShift(await playShift(shift));
const heard = await playLines(lines);
for (const line of [...shiftLines(counted), '', ...ordinaryLines(heard)]) process.stdout.write(`${line}\n`);
