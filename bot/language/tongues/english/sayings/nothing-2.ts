// How English speakers say it, in further words: nothing. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfNothing2: Sayings<SaidMeaning> = {
  nothing: `
    was sent back to the customer / we sent it back to them / it went back to the supplier / returned to the customer unpainted
    31 outside today, we melt / minus 2 outside this morning / 18 degrees out in the yard / outside it's 25 in the shade
    warm outside, 27 degrees / it was 12 degrees out on the road / the forecast says 21 degrees / it's cold outside, 3 degrees
    the base is still tacky, leave it / casing hasn't been touched / nobody has coated base so far
    I have not mixed anything yet / I did not flush the gun yet / I've yet to coat the base
    we've yet to start the mix / we didn't get round to the gates / we did not finish the base
    not blasted, just looked at / not on hold either / not gelled so far, touch wood
    no cover on pot 1 yet and I'll do it later / no cross cut done / no air reading taken today
    none of the bits is wiped / neither brush is clean / neither tin is open / nobody gassed the A I think
    never got round to the filter / never coated that one / never sprayed a thing today / stirrer won't turn on
    the lid won't come off / cannot find can 3 / couldn't find the comb / gun won't flush, it's blocked, still trying
    filter hasn't arrived / oven isn't up to heat / the base won't fit / hygrometer battery's flat
    thermometer's gone missing / comb's gone walkabout / somebody's borrowed the dry film gauge
    gauge is at calibration / I will mix 2 kilos at three / I will open a new tin tomorrow
    I'll put the lid on when I'm back / I'll wipe the casing first thing tomorrow / I'll check the film on monday
    I'll do the cross cut later / I'll sand it tonight / I'm going to touch up base / I'm gonna roll the gates later
    I'm fixing to mix a gallon / fixing to flush the gun here shortly / fixin to put em in the oven
    on the point of mixing / getting round to the flush soon / going to get the tin from the store
    off to blast the hub / planning a 2 kilo mix / plan: wipe, coat, flash, oven / the plan is castings first
    intending to dip the bits / would like to coat base today / wanted to filter but no discs
    should be gassed I hope / should be around 50 microns / need more hardener / must not forget the gas
    next job's the gates / then base goes in / after this I'll flush the gun / after the break I mix
    when the bell rings I stop the stirrer / when it's cool I'll take the film / when Ola's back we spray
    when B comes we mix / once the fan's fixed / once it reaches 90 / once I'm done here I'll gas it
    soon as the gun's clean I go home / if it's over 60 percent we stop / if it hits 90 shout
    if there are runs hold it / if we'd mixed less / if only I'd gassed it / unless the fan's on nobody sprays
    until it's dry don't touch / until then no coat / in case it gels / before you coat wipe it
    don't forget to flush / don't let it gel / do not filter yet / never pour without stirring
    always wipe before coating / always flush at once / remind me to take base out / remind me to gas can 3 at five
    tell Jo the fan's to go on / tell him to stop the stirrer / tell them to take the castings out
    ask Ola to wipe base / ask him whether it's dry / get me 900 g of A would you / get base in the oven lads
    get the rags in the can, who left them there / turn the stirrer off Lia please / cover that pot please Ola
    flush my gun for me will you / wash your brushes lads / clean your own brush / wipe that base again please
    take the castings out at noon please Jo / mix me one Ola / someone ought to close that can
    Lia, can you wipe the casing / Kari please release base / Bea wants base released / boss wants it sprayed
    customer wants it coated twice / customer wants his base / customer asked for 25 microns
    the sheet says stir for 100 minutes / sheet says flush with acetone / the drawing says blast to 2.5
    manual says gas the A / sign says masks on / the notice says fan on / label says shake well
    label says keep closed / instructions say dip once / the rule is lid on / training says read it first
    maybe Lia filtered it / maybe the lid's off / perhaps it wants another coat / possibly the wrong tin
    probably gassed, ask Jo / most likely out / I thought you gassed it / I guess they're out
    I believe the can's shut / I reckon pot 2's had it / I assume it's stirred / I assume the castings are in
    I hear base is out / Lia says it's about dry / Jo says he thinks he flushed it / Ola told me it might be gassed
    word is it's released / apparently it's been coated / allegedly dry lol / sounds like the stirrer's on
    smells like it's cured / smells like thinner in here / feels dry-ish / kind of thick / more or less dry
    nearly thick enough to worry / half coated, stopped for lunch / not sure about the ratio / not sure I shut it
    no idea what that reads / can't tell if it's thick / who cares / hope it doesn't gel / hoping it's out by four
    wish it'd dry / wish the fan was quieter / wish we had a bigger oven / would be good to have it coated by noon
    would've been filtered by now / would have flushed it but no acetone / was going to filter, bell rang
    was thinking of mixing more / started to think it'd never dry / tried the oven, cold / trying to filter, it's slow
    waiting for base to cool / still stirring, 40 minutes left / yesterday I flushed the gun twice
    yesterday base was tacky all day / last night the fan was left on / last shift left a lid off
    last time it gelled at two hours / last time the A skinned over / last time we sprayed it ran
    last winter the steel was at 5 / last year we had an oven fire / last job was all bronze
    the other week the stirrer died / on tuesday the tins come / on thursday we had 70 percent
    next shift can coat it / next month new oven / at my old place we gassed with nitrogen / back home we stir by hand
    when I was young we brushed everything / in my day we mixed in a bucket / my uncle sprayed cars
    my brother dips fence posts / normally we flush first / usually I coat from the left / usually the fan's on by now
    sometimes it gels early / often thick on mondays / every morning same air
    every time I open a can the phone rings / we always stir A / they never shut the door
    nobody ever gasses that can / generally 50 wet is right / in general it dries fast / as a rule we gas it
    rule of thumb 10 minutes dry / for next time: gas it sooner / for next time, mix less
    lesson learned, cover the pot / note to self: buy brushes / note to self, gas / reminder: audit friday
    fyi the audit is at ten / fyi truck comes at three / bay 2 coated theirs / bay 2's pot gelled
    the other crew opened six cans / the other crew's oven is down / next door are spraying cars
    next door's fan is loud / neighbour's painting his fence / the day shift flushed their gun I think
    the other shop has it at 30 degrees / their castings aren't ours / that's not our base / that can's not ours
    somebody else's brush / wrong shop mate / painting my shed on sunday / painted my nails / painted the town red
    painted into a corner / paint me a picture / paint job on my car cost a bomb / left my coat in the van
    need a winter coat / hang your coat up / coat of arms / sugar coat it / brush with the law
    brushed up on my spanish / rolling in money / rolled out of bed / rock and roll / sausage roll please / double dip
    took a dip in the sea / sprayed by a skunk / spray tan / spray the weeds / dry wit / dry spell / dry wine please
    high and dry / hung out to dry / dry your eyes / dry season / cottonmouth, so dry / oven gloves are torn
    it's an oven outside / oven ready meal / my car's like an oven / out the back having a smoke
    he's out of hospital / she's out till friday / sold out / freaked out / figure it out / hang out later
    two out in the ninth / stirred up a hornet's nest / stir fry for tea / shaken by the news
    shook hands with the boss / shook me up that / mix up at payroll / mixed grill / in the mix for promotion
    mixed race horse meeting / weighed down with work / weighed anchor / worth its weight / weight off my mind
    pull your weight / gained weight / heavy weight boxing / light weight, two pints / fat chance / full scale row
    on a scale of one to ten, six / no filter that lad / filters through eventually / oil filter on the van
    news is filtering through / thick as thieves / thick as two planks / lay it on thick / through thick and thin
    thick fog / thick accent / thick cut chips / slim pickings / jelly and ice cream / jelly legs / jelly babies
    gel pen / the team has gelled / gelled well with the new lad / solid bloke / solid advice / solid effort
    rock solid defence / rock hard abs lol / gone hard on the beers / gone off milk / alarm went off in my house
    kicked off last night / kicked the bucket, grandad's dog / set fire to rain / set in his ways / set menu / jet set
    empty stomach / emptied my wallet / empty vessels make most noise / empty the bins at home / dustbin day
    bin day tomorrow / waste of space / haste makes waste / waist 34 / dumped by his girlfriend / dump truck outside
    tossed and turned / toss a coin / chucked it down all night / chuck us my keys / covered in mud
    cover band tonight / covering letter / under cover cop / duvet cover / insurance cover / cover your ears
    uncovered a scandal / caught the bus / caught a fish this big / catch you later / catch my drift / caught napping
    drained after that shift / brain drain / tray of beers / tray bakes in the canteen / drip of a man
    drip drip from the roof / tap's dripping / running a marathon / running on fumes / run out of milk
    ran a red light / ran into your mum / long run / runs in the family / runs on the board / got the runs, off home
    sagging sofa / sag in the roof / bubble and squeak / burst his bubble / blister on my heel / blistering pace
    blisters from new boots / crater of a pothole / pinhole camera / fish eye lens / fish and chips / orange juice
    orange peel in the bin / peel the spuds / hold your horses / hold on a sec / on hold with the bank / hold tight
    hold up on the motorway / hold that thought / get hold of Bea / got hold of him / left holding the bag
    hold the line please / released a new album / released from jail / release the kraken / released on bail
    new release at the cinema / clear sky tonight / clear as mud / crystal clear / coast is clear
    all clear from the doctor / pass the salt / passed out on the sofa / approve my holiday / sign here for the parcel
    sign language / ship has sailed / ship shape / friend ship / shipped off to grandma / jumped ship / open mic night
    opened up to her / open wound, has a plaster / opening batsman / pub's open / shop's open till six
    shut that window / close shave / close call on the road / close to the edge / sealed the deal / seal pup video
    seal of approval / lips are sealed / cap fits / capped at ten / salary cap / flip your lid / skid lid for the bike
    can of beans / can of worms / tin of biscuits / tin whistle / tuna tin / pot hole / melting pot / flower pot
    pot roast / pots and pans / bucket list / bucket of chicken / bucket and spade / jug of sangria / cup of tea
    cup winners / world cup / egg cup / coffee cup's mine / batch of scones / class batch of 98 / batch file
    part exchange / parting gift / spare parts for the washer / bits and bobs / bit my tongue / bits of news
    base camp / base ball / base rate up again / military base / bass guitar / cast a vote / cast on my arm
    fly casting / housing benefit / housing estate / gate crash / hub cap nicked / frame of mind / snooker frame
    picture frame / rack of ribs / rack and ruin / luggage rack / off the rack suit / trolley dash / off his trolley
    son of a gun / staple gun / gun shy / ceiling fan at home / fan belt on the van / fans went mad
    the fans were singing / vent my anger / toll booth / voting booth / exhaust on my car's gone
    exhaust pipe fell off / extractor in my kitchen / leaf blower at home / blew it / gas station / gas man's coming
    gas guzzler / step on the gas / natural gas prices / argon, sounds like a boyband / nitrogen in my tyres
    inert as my boss / under a blanket on the sofa / electric blanket / security blanket / blanket ban
    picnic blanket / flush with cash / flushed cheeks / royal flush / washed out the game / dish washer / clean slate
    clean bill of health / clean shirt / spring clean / clean up in aisle three / cleaner's off sick
    rinse and repeat / rinsed at poker / rinse your mouth / grease monkey / grease is the word
    greasy spoon breakfast / elbow grease / sand witch lol / sanded my floor at home / scuffed my shoes / keyed my car
    key to the toilet / blast from the past / full blast radio / sand blaster for sale / wipe your nose
    wipe your feet / wiped the floor with them / wind screen wiper / surface of the moon / surface mail
    scratch the surface / resurfaced road / nerves of steel / steel toe boots / air fare / air con's broken in the car
    air fryer / fresh air, going out / air your views / airing cupboard / air rifle / air miles / airport run
    muggy night / 50 percent off at the outlet / 20 percent tip / 90 minutes plus stoppage / 50 quid / 6 pack
    7 wonders / cloud 9 / route 66 / fever 38.5 / body temp / heat of the moment / heat or ice / in hot water
    hot gossip / hot desk / hot stuff / probe into payroll / metal detector / put the pedal to the metal
    metal work at school / film tonight at the cinema / horror film / gauge his mood / gauge the reaction / fuel gauge
    thickness of his skull / dry gin / micro wave / mike ron / comb my hair / fine tooth comb / wet my pants laughing
    soaking wet / wetting the baby's head / the dog's wet / adhesive tape / sticky wicket / duct tape / tape measure
    sell tape / tape deck / cross bar / hot cross bun / escape hatch / brick wall / brief encounter / briefs or boxers
    de-brief / understood nothing of that / read my lips / read the room / reading festival / copy cat / photo copy
    jolly roger / session at the gym / jam session / session in the pub / mask up, it's halloween / face mask
    hood robin / little red riding hood / under the hood / helmet hair / supply teacher / supply chain
    received with thanks / received pronunciation / received a parking ticket / receiver's off the hook
    delivered a speech / special delivery / delivery man's gorgeous / parcel for my wife / order of merit
    law and order / live stock / taking stock / used to be better / used cups in the sink / took the mick / took a nap
    took a punt / took ages / pour me a pint / poured my heart out / drew nil nil / draw the curtains / rags to riches
    rag and bone / glad rags / lost my rag / rag top car / fair enough / could be worse / living the dream
    one of those days / no comment / just thinking out loud / talking to myself / sorry wrong chat / wrong group
    this was meant for Ola / ignore me, testing the phone / is this thing on lol / butt dial / phone on charge
    my screen's cracked / signal's bad in the booth / no wifi in the store / printer's jammed / printer's out of ink
    coffee machine's broken / toilet's out of order / lights flickering / forklift's charging / crane's booked
    compressor man comes at two / inspector's in the office / visitors in reception / driver's asleep in his cab
    truck's blocking the gate / canteen has curry today / bacon rolls at ten / who took my mug
    whose sandwich is this / biscuits are gone / barbecue saturday / five a side tonight / match is on at eight
    lost on penalties / ref was blind / great goal / hat trick / offside, never / we got hammered 4 nil / racing tips
    lotto numbers 7 8 12 / rain stopped play / snow forecast / black ice, mind / coat the casing when it's dry
    roll the gate when it has dried / put the hub in when it's dry / brush 4 when 3 is dry / spray 8 once it's dry
    coat 5 after lunch when it's dry / paint the cover when it's cool / dip the bits when they're dry
    coat it again when it's dry / when it's dry coat it / flush it when you're done / nice work on the gates today
    nice job on the castings lads / lovely work on the covers / nice work on that hub yesterday
    good work on the gates today / great work on the rails today everyone / nice work today / nice work all
    cracking job on the casing / well done on the gates today / tidy work on the brackets / the probe on 4 is broken
    the thermocouple is broken / the thermocouple's bust again, isn't it / the hygrometer's broken, isn't it
    the wire on 5 is broken / the gauge on 2 is bust / the door on the oven is broken, innit
    the wheel on the cart is broken, isn't it / the probe's knackered, isn't it / the sensor on 6 is faulty
    that clamp on 3 is broken / it is 31 degrees at home / it is 12 degrees in town / radio said it is 28 degrees
    it is minus 3 degrees up north / it was 35 degrees on the beach / it is 20 degrees in my kitchen
    we've argon for B if it's wanted / there's argon for the cans in the cage / I have nitrogen for the A
    we have gas for both cans in the store / I've gas for the B as well / got argon for the B can in the rack
    I have argon here for A and B / we got nitrogen for the cans, no fear / have argon for part B
    it is 19 degrees on my phone / 40 degrees in the desert / it is so many degrees in spain
  `,
};
