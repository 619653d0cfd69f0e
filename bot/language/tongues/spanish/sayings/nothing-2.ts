// How Spanish speakers say it: nothing. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfNothing2: Sayings<SaidMeaning> = {
  nothing: `
    se devolvió al cliente / la devolvimos al proveedor / la regresaron al cliente sin pintar
    hace 30 grados en la calle / fuera hay 12 grados / afuera está a 35 a la sombra / en la calle hacen 28 grados / el pronóstico da 31 grados
    todavía no le damos al batch / aún no arranca el agitador, falta la B / no he pesado nada
    no se ha pesado la B todavía / no he filtrado, no hay filtros / la mezcla no está lista / no está espesa, tranquilo
    no está gelada, sigue líquida / no la tires todavía / no he tirado nada / no tapé el bote, se me pasó
    no le puse gas, no había / todavía no destapo la lata / aún no llega la A / no abrí la B nueva
    la 3 no se ha pintado / no pinté la 4, la dejé para luego / no está curada la voluta / no salió del horno todavía
    no la saqué, sigue dentro / no la metí al horno / no ha entrado al horno la tapa / aún no lijo la 6
    no la he limpiado / falta desengrasar la 2 / falta granallar la brida / no hemos medido la película
    no le he pasado el peine / no hay lectura de la 5 / sin medir todavía / no tengo el espesor
    no prendimos el extractor / el fan no anda prendido aún / no traemos las capuchas todavía
    no hemos empezado a rociar / nadie lavó la pistola / no lavé la brocha / falta lavar el rodillo
    aún no guardo los trapos / no recogí los trapos / no es cierto que se cuajó / no fue gel, fue una nata
    no se derramó nada / no se cayó ninguna pieza / no fue la 7 ni la 8 / no voy a mezclar hoy
    no vamos a pintar con este frío / hoy no se mezcla nada / hoy no toca horno / no pienso abrir otra lata
    ahorita no, al rato mezclamos / al rato peso la A / ahorita lo filtro / ahorita vengo y le doy / ya voy a tapar
    ya mero filtro / ya casi la meto / en cinco minutos apago el agitador / en diez saco la tapa
    en un ratito le paso el peine / en lo que vuelvo la tapo / a las tres la saco / después del lonche pinto la 9
    después de comer mido el aire / terminando esto lavo la gun / acabando de pintar limpio la brocha
    mañana temprano granallamos la carcasa / mañana a primera hora abrimos lata / el lunes curamos las tapas
    la otra semana le damos al tanque / esta tarde quiero meter las bridas al horno
    esta noche se queda curando el tanque, a ver / más tarde reviso la adherencia / voy a lijar la 5
    voy a desengrasar la 8 / voy a pasarle alcohol / voy a medir la película / voy a prender el extractor
    voy a lavar la pistola / vamos a granallar la voluta / vamos a soltar la 4 cuando venga Bea
    vamos a recibir las latas el martes / vamos a cerrar la sesión en un rato / pienso darle con rodillo
    pensamos curarla al aire / tenía pensado usar la B vieja / quería filtrar pero me llamaron
    iba a tapar la lata y sonó el teléfono / estaba por apagar el mixer / estaba por meterla al horno
    a punto de abrir la lata / a punto de rociar / listo para pintar, nomás falta la gun / tengo que tapar la A
    tengo que pesar otra vez / tengo que sacar la 6 a las dos / tenemos que filtrar / debo lavar la brocha
    debería darle otra capa / habría que echarle gas a la lata / habrá que tirar lo que sobre
    habrá que lijarla otra vez / hay que medir el aire / hay que limpiar la pistola ya
    hay que pintar la 4 antes de las doce / falta pintar las chicas / faltan de sacar dos / queda por lijar la tapa
    pendiente medir la 9 / necesito que alguien tape la A / necesito que filtren la 2 / que Omar saque la 5
    que Lia mida la humedad / que no se olvide el gas / Omar, tapa la lata / Lia, apaga el agitador
    Kari, mete la 7 al horno por favor / Beto saca las tapas a las dos / Toño lava la pistola cuando puedas
    compa tápame la lata / hermano échale gas a la A / muchachos limpien las brochas / chavo prende el fan
    jefe revise la 9 / tú pinta la 3 y yo la 4 / no le muevas al agitador / no le eches más B / no le metas al horno
    no vayas a abrir la cabina / no se les ocurra tocar la 8 / ni la toquen / no se te vaya a pasar la mezcla
    cuidado no se cuaje / cuidado que no se seque la brocha / ojo con la tapa / acuérdate de filtrar
    recuérdenle tapar / si espesa la tiramos / si se cuaja hacemos otra / si está seca la metemos
    si no alcanza mezclamos más / si llega a 90 avísame / si sobra lo tiramos / si llueve no pintamos
    si sube la humedad paramos / si no jala el fan no se rocía / si el cliente dice que sí la soltamos
    si falla la cinta, hold / cuando seque la meto / cuando llegue a 90 la saco / cuando suene filtro
    cuando venga el gas abro la A / cuando termine la cabina lavo / en cuanto se seque, al horno
    en cuanto baje la humedad pintamos / apenas llegue la B mezclamos / apenas cure la suelto
    hasta que no seque no entra / como que ya está seca / como que se está espesando, no sé
    se me hace que está gelando / se me hace que la 5 ya curó / me late que falta / yo digo que ya secó
    yo digo que le falta / para mí que está espesa / pa mí que no cuajó / se supone que está tapada
    supuestamente la filtraron / según el chavo ya está pintada / según Omar pesó bien / dicen que ya la sacaron
    me contaron que se cuajó una / parece que ya entró al horno / creo que eran 640 de A / creo que la tapé
    creo que le puse argón / creo que la B está abierta / creo que la sacaron a las tres / creo que está en 90
    no sé si la lijaron / no sé si la 7 ya está seca / no sé si apagué el mixer / no sé si hay gas
    no sé bien cuánto pesaba / no estoy segura de la hora / ha de estar como a 80 / debe estar seca ya
    debe de haber salido / seguro ya la pintaron / a lo mejor Lia la midió / tal vez la filtró el otro turno
    quizás sobró algo en el bote / quizá abrieron otra lata / puede que esté gelando / puede ser que la hayan soltado
    podría estar espesa, hay que ver / ojalá cure bien / ojalá no llueva / ojalá alcance la mezcla
    ojalá hubieran tapado la lata / espero que no se cuaje / espero que aguante el filtro / casi se me cae el bote
    casi se me cuaja / casi meto la pieza mojada / por poco y la toco / por poco rociamos sin fan
    estuve a punto de tirar la buena / deberían haberla filtrado / debimos pintar ayer / hubiéramos mezclado menos
    si la hubiera tapado no se seca / me hubiera gustado sacarla antes / en el otro taller filtrábamos con media
    en mi otro trabajo mezclábamos a mano / en Monterrey la curan a 120 / mi papá pintaba con brocha de pelo
    antes lijábamos todo a mano / antes se pesaba en romana / hace años la A venía en tambo
    el año pasado se nos cuajó en el tanque / ayer hubo un batch gelado / ayer pintamos todo el día
    ayer se pintó la 9, ya está apuntado / la semana pasada granallamos cincuenta / el mes pasado tiramos tres botes
    en mayo llegaron las latas / una vez se me cuajó en la gun / una vez abrí una lata y era piedra
    un día se le olvidó el filtro a Beto / la vez pasada nos falló la cinta
    el otro turno dejó la lata abierta, ya la vimos / el otro turno tiene su propio bote
    la mezcla de los de noche no es nuestra / esa pieza es de los de tuberías / el bote de al lado es de esmalte
    esa lata es de primer, no es nuestra / la cubeta amarilla es de agua / el tambo rojo es diésel
    ese horno es de la panadería jaja / los de la otra nave están granallando / el vecino está lijando y hace polvo
    los de mantenimiento pintan el piso / el contratista pinta la fachada / los albañiles están mezclando cemento
    la mezcladora de cemento hace un ruidazo / están echando concreto afuera
    el electricista va a cortar la luz mañana / la grúa está ocupada / el montacargas se quedó sin gas
    se ponchó la llanta del montacargas / la troca del cliente no cabe en el dock / el camión no abre la puerta
    el compresor anda fallando / el compresor tira agua / cambié el aceite del compresor
    el aire de la llanta está bajo / se tapó el filtro de la cafetera / la balanza se apaga sola
    la báscula necesita pilas / la pila de la báscula se acabó / el higrómetro está sin pila / se rompió el peine
    perdí el medidor / la tapa del inodoro está rota / la cubierta del celular se rompió
    la película de anoche estaba buena / vi una película de terror / qué película más gruesa jaja
    me dieron capa de vacaciones / mi hijo lleva capa de superhéroe / la segunda mano de póker
    en la primera mano me tocaron dos ases / me ganaron la mano / jugamos cartas y perdí la mano
    la mezcla de música estuvo buena / el DJ hizo un mix tremendo / un mix de frutas por favor / batido de fresa
    me hice un batido / la leche se cuajó / se cortó la mayonesa / el flan no cuajó / la gelatina no cuajó
    el arroz quedó pegado / el mole se espesó / el caldo está aguado / la sopa está espesa / los frijoles están duros
    el pan está duro como piedra / el pollo salió seco / el horno de mi casa no prende / se quemaron las tortillas
    metí el pavo al horno / saqué las galletas del horno / horneé un pastel / la pizza está en el horno
    pongan las tortas en el horno / el microondas se chingó / la parrilla está a 90 / pongo el asado a fuego lento
    el aceite está caliente / filtra el café por favor / colé los fideos / pesé la carne, dos kilos
    compré dos kilos de tortillas / un kilo de carnitas pa todos / traigo medio kilo de jamón
    dame un kilo de aguacate / tres libras de costilla / bajé dos kilos / subí tres kilos en diciembre / peso 82 kilos
    mi niño pesó 3 kilos 200 / me pesé y ando en 90 / la báscula del baño miente / estoy a dieta / lata de frijoles
    abrí una cerveza / destapa las chelas / cerró la tienda / abrieron una taquería / la tapa del tupper no cierra
    botes de basura llenos / tiré la basura / tiré mi café sin querer / se me cayó el lonche
    se tiró el refresco en la troca / me tiré a la alberca / vacié la hielera / se vació el estadio
    está vacío el comedor / la nevera está vacía / vacíen el bote de basura / tanque vacío, voy a echar gas a la troca
    eché gasolina / voy por gas pa la troca / se acabó el gas de la casa / qué gas, el de la cocina
    aire acondicionado a 22 / en mi casa hay 30 grados / la oficina está helada / afuera está a 40
    38 grados en la calle y sin sombra / hoy amaneció a 5 grados / dicen 90 de humedad mañana / lluvia al 80 por ciento
    viene un norte / viene huracán / el sol pega duro / está seco el campo / se secó el río / mi garganta está seca
    la ropa no se seca / tendí la ropa / secadora descompuesta / toqué la guitarra anoche / toqué la puerta y nadie
    me tocó la lotería, no / te toca pagar / le toca a Omar traer las tortas / no me toques / me toca descansar
    la pelota pegó en el poste / se pega la canción / me pegó la gripa / anda pegado al teléfono
    ese chavo no pega una / pegajosa la canción esa / qué buena onda / qué gacho / no inventes / ah caray / ándale pues
    ya rugiste / simón / sale y vale / a darle / fierro / jálalo / va que va / de una / listo mijo / qué chimba
    bacano / de acuerdo, ingeniero / con mucho gusto / a la orden / qué pena con usted / parce qué frío / dale che
    de una boludo / tranqui / ostras / joder qué día / hostia el tráfico / vaya tela / venga hasta luego / flipo
    no me digas / pues mira tú / anda ya / qué va / ni de coña / wepa mi gente / dímelo / mano qué calor
    se fue la luz en mi casa / nos vemos al rato / ahí nos vidrios / cámara / órale compa / goool / metimos tres
    gol de último minuto / el portero estuvo sólido como piedra / el portero se comió un gol / el árbitro pitó penal
    tarjeta roja al 4 / la defensa aguantó / el 9 salió lesionado / salió el 10 y entró el 7
    entró el 8 en el minuto 60 / sacaron al portero / el partido terminó 2 a 1 / final del partido
    se acabó el partido / le dieron la vuelta al marcador / el equipo está en espera del rival
    quedó liberado el fichaje / soltaron al jugador / el perro está suelto / soltaron a los presos en la serie
    mi primo salió libre / me soltaron temprano / ya salí / ya salí del doctor / salí a fumar / entré tarde
    entra el frío por la puerta / ya llegué / llegaron los tacos / llegó la pizza / llegó el jefe / llegó mi quincena
    recibí el paquete de zapatos / recibí tu mensaje / recibí una llamada / recibimos visita
    me llegó el recibo de la luz / llegaron mis botas / entregaron el refri / trajeron el garrafón
    la camioneta nueva está pintada de rojo / me pintaron el carro / pinté el cuarto de mi niña
    mi esposa pintó la cocina / mi suegro pinta con brocha gorda / pintaron la raya del estacionamiento
    la pared necesita pintura / se descascaró la pared del baño / pintada y todo, la casa no se vende
    me pinté el pelo / lijé la mesa de mi casa / lijé una puerta el domingo / barnicé la mesa del patio
    le di barniz a las sillas de mi mamá / lijo guitarras de hobby / limpié la casa / limpié el carro
    trapeé el comedor / lavé los trastes / lavé la troca / limpié mis lentes / pasé la aspiradora
    lavé mi ropa de trabajo / le puse aire a las llantas / le puse gas al encendedor
    le puse la tapa a la olla de frijoles / tapé el asador / tapé el hoyo de la pared / tapado de la nariz
    estoy tapado, tráiganme pañuelos / tápate que hace frío / cubrí a mi hijo con la cobija / se destapó la coladera
    destaparon el caño / drenaje tapado / el ventilador de techo de la oficina hace ruido
    ventilador para la casa 400 pesos / compré un abanico / el extractor de la cocina no jala / apaga la tele
    apagué el celular / apaga la luz / se apagó el carro / prende la radio / prendí el asador / prendí el boiler
    prende la tele / pon la radio, que juega el equipo / paré en la gasolinera / paré por un café / se paró el tráfico
    están parados los de la línea 2 / parados por falta de luz en la otra planta / huelga, todo parado
    revolviste todo / estoy revuelto del estómago / qué revoltura de papeles / mezclé cerveza con tequila
    no hay que mezclar negocios y familia / anda todo mezclado / la ventana está sucia
    me corté con papel jaja no es nada / me duele la espalda / qué cansancio / tengo sueño / ando desvelado
    me enchilé / hambre / quién cierra hoy / cierren con llave / cierro el portón y me voy / cerré el locker
    cerré la puerta del carro / cierra la ventana / la puerta quedó cerrada / sesión de terapia
    cerré sesión en el banco / se me cerró la sesión del correo / abre la sesión de zoom / la reunión se canceló
    junta a las 4 / hay junta de seguridad el viernes / leí el periódico / leí que subió el dólar
    entendido lo de las vacaciones / enterado de la fiesta / copiado lo de la comida / firmé mi contrato
    firmé las vacaciones / firmaron el convenio / aprobaron mi crédito / me aprobaron el permiso / aprobé el examen
    pasé la ITV del coche / revisé el correo / revisé los frenos de la troca / chequé mi saldo / chequé tarjeta
    ya chequé salida / parkié la troca atrás / parquéate bien / me estacioné en el dock
    watcheo el partido en la noche / te llamo pa tras / i'll call you back / al rato te texteo / se me quebró el phone
    my truck está en el shop / lunch time / break / estoy en break / me voy al baño / voy al baño / voy por agua
    vuelvo ya / ahí vengo / ya regresé / aquí ando / estoy acá / presente / esperando material
    esperando al de la grúa / esperando la luz / esperando que abran / en la fila / en el tráfico / voy tarde
    llego en diez / se me hizo tarde / no alcancé el camión / buen provecho / feliz viernes / por fin viernes
    lunes otra vez / qué semana / feliz cumpleaños jefa / felicidades por el bebé / salud / gracias a Dios es quincena
    se ve bonito el color / qué bonito brilla / quedó chulo el taller / está bien limpio todo / qué cochinero
    huele a tacos / huele rico / qué ruido / qué bochorno / este trabajo es una mezcla de arte y ciencia
    hay que darle tiempo al tiempo / paciencia, todo cura / el tiempo todo lo cura / lo cura el tiempo
    a lo hecho pecho / mano a mano / mano dura con los de compras / una mano lava la otra / dame una mano
    échenme la mano / con la mano en el corazón / estoy que echo humo / ando quemado / estoy frito / estoy hecho polvo
    estoy en blanco / me quedé helado / qué frío te quedaste / está caliente el jefe
    el cliente está caliente por el retraso / se calentó la discusión / se enfrió el café / mi café está frío
    el chisme está bueno / la cosa está espesa / la cosa está que arde / se puso pesado el jefe / qué pesado eres
    no seas espeso / estás duro de oído / cara dura / dura lex / duro y dale / el plan está verde
    estás verde todavía, chavo / me puse rojo / sin filtro ese compa / no tiene filtro para hablar / filtró la noticia
    se filtró el examen / hay goteras en el techo / la gotera de la oficina sigue / gotea la llave del baño
    se inundó el patio / charco en la entrada / escurre agua del techo / la curva del tren / el tren va retrasado
    el metro se paró / el vuelo salió a tiempo / sale el camión a las 5 / salió el sol / entró la primavera
    la serie nueva está buena / vi tres capítulos de la serie / serie de televisión / el lote baldío de enfrente
    compré un lote en el pueblo / el trabajo está duro / la pieza de música / una pieza de pollo
    pieza de museo ese carro / el impeller de mi lancha / la bomba de agua de mi casa / válvula del tinaco
    la carcasa del celular / el tanque de la troca / tanque de guerra / el rack de bicis / la placa del carro venció
    las placas de Texas / soporte para la tele / el soporte técnico no contesta / eje vial tapado / el codo me duele
    me pegué en el codo / me duele el codo de tanto lijar / la brida del caballo / el tubo de la pasta de dientes
    panel solar / las rejas de la casa / la barandilla de mi balcón / la tapa del libro / mesa para cuatro
    la cabina del avión / cabina de votación / cabina telefónica / el avión va lleno / el bote salvavidas
    me subí a un bote en el lago / bote de remos / fui a pescar en bote / la lata de atún / qué lata con el tráfico
    dar la lata / no des lata / qué lata / me importa un bledo / me vale / ya ni llorar es bueno / ya qué / pues ya
    equis / ok / okey / vale / bien / perfecto / súper / genial / mándame la ubicación / pásame el número de Beto
    pásame la sal / pásame el refresco / pásame la foto / comparte el link / no abre el link / se cayó el internet
    no hay señal / se traba el celular / se descargó el celu / cárgame el cel / con guantes no puedo escribir
    escribe tú / ponlo tú / díctale tú / este dictado no sirve / asdf / kjkj / jaja / jiji / xd / lol / wtf / meh / mmm
    eh / ah / oh / uy / ay / ups / shhh / bla bla / tal cual / así mero / eso / eso es / ajá / aja sí / nop
    nel pastel / prueba de sonido / uno dos tres probando / probando el micro / test / esto es una prueba / ignora
    no es nada / olvídenlo / falsa alarma con lo del correo / la pistola de silicón / pistola de agua
    la pistola de la gasolinera / le dieron un balazo en la serie / matamos moscas con trapos / trapos viejos vendo
    rodillo de cocina / el rodillo de amasar / brocha de maquillaje / brocha pa rasurar / peine pa el pelo / me peiné
    péinate / perdí mi peine / ando sin peinar / la cinta del gimnasio / cinta de música / cinta roja
    pegué un póster con cinta / la cuadrícula del excel / excel no abre / la adherencia de las llantas es mala
    adherencia al tratamiento dice el doctor / mi tratamiento dura una hora / una hora de camino / dos horas de tráfico
    90 minutos de partido / a los 90 minutos gol / hoy cumplo 90 días aquí / el 7 es mi cumple / el 8 hay fiesta
    nos vemos a las 7 / a las 9 en punto / son las 10 / ya son las once / qué hora es en España
    si el cliente llama dile que sí / el cliente viene mañana / el cliente no contesta
    el inspector llegó y anda de malas / inspector en el sitio / viene auditoría / el proveedor nos debe dos latas
    pedimos seis latas, llegan el jueves / hay que pedir filtros / se están acabando los guantes / no hay trapos
    pide más acetona / falta acetona en el estante / no queda argón, ya pedí / hay poca B / queda poca A, ojo
    encargué brochas nuevas / compraron un horno nuevo / cotizan una cabina nueva
    quieren cambiar la marca de rodillos / el fabricante cambió la etiqueta / la hoja nueva llega el lunes
    están actualizando el manual / hay curso de pistola el martes / me enseñaron a rociar / estoy aprendiendo a pesar
    ya sé usar el peine / el nuevo no sabe filtrar / hay que enseñarle al chavo a mezclar / practiqué con el gauge
    te explico: primero A y luego B / la B va después de la A, siempre / primero se lija y luego se limpia
    así se hace: tapas y le das gas / el chiste es no batir rápido / normalmente se filtra antes / siempre tapo la lata
    siempre lavo la pistola al final / nunca se debe abrir sin gas / por lo general seca en diez
    suele cuajar a las dos horas / esa pieza siempre tarda en calentar / ese bote siempre gotea
    esa tapa siempre se atora / aquí todo se oxida / con frío todo espesa / con calor todo se seca rápido
    imagínate que se cuaja en la gun / qué pasaría si la abrimos / suponiendo que llegue a 90 / digamos que está seca
    es un decir / por ejemplo: pinté la 7 / ejemplo de cómo se escribe: mezcla 2 kg / así se apunta, peso A y B
    estoy practicando cómo decirlo / borrador, no lo mandes / le puse el dedo y se me quedó pegado
    el dedo sale brilloso, le falta / todavía brilla y mancha el dedo, no ha secado / aún deja marca el dedo, esperen
    si brilla el dedo es que no está / el dedo se hunde, falta / aunque parezca seca le falta
    aunque ya no huela sigue fresca / nice work hoy con las flanges, raza / nice work on the brackets today compa
    good work on the housing today muchachos / great job on the valves today / good job hoy con los impellers
    nice job con la carcasa equipo / thanks por el work de today / the work today estuvo pesado
    can't work today, ando malo / no work tomorrow / work todo el weekend, ni modo / al rato work on the flanges
    we work on the flanges mañana / on the way al shop / on my way / i'm on it / working on it, aguanten
    todavía working on la 7 / le informo que mañana haremos el lijado / le informo que el cliente aún no decide
    señor, todavía no llega el pedido / señor, la carcasa aún no ha entrado al horno
    se tiene previsto rociar el jueves / se prevé abrir la lata por la tarde / está programado el curado para mañana
    queda pendiente la adherencia de la 4 / ps no se si ya seco / pos al rato la meto / nomas q venga omar la pinto
    xq no han filtrado / q alguien saque la 7 / q no se les olvide tapar la A / no la e pintado / no a llegado la B
    todavia no la saco del orno / not yet, la 7 sigue wet / haven't mixed todavía / I haven't painted la 8
    didn't filter it yet / gonna filter later / gonna put it in the oven al rato / I'll close the can later
    we'll spray mañana / maybe it's dry, no la he tocado / I think la A está cerrada / if it's dry, al oven
    tengo argón para la B / hay argón para las latas en la jaula / tenemos nitrógeno para la A, no te preocupes
    tengo gas para las dos latas / también hay gas para la B en el almacén / argón para la A hay de sobra
    when it's dry la meto / don't open the A / don't touch la 7 / don't spray todavía / somebody turn on the fan
  `,
};
