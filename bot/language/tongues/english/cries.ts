// The words round a cry, in English. Common practice and our own choice, no source. What each set is for stands in cry-words.ts.

import type { CalmWords } from './calm.ts';

export const englishCries = {
  ofSomebody: '',
  asked: 'me us to for',
  anybody: `
    man men woman women person people somebody someone worker colleague painter sprayer driver visitor helper guy
    boy girl he she they we i apprentice electrician welder fitter mechanic plumber cleaner operator contractor
    customer foreman supervisor boss mate friend`,
  sizes: 'a an the some another big huge large small little bad one two both more',
  openings: `
    help please quick quickly hurry hey oh everybody everyone all there theres its have got call come now and urgent
    emergency mayday omg god jesus shit fuck ffs damn real serious lads guys boys boss people team out run stop look
    wait pls need call caught 112 911 999 is are still`,
  shouts: 'emergency mayday sos accident alarm help ambulance 112 911 999',
  hurts: 'hurt injured bleeding breathing burned burnt electrocuted',
  oneself: 'me i im ive my myself',
  endings: `
    help please pls plz quick quickly hurry everybody everyone all here there now come call urgent again spreading
    growing everywhere 112 911 999 and y`,
  whereabouts: 'in inside at by near on under behind outside from beside next over around',
  articles: 'the a an my his her',
  things: `
    oven booth pot bin can cans rag rags bench gun hose skip store waste panel machine compressor tank room shop
    floor table rack cabinet drum bucket fan duct filter filters cable line bay yard hall door ground wall kitchen
    office roof`,
  compounds: 'door machine hose cabinet panel bucket wall yard line store fan filters cable table',
  liquids: `
    solvent solvents acetone xylene thinner toluene ipa alcohol hardener resin paint coating mix chemical chemicals
    gas nitrogen argon mek mibk isopropanol butanone xylol xylenes toluol white-spirit`,
  harmless: 'coffee tea water milk soup juice lunch dinner food stew rice beans air rain',
  onlyOfLiquid: '',
  drums: '',
  pots: 'pot pots mix batch can bucket drum',
  denials: `
    no not never without nothing nobody none neither any isnt arent wasnt dont didnt doesnt cant cannot wont before
    after had was were been would could should might may against about for must`,
  between: `
    is are be been there the a an any some it you to in into on of something open that her his my in`,
  supposed: 'if when unless until case',
  urgent: `
    help spreading growing trapped everywhere inside breathing unconscious bleeding real now quick quickly do`,
  burningOf: 'exploded explosion',
  boiling: 'smoking, smokes, boiling, boils, bubbling, swelling, bulging, melting, foaming',
  fallsOfWork: 'behind ill sick asleep for short',
  drills: 'drill drills exercise',
  anotherTime: `
    yesterday tomorrow week weeks month year years monday tuesday wednesday thursday friday saturday sunday earlier
    checked tested cleaned mopped wiped repaired restocked inspected serviced`,
  askings: 'is are do does did can could should who what when where why how which',
  ofCan: 'is was on of spilled spilt tipped fell exploded leaking burning swelling smoking hot',
  sore: 'burning burn burns hurt hurts hurting sting stings stinging red',
  everyday: `
    oven booth line compressor fan forklift crane router slack teams vpn wlan lan laptop camera truck van kiln
    shutter shutters gate gauge chiller boiler generator battery paperwork cost costs staff temp temps part parts
    server mixer stirrer door lid lids mask visor tools brush thermometer robot conveyor hoist lathe mill saw drill
    dryer filter tablet it that this what everything all printer network internet wifi web site app system server
    computer screen phone power pressure temperature humidity level levels price prices demand sales speed noise
    lift pump heater burner heating light lights alarm scanner scale radio traffic output scrap morale stock today
    work production voltage flow`,
  falling: `
    fell, fainted, unconscious, passed out, blacked out, knocked out, not breathing, isnt breathing, stopped
    breathing, cant breathe, not moving, isnt moving, no pulse`,
  is: 'is',
  has: 'has',
  of: 'of',
  no: 'no',
  oh: 'oh',
  toSomebody: '',
  itself: '',
  lying: 'is are s has had went gone going fell fallen falling goes lies lying lay just been now',
  putting: 'put write note take let calm sit pin',
  ofBody: 'my his her their the both one an left right',
  wary: '',
  smoke: 'smoke',
  fell: 'fell',
  fallsOfWorkFarther: 'in love, out with',
  takingFire: 'on caught something',
  inEye: 'in into inside',
  soreBy: 'is are hurts',
  faints: '',
  ofAnything: 'fell, smoke, not moving, isnt moving, no pulse',
  spilling: '',
  much: 'part everywhere big',
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
  askingOrCan: 'can',
  shoutedOn: 'quick quickly now help urgent',
  runTogether: 'he she it',
  // Patterns.
  noDrill: '(?:this |it )?(?:is )?(?:not|no|isnt)(?: a)? drill',
  helpWhole: '(?:please )?help(?: (?:me|us|help))*',
  dialling: 'call|dial',
  numbers: '112|911|999',
  blind: "can['’]?t see",
};

export type CryWords = CalmWords & Readonly<Record<keyof typeof englishCries, string>>;
