// How English speakers say it, in further words: prep blasting, prep sanding, prep wiping, prep grease-off, surface. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPrep2: Sayings<SaidMeaning> = {
  'prep blasting': `
    I have blasted base / have sandblasted the casing / we have blasted 4 5 6 / we blasted the gates
    has been grit blasted, base / was blasted at 8:30, casing / is blasted and blown clean, 8 / are blasted, all ten
    are all blasted, profile 45 / got base blasted this morning / got the rust blasted off the casing
    got the old paint off base with the blaster / got it down to white metal, blasted, 7
    had the castings blasted, back now / came back from blasting, base / back from the blast shop, castings
    blast shop did 4 5 6 / contractor blasted the gates / blasted the gates at seven / blasted the whole rack, sa 2.5
    blasted bits 1 to 6 / blasted inside and out, casing / blasted both faces, base / blasted to near white, base
    blasted to grey metal, casing / blasted to sp10, gates / blasted to sspc 10, base / blasted to nace 2, casing
    blasted to a 50 micron profile, base / blasted to 2 mils profile, castings / blasted with steel grit, casing
    blasted with shot, castings / blasted with garnet, gates / blasted with slag, casing / blasted with corundum, hub
    blasted with glass bead, covers / blasted with alumina, 7 / blasted with the small nozzle, bore
    blasted and dusted off, base / blasted and vacuumed, castings / blasted and blown down, casing
    blasted clean and grey, 8 / blasted fresh, castings / blasted again, flash rust gone, base / reblasted the casing
    re-blasted base, it had rusted / blasting complete, castings / blasting is finished on 7 / blast over, gates
    blast complete, base / blast prep done, castings / blast clean done, hub / blast cabinet done, bits
    blast cabinet, covers done / blast room's done with the casing / blast booth, base done
    blast pot empty, base finished / blaster took the rust off base / ran the castings through the shot blaster
    ran bits through the cabinet / put base through the wheel blaster
    put the castings in the cabinet and blasted them / out of the blaster, base / out of the blast room, castings
    hit the castings with sand / hit the corners with grit, casing / gave base a blast / gave the castings a blasting
    gave it grit, casing / gritblast finished, castings / shot peened... blasted, hub / sandblast finished, base
    sandblasting done, gates / sandblasting the base now / bead blast done, covers / soda blast done, bits
    wet blasted base / vacu blasted the weld / spot blasted the weld, base / sweep blast done, casing
    swept base with grit / swept the castings with fine garnet / brush off blast on the gates
    stripped base to bare with grit / stripped castings in the blaster / took base to bare metal with grit
    rust's gone, blasted, casing / scale's blasted off, base / mill scale off, blasted, gates
    old coat blasted off, 7 / prep by blasting, castings / prep done on base, blasted / prepped base by blasting
    surface prep base: sa 2.5 / surface blasted, casing / profile 40 after blast, castings
    profile tape says 50, blasted, casing / that's base blasted / that's the gates done in the blaster
    she's blasted white / I don blast base / base don blast finish / the part has been blasted, sir
    kindly note base is blasted, sa 2.5 / please log blast on casing / blasted because there was rust, base
    blasted since sanding took too long, gates / bloody deaf now, base is blasted / blast ed 7
  `,
  'prep sanding': `
    I have sanded the castings with 120 / we rubbed down the gates / has been scuffed, base
    was sanded at 8:30, casing / is scuffed all over, cover / are sanded, all ten / are scuffed, bits
    got the castings keyed up / got the shine off the casing / sanded bits 1 to 6 / sanded both faces, base
    sanded round the bolt holes, base / sanded the weld smooth, gate / sanded between coats, base
    sanded it matt, cover / sanded back to metal, base / sanded with the da, casing / sanded with a block, panel
    sanded with 80 then 120, base / sanded wet, 400, panel / sanded dry, 180, base / sanded and blown off, castings
    sanded and vacuumed, casing / sanded and dust free, hub / sanded again, base / sanding complete, castings
    sanding is finished on 7 / scuffed the first coat, 7 / scuffed it with a red pad, cover
    scuffed with grey pad, base / scuffed with nylon pad, castings / quick scuff on the cover / light scuff, casing
    keyed the old coat, casing / keying done, covers / key on base is good, 180 grit / gave base a key
    gave the castings a key with 120 / gave it a rub down, gate / gave the cover a going over with the pad
    rubbed it down with emery, hub / rubbed the gloss off, panel / rub down done, base / flatted it back, cover
    flatted wet, panel 3 / de-glossed base / deglossed the cover with a pad / ground base with a flap disc
    ground the rust off, gates / ground it bright, hub / belt sander on the gates, done
    hand sanded the corners, casing / file board on the panel, flat / wire brushed and sanded, base
    wire wheel and 120, casing / emery on the hub, bright / emery clothed the shaft / 120 on the castings, all dull
    grey pad over base / prep by sanding, castings / prep done on base, 120 paper / surface is keyed, base
    surface's dull now, sanded / that's the gates rubbed doon / she's sanded, casing / I don sand base
    base don sand finish / the part has been sanded, sir / kindly note base is sanded, 120
    please log sanding on casing / sanded because it was glossy, cover / sanded so the coat grips, base
    arms dead, base sanded / sanded bsae / sadned 7 / sand did on base
  `,
  'prep wiping': `
    I have wiped base with acetone / I have wiped the castings down / we have wiped 4 5 6 / we wiped the gates down
    has been wiped with alcohol, base / was wiped at 8:30, casing / is wiped and dry, 8 / is wiped clean, cover
    are wiped, all ten / are wiped down, bits / got a wipe, castings / got the dust wiped off, hub / wiped bits 1 to 6
    wiped both faces, base / wiped inside and out, casing / wiped the bore, hub / wiped the edges, base
    wiped round the holes, casing / wiped with thinner, gates / wiped with white cloth, casing
    wiped with lint free, castings / wiped with two rags, base / wiped it twice, casing / wiped it three times, hub
    wiped it over, cover / wiped it all over, base / wiped it off, gate / wiped it before the coat, 7
    wiped off the fingerprints with alcohol, cover / wiped till clean, casing / wiped till no more dirt came, hub
    wiped and let dry, base / wiped and ready, casing / wiped again, someone touched it, base / rewiped the casing
    re-wiped base / wiping base now / wiping done, base / wiping finished, gates / wiping complete, casing
    wipe down complete, castings / wipe off done, gates / wipe with acetone finished, casing
    last wipe before coat, base / quick ipa wipe, base / double wiped base / solvent wiped twice, hub
    solvent on a rag over base / acetone and lint free on base / ipa and white rag, casing
    alcohol over the castings, clean / isopropyl on the casing, wiped / spirit wiped the gates / mek'd base
    tack cloth over the castings, dust gone / tack ragged the casing / tacked off the panel, ready
    ran a tack cloth over base / ran a cloth with ipa over the castings
    went over the casing with a clean cloth and ipa / went over the castings twice with solvent
    gone over it with a tack rag, panel / gave the castings an acetone wipe / gave it a final wipe, hub
    gave it the two rag treatment, base / cleaned the fingerprints off, cover
    cleaned the castings, white rag stays white / rag stays white on base / rag's clean after the casing
    rag came off clean, hub / cloth's clean after 7 / white cloth test ok, base wiped / prep by wiping, castings
    prep wiping casing / prep done on base, ipa wipe / surface is wiped, casing / that's base wiped
    that's the castings wiped doon / she's wiped, casing / I don wipe base / base don wipe finish
    the part has been wiped, sir / kindly note base is wiped / please log wipe on casing
    wiped because it had finger marks, base / wiped so there's no dust, castings / wipde base / wpied 7 / wiped bsae
    white down base with IPA
  `,
  'prep grease-off': `
    I have degreased base / we have degreased 4 5 6 / was degreased at 8:30, casing / is free from grease, cover
    are degreased, all ten / are oil free, castings / got rid of the grease, hub / got the cutting fluid off, bits
    degreased the gates at seven / degreased inside, casing / degreased with hot water and soap, casing
    degreased with solvent bath, bits / degreased in hot caustic, base / degreased, rinsed, dried, base
    degreased twice, gearbox cover / degreased again, still had oil, base / degreasing complete, castings
    grease all gone, gates / grease removed from base / grease has been taken off, castings
    oil's gone from the bore, hub / no oil left on base / no more grease on the casing / no grease left, castings
    not a trace of oil, hub, degreased / water breaks nowhere, base degreased
    water sheets off the casing, grease free / water break test ok, base / water film holds, 7 degreased
    removed all grease, casing / stripped the wax and oil off, hub / took the grease off with steam, gates
    washed down with detergent, gates / soapy water and brush on base, grease off / scrubbed the oil out of the bore
    jet washed base with degreaser / power washed the casing with degreaser / dunked the bits in the degreasing tank
    dipped the castings in degreaser / soaked the hub overnight, grease is off / soaked in caustic, base
    boiled out the castings, no oil / sonic bath done, bits, grease off / ran base through the wash
    put base in the parts washer, clean / put the castings through degrease
    sprayed degreaser all over the casing, hosed off / hosed the degreaser off, gates / prep by degreasing, castings
    surface is oil free, base / that's the grease aff the casing / she's degreased, casing / I don degrease base
    base don comot grease / the part has been degreased, sir / kindly note base is degreased
    please log degrease on casing / degreased because it came in oily, base / greasy bugger, but base is degreased
    de grease done hub
  `,
  surface: `
    the steel is at 19 now / I have measured 18 on the bare steel / I measured the surface, 20
    have 19 on the surface of base / we have 17 on the bare casing / has 18 on the surface, base
    has a surface temperature of 19 / is 19 on the surface, casing, bare / is 18 on the bare metal, 7
    are 20 on the surface, castings, not coated / surface at 19 before coating / surface at 18, castings
    surface reading on base 19 / surface shows 18 / surface gives 19.5 / surface measured 18, base
    surface measured at 19 / surface now 20 / surface now 18, casing / surface up to 19 / surface down to 16, base
    surface only 14, casing / surface 15, too cold maybe / surface 20 castings / surface 66 F, base / surface eighteen
    surface nineteen on base / surface temp of base 20 / surface temp at 18.5 / surface temp before coat 19
    surface temp check 18 / surface temp check, base 19 / surface temp reads 18, casing / surface temp measured, 19
    surface temp now 17 / surface temperature of the casing 20 / surface temperature before the coat, 19
    surface temperature sixty six / surface thermometer says 19 / surface thermometer on base 18
    surface probe 19, bare / surface probe on the bare casing 18 / surface contact 20 / steel is at 18 before coating
    steel at 66 F / steel reads 19, uncoated / steel reads 17 by the magnet / steel shows 19 / steel temp is 18
    steel temp before coating 18 / steel temp reading 19 / steel temperature is 19, base / steel surface is 18
    steel surface reads 20 / steel of the casing 17 / steel's up to 18 / steel's down to 15 / steel measured at 19
    steel measures 18 / steel's warmed to 19 / steel has warmed up to 18, base / bare metal 18
    bare metal at 19, base / bare metal reads 18 / bare metal surface 18, casing / bare base reads 18
    bare casing at 18 / bare casting's at 16 / bare castings 18 and 19 / bare part 19 / bare part reads 18
    bare plate at 20 / bare panel 19 / bare hub 18 / bare iron 16 / bare alu 21, cover / bare bronze 19
    uncoated base 18 / uncoated steel 19 / uncoated casing at 18 / uncoated surface 19 / blasted surface 19
    blasted base is 18 / blasted steel 19 / blasted face at 18, casing / sanded face 19, base / substrate at 19
    substrate is 18 / substrate reads 19, base / substrate temp 18 / substrate temp 19 on the casing / substrate 66 F
    metal before coating 19 / metal before the coat 18, base / metal surface reads 17 / metal skin 18, casing
    metal temp before coating 18 / metal temp on the uncoated base 19 / skin 19, base / skin temp on the casing 19
    skin temperature 17, base / skin of the tank 16 / skin of base reads 18 / wall temp of the tank 17
    wall surface 18 / wall of the tank is 16, bare / flange face 18, bare / face of the base 19, bare
    outside of the casing 18, uncoated / part surface is 19, base / part's surface is at 18
    parts' surface 18 19 19, uncoated / parts are at 19 on the surface / parts at 18 surface before coating
    base surface is 18 / base surface temp 19 / casing surface 18 / casing surface temp 17 / casting surface 16
    castings surface 18 / hub surface 19 / cover surface 20 / gate surface 17 / plate surface 19
    panel surface temp 20 / tank surface 16 / tank surface temp 15 / ir on the bare base 19 / ir on the bare steel 18
    ir gun on the steel before coating, 18 / pointed the gun at the bare casing, 17 / infrared on the blasted base 19
    magnet thermometer on bare base 18 / magnetic gauge thermometer on steel 19 / magnet on the steel reads 18
    stuck the magnet on the casing, 17 / contact thermometer on bare steel 19 / touch probe on the bare base 18
    held the probe on the bare base, 19 / checked the steel, 18, base / checked the bare casing, 17
    checking surface, 19 / check on the steel: 18 / took the surface temp, 19 / took the surface on base, 18
    took the steel temp, 19 / took steel at 18 / read the surface, 19 / read the steel at 18, base
    measured surface 19 / measured surface temp on base 18 / measured the bare casing at 17 / got 18 on the surface
    got 19 on the bare steel, base / got a surface of 18 / that's the steel at 18 / that's the surface at 19, base
    she's 18 on the surface / it's 19 on the steel / it dey 19 for the steel / kindly note surface 19, base
    please record steel temp 18 / steel tmp 18 / steal temp 19 / steal is at eighteen / service temp 19 base
    serface 18
  `,
};
