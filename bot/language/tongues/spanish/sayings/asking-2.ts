// How Spanish speakers ask: day, next-ring, watch, in-charge and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking2: Sayings<AskedMeaning> = {
  day: `
    como estuvo el dia / ¿Qué tal ha ido el día? / resumen de hoy / resumen / dame el resumen del turno
    que se hizo hoy / qué hicimos hoy / cómo fue la jornada / como va el dia / como nos fue
    hazme un resumen de la mañana / el dia en una linea / cuéntame el día / reporte del dia / el parte de hoy
    que tal el turno / today's summary en español porfa / dame el daily / cómo ha ido la cosa por ahí
    Bea quiere el resumen / jefe quiere saber como nos fue hoy / balance del día / recap de hoy / qué se pintó hoy
    cuantas piezas sacamos y como fue todo hoy / dime en corto que paso hoy / el cierre del día / resumen de ayer
    cómo fue ayer / qué pasó el lunes / como estuvo el martes / informe de la jornada / no vine hoy, qué se hizo
    qué tal andamos hoy / el día de hoy, a ver / como cerró el turno / que produccion llevamos
    qué ha dado de sí el día / en qué se nos fue el día / dame todo lo de hoy resumidito / y el viernes que tal
    la jornada completa / enséñame el día / una linea del dia pal jefe / che, ¿cómo viene el día?
    cómo viene la mano hoy / lo hecho hoy / cuentas del día / como quedo el dia / hoy qué
  `,
  'next-ring': `
    que campana sigue / ¿Cuál es el próximo aviso? / cuando vuelve a sonar / qué es lo siguiente que suena
    a que hora suena / próxima alarma / que timbra primero / cuando es el next bell / what rings next
    y cuando pita otra vez / a qué hora me vas a avisar / cuanto falta pal proximo timbre
    me voy por agua, cuándo suena lo siguiente / qué avisos vienen / que alarmas hay puestas
    dime las campanas que quedan / próximo timbrazo / cuál va a sonar antes, la del pot o la del horno
    te queda algo por sonar hoy / hay alguna campana antes de las doce / quién pita ahora / siguiente aviso porfa
    la proxima campana de que es / pa cuando el siguiente ding / cuándo toca la próxima / lo próximo en sonar qué será
    de que va el siguiente aviso / cada cuánto va a sonar, y cuándo es el que viene / che cuándo suena la próxima alarma
    me puedo ir 10 min sin que suene nada? / cuál alarma viene / hora del próximo recordatorio / qué recordatorio sigue
    cuando me buzzea otra vez / no sé cuándo suena la siguiente / va a sonar algo mientras como
    tengo avisos pendientes de sonar? / y el timbre que sigue a qué hora / la que va a sonar ahora qué es
    siguiente alarm
  `,
  watch: `
    quien esta afuera de la cabina / ¿Quién vigila? / quién hace de vigía / quien cuida afuera
    quién está de guardia en la puerta / hay alguien afuera viendo / quien es el watch / who's the watch ahorita
    quien esta de standby afuera / quién nos echa un ojo desde fuera / quien se quedo cuidando la puerta
    quién está pendiente de los de dentro / ¿Hay vigilante en la cabina? / quien nos esta cuidando
    a quién le toca estar fuera / quien esta de pie afuera del booth / quién se queda fuera mientras rocío yo
    quien esta mirando por la ventana / afuera quien hay / el de afuera quien es
    quién es la persona de seguridad de fuera / estamos solos o hay alguien vigilando / tenemos vigía?
    nombre del que vigila / no sé quién está fuera / quien da la vuelta afuera / quien esta checando a los que pintan
    oye y afuera quien se quedo / quién está al otro lado de la puerta / che quién está de guardia afuera
    Bea pregunta quién hacía de observador / quién observa la pulverización / quién es el acompañante de fuera
    quien esta al pendiente de Ola adentro / ¿Quién quedó de vigilante con Kari dentro? / a cargo de vigilar quien esta
    el vigía quién es hoy / quien es mi spotter / de fuera quién mira / hay alguien de apoyo afuera
  `,
  'in-charge': `
    quien manda hoy / ¿Quién es el responsable del turno? / quién lleva el turno / quien es el lead / quien esta a cargo
    quién es el jefe hoy / a quien le pregunto / a quién le reporto / quien es el encargado / quién lleva la batuta
    quien es el mero mero hoy / who's in charge / quien es el supervisor / quién es el supervisor de esta semana
    a quién aviso si hay lío / Kari es la lead o es Omar? / quien corre el turno de tarde / quien dirige aqui
    quien decide lo de la 8 / quién puede autorizar / a quién le pido permiso / quién firma por aquí
    con quien hablo pa que me lo apruebe / quien es el boss / quien trae el mando
    no está Kari, ¿quién queda al frente? / quién queda al cargo por la noche / el responsable quién es
    encargado de hoy? / nombre del jefe de turno / quién está de responsable en la cabina / no se quien esta a cargo
    che quién es el capo acá / al mando quién está / quién es el foreman / a qué persona le toca mandar esta tarde
    quien lleva la cuadrilla / quién es cabeza de equipo / de quién dependo hoy / quien responde por el turno
  `,
  emergency: `
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
  `,
  'may-spray': `
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
  `,
  worn: `
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
    qué piden de protección / se usa delantal para pesar la B
  `,
  fan: `
    esta prendido el fan / ¿Está encendida la extracción? / está puesto el ventilador / el extractor va?
    hay extraccion / fan on or off / está corriendo el blower / tenemos aire moviéndose? / jala el extractor
    quedó prendido el abanico / alguien encendió la ventilación? / el abanico de la cabina ta prendio
    la extracción está en marcha o parada / desde cuándo está el fan / a qué hora se prendió el fan
    está apagado el extractor / apagaron el ventilador? / se apago el fan? / hay tiro en la cabina
    está chupando la campana / cómo está la ventilación / y el fan / ventilador sí o no / está la cabina ventilada
    esta andando el aire / no oigo el extractor, ¿está puesto? / no se si dejaron el fan prendido
    corre la ventilación del horno / el fan del oven esta on? / che, ¿anda el extractor?
    dejamos el fan corriendo ayer? / sigue el fan / sigue puesta la aspiración / funciona la extracción
    el soplador está encendido o lo apagó alguien / quién sabe si hay ventilación ahí dentro / estado del extractor
    se quedó prendido el blower? / hay corriente en el booth / está conectado el ventilador
  `,
  'to-coat': `
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
    el cliente quiere saber cuáles siguen en bruto / qué impellers no tienen ni una mano
  `,
  'on-hold': `
    que esta en hold / ¿Qué piezas están retenidas? / cuáles están paradas / que tenemos detenido
    que piezas estan apartadas / cuales no se pueden soltar / qué hay en cuarentena / retenidas / lista de holds
    está en hold la 6? / la valvula 2 esta retenida? / sigue parada la 8 / que bloqueo tenemos / qué está bloqueado
    cuáles tienen retención / what's on hold / cuales puso Bea en hold / hay algo retenido del job 88
    tenemos piezas en espera de calidad / qué tiene parado el inspector / cuáles están pendientes de decisión
    piezas con etiqueta roja / qué lleva la pegatina de hold / que no puedo entregar / alguna pieza congelada
    qué está en espera / hay holds? / cuáles se quedaron en hold ayer / las que detuvieron cuales son
    la 3 la tienen detenida? / che qué quedó retenido / no sé si la placa 4 está en hold / que piezas no han soltado
    qué apartaron los de calidad / cuantas y cuales traemos en hold / que tenemos frenado
    qué está frenado por el cliente / el lote retenido cuál es / hay alguna lata en hold / dime las paradas
  `,
  counted: `
    cuantas piezas hay / ¿Cuántas piezas llevamos pintadas? / cuántos rieles entraron / cuantas van curadas
    cuantas faltan / cuántas quedan en el horno / cuantos brackets sacamos hoy / número de piezas del job 88
    cuántas piezas son en total / how many llevamos / cuantas le faltan al pedido / cuántas han salido buenas
    cuantas rechazadas / cuántas están sueltas ya / cuantos impellers tenemos aqui / el job 90 de cuantas es
    cuántas mezclas hicimos hoy / cuantos batches van / cuántas piezas hay en el rack 3 / cuántas hicisteis ayer
    dime cuantas van y cuantas faltan / cuantas piezas se coatearon esta semana / qué cantidad de piezas tenemos en casa
    conteo de piezas / cuenta las que están secas / cuéntame las válvulas / cuántas tapas llegaron
    cuantas trajo el camion / cuántas se han liberado / cuantas estan esperando inspeccion
    che cuántas piezas hay sin curar / no sé cuántas van ya / son 40 o 41 los rieles / cuantas mas me quedan por pintar
    cuántas se pintaron con brocha / cuántas piezas lleva hechas Ola / el cliente pregunta cuántas van terminadas
    total de piezas / cuantas en hold / cuántas housings del mes
  `,
  coats: `
    cuantas manos lleva la 7 / ¿Cuántas capas tiene el impeller 3? / cuántas pasadas le dimos a la 8
    cuantos coats trae la valve 2 / lleva una o dos manos la 4 / ya tiene la segunda la 5?
    va por la primera o la segunda la 6 / número de capas de la carcasa / qué mano lleva la bracket-8
    how many coats tiene el flange / la 9 tiene ya dos? / por cuál mano vamos en la placa / cuantas le han dado
    cuántas manos se le pusieron a la bomba / a cuantas capas va la 10 / lleva ya las tres capas la 11
    cuantas veces se pinto la 12 / cuántas aplicaciones lleva la rail-03 / capas de la 2 / manos en la 1
    le falta una capa a la housing o ya tiene todas / la segunda ya se le dio a la 3?
    cuántas capas le metimos a los rieles / qué capas tiene encima / le pusieron dos o solo una al impeller
    cuánto lleva de manos el tanque / de cuántas capas va la pieza del cliente / no sé si la 7 lleva una o dos
    el inspector pregunta cuántas capas tiene / che cuántas manos tiene la tapa / ya van dos en la 5?
    cuantas capas de brocha lleva / coat count de la 8 / cuantas manos le faltan segun lo que lleva
    esa ya tiene la final? / en qué capa está la 4 / en que mano vamos / la de arriba es segunda capa o tercera
    dime las capas de cada una / se le dio más de una capa a la válvula
  `,
  'from-batch': `
    que pintaron con el pot 1 / ¿Qué piezas salieron de la mezcla 2? / cuales se hicieron con el batch 1
    a qué piezas se les dio la mezcla 3 / que se pinto con esta mezcla / con el segundo pot qué hemos pintado
    batch 2 en cuales piezas fue / en qué se usó la mezcla de la mañana / cuáles llevan del batch 4
    qué partes se coatearon del pot 3 / which parts del batch 1 / las piezas de la mezcla uno
    cuáles entraron con esa olla / qué se ha pintado de ese cubo / que valvulas se llevaron la segunda
    a qué fue el batch de ayer / piezas pintadas con el 2 / de ese bote mezclado qué se pintó
    esa mezcla dónde se aplicó / en que piezas se puso el batch malo / se nos geló el 1, ¿qué se pintó con él?
    el pot 2 a cuantas y cuales / que agarro del pot 1 / quiénes llevan pintura del batch 3
    qué llevamos pintado con lo que hay en la olla / dime las del batch 2 / que rieles son de la primera mezcla
    cuáles brackets son de la segunda mezcla / con lo que mezclo Jo que se pinto / che con el pot 1 qué pintamos
    los que se bañaron del batch 4 cuales son / qué sacamos de la mezcla uno / no se que piezas fueron del 3
    pieza por pieza lo que salió del pot 2 / el batch 5 se usó en algo? / en algo se usó la mezcla de anoche?
    la mezcla mal pesada a qué piezas fue / qué hay pintado de la última mezcla / cuales comparten el pot 1
    a qué le dimos con la mezcla vieja
  `,
  details: `
    que serial tiene la 7 / ¿Cuál es el número de serie del impeller 3? / de que job es la bracket-8
    qué trabajo es la válvula 2 / de qué metal es la carcasa / que material es la 5 / es inox o acero la 9
    cuánta área tiene la placa 4 / cuantos m2 tiene el flange / qué superficie tiene la bomba / datos de la 10
    que sabemos de la 11 / el serie de la 12 cual es / número de pedido de la rail-03 / qué espesor de pared tiene la 6
    de cuanto es la pared de la housing / ficha de la pieza 2 / serial number de la valve 4 / a que job pertenece esto
    la 3 es de aluminio? / cuanto mide la tapa / cuántos pies cuadrados trae el tanque
    de quién es la 8, de qué cliente / qué cliente trae el job 90 / los datos del impeller / no sé el serial de la 1
    me piden la serie de la bomba / área de la 4? / metal de la 7 / che de qué está hecha la 2
    hierro fundido o bronce, la 5 / que grueso tiene la placa / qué pone en la ficha de la válvula
    qué número de orden lleva / info de la parte 6 / tenemos apuntado el material de la 9?
    sabemos el area de los rieles o no / que job number es / la chiquita cuál serial trae
    la 10 de qué trabajo es y qué metal
  `,
  bears: `
    cuanto calor aguanta la 7 / ¿Qué temperatura soporta el impeller? / aguanta 90 la bracket-8?
    se puede meter a 90 la carcasa sin que se deforme / hasta cuantos grados aguanta la valvula 2 / max temp de la 5
    temperatura máxima de la pieza 3 / cual es el limite de calor del flange / qué tope de temperatura tiene la bomba
    a cuánto se puede calentar la 9 / le hace daño el horno a la 4? / el plástico de la 6 aguanta horno
    cuanto resiste la housing / soporta horno la placa 4 / resiste los 90 la rail-03? / how hot puede ir la 10
    que tanto calor le puedo meter a la 8 / hasta dónde la puedo calentar / tiene juntas de goma, ¿cuánto aguanta?
    a cuantos F truena la 11 / que maxima pidio el cliente pa la 12 / cuánto calor admite la válvula / máximo de la 1
    límite térmico de la tapa / la 2 va al horno o no lo aguanta / no sé si la 7 aguanta el horno
    qué temperatura no hay que pasar con la 5 / cuántos grados admite / aguante de calor del impeller
    el aluminio ese hasta cuanto / che cuánto banca la pieza esta / se dobla a 90 el bracket?
    tiene limite de horno la carcasa / qué calor tolera la 3 / tolerancia al calor de la 6 / puede con 200 F la bomba
    temperatura tope de los rieles / la pieza vieja hasta cuánto la puedo subir / se quema el sello de la valve 1 a 90?
    qué nos dijeron del calor que aguanta la 9
  `,
  expiry: `
    cuando caduca la A / ¿Está caducado el bote 3? / hasta cuándo vale la lata 2 / que fecha de vencimiento trae la B
    ya vencio el can 4? / caducidad del lote 7731 / expiration del bote A / cuando expira esto / está en fecha la B
    cuál se vence primero / que botes vencen este mes / que latas estan por caducar
    tenemos algo caducado en el estante / shelf life de la A / hasta que mes sirve el endurecedor / vencimientos
    fecha del bote 5 / sigue buena la lata vieja o ya pasó fecha / cuánto le queda de caducidad al can 1
    cuando se echa a perder la lata cerrada / la fecha de la A ya pasó? / para cuándo hay que usar el lote nuevo
    usar antes de cuándo / el best before del can 2 / que pone de caducidad / qué bote caduca antes
    caducan pronto las latas nuevas? / ese lote esta vencido o no / cuándo vence el lote B-220
    se paso de fecha la resina? / che cuándo vence esta lata / no sé si el bote 4 está caducado
    mírame la fecha de la B / el cliente pregunta si el lote estaba en fecha / a qué fecha llega la lata 3
    algún bote fuera de fecha / caducados? / en que fecha se vence el solvente / el bote abierto cuándo caduca
    vigencia del lote
  `,
  lot: `
    que lote es el bote 3 / ¿De qué lote es la A? / lote de la B? / qué número de lote trae la lata 2
    cual es el lot del can 4 / el lot number porfa / de que lote es lo que estamos usando / lote del bote abierto
    qué lote metimos en la mezcla 1 / la lata nueva de cuál lote es / son del mismo lote la A y la B
    tienen el mismo lote las dos latas? / lote? / me falta el lote de la B, cuál era
    no apunté el lote del can 1, ¿lo tienes? / qué lote pone en el bote 5 / a que lote pertenece la lata 6
    numero de batch del fabricante de la A / qué lote se abrió esta mañana / de que lot es esa lata
    lote del endurecedor / que lote de resina usamos en el dos / el lote de ahora cuál es
    dime el lote que lleva el bote chico / dime lotes de A y B del batch 3 / con qué lote andamos
    todavia es el lote viejo o ya el nuevo / cambiamos de lote o sigue el mismo / che qué lote es este
    no sé de qué lote es la A / lote que tenemos apuntado para la 2 / el can 3 es lote 7731? / ese bote qué lote tiene
    código de lote de la parte B / me piden el lote del bote 4 / qué lote puso Omar cuando la abrió
    lot de la A que está con gas / el número ese largo de la lata 1 / qué lote registramos
    el bote sin etiqueta de qué lote es
  `,
  lid: `
    esta tapado el bote 3 / ¿Está abierta la A? / tiene la tapa puesta la lata 2 / hay algun bote destapado
    dejaron algo abierto / qué latas están sin tapa / quedó abierta la B / cerraron la A? / lid on or off la 4
    is the lid off del can 1 / se quedo destapada la A / alguna lata sin cerrar / está cerrado el can 5
    le pusieron la tapa a la A / el bote sigue abierto? / cuáles están destapados / la tapa de la B está puesta
    hay botes abiertos ahora mismo / tapada o destapada la 2 / cerrado el bote chico? / tapó alguien la A
    quedó bien cerrada la lata / no sé si tapé el bote 3 / no me acuerdo si cerré la A, ¿está cerrada?
    está al aire la A todavía / la A está al descubierto?
  `,
};
