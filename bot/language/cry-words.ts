// The words round a cry, English and Spanish, without their accents. A cry is short and stands among few words: who, where,
// how big, that help is wanted. Common practice and our own choice, no source.

import { solvents } from '../../core/calc/solvents.ts';

export const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Who may be down, besides the people of the crew. */
export const anybody = words(`
  man men woman women person people somebody someone worker colleague painter sprayer driver visitor helper guy boy girl he she
  they we i apprentice electrician welder fitter mechanic plumber cleaner operator contractor customer foreman supervisor
  boss mate friend alguien persona hombre mujer companero companera pintor obrero electricista soldador ayudante chico chica el ella`);

/** What stands before the word without changing it. */
export const sizes = words(`
  a an the some another big huge large small little bad one two both more un una unos el la los las lo gran grande enorme
  pequeno mucho mucha otro otra`);

/** What begins a cry. */
export const openings = words(`
  help please quick quickly hurry hey oh everybody everyone all there theres its have got call come now and urgent
  emergency mayday omg god jesus shit fuck ffs damn real serious lads guys boys boss people team out run stop look wait
  pls need call caught hago dios mierda joder cuidado gente chicos fuera ayuda socorro auxilio rapido oye todos hay tenemos llamad llamen llama y ya ahora urgente emergencia
  112 911 999 is are still`);

/** They ask for help and do not say what has happened. */
export const shouts = words(`
  socorro auxilio emergencia alarma accidente ayuda ayudame ayudenme ayudadme ambulancia bomberos emergency mayday sos
  accident alarm help ambulance 112 911 999`);

/** Somebody is hurt, and no cry of its own says so. */
export const hurts = words(`
  queme quemo quemado quemada herido herida heridos sangra sangrando respira electrocuto electrocutado hurt injured
  bleeding breathing burned burnt electrocuted`);

/** Whoever speaks, hurt. */
export const oneself = words('me i im ive my myself nos');

/** What ends one. */
export const endings = words(`
  help please pls plz quick quickly hurry everybody everyone all here there now come call urgent again spreading growing
  everywhere
  ayuda socorro auxilio rapido aqui alli ahi ahora ya urgente 112 911 999 and y`);

/** Where: what follows is a place, whatever it is called. */
export const whereabouts = words(`
  in inside at by near on under behind outside from beside next over around en dentro fuera junto cerca bajo debajo sobre
  detras encima delante frente al`);

export const articles = words('the el la los las un una a an my his her');

/** What stands about in a shop and can burn, leak or lie in the way. */
export const things = words(`
  oven booth pot bin can cans rag rags bench gun hose skip store waste panel machine compressor tank room shop floor
  table rack cabinet drum bucket fan duct filter filters cable line bay yard hall door ground wall kitchen office roof
  horno cabina mezcla cubo lata latas bote trapo trapos mesa banco pistola manguera almacen taller nave suelo tanque
  deposito armario bidon ventilador conducto filtro cuadro maquina sala puerta patio techo pieza oficina`);

/** With the word before them these name a thing of every day: a fire door, a fire bucket. */
export const compounds = words('door machine hose cabinet panel bucket wall yard line store fan filters cable table');

export const liquids: ReadonlySet<string> = new Set([
  ...Object.keys(solvents),
  ...words(`
  solvent solvents acetone xylene thinner toluene ipa alcohol hardener resin paint coating mix chemical chemicals gas
  nitrogen argon mek mibk isopropanol butanone xylol xylenes toluol white-spirit disolvente solvente acetona xileno
  tolueno etanol aguarras gasolina catalizador barniz esmalte laca diluyente alcohol endurecedor resina pintura producto quimico
  nitrogeno`),
]);

export const harmless = words(`
  coffee tea water milk soup juice lunch dinner food stew rice beans air rain cafe agua leche sopa zumo jugo comida cena
  guiso arroz aire lluvia`);

/** A spill only of a liquid; alone it may be a coat. */
export const onlyOfLiquid = words('vertido');

