// How English speakers say it: open, received, lid, shut, blanket, prestir, used, rags. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCans: Sayings<SaidMeaning> = {
  open: `
    opened a new can of A, lot 2231, 5 kg / cracked a fresh A under argon / new can B, lot B-774, exp 03/26
    new A open, argon on / popped a new can of A, lot 4410 / popped open B, 1 kilo, lot 88, good till june
    broke the seal on an A, 4 kg, lot A119 / seal's off a new B can, lot 552
    opening can 3, part A, lot 2240, under nitrogen / opened can 7, it's B
    can 5 opened, A, lot L33, 2.5 kg, exp next march / just opened a 5 litre A, lot 7003, argon running
    open A lot 2231 5kg exp 12/25 argon / open B lot 900 1kg / A can, brand new, lot 1812, opened under gas
    fresh can of B, lot Q17, 20 kg, expires jan 27 / fresh A, one gallon, lot 6652 / started a new can of B, lot 310
    started on a new A, 3 kilos, lot 2255, with argon in it / starting a fresh tin of hardener, lot H42
    new tin of A on the go, batch code 20418, 5kg / new pail of A, lot P9, 20 kg, under N2
    new bucket of B cracked, 10 kg, lot 4482 / new drum of part A tapped, lot D100, 60 kg, nitrogen purge on
    new quart of B opened, lot 21B / new gallon of base opened, lot 5567, exp 2026-08
    cut the foil on an A bottle, lot 118, 500 g / pulled the tab on a new B, lot 4 / peeled the seal off B can 9
    pried the lid off a brand new A, lot 3301 / prised a new tin of A open, argon hose in it
    unsealed A, lot 40021, five kilos / unsealed a one kilo B, expiry feb 2027 / broached a fresh A, 20 kg, lot X8
    uncapped new bottle of B, lot 615, 1 litre / unboxed and opened an A, lot 7110, in argon / cracked a can
    cracked B open, lot 73 / cracked open the last new A, lot 2260
    cracking a new one, part A, lot 2262, 4 kilos, argon flowing / busted open a new B, 2 lb, lot J5
    had to open another A, lot 2248 / went into a new can of A, 5 kg, lot 90
    got into a fresh B, lot 778, exp end of year / gone into the next A, lot 2233, gas on it
    took a new A off the shelf and opened it, lot 56, under argon
    grabbed a new B from the cupboard and popped it, lot 777
    fetched the next can from the cold store, A, lot C12, opened 8:15 / next can of A is open, lot 2270
    next B opened, lot 301, 1 kg / second can of A opened, same lot 2231, 5 kg / another A cracked, lot 19, argon
    another B, lot 20, opened / ok new can, A, lot twenty two thirty one, five kilos / A opened at 9:40 lot 6631
    B opened ten minutes ago, lot 119, 4 kg / opened A this morning at seven, lot 2216, 20kg, nitrogen
    just now opened new B, expiry 11/2026 / new A opened without argon, using it all, lot 70, 1 kg
    opened A in air, lot 5, 1kg, whole can goes in the pot / A can opened, air only, lot 442
    B opened in plain air, lot 447, 5 kg / opened dry under argon, A lot 812
    opened under a blanket of nitrogen, A, lot 3009, 10 kg / argon in the neck, A opened, lot 66
    gas flowing, lid off a new A, lot 2241, 5 kg / argon at hand, new A opened, lot 85
    new A, argon bottle hooked up, lot 2242, two kilos / can A new lot 2231 exp 06/26 argon yes
    can 11 new, B, lot 650, argon no / can: A lot 2290 5 kg exp 2026-04 Ar / A open, lot 2231, net five kg
    B 1 kg lot 774 exp 3/26 opened / A lot 11 opnd argon / opend new can a lot 2231 / opned B lot 8 1kg
    log new can open: B, lot 612, 2.5 kg / log an opened can, A, lot 4400, use by september
    put down can 12, A, opened, lot 4401 / hey bot opened a can, its A, lot says 2231, 5 kilos net
    hi, new can of part B just opened, label says lot 5009 best before 10/26
    label reads A, lot 7200, 4 kg, use by may, lid off and argon in / dated 02/27, lot 36, A, new, opened
    exp 2026-11, lot 1190, 20 kg pail of A opened / use by next february, lot 55, fresh can of B opened
    made this month, lot 1203, B just opened / lot 2231 A open / lot 774 is open / lot H19 hardener opened, 1 litre
    finally got that stubborn new A open, lot 2239, argon on 😅 / that new lid fought me but B's open now, lot 43
    🆕 A lot 2231 5 kg argon / 🆕 can of B / new A 🥫 lot 18 exp 5/26 / smells fresh, new B opened, lot 702
    looks clear and clean, new A open, lot 2275, 5 kg / virgin can of A opened under argon, lot 15
    sealed can of B now open, 4.5 kg, lot 9 0 1 / factory sealed A opened, lot 6000, ten pounds
    ten pound can of A, opened, lot T4, nitrogen / opened a fiver of A, lot 3345, gas in
    one kilo tin of hardener cracked for pot 2, lot 1K7 / opened new A for batch 4, lot 2280
    B for pot 3 came from a new can, lot 515, opened just now
    old A finished so new one opened, lot 2281, 5 kg, exp 7/26 / we're into a new A now, lot 2282
    tapped a new one, hardener, 20 litre, lot V7 / new can open: base, lot 4, 3.8 kg, argon
    broke open kit 6, A can lot 61, 2 kg / opened up the small B, 500 g, lot 27, exp apr
    apprentice opened a new A with me watching, lot 2283, argon on
  `,
  received: `
    cans came in / new cans arrived / got 4 cans of A in / six cans of B delivered / delivery: 3 A and 3 B
    delivery came, ten kilos of A, lot 2240 / truck brought four A, lot 2251 / van dropped off two B cans
    courier left a box with 6 A / received 4 A lot 2290 exp 9/26 / received two pails of A, 20 kg each
    received B, 5 x 1 kg, lot 790 / rcvd 3 cans B / took delivery of eight cans, four of each
    signed for 12 cans of A this morning / signed for the coating order, 5 A 5 B / unpacked six B, lot 801
    unloaded four pails of part A from the truck / A stock in: 10 cans, 5 kg / stock came in, 2 A 2 B
    restocked, eight A on the shelf / shelf's full again, six A and six B came
    put five new A cans in the store, lot 2261 / put away the delivery, four B
    booked in 6 cans of A, lot 2262, exp 11/26 / booking in three new B / checked in 4 tins of hardener
    add to stock 3 A, lot 2263 / goods in: 2 x 20 kg A, lot P11 / goods in B 4 cans / incoming stock, A lot 2264, six of
    the order's here, 4 kits / kits arrived, five of them, lot K30 / five kits A+B came today
    supplier sent 3 cans A and one B / supplier's delivery landed at 9:10, eight cans
    maker sent us a replacement A, lot 2265 / pallet of A arrived, 24 cans / a pallet of cans on the dock, lot 2266
    box of B turned up, 12 x 500 g / parcel came with two A in it / finally the A is here, four cans 🙌
    ok B delivered at last, six tins, lot 812 / 📦 4 A 4 B / 📦 cans in, lot 2270 / three gallons of A came in
    a drum of A was delivered, 60 kg, lot D102 / two fresh quarts of B in, exp may 27
    hardener delivery, 3 litres, lot H50 / base and hardener came in, two each
    got our A, lot twenty two seventy one, six cans / got in four kilos of B / we got cans, 3 A
    new lot in, 2275, five A cans / new lot of B came, 820, exp 01/27 / recieved 2 cans A lot 2276
    cans deliverd, 4 of B / delivery driver just left, 6 A sealed, all dry
    hey bot 8 new cans in the cold store, lot 2277 / came in today: A x3, B x3
  `,
  lid: `
    lid off can 3 / took the lid off the A / opened can 2 back up / can 3 open again / A's open again / A can lid's off
    lid's off B / B can open, same one as yesterday / back into can 3 / back in the A can
    going back into can 5 for pot 2 / reopened can 4 / re-opened the A from this morning / reopening B, can 7
    can 1 is off the shelf and open / popped the lid off can 2 / popped can 3 again
    popped B open again for the second pot / pried can 6 open again, lid was stuck / prised the lid off the old A
    cracked can 3 again / cracked the used B open once more / lid up on the A / lid is up, can 5
    lifted the lid on can 2 / lifted lid off A can at 9:40 / pulled the lid off can 4 / pulled the lid from B just now
    knocked the lid off can 8 / got the lid off can 3 finally, glued itself on / finally lid off, can 1 was a pig
    unscrewed the cap on B / unscrewed can 9 / cap off the B bottle / cap's off can 7 / top off the A
    took the top off can 3 / top's off the B tin / uncapped can 2 / uncapped the A we started monday / unlidded can 5
    unsealed the started A again / unclamped the ring on pail 2, lid off / ring off, lid off, can 10
    opened the half full A / opened the half used B, can 4 / opened yesterday's A again / opened the one we're on, can 3
    opened up can 6 to pour / opening can 3 for another pour / opening A again
    opening the B back up, need some for batch 3 / A lid off 10:15 / lid off B 13:05 / lid off can 2 five minutes ago
    can 2 lid off a minute ago / just took the lid off 3 / just lifted A's lid / lid came off can 1 at quarter past nine
    lid came off the A right now / lid of can 5 is off / lid of the A is on the bench
    lid on the bench, can 3 standing open / can 3 standing open at the scale / can 4 breathing, lid's off
    can 7 uncovered / A uncovered at the scale / clock's running on can 3, lid off / start the clock, A lid off
    start timer lid off can 2 / lid offf can 3 / ldi off can 5 / lid of can 2 off now / lids off A and B / both lids off
    both cans open, 3 and 4 / cans 3 and 4 opened again for pot 2 / A and B both popped open again
    can three lid is off / can number five, lid coming off / here we go, lid off the A
    ok pouring from can 3 again, lid off / hey bot I've got can 2 open / btw can 6 is open again
    fyi A can is open, pouring / heads up lid's off the 20 kg pail / pail's open again
    drum bung out, drum 1 in use again / bung out of the A drum / 🥫 3 open / 🔓 can 4
    taking the lid off can 8, the started one
  `,
  shut: `
    lid back on can 3 / lid on A / lid's on B / shut can 2 / shut the A / closed can 5 / closed up B
    closed the B can, done with it / can 4 closed / can 3 shut / can 7 shut tight / B's shut / B is closed up again
    A back under its lid / put the lid back on can 2 / put lid on B just now / popped the lid back on can 6
    snapped the lid on 3 / snapped B shut / tapped the lid down on can 5 / tapped it shut with the mallet, can 1
    hammered the lid back down, can 2 / knocked the lid home on can 4 / pressed the lid on B
    pushed the lid down tight, can 8 / clamped the lid on pail 2 / clamped the ring back on the B pail
    ring on, pail closed / screwed the cap back on B / screwed can 9 shut / cap back on the hardener / cap's on, can 7
    capped B / capped can 3 again / capped off the A / recapped can 4 / re-lidded can 5 / relidded B / lidded up can 2
    resealed can 6 / sealed B back up / sealed up can 3 at 9:55 / sealed the A can / top back on A
    top's back on the B tin / stuck the lid back on the A / slapped a lid on can 3 / whacked the lid back on B
    threw the lid on can 7 / chucked the lid back on, can 2 / got the lid on 4 / got B buttoned up / buttoned up can 5
    can 1 buttoned up and on the shelf / closing can 3 now / closing up the B / shutting can 6
    shutting the A can, done pouring / lid on can 4, 10:20 / can 2 lid on five minutes ago / both lids on
    lids back on A and B / both cans shut / cans 3 and 4 closed / closed 3 and 4, poured what I wanted
    lid going back on the B / lid went back on can 8 right after pouring / lid is on tight, can 5 / lid's down on the A
    lid down, can 3 / lid bck on can 2 / lid bakc on B / cna 3 closed / closed can three / can number six is closed
    just shut the hardener / hardener lid on / B closed, only the lid / can 3 shut dry, lid only
    lid on A, plain, out of gas today / just the lid on can 4, argon bottle's empty / put away can 2, lid on
    B back on the shelf, closed / B back in the cupboard with its lid on / ok lid's on B, happy days
    there, can 5 shut 👍 / 🔒 can 3 / finally got the lid seated on can 1 / btw B can is shut again
    wiped the rim and closed can 4 / cleaned the groove, lid back on the A / bung back in the B drum
    done with B, lid on
  `,
  blanket: `
    argon on can 3, lid on / gassed the A / gassed can 3 and shut it / gas on A, closed / argon over the A
    argon in, lid on, can 5 / A is under argon / A's under gas again / can 2 under nitrogen / can 3 blanketed
    blanketed A / blanket on can 4 / put a blanket on the A can / argon blanket on, lid down, can 1
    nitrogen blanket over what's left in 5 / gave the A a shot of argon / gave can 3 a squirt and closed it
    gave it a good puff of argon, can 2, lid's on / quick blast of argon into can 6 and lid on
    blast of nitrogen in the headspace, can 4 / ten seconds of argon in can 3 / 10 s argon, lid on, A
    twenty seconds of N2 then lid, can 7 / purged can 3 / purged the A and sealed it
    purged headspace with argon, can 5 closed / headspace purged, can 2
    headspace filled with nitrogen, lid clamped, pail 1 / flooded the A with argon
    flooded can 4, lid on straight after / flushed the can with argon and capped, can 8
    flushed can 3 headspace n2 lid on / topped can 2 with argon / topped the A off with gas
    topped up the argon on can 1 / inerted can 5 / inerted A, sealed / inert gas in can 3, shut
    inert gas over the rest of A / covered the A with argon / covered what's left in can 6 with nitrogen
    laid argon over the rest, can 4 / layer of argon on it and lid tight, can 3
    sprayed argon in can 2 and snapped the lid on / shot gas into A / squirted argon in, hammered the lid, can 5
    blew some argon in can 3 and lidded it / blew nitrogen over B too, lid on / hit can 7 with the argon
    hit it with gas and shut it, the A / hosed argon into can 2 / ran argon into can 3 for fifteen seconds, closed
    ran the nitrogen wand over A, lid on / wand in, gas in, lid on, can 4 / let argon flow in can 5 then closed it
    let the gas run a bit in A, lid's down now / trickled argon in, sealed can 1
    bled argon into the can, lid on, can 6 / fed nitrogen in pail 2 and clamped it / argoned can 3 / argoned the A lol
    nitrogened the B / Ar on 3 / N2 on can 5, closed / ar + lid can 2 / argon ✔ lid ✔ can 4
    gas, lid, shelf, can 3 done / A gassed at 9:50 / A gassed and put away / can 3 gassed up and back on the shelf
    can 2 argoned 5 minutes ago / gassed and capped, can 7 / gassed and lidded A / gassed up both cans
    both A and B under argon, lids on / A and B blanketed / cans 3 and 4 gassed, shut / put the A to bed with argon
    tucked can 3 in, argon and lid 😴 / A is asleep under nitrogen / A's got its blanket
    can 5 has gas on it, lid closed / there's argon over can 3 now and the lid's on
    rest of A is under argon, 1.8 kg left / leftover in can 2 blanketed with argon
    what's left of the A has nitrogen on top, closed / remaining A gassed, lid tight / poured, gassed, shut, can 3
    done pouring, argon on the A / done with can 4, gas in and lid on / finished pouring from A and gave it argon
    straight after the pour put argon in 3 / ok argon done on A / ok finally the argon's on can 3, new bottle hooked up
    hey bot can 6 has had its argon / btw gas is on A, saved it / saved the A, argon on, lid on
    pulled the lid, gassed it again, lid back, can 2 / re-gassed can 3 / regassed the A after the second pour
    fresh argon on can 5 / blanketing can 3 now / blanketing what's left of A with argon / gassing A right now
    putting argon over can 4, lid going on / argon going in can 2 / argonn on can 3 / agron on A lid on
    aragon over the A and the lid is on / nitrogne on can 5 / can three argon on lid on
    can number two, nitrogen over it, lid pressed down / 💨 A / 💨 argon can 3 lid on
    argon on the A, mallet on the lid, job done / dry gas over the A and shut / dry nitrogen into can 3, seal's tight
  `,
  prestir: `
    stirred can 3 / stirred the A in its can / stirred A up before pouring / gave can 3 a good stir
    gave the A a stir, two minutes / gave B a shake / shook the B / shook up can 4 / shook can 2 for a minute
    shaken B well / B shaken, ready to pour / A stirred, ready to pour / A stirred 3 min / can 3 stirred, five minutes
    can 5 stirred through / can 2 mixed in the can / mixed up the A in its own can / stirred the tin
    stirred the tin of A with the steel paddle / paddled can 3 / paddled the A around for two minutes
    worked the paddle in can 5 till the bottom came up / worked the settled stuff back in, can 3
    scraped the bottom of can 2 and stirred it in / scraped up the sediment in A, all even now
    pigment was down the bottom of can 4, stirred it up / settled can, stirred it back, A
    the A had settled, stirred till smooth / brought the solids back up in can 3
    got the sludge off the bottom of A, stirred in / lifted the pigment off the floor of the pail and blended it
    roused can 2 / agitated can 3 for two min / agitated the A / A agitated / blended the A in the can
    homogenised can 5 / homogenized A, 4 minutes / drill mixer in can 3 two minutes, done
    drill and paddle on the 20 kg pail for five minutes / used the drill on A before pouring
    ran the mixer in the pail five minutes / ran the paddle in can 4 for ninety seconds / spun up can 2 with the drill
    whisked can 3 / swirled the B bottle / swirled B about a bit, looks even
    rolled can 3 on the floor for five minutes / rolled the A on the roller, ten mins / can roller done, can 5
    put A on the can shaker for 3 minutes / paint shaker, can 2, two minutes / shaker's done with can 4
    tumbled the B can a while / turned the B over a dozen times / flipped can 7 upside down a few times, B well mixed
    tipped B end over end twenty times / rocked the B can back and forth / stick stirred can 3
    stirred A with a stick, half a minute / half a minute stir on the little A / 30 s stir can 6
    2 min stir in the can, A / five min stir, big pail of A, done / gave the big can its five minutes
    gave can 1 thirty seconds, small one / A got its three minutes / can 3 had its stir / can 3 has been stirred
    A has been stirred in the can at 9:30 / just stirred can 2 / just gave B a good shake / stirring can 3 in the tin
    stirring the A before the pour / stirring up can 5 right now / shaking B now / shaking up can 4 / prestirred A
    pre-stir done can 3 / pre stirred the A, 3 minutes / prestir can 2 ok / pre-mixed can 5 in its can
    in-can stir done, A / can stir done / stirred before pour: can 3 / before pouring stirred A two minutes
    before weighing I stirred can 4 right down to the bottom / right to the bottom, A stirred
    stirred down to the bottom, can 2, smooth / stirred up nice and even, can 3 / even colour now, A stirred
    A is one colour again, stirred it four minutes / streaks are gone, stirred can 5
    lumps at the bottom stirred out, can 3 / both cans stirred / A and B both stirred in their cans / stirred A, shook B
    cans 3 and 4 stirred and shaken / stired can 3 / stirrd the A 2min / shok B up / can three stirred two minutes
    stirred the A can for one and a half minutes / ok A's stirred, arm's dead 😂
    finally got the A smooth, was thick at the bottom, stirred 6 min / hey bot did the stir on can 3 like you said
    yep stirred can 2 / btw I stirred the A ten minutes ago / 🥄 can 3 / 🥄 A two min / gave the hardener a swirl
    hardener shaken / base stirred, 3 minutes / base tin paddled up from the bottom
    broke up the cake on the bottom of can 6 with the paddle
  `,
  used: `
    took 600 g out of can 3 / used 450 from can 2 / used 1.2 kg of the A / used up 300 g from B / 800 g gone from can 5
    drew 250 grams from can 4 / drew off a kilo from the A pail / poured 700 out of can 1
    poured two pounds from the B can / took half a kilo from can 6 / took 120 g of B for the coupon
    pulled 900 g from A / can 3 minus 604 / can 2, 350 g out / can 4 down by 500 / can 7 is 410 g lighter
    out of can 3 came 1203 g / out of the A: 655 / A use 820 g / usage can 5: 275 g / consumed 1.5 kg from pail 2
    dispensed 330 g from can 8 / removed 95 g from B can / tapped 2 kg off the drum / ladled out 480 from the pail
    went through 1100 g of can 3 today / ok just took six hundred out of can two / can 1 gave 740 g / usd 400 g can 3
    from the B I've had 560 grams, 10 minutes ago
  `,
  rags: `
    rags in the can / rags in the metal can, lid down / put the rags in the lidded can
    solvent rags binned in the steel can / acetone rags in the rag can / acetone wipes into the metal bin, lid shut
    wipes in the safety can / dirty wipes are in the lidded tin / used wipes in the can with the foot lid
    oily rags into the red can / dropped the rags in the rag bin / threw the rags in the closed metal can
    tossed the wipes in the rag can / chucked all the rags in the fire can / stuffed the rags in the metal can, lid's on
    got the rags in the can / all rags away in the lidded can / rags away / rags done, lid closed / rags are in
    rags put away at 16:20 / rag can: six rags, lid down / wet rags in the can / alcohol rags went in the steel bin
    IPA wipes in the can / ipa rags in the rag can ten minutes ago / cleaning cloths in the lidded can
    cloths put in the metal tin / solvent cloths away in the fireproof bin / cleared the rags off the bench into the can
    picked up the rags and put them in the can / collected every rag in the booth, all in the metal can
    gathered up the wipes, in the can, lid tight / rounded up the rags, safety can / swept the bench, rags in the can
    binned the rags, lid shut / binned the solvent wipes in the metal one / canned the rags / rags canned, lid on
    put paper towels with acetone in the metal can / paper wipes in the rag tin
    the soaked wipes from pot 2 are in the can / gun cleaning rags in the lidded can
    wipe down rags from the 7 in the can / towels and rags into the oily waste can / shop towels in the red can lid shut
    rag bucket emptied into the lidded can / lid's down on the rag can, all in / rags in tin 👍
    ok rags are in their can, going home / last rags in the can, night all / ragz in can / rgas in the metal can
    rags water wetted and in the lidded can / finally cleaned up, rags in metal, lid closed
    btw all the rags are in the can / hey bot wipes are in the steel can / everybody's rags are in the can now
    apprentice put the rags in the metal can / foot pedal can has the rags
  `,
};
