// How Spanish speakers ask how things stand, in Spain and in the Americas: matched in lower case, without accents. The first
// row that fits counts.

import type { QuestionsTyped } from '../questions-typed.ts';
import { spanishTopicsAsked } from './topics-asked.ts';
import { spanishWhyAsked } from './why-asked.ts';

const when = '(?:cuando|kuando|a que horas?|desde cuando)';

export const spanishQuestions: QuestionsTyped = {
  whether: /^si\b /,
  tells:
    /\b(?:dime|digame|dinos|decir\w*|sabe\w*|saber|ensen\w*|mostrar\w*|muestra\w*|manda\w*|(?<!\ba )ver|pregunta|pasa\w*)\b/,
  nowInside:
    /\b(?:(?:ahora|ahorita) mismo|en (?:este|estos|el) (?:mismo )?(?:momento|momentos|instante)|a estas horas|actualmente)[ ,]+(?=[a-z\d])|(?<=\w )(?:ahora|ahorita) (?=(?:en|al|del|a|con|por|para)\b)/g,
  slips: {
    ...{
      q: 'que',
      k: 'que',
      ke: 'que',
      qe: 'que',
      kien: 'quien',
      qien: 'quien',
      quin: 'quien',
      kuando: 'cuando',
      cuado: 'cuando',
    },
    ...{
      kuanto: 'cuanto',
      qto: 'cuanto',
      cto: 'cuanto',
      cuato: 'cuanto',
      cuanot: 'cuanto',
      quanto: 'cuanto',
      dond: 'donde',
    },
    ...{
      onde: 'donde',
      adonde: 'donde',
      kual: 'cual',
      cal: 'cual',
      sta: 'esta',
      toy: 'estoy',
      ta: 'esta',
      tan: 'tan',
      pa: 'para',
    },
    ...{ ora: 'ahora', orita: 'ahora', ahorita: 'ahora', pq: 'por que', xq: 'por que', komo: 'como', ai: 'hay' },
  },
  stretch: /(?:^|\D)(\d+) ?(?:a|al|-|hasta) ?(?:la |el )?(\d+)/,
  countedNouns:
    /^(?:piezas|placas|chapas|paneles|tubos|tapas|carcasas|bridas|soportes|marcos|barras|cosas|trabajos|capas|manos|personas|partes|unidades)$/,
  notPlaces: '',
  who: /^(?:de |a |con )?quien/,
  somebody: 'alguien',
  asking:
    /^(?:(?:de|con|a|por|para|en|desde|hasta) )?(?:que(?! (?:la|el|las|los|ya|no|les?|se) )|quien(?:es)?|cual(?:es)?|cuando|cuant[oa]s?|donde|adonde|como)\b|^(?:ya |aun |todavia |mero )*(?:me |nos |le |se )?(?:esta|estan|estamos|estoy|sigue|siguen|se puede|se pueden|puedo|podemos|puede|pueden|hay|tenemos|queda|quedan|falta|faltan|alcanza|le falta|le toca|me toca|debo|necesito|tengo que|hace falta|hacen falta|es hora|alguien)\b|^(?:la )?(?:humedad|temperatura|espesor|vida|relacion|proporcion|tiempo)\b(?=.*\b(?:ficha|maxim[oa]|minim[oa]|limite)\b)(?!.*\d)/,
  asksAtEnd: /\b(?:verdad|o no|o que|cierto|o le falta|o todavia(?: no)?)$/,
  accented:
    /(?<!\p{L})(?:qué(?! (?:onda|tal|hubo|pasó)\b[^,.!?]{0,20}[,.!])|quién(?:es)?|cuál(?:es)?|cuándo|cuánt[oa]s?|dónde)(?!\p{L})/u,
  thingFirst:
    /^(?:y |a |de |lo de )?(?:la |el |las |los |al )?[a-z-]*(?: ?\d+)? (?:cuando|cuant[oa]|a que hora|de que|donde|quien)\b|^(?:si|para|con|a|en) (?:[^ ?]+ ){1,6}(?:cuant[oa]s?|cuando|quien|cual|donde|a que hora)\b/,
  mayFirst: /^(?:y )?(?:la |el |las |los )?[a-z-]*(?: ?\d+)? (?:bien|apt[oa]s?|buen[oa]s?|vale|valen) pa(?:ra)?\b/,
  emergencyNumber:
    /^(?=.*(?:emergenc|incendio|fuego|accidente|ambulancia))(?:(?:oye|hola|y|jefe|disculpa|perdona)[, ]+)*(?:(?:a )?(?:que|cual)(?: es)?(?: el| nuestro)? (?:numero|telefono)(?: de(?: la| las)? emergencias?)?(?: (?:llamo|llamamos|marco|marcamos|hay que (?:llamar|marcar)|es el|uso))?|a quien (?:llamo|llamamos|aviso|avisamos|hay que llamar)|numero|telefono)(?: (?:de|para|en|en caso de|si hay|si pasa|cuando hay)(?: una| un| la| el| las)? (?:emergencias?|incendio|fuego|accidente|ambulancia))?[?. ]*$/,
  why: spanishWhyAsked,
  rang: /\b(?:por ?que|para que|de que|pq|xq) (?:ha |han |acaba de |es que )?(?:me |nos |te |lo |la |el )*(?:(?:campana|timbre|aviso|alarma|pitido|sonido|recordatorio|campanazo|timbrazo) )?(?:ha |acaba de )?(?:sono|sonado|sonar|timbro|timbrado|pito|pitado|aviso|avisado)\b|\b(?:que|cual|quien|(?:por|para|de) que) (?:fue|era|es|ha sido|seria) (?:el |la |ese |esa |este |esta |lo )+(?:que (?:sono|ha sonado|acaba de sonar|pito)|(?:campana|timbre|aviso|alarma|pitido|sonido|recordatorio|campanazo|timbrazo))\b|\bque (?:queria|quiere|decia) (?:el |la |ese |esa )(?:campana|timbre|aviso|alarma|pitido|sonido|recordatorio|campanazo|timbrazo)\b|\bque (?:es lo que )?(?:sono|ha sonado|acaba de sonar|pito|ha pitado)\b|\b(?:sono|sonado|sonar|pito|pitado|timbro) ?(?:el |la )?(?:(?:campana|timbre|aviso|alarma|pitido|sonido|recordatorio|campanazo|timbrazo))?(?: ahora| ya)?[ ,.;:-]+(?:y )?(?:por que|para que|que (?:era|fue|es)|de que)\b/,
  topics: spanishTopicsAsked,
  given: /\b(\d+(?:[.,]\d+)?) ?(kg|kilos?|g|gramos?|lbs?|libras?|oz|onzas?)?(?: de)? (?:la )?(?:parte )?([ab])\b/,
  leadIns:
    /^(?:(?:que (?:onda|tal|hubo|paso)\b[^,.!?]{0,20}(?=[,.!])|ahora(?= que\b(?! (?:acab|termin|pued|vuelv|lleg|salg|est[ae]\b|regres|se |hay|tenga|venga)))|oye|oiga|oigan|hola|buenas|ey|eh|y|pues|entonces|bueno|a ver|aver|ok|okey|disculpa|perdon|por favor|porfa|una pregunta|pregunta|(?:me )?(?:puedes|puede|podrias|podria) decir(?:me)?|dime|digame|dinos|(?:alguien )?(?:sabe|sabes|saben)(?: alguien| usted)?|no se|nomas dime|nada mas dime|(?:me |nos )?(?:ensena|ensene|muestra|muestre|manda|mande|pasa|pase|saca|saque|echa|avienta|tira|suelta|imprime|imprima|lista(?= de\b))(?:me|nos)?(?! \d)(?! (?:la|el) \d)|(?:me das|me da|dame|deme|danos)(?= (?:el|la|un|una|los|las) (?:resumen|reporte|informe|ficha|hoja|registro|historial|lista|dia))|(?:quisiera|quiero|me gustaria|necesito|dejame|dejeme|dejanos) ver|(?:me |nos )?(?:puedes|puede|podrias|podria) (?:ensenar|mostrar|mandar|pasar|sacar)(?:me|nos)?|jefe|jefa|compa|guey|wey|chicos|gente|quiero saber|queria saber|necesito saber)[ ,.:;!-]+)+/,
  others:
    /^(?:por ?que\b|porque\b|xq\b|pq\b|como (?:se|hago|hacemos|puedo|lo)\b|que (?:es|significa|quiere decir)\b(?! lo (?:siguiente|proximo|primero|que (?:suena|sigue|toca|viene|falta)))|(?:me |nos )?(?:puedes|podrias|podeis|pueden)\b|(?:me|nos) (?:puede|podria)\b)/,
  modal: /^(?:puede|pueden)\b(?= \d)/,
  notActs: 'para va pase bien',
  kinds: [
    {
      asks: 'what-now',
      said: /(?:el |cual es el )?siguiente paso\b|(?:y )?(?:ahora )?que (?:sigue|va primero|hago primero)$|por donde (?:empiezo|empezamos)$|con que (?:empiezo|empezamos)$/,
    },
    {
      asks: 'can-i',
      said: /que (?:nos |me |le |se )?(?:falta|faltan|hace falta|necesit\w+|ocup\w+) (?:para|antes de)\b/,
    },
    {
      asks: 'how-long',
      said: /(?:hay|corre|queda) (?:algo|algun reloj) (?:en marcha|corriendo|andando|activo|funcionando|pendiente)\b|(?:hay|corre) algun reloj/,
    },
    {
      asks: 'how-hot',
      said: /(?:a |en )?cuanto (?:esta|anda|va|tenemos de|hay de) (?:el |la )?(?:punto de rocio|humedad|hr|temperatura|diferencial|aire|sala)\b|(?:el |la )?(?:punto de rocio|humedad|hr|temperatura|diferencial) (?:a|en) cuanto (?:esta|anda|va)\b/,
    },
    { asks: 'how-hot', said: /cuanto (?:marca|marcaba|marco|dio|daba|leyo|leia)\b/ },
    {
      asks: 'can-i',
      said: new RegExp(
        `(?:${when} |cuanto falta para (?:que )?|hasta que hora |hasta cuando |ya |todavia |aun )?(?:ya )?(?:puedo|podemos|puedes|podre|podremos|se (?:le |la |lo )?pueden?|se podra|podria(?:mos)?|puede(?:n)?|(?:me|nos) dejas?|se vale|vale(?= usar)|conviene|debo|debemos)(?: ya)?(?: |$)`,
      ),
    },
    {
      asks: 'can-i',
      said: /(?:(?:no )?(?:esta|estan|estamos|vamos|es|seria|hay|hace))?(?: ya)? ?(?:bien|listos?|listas?|buena?|seguro|posible|(?:muy|demasiad[oa]|much[oa]|tant[oa]) [a-z]+|pronto|tarde|tiempo|hora|momento) (?:para|de|si|pa|entrar|pasar)\b|(?:da|hay|me da|nos da) tiempo\b|(?:le )?toca ya\b/,
    },
    { asks: 'mask', said: /que (?:mascara|mascarilla|respirador|filtros?)/ },
    { asks: 'traveller', said: /\b(?:travell?er|hoja de ruta|hoja viajera|ficha de ruta)\b/, anywhere: true },
    {
      asks: 'card',
      said: /(?:(?:la )?(?:ficha|tarjeta|historia)|(?:el )?(?:registro|historial|expediente)) (?:de|del)\b/,
    },
    {
      asks: 'day',
      said: /(?:el |un )?(?:resumen|reporte|informe|registro|parte) (?:de|del) (?:dia|hoy|turno)|(?:todo )?(?:el )dia(?: de hoy| completo| hasta ahora| entero)?$/,
    },
    {
      asks: 'day',
      said: /lo que (?:llevamos|va|hemos hecho|se ha hecho|hicimos)(?: hecho)? ?(?:de|en)?(?:l)? ?(?:hoy|dia|el dia|la manana|turno)$/,
    },
    { asks: 'day', said: /cuant[oa]s?\b.{0,30}\b(?:hoy|esta manana|en el turno|hasta ahora)\b/ },
    {
      asks: 'went-wrong',
      said: /(?:que|k|q) (?:ha |se )?(?:paso|pasado|salio mal|fallo|fallado|hubo|ocurrio)\b|(?:que|algo) (?:salio|ha salido|fue) mal|(?:hubo|ha habido|hay|algun|tuvimos) (?:algun )?(?:problemas?|fallos?|errores?|desviacion(?:es)?)|como (?:nos )?fue (?:hoy|el dia)/,
    },
    {
      asks: 'what-late',
      said: /(?:que|quien|cual(?:es)?|algo|hay algo|vamos|va algo|q)\b.{0,25}\b(?:atras\w*|retras\w*|tarde|vencid\w*|demorad\w*|pasad\w*)/,
    },
    {
      asks: 'how-long',
      said: /(?:cual|que|quien)\b(?!.*\b(?:mezclas?|lotes?|botes?|latas?)\b).{0,30}\b(?:sale|salen|saldra|acaba|termina|saco|sacamos|esta list[ao]|estara)\b.{0,20}\b(?:primer[oa]?|antes)\b/,
    },
    {
      asks: 'at-risk',
      said: /(?:que|cuanto|cuanta|cual(?:es)?|algo|hay algo)\b.{0,30}\b(?:en riesgo|perder|pierde|pierden|perdemos|echar a perder|tirar|desperdici\w*)|(?:que|cual(?:es)?)(?: de las| bote| mezcla| pote| cubeta| olla)*\b.{0,30}\b(?:primero|antes|vence|caduca|se muere)/,
    },
    {
      asks: 'trace',
      said: /(?:que|cual) (?:producto|pintura|recubrimiento|material)\b|que lleva\b|(?:que|cual(?:es)?|de que|con que) (?:fue |era |es )?(?:el |los )?lotes?\b/,
    },
    {
      asks: 'how-hot',
      said: /(?:de cuando|de que hora|que tan (?:vieja|reciente|fresca))\b.{0,16}\b(?:lectura|aire|dato|medicion)\b/,
      anywhere: true,
    },
    {
      asks: 'where-is',
      said: /(?:horno|cabina)\b.{0,12}\b(?:libre|vaci[oa]|ocupad[oa]|disponible|llen[oa])\b|(?:libre|ocupad[oa]|disponible)\b.{0,8}\b(?:horno|cabina)\b/,
      anywhere: true,
    },
    {
      asks: 'how-hot',
      said: /^(?:la |el )?(?:humedad|hr|temperatura|diferencial)(?: (?:actual|ahora|ahorita))?$|cual es (?:el punto|la humedad|el aire)|punto de rocio|a (?:cuanto|cuantos grados|que temperatura)\b|que tan (?:caliente|frio|fria|humed\w+)|(?:que|cual es la|cuanta|k|q) (?:temperatura|humedad)|cuantos grados|(?:como|que tal) esta el (?:aire|ambiente)|que calor|que punto de rocio/,
      anywhere: true,
    },
    {
      asks: 'how-long',
      said: /(?:que|cual) (?:es )?(?:lo |la )?(?:siguiente|proxim[oa]|primer[oa]|que)(?: \w+)? (?:que )?(?:suena|sonara|va a sonar|avisa|vence|alarma|reloj)|que (?:suena|va a sonar|reloj corre)|cuando suena/,
    },
    {
      asks: 'who-did',
      said: /(?:de |con )?quien\b|que (?:espesor|relacion|proporcion)\b|cuantos (?:somos|hay|estan|son) en la cabina|quien(?:es)?\b|(?:cuando|kuando|a que hora) (?:se |le |les |la |lo )?(?:fue|lei(?:mos|ste)?|leyo|leyeron|[a-z]+(?:aron|amos|imos|ieron)|(?!(?:saco|meto|pinto|filtro|mezclo|aplico|uso|puedo|tengo|debo|abro|suelto|libero|paro|hago)\b)[a-z]+(?:o|io)\b|ha|han|hemos)\b|hace cuanto|cuanto hace|alguien (?:ha |han |hemos )?[a-z]+(?:ado|ido|o|io)\b|(?:que|q) hizo\b|hay alguien (?:en|con)\b/,
    },
    {
      asks: 'where-is',
      said: /(?:que|cual(?:es)?|cuant[oa]s) (?:piezas? |mezclas? |botes? )?(?:me |nos )?(?:estan?|siguen?|faltan?|quedan?|hay) ?(?:todavia |aun |ya |algo )?(?:sec[oa]s?|fresc[oa]s?|mojad[oa]s?|humed[oa]s?|en oreo|oreando(?:se)?|list[oa]s?|pintad[oa]s?|en curado|curando(?:se)?|curad[oa]s?|liberad[oa]s?|retenid[oa]s?|detenid[oa]s?|abiert[oa]s?|por pintar)\b|que piezas (?:faltan|quedan|hay)|hay algo (?:detenido|retenido)|(?:a ?)?donde\b|(?:que|cuant[oa]s|cual(?:es)?|algo|q)(?: piezas?)?(?: hay| esta| estan| tenemos| tengo| tienen| traemos| traen| traes| llevamos| llevan| metimos| metieron| sigue| siguen| quedan)?(?: todavia| aun| ahorita)? (?:metid[oa]s? )?(?:en|dentro de)(?:l| el| la| los) (?:horno|cabina|taller|curado|cuarto|sala)|(?:que|cuales) (?:se )?estan? (?:curando|horneando)|(?:esta|estan)\b.{0,30}\b(?:en|dentro d)el horno/,
    },
    {
      asks: 'what-now',
      said: /(?:que|k|q) (?:hago|hacemos|debo hacer|tengo que hacer|tenemos que hacer|me toca|toca)(?: (?:ahora|hacer|primero))?(?=$| y\b)/,
    },
    {
      asks: 'to-do',
      said: /(?:que|k|q) (?:le |les |nos |me )?(?:sigue|falta|toca|queda por hacer|hay que hacer|hago|hacemos|queda pendiente|esta pendiente|viene|va) ?(?:ahora|despues|hoy|hacer|por hacer|a la|al|en|con|de)?\b|siguiente paso|que hay pendiente|que queda\b(?! (?:en|de)\b)/,
    },
    {
      asks: 'how-much',
      said: /(?:queda|hay|tenemos) (?:algo de |parte |mas )?[ab]$|(?:que|cuant[oa]s|(?:lista )?de(?: los| las)?) (?:latas|cubetas|botes)\b|cuant[oa]s? (?:hay que |debo |debemos |tengo que |se |te )?(?:mezcl\w+|prepar\w+|hago|hacemos|hacer|pes\w+|hay|tenemos|llevamos|sobra|necesit\w+)|cuant[oa]s?(?: \w+)? (?:queda|quedan|resta) (?:en|de|dentro|del)\b|cuant[oa]s? (?:mezcla|material|componente|parte|gramos|kilos|litros)\b|cuant[oa] (?:parte )?[ab] (?:queda|hay|tenemos)|que queda (?:en|de|del)\b|hay suficiente|alcanza|tenemos suficiente/,
      anywhere: true,
    },
    {
      asks: 'how-long',
      said: /\b(?:cuant[oa]|quant[oa]|kuanto|cto|qto)s?(?: tiempo| rato| minutos| horas)?(?: mas)?(?: (?:le|les|me|nos|se))?(?: (?:va a|falta|faltan|queda|quedan|tarda|dura|demora|tardara|aguanta|lleva|durara|por))?\b|hasta (?:cuando|que hora)|(?:le |les |nos )?(?:falta|queda) (?:mucho|tiempo|poco)/,
      anywhere: true,
    },
    { asks: 'how-long', said: new RegExp(`${when}\\b`) },
    {
      asks: 'how-long',
      said: /(?:ya )?(?:esta|estan|estara|esta ya|quedo|quedaron|sigue|siguen|se (?:seco|secaron|curo|gelo|gelifico)|salio|va)\b|ya\b/,
      marked: true,
    },
    {
      asks: 'how-long',
      said: /(?:como|que tal) (?:va|van|vamos|andamos|estamos|esta|sigue|pinta)\b|que (?:onda|hay|pasa) con\b|(?:todavia|aun) (?:sirve|aguanta|esta|sigue|hay|da|queda)\b|hay que (?:leer|medir)\b/,
    },
  ],
  acts: [
    {
      act: 'air',
      said: /\b(?:higrometro|termometro|(?:midi|medi|revis|lei|ley|mir|checa|checo)\w*\b.{0,10}\b(?:aire|humedad|ambiente))\b/,
    },
    {
      act: 'stop',
      said: /\b(?:parar|paro|apagar|apago|detener|dejar|dejo)\b.{0,12}\b(?:agitar\w*|agitador\w*|agitado|batir\w*|remover\w*|revolver\w*|mezclar\w*)\b/,
    },
    {
      act: 'flush',
      said: /\b(?:lav|limpi|enjuag)\w*\b.{0,12}\b(?:pistola|equipo|manguera|brocha|vaso|recipientes?|rodillo)\b/,
    },
    {
      act: 'prep',
      said: /\b(?:limpi|desengras|lij|arenad|grana|prepar)\w*\b.{0,16}(?:\d|\b(?:pieza|acero|superficie)\b)/,
    },
    {
      act: 'cure',
      said: /\b(?:(?:al|en el|meter(?:la|lo|las)?|entrar) (?:al |el )?horno|curad[ao]s?|hornear(?:la|lo)?|meter(?:la|lo|las)? al?)\b/,
    },
    { act: 'out', said: /\b(?:sacar(?:la|lo|las|los)?|saco|sacamos|sale|salen|salir|sacaron)\b/ },
    {
      act: 'coat',
      said: /\b(?:recubrir(?:la|lo)?|otra (?:capa|mano)|segunda (?:capa|mano)|repintar|usar(?:la|lo)?|uso|aplic(?:ar\w*|o|aron|amos|aste)|pint(?:ar\w*|o|aron|amos|aste)|dar(?:le)? (?:otra )?(?:capa|mano)|dar(?:le|la|lo|las|los)?(?= (?:a )?(?:la|el|las|los|al)? ?[a-z-]*\d))\b/,
    },
    {
      act: 'release',
      said: /\b(?:liberar(?:la|lo|las)?|soltar(?:la|lo)?|entregar(?:la|lo|las)?|embarcar(?:la|lo)?)\b/,
    },
    { act: 'dry', said: /\b(?:sec[ao]s?|se seco|secaron)\b/ },
    { act: 'filter', said: /\b(?:filtr(?:ar\w*|o|e|aron|amos|aste|ad[ao]s?)|colar(?:la|lo)?)\b/ },
    {
      act: 'gel',
      said: /\b(?:muere|morir|vence)\b.{0,12}\b(?:mezcla|bote|batch|tanda)\b|\b(?:mezcla|bote|batch|tanda)\b.{0,12}\b(?:muere|vence)\b/,
    },
    { act: 'gel', said: /\b(?:gelad[ao]|gelo|gelific\w+|cuajo|cuajad[ao])\b/ },
    { act: 'brief', said: /\b(?:vigil\w+|de guardia|(?:afuera|fuera) de la cabina)\b/ },
    { act: 'stir', said: /\bagitador\b/ },
    { act: 'weigh', said: /\b(?:relacion|proporcion)\b/ },
    { act: 'film', said: /\bespesor\b/ },
    { act: 'flush', said: /\b(?:lav|limpi)(?:ar|o|aron|amos|ad[ao]s?|e|aste)\b/ },
    { act: 'mix', said: /\b(?:mezclar|mezclo|mezclaron|mezclamos|mezcle)\b/ },
    { act: 'open', said: /\babri(?:r|o|eron|mos|ste)\b/ },
  ],
  spray: /\b(?:sople?te[a-z]*|rocia[a-z]*|pistole[a-z]*)\b/,
  component: /(?<=[a-z] )([ab])(?= (?:queda|hay|tenemos)\b|$)/,
  ofAll:
    /^(?:cual\b.{0,30}\b(?:sale|salen|saldra|acaba|termina|saco|sacamos)\b.{0,20}\b(?:primer[oa]?|antes)|hay|corre|queda|como|que|hay que|(?:todavia|aun)|cuan|quan|kuan|cto|qto|hasta|a que|le )/,
  isDone: /(?:ad[ao]s?|id[ao]s?|sec[ao]s?|viert[ao]s?|list[ao]s?)$/,
  usesPot: { said: /\b(usar|uso|usamos|usando|gastar) (?:el |la )?(?=\d+\b)/, as: '$1 mezcla ' },
  stated:
    /^(?!.*\b(?:que|quien|cual|cuales|cuant[oa]s?|cuando|donde|como|puedo|podemos|se puede|alcanza|hay que)\b).*\d ?(?:°|º|grados|por ciento|%|[cf]\b|gramos?\b|g\b|kg\b|kilos?\b|libras?\b|oz\b|micras\b|mils\b|um\b)|^(?:el |la )?[a-z]* ?(?:esta|estan|anda|andan|estamos|andamos) (?:como )?(?:a|en) \d|^(?:todavia |aun )?no (?:le |la |lo |se )?(?:he|ha|hemos|esta|estan)\b/,
  mayAsk:
    /\b(?:[a-z]+-\d+|\d+|las|los|la|lo) (?:ya )?(?:puede|pueden|se puede|se pueden|podria|podrian) [a-z]{2,}|^(?:le|les|lo|la|los|las|se lo|se la) (?!ya\b)[a-z]+(?:aron|ieron)\b|^(?:ya )?(?:esta|estan|sigue|siguen|queda|quedan) (?!.*\d ?(?:°|º|grados|por ciento|%|[cf]\b))/,
  readsNow:
    /^(?:cual es|cuanto es|en cuanto esta|a cuanto esta) (?:el|la) (?:punto de rocio|humedad|diferencial|spread|delta)\b|^(?:que|cual|cuanto).*\b(?:ahora|ahorita|hoy|esta (?:manana|tarde)|aqui|en este momento)$/,
  tellsToo:
    /^(?:que (?=(?:ya|aun|todavia|esta|estan|estaba|hay|no|se|la|lo|le) )|asi que )?(?:ya |aun |todavia )*(?:me |nos |le |se )?(?:esta|estan|estaba|sigue|siguen|puede|pueden|hay|tenemos|queda|quedan|alcanza|tiene|llevo)\b/,
  joinsAsked:
    /,? (?:asi que|entonces|pero|conque) (?=(?:que|cuando|como|puedo|se puede|donde|quien|cuanto|cual|dime|sabes|a que hora)\b)|[,;:.!] | [-–—] /g,
  unfitAir:
    /\b(?:demasiad[oa]|muy|mucha|mucho|tanta|tanto) (?:humedad|humed[oa]|fri[oa]|calor|calid[oa]|caliente|sec[oa]|viento|bochorno)\b|\bcon (?:est[ea]|tanta|tanto|toda esta|todo este) (?:humedad|calor|frio|aire|clima|tiempo|viento|bochorno)\b/,
  whereParts: [
    {
      are: 'curing',
      said: /\b(?:el|la|los|las|ambos|ambas|esos|esas|todos|todas)(?: los| las)? (?:(?:que (?:esta|estan|sigue|siguen|hay|tengo|tenemos)|piezas?|de|dos|tres|cuatro|cinco|seis|(\d+)) )*(?:en el|del|dentro del|metid[oa]s? en el) horno\b/,
    },
    {
      are: 'flashing',
      said: /\b(?:el|la|los|las|ese|esa|esos|esas) (?:que (?:esta|estan|sigue|siguen) )?(?:fresc[oa]s?|mojad[oa]s?|secandose|secando|oreando(?:se)?)\b/,
    },
  ],
  ordinals: {
    ...{ primer: 1, primera: 1, primero: 1, segunda: 2, segundo: 2, tercer: 3, tercera: 3, tercero: 3, cuarta: 4 },
    ...{ cuarto: 4, quinta: 5, quinto: 5, sexta: 6, sexto: 6, septima: 7, septimo: 7, octava: 8, octavo: 8 },
    ...{ novena: 9, noveno: 9, decima: 10, decimo: 10 },
  },
};
