// How Spanish speakers say it: asking. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking2: Sayings<SaidMeaning> = {
  asking: `
    con quien hablo pa que me lo apruebe / quien es el boss / quien trae el mando
    no está Kari, ¿quién queda al frente? / quién queda al cargo por la noche / el responsable quién es
    encargado de hoy? / nombre del jefe de turno / quién está de responsable en la cabina / no se quien esta a cargo
    che quién es el capo acá / al mando quién está / quién es el foreman / a qué persona le toca mandar esta tarde
    quien lleva la cuadrilla / quién es cabeza de equipo / de quién dependo hoy / quien responde por el turno
    a que numero llamo / ¿Cuál es el número de emergencias? / numero de emergencia / teléfono de urgencias
    a quién se llama si hay fuego / que numero marco si pasa algo / 911 o cual / es el 112? / emergency number
    dónde está el teléfono de emergencias / a que tel llamo si alguien se desmaya / número de los bomberos
    teléfono de toxicología / numero de la ambulancia / el numero del hospital cual es / a quién llamo si hay derrame
    pa emergencias a donde marco / qué número hay que marcar aquí / teléfono de seguridad de la planta
    contactos de emergencia / los números de emergencia del taller / enséñame los teléfonos de emergencia
    dame el número por si acaso / soy nuevo, a dónde llamo si pasa algo grave / si me salpica a los ojos a quién llamo
    a quién le hablo en caso de accidente / cual es la extension de emergencias / número de control de envenenamiento
    poison control cual es / teléfono del médico de empresa / ¿A qué número se avisa?
    que telefono tengo que usar en una emergencia / para llamar a los bomberos qué marco
    a quién hay que avisar en un incendio / che cuál es el número de la ambulancia / no me sé el número de emergencias
    tel de emergencia porfa / numeros de auxilio / el teléfono de la enfermería / dónde llamo si alguien se quema
    quien puede rociar / ¿Quién está autorizado para pulverizar? / puede Jo usar la pistola?
    quienes tienen permiso de spray / quién tiene el carné para pistola / quien tiene fit test
    quién puede entrar a la cabina con pistola / quien puede esprayar / Omar esta aprobado pa spray?
    tengo yo permiso de rociar / a mi me dejan pistolear? / who can spray / quien esta certificado pa la pistola
    ¿Está Ola habilitada para pulverizar? / quiénes pueden pintar a pistola / a quien le toca que este autorizado
    el nuevo puede rociar o no / lista de los que pueden rociar / lista de autorizados / a quién pongo en la pistola
    quien tiene vigente el examen de mascara / quién tiene la ficha médica para spray / quien está apto
    aptos para pistola / quién de hoy puede pulverizar / quien mas puede meterse a rociar
    hay alguien autorizado en el turno de noche / alguien con permiso de spray hoy?
    quiénes traen entrenamiento de pistola / qué gente puede usar la HVLP / che quién puede tirar con pistola
    no sé si Jo está autorizado para rociar / Bea pregunta quién puede pulverizar / se vale que kari rocíe?
    quien es el que si puede echar spray / los que tienen derecho a rociar quienes son / autorizados a pistola
    quien esta cleared pal booth / con qué gente cuento para rociar / me falta algo a mí para poder rociar
    que me pongo / ¿Qué hay que llevar puesto? / qué EPI toca / que equipo uso pa rociar / que ppe ocupo
    guantes de cuáles / con mascarilla o con aire / necesito respirador pa brocha / qué careta va con esto
    hay que ponerse traje? / lleva goggles o no / qué protección pide la hoja / que guantes uso para la acetona
    con qué me protejo para mezclar / que mascara ocupo pa limpiar la pistola / hay que llevar gafas al pesar
    hace falta aire suministrado / cartuchos o línea de aire / qué filtro llevo en la máscara / ropa para la cabina
    qué ropa me pongo para dip / what ppe pa flow coat / me pongo el mono blanco o no hace falta
    equipo de protección para lijar / el visitante qué tiene que ponerse / el que está fuera qué debe llevar
    qué llevo en las manos / puedo ir sin careta con el rodillo / protección para abrir la B / de que son los guantes
    nitrilo o butilo / necesito botas especiales / qué tengo que llevar para entrar / pa meterme al booth que me pongo
    soy nuevo, con qué me visto / EPIs / che, ¿qué me tengo que poner? / no sé si va máscara para esto
    qué piden de protección / se usa delantal para pesar la B / esta prendido el fan / ¿Está encendida la extracción?
    está puesto el ventilador / el extractor va? / hay extraccion / fan on or off / está corriendo el blower
    tenemos aire moviéndose? / jala el extractor / quedó prendido el abanico / alguien encendió la ventilación?
    el abanico de la cabina ta prendio / la extracción está en marcha o parada / desde cuándo está el fan
    a qué hora se prendió el fan / está apagado el extractor / apagaron el ventilador? / se apago el fan?
    hay tiro en la cabina / está chupando la campana / cómo está la ventilación / y el fan / ventilador sí o no
    está la cabina ventilada / esta andando el aire / no oigo el extractor, ¿está puesto?
    no se si dejaron el fan prendido / corre la ventilación del horno / el fan del oven esta on?
    che, ¿anda el extractor? / dejamos el fan corriendo ayer? / sigue el fan / sigue puesta la aspiración
    funciona la extracción / el soplador está encendido o lo apagó alguien / quién sabe si hay ventilación ahí dentro
    estado del extractor / se quedó prendido el blower? / hay corriente en el booth / está conectado el ventilador
    que piezas faltan por pintar / ¿Cuáles están sin pintar? / cuales siguen peladas / qué queda desnudo
    que piezas estan bare / cuáles no llevan nada todavía / quedan piezas sin recubrir? / cuáles están en metal
    que rieles faltan de mano / cuales no han tocado / qué falta por recubrir del job 88 / which ones faltan de coat
    las que faltan de pintar / las desnudas / piezas sin capa / faltan muchas por pintar?
    a cuales no les hemos dado nada / me dices las que aún van en crudo / qué piezas esperan su primera mano
    cuál no se ha pintado aún / hay alguna sin hacer / quedan brackets por hacer / que me falta pintar
    cuales son las que siguen pa pintar / pendientes de recubrir / piezas pendientes de pintura
    qué tengo limpio y sin pintar / cuáles están lijadas pero sin capa / qué hay listo para pintar
    que partes andan sin coat / no sé cuáles faltan por pintar / queda algo por pintar o ya / ya estan todas pintadas?
    están todas hechas o falta alguna / che cuáles quedan sin pintar
    de las que llegaron ayer cuáles siguen sin pintura / las del rack 2 cuales faltan / cuál nos saltamos sin pintar
    el cliente quiere saber cuáles siguen en bruto / qué impellers no tienen ni una mano / que esta en hold
    ¿Qué piezas están retenidas? / cuáles están paradas / que tenemos detenido / que piezas estan apartadas
    cuales no se pueden soltar / qué hay en cuarentena / retenidas / lista de holds / está en hold la 6?
    la valvula 2 esta retenida? / sigue parada la 8 / que bloqueo tenemos / qué está bloqueado / cuáles tienen retención
    what's on hold / cuales puso Bea en hold / hay algo retenido del job 88 / tenemos piezas en espera de calidad
    qué tiene parado el inspector / cuáles están pendientes de decisión / piezas con etiqueta roja
    qué lleva la pegatina de hold / que no puedo entregar / alguna pieza congelada / qué está en espera / hay holds?
    cuáles se quedaron en hold ayer / las que detuvieron cuales son / la 3 la tienen detenida? / che qué quedó retenido
    no sé si la placa 4 está en hold / que piezas no han soltado / qué apartaron los de calidad
    cuantas y cuales traemos en hold / que tenemos frenado / qué está frenado por el cliente / el lote retenido cuál es
    hay alguna lata en hold / dime las paradas / cuantas piezas hay / ¿Cuántas piezas llevamos pintadas?
    cuántos rieles entraron / cuantas van curadas / cuantas faltan / cuántas quedan en el horno
    cuantos brackets sacamos hoy / número de piezas del job 88 / cuántas piezas son en total / how many llevamos
    cuantas le faltan al pedido / cuántas han salido buenas / cuantas rechazadas / cuántas están sueltas ya
    cuantos impellers tenemos aqui / el job 90 de cuantas es / cuántas mezclas hicimos hoy / cuantos batches van
    cuántas piezas hay en el rack 3 / cuántas hicisteis ayer / dime cuantas van y cuantas faltan
    cuantas piezas se coatearon esta semana / qué cantidad de piezas tenemos en casa / conteo de piezas
    cuenta las que están secas / cuéntame las válvulas / cuántas tapas llegaron / cuantas trajo el camion
    cuántas se han liberado / cuantas estan esperando inspeccion / che cuántas piezas hay sin curar
    no sé cuántas van ya / son 40 o 41 los rieles / cuantas mas me quedan por pintar / cuántas se pintaron con brocha
    cuántas piezas lleva hechas Ola / el cliente pregunta cuántas van terminadas / total de piezas / cuantas en hold
    cuántas housings del mes / cuantas manos lleva la 7 / ¿Cuántas capas tiene el impeller 3?
    cuántas pasadas le dimos a la 8 / cuantos coats trae la valve 2 / lleva una o dos manos la 4
    ya tiene la segunda la 5? / va por la primera o la segunda la 6 / número de capas de la carcasa
    qué mano lleva la bracket-8 / how many coats tiene el flange / la 9 tiene ya dos? / por cuál mano vamos en la placa
    cuantas le han dado / cuántas manos se le pusieron a la bomba / a cuantas capas va la 10
    lleva ya las tres capas la 11 / cuantas veces se pinto la 12 / cuántas aplicaciones lleva la rail-03 / capas de la 2
    manos en la 1 / le falta una capa a la housing o ya tiene todas / la segunda ya se le dio a la 3?
    cuántas capas le metimos a los rieles / qué capas tiene encima / le pusieron dos o solo una al impeller
    cuánto lleva de manos el tanque / de cuántas capas va la pieza del cliente / no sé si la 7 lleva una o dos
    el inspector pregunta cuántas capas tiene / che cuántas manos tiene la tapa / ya van dos en la 5?
    cuantas capas de brocha lleva / coat count de la 8 / cuantas manos le faltan segun lo que lleva
    esa ya tiene la final? / en qué capa está la 4 / en que mano vamos / la de arriba es segunda capa o tercera
    dime las capas de cada una / se le dio más de una capa a la válvula / que pintaron con el pot 1
    ¿Qué piezas salieron de la mezcla 2? / cuales se hicieron con el batch 1 / a qué piezas se les dio la mezcla 3
    que se pinto con esta mezcla / con el segundo pot qué hemos pintado / batch 2 en cuales piezas fue
    en qué se usó la mezcla de la mañana / cuáles llevan del batch 4 / qué partes se coatearon del pot 3
    which parts del batch 1 / las piezas de la mezcla uno / cuáles entraron con esa olla / qué se ha pintado de ese cubo
    que valvulas se llevaron la segunda / a qué fue el batch de ayer / piezas pintadas con el 2
    de ese bote mezclado qué se pintó / esa mezcla dónde se aplicó / en que piezas se puso el batch malo
    se nos geló el 1, ¿qué se pintó con él? / el pot 2 a cuantas y cuales / que agarro del pot 1
    quiénes llevan pintura del batch 3 / qué llevamos pintado con lo que hay en la olla / dime las del batch 2
    que rieles son de la primera mezcla / cuáles brackets son de la segunda mezcla / con lo que mezclo Jo que se pinto
    che con el pot 1 qué pintamos / los que se bañaron del batch 4 cuales son / qué sacamos de la mezcla uno
    no se que piezas fueron del 3 / pieza por pieza lo que salió del pot 2 / el batch 5 se usó en algo?
    en algo se usó la mezcla de anoche? / la mezcla mal pesada a qué piezas fue / qué hay pintado de la última mezcla
    cuales comparten el pot 1 / a qué le dimos con la mezcla vieja / que serial tiene la 7
    ¿Cuál es el número de serie del impeller 3? / de que job es la bracket-8 / qué trabajo es la válvula 2
    de qué metal es la carcasa / que material es la 5 / es inox o acero la 9 / cuánta área tiene la placa 4
    cuantos m2 tiene el flange / qué superficie tiene la bomba / datos de la 10 / que sabemos de la 11
    el serie de la 12 cual es / número de pedido de la rail-03 / qué espesor de pared tiene la 6
    de cuanto es la pared de la housing / ficha de la pieza 2 / serial number de la valve 4 / a que job pertenece esto
    la 3 es de aluminio? / cuanto mide la tapa / cuántos pies cuadrados trae el tanque
    de quién es la 8, de qué cliente / qué cliente trae el job 90 / los datos del impeller / no sé el serial de la 1
    me piden la serie de la bomba / área de la 4? / metal de la 7 / che de qué está hecha la 2
    hierro fundido o bronce, la 5 / que grueso tiene la placa / qué pone en la ficha de la válvula
    qué número de orden lleva / info de la parte 6 / tenemos apuntado el material de la 9?
    sabemos el area de los rieles o no / que job number es / la chiquita cuál serial trae
    la 10 de qué trabajo es y qué metal / cuanto calor aguanta la 7 / ¿Qué temperatura soporta el impeller?
    aguanta 90 la bracket-8? / se puede meter a 90 la carcasa sin que se deforme
    hasta cuantos grados aguanta la valvula 2 / max temp de la 5 / temperatura máxima de la pieza 3
    cual es el limite de calor del flange / qué tope de temperatura tiene la bomba / a cuánto se puede calentar la 9
    le hace daño el horno a la 4? / el plástico de la 6 aguanta horno / cuanto resiste la housing
    soporta horno la placa 4 / resiste los 90 la rail-03? / how hot puede ir la 10
    que tanto calor le puedo meter a la 8 / hasta dónde la puedo calentar / tiene juntas de goma, ¿cuánto aguanta?
    a cuantos F truena la 11 / que maxima pidio el cliente pa la 12 / cuánto calor admite la válvula / máximo de la 1
    límite térmico de la tapa / la 2 va al horno o no lo aguanta / no sé si la 7 aguanta el horno
    qué temperatura no hay que pasar con la 5 / cuántos grados admite / aguante de calor del impeller
    el aluminio ese hasta cuanto / che cuánto banca la pieza esta / se dobla a 90 el bracket?
    tiene limite de horno la carcasa / qué calor tolera la 3 / tolerancia al calor de la 6 / puede con 200 F la bomba
    temperatura tope de los rieles / la pieza vieja hasta cuánto la puedo subir / se quema el sello de la valve 1 a 90?
    qué nos dijeron del calor que aguanta la 9 / cuando caduca la A / ¿Está caducado el bote 3?
    hasta cuándo vale la lata 2 / que fecha de vencimiento trae la B / ya vencio el can 4? / caducidad del lote 7731
    expiration del bote A / cuando expira esto / está en fecha la B / cuál se vence primero / que botes vencen este mes
    que latas estan por caducar / tenemos algo caducado en el estante / shelf life de la A
    hasta que mes sirve el endurecedor / vencimientos / fecha del bote 5 / sigue buena la lata vieja o ya pasó fecha
    cuánto le queda de caducidad al can 1 / cuando se echa a perder la lata cerrada / la fecha de la A ya pasó?
    para cuándo hay que usar el lote nuevo / usar antes de cuándo / el best before del can 2 / que pone de caducidad
    qué bote caduca antes / caducan pronto las latas nuevas? / ese lote esta vencido o no / cuándo vence el lote B-220
    se paso de fecha la resina? / che cuándo vence esta lata / no sé si el bote 4 está caducado
    mírame la fecha de la B / el cliente pregunta si el lote estaba en fecha / a qué fecha llega la lata 3
    algún bote fuera de fecha / caducados? / en que fecha se vence el solvente / el bote abierto cuándo caduca
    vigencia del lote / que lote es el bote 3 / ¿De qué lote es la A? / lote de la B?
    qué número de lote trae la lata 2 / cual es el lot del can 4 / el lot number porfa
    de que lote es lo que estamos usando / lote del bote abierto / qué lote metimos en la mezcla 1
    la lata nueva de cuál lote es / son del mismo lote la A y la B / tienen el mismo lote las dos latas? / lote?
    me falta el lote de la B, cuál era / no apunté el lote del can 1, ¿lo tienes? / qué lote pone en el bote 5
    a que lote pertenece la lata 6 / numero de batch del fabricante de la A / qué lote se abrió esta mañana
    de que lot es esa lata / lote del endurecedor / que lote de resina usamos en el dos / el lote de ahora cuál es
    dime el lote que lleva el bote chico / dime lotes de A y B del batch 3 / con qué lote andamos
    todavia es el lote viejo o ya el nuevo / cambiamos de lote o sigue el mismo / che qué lote es este
    no sé de qué lote es la A / lote que tenemos apuntado para la 2 / el can 3 es lote 7731? / ese bote qué lote tiene
    código de lote de la parte B / me piden el lote del bote 4 / qué lote puso Omar cuando la abrió
    lot de la A que está con gas / el número ese largo de la lata 1 / qué lote registramos
    el bote sin etiqueta de qué lote es / pa 3 libras de mezcla cuánto lleva de A / ¿Cuánta B para 800 gramos de A?
    cuanto B le echo a 1.2 kilos de A / qué relación lleva / cual es el ratio / proporción de A y B
    a cuánto va la mezcla, uno a uno? / es 1:1 o 2:1 / cuánto de cada para hacer 2 kg / tengo 640 g de A, cuánta B
    si le puse 1201 de A cuanto le pongo de B / pa medio kilo de mix cuánto de cada uno / va por peso o por volumen
    en qué proporción se mezcla / cuanto endurecedor lleva / cuánto catalizador por kilo / cuanto hardener pa 5 pounds
    con 900 de B cuánta A necesito / partes de A por cada parte de B / cuántas partes de B
    reparto de A y B para 3 kilos / divide 2.4 kilos en A y B / cuánta A y cuánta B para 1500 g
    me pasé con la A, 1250, cuánta B le toca / eché 700 de A y ahora qué cantidad de B va
    que tanto margen tiene el ratio / cuánto puede desviarse la mezcla / tolerancia de la proporción
    ratio del batch 2? / cómo quedó la proporción de la mezcla 1 / quedó bien el ratio / mitad y mitad o como
    che cuánto endurecedor va / no sé cuánta B lleva esto / para 16 oz de A cuántas de B
    cuanto B para acabar la lata de A / qué peso de B va con lo que queda de A / A con B en qué proporción según la hoja
    la B cuanto / pesos de A y B pa una mezcla chica / alcanza pa 3 mas / ¿Hay bastante mezcla para otras tres?
    me llega pa la 8 y la 9? / con lo que queda en el pot pinto la válvula / da para dos brackets más
    alcanza el batch 2 pa la carcasa / tenemos suficiente para acabar los rieles / nos llega con lo que hay en la olla
    sobra o falta para la bomba / is there enough pa la 10 / me va a alcanzar o hago otro batch
    tengo que mezclar más o con esto vale / cubro las 4 que quedan con el pot 1? / da para otra mano en la 7
    queda suficiente para el impeller / alcanzará para un metro cuadrado más / con medio kilo me alcanza pa la placa 4
    hay mix suficiente pa terminar / cuántas más puedo pintar con lo que queda / pa cuantas piezas me da
    hasta cuántos brackets salen de ahí / se puede hacer la housing con lo que sobro / llego con la mezcla a la última?
    voy a quedarme corto? / me quedo corto con la 2 para los flanges / será suficiente con ese resto
    bastará para la tapa / alcanza el bote de A pa otra mezcla igual / hay A bastante para 3 kilos
    tenemos B suficiente pa otro batch / che alcanza para una más / no sé si va a alcanzar para la 12
    con esto termino o no / da el pot 3 pa todo el job / me alcanza de aqui a la 40 / es bastante lo que hay
    da pa la segunda mano de las tres / sale otra válvula del pot? / cubre 0.6 m2 lo que queda / ajusta pa la 5 y la 6
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
    cuáles son los topes de temperatura y humedad / what air quiere la hoja / como tiene que estar la superficie
    ¿Qué preparación pide la ficha? / qué grado de limpieza piden / hay que chorrear o basta lijar / que perfil pide
    cuantas micras de rugosidad / que surface prep quiere la hoja / se desengrasa con qué antes de pintar
    que temperatura minima de superficie pide / a qué grano hay que lijar / con que lija va
    qué se le hace al metal antes / hay que quitar el óxido del todo / se puede aplicar sobre óxido según la hoja
    sobre qué se puede aplicar / agarra sobre aluminio? / va sobre galvanizado o no / se puede sobre pintura vieja
    qué limpieza exige el fabricante / cuánto tiempo dura la preparación antes de pintar
    cuántas horas tengo después del chorreado / sandblast a qué nivel / la hoja pide Sa 2.5 o qué
    sales máximas en la superficie / se necesita primer abajo / hace falta imprimación
    qué pone la hoja de la superficie / requisitos de la superficie / preparación del acero inox
    como preparo el bronce / como dejo la pieza antes de coatear / qué tan seca tiene que estar la pieza
    temp de superficie permitida / hasta cuántos grados puede estar el metal al aplicar / che cómo se prepara la chapa
    no sé qué prep lleva esto / limpiar con alcohol es suficiente segun la hoja? / qué rugosidad requiere
    prep segun ficha / metal blanco o casi blanco / cuanto se bate segun la hoja
    ¿Cuánto hay que agitar según la ficha? / qué tiempo de mezclado marca / cuantos minutos de stir pide / a cuantas rpm
    cuánto tiempo de agitación lleva este producto / tiempo de inducción de la hoja
    hay que dejarla reposar después de mezclar? / que dice el sheet del mixing / how long to stir por la hoja
    a 20 grados cuánto se mezcla / con frío cuánto más hay que agitar / cuánto se bate a 24 / batido según fabricante
    a mano o con agitador / se bate tapado o abierto / qué velocidad de agitador / la ficha dice 90 o 120 minutos
    mínimo de agitación / cuánto es lo normal de batir / que tanto tiempo se le da al mixer
    tiempo de mezcla del producto / cuánto se menea esto / cuánto hay que removerla según pone
    se filtra después de batir? con qué filtro según la hoja / que filtro pide la hoja / de cuántas micras el filtro
    cuánto se agita la A en su bote antes / hay que mover la A antes de verterla, cuánto
    orden de mezcla, A en B o B en A / instrucciones de mezclado / cómo se mezcla esto según el papel
    che cuánto se revuelve / no sé cuánto lleva de agitación / cuantas vueltas por minuto
    cuál es el stir time de la ficha / mezclar cuánto rato / lo del mezclado en la hoja técnica
    qué marca de batido para invierno / rpm del stirrer / cuanto dura la mezcla segun la hoja
    ¿Qué vida útil da la ficha? / pot life del producto / cuantas horas de pot life trae / cuánto aguanta mezclada
    vida de la mezcla a 30 grados / cuánto baja el pot life con calor / qué pot life dice el fabricante
    una vez mezclado cuánto tiempo tengo por ficha / tiempo de uso después de mezclar según la hoja
    what's the pot life en el sheet / desde cuando cuenta el pot life / el pot life incluye el batido?
    a 25 cuánto aguanta / cuantas horas vive normalmente / cuánto vive una mezcla de estas
    en verano cuánto dura el pot / vida util? / tiempo abierto de la mezcla en ficha
    cuánto tarda en gelificar normalmente / qué dice la hoja de la vida de la mezcla / cuánto sirve ya mezclado
    horas de vida por ficha / es de 4 horas o de 6 el pot life / se alarga si se enfría / la mezcla grande dura menos?
    cuánto aguanta en la taza de la pistola / cuánto dura en el recipiente / che cuánto dura esto mezclado
    no sé cuánto dura este producto una vez mezclado / límite de uso de la mezcla / pot life a 75 F
    pot life según temperatura / dato de pot life / duración de la mezcla / el papel cuánto da de vida
    el fabricante cuánto tiempo da para usarla / después de echar B, cuántas horas en teoría
    en general a las cuántas horas se pone dura / que vida tiene el demo este / que espesor pide
    ¿Cuántas micras hay que dejar? / película húmeda según la hoja / cuántos mils van / qué DFT pide la ficha
    espesor seco que pide / wet film recomendado / entre cuanto y cuanto de espesor / micras por mano / cuánto por capa
    cuantas capas pide la hoja / de cuántas manos es el sistema / cuánto rinde / rendimiento por metro cuadrado
    rendimiento teórico / cuántos metros saca un kilo / coverage por galon / cuánto cubre un kilo
    máximo de micras sin que descuelgue / qué grosor máximo aguanta / espesor mínimo / que tan delgada va
    que tan gruesa la capa / mils húmedos pa brocha / cuánto hay que dejar mojado para 20 secas / sólidos en volumen
    qué sólidos tiene / film thickness segun el sheet / cómo de gorda va la capa / qué película pide el fabricante
    la ficha qué espesor marca / che qué espesor lleva / no sé cuántas micras van / grosor de capa? / capa de cuánto
    cuanto hay que cargarla / dato de espesor / con spray cuánto espesor por pasada según la hoja
    el inspector pregunta qué espesor pide el producto / tolerancia del espesor / cuanto flash pide la hoja
    ¿Qué tiempo de oreo marca la ficha? / minutos de flash off / cuanto se orea antes del horno
    cuánto hay que dejarla airear / cuánto tiempo de evaporación pide / flash de cuanto según el sheet
    cuánto se espera antes de meterla al horno, según el papel / flash mínimo / flash máximo / mínimo y máximo de oreo
    a temperatura ambiente cuánto flash / how long flash off por la hoja / secado al tacto según ficha
    cuanto tarda en secar al tacto normalmente / cuánto tarda en secar este producto / cuánto rato antes de curar
    el flash son 10 o 15 / entre capa y horno cuánto pide / el tiempo de espera antes del oven según fabricante
    cuánto se deja ventear / cuánto se deja escurrir / qué pone de flash-off / tiempo de oreo?
    cuánto pide de oreo si hace frío / cambia el flash con el calor? / minutos para que suelte el solvente
    cuánto se queda al aire / oreo con brocha es igual que con pistola / cuánto es lo que se deja destensar
    che cuánto se orea esto / no sé cuánto flash lleva / qué flash le damos por ficha / dato de flash
    el fabricante cuánto dice de flash / se puede meter al horno directo según la hoja?
    cuánto reposo pide después de pintar / reposo antes de horno / tack free en cuanto
    cuánto hay que dejarla colgada antes de curar / a las cuantas horas se repinta
    ¿Qué intervalo de repintado da la ficha? / ventana de recoat segun la hoja / cuánto hay que esperar entre manos
    mínimo entre capas / máximo entre capas / cuanto entre mano y mano / recoat window del producto
    deja repintar este producto? / admite segunda mano o no / la hoja prohíbe otra capa?
    se puede recoatear ya curado segun el sheet / hay que lijar entre capas? / lijado entre manos sí o no
    repintado min y max / tiempo de repintado / pasado cuánto tiempo ya no agarra la siguiente
    cuánto es la espera pa la segunda / after how long se puede recoat por ficha
    hasta cuántas horas después se puede dar otra / qué dice el fabricante de dar otra capa / qué pone de repintar
    entre capas qué tiempo / húmedo sobre húmedo se puede? / wet on wet lo permite la hoja
    cuánto tiempo tengo para retocar según la ficha / minutos para retoque por hoja
    se puede encima de una capa vieja del mismo / y si ya curó, se puede dar otra según el papel
    tras cuántas horas hay que matear / che cuánto se espera para la otra mano / no sé qué intervalo lleva / intervalo?
  `,
};
