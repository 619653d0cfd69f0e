// How Spanish speakers say it: dry, cure oven, cure room, out, temp. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCure: Sayings<SaidMeaning> = {
  dry: `
    simón, ya secó / simón, seca / sí, seca, recién la toqué / sí, ya secó, le acabo de pasar el dedo
    ya está seco, acabo de tocarlo / acabo de tocarla y está seca / sí, ya seca al tacto / sí, ya no pega
    la 7 ya no pega al guante / toqué la 8 y sin huella / 7 seca / seca al tacto la 3 / la 5 ya secó / ya oreó la 2
    ya está seca la 9 jefe / ya se dejó tocar la bracket-8 / ya no mancha la 4 / ya no agarra el dedo la 12
    la impeller-3 ya no está pegajosa / dry to touch la 6 / ya esta dry la valve 2 / dryeada la 10 al tacto
    secas las dos placas / secas 1, 2 y 3 / todas las del carro secas al tacto / las cinco bridas ya secaron
    se secó la tapa / quedó seca la carcasa, 10:20 / al tacto seca la 11 / al toque está seca la 6 / tacto ok en la 14
    tacto seco 8 y 9 / prueba del dedo superada en la 1 / le puse el dedo a la 3 y sale limpio
    le puse el guante encima a la 13 y ni marca / le pasé el dedo a la 5, seco seco
    pasé el dorso de la mano por la placa y está seca / toque con guante limpio la 17, no deja nada / tocada la 4, seca
    he tocado la 2 en una esquina y está seca / he probado la 6 con el dedo, no se pega / toco la 15 y está seca
    la toqué tantito y ya no se embarra, la 8 / la 20 ya no embarra / ya no se corre con el dedo la 7
    ya no deja hilo la 5 / ya no hace hebra la tapa / ya no brilla a mojado la 9, seca al dedo
    se fue el solvente de la 3, ya está seca / evaporado ya el disolvente en 6 y 7, secas
    terminó el oreo de la 10, seca / oreada la 1 / oreada la brida y seca / oreó doce minutos la 4 y está seca al tacto
    flasheó la 9 y quedó seca / ya flasheo el housing y no se pega / flash off terminado, la 2 seca
    después del flash la 5 está seca al tacto / pasados los quince minutos la 8 no marca
    a los 13 min la 12 ya estaba seca / hace cinco minutos que secó la 6 / desde las 11:05 está seca la 3
    justo ahora ha secado la 16 / recién secó la 7 / ahorita ya secó la 13 / ahora si ya está seca la grande
    por fin seca la voluta, cuánto ha tardado / al fin se secó la barandilla / menos mal ya secaron las rejillas
    uf ya secó la 18 pensé que nunca / la neta ya está bien seca la 4 / está sequita la 5 / sequita la tapa mi jefe
    sequísima la 2 / quedó sequecita la coupling / bien seca la 11 no se queda nada en el nitrilo
    el guante sale limpio de la 9 / guante limpio al tocar la 14 / sin marca al tacto, pieza 6
    sin huella la 10 y la 11 / sin pegajosidad en la placa 3 / cero tack en la 7 / tack free la 8 / tack-free el bracket
    ya está tack free la cover a las 2:15 / libre de pegajosidad la 22 / ya no tiene tack la 5 / se fue el tack de la 1
    perdió el mordiente la 3, ya al tacto seca / ya no muerde el guante, la 8 / mate y seca la 4
    la superficie de la 12 seca al tacto / por los dos lados seca la 6 / canto y cara secos en la placa 2
    cara de arriba y abajo secas, la 9 / hasta la esquina gorda de la 15 esta seca
    el borde de abajo de la 3 también secó, toda seca ya / las chicas secaron primero, 4 5 y 6
    la primera que pinté ya secó / la del pot 2 ya está seca / lo del lote 1 ya está seco al tacto
    las piezas del batch 3 ya secaron / todo lo de la rack seco / todo seco por aquí / toda la fila seca al dedo
    ya secó todo el carro / ya se puede tocar la 7, seca / ya puedo agarrarla, la 9 está seca
    ya la pude mover sin dejar huella, la 2 / la agarré y ni se inmutó, la 6 seca / la 5 pasa la prueba del dedo
    pieza 4411 seca al tacto a las 9:52 / serie 4408 tacto seco / registro: brida 2 seca al tacto
    anota seca la 7 a las 10:30 / apunta la 8, seca / apuntame seca la carcasa / confirmo secado al tacto en 3 y 4
    confirmada la 1, seca al tacto / el Beto tocó la 12 y dice que está seca / Lucía ha tocado la 5: seca
    el chavo tocó la 10 y ni una marca / está seco el impeller / está seca la pintura de la 6
    la película de la 9 está seca al tacto / el coat de la 3 ya secó / el barniz de la tapa ya está seco
    la capa de la 14 seca / la mano de la 2 ya secó / ta seca la 7 / ta seco ya el bracket, mi hermano
    ya se secó la pieza esa che / la brida ya está, la tocás y no deja nada / 👌 seca la 8 / 👆 3 seca / seca 4 ✅
    touch dry 5 y 6 / siete seca / ocho y nueve secas al tacto / la diecisiete ya no se pega
  `,
  'cure oven': `
    la 7 al horno / metí la 8 al horno a 90 / 7 y 8 dentro del horno / ya está en el oven la bracket-8
    entraron al horno la 3 y la 4, 95 grados / entra al horno la carcasa a las 10:40 / horno 1: placas 1 a 6
    horno 2 con la 9 y la 10 / en el horno la 5 / en el oven la 12 a 200 F / al oven la valve 2
    pa dentro la 6, horno a 100 / adentro del horno las tres tapas / le di horno a la 11
    le estoy dando horno al rodete, 90 / echadas al horno la 1 y la 2 / las eché al horno, 13 y 14
    he metido la voluta en el horno hace cinco minutos / hemos metido el carro entero, 92 grados / metido el carro 2
    metida la 15 / metimos las bridas al horno chico / meto ahora la 3 y la 5 / metiendo la barandilla al horno
    cargado el horno con 4, 5, 6 / cargue el oven, seis brackets, 195 / carga dentro: 7 a 12
    la carga 1 ya entró al horno / cargando la 16 en el horno grande / llené el horno con las chicas / horneando la 8
    horneando 3 y 9 a 90 desde las 11 / hornéandose el housing / a hornear la 4, ya está dentro y la puerta cerrada
    ya se está cociendo la 2 / cociendo la impeller-3 a 194 / a cocer la tapa, entró ahorita
    ya la tengo cocinándose a la 6 / ya está en el horno la pieza del cliente nuevo / ya está adentro el codo
    ya entró la 10 / ya entraron todas las del batch 2 / ya metí las placas
    ya le cerré la puerta al horno con la 5 y 7 adentro / puerta cerrada con la 9 dentro, consigna 90
    cerrado el horno, dentro 1 2 y 3, 9:55 / puse a curar la 8 en el horno / puse la 11 en el oven at 190
    puesta la válvula en el horno a noventa / curando en horno 3 y 4 / curado en horno empezado, pieza 7
    curando la 20 a 90 grados / curing in oven la 6 / curing la 13 en oven 2 / cure en el horno arrancado pa la 2
    inició el horneado de la 5 / inicio de curado en horno, lote 2, 90 °C / empieza el horno para las del bote 1
    empezó su hora de horno la 17 / arranca la cocción de 4 y 5 / le toca horno y ya está dentro la 14
    colgada la 3 en el horno / colgadas las chicas dentro del horno a 92 / colgué los ganchos en el oven
    colocada la 12 en la parrilla del horno / acomodé las cuatro bridas en el rack del oven
    subida al estante de arriba del horno la 9 / puse en la bandeja de en medio la 6 y la 8, horno a 95
    rack 1 al horno / el carrito ya rodó pa dentro del horno / empujé el carro al horno con las 6 placas
    la grande entró sola, horno 100 / la grandota ya está en el oven, costó pero entró
    el intercambiador al horno entre tres jaja / entró el último, la 30 / enhornada la 4 / enhornadas 7 8 9
    al fuego la 2 🔥 / 🔥 7 y 8 a 90 / 🔥 adentro la 3 / horno 90 la 5 / horno 195F la 12 / horno: 3, 4, 6
    9 horno 10:15 / 8 oven / las tres secas ya al horno / la seca al horno, era la 6
    después del flash, directo al horno la 10 / oreada y al horno la 1 / ya orearon y ya están en el oven, 15 y 16
    por fin al horno la carcasa / ok ya por fin metí la 9 / bueno pues la tapa ya está en el horno, me tomo un café
    menos mal cupieron todas en el horno, 1 a 8 / órale ya está la 7 en el oven, set a 194
    listo jefe, la 5 en el horno / listo el pollo, digo la 4 al horno jaja
    la neta apenas cupo la bomba pero ya está en el horno / mi hermano la 6 ya ta en el horno
    ta en el horno el bracket / che la brida ya la mandé al horno / tío ya están dentro la 2 y la 3
    a las nueve y media metí la 11 en el horno / 9:40 al horno la válvula 2 / hace diez minutos entró la 8
    desde las dos está en el horno la 13 / a las 14:10 horno, piezas 21 y 22 / ahorita acabo de meter la 17 al oven
    acabo de poner la 18 en el horno a 93 / justo metida la 19 / mandé la 23 al horno / mandadas al horno las rejillas
    se fue al horno la 24 / se fueron al oven las cuatro plates / pasó al horno la 25 / pasé la 3 del rack al horno
    pase a horno de la serie 4411 / serie 4408 en horno a noventa grados / la siete y la ocho al horno a noventa
    el rodete tres en el horno a ciento noventa y cinco fahrenheit / el lote 1 entero ya está en el horno
    lo del pot 3 al horno / todas las del bote dos en el oven / anota 7 al horno / apunta: horno 1, pieza 9, 90 grados
    registra entrada a horno de la 6 / apúntame en el horno la 4 y la 10 / Beto metió la 2 al oven
    Lucía ya ha metido las dos tapas en el horno / el nuevo metió la 14 conmigo, oven a 190
    le metí calor a la 5, horno en 90 / con calor ya la 26, estufa de curado / en la estufa la 3
    a la estufa la placa testigo / en estufa a 90 °C piezas 1-4
  `,
  'cure room': `
    la 7 a temperatura ambiente / se queda curando al aire la 8 / la bracket-8 al cure room / cura al ambiente la 3
    puesta a curar en frío la 5 / curando a temperatura de taller la 12 / curando sin horno la 9, desde las 11
    sin horno la carcasa, curando en el rack / room cure la valve 2 / room temp cure la impeller-3
    cure at room temp la cover / 24 horas al ambiente empiezan pa la 10 / empieza sus 24 h la 11
    dejé la 13 curando en el cuarto limpio / la dejé en el estante a curar solita, la 14
    en el cuarto limpio curando las tres bridas / en la sala limpia a curar 1, 2 y 3 / al cuarto de curado la 15
    al cuarto la 16 y la 17 / metí al cuarto de cure los brackets / llevé las tapas a la sala de curado
    pasé la 18 al room a curar / puse la 19 en el cuarto, cura a temperatura ambiente / colgada a curar al aire la 20
    colgué las chicas a que curen en ambiente / en reposo de curado la 21 a 22 grados
    reposando a curar hasta mañana la voluta / hasta mañana ahí curando la grande
    toda la noche curando en el taller la 22 / la de goma que aguanta poco calor, curando al ambiente, pieza 23
    la de plástico cura al ambiente, empezada a las 10 / air cure la 24 / air-curing los ganchos
    curado al aire iniciado, placa 6 / curado ambiente, brida 3 / curado en ambiente lote 2
    todo el batch 3 curando a temperatura ambiente / las del bote 1 a curar en sala
    lo del pot 2 se está curando en el cuarto / en el rack 4 curando a 70 F del shop
    72 F en el cuarto y ahí curando la 25 / ya la dejé curando ahí en la esquina limpia, la 26
    tapada del polvo y curando en la nave, la 27 / bajo la carpa limpia curando la barandilla
    el tanque no cabe en horno y ya cura al ambiente / por grande, el tanque cura en sala desde las 13:00
    ahorita empezó a curar en room la 28 / acabo de dejar la 29 a curar en ambiente
    recién puesta en el cuarto de cura la 30 / desde las tres en curado ambiente la 31 / ok la reja al cuarto, 24 horas
    la neta mejor al aire, ya está curando la 4 / che la brida quedó curando en el cuarto
    mi hermano el bracket ta curando a temperatura ambiente / serie 4411 curado ambiental / apunta curado en sala la 2
    Toño dejó curando en el cuarto la 6 / 🕐 24h la 32, ambiente / cura frío 8
  `,
  out: `
    la 7 fuera del horno / ya saqué la 8 / salió del oven la bracket-8 / sacadas del horno la 3 y la 4
    fuera las placas 1 a 6, 11:50 / saqué el carro del horno / ya salieron todas / ya está afuera la carcasa, enfriando
    enfriándose la 9, recién salida / out of the oven la valve 2 / out la 5 / sacada la 12
    sacando la 6 y la 10 ahora mismo / he sacado las tapas del horno / hemos vaciado el horno 2
    vaciado el horno, salieron 7 a 12 / descargado el oven / descargué el horno: 4, 5, 6 / desenhornadas las bridas
    deshornada la 13 / abrí el horno y saqué el rodete / abierto el horno y fuera la 14 / rodó pa fuera el carro 2
    ya jalé el rack del oven con las cuatro / tiré del carro, piezas 20 a 24 fuera / bajé la 3 de la parrilla del horno
    descolgada la 15 del horno / la voluta ya salió, pesa como muerto / la grande salió a las diez y cuarto
    a las 12:30 salió la 2 / hace cinco minutos que saqué la 1 / ahorita acabo de sacar la 11 del oven
    acabo de sacar la 16 / justo salió la 17 / por fin salió la 18, está bien bonita / listo jefe, afuera la 7
    ok ya la tengo fuera la 19, quema / cuidado que quema, la 5 recién sacada / calientita la 8 recién salida
    salió humeando no, pero bien caliente la 6 / menos mal me acordé, la 9 ya está fuera
    uf la barandilla fuera, casi me quemo / la neta salieron chulas la 3 y la 5 / órale ya salieron los brackets
    mi hermano ya saqué el bracket ese / che saqué la brida del horno / tío ya está la tapa fuera
    se acabó el horno para la 10, está en la mesa / terminó su horneado la 4 y está fuera
    cumplió su hora la 12, sacada / una hora y cinco y la saqué, la 2 / después de hora y media salió la bomba
    la carga 1 ya salió / todo el lote 2 salió del horno / las del bote 1 ya están fuera / lo del pot 3 afuera
    retiradas del horno 21 y 22 / retiro la 23 del horno / retirada la testigo y la 24
    extraída del horno la pieza 4411 / pasé la 25 del horno al rack de enfriado
    puse la 26 en la mesa a enfriar, ya salió / en el enfriadero la 3 / enfriando en el rack 1 2 y 3
    en la mesa fría la 7, salida a las dos / la saqué del cuarto de curado, la 14 / salió del cure room la 5
    saqué del cuarto la 8, después de 26 horas / recogida de la sala de curado la placa 6
    ya bajé del estante de curado las chicas / traje del cuarto limpio la tapa, ya curada
    24 horas cumplidas, la 9 fuera del cuarto / salida de horno: 3, 4 / fin de horno pieza 11 / horno vacío / 7 fuera
    afuera 8 y 9 / 🔥➡️ fuera la 6 / ✅ sacada la 2 del oven / anota salida de la 13 a las 15:20 / apunta que salió la 15
    Beto sacó la 10 / Lucía ya ha sacado las rejillas del horno / el chavo descargó el oven conmigo, todo fuera
    la siete y la ocho ya fuera del horno / apagado el horno y la 30 fuera / pa fuera la impeller-3
  `,
  temp: `
    va en 78 por ahora / 81 de momento, sigue subiendo / por lo pronto trae 77 / 83 y subiendo / va por los 79
    trae 180 apenas / la 8 marca 91 en el metal / 7 a 88 / metal de la 5 a noventa grados / la carcasa anda en 160 F
    la pieza 3 ya está a 90 / el termopar de la 2 dice 85 / termómetro en la 9, 92 / lectura en pieza 89 ºC la 4
    la 6 va por 70 y subiendo / la voluta va lenta, 64 todavia / ya llego a 194 el impeller
    ya alcanzó los noventa la 12 / ya dio 195 la bracket-8 / le tome la temp a la 7 y trae 188
    le medí la temperatura al metal: 90,5 en la 3 / he medido la 10 dentro del horno y está a 87 / midiendo la 1: 93
    la pistola infrarroja da 86 en la brida / con el infrarrojo me salen 91 en la tapa
    el laser me marca 190 en el housing / pyrometer dice 192 en la valve 2 / la 11 está en 78 grados
    housing at 185 ya casi / el part 4 trae 201 F / la grande apenas va en 150 / la chica ya pasó de 95
    la numero 5 subió a 82 / la 13 trepó hasta 189 / anda en 175 la 6 / anda rondando los 90 la placa 2
    ronda los 88 la 14 / la 20 clavada en 90 / 90 clavados en la 8 / noventa justos en la pieza 1
    la 2 justo a 194 a las 10:35 / 10:50 la 3 en 91 / hace cinco minutos la 7 marcaba 84
    a las once y diez el rodete tenia 90 / sonda de la 5, 76 / la sonda pegada al impeller marca 83
    contacto en la 9: 90,2 / el termopar pegado a la 15 lee 187 / TC en la plate 3 lee 193
    thermocouple del bracket 191 / lee 88 la 4 / marcando 90 la válvula / marca ochenta y siete el metal de la seis
    metal a 92, carcasa 2 / metal 7 90 / temperatura de metal 85 pieza 10 / temp de pieza 194 F, la 12
    temp metal la 3 90 / part temp 186 en la 6 / la temp del hierro va en 140 / el hierro de la bomba está en 71
    el acero ya está a noventa, brida 2 / el fundido gordo sigue por 60 / la fundición marca sesenta y cinco nada más
    la de inox ya va en 93 / el aluminio calienta rápido, 95 la tapa / va calentando la 8, 55 ahora
    va subiendo la 4: 68 / sube la 9, ya 81 / subiendo 172 la 10 / de 60 pasó a 77 la carcasa
    en 15 min llegó a 90 la placa chica / al fin noventa! la 7 / por fin trae 194 esta cosa pesada, la 3
    uf ya era hora, la 5 en 90 / menos mal, la voluta ya en 91 / jefe la 8 ya está en temperatura, 92
    oiga el housing ya agarró 190 / compa la 6 ya agarró temperatura 195
    la neta está bien gorda esta pieza, 120 apenas la 2 / wey la 4 apenas trae 130 / mira, el rodete a 89, casi
    buenas, pieza 14 a 90 grados / chequé la 3 y va en 187 / chequeada la 12, 90 / checando el impeller-3: 178
    checked la 5, 196 / abrí tantito y la 7 trae 183 / metí la sonda y la 1 está a 86
    asomé el infrarrojo por la mirilla, 94 en la 16 / apunté con el laser a la cara gruesa de la 2 y da 80
    en la parte mas gruesa de la carcasa 75 / en el cubo del rodete 82, que es lo más gordo / punto mas frio de la 8, 90
    el lado de la puerta de la 6 marca 85 / la esquina fria del plato trae 181 / por abajo la 9 trae 188
    la de atrás en 91, la de adelante 93 / la 3 y la 4 a noventa las dos / las tres tapas marcan 90
    todas las chicas en 95 ya / 7 en 90, 8 en 87 / 11: 190, 12: 184 / la 5 y la 6 con 194 / 5 92C / 6 188F / la 10 193f
    housing 90 c / brida 3, 89 grados centígrados / valvula 2 ciento noventa fahrenheit / ciento ochenta y cinco la ocho
    noventa y uno la pieza siete / ochenta y tantos la 4, 86 pa ser exactos / son 90 en el metal de la 11
    son ciento noventa y cuatro en la tapa / me da 88 la pieza 2 / me salió 91 en la 13 / me marca 84 la barandilla
    me lee 179 el sensor de la 3 / nos da noventa la 9 / tiene 90 la 5 / tiene ya sus 92 la tapa
    tiene 165 el bracket grande / tenemos 91 en el intercambiador / tengo la 8 a 87 / la tengo en 90 a la 4
    lleva 80 la placa / llegando a 90 la 6, 89 ahora / llegó la 1, 90 / llegó a temperatura la carcasa, 91 medidos
    pasó los 194 la 7 / rebasó los 90 el codo, 93 / rebaso 200 la chiquita / está quieta en 91 la 3
    se estabilizó en 90 la 12 / se quedó en 85 la bomba, ahí sigue / se mantiene la 5 a 92 / aguanta en 195 la 8
    bajó a 86 la 2 cuando abrieron la puerta / se nos pasó la 4, 104 en el metal / está que arde la 9, 98
    caliente la 6: 94 / tibia apenas la grande, 48 / templada la 10, 52 grados / el coso de la bomba ya está en 90 che
    la pieza está a 88 tío / el tarugo ese de hierro va por 58 / mi hermano la 7 ta en 90 / ta en 187 el impeller
    🌡️ 90 la 8 / 🔥 la 3 en 195 / la 5 🌡️ 191 / 9 noventa / registro metal 90 pieza 4411 a las 13:02
    anota 91 grados en la 2 / apunta 188 pal housing / apúntame la 6 con 90 medidos / lectura: 3 a 86
    primera lectura de la 14: 61 / segunda medida en la carcasa, 79 / última lectura del rotor, 92
    dato de la 8, 190 en superficie, horno 1 / dentro del horno la 7 está a 85 / la que está en el oven trae 182
    la pieza del fondo del horno a 90 / la testigo marca 93 / el cupón a 96 y la pieza a 90
    superficie de la 5 en el horno, 89 / en el horno la brida ya va por 74 / horno a 100 pero la 2 va por 72
    el oven dice 200 y la part trae 176 / el aire está a 95 pero el metal de la 6 a 81
  `,
};
