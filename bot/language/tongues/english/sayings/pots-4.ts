// How English speakers say it, in further words: catch, waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPots4: Sayings<SaidMeaning> = {
  catch: `
    caught what ran off, 120 g / caught the run off, 90 g, back in pot 1 / caught 2 oz off the plates
    caught a cupful back, 180 g / caught it in the pan, 75 g / caught in the bucket under it, 240 g
    the tray caught 130 g / the pan caught 85, back to the pot / tray held 160 g / tray came to 95 g, poured back
    tray weighed out at 110, pot 1 / drip tray 70 g / drip tray: 145 g returned / drip pan 90 g pot 2
    drip bucket has 300 g / drip bucket went back in, 210 g / drips 55 g / drips came to 65 g, pot 1
    drips collected, 80 g / drippings 120 g back into pot 2 / drippings returned, 4 oz
    dripped off into the tray, 100 g / drained off the tank lid, 260 g / drained from the castings, 150 g, in the pot
    drained into the tray 88 g / drain 95 g pot 1 / drainings 140 g / drainings back in the pot, 75
    drain-off 115 g back to batch 2 / draining caught, 170 g / run off 200 g / run-off went back, 130 g
    runoff from the bases 180 g / runoff tray 95 / ran back into the pot, 110 g / ran off the housing, 75 g, caught
    ran down into the pan, 140 g / flowed off and caught, 220 g / flowed back 160 g, pot 1
    what ran off is back in the pot, 105 g / what came off the flow coat, 190 g, is back
    what dripped, 45 g, is saved / what flowed off weighs 230 g / overspill caught, 85 g
    overflow 150 g returned to pot 2 / spillover in the tray 60 g / excess caught 125 g / excess back in pot 1, 95 g
    excess drained, 180 grams / surplus off the part, 70 g, back in pot / got 90 g back
    got a good 200 g back off the tank / got 3 oz back in the tray / got back a quarter pound, pot 2 / recovered 140 g
    recovered from the tray: 95 g / recovered 6 oz off the plates / recovery 130 g, pot 1 / recovering 75 g to pot 2
    reclaimed 110 g / reclaimed into pot 2, 85 g / regained 60 g / returned 150 g to the pot
    returned the drips, 70 g / return 95 g from the catch pan / returned to pot 1: 180 grams
    put 120 g of drips back in the pot / put the drippings back, 65 g / poured the drips back in, 140 g
    poured the pan back into pot 1, 90 g / tipped the tray back in, 115 g / tipped back 75 g
    scooped 50 g back in the pot / scooped the tray out, 130 g / squeegeed the tray, 85 g back
    wiped down the tray, 40 g back in pot 2 / saved 95 g in the pan / saved 110 off the flow
    salvaged 150 g from the tray / collected 80 g / collected off the bases, 210 g / collecting pan gave 95 g
    catch 120 / catch tray had 140 / catch pot 90 g / catch can 75 g, batch 2 / catch bucket, 300 g
    in the catch pan 130 g, filtered back / filtered the drips back in, 85 g
    sieved the run off back into pot 1, 150 g / that's 90 g caught / that's what dripped back in, 60 g
    we have caught 170 g / I have collected 125 g from the tray / after dipping 80 g ran back
    after the flow coat 240 g came back / off the dip 95 g back in the bath / cathc 90 / caut 75 g
  `,
  waste: `
    three litres of dirty solvent in the drum / dirty thinner to the drum, 1.5 l
    dirty ipa into the waste drum, a litre / spent acetone to the drum / spent acetone 2 l
    spent thinner in the can for waste, 800 ml / used solvent in the waste, half a gallon
    used acetone dumped in drum 1 / used cups and sticks in the waste, 300 g / used masking in the bin drum
    used gloves in the waste drum / old rollers in the drum / old brushes in the waste drum, 200 g
    old cups in the waste / old tape and paper, 400 g, in the drum / dirty filters in the drum
    filter discs in the waste, 60 g / clogged filters out to the drum / booth filters dumped, 1.2 kg
    gun wash went in the drum, 700 ml / gun cleaner emptied to waste, 3 l / brush wash in the drum, half a litre
    rinse solvent into the waste, 1 l / first rinse in the drum / rinsings to the drum, 900 g
    washings poured in waste drum / flush out of the gun in the drum, 400 g / flushings in the drum
    flush waste 600 ml / slop tank emptied, 5 l to the drum / slops 2 kg / slop pail into drum 2
    sludge in the drum, half a kilo / sludge from the tray in the waste / overspray scrapings, 150 g, drum
    booth scrapings in the waste drum / floor sweepings and overspray, drum, 1 kg / peelings off the tray, 250 g waste
    cured lumps in the waste / hard lumps dumped in the skip drum / set leftovers in the scrap drum, 500 g
    hardened cups in the waste / solid waste 700 g / liquid waste 1.5 l in the drum / solvent waste two litres
    mixed waste in drum 3, 900 g / haz waste, 1.1 kg / hazardous waste drum got 2 kg / hazmat drum plus 800 g
    waste drum now has another kilo / another 600 g in the waste drum / another litre to the drum
    topped the waste drum with 400 g / filled drum 2 up, last 3 litres / drum 1 took 750 g / drum takes 1.2 kg today
    into drum 2 went 450 g of muck / to drum: 350 g / to the waste drum 2 lb / 3 lb into the waste drum
    a pint of dirty acetone to waste / half gallon of old solvent, drum / quart of wash solvent in the drum
    gallon of slops in the drum / put the wash solvent in the drum / put all the dirty paper in the drum
    put 200 g of wipes and tape in waste / poured the wash off into the drum / poured 1 l of rinse in the waste
    tipped the wash pot in the drum / tipped slops out in the drum / emptied the wash bath into the drum
    emptied the waste bucket into the drum, 2 kilos / emptied the bins to the waste drum
    carted the waste bucket to the drum / took the waste out, 1.8 kg / took the slop bucket out to the drum
    waste taken out, 2 l / waste logged 500 g / waste 1.5 kg / waste: 700 ml solvent / waste today 2.2 kg in the drum
    waste drum weighed, up 900 g / record waste 400 g / note 1 l of waste solvent / kindly record 600 g waste in drum
    that's the waste in the drum, 800 g / I have put the waste in the drum, 500 g
    we have disposed the dirty solvent in the drum / waste don enter drum
    old resin from the cleanup in the drum, 350 g / drip tray liner in the waste / tray liners, 150 g, drum
    empty tins in the waste / paint stripper sludge in drum 2, 1 kg / tape, foil and film in the waste, 250 g
    wast 300g drum / waste drumm 500
  `,
};
