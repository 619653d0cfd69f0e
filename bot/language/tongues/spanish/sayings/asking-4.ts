// How Spanish speakers ask: can-i, how-long, who-did, where-is, how-hot, how-much, to-do, what-late, went-wrong, at-risk, trace, why, what-is, stock, day, next-ring, watch, in-charge, emergency, may-spray. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking4: Sayings<AskedMeaning> = {
  'can-i': `
    puedo darle ya a la 7 / puedo darle la segunda a la tapa / se puede pintar la 8 ya
    ya se le puede dar a la carcasa / podemos pintar hoy con esta humedad / me dejas pintar la 5
    está permitido recubrir la voluta / le puedo meter brocha a la brida / puedo usar la mezcla 1 todavía
    sirve todavía el bote 2 / todavía se puede usar el pot 1 / aún vale la mezcla 3 / ya puedo usar el batch
    ya se puede aplicar la mezcla 2 / can I use el pot 1 ya / puedo filtrar / ya puedo filtrar la mezcla
    puedo parar de batir / ya puedo apagar el agitador / ya puedo quitar el agitador del bote 2 / le apago ya al mixer
    can I stop el mixer / puedo meter la tapa al horno / ya puede entrar al horno la 7 / ya se puede hornear la voluta
    puedo sacar ya la 8 / se puede sacar la carcasa del horno / can I take out la 5
    ya le toca salir a la brida o la dejo / puedo tocar la 7 / la puedo agarrar ya / se puede mover la tapa
    puedo voltear la placa / puedo retocar la 8 todavía / alcanzo a retocar la brida / me da tiempo de retocar la 4
    is it ok to touch up la 6 / puedo soltar la 7 / puedo entregar la tapa / se puede liberar la 8
    ya se puede ir la carcasa / puede salir la voluta hoy / puede llevársela el cliente la brida / can we ship la 5
    puedo mandar la 6 / puedo abrir otra lata / se puede abrir la B sin gas / puedo destapar la A un momento
    puedo dejar la lata abierta mientras como / puedo juntar dos mezclas / puedo echarle solvente a la mezcla
    puedo adelgazar la mezcla / le puedo echar más B / se puede rociar sin extractor / puedo rociar ya
    ya podemos rociar / podemos entrar a la cabina / puedo rociar con la máscara de cartuchos
    se puede pintar lloviendo / se puede pintar con 80 de humedad / con 12 grados se puede / puedo lijar ya la 7
    puedo granallar la tapa hoy y pintar mañana / puedo pintar sobre la capa vieja / puedo ponerla al sol
    puedo curarla sin horno / puedo subir el horno a 100 / puedo irme a comer / me puedo ir / es hora de meterla
    ya es hora de filtrar / ya toca sacarla o espero / le sigo o me espero / me espero o le doy / lo uso o lo tiro
    la meto o no la meto / hay chance de pintar ahorita
  `,
  'how-long': `
    cuánto le falta a la 7 / cuánto le falta a la mezcla / cuánto falta pal horno / cuánto más de batido
    cuánto tiempo me queda con el bote 1 / cuánto me queda de mezcla en tiempo / cuánto dura todavía el pot 2
    cuánto aguanta aún la mezcla 3 / cuándo sale la tapa / cuándo puedo sacar la 8 / cuándo está lista la carcasa
    cuándo acaba de curar la voluta / cuándo termina el batido / cuándo se vence la mezcla / cuándo muere el pot
    cuándo seca la 5 / cuándo puedo tocar la 6 / a qué hora sale la brida / a qué hora está la 7
    a qué hora se muere la mezcla / a qué hora acaba de batir / a qué hora la pintamos la tapa
    a qué hora se mezcló el pot 1 / a qué hora entró al horno la voluta / falta mucho para la tapa / falta mucho
    cuánto falta todavía / cuánto rato más / cuántos minutos faltan / cuántos minutos le quedan a la mezcla
    cuántas horas le faltan a la 9 al aire / how long para la 7 / how long left el pot 1
    how much time tengo con el batch / how long until dry / when is la tapa done / when does el pot die
    time left mezcla 2 / time left en el oven / qué tiempo lleva la 8 adentro / cuánto lleva batiendo el bote 1
    cuánto lleva la carcasa en el horno / cuánto lleva abierta la lata 2 / cuánto lleva curando la voluta
    hace cuánto pesamos la mezcla / hace cuánto se pintó la 5 / desde cuándo está en el horno la 6
    ya pasó la hora de la carcasa / le queda tiempo al retoque / hasta cuándo puedo retocar la brida
    hasta qué hora puedo usar el pot 2 / llego a pintar otra antes de que se pase
    me da tiempo de comer antes del timbre / alcanza el tiempo para dos piezas más / cuánto margen tengo
    para qué hora está todo / la 4 para cuándo / y la mezcla, cuánto / y el horno, cuánto
  `,
  'who-did': `
    quién pintó la 7 / quién le dio a la tapa / quién mezcló el bote 1 / quién pesó la mezcla 2 / quién filtró
    quién apagó el agitador / quién metió la voluta al horno / quién sacó la brida / quién abrió la lata 3
    quién dejó destapada la A / quién midió el espesor de la 8 / quién tomó la temperatura / quién leyó el aire
    quién lijó la carcasa / quién granalló la tapa / quién desengrasó la 5 / quién liberó la 6
    quién puso en hold la 9 / quién la retuvo / quién firmó la salida / quién lavó la pistola / quién guardó los trapos
    quién tiró la mezcla / quién rociaba a las 10 / quién estaba en la cabina / quién cerró la sesión
    quién recibió las latas / quién dio de alta la pieza / quién prendió el extractor / quién apuntó eso
    who painted la 7 / who did la tapa / who mixed el batch 1 / who opened la A / who released la 8
    who put on hold la carcasa / who weighed it / who was spraying / quién fue / quién hizo la 5 / quién hizo el pot 2
    quién anduvo con la voluta / quién fue el que pintó la brida / quién fue el último con la 7
    de quién es la mezcla 2 / de quién es esta pintada / quién trabajó en la tapa / quiénes pintaron las bridas
    a nombre de quién está la mezcla / fue Omar o Lia el que la pintó / fue el otro turno o nosotros
    qué pintor hizo la 8
  `,
  'where-is': `
    dónde quedó la tapa / dónde anda la 8 / dónde pusieron la carcasa / dónde dejaron la brida / dónde la pusiste, la 5
    dónde está el bote 1 / dónde quedó la lata 3 / dónde está la B / dónde guardaron la A / dónde anda Lia
    en qué parte está la voluta / en qué mesa está la 6 / en qué carro va la tapa / en qué estante están las chicas
    en qué horno quedó la 9 / en qué cabina están / qué hay en el horno / qué hay en el cuarto de curado
    qué hay en el rack 2 / qué está en la mesa / where is la 7 / where's la tapa / where did you put la 8
    where's Omar / where are las bridas / what's in the oven / what's in the booth / what's on the rack
    location de la 5 / ubicación de la carcasa / lugar de la voluta / no veo la 7, dónde está / alguien vio la brida
    alguien ha visto la lata 3 / ando buscando la 6 / busco la carcasa, quién la tiene / quién tiene la 5
    adónde mandaron la 9 / pa dónde se llevaron la voluta / está adentro o afuera la tapa
  `,
  'how-hot': `
    a cuánto está la 7 / a cuánto está el aire / a cuánto está el horno / a cuánto anda la humedad
    a cuántos grados estamos / a cuántos grados va la tapa / cuántos grados hay / cuántos grados trae la voluta
    cuánta humedad hay / cuánta humedad tenemos / qué humedad hay / qué temperatura tiene la 8
    qué temperatura hay en la cabina / qué temperatura marcó la carcasa / qué temperatura tenía el aire a las 9
    qué temp trae la brida / qué tan caliente está la 5 / qué tan fría está la chapa / cómo está el clima adentro
    cómo está el aire / cómo va de temperatura la 6 / última lectura del aire / última lectura de la 7
    última temperatura de la tapa / última humedad / lectura de la mañana / cuánto marcó el higrómetro
    cuánto dio el termopar / cuánto dio la superficie / punto de rocío / cuál es el punto de rocío
    cuánto es el dew point / cuánto margen de rocío hay / how hot is la 7 / how hot está el oven / what's the temp
    what's the humidity / air temp now / metal temp de la 8 / surface temp de la tapa cuál era / how humid is it
    temp now / humidity ahorita / cuánto le falta para 90 a la 6
  `,
  'how-much': `
    cuánto pesamos de A / cuánto se mezcló en el bote 1 / cuánto era la mezcla 2 / cuánto hicimos de mezcla
    cuánto gastamos hoy / cuánto se tiró / cuánto sobró / cuánto queda en el pot / cuánto producto queda
    cuánto queda en el bote 1 / cuánto se usó de la lata 3 / cuántos gramos de A fueron / cuántos kilos mezclamos hoy
    cuántos gramos se recuperaron / cuánto se fue en la tapa / cuánto lleva la carcasa / cuánto solvente usamos
    cuánto residuo hay / cuánto pusimos de B / cuánto dio el pesaje / how much A / how much B le pusimos
    how much is left / how much did we mix / how much did we use / how much waste hoy / qué peso tuvo la A
    qué peso dio la B / qué cantidad se hizo / qué cantidad se gastó en la 7 / peso de la mezcla 1
    gramos de la mezcla 2 / cuánto espesor dio la 7 / cuánto midió la tapa / cuántas micras dio la 8
    qué espesor quedó en la carcasa / cuánto fue el peine de la 5 / cuánto dio la adherencia de la voluta
    qué dio la prueba de la brida / resultado de espesor de la 6 / cuánto voc llevamos / cuánta acetona se fue
  `,
  'to-do': `
    qué hago / qué hago ahora / qué me toca / qué toca / qué falta / qué falta por hacer / qué hay que hacer
    qué hay pendiente / qué hacemos ahora / qué debo hacer / ahora qué / y ahora / y luego qué / qué procede
    siguiente paso / what do I do / what's next / what now / what should I do / what's left to do / what's pending
    next step / next / qué le sigue a la 7 / qué le falta a la tapa / qué le toca a la 8 / qué sigue con la carcasa
    qué hago con la mezcla 2 / qué hago con la voluta / qué me falta antes de irme / qué falta para cerrar
    qué falta para pintar / qué falta para soltar la 5 / qué queda pendiente del turno / lista de pendientes
    pendientes / tareas / con qué le sigo / a qué le doy / por dónde empiezo / por dónde sigo / hay algo urgente
    qué urge / qué es lo primero / en qué ayudo / dime qué hacer / dígame qué sigue, por favor
  `,
  'what-late': `
    qué va tarde / qué se pasó de tiempo / qué se venció / qué está vencido / qué anda tarde
    qué timbró y nadie atendió / qué se quedó sin hacer / qué se olvidó / qué no se hizo a tiempo / hay algo atrasado
    hay algo que se pasó / vamos atrasados / andamos tarde / cuál ya se pasó / cuáles se pasaron de hora
    qué pieza lleva de más en el horno / qué mezcla ya se pasó / qué flash se pasó / atrasos / retrasos
    retrasos de hoy / pendientes vencidos / what's late / what's overdue / anything late / anything overdue
    are we late / what did we miss / qué campanas no atendimos / qué lectura falta y ya debía estar
    nos falta alguna lectura
  `,
  'went-wrong': `
    qué salió mal / qué pasó con la 7 / qué le pasó a la tapa / qué falló / qué falló con la mezcla 1 / qué tuvo la 8
    qué tiene la carcasa / qué problema hubo / qué problemas hubo hoy / qué broncas hubo / qué pedo con la voluta
    qué onda con la 5 / hubo problemas / hubo algún problema / hubo algo malo / hubo fallas / se echó a perder algo
    se perdió alguna mezcla / se cuajó algo hoy / se tiró alguna / se cayó alguna / algún incidente / incidentes de hoy
    incidentes / accidentes de hoy / casi accidentes / near misses / errores de hoy / defectos
    qué defecto tiene la brida / what went wrong / what happened con la 7 / what happened to the tapa / any problems
    any issues hoy / issues / what failed / what's wrong with la 8 / en qué la regamos / dónde la regamos
    qué no salió / todo salió bien o hubo algo / qué salió fuera de rango / qué quedó fuera de hoja
    qué estuvo fuera de límites
  `,
  'at-risk': `
    qué está en riesgo / qué corre riesgo / qué piezas peligran / qué pieza está en peligro
    qué se puede echar a perder / qué se nos puede perder / qué mezcla está por morirse
    qué se está acabando de tiempo / qué anda al límite / qué está apretado / qué debo cuidar / de qué me cuido
    a qué le pongo ojo / qué hay que vigilar / qué nos preocupa / hay algo en riesgo / hay piezas en riesgo
    hay algo por perderse / qué puede salir mal / qué anda mal / qué está comprometido / peligra la tapa
    qué está en la cuerda floja / what's at risk / anything at risk / at risk / what's in danger / what could go bad
    what's about to die / what should I watch / riesgos / riesgos del día / focos rojos / alertas / qué alertas hay
    qué está en rojo / qué está delicado / qué se va a morir primero
  `,
  trace: `
    qué lleva la 7 / qué lleva encima la tapa / qué se le puso a la 8 / qué se le dio a la carcasa
    qué le pusieron a la serie 4411 / qué producto lleva la voluta / qué mezcla lleva la brida / qué lotes lleva la 5
    con qué se pintó la 6 / con qué lote se pintó la 9 / con qué mezcla se pintó la 7 / de qué mezcla salió la tapa
    de qué latas salió la 8 / de qué lote es lo que lleva la carcasa / qué pintura lleva la pieza 4411
    historial de la serie 4411 / trazabilidad de la voluta / trazabilidad / rastro de la brida
    dime todo lo que se le hizo a la 5 / what went on la 7 / what's on la tapa / what lots on la 8
    what went on serial 4411 / which batch on la carcasa / trace la 7 / trace de la voluta / trace serial 4411
    en qué condiciones se pintó la tapa / con qué humedad se pintó la 8 / quién y con qué pintó la carcasa
    cómo se hizo la voluta / cómo se preparó y pintó la brida / el cliente pregunta qué lleva su válvula
    un año después qué lleva la 4411
  `,
  why: `
    por qué tanto / por qué tanto tiempo de batido / por qué se alarga el batido / por qué falta tanto
    por qué no puedo / por qué no me deja / por qué no / por qué dice eso / por qué esa hora / por qué pide eso
    por qué se muere a esa hora / por qué está en hold la 7 / por qué retuvieron la tapa
    por qué no se puede soltar la 8 / por qué no sale la carcasa / por qué suena / por qué timbró
    por qué rechaza la mezcla / por qué me pides el lote / por qué quieres la superficie / por qué no cuenta la lectura
    por qué cuenta desde ahí / por qué cambió la hora / why / why not / why so long / why 102 / why is la 7 on hold
    why can't I / why does it say that / how come / a qué se debe / cuál es la razón / de dónde sale ese número
    de dónde sacas eso / de dónde sale el tiempo / de dónde salen los 102 / quién dice que son 90 / cómo calculas eso
    cómo sacaste la hora / cómo llegas a ese tiempo / en qué te basas / explícame el porqué / explícame ese número
    según quién
  `,
  'what-is': `
    qué es el flash / qué es inducción / qué es el punto de rocío / qué es el blanket / qué es DFT / qué es el peine
    qué es recoat / qué es el traveller / qué es una sesión / qué es hold / qué es la parte A / qué es la B
    qué significa pot life / qué significa hold / qué significa flash / qué significa dew point / qué significa 5B
    qué significa Sa 2.5 / qué quiere decir spread / qué quiere decir inertizar / qué quiere decir tack free
    a qué le llamas flash / a qué se refiere el spread / qué son los mils / qué son micras / what is flash off
    what's pot life / what's dew point / what is DFT / what does hold mean / what's a traveller / define pot life
    define flash off / definición de inducción / explícame qué es el rocío / explícame lo del flash
    no sé qué es el blanket / no entiendo qué es spread / cómo se come eso de inducción / qué rayos es el WFT
    qué demonios es recoat / pa qué es el argón / para qué sirve el peine / para qué es la campana
    cuál es la diferencia entre WFT y DFT / diferencia entre seco y curado
  `,
  stock: `
    qué hay en el almacén / qué latas hay / qué latas tenemos / cuántas latas hay / cuántas latas de A quedan
    cuántas B tenemos / cuánta A queda / cuánta B hay / cuánta pintura queda / cuánto material hay
    cuánto producto hay en el estante / hay A / hay B / hay más A / queda B / queda A en el almacén
    quedan latas cerradas / tenemos A / tenemos suficiente B / tenemos latas nuevas / nos queda endurecedor
    hay resina / qué hay que pedir / qué falta pedir / stock / stock de A / stock de B / inventario de latas
    existencias / existencias de A / how many cans left / cans left / how much A is left / do we have B / any A left
    qué cans hay / qué cans están abiertos / cuántos cans de B / qué latas están abiertas y con cuánto
    cuánto le queda a la lata 3 / cuánto queda en la lata 2 / alcanza la A para la semana
    para cuántas mezclas alcanza la B
  `,
  day: `
    cómo va el turno / cómo fue el día / cómo estuvo el día de hoy / cómo vamos hoy / cómo cerró el día
    qué tal el día / qué tal estuvo hoy / qué se hizo en el turno / qué se hizo ayer / qué hicimos ayer
    qué hizo el otro turno / qué hizo la noche / resumen del día / resumen del turno / resumen de la mañana
    resumen de la semana / reporte del turno / reporte de hoy / parte del día / parte diario / el día en corto
    el día por favor / dame el día / dame el resumen / dame el resumen de ayer / mándame el resumen del día
    pásame el día / the day / day report / daily report / day summary / summary / summary de ayer / how was the day
    how did we do hoy / how did today go / recap / recap de ayer / wrap up del día / balance del turno / saldo del día
    cómo nos fue ayer / cómo nos fue en el turno / cómo le fue a la cuadrilla / qué tanto se avanzó / avance del día
    avance de hoy / qué logramos hoy / cuéntame qué pasó hoy / dime cómo estuvo la jornada
  `,
  'next-ring': `
    cuándo suena / cuándo suena la próxima / cuándo timbra / cuándo pita / cuándo me avisas / a qué hora me avisas
    a qué hora timbra / a qué hora pita / qué suena primero / qué va a sonar / qué va a timbrar / qué timbra
    qué sigue por sonar / qué alarma sigue / qué aviso sigue / qué campana viene / próxima campana / próximo timbre
    próxima alerta / próximo pitido / siguiente campana / siguiente alarma / siguiente timbre / siguiente alerta
    la que sigue de campana / la próxima campana a qué hora / cuánto para la próxima campana
    cuánto falta para que suene / cuánto falta pal timbre / next bell / next ring / next alarm / when's the next bell
    when does it ring / what rings / when will you ring / when's my next alarm / hay alguna alarma puesta
    hay campanas pendientes / hay timbres puestos / tienes algo puesto para sonar / qué tienes programado
    qué recordatorios hay / me vas a avisar antes de las 12 / va a sonar algo pronto
    alcanzo a comer antes de que suene / para cuándo es la campana
  `,
  watch: `
    quién vigila afuera / quién está vigilando / quién está de vigía / quién es el vigía / quién es el vigilante
    quién cuida / quién cuida la cabina / quién está cuidando la puerta / quién está afuera / quién se quedó afuera
    quién está al pendiente / quién está pendiente afuera / quién nos vigila / quién nos cuida
    quién nos ve desde afuera / quién está de apoyo afuera / quién hace guardia / quién está de guardia afuera
    hay alguien afuera / hay quien vigile / who's watching / who's outside / who is the watch / who's on watch
    who's standby / is anybody outside / anyone watching / a quién pusieron de vigía / a quién le toca vigilar
    quién le toca de vigía hoy / quién releva al vigía / el vigía quién es / el vigía sigue ahí / sigue Omar de vigía
    está Lia afuera vigilando / cambió el vigía / desde cuándo vigila Omar
  `,
  'in-charge': `
    quién manda / quién manda aquí / quién está a cargo hoy / quién está al mando / quién es el encargado hoy
    quién es el jefe / quién es la jefa / quién es el lead hoy / quién es el líder / quién es líder del turno
    quién lidera / quién supervisa / quién es la supervisora / quién es el responsable / quién lleva el equipo
    quién dirige el turno / quién coordina / quién decide aquí / quién da las órdenes / quién autoriza / quién aprueba
    quién firma liberaciones / quién me puede autorizar / who's the lead / who's the boss / who is in charge
    who's in charge today / who's the supervisor / who runs the shift / who's running el turno / a quién le aviso
    a quién le digo / a quién le reporto esto / a quién acudo / a quién busco si hay bronca / con quién hablo
    con quién me dirijo / a quién le toca mandar hoy / está Kari de lead / sigue Kari a cargo / Bea es la supervisora
    el lead de la noche quién es / el encargado de hoy quién es / si no está Kari quién
  `,
  emergency: `
    números de emergencia / teléfono de emergencia / qué número es el de emergencia / cuál es el número de emergencia
    a qué número hablo / a qué número llamo en una emergencia / a dónde hablo si pasa algo
    a dónde llamo si hay incendio / a quién le hablo en emergencia / a quién llamo si alguien se lastima
    a quién llamo si hay fuego / a quién llamo si hay un accidente / teléfono de bomberos / número de bomberos
    teléfono de la ambulancia / número del doctor / teléfono de la clínica / número del hospital
    número de protección civil / número de la cruz roja / número de intoxicaciones / teléfono del centro de venenos
    emergency numbers / emergency phone / what's the emergency number / who do I call / who do we call in an emergency
    poison control number / fire department number / 911 o qué número / qué número tenemos aquí para urgencias
    contacto de emergencia / lista de contactos de emergencia / el número de seguridad / número de seguridad de planta
    dónde veo los números de emergencia / pásame los números de emergencia / recuérdame el número de emergencia
  `,
  'may-spray': `
    quién puede pintar con pistola / quién puede usar la pistola / quién está autorizado a rociar
    quién está autorizado para pistola / quién tiene permiso de rociar / quién tiene permiso para la cabina
    quién está aprobado para spray / quién está habilitado / quiénes están autorizados / quiénes pueden rociar
    quiénes pueden entrar a rociar / puede rociar Omar / puede rociar Lia / puede Beto agarrar la pistola
    puede el nuevo rociar / puede el aprendiz usar la pistola / puedo yo rociar
    me toca a mí rociar o no tengo permiso / tengo permiso de pistola / tengo vigente mi permiso
    estoy autorizado para rociar / está autorizada Lia / está autorizado Omar para pistola / who may spray
    who's allowed to spray / who's cleared to spray / can Omar spray / is Lia cleared / may I spray
    am I cleared to spray / spray list / lista de pistoleros / lista de quienes rocían / a quién dejan rociar
    a quién le vence el permiso de rociar / a quién le falta el fit test / tiene fit test Omar
    está vigente el examen médico de Lia / sigue vigente la autorización de Beto
  `,
};
