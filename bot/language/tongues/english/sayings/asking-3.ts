// How English speakers ask: ratio, enough, sheet-air, sheet-surface and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking3: Sayings<AskedMeaning> = {
  ratio: `
    what's the ratio / mix ratio? / ratio of A to B / what ratio do we mix at / how much B for 1200 A
    how much B to 800 g of A / how much B goes with that / how much B do I need for 2 kilos of A
    how much hardener for 600 grams / how much hardener do I add / how much A if I've got 450 of B
    how much A matches 1 lb of B / B for 1.2 kg A? / for 1.5 kilo all in what do I put on the scale for B
    for three kilos total, how much of each / for 900 g altogether, what's A and what's B
    split 2.4 kg into A and B for me / split for 800 grams / I've 730 of A in the cup, what B
    poured 1010 A, so B is what / got 512 g of A on the scale, how much B now / is it one to one / is it 1:1 or 2:1
    is it half and half / is that by weight or volume / by weight or by volume? / equal parts?
    same amount of both or what / how many parts A to B / what proportion / proportions pls / how do I portion A and B
    parts by weight? / how far off may the ratio be / how exact has the ratio to be / what tolerance on the ratio
    what was the ratio on batch 2 / was pot 1 within ratio / what does the sheet say for A:B
    forgot the ratio, what was it again / can you do the ratio for 1.8 kilos / tell me the B for 340 A
  `,
  enough: `
    is there enough in the pot for 3 more / is it enough for the housing / is that enough for two valves
    enough for 7 and 8? / enough left for the flange / enough in pot 1? / enough mix for the tank
    have we got enough for the rails / have I enough left for impeller-3 / do I have enough for one more
    do we have enough A for another batch / do we have enough B for 2 kilos / will it do for the plates
    will pot 2 do for bracket 5 / will that stretch to six brackets / will it stretch / does pot 1 reach for 9 too
    does it reach / does that go round for all four / does the rest cover valve 2 / does what's left do the second coat
    is what's in there going to cover the housing / is 400 g enough for 3 parts / is one kilo enough for the tank
    is 2.4 too little for 8 rails / can I get two more out of this pot / can we get another impeller out of batch 2
    could we squeeze one more from pot 3 / am I going to run short / are we going to run out before the last rail
    do we run short on the tank / how many more can I do with what's left / how many more brackets does pot 1 give
    how far does pot 2 go / how far will this get me / got a third of a pot, will that do 4
    need to know if pot 1 covers the next two / not sure there's enough for the big one
    looks low, is that still enough for 5 / should I mix more or does it do
  `,
  'sheet-air': `
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
    tell me the humidity limits
  `,
  'sheet-surface': `
    how should the steel be prepared / what prep does the sheet want / what prep for this / what surface prep
    surface prep by the sheet? / what grade do we blast to / what blast grade / what profile do we need
    profile required? / how rough should it be / what roughness does the sheet ask / how clean has the surface got to be
    how far above dew point must the steel be / how many degrees over dew point / what spread do we need / min spread?
    minimum distance from the dew point / how warm has the steel to be / what surface temp does the sheet allow
    max surface temp for coating / coldest steel we can coat / can this go on rust by the sheet
    does it go on over old paint / does the sheet allow bare aluminium / what metals does it go on
    does it need blasting / do we have to blast or is sanding ok / do we degrease first, with what
    what do I wipe the part with before coating / what has to be off the steel / salt limit by the sheet
    how much salt is allowed / how much dust is allowed / how long can blasted steel stand by the sheet
    what does the maker want under the coat / what does the paper say about preparing
    how do we prep stainless for this / sand or blast, what's it say / remind me of the surface requirements
    tell me the surface limits
  `,
  'sheet-blend': `
    so how long does a pot get stirred / stir for how many minutes at eighteen degrees / mixing time, per the data sheet
    whats the longest we may stir / how long on the stirrer before we filter, generally
    does the stir time go by the room temp / how long do we stir by the sheet / how long to stir
    how long to stir at 20 degrees / how long to mix this stuff / stir time by the sheet / stirring time?
    what stir time at 24C / what's the stir time when it's cold / how many minutes stirring
    how many minutes of mixing does it want / what does the sheet say on stirring / what does the maker say on mixing
    how long must it be blended / blending time? / induction time? / is there an induction / how long's the induction
    how fast do I stir / what rpm / rpm for the stirrer? / what speed should the mixer run / how fast may the stirrer go
    is it 90 or 120 minutes / is two hours right for stirring / does it stir longer when cold
    how much longer do we stir at 15 / least stir time / minimum mixing time by the paper
    usual stirring time for this product / how long has a mix to turn before the filter
    how do I stir it, covered or open / how long do these things get stirred normally / remind me how long we stir
    tell me the mix time for 75F / apprentice wants to know how long we stir in general
  `,
  'sheet-pot-life': `
    what's the pot life of this stuff / pot life by the sheet / pot life? / what pot life does the sheet give
    how long is the pot life / how long is the pot life at 25 / how long does a mix last / how long does a pot last
    how long does a pot live normally / how long's this stuff good once mixed
    how long does it stay usable after mixing / how many hours does a mix keep / how many hours from mixing do we have
    once A and B are together how long / after B goes in how long do you get / what's the working time / working time?
    work life by the paper / usable life of the mix / open time in the pot / what does the maker give for pot life
    what does the paper say for pot life / what's the pot life when it's hot / what's the pot life at 86F
    does heat shorten the pot life / is the pot life shorter in summer / is pot life with or without stirring
    does the stirring count in the pot life / is it four hours pot life or what / is it 4 or 5 hours
    from when does pot life count / pot life from the sheet pls / normal pot life
    the clear, how long does it last mixed / how soon does this product gel / when does a mix usually kick
    how quick does it go off normally / remind me of the pot life / tell me the sheet's pot life
    can't recall how long a mix keeps
  `,
  'sheet-film': `
    what film do we aim for on these / what film thickness do we want / what thickness by the sheet / film by the sheet?
    film thickness? / what's the target film / how thick do I put it on / how thick should it go on
    how thick does it have to be / how thick is too thick / how thin can it be / what wet film do we need
    wet film for this? / what's the WFT / what dft does the sheet want / dft target? / DFT range pls / how many microns
    how many microns dry / how many mils dry / how many mils wet / microns per coat? / thickness per coat
    how heavy a coat / max film / max film per coat by the sheet / minimum dry film / what should the comb read
    what should the gauge show after cure / what does the paper say on thickness
    what does the maker want for thickness / is 25 microns right / is 3 mils too much per the sheet
    how much film per pass / what's the spread rate / coverage by the sheet / how many m2 per kilo
    how many square feet does a gallon do / remind me what thickness we're after / tell me the film range
  `,
  'sheet-flash': `
    how long do we flash off by the sheet / flash off time? / flash-off by the sheet / flash time
    how long's the flash off / how long does this flash / how long should it flash off
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
    forgot how long the flash is meant to be / don't know how long we flash these
  `,
  'sheet-recoat': `
    can this be recoated / can you recoat this stuff / can it be overcoated at all / is recoating allowed
    recoat allowed? / recoat window? / recoat time / recoat by the sheet / what's the recoat window
    what's the recoat time / what does the sheet say on recoating / what does the maker say about a second coat
    what does the paper say on overcoating / overcoat time? / overcoating window pls / how long between coats
    how long between coats by the sheet / how long do we wait for a second coat / how soon can you recoat
    how soon does a second coat go on / how late can you still recoat / until when can one recoat / latest recoat
    earliest recoat? / min and max recoat / minimum time between coats / maximum interval between coats
    interval between coats / does the sheet let us put two coats on / does it take a second coat
    does it need sanding between coats / do we scuff between coats / is it wet on wet / wet on wet ok?
    is it a one coat system / one coat only or can we do two / can you put it over cured film
    will it stick to itself after cure / how long have you got to touch up by the sheet / remind me if this recoats
    tell me the recoat times
  `,
  'sheet-cure': `
    what temp are we curing these at again / what temp do we cure at / what temperature for the cure
    what do I set the oven to / oven at what? / oven temp? / oven setting by the sheet / what's the cure temp
    what's the cure / what's the cure schedule / cure schedule? / cure by the sheet / cure time?
    cure time and temp pls / how long do we cure / how long do we bake these / how long in the oven normally
    how long at 90 / how long at ninety by the paper / how hot do we bake / how hot and how long
    at how many degrees and how long / how many hours at room temp / how long does it cure without oven
    room cure, how long / air cure time by the sheet / can it cure at room temperature / is it one hour at 90
    is it 194 for an hour / is 80 enough to cure it / what if I cure at 70, how long
    longer at lower heat? what's it say / what does the maker say for curing / what does the paper give for the oven
    when is it fully cured by the sheet / full cure takes how long / how long till full hardness / bake schedule
    stoving time? / does the hour count from the part's temp / remind me of the cure / tell me the oven temp and time
    forgot what we bake at
  `,
  'sheet-flush': `
    what do I flush with / what solvent do I clean with / what solvent / which solvent for the gun
    which solvent for brushes / which thinner for cleaning / what cleaner do we use / what's the cleaning solvent
    cleaning solvent by the sheet / flush solvent? / flush with what / clean up with what / what to clean the gun with
    what goes through the gun / what do I wash the brush in / what do I rinse the pot with
    what do I clean the roller with / what takes this stuff off / what gets it off the tools / acetone or IPA first
    is it acetone first / is acetone ok for the gun / is alcohol ok for cleaning up / can I flush with thinner
    can I use white spirit / does water clean it / how do we flush by the sheet / how do I clean the gear
    in which order do I flush / flush sequence? / flushing order pls / how many rinses / how long do I flush
    how soon must the gun be flushed / how long have I got before the gun is scrap, per sheet
    what does the sheet say on cleaning / what does the maker say for clean up / what do we use for washing up
    remind me what we flush with / tell me the flush solvent / don't know what to clean the gun with
  `,
};
