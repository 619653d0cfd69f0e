// How English speakers say it: asking. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking2: Sayings<SaidMeaning> = {
  asking: `
    emergency number / emergency number? / what's the number for an ambulance / who do we ring if there's a fire
    fire brigade number / number for poison control / poison control? / what's the poisons line / first aid number pls
    number of the first aider / phone number in an emergency / what do I dial / which number for emergencies
    is it 911 or 112 here / is it 999? / where do I call if someone passes out / who to call when somebody collapses
    who to call in an accident / what's the site emergency line / internal emergency extension? / extension for security
    gate security number / what's the doctor's number / nearest hospital? / hospital phone / spill hotline number
    who do I phone about a big spill / what's our emergency contact / emergency contacts / show me the emergency numbers
    list of emergency phones / what's the number on the wall / need the ambulance number for the new guy's card
    who's the first aider and what's the number / in case of fire who gets called / whom do we call if it gets in an eye
    what's the shop's own number for accidents / help line for chemicals? / just in case, what's the emergency number
    numbers to call / who may spray / who's allowed to spray / who can spray / who is cleared for spraying
    which of us can use the gun / who's signed off on the spray gun / who's qualified to spray / who's certified
    who's trained for spray / who has had the spray training / who has fit tested masks / who's been fit tested
    is Jo allowed to spray / can Ola spray or not / is the apprentice allowed on the gun / am I allowed to use the gun
    am I cleared to spray / may I spray yet or do I need the training first / does Kari have her spray ticket
    has Bea got the ticket / got a list of sprayers? / list of sprayers / who are our sprayers / our sprayers?
    approved sprayers / authorised sprayers pls / who's authorized to shoot / who can shoot the rails today
    which people are allowed in the booth / who's permitted in the spray room / whose spray permission is still valid
    whose ticket ran out / when does Jo's spray clearance run out / who could take over the gun
    who else can spray if I go home / supervisor asks who has permission to spray / anyone here licensed for spraying
    is the new guy good for spraying / whose mask fit is current / names of those who may spray / what do I wear
    what to wear / what do I have to wear for spraying / what gear do I need on / which gloves / what gloves for B
    do I need a mask for this / do I need a respirator / is a mask needed when brushing / goggles or face shield?
    are goggles needed / what PPE / ppe? / ppe for mixing / what's the ppe for the booth / what protection do I need
    what do I put on before I open A / what should I have on for flushing / what suit for the spray job
    do we need air fed hoods / supplied air or filter mask / what cartridge goes in the mask / is an apron enough
    can I do without gloves / can I brush without a mask / do I need long sleeves for this stuff
    what's the right kit for dipping / kit for weighing? / how do I dress for the booth
    what have I to wear when cleaning the gun / what does the sheet want me wearing / which filters for solvent
    nitrile or butyl / are latex gloves ok / apprentice asks what he must wear
    what are we supposed to have on for solvent / what was Jo wearing when he sprayed / did they wear masks for batch 2
    is hearing protection needed / safety gear for mixing pls / need breathing gear for the tank? / is the fan on
    fan on? / is the extraction running / is the blower going / is extraction on / is the air moving in there
    did someone turn the fan on / has anyone put the fan on / who's got the fan on / fan status / how's the fan
    state of the extraction / is the booth fan running or off / is it on, the fan / is that ventilation on
    ventilation? / is the exhaust on / exhaust running? / are we extracting / is the booth drawing
    since when has the fan been on / when did the fan go on / how long's the fan been running
    was the fan on when 7 was sprayed / was the extraction on this morning / is the oven fan on as well / is the fan off
    did the fan go off / has the fan been switched off / did Ola leave the fan on / can't hear it, is the fan going
    don't hear the blower, is it on / do we have the fan on for flushing / do we know if the fan's running
    got the fan? / are the fans going / any air pulling in the booth / is there draw on the booth
    tell me if the fan is on / need to know whether extraction is running / which parts are still bare
    what's still bare / what's left to coat / which ones need coating / which parts haven't been coated
    what have we not coated yet / which have no coat / what's uncoated / uncoated parts / parts to coat
    list the bare ones / what's waiting for a coat / what's waiting for paint / any left to do with the brush
    any bare steel left / which valves are not done / which brackets still need a coat / which rails are still to brush
    what still has to be sprayed / what's still to spray / what else goes in this pot / what else can I coat from pot 1
    what do I coat next / who's next for the brush, I mean which part / which part is next to coat
    what parts are ready for coating / what's prepped and waiting / what's blasted and bare / is anything still naked
    which ones are raw / is there anything left uncoated on job 88 / whats to paint today
    which impellers still want their first coat / anything without a coat / got half a pot left, what could I put it on
    how's it stand, which parts are bare / remaining parts to be coated? / leftover parts to coat
    what have I still to coat before the pot dies / name me the parts that need coat / tell me which are still bare
    what's on hold / on hold? / which parts are on hold / anything on hold / is 7 on hold / is the housing still held
    what have we got on hold / what's held / what's being held / what's held back
    who's holding up what, held parts I mean / which ones did QA hold / which parts are quarantined / quarantine list
    what's in quarantine / what's blocked / which parts are blocked / parts with a hold on / hold list / list holds
    holds pls / show the holds / open holds? / are there any holds / any part stopped / what's been put aside
    what did we set aside / which ones have a red tag / red tagged parts? / what's tagged / what's waiting on a decision
    which valves can't be released / what's parked / what did the inspector stop / how long has bracket 5 been held
    since when is 4 on hold / is there still a hold on impeller-3 / did the hold on 8 get lifted
    are the flanges off hold / supervisor's asking what's on hold / how many parts have we done / how many parts came in
    how many are coated / how many valves are in the oven / how many are still bare / how many impellers have we got
    how many brackets left / how many did we finish today / how many rails are released / number of parts in job 88
    number of parts cured? / count of parts / part count / parts count for today pls / count the plates for me
    how many pieces are on hold / how many pieces on the rack / how many went out this week / how many of them are dry
    how many in flash off / how many in the oven / how many batches today / how many pots have we mixed
    how many pots are alive / how many parts got rejected / how many are waiting / how many to go / how many more
    how many flanges do we have altogether / what's the total / total of parts this week / what's our count
    what's the tally / tally for the shift / how many housings is that now / how many of the 40 are through
    how many out of how many / customer wants to know how many are finished / lost count of the brackets, how many done
    how many did Jo coat / do you know how many tanks are booked in / how many coats has 7 got
    how many coats on impeller-3 / how many coats are on the housing / coats on 8? / number of coats on valve 2
    how many layers has it got / how many layers on the tank / how many passes did bracket 5 get
    how many times was 4 coated / how often have we coated the flange / is that one coat or two on 6
    one coat or two on the plates / has 9 had two coats / has the valve got its second coat / did 8 get a second one
    did 3 only get one coat / does 5 have a coat at all / is there a coat on 12 / was the housing coated once or twice
    which coat are we on with the tank / what coat number is this on 7 / second or third coat on the rails?
    how many coats does it need / how many coats to go on impeller 2 / how many coats are left for the bracket
    is another coat due on 4 / how many coats by the sheet / when was its last coat and how many is that
    layers so far on 11 / coat count, housing / lost track of how many coats that valve has
    can't tell if 8 has one or two coats on / customer asks how many coats are on his flange
    how many coats did Ola put on the impeller / how many coats did we give them / how thick a stack is it, two layers?
    so far how many coats / what's the coat count on job 88 / need the number of layers on 220
    just the one coat on that, or more? / which parts were coated from batch 1 / what was coated from pot 2
    what did we coat with the second pot / which parts got batch 3 / what's been done out of pot 1
    which ones came from that pot / which pieces are from the first mix / what went out of pot 4 onto what
    parts from batch 2? / parts out of pot 1 / list parts of batch 3 / everything from pot 2
    which valves were brushed from batch 1 / which did Jo do out of the second one / what's on from this batch
    what has pot 1 been used for / what was batch 4 used on / where did I use pot 3 / what all got painted with batch 2
    which parts share that mix / who else got from pot 1, parts I mean / which rails got that pot
    which brackets got the thick mix / did bracket 5 come out of pot 2 / was the housing done from batch 1 or 2
    was 7 from the bad pot / is impeller-3 from the first pot / how many parts did batch 1 do / what did that pot cover
    what did we get out of pot 2 / what did the last batch go onto / what parts did the morning mix do
    pot 1 was off ratio, what's coated with it / batch 3 gelled early, which parts had it
    show the parts for the second batch / need all parts that had pot 2 on them
    give me what was sprayed out of batch 5 / tell me which ones we dipped in pot 1 / parts done with the small pot?
    so which were batch 1 / what's the serial on 7 / serial of impeller-3 / serial number for valve 2?
    serial no. pls, the housing / customer wants the serial no. that goes with impeller 3 / what job is bracket-8
    which job does the tank belong to / job number of 5 / what's the job no on that flange / what metal is 7
    what's the flange made of / what is impeller-3 made from / is the housing steel or aluminium / is 4 cast iron
    is it stainless, valve 2 / what material is part 9 / material of the plates / what's the area of 8
    area of the rail? / how big is the tank / how many square metres has the housing / surface of bracket 5 in m2
    how thick is the wall of 6 / wall thickness on valve 2 / what's the wall / how many mm is the plate
    how heavy is the casting / what do we know about 12 / part info for 3 / details on bracket-2 / specs of the impeller
    what's the data on the housing / who's the customer for valve 7 / whose part is 4 / what alloy's that
    which number is stamped on 7 / stamp on the flange? / got the serial of that second housing?
    need serial and job for the label on 8 / don't have the serial of 5 to hand / tell me the sq ft of the tank
    which serial goes with rail 12 / how much heat can 7 take / how hot can impeller-3 go
    what's the max temp of the housing / max temperature of valve 2 / max for the bracket? / what heat does 5 bear
    how much heat does the flange stand / what can the plate stand / what's the limit on part 9
    temperature limit for 4 / heat limit? / can it take 90 / can the housing take ninety degrees
    can valve 2 take the oven / will 8 survive the oven / will the seal in that valve stand the cure
    does the tank stand 90 C / does 6 bear oven heat / is the oven too hot for bracket 5
    is 194 too much for the impeller / is impeller 3 good for ninety / is that part heat sensitive
    is there a heat limit on the rails / what's the hottest I can run 12 / how far can I heat the flange
    how high can I go on the housing / up to what temperature is 7 ok / what's it rated to
    what's the valve rated for, heat wise / heat rating of 10 / highest temp allowed on 3 / would 100 hurt the bracket
    does it warp at 90, the plate / what does the customer allow for heat on 220 / any max on impeller-2
    did they give us a max temp for the tank / got plastic in it, how hot can it get
    oven or room for this one, what can it bear / tell me how hot 4 may get / need the max heat of part 6
    when does can 3 expire / what's the expiry on A / expiry of the B? / expiry date can 2 / best before on that tin
    use by date of lot 88B / what's the shelf life of part A / shelf life? / how long is can 4 still good
    how long does the unopened A keep / how long does B keep / how long's the opened can good for
    until when can we use lot 17 / is can 3 out of date / is the B expired / has lot 310 expired
    did that A go out of date / is that can past its date / is the hardener still in date / still in date, can 5?
    is it still within shelf life / when's A run out, the date I mean / when do the cans go off / when is that lot over
    what date's on can 1 / what date is printed on the B / what does the label say for use by / which can expires first
    which lot's oldest / which tins are near their date / any out of date cans / anything expiring this month
    are all our cans in date / will the A be good next week / will lot 55 last till march
    customer audit, expiry dates please / don't know how long that can's good / no clue if the B is still in date
    tell me the expiry of can 6 / need the use-by of the A / what lot is can 3 / what's the lot of A
    lot number of can 2 / lot no? / lot no. of the B pls / which lot is open / which lot are we on
    what lot are we using / which lot is in pot 1 / what lot of B is batch 2 / what lot number is on that tin
    lot on the hardener? / lot for part A / the lot of that can / A's lot?
    what batch number has the maker put on can 4 / maker's batch number on the B / manufacturer lot of can 5
    what's the number on the label of can 1 / is can 3 from lot 17 / is that the same lot as last time
    are both cans one lot / same lot in A and B? / do can 2 and can 6 share a lot / did we change lots
    when did we change to the new lot / which lot did Ola open / what lot did Jo pour from
    what lot did we mix this morning / what lot's the sealed one / got the lot number for can 7?
    give me the lot of can 3 / give me both lots for pot 1 / read me the lot of the open A / tell me which lot this is
    need the lot for the label / need lot of B for the paper / auditor wants the lot of the A can
    can't read the lot on can 4, what did we book / forgot to write the lot down, which was it / what's the ratio
    mix ratio? / ratio of A to B / what ratio do we mix at / how much B for 1200 A / how much B to 800 g of A
    how much B goes with that / how much B do I need for 2 kilos of A / how much hardener for 600 grams
    how much hardener do I add / how much A if I've got 450 of B / how much A matches 1 lb of B / B for 1.2 kg A?
    for 1.5 kilo all in what do I put on the scale for B / for three kilos total, how much of each
    for 900 g altogether, what's A and what's B / split 2.4 kg into A and B for me / split for 800 grams
    I've 730 of A in the cup, what B / poured 1010 A, so B is what / got 512 g of A on the scale, how much B now
    is it one to one / is it 1:1 or 2:1 / is it half and half / is that by weight or volume / by weight or by volume?
    equal parts? / same amount of both or what / how many parts A to B / what proportion / proportions pls
    how do I portion A and B / parts by weight? / how far off may the ratio be / how exact has the ratio to be
    what tolerance on the ratio / what was the ratio on batch 2 / was pot 1 within ratio
    what does the sheet say for A:B / forgot the ratio, what was it again / can you do the ratio for 1.8 kilos
    tell me the B for 340 A / is there enough in the pot for 3 more / is it enough for the housing
    is that enough for two valves / enough for 7 and 8? / enough left for the flange / enough in pot 1?
    enough mix for the tank / have we got enough for the rails / have I enough left for impeller-3
    do I have enough for one more / do we have enough A for another batch / do we have enough B for 2 kilos
    will it do for the plates / will pot 2 do for bracket 5 / will that stretch to six brackets / will it stretch
    does pot 1 reach for 9 too / does it reach / does that go round for all four / does the rest cover valve 2
    does what's left do the second coat / is what's in there going to cover the housing / is 400 g enough for 3 parts
    is one kilo enough for the tank / is 2.4 too little for 8 rails / can I get two more out of this pot
    can we get another impeller out of batch 2 / could we squeeze one more from pot 3 / am I going to run short
    are we going to run out before the last rail / do we run short on the tank / how many more can I do with what's left
    how many more brackets does pot 1 give / how far does pot 2 go / how far will this get me
    got a third of a pot, will that do 4 / need to know if pot 1 covers the next two
    not sure there's enough for the big one / looks low, is that still enough for 5 / should I mix more or does it do
    what humidity may we coat at / what humidity does the sheet allow / max humidity?
    what's the highest RH we can work in / highest humidity allowed / lowest humidity for this stuff
    how humid can it be / how damp is too damp / how dry is too dry / what's the limit on humidity
    what's the minimum temp to coat / min air temp by the sheet / how cold can it be for coating / how cold is too cold
    how warm may the room be / how hot is too hot in the shop / what room temperature does the sheet want
    what temp range can we work in / what air does the sheet ask for / what air limits do we have / air limits?
    room limits by the sheet / what conditions do we need for coating / allowed conditions?
    what weather can we spray in / sheet's range for temperature and humidity / from what to what degrees can we apply
    between which temps / what's the window on air temp / climate limits pls / what does the maker say on humidity
    what does the paper say about the air / by the sheet, what's the RH range
    in general, what air is ok for this product / what humidity's the cut off / at what humidity do we have to stop
    above what humidity do we stop / below what temperature do we not coat
    it's a muggy place, what does the sheet allow / remind me of the room conditions on the sheet
    tell me the humidity limits / how should the steel be prepared / what prep does the sheet want / what prep for this
    what surface prep / surface prep by the sheet? / what grade do we blast to / what blast grade
    what profile do we need / profile required? / how rough should it be / what roughness does the sheet ask
    how clean has the surface got to be / how far above dew point must the steel be / how many degrees over dew point
    what spread do we need / min spread? / minimum distance from the dew point / how warm has the steel to be
    what surface temp does the sheet allow / max surface temp for coating / coldest steel we can coat
    can this go on rust by the sheet / does it go on over old paint / does the sheet allow bare aluminium
    what metals does it go on / does it need blasting / do we have to blast or is sanding ok
    do we degrease first, with what / what do I wipe the part with before coating / what has to be off the steel
    salt limit by the sheet / how much salt is allowed / how much dust is allowed
    how long can blasted steel stand by the sheet / what does the maker want under the coat
    what does the paper say about preparing / how do we prep stainless for this / sand or blast, what's it say
    remind me of the surface requirements / tell me the surface limits / so how long does a pot get stirred
    stir for how many minutes at eighteen degrees / mixing time, per the data sheet / whats the longest we may stir
    how long on the stirrer before we filter, generally / does the stir time go by the room temp
    how long do we stir by the sheet / how long to stir / how long to stir at 20 degrees / how long to mix this stuff
    stir time by the sheet / stirring time? / what stir time at 24C / what's the stir time when it's cold
    how many minutes stirring / how many minutes of mixing does it want / what does the sheet say on stirring
    what does the maker say on mixing / how long must it be blended / blending time? / induction time?
    is there an induction / how long's the induction / how fast do I stir / what rpm / rpm for the stirrer?
    what speed should the mixer run / how fast may the stirrer go / is it 90 or 120 minutes
    is two hours right for stirring / does it stir longer when cold / how much longer do we stir at 15 / least stir time
    minimum mixing time by the paper / usual stirring time for this product
    how long has a mix to turn before the filter / how do I stir it, covered or open
    how long do these things get stirred normally / remind me how long we stir / tell me the mix time for 75F
    apprentice wants to know how long we stir in general / what's the pot life of this stuff / pot life by the sheet
    pot life? / what pot life does the sheet give / how long is the pot life / how long is the pot life at 25
    how long does a mix last / how long does a pot last / how long does a pot live normally
    how long's this stuff good once mixed / how long does it stay usable after mixing / how many hours does a mix keep
    how many hours from mixing do we have / once A and B are together how long / after B goes in how long do you get
    what's the working time / working time? / work life by the paper / usable life of the mix / open time in the pot
    what does the maker give for pot life / what does the paper say for pot life / what's the pot life when it's hot
    what's the pot life at 86F / does heat shorten the pot life / is the pot life shorter in summer
    is pot life with or without stirring / does the stirring count in the pot life / is it four hours pot life or what
    is it 4 or 5 hours / from when does pot life count / pot life from the sheet pls / normal pot life
    the clear, how long does it last mixed / how soon does this product gel / when does a mix usually kick
    how quick does it go off normally / remind me of the pot life / tell me the sheet's pot life
    can't recall how long a mix keeps / what film do we aim for on these / what film thickness do we want
    what thickness by the sheet / film by the sheet? / film thickness? / what's the target film
    how thick do I put it on / how thick should it go on / how thick does it have to be / how thick is too thick
    how thin can it be / what wet film do we need / wet film for this? / what's the WFT / what dft does the sheet want
    dft target? / DFT range pls / how many microns / how many microns dry / how many mils dry / how many mils wet
    microns per coat? / thickness per coat / how heavy a coat / max film / max film per coat by the sheet
    minimum dry film / what should the comb read / what should the gauge show after cure
    what does the paper say on thickness / what does the maker want for thickness / is 25 microns right
    is 3 mils too much per the sheet / how much film per pass / what's the spread rate / coverage by the sheet
    how many m2 per kilo / how many square feet does a gallon do / remind me what thickness we're after
    tell me the film range / how long do we flash off by the sheet / flash off time? / flash-off by the sheet
    flash time / how long's the flash off / how long does this flash / how long should it flash off
    how long do parts flash off normally / how many minutes flash / how many minutes before the oven
    how long before it may go into the oven / how long must it air before curing
    how long does it have to stand before the oven / how long do I let it sit after brushing
    how long does a coat need to go off before heat / minimum flash / min flash off time / max flash off by the paper
    longest flash allowed / from how long to how long is flash / is it ten or fifteen minutes flash
    is 10 min flash right / is there a max on flash / what flash does the sheet want / what's the flash window
    what's the usual flash off / what does the maker say for flash off / what does the paper give for flashing
    does flash off get shorter when warm / flash at what temp / at which temperature do we flash
    flash off in the booth or outside / solvent off time? / how long till dry to touch by the sheet
    usual touch dry time / dry to touch time for this product / remind me of the flash-off / tell me the flash time
    forgot how long the flash is meant to be / don't know how long we flash these / can this be recoated
    can you recoat this stuff / can it be overcoated at all / is recoating allowed / recoat allowed? / recoat window?
    recoat time / recoat by the sheet / what's the recoat window / what's the recoat time
    what does the sheet say on recoating / what does the maker say about a second coat
    what does the paper say on overcoating / overcoat time? / overcoating window pls / how long between coats
    how long between coats by the sheet / how long do we wait for a second coat / how soon can you recoat
    how soon does a second coat go on / how late can you still recoat / until when can one recoat / latest recoat
    earliest recoat? / min and max recoat / minimum time between coats / maximum interval between coats
    interval between coats / does the sheet let us put two coats on / does it take a second coat
    does it need sanding between coats / do we scuff between coats / is it wet on wet / wet on wet ok?
    is it a one coat system / one coat only or can we do two / can you put it over cured film
    will it stick to itself after cure / how long have you got to touch up by the sheet / remind me if this recoats
    tell me the recoat times / what temp are we curing these at again / what temp do we cure at
    what temperature for the cure / what do I set the oven to / oven at what? / oven temp? / oven setting by the sheet
    what's the cure temp / what's the cure / what's the cure schedule / cure schedule? / cure by the sheet / cure time?
    cure time and temp pls / how long do we cure / how long do we bake these / how long in the oven normally
    how long at 90 / how long at ninety by the paper / how hot do we bake / how hot and how long
    at how many degrees and how long / how many hours at room temp / how long does it cure without oven
    room cure, how long / air cure time by the sheet / can it cure at room temperature / is it one hour at 90
    is it 194 for an hour / is 80 enough to cure it / what if I cure at 70, how long
    longer at lower heat? what's it say / what does the maker say for curing / what does the paper give for the oven
    when is it fully cured by the sheet / full cure takes how long / how long till full hardness / bake schedule
    stoving time? / does the hour count from the part's temp / remind me of the cure / tell me the oven temp and time
    forgot what we bake at / what do I flush with / what solvent do I clean with / what solvent
    which solvent for the gun / which solvent for brushes / which thinner for cleaning / what cleaner do we use
    what's the cleaning solvent / cleaning solvent by the sheet / flush solvent? / flush with what / clean up with what
    what to clean the gun with / what goes through the gun / what do I wash the brush in / what do I rinse the pot with
    what do I clean the roller with / what takes this stuff off / what gets it off the tools / acetone or IPA first
    is it acetone first / is acetone ok for the gun / is alcohol ok for cleaning up / can I flush with thinner
  `,
};
