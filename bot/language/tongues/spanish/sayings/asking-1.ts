// How Spanish speakers ask: can-i, how-long, who-did, where-is and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfAsking1: Sayings<AskedMeaning> = {
  'can-i': `
    puedo pintar ya la 7 / ¿Se le puede dar ya la segunda mano al impeller 3? / ya la puedo meter al horno?
    la 8 ya se puede sacar / oye jefe ya puedo abrir otro bote o me espero / ¿Puedo destapar la A o falta el gas?
    ya le entro con la pistola o todavia no / se puede tocar ya la valvula 2
    la housing ya esta para coatear o hay que esperar / puedo filtrar ya el batch 1
    ¿me da tiempo a pintar la bracket-4 con lo que hay hecho? / podemos empezar a rociar o qué
    ya estuvo el batch pa aplicarlo? / dejan que le meta brocha a la 5 ahorita / ¿está ya para usar la mezcla 2?
    le puedo echar otra capa a la 9 sin que se joda / con esta humedad se puede pintar
    hace frio aqui dentro, aun asi puedo aplicar? / che ¿ya puedo sacar el impeller del horno?
    ¿Hay vía libre para recubrir la carcasa? / todavia alcanzo a retocar la 6
    aun se puede retocar la esquina de la 2 o ya no / puedo parar el agitador ya / ya le apago al mixer?
    se vale usar el pot 1 todavia / todavía sirve la mezcla de esta mañana? / me dejas soltar la 4
    ya puedo entregar la valve 2 al cliente / se puede liberar la placa 3 o le falta algo / ¿puedo cerrar ya el bote 3?
    el cliente quiere llevarse la 7, se la doy? / me la puedo llevar ya la rail-12
    podria pintar los dos brackets seguidos / ¿Es momento de meter la 3 al horno o todavía suelta disolvente?
    ya mero puedo darle la segunda al flange? / me pregunta el nuevo si ya puede tocarla
    quiero saber si puedo abrir el can 4 / a ver, la 1 se puede mover de sitio ya / puedo rociar con la puerta abierta?
    ¿puedo mezclar ahora o está muy húmedo? / ta bueno el clima pa pintar o no / oe ya se puede lijar la 2
    se puede encimar otra mano en la 10 / ya es seguro meter la tanda de la mañana al oven
    puedo usar el resto del bote 2 en otra mezcla / puedo juntar lo que sobra del pot 1 con el 2
    ¿me puedo ir a comer o hay que quedarse con la mezcla? / sin ventilador puedo brochear por lo menos
    dale permiso o no a la 8 pa salir / ya se puede empacar el impeller 9 / no se si ya puedo pintar la 4, tu dices
    ¿Vale la pena pintar otra con lo que le queda o no me va a dar? / se la puedo dar con rodillo en vez de pistola
    mi turno de pintar la valvula, puedo? / la pieza está a 14 grados, puedo darle? / la puedo poner al sol pa que cure
    can i ya meter la 5 al horno o no / la lid de la A la puedo dejar quitada un rato / ya podemos cerrar el booth
    tengo luz verde pa spray? / ya se puede poner en servicio la bomba
  `,
  'how-long': `
    cuanto le queda a la 1 / ¿Cuánto falta para que se pueda usar el batch 2? / ni idea de cuánto le queda a esa mezcla
    ya seco la 8? / ¿está seca ya la válvula? / a que hora sale el impeller del horno / cuando truena el pot 1
    hasta que hora aguanta la mezcla / cuánto más hay que batir / cuanto tiempo mas de stir / le falta mucho a la 3?
    ya mero sale la 7 o qué onda / ¿Cuándo se muere el bote mezclado? / a qué hora se pasa la segunda
    cuanto me queda de pot life / falta mucho pal flash off de la 4 / ¿para cuándo estará curada la carcasa?
    el cliente pregunta cuando puede recoger la 9 / dime cuanto lleva la 2 en el horno / cuánto lleva batiéndose eso
    hace cuanto que pintamos la bracket-8 / en cuánto termina de curar la 5 / y la 6 pa cuando
    ¿llegamos a las 3 con la 11 curada? / a ver cuanto tengo antes de que gelee
    cuánto tiempo tengo para aplicar lo que hay en el cubo / chamo cuanto le falta a esa vaina
    che, ¿cuánto le falta al horno? / cuando puedo volver por la mezcla / con cuánto margen voy en el pot 3
    ¿Cuándo tengo que sacar la pieza del horno? / cuantos minutos pa que seque al tacto
    qué tiempo le queda al retoque de la 2 / hasta cuándo se puede repintar el flange
    de cuanto es el curado que le falta a la valve 4 / ya se acabó el stir del uno? / how long le falta al batch 1
    cuanto falta / y eso cuando acaba / sigue viva la mezcla 2 / no sé si la 1 sigue viva, ¿cuánto le queda?
    me voy por un cafe, me da tiempo antes de que avise la mezcla? / quiero saber a qué hora está lista la pieza grande
    ya está el batch o todavía le falta / ¿Está hecho ya el impeller 3? / cuanto aguanta abierta la A que destape
    cuánto tiempo lleva abierto el bote 3 / hora de caducidad del pot 2, la de hoy / se secó ya la rail-07?
    va a estar lista la 12 antes del camion? / cuanto rato falta pa la proxima lectura de la 5
    a como vamos de tiempo con la mezcla / a que horas se empezo el batch 4 / ¿A qué hora echamos el B?
    cuando entró la 8 al horno / faltan 10 o 20 minutos pa la valvula? / ya estará la 6?
    cuánto queda de ventana de repintado en la 4 / desde cuando esta curando el housing
    qué hora calculas que la suelta el horno
  `,
  'who-did': `
    quien mezclo el batch 1 / ¿Quién pintó la 8? / quién le dio la mano al impeller 3 / quien abrio el bote 2
    de quien fue la mezcla de ayer / who coateó la 7 / ¿Quién tomó la humedad esta mañana? / quien midio la pieza
    quién metió la válvula al horno / quien saco la 4 / quien firmo la liberacion de la 9 / oye y quien filtro el pot 2
    quién dejó el bote destapado / quien le puso gas a la A / fue Ola el que rocio la bracket-4?
    ¿Fue Kari quien pesó la A? / a quien le toco pintar los rieles / el cliente pregunta quien aplico el flange 6
    me dicen que diga quién tocó la 5 / quien estaba en la pistola a las 10 / quién inspeccionó la carcasa
    quien le dio release a la valve 2 / quien le hizo el lijado a la 11 / ¿Quién preparó la superficie de la 3?
    quien paró el agitador / quien apago el fan / quién puso en hold la 6 / quien anoto eso del batch 3
    quién ha apuntado 52 de humedad / ni idea de quién pintó la 10 / quiero saber quien hizo esa chapuza en la 2
    quien fue el ultimo que toco la mezcla / quien la tiro, la mezcla digo / quién vació el pot 1
    ¿quién limpió la pistola ayer? / quien peso mal la B / de quién es la firma de la 7
    quien dijo que estaba seca la 8 / quién dio la 4 por buena / che quién hizo la segunda mano del impeller
    quien me abrio la lata nueva / que compañero le dio con rodillo a la placa
    quien andaba en la cabina cuando se pinto la 12 / nombre del que pinto la 9 / nombre del que mezcló, porfa
    pa saber quien leyo el higrometro / quién trajo las piezas del job 88 / quien recibio los rieles
    quien llevo la 5 al rack / quién hizo el batch 2, ¿tú o Jo? / Bea pregunta quién está detrás de la tanda de hoy
    quien midió el espesor de la 3 / quien sacó la lectura de temperatura / cuántos hay dentro de la cabina
    cuánta gente está en la cabina / cuántas personas hay ahí adentro / cuántos somos en la cabina
  `,
  'where-is': `
    donde esta la 7 / ¿Dónde está el impeller 9? / en que rack quedo la bracket-8 / dónde dejasteis el bote 3
    donde anda Omar / no encuentro la valvula 2 / quién ha visto la carcasa, dónde está / donde pusieron la A
    adonde se fue la 4 / en qué horno está la 5 / esta en el horno la 6 o en el rack / ¿La 3 sigue en la cabina?
    donde quedo el can 2 compadre / dónde anda Kari ahorita / a donde llevaron los rieles
    busco el bote de B, dónde para / donde carajo esta la housing / where está la 11 / ubicación de la pieza 10
    en que lugar esta la lata que abrimos ayer / por dónde anda el flange 6 / ¿Dónde guardamos la A con gas?
    en qué estante está el lote nuevo / se me perdio la placa 4, donde la pusimos
    el cliente viene por la 8 y no la encuentro / ¿Sabes dónde quedó la valve 1? / donde metieron la bomba
    en que booth estan pintando la 2 / que hay en el rack 3 / qué hay dentro del horno / que piezas estan en el oven
    quienes estan en la cabina / dónde se encuentra Inés / ola esta en la cabina o salio / la 12 donde
    y la 1 donde la dejaron / ya salio de la nave la 9? donde esta / dónde se curó la 7 / pa dónde jaló Jo
    dónde tengo que ir a buscar el impeller / el bote abierto en qué sitio está / no sé dónde anda la pieza del job 90
    en que lado del taller esta la 5 / ¿Está fuera o dentro la rail-03? / dime dónde está el lead
    dónde fue a parar la lata 4 / a dónde movieron los brackets / las piezas de ayer dónde andan
    por donde anda la valvula chica que estaba aqui hace rato / alguien sabe a que rack mandaron la 8
  `,
  'how-hot': `
    a cuanto estamos / que temperatura hay en la sala / ¿Qué humedad tenemos ahora? / cuánto marcó la 5 en el horno
    a cuántos grados está la 7 / que tan caliente esta el impeller / how hot está la valve 2
    cual fue la ultima lectura de la sala / humedad de la mañana? / cuantos grados hacia cuando pintamos la 8
    ¿A qué temperatura llegó la pieza? / que calor hacia en la nave a las 10 / a cuanto anda el dew point
    punto de rocío ahora mismo / cuánto dio el higrómetro / temp del horno / que trae el horno ahorita, 90?
    a cuánto están las del horno ahora / a cuánto va lo que está en el horno / a cuánto ronda el acero
    a cómo están los del horno / en cuánto anda la sala / y la carcasa, a cuánto está ya
    el cliente quiere saber con qué humedad se pintó la 9 / qué condiciones había al aplicar el flange
    con cuanta humedad se mezclo el batch 1 / dime la temperatura del cuarto / cual es la temp de la superficie de la 3
    la 4 a cuánto está de superficie / ya se leyo el aire hoy? cuanto salio / ¿Cuánto hay de humedad en la cabina?
    está muy húmedo hoy? qué marca / qué lectura tenemos de la carcasa / a como esta el clima adentro
    cuantos F hay en el booth / esta a 90 la pieza ya? / ya llego a 90 la 6 / la bomba alcanzó los 90 o no
    cuánta diferencia hay con el punto de rocío / que spread tenemos / ¿cuál fue la máxima de la 2 en el curado?
    qué mínima hubo anoche en la nave / cuánto frío hizo por la noche ahí dentro
    cuando fue la ultima vez que leyeron el aire / que tan vieja es la lectura del aire / a ver la temperatura porfa
    temperatura y humedad / che qué humedad hay, se siente pesado / ta caliente aqui, cuanto marca
    cuanto calor agarró el bracket / registro de temperatura de la 11 / qué temperaturas se tomaron de la placa 4
    qué marcaba cuando empezamos el batch 2 / hace bochorno, ¿a cuánto estamos de humedad?
    a qué temperatura está el metal / no sé a cuánto está la sala
  `,
  'how-much': `
    cuanto queda del batch 1 / ¿Cuánta A nos queda? / cuanto hay que mezclar pa 3 piezas de 0.4 m2
    cuánto preparo para la 7 y la 8 / que tanto queda en el bote 2 / cuánta mezcla hace falta para un metro cuadrado
    cuanto batch me aviento pa los rieles / cuanto pesa lo que queda en el can 3
    ¿Qué cantidad de mezcla necesito para cubrir 2,5 m2 con rodillo? / cuantos kilos quedan en el pot
    cuánto hicimos hoy de mezcla / cuanto se gasto en la valvula
    cuanto le echo de mezcla a la bomba, tiene 6 square feet / pa cuatro brackets cuánto mezclo
    cuanto material lleva el impeller 3 / cuánto ha sobrado / que tanto se tiro ayer
    ¿Cuánto se desperdició en la manguera? / cuantas libras de A hay en la lata / cuánto llevo gastado del bote
    cuanto pesamos de B en el dos / que cantidad de A le pusieron al batch 3 / cuánto pesó la B
    cuanto mix pa 10 ft2 con pistola / calcula cuánto para 5 placas de 0,2 / cálculo de mezcla para una pieza de 1.2 m2
    sácame la cuenta de cuánta mezcla para 12 rieles / no se cuanto preparar pa la carcasa
    ni idea de cuánto queda en el cubo / cuanto hay en el pot 2 / el pot grande por donde va
    ¿cuánta mezcla viva tenemos? / cuánta pintura se llevó la 9 / cuanto producto hemos usado hoy
    how much queda del can 1 / cuánto solvente se gastó / cuantos gramos de mezcla para retocar la 4
    cuanto hay q hacer pa terminar la chamba de hoy / queda mucho en el bote de A? / cuánto sobró del batch de la mañana
    che cuánto mezclo para tres tapas chicas / con qué cantidad me alcanza para los dos flanges
    qué cantidad hago para dos manos en la 6 / cuanto se ocupa para un tanque de 8 metros / de cuánto es el batch 4
    de que tamaño hicieron la mezcla / cuánto recuperamos del flow coat / cuánto cayó a la bandeja
    cuánto gas queda en la botella / qué merma llevamos / la lata 5 cuánto tenía al abrirla / cuanto resta de la segunda
    dime kilos del batch 2
  `,
  'to-do': `
    que sigue / ¿Qué toca ahora? / qué hago con la 7 / que le falta al impeller 3 / qué queda por hacer hoy
    y ahora que / que mas falta / cual es el siguiente paso / que le hacemos a la valvula 2
    ¿Qué nos queda para cerrar la jornada? / en qué me pongo / what's next con la 4 / ya acabe la 5, que sigue
    pendientes de hoy / qué pendientes hay / que anda pendiente con la carcasa / me das la lista de lo que falta
    dime por dónde sigo / a ver jefe, qué sigue después del filtrado / qué le toca a la bracket-8
    falta algo en el batch 1? / que falta pa soltar la 9 / ¿Qué paso viene después de secar?
    acabo de llegar, que hay que hacer / tengo las manos libres, en qué ayudo / qué me falta anotar de la 6
    que nos falta para terminar el job 88 / el job 90 que tiene pendiente / qué faena queda / que chamba queda
    ya ahora q hago / y despues del horno que va / qué más hay que hacerle al flange / ¿Hay algo pendiente en la cabina?
    queda algo por hacer o ya nos vamos / nos podemos ir o falta algo / que sigue con el pot 2 / no se que sigue
    ni idea de por dónde íbamos con la 11 / con qué empiezo mañana / que tareas hay pa la tarde
    por donde le sigo compa / cuál hago primero / qué es lo siguiente con la bomba / estoy parado, qué toca
    lo que falta de la placa 4 / qué pasos le quedan a la rail-03 / cosas por hacer hoy / to do de hoy
    qué le resta al lote de brackets / me perdí, en qué paso voy / y la 2 qué necesita / che qué hacemos ahora
  `,
  'what-late': `
    que esta atrasado / ¿Qué va con retraso? / hay algo vencido / qué se nos pasó / algo que ya debio salir del horno?
    que ya se paso de tiempo / vamos tarde con algo / ¿Hay alguna lectura que toque y no se haya hecho?
    que cosas se pasaron de la hora / algo late? / qué campana no ha atendido nadie / qué avisos hay sin atender
    qué está fuera de plazo / hay piezas pasadas de hora / que traemos atrasado / cuales piezas ya se pasaron del flash
    se nos ha pasado algo? / qué mezcla se ha pasado ya / vamos al dia o hay retrasos / lo atrasado porfa
    qué tenía que estar hecho ya / qué debería haber salido ya / nos falta alguna lectura de aire que ya tocaba
    qué alarma sigue sin contestar / que timbro y nadie le hizo caso / ¿Qué llevamos de retraso? / cosas vencidas
    algo overdue por ahi / a quien se le paso la hora de algo / tenemos algo pasado de tiempo en el oven
    que se quedo colgado / que esta tardado / ¿cuáles van tarde? / que parte va demorada / che, ¿qué está demorado?
    con qué vamos atrasados / Bea pregunta qué está fuera de hora / qué control ya venció / algún plazo vencido hoy
    que se esta pasando ya / vamos mal de tiempo con alguna? / qué tareas tenían que estar antes de ahora
    lo que ya debería estar limpio y no está / sonó algo y no lo vi, qué se pasó / que nos brincamos
    hay alguna que ya tocaba sacar / qué se ha quedado por el camino con la hora pasada / a ver retrasos / lo vencido
    piezas demoradas?
  `,
  'went-wrong': `
    que salio mal hoy / ¿Qué ha fallado hoy? / hubo broncas hoy / algún problema en el turno / que se jodio hoy
    qué se estropeó / que rechazos hubo / problemas con la mezcla 2? / qué fallas hubo hoy en la cabina
    algo salió chueco hoy? / qué defectos salieron / hubo algun scrap / qué piezas quedaron mal
    que paso con la 8, por que la rechazaron / ¿Ha habido algún incidente? / hoy se rego algo? / en qué la regamos hoy
    en qué metimos la pata / que la cagamos hoy / cuáles salieron con burbujas / what went wrong con el batch 1
    qué falló con el impeller 3 / hubo near misses / algún susto hoy / qué perdimos hoy
    cuanto se fue a la basura por error y por que / la jefa quiere saber qué se torció esta mañana
    que desmadre hubo mientras comia / lista de fallos del día / incidencias de hoy / incidencias
    alguna incidencia con la válvula / qué se fue a la porra / qué cosas raras han pasado hoy
    todo bien hoy o hubo pedos / no estuve, ¿salió algo mal? / qué quilombo hubo hoy / que problema tuvo el can 2
    se nos gelo algo hoy? / hubo errores de peso / alguna pesada fuera de rango hoy / cuántas piezas malas llevamos hoy
    ¿Qué no salió bien ayer? / que accidente hubo / de que se quejaron en la inspeccion / qué ha ido mal con el curado
    cuales tuvieron runs o piel de naranja / algo anormal en el turno de noche / qué se hizo mal / en que fallamos
    problemas de hoy porfa / dime lo malo
  `,
  'at-risk': `
    que esta por perderse / ¿Qué corre peligro ahora mismo? / hay algo que se vaya a echar a perder
    que se nos va a morir / qué mezcla está a punto de gelificar / alguna pieza en riesgo / que me urge
    qué es lo más urgente / que esta en la raya / se nos va a ir algo si nos vamos a comer?
    qué perdemos si no volvemos en media hora / algo at risk? / cual bote esta en peligro
    qué lata está sin gas y se va a arruinar / que anda a punto de tronar / qué pot se muere primero
    ¿Qué está al límite? / algo que se vaya a fregar / hay alguna que se quede sin ventana de repintado
    a que hay que correrle / qué hay que salvar ya / que se puede perder hoy / nos la jugamos con alguna?
    qué corre prisa / que prisa hay, qué va a caducar antes / cuáles van justas / cual va justa de tiempo
    algo en la cuerda floja / qué está en el alero / que pieza esta por pasarse / ¿Peligra algo del job 88?
    peligra la mezcla? / riesgos ahora / hay riesgo de perder el batch 2 / que se nos puede ir al tacho
    che, ¿qué está por arruinarse? / a quien atiendo primero antes de que se pierda / qué se estropea si no hago nada
    urgencias? / que esta crítico / algo critico ahorita / hay algo a punto de vencerse
    qué tengo que atender ya mismo o lo pierdo / lo que este por morirse dimelo / el bote abierto corre riesgo?
    está en peligro la tanda de la mañana / se nos pasa algo en los próximos diez minutos
    quien la lleva mas apretada, la 3 o la 5 / qué podemos perder esta tarde / hay bronca con alguna que este por vencer
  `,
  trace: `
    que se le puso a la 4411 / ¿Qué lleva el impeller 9? / el cliente pregunta qué lotes lleva el impeller 9
    que lotes trae la valvula 2 / de qué mezcla salió la 8 / qué piezas se llevaron el batch 1
    que partes agarraron del batch 2 / a qué piezas fue el lote 7731 / trazabilidad de la 7
    dame la traza de la bracket-8 / historial de la carcasa / qué se aplicó en la serie 4412 el año pasado
    con que batch se pinto la 3 / con qué botes se hizo la mezcla 1 / el bote 3 en qué mezclas acabó
    en donde se uso el can 2 / que piezas tocó la lata mala / ¿Adónde fue a parar el lote de B que vino mal?
    hay un recall del lote, que piezas tienen eso / tenemos reclamación de la 4411, ¿qué llevaba?
    de cual lote es la pintura del flange / which lots trae la 5 / historia completa de la rail-12
    lo que lleva encima la 6 / que producto tiene el job 88 / qué material se usó en la 10 y con qué humedad
    rastreame la placa 4 / rastrea el lote B-220 / que se hizo con el batch 3 / piezas del batch 1
    las que se hicieron con el pot 2 cuales fueron / todo lo que salió del bote 5 / que lot de A le toco a la 11
    lote de la A del impeller 3 / de dónde salió lo que lleva la válvula
    el inspector quiere ver de qué lotes es la bomba / qué lotes entraron en la mezcla de ayer
    che qué le pusimos a la tapa chica / a ver la vida de la 2 / trace de la 7 / quiero saber todo lo que tocó ese lote
    qué otras piezas comparten mezcla con la 8 / cuales mas salieron con la misma mezcla que la 4
    me piden el lote que fue en el serial 5520 / qué traía la pieza que devolvieron / con qué se pintó el riel que falló
    que batch fue el de la housing / el lote ese en qué piezas está / de qué bote bebió la mezcla 2
  `,
  why: `
    por que / ¿Por qué tanto rato batiendo? / por qué no puedo pintar la 7 / porque me pide la lectura
    por qué 102 minutos / pq suena esto / y eso por que / ¿Por qué dice que la 3 no está curada?
    porque tanto tiempo hoy y ayer no / de dónde sale esa hora / de donde sacas los 90 grados / cómo has calculado eso
    por que hay que echarle gas / a que se debe que no cuente el tiempo del horno / por qué sigue en hold la 6
    porque esta retenida la valve 2 / por qué no me deja soltarla / why no me deja coatear
    ¿A santo de qué hay que esperar diez minutos? / por qué razón se rechazó la placa 4
    que razon hay pa medir la pieza otra vez / por qué no se puede apagar el stirrer
    explicame porque se murio tan rapido el pot / explícame por qué el 2 %
    por qué la mezcla uno acaba antes que la dos / como es que ya se vencio / por qué primero acetona
    y por que no la tapo / por qué me avisa otra vez / por que la hora del horno no empieza todavia
    por qué me sale en rojo / che por qué tanta vuelta con la humedad / en qué te basas para decir las 12:33
    de qué hoja sale eso / quién dice que son 10 minutos, de dónde viene / por qué dos firmas
    a cuento de qué me pides el higrómetro / no entiendo por qué no cuenta / no entiendo, cómo que falta una hora
    por qué se tiró el batch 1 / el porqué de esa cifra / porque no puedo usar lo que sobro
    por que menos mezcla de la que pedi / cómo así que no se puede / ah caray y eso por qué
    por qué hay que ponerse la máscara de aire / pa que quieres la temperatura de la pieza
    para qué sirve leer la superficie / por qué necesita estar encendido el extractor / motivo de la retención de la 5
  `,
  'what-is': `
    que es flash off / ¿Qué significa punto de rocío? / qué es pot life / que quiere decir induction
    a qué le llaman blanket / que es eso de headspace / que es un traveller / qué significa DFT / que es WFT
    ¿Qué es la vida útil de la mezcla? / que es el spread / qué demonios es un witness coupon
    y eso de orange peel que es / a que le dices mottle / soy nuevo, qué es la parte B / qué quiere decir repintable
    what is flow coat / flow coat qué es / que chingados es dew point / qué significa curado
    no sé qué es eso de la ventana de repintado / qué es HVLP / explícame qué es el perfil / que es un hold
    release que significa / cómo se le dice a eso del tiempo abierto, qué es / qué entendéis por seco al tacto
    seco al tacto qué viene siendo / que es lote / ¿Qué es una película húmeda? / que es el vortex / qué es inertizar
    a qué se refiere con purgar / definición de gelificado / significado de VOC / que vaina es bonding
    qué viene a ser la tierra del bote / qué es el LEL / diferencia entre flash y cure
    qué diferencia hay entre seco y curado / me dijeron que vigile el spread, qué es / q es batch
    qué es una hoja de producto / y un near miss que es / q significa digest / que es eso del punto de inflamacion
    qué es lo de la piel de naranja / touch dry, ¿eso qué es? / que quiere decir que la mezcla está muerta
    qué es el handover
  `,
  stock: `
    que botes tenemos / ¿Qué latas quedan? / que hay en almacen / cuántos botes de A quedan sin abrir
    que lotes tenemos / inventario / dame el inventario de latas / qué latas están abiertas / qué hay de B
    tenemos A todavia? / nos queda algún bote de B / hay suficiente material en bodega / que cans tenemos / stock porfa
    what's in stock / cuantas cubetas de A hay / qué existencias hay / ¿Hay que pedir más producto?
    nos alcanza lo que hay en el almacen pa la semana / botes abiertos y cerrados
    que hay en el gabinete de inflamables / queda acetona / hay alcohol isopropilico todavia / cuánto argón tenemos
    lista de botes / lista de lotes / lotes en casa / de qué lotes disponemos / que lote de A tenemos en el estante
    cuántas latas hay con gas / hay latas sin usar? / ocupamos pedir B o todavía hay
    Bea quiere saber qué material queda en el taller / qué tenemos en la repisa / que nos queda de todo
    como andamos de material / cómo vamos de producto / andamos cortos de algo? / queda algun can del lote viejo
    con qué contamos en el cuarto de pintura / existencias de endurecedor / tenemos resina / che, ¿qué latas hay?
    cuántos kits nos quedan / cuantos juegos completos de A y B / cuáles botes me puedo llevar / qué botes hay enteros
    qué hay disponible para mezclar / las latas que hay, todas / que hay en el fridge
  `,
};
