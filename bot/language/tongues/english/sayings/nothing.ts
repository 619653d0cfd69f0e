// How English speakers say it: nothing. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfNothing: Sayings<SaidMeaning> = {
  nothing: `
    8 isn't dry yet / haven't opened the can / 7 still sticks to the glove / gonna coat 3 after lunch / about to open B
    might be dry / I think 7 was brushed / Ola, put the lid on / my phone died / lunch is in the oven
    that meeting was dry / not coated yet / didn't mix anything / nobody stirred it / the housing hasn't gone in
    valve 2 is not out / no coat on bracket-8 so far / I haven't weighed B / we never filtered batch 1 / fan isn't on
    the fan's not running yet / stirrer wasn't on / pot 2 isn't empty / it hasn't gelled / didn't touch the 5
    I did not brush it / no, that wasn't me who coated 7 / no one's opened part A today / lid's not off
    haven't had a chance to read the temp / no reading yet / still haven't got the humidity / the oven isn't hot
    the oven's not on / oven never got going / 8 never went in the oven / we're not spraying today
    the gun hasn't been flushed / havent cleaned the brush / hasnt been inspected / flange is not released
    the plates arent in yet / no parts came in / can 3 wasn't used / we didn't use the second one / B isn't in
    haven't put B in yet / A is not weighed out / I didn't spill anything / nobody got hurt / no one is down, all fine
    there's no fire / no smoke, false alarm in my head / the rails haven't been blasted / not prepped
    didn't wipe the valve / hasn't flashed off / flash off isn't over / cure isn't finished / it's nowhere near dry
    far from dry / 7 is still wet as anything / still tacky / still soft I'd say not done / not done yet / not ready
    no luck yet / nope not started / we have not begun / wasn't me / I'm not going to open another can
    won't be coating the tank today / can't find a brush so nothing's coated / couldn't get the lid open
    couldnt open the can, gave up / not a drop mixed so far / there was no mix this morning
    none of the valves is coated / neither of them went in / none out yet / it's not 24 in here / it ain't dry
    she ain't done / ain't mixed nothin today / aint touched it / I'm gonna mix at two / going to stir pot 2 in a bit
    will coat 7 when it's warmer / we'll do the housing tomorrow / I'll open can 4 later
    planning on spraying this afternoon / about to start the mix / about to filter / bout to put 8 in
    just about to weigh / on my way to coat the flange / off to fetch the B / heading to the booth to spray
    getting ready to dip the plates / getting set up for the tank / setting out the brushes for later
    want to get bracket 5 done before four / want to mix 2 kilos tomorrow / I need to mix 1.2 kg
    need to coat the valve / have to take 9 out at eleven / gotta flush the gun before lunch / got to gas that can
    must remember to close the lid / should filter soon / should really read the temp / we should mix another
    ought to put the fan on / supposed to open A at nine / it's meant to go in the oven at two
    the 8 is due in the oven / impeller 3 is next for a coat / next I do the housing / then I'll coat 6
    after that comes valve 2 / first coffee, then I weigh A / once the fan's on I'll spray
    as soon as it's dry I'll put it in / when 7 is dry it goes in the oven / when the air gets better we coat
    if it's dry by ten we cure it / if 8 is dry put it in / if the pot gels we bin it
    if I brush 4 now it'd be done by noon / unless it's dry leave it / before I coat 3 I have to wipe it
    until it's filtered nobody coats / we start mixing at half six / coating starts at one
    mixing starts after the break / tomorrow we spray the rails / tomorrow 2.4kg / next week the tanks come in
    monday we open the new lot / later today impeller 9 / this afternoon valves / in ten minutes I take it out
    in a minute I'll read the air / give me five and I'll weigh it / let me coat 7 first / let me just mix this up quick
    lemme get the lid / let's mix a small one / let's get 8 in the oven / lets open a new can then
    thinking of coating the flange / thinking about a second coat on 2 / I was going to brush it but no
    was gonna stir it but got called away / nearly opened the wrong can / almost dropped the 8 / almost dry
    nearly done with 3 / almost got it coated / might coat the bracket / might have been batch 2 / may be dry by now
    maybe 7 is dry / maybe I coated 4, not sure / could be dry / could be the B was opened / perhaps Jo filtered it
    probably cured / probably out already / looks sort of dry / looks dryish, wouldn't bet on it / seems dry from here
    seems like someone opened A / I think it's dry / I guess 5 was coated / I believe Kari mixed one / I reckon it's out
    I suppose it went in at nine / I'd say 7 is dry but don't quote me / not sure if 8 got coated
    not sure whether the fan is on / unsure if B went in / don't know if it's been stirred
    dunno, might have been filtered / no idea whether 6 went in / someone said pot 2 was empty
    heard the housing came out / apparently can 3 is finished / rumour is they opened the new lot
    Ola says it might be dry / supposedly it was blasted / it was dry I think, or was it
    if I remember right I brushed 2 / can't remember if I closed A / I'm fairly unsure about the weight
    the scale may have said 1200 / it said 1200-ish or so I was told / wish it was dry / wish 8 was done already
    hope the housing is dry soon / hoping pot 1 lasts / hopefully it's cured / I'd love to coat 3 now
    would be nice if the fan was on / if only the oven was hot / fingers crossed it dries / pray it doesn't gel
    let's hope the lid was on / can't wait till 7 is out / would rather spray than brush / I'd have mixed more
    would have coated it if it was warmer / could have brushed 4 but no time / should have filtered it
    should've put the lid on / Kari, open the B please / Ola mix 2 kilos / Jo can you take the 8 out
    somebody put the fan on / someone flush the gun please / lads, lids on / hey put 7 in the oven will you
    please coat the flange / don't coat 8 / don't open the can / dont stir so fast / don't put it in yet
    stop stirring like that Jo / leave the lid on / keep the fan going / mind the wet paint / keep your hands off 3
    hands off the housing, Ola / somebody grab me can 2 / bring me the B / hand me the brush / pass me the scale
    hold this / get the lid, quick / go read the temp Jo / make sure it's dry / make sure the fan's on / check 8 is dry
    check on pot 2 would ya / remember to gas A / tell Kari to open the new can / ask Jo if it's dry
    tell the new kid to wear gloves / show Bea how to filter / you do the 5, I do the 6 / you coat and I'll stir
    Kari you're on the oven today / wait till it's dry / wait for the bell / take a break / go home
    last week we coated the rails / last week 8 was dry in ten minutes / last month a pot gelled on us
    on friday we mixed three batches / yesterday's mix was thick / the week before we had 60 percent humidity
    back in march the oven broke / last year we opened forty cans / years ago we sprayed without masks
    my old shop stirred for two hours / at my last place they dipped everything / used to brush them all
    when I started we mixed by eye / in the old days nobody filtered / that time the pot went off in Ola's hands
    remember when Jo coated the wrong valve / the other day I dropped a lid / last summer it was 35 in here
    the last job was twelve tanks / the night shift had a spill in january / my beer's in the freezer
    coating my throat with honey / painted the kitchen on saturday / put a second coat on the garden fence at home
    mixed feelings about that / the wife mixed a cake / my kid opened the presents / stirring up trouble as always
    stir crazy in here / don't stir the pot mate / he's full of gas / I'm out of gas on the way home
    truck's out of gas / the van's at 90 degrees again / got my truck coated underneath / brushed my teeth
    brushed shoulders with the boss / brushed the dog / dipped my biscuit in it / dipped below zero at home last night
    dropped the kids at school / rolled my ankle playing football / rolled in at six / sprayed deodorant, you're welcome
    cured ham for lunch / is there a cure for mondays / cured of my cold finally / my socks are dry
    dry humour that lad / it's dry outside / dry january for me / washing's not dry at home / throat is dry
    that joke fell flat and dry / flash flood on the road in / flash car that / he's a flash git / battery's dead
    the phone's dead / my watch died / the radio died / the mower gelled up with old petrol / filter coffee's ready
    filter your words mate / coffee is on / tea's brewed / kettle's on / pizza's in the oven
    took the pie out of the oven / oven at home is broken / I'm cooked / I'm baked / burned my toast
    burnt the dinner again / what a day / what a mess lol / what a game / we won two nil / two one for us / lost 3 to 1
    penalty in minute 90 / that keeper 8 was useless / number 7 scored / 10 out of 10 / my fan is on the blink at home
    he's a big fan / I'm a fan of that / big fan of yours / not a fan / can do / can can can lol / can't complain
    yes we can / as soon as I can / kick the can down the road / open to ideas / open question that / opened a beer
    opened my big mouth / opened a bank account / closed for lunch / lid on it please, I'm on the phone
    keep a lid on it / put a lid on your moaning / blow your lid / got weighed at the doctor, 84 kilos
    weighing my options / I weigh too much / lost 3 kilos / the baby's 3.4 kg / temperature's rising between those two
    my kid has a temperature of 39 / got a temp from the agency starting monday / hot date tonight / too hot for work
    it's freezing out / cold today / sweating like mad / bit of a chill / rain again / raining cats and dogs
    nice weather / traffic was hell / bus was late / stuck behind a tanker / clutch is slipping on the old truck
    changed the oil in the van / new tyres on the truck / need a new truck / truck won't start / fixing my bike tonight
    going fishing / out of office / out sick tomorrow / out of here / count me in / all done in / dead tired / dog tired
    hungry / starving here / lunch? / who's for chips / pub later / beer o'clock / smoke break / break time
    back in five / brb / on the phone / call me later / ring me tonight / ring the missus / wrong number / lol / haha
    hmm / hm ok / whatever / right then / so anyway / nothing to report / nothing new / all quiet / same old / no change
    nothing happening here / just looking / just testing / asdf / ... / 👍 / 😂😂 / pocket typed that
    the cat walked on the phone / autocorrect sorry / voice thing is rubbish / gloves too thick for this screen
    can't type with these / my thumb slipped / screen's all sticky / my locker key's gone / payday tomorrow
    overtime this weekend? / got paid late / holiday next week / going on holiday in june / booked two weeks off
    union meeting at three / safety talk was boring / the visitors come at ten / customer is a pain
    customer came by to chat / delivery guy was rude / the forklift is booked / floor wants sweeping
    somebody nicked my gloves / new boots hurt / music's too loud / turn the radio up / radio 2 is on / great song this
    it's Ola's birthday / cake in the canteen / happy birthday Jo / congrats on the baby / get well soon Kari
    8 o'clock and no one here / 7 of us at the party / 3 more days to the weekend / only two hours to go home
    2.4 is what I pay for petrol / 24 and sunny at home / 48 percent of us hate mondays
    batch of cookies on the table, help yourselves / my wife made a batch of tamales / bad batch of people upstairs
    got potted on saturday / pot plants need water / pot luck on friday / going to pot this place
    a pot of coffee for the boys / the housing market is mad / my house valve leaks / heart valve op for my dad
    lost part of my wits / best part of the day / I play my part / part time only / parts for the truck came
    the truck's parts are on order / brakes on the lorry are shot / say it's dry and it'll be dry, ha
    if I had a dollar for every wet part / watching paint dry, literally / like watching paint dry
    imagine it gelled now / suppose the fan stops / just saying what if B was in already / pretend 3 is coated
    for example "coat 7 1 brush" / you'd type something like dry 7 / the manual says mix A into B
    the poster says lids on / the sign on the oven says 90 / the training video had them stir for two hours
    nice work on the parts today / great job on those housings everybody / good work today team
    really good work this week guys / well done on the brackets / looks like good work to me / the air hose is new
    we got a new hose for the supplied air / new airline arrived by the way / that can is empty
    can 4 is empty, need to order more / B is nearly empty, tell purchasing / the gloves stick to everything today
    its 30 degrees outside, beach weather / 28 degrees out there in the sun / finished for today
    passed my driving test / this part looks nice
    lid-4 of job 117 was sent back to the customer / they were sent back to the mill, wrong size
    we returned the posts to the supplier, job 116 / sent the six hubs of job 115 back
    the hinges went back on the truck / customer refused the wheels and took them back
    job 118 was cancelled and the pipes went back / the pipes for job 118 are still at the mill
    they have not brought the posts for job 116 yet / no sign of the twelve hinges for job 117
    the hubs for job 115 are late / posts 1 to 10 have not turned up / still missing four of the levers, job 119
  `,
};
