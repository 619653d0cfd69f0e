// How English speakers ask: can-i, how-long, who-did, where-is and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking1: Sayings<AskedMeaning> = {
  'can-i': `
    can I coat 3 now? / ok to brush 7 yet / may I open the B can? / am I good to take the 8 out
    can we start spraying now or what / is it alright to pull the housing from the oven
    could I put the second coat on valve 2 already? / safe to filter batch 1 yet?
    allowed to open another A with this humidity? / do I have the all clear for impeller-3
    can I touch up bracket 5 or is it too late / is the air good enough to coat / can these two go in the oven
    hey can I stop stirring pot 2 / are we clear to start on the rails / permission to coat? 😄
    is it too damp to start / would it be ok if I dipped the plates now / shall I take valve 4 out or wait
    should I put 6 in the oven yet / can 9 come out / can the flange be handled yet / is bracket-8 ready for its coat
    ready to coat? / good to go on 2? / could we use pot 1 still / can I still use what's in the second pot
    is pot 3 any good for another part / may we pour now / can I pack the housing up yet / can valve 6 ship today
    is there time to coat one more before she goes off / is it warm enough in here to brush / steel's at 18, can I go
    okay to recoat the 4 / can I lay a second pass on 8 / am I allowed to spray with the fan off / can I thin this
    need to know if I can start the 5 / tell me if I may open can 4 / is it fine if I open the oven for a sec
    can I go on with the coating after that shower / would like to coat the impeller, is that ok
    just checking im allowed to take 2 out / do you reckon 7 can go in / is now a good time to open part A
    can i mix another pot or do i wait / wondering whether we can start coating yet
    does anything stop me from coating the 3 / anything stopping me brushing the valve? / is the surface ok to coat
    can I flip part 6 over yet / reckon it's okay to roll the tank now? / may I release the housing
    can I hang the next one / is it good to spray / may i carry on with pot 2 after the break
    can I leave the stirrer alone for a bit / can I wipe 3 down and coat it straight after
    can we put warm steel under the brush / can 5 take another coat today
    please can i take it out its burning my lunch break / ok to load the oven? / am i too early to filter
    is it ok to go ahead / can we get going yet, everyone's stood around
  `,
  'how-long': `
    how long left on batch 1 / how much longer for 7 / when's the housing done? / is it dry yet / is 8 dry
    when does the pot die / how long has pot 2 got / how long do I stir this for / when can I stop stirring / time left?
    how many minutes till the valve comes out / when will bracket 5 be cured
    when do I need to be finished with the second pot / what time does batch 3 go off
    when does flash off end for impeller-3 / no idea how long that pot's still good
    boss wants to know when the 4 is coming out of the oven / how long's it been stirring
    how long has 7 been in the oven / are we there yet with 2 / is the cure over / is it done?
    is the stirring finished yet / what's the time remaining on number 6 / whens it ready
    when will it be ready to filter / how long before I can touch the 8 / how long til the mix kicks
    do we have long on this pot / much longer? / how much time do I have to get this on / until when is pot 1 good
    what time should I come back for the valve / do I have time for a coffee before 3 is dry
    got time for a smoke or does the flash run out / when do the plates come out then / eta on the housing
    eta for the brackets pls / how soon can we pull 9 / how far along is the cure on 5 / how far through the stir are we
    when's the last moment I can still touch up 7 / how long is the window to recoat 3
    how long until I have to flush the gun / when did we say pot 2 dies / what's the clock say on batch 4
    tell me how long the impeller still needs / lost count, how long has that been turning
    I forgot when valve 2 is due out / need the finish time for the second batch
    customer's here, when can he have his flange / any idea when that one's finished / can u say when 12 will be dry
    how many hours of room cure left on the tank / when is 6 fit for service
    by when must I have coated the blasted ones / how old is this pot / how long since we put B in / has 8 had its hour
    has the housing had enough time at heat / does pot 1 make it to lunch / will it last till half two
    will the mix hold out until four o'clock / what time's it gonna gel / how long can the blasted steel lie bare
    how long do I have to wait between coats on that one / minutes left on pot 3? / remaining time for the oven load
    hows the clock on 5 lookin / what have I got left on the clock / when did we reckon on the gel
  `,
  'who-did': `
    who mixed batch 1 / who coated the 8? / who read the temp on valve 2 / who was it that brushed impeller-3
    who opened can 3 / who took the housing out / whose pot is this / who did the 5 / whose work is bracket-8
    who put the lid back on A / who filtered the second one / who released 9 / who weighed that
    who signed for the spray session / which one of you coated 7 / which of the lads dipped the plates
    by whom was the flange inspected / who last touched the oven / who's been in the can of B
    who had the gun this morning / name of whoever mixed pot 2 / customer asks who did his impeller
    don't know who coated the 4 / need the name of the guy who rolled the tank / who wrote down the humidity
    was it Ola or Kari who stirred batch 3 / did Jo do the valve or was that somebody else / who put 6 on hold
    who blasted these / who prepped the railing / who cleaned the gun last / who said 8 was dry / who called it dry?
    who emptied pot 1 / who logged the air at nine / who started the mix / who turned the fan off / who gassed the can
    who blanketed A last night / who checked the film on 2 / who measured the thickness of the housing
    who put that one in the oven / remind me who did valve 7 / any idea who made up the last pot
    who do I thank for that lovely finish on 3 / ok who left the lid off / hands up, who brushed the bracket
    find out who sprayed the rails / who's responsible for pot 4 / who is to blame for that run on 7 lol
    was that me that coated 5 or you / who did what on impeller 2 / who put can 6 on the scale
    how many of us are in the spray booth / how many people are inside / number of people in the booth
    how many are in there with the sprayer
  `,
  'where-is': `
    where's impeller 3 / where is the housing? / where did 8 go / wheres can 2 / has anyone seen the flange
    anybody seen Ola / where's Kari at / which oven is valve 2 in / which rack is bracket 5 on / where are the plates
    where did we put the B / where do I find the open can of A / cant find 7 / I'm looking for the 4, any clue
    looking for serial 4411, where's it sitting / what shelf is can 3 on / whereabouts is the second pot
    where is pot 1 standing / lost the little bracket, where was it last / who's got the valve and where
    is 9 in the oven or on the rack / is the housing still in the booth / where's the boss / where's everyone gone
    where'd the impeller end up / where does part 6 live now / where was the tank put after flash off
    which bench are the rails on / in which oven is the 5? / location of valve 7 / location for bracket-2 pls
    where's that flange hiding / where the heck is my A can / don't know where the second housing went
    no clue where they stuck number 10 / customer's driver is here and I can't see his impeller anywhere
    where are the cured ones / where are the parts on hold / where's the can we opened yesterday / is Jo in the booth
    is someone still in the spray room / is B in the cold store or what / where did you say can 5 was
    point me to part 12 / tell me where the 3 is / need to know which cabinet the A's in
    is that impeller still with us or gone / where's the one with the serial 220 / any idea where 6 has wandered off to
    where'd y'all put my valve / which bay is the tank in / whats on rack 2
  `,
  'how-hot': `
    how hot is 7 / what's the temp in here / how warm is the room / what was the humidity at nine
    what did we read on the housing / whats the air like / what was the last reading / temp of valve 2?
    how hot did the impeller get / how hot's the oven load now / how cold was it this morning / what's the dew point
    how far are we off the dew point / what's the spread / surface temp on bracket 5 / what's the steel at
    what's the RH / how damp is it in the shop / how humid was it when I coated 3 / how dry is the air
    what temperature did pot 2 have / is the mix getting warm, what did you last read
    what's in the oven at by now / what are the two in the oven at / where's the oven load at, temperature wise
    what's the housing at currently / whats the steel at now / what is the room at
    what did the gun thermometer say on 8 / what was the air when we mixed batch 1 / degrees in the booth?
    humidity pls / need the room figures / air figures for the last batch? / last known temp of the flange
    did 4 ever reach ninety / has the housing got up to temperature yet / is 6 up to heat / what was part 9 showing
    how warm's the tank wall / how many degrees was the valve at when it came out / what's it in fahrenheit in there
    what did Jo read on the plates / whats the moisture in the air at / tell me the temp and humidity
    customer wants the temperature of the room when his part was done / don't remember what the hygrometer said
    forgot what I read on 2 / any reading on the impeller yet / what was the hottest the 5 got
    how chilly did it get overnight / what did the logger have for last night / what's the latest on the air
    give me the last air reading / how hot was the bracket at 10:20 / conditions at the time of coating 8?
    weather in the booth? / what'd we log for the room today / when was the air last read and what was it
    is the wall above dew point and by how much / temp check on 7 said what / how muggy is it
  `,
  'how-much': `
    how much is left in pot 1 / how much A have we got / how much B is in can 3
    how much do I mix for 3 parts of 0.4 m2 / what do I need to mix for two square metres
    how many grams for the housing / what's left of the second batch / how much mix for the rails
    how big a batch for four valves / how many kilos for ten plates of 0.2 m2 / what amount covers 6 sq ft
    how much goes in the cup for one bracket / how much have we used today / how much did impeller-3 take
    how much went on the tank / how much did we throw away / how much was poured off / how much A went in batch 2
    how much B did Ola weigh in / what's left in the can / anything left in pot 2? / is there much left
    how full is can 5 / how much stuff is still in that pot / need enough for 7, 8 and 9, how much is that
    gotta coat 12 brackets, what do I weigh out / for 1.5 m2 by brush what do I need
    spraying the housing, how much should I make up / mix size for a 0.9 square metre tank?
    how much material for job 88 / how much per part / how much solvent have we gone through
    how many litres of A are there in the store / how much do we have altogether
    how many grams of the mix are left for the flange / no idea how much is in that can any more
    not sure how much to make for the three impellers / tell me what to mix for the valves
    work out the batch for 5 parts 0.3 m2 each / calculate how much for two coats on the railing
    what weight do I need for 20 sq feet / quantity for impeller 4 and 5? / what's the wet volume for the plates
    how much waste did we make / how much came back after flow coating / how much drained off 6
    do the sums for 8 rails at 0.25 / small batch for one bracket, how many grams / how much of pot 1 did we use up
    what would I need for the next three / what quantity should i make up for this afternoon
    how much gas is left in the bottle / how many grams per square metre are we putting down
  `,
  'to-do': `
    what's next / what's left to do on 7 / what now / whats left today / what do I do now / what still needs doing
    what's missing on the housing / what next for valve 2 / anything left for me? / what should I be doing / next step?
    next step for pot 1 / what comes after the filter / what comes next with bracket-8 / where do I go from here
    what have we still got to do on job 88 / what's outstanding on impeller 3 / what remains on the tank
    what does 5 still need / what do we have to finish before going home / which jobs are still open
    what's on the list / what's on for today / whats the plan now / to do list please / my list?
    what do you want from me next / I'm free, what needs doing / got nothing on, what's next up
    standing around here, give me something to do / just in, what's waiting / ok done with that, what now boss
    stirring's over, now what? / right, what's the next job / what is there left before 8 can ship
    what's still to be done on the flange before release / does 4 need anything else / is anything still open on 9
    did we forget anything on 2 / have I missed a step with pot 2 / what haven't we done yet / what's waiting
    what's holding up the plates / what's the next thing on the oven load / anything else for the rails
    what do I need to do with can 3 / I'm new here, what do I do after weighing / so B is in... and then?
    filtered it, what follows / what must happen before we close / what's to do for closing up
    remaining steps on impeller-6 / what's the move / what's up next for the crew / tell me what's pending
  `,
  'what-late': `
    what's overdue / what's late / anything late? / are we behind on anything / what did I miss
    what should have been done by now / which parts are past their time / who's late with what / is any bell unanswered
    anything run over / what's gone past its time / whats running late / what are we late with
    have we forgotten a part in the oven / which ones should be out already / which pots are past it
    did I sleep through a bell / what bells have I missed / what's been sitting too long / what's hanging over
    overdue stuff? / list what's overdue / show me what's late pls / behind schedule on what / how late is 7
    is valve 2 overdue / is the housing late coming out / is pot 1 over its time / what needed doing an hour ago
    what's outstanding that shouldnt be / anything we should've done by now / what's slipped
    what slipped through the cracks this morning / just back from lunch, what's past due
    been on the phone, what's late / what have we let run over / which readings are overdue
    when was the air due, are we late on that / is there a check we're late on / anything ticking in the red
    what's in the red / any part waiting longer than it should / what's dragging / tell me what we're behind on
    what's long past due / is anything over time in the oven / which cans were due their gas already
    what did nobody get to / did anything expire while I was out / what tasks are past the deadline
  `,
  'went-wrong': `
    what went wrong today / any trouble today / anything go wrong? / what got messed up / what did we screw up
    any problems so far / what was the mess with batch 2 / what happened with 7 / what's wrong with the housing
    what went pear shaped this morning / any mishaps / any near misses today / what faults did we have
    any defects on the valves / what failed / which parts failed / which ones did we have to reject
    any runs or bubbles today / what did we bin and why / what broke / what's the damage today
    anything bad on the last shift / did anything go sideways / did we have any incidents
    did something happen while I was off / tell me what we got wrong / list today's faults / what issues on job 88
    trouble on the second pot? / what snags did you hit / what was up with bracket-8 / what problems has impeller 3 had
    anything out of line this week / any deviations / any deviations from the sheet today / where did we go wrong
    where were we out of limits / what's been flagged / any rejects / how many rejects and what was it / what cocked up
    boss is asking what went south today / hear there was trouble, what was it / something happen with the plates?
    what was wrong with that mix / anything dodgy with pot 1 / was there anything off today
    what errors are on the record / any spills or such / what did the inspector find on 4 / what's gone bad
    any bad news
  `,
  'at-risk': `
    which can is about to be lost / what pot am I going to lose next / will the A in can 2 be a brick by tonight
    what's at risk / what are we about to lose / what's about to go off / which pot is about to die
    anything about to gel / is anything in danger / what's in trouble / what needs saving / what's going to spoil
    are we going to lose anything / what will we lose if I go to lunch now / what's closest to dying
    what's the tightest one / which one is most urgent / whats urgent / what's burning
    where's the fire, I mean which pot is close / what's on the edge / what's critical right now
    any part close to missing its window / which window closes first / which cans are going bad / is part A in danger
    is any can without gas / what's at stake / anything I should be worried about / anything I need to rush
    what can't wait / what should I save first / which ones will be too dry soon / is the housing at risk
    is pot 2 going to make it / is something about to run out of time / what's nearly done for / what's on its last legs
    what's hanging by a thread / how bad is it, what might we lose / what will be ruined if nobody moves
    anything about to be wasted / what do we stand to lose today / is anything close to overrunning
    list the risky ones / anything dicey / what's getting tight / which parts are getting close
    who's running out of time / if I only do one thing now, which one dies first
    what's going to be scrap if we don't hurry
  `,
  trace: `
    what went on this part / what's on impeller 3 / which lots went on 7 / what lot was used on the housing
    which parts got batch 1 / which parts were done out of lot 2231 / what did pot 2 go on
    where did the second batch end up / what was put on valve 2 / what coating is on bracket-8
    what product is on the flange / history of the 5 / give me the history on 4411 / trace impeller 3 / trace lot 88B
    trace can 3 / can you trace the housing back / which can did the A for batch 4 come from
    which batch went on the plates / what batch was 9 coated with / from which cans was pot 1 mixed
    what's been done to part 6 / everything that happened to valve 7 / customer wants to know what went on serial 220
    customer asks which lots are on his impeller / a year ago we did serial 901, what went on it
    what weather was the tank coated in and from what lot / which other parts have the same lot
    what else got that bad batch / what else came from can 2 / everything that can 5 touched / who and what on the 8
    which jobs used lot 17 / where has lot A-204 gone / where was can 6 used / was batch 3 on the flange as well
    is there any of lot 55 on the rails / did 7 and 8 get the same pot / are the two housings from one batch
    lot numbers for job 88? / the lots behind bracket 5 pls / whats the paper trail on 12 / need the trail for the valve
    where does the film on 4 come from / which hardener lot is in impeller 2 / what A and what B went on the tank
    recall on lot 310, which parts are hit / maker called a lot back, who got it / all parts touched by the second pot
    what did we use on the railing
  `,
  why: `
    why's that / why can't I coat 7 / why 102 minutes? / why not / why so long / why does it say wait / why is 8 on hold
    why the red mark on valve 2 / why does pot 1 die at 12:33
    why must I stir that long / why isn't the housing done / why is the cure not counting
    why doesnt the oven time count / why do I have to read the part again / why is it asking for the dew point
    why only 1200 grams / why so much B / how come it's late / how come 5 isn't released / how come I can't open A
    how come the pot's shorter today / what's the reason for the hold / what makes you say that / what for?
    where does that figure come from / where'd you get 12:03 from / who says so / says who
    on what grounds can't I spray / based on what / how did you work that out / how do you get to 42 minutes
    explain the time on 3 / explain that number / don't get why that one's not ready / dont understand why it wants gas
    no idea why it's flagged / why gas / what's the reason I can't recoat / why was bracket-8 rejected
    why'd they stop the mix / why is it amber / why are you bugging me / why did flash off get longer
    why is everything late today / why do we flush with two things / why did we throw pot 2 away
    tell me why valve 4 is not allowed in the oven / what's with the warning on the tank
    why'd that take so long to dry
  `,
  'what-is': `
    what is flash-off / what's pot life / flash off means what exactly / what does dew point mean
    what do you mean by spread / whats a blanket / meaning of induction? / what's DFT / what does WFT stand for
    define recoat window / what on earth is headspace / what is a traveller / what's a witness coupon
    explain orange peel / explain pot life to me like I'm five / apprentice asks what curing is
    what's the difference between dry and cured / difference between A and B? / what exactly is a holiday in a film
    what's meant by hold / what does release mean here / new word for me: profile. what is it / huh, mottle?
    what the hell is VOC / what is HVLP / what's bonding got to do with it, what is it / what is bonding / whats a lot
    lot vs batch, what's the difference / what's RH again / what does it mean "dry to touch"
    what do they call it when the mix goes thick / gelled means? / never heard of a slight vortex, what's that
    what's a vortex in the pot / what's inert gas / what are salts on steel / what does surface grade mean
    what counts as touch up / what does flow coat mean / dip coat is what? / tack free, meaning? / what is a countersign
    whats the finish by time / what's that, overspray / sorry, what's a spray brief
    remind me what the pot life actually is, the idea of it / not sure what "undercure" means / what's amine blush
    what does the word flush mean in this shop / what is meant by supplied air / what's LEL
    could you tell me what a can label's lot is / what's thinning out mean / what is a run, like a sag?
  `,
  stock: `
    what cans have we got / what have we got in stock / what lots have we got / what's on the shelf
    which cans are open / any A left in the store / any B in the house / how many cans of A / how many cans are left
    stock? / stock list / list the cans / show the cans / cans / what's in the cabinet / whats in the locker
    do we have more B / have we got a sealed can of A / got any fresh A / is there another can
    are there any unopened ones / do we need to order / what do I need to order / are we running low / are we short of B
    how are we off for hardener / what's our stock of part A looking like / inventory pls / inventory of lots
    which lots are on hand / what lot numbers are in the store / what material is there / what product have we got here
    what are we down to / what's left in the cage / what came in this week, cans I mean / did the new cans get booked in
    is can 7 sealed or open / is there solvent on the shelf / do we still have acetone / how's the supply
    supervisor wants a count of the tins / count of tins? / how many tins of the clear have we got
    what stuff have we got to work with / is there enough A to last the week / all the cans we have, please
    tell me what's in stock / which cans have been gassed / state of the cans
    show me what we've got in the paint store / need a stocktake
  `,
};
