// The words round a cry, English and Spanish, without their accents. A cry is short and stands among few words: who, where,
// how big, that help is wanted. Common practice and our own choice, no source.

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Who may be down, besides the people of the crew. */
export const anybody = words(`
  man woman person people somebody someone worker colleague painter sprayer driver visitor helper guy boy girl he she
  they we him her apprentice alguien persona hombre mujer companero companera pintor obrero chico chica el ella`);

/** What stands before the word without changing it. */
export const sizes = words(`
  a an some another big huge large small little bad one two both more un una unos el la los las lo gran grande enorme
  pequeno mucho mucha otro otra`);

/** What begins a cry. */
export const openings = words(`
  help please quick quickly hurry hey oh everybody everyone all there theres its have got call come now and urgent
  emergency mayday ayuda socorro auxilio rapido oye todos hay tenemos llamad llamen llama y ya ahora urgente emergencia
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
  help please quick quickly hurry everybody everyone all here there now come call urgent again spreading growing
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
export const compounds = words('door hose cabinet panel bucket wall yard line store fan filters cable table');

export const liquids = words(`
  solvent solvents acetone xylene thinner toluene ipa alcohol hardener resin paint coating mix chemical chemicals gas
  nitrogen argon mek mibk isopropanol butanone xylol xylenes toluol white-spirit disolvente solvente acetona xileno
  tolueno etanol aguarras gasolina catalizador barniz esmalte laca diluyente alcohol endurecedor resina pintura producto quimico
  nitrogeno`);

export const harmless = words(
  'coffee tea water milk soup juice lunch dinner cafe agua leche sopa zumo jugo comida cena',
);

export const pots = words('pot pots mix batch can bucket drum mezcla lata bote cubo olla recipiente');

/** Before the word, within four: it is denied, supposed, or long over. */
export const denials = words(`
  no not never without nothing nobody none neither any isnt arent wasnt dont didnt doesnt cant cannot wont if when
  unless until before after case had was were been would could should might may against about for sin nunca nada nadie
  ningun ninguna si cuando caso hubo habia fue era contra para ni`);

/** Anywhere: it speaks of another day, of what has been seen to, or of what is as it should be. */
export const anotherTime = words(`
  drill drills exercise simulacro yesterday tomorrow week weeks month year years monday tuesday wednesday thursday friday
  saturday sunday earlier checked tested cleaned mopped wiped repaired restocked inspected serviced ayer manana semana
  mes ano lunes martes miercoles jueves viernes sabado domingo revisado revisada probado probada limpiado limpiada
  normal arreglado arreglada repuesto controlado apagado`);

/** A line that begins so asks. */
export const askings = words('is are do does did can could should who what when where why how which');

/** What eyes do that need help. */
export const sore = words(`
  burning burn burns hurt hurts hurting sting stings stinging red duelen duele pican pica arden escuecen escuece queman`);

/** What is down every other day and is nobody: a bare word before `is down` that is none of these is a name. */
export const everyday = words(`
  it that this what everything all printer network internet wifi web site app system server computer screen phone power
  pressure temperature humidity level levels price prices demand sales speed noise lift pump heater burner heating
  light lights alarm scanner scale radio traffic output scrap morale stock today work production voltage flow
  impresora red linea internet sistema servidor ordenador pantalla luz presion temperatura humedad nivel precio bomba
  ascensor produccion tension caudal bascula todo eso esto`);
