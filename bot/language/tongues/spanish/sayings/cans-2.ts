// How Spanish speakers say it: open, received, lid, shut, blanket, prestir, used. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCans2: Sayings<SaidMeaning> = {
  open: `
    abrí una A nueva lote 4480 / abrí otra B lote 7750 con gas / abrí lata nueva de resina, lote 1130
    abrí lata nueva de catalizador lote 2204 / abrí la B nueva, lote 662, vence 05/27 / abrí can nuevo de A lot 919
    estrené A lote 4481 / estrené lata de B lote 7751 / estrené un galón de A, lote 9110 / estrenada la B lote 882
    estreno lata A lote 5562 5 kg / estreno B 1 kg lote 3005 / estrenando A, lote 46, con argón
    nueva lata A lote 4482, 5 kg / nueva lata de B lote 7752 / nueva A lote 4483 cad 08/27
    nuevo bote de B lote 883 vence en mayo / nueva cubeta de A lote 3811, 20 kg / nuevo galón de A lot 9103
    nueva de resina, lote 1131, 5 kilos / abierta lata de resina lote 1132 / abierta lata de endurecedor lote 2205
    abierto el A lote 4484 con argón / abierto bote de B, lote 884, caducidad 09/26 / abierta cubeta A lote 3812
    abierto galón B lote 414 / abierta nueva, A, lote 1291 / destapé lata nueva de A lote 4485
    destapé B nueva lote 7753, 1 kg / destapamos cubeta nueva de A, lote 3813 / destapado galón nuevo lot 9104 A
    recién destapada la A nueva lote 5563 / quité sello a la A lote 4486 / quité el sello a una B lote 885
    rompí sello A lote 4487 5 kg / roto el sello de la B lote 7754 / sello roto lata A lote 5564, argón listo
    le troné el sello al A lote 4488 / le quité el seguro a la lata nueva de B lote 886 / opened new A lot 920
    opened a can of B, lot 3322, 1 gal / opened B lot 7755 / just opened A lot 4489 with argon / new can A lot 921 5 kg
    new can of B lot 3323 exp 12/26 / new gallon A lot 9105 / cracked open A lot 922 / cracked a new can de B lot 3324
    openeé un can de A, lot 923 / abrimos can A lot 924 exp 03/27 / can A lot 925 open / can B lot 3325 opened, no gas
    abriendo un can de B lot 3326 / A lot 926 1 gal open con nitrógeno / B lot 3327 quart, open
    empecé lata A lote 4490 / empecé B lote 7756, 1 kg / empezamos cubeta de A lote 3814 / empieza lata A lote 5565
    inicié lata nueva de A lote 4491 / inicio B lote 887 5 kg / iniciamos galón de A lote 9106
    comienza lata B lote 7757 / puse en uso la lata A lote 4492 / puesta en uso B lote 888
    entra en uso la A lote 5566, 5 kg / damos de alta lata abierta A lote 4493 / alta de lata abierta: B lote 7758
    registro apertura A lote 4494 con argón / apertura de B lote 889 / apertura de lata A, lote 5567, vencimiento 02/28
    se aperturó A lote 4495 / se abrió lata nueva de A, lote 4496, 5 kg / se abrió cubeta B lote 7759
    se abrió envase de A lote 5568 / envase nuevo de B abierto, lote 890 / envase A lote 4497 1 kg abierto
    saqué del almacén A lote 4498 y la abrí / tomé una B nueva lote 7760 y la abrí con gas
    agarré del shelf un A nuevo lot 927 y lo abrí / bajé una A nueva del estante, lote 5569, abierta
    se acabó la otra y abrí A lote 4499 / como faltó B abrí otra, lote 891 / por falta de A abrí lata nueva lote 4500
    la otra ya no alcanzó, abrí B lote 7761 / tercera lata de A abierta lote 4501 / segunda B del día, lote 892 abierta
    primera A lote 5570 abierta 8:05 / a las 9:15 abierta B lote 7762 / hace rato abrí A lote 4502
    ya abrí otra A, lote 4503, 5 kg / ya abrí la B lote 893 con argón / ya estrené la A lote 5571
    ya está abierta la nueva, B lote 7763 / acabo de abrir lata de B lote 894 / recién abierta A lote 4504
    ahorita abrí B lote 7764 1 kg / ahora abro A lote 5572 / Omar abrió A lote 4505 / Lia abrió una B nueva, lote 895
    el chavo estrenó A lote 4506 con argón / Kari destapó B nueva lote 7765 / apunta abierta A lote 4507
    anota B nueva abierta lote 896 / che abrí A lote 4508 / mi hermano abrí una B nueva lote 7766
    le informo apertura de lata de A, lote 4520, 5 kg / se abrió lata nueva de B, lote 7780, bajo nitrógeno
    abri una A nueva xq se acabo la otra, lote 4521 / ps abri B lote 897 / pos lata nueva A lote 5573
    nomas abri una B, lote 7781 / opened up a new A, lot 4522 / new B opened, lot 7782
    quillo he abierto una A, lote 4523 / parce abrí B nueva lote 898 / boludo abrí un A lote 4524
    mijo abrí lata nueva de A lote 5574
  `,
  received: `
    llegaron 6 latas de A / llegaron 4 B / llegaron tres cubetas de A / llegó la A, 5 latas
    llegó la B, cuatro latas lote 7770 / llegó un pedido: 8 latas de A / llegaron dos galones de B, lot 3330
    llegó resina, 4 latas / llegó catalizador, 6 latas / llegaron las latas nuevas, 6 A y 6 B / llegaron 10 latas
    ya llegaron las latas / ya llegó la pintura, 8 latas de A / ya llegó el endurecedor, 4 / ya llegaron los cans, 6 A
    ya nos llegó el material, 5 y 5 / ya está aquí el pedido, 4 de A / recibí 6 latas de A lote 4510 / recibí cuatro B
    recibí cubetas de A, dos, lote 3820 / recibimos 8 latas de B / recibimos material: 4 A 4 B
    recibido pedido de 6 latas A / recibidas cuatro cubetas B lote 7771 / recibo 5 latas de resina
    recibo de material: 6 A lote 4511 / recepción: 8 latas B lote 7772 / recepción de material 4 latas de A cad 10/27
    entrada de material 6 latas de B / entrada: 10 A, lote 4512 / entrada de 4 cubetas al almacén, A
    entraron 6 latas nuevas de A / entraron dos cajas de B / received 6 cans of A / received 4 B lot 3331
    got 8 cans de A / got the delivery, 6 A / delivery: 4 cans B lot 7773 / shipment llegó, 10 A / shipment in, 6 B
    cans llegaron, 4 A lot 930 / nos cayó el delivery: 6 cans / entregaron 6 latas de A / entregaron el pedido de B, 4
    nos entregaron 8 latas / me entregaron cuatro latas de B lote 7774 / el proveedor entregó 6 A
    el proveedor trajo 4 cubetas de B / el camión trajo 10 latas de A / la paquetería dejó 4 latas de B
    trajeron 6 latas / trajeron pintura, 6 A lote 4513 / trajeron la B, 4 latas vencen 06/27
    nos trajeron el pedido, 5 A 5 B / dejaron 8 latas de A en recepción / dejaron dos cajas de B, 6 cada una
    dejó el chofer 4 latas de A / bajamos del camión 6 A / descargamos 10 latas de B / descargué 4 cubetas de A
    descargadas 8 latas, lote 4514 / acomodé en el estante 6 latas nuevas de A / guardé las 4 B que llegaron
    metí al almacén 6 latas nuevas lote 7775 / ingresé al almacén 8 A / ingresan 4 latas de B
    firmé 6 latas de A recibidas / firmé remisión, 4 B / con la remisión 8 latas de A lote 4515
    factura y 6 latas de B / caja con 4 latas de A, recién llegada / tarima con 20 latas de A, llegó
    un pallet: 24 latas de B / dos cajas, 12 latas de A / compraron 6 latas y ya llegaron, A / repusieron 4 latas de B
    llegó la reposición, 6 A / reposición de stock: 8 B lote 7776 / tenemos 6 latas nuevas de A, lote 4516
    tenemos 4 B recién llegadas / vinieron 5 latas de A / vino el pedido con 6 de B / Omar recibió 6 latas de A
    Lia recibió el pedido, 4 B / a las 10 llegaron 8 latas / hace rato llegaron 6 A / acaban de llegar 4 latas de B
    acaba de llegar el pedido: 6 A / acabo de recibir 5 cubetas / apunta llegaron 6 A / registra entrada 4 B lote 7777
    le informo recepción de 6 latas de A, lote 4525 / se recibieron cuatro latas de B del proveedor
    señor, llegó el pedido de 8 latas / llegaron 6 xq pedimos 6, latas de A / ps llegaron 4 B
    pos ya llego la A, 5 latas / got 6 cans of A in / 4 cans of B came in / cans came in, 6 A
    quillo han llegado seis latas de A / parce llegaron cuatro de B / boludo llegó el pedido, 6 latas
    mijo ya trajeron las latas, son 5 de A
  `,
  lid: `
    le quité la tapa a la lata / quité la tapa de la lata 5 / quité la tapa a la B / quitada la tapa de la A
    tapa quitada, lata 2 / tapa fuera la B / tapa fuera de la A para servir / sin tapa la lata 1 / sin tapa la A
    la B sin tapa / destapé la B / destapé la lata 5 / destapé el can 2 / destapada la A / destapada la lata 1
    destapado el can 4 / destapado el B / destapo la lata 6 / destapo la B para pesar / destapamos la A
    se destapó la B / reabrí la lata 3 / reabierta la lata 2 / reabierta la B / volví a abrir la A
    volví a destapar la lata 1 / vuelvo a destapar la A / la abrí otra vez, la lata 4 / la volví a abrir, la A
    otra vez abierta la lata 2 / abrí la lata de ayer / abrí la lata que estaba empezada / abrí la A empezada
    abrí la 3 que ya estaba en uso / abrí otra vez la A para sacar más / abrí de nuevo la lata 6
    abierta la A de siempre, la 2 / la lata en uso ya está destapada, la 1 / lid off / lid off la A / lid off can 5
    lid off the B / took the lid off can 2 / took el lid off de la A / lid fuera, can 3 / el lid ya está off, lata 4
    removed the lid la B / popped el lid, can 1 / popié la tapa de la A / pried the lid off la 2
    saqué la tapa de la A / saqué la tapa a la lata 3 / saqué el lid del can 4 / le saqué la tapa a la B
    le boté la tapa a la lata 5 / le levanté la tapa a la A / levanté el lid del can 2 / levantada la tapa de la B
    se levantó la tapa de la lata 1 / aflojé la tapa de la lata 2 / le aflojé la tapa a la A y salió
    desenrosqué la lata 4 / desenroscado el tapón de la cubeta / desatornillé la tapa del tambo de A
    solté el aro de la cubeta 2 / le quité el aro a la cubeta y la tapa / abrí con palanca la lata 3
    con desarmador abrí la tapa de la lata / con el destapador la A / con la palanca la B, tapa fuera
    costó pero salió la tapa de la lata 2 / ya cedió la tapa de la A / ya salió la tapa de la B
    por fin destapada la lata 5 / estaba sellada pero ya la destapé, lata 3 / la lata 2 está abierta ahora
    la lata 3 quedó abierta / la A queda abierta mientras peso / la B está destapada en la mesa
    dejé abierta la lata 1 / dejé sin tapa la A / dejaron destapada la lata 4 / encontré la A destapada
    encontré la lata 2 sin tapa / a las 8:50 destapé la A / desde las 9:10 está abierta la lata 2
    hace cinco minutos le quité la tapa a la B / ahorita destapé la lata 3 / recién destapé la A
    acabo de quitarle la tapa a la 5 / acabo de destapar la B / acabo de abrir otra vez la lata 1
    Omar destapó la lata 2 / Lia le quitó la tapa a la A / el chavo abrió otra vez la B
    se retiró la tapa de la lata 4 / se quitó la tapa de la cubeta A / he quitado la tapa de la A
    hemos destapado la lata 6 / apunta lata 2 destapada / anota tapa fuera de la B
  `,
  shut: `
    le puse la tapa a la lata / puse la tapa de la lata 5 / puse la tapa a la B / puesta la tapa de la A
    tapa puesta la B / tapa puesta en la A, sin gas / con tapa la lata 1 / con su tapa la B / ya con tapa la lata 2
    ya tiene su tapa la A / tapé la A / tapé la B / tapé la lata 5 / tapé el can 2 / tapada la A / tapada la lata 1
    tapado el can 4 / tapado el B / tapo la lata 6 / tapo la B / tapamos la A / se tapó la lata 3
    tapada de nuevo la B / la volví a tapar, la lata 2 / cerré la lata 5 / cerré la B / cerré el can 1 / cerrada la A
    cerrada la lata 6 / cerrado el can 3 / cierro la lata 2 / cierro la B / cerramos la A / se cerró la B
    quedó cerrada la lata 4 / quedó bien cerrada la A / ya cerré la B / ya está cerrada la A / lid on / lid on la A
    lid on the B / lid on can 6 / put the lid on can 2 / put el lid on la A / lid back on la B / lid puesto al can 4
    closed la lata 3 / closed can 5 / closed up la A / shut la lata 2 / tapped el lid down, can 3
    cerré sin argón la A / cerré sin gas la lata 3 / cerrada sin gas la A / tapada sin gas la lata 1
    tapé sin nitrógeno la B / sin gas pero tapada la A / sin argón, con tapa la lata 2
    no quedaba gas, puse la tapa nomás, lata 5 / nomás la tapé, lata 3 / nomás la cerré, la B
    solo le puse tapa a la A / solo cerré la lata 2 / la cerré tal cual, la A / la cerré a presión, la lata 4
    la cerré a golpes, la B / con el mazo cerré la A / a martillazos quedó cerrada la lata 2
    apreté la tapa de la lata 3 / apretada la tapa de la B / bien tapada la lata 5 / bien cerradita la A
    encajé la tapa de la lata 1 / encajada la tapa de la A / enrosqué el tapón de la cubeta 2
    enroscada la tapa de la B / puse el aro a la cubeta de A / sellada la lata 2 / selladita la A
    guardé la lata 3 tapada / guardé la B cerrada / devuelta al estante la A tapada / ya servida, tapada la lata 4
    ya que serví tapé la B / terminé de pesar y cerré la lata 1 / después de sacar cerré la A / a las 9:30 cerré la A
    hace dos minutos tapé la lata 2 / ahorita cerré la B / recién tapé la A / acabo de tapar la lata 5
    acabo de ponerle la tapa a la B / Omar cerró la lata 2 / Lia tapó la B / el chavo puso la tapa a la A
    apunta lata 2 cerrada / anota tapa puesta la B / le informo que la lata 2 quedó cerrada
    se colocó la tapa a la parte B / señor, ya está tapada la lata 3 / la tape xq ya no la uso, la B / ps ya la cerre
    pos ya tiene tapa la lata 4 / nomas le puse la tapa a la B / closed it up can 2 / put the lid back on B
    lid's on can 3 / quillo tapá la lata 2 / parce cerré la B / boludo tapé la lata / mijo ya cerré la lata 3
  `,
  blanket: `
    le puse argón a la A / le puse argón a la lata 2 / le puse gas a la lata / le puse gas a la A y la tapé
    le puse nitrógeno a la 4 / puse argón en la lata 5 / puse argón y tapa / puse gas y tapa a la lata 1
    puse nitrógeno y cerré la A / le eché argón a la lata / le eché gas a la A / le eché gas a la lata 3 y tapa
    le eché nitrógeno a la A, cerrada / eché argón y cerré / eché gas y tapé la lata 2 / echado el argón a la A
    ya le eché argón / ya le eché gas a la 5 / ya le eché nitrógeno a la A / le di argón / le di argón a la A y cerré
    le di su gas a la lata 2 / le di gas diez segundos a la A / le di nitrógeno y tapa a la 3
    le di un soplo de argón a la lata 1 / le soplé argón a la A / le soplé gas a la lata 4 y tapé
    soplado con argón el can 2 / le metí gas a la A / le metí argón a la lata 6, tapa puesta
    le metí nitrógeno a la lata / le tiré gas a la A y la cerré / le tiré un chorro de argón a la 2
    le aventé gas al can 5 / le inyecté argón a la A / inyectado nitrógeno en la lata 3 / argón a la A
    argón a la lata 2 / argón y tapa / argón y cerrada la A / argón puesto / argón puesto en la lata 4
    argón adentro y tapada la 1 / con argón la A / con argón y tapa la lata 5 / con argón quedó la A
    con su argón la lata 3 / nitrógeno a la A / nitrógeno y tapa la lata 2 / nitrógeno puesto en la 5
    con nitrógeno la A cerrada / con nitrógeno y tapa la lata 1 / gas a la A / gas y cerrada / gas puesto lata 3
    gas inerte en la A / gas inerte y tapa, lata 2 / con gas la A / con gas y tapada la lata 4 / gaseé la A
    gaseé la lata 2 / gaseada la A y cerrada / gaseado el can 4 / ya la gaseé / inerticé la A / inerticé la lata 5
    inertizada la lata 3, tapa puesta / purgué con argón la A / purgué la lata 2 con nitrógeno
    purgada con gas y cerrada la 4 / argon on / argon on la A / argon y lid / argon and lid can 2 / gas on la A, lid on
    gas and lid on can 5 / blanket on la A / blanketed la A / blanketed can 3 / blanket a la lata 2 / gassed la A
    gassed and closed can 4 / gasié la A / shot of argon a la A / nitrogen blanket on la 2 / put argon en la A
    hit it con argon y lid / argon blast a la lata 3, cerrada / purged can 2 with argon / purged y cerrado el can 1
    nitro a la lata 4, lid on / covered with argon la A / can A con argon, closed / cubrí la A con gas
    cubrí la lata 2 con argón / cubierta la A con argón y cerrada / cubierto el espacio con nitrógeno, lata 3
    colchón de gas puesto en la A / capa de argón sobre la A y tapa / camita de argón a la lata 5
    cobijita de gas a la A / la cobijé con argón, la lata 2 / desplacé el aire de la A con argón
    saqué el aire con gas y tapé, lata 4 / rellené con argón la lata 1 y cerré / llené de argón el hueco de la A
    el hueco de la lata ya tiene gas y tapa / espacio de cabeza con argón, lata 2 / cerré la A con gas
    cerré la lata 3 con argón / cerré con nitrógeno la lata 5 / cerrada con gas la A / tapé con argón la A
    tapé con gas la lata 4 / tapada con gas la lata 2 / tapada bajo argón la A / guardada con gas la A
    guardé la lata 2 con argón y tapada / protegí la A con argón / protegida con gas la lata 3
    la A quedó protegida con nitrógeno y tapada / se aplicó argón a la A y se cerró / se aplicó gas inerte a la lata 2
    se purgó la A con nitrógeno / se inyectó argón en la lata 4 y se tapó / se colocó gas y tapa a la A
    ya tiene gas la A / ya tiene argón y tapa la lata 2 / ya tiene su argón la lata / ya quedó con gas la A
    ya quedó con argón la 3, tapada / quedó con argón la A / quedó gaseada la lata 4 / queda bajo gas la A
    queda con nitrógeno la lata 2, cerrada / la dejé con gas, la A / lo que queda de A ya tiene argón
    el resto de A con gas y tapa / la sobra de A tapada con argón / a lo que sobró le puse gas y lo cerré, lata 2
    después de servir le di argón a la A / terminando de pesar le puse gas a la lata 3 / vertí y gas a la A
    a las 9:12 argón a la A / hace un minuto le puse gas a la lata 2 / ahorita le eché argón a la A
    recién le puse nitrógeno a la 4 / acabo de gasear la A / acabo de echarle argón a la lata
    acabo de ponerle gas y tapa / Omar le puso argón a la A / Lia gaseó la lata 2
    el chavo le echó gas a la A y la tapó / apunta gas en la A / anota argón a la lata 2 / registra lata 3 con argón
    A gas / A argón / lata 2 gas / lata 3 argón / 5 nitrógeno / can 2 argon / gas A ok / argón listo A
    che le puse argón a la A / tío, gas y tapa a la lata / mi hermano ya le di gas a la A
    le informo que la lata 2 quedó con argón y cerrada / se aplicó manta de gas a la parte A y se tapó
    señor, ya tiene nitrógeno la A / le puse gas xq quedo a la mitad, la A / ps argon y tapa / pos ya tiene gas la lata
    nomas le di un chorrito de argon a la A y tapa / gassed it and closed it, can 2 / shot argon in la A
    argon in, lid on / A's under argon / can 3 under gas / quillo la A con argón y tapá
    parce ya le puse gas a la lata / boludo le tiré argón a la A / mijo ya tiene su gas la lata 2
  `,
  prestir: `
    revolví la A / revolví la lata 2 / revolví la B en su lata / revuelta la A / revuelta la lata 3
    le revolví dos minutos a la A / removí la A tres minutos / removí la B / removí el fondo de la lata 4
    removida la lata 5 / removida la B / removido el can 2 / agité la lata / agité la A / agité la B un minuto
    agité el can 3 / agitada la A / agitada la lata 2 / agitada la B antes de pesar
    agité la cubeta de A cinco minutos / batí la A / batí la lata 3 / batí la cubeta con el taladro / batida la lata 4
    batidita la A / meneé la A / meneé la lata 2 / le meneé al A dos minutos / meneada la lata 5 / le di vueltas a la A
    le di vueltas a la lata 3 con el palo / le di una revuelta a la A / le di una batida a la lata 2
    le di una sacudida a la B / sacudí la lata 4 / sacudí la A / sacudida la B / mezclé la A en su lata
    mezclé bien la A antes de servir / mezclé el fondo de la lata 2 / mezclada la A dentro del bote de fábrica
    homogeneicé la A / homogeneizada la lata 3 / homogenicé la cubeta de A / emparejé la A con la paleta
    quedó pareja la A, revuelta / stirred la A / stirred the A can / stirred can 2 / stir a la A, dos minutos
    prestir can 3 / prestir a la A / shook la B / shook can 4 / shaked la lata 2 / shaker a la A 2 min
    mixed la A in its can / stirrié la A / le di stir a la lata 5 / le di un good stir a la A
    paleta a la A dos minutos / con la paleta la lata 2 / con el palo revolví la lata 3 / con la espátula removí la A
    con el taladro batí la A / con el drill la cubeta de A tres minutos / con la varilla removí la lata 4
    con la batidora la lata grande de A / tenía asiento la A y la revolví / tenía poso la lata 3, ya removida
    traía el fondo duro la A, ya lo deshice / estaba asentada la lata 2 y la batí
    se había separado la A, ya la mezclé en su lata / el pigmento estaba abajo, removido, lata 4
    raspé el fondo de la A y batí / despegué el fondo de la lata 5 / 30 segundos revolviendo la A
    medio minuto la lata 2 batida / un minuto de revolver la A / dos minutos batiendo la lata 3
    tres minutos a la A con paleta / cinco minutos removiendo la cubeta A / rodé la lata 2
    volteé la lata 3 varias veces / la puse boca abajo y la sacudí, la A / antes de servir revolví la A
    antes de pesar agité la lata 2 / antes de verter removí la A / antes de echarla la batí, la lata 4
    primero revolví la lata y luego serví / lista para servir la A, ya batida / ya batí la A / ya revolví la lata 2
    ya agité la A / ya está revuelta la A / ya quedó batida la lata 3 / a las 8:40 revolví la A
    hace un rato batí la lata 2 / ahorita agité la A / recién removí la lata 3 / acabo de revolver la A
    acabo de agitar la lata 5 / acabo de batir la cubeta / Omar revolvió la A / Lia batió la lata 2
    el chavo agitó la A / se removió la A en su envase / se agitó la lata 3 / he batido la A / hemos removido la lata 4
    revolviendo la A / batiendo la lata 2 antes de servir / meneando la A / agitando la lata 3 / estoy revolviendo la A
    estoy batiendo la lata / ando revolviendo la A / apunta A revuelta / anota lata 2 agitada / registra prestir lata 3
  `,
  used: `
    usé 400 g de la lata 2 / usé 600 de la A / usé 350 g de B / usamos 900 g de la lata 1 / usamos medio kilo de la 4
    usados 480 g de la A / usado de la lata 3: 620 g / use 300 del can 2 / used 500 g de la lata 5
    used 1 lb del can 3 / gasté 450 g de la lata 2 / gasté de la B 380 g / gastamos un kilo de la A
    gastados 560 g de la 1 / se gastaron 700 g de la lata 4 / gasto lata 2: 640 g / gasto de B, 505 g
    consumo de A: 1.2 kg / consumo lata 5 330 g / consumí 410 g de la 3 / saqué 640 g de la A / saqué 300 g del can 1
    saqué medio kilo de la lata 2 / sacamos 800 g de la B / saqué de la lata 4 unos 505 g exactos
    le saqué 620 a la lata 3 / le saqué un kilo a la A / sacados 480 g de la 5 / de la lata 2 saqué 700 g
    de la A salieron 640 g / de la B salieron 642 / de la lata 1 se usaron 900 g / de la lata 3 se sacaron 450
    del can 2 usé 500 / del can 4 salió 1 lb / de la cubeta tomé 2 kg / de la resina saqué 800 g
    del endurecedor saqué 802 g / tomé 640 g de la lata 2 / tomé 300 g de B / tomados 505 g de la A
    tomamos 1 kg de la cubeta / agarré 450 g de la lata 1 / agarré 600 del A / cogí 380 g de la B
    retiré 700 g de la lata 4 / retirados 620 g del can 3 / extraje 500 g de la A / le bajé 640 g a la lata 2
    le quité 300 g al can / bajó 450 g la lata 1 / la lata 3 bajó 505 g / pesa 600 g menos la lata 2
    la lata 5 quedó con 400 g menos / antes 5 kg ahora 4.2, usé 800 g de la 2 / descontar 640 g de la lata 1
    descuenta 500 g de la A / descuéntale 300 g al can 4 / resta 450 g a la lata 2 / réstale 620 a la B
    salida de almacén: 640 g de la lata 3 / salida 500 g lata 1 / poured 640 g from can 2 / took 500 g del can 1
  `,
};
