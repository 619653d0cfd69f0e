// What makes a line calm that begins with an alarm's word: `fire extinguisher checked`, `down to 20C`, `eyes on the scale`. Only
// what is listed is calm: a false ring costs a minute, a cry that only asks may cost a person. Common practice and our own
// choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { articles, harmless, liquids, pots, words } from './cry-words.ts';

/** Who and what the line may name. */
export interface Known {
  readonly isPerson: (word: string) => boolean;
  readonly isAlarm: (word: string) => boolean;
}

/** They are brought to a fire or to an eye: calm, unless they are wanted now: `fire extinguisher now`, `eye wash where`. */
const summoned = words('extinguisher extinguishers blanket hose wash eyewash');
/** They come when there is one: a cry, unless it is their test or their visit: `fire brigade`, `fire alarm going off`. */
const comesToFire = words('alarm brigade truck engine dept department service fighters');
const oftenOfThem = words(`
  test tests tested testing check checked checks system panel battery batteries serviced service maintenance inspection
  inspected inspects visit visits visited comes came training drill number course exercise access parking certificate
  contract day due works worked was were said says wants report key lane silenced reset false sign installed
  replaced repaired repair new ok okay fine`);
const summons = words(`
  now quick quickly need needed help please pls where going ringing real asap urgent ya rapido aqui donde urgente`);

const companions: Readonly<Record<Alarm, ReadonlySet<string>>> = {
  fire: words(`
    drill drills alarms risk risks hazard hazards load class classes rules permit fighter door doors exit exits blankets watch marshal warden point points training safety certificate
    station escape route plan panel bucket buckets wall line lane store cabinet insurance code resistant retardant
    proof proofing limit limits view rating rated resistance him her them assembly sign signs hydrant hoses sprinkler sprinklers test tests
    course curtain damper detector detectors stickers sticker question visit inspection inspector
    lento controlado controlada`),
  eyes: words(`
    open opened protection test tests bolt bolts level peeled shield shields contact doctor appointment glasses mask
    masks drops catching catcher hook hooks nut nuts for view abiertos`),
  down: words(`
    to of time for until payment side stairs draft hill grade load under jacket tools pipe pipes south as two three four a lower cardboard boxes empty para por hasta de del`),
  spill: words(`
    kit kits tray trays training report reports pallet pallets proof plan course station sock socks pad pads mat mats procedure
    log sign box cabinet guard response cerebral cero`),
  hot: words('for recipe restaurant'),
};

/** With any word but fire itself: the sun, the bread, the neighbour. */
const ofHome = words(`
  pilot piloto sun sol pan toast barbecue barbacoa neighbour neighbours neighbor neighbors vecino camion burner candle
  candles campamento`);
const fireItself = words('fire fuego incendio');

/** `down on the list`. */
const onPaper = words('list rota roster schedule plan sheet lista');

/** `kari is down with a cold`; not with chest pain. */
const illness = words('cold flu fever covid bug gripe fiebre resfriado');

/** People fall down these. */
const falls = words('pit shaft ladder stairs steps hole well scaffold tank foso escalera');

/** `ojo con la manguera`, `ojo todos`: a warning. */
const warned = words('con al a que todos para');

const cleaned = words('cleaned mopped wiped limpio limpiado limpiada recogido');

/** Nothing is calm beside them. */
const desperate = words(`
  help spreading trapped unconscious breathing bleeding moving pulse ayuda socorro auxilio atrapado atrapada atrapados
  respira inconsciente sangra`);

const isSeenTo = words('fine ok okay normal bien correcto molde');

/** `before` and `after` are the words round `word`, `after` nearest first. */
export function isCalm(alarm: Alarm, word: string, after: readonly string[], known: Known): boolean {
  const [first = '', second = '', third = ''] = after;
  // `fire door burning`, `down the shaft not breathing`.
  if (after.some((each) => desperate.has(each) || (each !== first && known.isAlarm(each) && alarm !== 'down')))
    return false;
  const next = second === 'is' ? third : second;
  if (summoned.has(first)) return !(summons.has(next) || known.isAlarm(next));
  if (alarm === 'fire' && comesToFire.has(first)) {
    return oftenOfThem.has(next) || (next === 'at' && /^(?:\d|noon|midday)/.test(second === 'is' ? '' : third));
  }
  // `eye contact with hardener`.
  if (first === 'contact' && after.some((each) => liquids.has(each))) return false;
  if (alarm === 'down' && /^(?:\d|two|three|four)/.test(first)) return !after.some(known.isPerson);
  if (companions[alarm].has(first)) return true;
  const isFine = isSeen(isSeenTo, after);
  switch (alarm) {
    case 'fire':
      // `fire the oven`, `llamas a kari por teléfono`.
      if (word === 'fire' && (first === 'the' || (first === 'it' && second !== 'is' && second !== 'has'))) return true;
      // `fire up the oven`; not `fire up on the roof`.
      if (first === 'up') return second === 'the' || second === 'it' || second === 'at';
      if (word === 'llamas' && (first === 'a' || first === 'al')) return true;
      if (word === 'fuego' && first === 'de' && second === 'campamento') return true;
      return !fireItself.has(word) && (isFine || after.some((each) => ofHome.has(each)));
    case 'eyes':
      if (word === 'ojo' && (warned.has(first) || (first === 'y' && second === 'cuidado'))) return true;
      return isFine || isLooking(after, known);
    case 'down':
      // `down 5 degrees`, `down by 5%`, `down the hall`, `collapsed the boxes`.
      if (first === 'with') return after.some((each) => illness.has(each));
      if (/^\d/.test(first) || (first === 'by' && /^(?:\d|two|three|four)/.test(second))) return true;
      if (first === 'on' && after.some((each) => onPaper.has(each))) return true;
      return articles.has(first) && !after.slice(1, 3).some((each) => known.isPerson(each) || falls.has(each));
    case 'spill':
      // `vertido en la mezcla`: it was poured where it belongs.
      if (word.startsWith('vertido') && pots.has(after.find((each) => !articles.has(each)) ?? '')) return true;
      return isSeen(cleaned, after) || isFine || isOnlyWet(after) || (first === 'the' && second === 'beans');
    case 'hot':
      return after.some((each) => harmless.has(each));
  }
}

/** `spill in the booth cleaned up`; not `not cleaned`. */
const isSeen = (seen: ReadonlySet<string>, after: readonly string[]): boolean =>
  after.some((each, i) => seen.has(each) && !['not', 'no', 'isnt'].includes(after[i - 1] ?? ''));

/** Coffee and no solvent: not `spilled acetone by the water tap`. */
export const isOnlyWet = (near: readonly string[]): boolean =>
  near.some((word) => harmless.has(word)) && !near.some((word) => liquids.has(word));

/** `eyes on the pot`, `ojos en la báscula`, `eye of the needle`; not `eyes on fire`, `eyes of kari`. */
function isLooking(after: readonly string[], known: Known): boolean {
  const [first = ''] = after;
  const [at = ''] = after.slice(1).filter((word) => !articles.has(word));
  if (known.isAlarm(at) || known.isPerson(at) || liquids.has(at)) return false;
  if (first === 'en') return pots.has(at) || at === 'bascula' || at === 'balanza';
  return first === 'on' || first === 'of' || first === 'de';
}
