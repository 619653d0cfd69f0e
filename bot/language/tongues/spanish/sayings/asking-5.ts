// How Spanish speakers ask: worn, fan, to-coat, on-hold, counted, coats, from-batch, details, bears, expiry, lot, lid, ratio, enough, sheet-air, sheet-surface, sheet-blend, sheet-pot-life, sheet-film, sheet-flash. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking5: Sayings<AskedMeaning> = {
  worn: `
    qué me pongo para mezclar / qué me pongo para rociar / qué me pongo para lijar / qué me pongo pa limpiar
    qué equipo me pongo / qué equipo necesito / qué equipo llevo / qué equipo de protección va / qué protección uso
    qué protección llevo / qué protección se usa / qué se pone uno para rociar / qué guantes van / qué guantes uso
    qué guantes son los buenos / qué lentes uso / qué máscara uso / qué máscara me pongo / qué mascarilla va
    qué respirador uso / qué respirador lleva / qué cartucho lleva / qué ropa llevo / qué traje uso / qué botas van
    necesito máscara / necesito guantes para filtrar / necesito lentes / necesito careta / ocupo respirador / what PPE
    what PPE for mixing / what gloves / what mask / what do I wear / what to wear pa lavar la gun
    do I need a respirator / do I need goggles / hay que usar guantes / hay que usar careta
    hay que ponerse respirador pa la brocha / se ocupa máscara / se ocupa aire / con qué guantes se lava
    con qué mascarilla se lija / es con careta o con lentes / basta con lentes / basta la mascarilla / EPP para mezclar
    EPP / EPI para limpieza / epp de rociado cuál es
  `,
  fan: `
    está prendido el extractor / está prendido el abanico / está encendido el ventilador
    está funcionando la extracción / is the fan on / is the exhaust on / is the blower running / fan status
    exhaust on or off / did they turn on the fan / a qué hora prendieron el extractor / a qué hora apagaron el fan
    desde cuándo está prendida la extracción / desde cuándo está apagado el extractor / cómo está el extractor
    cómo anda la ventilación de la cabina / cuánto lleva prendido el fan / sigue prendido el extractor
    sigue andando el fan / sigue puesta la ventilación
  `,
  'to-coat': `
    qué falta pintar / qué falta de pintar / qué falta por pintar / qué piezas faltan / qué piezas faltan de mano
    qué piezas están sin pintar / qué piezas están peladas / qué piezas no tienen capa / qué piezas siguen en metal
    qué piezas siguen sin recubrir / qué hay por pintar / qué hay sin pintar / qué queda por pintar / cuáles faltan
    cuáles faltan de pintar / cuáles faltan por recubrir / cuáles no se han pintado / cuáles no tienen pintura
    cuáles quedan sin capa / cuáles siguen / cuáles nos quedan por pintar / cuáles del job 88 faltan
    cuáles están listas para pintar / cuáles están preparadas y sin pintar / cuáles ya están lijadas y no pintadas
    what's left to coat / what's left to paint / what's not coated / what's bare / which are bare
    which parts need coat / parts to coat / still to coat / falta alguna por pintar / falta alguna de pintar
    queda alguna sin pintar / hay piezas sin pintar / hay algo sin pintar / faltan piezas por pintar
    lista de piezas sin pintar / sin pintar / por pintar / pendientes de pintar / piezas por recubrir
  `,
  'on-hold': `
    qué está retenido / qué está detenido / qué está parado / qué está apartado / qué piezas están en hold
    qué piezas están detenidas / qué piezas no se pueden soltar / qué piezas están en cuarentena / qué hay en hold
    qué hay retenido / qué hay apartado / cuáles están en hold / cuáles están retenidas / cuáles están detenidas
    cuáles están apartadas / cuáles no salen / cuáles no se entregan / cuáles pararon
    cuáles puso en hold el inspector / cuáles tienen etiqueta roja / cuáles están en espera / cuáles siguen retenidas
    what is on hold / which are on hold / anything on hold / holds / hold list / parts on hold / lista de retenidas
    lista de piezas en hold / retenciones / retenciones abiertas / ya quitaron el hold de la voluta
    hay piezas retenidas / hay algo en hold / tenemos retenidas / cuántas hay en hold / cuántas están retenidas
  `,
  counted: `
    cuántas piezas / cuántas piezas van / cuántas piezas llevamos / cuántas piezas pintamos
    cuántas piezas pintamos hoy / cuántas piezas faltan / cuántas piezas quedan / cuántas piezas salieron
    cuántas piezas entraron / cuántas piezas curamos / cuántas piezas hay en el horno / cuántas hay en el horno
    cuántas van / cuántas llevamos / cuántas llevas / cuántas pintadas / cuántas secas / cuántas curando
    cuántas sueltas / cuántas liberadas van / cuántas salieron hoy / cuántas se hicieron ayer / cuántas bridas hay
    cuántas tapas van / cuántas rejas faltan / cuántas del job 88 van / cuántas tiene el trabajo 94
    cuántas quedan por pintar / cuántos van / cuántos ejes hay / cuántos rieles llevamos / how many parts
    how many coated / how many left / how many done / how many in the oven / how many released hoy
    how many batches hoy / how many pots / count parts / part count / cuántas mezclas / cuántas mezclas hicimos
    cuántos botes mezclamos / cuántos botes van / cuántos batches hicimos / cuántas tandas van / total pintadas
    total de hoy / número de piezas / cuenta de piezas / conteo / cuántas en total / qué cantidad de piezas van
    cuántas se perdieron / cuántas rechazaron
  `,
  coats: `
    cuántas capas lleva la 7 / cuántas capas tiene la tapa / cuántas capas trae la 8
    cuántas capas le dimos a la carcasa / cuántas capas van en la voluta / cuántas manos lleva la brida
    cuántas manos tiene la 5 / cuántas manos le dimos a la 6 / cuántas manos van / cuántas manos le faltan a la tapa
    cuántas capas le faltan / cuántas veces se pintó la 7 / cuántas veces le dimos a la tapa / cuántos coats lleva la 8
    cuántos coats tiene el housing / how many coats on la 7 / how many coats la tapa / number of coats la voluta
    coats on la brida / va en la primera o en la segunda / va en qué mano la carcasa / en qué capa va la 5
    en qué mano vamos con la 6 / por qué capa va la tapa / le dimos una o dos a la 5 / lleva una o dos la 6
    es la primera o la segunda de la 9 / capas de la 7 / capas de la tapa / manos de la voluta
    manos que lleva la brida / número de manos de la 5
  `,
  'from-batch': `
    qué se pintó con el bote 1 / qué se pintó con la mezcla 2 / qué se pintó con el pot 3
    qué piezas se pintaron con la mezcla 1 / qué piezas llevan la mezcla 2 / qué piezas llevan del bote 1
    qué piezas salieron del batch 3 / qué piezas son del pot 1 / qué piezas vienen de la mezcla 2
    qué pintamos con el 1 / qué pintamos con esa mezcla / qué pintamos con ese bote / en qué se usó el bote 2
    en qué se gastó la mezcla 1 / en qué se fue el pot 3 / en qué piezas fue la mezcla 2
    en qué piezas quedó el batch 1 / a qué piezas fue el bote 3 / a dónde fue la mezcla 1 / a dónde se fue el pot 2
    cuáles llevan la mezcla 1 / cuáles son del bote 2 / cuáles se hicieron con el pot 3
    cuáles se pintaron con el batch 1 / cuáles salieron de la mezcla 2 / cuáles tocó la mezcla mala
    cuáles llevan el lote 7731 de A / which parts from batch 1 / what did batch 2 go on / what parts got pot 3
    parts from la mezcla 1 / parts on batch 2 / con la mezcla espesa qué pintaron
    con el bote que se cuajó qué se pintó / piezas de la mezcla 1 / piezas del bote 2 / piezas del pot 3
    todo lo que se pintó con el batch 1 / lista de piezas de la mezcla 2
  `,
  details: `
    qué serie tiene la 7 / qué serie es la tapa / qué número de serie tiene la 8 / qué serial es la carcasa
    cuál es el serial de la voluta / cuál es la serie de la brida / cuál es el número de la 5 / de qué trabajo es la 6
    de qué job es la tapa / de qué pedido es la 8 / de qué cliente es la carcasa / de qué material es la 7
    de qué metal es la tapa / de qué es la 8 / de qué está hecha la voluta / es de acero la brida / es inox la 5
    es aluminio la 6 / es hierro la tapa / qué material es la carcasa / qué metal es la voluta
    qué grueso tiene la pared de la brida / qué pared tiene la 5 / qué espesor de pared lleva la 6
    cuánto mide de área la tapa / qué área tiene la 7 / qué área es la voluta / cuántos metros cuadrados tiene la tapa
    cuántos metros tiene la carcasa / cuántos pies tiene la brida / what serial is la 7 / serial of la tapa
    what job is la 8 / what metal is la carcasa / area of la voluta / wall of la brida / details of la 5
    datos de la 7 / datos de la tapa / datos de la voluta / info de la 8 / qué datos tenemos de la carcasa
    qué sabemos de la brida / qué pieza es la 4411 / a qué trabajo pertenece la tapa
  `,
  bears: `
    cuánto aguanta la 7 / cuánto aguanta la tapa de calor / cuánto aguanta la goma de la 8
    cuánto calor aguanta la carcasa / cuánto calor soporta la voluta / cuánto calor resiste la brida
    cuánta temperatura aguanta la 5 / qué temperatura aguanta la 6 / qué temperatura soporta la tapa
    qué temperatura máxima tiene la 8 / qué calor aguanta la carcasa / hasta cuánto aguanta la 7
    hasta cuánto la puedo calentar / hasta cuántos grados aguanta la tapa / hasta cuántos grados la subo
    hasta dónde aguanta la voluta / a cuánto se puede meter la brida / a cuántos grados la puedo meter / máximo de la 7
    máxima de la tapa / tope de la voluta / tope de temperatura de la brida / límite de calor de la 5 / límite de la 6
    aguanta horno la 7 / aguanta el horno la tapa / aguanta los 90 la 8 / aguanta 100 la carcasa / soporta 90 la voluta
    resiste el horno la brida / resiste 120 la 5 / puede ir al horno la 6 / se deforma a 90 la tapa
    se derrite el plástico de la 8 a 90 / se daña la junta de la carcasa en el horno / can la 7 take the oven
    can la tapa take 90 / max temp de la voluta / how hot can la brida go / heat limit la 5 / what heat does la 6 bear
  `,
  expiry: `
    cuándo vence la A / cuándo vence la B / cuándo vence la lata 2 / cuándo caduca la lata 3 / cuándo caduca la B
    cuándo expira la A / cuándo se vence la lata 4 / cuándo se vence el endurecedor / cuándo se pasa la lata 5
    a qué fecha vence la A / para cuándo vence la B / qué caducidad tiene la A / qué caducidad trae la lata 2
    qué vencimiento tiene la B / qué fecha tiene la lata 3 / qué fecha trae la A / qué lata vence primero
    qué lata caduca primero / qué latas vencen pronto / qué latas están vencidas / qué se vence esta semana
    qué se vence este mes / qué material está por vencer / está vencida la A / está vencida la lata 2
    está caducada la B / está caducada la lata 3 / está en fecha la A / sigue en fecha la lata 5
    sirve aún la lata vencida / when does A expire / when does can 2 expire / is can 3 expired / expiry de la A
    expiration de la lata 2 / exp date de la B / any expired cans / fecha de vencimiento de la A
    fecha de caducidad de la lata 2 / vencimiento de la B / caducidades / caducidades de las latas
    vencimientos del mes / hay latas vencidas / hay algo caducado / hasta cuándo sirve la A
    hasta cuándo sirve la lata 2
  `,
  lot: `
    qué lote es la A / qué lote es la B / qué lote es la lata 2 / qué lote tiene la lata 3 / qué lote trae la A
    qué lote estamos usando / qué lote usamos / qué lote usamos hoy / qué lote se usó en la mezcla 1
    qué lote lleva el bote 2 / qué lote está abierto / qué lotes hay / qué lotes se usaron / cuál es el lote de la A
    cuál es el lote de la B / cuál es el lote de la lata 4 / cuál lote es / de qué lote es la lata 5
    de qué lote es la B que abrimos / de cuál lote sacamos / con qué lote mezclamos / con qué lote de B mezclamos
    número de lote de la A / número de lote de la lata 2 / lote de la A / lote de la lata 3 / lote de la resina
    what lot is A / what lot is can 2 / what lot is B / lot number de la A / lot of can 3 / which lot are we using
    which lot en la mezcla 1 / lot? de la lata 4 / me dices el lote de la A / me das el lote de la B
    recuérdame el lote de la lata 5 / no me acuerdo del lote de la A / es el mismo lote que ayer
    es otro lote o el mismo / cambió el lote de la B / los lotes de la mezcla 2
  `,
  lid: `
    está tapada la lata 3 / está tapada la A / está cerrada la lata 2 / está abierta la lata 4 / está abierta la B
    está destapada la A / está sin tapa la B / tiene tapa la lata 2 / tiene tapa la A / is the lid on la A
    is can 3 closed / is can 2 open / lid on can 4 / any open cans / which cans are open / which cans have no lid
    did we close la A / cuáles latas están abiertas / cuáles están destapadas / cuáles están sin tapa
    cuáles no tienen gas / hay latas abiertas / hay latas destapadas / hay alguna lata sin tapa / sigue abierta la A
    sigue destapada la lata 2 / sigue sin tapa la B / desde cuándo está abierta la lata 3
    desde cuándo está destapada la A
  `,
  ratio: `
    cuánto de A y cuánto de B / cuánto de cada uno / cuánto de cada parte / cuánto A va / cuánto B va / cuánto B lleva
    cuánto B para 640 de A / cuánta B para 900 de A / cuánta A para 700 de B / cuánto le echo de B
    cuánto le pongo de B / cuánto le pongo de catalizador / cuánto endurecedor para un kilo / cuánto B le toca
    cuánto para hacer un kilo y medio / qué proporción lleva / qué proporción es / qué relación es
    qué relación de mezcla lleva / qué ratio es / en qué proporción va / en qué relación va / a qué proporción
    proporción / relación de mezcla / relación A B / es uno a uno / es dos a uno / es mitad y mitad
    va a partes iguales / es por peso / es en peso o volumen / se mide por peso o por volumen / va por volumen
    what's the ratio / what ratio / mix ratio / ratio by weight / how much B for 640 A / how much hardener
    is it one to one / 1 to 1 o 2 to 1 / parts A to B / cómo se reparte A y B / cómo va la mezcla, uno a uno
    cómo se divide un kilo / cómo reparto dos kilos / cuántas partes de cada una / cuántos gramos de cada una para 1.5
    si echo 1200 de A cuánto B / con 500 de A cuánto de B / tengo 640 de B, cuánto A
    qué tolerancia tiene la proporción / cuánto me puedo pasar de B
  `,
  enough: `
    alcanza para otra / alcanza para la tapa / alcanza para las dos que faltan / alcanza el bote para la voluta
    alcanza la mezcla para la 8 / alcanza con lo que queda / alcanza con un kilo / me alcanza para la carcasa
    me va a alcanzar / basta con lo que hay / basta con 800 / con eso basta para la tapa / da para otra pieza
    da para la voluta / da para las seis / da para dos capas / llega para terminar / rinde para otra
    rinde para las cuatro / será suficiente / es suficiente para la carcasa / es suficiente un kilo / is it enough
    is it enough para la tapa / is there enough / enough for la voluta / enough mix / will it be enough
    do we have enough / hay suficiente / hay suficiente mezcla / hay suficiente para la 8 / hay bastante
    hay mezcla para otra / queda suficiente / queda bastante para la brida / queda para otra / tengo suficiente mezcla
    tengo que hacer más / hago más o alcanza / me falta mezcla o alcanza / para cuántas piezas alcanza
    para cuántas me da el pot 2 / cuántas piezas salen con lo que queda / cuántas más pinto con esto
    enough A for otro kilo / got enough B for another batch / got enough mix pa la tapa / have we got enough A
    nos llega la A pa otro kilo / llega la B para otros 800 gramos / llega el A para dos kilos más
    da la A para otra mezcla de dos kilos / tengo A para otro kilo / tenemos B pa otros tres kilos / hay A pa otro mix
    alcanza la A para otros dos kilos / nos da el A pa otra tanda / sale otro kilo con lo que hay de A
    queda A pa otros dos kilos
  `,
  'sheet-air': `
    qué humedad permite la ficha / qué humedad permite / qué humedad máxima marca / qué humedad mínima marca
    qué humedad acepta el producto / qué temperatura de aire pide la ficha / qué temperatura ambiente pide
    qué temperatura mínima marca la hoja / qué temperatura máxima marca la hoja / qué clima pide la ficha
    qué clima necesita / qué condiciones pide / qué condiciones pide la ficha
    con cuánta humedad se puede pintar según la hoja / con cuántos grados se puede aplicar según la hoja
    hasta qué humedad permite aplicar / hasta qué humedad aguanta el producto / hasta cuánta humedad permite la ficha
    desde qué temperatura se aplica / desde cuántos grados se puede aplicar / entre qué temperaturas se aplica
    entre qué humedades se aplica / rango de humedad / rango de aire / rango de temperatura de aplicación
    límite de humedad / límites de aire / límites ambientales / límites del ambiente según la ficha / max humidity
    min humidity / max air temp / min air temp / air limits / humidity limits / what humidity does the sheet allow
    what air does the sheet want / what does the sheet say about humidity / qué dice la hoja de la humedad
    qué dice la ficha de la temperatura ambiente / qué pide de punto de rocío la hoja
    cuántos grados sobre el rocío pide / margen de rocío que pide la ficha / spread mínimo de la hoja
  `,
  'sheet-surface': `
    qué preparación pide la hoja / qué preparación pide / qué preparación lleva / qué limpieza pide la hoja
    qué limpieza lleva antes de pintar / qué grado de chorro pide / qué grado pide la ficha / qué perfil pide la ficha
    qué perfil lleva / qué rugosidad pide / qué rugosidad marca la hoja / qué superficie pide / qué lija pide la ficha
    con qué grano se lija / con qué se limpia antes de pintar / cómo se prepara la superficie
    cómo se prepara el metal / cómo se prepara el aluminio / cómo se prepara el inox / cómo debe quedar la superficie
    cómo debe estar el metal antes de pintar / hay que granallar según la hoja / hay que granallar o basta con lija
    basta con lijar / basta con limpiar con alcohol / hay que desengrasar según la ficha / hay que tener perfil
    qué sales permite / cuánta sal permite la superficie / cuánto polvo permite / surface prep de la hoja
    surface prep required / what surface prep / what profile / what blast grade / what grit / does it need blasting
    what does the sheet want on the surface / qué pide la ficha para la superficie / qué dice la hoja de la superficie
    qué dice la ficha de la preparación / temperatura mínima de la superficie en la hoja
    temperatura del metal que pide la ficha / cuánto dura el metal preparado
    cuánto aguanta granallada sin pintar según la hoja / en cuántas horas hay que pintar después de granallar
  `,
  'sheet-blend': `
    cuánto se bate / cuánto se bate la mezcla según la hoja / cuánto tiempo se bate
    cuánto tiempo pide de batido la hoja / cuánto tiempo se agita / cuánto tiempo hay que revolver
    cuánto hay que mezclar según la ficha / cuántos minutos se bate / cuántos minutos pide de agitación
    cuántas vueltas por minuto pide / cuántas rpm pide / cuántas rpm lleva el agitador / a qué velocidad se bate
    a qué velocidad se agita / qué batido pide la ficha / qué tiempo de batido pide
    qué tiempo de agitación pide la hoja / qué tiempo de inducción pide / qué tiempo de inducción lleva
    qué dice la hoja del batido / qué dice la ficha del mezclado / qué velocidad pide / hay inducción / lleva inducción
    lleva reposo después de batir / cuánto reposa antes de usarla / cuánto reposo pide / hay que dejarla descansar
    stir time / stir time de la hoja / mixing time / how long do I stir / how long to mix / stir rpm / what rpm
    induction time / does it need induction / what does the sheet say about stirring / con 18 grados cuánto se bate
    con calor cuánto se bate / con frío cuánto se bate según la hoja / a 25 cuánto se agita / se bate tapada
    se bate despacio o rápido / se agita con vórtice o sin / cuánto se agita la A antes de servir según la ficha
  `,
  'sheet-pot-life': `
    cuánto dura la mezcla / cuánto dura mezclada / cuánto dura el producto mezclado según la ficha
    cuánto dura el pot según la hoja / cuánto vive la mezcla / cuánto vive mezclada a 25 / cuánta vida tiene la mezcla
    cuánta vida da la hoja / cuántas horas dura mezclada / cuántas horas da la ficha / cuántas horas de vida trae
    cuánto pot life da la ficha / cuánto pot life hay a 30 grados / qué pot life tiene / qué pot life da
    qué pot life marca la hoja / qué vida útil tiene la mezcla / qué vida de mezcla da la ficha
    qué tiempo de vida tiene mezclada / qué tiempo de uso da la hoja / qué tiempo de trabajo da
    qué dice la ficha del pot life / vida útil de la mezcla / vida de mezcla / vida de la mezcla según la hoja
    tiempo de vida de la mezcla / tiempo de trabajo de la mezcla / pot life? / pot life de la hoja
    what's the pot life / how long is the pot life / pot life at 30 C / working time / mixed life
    how long does it last mixed / a 20 grados cuánto vive / con calor cuánto menos dura
    con 35 grados cuánto dura mezclada / se acorta mucho con calor el pot life / desde cuándo se cuenta la vida
    cuenta el batido en el pot life / incluye la inducción el pot life
    el pot life empieza con la B o al acabar de batir
  `,
  'sheet-film': `
    qué espesor pide la hoja / qué espesor pide la ficha / qué espesor lleva / qué espesor va / qué espesor seco va
    qué espesor seco pide la hoja / qué espesor húmedo va / qué espesor húmedo pide / qué película pide
    qué película seca pide la hoja / qué película húmeda pide la ficha / qué grueso va la capa
    qué grosor de capa pide / cuántas micras van / cuántas micras pide la ficha / cuántas micras secas
    cuántas micras húmedas / cuántas micras por mano / cuántas micras debe quedar / cuántos mils pide
    cuántos mils secos / cuántos mils húmedos pide la hoja / cuánto espesor pide / cuánto espesor debe tener
    cuánto debe dar el peine / cuánto tiene que dar el peine según la ficha / cuánto tiene que medir seco
    cuánto debe medir el DFT / cuántas capas pide la ficha / cuántas manos pide la hoja
    cuántas manos lleva el sistema / film thickness de la hoja / what DFT / what WFT / how many mils / how thick
    how thick should it be / how many coats does the sheet want / dft target / wft target / target de espesor
    espesor objetivo / espesor mínimo de la hoja / espesor máximo de la hoja / rango de espesor / rango de micras
    tolerancia de espesor / cuánto rinde el kilo / cuánto rinde un litro / rendimiento de la hoja
    cuánto rinde por metro según la ficha / qué rendimiento da
  `,
  'sheet-flash': `
    cuánto flash pide / cuánto flash lleva / cuánto flash off pide la ficha / cuánto se deja orear
    cuánto se deja orear según la hoja / cuánto oreo pide / cuánto oreo lleva / cuánto tiempo de oreo pide la hoja
    cuánto se deja antes del horno / cuánto hay que orear / cuánto tarda en orear / cuánto tarda el flash
    cuántos minutos de oreo / cuántos minutos de flash / cuántos minutos antes del horno según la ficha
    qué flash pide la hoja / qué flash lleva / qué oreo pide la ficha / qué tiempo de oreo lleva
    qué tiempo de flash marca / qué dice la ficha del flash / qué dice la hoja del oreo / tiempo de flash
    tiempo de oreo de la hoja / flash de la ficha / oreo mínimo / oreo máximo / mínimo de flash
  `,
};
