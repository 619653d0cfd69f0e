// How Spanish speakers say it: film, adhesion, release, hold. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfChecks: Sayings<SaidMeaning> = {
  film: `
    la 7 da 18 micras en seco / DFT 20 la 8 / seco 19 en la 3 / film 0.8 mils la bracket-8 / dry film 22 en la 5
    dft la 12 a 21 micrones / espesor seco 17, carcasa / la 9 curada mide 20 / la 4 ya curada trae 0.7 mil
    medida la 6 con el medidor: 23 / le puse el gauge a la valve 2 y da 0.9 / el gauge marca 24 en la impeller-3
    gauge en la 10, .8 mils / dry 0.75 mils en la cover / el medidor de espesores dice 18 en la tapa
    el cacharro de espesores da 21 en la placa / la sonda de espesor sale en 19, brida 3
    cinco lecturas en la 11: 18 19 20 19 21 / tres puntos de seco en la 2, 17 20 22 / promedio 20 en la 13
    media de 19,4 micras en la 14 / media seca 21 en el rodete / mínimo 16 máximo 24, pieza 15
    min 0.7 max 1.1 la cover plate / espesor final 20 en la 16 / espesor de película seca 18, la 17 / espesor 22 codo
    película seca de la 1 en 19 / película curada 23 en la barandilla / micraje seco 20 la 18
    micras secas: 21 en la 19 / micrones 18 en el filo y 22 en el centro, seca la 20
    en seco por el borde 15 y en medio 20, la 8 / veinte micras secas la siete / punto ocho mils la ocho ya curada
    dieciocho en seco la válvula dos / ya fría la 5, mido 20 / recién enfriada la 6 da 19 de película
    tras el horno la 3 queda en 18 micras / despues del cure la 4 quedó en 0.8 / salió del horno con 21 de espesor la 9
    quedó en 20 la tapa, seco / quedaron en 19 las dos bridas curadas / se le midió a la placa 22 seco
    le medí el film a la 10: 0.9 / le he medido el espesor a la 11, 20 / he pasado el medidor por la voluta, 17 a 21
    acabo de medir la 12 curada, 18 / ahorita le medí el dry a la 13, 1 mil / a las 13:20 DFT 20 la 14
    hace un rato la 15 dio 19 en seco / esta mañana medí la 16: 21 micras secas / bien parejita la 17, 20 20 19 en seco
    va clavada la 1, 20 de seco / menos mal, la grande da 18 seca / por fin medí la carcasa, 22 micras
    ok la 2 en seco 20 / listo, dft de la 3: 0.8 / la neta quedó perfecta la 5, 20 micras / che la brida dio 19 de seco
    mi hermano el bracket curado dio .9 / jefa la voluta 21 de espesor seco / seco seco: 7 a 20, 8 a 19
    7: 18, 8: 21 curadas / las seis placas entre 18 y 22 secas / todas las del lote 2 a 20 de DFT
    lo del bote 1 promedia 19 micras curado / la testigo da 20 en seco / cupón del batch 3, dft 21
    anota DFT 18 en la 6 / apunta seco 20 rodete / registra espesor 19 pieza 4 / serie 4411 DFT 20,5 / 📏 seco 20 la 9
    dft 10 19 / seca la 11 mide 17 con el de corrientes parásitas / con el eddy gauge la tapa de aluminio da 0.8
    sobre aluminio la 12 marca 22 de película / puse el cero y medí la 13, 20 micras / Lucía midió la 14 curada, 18,5
    el Toño le sacó 21 al espesor de la 15
  `,
  adhesion: `
    adherencia 5B la 7 / la 8 da 4B / cross hatch 5B en la bracket-8 / crosshatch de la 3, 4B / cuadrícula 0 en la 5
    corte enrejado clase 1, pieza 12 / enrejado en la 9, grado 0 / le hice la cuadricula a la 4 y no se levantó nada
    tape test en la valve 2, 5B / tape test pasado, impeller-3 / prueba de cinta a la 6, aguanta
    la cinta salió limpia en la 10 / la cinta se llevó dos cuadritos en la 11, 3B
    pegué la cinta a la 13, jalé y ni un cuadro / jalé el tape en el housing y todo en su lugar
    arranqué la cinta de la tapa, saltaron bordes, clase 2 / pull-off 6 MPa en la 14 / tracción de la 15, 7,2 MPa
    dolly en la placa 2: 5 megas / pull off 900 psi la 16 / el dolly se despegó a 800 psi, pieza 17 / pega bien la 1, 5B
    agarra de lujo la carcasa, cuadrícula cero / adhesion 4A en la cover / adhesion ok la 2
    adhesión buena en la brida 3 / adhesión 5B rodete, a las 3 pm / resultado de adherencia en la 18: clase 0
    adherencia mala en la 19, 1B / se peló todo el cuadrado en la 20, 0B
    se desprendió al tirar la cinta en la 21, clase 4 / cruz de san andrés en la 22, 5A / corte en X a la voluta, 4A
    la testigo dio 5B de adherencia / cupón del batch 2, enrejado 1 / test de adherencia hecho a la 23, pasa
    le hice el tape a la 24, pasó con 4B, la neta me sorprendió / anota adherencia 0 en la 25
    menos mal la barandilla dio 5B / rayado con cuchilla y cinta en el codo, cero pérdida
  `,
  shipped: `
    ya se entregó la 4 / entregué la 6 / entregamos la carcasa / se llevaron la 5 / el cliente se llevó la 8 / el cliente recogió la 8 / vino el cliente por la 5
    la 7 se fue en el camión / el camión se llevó la 3 / el chofer se llevó la 9 / subimos la 9 a la camioneta y se fue / la 9 va camino al cliente / mandé la 6 con el cliente
    la 5 ya no está, la tiene el cliente / la 5 ya salió del taller / la 8 salió del taller / la 8 se fue hace una hora / la 3 se entregó hoy / dejé la 3 con el cliente
    le di la 6 al cliente / el mensajero se llevó la 2 / la paquetería recogió las dos / despaché la 4 / se despachó la carcasa / embarqué la 4 / embarcaron la 4
    la 9 salió por la puerta / ya salió la pieza 6 para el cliente / alguien llevó la 6 al cliente / la 6 quedó entregada / la 6 ya se envió / empaqué y envié la 7
    el cliente se fue con la 8 / pasaron a recoger la 8 / recogieron la 8 / la brida se fue ayer / se fue todo el pedido 4 / salió la orden completa para el cliente
    envié la 9, ya va en la tarima y se fue / la 9 ya no está aquí, se embarcó / llevé la 1 a la obra y la entregué / la 2 ya está con el cliente / enviada la 2
  `,
  release: `
    la 7 liberada / liberada la 8 para envío / release la bracket-8 / suelta la 3 / la 5 sale / aprobada la 12
    la 9 está ok para mandar / le di el visto bueno a la 4 / visto bueno a la carcasa / conforme la 6, puede irse
    pasa la 10 a expediciones / pasó inspección la válvula 2, se va / la placa 1 aceptada, a embalar
    dada de alta la tapa para salida / doy salida a la 11 / damos por buena la 13 / doy por buenas la 14 y la 15
    la 16 buena, pa la calle / a shipping la 17 / lista pa shipping la impeller-3 / ready to ship la cover / ship la 18
    released la 19 / ya le di release al housing / ya quedó released la valve / ya solté la 20 / solté las tres bridas
    firmada la 21, sale hoy / firmé la salida de la 22 / sellada y liberada la barandilla / etiqueta verde en la 2
    le puse green tag a la 1 / tarjeta verde al rodete / ya puede irse con el cliente la 23
    que se la lleve el cliente, la 24 está aprobada / el inspector liberó la 25 / QC pasó la 26, release
    calidad aprueba la voluta / el jefe ya aprobó la 3 y la 4 / Lucía da el ok a la 6 / yo firmo la 8, entregable
    libero 7, 8 y 9 / libero el lote 2 completo / todo el batch 1 liberado / todas las del bote 3 aprobadas
    las seis placas ok para despacho / despachable la bomba / despachada con mi firma la 27 / autorizo el envío de la 28
    autorizada la salida del codo / apta la 29 / apta para servicio la brida / terminada y aprobada la pieza 4411
    serie 4408 conforme, liberar / cerrada la ficha de la 30, aprobada / quitada la retención de la 5, liberada
    le quité el hold a la 10, ya sale / levantada la retención de la tapa, conforme / ya revisada la 31, de diez, sale
    quedó chula la 2, release / al fin! la carcasa aprobada / menos mal, la grande liberada a las 16:40
    la neta quedó al cien la 14, suéltala / che la brida está aprobada, mandala / mi hermano el bracket pasó, pa fuera
    ✅ 7 ok envío / 👍 aprobada la 32 / 📦 la 9 liberada / 🟢 la 12 / anota liberada la 33 / apunta release 34
  `,
  hold: `
    7 retenida por descuelgues / la 8 en hold, trae runs / retén la 3, puntos de gel / hold la bracket-8, gel specks
    aparto la 5, muy fina en el borde / la 9 no sale, está chorreada / parada la carcasa: piel de naranja
    bloqueada la 12 por burbujas / para la 4, tiene una cortina / detenida la valve 2, se ve el metal en una esquina
    pon en espera la 6, película baja / en espera la 10 hasta que la vea Lucía, tiene una raya
    separo la 11, granitos por toda la cara / la aparté, la 2, se escurrió abajo
    le puse la etiqueta roja a la 13, lagrimas / etiqueta roja en la tapa, cráteres
    red tag a la impeller-3, bubbles por todos lados / taggeada la 7 en hold por thin edges
    tarjeta amarilla a la brida, mota de polvo gorda / queda retenida la placa 6, adherencia floja
    queda en hold la 14, se peló en el test / se queda la 15, bordes flacos / se me queda aquí la 3, le falta espesor
    no la suelto la 8, está pegajosa todavía / no dejo salir la 5, tiene pelos de brocha
    no pasa la 9, 11 micras nada más / no pasa inspección la válvula, huecos sin pintar
    no va la 16, se hirvió en el horno / rechazada por ahora la 4, ojos de pez / fisheyes en la 2, en hold
    ojos de pez en la 17, la retengo / goteras en la 1, retenida / gotas colgando de la 6, apartada
    lagrimones en la barandilla, la paro / escurrimientos en el housing, hold / runs en 7 y 8, las dos hold
    sags en la cover, la dejo en hold / corrida la pintura en la 10, la bloqueo / chorretones en la 3, retenla
    gel en la 12, retenida / grumos en la 5, la pongo aparte / bolitas de gel en la cara mojada de la 9, la detengo
    pelotitas por toda la 11 che, la freno / mugre pegada en la 14, hold / basura en el coat de la 2, a hold
    bichos pegados en la placa jaja, la aparto / cayó un mosquito en la 6, retenida / pelusa en la tapa, se queda
    polvo en la 18, a cuarentena / cuarentena para la 20, no sé qué lote llevó y así no va
    a cuarentena las 3 del bote 2, el bote iba gelado / lote 2 en hold, ratio malo
    todas las del batch 4 retenidas, salieron blandas / hold al batch entero, se quedó soft
    blanda la 7 al día siguiente, bloqueada / suave todavía la 5 con la uña, la detengo
    se marca la uña en la 8, retenida / quedó mordida la 4, se le ve la huella de un guante, hold
    dejaron un dedo marcado en la 9, la aparto / golpeada al sacarla del horno la 3, en espera
    rayada la 12 con la uña del montacargas, hold / raspón en la 10, retenida / se despostilló la 15, la aparté
    chip en el borde de la 6, on hold / descascarillada la esquina de la 2, retenida / ampollas en la 13, la bloqueo
    ampolló la voluta en el horno, parada / hervida la 5, burbujas de solvente, hold / pinholes en la 7, retenida
    poros en la cara de sello de la 8, no sale / cráteres en dos sitios, pieza 9 parada / calva en la 4, apartada
    un cacho sin pintar en la 16, la detengo / holiday en la 11, hold / se quedó pelón un filo de la 3, on hold
    delgada en los cantos la 1, en hold / muy flaca la pelicula en la 14, la aparté / film bajo en la placa 2, retenida
    film muy alto en la 6, 40 y pico, hold / gruesa de más la 5, retenida / pasada de espesor la tapa, en espera
    piel de naranja fuerte en la cover, la paro / orange peel bien feo en la 10, hold
    moteada la 8, retenla hasta mañana / manchas blancas en la 12, bloqueada / se blanqueó la 3 por la humedad, retenida
    velada la 7, turbia, la aparto / nubosa la placa, hold / amarilla la 17 del horno, parada / se tostó la 9, hold
    quemada la chica, retenida / líneas de solape en la 4, en espera / raya de retoque en la 2, hold porque se nota
    el retoque de la 6 se levantó, retenida / se arrugó la 5, apartada / arrugas por toda la brida, no sale
    se cuarteó la 13, bloqueada / grietas en la esquina de la 15, hold / óxido por debajo en la 11, retenida
    se ve rust bajo el coat de la 8, hold it / falta el dato de espesor de la 3, la retengo
    no cuadra el lote de la 14, en espera / sin número de serie la 10, retenida hasta aclararlo
    el cliente pidió parar la 7, hold / por orden del jefe la 9 se queda aquí / calidad me frena la 12 por brillo
    el QC la puso en hold a la 2, textura / el inspector paró la 4, adherencia 3
    horas de horno cortas en la 6, se queda / curó frío la voluta, retenida / salió cruda la 5 del horno, la paro
    le faltó cure a la 8, en hold / pues nada, la 3 a la mesa de retenidas, descuelgue
    chin, la 7 traía runs, ya la puse en hold / ni modo jefe, la 10 en hold, se chorreó
    no manches la 4 quedó llena de gel, la aparto / vaya faena, la carcasa tiene burbujas, la bloqueo
    maldita sea la tapa con gotas, retenida / qué lástima, placa 9 con un pelo de brocha, en espera
    ay bendito la 6 llena de burbujas, aguantada / aguántame la 8, está fina por el filo
    aguanta la 2 mi hermano, tiene chorreo / me guardo la 1, la quiero ver con luz, tiene sombras
    lamento decirlo, la 13 se queda, mate a parches / ⛔ la 5, gel / 🛑 7 runs / ✋ la 9, borde fino
    ❌ la 3 trae ojos de pescado, hold / hold 11, bubbles / hold 4 goteada / retener 6 espesor bajo
    bloquear 8: contaminada con silicona / anota retenida la 2 por descuelgue / apunta en hold la 14, falta adherencia
    registra no conforme la 16, inclusión / no conforme la brida 2, falta de cubrición / NC en la válvula, contaminación
    serie 4411 en retención, motivo: burbujas / siete y ocho retenidas por chorreo / a un lado la 17, puntitos de gel
  `,
};
