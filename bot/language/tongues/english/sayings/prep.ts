// How English speakers say it: prep blasting, prep sanding, prep wiping, prep grease-off, surface. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPrep: Sayings<SaidMeaning> = {
  'prep blasting': `
    blasted 7 / 7 blasted / grit blasted the housing / sandblasted valve 2 / sand blasted both plates
    bead blasted the bracket / shot blasted the castings / shotblast done on 3 and 4 / blasting done on impeller-3
    blasting finished, parts 1 to 6 / blasted to sa 2.5 / blasted to sa 2 1/2, 8 and 9 / sa2.5 on the tank lid
    sp10 on the flanges / blasted near white, 11 / white metal blast on the volute / blasted to bare metal, the elbow
    blasted clean, bracket-8 / blasted and blown off, 12 / blasted with garnet, the covers / garnet blast on 5
    alu oxide blast on the stainless ones / 120 grit alox blasted, plate 3 / blasted 10 with glass bead
    glass beaded the brass plates / slag blasted the railings / steel grit on the pump body, done
    sweep blasted the galv / swept blast over 14 / brush blasted the old paint off the 6
    ran 8 through the blast cabinet / ran the clips through the blaster / put 7 thru the cabinet
    in the blast cabinet right now, valve 3 / cabinet blasted the hubs / castings went through the wheel blaster
    blast pot's on it, tank 2 being blasted / blasting the 9 now / blasting away at the frame / blast is done
    blast's done on 4, profile 40 / blasted, profile 50 um / profile's 45 after blasting 13
    2 mil profile blasted on the pipe / blast cleaned the bore / blast cleaned part fifteen / blast prepped 3
    prep: blast, 7 8 / prep on the housing done by grit blasting / surface prep 11 blast
    prepped valve 2 in the blaster / prepped these two by blasting at 8:30 / these two got blasted
    everything's blasted / all brackets blasted this morning / whole rack blasted ten minutes ago / got 16 blasted
    got the rust off with the blaster, part 5 / took the old coating off 6 with grit
    stripped the flange in the blast booth / hit 10 with the sandblaster / hit the welds with grit
    gave the impeller a blast / gave it a good blasting, grey all over / knocked the scale off with the blaster
    blasted part seven about an hour ago / vapor blasted the alu covers / slurry blasted 17
    soda blasted the small ones / dry ice blasted the mould plate / blastd 8
    ok finally finished blasting the big one, i'm deaf
  `,
  'prep sanding': `
    sanded 7 / 7 sanded / sanded the housing with 120 / sanded both plates, 180 grit / sanding done on valve 2
    finished sanding 3 and 4 / scuffed 8 / scuffed up the bracket with a red pad / scuffed the old coat on the covers
    abrasive pad on 9 / hand sanded impeller-3 / wet sanded the panel, 320 / wet and dry on the flange, 240
    orbital on the plates, done / da'd the tank lid / da sanded 11 / took the orbital to 12 / keyed the surface of 5
    keyed it up with 180 / abraded 6 / abraded the alu plate, p240 / roughed up 10
    roughed the face of the hub with emery / emery cloth on the pins, done / emeried the shaft / rubbed down 13
    rubbed down the railings with 120 paper / flatted the 14 / flatting done, 400 wet / linished the edges
    flap wheel over the welds / flap disc on bracket-8 / ground and sanded the weld on the elbow
    power tooled the rust off 4 with a sanding disc / sanded valve 3 till it was all bright / prep: sanded, 7 8
    prep on 15 done with sandpaper / surface prep sanding 120, part 3 / prepped the cover by sanding
    sanding the 9 right now / sanding away, plate 2 / gave 16 a sand / gave the edges a rub with 180
    gave it a scuff, nice and dull / all sanded and dull / these two got sanded / dulled the shine on 6 with paper
    part seven sanded with one eighty grit / sandded 8 / ok finally done sanding, arms are jelly
    blew off the dust, 10 is sanded
  `,
  'prep wiping': `
    cleaned 4, 5 and 6 / cleaned the bracket / cleaned plate 3 and plate 4 / the plates are cleaned / all of them cleaned and wiped
    cleaned up 7 before the coat / cleaned valve 2 with a rag / cleaned off the three covers
    wiped 7 / 7 wiped with acetone / wiped down the housing / wiped down valve 2 with ipa
    wiped both plates with solvent / solvent wiped 3 / solvent wipe on 8 done / solvent wipe done, parts 1 to 6
    acetone wipe on the bracket / acetone on a rag, the 9's wiped / ipa wipe, 4 and 5 / ipa'd the plates
    alcohol wipe on impeller-3 / alcohol wiped the covers / wiped 10 with isopropyl, twice
    two wipes on 11, clean rag each / two rag wipe on the flange / wiped wet, wiped dry, 12
    wiped till the rag was clean, 13 / rag comes away clean, 6 is wiped / last rag was white, wiped bracket-8
    white rag test fine after the wipe, 14 / wiped it down just now / just wiped the elbow with mek
    mek wipe on valve 3 / thinner wipe on the railings / wiped off the dust with a solvent rag, 5
    tack rag and solvent over 7 / tacked and wiped 15 / wiping the 8 now / wiping down the tank lid with acetone
    wipe down finished at 9:40 / wipe down done on the hubs / wipe's done / final wipe on 16
    final wipe done, ready to coat 3 / gave 4 a wipe / gave the plates a wipe over with ipa
    gave it a good rub with a solvent cloth / ran an acetone rag over the 9 / ran a wipe round the bore
    went over 10 with a lint free and ipa / went round the flange with alcohol
    lint free cloth and acetone on the coupon / cleaned 11 with acetone / cleaned the faces with solvent, rag's clean
    cleaned off valve 2 w/ ipa / prep: wiped, 7 8 / prep on 12, solvent wipe / prepped the cover with a solvent wipe
    surface wiped with isopropyl alcohol, part six / part eight wiped down with acetone / these two are wiped
    all wiped and drying / everything on the rack got an acetone wipe / prewiped 5 with solvent / wipped 9 with ipa
    acetoned the brackets / ok wiped and shiny, 13 ✨ / btw impeller's been wiped with ipa
  `,
  'prep grease-off': `
    degreased 7 / 7 degreased / degreased the housing / degreased both valves / degreasing done on 3
    degrease finished, 1 to 6 / degreased 8 in the tank / degreased with hot alkaline, plates
    ran the brackets through the degreaser / put 9 thru the parts washer / parts washer's done with the clips
    washed the grease off valve 2 / washed the oil off 4 and rinsed / washed and rinsed the pump body, oil's gone
    oil's off the 5 / grease is off impeller-3 / got the grease off the flange / got all the oil off 10
    cleaned the cutting oil off the pins / cut the grease on 11 with detergent / detergent wash on the covers
    soap and hot water, degreased bracket-8 / steam cleaned the casting, grease gone
    pressure washed the grease off the frame / vapor degreased 12 / ultrasonic bath done, hubs degreased
    dunked 13 in degreaser, came out clean / sprayed degreaser on the 6 and rinsed / scrubbed the grease out of the bore
    stripped the oil from the plates / alkaline clean on 14 / water break test passed, 7's degreased
    water sheets right off, degreased ok / prep: degreased 8 / prep on 3, degrease / part nine degreased at eight thirty
    these two got degreased / degreasing the elbow now / de-greased 15 / ok finally the greasy one is degreased, yuck
    levers 1 to 4 are wiped, there's no grease left on them / hubs wiped over, not a trace of oil left
    no more oil on 3, I went over it with a rag / 9 is clean of grease now
    posts 1 thru 6 cleaned up, all the oil is gone / wiped the lot, grease is off
  `,
  surface: `
    steel's at 19 / steel is 18 c / surface 20 / surface temp 21.5 / surface temp on 7 is 19
    surface of the housing reads 18.5 / surface reads 17 on valve 2 / surface's at 66 f / surface nineteen point five
    surface temperature twenty degrees on the impeller / bare metal is 19 c / bare steel 21 on the plates
    bare metal temp before coating, 7: 20 / metal's at 18 before we coat / metal 20 before paint
    cold steel, 12 degrees / steel's cold, 13 on the big casting / casting's chilly, 14 on the surface
    big lump is still 11, came in from the yard / came in off the truck at 9 c on the skin / ir on the bare 8 says 20
    ir gun: bare plate 18 / shot the bare casting with the ir, 17 / pointed the temp gun at the steel, 19.5
    magnet gauge on the tank says 16 / magnetic thermometer on the plate 18 / stuck the magnet on the bracket, nineteen
    mag thermometer, valve body, 65 f / contact probe on uncoated 7, 21 c / probe on the blasted face 20
    blasted face reads 22 / blasted steel is at 19.2 / substrate 20 / substrate's at 18.7 / substrate temp 68
    substrate twenty one degrees / part surface 19 c / part surface temp, bracket-8, 20 / part's at 18, bare
    skin temp on the housing 17.5 / skin of the casting 15 / skin's 20 on impeller-3 / steel temp 19
    steel temp 67 f, 9:40 / steel temp on the 9 is eighteen / steel temps 19 19 20 on the three plates
    alu plates at 21 surface / aluminium's at 22, bare / aluminum is 70 degrees on the skin
    bronze impeller at 20, uncoated / stainless reads 19 on the surface / brass plates surface 21
    cast iron's at 16 bare / iron reads 17 / surface check: 20.2 / surface check on 12, 18
    surface check at 8:20 gave 15.5 / checked steel, 19 / checked the surface of 4, 20 c / took steel temp, it's 18.4
    took surface on all, coldest 17 / coldest bit of steel is 16 / coldest spot on bare tank 14.5
    measured the surface, 19 / measured bare metal on valve 3 at 20 / got 21 off the bare flange
    got 18 on the steel just now / i read 19 on the surface / reading 20 on the uncoated bracket
    reads 22 on the railings before spray / railings at 23, been in the sun, bare / sat in the sun, surface is 31
    been by the heater, steel's up to 24 / warmed the casting to 22 on the surface / steel has come up to 18
    steel came up to 20 finally / ok finally the big one is 19 on the surface / surface climbed to 17 / surf 19
    surf temp 20 c / sfc 18.5 / sfc temp 7: 21 / srf temp 19 / surfce 20 / suface temp 18 / 7 surface 20 / 8 bare, 19
    valve 2 surf 18 / housing steel 17 / 3 and 4 surface 20 both / both plates bare at 19
    these two sit at 20 on the steel / all parts at 20 on the surface, ready to coat
    parts on the rack are 19, bare metal / metal surface: 18.9 / the metal itself is 19 before coating
    metal's feeling cold, 13 by the gauge, uncoated / btw steel's 17 / btw the surface on 5 is 20
    morning, steel is at 14 / morning surface 13.5 / boss, the tank wall's 15 / tank wall reads 16 c / pipe surface 18
    pipe wall at sixty four / flange face 19 / bore of the pump body, 18 on bare metal
    hub's bare surface is 17, rim 19 / 🌡️ steel 19 / steel 20 👍 / just before coating surface was 20.5
    before the first coat steel at 19, 10:05 / surface temp gun says 66 on the blank
    thermometer on the steel, eighteen / strip on the bare panel shows 20 / panel surface is 21 / coupon bare surface 20
  `,
};
