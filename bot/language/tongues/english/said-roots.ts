// The words of which English phrases for acts are made: what is done, and to what. Each pair stands in either order, `washed the gun`
// and `the gun is washed`.

/** Each phrase of a list with each of the other, the first before the second. */
export const saidOf = (firsts: string, seconds: string): string =>
  listed(firsts)
    .flatMap((first) => listed(seconds).map((second) => `${first} ${second}`))
    .join(', ');

export const inEitherOrder = (done: string, things: string): string => all(saidOf(done, things), saidOf(things, done));

export const all = (...phrases: readonly string[]): string => phrases.join(', ');

const listed = (phrases: string): readonly string[] => phrases.split(', ');

export const lids = 'lid, lids, top, cover, cap';
export const gases = 'argon, nitrogen, gas, inert gas, n2';
export const guns = 'gun, guns, spray gun, spraygun, hose, fluid line';
export const brushes = 'brush, brushes';
export const rollers = 'roller, rollers';
export const rags =
  'rags, wipes, cloths, towels, dirty rags, used rags, solvent rags, oily rags, dirty wipes, soaked cloths';
export const bins =
  'in can, in bin, in drum, in tin, in bucket, in pail, in lidded can, in closed can, in fire can, in fire bin, in water, into can, into bin, into drum, to bin, to can, to fire can, to fire bin, outside, away, dealt with, under water';
export const fans =
  'fan, fans, extractor, extraction, exhaust, exhaust fan, blower, ventilation, vent fan, booth fan, draft, suction';
export const stirrers = 'stirrer, mixer, agitator, paddle, blades, drill';
export const running =
  'on, running, going, up, spinning, turning, blowing, pulling, sucking, working, back on, back up, up and running, fired up, kicked on, started, humming';
export const standing =
  'off, stopped, down, quit, quit on, died, dead, conked out, packed up, tripped, cut out, shut off, shut down, not running, killed, out';
export const turnedOn =
  'turned on, switched on, fired up, started, start, flipped on, kicked on, got, put on, restarted, cranked up';
export const turnedOff =
  'turned off, switched off, shut off, shut down, killed, kill, stopped, stop, cut, pulled, pulled plug on, unplugged';
export const washed =
  'cleaned, cleaned out, cleaned up, washed, washed out, washed up, rinsed, rinsed out, flushed, flushed out, flushed through, ran solvent through, ran solvent thru, ran acetone through, ran acetone thru, ran thinner through, ran thinner thru, put solvent through, blew out';
export const isWashed =
  'cleaned, cleaned out, washed, washed out, rinsed, rinsed out, flushed, flushed out, spotless, is clean, cleaned up';
export const put =
  'put, pressed, hammered, knocked, tapped, banged, snapped, slapped, stuck, pushed, screwed, jammed, set, got';
export const opened =
  'took, taken, popped, pulled, pried, prised, prized, cracked, lifted, flipped, knocked, got, removed, peeled, undid, unscrewed';
export const supplied =
  'supplied air, fresh air, breathing air, airline, air line, air hose, air fed hood, airfed hood, air fed mask, airfed mask, fed air, line air';
