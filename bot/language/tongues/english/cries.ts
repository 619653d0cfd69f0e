// The words round a cry, in English. Common practice and our own choice, no source.

import type { CalmWords } from './calm.ts';

export const englishCries = {
  /** Of them, those whose bare name follows: `se quemó Chuy`. */
  ofSomebody: '',
  /** `por favor`, `help me`. */
  asked: 'me us to for',
  /** Who may be down, besides the people of the crew. */
  anybody: `
    man men woman women person people somebody someone worker colleague painter sprayer driver visitor helper guy
    boy girl he she they we i apprentice electrician welder fitter mechanic plumber cleaner operator contractor
    customer foreman supervisor boss mate friend`,
  /** What stands before the word without changing it. */
  sizes: 'a an the some another big huge large small little bad one two both more',
  /** What begins a cry. */
  openings: `
    help please quick quickly hurry hey oh everybody everyone all there theres its have got call come now and urgent
    emergency mayday omg god jesus shit fuck ffs damn real serious lads guys boys boss people team out run stop look
    wait pls need call caught 112 911 999 is are still`,
  /** They ask for help and do not say what has happened. */
  shouts: 'accident alarm help burn burns',
  /** They say enough by themselves. */
  calls: 'ambulance emergency mayday sos 112 911 999',
  /** `help me`: of whoever speaks. */
  callsForOneself: 'me us',
  /** Somebody is hurt, and no cry of its own says so. */
  hurts:
    'hurt injured bleeding trapped breathing burned burnt scalded electrocuted dizzy lightheaded woozy nauseous nauseated',
  /** They are called by telephone or letter, and are not in the shop: `the supplier isn't answering`. */
  farAway: `
    phone telephone cell mobile radio email emails mail mails message messages call calls question
    questions supplier suppliers vendor customer customers client clients office maker support hotline courier carrier
    haulier accounts reception sales bank insurer dealer service website quote order invoice`,
  /** Of these: now, and grave. */
  grave: 'bleeding electrocuted trapped',
  /** Only where nothing is named that was caught: `kari trapped in the tank`, not `kari trapped the cable`. */
  held: 'trapped',
  /** With what of the body: `kari cut her hand`. */
  cuts: 'cut crushed',
  scalds: 'burned burnt scalded burn burns',
  fumes: 'dizzy breathing lightheaded woozy nauseous nauseated',
  /** Of what hurts, what is said with a no. */
  breathes: 'breathing',
  feels: 'feel feels feeling so too very really',
  /** What is smelt, beside what it does. */
  smells:
    'smell smells smelly stinks stink fumes fume vapour vapours vapor vapors strong heavy really so too very much bad solvent of and from because',
  tumbles: '',
  body: `
    hand hands arm arms face skin leg legs foot feet neck finger fingers wrist mouth lips chest stomach shoulder`,
  onBody: 'on in over all onto',
  /** Whoever speaks, hurt. */
  oneself: 'me i im ive my myself',
  /** What ends one. */
  endings: `
    help please pls plz quick quickly hurry everybody everyone all here there now come call urgent again spreading
    growing everywhere 112 911 999 and y`,
  /** Where: what follows is a place, whatever it is called. */
  whereabouts: 'in inside at by near on under behind outside from beside next over around',
  articles: 'the a an my his her',
  /** What stands about in a shop and can burn, leak or lie in the way. */
  things: `
    oven booth pot bin can cans rag rags bench gun hose skip store waste panel machine compressor tank room shop
    floor table rack cabinet drum bucket fan duct filter filters cable line bay yard hall door ground wall kitchen
    office roof`,
  /** With the word before them these name a thing of every day: a fire door, a fire bucket. */
  compounds: 'door machine hose cabinet panel bucket wall yard line store fan filters cable table',
  liquids: `
    acid lye epoxy primer varnish lacquer catalyst solvent solvents acetone xylene thinner toluene ipa alcohol hardener resin paint coating mix chemical chemicals
    gas nitrogen argon mek mibk isopropanol butanone xylol xylenes toluol white-spirit`,
  harmless: 'coffee tea water milk soup juice lunch dinner food stew rice beans air rain',
  /** A spill only of a liquid; alone it may be a coat. */
  onlyOfLiquid: '',
  /** What a liquid belongs in. */
  drums: '',
  pots: 'pot pots mix batch can cans tin bucket drum lid lids',
  /** Directly before the word: it is denied, or long over. */
  denials: `
    no not never without nothing nobody none neither any isnt arent wasnt dont didnt doesnt cant cannot wont before
    after had was were been would could should might may against about for must`,
  /** What may stand between a denial and its word: `nothing is burning`, `no me duelen los ojos`. */
  between: `
    is are be been there the a an any some it you to in into on of something open that her his my in`,
  /** Before the word, within four: it is only supposed. */
  supposed: 'if when unless until case',
  /** It goes on, it grows, somebody is in it, help is wanted: no drill, no question and no other day outweighs it. */
  urgent: `
    help spreading growing trapped everywhere inside breathing unconscious bleeding real now quick quickly do`,
  burningOf: 'exploded explosion',
  /** What a pot or a can does that heats. */
  boiling: `
    smoking, smokes, fuming, boiling, boils, bubbling, swelling, swells, swollen, bulging, bulges, bulged, hissing, melting,
    foaming, to burst, bursting`,
  /** Of these, what a closed lid holds in. */
  /** `about to burst`: no denial there. */
  soon: 'about going',
  swells: 'swelling swells swollen bulging bulges bulged hissing burst bursting',
  fumesOf: 'smoke smoking smokes fuming',
  /** With heat, of a pot or a can: it reacts. */
  gels: 'gel gels gelled gelling set sets setting hard hardened hardening solid',
  heats: 'hot hotter warm warming heating burning burns boiling steaming',
  /** They say both by themselves. */
  reacts: 'exotherm exotherms exotherming exothermic runaway boiling boils',
  /** What may stand round them. */
  rounding: 'and or its has gone getting went very too really so also',
  lids: 'lid lids',
  cans: 'can cans tin tins drum drums',
  /** `kari fell behind with the sheets`. */
  fallsOfWork: 'behind ill sick asleep for short',
  /** Anywhere in the line: nothing of it is real. */
  drills: 'drill drills exercise',
  /** It speaks of another day, of what has been seen to, or of what is as it should be. */
  anotherTime: `
    yesterday tomorrow week weeks month year years monday tuesday wednesday thursday friday saturday sunday earlier
    checked tested cleaned mopped wiped repaired restocked inspected serviced`,
  /** A line that begins so asks. */
  askings: 'is are do does did can could should who what when where why how which',
  /** `can 3 is hot`, `can on fire`: the can, no question. */
  ofCan: `
    is was on of spilled spilt tipped fell exploded leaking burning swelling swells swollen smoking smokes hot bulging bulges bulged
    hissing bursting about going`,
  /** What eyes do that need help. */
  sore: 'burning burn burns hurt hurts hurting sting stings stinging red',
  /** What is down every other day and is nobody: a bare word before `is down` that is none of these is a name. */
  everyday: `
    trigger lever handle
    oven booth line compressor fan forklift crane router slack teams vpn wlan lan laptop camera truck van kiln
    shutter shutters gate gauge chiller boiler generator battery paperwork cost costs staff temp temps part parts
    server mixer stirrer door lid lids mask visor tools brush thermometer robot conveyor hoist lathe mill saw drill
    dryer filter tablet it that this what everything all printer network internet wifi web site app sensor plc controller monitor probe logger valve interlock button
    relay keypad motor windows software system server
    computer screen phone power pressure temperature humidity level levels price prices demand sales speed noise
    lift pump heater burner heating light lights alarm scanner scale radio traffic output scrap morale stock today
    work production voltage flow`,
  /** Who goes so or lies so needs somebody. */
  falling: `
    fell, fainted, unconscious, passed out, blacked out, knocked out, not breathing, isnt breathing, stopped
    breathing, not moving, isnt moving, no pulse`,
  /** Said by whoever still can, or of them. */
  gasping: 'choking, gasping, suffocating',
  /** Alone they say too little: `hot`. */
  saysLittle: 'hot',
  is: 'is r',
  has: 'has',
  of: 'of',
  no: 'no',
  /** `oh no`: no denial. */
  oh: 'oh',
  /** `le entró en los ojos a kari`. */
  toSomebody: '',
  /** `se me cayó`: it fell, nobody let it. */
  itself: '',
  lying: 'is are s has had went gone going fell fallen falling goes lies lying lay just been now',
  /** `put kari down for friday`. */
  putting: 'put write note take let calm sit pin turn tone keep banged hammered pressed',
  ofBody: 'my his her their the both one an left right',
  /** `mucho ojo` is a warning. */
  wary: '',
  /** A break, too. */
  smoke: 'smoke',
  fell: 'fell',
  fallsOfWorkFarther: 'in love, out with',
  /** `on fire`, `caught fire`, `no puedo apagar el fuego`. */
  takingFire: 'on caught something',
  inEye: 'in into inside',
  soreBy: 'is are hurts',
  /** Only people faint. */
  faints: '',
  /** The same, where nothing follows that is passed. */
  faintsAlone: 'passed out, fainted, blacked out',
  /** As thumbs type them: `fier=fire`. */
  spelt: `
    fier=fire fyre=fire frie=fire spil=spill sipll=spill breth=breathe brethe=breathe breeth=breathe breahte=breathe
    hlep=help hepl=help halp=help emergancy=emergency emergeny=emergency ambulence=ambulance ambulanse=ambulance`,
  /** Said of a tile, a price, a network and a break as well. */
  ofAnything: 'fell, smoke, not moving, isnt moving, no pulse',
  spilling: '',
  much: 'part everywhere big',
  /** `estoy calentando la mezcla` is work. */
  heating: '',
  dropped: '',
  dropping: '',
  coats: 'paint resin coating mix',
  losesPressure: 'gas argon',
  smokes: 'smoke smokes smoking smouldering',
  burnt: 'burned burnt scalded',
  brigade: 'brigade',
  leaks: 'leak leaking leaks tipped',
  splashes: 'splash splashed',
  calamities: `
    ambulance accident hurt injured injury bleeding dizzy choking poisoned electrocuted mayday sos emergency evacuate
    breathe`,
  /** `can` asks, and is a can. */
  askingOrCan: 'can',
  shoutedOn: 'quick quickly now help urgent',
  runTogether: 'he she it',
  /** What warns, and is an eye only with an article: `ojo Lia`. */
  warns: '',
  /** A side of somebody, or how an eye looks that something is in. */
  ofEye: 'left right red swollen',
  // Patterns.
  noDrill: '(?:this |it )?(?:is )?(?:not|no|isnt)(?: a)? drill',
  dialling: 'call|dial',
  numbers: '112|911|999',
  /** It came into somebody, or hurts them. */
  comesIn: '',
  // `can't see the label`: what is looked for, by whoever sees.
  blind: "can['’]?t see(?! (?:the|any|a|which|why|what|where|if|how|it on)(?: |$))",
  // `gonna coat 3 after my smoke`: a break.
  ofThings:
    'broke(?:n)? down|breaks down|accident book|(?:after|for|having|have|had|need|want|quick|grab|last)(?: (?:my|me|a|his|her|our|ya|your))?(?: quick)? smoke|smoke break|upside down|(?:pop|put|jot|note|write|mark) (?:it |that |this )?down|(?:runs?|sags?|drips?|lines?|scratch(?:es)?|cracks?) down (?:the|one|a|its) (?:side|edge|face|rim|back|front|middle|inside|outside)',
  gasps: "(?:can['’]?t|cannot|hard to|trouble) breathe?|short of breath",
  noAnswer:
    '(?:not|isnt|arent|wasnt|doesnt|didnt|wont|will not|does not|do not|dont|did not|stopped) (?:answer(?:ing)?|respond(?:ing)?|react(?:ing)?|wak(?:e|ing)(?: up)?|coming (?:to|round)|move)(?: (?:me|us))?|unresponsive|no (?:answer|response|reaction) (?:from|of)|(?:cant|cannot|couldnt) wake',
  stirsNot: 'respond(?:ing)?|react(?:ing)?|wak(?:e|ing)|coming|move|unresponsive|response|reaction',
  // Of the next, `{}` stands for any liquid. It is so now, and of whom or what is told.
  nowEyes: 'splash(?:ed|es)? (?:in|on|to|into|over) (?:my |his |her |the )?face(?= help| now|$)',
  nowSpill:
    '{} (?:is )?leak(?:s|ing)?(?= (?:in|at|by|from|near) |$)|{} all over (?:the )?(?:floor|booth|bench|shop|place)',
  nowEmergency:
    '(?:swallowed|drank|ingested) (?:some |the )?{}|(?:hand|arm|fingers?|foot|leg|hair) (?:is |got )?(?:caught|trapped|crushed) (?:in|under|by)(?: [^ ]+){1,3}(?= help| now|$)|(?:fingers?|thumb|hand|arm|foot|toe) (?:is |got )?(?:cut|torn|ripped) off',
  // The words round it must be those of a cry.
  mayEmergency:
    '(?:having |having a |has |a )?(?:heart attack|chest pains?|allergic reaction|electric shock|(?:an? )?seizure)',
  mayBreathless:
    '(?:having |has )?(?:an )?asthma(?: attack)?|(?:feel|feels|feeling) (?:so |very |really |a bit |a little )?(?:sick|ill|faint|unwell|dizzy|light[ -]?headed|woozy|weird|funny|drunk|nauseous|nauseated|bad|awful|terrible|unwell)|(?:going to |gonna |about to )(?:pass out|faint|throw up|vomit)|throwing up|vomiting|head (?:is )?spinning|(?:fumes|smell|solvent|headache)(?: [^ ]+){0,3} (?:headache|dizzy|sick|nauseous)|headache from the (?:fumes|smell|solvent)|dizzy',
  mayFire: 'evacuate(?: (?:the )?(?:shop|hall|building|booth|everybody|everyone))?',
  mayDown: '(?:is |lies |lying )on the (?:floor|ground)',
};

export type CryWords = CalmWords & Readonly<Record<keyof typeof englishCries, string>>;