/** What a liquid belongs in. */
export const drums = words('bidon deposito tanque residuos');

export const pots = words('pot pots mix batch can bucket drum mezcla lata bote cubo olla recipiente');

/** Directly before the word: it is denied, or long over. */
export const denials = words(`
  no not never without nothing nobody none neither any isnt arent wasnt dont didnt doesnt cant cannot wont before after
  had was were been would could should might may against about for sin nunca nada nadie ningun ninguna hubo habia fue
  era contra para ni must`);

/** What may stand between a denial and its word: `nothing is burning`, `no me duelen los ojos`. */
export const between = words(`
  is are be been there the a an any some it you to in into on of something open that her his my in
  hay se ha han me le te un una el la los las en de duelen duele pican pica arden esta estan mas hacer`);

/** Before the word, within four: it is only supposed. */
export const supposed = words('if when unless until case si cuando caso salvo');

/** It goes on, it grows, somebody is in it, help is wanted: no drill, no question and no other day outweighs it. */
export const urgent = words(`
  help spreading growing trapped everywhere inside breathing unconscious bleeding real now quick quickly do ayuda socorro
  auxilio atrapado atrapados atrapada dentro`);

/** Who goes so or lies so needs somebody. */
export const falling: ReadonlySet<string> = new Set([
  ...['fell', 'fainted', 'unconscious', 'desvanecio', 'passed out', 'blacked out', 'knocked out', 'not breathing'],
  ...['isnt breathing', 'stopped breathing', 'cant breathe', 'not moving', 'isnt moving', 'no pulse', 'no respira'],
]);

export const burningOf = words(
  'quemando quemandose incendiado incendiada incendiando prendio exploded explosion exploto',
);

/** What a pot or a can does that heats. */
export const boiling = words('smoking smokes boiling boils bubbling swelling bulging melting foaming humea burbujea');

/** `kari fell behind with the sheets`. */
export const fallsOfWork = words('behind ill sick asleep for short');

/** Anywhere in the line: nothing of it is real. */
export const drills = words('drill drills exercise simulacro');

/** It speaks of another day, of what has been seen to, or of what is as it should be. */
export const anotherTime = words(`
  yesterday tomorrow week weeks month year years monday tuesday wednesday thursday friday
  saturday sunday earlier checked tested cleaned mopped wiped repaired restocked inspected serviced ayer manana semana
  mes ano lunes martes miercoles jueves viernes sabado domingo revisado revisada probado probada limpiado limpiada
  normal arreglado arreglada repuesto controlado apagado`);

/** A line that begins so asks. */
export const askings = words('is are do does did can could should who what when where why how which');

/** `can 3 is hot`, `can on fire`: the can, no question. */
export const ofCan = words('is was on of spilled spilt tipped fell exploded leaking burning swelling smoking hot');

/** What eyes do that need help. */
export const sore = words(`
  burning burn burns hurt hurts hurting sting stings stinging red duelen duele pican pica arden escuecen escuece queman`);

/** What is down every other day and is nobody: a bare word before `is down` that is none of these is a name. */
export const everyday = words(`
  oven booth line compressor fan forklift crane router slack teams vpn wlan lan laptop camera truck van kiln shutter
  shutters gate gauge chiller boiler generator battery paperwork cost costs staff temp temps part parts server mixer
  stirrer door lid lids mask visor tools brush thermometer robot conveyor hoist lathe mill saw drill dryer filter tablet
  carretilla grua enrutador camara camion portatil bateria caldera generador compresor ventilador pieza turno
  it that this what everything all printer network internet wifi web site app system server computer screen phone power
  pressure temperature humidity level levels price prices demand sales speed noise lift pump heater burner heating
  light lights alarm scanner scale radio traffic output scrap morale stock today work production voltage flow
  impresora red linea internet sistema servidor ordenador pantalla luz presion temperatura humedad nivel precio bomba
  ascensor produccion tension caudal bascula todo eso esto`);
