// How English-speaking crews say their acts, besides the verbs that begin a line, and the words that stand round them.

import { type SaidWords, together } from '../said-words.ts';
import { englishActs } from './said-acts.ts';

export const englishSaid: SaidWords = {
  acts: () =>
    together(englishActs(), {
      mix: 'start mix, starting mix, started mix, begin mix, make up, made up, making up, make mix, making mix, mixed up, mixing up, mix up, new batch, new mix, fresh batch, fresh mix, start batch, started batch, starting batch, make batch, begin batch, making batch',
      weigh:
        'weighed out, weighed in, weighed up, weigh out, weighs, weighing out, scale shows, scale says, scale reads',
      stir: 'stirrer running, stirrer going, turned on stirrer, switched on stirrer, stirrer back on, started stirring, start stirring, stirring again',
      stop: 'stirring finished, stirring done, stirring stopped, stopped stirring, stop stirring, done stirring, turned off stirrer, switched off stirrer, stirred enough, stirrer stopped, finished stirring',
      filter:
        'through filter, ran through filter, put through filter, went through filter, through strainer, strained out, strain out, filtered off, filtered out',
      thick:
        'gloopy, getting gloopy, goopy, gooey, gloppy, stringy, like honey, like syrup, like molasses, like treacle, stiffening up, stiffening, getting stiff, getting heavy, thicker, getting thick, going thick, gone thick, gotten thick, too thick, syrupy, ropey, getting stringy, going stringy, thickening up, thickened up',
      gel: 'gone off, gone hard, gone to gel, gone to jelly, set up hard, kicked off, turned to jelly, turned to gel, jelly, solid, gone solid',
      empty:
        'is empty, are empty, empty now, threw in waste, thrown in waste, in waste, in waste drum, in waste can, to waste, went to waste, into waste, gone to waste, toss, tossed, tossing, dump, dumped, dumping, dumped out, threw out, thrown out, throwing out, threw away, thrown away, throwing away, tossed out, done with, finished with, used up, all used up, poured away, got rid of, binned, chucked, emptied out, scraped out',
      cover: 'put cover on, cover on, put lid on pot',
      uncover: 'took cover off, cover off',
      catch: 'caught back, ran off, drained off, recovered, drained back',
      lid: 'took lid off, lid off, lid came off, popped lid, cracked lid, opened up',
      shut: 'closed lid, shut lid, closed its lid, lid closed, lid shut, popped lid back on, popped back lid on, pressed lid on, pressed lid back on, lid pressed on, lid is on, lid is back on, snapped lid on, snapped lid back on, banged lid on, closed, closed again, sealed, sealed up, resealed, lid down, lid tight, lid on, lid back on, put lid on, put lid back on, shut, closed up',
      blanket:
        'before i closed, before i shut, before i sealed, before we closed, before we shut, before we sealed, putting argon on, putting argon over, putting gas on, putting gas over, putting nitrogen on, putting nitrogen over, squirted argon, squirted gas, squirt of argon, squirt of gas, let argon in, let gas in, let nitrogen in, shot of argon, shot of gas, blew argon in, blew gas in, ran argon in, topped with argon, topped up with argon, argon on top, gas on top, flooded with argon, argon in, nitrogen in, gas on, gas over, put gas on, put gas over, gas in, put gas in, gas put on, argon over, argon on, nitrogen over, nitrogen on, put argon on, put nitrogen on, put argon over, put nitrogen over, gassed, gassed up, gassed and closed, gassed and shut, gas is over, under gas, under argon, under nitrogen, purged with argon, blanketed and closed, gassed off, gas back on',
      prestir:
        'before i poured, before we poured, gave cans a stir, gave can a stir, gave can a good stir, gave cans a good stir, give can a stir, gave a stir, paddle, with paddle, stirred can, stirred cans, stirred A can, mixed can up, mixed up can, went round in can, swirled, swirled around, rolled can, stirred up can, shook, shaken, stirred in can, stirring in can, gave stir',
      coat: 'slapped coat on, slapped coat, laid coat, put coat, got its coat, got their coat, got their coats, has its coat, got coated, got painted, gave it coat, ran coat over, hit with, put on with, layed coat on, has had coat, had its coat, has its first coat, paint, painted, painting, put coat on, got coat, got first coat, given coat, gave coat, put on coat, applied, applied to, laid coat on, laid down coat on, coat on, coat applied, shot, shooting, brush coated, spray coated, dip coated, flow coated, roller coated, first coat on',
      'touch-up':
        'touched up, touching up, touch up, retouched, fix spot, fix spots, fixed spot, fixed spots, correct spot, correct spots, correct small spots, fix small spots',
      dry: "came out dry, came out nice and dry, came out all dry, come out dry, coming out dry, came up dry, came out tack free, no marks from glove, no mark from glove, no marks on glove, no mark on glove, leaves no mark, leaves no marks, leaves no print, doesnt stick, doesn't stick, doesnt grab, doesn't grab, doesnt stick anymore, doesn't stick anymore, doesnt grab my glove, doesn't grab my glove, doesnt stick to glove, doesn't stick to glove, doesnt grab glove, glove comes away clean, glove comes off clean, comes away clean, doesnt grab anymore, doesn't grab anymore, not sticky, not sticky anymore, not tacky, not tacky anymore, isnt tacky, isn't tacky, isnt tacky anymore, isn't tacky anymore, isnt sticky, isn't sticky, no longer sticky, no longer sticks, no longer grabs, no tack, no tack left, tack is gone, tacks gone, wont stick, won't stick, dried up, bone dry, hard to touch, touch dry, dry to touch, dry to the touch, tack free, tackfree, dried off, dried out, flashed off, gone dry, no longer tacky, dry to feel",
      'cure oven':
        'putting in oven, putting into oven, popping in oven, sticking in oven, loading in oven, loading into oven, going in oven, going into oven, in oven, into oven, went in oven, went into oven, put in oven, put into oven, popped in oven, stuck in oven, loaded in oven, loaded into oven, loaded oven, gone in oven, in to oven, went in, put in, into cure, started oven cure, oven cure, oven curing, curing in oven, baking in oven, cure in oven, bake in oven',
      'cure room':
        'cure in room, curing in room, room cure, air cure, air curing, cure at room temperature, curing at room temperature, cure in shop, cure on rack, curing on rack',
      out: 'yanked, yanked out, hauled out, hauled, grabbed out, fished out, lifted, is out, are out, out now, come back out, came back out, taking out of oven, pulling out of oven, taking out, pulling out, coming out of oven, coming out, out of oven, came out of oven, came out, come out, took out of oven, took out, taken out of oven, taken out, pulled out of oven, pulled out, pulled from oven, pulled, pull, out from oven, came from oven, removed from oven, removed, off oven, lifted out, got out of oven, done curing',
      temp: 'held probe on, hold probe on, holding probe on, held probe to, put probe on, stuck probe on, probe to, probe in, on part, on the part, part is at, metal is at, part at, on probe, part temp, part temperature, temp of part, part reads, metal temp, metal temperature, probe on, probe reads, probe shows, probe says',
      wet: 'mils wet, wet on, wet mils, wet film on, wet film thickness, wet thickness, film wet',
      film: 'gauge on, dry gauge, dft on, dry film on, dry film thickness, dry thickness, film thickness, thickness, film reads, gauge reads, gauge shows',
      adhesion: 'adhesion test, adhesion class, cross cut, cross hatch, crosshatch, tape test',
      release:
        'lift hold, lifts hold, lifted hold, lifting hold, hold lifted, hold is lifted, take off hold, took off hold, taken off hold, off hold, remove hold, removed hold, clear hold, cleared hold, released, is released, signed off, sign off, let go, release to customer, released to customer',
      hold: 'setting aside, putting on hold, putting aside, put aside, put on hold, on hold, put hold on, set aside, place on hold, placed on hold, quarantined, hold back, held back',
      prep: 'prepped, surface prep, prep done, cleaned down',
      'prep blasting':
        'blasted, blasting, grit blasted, sandblasted, sand blasted, shot blasted, bead blasted, grit blasting, sandblasting',
      'prep sanding': 'sanded, sanding, sanded down, scuffed, scuff sanded, keyed',
      'prep wiping':
        'wiped, wiping, wiped down, wipe down, wiping down, wiped off, wiped with solvent, wiped down with solvent, solvent wiped',
      'prep grease-off': 'degreased, degreasing, degreased with, grease off, grease is off, free of grease',
      surface:
        'steel temp, steel temperature, steel reads, surface temperature, surface reads, metal surface, substrate temp, on metal, on bare metal, on steel, on surface, part surface',
      air: 'out here, over here, around here, thermometer says, thermometer by door, thermometer shows, shop is at, room is at, booth is at, room is now at, shop is now at, shop at, room at, air reading, room air, air temp, air temperature, in here, in shop, in room, in booth, room reads, hygrometer, hygrometer reads, hygrometer says, hygrometer shows, room temp, room temperature, relative humidity, conditions',
      'fan on':
        'fan does, fan at, fan reads, fan gives, fan pulls, fan is at, fan doing, fan running, fan going, turned on fan, turned fan on, switched on fan, switched fan on, started fan, fan started, fan up, extraction running, extraction on, extractor on, extractor running, exhaust on, exhaust running, turned on extraction, booth fan on, fan on, exhaust fan on, exhaust fan running',
      'fan off':
        'turned off fan, turned fan off, switched off fan, switched fan off, fan stopped, shut fan off, shut off fan, extraction off, exhaust off, extractor off, fan off, stopped fan',
      'supplied yes':
        'supplied air on, on supplied air, have supplied air, got supplied air, using supplied air, airline on, hooked up to air, supplied air hooked up, breathing air on, wearing supplied air, on air line, on airline',
      'supplied no':
        'no supplied air, without supplied air, no airline, no breathing air, supplied air off, not on supplied air',
      'spray on':
        'spraying started, spraying has started, started spraying, starting to spray, spraying now, gun running, start gun',
      'spray off':
        'finished with spraying, done with spraying, through with spraying, finished with gun, done with gun, spraying finished, spraying done, spraying stopped, spraying over, spraying is over, stopped spraying, done spraying, finished spraying, stop spraying, gun stopped',
      'flush gun':
        'flushed gun, gun flushed, cleaned gun, gun cleaned, washed gun, gun washed, washed out gun, cleaned out gun, flushed out gun, rinsed gun, gun rinsed, ran through gun, flushed out spray gun, cleaned spray gun, flushed spray gun',
      'flush brush':
        'washed brush, washed out brush, washed brush out, brush washed, cleaned brush, cleaned out brush, brush cleaned, brush is clean, brush clean, clean brush, rinsed brush, rinsed out brush, brush rinsed, flushed brush, brush flushed, brush flushed in, brush is washed, brush is cleaned',
      'flush roller':
        'washed roller, washed out roller, roller washed, cleaned roller, roller cleaned, roller is clean, roller clean, clean roller, rinsed roller, roller rinsed, flushed roller, roller flushed',
      flush: 'flushed, flushing, flush',
      rags: 'rags are in can, rags are in drum, rags are in bin, rags are away, rags into can, rags into drum, rags in tin, rags dealt with, rags disposed, rags away, put away rags, put rags away, rags in bin, rags in can, put rags in can, binned rags, rags in drum, rags put away, bagged rags',
      close:
        'closed session, session closed, closed brief, wrap up session, closed out session, session over, closed down session',
      ack: 'i acknowledge, acknowledged brief, read brief, i read brief, understood brief',
    }),
  readings:
    'getting, i get, i got, im getting, we get, hit, hits, reads, read, reading, shows, showed, showing, reached, reaching, says, said, measured, measures, at, got to, up to, climbed to, came up to, sits at, sitting at, now at, gone to',
  light:
    "u, theres, there's, the, a, an, is, are, was, were, be, been, being, has, have, had, got, just, now, its, their, my, our, this, these, that, those, there, both, thin, even, single, we, i, ive, we've, i've, weve, it's, all, whole, some, i'm, im, they're, he, she, they, you",
  fillers:
    "nearly there, almost there, getting there, wow, whoa, oof, had a look at, took a look at, had a good look at, took a good look at, having a look at, gave a look at, looked at, looking at, look at, standing, stood, sitting, sat, which is set to, which is set at, which is at, which is now at, which was at, which was set to, which reads, which shows, which says, looks good to me, look good to me, looks clean, look clean, looks spotless, looks sharp, looks solid, looks decent, looks fine to me, looks ok to me, good to me, fine to me, that's where, thats where, looks mint, look mint, look great, looks very nice, look very nice, look nice, look perfect, look good, looks lovely, looks beautiful, looks good, looks great, looks fine, looks ok, looks okay, looks perfect, looks nice, looking good, looking great, all up, all over, than before, while its still wet, while still wet, while wet, shipping, because, because of, due to, on account of, /, -, +, =, |, n, cause, ok so, lets gooo, lets goo, listen, look here, there we go, yo, yoo, cans, pots, pot's, batches, tins, top, on top, dude, bro, man, buddy, pal, chief, lol, haha, hahaha, heh, woo, woohoo, yay, phew, ugh, damn, geez, jeez, whew, lets go, let's go, go go, for you, fer, thats for, that's for, 'em, em, out here, per, uh huh, yup, aye, right then, okey dokey, roger, copy, thankyou, thank you very much, many thanks, thank you so much, much obliged, please note, note that, so kind as to note, kind as to note, be so kind as to note that, put down that, note down, write it down, write that down, mark down, mark it down, for the log, for the books, in the log, good morning, good afternoon, good evening, good day, just went, just got, now, anymore, any more, i, pressed, today, all of it, all good, no worries, happy days, hell yeah, hell, yippee, bare, uncoated, metal, substrate, same, all done, they used, we used, i used, used, using, out of pot, out of the pot, out the pot, out o the pot, out the batch, out of the batch, out the mix, out of the mix, out the tin, out of the tin, out the bucket, into tray, in tray, tray, job, slowly, carefully, nicely, gently, quick, quickly, real quick, completely, fully, properly, thoroughly, totally, already done, at last, by hand, come, has come, have come, very, so very, kind, number, no, class, stands at, stands, says, thermometer, door, shop, in total, each of, in all, surface, part a, part b, component, degrees c, of it, of them, micron, microns, profile, mils, finish, finished, good, nice one, coat of, stuff, paint, product, together, at it, done with it, clean, good one, lads, cheers mate, mate, kiddo, ladies, gents, folks, crew, ahora, sorry, sorry to be a pain, sorry about that, heads up, quick one, just so you know, so you know, just letting you know, letting you know, let you know, for the record, for info, by the way, as promised, when you get a chance, if you please, if you would, would you, mind, kindly, much appreciated, appreciated, love, everyone, everybody, folk, lads, people, gang, there you go, hiya, howdy, cheerio, but, hey, hi, hello, morning, good, afternoon, evening, guys, team, folks, boss, mate, bot, bell, batchbell, ok, okay, alright, right, well, so, um, uh, er, please, pls, plz, thanks, thank, thx, cheers, ta, fyi, note, log, record, put down, write down, jot down, update, done, btw, yep, yes, yeah, sure, great, nice, lovely, finally, also, too, already, again, here, back, over, up, down, off, on, in, to, from, of, for, with, w, w/, by, using, and, &, then, plus, a, at, as, into, onto, it, them, degrees, deg, percent, weight, total, level, left over, left, leftover, remaining, remains, waste, rest, last, what was left, what is left, whats left, what remained, could you, can you, can we, would you, will you please, let's, lets, start, started, starting, begin, turned, switched, put, gave, given, went, go, goes, part, parts, piece, pieces, batch, pot, can, mix, number, no., #, job, customer, part temp, temperature, temp, humidity, rh, dry bulb, film, coat, coats, first, coating, side, both, each, time, o'clock, oclock, about now, right now, today, setpoint, set to, set at, oven, brush, hand, gun, stirrer, filter, filters, drum, bin, fresh, new, used, made, make, making, be, get, getting, going, hour",
  lasting: 'for',
  greetings: 'hi, hello, hey, hiya, howdy, yo, morning, afternoon, evening, thanks, thank, thx, cheers, ta',
  denials:
    "we dont ship, we do not ship, they dont ship, i dont ship, came out sticky, came out tacky, came out wet, came out soft, came out still wet, come out sticky, come out tacky, not there yet, not quite there, still sticks, still sticking, still sticky, still grabs, still grabby, still soft, not, wouldnae, wouldna, dinnae, dinna, cannae, canna, isnae, isna, wasnae, wasna, didnae, didna, hasnae, hasna, havenae, havena, willnae, shouldnae, shouldna, arenae, werenae, doesnae, doesna, couldnae, couldna, no, never, none, nobody, nobodys, nobody's, no one, no one's, noones, noone, nothing, nor, neither, without, dont, don't, doesnt, doesn't, didnt, didn't, isnt, isn't, arent, aren't, wasnt, wasn't, werent, weren't, hasnt, hasn't, havent, haven't, hadnt, hadn't, cant, can't, cannot, couldnt, couldn't, wont, won't, wouldnt, wouldn't, shouldnt, shouldn't, aint, ain't, forgot, forgotten, failed to, refuse, refused, stop, instead of, except, but not, rather than, skip, skipped, missed, cancel, broken, busted, faulty, out of order, kaput, still wet, still tacky, too wet, tacky",
  hedges:
    'came out fine, came out good, came out great, came out nice, came out ok, came out okay, came out well, came out lovely, came out beautiful, came out perfect, came out clean, question, picture, pictures, photo, photos, video, maybe, perhaps, wish, wished, probably, possibly, might, may, could, i think, think, guess, i guess, guessing, my guess, best guess, guesstimate, figure its, id say, somewhere around, somewhere near, somewhere about, ballpark, last i looked, last i saw, believe, suppose, supposedly, apparently, seems, seem, looks, look, looking, feels, feel, smells, almost, nearly, not sure, unsure, hopefully, if, unless, when, once, until, till, whether, before, supposed, should be, ought, must be, must have, or, either, sort of, kind of, kinda, barely, hardly, half, mostly, partly, only partly, wonder, wondering, hope, says he, said that, heard, rumour, hold on, out of, close, keep, every, reckon, assume, unclear, somebody, someone, anyone, anybody',
  plans:
    "starting to brush, starting to coat, starting to paint, starting to dip, starting to roll, starting on, started brushing, started coating, started painting, began brushing, began coating, began painting, beginning to brush, beginning to coat, going to, had better, you'd better, youd better, we'd better, i'd better, better, wants, want, gets, agreed, decided, ordered, monday, tuesday, wednesday, thursday, friday, saturday, sunday, idea, gonna, will, ll, i'll, we'll, ill, well be, about to, planning, plan to, plans to, intend, want to, wants to, wanna, need to, needs, need, has to, have to, got to, gotta, should, shall, tomorrow, tonight, later, soon, next, next week, after lunch, this afternoon, in a bit, in a minute, in a while, in a sec, in a second, in a moment, in a mo, in a min, in a tick, in a jiffy, in a few, in a few minutes, in a couple of minutes, shortly, momentarily, any minute now, any second now, ready to, due, waiting, wait, try, trying, let me, then we, to do, to be, remember to, remind, don't forget, next up, scheduled, meant to, i would, would, would like, i'd, we'd, 'd like, getting ready, preparing to",
  soon: '',
  iDo: '',
  within: 'in, within',
  asks: "who, whos, who's, why, where, wheres, where's, which, whose, how, hows, how's, what, whats, what's, when's, whens, anyone know, do we know, tell me, any idea, show me, alright to, all right to, ok to, okay to, good to, fine to, clear to, cleared to, allowed to, able to, cool to, good enough to",
  asksFirst:
    "is, are, was, were, do, does, did, has, have, had, can, can i, may, may i, could i, should, shall, will, would, when, isn't, aren't, wasn't, didn't, hasn't, haven't, am, any, anyone",
  tellsFirst: 'did',
  byWhat: 'with, by, from, out, off, using',
  looks: 'look, looked, looking, looks, glance, glanced, peek, peeked, squint, stare, staring',
  blemishes:
    'dust, rust, dirt, scale, salts, marks, scratches, dents, prints, fingerprints, bubbles, blisters, pinholes, holes, craters, fisheyes, fish eyes, runs, sags, drips, tears, curtains, streaks, lines, brush marks, lap marks, lumps, bits, specks, fluff, hairs, bare spots, thin spots, missed spots, misses, holidays, skips, orange peel, haze, blush, blushing, cracks, wrinkles, defects, faults, flaws, blemishes',
  beforePart: 'on, of, for, at, the, in, part',
  water: 'water',
  noneOf: 'no, no more, without, without any, zero, free of, free from, clear of, not a, nor',
  whence: 'from, of, off',
  largest: 'big, bigger, biggest, large, larger, largest',
  smallest: 'small, smaller, smallest, little, wee',
  tellers: 'i, we',
  somebody: 'you, u, ya, he, she, they, anyone, anybody, someone, somebody, everyone, everybody',
  roughly: 'about, around, roughly, approx, approximately, circa, ish, some, more or less, near enough',
  requests: [
    {
      // Nobody weighs before it is asked for: whoever means to mix asks for it.
      said: /^(?:(?:hey|hi|please|ok|bell|batchbell|morning|so|now|um|uh|right)[ ,]+)*(?:i|we|im|i'm|we're|were|id|i'd|we'd)? ?(?:want to|wanna|would like to|like to|need to|am going to|are going to|going to|gonna|am about to|about to) (?:set up|make up|make|mix up|mix|start|prepare|stir up) (?:me |us )?(?:a (?:new |fresh )?(?:mix|batch)(?: of)? )?/,
      verb: 'mix ',
    },
    {
      said: /^(?:would|could|will) it be (?:possible|ok|okay|all right|alright|fine) to (?:have|get|mix|make|start) (?:a (?:new |fresh )?(?:mix|batch)(?: of)? )?(?=[\d.]|an? |half )/,
      verb: 'mix ',
    },
    {
      said: /^(?:(?:hey|hi|please|ok|bell|batchbell|morning|so|um|uh)[ ,]+)*(?:make|mix|do|get|fix) (?:me|us) (?:up )?(?:a (?:new |fresh )?(?:mix|batch)(?: of)? )?(?=[\d.])/,
      verb: 'mix ',
    },
    {
      said: /^(?:(?:hey|hi|please|ok|bell|batchbell|morning|so|um|uh)[ ,]+)*(?:can|could|would|will) (?:you|u|someone|somebody) (?:please )?(?:set up|set me up|make up|make|mix up|mix|start|prepare|prep|do)(?: me| us)? (?:a (?:new |fresh )?(?:mix|batch)(?: of)? )?/,
      verb: 'mix ',
    },
    {
      said: /^(?:(?:hey|hi|please|ok)[ ,]+)*(?:can|could|would|will) you (?:please )?(?:log|note|record|enter|put(?: down)?|write(?: down)?|mark|add|jot down)\b[ ,:]*(?:that\b ?)?/,
      verb: '',
    },
  ],
  pronouns: 'it, them, that one, this one, those, these, they, one',
  articles: 'the, number',
  fromPot: 'out of',
  beforeThing: 'on',
  slips: 'argon nitrogen humidity oven degrees percent grams acetone room booth temp',
  heardAs: {
    ...{ way: 'weigh', wait: 'weigh', weight: 'weigh', whey: 'weigh', cote: 'coat', court: 'coat', code: 'coat' },
    ...{
      coke: 'coat',
      dye: 'dry',
      try: 'dry',
      err: 'air',
      ere: 'air',
      cute: 'cure',
      secure: 'cure',
      wed: 'wet',
      field: 'filter',
      attempt: 'temp',
      tempt: 'temp',
      heir: 'air',
      whole: 'hold',
      jail: 'gel',
    },
  },
  heardAsMark: {
    patch: 'batch',
    badge: 'batch',
    match: 'batch',
    back: 'batch',
    bash: 'batch',
    cane: 'can',
    ken: 'can',
  },
  marks: {
    'full stop': '.',
    period: '.',
    'exclamation mark': '!',
    'exclamation point': '!',
    comma: ',',
    'question mark': '?',
  },
  joints: 'and, &, plus, then, also, n, +, -',
};
