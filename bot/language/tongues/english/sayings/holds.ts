// How English speakers say what becomes of a part: rework, scrap, back to the customer or the supplier, taken as it is. Invented lines,
// each as somebody would type it; and the same words said of leftovers, asked, planned and denied.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfHolds: Sayings<SaidMeaning> = {
  rework: `
    rework 7 / 7 to rework / 7 goes to rework / send 7 to rework / put 7 down for rework / rework on impeller-3 / impeller-3 is a rework
    strip and redo 7 / strip 7 and do it again / strip it and recoat 8 / 8 gets stripped and recoated / blast it off and redo 4 / sand it back and recoat valve 2
    redo 7 / redo the housing / 9 has to be redone, strip it / do 5 over from bare metal / take the coat off 6 and start again / start 6 over
    7 is a redo, runs all over / we strip 7 and coat it new / decision on 7: rework / disposition rework for 7 / 7 disposition is rework
    back to bare with 3 and redo it / abrade 4 and give it a new coat, decided / recoat 9 after stripping, that's the call / nonconforming, rework 7
    rework the flange, film too thin / strip and recoat the two plates / rework both brackets / 2 and 3 are for rework / mark 7 rework / tag 7 for rework
  `,
  scrap: `
    scrap 7 / 7 is scrap / 7 scrapped / scrap the housing / scrap part 7 / scrap impeller-3, cracked / 8 is scrapped / 8 goes to scrap / 8 to the scrap bin
    write off 7 / 7 is a write-off / written off: 7 / bin 7, it cracked / 7 is junk, scrap it / junk part 9 / part 9 is beyond saving, scrap / toast, scrap valve 2
    disposition scrap for 7 / 7 disposition is scrap / decision on 5: scrap / nonconforming, scrap 7 / 6 can't be saved, scrap it / scrapping 4, porosity
    scrap the cracked bracket / scrap both plates / 2 and 3 are scrap / mark 7 as scrap / red bin for 7 / the impeller is scrap metal now / scrap out 7
    reject and scrap 7 / i'm scrapping 9 / we scrap 7 / 7 was bent, scrap / call 7 scrap / condemned 7 / 7 is condemned
  `,
  'return customer': `
    7 goes back to the customer / return 7 to the customer / 7 returned to customer / send 7 back to the customer / sending 7 back to the customer uncoated
    customer gets 7 back as is / give 7 back to the customer / give 8 back to them, wrong alloy / 8 back to the customer / 8 back to its owner / hand 7 back to the customer
    disposition return for 7 / decision on 7: back to the customer / rtc 7 / return to customer, part 7 / the customer gets the housing back / ship 7 back to the customer, not coated
    7 is not ours to fix, back to the customer / customer's own damage, 5 goes back / reject 4 back to the customer / both plates go back to the customer / 2 and 3 back to the customer
    return the flange to its owner / the flange goes home to the customer as it came / nonconforming, return 7 to the customer
  `,
  'return supplier': `
    7 goes back to the supplier / return 7 to the supplier / 7 back to the foundry / send 7 back to the foundry / casting 7 returned to supplier / send the bracket back to the vendor
    return to vendor 7 / rtv 7 / vendor gets 7 back, porosity / 8 back to whoever cast it / supplier takes 8 back / supplier takes back 2 and 3 / decision on 7: back to the supplier
    reject 4 to the supplier / reject to vendor, part 4 / give 5 back to the machine shop / machine shop gets 5 back / the supplier's casting 6 goes back / nonconforming, return 7 to the supplier
    foundry takes 7 back / back to the foundry with 7 / caster gets 7 back / 9 is the supplier's, send it back / supplier's fault, 7 returns to them / the fabricator takes 3 back / return 8 to the fabricator
  `,
  concession: `
    customer accepts 7 as it is / customer takes 7 as it is / customer accepted 7 as is / the customer accepts the housing as it is, letter came / 7 accepted by concession
    concession for 7 / concession on 7 / we got a concession for 7 / we have the concession letter for 7 / use 7 as is / use as is 7 / uai 7 / 7 use as is by concession
    disposition use as is for 7 / decision on 7: use as is / waiver for 7 / customer waiver on 8 / 8 waived by the customer / deviation permit for 8 from the customer
    customer signed off 7 with the thin film / the customer is fine with 7 as it is, in writing / customer's qa takes 9 as it stands / they accept both plates as they are, letter 12
    concession signed for 2 and 3 / customer concession came in for valve 2 / letter from the customer: 7 is accepted as is / email from the customer, they accept 7 as it is
  `,
  shipped: `
    the customer came for 7 and took it / customer came by and took 7 / the customer took 7 with them / customer took it / they came for 8 and took it along
    customer has 7 now / customer's driver took 8 / the customer picked up 7 and left with it / 7 went with the customer / customer came and got it
  `,
  'prep old-coat-off': `
    stripped 7 to bare metal / 7 is stripped / 7 stripped / stripped the housing / old coat gone from 7 / the old coat came away from the 8 / took the old coat off 6 / got the old coating off 3
    7 is back to bare metal, old coat gone / coat stripped off 4 / chemical stripped 5 / stripper took it all off 5 / burned the old coat off 9 / all the old film stripped from 2 / 7 stripped clean
    blasted the old coat off 7 / ground the old coat off the flange / the old paint came off 8 / no old coat left on 7 / stripped both plates / 2 and 3 are stripped to metal
    old coating stripped, part 4 / stripped part 9 down / peeled the old film off 5 / stripped the hub back to metal / old film removed from 6 / removed the old coat from 7
  `,
  nothing: `
    nothing scrapped today / no scrap so far / not scrap yet, 7 / 7 is not scrap / don't scrap 7 / do not scrap 7 / nobody scraps 7 / we won't scrap 7 / 7 might be scrap / maybe scrap 7
    if it fails again we scrap 7 / 7 may go to rework / 7 doesn't need rework / no rework on 7 / thinking about reworking 7 / customer may take 7 as it is / the customer has not accepted 7
    the customer won't take 7 as it is / waiting for the concession on 7 / asked the customer for a concession on 7 / 7 may go back to the customer / 7 does not go back
    scrap bin is full / emptied the scrap bin / scrap price is up / scrap metal pickup is friday / the rework bench is full / rework rate is too high / used scrap cardboard under the parts
    supposed to scrap 7 tomorrow / will rework 7 later / going to scrap 7 after lunch / boss wants to scrap 7 / somebody said scrap / hate rework
  `,
  asking: `
    is 7 scrap / should we scrap 7 / do i scrap 7 / can i scrap 7 / who scrapped 7 / why was 7 scrapped / what did we scrap today / which ones are scrap / how many scrapped this week
    does 7 go back to the customer / did 7 go back / should 7 go to rework / who decides on rework / can 7 be reworked / is there a concession for 7 / did the customer accept 7 as it is
    what becomes of 7 / what happens to 7 now / who may scrap a part / which parts are for rework / has the supplier taken 7 back / is 7 use as is
  `,
};
