// How Spanish speakers say it: coat, touch-up, wet, part. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCoats2: Sayings<SaidMeaning> = {
  coat: `
    ya quedó dada la 7 / ya le di a la 8 con el bote 1 / ya le dimos a las tapas, pot 2 / dada la carcasa
    dadas las tres bridas del lote 1 / ya está dada la voluta con brocha / se le dio su mano a la 4
    se le dio a la tapa con rodillo / se dio la primera mano a la 9 / se le aplicó a la 6 del batch 2
    se aplicó a brocha sobre la carcasa / acabé de darle a la 5 / acabamos de darle a la fila con la gun
    terminé de darle mano a la bomba / terminamos las chicas con rodillo / terminada la reja a brocha
    primera mano a la 3 / primera mano lista en las tapas / primera capa a la 12, lote 2
    segunda mano a la 8 del pot 2 / segunda capa en la voluta / otra mano a la 6 / otra capa a la 4, bote 3
    última capa a la carcasa / capa completa en la 11 / una capa a la brida / una manita a la 5
    una mano pareja a la 9 con rodillo / con brocha la 7 / con rodillo la 8 y la 9 / con pistola toda la fila
    con brochita las esquinas y luego la 3 completa / con el rodillo chico la tapa / con HVLP las placas
    a brocha fina la 4 / a rodillo todo el tanque / a pistola las seis / por inmersión las palancas, pot 1
    por vertido la 8 / por flujo la 11 del lote 1 / la 7 con el pot 1 / la 3 y la 4 con lo del bote 2
    la voluta con el batch de la mañana / las tapas con la mezcla 2 / el eje con lo que sobraba del 1
    pinté la carcasa / pinté dos bridas / pintamos la fila 2 / pintaron la 6 / pintó Lia la 8 / pinto la 5 ahora
    pintando la tapa / recién pinté la 3 / ya pinté todas / pintada la 9 con brocha / pintadas del 1 al 6
    pintado el tanque por fuera / pintados los soportes / quedó pintada la bomba / quedó pintado el eje
    están pintadas las rejas / recubrí la 7 / recubrimos la carcasa con rodillo / recubiertas las tapas
    recubierto el eje / recubrimiento aplicado a la 4 / recubrimiento puesto en la brida 2 / revestida la 6
    revestí el tubo / revestimiento aplicado en la placa / barnizada la 3 / barnicé la tapa / barniz puesto a la 8
    le di barniz a la 5 / laqueada la 4 / laqueé la puerta / esmalté la 9 / le di pintura a la 2
    le eché pintura a la 7 con rodillo / le puse pintura a las chicas / le metí pintura al eje / ya tiene pintura la 12
    ya lleva pintura la voluta / ya tiene su mano la 4 / ya tiene capa la 6 / ya lleva su capa la bomba
    ya trae coat la 8 / ya trae producto la tapa / ya carga coat la flange / ya va cubierta la 10 / coated la 7
    coated ya el housing / coateé la 8 / coateé las tapas con brush / coatié la 5 / coatiada la valve
    coateando la 3 ahorita / just coated la 4 con roller / le puse coat a la 9 / le di un coat a la 2 con brush
    le pegué un coat a las brackets / first coat a la 6 / second coat on la 7 / coat number two a la 8
    coat listo en el elbow / brusheé la 4 / brushié el bracket / brushed la 5 con el pot 1 / rolled la 9
    rolié las plates / rolleé el tanque / sprayed the 12 / sprayeé la 7 / sprayé las tres con el batch 2
    sprayeada la reja / spray a la 3 y 4, pot 1 / sprayeé el manifold / le di con la gun a la 10
    le di un flow coat a la 2 / floweé la 6 / flow coat listo en la carcasa / dipié la 5 / dippeé los hooks en el pot 2
    dipped la 8 / dip coat a la 9 / me aventé la 4 con brocha / me aventé toda la fila con la gun
    me eché las seis tapas / me eché la carcasa a rodillo / ya despaché la 7 con brocha
    despaché las cuatro placas del bote 1 / ya maté la fila de arriba, pintadas / ya salieron pintadas la 5 y la 6
    ya salió la 9 de la brocha / le embarré producto a la 3 / embarrada la tapa con brocha / unté la 4
    unté bien el eje con la brocha / embadurné la brida / empapé la 6 con rodillo / cargadita le di a la 8 / bañé la 7
    bañé el rodete en el bote 1 / bañada la reja por vertido / le di un baño a las palancas / sumergí la 3
    sumergí la pieza y escurrió bien / remojé las chicas en el pot 2 / la metí al bote y la saqué despacito
    metida y sacada una vez la 5 / entró y salió del baño la 6 / al baño la 4, lote 2 / escurriendo las dipeadas, 1 a 4
    ya se escurre la 9 del dip / vertí el pot 1 sobre la placa / le vertí encima a la 7
    le dejé caer el producto a la 8 y escurrió / chorreada con producto la 3 por encima
    vaciada la mezcla sobre la tapa, escurre / rociada la 7 / rocié la 8 / rociamos la fila con el lote 1
    roceé la tapa / pulvericé la carcasa / pulvericé dos pasadas a la 6 / atomizada la 5
    le soplé dos manos a la 4 con pistola / pistoleé la 9 / a pistolazos la reja / pasada de pistola a la 12
    dos pasadas de pistola a la 3 / tres pasadas cruzadas a la tapa / con aerógrafo la chica / soplete a la puerta 2
    brocheada la 6 / brochazos a la 7, bote 1 / le pasé la brocha a la 8 / le pasé el rodillo al tanque
    le pasé rodillo por las dos caras a la 3 / le pasé la gun a la 4 / pasado el rodillo por la 5 / rodillada la placa
    rodilleada la reja / con la felpa la tapa / con esponja la 4 / con muñequilla la 9 / con espátula la base
    con brocha de dos pulgadas la voluta / con pincel el eje / por el interior la 6 a brocha
    por dentro ya está dada la carcasa / por fuera el tanque con rodillo / las dos caras de la placa 3
    cara de abajo de la 5 lista / el canto y la cara de la 8 / aplicado en la 7 / aplicado el producto a la fila 1
    aplicada la capa en la tapa / aplicamos en 3, 4 y 5 / aplicación terminada, carcasa, rodillo
    aplicación completa lote 2 / aplicación a pistola en la 8 / aplico a brocha la 9 / apliqué el bote 1 sobre la 7
    apliqué dos piezas / he aplicado el lote 2 en la tapa / hemos recubierto la bomba / he dado la 5 a rodillo
    he pintado la 6 del bote 1 / ha quedado dada la 8 / han pintado las cuatro / habemos pintado la fila, pot 2
    fue aplicada la capa en la 3 / fue pintada la 11 con brocha / la brida recibió su primera capa / la 7, brocha
    8 y 9, pistola, bote 2 / 3 rodillo / carcasa brocha pot 1 / tapa 4 rodillo lote 2 / impeller-3 brush
    bracket-8 spray pot 2 / 12 dip pot 1 / 5 flow / bomba a brocha / 7 coat / coat 8 brush / coat 3 y 4 roller pot 1
    brocha: 1, 2, 3 / rodillo: carcasa / pistola: 4 a 9, lote 1 / inmersión: ganchos / vertido: placa 6
    lo que quedaba del bote se lo puse a la 6 / el resto del pot 1 se lo di a la tapa / con el sobrante pinté la chica
    rindió para la 7 y la 8 / dio para tres piezas: 1, 2 y 3 / gasté el bote 1 en la carcasa
    el bote 2 lo usé en la 5 y la 6 / del pot 3 salió la voluta / de la mezcla 1 le di a las tapas
    del lote 2 pinté el eje / del batch 1, la reja / usé la mezcla 2 para pintar la 9 / use la brocha en la 4
    la 6 la hice a rodillo / la carcasa la hice yo con brocha / la hice a pistola, la 3 / hicimos las tapas con rodillo
    hecha la 7 a brocha / hechas las cinco del carro, pistola / hecho el eje con el bote 1 / hice la 8 del pot 2
    hice dos más: 9 y 10, rodillo / ya hice la voluta con brocha, falta la reja / van pintadas tres: 1, 2 y 3
    van cuatro dadas con el pot 2 / llevamos pintadas seis / llevo la 5 y la 6 hechas con rodillo / vamos pintando la 7
    va quedando la 8, rodillo / va dada la tapa / Omar le dio a la 7 / Omar pintó la carcasa con rodillo
    Lia recubrió las tapas / el nuevo le dio mano a la 3 / entre los dos le dimos al tanque / Beto roció la fila
    mi compa pintó el eje / Ola aplicó el bote 1 en la 6 / el aprendiz le pasó brocha a la 9 / Kari ha dado la voluta
    la cuadrilla pintó las doce rejas / le ayudé a Toño y pintamos la bomba / a las 9:50 pinté la 7 / 10:05 brocha la 8
    pintada la 4 a las once y media / hace cinco minutos le di a la 3 / hace nada pinté la tapa / ahorita le di a la 9
    recién le di a la 6 con rodillo / acabo de pintar la carcasa / acabo de darle brocha a la 5
    acabo de pasar el rodillo por la 8 / acabo de rociar la fila del carro / acabo de sumergir las chicas
    ahora mismo di la 2 / como ya estaba limpia y seca de alcohol, aproveché y le di a la 7 con la brocha ancha
    acabamos de aplicarle la primera capa a la carcasa con rodillo porque la pistola está ocupada
    le entré a la 9 con lo que había en el bote 1 antes de que se pasara
    buenas tardes, le informo que la pieza 4 ya fue recubierta con brocha usando la mezcla 2
    señor, ya quedó aplicada la capa sobre la voluta
    jefe le comento que ya pintamos las tres tapas del job 94 con pistola / pos ya le di a la 5 q era la q faltaba
    ps ya quedo pintada la 6 con el rodillo / ya le di a la tapa xq se nos va la mezcla / le di nomas una mano a la 8
    ya wey ya esta pintada la 3 / ya pintié la 7 y la 8 con el pot 1, brush / painteé el housing con el batch 2
    pintié el bracket con el brush chico porque la gun está clogged / ya le metí coat al valve body, one coat
    just finished la carcasa con roller / finished painting la 9 / done con la 5, brush, pot 1
    done painting las tapas / hermano ya le metí su mano a la bomba, quedó brillosa
    quillo ya está pintá la 7 con la brocha / pisha le he dao a la carcasa enterita / mijo la tapa ya tiene su manita
    parce ya le di a la brida con rodillo / vea pues, ya quedó recubierta la 6 / boludo ya le pasé el rodillo a la 8
    se ha recubierto el eje con la mezcla del bote 2 mediante pistola HVLP
    la carcasa ha sido pintada a rodillo, dos pasadas / procedí a aplicar el producto en la brida 3 con brocha
    aplicación realizada sobre las piezas 4, 5 y 6 por inmersión / brocha en la 7 terminada por fin maldita sea
    la puta rejilla ya está pintada, rodillo / costó un huevo pero ya pinté la 9 por dentro
    ya chingué la 5 y la 6 con la gun, quedaron chidas / la tapa, la brida y el codo: pintados
    de la mesa pinté todas menos la 4 / la grande ya, con pistola / las del gancho ya están bañadas
    lo de la fila dos ya lleva capa / a esa de bronce le di con pincel / a la de inox le pasé rodillo
    siete con brocha lote uno listo / voluta rodillo lista / eje pintado / tapas pintadas / brida pintada brocha
    carcasa dada rodillo / la 7 ya / 8 ya pintada / ya la 9, brocha / pintadas todas
  `,
  'touch-up': `
    le di un retoque a la 7 / retocada la 8 / retoqué los bordes / retoqué la esquina de la 5 en fresco
    retoque rápido a la tapa / retoquito a la 6 / retoquecito en la brida / retoques hechos en la carcasa
    reparé la falla de la 3 en mojado / reparado el hueco de la 9 aún mojada / reparadito el poro
    tapé un poro en la 4 / tapé una falla de la 8 / cubrí la falta de la 2 / cubrí el pelón de la 6
    le faltaba tantito a la 7 y le di / le faltaba pintura en el filo, ya le puse
    faltaba cubrir un ladito de la 5, ya está / quedó un claro en la 9 y lo tapé fresco
    se veía metal en la 3, le puse otro toque / vi un punto sin pintar en la 8 y lo cubrí
    encontré una calva en la tapa, ya retocada / me brinqué un cachito de la 4 y ya lo cubrí
    se me escapó una esquina y la repasé / dejé un hueco y lo llené luego luego / touch up listo en la 7
    touch-up a la tapa / touchup la 8 / touched up la 5 / touchié la 6 / le hice touch up al flange
    quick touch up al bracket, still wet / wet touch up en la 9 / le di un touch a la 3 con la brush
    fixed el spot en la 4, estaba wet / le pegué al thin spot de la 8 / tapé el miss de la 6
    tapé el holiday del housing / repasé la 7 con la brocha antes de que oreara / repasé el canto
    repasada la soldadura de la 5 / repaso en fresco a la tapa / le di un repaso a la orilla de la 8
    un repasito al borde de la 3 / le pasé otra vez por la orilla a la 9
    le volví a pasar la brocha al canto de la 4, fresca / volví sobre la esquina de la 6 mojada / otra pincelada a la 2
    otra brochadita al filo de la 7 / pinceladita en la 8 / pincelazo al hueco / brochacito a la orilla de la 5
    toque de pincel al borde de la 3 / toques de brocha en la carcasa todavía fresca / toque final a la tapa mojada
    quité un escurrimiento de la 7 con la brocha / levanté una gota de la 8 y emparejé / recogí la lágrima de la 6
    extendí el chorreón de la 4 en mojado / alisé una raya de la 9 / borré la marca del pelo en la 3
    saqué un pelo de brocha de la 5 y repasé / saqué un bicho de la 8 y retoqué / quité una pelusa y le di un toque
    emparejé la orilla de la tapa / desvanecí el borde de la 6 en fresco / aún mojada le di otra vuelta a la 7
    estando fresca le repasé / en mojado le di a la zona flaca / sobre mojado la 5
    mojado sobre mojado el borde de la tapa / fresco con fresco la 9 / lo flaco de la 3 ya lo cargué
    cargué un poco más el filo de la 8 / engordé el borde de la 6 / reforcé la orilla
    reforzado el canto de la 4 en húmedo / le puse más a la parte débil de la 2
  `,
  wet: `
    la 7 da 60 húmedo / 8 peine 55 / húmeda en 62 la 3 / peine: 58 / peine 2.5 / peine 60/65 / 55 mojada / 60 en mojado
    la tapa 65 húmeda / húmedo de la carcasa 57 / medí con el peine la 7: 60 / medí en mojado la 8, 55
    medí el húmedo de la tapa y da 62 / mido 58 en fresco / mide 60 con el peine la 5 / midió 65 en húmedo la brida
    el peine me marcó 60 / el peine marcó 55 en la voluta / el peine salió en 58 / peine en 62, dentro
    al peine 60 la 4 / al peine da 2 mils y medio / con peine, 65 la 9 / por peine 60 / la galga húmeda dice 58
    la galga de peine en 60 la 6 / galga: 55 / calibre húmedo 62 la 3 / el medidor de húmedo da 60
    el rastrillo da 65 en la tapa / rueda de húmedo 58 la 8 / película mojada 60 / película fresca de 58
    espesor mojado 55 / espesor en fresco 62 la 7 / espesor húmedo 2.4 mils / grosor húmedo 60 la carcasa
    capa húmeda de 65 / film húmedo 58 / wet 60 / wet 2.4 la 5 / wet film 58 / wet film de la tapa 2.5
    wet gauge says 2 mils / wet mils: 3 la 8 / wet reading 60 la 6 / reading del comb 2.5 / comb 60
    el comb marcó 3 en el housing / le di comb a la 7, 2 mils / stuck el comb y da 3 / WFT 58 / WFT la tapa 62
    wft 2.5 mils / wft 60 60 55 / EPH 60 la 3 / eph 58 micras / húmedas 60 / micras húmedas 58 la 9 / mojó hasta el 60
    mojó el diente de 55 y el de 60 no / diente 60 mojado / el diente de 65 ya no toca / marca el diente de 50 en la 4
    tocó hasta 2.5 / pinta el diente de 60 en la 8 / entre 55 y 60 mojada la 3 / en 60 arriba y 58 abajo, fresca
    parejo a 60 el peine en toda la placa / varía de 55 a 65 en húmedo la carcasa / tres peines a la 6: 58 60 62
    dos puntos, 55 y 60 de peine / salió delgada, 45 el peine / salió gruesa, 80 húmedo la 9 / quedó flaca de peine, 40
    quedó en 60 mojada / quedó en 2.5 húmedo la tapa / anda en 58 fresca / trae 60 de húmedo / lleva 62 mojada
    se le puso el peine a la 7: 60 / se midió en húmedo la 8: 58 µm / se tomó espesor húmedo, 62
    lectura de peine 60 en la 3 / lectura en mojado 55 / lecturas húmedas 58, 60, 61 / control húmedo: 60
    clavé el peine a los dos minutos, 58 / a mitad de mano el peine da 60 / luego luego le medí, 62 mojada
    apenas acabé de pasar el rodillo, 55 el peine / recién dada la 4 peine 60 / Lia le pasó el peine a la 7, 58
    Omar midió 60 en húmedo / el chavo dice peine 55 en la tapa / Ola sacó 2.5 con el comb / sesenta de húmedo
    cincuenta y ocho el peine en la carcasa / dos y medio mils mojada la siete / sesenta micras el peine
    a sesenta y cinco la ocho en fresco / le informo que la película húmeda de la pieza 4 es de 58 µm
    señor, el peine registró 60 en la carcasa / se verificó espesor húmedo: 60
    le puse el peine a la tapa xq se veia flaca, 48 / ps peine 60 / pos da 55 mojada / nomas 50 de peine la 8
    comb says 60 / comb reads 2.5 on la 7 / wet it reads 60 / got 3 mils wet la tapa / wet mils 2.5 la carcasa
    quillo 60 de peine / parce el peine dio 58 / boludo 55 en húmedo / mijo el peinecito da 62
  `,
  part: `
    entró pieza nueva, tapa-41, serie 881, trabajo 12 / registre la carcasa-20, serie 5521, inoxidable, 1.1 m2
    por favor dé de alta el rodete-30, trabajo 77 / ingresa válvula-31 serie 3012 trabajo 55 hierro
    nueva brida-40, job 12, serial B40 / nueva tapa para el trabajo 60, serie T61
    pieza nueva eje-22 acero 4140 trabajo 9 / le doy entrada a la placa-31, aluminio 5 mm
    le doy de alta al soporte-33, serie 2210 / doy de alta voluta-9, trabajo 18
    damos entrada a cuatro rejas, trabajo 41 / metí al sistema la bomba-14 / mete el tanque-6, acero al carbono, 3 m2
    métele la barandilla-12 del trabajo 17 / agrega codo-19, serie K19, trabajo 30 / súbeme la tapa-50 al sistema
    sube la pieza rail-55, steel, 6 mm / súbela como cono-8, inox / créame la ficha brida-44, serie 44B
    créala: base-3, hierro / hazle ficha al difusor-8, bronce, serie D8 / ábrele ficha a la rejilla-20
    ficha nueva: compuerta-7, 12 mm, acero / abre ficha de panel-6, trabajo 72
    registro de pieza: manifold-8, serie M8 / registro nuevo, elbow-9, job 55 / captura la flange-21, serial F21
    capturé la pieza cover-15 job 92 / captura: plate-18, stainless, 4 sq ft
    apunta que llegó el housing-22, serial H22 / anota pieza: valve-28, job 54, cast iron
    log part bracket-30, serial 3030 / new part: impeller-21, serial 2121, job 63
    new part bracket-31 aluminum quarter inch / add part cover-9, job 15 / part impeller-22 serial 922
    part tapa-51 trabajo 60 / part nueva, fitting-8, brass / booked la valve-33, job 48
    checkié in el housing-25, serial H25 / check in de la flange-24, job 99 / we got la pump-6, job 61, cast iron
    got a new bracket-35, job 33, steel / del job 12 llegaron tres tapas, series 1, 2 y 3
    para el trabajo 44 entró el plato-9 / de parte del cliente de las bombas llegó la carcasa-33, serie 7001
    para el pedido 61 vino el rodete-41 / el cliente trajo su válvula, válvula-35, serie 3515
    un cliente nuevo dejó el eje-31, trabajo 120 / nos encargaron la reja-14, hierro, 2 m2
    nos dejaron para pintar la puerta-3, acero / trajeron a pintar el tanque-9, trabajo 46
    trajeron una pieza para recubrir, serie 909, bronce / mandaron otra carcasa, carcasa-34, inox
    mandaron del taller mecánico el eje-33 / bajaron del camión la bomba-22, serie P22, trabajo 59
    descargamos la voluta-14, hierro gris, trabajo 81 / descargué la compuerta-8, serie G8
    acaban de descargar dos placas, trabajo 65 / recibimos pieza para el trabajo 31: rodete-44
    recibí la tapa-52 con serie T52 / recibo del cliente brida-47, serie 4747
    recepción de pieza: cuerpo-13, serie 1313, acero / tenemos pieza nueva en el rack: codo-21, trabajo 29
    tenemos un fierro nuevo, base-7, trabajo 16 / hay un impeller nuevo en la mesa, serial 7272
    hay tres tapas nuevas, del trabajo 94 / esta es la brida-49, inox, 0.3 m2
    este es el rotor-12, serie 3400, trabajo 24 / se llama rail-61, acero, 6 mm / se llama tapa-53, serie 5353
    le pusimos disco-9, aluminio, serie 77D / su serie es 4412, es el rodete-45, trabajo 88
    tiene serie 6161, carcasa-36 / lleva el número 7070, tubo-12, hierro / el número grabado es 3311, válvula-37
    grabado dice SN 8080, housing-28 / acero inoxidable 316, tapa-54, 0.4 metros, trabajo 94
    hierro dúctil, cuerpo-15, serie 15C / aluminio fundido, plato-12, trabajo 44 / galvanizada, reja-16, trabajo 17
    latón, tapón-4, serie L4 / pared de 8 mm, tubo-14, trabajo 53 / un cuarto de pulgada, panel-9, job 72
    media pulgada de wall, housing-30 / área 1.2 m2, compuerta-10, serie G10
    dos metros cuadrados, barandilla-14, acero / aguanta 120, es la junta-3, trabajo 20
    máximo 80 grados, placa-35 con goma, serie 35G / no pasa de 100 C, carcasa-38, trabajo 95
    le informo ingreso de la pieza tapa-61, serie 6100, trabajo 130 / se recibió el rodete-61 del trabajo 31, bronce
    señor, entró una carcasa nueva, carcasa-61, acero / ps llego la brida-61 del job 12
    pos pieza nueva eje-61 serie 610 / got a new one, flange-61, job 99 / came in today, valve-61, serial 6161
    quillo ha entrao la tapa-62, trabajo 94 / parce llegó el codo-61, serie K61 / boludo entró la brida-62, inox
    mijo nueva pieza, placa-61, trabajo 65
  `,
};
