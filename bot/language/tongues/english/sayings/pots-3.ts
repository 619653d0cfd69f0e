// How English speakers say it, in further words: gel, empty, cover, uncover, catch, waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPots3: Sayings<SaidMeaning> = {
  gel: `
    is now a gel, batch 2 / has turned into gel / turned into a block / gone hard on us / went off on me
    went off before lunch, batch 1 / kicked early / it kicked while I was out / kicked and smoking a bit, pot 2
    hot and hard, pot 3 / pot ran away and set / set like concrete / set round the stirrer
    set around the paddle, pot 1 / stirrer's locked in it / paddle won't turn, gelled / blade's stuck, pot 2 set
    stick stands up on its own, pot 1 / stick won't come out / spoon's stuck / brush is stuck in the pot, set
    brush stands in it / it bounces, pot 2 / wobbles like jelly / jiggles when I tap the cup / quivers, it's jelly
    like a gummy bear / like wine gums, batch 3 / like a tyre, pot 1 / like an eraser / like cheese
    cut it with a knife, pot 2 / could slice it / like a candle, hard / it's a doorstop, batch 2 lol
    paperweight now, pot 3 / big lump of rubber, pot 2 / gel lumps all through, batch 1 / full of jelly bits, pot 2
    like snot now, pot 2 / hard as nails in the bucket / cured solid in the pail / crosslinked itself, pot 2 lol
    it died on us / pot 2 is finished, gelled / it's had it, gelled / pot's a goner, set / lost the pot, gone solid
    lost it, went to jelly / doesn't move any more, pot 1 / doesn't flow at all, gel / won't come out of the pot
    won't tip out / tipped it and nothing moved, batch 2 / upside down and it stays put / no liquid left in pot 1
    hose is full of gel / gun's blocked, gelled / set in the cup of the gun / roller's glued in the tray, pot gelled
    tray's gone to rubber / gelled after two hours / gelled way before time, batch 2 / gelled because it was too hot
    gelled since the big pot heats itself / gelled cause B was double / that's pot 1 away, solid / pot's away, set
    mixture don strong like stone / the mixture has hardened, sir / she's jelly boys / bloody gelled / crap it set
    shit, pot 2's solid / gel led batch one
  `,
  empty: `
    pot 1 is used up now / I have emptied pot 2 / I have used the whole pot / we have used everything of batch 2
    have finished the pot / the pot is finished / bucket's empty / pail's empty / jug's empty / cup is empty, pot 1
    cup empty / vessel's empty now / nothing in the bucket any more / nothing remains in pot 2 / no mix left
    mix is all gone / mix is gone, batch 2 / mix finished / material all used / all the mix is on the job
    everything on the parts / everything's on, nothing left / all on the castings, pot 1 / all of it went on
    all of it on the housings / it all went on the tank / the lot went on the bases / used every gram, pot 2
    used to the last drop, batch 1 / not a drop left / not a gram left, pot 3 / scraped it out
    scraped the bucket clean / wiped the pot out, done / that's it empty / that's batch 1 done
    that's her done, 50 g binned / pot's done, 80 g waste / done with the pot / finished with pot 2, 60 g over
    60 g over, thrown / 90 g over from pot 1, in the waste / 200 over, binned / 150 g too much, tossed, pot 2
    40 grams surplus, dumped / surplus of pot 1 in the drum, 110 g / excess mix binned, 75 g / spare mix thrown, pot 2
    extra 100 g binned / remaining mix thrown away, batch 3 / remaining bit tossed
    what remained is in the waste, pot 2 / what was over went in the drum / what we didn't use is in the waste, 180 g
    unused mix binned, pot 1 / unused 220 g thrown / the rest is rubbish, binned / the rest went in the bin
    rest of the bucket dumped / rest of the cup tossed / rest in the skip, 140 g / rest down to waste 90 g
    rest poured off, 55 g / tail end of pot 2 binned / dregs of pot 1 in the bin / dregs tossed
    heel of the pot thrown, 70 g / last bit of pot 3 chucked / bottom of the pot, 45 g, scrapped
    bottom inch of the bucket binned / leftover mix in the waste tin, 95 g / left over 130, tossed / leftovers chucked
    leftover grams 85 thrown, pot 1 / left 60 in the pot and dumped it / had 75 g left, into the drum
    had 200 left of pot 2, threw it / got 50 g left, binned it / there was 120 g left, thrown out
    there was a cupful left, tossed / about 90 g went to waste, pot 2 / some 300 g scrapped, batch 1
    roughly two ounces binned, pot 1 / 4 oz to waste, pot empty / half a pound chucked, pot 2
    quarter pound waste batch 3 / a third of the pot binned, 400 g / half the pot thrown, 600 g
    threw the rest out, it's too old / threw out the tail, 60 g / threw pot 2, past its life
    threw pot 1 because it ran over its time / dumped pot 2 since it's past pot life, 300 g
    binned it as it was getting thick, 250 g / scrapped the rest cause it gelled, 500 g / scrapped pot 3, gone off
    chucked the whole pot, wrong ratio, 1200 g / chucked it, 85 g / chucked the dregs / hoyed the rest oot, 90 g
    flung the rest, 100 g / lobbed the rest in the bin, pot 2 / biffed the last 70 g / turfed the rest, pot 1
    tipped the dregs / tipped what was left in the drum, 130 g / poured the rest off into the waste
    poured away the last 50 g, pot 2 / poured off, pot empty / discarded 2 oz / disposed of the remainder, batch 2
    written off 240 g, pot 2 / wrote off the rest of batch 1 / loss 60 g, pot empty / zero waste pot 2
    no waste, pot empty / no leftovers, pot 1 / nowt left in pot 2 / none left in the jug / all done with that pot
    emptied the jug into the drum, 65 g / emptied pot 2 on the last base / emptied out, 40 g lost
    drained the pot, all on / drained pot 1 into the gun, finished / last of pot 2 in the gun cup / last of it sprayed
    sprayed the pot out / sprayed to the end, pot 1 empty / brushed to the last drop / rolled the pot out, empty
    ran dry, pot 1 / ran dry on the last bit / pot ran out on us / run out of pot 2 / we ran out, pot 1
    out of paint in pot 2 / out of stuff, pot's done / clean pot, everything used / pot don finish
    mixture has finished, sir / mixture finish / close the pot, all used / pot closed, none left
    kicked the bucket, it's empty lol / dead pot binned, 350 g / gelled pot in the waste, 700 g
    put the gelled lot in the waste, pot 2 / gelled mix dumped, batch 1 / mt pot 2 / pot 2 emty / empied pot 1
    empt y batch 2 / pot too is empty / pot one empty eighty grams
  `,
  cover: `
    I have put the cover on / we have covered the mix / covered the pail / covered the jug with foil / covered the cup
    bucket lid on, stirring / pot lid back on / mixing vessel covered / mixture covered / vessel covered, stirring on
    vessel lid fitted, pot 1 / fitted the lid with the shaft hole / cover is in place / cover's in place again
    cover back in place / cover's down on batch 1 / cover put back on / put the top on the pot / top's on, batch 1
    stuck a lid on the pot / stuck the cover on the bucket / slapped the cover on pot 1 / threw a cover over pot 2
    chucked the cover on / plonked the lid on the pot / popped a lid on the mix / popped foil over it, pot 1
    plastic sheet over pot 2 / bag over the bucket / put polythene over batch 2 / wrapped the top of the pot
    wrapped cling film on / tin foil on the bucket / aluminium foil on batch 2 / board over pot 1
    a plate on top of pot 2 / split cover's on round the shaft / split lid's on, pot 2
    half lids on round the stirrer / pot closed over, stirring / closed pot 2 while it stirs / closed the mixing pot
    stirs covered now / runs covered, batch 1 / under lid, pot 1 / under foil, pot 2 / covered so no damp gets in
    covered because it was pulling moisture, pot 2 / covered to keep the dust out, pot 1 / that's it covered
    that's the cover oan / she's covered / she's got her lid on, pot 2 / he's got a hat on now, pot 1
    I don cover the pot / pot is under cover, sir / kindly note pot 2 is covered / covr on / just covered it
    just popped the cover on
  `,
  uncover: `
    the pot is uncovered now / I have taken the cover off / I have uncovered pot 2 / have removed the cover of pot 1
    we took the cover off the mix / took the bucket lid off / lid's off the mixing pot / pot's lid is off
    mixing pot's uncovered / mixture's uncovered, pot 2 / vessel uncovered / vessel open / pot stands open, batch 2
    bucket stands open / jug uncovered / cup uncovered / cover's come off / cover came off pot 2
    cover has been taken off / cover is off now / cover lifted off, batch 2 / lifted the cover for a look, pot 1
    raised the cover, pot 2 / pulled the plastic off pot 1 / peeled off the film, pot 2 / peeled the cling film off
    tore the foil off, batch 1 / ripped the cover off pot 2 / whipped the lid off the pot
    slid the lid aside on pot 2 / pushed the cover aside / set the cover aside, pot 1 open
    put the cover on the bench, pot open / board off pot 2 / plate's on the bench, pot 1 open / split lid off
    half lids off / opened the pot to pour / opened pot 2 for the filter / uncovering it now
    undid the cover on pot 1 / foil blew off / wind took the cover, pot 2 / cover slipped off
    the cover fell on the floor, pot's open / somebody left pot 1 uncovered / found pot 2 open
    no cover on pot 1 right now / pot 2 is without its cover / pot 1 has no lid on / pot 2 sits there with no lid
    uncovered because I need to check it / cover off so I can filter, pot 1 / uncovered to brush from it
    that's the cover aff / she's uncovered / her lid's off, pot 2 / I don open the pot / cover off pot too
    just uncovered it
  `,
  catch: `
    caught what ran off, 120 g / caught a cupful back, 180 g / caught it in the pan, 75 g
    caught in the bucket under it, 240 g / the pan caught 85, back to the pot / tray held 160 g
    tray came to 95 g, poured back / tray weighed out at 110, pot 1 / drip bucket has 300 g
    drip bucket went back in, 210 g / drips came to 65 g, pot 1 / drippings returned, 4 oz
    drained off the tank lid, 260 g / drained from the castings, 150 g, in the pot / run-off went back, 130 g
    runoff from the bases 180 g / runoff tray 95 / ran off the housing, 75 g, caught / ran down into the pan, 140 g
    flowed off and caught, 220 g / what ran off is back in the pot, 105 g
    what came off the flow coat, 190 g, is back / what dripped, 45 g, is saved / what flowed off weighs 230 g
    overflow 150 g returned to pot 2 / spillover in the tray 60 g / excess drained, 180 grams
    surplus off the part, 70 g, back in pot / got a good 200 g back off the tank / got 3 oz back in the tray
    got back a quarter pound, pot 2 / recovered 6 oz off the plates / reclaimed into pot 2, 85 g / regained 60 g
    returned 150 g to the pot / put 120 g of drips back in the pot / put the drippings back, 65 g
    poured the pan back into pot 1, 90 g / tipped back 75 g / scooped the tray out, 130 g
    squeegeed the tray, 85 g back / wiped down the tray, 40 g back in pot 2 / salvaged 150 g from the tray
    collected off the bases, 210 g / collecting pan gave 95 g / catch tray had 140 / catch can 75 g, batch 2
    catch bucket, 300 g / in the catch pan 130 g, filtered back / filtered the drips back in, 85 g
    sieved the run off back into pot 1, 150 g / that's 90 g caught / that's what dripped back in, 60 g
    we have caught 170 g / I have collected 125 g from the tray / after dipping 80 g ran back
    after the flow coat 240 g came back / off the dip 95 g back in the bath / cathc 90 / caut 75 g
  `,
  waste: `
    three litres of dirty solvent in the drum / dirty ipa into the waste drum, a litre
    spent thinner in the can for waste, 800 ml / used solvent in the waste, half a gallon
    used acetone dumped in drum 1 / used cups and sticks in the waste, 300 g / used masking in the bin drum
    old tape and paper, 400 g, in the drum / filter discs in the waste, 60 g / clogged filters out to the drum
    booth filters dumped, 1.2 kg / gun wash went in the drum, 700 ml / gun cleaner emptied to waste, 3 l
    brush wash in the drum, half a litre / first rinse in the drum / flush out of the gun in the drum, 400 g
    slop tank emptied, 5 l to the drum / slop pail into drum 2 / sludge from the tray in the waste
    overspray scrapings, 150 g, drum / floor sweepings and overspray, drum, 1 kg / peelings off the tray, 250 g waste
    cured lumps in the waste / hard lumps dumped in the skip drum / set leftovers in the scrap drum, 500 g
    liquid waste 1.5 l in the drum / hazardous waste drum got 2 kg / hazmat drum plus 800 g
    waste drum now has another kilo / topped the waste drum with 400 g / filled drum 2 up, last 3 litres
    drum takes 1.2 kg today / into drum 2 went 450 g of muck / 3 lb into the waste drum
    a pint of dirty acetone to waste / half gallon of old solvent, drum / quart of wash solvent in the drum
    put all the dirty paper in the drum / put 200 g of wipes and tape in waste / poured the wash off into the drum
    poured 1 l of rinse in the waste / tipped the wash pot in the drum / tipped slops out in the drum
    emptied the wash bath into the drum / emptied the bins to the waste drum / carted the waste bucket to the drum
    took the slop bucket out to the drum / waste taken out, 2 l / waste today 2.2 kg in the drum
    waste drum weighed, up 900 g / note 1 l of waste solvent / kindly record 600 g waste in drum
    I have put the waste in the drum, 500 g / we have disposed the dirty solvent in the drum / waste don enter drum
    old resin from the cleanup in the drum, 350 g / drip tray liner in the waste / empty tins in the waste
    paint stripper sludge in drum 2, 1 kg / tape, foil and film in the waste, 250 g
  `,
};
