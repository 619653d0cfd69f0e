// How English speakers say it: card, traveller, export, now, handover, find, papers, set units us, set units metric, set language es, set language en, set rings direct, undo, help, greeting. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfRequests: Sayings<SaidMeaning> = {
  card: `
    card of 7 / card for the housing / card impeller-3 / show card batch 1 / show me everything on part 7
    show me everything about pot 2 / everything on the flange / everything you have on valve 2 / all about batch 3
    all you know on bracket-8 / full info on 5 / full record of impeller 3 / full card for pot 1
    give me the card for 9 / give me all of batch 2 / pull up 8 / pull up the housing / pull up batch 1 for me
    bring up pot 2 / bring up valve 7's card / open the card of the tank / open up impeller-2's sheet
    let me see part 4 / let me see pot 3 / let's see batch 1 / lets have a look at the file on 6 / show 7 / show batch 2
    show pot 1 please / show me the flange / display bracket 5 / put the card for 12 up / how does 7 stand
    how does the second pot stand / where does the housing stand / status of batch 1 / status of valve 2
    state of impeller-3 / tell me all about 10 / need the whole story of pot 2 on screen / what do we have on rail-12
    dump everything on the tank
    have a look at the 6 / let me take a look at pot 2 / could I get a look at valve 4 / gimme a look at the flange
    can I see the 3 / can I see batch 2 / could we see what we have on the tank / what have you got on part 9, show me
    run me through pot 1 / fill me in on the housing / details of 7 / details for batch 2 please
    put part 4 up on the screen / get pot 1 up here / bring the whole thing up for 5 / I want to see rail-12
    I want to look at batch 1 / need to see the 10 / pull up where the 6 is at
    show me where valve 3 is at / lemme see 8 / lemme see pot 2 / lemme look at the housing / history of 9
    what's the history on the flange / give me the rundown on 7 / rundown on pot 2
  `,
  traveller: `
    traveller for 7 / traveler for the housing / print the traveller of impeller-3 / print the traveler for valve 2
    print me bracket-8's traveller / send the traveller for the flange / send me the route sheet of 5
    route sheet for 4 please / routing sheet, tank / route card for 9 / print route card for 12
    I need the traveller for 8 / need a traveller on the plates / need paper for impeller 2, the traveller
    make the traveller for valve 7 / make me a traveler for 220 / get me the route sheet of the housing
    get the traveller out for 6 / give me the traveller for serial 4411 / can I have the traveller for 3
    can you print the shop traveler for bracket 5 / could you send Jo the traveller of 10 / traveller pls, 7
    traveller impeller-3 as pdf / pdf traveller for the tank / run off a traveller for the flange
    run me a route sheet for rail 12 / job sheet for the housing to go with it / the paper that travels with 8, print it
    print the paper to go with the valve / part's leaving, print its traveller
    customer wants the traveller for his impeller / the driver needs the route sheet for 4
    send over the traveller on job 88 / process sheet for 5 / print out the route for bracket-2
    download the traveller of 11 / email the traveller for valve 2 / hand me the traveller for the second housing
    follow sheet for 7 please / issue a traveller for the plates
    print out whatever travels with 8 / paperwork for 9 / send the paperwork for the housing
    I need the paperwork for impeller 2 to go on the truck / driver's here, print the paperwork for 5
    paper for the customer on valve 3 / get me the customer's paper for 4
    run off the paperwork on the flange / shop paper for 12 please
  `,
  export: `
    record for the last two weeks in a spreadsheet file / file of the week for the office pc / export / export this week
    export the month / export as csv / export pdf / export november / export the record / export last week as pdf
    export batch 1 to 9 / csv please / csv of this month / csv for the week / csv of everything since monday
    pdf of the week / pdf of last month's record / give me the record as csv / give me a spreadsheet of this week
    spreadsheet of the month pls / can I have last month in a csv / can you export it for the auditor
    could you send me the records for march / send the week as a pdf / send the log for october
    send me the whole record / download the record / download the log / download this month as csv
    dump the month to csv / dump the log to a file / print the week's record / print the month / save the week as a file
    make a pdf of the month for the supervisor / make me a csv from the 1st to the 15th
    pull the records for the last 30 days / pull last week into a spreadsheet / get me the data for the month
    office wants the log as a file / auditor wants the month in pdf / extract of the record, this week
    records of this quarter as csv
    send the log over / get me everything from this week in a csv / I need last month's record
    need this month as a spreadsheet / office is asking for the week in csv / can you put the month in a csv
    shoot me the csv for last week / everything from today as a file / todays log as csv / mail the record of this month
    can I get a dump of yesterday / spit out a csv / the whole log, as a file
  `,
  now: `
    what's running / what runs now / what's on right now / what's going on / show what's running / show me what runs
    what have we got on the go / what's on the go / what's live / what's active / status / status? / status please
    current status / where do we stand / where are we at / how do things stand / how are things standing
    what's the state of play / state of play? / what's happening in the shop / what's cooking, which pots and parts
    overview of what's running / everything that's running / all clocks / show the clocks / show all timers and pots
    what's in progress / what's underway / what's stirring and what's curing / what's in the oven and what's in the pots
    board please / show the board / let me see the board / give me the picture / snapshot of now
    right now, what have we got / just walked in, what's going / what's everybody on / pots and parts right now / now
    live view
    lay of the land please / give me the lay of the land / what all have we got running / what all is running
    catch me up on what's running / get me up to speed, what's live / everything that's live
    everything on the go right now / show me the whole shop / how's the shop looking right now
    what's the status of everything / all the clocks that run
  `,
  handover: `
    handover / hand over / handing over / hand over the shift / shift handover please / hand over to the night shift
    handing over to Ola / handing over to the late crew / do the handover / make the handover / make me a handover note
    handover note for Kari / handover sheet / handover report / shift report / shift report pls / end of shift report
    write the shift report / give me the shift report / report for the next shift / report to the next crew
    what do I tell the next shift / what do I pass on to nights / what does the next shift need to know
    notes for the next shift / notes for the night crew / turnover report / shift turnover
    shift change, give me the handover / change of shift / shift change / closing my shift, handover to Jo
    I'm off, pass it on to the late shift / passing the shift to Bea / passing the baton to Ola
    I'm clocking off, hand it over to Kari / knocking off, give nights the rundown
    end of shift, sum up for the next lot / Jo takes over from here, do the handover
    Bea's taking the shift over from me / wrap up the shift for the next guys / start the handover
  `,
  find: `
    find 4411 / find serial 220 / find lot 88B / find job 88 / find impeller-3 / find everything with 2231
    find me the flange with serial 901 / look up 4411 / look up job 90 / look up lot A-204 / look up serial 17 for me
    lookup 310 / search 4411 / search for lot 17 / search serial 5520 / search job 12 / search the record for lot 55
    search old parts with serial 66 / do we have a serial 4411 / do you have anything on lot 310
    have you got a part with serial 901 / have we ever had job 77 / any record of serial 118 / anything under job 90
    anything on lot 2231 / is there a part with number 5520 / which part has the serial 4411 / which part is serial 220
    what is serial 901 / can you find lot 12C / can you look for job 45 / can you look up the serial 3308
    could you search 88-B / I have a serial here, 7712, look it up
    got a customer on the phone with serial 640, find it / customer gave me number 4411, what's that / dig out job 31
    dig up lot 19 / pull job 64 from the record / hunt down serial 808 / query lot 72 / locate job 15 in the log
    look in the books for serial 77 / check the books for job 14 / look through the log for lot 20
    see if you have serial 606 / bring up lot 98 / bring up everything on job 61 / pull up job 61
    pull up everything under lot 12B / show me everything from job 23 / what have we got on lot 5531
    what have we got under job 19 / list the parts on job 70 / list everything from lot 8
    see what comes up for serial 1212
  `,
  papers: `
    papers / list papers / list the papers / show papers / show me the papers / which papers are there
    what papers have we got / what papers are there for the clear / the maker's papers / maker's papers please
    open the papers / open the maker's paper / let me see the data sheets / data sheet please / tds / tds pls / sds
    sds please / sds for B / safety data sheet / safety sheet for part A / msds for the hardener
    where's the safety data sheet / where are the papers / where do I find the sds / have we got the sds
    need the safety data sheet / need the tech sheet / technical data sheet / tech data sheet of the clear
    product sheet pdf / pull up the data sheet / get me the sds / give me the manufacturer's sheet
    manufacturer's documents / documents / docs for the coating / documents from the maker / paperwork for this product
    can I read the maker's instructions / inspector wants to see the data sheets / application guide from the supplier?
    got the msds handy / have you got the sds handy / bring me the tech sheets / bring up the sds
    the tech sheet please / tech sheets / show me the maker's data sheet / where's the msds
    print out the data sheets / paper list / pull the safety sheet up
    print the papers / print out the paper list / print out all the papers we have
  `,
  'set units us': `
    set units us / units us / us units / us units please / use us units / use american units / american units pls
    switch to us units / switch me to fahrenheit / switch to fahrenheit and ounces / change to fahrenheit
    change my units to imperial / imperial / imperial units / imperial please / imperial for me / I want fahrenheit
    I want pounds and ounces / I'd like it in fahrenheit / I need it in inches and mils / give me fahrenheit
    give it to me in ounces / show fahrenheit / show me mils and pounds / show it in imperial / put it in fahrenheit
    put my cards in US measures / talk to me in fahrenheit / speak fahrenheit to me / fahrenheit from now on
    from now on use pounds / can you do fahrenheit / can I have it in fahrenheit / can I get this in american
    could you use sq ft and °F / freedom units 🇺🇸 / freedom units please
    set me to US / my units: us
    I'd rather read it in fahrenheit / I'd rather have pounds / change me over to fahrenheit and pounds
    switch me over to pounds and fahrenheit / switch over to fahrenheit / read it to me in fahrenheit
    everything in fahrenheit please / temps in fahrenheit and weights in pounds / pounds and fahrenheit for me
    gimme fahrenheit / gimme pounds / fahrenheit / fahrenheit please / pounds please
  `,
  'set units metric': `
    set units metric / units metric / metric / metric please / metric units / metric for me / use metric
    use metric units / use celsius / switch to metric / switch me to celsius / switch back to metric / go back to metric
    back to grams / back to celsius / change to celsius / change units to metric / change my units to grams and microns
    I want metric / I want celsius / I'd like grams / I'd rather have celsius / I need it in metric / give me celsius
    give it to me in grams / show grams / show me celsius / show it in metric / put it in celsius
    put my cards in metric / celsius from now on / from now on in kilos / can you do celsius / can I have it in grams
    could you use SI units / SI units / SI please
    set me to metric / my units: metric
    I'd rather read it in celsius / I'd rather have kilos / change me over to kilos and celsius
    switch me over to kilos / switch over to celsius and grams / read it to me in celsius / everything in celsius please
    temps in celsius and weights in kilos / kilos and celsius for me
    gimme celsius / gimme kilos / celsius / celsius please / kilos please
  `,
  'set language es': `
    set language es / language spanish / language es / spanish / spanish please / in spanish / in spanish please
    in spanish from now on / speak spanish / speak spanish to me / talk spanish / talk to me in spanish / use spanish
    switch to spanish / switch me to spanish / switch language to spanish / change to spanish
    change the language to spanish / change my language to spanish / change it to español / español / español por favor
    put it in spanish / put my cards in spanish / set me to spanish / set spanish / set my language to spanish
    answer in spanish / answer me in spanish / reply in spanish / write to me in spanish / I want spanish
    I want it in spanish / I'd rather have spanish / I prefer spanish / I need spanish / can you do spanish
    can you speak spanish / can I have this in spanish / could you answer in spanish / do you speak spanish
    give it to me in spanish
  `,
  'set language en': `
    set language en / language english / language en / english / english please / in english / in english please
    in english from now on / speak english / speak english to me / talk english / talk to me in english / use english
    switch to english / switch me to english / switch back to english / back to english / go back to english
    change to english / change the language to english / change my language to english / inglés / inglés por favor
    put it in english / put my cards in english / set me to english / set english / set my language to english
    answer in english / answer me in english / reply in english / write in english / I want english
    I'd rather have english / I prefer english / I need english / can you do english / can you speak english
    can I have this in english / could you answer in english / do you speak english / give it to me in english
  `,
  'set rings direct': `
    set rings direct / rings direct / direct bells / bells to me direct / send my bells to me privately
    send bells to me as a dm / send my rings by direct message / send me the bells in private / dm me the bells
    dm me when it rings / dm my alarms / dm please, not the channel / pm me the bells / ring me privately
    ring me directly / ring me in private / ring me, not the whole channel / ring just me
    message me directly when it rings / message me my bells privately / private bells / private rings please
    private alarms for me / I want my bells in private / I want my alarms as a direct message
    I want to get rung directly / I'd like my reminders in my dm / can I have my bells in a dm / can you ring me direct
    can you send my alarms only to me / could I get the bells privately / could you dm me instead of the thread
    put my bells in my direct messages / put my rings in private chat / my bells only to me / my rings as dm
    bells straight to me / bells to my inbox / alarms to my own phone, not the group
    don't ring me in the channel, dm me / stop mentioning me in the thread, send it direct
    switch my bells to direct messages / change my rings to private
    alerts in private please
    send my alerts to me directly / reminders straight to me, not the group / timers to me in private
    ping me directly for bells
  `,
  undo: `
    undo / undo that / undo the last / take that back / take back the last thing I said / scratch that / strike that
    cancel that / cancel the last one / cancel / delete that / delete the last entry / delete my last line / remove that
    remove the last one pls / erase that / wipe that last one / forget that / forget what I just said
    forget I said that / ignore that / ignore my last / disregard / disregard the last message
    never mind that, take it out / nvm undo / oops, undo / oops wrong one / whoops that was a mistake
    my bad, undo that / sorry, that was wrong, take it off / that was wrong / that was a typo, scrap it / scrap that
    scrap the last entry / that's not right, undo / I didn't mean that / didn't mean to send that
    sent that by accident / that went by mistake / hit the wrong button / pressed the wrong thing, back
    tapped the wrong tap / fat fingered it, undo / wrong part, take it back / wrong button / wrong entry
    wrong line, kill it / kill that last line / drop that / drop the last / go back / go back one / back one step
    step back / one back please / revert / revert that / roll that back / reverse the last entry / rub that out
    void that / void the last record / retract that / I take it back / take it back / unsay that / can you undo that
    can you take that off the record / could you delete what I just put in / please undo my last
    pls remove what I typed / no no no undo / no wait, cancel that / wait, not that, undo / ah crap undo
    damn, take that out again / shoot, take it back / correction, cross that out / cross that out
    strike the last one from the record / my glove hit send, undo / ctrl z / ctrl+z lol / withdraw that / un-do
    undo it / unto that / that shouldn't be in there, take it out / get rid of that last one
    yank that last one / yank that back out / pull that back out / hit send too soon, undo / sent too soon, forget it
    that went in by accident, get rid of it / that one's wrong, get rid of it / didn't mean that one, kill it
    pretend I didn't say that / that never happened, undo it / lose that last one
    spoke too soon / I spoke too soon, its not / said that too soon, undo / said it too early, take it back
    oh no it isn't, undo
    it's not after all, undo / turns out it isn't, take that back / I was wrong, it's not dry, undo
    chuck that last line / wrong piece, forget it / wrong pot, take it out again / I tapped that by accident
  `,
  help: `
    help / help me / help pls / how does this work / how do I use this / how do you work / what can you do
    what can I say / what can I ask you / what do I type / what should I type / what are the commands / commands
    command list / list of commands / menu / options / instructions / manual for this thing? / show help
    I need help with this bot / need a hand with this app / not sure how to tell you / how do I tell you a coat
    how do I enter a reading / how do I write a mix / how do I say it's dry / how do I log a can
    don't know what to type / I don't get how this works / I'm lost here / stuck, how do I use you
    what words do you understand / which words do you know / what do you understand / explain how to use you
    show me how to talk to you / help with mixing line / help all / ?help
    how do I talk to this thing / how do I talk to you / show me what I can type / what am I supposed to type
    what am I meant to say here / how do you want me to write it / first time on this, what do I type
    no clue how this thing works / give me a list of what I can say / how does this bot work
  `,
  greeting: `
    hello / hello there / hi / hi bot / hi everyone / hey / hey there / hiya / heya / howdy / howdy folks / yo / sup
    g'day / good morning / morning / morning all / mornin / good morning crew / good afternoon / afternoon all
    good evening / evenin / good night / night all / bye / bye bye / goodbye / see ya / see you tomorrow / cheers
    cheers mate / thanks / thank you / thanks a lot / thanks bot / thx / ty / many thanks / much appreciated
    nice one, thanks / ta / you're a star / you're the best / good bot / love you all / welcome back / hello again
    alright mate / hey team 👋 / have a good one / take care / later folks / thank you so much, that helped
    great, thanks
  `,
};
