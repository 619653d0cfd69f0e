// How English speakers ask: day, next-ring, watch, in-charge and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking2: Sayings<AskedMeaning> = {
  day: `
    how did the day go / how was today / today's summary / summary of the day / day so far? / sum up the day
    give me the day / what did we get done today / what did we do today / what have we achieved
    how many parts did we get through today and how / how's the day going / the day in one line / daily report
    daily summary pls / end of day report / the day's numbers / wrap up of today / what happened today
    whats been happening / recap / quick recap of the shift so far / recap for the boss / supervisor wants the day
    boss asks how it went / what's the score today / how did we do / how'd we do today / how did yesterday go
    yesterday's summary / how was monday / what did we do on friday / what did the morning look like / overview of today
    run me through today / walk me through the day / let me have today at a glance / digest / send the digest
    today in short / tell me about today / what's the day been like / how are we doing today / the day's record please
    what got done while I was away today / what all did we do today / what was mixed and used today / figures for today
    was it a good day / productive day? / bring me up to speed on today / today?
  `,
  'next-ring': `
    when's the next bell / what rings next / next bell? / which bell is coming / when do you ring again
    when will you ring / when does it go off, the alarm I mean / what's the next alarm / next alarm pls
    what's going to ring first / which clock runs out first / when do I hear from you again
    will you ring for pot 2 and when / when's the bell for 7 set / is a bell set for the housing / bells coming up?
    upcoming bells / list the bells / which bells are set / what bells are still to come / how long till the next ring
    time of the next bell / what's the next beep for / when's the timer going / what timers are running / next timer
    what reminders have I got / any reminder coming / which one beeps next / when should I listen out
    how long can I stay away before something rings / can I go for ten minutes or is something about to ring
    will anything ring over lunch / does anything ring before twelve / is there a bell before I knock off
    what goes ding next lol / did I set an alarm for bracket 5 / what do you ring me for next
    tell me when it rings next / first thing to ring? / next buzzer / whats the next wake up call
  `,
  watch: `
    who's standing outside the booth / who is the watch / who's on watch / who's keeping watch today
    who watches the booth / who stands outside / who's outside while I spray / who is my attendant
    have I got a spotter / who's spotting / who's minding the door / who's the lookout / who's at the booth door
    is someone outside the booth / is anybody watching out there / anyone standing by outside? / who stands by
    standby person? / name of the standby / who's looking after the sprayer / who's got eyes on Jo
    who keeps an eye on us in there / who's guarding the booth / who do I wave to if something's wrong in there
    outside man today? / who's our outside man / who is the hole watch / who's my buddy outside
    buddy for the spray session? / which one of you is staying out / who stays outside then
    who's posted at the curtain / who's covering me while I'm in the booth / is Ola still on the door
    tell me who's watching / need to know who's out front / did anyone take over the watch
    who took over the door from Kari / without a watcher we can't start, who is it / who'd we put on watch for the rails
  `,
  'in-charge': `
    who's in charge / who is the lead today / who's boss today / who's running the shift / who runs this crew
    who leads / who's leading / who do I ask / who do I report to / who's the supervisor / who's supervising
    who's the gaffer / who's foreman / who calls the shots / who has the say here / who's responsible for the shift
    whos top dog today / who's got charge of bay 2 / who's heading up the night shift / who do I go to about a reject
    who can countersign / who could sign this off / who has to sign / is Kari the lead or Jo
    is Bea in charge while Ola is off / name of the shift lead / shift lead? / our lead is who now
    which person is responsible / who's the responsible person / who's the charge hand / who took over from Kari as lead
    who should the visitor ask for / new here, who's my boss / who's allowed to release parts
    who is in command if something happens / the inspector wants whoever's in charge
    need to speak to the lead, who's that / tell me who's in charge / who's who in the crew
  `,
  emergency: `
    what number do I call / emergency number / emergency number? / what's the number for an ambulance
    who do we ring if there's a fire / fire brigade number / number for poison control / poison control?
    what's the poisons line / first aid number pls / number of the first aider / phone number in an emergency
    what do I dial / which number for emergencies / is it 911 or 112 here / is it 999?
    where do I call if someone passes out / who to call when somebody collapses / who to call in an accident
    what's the site emergency line / internal emergency extension? / extension for security / gate security number
    what's the doctor's number / nearest hospital? / hospital phone / spill hotline number
    who do I phone about a big spill / what's our emergency contact / emergency contacts / show me the emergency numbers
    list of emergency phones / what's the number on the wall / need the ambulance number for the new guy's card
    who's the first aider and what's the number / in case of fire who gets called / whom do we call if it gets in an eye
    what's the shop's own number for accidents / help line for chemicals? / just in case, what's the emergency number
    numbers to call
  `,
  'may-spray': `
    who may spray / who's allowed to spray / who can spray / who is cleared for spraying / which of us can use the gun
    who's signed off on the spray gun / who's qualified to spray / who's certified / who's trained for spray
    who has had the spray training / who has fit tested masks / who's been fit tested / is Jo allowed to spray
    can Ola spray or not / is the apprentice allowed on the gun / am I allowed to use the gun / am I cleared to spray
    may I spray yet or do I need the training first / does Kari have her spray ticket / has Bea got the ticket
    got a list of sprayers? / list of sprayers / who are our sprayers / our sprayers? / approved sprayers
    authorised sprayers pls / who's authorized to shoot / who can shoot the rails today
    which people are allowed in the booth / who's permitted in the spray room / whose spray permission is still valid
    whose ticket ran out / when does Jo's spray clearance run out / who could take over the gun
    who else can spray if I go home / supervisor asks who has permission to spray / anyone here licensed for spraying
    is the new guy good for spraying / whose mask fit is current / names of those who may spray
  `,
  worn: `
    what do I wear / what to wear / what do I have to wear for spraying / what gear do I need on / which gloves
    what gloves for B / do I need a mask for this / do I need a respirator / is a mask needed when brushing
    goggles or face shield? / are goggles needed / what PPE / ppe? / ppe for mixing / what's the ppe for the booth
    what protection do I need / what do I put on before I open A / what should I have on for flushing
    what suit for the spray job / do we need air fed hoods / supplied air or filter mask
    what cartridge goes in the mask / is an apron enough / can I do without gloves / can I brush without a mask
    do I need long sleeves for this stuff / what's the right kit for dipping / kit for weighing?
    how do I dress for the booth / what have I to wear when cleaning the gun / what does the sheet want me wearing
    which filters for solvent / nitrile or butyl / are latex gloves ok / apprentice asks what he must wear
    what are we supposed to have on for solvent / what was Jo wearing when he sprayed / did they wear masks for batch 2
    is hearing protection needed / safety gear for mixing pls / need breathing gear for the tank?
  `,
  fan: `
    is the fan on / fan on? / is the extraction running / is the blower going / is extraction on
    is the air moving in there / did someone turn the fan on / has anyone put the fan on / who's got the fan on
    fan status / how's the fan / state of the extraction / is the booth fan running or off / is it on, the fan
    is that ventilation on / ventilation? / is the exhaust on / exhaust running? / are we extracting
    is the booth drawing / since when has the fan been on / when did the fan go on / how long's the fan been running
    was the fan on when 7 was sprayed / was the extraction on this morning / is the oven fan on as well / is the fan off
    did the fan go off / has the fan been switched off / did Ola leave the fan on / can't hear it, is the fan going
    don't hear the blower, is it on / do we have the fan on for flushing / do we know if the fan's running
    got the fan? / are the fans going / any air pulling in the booth / is there draw on the booth
    tell me if the fan is on / need to know whether extraction is running
  `,
  'to-coat': `
    which parts are still bare / what's still bare / what's left to coat / which ones need coating
    which parts haven't been coated / what have we not coated yet / which have no coat / what's uncoated
    uncoated parts / parts to coat / list the bare ones / what's waiting for a coat / what's waiting for paint
    any left to do with the brush / any bare steel left / which valves are not done / which brackets still need a coat
    which rails are still to brush / what still has to be sprayed / what's still to spray / what else goes in this pot
    what else can I coat from pot 1 / what do I coat next / who's next for the brush, I mean which part
    which part is next to coat / what parts are ready for coating / what's prepped and waiting / what's blasted and bare
    is anything still naked / which ones are raw / is there anything left uncoated on job 88 / whats to paint today
    which impellers still want their first coat / anything without a coat / got half a pot left, what could I put it on
    how's it stand, which parts are bare / remaining parts to be coated? / leftover parts to coat
    what have I still to coat before the pot dies / name me the parts that need coat / tell me which are still bare
  `,
  'on-hold': `
    what's on hold / on hold? / which parts are on hold / anything on hold / is 7 on hold / is the housing still held
    what have we got on hold / what's held / what's being held / what's held back
    who's holding up what, held parts I mean / which ones did QA hold / which parts are quarantined / quarantine list
    what's in quarantine / what's blocked / which parts are blocked / parts with a hold on / hold list / list holds
    holds pls / show the holds / open holds? / are there any holds / any part stopped / what's been put aside
    what did we set aside / which ones have a red tag / red tagged parts? / what's tagged / what's waiting on a decision
    which valves can't be released / what's parked / what did the inspector stop / how long has bracket 5 been held
    since when is 4 on hold / is there still a hold on impeller-3 / did the hold on 8 get lifted
    are the flanges off hold / supervisor's asking what's on hold
  `,
  counted: `
    how many parts have we done / how many parts came in / how many are coated / how many valves are in the oven
    how many are still bare / how many impellers have we got / how many brackets left / how many did we finish today
    how many rails are released / number of parts in job 88 / number of parts cured? / count of parts / part count
    parts count for today pls / count the plates for me / how many pieces are on hold / how many pieces on the rack
    how many went out this week / how many of them are dry / how many in flash off / how many in the oven
    how many batches today / how many pots have we mixed / how many pots are alive / how many parts got rejected
    how many are waiting / how many to go / how many more / how many flanges do we have altogether / what's the total
    total of parts this week / what's our count / what's the tally / tally for the shift / how many housings is that now
    how many of the 40 are through / how many out of how many / customer wants to know how many are finished
    lost count of the brackets, how many done / how many did Jo coat / do you know how many tanks are booked in
  `,
  coats: `
    how many coats has 7 got / how many coats on impeller-3 / how many coats are on the housing / coats on 8?
    number of coats on valve 2 / how many layers has it got / how many layers on the tank
    how many passes did bracket 5 get / how many times was 4 coated / how often have we coated the flange
    is that one coat or two on 6 / one coat or two on the plates / has 9 had two coats
    has the valve got its second coat / did 8 get a second one / did 3 only get one coat / does 5 have a coat at all
    is there a coat on 12 / was the housing coated once or twice / which coat are we on with the tank
    what coat number is this on 7 / second or third coat on the rails? / how many coats does it need
    how many coats to go on impeller 2 / how many coats are left for the bracket / is another coat due on 4
    how many coats by the sheet / when was its last coat and how many is that / layers so far on 11
    coat count, housing / lost track of how many coats that valve has / can't tell if 8 has one or two coats on
    customer asks how many coats are on his flange / how many coats did Ola put on the impeller
    how many coats did we give them / how thick a stack is it, two layers? / so far how many coats
    what's the coat count on job 88 / need the number of layers on 220 / just the one coat on that, or more?
  `,
  'from-batch': `
    which parts were coated from batch 1 / what was coated from pot 2 / what did we coat with the second pot
    which parts got batch 3 / what's been done out of pot 1 / which ones came from that pot
    which pieces are from the first mix / what went out of pot 4 onto what / parts from batch 2? / parts out of pot 1
    list parts of batch 3 / everything from pot 2 / which valves were brushed from batch 1
    which did Jo do out of the second one / what's on from this batch / what has pot 1 been used for
    what was batch 4 used on / where did I use pot 3 / what all got painted with batch 2 / which parts share that mix
    who else got from pot 1, parts I mean / which rails got that pot / which brackets got the thick mix
    did bracket 5 come out of pot 2 / was the housing done from batch 1 or 2 / was 7 from the bad pot
    is impeller-3 from the first pot / how many parts did batch 1 do / what did that pot cover
    what did we get out of pot 2 / what did the last batch go onto / what parts did the morning mix do
    pot 1 was off ratio, what's coated with it / batch 3 gelled early, which parts had it
    show the parts for the second batch / need all parts that had pot 2 on them
    give me what was sprayed out of batch 5 / tell me which ones we dipped in pot 1 / parts done with the small pot?
    so which were batch 1
  `,
  details: `
    what's the serial on 7 / serial of impeller-3 / serial number for valve 2? / serial no. pls, the housing
    customer wants the serial no. that goes with impeller 3 / what job is bracket-8 / which job does the tank belong to
    job number of 5 / what's the job no on that flange / what metal is 7 / what's the flange made of
    what is impeller-3 made from / is the housing steel or aluminium / is 4 cast iron / is it stainless, valve 2
    what material is part 9 / material of the plates / what's the area of 8 / area of the rail? / how big is the tank
    how many square metres has the housing / surface of bracket 5 in m2 / how thick is the wall of 6
    wall thickness on valve 2 / what's the wall / how many mm is the plate / how heavy is the casting
    what do we know about 12 / part info for 3 / details on bracket-2 / specs of the impeller
    what's the data on the housing / who's the customer for valve 7 / whose part is 4 / what alloy's that
    which number is stamped on 7 / stamp on the flange? / got the serial of that second housing?
    need serial and job for the label on 8 / don't have the serial of 5 to hand / tell me the sq ft of the tank
    which serial goes with rail 12
  `,
  bears: `
    how much heat can 7 take / how hot can impeller-3 go / what's the max temp of the housing
    max temperature of valve 2 / max for the bracket? / what heat does 5 bear / how much heat does the flange stand
    what can the plate stand / what's the limit on part 9 / temperature limit for 4 / heat limit? / can it take 90
    can the housing take ninety degrees / can valve 2 take the oven / will 8 survive the oven
    will the seal in that valve stand the cure / does the tank stand 90 C / does 6 bear oven heat
    is the oven too hot for bracket 5 / is 194 too much for the impeller / is impeller 3 good for ninety
    is that part heat sensitive / is there a heat limit on the rails / what's the hottest I can run 12
    how far can I heat the flange / how high can I go on the housing / up to what temperature is 7 ok
    what's it rated to / what's the valve rated for, heat wise / heat rating of 10 / highest temp allowed on 3
    would 100 hurt the bracket / does it warp at 90, the plate / what does the customer allow for heat on 220
    any max on impeller-2 / did they give us a max temp for the tank / got plastic in it, how hot can it get
    oven or room for this one, what can it bear / tell me how hot 4 may get / need the max heat of part 6
  `,
  expiry: `
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
    tell me the expiry of can 6 / need the use-by of the A
  `,
  lot: `
    what lot is can 3 / what's the lot of A / lot number of can 2 / lot no? / lot no. of the B pls / which lot is open
    which lot are we on / what lot are we using / which lot is in pot 1 / what lot of B is batch 2
    what lot number is on that tin / lot on the hardener? / lot for part A / the lot of that can / A's lot?
    what batch number has the maker put on can 4 / maker's batch number on the B / manufacturer lot of can 5
    what's the number on the label of can 1 / is can 3 from lot 17 / is that the same lot as last time
    are both cans one lot / same lot in A and B? / do can 2 and can 6 share a lot / did we change lots
    when did we change to the new lot / which lot did Ola open / what lot did Jo pour from
    what lot did we mix this morning / what lot's the sealed one / got the lot number for can 7?
    give me the lot of can 3 / give me both lots for pot 1 / read me the lot of the open A / tell me which lot this is
    need the lot for the label / need lot of B for the paper / auditor wants the lot of the A can
    can't read the lot on can 4, what did we book / forgot to write the lot down, which was it
  `,
  lid: `
    is the lid on / is a lid off / is there a lid off / any lid off? / any lids off / any can open / is can 3 open
    is can 2 closed / is the A shut / is the A still open / is B closed up / did I close the A / did I put the lid back
    did anybody put the lid back on A / did someone leave a can open / has the lid gone back on can 4
    has part A been closed / are all the lids on / are the cans shut / all lids on? / lids? / lid on or off, can 2
    which can is open / which lid is off / which tin's standing open / what's standing open / since when is A open
    how long's the lid been off / how long has can 3 been open / how long has B stood there without a lid
    when did the lid come off / can't see the shelf from here, is A closed / not sure I shut can 5, did I
    not sure the lid's on / is pot 1 covered / is the pot lidded / is the can sealed again / did we reseal the A
    tell me if a can is open / need to know which cans are open before I lock up
  `,
};
