// How English speakers ask, in further words: can-i, how-long, who-did, where-is and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking4: Sayings<AskedMeaning> = {
  'can-i': `
    is it all right to coat base now / would it be all right to open the A now
    would I be able to coat the casing yet / may we take the castings out / can the castings go in the oven now
    can base be coated today / can base be sprayed in this air / can I pull the castings
    can I brush base now or is it too cold / can I spray the castings with 65 percent / can I put base in wet
    can I open the door of the oven / can I use the old B / can I leave pot 2 standing
    can I leave the lid off for a bit / can I leave the A without gas / can I go home or does base need me
    can I move the castings / can I stack the plates yet / can I turn base over / can we blast indoors today
    can we carry on / can we coat in this / can we go ahead with the gates / can we load up / can we unload
    can we mix now / can we still coat with pot 2 / can we switch the fan off now / could I coat base at this humidity
    could I dip the bits now / could I take base out early / could we run two coats today / would you let me coat base
    will it let me coat / do I have permission to spray / am I fine to load / am I clear to go in
    am I right to take it out / are we allowed to coat at 15 degrees / are we allowed to use that pot
    are we good to load the oven / are we ok on the air / are we set to spray / are conditions ok
    are conditions good enough / is the weather ok for coating / is it ok to stop the stirrer
    is it ok to release base / is it fine to leave it / is it too late to touch up / is it too hot in here
    is it too wet to go in / is it too thick to spray / is it time to flush / is base ready to ship
    are the castings ready to go in / is pot 2 fit to use / is the mix still usable / is the mix fit to spray
    is it usable still / is the steel warm enough / is the steel dry enough to coat / is the surface good
    is the room ok / is there any reason not to coat / is there something against coating base
    anything against me opening A / anything to stop us spraying / what if I coat now, allowed? / do I dare coat base
    do you think I can coat / do you think base can go in / do I need to wait / do I have to wait
    must I wait for the bell / must I wait to filter / should we hold off / should base go in / shall I filter
    shall we spray / alright if I take base out / safe to turn the fan off? / go or no go / go ahead or not
    yes or no, can I coat / hey is base good to coat / oga can I coat now / abeg can I open the tin
    wee question, can I coat the casing / mate can I take it out / y'all reckon we can spray
    can I coat coz the bell went / cna I coat base / can I caot it
  `,
  'how-long': `
    how long now / how long to go on base / how long more for pot 1 / how long till I can filter
    how long till the pot goes off / how long till we can coat / how long until base is done
    how long before pot 1 goes / how long before it's dry / how long does base have to go
    how long does base still need / how long does pot 1 need stirring yet / how long do I have with pot 1
    how long is base in already / how long has pot 1 been going / how long has it been dry
    how long has the casing been curing / how long have I got for touch up / how long have we got on pot 1
    how long must base stay in / how long must it stir yet / how long should I wait for base / how long will base take
    how long would base need yet / how much longer in the oven / how much more stirring / how much time is left
    how much time to the end / how much time till the pot's gone / how many minutes more / how many more minutes
    how many hours left on the tank / how many hours till base is cured / how far along is base
    how soon is base done / how soon will it be dry / how's base doing for time / how are we for time on pot 1
    when is the flash over / when are the castings done / when are the castings out / when can I take base out
    when can base ship / when can I spray / when can it go in / when can we load / when do the castings come out
    when does pot 1 expire / when does the time start / when does the hour end / when does it go off
    when should base come out / when should I come back / when should I stop the stirrer / when will the oven be free
    when would base be done / when's the casing out / what time does pot 1 die / what time do I take it out
    what time did base go in / what time's base due / what's left on the clock for base
    what's the end time for pot 1 / what's base's time / till when can I touch up base / by when must base be done
    time left for touch up / minutes to go on base / eta castings / is base cured yet / is it dry already
    is the stir over yet / is pot 1 dead / are they done / has base dried / has base had its hour
    has base been in long enough / has the hour passed / has pot 1 stirred long enough / did the time run out
    will base be done by four / will base be out before lunch / will pot 1 last till noon
    will pot 1 last another hour / will pot 1 still be good at two / will it be dry by three
    does pot 1 last till two / do we make it before the pot dies / do I have time to coat another
    have I got time for a smoke / have I time to coat base / enough time for another? / tell me how long base has
    tell me when pot 1 is up / I need to know when base is out / roughly how long till dry / how lnog left
    hw long pot 1
  `,
  'who-did': `
    who rolled the gates / who dipped the bits / who painted base / who poured the B / who stopped the stirrer
    who covered pot 1 / who uncovered it / who threw pot 1 out / who binned pot 2 / who opened the tin
    who shut can 3 / who left can 3 open / who took B from can 4 / who brought the cans in / who loaded the oven
    who unloaded / who pulled the rack / who read the part / who read the probe / who measured the wet film
    who did the cross cut / who sanded base / who degreased base / who signed base off / who passed the castings
    who put base on hold / who held the casing / who booked base in / who entered that / who typed that
    who said base was dry / who said it was out / who touched up the casing / who turned the fan on
    who ran the booth / who was with Lia / who was working on base / who was on shift / who washed the brushes
    who put the rags away / who emptied the waste / who closed the session / who acknowledged
    who hasn't read the brief / who has touched base / who has been at can 3 / who had base last
    who made the mistake / who changed that / who corrected it / who took the sample / who noted that
    who approved base / who countersigned / who ruined base lol / which of us mixed pot 1 / which person coated base
    which lad brushed base / what's the name of the one who coated base / whose mix is pot 1 / whose coat is that
    whose brushwork is base / whose handwriting... who logged it / whose idea was that pot / was base done by Ola
    was it me who gassed A / did Ola mix that / did Jo do the castings or Lia / did I coat base or did you
    did anybody gas the A / did somebody filter pot 1 / has anyone flushed the gun / has anyone wiped base
    has anybody read the air / has someone opened A / tell me who mixed it / customer wants to know who coated base
    auditor asks who released base / I'd like to know who wiped it / remember who coated the casing
    any record of who coated base / coated by whom, base / blasted by who / who dun base / who cotaed base
    oga who coat this base
  `,
  'where-is': `
    where is the tank lid / where are the covers now / where are we keeping base / where are the dry ones
    where are the held parts / where are the finished parts / where are the new tins
    where's the casting with serial 12 / where's can 3 kept / where's the tin of A / where's Bea today
    where's the hub / where's part 9 at / where's the other one / where did they put the castings / where did Lia go
    where did I leave base / where did we leave can 3 / where did pot 1 end up / where was base last seen
    where was can 3 last / where has the casing got to / where has Lia gone / where have you put base
    where can I get the A / where do we keep can 3 / where do the castings lie / where does base sit
    where does job 178 stand / where in the shop is base / where on earth is base / where the hell is base
    where abouts is base / which rack holds the bits / which shelf has the A / which bench is the casing on
    which trestle is base on / which room has the castings / which corner is base in / which cabinet is can 3 in
    which store is the B in / what rack's base on / what shelf is the hardener on / what's on bench 3
    what's in bay 2 / what's standing in the booth / what's on trestle 1 / who's in the store / is base in oven 1 or 2
    is the casing in the cure room / is Ola here / are the gates still here / did base go out / did base ship
    has base gone out / has base been collected / has base left the shop / have the castings been moved
    have you seen Lia / seen my can? / anyone know where base is / anybody know where Lia is / any sign of the casing
    can't see base anywhere / cannot find base / lost the casing, where is it / lost track of base
    I'm looking for can 3 / searching for base / hunting for base, where is it / need to find base
    show me where base is / point me at base / point me to the casing / were is base / wear is base
    oga where base dey
  `,
  'how-hot': `
    how hot was base at eleven / how hot was it in here at noon / how hot did the casing get / how hot has base been
    how hot are the castings / how warm was it this morning / how warm are the castings / how cold did it get
    how cold was it last night / how cold was the steel at eight / how humid is it now / how humid was it at ten
    how damp was it when we coated / how dry is it in here / how close are we to the dew point
    how close is the dew point / how far is the steel from dew / how far above the dew point is base
    how far above dew are we / how many degrees has base / how many degrees is base / how many degrees in the oven
    how high is the humidity / how high did base go / what's base at now / what's the part reading
    what's the probe on base say / what's the rh in here / what's the spread now / what's the margin to the dew point
    what's the room doing / what's the surface of base at / what's the metal at
    what's the latest on base, temp I mean / what's the hottest base got / what's the coldest it got
    what's it like in the booth / what's it at in the booth / what was the air when we coated base
    what was the humidity when base was coated / what was the temperature when we mixed
    what was the surface when we coated / what was base reading at eleven / what temperature is it in the shop
    what temperature did base get to / what humidity do we have / what air do we have / what air did we have
    what did the probe say / what did the hygrometer say / what did we read at ten / what does base read
    what does the probe read / what have we for air / what readings do we have on base
    what were the conditions at ten / what were the readings / what are conditions like / what are we at on base
    dewpoint now? / is base hot yet / is base up to heat yet / is it hot in the booth / is it humid in the booth
    is the steel above dew point / is the casing hot / has base hit 90 / has base reached 90
    has base reached temperature / has the humidity gone up / has it got colder / did base hit 90 / did base get to 90
    did the humidity change / was it above 60 / was base at 90 at noon / tell me the air now
    give me the temp on base / show me the last temp / I need the air at the time of coating
  `,
  'how-much': `
    how much B have we got / how much clear is left / how much did we mix today / how much did we bin
    how much did the casing take / how much did we get back / how much do we have of A / how much does base need
    how much does it take to do a gate / how much does the casing need / how much goes on the casing
    how much has been used / how much has been wasted / how much has gone on base / how much has pot 1 left
    how much have I got in pot 1 / how much have we made / how much have we thrown away / how much is left over
    how much mix do we need for the castings / how much mix for four bases / how much of each
    how much paint is in the pot / how much shall I make / how much solvent did we use / how much was mixed
    how much was used on base / how much went to waste / how much will base take / how much will I need for ten plates
    how much would I need / how many grams went on base / how many kilos did we use / how many litres for the tank
    how many litres in the drum / how many ounces for the casing / how many pounds do I mix
    how big a pot for the castings / how big should the batch be / how big should the pot be / how big must the mix be
    how big was pot 1 / how large a batch / how large a mix for base / how full is the drum / how heavy is pot 1
    how heavy was the mix / how low is pot 1 / what amount do I mix / what batch size for the castings
    what do I mix for three castings / what have we got left in pot 1 / what is left of the A / what mass for base
    what size batch for base / what size pot for job 178 / what volume for base / what weight of mix
    what's in can 3 still / what's left in the pail / what's the mass for base / what's the waste today
    mix for two castings, how much / area's 2 m2, how much do I make / 20 sq ft, how much
    for the tank, how many kilos / work out how much I need / figure out the mix for the gates
    figure how much I need / tell me how much for base / need to know how much is in can 3 / need the amount for base
    any A left in can 3 / anything left in the jug / is there any left / is there anything in can 3
    is there mix left / is can 3 empty / is the tin empty / is the waste drum full
  `,
  'to-do': `
    what should I do with pot 1 / what should we do first / what must be done today / what has to happen with base
    what needs to happen next / what needs doing before lunch / what is left for base / what is still to do on pot 1
    what's next after this / what's missing for the release / what's my next job / what's our next move
    what's the job now / what's pending on base / what's first today / what's first on the list / what's after this
    what comes after the flash / what follows the cure / what follows the stir / what have I still got to do
    what have I got left / what have we to do yet / what did I miss on base / what do we do with the castings
    what do you need from me / what do you want next / what does base need next / what does the casing need yet
    what does the next step look like / what can I get on with / what else has to be done / what else is to do
    what jobs are next / what tasks are left / what steps are left on base / what work is left / where do I start
    where do we start / where do we go from here / which job is next / which step is next / which parts need something
    who needs what next / how do I continue / how do we proceed / how to go on / how to proceed with base
    how does it go on / and then / next job please / done that, next? / weighed it, what now / it's out, now what
    I'm done, what's next / I'm ready, what's next / I've nothing to do, what's next / I've finished, what now
    anything outstanding / is there anything left on base / is base finished or is something missing
    did I forget something / did we miss a step / have we done everything on base / is that all / is that everything
    are we finished / am I done / am I finished with base / can I go or is there more / give me a job
    give me my jobs / list my jobs / show me the to do list / tell me what to do next / my tasks / todo list
    open points on base / wats next / waht now / whats nxt
  `,
  'what-late': `
    what is past its time / what is running late / what's behind schedule / what's too late
    what's not been done in time / what should be done already / what should be out by now
    what should be filtered by now / what should I have done / what should have happened
    what should have been filtered / what was due at ten / what was due by now / what was due and not done
    what have I let slip / what did we forget to do in time / what did I miss at lunch
    what did I miss while I was away / what are we behind with / what am I behind on / what bells rang
    what calls did I miss / what checks are overdue / which part has been in too long / which pots are past their time
    which pot is late / which bells are open / which bells are unanswered / which bells went unanswered
    which checks are late / which clocks ran out / which jobs are late / who is late / are we overdue on anything
    are any parts late / are any pots over time / are there overdue things / are there any late ones
    am I late with anything / am I late for base / is anything running over / is something late / is something overdue
    is base over its time / is the casing late / is the air reading overdue / is there anything past due
    did we miss a bell / did we miss the time on base / did anything go over time / did the bell go while I was out
    did a clock run out / has anything gone over / has anything been left too long / has base been in too long
    has base run over / has pot 1 gone over / has a bell been missed / have any clocks run out / any overdue bells
    anything late today / anything left too long / anything that should be out / how far behind are we
    how far over is pot 1 / how much over is base / how much over time is base / list the late ones
    show me missed bells / show missed bells / tell me what I missed / give me the late ones
    just back, what did I miss / been at lunch, what's late / wats overdue
  `,
  'went-wrong': `
    what went wrong yesterday / what went wrong this week / what went badly today / what went off the rails
    what went sour / what has gone wrong today / what's been going wrong / what's wrong with the castings
    what's not right / what's not ok / what's not in order / what's off about base / what's been reported
    what's the matter with pot 1 / what's the trouble with the casing / what is the problem with base
    what was bad about it / what happened to pot 1 / what happened with the oven
    what happened in the booth, anything bad / what problems did you have / what faults did base have
    what faults were found / what defects are there / what defects did we find / what issues are there
    what mistakes did we make / what got ruined / what did I do wrong / what did we get wrong on base
    what did the check find wrong / what failed inspection / what didn't work / what didn't go well
    what hasn't gone well / what was out of range / what's out of spec / what's outside the limits
    what deviations today / which parts were rejected / which parts had faults / which parts have faults
    which pots gelled / which batch had trouble / which jobs had trouble / which ones were bad / where did it go wrong
    where were we out of spec / did anything gel / did anything get spoiled / did something go wrong with pot 1
    did we scrap anything / did we lose anything / did nights have trouble / did it all go well
    was there an incident / was anything out of limits / were there near misses / is something wrong with base
    is there a problem with base / are there any faults on base / has anything gone wrong today
    has something gone wrong / have we had any rejects / have there been problems / any problems on nights
    any issues with base / any accidents / any mistakes today / any errors today / any scrap today / any complaints
    anything amiss / list incidents / show me the problems / show me the faults / wat went wrong / what whent wrong
  `,
  'at-risk': `
    what is close to its limit / what is nearly lost / what could be lost today / what could still be saved
    what can we save / what can go wrong next / what's in danger of gelling / what's in danger of going off
    what's about to expire / what's near its end / what's near the limit / what's nearly gone off
    what's running out of time / what's dying next / what's likely to gel / what's most critical
    what's the most urgent now / what's the next to die / what's the first to be lost / what's the biggest risk
    what's the risk on base / what's tight now / what's pressing / what's hot / what's hottest / what's worst off
    what should I worry about / what should I hurry with / what should I look at first / what do I need to hurry with
    what do we lose if we wait / what needs saving now / what won't make it / what won't last till lunch
    what will die first / what will gel first / what will we lose over lunch / what must not wait
    what can wait and what can't / which pot dies next / which pot goes off next / which pot gels first
    which pot will go first / which pots are dying / which part is at risk / which can is without gas
    which cans have no gas / which cans could go off / which tin is going to skin / which is closest to its end
    which one goes first / which ones are urgent / which windows are closing / is base urgent / is pot 1 going to last
    is can 3 in danger / is the open can at risk / is there anything urgent / is there a pot in danger
    are we in danger of losing base / are we losing anything / are any pots at risk / are any cans at risk
    am I going to lose the pot / will I lose pot 1 / will anything gel over lunch / will pot 1 make it
    do we risk anything / do I risk losing base / any risk now / any pots dying / anything close to the end
    anything on the brink / anything that can't wait / show me what's at risk / tell me what's urgent
  `,
};
