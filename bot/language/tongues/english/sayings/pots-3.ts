// How English speakers say it, in further words: filter, thick, gel, empty, cover, uncover. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPots3: Sayings<SaidMeaning> = {
  filter: `
    pot 1 has gone through the filter / I have filtered batch 2 / I have run it through the filter
    we have filtered pot 3, all clean / has been filtered, pot 2 / been filtered, pot 1 / is filtered now
    all filtered / all filtered, pot 2 / whole pot filtered / whole lot's through the filter / the lot's through
    every drop through the filter, batch 1 / last of it's through, pot 2 / that's the filterin done
    that's pot 2 filtered / that's it through the filter / that's her through, nice and clean / she's filtered
    she's through the one micron / it ran through, pot 1 / it's run through the filter paper
    went through slow but it's filtered / slow going but through, pot 2 / dripped through, took 20 minutes, batch 1
    trickled through the filter / crept through, filtered, pot 3 / flew through the filter / went through a treat
    went through like water, batch 2 / no trouble at the filter, pot 1 done / filter went smooth
    filtering went well, pot 2 / filtering complete / filtering completed, 11:15 / filtering finished batch 1
    filtering over / filter run finished, pot 3 / filter run done / filter step done / finished with the filter, pot 2
    finished filtering / done filtering / done at the filter / filtration complete / filtration over, pot 1
    filtration of batch 2 done / straining finished / straining done pot 1 / strained it / strained the mix
    strained it twice, pot 2 / strained through the cone / strained through a paint strainer
    paint strainer, pot 1, done / strained through nylon, batch 2 / strained through the fine bag
    bag filtered, pot 3 / bag filter used, batch 1 clean / sock filter, pot 2 done / poured through the sock
    poured through the cone, batch 1 / poured through the mesh into the clean can / poured through glass fibre
    poured via the filter into pot B / tipped it through the filter, pot 1 / tipped through a sieve
    sieved and clean, batch 2 / sieved into the new bucket / sifted pot 1 / screened it into a clean pail
    meshed pot 2, 190 micron then 1 / through the 1 um, batch 2 / through a one micrometre disc, pot 1
    through 1µ glass / 1µm done, pot 3 / one micron filter passed / one micron done / glass fibre filter done
    glass fiber, clean vessel, pot 2 / fibre filter, pot 1, no bits / cartridge filter used, batch 2
    in line filter, pot 1 pumped through / capsule filter, batch 3 / syringe filtered the cup / buchner'd pot 2
    suction filtered, batch 1 / vacuum pulled it through / on the vacuum, all through, pot 2
    pressure pot pushed it through the filter / nitrogen pushed pot 1 through the filter / pushed through at 1 bar
    forced it through, pot 2 / squeezed it through the filter / pumped through and clean, batch 1
    peristaltic through the filter, pot 3 / drained through the filter into vessel 2 / ran through into a clean jug
    ran through the disc, pot 2 / ran it all through / ran it through the fine stuff / ran her through the filter
    run through filter, batch 1 / runs through the filter now / running through the filter, pot 2
    running it through now / it's going through the filter / filtering it / filtering now, batch 1
    we're filtering, pot 3 / on the filter now, pot 2 / at the filter with batch 1 / pot 2's on the filter
    getting filtered, pot 3 / into the second vessel through the filter / second pail now, filtered
    clean bucket, filtered, pot 1 / clean jug holds pot 2, filtered / over into the clean vessel, filtered, batch 3
    changed vessel through the filter, pot 1 / swapped vessels via the filter / moved to vessel 2 by way of the filter
    decanted, filtered / transferred and filtered, batch 2 / filtered over, pot 1 / no specks after the filter, pot 2
    not a speck left, filtered / specks are out, filtered / lumps filtered out / lumps stayed behind in the filter
    skin caught in the filter, rest is clean / bits caught, pot 1's clean / gel bits strained out
    crud's in the filter, pot 2 clean / muck caught by the mesh, batch 1 / cleaned through the filter
    clarified pot 1 / clear now, filtered / clear as glass, filtered pot 2 / clean as a whistle after the filter
    looks like gin, filtered / new disc and filtered, pot 2 / fresh filter paper, batch 1 filtered
    changed discs twice, pot 3 is filtered / two discs later it's through / three filters, but done, pot 1
    filter blocked, new one, then through / used four cones, batch 2 filtered
    filter weighed and pot filtered, 1150 g / filtered, 1180 came out / filtered 40 g lost, pot 2
    after the filter 1120 g left / filtered straight after the stir, pot 1 / filtered at 11:20
    filtered ten minutes ago, batch 2 / just filtered it / just put it through / just been through the filter
    just finished filtering batch 3 / already filtered, pot 1 / filtered as you asked
    filtered so it's ready for the gun / filtered, off to the booth / filtered because there were specks, pot 2
    filter ✓ / filter ok pot 1 / filt pot 2 / fltr done 3 / filterd batch one / filter pot too / filtered patch two
    filtred / please note pot 2 is filtered / kindly note filtering done / boss filter is done
    oga I don filter pot 2 / filtering don finish
  `,
  thick: `
    the mix is getting thicker / it gets thick / it is becoming thick, batch 2 / has become thick
    became thick at 11:30 / has gone thick on us / gone a bit thick / gone claggy / it's claggy, pot 1
    gone gloopy on us / glue-like, batch 2 / like wallpaper paste, pot 1 / like glue now / like PVA, batch 2
    like cream now / like double cream, pot 2 / like porridge / porridge in pot 1 / thick as porridge, batch 3
    thick as mud / thick as treacle / thick as soup, pot 2 / soupy, batch 1 / like batter / pancake batter in pot 2
    like peanut butter / like ketchup, pot 3 / like toothpaste nearly / like warm tar / like motor oil in winter
    like cold honey, pot 2 / honey now, batch 1 / syrup now / it's syrup, pot 2 / treacly, pot 1 / gravy
    like gravy in pot 2 / custardy / like custard, batch 1 / gluey, pot 3 / gluggy, pot 2 / gummy, batch 1
    sticky and thick, pot 2 / stodgy, batch 3 / sludgy, pot 1 / sluggish mix / the mix is sluggish, pot 2
    pours sluggishly / pours slow / pours slowly now, batch 2 / pours thick / pours like syrup / barely pours, pot 1
    hardly pours, batch 3 / doesn't pour well any more / doesn't run off the brush any more / won't run off the stick
    won't level out now, pot 2 / not levelling any more, too heavy / no flow left in it, pot 1
    lost its flow, batch 2 / flow's gone / flow is going / it hangs on the stick, pot 1
    hangs off the paddle in ropes / ropes off the stick / long strings, batch 2 / threads off the brush
    pulling threads / pulling strings now, pot 2 / stringing, pot 1 / strings like cheese 🧀 / dragging
    drags on the brush / brush drags, pot 2 / brush pulls / roller pulls heavy / roller's dragging, batch 1
    roller is sticking in it, mix got heavy / brush marks stay, mix is thick / the brush leaves ridges, it's thickened
    hard to brush now, pot 1 / hard to stir, batch 2 / heavy to stir / stirrer's straining, pot 3
    stirrer's slowing down by itself, thick / mixer groaning / mixer's bogging down / paddle's fighting it, pot 1
    motor's getting hot, mix is thick, batch 2 / vortex has gone, mix too thick / no vortex any more, it's stiff
    gun won't atomise it, too thick / gun sputters, thick mix / spits out of the gun, thick / comes out in blobs
    coming out in strings from the gun, pot 2 / cup won't drain, thick / viscosity up / viscosity is rising, batch 2
    viscosity rising fast / viscosity doubled, pot 1 / viscosity way up / cup time 40 seconds now, was 20
    flow cup 55 s, up from 25, pot 2 / din cup went to 38 s / zahn cup up to 45, batch 1 / drip test slow, pot 2
    runs slow off the spatula / slow drip now / drips hang, batch 3 / drops don't fall, they stretch
    heavier than it was / heavier now, pot 1 / heavier by the minute / stiffer now, batch 2 / stiffer than before
    stiffening / stiffens / starting to stiffen, pot 3 / beginning to thicken / begins to thicken, batch 1
    starts thickening / starting to go / starting to turn, pot 2 / on the turn, batch 1 / on its way out, pot 2, thick
    it's on the move, thickening / turning on us, pot 1 / turning gloopy / turning to goo / goo, pot 2 / gooey now
    goopy as hell, batch 1 / gunky, pot 3 / thick enough to stand a spoon nearly
    thick at the bottom, thinner on top, pot 2 / thick round the edges, batch 1 / skin and thick, pot 3
    thickened a lot in ten minutes / thickened overnight, well over lunch / thickened since break, pot 2
    thickened while I was on the phone / thickening quick, it's warm / thickening fast because of the heat, batch 2
    thick cause it's hot in here / pot's warm and thick / warm to the hand and thickening, pot 1
    getting warm and thick / body's coming up / body's up / full of body now, pot 2 / gained body, batch 1 / bodied
    it has body now, bit heavy / set's starting, thick / she's thickening / she's gettin thick / she's gone gloopy
    she's heavy now / it's awfy thick / mixture don thick / the mixture is thickening, sir / mixture is too thick o
    she's like bloody syrup / damn thick now, pot 2 / crap, pot 1's thick / bugger, it's thickening / thick!!
    thick 2 / thick pot 1 / thck / tick, batch two / thinking up, pot two / sick and heavy, pot one... thick I mean
    pot 2 thick already after an hour / thick at 60 min
  `,
  gel: `
    pot 1 has gelled, unfortunately / it has gelled / it gelled / it's gel now / it's jelly now
    is now a gel, batch 2 / has turned into gel / turned to gel, pot 1 / turned into rubber / turned solid
    turned into a block / turned to stone / gone to gel / gone to jelly / gone rubbery / gone rubber, batch 3
    gone hard in the bucket / gone hard on us / went hard / went solid, pot 2 / went rubbery / went off in the pail
    went off on me / went off before lunch, batch 1 / went off early / gone off early / kicked / kicked early
    kicked in the cup / kicked off in the bucket / it kicked while I was out / kicked and smoking a bit, pot 2
    kicked and hot, batch 1 / hot and hard, pot 3 / exothermed, pot 1, solid / pot ran away and set / set / set off
    set up / set up solid / set in the pail / set like concrete / set like stone / set rock solid, batch 2
    set round the stirrer / set around the paddle, pot 1 / stirrer's locked in it / stirrer's stuck solid
    paddle's set in / paddle won't turn, gelled / blade's stuck, pot 2 set / stick stands up on its own, pot 1
    stick won't come out / spoon's stuck / brush is stuck in the pot, set / brush stands in it / bounces
    it bounces, pot 2 / wobbles like jelly / wobbly, pot 1 / jiggles / jiggles when I tap the cup
    quivers, it's jelly / like a gummy bear / like wine gums, batch 3 / like a tyre, pot 1 / like an eraser
    like cheese / cut it with a knife, pot 2 / could slice it / like a candle, hard / like a hockey puck / puck, pot 2
    brick / a brick now, pot 1 / bricked / pot's bricked / it's a doorstop, batch 2 lol / paperweight now, pot 3
    concrete, batch 1 / one solid lump / solid lump in the bucket / a lump / one lump now / big lump of rubber, pot 2
    lump in the cup / lumps of gel throughout / gel lumps all through, batch 1 / full of gel
    full of jelly bits, pot 2 / curdled, batch 1 / snotty / like snot now, pot 2 / gelatine / gelatin, batch 3
    gelatinous / jellied / jellified, pot 1 / congealed / congealed in the pot, batch 2 / coagulated / solidified
    solidified in the jug / hardened / hardened in the pot / hardened up, batch 1 / hard now, pot 2
    hard as nails in the bucket / hard as rock / rock / rock hard now, pot 3 / stone hard, batch 1 / cured in the pot
    cured solid in the pail / crosslinked itself, pot 2 lol / polymerised in the pot, batch 1 / dead / pot's dead
    it died on us / pot died / pot 2 is finished, gelled / it's had it, gelled / toast, pot 1 gelled / RIP pot 2
    🪦 pot 1 / ☠️ batch 3 / pot's a goner, set / lost pot 2, gelled / lost the pot, gone solid
    lost it, went to jelly / doesn't move any more, pot 1 / doesn't flow at all, gel / won't come out of the pot
    won't tip out / tipped it and nothing moved, batch 2 / upside down and it stays put / no liquid left in pot 1
    gelled in the gun, pot 2 / gelled in the hose / hose is full of gel / gun's blocked, gelled
    set in the cup of the gun / roller's glued in the tray, pot gelled / tray's gone to rubber / gelled in the tray
    gelled on the stick / gelled after two hours / gelled at 90 minutes / gelled way before time, batch 2
    gelled because it was too hot / gelled since the big pot heats itself / gelled cause B was double
    that's it gelled / that's pot 1 away, solid / pot's away, set / it don set / mixture don strong like stone
    the mixture has hardened, sir / she's gelled / she's gone off / she's hard / she's rubber / she's jelly boys
    bloody gelled / crap it set / shit, pot 2's solid / gelled 2 / gel pot 1 / jelled / jelly pot two
    gel led batch one / pot 1 gel'd / jel in pot 3 / geled / gelled up
  `,
  empty: `
    pot 1 is used up now / I have emptied pot 2 / I have used the whole pot / we have used everything of batch 2
    have finished the pot / the pot is finished / pot finished / bucket's empty / bucket empty, pot 2 / pail's empty
    jug's empty / cup is empty, pot 1 / cup empty / vessel empty / vessel's empty now / nothing in the bucket any more
    nothing remains in pot 2 / no mix left / no mix left in pot 1 / mix is all gone / mix is gone, batch 2
    mix finished / mix is used / material all used / all the mix is on the job / everything on the parts
    everything's on, nothing left / all on the castings, pot 1 / all of it went on / all of it on the housings
    it all went on the tank / the lot went on the bases / used the lot / used every drop / used every gram, pot 2
    used to the last drop, batch 1 / not a drop left / not a gram left, pot 3 / scraped it out / scraped the pot
    scraped the bucket clean / scraped out pot 1, 30 g in the bin / wiped the pot out, done / that's pot 2 finished
    that's the pot empty / that's it empty / that's batch 1 done / that's her done, 50 g binned / pot's done
    pot's done, 80 g waste / done with the pot / done with pot 3, rest in the drum / finished with pot 2, 60 g over
    60 g over, thrown / 90 g over from pot 1, in the waste / 200 over, binned / 150 g too much, tossed, pot 2
    40 grams surplus, dumped / surplus of pot 1 in the drum, 110 g / excess mix binned, 75 g / spare mix thrown, pot 2
    extra 100 g binned / remaining 65 g to waste / remaining mix thrown away, batch 3 / remaining bit tossed
    what remained is in the waste, pot 2 / what was over went in the drum / what we didn't use is in the waste, 180 g
    unused mix binned, pot 1 / unused 220 g thrown / the rest is rubbish, binned / the rest went in the bin
    rest's binned / rest of the bucket dumped / rest of the cup tossed / rest in the skip, 140 g
    rest down to waste 90 g / rest poured off, 55 g / tail end of pot 2 binned / dregs of pot 1 in the bin
    dregs tossed / dregs 20 g, pot 2 / heel of the pot thrown, 70 g / last bit of pot 3 chucked
    bottom of the pot, 45 g, scrapped / bottom inch of the bucket binned / leftover binned
    leftover mix in the waste tin, 95 g / left over 130, tossed / leftovers chucked / leftover grams 85 thrown, pot 1
    left 60 in the pot and dumped it / had 75 g left, into the drum / had 200 left of pot 2, threw it
    got 50 g left, binned it / there was 120 g left, thrown out / there was a cupful left, tossed
    about 90 g went to waste, pot 2 / some 300 g scrapped, batch 1 / roughly two ounces binned, pot 1
    4 oz to waste, pot empty / half a pound chucked, pot 2 / quarter pound waste batch 3
    a third of the pot binned, 400 g / half the pot thrown, 600 g / threw the pot out
    threw the rest out, it's too old / threw out the tail, 60 g / threw pot 2, past its life
    threw pot 1 because it ran over its time / dumped pot 2 since it's past pot life, 300 g
    binned it as it was getting thick, 250 g / scrapped the rest cause it gelled, 500 g / scrapped pot 3, gone off
    chucked the whole pot, wrong ratio, 1200 g / chucked it, 85 g / chucked the dregs / hoyed the rest oot, 90 g
    flung the rest, 100 g / lobbed the rest in the bin, pot 2 / biffed the last 70 g / turfed the rest, pot 1
    tipped the dregs / tipped what was left in the drum, 130 g / poured the rest off into the waste
    poured away the last 50 g, pot 2 / poured out pot 1, 160 g / poured off, pot empty
    discarded rest of batch 1, 75 g / discarded 2 oz / disposed of the remainder, batch 2
    disposed of 110 grams, pot 1 / written off 240 g, pot 2 / wrote off the rest of batch 1 / loss 60 g, pot empty
    wastage 45 grams, pot closed / waste from pot 2: 85 g, pot empty / waste 90, pot 1 finished / pot 2 waste 70 g
    pot 1 rest 55 / pot 3 left over 0 / 0 left / zero waste pot 2 / no waste, pot empty / no leftovers, pot 1
    nowt left in pot 2 / nothin left / none left, batch 1 / none left in the jug / all out, pot 1 empty / all gone
    all gone, pot 2 / all used / all used, batch 3 / all done with that pot / emptied / emptied it
    emptied the bucket / emptied the jug into the drum, 65 g / emptied pot 2 on the last base / emptied out, 40 g lost
    drained the pot, all on / drained pot 1 into the gun, finished / last of pot 2 in the gun cup / last of it sprayed
    sprayed the pot out / sprayed to the end, pot 1 empty / brushed to the last drop / rolled the pot out, empty
    ran dry, pot 1 / ran dry on the last bit / pot ran out / pot ran out on us / run out of pot 2 / we ran out, pot 1
    out of mix / out of paint in pot 2 / out of stuff, pot's done / clean out of batch 1 / clean pot, everything used
    pot don finish / mixture has finished, sir / mixture finish / close the pot, all used / close pot 2, 80 g binned
    pot closed, none left / closing out pot 1, 95 g scrap / end of pot 2 / end of the bucket
    kicked the bucket, it's empty lol / dead pot binned, 350 g / gelled pot in the waste, 700 g
    put the gelled lot in the waste, pot 2 / gelled mix dumped, batch 1 / empty 2 / empty pot 1 50 g / mt pot 2
    pot 2 emty / empied pot 1 / empt y batch 2 / pot too is empty / pot one empty eighty grams
  `,
  cover: `
    the pot is covered now / I have covered pot 1 / I have put the cover on / have put the lid on the pot
    we have covered the mix / covered the bucket / covered the pail / covered the jug with foil / covered the cup
    covered it over, pot 2 / covered over / bucket's covered / bucket lid on, stirring / lid on the bucket, batch 2
    lid on the mixing pot / pot lid on / pot lid's on / pot lid back on / put the pot lid on, 9:50
    mixing pot covered / mixing vessel covered / mix is covered / mixture covered / vessel covered, stirring on
    vessel lid on / vessel lid fitted, pot 1 / fitted the cover on pot 2 / fitted the lid with the shaft hole
    cover fitted / cover is in place / cover in place, pot 1 / cover's in place again / cover back in place
    cover's over it / cover over pot 2 / cover down / cover's down on batch 1 / cover put back on
    cover back over the mix / cover on again / put the top on the pot / top on pot 2 / top's on, batch 1
    stuck a lid on the pot / stuck the cover on the bucket / slapped the cover on pot 1 / threw a cover over pot 2
    chucked the cover on / plonked the lid on the pot / popped a lid on the mix / popped foil over it, pot 1
    plastic over the pot / plastic sheet over pot 2 / bag over the bucket / poly over pot 1
    put polythene over batch 2 / wrapped the top of the pot / wrapped cling film on / tin foil on the bucket
    foil lid on pot 1 / foil's on / foil over it / aluminium foil on batch 2 / board over pot 1
    a plate on top of pot 2 / plate's on the pot / steel lid on pot 1 / split cover's on round the shaft
    split lid's on, pot 2 / half lids on round the stirrer / closed the pot / pot closed over, stirring
    closed pot 2 while it stirs / closed the mixing pot / stirring under cover, pot 1
    stirring with the lid on, pot 2 / stirs covered now / runs covered, batch 1 / under lid, pot 1 / under cover
    under foil, pot 2 / covered so no damp gets in / covered because it was pulling moisture, pot 2
    covered to keep the dust out, pot 1 / that's it covered / that's the cover oan / that's pot 1 covered
    she's covered / she's got her lid on, pot 2 / he's got a hat on now, pot 1 / I don cover the pot
    pot is under cover, sir / kindly note pot 2 is covered / cover 1 / cover on / cover on 2 / covr on / covrd pot 2
    cover's on pot to / just covered it / just put the cover on pot 1 / just popped the cover on
  `,
  uncover: `
    the pot is uncovered now / I have taken the cover off / I have uncovered pot 2 / have removed the cover of pot 1
    we took the cover off the mix / took the foil off / took the foil off pot 2 / took the plate off pot 1
    took the plastic off batch 2 / took the bucket lid off / bucket lid off, pot 1 / lid off the bucket
    lid's off the mixing pot / pot lid off / pot lid's off / pot's lid is off / lid off the mix / mixing pot is open
    mixing pot's uncovered / mix uncovered / mixture's uncovered, pot 2 / vessel uncovered / vessel open
    vessel lid off, batch 1 / vessel's open, pot 2 / pot's open / pot open / pot 1 stands open
    pot stands open, batch 2 / standing open, the pot / bucket stands open / bucket's open, pot 1 / jug uncovered
    cup uncovered / cover off / cover off, 10:05 / cover's come off / cover came off pot 2 / cover has been taken off
    cover is off now / cover removed / cover removed pot 1 / cover lifted / cover lifted off, batch 2
    lifted the lid off the pot / lifted the foil / lifted the cover for a look, pot 1 / raised the cover, pot 2
    pulled the foil off the bucket / pulled the plastic off pot 1 / peeled off the film, pot 2
    peeled the cling film off / tore the foil off, batch 1 / ripped the cover off pot 2 / whipped the cover off
    whipped the lid off the pot / slid the cover off, pot 1 / slid the lid aside on pot 2 / pushed the cover aside
    set the cover aside, pot 1 open / put the cover on the bench, pot open / board off pot 2 / plate off the pot
    plate's on the bench, pot 1 open / split lid off / split cover's off, batch 2 / half lids off
    opened the pot to pour / opened pot 2 for the filter / opened the mixing pot / opened the mix / opening pot 1
    opening the pot now / pot opened / pot 2 opened up / opened the bucket, pot 1 / uncovering it now
    uncovering batch 2 / undid the cover on pot 1 / foil blew off / wind took the cover, pot 2 / cover slipped off
    cover fell off pot 1 / the cover fell on the floor, pot's open / somebody left pot 1 uncovered / found pot 2 open
    no cover on pot 1 right now / pot 2 is without its cover / pot 1 has no lid on / pot 2 sits there with no lid
    uncovered because I need to check it / cover off so I can filter, pot 1 / uncovered to brush from it
    that's the cover aff / that's pot 1 open / that's the lid off the pot / she's uncovered / her lid's off, pot 2
    I don open the pot / uncover 2 / uncover pot 1 / cover of pot 2 / uncovrd / uncoverd batch 1 / cover off pot too
    just uncovered it / just took the lid off the pot / just pulled the cover off pot 1
  `,
};
