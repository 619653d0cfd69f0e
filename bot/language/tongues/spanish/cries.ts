// The words round a cry, in Spanish, without accents. Common practice and our own choice, no source.

import type { CalmWords } from '../english/calm.ts';
import type { CryWords } from '../english/cries.ts';

export const spanishCries: Omit<CryWords, keyof CalmWords> = {
  ofSomebody: 'quemo corto golpeo',
  asked: 'por favor me nos',
  anybody: `
    alguien persona hombre mujer companero companera pintor obrero electricista soldador ayudante chico chica el
    ella`,
  sizes: 'un una unos el la los las lo gran grande enorme pequeno mucho mucha otro otra',
  openings: `
    hago dios mierda joder cuidado gente chicos fuera ayuda socorro auxilio rapido oye todos hay tenemos llamad
    llamen llama y ya ahora urgente emergencia`,
  shouts: 'alarma accidente ayuda ayudame ayudenme ayudadme quemadura quemaduras',
  calls: 'socorro auxilio emergencia ambulancia bomberos',
  callsForOneself: 'ayudame ayudenme ayudadme',
  hurts: `
    queme quemo cai caimos cae corte corto cortado golpeo quemado quemada herido herida heridos lastimado lastimada lesionado lesionada mareado mareada intoxicado intoxicada sangra sangrando atrapado atrapada respira electrocuto electrocutado mareo marea mareando`,
  farAway: `
    telefono movil celular radio correo correos mensaje mensajes llamada llamadas carta pregunta preguntas proveedor proveedora
    proveedores cliente clientes oficina fabricante soporte transportista banco recepcion ventas pedido presupuesto factura servicio`,
  grave: 'sangra sangrando electrocuto electrocutado atrapado atrapada',
  held: 'atrapado atrapada',
  cuts: '',
  scalds: 'queme quemo quemado quemada quemadura quemaduras',
  fumes: 'mareado mareada intoxicado intoxicada respira mareo marea mareando',
  breathes: 'respira',
  feels: 'siento siente muy tan',
  smells: 'huele olor apesta vapor vapores fuerte muy mucho mucha mucho tanto demasiado a por con y del de',
  tumbles: 'cai caimos cae',
  body: `
    mano manos brazo brazos cara piel pierna piernas pie pies cuello dedo dedos muneca boca labios pecho barriga hombro`,
  onBody: 'en sobre por',
  oneself: 'nos estoy me',
  endings: 'ayuda socorro auxilio rapido aqui alli ahi ahora ya urgente',
  whereabouts: 'en dentro fuera junto cerca bajo debajo sobre detras encima delante frente al',
  articles: 'el la los las un una',
  things: `
    horno cabina mezcla cubo lata latas bote trapo trapos mesa banco pistola manguera almacen taller nave suelo
    tanque deposito armario bidon ventilador conducto filtro cuadro maquina sala puerta patio techo pieza oficina`,
  compounds: '',
  liquids: `
    acido sosa disolvente solvente acetona xileno tolueno etanol aguarras gasolina catalizador barniz esmalte laca diluyente
    alcohol endurecedor resina pintura producto quimico nitrogeno`,
  harmless: 'cafe agua leche sopa zumo jugo comida cena guiso arroz aire lluvia',
  onlyOfLiquid: 'vertido',
  drums: 'bidon deposito tanque residuos',
  pots: 'mezcla lata latas bote botes cubo olla recipiente tapa tapas',
  denials: 'sin nunca nada nadie ningun ninguna hubo habia fue era contra para ni',
  between: `
    hay se ha han me le te un una el la los las en de duelen duele pican pica arden esta estan mas hacer`,
  supposed: 'si cuando caso salvo',
  urgent: 'ayuda socorro auxilio atrapado atrapados atrapada dentro',
  burningOf: 'quemando quemandose incendiado incendiada incendiando prendio exploto',
  boiling: `
    humea, burbujea, hirviendo, echa humo, echando humo, sale humo, saliendo humo, hinchada, hinchado, hinchadas, hinchan,
    abombada, abombado, se abomba, se hincha, se infla, a reventar, revento, silbando`,
  soon: 'va',
  swells: 'hinchada hinchado hinchadas hincha hinchan abombada abombado abomba infla reventar revento silbando',
  fumesOf: 'humo humea',
  gels: `
    gelificada gelificado gelificadas gelifica gelifico gelada gelado gelo cuajada cuajado cuaja cuajo endurecida
    endurecido endurece endurecio dura duro solida solido`,
  heats: 'caliente calientes calienta calentando quema queman quemando arde ardiendo hierve hirviendo templada',
  reacts: 'exotermia exotermica exotermico hierve hirviendo quema',
  rounding: 'y o se ha muy tan demasiado esta estan puesto',
  lids: 'tapa tapas',
  cans: 'lata latas bote botes bidon bidones',
  fallsOfWork: '',
  drills: 'simulacro',
  anotherTime: `
    revisar ayer manana semana mes ano lunes martes miercoles jueves viernes sabado domingo revisado revisada probado
    probada revisar limpiado limpiada normal arreglado arreglada repuesto controlado apagado`,
  askings: '',
  ofCan: '',
  sore: 'duelen duele pican pica arden escuecen escuece queman',
  everyday: `
    carretilla grua enrutador camara camion portatil bateria caldera generador compresor ventilador pieza turno
    impresora red linea internet sistema servidor ordenador pantalla luz presion temperatura humedad nivel precio
    sensor controlador automata monitor sonda valvula boton motor programa
    bomba ascensor produccion tension caudal bascula todo eso esto`,
  falling: 'desvanecio, desplomo, se desplomo, no respira',
  gasping: 'me ahogo, se ahoga, ahogando, ahogandose, asfixiando, asfixiandose',
  saysLittle: 'caliente calienta hierve',
  is: '',
  has: '',
  of: 'de del',
  no: 'no',
  oh: 'oh',
  // `le entró en los ojos a kari`.
  toSomebody: 'a',
  itself: 'se',
  lying: 'se ha esta quedo cayo',
  putting: '',
  ofBody: 'mi mis su sus los las el la ambos',
  wary: 'mucho',
  smoke: '',
  fell: '',
  fallsOfWorkFarther: '',
  takingFire: 'algo esta se apagar apaga',
  inEye: 'en',
  soreBy: 'me le',
  faintsAlone: '',
  spelt: `
    fuegoo=fuego feugo=fuego fueego=fuego sokorro=socorro socoro=socorro aiuda=ayuda alluda=ayuda ayudaa=ayuda
    ausilio=auxilio auxillio=auxilio insendio=incendio inzendio=incendio derame=derrame`,
  faints: 'se desmayo, desmayo, desmayado, desmayada',
  ofAnything:
    'desplomo, se desplomo, caido, caida, cayo, caidos, caidas, desmayado, desmayada, vertido, quemando, prendio, se cayo',
  spilling: 'se ha han',
  much: 'parte mucho',
  heating: 'esta calentando',
  dropped: 'vertido, cayo, se cayo',
  dropping: 'me te le nos les',
  coats: 'pintura resina producto',
  losesPressure: 'gas nitrogeno argon pintura producto',
  smokes: 'humea quemado',
  burnt: 'quemadura quemaduras queme quemo',
  brigade: 'bomberos',
  // The smell is what there is to know of a spill that nobody has seen.
  leaks: 'gotea huele apesta olor',
  splashes: 'salpicadura salpico',
  calamities: `
    ambulancia accidente herido herida sangra sangrando mareado mareada ahogo respirar conocimiento tirado tirada
    emergencia evacuar auxilio socorro`,
  askingOrCan: '',
  shoutedOn: 'urgent ya rapido ayuda',
  runTogether: '',
  warns: 'ojo',
  ofEye: 'izquierdo derecho rojo irritado hinchado',
  comesIn:
    '(?:me|le|les|nos) (?:ha |han )?(?:entr|salp|salt|ca(?:i|y)|llora|escuec|escoc|ard|duel|pica|quem)\\p{L}*|se (?:me|le|les|nos) (?:ha |han )?met\\p{L}*',
  noDrill: 'no es(?: un)? simulacro',
  dialling: 'llama(?:d|r|n|en)?(?: al?)?',
  numbers: '112|061|080',
  // `no veo la etiqueta`: lo que se busca.
  blind: 'no (?:veo|puedo ver)(?! (?:el|la|los|las|ningun|ninguna|donde|si|que|cual|cuando|como|por que)(?: |$))',
  ofThings:
    'por vertido|(?:ha|han) caido (?:unos |casi )?\\d+|ojos? de pez|(?<!se )(?:he|has|ha|hemos|han|habia|habian) tirad[oa]s?|tirad[oa]s? (?:ya )?(?:la |el |lo |las |los )?(?:mezcla|resto|sobrante|trapos?|latas?|botes?)|(?:mezcla|resto|sobrante|trapos?|latas?|botes?)(?: \\d+)?(?: ya)?(?: esta| estan)? tirad[oa]s?',
  nowEyes: '(?:salpic[^ ]+|cayo|salto)(?: [^ ]+){0,3} en (?:la|mi|su) cara(?= ayuda| ya|$)',
  nowSpill: '{} por tod[oa] (?:el|la) (?:suelo|piso|cabina|taller|mesa)',
  nowEmergency:
    '(?:trago|bebio|ingirio|trague) (?:el |un poco de )?{}|(?:mano|brazo|dedos?|pie|pierna)s? (?:atrapad|aplastad)[oa]s? (?:en|por|bajo)|(?:me|le) dio (?:la |una )?(?:corriente|descarga|calambrazo)',
  mayEmergency:
    '(?:un )?infarto|dolor (?:en el|de) pecho|(?:una )?reaccion alergica|convulsiones|(?:una )?descarga electrica',
  mayBreathless:
    '(?:un |una )?(?:ataque|crisis) de asma|(?:me|se) (?:siento|siente|encuentro|encuentra) (?:muy |bastante |algo |un poco )?(?:mal|rar[oa]|maread[oa]|debil)|(?:tengo|tiene) (?:nauseas|ganas de vomitar|mareos?)|voy a (?:vomitar|desmayarme)|vomitando|me da vueltas (?:todo|la cabeza)|me mareo',
  mayFire: '(?:evacuen|evacuar|evacuad|evacuemos)(?: (?:el |la )?(?:taller|nave|cabina|edificio))?',
  mayDown: 'esta (?:tirad[oa] )?en el (?:suelo|piso)',
  noAnswer:
    'no (?:me |nos |le |les )?(?:contesta|contesto|responde|respondio|reacciona|reacciono|despierta|desperto|se despierta|se mueve)|sin respuesta de|no hay respuesta de',
  stirsNot: 'responde|respondio|reacciona|reacciono|despierta|desperto|mueve',
  gasps: 'no pued[eo]n? respirar|(?:me|le|nos) falta el aire',
};
