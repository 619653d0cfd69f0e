// How English speakers ask, in further words: trace, why, what-is, stock and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking5: Sayings<AskedMeaning> = {
  trace: `
    what went onto base / what was applied to base / what was applied on the casing / what was base painted with
    what was it coated with / what's on the castings / what's the product on base / what did we put on the casing
    what did we use for job 178 / what did we coat base with / what did pot 1 consist of / what did pot 1 contain
    what has been put on base / what has base got on it / what has gone into pot 1 / what has been done to the casing
    what have we got on base / what all touched base / what A and B are on base / what cans went into pot 1
    what cans were used for base / what can did the A come from / what lots were used for job 178
    what lots are in base / what batch did base get / what pot did base get / what pots went on base
    what material is on base / what paint is on base / which batch was base done with / which pot was used on base
    which pots are on base / which B was used in pot 1 / which cans were used for pot 1
    which can did pot 1 come out of / which parts have lot 2301 on them / which parts were coated with lot 2301
    which parts were made with can 3 / which parts came from can 3 / which parts had the same lot
    which parts are affected by lot 2301 / which jobs had lot 2301 / which jobs got lot 2301
    where did can 3 go, onto what / where was that lot used / where has can 3 been used
    where did the A in base come from / where did base's coat come from / where does the coat on base come from
    trace back base / trace base to its lots / can you trace job 178 / could you trace base / please trace base
    kindly trace lot 2301 / run a trace on base / do a trace on serial 5501 / give me the lots that went on base
    give me the history of base / show me the trace of base / tell me which lots went on base
    tell me where lot 2301 went / lots of job 178 / material history base / customer wants to know what's on base
    customer complained about 5501, what went on it / auditor asks what went on base
    auditor wants the trace on lot 2301 / maker recalled lot 2301, where did it go
    lot 2301 is bad, which parts have it / lot 2301 was recalled, who got it / if lot 2301 is bad which parts
    wat went on base / wich lots on base
  `,
  why: `
    why is base still in / why is the air a problem / why is this needed / why are we not allowed to coat
    why are they on hold / why am I asked / why can I not filter / why can't base ship / why can't I mix more
    why can't I open the can / why can't I put it in / why can't I take it out / why can't it go in the oven
    why cannot I coat / why did base fail / why did it gel / why did the clock stop / why did we bin pot 1
    why did that happen / why did the stir time go up / why didn't the bell ring / why do I need a mask
    why do I need to cover it / why do we flush twice / why do we gas the A / why do we need dew point
    why do you need the steel temp / why does it have to be 90 / why does it say not measured
    why does it want the surface / why does pot 1 end so early / why does the flash take so long
    why does the sheet say so / why has base been held / why has it changed / why has pot 1 so little time
    why has the time moved / why have I to wait / why have we to stir that long / why must it be filtered
    why must the fan be on / why should I gas it / why was base put on hold / why was the cure not counted
    why were the castings held / why won't it let me / why won't you let me release base / why would I wait
    why ten minutes / why acetone first / why on earth / why the hell not / how come base isn't done
    how come pot 1 is dead / how do you come up with that / how is that worked out / how is the pot life calculated
    how was that calculated / what's that time based on / what's the rule behind that / what's keeping base
    what makes pot 1 so short / what makes you think that / where do you get that from
    where does that number come from / where's that figure from / according to whom / by what rule / who decided that
    give me the reason for the hold / explain please / tell me why I can't coat / I don't get why it's held
    I don't see why not / I want to know why base is held / don't know why it says that / wyh is base late
  `,
  'what-is': `
    what is a near miss / what is induction time / what is part A / what is relative humidity / what is stir in can
    what is surface temperature for / what's a coupon for / what's a drop in viscosity / what's a holiday in the coat
    what's a near miss / what's dewpoint mean / what's dry to touch mean / what's flow coating / what's gelled mean
    what's hvlp mean / what's inert gas for / what's orange peel / what's part B / what's recoat window mean
    what's relative humidity / what's supplied air / what's that mean, flash off
    what's the difference between flash and cure / what's the difference between hold and release
    what's the difference between lot and batch / what's the difference between wet and dry film
    what's the difference, cover and lid / what's the meaning of blanket / what's the point of the coupon
    what's this word mean / what's touch up mean / what's voc mean / what's wet film / what's wft mean / what are runs
    what are sags / what are solids / what are fisheyes / what are gel specks / what are pinholes
    what counts as a run / what counts as a hold / what do you call a bare spot / what do you mean by profile
    what do you mean by release / what does dft stand for / what does headspace mean / what does hvlp stand for
    what does inert mean / what does lel stand for / what does mottle mean / what does profile mean
    what does rh stand for / what does that word mean / what does touch dry mean / what does traveller mean
    what does voc stand for / what exactly does cure mean / define tack free / define touch dry / definition of spread
    definition of cure / explain tack free / explain the blanket / explain the dew point
    explain to me what flash off is / explain what a blanket is / meaning of recoat window / tell me what dew point is
    tell me what pot life means / I don't know what induction is / I don't know what spread means
    I don't know the word headspace / new here, what is flash off / apprentice asks what dew point is
    apprentice wants to know what induction is / wat is flash off / waht is pot life / what is dew piont
  `,
  stock: `
    what's in the cupboard / what's in the cold store / what's our stock like / what's the stock level
    what's the stock position / what's available / what's in the locker now / what's open and what's sealed
    what tins are open / what do we have left of A in the store / what do I have to order / what should we order
    what should I order / what needs to be ordered / what is on the shelf / which cans are still sealed
    which cans are started / which tins are sealed / which material do we have / how many full cans
    how many sealed B / how many pails of A / how many drums are there / how many B are left / how many kits are left
    how much stock of B is left / how much A is in stock / how much A do we have in the store / how's our stock of A
    how are we for B / how are we fixed for A / how are we off for cans / how low are we on B / do we have a new A
    do we have another tin of hardener / do we have any tins left / do we have enough stock for the week
    do we still have sealed cans / do we need more cans / have we got a fresh can of B / have we still got sealed A
    is there any stock left / is there another tin of B / is there a new can of A / is there a sealed can left
    is the store empty / is the store full / is our stock low / are there any cans left / are there any new tins
    are there more tins of B / are we low on hardener / are we out of hardener / are we running low on A
    are we running out of cans / any hardener left in the store / any spare cans / any unopened A / got any more A
    got any sealed tins / got another A / list all tins / show all cans / show me all cans / show me open cans
    give me a stock list / give me the inventory / give me the list of cans / give me a count of the cans
    tell me how many cans / can list please / cans on hand / stock check / stock take / wat cans have we / stok list
    stcok
  `,
  enough: `
    have I got enough hardener to make another pot / have we got enough hardener for a further two kilos
    have we enough base to mix a kilo more / do I have enough B to mix a pound more
    do we have enough in the tins to mix two more kilos / is there enough in can 3 to mix 900 grams
    is there enough hardener to go with 1200 of A / will the B do for another batch
    will the hardener last for one more mix / does the hardener stretch to one more kilo
    does the A run to another two kilos / is 600 g of B enough to mix with 600 A
    is the rest of the A enough for a kilo / is the rest enough to mix a small one
    could I still mix another kilo from can 3 / could we still get a batch out of can 3
    can I get another kilo out of the tins / can we squeeze another mix out of that can / enough to make one more pot
    enough base and hardener for a 2 kg mix / have we enough to mix again / is there enough for all the gates
    is there enough in the jug for two more / is there enough left for a coat on base / is it enough for a second coat
    is 300 enough for the casing / is half a kilo enough for three bits / is pot 1 big enough for the tank
    is the batch big enough for the castings / will it do for both castings / will it reach for the last one
    will it go round / will that be enough / will that cover it / will 400 g do / do I need more mix
    do we need another pot for base / have I mixed enough / have we got enough paint for base / did I make enough
    did we make enough / did we mix enough for the castings / am I going to be short / are we short for base
    are we going to be short / can I do base with what's left / can I do two more with pot 1
    can I finish base with pot 1 / can we finish the gates with this pot / can we do the lot with that
    does it suffice / enough stuff left / enough in the bucket / how many castings will pot 1 do
    how many gates will it do / how many can I get out of pot 1 / how many parts can pot 1 do
    how many parts will pot 1 cover / how far does a kilo go / how far does that get us
  `,
  day: `
    how did it go today / how has today been / how has it gone today / how's today going / how was monday's shift
    how was last night / how was the week / how much did we get done / the whole day / day in one line
    day's work please / daily report please / daily overview / daily sheet / today in figures / today's tally of work
    sum today up / sum it up / sum the day up for me / run down of the day / rundown of today / round up today
    review today / end of day please / end of day summary / eod report / eod summary / closing summary
    what did we do all day / what did we make today / what did nights get done / what did the night shift do
    what did the morning shift do / what did the lads do today / what have we done so far
    what have we got done today / what have we finished today / what have we managed today / what has been done today
    what has the crew done / what was done on monday / what was done this morning / what was made today
    what was coated today / what's been done so far / what's been finished today / what's been made today
    what's been coated today / what's today's score / what happened so far today / what happened on nights
    what happened this morning / what happened during the day / give me a summary of today / give me a recap
    give me the shift so far / show me today's work / show me yesterday / show the day's report / send the daily
    send me today's report / let me see the day / let me see today / tell me how today went / tell me how the day went
    tell me what we did today / tell me about yesterday / Bea wants the report for today
    boss wants to know how it went / supervisor wants today's figures / office asks for the day
    catch me up on the day / bring me up to date on today / wrap up the day for me / day sumary / dayly report / recpa
  `,
  'next-ring': `
    when is the next call / when does base ring / when does pot 1 ring / when will you call me
    when are you going to ring / when do I get rung / when do I hear a bell / when should I expect a bell
    when's the next one due / what is set to ring / what's next to go off / what bells have I got coming
    what alarms have I got / what timers do we have / what reminders are coming / what will ring before lunch
    what rings now / what rings after that / what rings before noon / what rings over the break / what goes off next
    what time does the bell go / which bell comes next / which alarm is next / which timer is next
    which one rings first / which part rings next / how long until it rings / how long until the next alarm
    how long before the bell goes / how soon does it ring / how soon will it ring / how many bells are coming
    how many alarms are set / is there an alarm set / is there a timer on base / is anything due to ring
    is something about to ring / is the bell on for base / are there bells set / are any bells coming
    do I have any alarms / do I have time before the next bell / do we have a bell on base
    do you ring before the pot dies / does anything ring tonight / does anything ring in the next hour
    did you set a bell for base / have you set a bell for pot 1 / will you ring when it's done / will you wake me
    will the bell go before three / will anything ring before I'm back / any timers running
    anything going to ring soon / show alarms set / show me the alarms / tell me when you ring / give me the bells
    next bell please / nxt bell / next bel
  `,
  watch: `
    who watches me in the booth / who's watching while we spray / who's on guard at the booth / who's on safety watch
    who's on fire watch / who's outside now / who's stationed outside / who's standing out there
    who's waiting outside / who's keeping an eye on Lia / who's looking after us in there / who's minding us
    who's got my back / who's got my back outside / who's the watch for this session / who's the safety man
    who's the spotter today / who's the observer / who's our spotter / who's my outside man / who's taking the watch
    who's covering the door / who's doing lookout / who's down as watch / who's set as watch
    who is watching from outside / who is the outside person / who looks out for us / who looks in on us
    who does lookout / who has taken the watch / who was on watch for batch 2 / who was outside when Lia sprayed
    who was the attendant / who will be the watch / who will keep watch / who can stand outside / who can be the watch
    who did we name as watch / who did we put outside / who did we say watches / who have we got as lookout
    is anyone keeping watch / is anybody watching us / is there a watch on the booth / is there anyone outside
    is there anybody on watch / is Lia on the door / is Ola outside / is Jo our watch / have we a lookout
    have we got an attendant / do we have a lookout / do we have an attendant / do I have a spotter
    did Lia take the watch / has anyone got the watch / has Lia got the watch / name of the attendant
    tell me who the watch is
  `,
  'in-charge': `
    who is running things / who is on as supervisor / who is head of the crew / who's in charge of the booth
    who's in charge while Kari's out / who's the boss on nights / who's the head honcho / who's the lead this morning
    who's the main man / who's the team lead / who's the charge hand today / who's the one responsible
    who's running the show / who's giving the orders / who's got the say / who's on duty / who's duty supervisor
    who's my gaffer / who's our foreman / who's over us / who's standing in for Kari / who's stepped in for Kari
    who's taken over from Kari / who's taking charge / who runs the shop / who runs this place / who supervises us
    who heads the crew / who has the last word / who has authority to release / who gives the ok
    who decides on the hold / who signs off here / who may countersign / who can release parts / who can approve
    who can authorise it / who can lift a hold / who do I ask about it / who do I talk to / who do I turn to
    who do I call about the shift / who do I report this to / who do I see about that / who do we answer to
    who should I speak to / who was in charge yesterday / who was the lead on monday / whose crew is this
    whose call is it / whose decision is it / is Ola in charge / is Lia leading / is Jo lead tonight / am I lead now
    name of the foreman / tell me who the supervisor is / list of leads / who are our leads / who are we under
  `,
  emergency: `
    emergency contacts please / emergency services number / number of our first aider / number for the spill team
    number for the safety officer / number to ring in an emergency / numbers please, emergency
    phone for the ambulance, which number / doctor's phone / fire department number / fire service number
    poison centre number / police number / safety officer's number / what is the number of the hospital
    what are our emergency numbers / what number is the fire brigade / what number should I call
    what do I dial for fire / which phone for emergencies / who do I ring if someone's hurt
    who do I ring for a spill / who do I phone if there's a fire / who do I contact in an emergency
    who should be called in an emergency / who should we call in case of fire / who gets called for a spill
    who's our emergency contact / who's first aider today / who's the first aider here / who is our first aider
    who does first aid here / where are the emergency phone numbers / where do I find the emergency numbers
    where's the nearest hospital / is 112 right for here / is it 911 for fire / do I dial 9 first
    do we call 911 or the office / do we have a first aider / do you have the number for poison control
    do you know the emergency number / have we got a first aider / have you got the ambulance number
    got a number for emergencies / give me the first aider's number / tell me the number for the fire brigade
    tell me who to call in an emergency / show the emergency list / need the hospital number for the form
    need the poison control number for the sheet / I need the emergency numbers for the poster
    I need the emergency number for the induction / in case of emergency who do we call / in case of fire which number
    if there's a fire what number / if there's an accident who do I call / if someone gets hurt who do we call
    if somebody's hurt which number do I call / if it gets in the eyes who do I call / ice numbers
  `,
  'may-spray': `
    who may enter the booth / who is allowed to go in / who's fit tested now / who's good on the gun, allowed I mean
    who's got a valid fit test / who's on the list to spray / who can work the gun / who can operate the gun
    who could spray if Lia's off / who else has a ticket / which of the lads can spray / which of the crew may spray
    which ones are allowed to spray / which sprayers do we have / which crew can spray / is Lia on the spray list
    is Ola trained on the gun / is Jo's ticket still good / is Lia's fit test in date / is my spray ticket still good
    is my training valid / is anyone cleared for the booth / is anybody here allowed to spray
    am I good to use the gun by ticket / are we allowed in the booth without a fit test / are they trained to spray
    are all of us cleared to spray / can Jo shoot / can the new guy spray / can anyone else use the gun
    could Ola take the gun / could the new lad spray / may I go in the booth with my ticket / may he spray
    may she spray / does Lia have the training / does Jo have a ticket for the gun
    does anyone else have a spray ticket / do I need a ticket to spray / do we have anyone trained to spray
    has Lia got her spray ticket / has Ola been trained to spray / has the apprentice been trained
    has the new lad got his ticket / have we got trained sprayers / did Lia pass the spray training
    did Lia do the fit test / did Ola get his ticket / did Jo's fit test run out / when does Lia's ticket run out
    when does my fit test run out / when does Ola's fit test expire / when is Lia's fit test due
    list of people who may spray / show me who may spray / tell me who's cleared / give me a list of sprayers
    give me those who may spray / any sprayers here / any other sprayers
  `,
  worn: `
    what should I be wearing / what must I wear in the booth / what must be worn / what has to be worn for flushing
    what is worn for spraying / what do we wear when dipping / what do I need to put on to open the tin
    what gloves are right for acetone / what sort of gloves / what kind of mask / what mask when brushing
    what filter on the mask / what eye protection / what clothing / what overalls for spraying
    what shoes in the booth / what kit do I wear / what gear is needed / what safety kit / what's needed on the hands
    what's needed on the face / which gloves when flushing / which suit / do I need a face shield / do I need an apron
    do I need air fed for brushing / do I need safety shoes / do I have to wear gloves for this
    do we need masks to mix / do we need masks outside the booth / do we need ear muffs
    must I wear goggles for mixing / must we wear hoods / should I have a mask on / should we be masked up
    are gloves enough / are masks needed for rolling / are overalls needed / are rubber gloves ok / are thin gloves ok
    is a half mask enough / is a dust mask enough / is a paper mask enough / is a cartridge mask ok for spraying
    is a visor needed / is ppe needed to look at it / can I go without goggles / can I mix without a mask
    can I take my mask off / can I take the gloves off now / can I weigh in short sleeves
    can I flush without goggles / mask or hood / respirator needed for dipping? / ppe please / ppe list
    tell me which gloves / show me the ppe / list the ppe / remind me what to wear / new lad asks what to wear
  `,
};
