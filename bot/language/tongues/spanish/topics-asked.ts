// How Spanish speakers ask for one thing of the shop, its people or its sheet, in Spain and in the Americas: matched in lower case,
// without accents, anywhere in a line that asks. Of a person it says `alguien`. The first row that fits counts.

import type { QuestionsTyped } from '../questions-typed.ts';

export const spanishTopicsAsked: QuestionsTyped['topics'] = [
  {
    asks: 'emergency',
    said: /\b(?:numeros?|telefonos?) (?:de |para )?(?:una |la )?(?:emergencias?|ambulancia)\b|\bque numero (?:marco|llamo)\b/,
  },
  {
    asks: 'next-ring',
    said: /\b(?:que|cual|cuando|q|k)\b.{0,25}\b(?:suena|sonara|sonar|avisa|avisara|timbra|pita|alarma sigue|aviso|campana|timbre)\b|\b(?:siguiente|proxim[oa]) (?:alarma|aviso|timbre|campana|recordatorio)\b|\b(?:me |nos )?(?:puedo|podemos|da tiempo) (?:de |a )?(?:ir(?:me|nos)?|salir|descansar|comer|tomar(?:me|nos)?)\b(?!.{0,12}\b(?:cabina|horno)\b)/,
  },
  {
    asks: 'watch',
    said: /\bquien(?:es)?\b.{0,25}\b(?:vigila\w*|a?fuera|de guardia|de vigia|cuida\w*|atiende|vigia)\b|\bquien (?:tiene|recibe|lleva) los (?:avisos|relojes|tiempos|temporizadores)\b|^(?:hay|esta) alguien (?:a?fuera|vigilando|cuidando)\b/,
  },
  {
    asks: 'in-charge',
    said: /\ba quien (?:le |les )?(?:pregunto|preguntamos|llamo|aviso|digo|consulto|pido|puedo (?:preguntar|llamar)|hay que (?:preguntar|llamar|avisar))\b|\b(?:con|a) quien (?:hablo|me dirijo|acudo)\b|\bquien(?:es)?\b.{0,10}\b(?:el |la |los )?(?:jef[ea]s?|encargad[oa]s?|responsables?|supervisor(?:a|es)?|manda|lider|a cargo|al mando|de turno|mayordomo)\b|\bquien (?:puede|me puede|nos puede) (?:liberar|firmar|autorizar|dar permiso)\b|^(?:esta|hay|anda) (?:el |la |un |una |algun )?(?:jef[ea]|encargad[oa]|supervisora?|responsable)\b/,
  },
  {
    asks: 'may-spray',
    said: /\bquien(?:es)? pueden? (?:sopletear|rociar|pistolear|pintar con pistola|usar la pistola|pulverizar)\b|\balguien\b.{0,30}\b(?:sopletear|rociar|pistolear|pulverizar|pintar con pistola|usar la pistola|apt[oa]|certificad[oa]|capacitad[oa]|prueba de ajuste|reconocimiento|examen medico|charla)\b|\b(?:prueba de ajuste|examen medico|reconocimiento|formacion|capacitacion|charla)\b.{0,10}\balguien\b/,
    ofPerson: true,
  },
  {
    asks: 'worn',
    said: /\bque\b.{0,25}\b(?:pongo|poner(?:me|nos|se)?|llevo|llevar puesto|usar? de proteccion|epp?|epi|equipo de proteccion|proteccion)\b|\bque (?:guantes|gafas|lentes|googles)\b|\b(?:necesito|hay que|tengo que|debo|hacen falta|se necesitan?|ocupo)\b.{0,16}\b(?:guantes|gafas|lentes|mascara|mascarilla|respirador|delantal|mandil|careta|overol)\b|\b(?:sin) (?:la |el |los |las )?(?:mascara|mascarilla|respirador|careta|guantes|gafas|lentes)\b/,
  },
  {
    asks: 'fan',
    said: /\b(?:extraccion|extractor|ventilador|ventilacion|abanico)\b.{0,25}\b(?:encendid[oa]|prendid[oa]|puest[oa]|en marcha|funciona\w*|apagad[oa]|jala\w*|andando|corriendo|va)\b|^(?:ya )?(?:esta|sigue|funciona|prendieron|encendieron|jala|hay|anda)\b.{0,16}\b(?:extraccion|extractor|ventilador|ventilacion|abanico)\b/,
  },
  {
    asks: 'lid',
    said: /^(?!.*\b(?:serie|trabajo|cliente)\b).*(?:\b(?:sin tapa|destapad[oa]s?|tapad[oa]s?|la tapa|tapas)\b|\b(?:cuanto|desde cuando|desde que hora)\b.{0,25}\b(?:abiert[oa]|al aire|respirando)\b|\bque (?:latas?|botes?|cubetas?)\b.{0,16}\babiert[oa]s?\b|^(?:esta|sigue) abiert[oa]\b)/,
  },
  {
    asks: 'expiry',
    said: /\b(?:caduc\w*|venc(?:e|en|imiento|ida|ido|io)|expir\w*|fecha limite|consumo preferente)\b/,
    notOf: 'batch',
  },
  {
    asks: 'ratio',
    said: /\bcuant[oa]s?\b.{0,24}\bde cada (?:un[oa]|componente|parte|lado)\b|\bde (?:la )?[ab] (?:cuant[oa]s?|que cantidad)\b|\bcuant[oa]s?\b.{0,16}\b(?:[ab]|catalizador|endurecedor|base)\b.{0,16}\b(?:para|por|con|lleva|le echo|le pongo)\b.{0,12}\d|\b(?:proporcion|relacion de mezcla)\b|\b(?:cuanto|que tanto)\b.{0,16}\b(?:variar|desviar\w*|fallar|pasar\w*|salir\w*)\b.{0,16}\brelacion\b|\bcuanto (?:catalizador|endurecedor)\b|\bcuant[oa]s? (?:le |se le )?(?:lleva|va|echo|pongo|pone|echan?|ocupa|toca) (?:de |a )?(?:la )?(?:parte )?(?:[ab]$|[ab] )|\b(?:cuant[oa]s?|que cantidad)\b.{0,12}\b[ab] (?:le |se )*(?:lleva|va|van|pongo|echo|pone|por)\b/,
  },
  {
    asks: 'enough',
    said: /\b(?:alcanza|llega|hay suficiente|suficiente|bastante|basta|da)\b.{0,16}\b(?:para|pa|con)\b.{0,16}(?:\d|\b(?:piezas?|mas|demas|resto|todas|las)\b)|\b(?:para |pa )cuantas (?:piezas )?(?:mas )?(?:alcanza|da|llega|me da|nos da)\b|\bcuantas (?:piezas )?(?:mas )?(?:puedo|podemos|salen|saco|alcanzo)\b/,
  },
  {
    asks: 'sheet-recoat',
    said: /\b(?:lleva|necesita|se puede dar|admite|hay que dar)\b.{0,12}\b(?:segunda|otra|dos|2)\b.{0,6}\b(?:capas?|manos?)\b|\bentre (?:capas|manos)\b/,
    notOf: 'part',
  },
  {
    asks: 'to-coat',
    said: /\b(?:falta|faltan|queda|quedan|hay|siguen)\b.{0,12}\b(?:por|sin|para|pa|de) (?:pintar|dar|recubrir|aplicar|rociar|sopletear|capa|mano|hacer capa|darle)\b|\b(?:sin pintar|sin capa|por pintar|sin recubrir|por recubrir)\b|\bque piezas (?:nos |me )?(?:faltan|quedan)\b/,
    notOf: 'part',
  },
  {
    asks: 'lacking',
    said: /\bque (?:le )?(?:falta|queda)\b.{0,24}\b(?:liberar\w*|medir\w*|ensayar\w*|probar\w*|leer\w*)|\bque (?:pide|exige|quiere)\b.{0,12}\b(?:orden|obra|trabajo|pedido)\b|\bque (?:fallo|no paso|no ha pasado)\b|\bque (?:ensayos?|pruebas?|lecturas?) (?:le )?(?:falta|faltan|quedan?|pide)\b/,
  },
  {
    asks: 'on-hold',
    said: /\b(?:retenid[oa]s?|detenid[oa]s?|en (?:espera por calidad|retencion|espera)|bloquead[oa]s?|apartad[oa]s?|en cuarentena)\b/,
  },
  {
    asks: 'details',
    said: /\b(?:grabad[oa]|estampad[oa]|marcad[oa] en)\b|\ba que (?:orden|trabajo|job|cliente|obra)\b|\bde que (?:material|metal|acero|trabajo|cliente|orden|obra|es|esta hecha)\b|\b(?:que|cual es(?: el| la| su)?)\b.{0,12}\b(?:serie|numero de serie|trabajo|cliente|tamano|medida|area|superficie|pared|metal)\b|\b(?:que tan grande|cuanto (?:mide|pesa)|de quien es)\b|\bpara que (?:trabajo|cliente)\b/,
  },
  {
    asks: 'from-batch',
    said: /\b(?:que|cual|con que|de que|con cual|de cual)\b.{0,6} ?\b(?:mezcla|batch|tanda|bote|lote|lotes|lata|latas|producto|pintura|recubrimiento|material usad[oa])\b|\bque (?:se le puso|le pusimos|le pusieron|lleva|trae|le dimos|tiene puesto)\b/,
    ofPart: true,
  },
  { asks: 'coats', said: /\bcuantas (?:capas|manos|pasadas|veces)\b/ },
  { asks: 'lot', said: /\b(?:que|cual|cuales|de que|con que)\b.{0,12}\blotes?\b|\bnumero de lote\b/ },
  {
    asks: 'bears',
    said: /\b(?:maxim[oa]s?|maximo|tope|limite|mas alta|como mucho)\b.{0,25}\b(?:temp\w*|horno|calor|grados)\b|\b(?:temp\w*|calor|grados)\b.{0,16}\b(?:maxim[oa]|limite|aguanta|soporta|resiste)\b|\b(?<!hasta )(?:que(?! hora)|cuanto(?! tiempo| rato)|cuanta|cuantos(?! minutos| dias))\b.{0,16}\b(?:aguanta|soporta|resiste)\b(?!.{0,12}\b(?:mezcla|bote)\b)/,
    notOf: 'batch',
  },
  {
    asks: 'counted',
    said: /\bcuantas (?:piezas )?(?:van|llevamos|hay|hemos|estan|tenemos|se han|ya|quedaron|pintamos|pintaron)\b(?!.{0,25}\b(?:horno|cabina|sala)\b)|\bcuantas piezas\b(?!.{0,25}\b(?:horno|cabina|sala)\b)|\bque (?:han|hemos|se ha|llevan|llevamos) (?:pintad[oa]s?|recubiert[oa]s?|aplicad[oa]s?|hecho)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-air',
    said: /\b(?:que|cuanta|hasta que|hasta cuanta)\b.{0,12}\b(?:humedad|aire|temperatura)\b.{0,25}\b(?:permite|maxim[oa]|minim[oa]|pide|aguanta|se puede|como maximo)\b|\b(?:humedad|aire)\b.{0,12}\b(?:maxim[oa]|minim[oa]|limite|permitid[oa])\b|\b(?:limite|maxim[oa]|minim[oa])\b.{0,12}\b(?:humedad|aire|rocio)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-blend',
    said: /\bcuanto\b.{0,20}\b(?:hay que|se tiene que|tengo que|debo|se debe|debe|toca)?\b.{0,12}\b(?:agitar\w*|batir\w*|revolver\w*|mover\w*|mezclar(?:se|lo|la)?\b(?! para\b)|agito|bato|revuelvo|remover\w*|removiendo|batiendo|agitando|revolviendo|moviendo)\b(?! (?:para|pa)\b)|\btiempo de (?:agitacion|mezclado|batido)\b/,
    notOf: 'batch',
  },
  {
    asks: 'sheet-pot-life',
    said: /\bcuanto (?:dura|vive|aguanta) (?:una|esta|normalmente)\b.{0,12}\b(?:mezcla|bote|tanda|batch)\b|\bvida (?:util )?(?:de la mezcla|normal)\b.{0,20}\b(?:normal\w*|ficha|suele)\b/,
    notOf: 'batch',
  },
  {
    asks: 'sheet-film',
    said: /\b(?:que|cuanto|de cuanto|cuantas|cuantos)\b.{0,12}\b(?:espesor|micras|micrones|mils|milesimas|grosor|gruesa|grueso)\b.{0,20}\b(?:debe|hay que|pide|lleva|tiene que|quieren|va|dar|dejar)\b|\bespesor (?:pedido|requerido|objetivo)\b|\bcuant[oa]s (?:micras|micrones|mils|milesimas)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-flash',
    said: /\bcuanto\b.{0,20}\b(?:oreo|orear\w*|secado|evapora\w*|debe secar|hay que dejar(?:la|las|lo)? secar|tarda en secar|tiene que orear\w*)\b|\btiempo de (?:oreo|secado|evaporacion)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-cure',
    said: /\ba (?:que (?:temperatura|calor)|cuantos grados|cuanto)\b.{0,20}\b(?:tiene que|tienen que|debe|deben|ha de|hay que|necesita|deberia)\b.{0,12}\b(?:estar|llegar|subir|alcanzar|poner\w*|meter\w*)\b.{0,30}\b(?:horno|curar\w*|pieza|hornear\w*)\b/,
  },
  {
    asks: 'sheet-cure',
    said: /\bcuanto\b.{0,20}\b(?:hay que|debe|tiene que|se deja|va|dura)?\b.{0,12}\b(?:curar(?:se)?|hornear\w*|curado|cura|curan?)\b|\ba (?:que temperatura|cuantos grados|cuanto)\b.{0,20}\b(?:se cura|se hornea|hay que (?:curar|hornear|poner)|pongo el horno|va el horno|se pone el horno|curo|horneo)\b|\b(?:tiempo|temperatura) de curado\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-flush',
    said: /\bcon que\b.{0,12}\b(?:limpi\w*|lav\w*|enjuag\w*)\b|\bque (?:solvente|disolvente|thinner|tiner)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-surface',
    said: /\b(?:que|cual)\b.{0,12}\b(?:grado|perfil|preparacion|rugosidad)\b|\bque tan (?:limpi[oa]|rugos[oa])\b/,
    notOf: 'part',
  },
];
