// How Spanish speakers say it: filter, thick, gel, empty, cover, uncover, catch, waste. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots4: Sayings<SaidMeaning> = {
  filter: `
    filter done, pot 4 / filtrado / filtrada / filtro ok / filtro listo / filtrado el 2 / bote 1 filtro
    mezcla dos filtrada / la 3 por filtro / por un filtro limpio la mezcla 1 / con filtro doble el bote 2
    dos filtros gasté pero quedó filtrado el pot 3 / se tapó el filtro, lo cambié y acabé, mezcla 1
    el filtro salió con puntitos, bote 2 pasado / dejó pellejos en el filtro, filtrada la 3
    salieron natas en el filtro, la 1 ya limpia / sin grumos, filtrada / quedó limpiecita después del filtro
    salió como agua del filtro / lenta lenta pero ya pasó toda por el filtro / por gravedad filtrada la 2
    filtrada por presión, lote 1 / con vacío la filtré / a las 9:44 filtrada la mezcla 1 / 9:50 colada
    hace un rato colé el bote 2 / ahorita la colé / recién filtrado el dos / acabo de colar la mezcla 3
    acabo de filtrarla / acabo de pasar el batch 1 por la malla / ahora la estoy colando, bote 2 / colando el pot 1
    pasando por malla la 2 / filtrando ya / estamos filtrando el lote 3 / ando colando el batch 2 / Lia filtró la 1
    Omar coló el bote 2 / el nuevo la pasó por el filtro / la colamos entre dos, pot 3 / he colado la mezcla
    hemos pasado todo por el filtro / fue filtrada la mezcla 2 / ha sido filtrado el lote 3 por 1 µm / che ya la colé
    tío, filtrada la 2 / mi hermano ya la colamos / compa ya quedó filtrado el batch / listo jefe, colada
    apunta colada la mezcla 1 / anota filtración de la 2 / registra filtrado del bote 3 / marca filtrado
    ya que paró el agitador la filtré / después del batido la colé / apagué y filtré, va la 2 filtrada
    lista para pintar, ya colada / filtre el bote con malla nueva / filtrao el pote 2 / pasao por el filtro el 1
    kolé la mezcla / filtrda la 1 / le informo que la mezcla 1 ya fue filtrada
    se filtró a través de fibra de vidrio de 1 µm, bote 2 / señor, ya está filtrada la mezcla / ya la filtre xq ya paro
    ps ya la cole / pos ya paso x el filtro / nomas la cole una vez, el bote 1 / ran it through the filter
    put it through the filter, pot 1 / strained it, pot 2 / filtered it into a clean pot
    pasé el batch por el filter al clean pot / quillo ya está filtrá / parce ya la colé / boludo filtré el pote
    mijo ya pasó toda por el filtro
  `,
  thick: `
    se siente más pesada la mezcla / pesa la brocha con el bote 1 / ya no corre la brocha, espesó
    arrastra mucho el rodillo, mezcla 2 gruesa / la pintura está más gorda que hace rato / está gordita la 2
    se puso pastosa / pastoso el bote 1 / está pastosa la mezcla 3 / parece crema / como crema el bote 2
    como miel de abeja la 1 / parece champú el pot 3 / como champurrado el batch 1 / tipo mayonesa la 2 pero se mueve
    como pudín aguado el bote 1 / como aceite de motor la mezcla 2 / como engrudo el pot 1 / está como natilla
    parece salsa espesa el bote 3 / espesita la mezcla 1 / espesona ya la 2 / espesísimo el pot 3 / se ha puesto espeso
    se nos está poniendo espeso el 1 / se me puso gruesa la mezcla / se te está espesando el bote 2 jefe
    está agarrando cuerpo la mezcla 1 / está cogiendo cuerpo / ya agarró consistencia el pot 2
    ganó viscosidad el lote 3 / aumentó la viscosidad de la mezcla 2 / viscosidad alta, lote 1
    la viscosidad se ha duplicado, bote 3 / visco subiendo, 1 / la copa ford da 45 / copa 4: 40 segundos, la 1
    tarda el doble en la copa, mezcla 2 / 50 segundos de copa el bote 1 / getting thick el pot 1 / it's thick ya
    thickening el batch 2 / super thick el pot 3 / se está thickeando / muy heavy el batch 1
    la gun no la jala, está thick / ya no atomiza bien, espesó el bote 2 / la pistola ya no la saca, gruesa la mezcla 1
    hay que apretar más, está gruesa la 2 / no sale parejo, ya engrosó / engrosó el bote 1 / engrosando la mezcla 3
    chorrea en hilo la mezcla 2 / hace hebra el pot 1 / ya hace hilos / deja hilo la paleta, bote 3
    cae a pegotes, la 1 / se queda en la varilla, no escurre, bote 2 / el palo sale cargado, mezcla 1
    no se nivela, está espesa la 3 / ya no se estira / le cuesta al mixer / el mixer va lento, está pesada la 2
    el motor suena forzado, espesó el bote 1 / rueda lento el agitador, gruesa / más espeso que al principio
    más espeso de la cuenta el bote 2 / bastante espesa la mezcla 3 / un pelín espesa la 1 / algo espesa la 2
    medio espeso el pot 1 / semi espeso el batch 3 / ya tirando a espeso el bote 1 / tantito gruesa la mezcla
    está muy densa / densa la mezcla 2 / se densificó el lote 1 / notablemente más viscosa la 3
    la consistencia cambió, espesa la 2 / se espesó con el calor / con el solazo se puso gorda la 1
    por estar destapada espesó el bote 2 / espesó de golpe / empieza a espesar / empezó a engrosar la 2
    comienza a ponerse espeso el pot 1 / ya va para espeso / ya se le siente lo grueso / ojo que está espeso el bote 1
    cuidado, espesa la mezcla 2 / aviso: mezcla 3 espesando / les aviso que la 1 está gruesa
    a las 11 estaba espesa la mezcla 2 / hace diez minutos se puso gorda / ahorita vi el pot 1 espeso
    recién noté más gruesa la 3 / Omar dice que la 1 ya está espesa / Lia la siente gruesa, bote 2
    el nuevo notó espeso el pot 3 / está duro de mover el bote 2 / cuesta un huevo moverla, la 1
    pesada pesada la mezcla / ya ni se deja batir, gruesa la 2 / le informo que la mezcla 1 presenta mayor viscosidad
    se observa espesamiento en el bote 2 / señor, la mezcla se siente más espesa / ta espesa xq hace calor
    ps ya se puso gruesa / pos ya esta bien espesa la 2 / nomas la senti mas pesada, espesa / it's getting thick pot 1
    pot 2's thick / thicker than before la mezcla / thick as honey pot 1 / quillo se está poniendo gordo el bote
    parce está espesa / boludo se espesó el pote / mijo ya está gruesa la mezcla
  `,
  gel: `
    ya cuajó / cuajada la mezcla 1 / cuajó el bote 2 / se cuajó todo / se nos cuajó la tanda / ya está cuajada la 3
    se hizo piedra / piedra el bote 1 / se hizo una piedra la mezcla 2 / quedó hecha piedra / quedó como roca el pot 3
    se puso dura la mezcla / dura la 1 / durísimo el bote 2 / ya está duro / se endureció en el bote
    endurecido el lote 3 / endureció la mezcla 2 antes de tiempo / endureció de golpe / se solidificó
    sólida la mezcla 1 / solidificado el bote 2 / se gelificó antes de hora / gelificada la 3 / gelificó la mezcla
    ya gelificó el bote 1 / gelificando, ya no se mueve / está en gel / en gel el bote 2 / puro gel el pot 1
    hecho gel el lote 3 / convertido en gel / gel total mezcla 2 / gelled / it gelled el pot 2 / gelled up batch 1
    se geleó el pot / geleado el batch 3 / se me geleó el 2 / gel batch 2 / hard as a rock el pot 1
    rock solid el batch / set up ya el pot 3 / se seteó el batch / kicked off el pot 2, duro / se murió la mezcla
    muerta la 1 / mezcla muerta, dura / se nos murió el bote 2, cuajado / murió el pot en la olla, piedra
    ya no sirve, está cuajada / ya no se mueve la paleta, cuajó el 1 / la paleta quedó presa, bote 2
    la varilla ya no sale, duro / no se puede mover, gel / no gira nada, cuajada la 3
    se quedó el palo parado en el bote 1 / paleta atrapada en la mezcla 2 / está como chicle / chicle puro la mezcla 2
    chiclosa la 1, gel / gomosa la mezcla, gelificada / goma el bote 3 / como jalea / jalea el pot 1 / se hizo jalea
    como pelota de hule el bote 2 / hule la mezcla 1 / como silicona cuajada la 3 / cuajo como queso el bote 1
    un queso la mezcla 2 / flan / hecha un flan la 2 / panela el bote / turrón la mezcla 1 / un ladrillo
    ladrillo el batch 2 / se hizo ladrillo en la cubeta / cemento el pot 1 / como cemento la mezcla
    concreto el bote 3 / fraguada la mezcla / fraguó en la olla / ha fraguado el bote 1 / fraguado el pot 2 y caliente
    se fraguó sola / reventó de caliente y cuajó / echa humo y está duro el bote 2 / se calentó y se hizo gel la 1
    hirvió y cuajó el pot 3 / caliente y dura la mezcla 2 / quema el bote y está sólido / exotermia, gelificó el lote 1
    se calentó solo y se endureció / gelificó en la pistola también, mezcla 2 / se cuajó dentro de la manguera, pot 1
    se hizo gel en el vaso / a las 11:40 cuajó la 1 / hace cinco minutos se puso dura / ahorita se cuajó el pot 2
    recién se hizo gel el bote 1 / acaba de cuajar / acaba de endurecerse la mezcla 3
    acabo de encontrar el bote 2 hecho piedra / volví de comer y estaba cuajada la 1 / Omar encontró el 2 duro
    Lia dice que la 1 ya es gel / la dejaron y se cuajó, bote 3 / se pasó de hora y se hizo piedra
    valió madre, se cuajó el bote 2 / se chingó el batch, gel / se jodió la mezcla 1, dura / ya tronó la mezcla, es gel
    la cagamos, gel el pot 1 / a la mierda el bote 2, cuajado / adiós mezcla, piedra / f el pot 3, gel
    RIP batch 1, duro / che se hizo gel / tío está como una piedra la 2 / mi hermano eso cuajó / se pasmó la mezcla
    se trancó el bote, duro / le informo que la mezcla 1 gelificó / se observa gelificación en el bote 2
    señor, la mezcla se endureció en el recipiente / se cuajo xq la dejaron al sol / ps ya es gel
    pos se puso dura la mezcla / nomas volvi y ya estaba cuajada / it gelled on us / pot 1's a brick
    it's gone hard pot 2 / it's gel / turned to gel, la mezcla / quillo se ha cuajao el bote / parce se gelificó
    boludo se hizo piedra el pote / mijo ya se cuajó todo
  `,
  empty: `
    se acabó / se acabó el bote / se acabó la mezcla 1 / se acabó todo el pot 2 / se terminó la mezcla
    se terminó lo del bote 1 / se gastó todo / se gastó completa la 2 / ya no hay más en el bote 1 / ya no queda mezcla
    no quedó nada del pot 1 / no quedó ni una gota / no sobró nada de la 2 / no sobró / quedó vacío el bote
    quedó vacía la olla / quedó seco el bote 3 / quedó en nada la mezcla 1 / quedó pelada la cubeta / vacío
    vacío el 1 / vacía la mezcla 2 / bote vacío / olla vacía / cubeta vacía la 3 / ya vacío el pot
    ya está vacía la olla / está vacío el bote de la mezcla 1 / vaciado / vaciada la mezcla 2 / tiré lo que quedaba
    tiré lo que sobró / tiré el resto / tiré la mezcla / tiré la mezcla 1, 200 g / tiré 150 gramos del bote
    tiré el sobrante de la tanda / tiré el batch completo / tiramos la mezcla 2 / tiramos todo el pot
    la tiré, la mezcla 1 / lo tiré, el bote 2, 120 g / se tiró el resto de la 3 / se tiró todo
    se tiraron 90 g de la mezcla / se desechó el sobrante: 140 g / se desechó la mezcla 2
    se descartó el lote 1, 300 gramos / deseché lo que quedaba / deseché 80 g / desechada la mezcla 1
    descarté el resto de la olla / descartada la 2, 250 g / dispuse del sobrante, 110 g
    se dispuso del resto de la mezcla 3 / eliminé el resto de la 1 / boté la mezcla 1 / boté lo que quedaba en la olla
    boté 200 g / botamos el resto / botó Lia lo de la 2 / botado el sobrante / botada la mezcla 3, 180 g
    al bidón el resto / al bidón lo que sobró de la 1, 95 g / al bidón 150 g de mezcla / al tambo la mezcla 2
    al tambo el sobrante / al contenedor la mezcla vieja / al tacho lo que quedaba del pote / a residuos la mezcla 1
    a desechos lo de la 3 / sobraron 100 g / sobraron 85 gramos de la mezcla / sobró medio vaso y lo tiré
    sobró tantito y fue al bidón / sobraron 60 g, tirados / me sobraron 120 gramos, al tambo
    nos sobró un cuarto de kilo, al bidón / sobrante 75 g, tirado / quedaban 90 g y los tiré
    quedaban dos dedos, al bidón / quedaba un fondito y lo tiré / quedaban 300 gramos y ya no servían, tirados
    quedaba medio bote, se cuajó y lo tiré / lo poco que quedaba lo boté / por vieja tiré la mezcla 1, 200 g
    ya pasada de hora, al bidón el resto / pasada de vida, la tiré, 250 g / como ya venció la tiré
    se pasó el tiempo y la boté / por espesa la tiré, 180 gramos / por gelada al tambo la 2 / pot empty
    empty el pot 1 / pot 2 is empty / batch 1 empty / batch done, nothing left / all gone la mezcla 2
    used it all el batch 1 / used up el pot 3 / we used all / finished el pot / finished la mezcla 1, nothing left
    dumped el resto / dumped 100 g del batch 1 / dumpié la mezcla / dumpié lo que quedaba / trash al batch 2, 200 g
    trashié el resto del pot / threw out el leftover / tossed el pot 1 / el leftover al drum, 90 g
    leftovers al waste, batch 2 / se fue todo en la voluta / se fue completa en las tapas, mezcla 1
    la última pieza se llevó todo / la carcasa se acabó el bote / alcanzó exacto, no quedó / dio justo y se acabó
    rindió justo, bote 1 vacío / usamos toda la mezcla / usé toda la 1 / usada toda la mezcla 2 / gastada toda
    gastamos la mezcla entera / consumida por completo la 3 / se consumió toda / agotada / agotamos el bote
    se agotó la mezcla 1 / terminada la mezcla 2 / me la acabé / me acabé la mezcla / me acabé el batch
    nos acabamos la olla / nos la acabamos toda / terminé el bote / terminé la mezcla 1 con la tapa
    acabamos el bote 2 / acabada la mezcla 3 / ya acabamos con el pot 1 / rasqué el bote y quedó vacío
    limpié la olla hasta el fondo, no queda / escurrí lo último / exprimido el pot / raspado el fondo, vacía la 1
    lo último se fue en la reja / con la última brochada se acabó / se derramó el resto, ya no queda
    se me volteó y ya no hay, bote 1 vacío / Omar tiró el resto de la 1 / Lia vació la olla / Beto acabó el bote 2
    apunta vacía la mezcla 1 / anota tirados 130 g de la 2 / registra bote 3 vacío / a las 12:10 se acabó la 1
    hace rato se terminó el bote / ahorita tiré el resto / recién vacié la olla / acabo de vaciar el pot
    acabo de tirar 100 gramos de la mezcla / ya lo vacié / ya la vacié / ya la tiré / ya tiré todo
    le informo que el bote 1 quedó vacío / se desecharon 140 g de la mezcla 2 / señor, ya no queda mezcla
    la tire xq ya se paso, la mezcla 1 / ps ya se acabo / pos ya esta vacio el bote / nomas sobraron 80 g y los tire
    pot's empty / pot 1's done, empty / threw it out, pot 2, 150 g / dumped what was left
    what was left, 90 g, al drum / quillo el bote vacío / parce se acabó la mezcla / boludo tiré el resto
    mijo ya no queda nada en el bote / the pot is empty / pot 2 is empty, ya lo limpio / batch 3 is empty ya
    el pot 1 is empty compa / it is empty, el bote 2 / the batch is empty, nada quedó
  `,
  cover: `
    tapado / tapada la mezcla / tapé la mezcla 1 / tapé la olla / tapé el pot / tapada la olla / tapado el pot 2
    le puse tapa a la mezcla / le puse la tapa a la olla 1 / le puse su tapa al pot / puse tapa al bote de mezcla
    ya tiene tapa la mezcla / ya tiene tapa el pot / ya quedó tapada la 2 / ya quedó cubierto el batch
    ya cubrí la mezcla / ya lo tapé, el pot 1 / ya la tapé, la mezcla 2 / ya está tapado el batch
    ya le eché la tapa al pot / cubrí el pot / cubrí la olla con plástico / cubrí con aluminio la mezcla 1
    cubierta con film la olla / cubierto con un plástico el pot 3 / con papel aluminio tapé el batch
    con una bolsa tapé el pot / con nylon la mezcla 1 / le puse un plástico a la mezcla
    le puse plástico encima al pot 2 / le puse aluminio a la olla / le puse cartón encima al bote de mezcla
    le eché un trapo limpio encima a la olla / una tapa de madera sobre el pot 1 / covered / covered la mezcla 1
    covered el pot / cover on / cover puesto al batch / le puse el cover al pot 2 / plastic wrap sobre el pot
    wrapped el pot / saran wrap a la mezcla 2 / foil on el pot 3 / put a lid on the pot 1 / mezcla 1 tapada
    mezcla 2 cubierta / pot tapado / olla tapada / lote 3 cubierto / batch 1 tapado / el pot va con tapa
    la olla queda tapada / la mezcla se queda tapada mientras bate / tapado y batiendo el pot 1 / se tapó la mezcla
    se tapó el recipiente de mezcla / se cubrió el pot / se puso la tapa al recipiente
    se colocó cubierta a la mezcla 2 / coloqué la cubierta en la olla / coloqué tapa al pot / he cubierto la mezcla
    hemos tapado el pot 2 / para que no agarre humedad tapé la mezcla / por la humedad cubrí el pot
    por el polvo tapé la olla / para que no le entre aire la tapé, mezcla 1 / tapé porque salpicaba el pot 3
    la tapé otra vez / lo volví a tapar el pot / vuelve a estar tapada la 2 / Omar tapó la olla
    Lia cubrió la mezcla 1 / acabo de tapar el pot / recién tapé la olla / ahorita tapé la mezcla
    hace un minuto tapé el pot 2 / a las 9:20 tapada la mezcla / apunta mezcla tapada / anota pot 1 cubierto
  `,
  uncover: `
    destapé la mezcla / destapé la olla / destapé el pot / destapada la mezcla 1 / destapado el pot 2
    destapada la olla / le quité la tapa a la mezcla / le quité la tapa a la olla / le quité la tapa al pot
    quité la tapa de la mezcla 2 / quité el plástico de la mezcla / quité el plástico del pot
    quité el aluminio de la olla / quité la cubierta del pot 1 / quité el cover de la mezcla / saqué la tapa del pot
    saqué el plástico de la olla / retiré la cubierta de la mezcla 3 / sin tapa la mezcla / sin tapa el pot
    sin cubrir la olla / la mezcla está sin tapa / la mezcla está destapada / el pot está sin cubrir
    la olla está abierta / está destapada la olla / quedó destapado el pot 2 / quedó sin tapa la mezcla 1
    descubierta la mezcla / descubierto el pot / descubrí el pot / descubrí la olla / al aire la mezcla 1
    al aire el pot / abierta la mezcla 2 / abierto el pot 1 / abrí la olla / abrí la mezcla para ver
    abrí el pot para checar / uncovered / uncovered la mezcla / uncovered el pot 1 / cover off / cover off la mezcla 2
    took off el cover del pot / took the lid off el pot 1 / lid off the pot / open el pot / el pot is open
    el plastic fuera, batch 1 / foil off el pot 2 / levanté el plástico del pot / levanté la tapa de la olla
    levanté la tapa de la mezcla para mirar / la destapé para ver si espesa / lo destapé para meter la pistola
    lo destapé para servir, pot 2 / la destapé tantito / se destapó la mezcla / se destapó la olla sola
    se cayó la tapa del pot / se voló la tapa de la mezcla / se rompió el plástico, está al aire la 2
    se retiró la tapa del recipiente / he destapado el pot / hemos destapado la mezcla / tapa fuera la mezcla
    tapa fuera el pot 1 / fuera tapa de la olla / fuera plástico del pot / ya destapé el pot
    ya está destapado el batch / ya le quité el plástico a la olla / ya sin tapa el pot / ya la destapé, la mezcla 1
    alguien dejó destapada la mezcla / dejaron sin tapa el pot 2 / encontré destapada la olla / Omar destapó el pot
    Lia destapó la mezcla / acabo de destapar el pot / recién destapé la olla / a las 10 destapé la mezcla
    apunta pot 1 destapado
  `,
  catch: `
    recogí 90 g de la charola / recogí lo escurrido, 120 g / recogí el goteo: 80 gramos / recogidos 150 g
    recogida de goteo 110 g / recogimos 200 g de la bandeja / recogí 60 g debajo de la tapa / junté 100 g de goteo
    junté lo que escurrió de la 7: 85 g / junté del piso de la charola 70 g / juntamos 180 g de escurrido
    juntado: 95 g / de la charola saqué 130 g / de la charola salieron 75 / de la bandeja rescaté 160 g
    de la tina recuperé 220 g / recuperé 140 g / recuperé del escurrido 90 g / recuperados 115 gramos
    recuperamos 250 g del vertido / recuperación 180 g / recuperé lo de la bandeja y son 125 g
    recuperé medio kilo de la colada / recuperado de la 7: 65 g / lo que escurrió fueron 95 g / lo escurrido pesó 140 g
    lo que goteó pesó 70 g / lo goteado, 88 gramos, lo junté / lo que cayó en la bandeja: 150 g
    lo que cayó en la charola son 105 g, recogidos / lo que drenó: 210 g / escurrido 120 g
    escurrido de la voluta 175 g / goteo 85 g / goteo de las tapas 60 gramos / drenado 200 g recuperado
    drenaje de la pieza: 130 g al bote / chorreo recogido 95 g / sobrante del vertido, 240 g, recuperado
    regresé al pot 110 g del goteo / regresé 90 g de la charola a la mezcla / devolví a la olla 130 g de escurrido
    devuelto al pot 85 g / vuelve a la mezcla 1 150 g de bandeja / de regreso al bote 75 g de goteo
    reuso 160 g del escurrido / caught 100 g / caught 85 g in the tray / catch 120 g / caught del drip 90 g
    drip pan: 140 g / drip 75 g recovered / recovered 110 g / tray 95 g / runoff 130 g, catcheado
    catchié 80 g del runoff / collected 150 g del flow coat / pesé el goteo: 95 g / pesé lo de la bandeja, 120 g
    bandeja: 110 g recuperados / charola: 85 g / cubeta de goteo 130 g / de la cubeta de abajo 150 g
    tina de escurrido 210 g / canaleta 70 g recogidos / embudo de escurrido 60 g / caché 75 g
    caché lo que goteaba, 90 g / agarré 100 g del escurrido / agarramos 140 g en la bandeja / capté 120 g de escurrido
    se captaron 130 g / se recogieron 95 g de goteo / se recuperaron 180 g del flujo / se juntaron 110 g en la charola
    Lia recogió 85 g del goteo / Omar juntó 140 g de la charola / acabo de recoger 90 g de la bandeja
    recién junté 75 g / ahorita recuperé 120 g / a las 11:10 recogí 100 g de escurrido / apunta 95 g recuperados
    anota goteo 80 g / ciento veinte gramos de la charola / noventa gramos recogidos del goteo
    un cuarto de kilo recuperado de la bandeja / cuatro onzas del drip tray / tres onzas recogidas del escurrido
  `,
  waste: `
    tiré los filtros usados / tiré los guantes sucios al bidón / tiré las estopas al bidón de residuos
    tiré el solvente sucio / tiré la acetona sucia, un litro / tiré el thinner usado al tambo
    tiré el agua sucia con solvente al bidón / al bidón de residuos 2 litros / al bidón de residuos los filtros
    al bidón los palos y los vasos / al bidón de solvente sucio un litro / al bidón químico 3 kg
    al tambo químico 5 kilos / al tambo la acetona de la pistola / al tambo de residuos 2 galones
    al tambo los botes y brochas viejas / al drum el solvent, 1 gallon / al drum de waste los filters
    al drum 2 liters de acetone / al waste los guantes / waste drum 4 lb / waste 2 kg / waste: 1.5 L de acetona
    waste into the drum 3 lb / dumped solvent en el drum / solvent waste 2 L / dirty acetone al drum
    used thinner al waste drum, medio galón / hazardous waste 3 kg / hazmat al drum / residuos 2 kg
    residuos 1,5 litros / residuo peligroso 3 kg al contenedor / residuo sólido 2 kg / residuo de lavado 1 litro
    residuos de pintura al bidón 4 kg / residuos del día al contenedor, 5 kilos / desechos 3 kg / desecho líquido 2 L
    llevé los residuos al bidón / llevé el solvente sucio al bodegón de residuos
    llevamos los residuos del día al contenedor / saqué los residuos al depósito / entregué 6 kg de residuos
    pesé los residuos: 4 kg / metí los desechos en el tambor / vacié el lavado de la pistola en el bidón, 700 ml
    vacié la cubeta de lavado en el tambo / vacié la tina de enjuague al bidón de solvente / eché el enjuague al bidón
    eché la acetona usada al bidón / eché el alcohol sucio al contenedor / eché los filtros al bidón
  `,
};
