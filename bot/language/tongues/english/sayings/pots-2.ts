// How English speakers say it, in further words: mix, weigh, stir, stop, filter, thick. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPots2: Sayings<SaidMeaning> = {
  mix: `
    could I have 800 g made up, please / please be so kind and prepare 1.5 kg for me
    I would like to mix 2200 grams, thank you / I have begun a new batch of 1400 grams
    have just begun a new pot, 900 g / we have started another batch, 2 kg in all
    a new bucket please, one and a half kilos / fresh bucket, 1200 / fresh jug for the flanges, 600 g
    new pail of mix, 5 kg / new cup, 250 g, brush jobs / another cup of the stuff, 300 / another jug, 750, same ratio
    another bucketful, four kilos / wee pot, 400 g / wee batch the day, 350 grams / gonnae knock us up a kilo big man
    that's me startin a kilo pot / yall cook us two and a half pounds / mix us a five pound pot
    let's get us a gallon mixed / brew us a quart and a half / oga we need 2 kilos of mixture
    kindly prepare 1.8 kg mixture for the night crew / prepare mixture of 1500 grams / chuck together a kilo for arvo
    whack together 900 g for the pump bits / smash out a two kilo pot for us / throw me a 700 gram pot together mate
    slap together half a kilo / cobble together 400 for the last bracket / mix time, 1.6 kilos
    mixing time lads, nine hundred / pot time, 2 kg / showtime, 1100 g / next pot 1300 / next batch: 2 kilos
    next one 850 g / second mix of the day, 1700 / third pot today, 950 grams / last pot of the shift, 600
    last batch before we knock off, 1 kg / first batch of the night shift, 2400 g
    first thing this morning, 1.2 kg pot / night shift starting with 1.5 kilos / opening batch, 1800 grams
    double batch, 4.8 kg / half batch, 600 g / quarter batch 300 / full size batch, 3 kg / usual size, 1200
    the usual, 1.5 kg / usual lot please, 2 kilos / same amount as this morning, 1400 g / repeat batch, 1600
    repeat that pot, 1.2 kg / replacement pot, 900, the other one gelled / replacing the dead pot with 1100 g
    cause the last one kicked we need 800 more made / because we are short, make another 500 g
    since there are three more casings, mix 1900 / as the tank takes more than we thought, 700 g extra mix
    for the tank we need 3.2 kg mixed / for 12 bases I make 1500 g / for both castings one kilo mix
    for the housings 2 kg of mix please / for the bits on the rack, 650 grams of mixed
    for touch in only, 150 g mixed / 1500 g of mixed paint please / 900 grams of finished mix wanted
    want 2 kilos of mixed coating ready / material for eight valves, 1.3 kg, start it
    stuff for the rollers, 2.2 kilos, mixing / mix for dipping: 5 kilos / mix for rolling, 1750 g
    mixing for the brush, 400 g / batch for the dip bath, 6 kg / brew for the gun, 1200 g / gun batch 900 g
    roller batch, 2 kilos / hand batch, 300 g / spray pot 1500 / dip pot 4 kilos / I start batch now, 1250 grams
    I am starting with one kilo / starting off with 800 g / beginning with a pot of 2 kg
    have begun mixing, 1600 total / mixing commenced, 1.1 kg / commenced new batch, 1450 g / commencing a mix of 2 kg
    commence mix 900 g / initiate batch 1.2 kg / create a batch, 1500 g / create new pot 2 kilo
    generate a 2 kg batch / set up pot 5, 1800 / set up a new pot for 700 grams / put a kilo on for me
    put on a two kilo mix / put on 1500 g / stick a kilo on / stick on 800 grams of mix / get a pot on, 1.5 kg
    getting a two kilo pot on the go / got a pot going, 1100 g / got a batch on, 2 kg, weighing next
    making a start, 1.3 kg mix / giving it 2 kilos this time, new pot / doing 1400 this round
    doing another 600 for the leftovers / doing a kilo mix / go with 1800 for this pot / go for 1.2 kilos
    going with 2 kg, new pot / I'll do 900 now, new batch / ready to mix, 1500 g, give me the split
    tell me A and B for a new pot of 2 kg / need the split, making 1.4 kilos now
    work me out a two pound batch, starting / figure me a 1.75 kg batch, going now / calc batch 1300 and go
    batch size 1600 g / batch weight 2 kilos / pot size 1.2 / pot weight total 900 / total mix 2500 g
    mix total 1.1 kg / total of A plus B 1400 / A and B together 1800, start pot / all in all 1500 g mix
    all up 2.2 kg batch / new batch 64 ounces / new pot three quarters of a pound / batch of 40 oz
    five pounder please / a ten pound mix / two litres mixed up please / liter of mix for bay 2 / mix 1.5 l
    mix half a liter / half litre pot / a pint of mix / make a gallon / gallon batch / make me one US quart
    new pot 2 qts / 3 pints of mix / mix one point six / mix eighteen hundred / mix twelve hundred grams
    mix two kilos of demo clear / mix nine fifty / mix fifteen hundred total / mix four pounds two ounces
    new pot one point one kilos / batch eleven hundred / pot seven hundred grams please
    start new mix five hundred grams / mixng 1200 / mix up 90g for the coupon / mix 2,5 kg / mix1800 / mx 1,2 kg
    nw pot 900 / bathc of 1500 / smallish pot, 450 g / biggish one, 3.5 kg / tiny one, 100 grams for samples
    thimbleful, 80 g mix / monster batch today, 8 kilos 😅 / baby batch, 200 g / lunch portion, 700 g lol
    chef's special, 1.2 kilos coming up / double espresso, 300 g mix 😄 / barman, two kilos please / order up: 1500 g
    one order of 900 grams, to go / sod it, make it a full 2 kg pot / bloody hell we need another kilo mixed
    damn thing drank it all, mix 800 more / the railings ate the lot, mix another 1.5 kg / that went fast, new pot 900
    gone already, make up 1200 more / ran out halfway, 400 more grams please / need a top off pot, 350
    boss said go, 2.4 kg / lead gave the nod for 1800 g, new pot / cleared to mix, 1.2 kg, starting
    told to make 900 g / job 104 wants 1.5 kg / job 88 needs a 2 kg pot / pot for job 92, 1100 g
    batch for job 97, 3 kilos / a batch of grey, 1.2 kg / mix of clear, 800 g / some grey primer mix, 600
    of the clear two kilos please / batch demo build 1500 / demo build 2 kg / build coat mix 1.3 kg / 900 g demo clear
    demo clear, one kilo and a half / make plenty, 3 kg / a wee drop, 150 g mixed
  `,
  weigh: `
    A is 1204, B 1197, both poured / A came to 802 and B to 799 / A shows 455, B shows 452 / A got 905, B got 903
    part a one thousand and two part b nine ninety eight / a seven fifty b seven forty eight / ay 620 bee 618
    A fourteen oh five B fourteen hundred pot two / part eh 850 part bee 847 / nine eleven of A and nine oh nine of B
    resin 805, hardener 803, in the pot / base 1110 curing agent 1106 / base comp 640, hardener comp 637
    part A resin 1.4 kg, part B hardener 1.395 / 1.21 of base and 1.20 of hardener / catalyst 602 in with base 604
    both comps weighed: 733 and 731 / both components in, 1200 + 1196 / components 900 / 897 / comp A 1000 comp B 996
    side A 450 side B 449 / A portion 1203, B portion 1199 / A share 640, B share 638
    weighed and tipped: A 880 B 878 / weighed, poured, A 1500 B 1494 / weighed out 755 A then 752 B into the bucket
    weighed into the jug: A 300, B 298 / into the cup 120.4 A and 120.1 B / into the pail 5 kg A, 4.98 kg B
    bucket has 1600 A and 1595 B / pail's got 2.5 kilos A plus 2.49 B / jug holds A 404, B 402 / cup: 150 A, 149 B
    bucket on the scale: A 1010, with B 2016 / gross after A 1850 after B 3047, tare 650
    scale at 900 after A, 1797 after B / tare, 1200 A, tare, 1195 B / zeroed, A 660, zeroed, B 658
    zeroed between: 710 and 708 / zero, 1303 A, zero again, 1299 B / tared out, A 808.5, B 806
    scales give me A 1204, B 1200 / the scales read 455 A, 452 B / our scale has 1111 for A, 1108 for B
    bench scale A 2010 B 2003 / floor scale A 12.4 kg, B 12.35 kg / big scale 6.2 and 6.18 kilos
    digital says A 999.5, B 998.0 / readout A 560 B 557 / numbers off the scale: 1203 A, 1198 B
    numbers: A 815, B 812 / figures for pot 3: A 1402, B 1399 / here are the weights, A 1700, B 1694
    here's what went in: 940 A, 937 B / what went in: A 1340 B 1336 / this is what I poured, 1203 of A, 1197 of B
    ended on A 655 B 652 / finished at 1204 A, 1200 B / landed on 1500 A and 1497 B / settled on A 1003 and B 999
    stopped A at 1205 and B at 1201 / went to 900 on A, 896 on B / got it to A 1198 B 1195 / came up to 703 A, 700 B
    poured both now, A 1410 and B 1404 / pouring finished, 905 A, 902 B / pour done 604 602 / pours: 1250 A, 1246 B
    I poured twelve hundred A and eleven ninety six B / we poured 2.2 kg A, 2.19 kg B in the steel vessel
    tipped 1600 of A in and 1595 of B on top / slung in 500 A and 499 B / bunged in A 700 and B 697
    sloshed 850 A in and 847 B after it / in went 905 g A, in went 902 g B / went in at A 1203, B 1198
    added B to A: 1195 into 1200 / added the hardener, 597 into 600 / B added, 898 g on 901 g A
    hardener added 448 to 450 / B joined A, 1402 and 1405 / hardener's in with the base, 690 on 693
    dropped the B in, 1010 to A's 1014 / B just went on top, 745, with A 748 / B's gone in, 1203 against 1207 A
    B poured 10:20, 655, A was 657 / first contact 9:52, A 1203 B 1198 / contact at 10:05, 800 of A, 797 of B
    together since 8:40: A 1500 B 1495 / together in the vessel A 930 B 927 / united 620 A with 618 B 💍
    married, 1203 and 1198 / mixed in by weight A 500 B 499 / A+B 1203+1198 / A&B 900 & 897 / 1203a 1198b / 640a638b
    a:905 b:902 / A=1.203kg, B=1.199kg / A 1.5 B 1.495 kilos / a 2.01 b 2.00 kg / A 2 lb 10.4 oz B 2 lb 10.2 oz
    A 42.5 oz, B 42.3 oz / A 3.3 lbs, B 3.29 lbs / a pound and a half of each, on the dot
    two pounds even A, two pounds even B / 18 oz A 17.9 oz B / A 1 l, B 1 l / A 750 ml with B 748 ml
    one litre base, one litre hardener / a quart of A, a quart of B in / half pint each, both in the cup
    by volume 600 and 600 / volumes A 1.2 l B 1.19 l / two to one, A 800 B 400 / 2:1 weighed, 1200 base 600 hardener
    four to one, A 1600, B 401 / ratio spot on, 1000 1000 / dead even, 1203 and 1203 / equal, 850 both
    even split 600 and 600 / same on both, 775 g / each 900 on the scale / 950 g each, both in pot 4
    a kilo of each in / 1.1 kilos apiece, A and B / seven hundred apiece in batch 2
    A is 3 over at 1203, B is on 1200 / B two short, 1198 to 1200 / slightly under on B, 893 with A 900
    overshot A a touch, 1212, gave B 1210 to match / A ran away on me, 1230, B 1226 to match / corrected B up to 1203
    couple grams over, A 702 B 701 / gnat's whisker out, A 1200 B 1199 / a tad low, A 998 B 995
    near enough, A 1501 B 1498 / that's weighed then, A 1203, B 1198, thank you
    I have weighed 1203 g of A and 1198 g of B / I have poured 900 A and 898 B
    we have weighed for the batch two: A 1450, B 1446 / the weights are 1203 for A and 1198 for B
    weights are in, 640 637 / please note A 1203 g and B 1198 g / kindly record 1500 for A and 1495 for B
    A na 1200, B na 1196 / that's it weighed, 905 an 902 / weighed it oot, A 700, B 698
    weighed em up, 1500 A, 1494 B, no dramas / A twelve hunnert, B eleven ninety five, in there
    y'all, A 5.2 lb and B 5.19 lb / A and B are in there, 4.4 lb a side / weighing complete pot 2: 1303, 1299
    weigh complete A 455 B 453 / weighing up done, 2200 and 2193 / weigh-up 1203 1198 / weigh 1203 and 1198
    weighed: 812/809 / wt: 1203, 1198 / wts 640 637 / weigths 900 898 / A wieght 1203 B weight 1199 / wieghed 500 498
    a 1203 b 1198 bucket 2 / pot3 a905 b902 / pot two ay twelve hundred bee eleven ninety
    from tin 2 900 of A, from tin 3 898 of B / out of can 4, 1203 A, out of can 6, 1198 B
    can 2 gave 655 A, can 5 653 B / tin 1 down 1203 into the pot, tin 2 down 1198
    drew 1500 from the A drum and 1494 from the B drum into pot 1
    from the big pail 2400 A, from the small tin 2392 B / A from can 7: 404. B from can 8: 402.
    on second pot A was 905, B 902 / forgot to say, pot 1 got 1203 A and 1198 B
    sorry late, weighed 700 and 698 at 9:10 / ten past nine, A 1203 B 1199 in / just this minute 1500 A and 1496 B
    half an hour ago A 640 B 638 into pot 2
  `,
  stir: `
    the stirrer is running now in pot 1 / I have set the stirrer going again / have started to stir pot 2
    we are stirring again / stirrer runs again pot 3 / that's her stirrin noo / that's pot 2 birlin
    mixer's birling away / she's whirring away again / she's going round nicely, pot 1
    round and round she goes, batch 2 / away she goes, stirrer on / off she goes again, mixer on pot 3
    spinning like a top, pot 2 / nice wee vortex in pot 1 / gentle vortex going, batch 3
    vortex showing, stirrer at 200 / running at 180 revs, pot 3 / set to 300 rpm and turning / mixer on at slow speed
    impeller blade spinning in the mix / whisk going in the bucket / drill mixer running in bucket 1
    bench stirrer on, small cup / hotplate stirrer spinning, no heat / magnetic stirrer on for the cup
    flea's spinning in the beaker / bar's turning, beaker 1 / opened the air to the stirrer, it's turning
    compressed air mixer's spinning / put the paddle in and hit go / put the mixer in and switched on, pot 3
    stuck the stirrer back in, running / clamped the mixer back and started it, pot 1
    refitted the blade, stirring again / blade swapped, stirrer on again pot 2
    changed the battery, drill's stirring again / fuse replaced, stirrer on, pot 1
    reset the breaker, mixer's running again / generator's up, mixer going / plug was out, back in, stirring
    found it standing, switched it on again, pot 1 / it had stopped, running again now, batch 2
    carried on stirring pot 1 / stir continues on pot 2 / start of stirring pot 3, 9:20
    stirring since ten minutes, batch 2 / stirring from ten past, pot 3 / began stirring at 8:50
    stirring has commenced / stirring has begun, pot 2 / stirring under way, covered / being stirred now, pot 1
    mix is turning / mixture turning well, small vortex / mixture dey turn / pot 2 don start to turn
    the machine is mixing pot 1 / fired up the mixer / cranked up the mixer / kicked the stirrer over, going
    got it whirling / let the stirrer go, pot 1 / let her rip... slowly, stirrer on
    pressed the green button, pot 2 stirring / pushed start, stirring / thumbed the switch, turning
    turned on the agitator / stirrer engaged / stirrer live / mixer up and running pot 2 / strrer on
    stir her on pot one / stirring pot number two now / stirrer's on for batch three please note
  `,
  stop: `
    I have switched off the stirrer of pot 1 / we have stopped the stirring / stirring is over, pot 3
    stirring has ended, batch 1 / stirring ended at 10:40 / stir time's up, switched off
    bell rang, stopped the mixer, pot 2 / you rang, stirrer's off / heard the bell, mixer off batch 1
    alarm went so I stopped stirring / the hundred minutes are done, stirrer off / hour and forty done, off
    full time stirred, off / has been stirred enough, off / stirred long enough, turned off
    stirred through, mixer stopped pot 3 / pot 2 stirred to the end / pot 1 had its full stir
    it's had its time, switched off / that's the stirrer aff / that's her stopped / that's mixing finished, off
    that'll do, stirrer off / right that's enough, mixer off / that's plenty, paddle out / she's stood still
    it's stopped going round / it is not turning any more, pot 1 / the stirrer no longer turns, batch 2
    not stirring any more / stirrer stands since 9:50 / standing still since ten past, batch 1 / stands idle, pot 3
    drill's off, bucket 2 / whisk's out and dripping / blade's clear of the mix / paddle hung up
    hung the mixer on its hook, pot 2 / mixer parked / put the mixer away, pot 1 / stirrer's out, letting it settle
    stirrer comes out, pot 2 / took the whisk out of the jug / plug pulled, stirrer still
    disconnected the air from the stirrer / closed the air on the stirrer / turned the speed to zero, pot 2
    wound the speed down to nought / speed zero, stopped / zero rpm / hit stop on the mixer
    pressed the red button, stirring off / pushed the off button, batch 3 / flipped it off, the mixer
    thermal cut out went, mixer stopped / motor burnt out, stirring stopped pot 1 / motor smoked, stirrer stopped
    motor seized up, no stirring now / belt snapped, stirrer stopped / battery died, drill mixer stopped, pot 2
    battery flat, paddle stopped / blade fell off, stirring stopped / shaft coupling went, batch 1 not turning
    lights went out and the mixer with them / power failure, stirring interrupted pot 2 / stirring interrupted, fuse
    stirring paused to scrape down / stopped briefly to scrape the walls, pot 2 / stirring halted, batch 1
    stopped to add gas, stirrer off / stirring ceased 11:02 / mixer don stop / machine don off, pot 2
    stirrer has gone off, light went / somebody knocked the switch, stirrer was off from 9:40 / stirrer quit by itself
    it conked out, stirrer / bloody mixer packed in / damn stirrer gave up, pot 1 / mixer crapped out, batch 3
    stirrer's knackered, stopped / shut her down, stirrer / shut down the agitator, pot 3 / killed it, stirring done
    stirrer off because the hour and a half is up / turned it off since stirring's complete
    switched off as the bell says / stirrer off at ten to eleven / stop stirring recorded 10:50 pot 1 / mixr off
  `,
  filter: `
    pot 1 has gone through the filter / I have run it through the filter / we have filtered pot 3, all clean
    whole lot's through the filter / every drop through the filter, batch 1 / last of it's through, pot 2
    that's her through, nice and clean / she's filtered / went through slow but it's filtered
    slow going but through, pot 2 / dripped through, took 20 minutes, batch 1 / crept through, filtered, pot 3
    went through a treat / went through like water, batch 2 / no trouble at the filter, pot 1 done
    filter went smooth / filtering went well, pot 2 / filtering completed, 11:15 / filter run finished, pot 3
    filter step done / filtration over, pot 1 / strained it twice, pot 2 / strained through a paint strainer
    strained through nylon, batch 2 / strained through the fine bag / bag filter used, batch 1 clean
    poured through the sock / poured through the mesh into the clean can / poured via the filter into pot B
    tipped through a sieve / sieved into the new bucket / screened it into a clean pail
    meshed pot 2, 190 micron then 1 / through the 1 um, batch 2 / through a one micrometre disc, pot 1
    through 1µ glass / 1µm done, pot 3 / one micron filter passed / glass fiber, clean vessel, pot 2
    fibre filter, pot 1, no bits / cartridge filter used, batch 2 / in line filter, pot 1 pumped through
    capsule filter, batch 3 / syringe filtered the cup / buchner'd pot 2 / suction filtered, batch 1
    vacuum pulled it through / on the vacuum, all through, pot 2 / pressure pot pushed it through the filter
    nitrogen pushed pot 1 through the filter / pushed through at 1 bar / forced it through, pot 2
    pumped through and clean, batch 1 / drained through the filter into vessel 2 / ran through into a clean jug
    ran it through the fine stuff / runs through the filter now / running it through now / at the filter with batch 1
    into the second vessel through the filter / second pail now, filtered / clean jug holds pot 2, filtered
    swapped vessels via the filter / moved to vessel 2 by way of the filter / not a speck left, filtered
    specks are out, filtered / lumps filtered out / lumps stayed behind in the filter
    skin caught in the filter, rest is clean / bits caught, pot 1's clean / gel bits strained out
    crud's in the filter, pot 2 clean / muck caught by the mesh, batch 1 / clarified pot 1
    clean as a whistle after the filter / looks like gin, filtered / new disc and filtered, pot 2
    fresh filter paper, batch 1 filtered / changed discs twice, pot 3 is filtered / two discs later it's through
    three filters, but done, pot 1 / filter blocked, new one, then through / used four cones, batch 2 filtered
    filter weighed and pot filtered, 1150 g / filtered, 1180 came out / filtered 40 g lost, pot 2
    after the filter 1120 g left / filtered straight after the stir, pot 1 / filtered ten minutes ago, batch 2
    just filtered it / just been through the filter / just finished filtering batch 3 / filtered as you asked
    filtered so it's ready for the gun / filtered, off to the booth / filtered because there were specks, pot 2
    filter ok pot 1 / fltr done 3 / filter pot too / filtered patch two / please note pot 2 is filtered
    kindly note filtering done / boss filter is done / oga I don filter pot 2 / filtering don finish
  `,
  thick: `
    it gets thick / it is becoming thick, batch 2 / gone a bit thick / it's claggy, pot 1 / gone gloopy on us
    like wallpaper paste, pot 1 / like glue now / like PVA, batch 2 / like double cream, pot 2
    thick as porridge, batch 3 / thick as soup, pot 2 / pancake batter in pot 2 / like peanut butter
    like toothpaste nearly / like warm tar / like motor oil in winter / like cold honey, pot 2
    the mix is sluggish, pot 2 / barely pours, pot 1 / doesn't pour well any more / doesn't run off the brush any more
    won't level out now, pot 2 / not levelling any more, too heavy / no flow left in it, pot 1
    lost its flow, batch 2 / it hangs on the stick, pot 1 / hangs off the paddle in ropes / long strings, batch 2
    pulling threads / strings like cheese 🧀 / roller is sticking in it, mix got heavy
    brush marks stay, mix is thick / the brush leaves ridges, it's thickened / hard to stir, batch 2
    stirrer's straining, pot 3 / stirrer's slowing down by itself, thick / mixer groaning / mixer's bogging down
    paddle's fighting it, pot 1 / motor's getting hot, mix is thick, batch 2 / vortex has gone, mix too thick
    no vortex any more, it's stiff / gun won't atomise it, too thick / gun sputters, thick mix
    spits out of the gun, thick / comes out in blobs / coming out in strings from the gun, pot 2
    cup won't drain, thick / viscosity is rising, batch 2 / viscosity rising fast / cup time 40 seconds now, was 20
    flow cup 55 s, up from 25, pot 2 / din cup went to 38 s / zahn cup up to 45, batch 1 / drip test slow, pot 2
    runs slow off the spatula / drops don't fall, they stretch / heavier than it was / heavier by the minute
    beginning to thicken / starting to go / it's on the move, thickening / turning to goo / goopy as hell, batch 1
    thick enough to stand a spoon nearly / thick at the bottom, thinner on top, pot 2 / thick round the edges, batch 1
    thickened a lot in ten minutes / thickened overnight, well over lunch / thickened since break, pot 2
    thickened while I was on the phone / thickening quick, it's warm / thickening fast because of the heat, batch 2
    thick cause it's hot in here / pot's warm and thick / warm to the hand and thickening, pot 1
    full of body now, pot 2 / gained body, batch 1 / it has body now, bit heavy / set's starting, thick
    it's awfy thick / mixture don thick / the mixture is thickening, sir / mixture is too thick o
    she's like bloody syrup / crap, pot 1's thick / tick, batch two / sick and heavy, pot one... thick I mean
    pot 2 thick already after an hour / thick at 60 min
  `,
};
