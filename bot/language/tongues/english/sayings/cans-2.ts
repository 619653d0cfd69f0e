// How English speakers say it, in further words: open, received, lid, shut, blanket, prestir. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCans2: Sayings<SaidMeaning> = {
  open: `
    I have opened a new can of A, lot 2301, under argon / I have just opened a new tin of B, lot 415
    we opened a brand new A, lot 88, 5 kg / have opened a fresh drum of A, lot D7, nitrogen on
    has been opened new, B, lot 620, best before 11/26 / brand new tin, A, lot 3320, argon running
    brand new pail of hardener, lot H9, 10 kg / brand spanking new A, lot 77, 4 kilos
    new tin opened, base, lot 2310, 5 kg / new jerry can of B opened, lot 61, 10 litres
    new bottle of hardener, lot 4471, 1 l / new five litre base, lot 91, gas on
    new keg of A, lot K8, 25 kg, nitrogen / new pot of hardener opened, lot 19 / new kit opened, lot 2255, A and B
    opened up a new kit, A lot 31, B lot 32 / fresh kit, lot 118, both opened
    fresh tin off the pallet, A, lot 2311, argon in / fresh out of the box, B, lot 722, opened
    fresh drum A, lot D9, bung out, nitrogen on / fresh bottle B, lot 44, exp may 27
    started the next can, A, lot 2312 / started another A, lot 2313, 5 kg, argon / started a sealed B, lot 517
    starting on the last sealed A, lot 2314 / on to a new A, lot 2315 / on to the next tin of B, lot 518
    onto a fresh A now, lot 2316, five kilo / moved on to a new hardener, lot H10 / first time open: A, lot 2317, 5 kg
    opened for the first time, B, lot 519 / seal broken on A, lot 2318, 5kg / seal broken, hardener, lot 4
    seal cut, A, lot 2319, argon / broke the foil on B, lot 520 / ripped the foil seal off a new A, lot 2320
    tore the tab, new B lot 521 / tamper ring off a new A, lot 2321, under gas / snapped the tamper strip, B, lot 522
    pierced the membrane on a new A, lot 2322, nitrogen / cracked the seal of a new base, lot 2323
    cracked a sealed tin of B, lot 523, exp 2/27 / cracked a new 20 kilo pail, A, lot P12
    popped a sealed A, lot 2324, argon hissing / popped the seal on B lot 524 / popped a virgin A, lot 2325
    busted the seal on A, lot 2326 / prised open a brand new base, lot 2327, 2.5 kg
    pried a factory sealed B open, lot 525 / levered the lid off a new A, lot 2328, 5 kg
    got a new tin open, A, lot 2329 / got a new B open, lot 526 / got the new drum open, A, lot D11
    got a fresh one open: hardener, lot H12 / tapped a fresh drum, A, lot D12, 200 kg
    broached a new drum of B, lot D13 / unscrewed a new bottle, B, lot 527 / uncorked a new one 🍾 A lot 2330
    took a sealed can from the store and opened it, A, lot 2331 / had a new A out the locker, opened, lot 2332
    brought a new B up and opened it, lot 528 / A from the new delivery opened, lot 2333, argon
    B from the new box opened, lot 529 / last A empty, new one opened, lot 2334, 5 kg
    old hardener gone, opened another, lot H13 / because the old one ran out I opened a new A, lot 2335, argon on
    opened a new B since can 4 is done, lot 530 / opened another tin of base, lot 2336
    opened one more B, lot 531, 1 kg / opened a second A under nitrogen, lot 2337 / opened a kilo of B, lot 532
    opened a five kilo A, lot 2338 / opened a gallon of A, lot G4, argon / opened a quart of hardener, lot Q5
    opened a 20 litre base, lot 2339, N2 / opened 2.5 kg hardener, lot H14, exp 09/26
    opened A, batch number on label 2340, use by 03/27 / opened A with the argon lance in, lot 2341
    opened with gas at hand: A, lot 2342 / opened in the glove bag, A, lot 2343
    opened A no gas, all of it going in, lot 2344, 1 kg / label says A, lot 2345, 5 kg net, exp 6/27, just opened
    label: B lot 533 1 kg exp 8/26 opened / tin says lot 2346, base, opened now
    it's a new A, lot two three four seven, five kilos, argon yes / new can of bee lot five three four
    new can of eh, lot nineteen, five kilos / register opened can: A, lot 2348, 5 kg / note an opened tin, B, lot 535
    put on record new A open, lot 2349 / kindly record new tin of B opened, lot 536
    oga new A don open, lot 2350, argon dey / that's a new tin opened, A, lot 2351 / that's me intae a new A, lot 2352
    we've cracked a new tinny of A, lot 2353 😂 / y'all I busted open a new pail of A, lot P14, nitrogen's on
    opened a bloody stubborn new A, lot 2354, gas in / new A. lot 2355. 5kg. argon. / new B 537 / open new A lot 2356
    opn new can B lot 538 / opened new cna A lot 2357 / new tin A lt 2358
  `,
  received: `
    the cans have arrived / the tins have arrived, six A, six B / the coating has arrived, 4 kits
    our order has come, 8 tins / our order turned up, five A and five B / the order came, lot 2360, six cans
    order arrived, 10 tins / material has arrived, 40 kg of A / material came in, lot 2361
    new material on the shelf, 4 A lot 2362 / new stock arrived, eight B / new stock in the store, A x 6
    fresh stock, ten tins of A, lot 2363 / stock delivered, lot 540 / stock topped up, 4 B in
    stocked up, six A and six B on the shelf / store topped up with 5 A, lot 2364 / store's been filled, 12 tins
    shipment in, 4 pails A / shipment arrived, lot 2365 / shipment of hardener came, 6 l
    consignment of B received, 8 tins / lorry brought 10 A and 10 B / lorry's been, six tins of A off it
    truck's been, 4 pails / van delivered three A, lot 2366 / the van came with our cans, 5 and 5
    postman brought two B 😂 / parcel arrived, 2 tins of hardener / parcel with 4 B / courier dropped 6 tins
    carrier left 2 pails of A, lot 2367 / freight came, one drum of A, lot D20 / freight guy dropped a drum of B
    pallet of kits came in / half a pallet of A landed / crate of hardener delivered, 12 bottles
    box of six A delivered, all sealed / boxes of B came, 3 x 4 / case of B in, 12 x 1 l / supplier dropped off 8 cans
    supplier's here with 5 A / rep brought a sample can of A, lot S1 / maker shipped us 6 new A, lot 2368
    got the delivery, six cans A / got the new tins in, lot 2369 / got our cans / got a delivery of B, lot 541, 4 tins
    got 3 drums in, A, lot D21 / got ten sealed A in the rack, lot 2370 / took in six cans / taken in: 5 tins of base
    taking in 8 cans of A / received today: 6 A lot 2371 / received and sealed, 4 B lot 542
    have received six tins, thank you / we have received 10 kg of A, lot 2372
    I have received 3 A and 3 B from the driver / we received the hardener, lot H20, 5 l / received into store, 12 A
    receipt of 6 B, lot 543 / signed for a drum of A, lot D22 / signed in 4 pails / booked into stock, 8 B lot 544
    checked the delivery in, 4 + 4 / entered 6 new A, sealed, lot 2375 / log delivery: 4 A, lot 2376
    unpacked the delivery, 3 A 3 B / unpacked 12 bottles of hardener / unloaded 6 tins from the van
    offloaded a pallet of A / stacked ten new A in the store / put 6 new tins in the cabinet, lot 2377
    shelved the new cans, 4 A / racked up the new tins, all sealed / put the new delivery in the cold store
    delivery A 5 lot 2378 / arrived today: 3 B / dropped off at the dock, 6 A
    waiting at goods in: 8 tins, signed for / goods received, 4 A / goods arrived, base and hardener, 5 each
    cans don land, six A / the consignment is here, sir, 10 tins / that's the paint in, six tins
    that's the delivery, 4 an 4 / tins are in, mate, half a dozen A / six sealed A, lot 2381, came this morning
    four sealed tins of B, lot 545, now in the locker / here come the cans, 5 A 5 B
  `,
  lid: `
    the lid is off can 3 / I have taken the lid off can 2 / I have opened can 5 again / have lifted the lid off the A
    we opened can 1 again / has been opened again, can 4 / is open again, can 2 / is open again, the A
    A is open again, pouring now / B stands open, pouring / tin 2's lid off / lid off tin 5 / lid's off the tin
    lid's off the drum / lid off the pail, pouring A / drum lid off / pail lid off, can 6 / bottle cap off, B
    cap off the hardener bottle / cap's off the A / stopper out of the B / bung's out, drum 2 / plug out of the drum
    screw cap off can 7 / twisted the cap off B / unscrewed the hardener / unscrewed the lid, can 4
    levered the lid off can 3 again / levered can 2 open / prised the lid up on the A / prised tin 4 back open
    jimmied the lid off can 6 / forced the lid, can 1 / worked the lid off the A / got can 3 open again
    got the A open / got the lid off the old B / got the lid up, can 5 / eased the lid off can 2 / slid the lid off
    flipped the lid off can 7 / flicked the lid off the B / knocked lid off tin 3 / tapped the lid loose, can 4
    screwdriver under the lid and off, can 1 / popped it open again, can 2 / popped the A / popped the old B
    popped the tin again / pop, lid off can 5 / cracked the A open again / cracked tin 6 again
    broke open can 3 again for the next pot / opened the same A again / opened the same can as before
    same can open again, 3 / same tin again, lid off / opened the started can / opened the started B
    the part used A is open / part used can 4 opened / half full tin is open, A / opened the half tin of B
    opened yesterday's tin / opened the leftover A / opened monday's A, can 5 / opened the remaining B
    opened can 3 to take some more out / opened can 2 for pot 3 / opened the A for the second pot / opened A to weigh
    opened A and B for weighing / opened both to pour, 3 and 4 / opened both again / both open again
    both tins open, pouring / A and B lids off / A and B are open / lids are off 3 and 4 / both caps off
    took both lids off / A lid up / A's lid is up / A's lid's on the bench / B's lid lies on the bench
    lid's on the table, can 2 / lid lying next to can 3 / put the lid to one side, can 4 open / lid aside, can 1
    uncovered can 2 / uncovered the tin of A / unsealed can 4 again / unsealed the B again
    clamp off, lid off, pail 3 / ring clamp off the A drum / clips off pail 1, lid's up / reopened the tin
    re-opened B, tin 2 / reopen can 5 / reopening A / open tin 4 once more / can 2 opened once more
    can 6 open from 9:40 / can 3 open since ten past / A open as of now / B open as of 10:15 / can 5 now open
    tin 2 now open for pouring / lid came off can 3 just now / lid coming off the A / lid just off can 2
    just popped can 4 / just cracked A again / just reopened B / that's the lid aff can 3 / that's can 2 open again
    that's A open / lid's aff / I don open can 3 again / can 3 don open / back in can 3 for another 600
    back into the A for more / into can 5 again / dipping into can 2 again / going in can 3 again
    open again because I need 200 g more, can 3 / lid off again as we're short, A
    took lid off can 4 since the pour wasn't enough / lid off A now / lidd off can 2 / lid of A off / can 3 lid of
    can two opened again / can four lid off now please log / somebody left can 4 open, found it at 2
    found can 3 with its lid off / can 2 was standing open, just saw it / wind blew the lid off can 5
  `,
  shut: `
    I have closed can 2 / I have put the lid back on the B / have shut the hardener / we closed can 5
    has been closed, can 4 / is closed again, the B / is shut again, can 2 / has its lid back, can 6
    can 3 has its lid on / tin's closed up / drum's shut / drum closed, bung in / drum bung back in
    pail lid clamped down / bottle closed, B / bottle's capped / capped the bottle, hardener / capped it
    cap screwed on, can 4 / screw cap on tight / screwed the lid down, B / screwed it shut / twisted the cap back on
    twisted B shut / stopper in, hardener / stopper back in the B / corked it lol, can 5 / plug back in drum 1
    lid hammered on, can 2 / lid hammered home, B / lid knocked down, can 3 / lid tapped down all round, can 4
    lid pressed on, can 6 / lid pressed home, can 1 / lid's pressed down on the B / malleted the lid, can 2
    rubber mallet round the lid, can 5 shut / stamped the lid on, can 3 / thumped the lid on can 4 / banged the lid on
    bashed the lid back on the B / whacked can 2 shut / squeezed the lid on / eased the lid back on can 3
    dropped the lid on the B / popped can 6 shut / popped lid on, B / clicked the lid on, can 5
    clipped the lid down, pail 2 / clips on, pail's shut / clamp ring on, B pail / ring's on, drum 1
    bolted ring on the drum / locked the ring on, B drum / sealed it up again, can 7 / sealed tight, can 3
    taped the lid, can 5 / taped can 4 shut / tape round the lid of B / closed well, the B / closed off can 3
    closed it up, hardener / closed the tin of B / closed the used A without gas, can 3 / closed the lid of can 6
    closed them both / closed both tins / closed up both, 3 and 4 / both closed / both shut again, lids tapped
    both caps on / A and B closed / lids on both / lids on, all of them / all cans closed / all tins shut
    every lid's on / lids down on 3 and 4 / lids are on / shut them all / shut the base tin / shut can 1 properly
    shut tight, B / shut and on the shelf, can 2 / shut and put back, B / shut, back in the cabinet, can 4
    closed and stowed, B / closed and back in the locker / closed and stacked, can 7 / put away and closed, B
    put B away shut / put can 3 back shut / put the top back on can 2 / popped the top on, B / slapped the lid on B
    stuck the cap on the hardener / stuck a lid on tin 4 / lidded the B / lidded it / re-lidded tin 2 / recapped the B
    resealed B / resealed the tin, lid only / reclosed can 2 / reclosed the hardener / closed again at 10:20, can 3
    closed since 9:55, B / shut at ten to, can 4 / shut five minutes ago, B / shut just now, can 6
    just capped the hardener / just shut them / that's can 3 shut / that's the lid oan / that's B closed
    that's the tins shut / I don close can 3 / can 3 don close / the tin is closed, sir
    closed B because I am done pouring / shut it so no damp gets in, can 2 / lid on since nobody's pouring, can 4
    shut the A for a minute while I weigh / wiped the lip and shut can 3 / wiped the rim, lid on, B
    cleaned the thread and capped B / groove wiped, lid down, can 5 / found can 4 open and shut it
    can 3 was open, I shut it / saw B standing open, closed it / went back and shut can 2 / lid bakc on 3 / clsoed B
    cap back on bee / lid's home, can 5 / lid's seated, can 2 / lid's tight on the B / snug lid on can 3
    nice and tight, can 4 shut / tight as a drum, B
  `,
  blanket: `
    the A is under argon again / I have put argon on can 3 and closed it / I have blanketed the A / have gassed can 2
    we gassed the A and closed it / has argon on it, can 5 / has been blanketed, can 3 / has been gassed, A
    is blanketed, the A / is under gas, can 2 / argon in the pail, ring on / drum purged with nitrogen
    drum blanketed / nitrogen in the drum, bung in / pail gassed / pail under nitrogen / bottle gassed and capped, A
    A bottle flushed with argon / argon over tin 3, lid tapped / argon down the side of can 4, lid on
    argon to the brim, A / argon poured over the A, shut / argon layer on can 5 / argon cushion in can 3
    argon cap on the A, lid on / argon seal on can 2 / argon puffed in, can 6 / argon blown in, lid straight on
    argon for 15 seconds, can 3 / argon 20 s then lid / argon for a count of ten, A / argon then mallet, can 5
    argon first, lid after, can 2 / argon, lid, done / nitrogen in, lid down / nitrogen blown over, can 4
    nitrogen cover on the A / nitrogen 10 s, can 2 / nitrogen purge done, can 5 / nitrogen flowed in, lid on, tin 1
    N2 over the A and lid / n2 purge can 2 / n2 on the tin / Ar in can 4 / ar on A / ar over 3 / Ar 10 sec can 5
    inert blanket on can 3 / inerted the tin / inerted the headspace, can 4 / inerting done, A / headspace gassed
    headspace flushed, can 5 / headspace filled with argon, A / headspace under nitrogen, can 3
    headspace inert, lid on / filled the empty half with argon, can 2 / filled the space above with nitrogen, A
    filled can 4 with gas, shut / filled it up with argon / displaced the air with argon, can 3
    pushed the air out with argon, A / drove the air out, lid on, can 5 / chased the damp out with argon, can 2
    swept can 3 with nitrogen / swept the headspace / rinsed the headspace with argon, shut / purged it
    purged and shut, can 4 / purged and sealed tin 2 / purged for 15 s, A / purge done A
    flushed can 4 with gas, lid on / flushed with nitrogen and closed, A / flushed the A's headspace
    flooded the tin with argon / flooded A with nitrogen / flooded it and shut it, can 2 / dosed can 3 with argon
    dosed the A / charged the can with argon, can 5 / topped off the headspace, can 2 / topped the tin with gas
    topped up gas on the A / blanketed what's left / blanketed the rest of the A / blanket put on can 3
    blanket back on the A / blanket done, can 5 / blanket over A, 9:55 / gas blanket on tin 3 / gas's on the A
    gas over it, shut / gas on the leftover A / gas'd and lidded, A / gassed the pail / gassed the rest of A
    gassed up tin 3 / gassed off and shut, A / gassed and tapped down, can 2 / gassed, hammered, shelved
    gassed before closing, can 4 / gave it gas / gave it argon / gave the tin a squirt of argon / gave can 2 its gas
    gave the A its gas back / gave A ten seconds of gas / gave A a puff / gave can 5 a whiff of argon
    shot of argon in the A / shot argon in, lid on, can 3 / squirt of gas, lid, can 2 / spritz of argon in can 4
    spritzed argon in / blast of gas in the A / blasted argon in can 3 / hit the A with nitrogen
    hit tin 2 with gas and shut it / hosed the A with argon / stuck the argon hose in, lid on, can 3
    hose in, gas in, hose out, lid on / lance in can 2, lid on / wand in A, ten seconds / ran gas into can 3
    ran argon over the A / ran nitrogen in while closing, can 5 / let gas in, lid on / let argon into can 2
    poured argon on it, heavier than air, can 3 / laid gas over the A / laid nitrogen over can 2
    sat argon on top of the A / tucked up the A with argon / A tucked in for the night, argon
    A put to sleep under gas 😴 / leftover A is gassed / leftover in tin 3 under nitrogen / rest in can 4 blanketed
    rest is under gas / remaining 2 kg of A gassed / after the pour argon on can 3 / done pouring, gas on, lid on
    poured and gassed, can 2 / poured, then argon, then lid, A / re-gassed the A / regassed tin 2
    gassed it again, can 3 / second squirt of argon, can 4 / fresh gas on the A / renewed the gas, can 5
    topped gas again before going home, A / gassed everything for the weekend / both tins gassed
    all the A cans gassed / cans 2 and 3 under gas / that's the gas oan / that's the A gassed
    that's argon in an lid on / she's gassed / she's under argon / she's blanketed / I don put argon / argon don enter
    kindly note can 3 is under argon / please log argon on the A / argon on so it doesn't skin, can 2
    gassed because it's half empty, can 5 / put gas on as it stays overnight, A
    argon on since we won't pour again today / gas 3 / gas A / argn on 3 / argon on can too / our gone on can 3 lid on
    are gone over the A / gasd can 2
  `,
  prestir: `
    the A has been stirred in its can / I have stirred can 3 well / I have shaken the hardener
    have stirred the tin of A / we stirred the A for three minutes / stirred the base / stirred the base tin
    stirred the pail / stirred the drum, ten minutes / stirred the drum before pouring / stirred tin 2
    stirred tin 3 with a flat stick / stirred A with the steel rod / stirred A to the bottom / stirred A smooth
    stirred A until even / stirred the bottom up, can 4 / stirred the settlement in / stirred the pigment up
    stirred up tin 5 / stirred in the can for two minutes, A / stirred in its tin, A / stirred it in the can first
    stirred A first, then pour / stirred before I pour, can 3 / stirred can 2 before weighing / tin stirred
    tin's stirred / tin stirred two minutes / can's stirred / can's been stirred / base stirred / base is stirred
    A's stirred / A is stirred up / A got stirred / A was stirred three minutes / A well stirred
    A thoroughly stirred / drum stirred / pail stirred 5 min / shaken / shaken up / shook the tin / shook the bottle
    shook the bottle of B / shook the hardener, half a minute / shook can 5 / shook it well, B
    shook A like a cocktail, can 2 / shook A and stirred it / shaken not stirred lol, B / gave the tin a shake
    gave the bottle a good shake, B / gave the base a stir / gave the drum a stir / gave tin 3 a proper stir
    gave it a good old stir, can 3 / gave A a right good stir / gave A a whisk
    gave the pail five minutes with the drill / drill in the tin three minutes, A / drill stirred can 2
    drilled the base up, smooth / drill paddle through can 4 / ran the drill in A / ran a stick round can 3
    ran a spatula round the bottom of A / spatula through the A / paddle round the tin / paddled tin 2
    paddled up the base / paddled the bottom loose / boxed the A between two tins / poured A back and forth, even now
    upended the B a few times / inverted can 4, ten times / turned the tin upside down and back, B
    end over end, B, twenty / rolled the tin / rolled can 2 for five min / rolled the drum
    roller bench, can 3, ten minutes / on the can roller, A done / shaker two minutes, tin 3 / tin shaker done, A
    vibrated can 5 / can 3 shook on the machine / machine shaken, B / gyro shaker, can 2 / tumbler 5 min, A
    swirled the A / swirled can 3 / swirled the bottle, B / swished B around / agitated the tin / agitated can 4
    agitated the drum, 10 min / mixed the A in its can / mixed the tin / mixed the tin up
    mixed up the base in its tin / mixed up can 5 before use / premixed the A / premixed tin 2 / pre stirred tin 3
    prestirred base / prestir done / prestir can 3 done / pre-stir 2 min A / blended the base / blended tin 2
    homogenised the A / sediment's up, A / sediment stirred in, can 3 / settled stuff is up again
    bottom's loose again, A stirred / no more sludge, can 2 stirred / cake at the bottom broken up, A
    scraped the bottom and stirred, tin 4 / scraped the corners in, A / dug up the bottom of the tin
    colour's even, can 3 stirred / no streaks left in the A / one shade now, stirred / it's uniform now, A
    uniform, can 5 / lump free, A stirred / that's the A stirred / that's the tin stirred / that's the hardener shook
    I don stir the can / the tin has been stirred, sir / stirred the can because it had settled
    stirred A as it stood all winter / shook B since it had separated / stir can 3 done / stir A in can / stired A
    stird can 2 / shook B / shk B / stirred a can / steered the A can, two minutes / stirred eh for two minutes
  `,
};
