// How English speakers say it, in further words: used, rags. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCans3: Sayings<SaidMeaning> = {
  used: `
    took 400 g of A out of can 3 for a repair / took 2 lb from the A / took a cupful of B, 180 g
    taken 90 g B for a test / I have taken 1 kilo from the A / we took half a litre from can 5
    has 800 g less in it, can 4 / used half the tin, 2.5 kg, can 1 / used a third of can 6, 1.6 kg
    used up half a kilo of can 3 / used so far from can 5, 1.2 kg / poured off a litre of A
    poured 150 g of B into a jar / decanted 500 g from can 3 to a small tin / decanted a litre of B
    dipped 180 g out of the pail / siphoned 1 kg from drum 2 / pumped 4 kg from the drum / tapped 600 g off drum 1
    pulled half a gallon from the pail / removed a kilo of A / withdrawn 400 g from the B / got 325 g from tin 2
    gave the other shift 500 g from can 3 / lent the next bay 300 g of B / gave 400 g of A away from can 2
    handed 1 kg from can 4 over to bay two / sample of 50 g taken from can 3 / sampled 30 g B for the lab
    test sample from the A, 40 g / spilled none, took 200 g, can 5 / tin 2 less 280 / down 800 on the A
    A's down 1.2 kg / B's down half a kilo / can 5 lighter by 300 / can 3 lost 640 g to that job
    500 g came out of tin 4 / half of can 4 is gone, 2.5 kg / 90 grams gone from B / issued half a kilo, can 5
    issued to bay 2: 600 g A / book 500 g off can 3 / knock 600 off can 3 / knock off 250 g, can 2, used it
    charge 400 g to can 3 / write off 150 g from B / please deduct 480 grams, can 3
    kindly record 600 g used from can 2 / note 350 used from tin 4 / that's 640 oot ae can 3 / used 5 oz of B
    used 12 ounces from can 2 / a quart out of the pail / half a pint of B used / 300 g A used for the patch job
    used six forty from can three / took five hundred from can two / can four three fifty out / took 400 form can 2
  `,
  rags: `
    I have put all rags in the metal bin / I have put the wipes in the closed can / we have put away the rags
    have binned the rags / have cleared the rags / rags have gone in the can / rags have been put away
    rags in the drum with the lid / rags in water, lid on / rags wet down and closed / rags soaked in water and lidded
    rags collected / rags collected and binned / rags all binned / rags tidied / rags cleared off the bench
    rags cleared from the booth / rags sorted / rags sorted, in the tin / rags dealt with, lid on
    rags disposed of, metal can / rags stowed / rags sealed in the can / rags closed up / rags tucked away, lid down
    rags bagged and in the metal bin / rags are away, boss / rags r in / cloths are away / cloths gone in the tin
    cleaning cloths binned in the metal can / wipes binned / wipes cleared / wipes disposed
    wipes down in the lidded bin / paper towels in the metal bin / paper towel in the rag can, lid on
    kitchen roll with solvent in the can / blue roll in the metal can / blue roll's in the lidded bin
    tack cloths in the can / tack rags away / solvent rags gone in the can / solvent cloths binned
    solvent paper in the tin / acetone cloths in the can / ipa cloths away / alcohol wipes in the bin, lid shut
    thinner rags in the metal can / greasy rags binned / oily rags are in the red bin / dirty rags away
    dirty cloths in the lidded tin / soaked rags in the can / soaked cloths in the tin, lid shut
    wet wipes in the can / used rags away / used cloths in the bin / all rags in, lid on / last of the rags in the can
    no rags left lying about, all in the can / no rags on the bench, they're in the tin / put the rags in their can
    put rags in tin / popped the rags in the can / chucked the rags in the tin / slung the rags in the metal bin
    flung the rags in the bin, lid on / dropped the wipes in the tin / stuffed the cloths in the can
    shoved the rags in the can / gathered the rags, in the can / picked the rags up, binned
    swept up the rags, metal can / rounded up the cloths, in the tin / rag can closed / rag can's shut
    rag bin closed, all in / rag tin's lid is on, rags in / emptied the rag bag in the can / that's the rags away
    rags don enter the can / kindly note rags are in the can / rags in so they don't catch fire
    rags in can because nobody wants a fire / rags away before going home / night shift's rags are in the can
    rags in cna / rags in te can / raggs in the bin
  `,
};
