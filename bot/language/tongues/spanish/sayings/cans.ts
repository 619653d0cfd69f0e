// How Spanish speakers say it: open, received, lid, shut, blanket, prestir, used, rags. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCans: Sayings<SaidMeaning> = {
  open: `
    abrí una lata nueva de A, lote 4471, 1 kg / abierta lata de A lote 2203, 5 kg, caduca 03/27, con argón
    abro B nueva, lote 881 / lata nueva de B, lote 7745, 1 kilo, sin gas / estrenamos A, lote 3390, 20 kg
    estreno bote de A del lote 1182, caducidad junio 2026 / destapé un A nuevo, lot 5561, 5 kilos
    nuevo can de A lot 909 exp 11/26 con argon / abri un can de B, lot 3321, 1 gallon
    el can nuevo de A, lot 7718, recién abierto con argón / opened A lote 6612, 5 kg / abriendo A nueva lote 45
    abriendo B lote 450, 5 kg, vence en agosto / A nueva lote 8812 con argon / B nueva lote 3004 sin argon
    A nueva, 1 kg, lote 77A / lata A, lote 1290, 20 kg, exp 01/27 / lata 7 abierta A lote 5123
    lata 8 es B nueva, lote 664, 5 kilos, abierta / empezamos la lata de A lote 3811
    empiezo lata nueva, es B, lote 990, caduca 12/2026 / empece otro A, lote 4007, 1 kg
    inicio de lata A lote 1204 vencimiento 05/27 / acabo de abrir A del lote 2550
    acabo de estrenar la B, lote 7101, 1 kilo / recién abrí el A nuevo, lote 631, con nitrógeno
    recien destapada lata de b lote 4419 / a las 9:10 abrimos A lote 3098 con argón
    a las 8 en punto lata de B, lote 512, abierta / hace cinco minutos abrí A, 5 kg, lote 2076
    otra lata de A, lote 4472, 1 kg, abierta ya / otra A abierta, lote 999, 5 kg / otro bote de B abierto lote 3111
    otro can de A open, lot 1414, exp 9/26 / un can nuevo de B, lot 202, ya abierto
    un bote de A recién abierto, lote 8301, 1 kilo, argón puesto / una de A lote 5990 con argon abierta
    una lata sin estrenar de A, lote 1717, la abro ya / la A nueva es lote 6060, 5 kg, abierta con gas
    la B nueva va con lote 2323, caducidad 02/28 / la nueva de A: lote 1105, vence 10/26, abierta
    la segunda lata de B abierta, lote 7746 / le quité el precinto al A, lote 3434, 20 kg
    quito precinto a B nueva lote 871 / rompí el sello de A lote 5252, 1 kg / rompí el seal del can de B, lot 6161
    le rompí el sello a una lata de A, lote 1903, con argón a mano / le quebre el sello al A nuevo lot 444 exp 04/27
    precinto fuera, lata de A, lote 7070 / sello fuera: B 5 kg lote 3636 / sin sello ya el A lote 2929 argon listo
    desprecinté A lote 1616, 5 kg / desprecintada lata de B, lote 8484, cad. 07/27
    desprecinto parte A, lote 4040, 1 kg, con argón / me puse a abrir A, lote 717, caduca en marzo, ya está
    se abre parte A lote 5008, 20 kg, con nitrógeno / se abrió parte B, lote 6009, 5 kg, vencimiento noviembre 2026
    se abrio un galon de A lot 9102 / abrimos B galon lote 413 / abrimos una de 20 de A, lote 3777
    abrimos cuñete de A lote 1221, 20 kg / abri el tarro nuevo de A, lote 5454, 1 kg, sin gas / abrí tarro de B lote 272
    abrí el pote nuevo de B, lote 8989 / abrí la latita de A de un kilo, lote 3123
    saqué y abrí A lote 4848, 5 kg, con argón / saqué una B nueva de la estantería y la abrí, lote 1515
    del estante abrí A nueva lote 6767, exp 08/26 / agarre un A nuevo lot 2828 y le abri
    cogí una lata nueva de B y la he abierto, lote 3939 / he abierto A, lote 1010, 5 kg, argón
    he abierto una lata B de kilo, lote 5757, caduca el 30/09/26 / hemos abierto otra A, lote 4114, 20 kg
    han abierto B, lote 626, 1 kg / pedro abrió A lote 7373 con argón / el nuevo abrio una B, lote 9292, 5 kilos
    abrió luis un can de A, lot 8118, argon on / ya abrí A lote 575 / ya abrimos el B nuevo, lot 3003, exp 12/27
    ya esta abierta la lata de A, lote 1881, 1 kg, con gas / ya quedó abierto el A, lote 2442, 5 kilos
    listo, A abierta, lote 6336, argón encima / listo abrí B, lote 484 / ok lata nueva A lote 7557 5kg cad 06/27
    ok por fin abrió la condenada lata de B, lote 1331 / por fin pude abrir A, lote 9559, 20 kg 😤
    menos mal que quedaba una A lote 3223 la acabo de abrir con argon
    buenos días, abro la primera A del día, lote 5115 / empezando el día con A nueva, lot 1771, exp 2/27
    ahi va otra de A abierta lote 8668 / ya le dimos a una A nueva abierta lote 2112
    apunta lata nueva de A, lote 4994, 1 kg, abierta 10:05 / apuntame B lote 6446 abierta
    anota abierta A lote 3553 caducidad 01/2028 / registra can nuevo A lot 7227 5 kg / A lote 1441 abierta
    B lote 232 abierta sin gas / A lot 8338 exp 10/27 open con argon / B lot 6006, 1 qt, abierto
    A de 5 kilos lote cuatro cuatro siete dos abierta / lote dos dos cero tres de A abierta con argon
    lote 9009 es A, abierta hace un rato / lote 3883, B, 20 kg, destapado / abri lata de a lote 7447
    abri b nueba lote 515 / habri un A lote 2662 de 5 kg con argon / tapa nueva fuera, A lote 1991, lata de estreno
    che abrí un A nuevo, lote 3443, con nitrógeno / abrile la ficha: A lote 4554, 5 kg, recién abierta
    le metí abrelatas a la B nueva, lote 878 / con argón al lado abrí A lote 6226, 5 kg
  `,
  received: `
    han llegado 6 latas de A, lote 4471 / llegaron cuatro latas de B / recibidas 10 latas de A de 1 kg
    recibí 2 cans de A, lot 8812 / llegó el pedido: 4 A y 4 B / llegó material, 3 latas de B lote 7745
    entró pedido de pintura, seis A lote 3390 / entrega: 8 latas de A, caducidad 03/27
    entregaron 5 kilos de B en latas de uno / el delivery trajo 4 cans de B
    delivery de hoy: 6 cans A, lot 909, exp 11/26 / ya llegó el delivery, dos cans de A
    llegó el shipment, 12 latas de B, lot 3321 / received 4 cans A lote 6612 / received 2 galones de B
    nos trajeron tres galones de A / el camión dejó 5 latas de A y 5 de B
    el repartidor ha dejado una caja 6 latas de B / el mensajero trajo 2 latas de A lote 1182
    trajeron el A, cuatro latas de 5 kg / trajeron dos cubetas de B de 20 kg / nos sirvieron 10 de A y 10 de B
    nos mandaron 3 latas de A, vencen en agosto / nos llegaron ocho latas de B lote 450
    nos han traído las latas de A, son seis / acaban de llegar 2 cuñetes de A, lote 1221
    acaban de dejar latas de B en el muelle, cuatro / acabo de recibir 6 A lote 5123
    recién llegó una caja de A, 4 latas, lote 631 / ya están aquí las latas nuevas, 5 de B
    ya llegaron las de A, lote 2550, siete latas / ya tenemos B otra vez, llegaron 3 latas
    por fin llegó el A, 4 latas, lote 4007 🙌 / menos mal llegaron latas de B, 6, lote 990
    buenas noticias, 8 latas de A en la puerta / al almacén 10 latas de A, lote 3811, cad 05/27
    al estante seis B recibidas, lote 664 / alta en almacén: 4 latas A de 5 kg, lote 2076
    entrada almacén B 12 latas lote 512 / entran 3 latas de A lote 3098 / ingresaron 5 latas de B, lote 7101
    ingreso de stock, seis A / recepcion de 2 A y 2 B lotes 4419 y 4420 / recepcionadas cuatro latas de A con albarán
    firmé el albarán, 6 latas de B / firmé la entrega de 4 latas de A, lote 1204
    desempaqué la caja, vienen 6 latas de B lote 3004 / descargamos 20 latas de A del camion
    descargado el pedido, 10 B de un kilo / a las 9:15 llegaron 4 latas de A / esta mañana entraron 3 de B, lote 871
    hace un rato dejaron 2 latas de A / vinieron 6 latas de A, una abollada, lote 5252 / vino el proveedor con cuatro B
    apunta 4 latas de A recibidas, lote 3434 / anota entrada de 6 cans de B
    suma al stock 5 latas de A, recién llegadas / son 8 latas de B las que llegaron lote 6161
    yegaron 3 latas de A lote 1903 / che, llegaron las latas de B, son cuatro
  `,
  lid: `
    destapé la lata 3 / quité la tapa de la A / tapa fuera, lata 2 / lata 4 destapada / A destapada / lid off can 2
    lid fuera del A / le quite el lid al can 3 / can 1 sin lid / le saqué el lid al B / le volé la tapa al A
    abrí otra vez la lata 2 / reabrí la A / reabierta la 3 / vuelvo a abrir la lata 5
    volvi a abrir el can de A que ya estaba empezado / volvimos a destapar la B / abro de nuevo la lata 4
    abierta de nuevo la A / abierta otra vez la 6 / abri la A que estaba a medias / abrí la lata empezada de B
    la A de ayer ya está destapada / destapo la lata de ayer, la 2 / el can de ayer lid off / la lata 3 está sin tapa
    la A está abierta ahora / la 2 está destapada / el B esta abierto en la mesa / A abierta voy sirviendo
    levanté la tapa de la lata 1 / levanto la tapa de la A a las 9:05 / levantada la tapa de la 4
    saqué la tapa de la 2 / sacada la tapa de la B / le hice palanca a la tapa de la 5, ya salió
    palanca y tapa fuera, lata 3 / con el destornillador saqué la tapa de la A / saltó la tapa de la 6
    por fin saltó la tapa de la lata 2 / ya salio la tapa del A estaba pegadisima
    estaba pegado el lid del can 4 pero ya salió / la tapa de la B estaba dura, ya está fuera 😅 / popped el lid del A
    le hice pop al can 2 / le di pop al lid de la 3 / ya destapé la A / ya le quite la tapa a la 1
    ya esta sin tapa la lata 4 / ya abri el can 5 otra vez / ya quite el lid wey can 2 / acabo de destapar la lata 3
    acabo de quitar la tapa de la A / recien destape el B / recien le saque la tapa a la 2 / ahora mismo destapo la A
    destapando la 6 / quitando la tapa a la lata 1 / estoy quitándole el lid al can 3 / hace un minuto destapé la A
    hace diez min quite la tapa de la 2 / a las 10:30 tapa fuera de la lata 5 / a las 8:15 destapada la A
    desde las 9 está la lata 4 sin tapa / destapada desde hace 5 minutos la B / he destapado la A para pesar
    he quitado la tapa de la lata 2 para echar / hemos abierto otra vez la 3 / hemos destapado la B empezada
    se destapó la lata 4 / se retiró la tapa de la A / se quitó el tapón de la 7 / desenrosque la tapa de la B
    desenroscada la 2 / solte el aro y quite la tapa de la lata grande / solte el cierre del cuñete 1 tapa quitada
    aflojé la tapa de la A y fuera / retiro tapa de la lata 6 / tapadera fuera la A / quite la tapadera de la 3
    el pote 2 ya sin tapa / che, destapé la A / juan destapó la lata 5 / ok lata 2 destapada
    ok tapa fuera de la A, sirviendo ya / listo, destapada la 4 / listo el lid off de la 1
    otra vez destapada la A venga / apunta tapa de la A quitada / anota lata 3 destapada 11:20 / destape la A
    kite la tapa ala 2
  `,
  shut: `
    tape la lata 3 / tapa puesta lata 2 / cerré la A / lata 4 cerrada / A tapada / lid on can 2 / lid puesto al A
    le puse el lid al can 3 / le puse su tapa al B / le devolví la tapa a la 1 / tapa de vuelta en la A
    lid back en el can 5 / cerrada la 6 / cerrado el B / tapada otra vez la 2 / cerré otra vez la lata de A
    vuelvo a tapar la 3 / volví a cerrar el can 4 / volvimos a poner la tapa a la B / puse la tapa a la lata 1
    puse la tapa sin gas en la A / tapé la A sin argón / cerrada sin gas la lata 2 / la 3 cerrada a pelo, sin argón
    lid on, no gas, can 2 / cerré el A así nomás, sin gas / la tapé así tal cual, la lata 5 / solo tapa en la B
    solo la tapa, lata 4 / nomás le puse el lid al can 1 / la B tapada, solo tapa
    se acabó el argón, la A va tapada sin gas / botella vacía, cerré la lata 2 sin nitrógeno / martillé la tapa de la A
    martillazo a la tapa y cerrada, lata 3 / le di con la maza a la tapa de la 6 / mazo de goma y tapa encajada, la 2
    encaje la tapa de la B / encajada la tapa de la lata 4 / apreté la tapa de la A / bien apretada la tapa de la 1
    presioné la tapa de la lata 5 hasta el fondo / enrosque la tapa de la B / enroscada la 3 / cerre el aro del cuñete 2
    aro puesto y tapa encima, la lata grande / le eche la tapa al A / le aventé el lid al can 4
    le clave la tapa a la 2 / sellé la lata 3 / sellada la B / selle el can 6 con su tapa / ya tapé la A
    ya cerré la lata 2 / ya está cerrada la 5 / ya esta tapado el B / ya quedó cerrado el can 1
    ya le puse la tapa a la 4, listo / acabo de cerrar la lata 3 / acabo de tapar la B / recién cerré la A
    recien tape la 2 / ahora mismo tapo la 6 / cerrando la lata 4 / tapando la A / estoy poniendole el lid al can 2
    hace cinco minutos cerre la B / hace un rato tapé la lata 1 / a las 10:05 cerrada la A
    a las 9:50 tapa puesta en la 3 / lata 5 tapada 11:15 / he tapado la B / he cerrado la lata 2 y al estante
    hemos puesto la tapa a la A / hemos cerrado la 7 / se cerró la lata 4 / se tapó la parte B
    se colocó la tapa en la lata 3 / coloco tapa en la 2 / la A ya tiene tapa / la lata 6 con la tapa puesta
    el B con su lid bien puesto / el can 3 cerradito en el shelf / guarde la B tapada / al estante la 5 cerrada
    de vuelta a la caja la B tapada / ok cerrada la lata 1 / ok tapa puesta por fin 🙌 la 4 / listo, tapadita la B
    ana cerró la lata 2 / che, cerré la A / apunta B cerrada / serre la lata 3
  `,
  blanket: `
    argón a la lata 3 y tapa / le eché argón a la A y la cerré / nitrógeno en la lata 2, cerrada
    lata 4 con gas y tapada / A gaseada y cerrada / gaseada la 3 / argonizada la lata 1
    le di gas al can 2 y le puse el lid / le puse argon al can de A, lid on / le blastie argon al A y a tapar
    blasteé el can 3 con argon y lid puesto / blasteada la A / le di un blast de nitrogeno al B y lo cerré
    purgué la lata 5 con argón / purgada y cerrada la A / purga hecha en la lata 2 / purge al can 4, tapa puesta
    puse gas sobre la A / puse argón encima de la lata 6 y la tapé / puse el colchon de nitrogeno en la 3
    colchón de argón en A, cerrada / colchoncito de gas a la B y tapa / manta de argon en la lata 1
    le puse su mantita de argón a la A 😴 / blanket puesto en can 2 / blanket de argon al A, cerrado
    blanketee la lata 4 / le hice blanket al can 5 / cubri la A con nitrogeno y tapa encima
    cubierta con argón la lata 3 / cubierta de gas la 7 y cerrada / inerticé la lata 2 / inertizada la A
    inertizada y tapada la lata 8 / A inertizada con nitrogeno 9:52 / atmosfera de argon en la lata 4 bien tapada
    la A ya tiene argón / la lata 3 ya tiene su gas y su tapa / la 2 con argón dentro y cerrada
    el can 1 ya con gas y lid / el A quedo con nitrogeno y cerradito / quedó el B con argón, lid bien puesto
    quedó gaseado el can 6 / quedo la lata 5 con su gas / se quedó la A bajo argón / deje la A con argon y tapada
    dejé la lata 2 bajo nitrógeno / dejo lata 4 gaseada en el estante / guardé la A con gas
    guardada la 3 con argón, tapa apretada / guardo el can 2 con su argón
    de vuelta al estante la A con argon y cerrada / argon y al estante lata 1 / gas y tapa, lata 6 / gas y tapa a la A
    argón, tapa, listo, la 4 / nitro a la A y cerrada / nitro y lid, can 3 / nitrógeno 10 segundos a la lata 2 y tapa
    diez segundos de argon al A y lid / quince segundos de gas en la lata 5 tapada / sople argon en la A y la cerre
    soplé gas a la lata 3 / sopladita de argon al B y a cerrar / un soplo de nitrógeno y tapa en la 4
    un chorrito de argon a la lata 1 y tapada / le meti gas al can 2 / le metí argón a la A nada más verter
    le metí nitrógeno a la 7 y martillazo a la tapa / le tire argon al A y lo tape / le tiré gas a la lata 3 y cerré
    le aventé argón al can 4 y lid / le rocié argón por encima a la A, tapa puesta / le inyecte nitrogeno a la lata 2
    le pasé la manguera de argón a la 5 y cerré / le eché spray de argón a la lata de A
    le di al spray de gas y tapé la 6 / desplacé el aire de la lata 3 con argón y la cerré
    saqué el aire de la A con nitrógeno / aire fuera, argón dentro, lata 2 cerrada
    rellené el hueco de la lata 4 con argón / el headspace del can 1 con argón, tapado
    headspace de la A lleno de nitrogeno / cerre la A con argon / cerré el can 3 con su gas / cerrada la lata 5 bajo gas
    cerrada con argón la B / tapada con argón la A / tape el A con nitrogeno hace dos minutos
    tapé la 2 después de darle gas / a las 9:44 argón a la lata 3 / a las 10:20 gas en A y tapa puesta
    hace cinco minutos le di argón al can 2 / ahora mismo gaseo la A y la cierro / recién le puse argón a la lata 4
    acabo de poner gas a la A / acabo de echar nitrógeno en la lata 6, cerrada / ya le puse argon al A
    ya tiene gas la 1 / ya gasee la lata 2 / ya está con argón la 3 / ya quedó el can de A con gas wey
    ok A con argón, tapa martillada / ok por fin argón en la lata 7 / listo el gas en la 5
    menos mal que quedaba argon A cubierta y cerrada / lo que sobró de A ya está con argón y tapado
    el resto de la lata 2 bajo nitrógeno / lo que queda en el can 4 ya con su blanket
    he puesto argón a la A, 8 segundos / le he dado gas a la 3 y he cerrado / hemos inertizado las latas 1 y 2
    se gaseó parte A y se cerró / marta gaseó la A / el nuevo le dio argón al can 5, lid on
    apunta argón en A, tapa puesta / anota lata 6 con nitrógeno / argon ala lata 2 i serrada / le heche argon ala A
  `,
  prestir: `
    removí la lata 3 antes de echar / agité la A cinco minutos / le di vueltas a la lata de A
    meneé el can 2 bien meneado / stirreé el A dos minutos en su lata / shakeé la lata 4 / le di shake al B
    le di una buena sacudida a la lata 5 / sacudida la lata 2 / agitada la 3 / removida la A
    removido el fondo de la lata 1 / A removida 3 minutos / can 3 stirred / lata 4 agitada y lista para servir
    ya removí la A / ya meneé la B / ya agité el can 6 antes de servir / batí la lata de A con la varilla
    batida la A en su bote / le pasé la espátula al fondo de la lata 2 / rasqué el fondo de la 3 y lo removí todo
    el fondo de la lata 5 estaba pegado, lo he levantado y removido / levanté el asiento de la lata 1 con la paleta
    levanté lo asentado del A / deshice el poso de la lata 4 / el poso de la A ya está disuelto, removida 4 min
    homogeneice la lata 2 / lata 3 homogeneizada / A homogénea, removida un minuto en la lata
    mezclé el contenido de la lata 6 antes de verter / mezclado el A dentro de su lata / mezcladita la lata de B
    revolvi la lata de A / revolví bien el can 1 / revuelta la lata 4 / revolvimos el A medio minuto antes del pour
    le revolvi al A con un palo dos minutos / con el palito le di vueltas a la B
    con el taladro le di 3 minutos a la lata grande de A / taladro y varilla en la lata de 20, cinco minutos
    le metí la batidora a la lata 7 / le metí el mixer al can de A tres minutos / le di con el paint shaker al can 2
    al shaker la lata 3, 2 minutos, lista / pasé la 5 por el agitador de latas / lata 1 por la vibradora
    la puse en el shaker un minuto, la A / rodé la lata de A en el suelo un rato / volteé la lata 4 unas cuantas veces
    le di la vuelta a la B varias veces pa que se mezcle / batuquee la lata de A / le di su batuqueada al can 3
    zarandeé la lata 2 / zarandeada la B, 30 segundos / la 6 agitada jaja me duele el brazo
    medio minuto removiendo la lata chica de A / treinta segundos de agitar la 4 / un minuto de stir al can 5
    dos minutos meneando el A y quedó parejo / cinco minutazos removiendo el cuñete de A / estoy removiendo la lata 2
    removiendo la A ahora / aquí meneando el can 3 antes de servir / ando agitando la lata de B
    estoy dándole vueltas a la A en su bote / se removió la lata 5 / se agitó parte A 2 min antes del vertido
    se homogeneizó el contenido de la lata 8 / he removido la A 90 segundos / he agitado la lata 3 antes de pesar
    hemos meneado la lata 7 / hemos batido la B en el propio bote / han removido la lata 4 cinco minutos
    lo removio juan la lata 2 / el nuevo agitó la A tres minutos / el chavo ya le dio su shake al can 4
    moví la lata de A / le movi al A antes de servirlo / ya le movi al can 2 con la paleta / le moví parejo a la B
    movido el A, dos min / ok lata 1 bien agitada / ok la A ya está removida por fin / listo meneada la 6
    listo el stir de la lata 3 / deje la A bien batidita / bien meneado el B 👍 / bien agitadita la lata 5
    menos mal que removi la lata 2 habia un dedo de poso / uf qué poso tenía la 4, ya está toda removida
    la neta estaba bien asentado ya le di vueltas al can 1 / estaba asentada la A y la removí hasta dejarla uniforme
    a las 8:35 removida lata 3 / a las 9 agité la B / hace un momento removi la lata de A
    hace cinco min le di shake a la 2 / antes de pesar sacudi la lata 6 / antes del pour le di stir al A
    previo a servir agité lata 9 / apunta A removida en lata 3 minutos / anota lata 4 agitada 1 min
    registra que revolví el can de A / removi la lata d A / ajite la lata 2 / rebolvi el can 3 un ratito
    menee la A dos minutos / che, batí la lata 1 un minuto / la revolví toda a la A, quedó lisita
    stirred la lata 7, dos minutos con varilla limpia
  `,
  used: `
    saque 400 g de la lata 3 / usé 620 gramos de A / gastamos 1,2 kg de la lata 2 / de la lata 1 salieron 350 g
    del can 4 saqué 500 / tomé 750 g del B / cogí 300 g de la lata 5 / agarré medio kilo del can 2
    se fueron 900 g de la A / consumo lata 3: 480 g / consumidos 1100 g de B / gasto de A hoy, 2.4 kilos
    usados 255 g de la lata 6 / used 600 g del can 1 / le saque dos libras al can de A / le quite 180 gramos a la B
    le bajé 700 g al can 3 / me llevé 450 g de la lata 2 / extraje 330 g de la lata 4 / retirados 505 gramos de la A
    serví 640 g de la lata 1 / vertidos 275 g de la lata 7 / la lata 2 bajó 810 g / la A pesa 400 g menos
    ocupe 560 del can de B / acabo de sacar 390 g de la 5 / a las 9:30 saqué un kilo de la lata 3
    ya saque 220 g de la A / ok, de la B se usaron setecientos gramos / use 150 g d la lata 4
  `,
  rags: `
    trapos al bidón con tapa / trapos en su lata / meti los trapos en la lata metalica
    metidos los trapos con disolvente en el cubo con tapa / los trapos ya están en el bote de metal
    los trapos sucios al bote con tapadera / guardé los trapos de acetona en la lata
    trapos de acetona dentro y cerrado / trapos recogidos y tapados / todos los trapos a la lata
    tiré los trapos al bote metálico / eché los trapos al can rojo / rags en el can de metal / rags al red can, lid on
    rags en el oily waste can / puse los rags en la lata con lid / los rags ya están en su can / ya metí los rags
    ya están los trapos en el can metálico / solvent rags en el safety can, cerrado
    los trapos con solvente al can de seguridad / aventé los trapos al can de metal y le puse el lid
    trapos con thinner al bote metálico, tapado / los trapos del thinner ya en su bote
    trapos del alcohol isopropílico a la lata / trapos de IPA en el cubo de metal
    trapos mojados de solvente dentro de la lata cerrada / trapos impregnados al contenedor metálico con tapa
    contenedor de trapos cerrado, todo dentro / se depositaron los trapos en el recipiente metalico
    recogimos los trapos y al bidón metálico / recojo trapos y cierro la tapa / estopas al bote de metal
    las estopas con acetona en su tambo con tapa / metí la estopa sucia en la lata / paños al cubo metálico
    paños con disolvente guardados en la lata con tapa / los paños usados ya estan tapados en metal
    bayetas de acetona en la lata / toallitas de limpieza a la lata de trapos / los wipes con acetona al can de metal
    wipes sucios en el red can / papel con acetona tambien todo en la lata con tapa / franelas al bote con tapa
    las franelas con thinner ya quedaron en el can / los trapos de limpiar la pistola a la lata
    los trapos de la limpieza ya están en la lata roja / lata de trapos llena y tapada / seis trapos a la lata de metal
    un puñado de trapos al bidón de trapos / último trapo en la lata, tapa puesta / acabo de meter los trapos en la lata
    recien guarde los trapos con solvente en el tacho de metal / los trapos al tacho metálico con tapa
    hace cinco minutos los trapos a su lata / a las 13:20 trapos en el bote metalico
    ok trapos en la lata por fin, qué peste / listo trapos recogidos y en su lata 👍
    menos mal, todos los trapos del suelo ya en el can / trapos ala lata de metal serrada
  `,
};
