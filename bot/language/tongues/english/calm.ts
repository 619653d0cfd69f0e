// What makes a line calm that begins with an alarm's word, in English. Common practice and our own choice, no source.

export const englishCalm = {
  /** They are brought to a fire or to an eye: calm, unless they are wanted now: `fire extinguisher now`, `eye wash where`. */
  summoned: 'extinguisher extinguishers blanket hose wash eyewash',
  /** They come when there is one: a cry, unless it is their test or their visit: `fire brigade`, `fire alarm going off`. */
  comesToFire: 'alarm brigade truck engine dept department service fighters',
  oftenOfThem: `
    test tests tested testing check checked checks system panel battery batteries serviced service maintenance inspection
    inspected inspects visit visits visited comes came training drill number course exercise access parking certificate
    contract day due works worked was were said says wants report key lane silenced reset false sign installed
    replaced repaired repair new ok okay fine`,
  summons: 'now quick quickly need needed help please pls where going ringing real asap urgent',
  calmFire: `
    drill drills alarms risk risks hazard hazards load class classes rules permit fighter door doors exit exits blankets watch
    marshal warden point points training safety certificate station escape route plan panel bucket buckets wall line lane store
    cabinet insurance code resistant retardant proof proofing limit limits view rating rated resistance him her them assembly
    sign signs hydrant hoses sprinkler sprinklers test tests course curtain damper detector detectors stickers sticker question
    visit inspection inspector`,
  calmEyes: `
    open opened protection test tests bolt bolts level peeled shield shields contact doctor appointment glasses mask
    masks drops catching catcher hook hooks nut nuts for view`,
  calmDown: `
    to of time for until payment side stairs draft hill grade load under jacket tools pipe pipes south as two three four
    a lower cardboard boxes empty`,
  calmSpill: `
    kit kits tray trays training report reports pallet pallets proof plan course station sock socks pad pads mat mats
    procedure log sign box cabinet guard response`,
  calmHot: 'for recipe restaurant',
  calmSkin: '',
  calmBreathless: 'about over with when',
  /** `emergency exit is clear`. */
  calmEmergency: `
    exit exits stop stops light lights lighting lamp lamps door doors number numbers contact contacts plan plans kit kits shower
    showers button buttons procedure procedures test tests order orders meeting repair stock lamp route
    exercise training eyewash power generator services response call calls phone`,
  /** `eye contact with hardener`. */
  contact: 'contact',
  counts: 'two three four',
  /** With any word but fire itself: the sun, the bread, the neighbour. */
  ofHome: 'pilot sun toast barbecue neighbour neighbours neighbor neighbors burner candle candles',
  fireItself: 'fire',
  /** `fire the oven`, `llamas a kari por teléfono`, `ojo con la manguera`: the word and what follows. */
  calmPhrases: 'fire the',
  /** `fire it`; not `fire it is`. */
  orders: 'fire it',
  /** `fire up the oven`; not `fire up on the roof`. */
  kindled: 'up the, up it, up at',
  /** `kari is down with a cold`; not with chest pain. */
  suffers: 'with',
  /** `down by 5%`, `down two`. */
  byHowMuch: 'by',
  /** `down on the list`. */
  listed: 'on',
  onPaper: 'list rota roster schedule plan sheet',
  illness: 'cold flu fever covid bug',
  /** People fall down these. */
  falls: 'pit shaft ladder stairs steps hole well scaffold tank',
  cleaned: 'cleaned mopped wiped',
  notSeenTo: 'not no isnt',
  seenTo: 'fine ok okay normal fried tired crossed',
  spilledInJest: 'the beans',
  /** Nothing is calm beside them. */
  desperate: 'help spreading trapped unconscious breathing bleeding moving pulse',
  lookingAt: 'on of',
  lookingInto: '',
  scales: '',
  /** `fire brigade at 10`, `at noon`. */
  atHour: 'at',
  noons: 'noon midday',
};

export type CalmWords = Readonly<Record<keyof typeof englishCalm, string>>;
