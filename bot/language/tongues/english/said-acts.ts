// How English-speaking crews call their acts by what is done and what it is done to, besides single words and set phrases.

import type { Acts } from '../said-words.ts';
import {
  all,
  bins,
  brushes,
  fans,
  gases,
  guns,
  inEitherOrder,
  isWashed,
  lids,
  opened,
  put,
  rags,
  rollers,
  running,
  saidOf,
  standing,
  stirrers,
  supplied,
  turnedOff,
  turnedOn,
  washed,
} from './said-roots.ts';

/** Said of the object alone, or with what stands behind it: `kari started shooting`. */
const spraying = 'spraying, shooting, painting, to spray, to shoot, gunning, laying it on';
const begun = 'started, starting, begun, began, begins, starts, just started, is on to';
const ended = 'stopped, finished, quit, done, through, over with, has stopped, is finished, wrapped up';

export const englishActs = (): Acts => ({
  mix: all(
    saidOf(
      'start, starting, started, begin, beginning, make, making, set up, setting up, prepare',
      'batch, mix, another batch, another mix, pot, new pot',
    ),
    'set me up, set up with, make me, do me, lets do, lets make, batch of, pot of, mix of, get going, going with, new pot, another pot, another batch, another mix, next batch, cook up, knock up, batch up, batch go',
  ),
  weigh: all(
    saidOf('scale, scales, balance', 'says, read, reads, showed, shows, gave, gives, had'),
    'measured out, measured in, dosed, dosed in, put on scale, on scale, went in, poured in, tipped in, came out at, came to',
  ),
  stir: all(
    inEitherOrder(turnedOn, stirrers),
    saidOf(stirrers, all('spinning again, turning again, going again, running again, back in', running)),
    'under stirrer, under mixer, going round, stirring now, on paddle, back on paddle, on mixer, back on mixer, on stirrer, back on stirrer, spinning again, turning again, stirring away, blending',
  ),
  stop: all(
    inEitherOrder(turnedOff, stirrers),
    saidOf(stirrers, all('out of pot, lifted out', standing)),
    'took off mixer, took off stirrer, took off paddle, isnt turning, isnt turning anymore, isnt spinning, isnt spinning anymore, stopped turning, stopped spinning, stirred long enough, stirring is over, off mixer, off stirrer, off paddle',
  ),
  filter: all(
    saidOf(
      'through, thru, ran through, poured through, passed through, put through, went through, pushed through',
      'filter, mesh, strainer, sieve, glass fibre, glass fiber, fine filter, 1 micron, cone',
    ),
    'ran through, poured through, strained, straining, sieved, sieving, screened, run off through',
  ),
  thick:
    'heavier than before, way heavier than before, thicker now, heavier, way heavier, heavy, draggy, drags, dragging, stringing, like porridge, like glue, like toffee, thicker than before, thick as, going off on me, doesnt flow, wont level, pulling on brush',
  gel: 'set up, set up in bucket, set in pot, hockey puck, a brick, like rubber, rubbery, rock hard, hard as rock, set solid, gelled up, kicked, gone to rubber, cheese, set like jelly',
  empty: all(
    'threw rest, tossed rest, dumped rest, binned rest, threw leftovers, dumped leftovers, rest in waste, rest to waste, rest in drum, nothing left, nothing left in, none left, all gone, used up, used it up, used last, used last of, finished off, finished last of, ran out, run dry, ran dry, scraped clean, scraped out, wiped out clean, poured out',
    saidOf(
      'went, goes, gone, threw, thrown, tipped, poured, put, chucked, scraped',
      'in waste, in waste drum, in waste can, in drum, to waste, out, away, in bin, into waste',
    ),
  ),
  lid: all(
    saidOf(opened, all(lids, saidOf(lids, 'off, open'), saidOf('off', lids))),
    saidOf(lids, 'off, came off, is off, popped off, open, loose'),
    'uncovered, is open, are open, open now, opened, opened up, without its lid, standing open, cracked open, breathing',
  ),
  shut: all(
    saidOf(
      put,
      all(saidOf(lids, 'on, back on, down, back'), saidOf('back', saidOf(lids, 'on')), saidOf('on, back on', lids)),
    ),
    saidOf(lids, 'on, back on, down, tight, is on, on tight, back, closed, shut, sealed'),
    'closed it up, buttoned up, capped, recapped, lidded, sealed back up, hammered shut, tapped shut, covered again',
  ),
  blanket: all(
    saidOf(
      'put, shot, shot of, squirt of, squirted, blast of, puff of, bit of, ran, blew, let, gave it, topped with, topped up with, filled with, purged with, flooded with, layer of, hit with, blanketed with, sealed under, closed under, stored under',
      gases,
    ),
    saidOf(
      gases,
      'on, over, on top, in, back on, over it, put on, went in, blanket on, is on, is over, is in, back over',
    ),
    saidOf('under, with', gases),
    'argoned, argon’d, nitrogened, gassed, gassed it, blanketed, inerted, purged headspace, purged',
  ),
  prestir: all(
    saidOf(
      'gave, got, had, giving',
      'good stir, stir, shake, good shake, swirl, good going over, good mix, roll, turn with stick, good stirring',
    ),
    'paddled, shook, shook up, shaken up, shaken, rolled, turned over, stirred up, mixed up in can, box stirred, nothing left on floor, nothing on bottom, settled stuff is up, brought up bottom, off bottom, with stick, with paddle',
  ),
  coat: all(
    saidOf(
      'put, gave, got, laid, shot, slapped, rolled, brushed, sprayed, has, have, had',
      'coat, coat on, its coat, first coat, one coat, layer, pass',
    ),
    saidOf('dunked, dipped, poured, ran, flowed, rolled, brushed, sprayed, shot, painted', 'over, in, out of'),
    'coated up, put paint on, covered with, finished coating, done coating, done painting, done brushing, done rolling, is coated, are coated, is painted, are painted',
  ),
  'touch-up': all(
    saidOf(
      'fixed, patched, filled, dabbed, went back over, hit, got, caught, covered',
      'holiday, thin spot, bare spot, missed spot, run, pinhole, sag, spot, drip, skip',
    ),
    'dabbed, dab on, touched in, spot fixed, went over again while wet',
  ),
  dry: all(
    saidOf(
      'doesnt, wont, isnt, no longer, not',
      'stick, sticking, sticky, tacky, tack, grab, grabbing, print, mark, pull, transfer, gummy, smear, wet',
    ),
    saidOf('passed, passes', 'glove test, thumb test, touch test, tack test'),
    'flash is over, flash over, flash done, through flash, flashed, past tacky, comes off clean, tack is off, lost its tack, dry enough, dried, set to touch, skinned over, feels dry',
  ),
  'cure oven': all(
    saidOf(
      'put, popped, stuck, loaded, hung, slid, set, shoved, rolled, went, gone, goes, moved, racked, placed, got, just went, is, are',
      'in oven, into oven, on oven rack, in box, in bake, in cooker, in hot box, inside oven, to oven',
    ),
    'door closed, door shut, doors shut, started curing, cure started, started cure, baking, is baking, are baking, bake, cooking, is cooking, in to bake, into bake, oven loaded, in heat, oven door closed, doors closed',
  ),
  'cure room': all(
    saidOf(
      'leaving, left, leave, curing, cures, cure, sitting, let',
      'on bench to cure, to cure at room, to cure in room, at room temp, at room temperature, in room, in shop, on rack, on bench, to air cure, overnight',
    ),
    'air curing, cold cure, room curing, no oven',
  ),
  out: all(
    saidOf(
      'pulled, took, taken, got, came, come, is, are, lifted, fished, yanked, dragged, unloaded, hauled, brought, removed, all, back',
      'out of oven, out of heat, from oven, out of box, out, off oven rack, out of bake',
    ),
    'unloaded, oven empty, done baking, finished baking, done cooking, on cooling rack, cooling down, cooling off, cooling on bench',
  ),
  temp: all(
    saidOf(
      'probe, thermocouple, gun, ir gun, pyrometer, part, metal',
      'says, said, reads, read, shows, showed, gives, is at, at, got to, on it says',
    ),
    'core temp, on thermocouple, by probe, off probe',
  ),
  wet: 'wet gauge, wet comb, comb, comb says, comb reads, comb shows, wft, wft on, wet film is, wet reading, wet readings, notch gauge',
  film: 'dft, dft on, dry film is, dry film readings, cured thickness, final thickness, thickness on, mils dry, microns dry, film build, build on, gauge on',
  release: all(
    'ship, clear for shipping, cleared for shipping, clear to ship, ship it, ok for shipping, good for shipping, good to go, good to ship, passed inspection, looks good to ship, sign it off, signing off, signed it off, let it go, ok to ship, okay to ship, cleared to ship, approved',
  ),
  shipped: all(
    'left the building, left the shop, on the truck, went on the truck, loaded on the truck, picked up by the customer, collected by the customer, gone to the customer, went to the customer, delivered to the customer, handed to the customer, handed over to the customer, went out the gate, out the gate',
  ),
  hold: all(
    'needs rework, pull aside, pulled aside, pull it aside, red tag, red tagged, red tag on, tag out, tagged out, tagged, park, parked, parking, quarantine, quarantining, dont ship, do not ship, dont let go, set it aside, put it aside, sideline, sidelined, pulling aside, reject, rejected, rejecting, keep back, hang on to, not going out, block',
  ),
  'prep wiping': all(
    saidOf(
      'wiped, wiped down, cleaned, cleaned down, washed, went over',
      'with acetone, with ipa, with solvent, with thinner, with mek, with alcohol',
    ),
    'solvent wipe, solvent wiped, rag wiped, wipedown, wipe-down',
  ),
  'prep old-coat-off':
    'stripped down to metal, stripped to bare metal, stripped to metal, stripped bare, old coat is off, old coating is off, took old coat off, got old coat off, old coat came off, old film is off, coat is stripped off',
  'prep grease-off':
    'no grease left, no oil left, oil free, grease free, got grease off, took grease off, took oil off, oil is off, washed grease off, cleaned of grease',
  'prep blasting':
    'blast, blasts, grit blast, abrasive blasted, garnet blasted, profiled, blast done, blast finished, blasted to, out of blast, back from blast',
  'prep sanding':
    'scotchbrited, scotch brited, sanded back, sanded smooth, roughed up, roughened, abraded, ground down, wire brushed',
  surface: all(
    saidOf(
      'steel, metal, surface, skin, iron, casting, substrate, magnet probe, contact probe',
      'temp, temperature, is, is at, reads, at, feels, on, temp is, temp of',
    ),
    'on bare metal, skin temp, skin temperature, cold metal',
  ),
  air: all(
    saidOf(
      'shop, room, booth, bay, place, air, hygrometer, gauge on wall, wall gauge, meter',
      'at, is, is at, reads, says, shows, sits at, was at, now, inside',
    ),
    saidOf('took, read, checked, got', 'room, air, shop, hygrometer, humidity'),
    'ambient, outside it, in bay, in hall, in booth, out here, today in shop, humid, muggy',
  ),
  'fan on': all(
    inEitherOrder(turnedOn, fans),
    saidOf(fans, all('does, reads, at, is at, gives, meter, doing', running)),
  ),
  'fan off': all(inEitherOrder(turnedOff, fans), saidOf(fans, standing)),
  'supplied yes': all(
    saidOf(
      'on, have, got, using, wearing, hooked up to, plugged into, breathing, breathing off, breathing from, running, with, hooked up, everyone on, all on',
      supplied,
    ),
    saidOf(
      supplied,
      'on, is on, hooked up, connected, plugged in, running, flowing, masks on, masks hooked up, hoods on',
    ),
    'hood is on, hoods are on, hoods on',
  ),
  'supplied no': all(
    saidOf('no, without, not on, off, lost, havent got', supplied),
    saidOf(supplied, 'off, is off, quit, unhooked, down'),
  ),
  'spray on': all(
    saidOf(begun, spraying),
    saidOf('trigger, gun', 'pulled, is pulled, on, is on, going, is going, up, is up'),
    'spraying now, shooting now, painting now, is spraying, are spraying, is shooting, are shooting, on trigger, laying down',
  ),
  'spray off': all(
    saidOf(ended, spraying),
    saidOf(spraying, 'done, finished, over, stopped, is done, is over, is finished'),
    saidOf('trigger', 'off, released'),
    saidOf('gun', 'down, is down'),
    saidOf('trigger, gun', 'hung up, parked, put down, away, let go'),
    'put gun down, hung gun up, let go of trigger, off trigger, mist is done, overspray is gone',
  ),
  'flush gun': all(inEitherOrder(washed, guns), saidOf(guns, isWashed)),
  'flush brush': all(inEitherOrder(washed, brushes), saidOf(brushes, isWashed)),
  'flush roller': all(inEitherOrder(washed, rollers), saidOf(rollers, isWashed)),
  rags: all(
    saidOf(rags, bins),
    saidOf(
      'put, threw, tossed, dropped, stuffed, chucked, binned, bagged, dunked, soaked, got rid of, took out, cleared',
      rags,
    ),
  ),
  close: all(
    saidOf(
      'wrap up, wrap, close, closing, close out, end, ending, shut, done with, finish',
      'session, session up, booth session, spray session, job in booth, spraying session',
    ),
    'session done, session closed, session over, session is over, all finished in booth, all done in booth, finished in booth, booth is done',
  ),
  ack: all(
    saidOf(
      'read, went through, been through, got, understood, understand, heard, seen, read and understood, agree with, ok with',
      'brief, briefing, safety brief, safety talk, talk, toolbox talk, hazards',
    ),
    saidOf('brief, briefing, talk', 'understood, read, is clear, clear, all clear, got it'),
    'read and understood, im briefed, i am briefed',
  ),
});
