// How English speakers ask, in further words: fan, to-coat, on-hold, counted and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking6: Sayings<AskedMeaning> = {
  fan: `
    is the fan running now / is the fan on yet / is the fan still running / is the fan up / is the booth fan working
    is the exhaust fan on / is the extraction still on / is the blower on / is the ventilation running
    is there extraction in the booth / is there air movement in the booth / is there suction / is there a fan running
    is lev on / is air being pulled / is it drawing / is it extracting / are the fans on / are the fans running
    has the fan been on all day / has someone turned the fan on / has somebody switched the extraction on
    has the booth fan been started / did the fan come on / did I turn the fan on / did I leave the fan on
    did anyone start the extraction / did we put the fan on / was the fan on when base was sprayed
    was the fan on for the flush / was the fan running at ten / does the fan run / does the fan work
    does anybody know if the fan is on / do we have extraction on / do we have the fan on / have we got the fan on
    have we got extraction / have you got the fan on / how fast is the fan / how strong is the extraction
    how much does the fan pull / how much air does the fan move / what's the fan doing / what's the fan at
    what's the fan reading / what's the face velocity / what's the airflow / what's the extraction doing
    when was the fan switched on / when did the fan stop / since when has the extraction been running
    who has the fan running / fan reading? / state of the fan / tell me about the fan / tell me if the extraction's on
    check if the fan is on / I can't tell if the fan's running / can somebody tell me is the fan on
  `,
  'to-coat': `
    what is still to be coated / what is not coated yet / what is waiting for a coat / what is left to spray
    what's not done with a coat / what's to roll / what's next for the gun, part I mean / what's left for the brush
    what's left to dip / what's ready for the gun / what's waiting to be painted / what's still raw
    what needs spraying / what do I coat with this / what do I coat now / what do I paint next / what do I spray next
    what do we still have to coat / what else is bare / what can I coat with the rest
    what can I coat with what's left / what can we put this on / what should I coat next / what parts have we to coat
    which are to be coated / which aren't coated / which bits are bare / which bits need a coat
    which castings are not coated / which castings need coating / which gates are left to paint
    which haven't got a coat yet / which need paint / which one do I coat next / which one is next for a coat
    which one next, bare ones I mean / which ones have no coat / which ones haven't been coated
    which part next for the gun / which parts are ready to coat / any castings left to coat / any more to coat
    any parts not coated / anything still uncoated / are there any bare ones / are there any parts left to coat
    are all the castings coated / is everything coated / is anything uncoated / is there anything else to coat
    have we coated everything / have we coated all / did we coat them all / list bare parts / list the uncoated
    show bare parts / show uncoated parts / show me what's bare / give me the bare ones / give me the parts to coat
    parts without coat
  `,
  'on-hold': `
    what parts have we on hold / what is held back / what's on hold from job 178 / what's on hold and why
    what's on hold here / what's in the hold cage / what's in the hold area / what's rejected / what's got a red tag
    what's waiting for a decision / what's waiting for release by the lead / what's not allowed to ship
    what can't ship / what can't go out / what mustn't go out / what do we have in quarantine
    what have we got in quarantine / what did we hold today / what did nights put on hold / what did the lead hold
    what did I put on hold / what holds do we have / which bits are on hold / which castings are held
    which gates are on hold / which have a red tag / which holds are open / which jobs have holds
    which one is on hold / which ones are red tagged / which ones are set aside / how many are held
    how many holds are there / is base set aside / is base off hold / is the casing held
    is the hold on base still on / is there a hold on the casing / is there anything in quarantine
    is anything on hold now / is something on hold / are the castings still on hold / are there open holds
    are any castings on hold / has base got a hold on it / has the hold been lifted / has the hold on base been lifted
    do we have anything on hold / did somebody put base on hold / did we put base on hold / did the hold come off base
    did the hold get lifted / any holds on job 178 / any red tags / list the held parts / show me the parts on hold
    show me held parts / tell me which are on hold / give me the hold list / hold list please
  `,
  counted: `
    how many have we got to go / how many have we shipped / how many have been coated / how many have been released
    how many have come in / how many have gone out / how many bases are coated / how many bits are done
    how many castings are left / how many castings came in / how many gates are finished / how many gates in job 178
    how many came in today / how many are ready / how many are still in cure / how many are there in job 178
    how many did we coat today / how many did we do yesterday / how many did nights do / how many did Lia coat
    how many do we have on the rack / how many do we have left / how many in all / how many in the booth
    how many in the shop / how many so far today / how many left to coat / how many released today
    how many still to do / how many parts are bare / how many parts did we do today / how many pots did we mix
    how many batches did we mix / how many batches have we mixed / how many batches this week
    how many mixes did we make / how many went out today / how many were done yesterday / how many were released
    how many of job 178 are done / how many of those are out / how many more to go / how many jobs are open
    what is the total / what's the count for job 178 / what's the total so far / what's today's count
    what's our total / count the parts in the oven / count what's in the oven / number of castings done
    number of pots today / number of batches today / tally so far / total done today / total for job 178
    tell me how many are done / tell me the count / give me the number done / give me a count
    add up the castings for me
  `,
  coats: `
    how many coats have the castings got / how many coats are to go / how many coats for job 178
    how many coats do I put on / how many coats do we put on / how many coats more on base
    how many coats should base have / how many coats were put on base / how many coats left on base
    how many coats still / how many more coats / how many layers have we put on / how many layers of paint
    how many passes did base get / how many passes has base had / how many times did we coat base
    how many times has base been coated / how often has base been coated / how often was base coated
    what coat are we on with base / what coat number is base on / what coat is next on base
    what's the coat count for base / which coat is next on base / which coat was that / is that the first coat on base
    is this the last coat / is there one coat or two / is there a second coat to come / is another coat needed on base
    is a second coat due on base / is base coated once or twice / is the casing coated yet
    are the castings coated yet / are there two coats on base / are both coats on / was base given a second coat
    was that its second coat / has base been coated yet / has base got one coat or two / has base had its coat
    has the casing been coated / have the castings had a second coat / did base get two coats
    did the casing get its second coat / did we coat base twice / did the castings get a coat
    does base have two coats / does base get another coat / does base need another coat
    does the casing need another coat / do the castings need a second coat / do I give base a second coat
    just one coat? / first or second coat? / coats so far / tell me how many coats base has / give me the coat count
    give me the number of coats on base / lost count of the coats on base
  `,
  'from-batch': `
    what did we use pot 1 for / what did pot 1 get used on / what has been coated with batch 2
    what has batch 2 been used on / what has batch 2 gone on / what has pot 1 gone on / what have we done with pot 1
    what have we put batch 2 on / what is coated from pot 1 / what was made from pot 1 / what was dipped in pot 1
    what was rolled from batch 2 / what parts did we do with pot 1 / what parts did pot 1 go on
    what parts have pot 1 on them / what's been painted from pot 1 / what's been sprayed from pot 1
    what all did pot 1 do / what else came out of pot 1 / what else is from batch 2 / which castings came from batch 2
    which castings were done from pot 1 / which gates were painted with batch 2 / which have pot 1 on them
    which ones were done with pot 1 / which part got the end of pot 1 / which parts are out of pot 1
    which parts got the last of pot 1 / which parts have batch 2 on them / which parts were dipped in pot 1
    which parts were sprayed with batch 2 / is base out of pot 1 / is the casing from pot 1 or 2
    are the castings from the same pot / are they from the same batch / was base done from pot 1 or pot 2
    was the casing coated from pot 1 / were the castings coated from pot 1 / did base come from pot 1
    did base get pot 1 or 2 / did the casing come out of batch 2 / did the castings get pot 1
    has base got pot 1 on it / has base got batch 2 on it / has anything been coated from pot 1
    was anything coated from batch 2 / any parts from batch 2 / how many parts came from pot 1
    how many came out of pot 1 / how many did batch 2 do / where did we use batch 2 / where was pot 1 put
    list what came from pot 1 / list all from batch 2 / show me what pot 1 did / show me parts of batch 2
    tell me what got batch 2 / give me the parts of batch 2 / give me all parts from batch 2
    everything that got pot 1
  `,
  details: `
    what is base made of / what job is base from / what job does the casing belong to / what's base made out of
    what's the area on the casing / what's base's area / what's the serial on the hub / what's stamped on base
    what's the metal of base / what's the thickness of base's wall / what's known about base
    what material is the casing / what size is base / what sort of steel is base / what do you know of base
    what have we on record for base, serial and job / which serial has base / which serial is on the casing
    which metal is base / which customer is base for / whose is base, which customer
    whose casting is that, customer I mean / how big is the casing in square metres / how many square feet has base
    how many square metres is the casing / how thick is the casing's wall / how thick is the metal on base
    how heavy is base / how large is base / is base cast iron / is base aluminium / is base stainless or carbon
    is base brass or bronze / is the casing iron or steel / is base galvanised / is base for job 178
    does base have a serial / does base belong to job 178 / do we have base's serial / do we know the area of base
    do we know the wall of the casing / have we got base's serial / have you got the serial of base
    have you the job for base / serial for the label, base / size of base? / weight of base? / specs on base
    details for the label of base / particulars of base / data of base, serial and area
    tell me the area of the casing / tell me what base is made of / give me base's serial
    give me the serial and job of base / need base's serial for the label / I need the serial of base
    I need the job number of the casing / can't read the serial on base / customer asks for base's serial
    label needs the job of base / read me the serial of base
  `,
  bears: `
    what can the casing stand in the oven / what temperature can base stand / what's base good to
    what's base good for in the oven / what's the top temperature for base / what's the highest base can go
    what's the most heat base can take / what's too hot for base / what's the temperature limit of the casing
    what is base rated for / what is the max temperature of base / how hot can base be made
    how hot can I get the casing / how hot can I bake base / how hot may base get / how hot may the casing be
    how hot is too hot for base / how much heat is base good for / how far up can I go with base in the oven
    how high may I heat the casing / up to how many degrees is base ok / can base go in a 90 oven / can base go to 100
    can the casing take ninety / can the castings stand the oven / can the seal in base take 90
    can the rubber in base take the oven / can it take the heat / can these stand 90 / could base stand 100
    will base survive 90 / will base warp at 90 / will the casing stand it / will the rubber survive
    will the plastic in base melt / will the magnets stand 90 / does base bear 90 / does base bear the oven
    does base have a max temperature / does the casing have a heat limit / does heat hurt base
    do the castings take 90 / is base ok at 90 / is base ok for the oven, heat wise / is base heat sensitive
    is 90 too much for the casing / is 194 F ok for base / is there a max on base
    is there a heat limit on the casing / is there anything in base that can't take heat / would 90 hurt base
    would base stand 120 / highest heat for base? / rated heat of base? / tell me how hot base can go
    tell me what heat base takes / give me base's max / need base's max temperature / know what the casing can take?
    oven or room for base, what does it bear
  `,
  expiry: `
    what is the shelf life of B / what's can 3's expiry / what's the expiry on the open A
    what's the best before of the A / what's the use by on B / what's the shelf life once opened
    what's about to go out of date / what cans have expired / what tins are old / what date has the hardener
    when does the tin run out of date / when does can 3 run out of date / when do these tins expire
    when do they expire / when is B's best before / when's can 3's date up / which can is oldest
    which cans are expired / which cans expire soon / which lot expires first / which lots are expired
    which lots expire next month / which tin should be used first by date / which is the oldest tin
    how long does A keep once opened / how long does lot 2301 keep / how long does B last on the shelf
    how long is A good for on the shelf / how long is lot 2301 good / how long is the hardener good once open
    how old is this tin / how much shelf life is left on can 3 / is can 3 past its date / is can 3 too old
    is B in date / is the open can still in date / is this tin still good by date / is anything out of date
    are any cans out of date / are any tins past date / are the tins in date / are our lots in date
    has can 3 gone out of date / has the hardener gone past its date / has any can expired / have any lots expired
    did any can expire / does anything expire this week / does anything expire soon / will can 3 expire this month
    will the hardener be in date in may / any expired tins / any old tins out of date / shelf life left on can 3
    list expired cans / show expired cans / show me what expires / tell me when the A expires
    give me the expiry of B / need can 3's expiry
  `,
  lot: `
    what lot is base in, can I mean / what lot are we on with B / what lot have we open / what lot have we in use
    what lot do we have open / what lot did we use in pot 1 / what lot did I open / what lot did we mix from
    what lot did pot 1 have / what lot does can 3 have / what lot does the hardener have / what lot was used in pot 1
    what lot was the A in pot 1 / what lot was in batch 2 / what lots are A and B / what lots are the cans
    what is can 3's lot / what is the hardener's lot / what's can 3's lot / what's the maker's number on can 3
    what's the number on the tin, the lot / what's on the label for lot, can 3 / which lot has the hardener
    which lot do we use now / which lots are in pot 1 / which lots are open / which lots are we using
    which can has lot 2301 / which cans are lot 2301 / is can 3 lot 2301 or 2302 / is the open B lot 415
    is it the same lot / is it all one lot / is this the new lot / is that a new lot / is pot 1 from one lot
    are both tins the same lot / are the cans the same lot / are can 2 and can 3 the same lot
    are we still on the old lot / are A and B from the same kit lot / has can 3 a lot number / have we changed lot
    have you got the lot of can 3 / did the lot change / do we know the lot of can 3 / do you have the lot of can 3
    lot number please / lot no can 3 / lots in use / tell me the lot of A and B / tell me which lot is open
    give me the lots of the open cans / show me the lot of can 3 / show the lot of A / I need the lot number of B
    need the lot number for the label / need both lot numbers / label's torn, what lot is can 3
    can't read the lot on the tin
  `,
  lid: `
    is the lid still off / is the cap on the B / is the drum's bung in / is the pail shut / is pot 1's cover on
    is the mix covered / is the bucket covered / is the cover on pot 1 / is a tin standing open / is any tin open
    is anything standing open / is there anything open / is there a lid off somewhere / is everything shut
    are the cans all shut / are both cans shut / are both tins closed / are all cans closed / are all tins shut
    are any tins open / are there cans open / are there any lids off / are the pots covered
    has the lid been put back on can 3 / has somebody closed can 3 / has anyone put the lid on
    has the hardener been capped / has pot 1 been covered / have the lids gone back on / have the cans been shut
    have we closed the cans / did I cap the B / did I cover pot 1 / did we shut the tins / did anyone shut the tin
    did anybody close the B / did Lia close the can / was the lid on overnight / who left can 3 open, is it shut now
    what's open on the bench / what's open, cans I mean / what tins are standing open / what lids are off
    which tins are open now / which tin is open / which pots are uncovered / how long has the tin stood open
    how long is the A open already / when was can 3 opened last / when was the lid put on / when did the lid go on
    any pots uncovered / anything left open / open or closed, can 3 / tell me what's open / check if can 3 is shut
    not sure if can 3 is shut / don't know if the lid's on / can't remember if I shut the tin
    need to know if can 3 is closed
  `,
  ratio: `
    what is the mixing ratio / what is the right ratio / what's the ratio for this stuff / what's the split on 2 kilos
    what's half of 1500, A and B / what's the ratio we had in pot 1 / what ratio did we mix / what ratio has pot 1
    what ratio does it mix at / what amount of B goes with 900 A / what do I need of each for 2 kg
    which ratio do we use / which ratio for demo build / how much B is right for 812 A / how much A goes with 448 B
    how much A do I put for a kilo in all / how much hardener goes in / how much hardener for 1.2 kilos of base
    how much hardener with this much base / how much of each for two kilos / how many grams of hardener to 650
    how many ounces of B to 26 of A / how many parts of each / how do I portion it / how far may it be off
    how far was pot 1 off / how exact must it be / how close must A and B be / is it one to one by weight
    is it one to one or two to one / is it weight or volume / is the ratio ok in pot 1 / is pot 1 on ratio
    is 1203 to 1190 ok / is A and B the same amount / is that within the ratio / is that ratio ok
    is that close enough, 900 and 890 / are they equal / do I weigh the same of both / do I put the same B as A
    do I mix it half and half / do we mix 1 to 1 / does it go one to one / ratio for the clear / ratio for demo build
    ratio resin to hardener / mix ratio please / mixing proportion? / split two kilos / hardener per kilo?
    equal parts or not / give me the split / work out the split for 1.8 kg / calculate the B for 655 A
    figure the B for 900 / remind me of the ratio / remind me what the ratio is / can't remember the ratio
    I've got 655 A in, what B / I poured 640 A, how much B / A is 905, B is how much
  `,
  'sheet-air': `
    what air may we coat in / what air can we spray in / what air does the product want
    what are the limits for the air / what conditions does it need / what conditions are allowed
    what humidity is too low / what humidity should it be / what is the lowest temperature to coat at
    what is the temperature range for coating / what temperature do we need in the room
    what temperature range does the sheet give / what temperature may the room have / what's allowed on humidity
    what's the allowed range of air / what's the lowest air temp / what's the max rh / what's the min humidity
    what's the temperature limit for the room / what's the top humidity / what's the upper limit on humidity
    what's the window for air / what's too dry for it / what's too cold to coat / what's too hot to coat
    what rh does the sheet want / what rh is too much / which humidity is allowed / which humidity range
    which temperatures are allowed in the shop / how humid can it get before we stop / how damp may it be
    how dry may the air be / how cold can the shop be / how hot may the shop be / how warm must the room be
    how warm does it have to be in here / how high may the humidity be / how high can the humidity go
    how low may humidity go / is 60 percent ok by the sheet / is 65 percent allowed
    is 70 percent too much by the sheet / is 15 degrees too cold by the sheet / is there a limit on the air
    is there a minimum humidity / is there a max humidity / is there a minimum room temperature
    does the sheet say anything on air / does the sheet give a humidity / does it need moisture in the air
    up to what humidity can we coat / up to how many percent / from what temperature can we coat
    below what temp must we stop / above what rh do we stop / at what rh is it too wet / air limits please
    min temp for coating? / give me the humidity limit / remind me of the humidity limit
  `,
};
