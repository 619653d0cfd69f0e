// How Spanish speakers say it: prep blasting, prep sanding, prep wiping, prep grease-off, surface. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPrep2: Sayings<SaidMeaning> = {
  'prep blasting': `
    granallé la 7 / granallé la tapa / granallada / granallada la tapa / granalladas las tres / granallado el tanque
    granallamos la fila / granallaron la carcasa / ya granallé la voluta / ya está granallada la brida
    recién granallada la 5 / se granalló la 8 / granallando la 6 / chorreé la 7 / chorreada la tapa con arena
    chorreadas las bridas / chorreado el tanque / chorreamos la carcasa / chorro de arena a la 8
    chorro abrasivo a la voluta / chorreado abrasivo en la 5 / chorreado Sa 2.5 la brida / se chorreó la tapa a Sa 3
    a Sa 2 ½ la 6 / arenada la 7 / arené la tapa / arenamos el tanque / areneada la carcasa / areneé la 8
    arenado terminado la voluta / le di arena a la brida / le di con arena a la 5 / le tiré chorro a la 6
    pasada por arena la tapa / salió del arenado la 9 / volvió del arenado la carcasa / sandblast a la 7
    sandblast la tapa / sandblasteada la 8 / sandblasteé la voluta / le di sandblast a la brida
    le metí sandblast a la carcasa / blasteé la 5 / blasteamos las tapas / blasteada la 6 / blast listo la 7
    blasted la tapa / blasted the 8 / blasting listo en la carcasa / bead blast la brida / grit blast la voluta
    shot blast la 5 / a chorro la 7 / a chorro la carcasa / por chorro la tapa / con granalla la 8
    con granalla de acero la voluta / con granate la brida / con óxido de aluminio la 5 / con escoria la 6
    con corindón la tapa / con perla de vidrio la 9 / perlada con vidrio la 7 / microesferas a la tapa
    metal blanco la 7 / casi blanco la tapa / gris blanco la carcasa, chorreada / SP6 la 8, blast / SP5 la voluta
    SP 10 brida / perfil 45 la 7 después del chorro / perfil 2 mils la tapa, blast / rugosidad 50 la 8, granallada
    perfil medido 60 tras granallar la carcasa / del gabinete de arena salió la 7
    en la cabina de granalla la tapa ya quedó / pasó por la granalladora la 8
    salió de la máquina de granalla la voluta / ya salió del chorro la brida / volvieron de granallar las tres
    ya regresó de arenar el tanque / le quité el óxido con chorro a la 7
    le tumbé la pintura vieja con arena a la tapa / le bajé la costra con sandblast a la 8
    limpia de óxido con chorro la voluta / pelada a chorro la brida / decapada con chorro la carcasa
    a metal con arena la 5 / Lia granalló la 7 / Omar le dio chorro a la tapa / Beto arenó el tanque
    acabo de granallar la carcasa / acabo de arenar la voluta / hace rato granallé la brida / a las 8:15 chorreada la 7
    apunta granallada la tapa / anota chorro a la 8 / registra arenada la 5 / 7 granalla / tapa blast / 8 chorro
    carcasa arenada
  `,
  'prep sanding': `
    lijé la 7 / lijé la tapa / lijada / lijada la tapa / lijadas las tres / lijado el eje / lijamos la fila
    lijaron la voluta / ya lijé la brida / ya está lijada la 5 / recién lijada la 8 / se lijó la carcasa / lijando la 6
    lijado terminado la tapa / le pasé lija a la 7 / le pasé la lija a la tapa / le di lija a la 8
    le di con lija 120 a la voluta / le metí lija a la brida / lija 80 a la carcasa / lija 220 la 5 / lija fina la 6
    lija gruesa la tapa / lija de agua la 9 / lija y taco la 7 / lijita a la chica / le pasé la lijadora a la 7
    lijadora orbital a la tapa / con la lijadora la 8 / le di con la pulidora a la voluta / le pasé el disco a la brida
    le pasé la esmeriladora a la carcasa / con esmeril la soldadura de la 5 / esmerilé los cordones de la 6
    esmerilada la tapa / amolada la 9 / con cepillo de alambre la 7 / cepillé con alambre la tapa / carda a la 8
    cardada la voluta / grata a la brida / gratada la carcasa / con scotch brite la 5 / fibra verde a la 6
    fibra a la tapa / estropajo metálico a la 9 / lana de acero a la 7 / le tallé con fibra la tapa / sanded la 7
    sanded the tapa / sandeé la 8 / sandié la carcasa / sanding done la voluta / sandpaper 120 a la brida
    sander a la 5 / orbital sander on la 6 / grinded los welds de la tapa / grinder a la 9 / wire brush a la 7
    scuffed la tapa / scuffié la 8 / scuff a la voluta / matizada la 7 / matice la tapa / maticé la 8
    maté el brillo de la carcasa / quité el brillo con lija a la voluta / abierto el poro con lija, brida
    le abrí poro a la 5 con lija / rayada con lija para que agarre la 6 / despulida la tapa con lija
    quedó áspera la 9, lijada / le quité el óxido con cepillo a la 7 / le quité la pintura vieja con lija a la tapa
    le bajé las rebabas a la 8 con lija / le maté los filos a la voluta / redondeé cantos de la brida con lija
    rebajé la soldadura de la 5 / raspada la carcasa / raspé y cepillé la 6 / limpieza manual con lija la tapa
    limpieza mecánica St 2 la 9 / St 3 la 7 / Lia lijó la 7 / Omar le dio lija a la tapa / Beto lijó la carcasa entera
    acabo de lijar la voluta / acabo de pasarle lija a la brida / hace rato lijé la 5 / a las 9 lijada la 7
    apunta lijada la tapa / anota lija a la 8 / registra lijada la 6 / 7 lija / tapa lijada / 8 lijada 120
    le informo que la pieza 4 fue lijada con grano 120 / se lijó y matizó la superficie de la tapa
    señor, ya quedó lijada la carcasa / la lije xq brillaba, la 8 / ps ya la lije / pos ya tiene lija la 5
    nomas le di una lijadita a la 6 / sanded it, la 7 / got the tapa sanded / sanded down la 8 / all sanded
    quillo lijá la 7 / parce lijé la tapa / boludo le pasé lija a la 8 / mijo ya la lijé, la brida
  `,
  'prep wiping': `
    limpié la 7 con alcohol / limpié la tapa con acetona / limpié con solvente la 8 / limpié con isopropílico la voluta
    limpié con un trapo la brida / limpiada con alcohol la carcasa / limpia con solvente la 5 / limpia a trapo la 6
    limpia la tapa con acetona / limpiadas con alcohol las tres / le pasé alcohol a la 7 / le pasé acetona a la tapa
    le pasé solvente a la 8 / le pasé trapo con alcohol a la voluta / le pasé un trapo con acetona a la brida
    le pasé el paño a la carcasa / le pasé isopropanol a la 5 / le pasé thinner a la 6 / ya le pasé trapo a la tapa
    ya le pasé alcohol a la fila / le di alcohol a la 7 / le di con acetona a la tapa
    le di su trapo con solvente a la 8 / le di una limpiada con alcohol a la voluta / le di una trapeada a la brida
    le di una pasada de IPA a la carcasa / le di dos pasadas de acetona a la 5 / le di un wipe a la 6
    le di wipe a la tapa / wipe la 7 / wipe a la tapa / wiped la 8 / wiped down la voluta / wipié la brida
    wipeé la carcasa / wipeada la 5 / wipeadas las tapas / wipe down con alcohol la 6 / IPA wipe la 7
    acetone wipe la tapa / solvent wiped la 8 / wipe con acetona la voluta / wipe listo brida / ya wipié todo
    trapo y alcohol la 7 / trapo con acetona la tapa / trapo y solvente a la 8 / trapo limpio con alcohol a la voluta
    paño y alcohol la brida / paño con solvente la carcasa / franela con alcohol la 5 / papel con acetona la 6
    toalla con alcohol la tapa / estopa y acetona la 9 / alcohol a la 7 / alcohol a la tapa, trapo blanco
    acetona a la 8 / acetona y trapo la voluta / solvente a la brida / IPA a la carcasa / isopropílico a la 5
    thinner a trapo la 6 / MEK a la tapa / desmanchada con alcohol la 9 / repasada con alcohol la 7
    repasé con acetona la tapa / frotada con alcohol la 8 / froté con trapo la voluta / enjuagada con alcohol la brida
    secada con trapo limpio la carcasa / sin polvo la 5, trapo con alcohol
    le quité el polvo con trapo y alcohol a la 6 / le quité los dedos marcados con acetona a la tapa
    el trapo ya sale limpio de la 7 / salió blanco el trapo en la tapa / el trapo salió limpio a la segunda, la 8
    trapo blanco sin mancha en la voluta / paño sale limpio, brida / limpieza con alcohol la carcasa
    limpieza con acetona hecha la 5 / limpieza a trapo hecha la 6 / se limpió con alcohol la tapa
    se limpió con solvente la 8 / se pasó trapo con acetona a la voluta / he limpiado con alcohol la brida
    hemos pasado acetona a las tres / Lia limpió con alcohol la 7 / Omar le pasó acetona a la tapa
    el chavo wipeó la carcasa / acabo de limpiar con alcohol la 5 / acabo de pasarle trapo a la 6
    hace cinco minutos le pasé alcohol a la 7 / recién le pasé acetona a la tapa / ahorita limpié con solvente la 8
    limpiando con alcohol la voluta / apunta alcohol a la brida / anota wipe la carcasa
    registra limpieza con solvente la 5 / 7 alcohol / tapa acetona / 8 wipe / voluta IPA
    le informo que la pieza 4 se limpió con isopropílico / se realizó limpieza con solvente en la carcasa
    señor, ya pasé alcohol a las tapas / la limpie con alcohol xq tenia dedos, la 8 / ps ya le pase trapo con acetona
    nomas le pase alcohol a la 6 / wiped it, la 7 / wiped with IPA la tapa / all wiped con alcohol
    quillo limpia con alcohol la 7 / parce le pasé alcohol a la tapa / boludo le di trapo con acetona a la 8
    mijo ya le pasé el trapo con alcohol
  `,
  'prep grease-off': `
    desengrasé la 7 / desengrasé la tapa / desengrasada / desengrasada la tapa / desengrasadas las tres
    desengrasado el eje / desengrasamos la fila / desengrasaron la bomba / ya desengrasé la brida
    ya está desengrasada la 5 / se desengrasó la carcasa / desengrasando la voluta / le quité la grasa a la 7
    le quité la grasa a la tapa con desengrasante / le quité el aceite a la 8 / le quité toda la grasa a la voluta
    le saqué la grasa a la brida / le saqué el aceite a la carcasa / le bajé la grasa a la 5 / le tumbé la grasa a la 6
    le limpié la grasa a la tapa / le lavé la grasa a la 9 / sin grasa la 7 / sin grasa la tapa / sin aceite la 8
    ya sin grasa la voluta / ya sin aceite la brida / libre de grasa la carcasa / libre de aceite la 5
    ya no tiene grasa la 6 / ya no trae aceite la tapa / ya no está grasosa la 9 / quedó sin grasa la 7
    quedó libre de aceite la tapa / desengrasante a la 7 / desengrasante a la tapa y agua
    le eché desengrasante a la 8 / le puse desengrasante a la voluta / le di desengrasante a la brida
    con desengrasante la carcasa / lavada con desengrasante la 5 / lavé con jabón desengrasante la 6
    lavada con jabón la tapa, sin grasa / lavada con detergente la 9 / degreased la 7 / degreased the tapa
    degrease a la 8 / degreasé la voluta / le di degreaser a la brida / degreaser done la carcasa / grease off la 5
    grease is off la tapa / no grease la 6 / no more oil en la 7 / oil off la voluta / washed con degreaser la 8
    cleaned the grease off la brida / lavado alcalino a la 7 / lavado con sosa la tapa / lavada en la tina la 8
    tina de desengrase la voluta / a la tina la brida, salió sin grasa / ultrasonido a la carcasa, sin aceite
    vapor a la 5, sin grasa / agua caliente y jabón a la 6 / hidrolavada la tapa / hidrolavada con desengrasante la 9
    prueba del agua bien, desengrasada la 7 / el agua ya no hace gotas en la tapa, sin grasa
    agua pareja en la 8, sin aceite / el trapo ya no sale grasoso, la voluta / ya no mancha de aceite la brida
    estaba llena de aceite la carcasa, ya la lavé / venía con grasa la 5, ya se la quité / Lia desengrasó la 7
    Omar le quitó el aceite a la tapa / el chavo lavó la grasa de la 8 / acabo de desengrasar la brida
    acabo de quitarle la grasa a la carcasa / recién desengrasada la 5 / ahorita desengrasé la 6
    a las 8 desengrasada la tapa / apunta desengrasada la 7 / anota sin grasa la tapa / 7 sin grasa / tapa desengrasada
    8 degreased
  `,
  surface: `
    el metal a 18 / metal en 19 antes de pintar / metal 20 la 7 / el fierro en 17 sin pintar / el fierro limpio a 20
    el acero limpio está en 18 / la lámina está a 19 / lámina 66 F / la chapa en 20 / chapa 18 la 8 / superficie 19
    superficie en 20 la tapa / superficie de la 7: 18 / superficie a 66 F / la superficie anda en 19
    la superficie está fría, 14 / la superficie del tanque a 17 / superficie del acero 18,5 / sup 20
    temperatura de superficie 19 / temperatura del sustrato 18 / temperatura de la chapa 20
    temperatura del acero antes de aplicar 19 / temp superficie 18 la voluta / temp del metal desnudo 17
    ts 19 la brida / surface 66 / surface temp 68 la 7 / surface at 67 / steel temp 65 / steel at 68
    bare steel 66 la tapa / bare metal 19 / the metal is at 64 / el steel anda en 66 / el surface anda en 70
    substrate 67 / le medí la superficie a la 7, 19 / le tomé la temperatura a la lámina: 18
    le tomé superficie a la tapa, 20 / medí el metal antes de pintar: 19 / medí el sustrato 18 / medida superficial 19
    medición de superficie 18 la 8 / termómetro de imán en 18 / el imán marca 19 en la chapa
    pegué el termómetro a la pieza limpia, 20 / termómetro de contacto en el acero 17 / sonda plana en la superficie 19
    láser en el metal limpio 18 / infrarrojo al acero antes de pintar, 19 / IR al metal pelón 20
    con el láser la superficie da 18 / el láser en la lámina 66 / apunté a la chapa y da 19
    antes de pintar la 7 está en 19 / antes de aplicar superficie 20 / antes de la mano el metal en 18
    sin pintar aún, metal 19 la tapa / lista para pintar, metal 20 / recién lijada, 21 el metal
    recién limpia la 8, superficie 19 / la pieza está fría, 12 de superficie / pieza sin pintar a 18
    la pieza desnuda en 19 / la pieza en bruto a 17 / viene fría del camión, 8 el metal / venía del sol, 33 el metal
    está tibia la lámina, 28 / helado el fierro, 6 / el tanque por fuera 17 / la pared del tanque 18
    el fondo 16 y arriba 19, superficie / la parte más fría 15 el metal / la cara de abajo 16
    tres puntos: 18, 19, 19 superficie / el punto más frío 17 / diecinueve el metal / dieciocho la superficie
    veinte grados la chapa / sesenta y ocho el acero / sesenta y seis fahrenheit la superficie de la siete
    se tomó superficie 19 / se midió el sustrato a 18 °C / se registró 19 en la superficie de la pieza 4
    Lia midió el metal, 19 / Omar tomó la superficie: 18 / apunta superficie 19 / anota metal 18
    registra chapa 20 la 7 / a las 8:30 superficie 18 / ahorita el metal 19 / hace rato el fierro estaba en 17
    acabo de medir la chapa, 20 / recién tomé superficie 19 la tapa
    le informo que la superficie de la pieza 4 está a 19 °C / señor, el metal registra 18,5 grados antes de aplicar
    se midió el sustrato en tres puntos: 18, 19, 19 / le tome al metal xq venia frio, 14 / ps el fierro en 18
    pos la chapa 20 / nomas 12 el metal / steel's at 66 / metal's at 68 before coat / surface reads 67 la 7
    bare metal reads 65 / quillo el hierro a 18 / parce el metal está en 19 / boludo la chapa a 17
    mijo el fierro anda en 20
  `,
};
