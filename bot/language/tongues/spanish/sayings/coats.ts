// How Spanish speakers say it: coat, touch-up, wet, part. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCoats: Sayings<SaidMeaning> = {
  coat: `
    le he dado a la 7 con brocha / pintada la 8 del bote 1 / 7 a 12 a rodillo, lote 1 / acabo de bañar el rodete 3
    ya le di coat a la bracket-8 / pinte la 4 y la 5 con el batch 2 / coateado el housing
    mojé la valvula 2 en el pot 1 / he sumergido las placas 3 y 4 una sola vez y despacio
    las del 20 al 26 ya tienen mano / capa dada a la barandilla / ya quedo pintada la tapa
    carcasa recubierta a brocha, 9:40 / les eché la pintura a las dos primeras
    rociados los soportes 1, 2 y 3 con el lote 4 / sprayed la 9 con HVLP
    vertí sobre la placa 6 y recogí lo que escurrió / flow coat a la 11 del segundo pot
    a la 5 le pasé rodillo hace diez minutos / brochazo a la 3 / ya le metimos mano a la impeller-3 compa
    le acabo de pegar su coat al can cover 2 / terminada de pintar la 14 menos mal que llegaba el bote justo
    listo la 6 pintada con brochita / aplicado el lote 3 sobre las valvulas 1 a 4 / aplicación hecha en la 10, pistola
    estoy dándole a la 2 ahora mismo / ando pintando la 17 con el bote 2 / la 13 va con rodillo del pot 3
    me he ventilado la 1, la 2 y la 3 de una tacada / fueron tres piezas con ese batch: 4, 6 y 9 / ya embarré la 15
    untada la brida 2 con brocha suave / barnizada la placa chica / barnicé las dos tapas del cliente nuevo
    dada la primera del día, la 7, a pincel / a pincel la 8 y la 9
    hice el dip de la 12 muy lento para no hacer burbujas / dipeada la 5 / inmersión de la 3, lote 2
    ya salió del baño la 4, escurriendo / metida y sacada del pote la palanca 1 / la 21 ya tiene su película
    película aplicada en intercambiador 2 / se le dio recubrimiento a la bomba chica / recubierta 18
    recubrí con el bote B las piezas 30, 31 y 34 / quedaron pintadas las cinco de la mesa, batch 1
    le tiré una mano a la 6 / mano de rodillo a todo el tanque por fuera / le di una manito a la válvula
    ya le di una pasada completa al elbow / acabo con la 19, a soplete / sopleteada la reja / pistoleada la 7
    le aventé coat al housing con la gun / con la pistola la 2 y la 5, pot 6 / pinté el impeller a las 10:15
    diez y veinte pintada la 3 / hace un rato pinté la 16 con lo del segundo / pintadita la 4 jefe
    ya estuvo la 9, le puse con brocha, la neta quedó chula / quedó de lujo la 1, rodillo espuma
    oye ya pinte las placas 1 2 3 y 4 con el lote 7 / bueno pues la carcasa grande ya está dada
    por fin! pintada la tubería 5 / uf la 8 lista de brocha, qué calor
    jefa, del bote dos salieron la 10, la 11 y la 12 / con el bote 1 di la 5 / del lote 2: soportes 4 al 9
    lote 5 a la 22 / pot 4 en la 6 y 7 con roller / batch 3 on la valve 2, brush / brush a la 13
    roller pa la 14 y la 15 del batch 2 / le puse roller a todas las plates / ya tienen coat todas las de la rack 2
    la fila de arriba coateada completita / todo el carro 1 pintado a pistola / pintada la cara A de la placa 3
    por dentro y por fuera la 8, pincel / lado interior de la voluta pintado, bote 3
    le chorreé producto encima a la 2 y dejé que escurra / colada por encima la 5
    vertido sobre la 9, lo que goteó lo filtré otra vez / bañada por colada la rejilla
    baño de la 17 a las once y cuarto / regué el producto sobre la tapa 4 / capa en la 25
    capa fina en la 26 con rodillo de pelo corto / capita a la manija / le clavé una mano fina a la brida che
    pintamos la 11 entre Beto y yo / Lucía le dio a la 12 con brocha / el chavo nuevo pintó la 3 del lote 1
    el aprendiz ha dado la 6 a rodillo y ha quedado bien / hemos aplicado a las 4 válvulas con la pistola
    les dimos a las seis bridas con el pot 2 / se pintaron de la 40 a la 48 / se aplicó por pulverización a la 7
    pulverizada la 33 / pulverizadas 1 y 2, bote 5 / aplicado a brocha en 7, 8 y 9
    aplicado con rodillo sobre la placa del intercambiador / aplicado por inmersión: muelle 1, muelle 2
    cubierta la 5 con su mano de producto / cubrí la 18 enterita / forrada la 3 de barniz jaja / di de mano a la 27
    dando mano a la 28 / estamos con la barandilla, rodillo, del lote 9 / estoy mojando las chicas en el bote 2
    ahorita le estoy dando spray al bracket-2 / ahorita terminé de dipear las palancas
    ahora mismito pinté la 9 mi hermano / ya le pasé la brocha al rotor / ya le cayo pintura a la 31
    ya va pintada la tapa de la bomba / ya agarró coat la 6 / ya esta el 12 con producto del batch 4
    ya están mojadas la 1 y la 4 / mojada la 10 / las dos de inox pintadas con brocha, bote 1
    la pieza 4411 pintada a pistola a las 12:05 / serie 4411 lote 3 brocha
    la grande a rodillo y las dos chiquitas a pincel / la 7 y la 8 brocha, la 9 por inmersión
    empecé por la 2 y acabé en la 6, todas del pot 1 / siete ocho y nueve pintadas con el bote uno
    pieza cinco recubierta punto lote dos / la numero catorce ya le di con el rodillo
    impeller 3 dado, me sobró medio dedo en el bote / con lo último del batch pinté la 20
    con lo que quedaba le di a la coupling / apuré el bote 3 en la 16 / me alcanzo el pot para la 5 y la 6
    el segundo bote se fue en la voluta / el lote 6 se ha ido entero en las rejillas
    toda la B de la lista pintada: 3, 5, 8, 13 / las pares del 2 al 10 pintadas / las nones ya tienen su mano
    dos bridas y un codo con brocha 👍 / 🖌️ la 8 / 🎨 pintadas 3 y 4 / ya 🖌️ 15 del pot 2 / dado el producto en la 23
    producto puesto en el cuerpo de válvula / puesto el coat en la gate valve / puse coating en el manifold con brush
    coating a la 7 listo, pot 1 / painted la 5 / pinteada la cover plate del batch 1
    tirado el coat al shaft con la pistola chica / le pegué dos cruces con la pistola a la 6
    cruzado a pistola el cajon 2 / una pasada cruzada a la 30, HVLP / metí la 9 al bote, la saqué lento
    zambullida la arandela grande en el lote 2 / la zambullí en el pote 3 la pieza 4 / chapuzón a la 2 jeje
    entró al dip la 19 / hundí los ganchos en el bote 1 / ganchos 1 al 6 bañados / palomeada la 8 pintada con rodillo
    te apunto la 4: brocha, bote 2 / apunta: pintada la 17 lote 3 / anota que la carcasa 2 ya lleva producto
    registra la 35, pistola, lote 8 / para que conste, 5 y 6 recubiertas a las nueve y media
    parte: brida 3, aplicación a brocha, lote 11 / finalizada la aplicación en el tanque 2
    completada la mano sobre las placas 1-8 / estirada la pintura en la 3 con brocha ancha
    extendí el producto en la tapa con rodillo / repartida la mano por toda la paleta del rodete
    peinada la 6 con la brocha, bote 1 / alisé la mano en la 12, del pot 2 / vestida la 22 ya
    le tiramos la capa al radiador con soplete / fumigada la reja con la pistola del lote 2 jaja
    llené de producto el interior de la 4 y lo vacié / pasé el producto por dentro del tubo 2, vertido
    rolleada la plancha / rodilleé las dos puertas / brochada la 11 / brocheé las esquinas y luego toda la 3
    a mano la 2, brocha de cerda / capa a la caja de engranes con el batch que mezclo Toño
    la bomba de don Chuy ya quedó pintada / pintada la última, 50, gracias a Dios
    y con esta la 36, a brocha, me voy a comer / hecho: 3 valvulas a pistola, lote 1 / 7 brocha bote 1 / 8 rodillo
    9-12 spray pot 2 / dip 13 y 14 / flow 6 lote 2
  `,
  'touch-up': `
    repasada la 7 en mojado / retoque a la 8 todavía mojada / retoqué la 3 en el filo, aún fresca
    touch up a la bracket-8 / touch-up en wet a la 5 / toqué con la brocha la esquina pelona de la 12
    le di otro toque a la 9 donde quedó flaca / le eché un toquecito a la carcasa, sigue mojada
    toquecito a la 4 en fresco / brochazo de repaso a la 6, húmeda / le pasé otra vez la brocha al borde de la 10
    tapé el huequito de la valve 2 antes de que secara / tapado el hueco de la 11, mojado sobre mojado
    mojado con mojado le cubrí la calva a la 13 / wet on wet al spot que faltaba en la impeller-3
    fresco sobre fresco la placa 2 / rellené la zona fina de la 14 con la brocha
    cubrí la parte delgada de la tapa en húmedo / faltaba un cachito en la 15, ya se lo di fresquito
    se me había pasado una esquina de la 16, ya repintada en mojado / me salté un trozo en la 17 y lo repasé al momento
    vi un holiday en la 18 y lo tapé wet / le pegué otro tirito de pistola a la 19 en lo flaco
    otra pasadita de gun al canto de la 20, mojado / repaso de cantos en la 1, aún brillaba
    repasé los cantos del rodete / remate en la brida 3 con lo fresco / rematé la soldadura de la 21, seguía húmeda
    retocadas la 2 y la 5 en húmedo, 9:48 / retoque hecho al codo a los dos minutos de pintarlo
    al minuto le retoqué el filo a la 22 / enseguida le di a la parte floja de la 23
    reforcé la esquina de la 24 con producto, mojada / refuerzo al borde fino de la barandilla, fresca
    corregí un escurrido de la 25 con la brocha mojada / peiné la gota de la 26 antes de que oreara
    quité la lágrima a la 27 y emparejé en fresco / emparejé la 28 donde quedó pobre
    le puse tantito más al lado pelón de la 29 / le di una pinceladita a la 30 donde se veía el metal
    pincelito al agujero de la 31 / puntito de brocha en la 32 con lo del bote 1 / con el mismo pot retoqué la 33
    ups quedó un hueco en la cover, ya lo retoqué fresca / menos mal lo vi, la 34 ya retocada en mojado
    che le di un retoquecito a la brida fresca / mi hermano ya le toqué la esquina al bracket, mojaíto
    apunta retoque 35 / 🖌️ repaso la 36 mojada / Lucía retocó la voluta en fresco
  `,
  wet: `
    el peine da 60 / peine 55 en la 7 / la 8 mojada a 60 micras / húmedo 50 en la 3 / wet 2.5 mils la bracket-8
    WFT 60 en la 5 / wft la 12 a 58 / película húmeda de 65 en la placa 2 / espesor en húmedo 62, carcasa
    le puse el peine a la 9 y da 70 / le pasé el peine a la tapa: 55 micras / metí el peine en la 4, 60
    clavé el peine en la 6, marca 75 / el peine marca entre 50 y 60 en la valvula 2
    el peine moja el diente de 60, falla el 65, la 10 / último diente mojado 50, pieza 11 / diente de 70 mojado en la 1
    se mojó el diente de 3 mils en la 13 / el comb da 2 mils en la impeller-3 / comb reading 2.5 en la 7
    con el comb me salen 3 mil, housing / comb en la 14, 60 micrones / la 15 trae 55 wet
    trae dos mils y medio mojada la cover / anda en 60 mojada la 2 / mojado a 58 el codo / en mojado 64 la 16
    en fresco 60, brida 3 / recién pintada la 5 y el peine da 52 / acabo de peinar la 8, sesenta
    peinada la 6 con galga, 57 / galga de húmedo 66 en la 17 / la galga da cincuenta y cinco, pieza siete
    calibre de peine: 48 la 18 / peinecito 61 en la 4 / peineta 60 la rejilla / la peineta me da 70 en la barandilla
    medido con peine, 3 puntos: 55 60 60, la 9 / tres lecturas de peine en la placa, 50, 55, 55
    húmeda 60 arriba y 55 abajo, la 3 / por el borde 45 de peine, en el centro 60, pieza 2 / 60 micras húmedas en la 10
    sesenta micras en húmedo la ocho / ochenta mojada la 12, cargadita / cortita la 1, 40 el peine
    justo lo pedido, 60 el peine en la tapa / va bien, 58 mojado en la 20 / perfecto la 21, wet 60
    ok wet film 2.4 en la 22 / wet film la 5: 63 / wet film thickness 2 mils en el bracket grande
    film mojado 55, pieza 6 / lectura húmeda de la 7, 59, a las 9:41 / 9:45 peine 60 la 8
    hace un minuto el peine daba 62 en la 13 / ahorita le puse el comb a la 14 y marca 2 / todavía mojada la 15, da 57
    antes de que oree, la 16 en 60 de peine / nada más pintar la 3 medí 65 húmedo / al acabar la 4 el peine dijo 60
    uf menos mal, 60 en la grande con peine / la neta bien parejita la 9, 60 60 60 de peine
    che el peine dio 55 en la brida / mi hermano 2 mils y medio mojado en la 11
    jefa la carcasa a 68 con la galga de dientes / anota húmedo 54 en la 2 / apunta peine 60 pieza 17
    registra WFT 71 en la 19 / serie 4411 WFT 60 / 📏 60 mojado la 6 / la placa del bote 2 a 56 de peine
    las tres del lote 1 a 60 mojadas / 7 y 8 peine 60, 9 peine 65 / peine la 5 60 / la 10 60 wet / húm 55 la 3
    el peinecillo de acero sale en 65 para el rodete / tengo 50 de húmedo en la 18 / me da 75 de húmedo en la tapa 4
    quedó a 60 húmedo el soporte 2 / quedaron en 58 de peine las dos placas / el Toño peinó la 1 y le dio 62
  `,
  part: `
    tengo cuatro tapas para pintar, tapa-1 a tapa-4 / tengo dos bridas que pintar, brida-21 y brida-22, de acero
    tenemos cinco placas para recubrir, placa-1 a placa-5 / estas son las que hay que pintar: gancho-1, gancho-2
    mis piezas son brazo-1 y brazo-2 / hay tres camisas de acero por hacer, camisa-1 camisa-2 y camisa-3
    llego tapa-4 es del trabajo 94 serial T118 / me han traido la carcasa-4 nº de serie 5077 trabajo 95 inox
    entró un rodete nuevo, serie R220, trabajo 31 / pieza nueva: brida-2, serial B771, job 40, acero al carbono
    impeller-5 serial 8812 job 63 stainless / acaba de entrar la valvula-3, inox 316, 0.4 m2
    registra placa-7 trabajo 88 aluminio 6 mm / da de alta soporte-9 serie 1190 trabajo 52
    alta de pieza: tubo-1, hierro fundido, 12 mm de pared / apunta pieza nueva, carcasa-2, serial C45, orden 70
    nos dejaron la bomba-6 job 77 serial 9034 / recibimos dos bridas del trabajo 41, series 101 y 102
    llegaron los impellers 4 y 5, job 19, bronce / han llegado tres tapas, trabajo 60, inox
    trajeron el housing-3 cast iron half inch wall / cayó el bracket-8, job 33, serial BR08
    part nueva: manifold-2, aluminum, job 15 / nueva parte en el shop, cover-6, sn 4471
    booked in la placa-2, serial 3008, trabajo 27 / metan al sistema la flange-4, job 99, acero
    mete la pieza rejilla-5, trabajo 21, 1,2 m2 / añade barandilla-3, acero galvanizado, 2.5 m2, trabajo 17
    agrega tanque-1, job 46, carbon steel, 8 mm / agregá la tapa-9, serie 606, trabajo 12
    anotá una pieza nueva: eje-2, acero, serie E19 / anota que entro el difusor-2 serial D340 job 38
    ya llegó el valve body 7, serial 7719, job 54 / ya esta aqui la carcasa-8 trabajo 66 serie 2210 fundicion
    ya tenemos en taller la brida-6, serie F6, 0,3 m2 / ya entró la housing-1 del job 83
    entra rodete-9, serie 4417, bronce, trabajo 90
    entrada: cuerpo-3, nº 7120, trabajo 58, acero inox, 0,8 metros cuadrados
    entrada de material del cliente: 4 soportes, trabajo 73 / ingresa tapa-12 serial 998 orden 45
    ingresó la voluta-2, orden de trabajo 81, hierro gris / ingreso al taller el plato-5 aluminio 5 mm de espesor
    recepción: codo-1, serie K77, trabajo 29 / recibida placa-11, trabajo 65, 0.9 m2, inox
    recibido impulsor-2, serial IM202, trabajo 36 / recibí el rotor-4, serie 3391, del job 24
    recogí del muelle la carcasa-6, serie 8008, trabajo 71 / el cliente dejó valve-9, serial V900, job 48, stainless
    el cliente ha traído otra tapa, la 5, serie T505, trabajo 94
    el transportista descargo la bomba-3 serial P31 trabajo 59 / el camion trajo dos tanques job 88 carbon steel
    el chofer dejó un impeller, serial 66102, job 13 / me dejaron en la mesa el soporte-2, nº 440, trabajo 22
    me pasan la pieza aspa-3 aluminio serie A33 / me trajeron una pieza chiquita, tapon-1, latón, trabajo 6
    me acaban de bajar la housing-9 serial H9 job 101 / nos ha entrado un intercambiador placas 1 a 6 trabajo 39
    nos cayó otra pieza, elbow-2, job 55, serial E2 / nos llega la compuerta-1, acero, 10 mm, 1.6 m2
    nos mandaron del job 78 el cuerpo-5 serial 1207 / cargo en el sistema brida-10, serie 5510, trabajo 34
    cargá la tapa-2, orden 18, inox, 3 mm / carga pieza: cono-1, inox 304, 4 mm, serie CN1
    crea pieza valvula-6, trabajo 91, serial 3366 / crea la ficha del rodete-12, serie 900, bronce
    dame de alta la carcasa-11, trabajo 97, nº serie 6001 / dadme de alta esto disco-4 aluminio 5 mm serie 77
    alta: tapa-6 T606 94 inox / alta eje-5 trabajo 30 / nueva pieza 14, trabajo 50 / pieza 21, serial 2121, job 62
    nueva: flange-1, job 84 / nueva placa-3, acero, 1 m2 / otra pieza: bracket-4, serial 0404
    otra mas pal job 33 bracket-9 serial BR09 / otra brida, la 8, mismo trabajo 41, serie 108
    una más del mismo trabajo, rodete-10, serie 4418 / una carcasa nueva serie 3120 trabajo 76 hierro
    un housing nuevo, serial 5561, job 82, aluminum / un impeller de bronce impeller-7 serial 720
    pieza del job 94: tapa-7, serial T707 / del trabajo 67 ha venido la brida-3, nº 3003, inox
    del job 20 llegó el cover-1, serial CV1, 3/8 de pared
    del trabajo noventa y cinco, carcasa cinco, serie cinco cero siete ocho / serial 4411, rodete-2, trabajo 28
    serie 9090 es el soporte-6, trabajo 42, acero / nº de serie X15 tapa-15 trabajo 8
    serial number 7781, valve-4, job 37, recién llegada / sn 3345 pump-2 job 61 cast iron
    trabajo 53: tubo-4 inox pared 3 mm 0.7 m2 / trabajo 26, pieza placa-8, serie 808 / job 92 impeller-11 serial 1192
    job 11, tres brackets, aluminio, 0.2 m2 cada uno / orden 64, compuerta-3, serie G3, acero al carbono, 12 mm
    orden de trabajo 35: cuerpo-1 serie 1001 / inox, carcasa-9, trabajo 95, serie 5079
    bronce, rodete-6, 0,35 m2, trabajo 31 / aluminio 4 mm, panel-2, job 72, seis pies cuadrados
    acero de 10 milímetros, base-1, trabajo 16, serie BS1 / 6 sq ft de stainless, plate-5, job 47
    la tapa-10 ya está en el taller, trabajo 94, serie T110 / la valvula 12 acaba de llegar, serial 1212
    la pieza nueva se llama codo-7, trabajo 29, inox / la de hoy es brida-15, serie 515, acero
    la nueva es housing-14 job 85 serial 1414 / el nuevo es rotor-8, trabajo 24, serie 3399
    el bracket-12 ya llegó al shop, job 33 / el 17 ya está en rack, trabajo 50, serial 1717
    el impeller-9 entro esta mañana serial 909 job 19 / estas dos son nuevas: tapa-21 y tapa-22, trabajo 102
    estos tres son del job 57, seriales 1, 2 y 3, aluminum / aquí está la placa-15, trabajo 65, 3 mm, inox
    aqui tengo pieza nueva difusor-5 serie 345 bronce / aquí tengo un fitting nuevo, fitting-2, brass, job 43
    acá tengo el cuerpo-9, serie 1290, fundición / acaba de entrar por la puerta la bomba-9 😅 trabajo 59 serie P39
    acaban de traer rejillas, 5 piezas, trabajo 21 / acabo de recibir el aspa-6 serie A66
    buenas, pieza nueva: tapa-30, trabajo 110, serial T300
    buenos dias, nos dejaron la barandilla-7 anoche, trabajo 17, 3 m2
    ok por fin llegó la carcasa-7, serie 5080, trabajo 95 / menos mal, ya vino el rodete-15, trabajo 31, bronce
    mas chamba llego valve-15 job 54 serial 7725 / mas trabajo chicos, soporte-14, serie 1414, trabajo 52
    ya cayó más jale, flange-7, job 99, serial F707 / y van otras dos brida-17 y 18 trabajo 41
    sorpresa, me sueltan un tanque, tanque-3, job 46, inox, 4 m2 / a las 7:50 llegó el manifold-5, aluminum, job 15
    hace media hora entró la voluta-4, orden 81 / a primera hora vino la compuerta-5, acero, 1,8 m2, trabajo 64
    anótame esta: eje-8, acero inox, trabajo 30, pared 20 mm / guardame la pieza cono-4 serie CN4 trabajo 77
    regístrame el plato-8 trabajo 44 aluminio / añádeme la tapa-33, misma orden, inox, 0.25 m2
    métela: placa-19, serie 1919, trabajo 88 / hay pieza nueva, tubo-6, hierro, serial TB6
    tenemos pieza, cuerpo-12, trabajo 58, nº 7129 / tengo una nueva, elbow-5, stainless, quarter inch
    vino la bomba-12, trabajo 59 / vinieron los soportes 20 y 21 trabajo 52 galvanizado
    subieron del almacén la carcasa-15, serie 2215, 9 mm, hierro fundido
    aguanta 120 grados, es la placa-22, inox, trabajo 65, serie 2222 / pieza nuva, brida-22, trbajo 41, inox
    yego la tapa-8 serial T808 job 94 / carcaza-3 del job 66 serial 2203
    regístreme por favor el impulsor-6, serie IM206, bronce
    se recibe válvula-20, nº de serie 2020, trabajo 91, acero inoxidable, espesor 8 mm
    se da entrada a la pieza rotor-11 trabajo 24
    nueve tubos, del 1 al 9, para el trabajo 118 / nueve tubos para el trabajo 118
    ya están aquí los tubos 1 a 9, trabajo 118 / han llegado ocho palancas, trabajo 119
    ocho palancas, palanca 1 a 8, orden 119 / una docena de bisagras para la orden 117, bisagra 1 a 12
    cayeron 6 bujes pal job 115, del 1 al 6 / nos cayeron diez postes, poste 1 a 10, job 116
    la troca bajó 10 postes pal job 116 / descargaron siete tapones, tapón 1 a 7, orden 120
    nos bajaron del camión 16 peldaños, del 1 al 16, trabajo 126
    acaban de descargar cuatro ruedas, rueda-1 a rueda-4
    el repartidor ha dejado seis bobinas, bobina 1 a 6, trabajo 128 / vamos a llamarlos poste 1 a 10, trabajo 116
    las vamos a llamar bisagra-1 a bisagra-12 / los llamamos buje 1 a buje 6, job 115
    que se llamen perno 1 a 24, orden 122 / póngales palanca-1 a palanca-8
    cinco rotores más, del rotor 6 al 10, trabajo 109 / otros seis álabes para el trabajo 124, del 7 al 12
    los de la fundición han traído cinco fundidos, trabajo 127
    tres ductos para el trabajo 125: ducto 1, ducto 2 y ducto 3
    cuatro tapones nuevos, orden 123: tapón 1, tapón 2, tapón 3 y tapón 4
    6 tensores para la orden 130, tensor 1 a 6 / trajeron 8 palancas pal job 119
    nos mandaron una caja con 12 bisagras, orden 117 / media docena de bujes, buje 1 a 6, trabajo 115
  `,
};
