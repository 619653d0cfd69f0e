// How English speakers say it: mix, weigh, stir, stop, filter, thick, gel, empty, cover, uncover, catch, waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPots: Sayings<SaidMeaning> = {
  mix: `
    gonna need 900 g / cook me up three and a half pounds / we need 2 kilos made up / set me up with a small one, 800
    mix 600 / new pot, 1200 grams / start a batch of 2.4 kg / starting a mix, one point eight kilos / fresh batch 500g
    make it 1500 total / batch of 750 pls / knock up 400 g for touch in / knocking up a kilo for the flanges
    I'm mixing 2200 now / mixing up two pounds for the valve bodies / let's brew 1.1 kg / brew time, 950 grams
    brewing another 700 / let's have a fresh 1000 / gimme 650 g mixed / give me 1.3 kilos
    I want three kilos in the pot / need a pot of 1800 for the spray job / need another half kilo
    another batch same as before 1200 / one more pot, 300 g will do / same again, 900 / make up 2 lbs
    making up 1400 for job 92 / make us up a kilo and a quarter / do me a small mix, 350 grams / do us 2 kilo ta
    doing a big one, 4 kg / big batch today lads, five kilos / little batch, 250 / tiny pot, 120 g, just for the coupon
    prep 1.6 kg for flow coating / preparing a mix of 875 grams / put together 1100 g for 7 and 8
    putting together a two kilo pot / throw together 600 for the railings / throwing a quick 450 together
    whip up 30 ounces / whipping up a pound and a half for the housing / ok finally the parts are ready, mix me 2 kg
    right then, kettle on, 1.2 kilos of the good stuff / morning all, first pot of the day, 1500 g / new mix 1k
    mx 800 g / mxi 1200 grams / mix one thousand two hundred / mix two point four kilos
    start pot 3 with nine hundred grams / pot 2: 1600 g / kick off a new pot, 2.2 kg / kicking off batch 4, 1300 g
    get a kilo going / get me 2 kilos on the go please / getting 900 on the go for brush work / run me up 1750
    run up a batch of 5 lb for the tank / I'll take 1.4 kg for the impellers / I'll have 700 for the brackets thanks
    could use 550 g over here, go ahead and mix / we're short, make 400 more
    ran low, need 300 extra for the last plate / top up pot wanted, 200 grams / we want a liter and a half
    make me one and a half litres for the dip tank / half a gallon for the roller guys / a quart of mix for the valve 2
    two quarts please / mix enough for 1.9 kg wet / order for the mix bench: 2600 g / mix bench, 1 kg for booth 2
    boss wants 3.2 kg ready for the plates / lead says mix 2100 / customer is waiting, cook 1.5 / cooking 800g
    cook up a fresh one kilo for touch up on the plates / lets cook, 1250 🔥 / 🧪 900 g / new batch!! 1.7kg 💪
    make a pot, kilo and a half / pot please, 1100 / one pot, eight hundred, spray / batch for spraying, 2 kg
    brush batch 450 g / dip batch, six kilos / flow coat mix, 3500 g total A plus B / total weight 1800, go
    target 1250 g / size 900 / 1.2 kg mix / 2kg go / 1400 grams please mate / seven fifty of mix
    three pounds four ounces for the exchanger plates / forty ounces oughta do it, mix it / mix 1000 g of demo coat
    make up 1.5 kg of the clear / a kilo of the grey please / two kilos pigmented for housing 4
    clear coat, half a kilo, for the 12 / for impeller-3 make 650 g / for these two mix me nine hundred and fifty
    job 95 takes 2300 g, start it / starting pot number two, 1050 g / begin a 1.6 kg mix
    beginning batch 5, seven hundred grams / fire up a new one, 2 kg / fire up a pound for the samples
    crank out 2.8 kg for the railings / bang out a 1200 g pot for me / rustle up 500 g
    sort me out a kilo for the manifolds / sort out 850 for the bracket lot / I'm after 1.1 kilos
    after two kilos for the afternoon shift / set up a batch, 1900 grams, method roller / setting up for 1500 g now
    lay on 3 kg for the tank lids / hey bot its me, making 900g for the pump bodies
    hello, new mix of one kilo please, thank you / batch me 1350 / batch up 2.5 kilos / batching 4 lbs
    measure me out a 600 g mix / make it a double, 2.4 kg this time / let's go with 1 kg to be on the easy side
    just a cupful, 200g / smallest you can do, 300 / apprentice here, lead told me to make 500 grams
    weigh me up a kilo total, we're coating valve 2 / work out 1700 g for me I'm at the scale
    split for 1450 total, starting now / start mix 3 lb 8 oz / start mixing 2 kg / dish me up 950 for the nozzle set
  `,
  weigh: `
    A 1203 B 1198 for pot 1 / scale says 604 A and 597 B / A 450 B 450 / a 600.2 b 599.8 pot 3 / 1203 1198
    pot 2 A = 812 g, B = 808 g / A is 950, B is 947 / weighed in, A 700 B 702 / poured 1100 of A and 1096 of B
    got 500 A 501 B in the pot / in the pot: 800 of each / twelve hundred and three of A, eleven ninety eight of B
    A one point two kilos, B one point two one / tipped in 345 A then 347 B / A in at 1050, B in at 1046
    B's in, 1204 on A 1199 / B went in just now, 622, A was 620 / both in 750 and 748
    both weighed, 900 A 903 B, batch 4 / weights for batch 2: 1310 and 1306 / final weights a 1498 b 1503
    actuals 987 A, 991 B / reading 612 on the A, 609 on the B / the scale read 1204.5 then 1201.0
    scale shows A 433 B 430 / display says 1.203 A 1.198 B / balance reads 250.1 A, 249.7 B
    I put 880 of A and 875 of B in pot 2 / put in 1.5 kg A, 1.49 kg B / dropped 655 A into the pot followed by 650 B
    dumped A 1500, B 1500, stirrer on / chucked in 600 A and 604 B / added 997 A plus 1001 B
    charged the vessel with 2010 A and 2004 B / charge: A 1404 B 1399 / loaded pot 5 with 700 of A and 698 of B
    filled her up, 1120 A 1117 B / measured A at 831 and B at 829 / measured out 300 a 299 b / A wt 1203 B wt 1198
    net A 1188 net B 1191, tared both / tared the pot, A came out 655.4 and B 654 / after tare 902 A, 899 B
    A side 1340, B side 1338 / part A 1003 part B 998 / Part A: 1203 g, Part B: 1198 g / prt a 780 prt b 777
    resin 900 hardener 450 / base 1200, hardener 1190 for pot 1 / hardener in, 448, base was 900
    activator 603 into 605 of base / of A went in 1244, of B 1239 / B 1198 A 1203 / b first time lucky 700, a 701
    two pounds ten A and two pounds nine B / 1 lb 12 oz A, 1 lb 12 oz B / 26.4 oz A 26.3 oz B in batch 3
    A 2.64 lb, B 2.63 lb / by volume A 500 ml B 498 ml / half a litre of A, half a litre of B in pot 2
    a litre A 990 mil B / pot 4 got 1600 A and 1593 B / pot 1 took 1203 of a and 1198 of b
    first pot has 505 A 503 B in it / the second one, 660 A, 658 B / batch 6 weighed up, six fifty and six forty nine
    weigh in done: 1750 1744 / weighing finished, 923 A, 920 B / weigh up for pot 3 came to A 1409 B 1411
    ok weighed. A 812. B 809. / ok finally got it on the nose, 1000 A 1000 B / bang on, 750 and 750
    spot on mate 600 600 / dead on 900/900 😎 / near as dammit, A 1201 B 1199 / little heavy on A, 1212, B 1198
    bit light on the B, 1187 to 1203 A / slightly over, 1206 A and 1204 B / A a hair over at 803, B 799 / ⚖️ 1203 1198
    ⚖️ A 640 B 637 pot 2 / A 1203 ✅ B 1198 ✅ / A+B in, 450 + 448 / A 1203 & B 1198 both in pot 1 at 9:40
    at 9:40 weighed A 700 and B 697 / ten minutes ago poured 910 A and 905 B into pot 3
    just now B into A, 1014 into 1020 / B onto A, 388 on 390 / B hit A at 10:12, 1198 to 1203
    combined 845 A with 841 B / married up 1203 A and 1198 B in pot 1 btw / brought together 560 a and 562 b
    A and B are together in pot 2, 1330 and 1325 / from can 3 1203 g, from can 4 1198 g
    out of can 1 went 720, out of can 2 718, pot 4 / used can 5 for A 1090 and can 6 for B 1085, all in pot 2
    can 3 A 815, B can 812 into batch 7 / A can 2 804 g in, B can 7 801 g in
    hey its the new guy, scale said 603 for A and 600 for B / sorry gloves, A 1203, B 1198, pot one
    dictating: A twelve hundred, B eleven ninety five / a twelve oh three b eleven ninety eight
    A six hundred four B six hundred flat / a is nine fifty and b nine forty six, thats pot two
    for pot 3 we have 1505 of the A and 1498 of the B / record A 777 B 775 / log weights: 1203 A 1198 B
    put down 640 for A and 638 for B / write down A 935 B 931 for batch 3 / weights: 402, 399 / A: 1203, B: 1198
    A=550 B=548 / A1203 B1198 / a1050b1046 pot2 / 1:1, 825 g each in / ratio is on, A 660 B 661
    weighed both sides, 1203 on one and 1198 on the other / got a on the scale 1203, got b on there 1198, both poured
    that's A 480 and B 477 gone in / there we go, 999 A and 1001 B 🎉 / in goes A 1203, in goes B 1198
    A's landed at 865, B at 862 / A ended up 1207, B ended up 1202 / came to 344 A and 342 B in the small pot
    stopped the pour at 1203 A, 1198 B / hit 700 with A and 698 with B / two grams apart, 852 A 850 B
    both parts in batch 5, nine ten of A and nine oh eight of B / vessel holds 1203 A + 1198 B now
    big pot, 2.4 kilos A, 2.39 B / beaker has 120 A and 119.5 B / steel pot number 2, A 1555, B 1549
    weighed it twice, A 1003 B 1000
  `,
  stir: `
    stirrer on pot 1 / stirrer's on / stirrer back on, pot 2 / stirrer running again in batch 3 / stirring pot 2
    stirring again / started stirring batch 1 / started the stirrer in pot 3 at 9:40 / pot 1 is stirring
    pot 2 turning again / batch 4 spinning / switched the stirrer on / switched the mixer back on for pot 1
    turned the stirrer on, second pot / turned pot 2's mixer back on / flicked the stirrer on, batch 2
    hit the switch, pot 3 is going round / kicked the mixer on / kicked off the stir, pot 1 / mixer on
    mixer's going in pot 4 / mixer's running, slight vortex, batch 1 / paddle's turning in pot 2
    paddle back in and spinning, pot 3 / blade's going round again / got the stirrer going on batch 2
    got pot 1 spinning again / set pot 2 stirring at low speed / set it going again, batch 3 / motor's on, pot 1
    motor back on, pot 2 / magnet stirrer on, small pot / stir bar's spinning in pot 5 / air stirrer running on pot 1
    lowered the stirrer in and started it, batch 2 / dropped the paddle back in pot 3, on slow / resumed stirring pot 1
    resuming the stir on batch 4 / restarted the stirrer, pot 2 / stirrer restarted just now after the power cut
    power's back, pot 1 stirring again / plugged the stirrer back in, pot 2 going / ok finally stirrer on pot 1
    right, she's turning, nice little vortex in pot 3 / stir on / stiring pot 2 now / start stir pot 1
    stirrer pot three on / 🌀 pot 2 / 🌀 on again batch 1, sorry went for coffee
  `,
  stop: `
    stirrer off pot 1 / stirrer's off / stirrer off, batch 2 / stopped the stirrer in pot 3 / stopped stirring
    stopped stirring batch 1 at 11:10 / stirring done, pot 2 / done stirring pot 1 / finished stirring batch 3
    finished the stir on the second one / stir finished pot 4 / switched off the stirrer, pot 1 / switched pot 2 off
    turned the mixer off / turned the stirrer off on batch 2 just now / mixer off pot 3 / mixer's stopped
    mixer's out of pot 1 / killed the stirrer / killed the mixer on batch 4 / cut the stirrer, pot 2
    cut power to the mixer, pot 1 / shut the stirrer down, batch 3 / shut off pot 2's mixer / paddle's out
    paddle out of pot 1, dripping off / pulled the paddle from batch 2 / pulled the stirrer out of pot 3
    took the stirrer out, pot 1 / took the paddle out of batch 4 five minutes ago / lifted the stirrer out of pot 2
    lifted the mixer head, pot 1 / lifted the blade clear, batch 3 / raised the stirrer, second pot
    hoisted the paddle out, pot 5 / blade's up and out, pot 2 / stirrer up / stirrer is standing still in pot 1
    pot 2 stands still / pot 3 stopped turning / batch 1 has stopped spinning / vortex is gone, stirrer off, pot 2
    motor off pot 1 / motor's off, batch 2 resting / unplugged the stirrer, pot 3 / stirrer quit on pot 1
    stirrer died on batch 2 / stirrer tripped, pot 4 is standing / power went, pot 1 stopped stirring
    air line came off, stirrer stopped in pot 2 / stop stir pot 2 / stir stop batch 3 / stoped the stirer pot 1
    stopped pot two's stirrer / ok that's it, mixer off, batch 1 looks lovely / 90 minutes up, stirrer off pot 2
    two hours done, pulled the paddle, pot 3 / right stirring's over on pot 1, time for a brew / ⏹️ pot 2 stirrer
    magnet stirrer off, small pot
  `,
  filter: `
    filtered pot 1 / had batch 2 through the filter, no specks / pot 3 filtered / batch 1 is filtered / it's filtered
    filtering pot 2 now / filter done pot 1 / filtration finished, batch 3 / ran pot 2 through the filter
    ran batch 1 through the one micron / ran it through glass fibre into a clean pot
    ran the mix through the filter at 11:20 / put pot 3 through the filter / put batch 4 through 1 um
    passed pot 1 through the filter / passed batch 2 through glass fiber / poured pot 2 through the filter
    poured it through the one micron disc, pot 1 / pushed batch 3 through the filter, slow going
    pressed pot 1 through the cartridge / pumped pot 2 through the filter / sucked batch 2 through on vacuum
    vacuum filtered pot 1 / pulled pot 3 through the glass fibre with the vacuum / gravity filtered batch 1
    pressure filtered pot 2, two bar / dripped through nicely, pot 1 filtered / let batch 2 run through the filter
    all of pot 3 went through the filter / pot 1's through the filter / pot 2 is through
    batch 4 through the filter into vessel 2 / through the one mic, batch 1 / through glass fibre, pot 2, clean vessel
    went through the filter just fine, batch 3 / mix went through the fine filter ten minutes ago / strained pot 1
    strained batch 2 into the clean bucket / straining pot 3 / sieved pot 2 / put it through the strainer, batch 1
    put pot 4 through the cone / cone filter done, pot 1 / screened batch 2 / sifted the mix through the mesh, pot 2
    cleaned up pot 1 through the filter / bits filtered out of batch 3 / gel specks stayed in the filter, pot 2 is clean
    caught a few specks in the filter, pot 1 done / filter paper changed and batch 2 filtered
    two filters used but pot 3 is through / clogged once, swapped the disc, batch 1 all filtered now
    decanted through the filter into a second pot, batch 2 / transferred pot 1 through the filter
    moved batch 4 over to clean steel through 1 micron / second vessel has pot 2, filtered
    clean vessel, filtered, batch 1 / clear as gin, pot 1 filtered / lovely and clear after the filter, batch 2
    ok finally filtered, took ages, pot 3 / hey bot pot 2 has been filtered / btw filtered batch 1 already
    filterd pot 2 / fliter done batch 1 / filtered pot one at nine forty / 1 micron ✔ pot 2 / ✅ filter batch 3
    double filtered pot 1 / filtered and ready, batch 2 / filtered 1180 g of pot 1
  `,
  thick: `
    pot 1 is getting thick / pot 2 thickening / batch 3 is thickening up / pot 1 thicker than before
    batch 2 has thickened / mix is thick / gone thick, pot 3 / going thick on me, batch 1
    pot 2 turning thick but still pours / still pours but heavy, pot 1 / still liquid but thick, batch 4
    pot 3 like honey now / batch 1 like syrup / like cold treacle, pot 2 / like molasses, batch 2
    like maple syrup when I tip it, pot 1 / thick as custard, batch 3 / pot 2 is like yoghurt / goopy, pot 1
    pot 3 getting goopy / batch 2 is gloopy / getting stringy, pot 1 / pot 2 pulls strings off the brush
    strings off the stick now, batch 3 / ropey, second pot / batch 1 gone ropy / pot 2 dragging on the brush
    brush is dragging, mix in pot 1 got heavy / rolls heavy now, batch 2 thicker
    won't flow like it did, pot 3 is thicker / pot 1 running slow / runs off the stick slowly now, batch 4
    drips slow off the paddle, pot 2 / stirrer is labouring, pot 1 thick / mixer's working hard, batch 3 getting stiff
    pot 2 stiffening / getting stiff, batch 1 / stiffer than an hour ago, pot 3 / viscosity's up, pot 1
    viscosity climbing in batch 2 / cup time went from 18 to 31 seconds, pot 2 / flow cup says 40 s now, batch 1 thicker
    pot 3 has bodied up / bodying up, batch 2 / body's coming up in pot 1 / pot 2 is building up body, quite heavy
    batch 3 has got heavy / heavy pour now, pot 1 / gun's spitting, pot 2 got thicker / comes out the gun thick, batch 1
    bit thick now pot 2 / kinda thick, batch 4 / noticeably thicker at 11:40, pot 1 / pot 3 thickned / thcik pot 1
    pot two is getting thick / heads up pot 1 is turning to syrup / lead, batch 2 is on its way, thick as gravy 😬
    🍯 pot 2 / damn, pot 3 has thickened already
  `,
  gel: `
    pot 1 gelled / pot 2 has gelled / batch 3 is gel / gelled!! / batch 1 gelled in the pot / it's gelled, second pot
    pot 3 went to jelly / jelly in pot 2 / batch 2 is jello / pot 1 is like a jelly / pot 2 like rubber
    batch 4 turned to rubber / pot 3 rock hard / batch 1 solid / pot 2 is solid / pot 1 gone solid / set solid, batch 3
    pot 2 has set / batch 1 set up in the pot / pot 3 set up on us / she's set, pot 1 / pot 1 went off
    batch 2 has gone off / gone off, pot 4, can stand the stick up in it / pot 2 kicked
    batch 3 kicked off hard in the pot / pot 1 hardened / batch 2 hard as a brick / pot 3 is a brick
    it's a hockey puck, pot 2 / stick's stuck in pot 1 / stirrer stuck fast, batch 2 set / paddle's frozen in pot 3
    pot 2 frozen solid / batch 1 cured in the bucket / pot 4 cured in the cup / pot 1 is dead, gelled
    batch 2 died, one lump / one big lump, pot 3 / turn it upside down and it stays, pot 2
    pot 1 won't pour at all, gel / gel in the gun hose and the pot, batch 3 / came back from lunch to a gelled pot 2
    gelled at 12:10, batch 1 / just gelled, pot 3 / damn it pot 1 turned to plastic / gell pot 2
    pot one gelled ten minutes ago / 💀 batch 2 set solid / rubbery all through, batch 4
  `,
  empty: `
    pot 2 is empty / pot 1 empty / pot's empty / batch 3 all gone / batch 1 used up / used up pot 2 / used it all
    it's all on the parts, pot 3 / all of batch 2 is on the 7 and 8 / every drop of pot 1 used
    last drop of batch 4 went on the bracket / scraped pot 2 clean / scraped out the last of batch 3 / pot 1 finished
    finished pot 3 / finished off batch 2 on the railings / done with pot 1, it's empty / pot 2 done, threw out 120 g
    120 g left from pot 2, binned it / tossed the rest of batch 1, 85 g / threw the rest of pot 3 away
    threw away 200 grams of pot 2 / chucked what was left in batch 1 / chucked 60 g from pot 4
    binned the rest of the second pot / binned batch 2, 310 grams / dumped pot 1
    dumped the rest of pot 3 in waste, 140 g / dumped 0.4 kg of batch 5 into the waste drum
    poured the leftovers of pot 2 into the waste can / poured out what's left, pot 1, 90 g / rest of pot 3 to waste
    rest of batch 2 went to waste, two hundred grams / rest of pot 4 in the bin / remainder of batch 1 scrapped, 75 g
    remains of pot 2 in the waste drum / remainder 45 grams tipped, batch 3 closed out / leftover pot 1: 110 g, thrown
    leftovers from batch 2 tossed / tipped the rest of pot 2 in the drum / tipped out pot 3 / scrapped pot 1, 500 g
    scrapped what was left of batch 4 / ditched the rest of 2 / ditched pot 3, 95 grams / got rid of the rest of pot 1
    got rid of 150 g, pot 2's empty now / trashed the rest of batch 3 / trashed pot 4, about half a pound
    junked batch 1, 3 ounces / discarded 80 g from pot 2 / discarded the remainder of batch 5
    disposed of pot 3's rest, 130 grams / wasted 70 g of pot 1, rest is on parts / cleared out pot 2 / emptied pot 1
    emptied the pot / emptied batch 3 into the waste / pot 2 emptied, 55 g out / pot one is dry
    pot's dry, everything went on / pot 3 ran out / ran out of batch 2 / ran pot 1 dry on the last flange
    sprayed pot 2 dry / sprayed out the rest of batch 3 / brushed out the last of pot 4
    rolled out the last of batch 1 on the plate / we're out of pot 2 / out of mix, pot 1 gone / no more in pot 3
    nothing left in batch 2 / zero left in pot 1 / 0 g left pot 4 / nil left, batch 5 / cup's empty, batch 2 finished
    gun cup took the last of pot 3, pot's empty / pot 2 kaput, all used / that's pot 1 done, bare steel in the bottom
    that's the end of batch 3 / that's all she wrote for pot 2 / end of pot 4, 40 g in the drum / close pot 1, empty
    close out batch 2, rest 160 g to waste / batch 1 closed, used all / pot 3 gone at 11:20
    pot 2 empty since ten minutes ago / just emptied pot 5 / just threw the last 65 g of batch 2 out
    past its time so binned the rest of pot 1, 230 g / pot life's up, tossed 180 grams of batch 3
    time's up, rest of pot 2 in the bin / shame but 400 g of pot 4 went in the drum
    hate wasting it but dumped a quarter kilo, batch 2 / perfect, pot 1 came out to the last gram
    bang on, used the whole of batch 3 👌 / 🗑️ pot 2 90 g / pot 1 empyt / bacth 2 all used up
    threw out pot two, one hundred and twenty grams / pot number three is finished, forty grams wasted
    hey bot pot 1 is finished, nothing thrown / ok batch 4 all on the housing, love you all
    vessel 2 wiped out, mix all gone
  `,
  cover: `
    covered pot 1 / pot 2 covered / cover on batch 3 / cover's on / cover back on pot 1 / lid on pot 2
    pot 3's got its lid on / put a cover on the pot / put the lid over batch 1 / put foil over pot 2 / foil on, pot 1
    film stretched over pot 3 / cling film over the pot, batch 2 / plate over pot 1 / laid the steel plate over batch 4
    dropped the cover on pot 2 just now / popped the cover on the mix / pot's closed over, stirring under cover
    batch 1 is under cover / covering pot 2 now / covered up the second pot at 9:45 / covered the mix
    cover over the stirring pot / pulled the cover back over pot 3 / split lid on round the stirrer shaft, pot 1
    closed up pot 2, stirrer running / coverd pot 1 / ok hat's on pot 2 🎩 / pot one has its cover on now
    btw batch 2 is covered again
  `,
  uncover: `
    uncovered pot 1 / pot 2 uncovered / cover off batch 3 / cover's off / took the cover off pot 1
    took the lid off pot 2 / lid off the pot / lid's off batch 1 / pot 3 open / pot 2 is standing open
    opened up pot 1 for a look / opened the pot / lifted the cover off batch 2 / lifted the lid on the mix, pot 3
    foil off pot 1 / peeled the foil back, batch 2 / pulled the film off pot 2 / pulled the cover from batch 4 just now
    plate's off pot 1 / slid the plate off the second pot / uncovering pot 3 / removed the cover, batch 1
    removed pot 2's lid at 10:15 / cover blew off pot 1 / lid fell off batch 2 / batch 3 has its top off
    uncoverd pot 2 / popped the top off pot 1 to pour / ok pot 2 is open, going to the gun / pot one cover is off
  `,
  catch: `
    caught 120 g back / caught 85 grams off the 7, pot 1 / caught the drips, 60 g, back in pot 2
    140 g caught in the tray / tray's got 200 g from the plates / tray weighs 90 g net, back to pot 1
    drip tray gave 150 g, batch 2 / drip pan had 110 grams, poured back in pot 3
    drained off 75 g from the housing into the pot / drained back 230 g, batch 1 / drain back 95 g
    run-off from impeller-3, 130 g, in the tray / runoff caught, a quarter kilo, pot 2 / collected 180 g of drips
    collected what ran off the two plates, 210 g / recovered 160 g from the flow coat / recovered 5 oz, batch 3
    got back 100 g from the tray / got 145 grams back off the valve body into pot 1
    came off the part and into the pot, 88 g / what dripped off the 8 is back in the pot, 55 g
    drips from railing back in pot 2, 40 g / dripped off 70 g, caught it / saved 125 g from the drips
    reclaimed 190 g in the catch pan / catch tray: 165 g pot 1 / catch pan emptied back to batch 2, three hundred grams
    caught in tray 48 / 80 g back in pot 1 off the bracket / half a pound ran back into the pot from the flange
    poured the tray back, 115 g, batch 4 / tipped the drip tray back in pot 2, about 135 g
    scraped 35 g from the tray back to batch 1 / excess off the housing caught, 220 grams
    overflow from the flow coat in the catch pot, 175 g / ran off into the bucket, 260 g, batch 3 / caugth 90 g
    catch one hundred and ten grams pot two / ok caught the lot, 155 g, lovely, back in pot 1 / 💧 65 g back in the tray
  `,
  waste: `
    waste in the drum / waste 300 g in drum / put 450 g in the waste drum / put the flush waste in the drum, 2 litres
    dumped two litres of dirty acetone in the drum / tipped the solvent waste into the drum
    poured the old flush in the waste drum / drum got 1.5 kg / drum: 600 g mixed waste / 1.2 kg to the waste drum
    a litre of spent IPA went in the drum / spent solvent in drum 2 / old filters in the waste drum
    used filters and cups in the drum, 200 g / masking and paper in the waste drum / gun wash in the drum
    gloves and tape in the waste drum, half a kilo / sludge scraped into drum 1, 800 grams
    half a gallon of flush into the waste / emptied the slop bucket into the drum / slops in the drum, 3 l
    booth filters out to the waste drum / hardened lumps in the waste drum, vented lid
    chucked the brushes and rollers in the drum / waste drum plus 750 g / added 400 g to the waste
    logged to waste: 900 g / waste out, drum, 16:05 / ok all the muck's in the drum, about two kilos / 🛢️ 500 g in
  `,
};
