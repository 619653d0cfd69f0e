// How Spanish speakers ask: lid, ratio, enough, sheet-air and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking3: Sayings<AskedMeaning> = {
  lid: `
    tiene la lid el can 6 / alguien dejó la lata abierta? / che está tapada la lata / estan todas tapadas
    están todos los botes cerrados / quedaron abiertas las latas del turno pasado? / lata abierta?
    se ha vuelto a tapar el 4 / volvieron a tapar la B / quedó sellado el bote / a cual le falta la tapa
    el bote de la mezcla tiene tapa o no / sigue destapado el can 2? / que tenemos destapado ahorita
  `,
  ratio: `
    pa 3 libras de mezcla cuánto lleva de A / ¿Cuánta B para 800 gramos de A? / cuanto B le echo a 1.2 kilos de A
    qué relación lleva / cual es el ratio / proporción de A y B / a cuánto va la mezcla, uno a uno? / es 1:1 o 2:1
    cuánto de cada para hacer 2 kg / tengo 640 g de A, cuánta B / si le puse 1201 de A cuanto le pongo de B
    pa medio kilo de mix cuánto de cada uno / va por peso o por volumen / en qué proporción se mezcla
    cuanto endurecedor lleva / cuánto catalizador por kilo / cuanto hardener pa 5 pounds
    con 900 de B cuánta A necesito / partes de A por cada parte de B / cuántas partes de B
    reparto de A y B para 3 kilos / divide 2.4 kilos en A y B / cuánta A y cuánta B para 1500 g
    me pasé con la A, 1250, cuánta B le toca / eché 700 de A y ahora qué cantidad de B va
    que tanto margen tiene el ratio / cuánto puede desviarse la mezcla / tolerancia de la proporción
    ratio del batch 2? / cómo quedó la proporción de la mezcla 1 / quedó bien el ratio / mitad y mitad o como
    che cuánto endurecedor va / no sé cuánta B lleva esto / para 16 oz de A cuántas de B
    cuanto B para acabar la lata de A / qué peso de B va con lo que queda de A / A con B en qué proporción según la hoja
    la B cuanto / pesos de A y B pa una mezcla chica
  `,
  enough: `
    alcanza pa 3 mas / ¿Hay bastante mezcla para otras tres? / me llega pa la 8 y la 9?
    con lo que queda en el pot pinto la válvula / da para dos brackets más / alcanza el batch 2 pa la carcasa
    tenemos suficiente para acabar los rieles / nos llega con lo que hay en la olla / sobra o falta para la bomba
    is there enough pa la 10 / me va a alcanzar o hago otro batch / tengo que mezclar más o con esto vale
    cubro las 4 que quedan con el pot 1? / da para otra mano en la 7 / queda suficiente para el impeller
    alcanzará para un metro cuadrado más / con medio kilo me alcanza pa la placa 4 / hay mix suficiente pa terminar
    cuántas más puedo pintar con lo que queda / pa cuantas piezas me da / hasta cuántos brackets salen de ahí
    se puede hacer la housing con lo que sobro / llego con la mezcla a la última? / voy a quedarme corto?
    me quedo corto con la 2 para los flanges / será suficiente con ese resto / bastará para la tapa
    alcanza el bote de A pa otra mezcla igual / hay A bastante para 3 kilos / tenemos B suficiente pa otro batch
    che alcanza para una más / no sé si va a alcanzar para la 12 / con esto termino o no / da el pot 3 pa todo el job
    me alcanza de aqui a la 40 / es bastante lo que hay / da pa la segunda mano de las tres / sale otra válvula del pot?
    cubre 0.6 m2 lo que queda / ajusta pa la 5 y la 6
  `,
  'sheet-air': `
    que humedad pide la hoja / ¿Con qué temperatura de aire se puede aplicar según la ficha? / limites de humedad
    entre qué grados hay que estar para pintar / qué humedad máxima permite / hasta cuanta humedad se vale
    cuál es la mínima de temperatura para aplicar / rango de temperatura del producto / qué aire quiere esta pintura
    que clima pide el sheet / max humidity segun la hoja / a partir de qué humedad no se pinta
    con 70 de humedad lo permite la ficha? / qué dice la ficha del ambiente / condiciones ambientales de la hoja
    condiciones para pintar / hay mínimo de humedad / cuanta humedad minima necesita pa curar
    límite de frío para aplicar / que tan frio puede estar el cuarto / que tanto calor permite en el booth
    cuánto por encima del punto de rocío pide / margen con el dew point que marca la hoja
    qué spread exige el fabricante / fuera de qué rango ya no vale / la hoja qué temperatura de sala quiere
    el producto tolera 85% de humedad? / a cuántos grados de ambiente trabaja esto / temperatura de aplicación
    ventana de humedad / che qué humedad banca este producto / no sé qué humedad admite
    según el papel con cuánta humedad / lo que pide el fabricante del aire / qué condiciones de cabina piden
    requisitos de aire / bajo cuántos grados no se debe aplicar / humedad permitida?
    cuáles son los topes de temperatura y humedad / what air quiere la hoja
  `,
  'sheet-surface': `
    como tiene que estar la superficie / ¿Qué preparación pide la ficha? / qué grado de limpieza piden
    hay que chorrear o basta lijar / que perfil pide / cuantas micras de rugosidad / que surface prep quiere la hoja
    se desengrasa con qué antes de pintar / que temperatura minima de superficie pide / a qué grano hay que lijar
    con que lija va / qué se le hace al metal antes / hay que quitar el óxido del todo
    se puede aplicar sobre óxido según la hoja / sobre qué se puede aplicar / agarra sobre aluminio?
    va sobre galvanizado o no / se puede sobre pintura vieja / qué limpieza exige el fabricante
    cuánto tiempo dura la preparación antes de pintar / cuántas horas tengo después del chorreado
    sandblast a qué nivel / la hoja pide Sa 2.5 o qué / sales máximas en la superficie / se necesita primer abajo
    hace falta imprimación / qué pone la hoja de la superficie / requisitos de la superficie
    preparación del acero inox / como preparo el bronce / como dejo la pieza antes de coatear
    qué tan seca tiene que estar la pieza / temp de superficie permitida
    hasta cuántos grados puede estar el metal al aplicar / che cómo se prepara la chapa / no sé qué prep lleva esto
    limpiar con alcohol es suficiente segun la hoja? / qué rugosidad requiere / prep segun ficha
    metal blanco o casi blanco
  `,
  'sheet-blend': `
    cuanto se bate segun la hoja / ¿Cuánto hay que agitar según la ficha? / qué tiempo de mezclado marca
    cuantos minutos de stir pide / a cuantas rpm / cuánto tiempo de agitación lleva este producto
    tiempo de inducción de la hoja / hay que dejarla reposar después de mezclar? / que dice el sheet del mixing
    how long to stir por la hoja / a 20 grados cuánto se mezcla / con frío cuánto más hay que agitar
    cuánto se bate a 24 / batido según fabricante / a mano o con agitador / se bate tapado o abierto
    qué velocidad de agitador / la ficha dice 90 o 120 minutos / mínimo de agitación / cuánto es lo normal de batir
    que tanto tiempo se le da al mixer / tiempo de mezcla del producto / cuánto se menea esto
    cuánto hay que removerla según pone / se filtra después de batir? con qué filtro según la hoja
    que filtro pide la hoja / de cuántas micras el filtro / cuánto se agita la A en su bote antes
    hay que mover la A antes de verterla, cuánto / orden de mezcla, A en B o B en A / instrucciones de mezclado
    cómo se mezcla esto según el papel / che cuánto se revuelve / no sé cuánto lleva de agitación
    cuantas vueltas por minuto / cuál es el stir time de la ficha / mezclar cuánto rato
    lo del mezclado en la hoja técnica / qué marca de batido para invierno / rpm del stirrer
  `,
  'sheet-pot-life': `
    cuanto dura la mezcla segun la hoja / ¿Qué vida útil da la ficha? / pot life del producto
    cuantas horas de pot life trae / cuánto aguanta mezclada / vida de la mezcla a 30 grados
    cuánto baja el pot life con calor / qué pot life dice el fabricante / una vez mezclado cuánto tiempo tengo por ficha
    tiempo de uso después de mezclar según la hoja / what's the pot life en el sheet / desde cuando cuenta el pot life
    el pot life incluye el batido? / a 25 cuánto aguanta / cuantas horas vive normalmente
    cuánto vive una mezcla de estas / en verano cuánto dura el pot / vida util? / tiempo abierto de la mezcla en ficha
    cuánto tarda en gelificar normalmente / qué dice la hoja de la vida de la mezcla / cuánto sirve ya mezclado
    horas de vida por ficha / es de 4 horas o de 6 el pot life / se alarga si se enfría / la mezcla grande dura menos?
    cuánto aguanta en la taza de la pistola / cuánto dura en el recipiente / che cuánto dura esto mezclado
    no sé cuánto dura este producto una vez mezclado / límite de uso de la mezcla / pot life a 75 F
    pot life según temperatura / dato de pot life / duración de la mezcla / el papel cuánto da de vida
    el fabricante cuánto tiempo da para usarla / después de echar B, cuántas horas en teoría
    en general a las cuántas horas se pone dura / que vida tiene el demo este
  `,
  'sheet-film': `
    que espesor pide / ¿Cuántas micras hay que dejar? / película húmeda según la hoja / cuántos mils van
    qué DFT pide la ficha / espesor seco que pide / wet film recomendado / entre cuanto y cuanto de espesor
    micras por mano / cuánto por capa / cuantas capas pide la hoja / de cuántas manos es el sistema / cuánto rinde
    rendimiento por metro cuadrado / rendimiento teórico / cuántos metros saca un kilo / coverage por galon
    cuánto cubre un kilo / máximo de micras sin que descuelgue / qué grosor máximo aguanta / espesor mínimo
    que tan delgada va / que tan gruesa la capa / mils húmedos pa brocha / cuánto hay que dejar mojado para 20 secas
    sólidos en volumen / qué sólidos tiene / film thickness segun el sheet / cómo de gorda va la capa
    qué película pide el fabricante / la ficha qué espesor marca / che qué espesor lleva / no sé cuántas micras van
    grosor de capa? / capa de cuánto / cuanto hay que cargarla / dato de espesor
    con spray cuánto espesor por pasada según la hoja / el inspector pregunta qué espesor pide el producto
    tolerancia del espesor
  `,
  'sheet-flash': `
    cuanto flash pide la hoja / ¿Qué tiempo de oreo marca la ficha? / minutos de flash off
    cuanto se orea antes del horno / cuánto hay que dejarla airear / cuánto tiempo de evaporación pide
    flash de cuanto según el sheet / cuánto se espera antes de meterla al horno, según el papel / flash mínimo
    flash máximo / mínimo y máximo de oreo / a temperatura ambiente cuánto flash / how long flash off por la hoja
    secado al tacto según ficha / cuanto tarda en secar al tacto normalmente / cuánto tarda en secar este producto
    cuánto rato antes de curar / el flash son 10 o 15 / entre capa y horno cuánto pide
    el tiempo de espera antes del oven según fabricante / cuánto se deja ventear / cuánto se deja escurrir
    qué pone de flash-off / tiempo de oreo? / cuánto pide de oreo si hace frío / cambia el flash con el calor?
    minutos para que suelte el solvente / cuánto se queda al aire / oreo con brocha es igual que con pistola
    cuánto es lo que se deja destensar / che cuánto se orea esto / no sé cuánto flash lleva
    qué flash le damos por ficha / dato de flash / el fabricante cuánto dice de flash
    se puede meter al horno directo según la hoja? / cuánto reposo pide después de pintar / reposo antes de horno
    tack free en cuanto / cuánto hay que dejarla colgada antes de curar
  `,
  'sheet-recoat': `
    a las cuantas horas se repinta / ¿Qué intervalo de repintado da la ficha? / ventana de recoat segun la hoja
    cuánto hay que esperar entre manos / mínimo entre capas / máximo entre capas / cuanto entre mano y mano
    recoat window del producto / deja repintar este producto? / admite segunda mano o no / la hoja prohíbe otra capa?
    se puede recoatear ya curado segun el sheet / hay que lijar entre capas? / lijado entre manos sí o no
    repintado min y max / tiempo de repintado / pasado cuánto tiempo ya no agarra la siguiente
    cuánto es la espera pa la segunda / after how long se puede recoat por ficha
    hasta cuántas horas después se puede dar otra / qué dice el fabricante de dar otra capa / qué pone de repintar
    entre capas qué tiempo / húmedo sobre húmedo se puede? / wet on wet lo permite la hoja
    cuánto tiempo tengo para retocar según la ficha / minutos para retoque por hoja
    se puede encima de una capa vieja del mismo / y si ya curó, se puede dar otra según el papel
    tras cuántas horas hay que matear / che cuánto se espera para la otra mano / no sé qué intervalo lleva / intervalo?
    recubrimiento siguiente a las cuántas / dato de repintado a 20 grados / con frío cuánto cambia el tiempo entre manos
    cuanto es lo maximo pa recoat / el producto este lleva segunda mano? / la ficha permite sobrepintar
    plazo para la siguiente mano
  `,
  'sheet-cure': `
    a cuanto se cura / ¿A qué temperatura y cuánto tiempo se cura? / curado según la ficha / cuanto horno lleva
    a cuántos grados pongo el horno / cuánto tiempo de horno pide / schedule de curado / cure schedule
    que oven temp pide la hoja / una hora a 90 o cómo era / cuánto cura a temperatura ambiente
    si no la meto al horno cuántas horas / curado al aire cuánto / cuántas horas para entrar en servicio según ficha
    cuántos días hasta la dureza total / cuándo alcanza dureza final por la hoja / how long y how hot se cura
    194 F es lo que pide? / a cuántos F va el oven / se puede curar a 60 más tiempo / puede curarse más bajo
    qué dice el fabricante del curado / cuánto y a cuánto / temperatura de la pieza para curar
    la hora es del horno o de la pieza / horas de curado / ciclo de horno / ciclo de curado para este producto
    qué ciclo le pongo al horno / cuántos minutos a 90 / cura con humedad o con calor / humedad para curar
    che a cuánto se hornea / no sé a cuánto se cura esto / que pone de curado el papel / horneado? / receta del horno
    curado sin horno / cuánto tengo que hornear por ficha / a que temp lo horneamos segun el sheet
  `,
  'sheet-flush': `
    con que se limpia la pistola / ¿Qué disolvente pide la hoja para limpiar? / con qué lavo las brochas
    que solvente uso / thinner o acetona / acetona o alcohol primero / en qué orden se lava
    qué solvent pa limpiar el gun / con que le hago flush a la manguera / con qué se enjuaga el equipo
    qué diluyente va / se puede limpiar con agua? / qué dice la ficha de limpieza de herramientas
    cleaner de este producto / con qué quito esto de la olla / con que se saca de los rodillos / secuencia de lavado
    cuanto tiempo tengo pa lavar la pistola según la hoja / cuántos minutos de enjuague / cuántas pasadas de acetona
    después de la acetona qué va / con isopropílico basta / alcohol de qué pureza / limpiador de la pistola
    qué le echo a la pistola para limpiarla / pa flushear que uso / se puede usar MEK?
    qué producto de limpieza recomienda el fabricante / limpieza del equipo según la ficha
    con qué se limpian las vasijas / que le paso a la brocha cuando acabe / se diluye con algo / lavar con qué
    che con qué limpio la soplete / no sé con qué se limpia esto / ya se puso medio dura, con qué disolvente sale
    con qué se limpia un derrame según la hoja / disolvente? / qué disolvente lleva este / flush con que
  `,
};
