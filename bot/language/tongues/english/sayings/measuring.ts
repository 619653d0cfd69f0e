// How English speakers say that they are about to measure a dry film: what is asked of it then. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfMeasuring: Sayings<SaidMeaning> = {
  'measure film': `
    measure 7 / measure the 7 / measure the impeller / measure hub 3 / let's measure 7 / lets measure the casing
    measuring 7 now / measuring the hub / measuring the casing, ask me / time to measure 7 / time to measure the rail
    going to measure the 8 / gonna measure the 8 now / about to measure the cover / I'm about to measure 7
    I'm going to measure the film on 7 / I want to measure 7 / I'd like to measure the hub / want to measure the film
    ready to measure 7 / ready to measure the casing / ready for the dft on 7 / ready for readings on the hub
    start measuring 7 / start the dft on 7 / start dft on the casing / start the film on 3 / start the readings on 7
    start a film set on 7 / start a set of readings on the hub / begin the dft on 9 / begin measuring the rail
    begin readings on the casing / take the dft of 7 / take the film of the hub / take readings on 7
    take the dry film on the casing / let's take the dft of 7 / let's do the dft on 7 / let's do the film on the hub
    let's do the thickness on 3 / do the dft on 7 / do the film on the rail / do the thickness of 8 now
    do the spots on 7 / do the spots of the hub / doing the spots on 7 now / spots on 7 / spots for the casing
    walk me through the dft on 7 / walk me through the spots / walk me through measuring the hub
    guide me through the film on 7 / take me through the readings on the casing / ask me the spots of 7
    ask me for the readings of 7 / ask me the film of the hub / ask me spot by spot on 7 / spot by spot on 7
    spot by spot, the casing / next spot on 7 / next spot of the hub / go on with the spots on 7
    go on with the film on 7 / go on measuring the hub / carry on with the spots of 7 / carry on measuring 7
    continue the dft on 7 / continue the spots on the casing / continue with the readings of 3
    back to measuring 7 / back to the spots on the hub / back on the dft of 7 / resume the spots on 7
    resume measuring the casing / finish the spots on 7 / finish the dft set on 7 / let me finish measuring 7
    gauge is out, 7 next / got the gauge, let's do 7 / gauge in hand for 7 / gauging 7 now / gauge the 7
    gauge up 7 / checking thickness on 7 / checking the thickness of the hub now / check the film build on 7
    thickness on 7 please / dft time for 7 / dft time, the casing / dft check on 7, go / dft session on 7
    dft on 7 next / another set on 7 / another set of readings on the hub / a new set on 7 / second set on the casing
    measure it again, 7 / measure 7 again / remeasure 7 / measuring the hub over again / redo the dft on 7
  `,
};
