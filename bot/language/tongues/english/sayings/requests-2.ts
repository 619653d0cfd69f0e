// How English speakers say it, in further words: card, traveller, export, now and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfRequests2: Sayings<SaidMeaning> = {
  card: `
    show me batch 2 please / show everything on base / show me all you have on pot 1 / show me how pot 2 stands
    show details of base / casing card please / the card for the casing, thanks / open card base
    open the card for base / open base's card / open up base for me / bring base up / pull base up
    get me base's card / get base up / get the casing up on screen / get up pot 2 / give me all on base
    give me the details on pot 1 / give me the file on base / give me the status on pot 1
    give me the full card of base / give me a look at base / let me see pot 1's card / let me have a look at base
    let me look at pot 1 / I want the card of base / I'd like to see base / I'd like to see the card of pot 1
    I would like to see the casing / I need to see the card for pot 1 / I need base's card
    I need all we have on base / can I have the card of base / can I look at base / can you show pot 1
    can you bring up base / can you pull up the casing / could you pull up pot 1 / could I see base
    would you show me base / please show me pot 1 / please pull up the casing / please bring up base
    kindly show base / kindly show me pot 1 / display base / display the casing / display card of pot 1 / view base
    view pot 1 / view the casing / view card base / look up base's card / check base's card / take me to base
    take me to pot 1 / go to base / go to pot 1 / jump to base / status base / how does base stand
    how does the casing stand / how do the castings stand / where does base stand / where does pot 1 stand
    details base / details of base please / everything about the casing / all we know on base / full details of base
    full story on base / the whole story on base / the record of base / base on screen / casing, full card
    overview of base / summary of base / summary on pot 1 / run down on base / rundown of base / fill me in on base
    fill me in on pot 1 / tell me about base / tell me all about base / tell me how base stands
    tell me what we have on base / report on base / crad base / card bse / cadr pot 1 / sho me base / show me bace
    oga show me base / gie me base's card / gies a look at base / lemme have base up
  `,
  traveller: `
    traveller please, base / print out base's traveler / print off base's traveler
    print the route card of the casing / print the job sheet for base / print the papers that go with base
    print the sheet that travels with base / run me off base's traveller / make out the traveller for the casing
    make up a traveller for base / create a traveller for base / create the traveler for the casing
    generate the traveller for base / produce a traveller for base / write the traveller for base
    issue the traveller for base / draw up the traveller for base / send over base's traveler
    send the customer the traveller for base / send out the traveller with base / email me base's traveller
    give me a route sheet for base / give me the traveller of the casing / I need base's traveller
    I want base's traveler / I'd like the traveller of base / I would like the traveller for base please
    need the traveller printed, base / can I have base's traveller / can I get a traveller for the casing
    can you make the traveller for base / could I have the traveller of base / could I get base's traveler
    could you print base's traveller / could you send me the traveller for base
    could you make a traveller for the casing / please send base's traveller
    please make the traveller for the casing / kindly print the traveller for base / kindly send the traveler for base
    route sheet please, base / job card for base to go with it / process sheet base / process card for base
    follow sheet for base / travel card base / shop traveler base / paperwork for the casing please
    paperwork to go with base / the paperwork of the casing / papers to go with the casing / customer's paper, base
    customer wants the paperwork for base / driver wants the paperwork for base
    driver's waiting for base's traveller / truck's here, print base's traveller
    base is leaving, I need its traveller / base ships today, print its traveler / export base's traveller
    traveller pdf for base / pdf of base's traveller / traveller as pdf, base / traveller as a file, base
    download base's traveller / save the traveller for base / dispatch note... traveller for base
    hand me base's traveller / fetch the traveller for base / fetch base's route sheet / traveler bse / traveller bace
    traveller seven / oga print traveller for base / gie me base's traveller
  `,
  export: `
    export today / export yesterday / export the year / export all / export the batches / export batch 1 to 5
    export pots 1 to 4 / export from monday / export since monday / export since the 1st / export to pdf
    export to excel / export csv this week / export pdf this month / export as excel / export the shift as csv
    csv please, this week / csv since monday / pdf of today / pdf for the auditor / spreadsheet for this month
    spreadsheet please / excel please / file with all batches / file for the auditor / data dump
    dump everything to a file / dump to csv / download everything / download as pdf / save everything to a file
    save this week as a spreadsheet / print the whole month / print last week / print everything from march
    get me last month in excel / get the records out as csv / send the records to the office
    send last month to the office / send the auditor the record as pdf / make an export / make me an export of march
    create an export / create a pdf of the week / generate the csv / generate a report file of the month
    produce a csv of the week / pull an export / pull this month's record / extract the week / extract as csv
    I need an export of last week / I need the log for march / I need the data of the month
    I want the record in excel / I'd like an export of the week / I'd like the month as csv
    I would like the record as pdf / want an export of march / can I have an export / can I have the record as a file
    can I get the log as csv / can you give me a csv of the week / can you save the record / could you make a csv
    could I have a csv / could I get an export / please send me a csv / please make a pdf of the month
    kindly export the record / kindly send the csv / auditor wants a csv / auditor needs the month as a file
    office needs the week / office wants the record of march / supervisor wants the month in excel
    records please, last month / exprot the week / exoprt csv / cvs of the week
  `,
  now: `
    what now, everything / what's on at the moment / what's going at the moment / what's running at the moment
    what is going on / what is live / what's open now, pots and parts / what's active now / what's in hand
    what's in process / what's in progress now / what's being done / what's being done now / what's everyone doing
    what's cooking now / what's ticking / what clocks are running / what timers are on / what pots are live
    which pots are live / which parts are in work / what parts are in cure / what do we have running now
    what do we have on the go / what are we doing / where are we with everything / where do we stand now
    how are we doing now / how are things going / how does it look now / how does it all stand / how's it all going
    how's it going in the shop / how's the floor now / how's everything looking / status report please
    situation report / sitrep / sit rep / update on everything / give me the lot, what's running
    show all pots and parts / list all running / list everything running / list the pots going
    current state of things / current situation / at present? / as of now / all that's on / all clocks please
    tell me where we are / tell me how we stand / let me know what's on / I want to know what's running
    I want the overview / I'd like an overview / I need an overview / I need the status / need a status
    need to know what's running / can I have the status / can I see what's on / can I see the board
    can you show me what's running / can you give me an update / could I have an overview / could you show the board
    kindly give me update / oga wetin dey happen now / what's the craic / what's the story now
    what's the score in the shop / what's up in the shop / wats on now / whats on teh go / staus
  `,
  handover: `
    handover now / handover for days / handover to day shift / handover list / handover summary / handover card
    hand off to Lia / hand-off notes / write me a handover / write up the shift / prepare a handover for nights
    give me a shift report / give the next shift the handover / give Lia the handover / get the handover ready
    get the shift report ready / show me the handover / send the handover to Lia / send nights the handover
    start handover / I'm done for the day, handover / I'm leaving, handover to Ola
    I'm going off shift, hand over to nights / I want to hand over / I'd like to hand over / I need a handover
    I need the handover note / can I have the handover / can I get a handover note / can you make the handover
    can you write the handover / could you do a handover / could you make the shift report
    could I have the shift report / please make the handover note / please write the shift report
    kindly prepare handover / shift summary for the next crew / end of shift note / end of my shift
    my shift's done, handover / my shift is over, hand over to Lia / passing on the shift / pass it on to nights
    Lia's taking over, handover / nights are here, handover / nights are taking over / next shift is here, handover
    Ola takes over now / what to tell the next shift / what goes to the next shift / what do nights need to know
    what does Lia need to know to take over / note for Lia for the shift / message for the next shift
    crew change, handover / relief's here, handover / relieved by Lia, handover / turn over the shift to Lia
    hanodver / hand ovr / handover nots
  `,
  find: `
    find base / find the casing / find s/n 5501 / find sn 5501 / find job number 178 / find all parts of lot 2301
    find all for job 178 / find anything with 5501 / find old records of 5501 / find out what 5501 is
    find what has serial 5501 / find by serial 5501 / search everything for 5501 / search by lot 2301
    search by job 178 / search the archive for 5501 / search old jobs for 178 / do a search for 5501
    run a search on job 178 / look for everything on job 178 / look for the part with serial 5501
    dig up the record on 5501 / dig out 5501 / dig out the record of job 178 / hunt up 5501 / hunt down lot 2301
    hunt out job 178 / trawl the log for 5501 / go through the log for 5501 / go through the record for lot 2301
    check if we have 5501 / check if we had job 178 / see if there's a 5501 / see if 5501 is in there
    see if there's anything on lot 2301 / pull 5501 from the record / pull the record on 5501 / get me serial 5501
    get me lot 2301 / get job 178 up / give me all parts of job 178 / give me what we have on 5501
    show me everything under lot 2301 / show all of job 178 / show everything with lot 2301
    list all parts of job 178 / list everything in job 178 / list parts with lot 2301 / query 5501
    locate serial 5501 in the log / trace down serial 5501 in the books / do we have anything under job 178
    do we know serial 5501 / did we have a job 178 / did we ever have 5501 / did we ever do job 178
    have we had serial 5501 / have you got serial 5501 / have you anything on 5501 / any part 5501
    any trace of serial 5501 / which part is serial number 5501 / which job is 5501 from / what part is 5501
    what have we got under 5501 / what's there on job 178 / could you search lot 2301 / please find 5501
    please search job 178 / kindly find serial 5501 / kindly search lot 2301 / I need to find 5501
    I need serial 5501 found / I want to find job 178 / I'm after serial 5501 / need to find lot 2301
    customer asks for 5501, find it / customer rang about 5501, look it up / fnid 5501 / seach 5501
  `,
  papers: `
    have we got the tds anywhere / have we the msds about somewhere / is the data sheet somewhere in here
    is there a safety sheet anywhere / got the data sheet somewhere / there must be an sds somewhere, show it
    the tds is in here somewhere, open it / papers for demo clear / the papers of the product
    the instructions of the maker / open the product data sheet / show me what papers we have / show docs
    show the docs / let me see the safety sheet / let me read the sds / let me have the data sheet / get the sds up
    get the data sheet out / give me the documents / send me the tds / send over the sds / list all papers
    list the sheets we have papers for / which papers do we have / which papers are there for B
    which documents are there / which data sheets do we have / what documents do we have / what documents are there
    what data sheets have we got / where is the safety data sheet / where are the documents / where can I read the sds
    where do I find the papers / where do I find the tds / have you the sds / do you have the tds / is there an sds
    is there a data sheet / is there a tds for this / got a safety sheet? / I need the maker's sheet
    I want to see the papers / I want to read the data sheet / I'd like the sds / I'd like to see the data sheet
    I would like the papers / can I get the sds / can you show the sds / can you pull up the sds
    could I see the data sheet / could I have the sds / could you open the papers / please send the sds
    kindly show the data sheet / kindly open the sds / sds please, B / sds of the hardener / sds acetone / msds for A
    tds demo clear / product documents / documentation of the clear / docs please / maker's instructions please
    manufacturer's papers / manufacturer's instructions / supplier's sheet / inspector asks for the data sheet
    auditor wants the data sheets / doctor wants the sds / paprs / pappers / data shet / sds pls / tsd please / sdss
  `,
  'set units us': `
    use us customary / use inches / use imperial measures / use american measures / us measures please
    imperial system / imperial units for me / degrees fahrenheit please / degrees f please / degrees f for me
    in ounces please / in mils please / pounds from now on / inches please / inches for me / square feet please
    square feet for me / set my units to imperial / set it to imperial / change units to american / change to ounces
    change to mils / change over to us / switch my units to imperial / put me on us units / put me on fahrenheit
    put me on imperial / put everything in pounds / put temps in fahrenheit / show me imperial
    show everything in fahrenheit / show temperatures in fahrenheit / display fahrenheit / display in imperial
    give me american units / give it me in imperial / I want american units / I want everything in us units
    I'd like imperial / I'd like fahrenheit / I'd like pounds / I'd prefer fahrenheit / I'd prefer us units
    I prefer imperial / I use pounds / I work in pounds / I work in us units / I think in fahrenheit
    I only know fahrenheit / I don't do celsius, give me fahrenheit / I need fahrenheit / I need pounds
    my units are us / make it fahrenheit / make it imperial / make it pounds / make my units us / can I have imperial
    can I get fahrenheit / can I get us units / can I get it in pounds / can you do us units / can you do pounds
    can you give me fahrenheit / could I have us units / could I have fahrenheit / could you switch to us units
    could you show pounds / please use fahrenheit / please show fahrenheit / please set us units
    kindly use fahrenheit / kindly switch to us units / farenheit please / us untis / switch to farenheit
    imperial pls
  `,
  'set units metric': `
    use metric measures / use the metric system / use millimetres / metric system please / metric from now on
    metric again / celsius again / celsius and kilos please / degrees celsius please / degrees c please
    degrees c for me / centigrade please / in microns please / in centigrade / kilos from now on / millimetres please
    millimetres for me / square metres please / square metres for me / set units to si / set my units to celsius
    change to microns / change it back to metric / switch units back to metric / put me on celsius
    put me back on metric / put it back in metric / put everything in metric / put temps in celsius / show me kilos
    show temperatures in celsius / display in metric / display celsius / give me microns / give it to me in kilos
    I want it in grams / I want everything in metric / I'd like celsius / I'd like metric units / I'd prefer metric
    I'd prefer celsius / I prefer grams / I work in metric / I work in grams / I think in celsius
    I only know celsius / I don't do fahrenheit, give me celsius / I need celsius / I need grams / my units are metric
    make it metric / make it celsius / make it grams / make my units metric / go metric / return to metric
    can I get celsius / can I get metric / can I get it in grams / can you use grams / can you show celsius
    can you do metric / can you do grams / can you give me celsius / could I have metric / could I have celsius
    could you switch to metric / could you show grams / please show celsius / please set metric / kindly use metric
    kindly switch to celsius / celcius please / metirc / mertic please / switch to celcius / metric pls
  `,
  'set language es': `
    spanish from now on / spanish only / spanish, thanks / spanish pls / en español por favor / español para mi
    castellano por favor / bells in spanish please / text in spanish / my language is spanish
    set the language to spanish / set luis to spanish / change the cards to spanish / change over to spanish
    switch over to spanish / turn on spanish / put me on spanish / put it all in spanish / put the cards in spanish
    put everything in spanish / make it spanish / make my language spanish / go spanish / show me spanish
    show my cards in spanish / respond in spanish / tell me that in spanish / say that in spanish
    give me my cards in spanish / translate into spanish / I only speak spanish / I read spanish better
    I want everything in spanish / I'd like it in spanish / I'd like my cards in spanish / I'd prefer it in spanish
    I would like spanish / I would prefer spanish / I need my cards in spanish / I understand spanish better
    can I get it in spanish / can I get spanish / can I read it in spanish / can you talk spanish
    can you write spanish / can you reply in spanish / can we do spanish / could I have it in spanish
    could you write in spanish / could you change it to spanish / would you answer in spanish / is there spanish
    do you have spanish / do you know spanish / does it do spanish / please write in spanish / kindly use spanish
    kindly switch to spanish / use spanish for me / use spanish from now on / spainsh / swich to spanish
  `,
  'set language en': `
    english from now on / english only / english, thanks / english pls / english again please / back into english
    ingles por favor / en inglés / bells in english / text in english / my language is english
    set the language to english / change the cards to english / change over to english / switch over to english
    turn it back to english / put me on english / put me back in english / put it all in english
    put everything in english / make it english again / make my language english / go english / return to english
    show me english / show my cards in english / respond to me in english / tell me that in english
    say that in english / give me my cards in english / translate into english / I only speak english
    I don't read spanish, english please / I read english better / I want everything in english
    I'd like it in english / I'd like my cards in english / I'd prefer it in english / I would like english
    I would prefer english / I need my cards in english / I understand english better / can I get it in english
    can I get english / can I read it in english / can you talk english / can you write english
    can you reply in english / can we do english / can we have english / could I have it in english
    could you change it to english / would you answer in english / is there english / do you have english
    does it do english / kindly use english / kindly switch to english / use english for me / use english from now on
    enlgish please / swich to english
  `,
  'set rings direct': `
    ring me personally / ring my phone directly / ring my phone, not the channel / rings straight to me
    my alarms by direct message / my alerts by dm / my reminders by dm / bells as direct messages
    alarms directly to me / timers by dm / timers direct / dm me instead of the channel / dm me instead of the thread
    dm me when something's due / dm me when a bell goes / dm me on bells / dm only please
    direct messages for my bells / direct alarms please / pm me the alarms / notify me directly please
    notify just me / notify only me / ping just me / ping only me / alert only me / text me when it rings
    tell only me when it rings / tell me in private when it rings / send me my reminders privately
    send my reminders to me only / send it to me in a dm when it rings / set bells direct / set alarms to direct
    set my alerts to direct / switch rings to direct / switch my alarms to dm / put my alarms in a dm
    put the bells in my dms / I want to be rung in private / I want to be notified directly / I want to be dmed
    I'd like direct rings / I'd like to be rung directly / I'd prefer dms / I'd prefer a dm / I'd rather have a dm
    I'd rather be rung directly / I prefer direct rings / I need my bells directly / I need my rings in a dm
    can I have direct bells / can I get my bells in a dm / can I get direct rings / can I get dms
    can you notify me directly / could you message me directly / please send my rings in a dm
    kindly ring me directly / kindly send my bells to me / not in the thread, ring me direct
    not the channel, just me / don't ring the channel, ring me / no mentions, dm me my bells / skip the thread, dm me
    keep my rings private / make my rings private / ring me dirct / rings dierct / dm me teh bells
  `,
};
