// How English speakers ask, in further words: sheet-surface, sheet-blend, sheet-pot-life, sheet-film and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking7: Sayings<AskedMeaning> = {
  'sheet-surface': `
    what profile is asked for / what blast grade does it want / what cleanliness grade / what grade of blast
    what does the sheet say on prep / what does the sheet say about the surface / what does the sheet want for steel
    what does the steel have to be like / what must be off the steel / what must the surface be like
    what margin over dew point / what steel temp do we need / what is the min spread / what is the required prep
    what's the margin over dew point by the sheet / what's the lowest steel temp / what's the max steel temperature
    what's the dust limit / which prep for aluminium / which grade do we blast / which metals may it go on
    which surface prep is needed / how clean does it have to be / how rough must it be / how rough should the blast be
    how deep should the profile be / how do I prepare base by the sheet / how should we prep it
    how many degrees over dew by the sheet / how far over dew must steel be / how cold can the steel be
    how warm must the steel be / how hot may the steel be / how long may blasted steel wait
    how long can blasted steel lie / how much salt may there be / how much dust may there be
    is sanding enough by the sheet / is wiping enough / is degreasing needed / is a profile needed / is rust allowed
    is light rust ok by the sheet / is old paint ok under it / is there a minimum profile
    is there a minimum steel temperature / is sa 2.5 needed / is sa 2 enough / do we need to sand
    do I have to degrease / does it need a primer / does it stick to aluminium / does the sheet say how to prep
    can it go on galvanised by the sheet / can it go over rust / can it go over old paint / sanding ok or blast?
    tell me the profile we need / give me the prep / remind me of the prep
  `,
  'sheet-blend': `
    how long does the sheet say to stir / how long does it need stirring / how long does it have to be stirred
    how long does a mix stir / how long do we mix it / how long do I mix this / how long is mixing by the sheet
    how long must a mix be stirred / how long should a batch stir / how long should it be mixed
    how long to mix by the sheet / how long to stir when it's cold / how long for stirring at 24
    how many minutes on the stirrer / how many minutes does it stir / how many hours of stirring
    how fast should the stirrer turn / how fast does the stirrer go / how should it be stirred
    how must it be stirred / how slow should I stir / what mixing time does the sheet give / what blending time
    what rpm does the stirrer need / what speed do we stir / what is the mixing time / what is the stirrer speed
    what does the sheet say about stirring / what does the paper say on stir time / what's the usual stir time
    what's the normal stir / what's the least stirring / what's the minimum stir / what's the max stir time
    what's the speed for stirring / which rpm / which speed for the mixer / which stirring time at 18
    is there an induction time / is there a stir time / is there a max on stirring / is there a minimum stir
    is it 90 minutes stirring / is an hour of stirring enough / is 60 minutes stirring ok by the sheet
    is stirring longer ok / is the stir shorter when warm / does it stir longer in the cold / does it need induction
    does the stir depend on temperature / does the stir time change with the room / does the sheet give an rpm
    do we stir longer when cold / do we stir with the cover on / stir time at 75 F / mixer speed?
    tell me how long we stir / give me the rpm / remind me of the stir time / remind me of the rpm
    forgot how long we stir
  `,
  'sheet-pot-life': `
    what pot life has the clear / what pot life do we get at 25 / what pot life when warm
    what working time does it have / what is the usable time / what does the sheet say for pot life
    what's the pot life of demo build / what's the usual pot life / what's the open time of the mix
    what's the working time by the sheet / which pot life does the sheet give
    how long does a batch last by the sheet / how long does mixed stuff keep / how long does it keep mixed
    how long does it live after mixing / how long does it stay good mixed
    how long do we get out of a pot, time I mean / how long do we have once mixed / how long do you get from a pot
    how long from mixing till it's no good / how long after mixing can we use it / how long after mixing is it good
    how long after B goes in / how long can a mix be used / how long can it be used after mixing
    how long can you use a mix / how long is a pot good by the sheet / how long is mixed material good
    how long till a mix gels normally / how long till a mix goes off by the sheet / how long before a mix gels
    how long before it gels normally / how many hours is a mix good / how many hours do we have after mixing
    how many minutes pot life / how fast does it gel / how quick does a mix gel / how soon does a mix go off
    how does heat change the pot life / is the pot life five hours / is the pot life longer in the cold
    is the pot life shorter when hot / is pot life from first contact / is stirring part of pot life
    does pot life include stirring / does pot life run while stirring / does the pot life get shorter in the heat
    does a big pot go off sooner / does a bigger batch go off faster / does it last longer when cool
    from when is pot life counted / when does pot life start / when does a mix normally gel
    when does it usually go off / pot life please / pot life at 30 C / pot life of demo build
    tell me the pot life at 25 / remind me how long a mix lasts / forgot the pot life
  `,
  'sheet-film': `
    what film does it need / what dft do we need / what dft is right / what dry film is asked for
    what wet film gives 20 dry / what wet should the comb show / what wft do we aim for / what is the right film
    what is the target thickness / what is the min film / what's the max dry film / what's the min dft
    what's the minimum film / what's the right wet film / what's the wft by the sheet / what's the coverage per kilo
    what's the spread rate by the sheet / what should the dry film be / what should the thickness be
    which film do we aim at / which dft / which thickness per coat / how thick does it go on
    how thick does the coat have to be / how thick may it be / how thick must it be / how thick must the film be
    how thick should it be wet / how thick do we put it on / how thin may it be / how thin is too thin
    how heavy should the coat be / how heavy can a coat be / how many mils do we want / how many mils should it be
    how many microns should it be / how many microns do we need / how many square metres per kilo
    how much thickness per coat / how far does a kilo go by the sheet / is 20 dry right
    is 20 microns dry ok by the sheet / is 50 wet enough / is 50 wet too much / is 15 too thin by the sheet
    is one mil right / is there a max film / is there a minimum film / is there a max per coat
    does the sheet give a film / does the sheet give a max film / film by sheet / wft target?
    tell me the film we want / tell me the target film / give me the dft range / give me the wet film target
    remind me of the film / remind me of the dft / forgot what film we want
  `,
  'sheet-flash': `
    how long is it to flash / how long does flash off take / how long does a coat flash
    how long does it take to flash off / how long does it air before the oven / how long do we let it flash
    how long do I flash it / how long do I let it flash / how long must it stand before the oven
    how long must it sit before it goes in / how long may it stand before the oven
    how long should it stand before curing / how long from coat to oven / how long between coat and oven
    how long after coating can it go in the oven / how long after the coat before heat
    how many minutes flash by the sheet / how many minutes of flash / how many minutes does it flash
    how many minutes between coat and oven / how soon may it go in the oven by the sheet
    how soon after coating can you heat it / what flash time does the sheet give / what flash do we give it
    what flash is needed / what is the minimum flash / what is the max flash / what is the least flash
    what does the sheet say on flash / what does the sheet say on flash off / what's the least flash
    what's the min flash / what's the normal flash / what's the right flash time
    what's the touch dry time by the sheet / what's the drying time before the oven / which flash does the sheet want
    is the flash ten minutes / is flash 10 or 15 / is flash off ten minutes / is there a max flash
    is there a minimum flash / is 5 minutes flash enough / is 20 minutes flash too long / is flash shorter when warm
    does it need a flash / does it need flash off / does flash get shorter with heat
    does the sheet give a flash time / do we need a flash / do we need to flash it off
    do we flash it before the oven / flash time please / flash time min and max / time between coat and oven
    tell me how long to flash / give me the flash off by the sheet / remind me of the flash time
    remind me how long to flash / forgot the flash time
  `,
  'sheet-recoat': `
    can it take two coats / can we put a second coat on this product / can you put a second coat on this stuff
    can I recoat this product / can this have two coats / can this take another coat by the sheet
    could it be recoated / may we recoat / is it a one coat product / is it one coat only / is recoating ok
    is overcoating possible / is a second coat possible / is a third coat allowed / is there a max recoat
    is there a minimum recoat / is there a window for the second coat / does it allow recoat
    does it have to be sanded between coats / does it stick to itself / does it take another coat
    does the sheet allow overcoating / does the sheet give a recoat time / does the sheet forbid recoat
    do we scuff before the second coat / do we have to sand before recoat / do you have to sand it to recoat
    what recoat window does the sheet give / what is the interval between coats / what is the overcoating window
    what does the sheet say about recoat / what's the max time between coats / what's the min time between coats
    what's the rule on recoating / which recoat time / when may a second coat go on by the sheet
    when does the recoat window close / when does the window for recoat end / how long between coats normally
    how long between first and second coat / how long is recoat open / how long do I wait between coats
    how long before it can be recoated / how long before you can recoat / how long must you wait to recoat
    how long to wait for recoat / how long until you can recoat / how long till recoat
    how long after the first coat can you recoat / how late may it be recoated / how soon may it be recoated
    how soon after the first coat / how many coats are allowed / how many coats may it have by the sheet
    how many minutes between coats / how many hours between coats / recoat window please
    tell me if it can be recoated / remind me of the recoat / remind me of the recoat window
    forgot the recoat window
  `,
  'sheet-cure': `
    what cure does the sheet want / what cure do we do / what cure time do we need / what bake does it need
    what baking time / what oven temperature does the sheet want / what heat does it need
    what temp should the oven be / what time and temp for cure / what do we set the oven at
    what does the sheet say on cure / what is the bake schedule / what's the baking temperature
    what's the least cure / what's the min cure temp / what's the oven supposed to be at / what's the air cure time
    what's the time in the oven / what's the stoving temp / which cure schedule / which temperature do we cure
    how hot does the oven need to be / how hot does the oven have to be / how hot must the oven be
    how hot should the oven be / how hot do I set the oven / how long at 194 F / how long does it cure in air
    how long does full cure take / how long is the bake by the sheet / how long must it cure in the room
    how long should it bake / how long till fully cured by the sheet / how many degrees for the cure
    how many degrees in the oven by the sheet / how many hours to cure / how many minutes in the oven by the sheet
    how many minutes at 90 / is it 90 for an hour / is 80 enough for cure / is 100 too hot for the cure
    is room cure allowed / is room cure possible / is an hour at 90 right / is 24 hours enough at room temp
    is there a room cure / is there an oven cure / is there a max cure temperature / does it cure without heat
    does it cure without an oven / does it need heat / does it have to be baked / does the hour start at 90
    does the sheet give a room cure / do we have to bake it / can it be cured at room temp
    can we cure it at room temp / can we cure it without the oven / full cure when / tell me how long to cure
    give me the cure schedule / remind me of the cure temp
  `,
  'sheet-flush': `
    what do I flush the hose with / what do I put through the gun / what do I run through the gun
    what do I use on the roller / what does the sheet want for flushing / what does the gun get flushed with
    what cleans this off / what gets it off brushes / what dissolves it / what goes through the gun last
    what comes first, acetone or alcohol / what comes after acetone / what flush solvent does the sheet want
    what solvent does it need / what solvent goes through first / what thinner do we clean with
    what is used to flush / what's the right solvent / what's used for cleaning the brushes
    which goes first, acetone or ipa / which first, ipa or acetone / how do I flush the airless
    how should the gun be flushed / how is the gun cleaned / how many times do I rinse the gun
    how many cups of acetone / how much acetone to flush / how long should I flush / how soon do I have to flush
    how soon must the brush be cleaned / how soon must I clean up / is it acetone then ipa
    is acetone right for flushing / is ipa enough / is alcohol enough / is thinner ok to clean with
    is water ok to clean / is mek ok to flush / is there a flush order / is there a solvent for that
    is there a set sequence for flushing / does acetone take it off / does alcohol clean it / does ipa clean it
    does water take it off / does it wash off with water / does it clean with alcohol
    does the sheet say which solvent / do we flush with ipa last / do I use acetone or thinner / do I flush twice
    can I flush with ipa only / can I use alcohol on the brushes / can I use thinner in the gun
    can I wash it with water / can we use thinner to clean / wash brushes with what / give me the flush sequence
    remind me of the solvent / remind me of the flush sequence / forgot the solvent
  `,
  lacking: `
    what does job 88 ask / what does job 88 ask for / what does order 88 want tested / what tests does job 12 ask
    which tests does the customer want / what tests are missing on 7 / which tests are missing / what readings are missing
    which readings does 7 still need before release / what is still missing before release on 3 / what's lacking for release
    which tests failed on 7 / which readings failed / what failed on impeller-7 / what has not passed on 4
    what is left to test on 7 / what is left to measure on 9 / what's left to measure before release / anything left to test
    any tests outstanding on 5 / what is outstanding before release / what tests does 7 still need / what readings are due on 2
    which test did 8 fail / what does the job ask of 7 / which acceptance tests are asked / what is asked before release
    what tests remain on 6 / what still lacks for job 88
  `,
};
