// How Spanish speakers say it: air, fan on, fan off, supplied yes, supplied no, spray on, spray off, flush gun, flush brush. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfBooth2: Sayings<SaidMeaning> = {
  air: `
    22 y 50 / 23 grados, 48 por ciento / aire 22 50 / aire a 24, humedad 45 / el aire está a 21 y 55
    el aire en 23 con 50 de humedad / aire: 22,5 °C y 47 % / air 75 48 / air 24C 50% / la sala a 22 con 50
    la nave en 20 y 60 / el taller en 23 y 47 / taller: 22 / 51 / cabina 24 y 45 / la cabina está a 23, 50 de HR
    el cuarto en 21 y 52 / el shop en 76 y 50 / booth 74 F 48 / humedad 50, 22 grados / humedad 48 y 23 de temperatura
    humedad relativa 51, temperatura 22 / HR 50, T 23 / rh 48 temp 75 / RH 50% 74F / humedad al 52, calor 27
    humedad en 60, temperatura en 19 / temperatura 22 humedad 50 / temp 23 hum 48 / temp ambiente 22 y humedad 51
    temperatura ambiente 21, HR 55 / t 22 h 50 / t: 23 hr: 47 / ambiente 23/48 / ambiente: 22 °C, 50 %
    condiciones 22 y 50 / clima 23 y 48 / el higrómetro dice 22 y 50 / higrómetro: 23, 47
    el termohigrómetro marca 21 y 55 / el sensor de pared da 22 y 51 / el reloj del clima dice 23 y 49
    el aparato marca 22 con 50 / la estación da 24 y 45 / medí el aire: 22, 50 / medí el ambiente, 23 y 48
    tomé el aire, 22 y 51 / tomé lectura del aire: 24 y 44 / leí el higrómetro, 22 y 52 / chequé el clima: 76 y 48
    chequé la humedad, 50 y 22 grados / lectura de aire 22/50 / lectura ambiental 23 y 48 / lectura de las 9: 22 y 51
    lectura de mediodía, 26 y 40 / nueva lectura del aire: 24, 46 / segunda lectura del día 23 y 49
    aire de la tarde 27 y 38 / hace 22 y 50 de humedad / hace 28 grados con 40 de humedad / hace frío, 15 y 60
    hace calor, 31 y 35 / está a 22 y 50 adentro / está húmedo, 24 y 72 / está seco, 22 y 25
    está lloviendo y adentro 20 con 78 / hay 22 grados y 50 de humedad / hay 60 de humedad y 21 grados
    tenemos 22 y 50 / tenemos 76 con 48 en el shop / andamos en 23 y 50 / andamos a 80 con 60 de humedad
    estamos en 22, 51 por ciento / estamos a 74 F, RH 50 / subió la humedad, 65 con 22
    subió a 27 y bajó la humedad a 38 / bajó a 18 y 62 / ya subió a 68 la humedad, 23 grados / cambió el clima: 19 y 70
    se puso húmedo, 24 y 68 / refrescó, 17 y 58 / calentó, 29 y 36 / la humedad está en 50 / la humedad anda en 55
    humedad cincuenta / humedad 62 ya / el punto de rocío 11 con 22 y 50 / dew point 52, air 75
    bulbo seco 22, húmedo 15 / amanecimos con 16 y 65 / amaneció en 14 y 70 / de mañana 17 y 62
    a las 7 había 15 con 68 / a las 12 26 y 42 / 14:00 27 y 40 / ahorita 23 y 50 / ahora 22, 51
    hace diez minutos 22 y 50 / recién leí 23 y 48 / veintidós y cincuenta
    veintitrés grados cuarenta y ocho por ciento / setenta y cinco y cincuenta de humedad
    veinte grados y humedad sesenta / veintidós punto cinco y cincuenta y uno / weather inside 75 and 50
    shop air 74, 48 / humidity 50, temp 75 / it's 76 con 52 de humidity / temp 77 humidity 45
    el AC está en 74 y la humedad en 48 / indoor 22 y 50 / Lia leyó el aire: 22 y 50 / Omar midió 23 y 48
    apunta aire 22 50 / anota 23 grados y 48 / registra ambiente 22, 51 / pon 22 y 50 de humedad
    el aire, jefe: 24 y 46 / compa, 23 y 50 adentro / che, 22 y 55
    le informo que la cabina está a 22 °C con 51 % de humedad relativa
    señor, el ambiente registra 23 grados y 48 por ciento / condiciones ambientales a las 9:00: 22,4 °C y 50 % HR
    lectura ambiental registrada: 21 °C, 55 % / ta a 24 y 50 / ps 23 y 48 / pos hace 27 y 40 de humedad / aki 22 y 55
    ahorita 25 con 45 xq prendieron el aire / nomas subio a 60 la humedad, 22 de temp / el aire 23 50 q leyo lia
    it's 75 in here, 50 humidity / 74 and 48 percent / seventy five and fifty / shop's at 76, 45 / humidity 52 temp 73
    inside 74, RH 51 / room 72 F 50% / the room is 22 and 50 / air's 75 con 48 / reading 76 y 47 / bochorno: 29 y 70
    fresquito: 18 y 55 / sequísimo, 24 y 20 / pegajoso, 27 y 75 / con la lluvia 19 y 82
    abrieron la puerta y bajó a 17, humedad 66 / prendimos el calentador, 21 y 45 / con el deshumidificador 22 y 42
    después de la tormenta 20 y 79 / al mediodía 28 y 38 / la cabina 1 en 22 y 50, la 2 en 23 y 48
    en la sala de mezclas 21 y 52 / donde pintamos 22 y 50 / por la puerta 20 y 58 / junto a la pieza 21 y 54
    el rincón de lijado 23 y 47
  `,
  'fan on': `
    prendí el extractor / prendido el extractor / prendí el fan / prendí el abanico / prendí el ventilador
    prendimos la extracción / prendido el abanico de la cabina / ya prendí / ya está prendido el extractor
    ya anda el fan / ya anda el extractor / ya jala el extractor / encendí el extractor / encendí la ventilación
    encendido el ventilador / encendida la extracción / encendida la campana / encendimos el extractor
    quedó encendido el extractor / está encendida la ventilación / ya encendí la extracción de la cabina 2
    puse el fan / puse la extracción / puse a andar el extractor / puesto el ventilador / eché a andar el extractor
    echado a andar el abanico / le di al extractor / le di switch al fan / le prendí al extractor
    le subí al breaker del extractor / arranqué el extractor / arrancó el extractor / arrancado el fan
    arrancamos la ventilación / activé la extracción / activada la ventilación / activado el extractor
    conecté el extractor / conectado el ventilador / abrí la extracción / extracción abierta / fan is on / the fan's on
    fan running / fan prendido / fan andando / fan ok / booth fan on / exhaust running / exhaust prendido / blower on
    blower andando / turned on el fan / turned the exhaust on / prendí el blower / switcheé el fan / extractor on
    extractor sí / extractor andando / extractor funcionando / extractor girando / extracción sí
    extracción funcionando / extracción en marcha / extracción ok / ventilación encendida / ventilación funcionando
    ventilación ok / ventilador girando / abanico dando / aspirador de cabina encendido / está jalando aire la cabina
    está sacando aire el extractor / ya saca aire / ya chupa el extractor / la cabina ya está aspirando
    hay tiro en la cabina, prendido / corre aire en la cabina, fan puesto / ya hay extracción / ya hay ventilación
    tenemos extracción / con extracción / con el ventilador puesto / la velocidad del aire da 0.5, extractor puesto
    manómetro en 5, extractor en marcha / presión diferencial ok y extractor prendido
    flujo de aire ok, extracción en marcha / con 100 pies por minuto el fan / se puso en marcha la extracción
    se encendió el extractor / se activó la ventilación forzada / Omar prendió el fan / Lia encendió la extracción
    el chavo puso el extractor / acabo de prender el extractor / acabo de encender la ventilación
    recién prendí el abanico / ahorita prendí el fan / hace un rato prendí el extractor / a las 9 prendí la extracción
    apunta extractor prendido / anota ventilación encendida / che prendí el extractor / mi hermano prendí el abanico
    le informo que la extracción está encendida / se puso en marcha el extractor de la cabina
    señor, ya está funcionando la ventilación / ya prendi el fan xq vamos a pintar / ps ya prendi
    pos ya anda el abanico / fan's on / exhaust's on / got the fan on / fan's running ya / quillo el extractor puesto
    parce prendí la extracción / boludo prendí el extractor / mijo ya prendí el abanico
  `,
  'fan off': `
    apagué el fan / apagué el abanico / apagué la extracción / apagué el ventilador / apagada la extracción
    apagado el ventilador / apagada la campana / apagamos el extractor / ya apagué / ya apagué el abanico
    ya está apagado el extractor / quedó apagada la ventilación / está apagado el fan / paré el extractor
    paré el ventilador / parado el extractor / parada la ventilación / detuve el extractor / detenida la extracción
    se detuvo el ventilador / se paró el fan / se apagó el extractor / se apagó sola la extracción
    se apagó el abanico / quité la ventilación / corté el extractor / fan is off / fan off ya / the fan's off
    exhaust off / exhaust apagado / blower off / fan stopped / fan quit / fan died / turned off el fan
    turned the exhaust off / killed the fan / apagué el blower / el blower se apagó / fan tripped / sin extractor
    sin fan / sin ventilación ya / sin tiro en la cabina / no gira el extractor / no anda el fan
    no jala el ventilador / ya no gira el fan / ya no saca aire / ya no anda la extracción / dejó de girar el extractor
    dejó de jalar el fan / el extractor dejó de funcionar / no está aspirando la cabina
    se quemó el motor del extractor, parado / se rompió la banda, sin extracción / se fue la luz y no hay extractor
    se botó el interruptor del fan / tronó el extractor / murió el ventilador de la cabina / falló la extracción
    se cayó la extracción / el variador se fue, extractor parado / desconecté el extractor
    bajé el breaker del extractor / extracción fuera de servicio ahora / Omar apagó el extractor
    Lia paró la ventilación / acabo de apagar el extractor / recién apagué la extracción / ahorita apagué el fan
    a las 12 apagué el extractor / apunta extractor apagado / anota fan off / extractor off / extractor no
    extractor parado / ventilación off / ventilador off / fan fuera
  `,
  'supplied yes': `
    todos con su línea de aire / todos con capucha y aire / todos traemos aire / todos con máscara de aire puesta
    todos conectados / ya todos conectados al aire / los tres con aire de línea / los dos con aire suministrado
    yo con aire / Omar y yo con aire de línea / Lia con su capucha de aire / Beto ya tiene su aire
    aire de línea puesto / aire de línea sí / aire en las máscaras / aire en la careta / aire llegando a la máscara
    aire corriendo en las capuchas / aire fresco conectado / aire fresco en la capucha, todos
    aire limpio conectado a las máscaras / aire respirable sí / aire respirable puesto / aire autónomo puesto
    suministro de aire conectado / suministro sí / nos conectamos al aire / nos conectamos a la línea
    nos pusimos el aire / nos pusimos las máscaras de línea / me conecté a la línea de aire / me puse el aire
    me puse la careta con manguera / ya me conecté / ya traigo mi aire / ya tenemos el aire en la capucha
    ya traemos línea / ya estamos con aire / conectados los dos pintores al aire / supplied air yes / supplied air sí
    with supplied air / on supplied air todos / we're on air / everybody on air / all on supplied air / airline on
    airline conectado todos / hood on con air / hoods con air todos / fresh air hood on / fresh air on
    breathing air ok todos / on line air, los tres / traigo el airline puesto / capucha con aire puesta
    capuchas conectadas / capuchas con línea / máscara de línea puesta / máscaras conectadas al aire
    mascarilla con suministro puesta / careta con aire puesta / caretas conectadas / respirador de línea puesto
    respiradores con aire, todos / equipo de aire puesto / equipo de aire asistido puesto / casco con aire puesto
    manguera conectada a la careta / sí llevamos aire / sí traemos aire suministrado / sí, todos con línea
    sí, con aire / confirmo aire suministrado / confirmado aire en todos
    verificado el aire de las capuchas, todos puestos / presión de la línea ok y todos con máscara
    se respira aire de línea / respirando aire de la línea / apunta todos con aire / anota aire suministrado sí
    che todos con aire / mi hermano to el mundo con aire
  `,
  'supplied no': `
    sin aire de línea / sin línea / sin capucha de aire / sin suministro de aire / sin máscara de aire / sin respirable
    hoy sin aire suministrado / vamos sin aire / estoy sin aire de línea / Omar va sin aire suministrado
    Lia no trae línea / yo no traigo aire / los de afuera sin aire suministrado / no hay aire suministrado
    no hay línea de aire / no hay capuchas / no tenemos aire de línea / no tenemos línea / no traemos aire
    no traemos capucha con aire / no traigo línea / no llevamos aire / no llevo aire suministrado
    no usamos aire suministrado / no hay compresor de respirable / no está conectada la línea
    no me llega aire a la capucha / no air line / no airline hoy / no supplied air today / not on supplied air
    no breathing air today / no fresh air hoods / air line off / supplied air off / airline disconnected / hood sin air
    just cartridges / only half mask con cartuchos / just a respirator, no line / pura mask de cartucho
    solo cartuchos / solo con cartucho / solo media máscara / solo mascarilla de filtro
    con respirador de cartucho nada más / con máscara de carbón sin línea / con filtros, no línea / nomás con cartucho
    puro cartucho / puro cubrebocas / con cubrebocas nomás / máscara de filtro y ya / a puro filtro
    se acabó el aire de la línea / se cortó el aire respirable / se fue el suministro de aire
    se cayó la línea de aire / se desconectó la manguera de la capucha / me quité la capucha
    me desconecté de la línea / nos quitamos el aire / ya nos desconectamos del aire / desconectado de la línea
    falló el compresor de aire respirable / línea de aire dañada, no traemos / apunta sin aire suministrado
    anota no hay línea
  `,
  'spray on': `
    empezamos a pintar con pistola / empecé a rociar / empecé a sprayar / empecé con la pistola / empezó Omar a rociar
    empezó el rociado / empezó la pistola / ya empezamos a rociar / ya empezó Lia con la pistola / empieza el rociado
    empieza pistola / empiezo a rociar la voluta / empezamos con la gun / arranqué a rociar / arrancó el rociado
    arrancamos con la pistola / arranca el spray / comencé a pulverizar / comenzamos a rociar / comenzó la pistola
    inicié rociado / inició el rociado / iniciamos pulverización / iniciado el spray / inicio de rociado
    inicio de aplicación a pistola / damos inicio al rociado / entrando a rociar / rociando / rociando ya
    rociando la carcasa / rociando las tapas ahora / pulverizando / pulverizando ya la voluta / sprayando / sprayeando
    sprayando las bridas / pistoleando / pistoleando la fila / sopleteando / atomizando ya / estamos rociando
    estamos sprayando / estoy pulverizando / estoy con la gun / ando rociando / andamos con la pistola / spray on ya
    spray started / spraying now / spraying la carcasa / started spraying / started to spray / start spray / gun on ya
    gun running / we're spraying / we are spraying / I'm spraying / trigger on / spray going / spray en marcha
    spray prendido / spray andando / ya rocío / ya estamos dentro rociando / ya está rociando Beto
    ya está Lia con la pistola / ya se está rociando / ya le estamos dando con pistola / ya le estoy tirando a la fila
    ya estamos tirando pintura / ya salió el primer abanico de la pistola / ya está pintando en la cabina
    ya entré a rociar / ya entramos a la cabina a pintar / la pistola ya está tirando / la pistola ya anda
    la gun ya está tirando / pistola trabajando / pistola tirando / pistola en uso / pistola encendida, rociando
    abrimos pistola / abrí la pistola / primer disparo / primer tiro a la tapa / primera pasada ya / a rociar
    a pistolear, ya arrancó / cabina en uso, rociando / hay gente rociando / se inició la sesión de rociado
    se está pulverizando / se comenzó a rociar / sesión de pistola empezada / acabo de empezar a rociar
    recién empezamos a rociar / ahorita empecé a rociar / a las 10 empezamos a rociar
    hace un minuto empecé con la pistola / apunta empezó el rociado / anota inicio de pistola
    che arrancamos con el soplete / mi hermano tamo rociando / le informo que inició la aplicación con pistola
    se inició el rociado de la carcasa / ya empezamos a rociar xq ya esta el fan / ps ya estamos rociando
    pos ya empezo la pistola / started with the gun / started the spray / we started spraying la 7
    quillo ya están pistoleando / parce empezamos a rociar / boludo arrancó el soplete / mijo ya estoy rociando
  `,
  'spray off': `
    terminamos de rociar / terminé con la pistola / terminó el rociado / terminó Omar de rociar / terminó la pistola
    terminado el rociado / terminada la pulverización / ya terminamos de rociar / ya terminé de pulverizar
    ya terminó Lia con la pistola / ya terminó el spray / terminamos con la gun / acabamos de rociar / acabé de rociar
    acabé de pulverizar / acabó el rociado / acabado el rociado / ya acabé de rociar / ya acabé con la pistola
    ya acabó Beto / ya acabamos con el spray / se acabó la rociada / se terminó de rociar / se terminó el rociado
    se finalizó la pulverización / paré de rociar / paramos de rociar / dejamos de rociar / dejé la pistola
    dejé de tirar / dejé de sprayar / dejamos de sprayar / ya no estamos rociando / ya no se está rociando
    ya nadie rocía / ya paramos la pistola / ya paró la pistola / ya no tira la pistola / solté la pistola
    bajé la pistola / guardé la pistola / fin del rociado / fin del spray / fin de la pulverización / fin de pistola
    fin de aplicación a pistola / spray off ya / spray done ya / spray finished / spray over / spray stopped
    done spraying ya / finished spraying / stopped spraying / gun off / gun down ya / gun parked / trigger off
    no more spraying / we're done spraying / pistola fuera / pistola parada / pistola apagada / pistola guardada
    pistola en el gancho / pistola colgada ya / cerramos pistola / cerrado el aire de la gun
    vaciada la pistola, fin de rociado / última pasada y listo / última pieza rociada / última mano tirada
    ya salimos de la cabina, terminó el rociado / ya salí de rociar / ya salieron de rociar / sin rociar ya
    rociado terminado / rociado listo / rociado completo / rociado finalizado / rociada la última, acabamos
    pulverizado terminado / sopleteado terminado / listo el rociado / listo con la pistola / ya estuvo la rociada
    ya quedó la rociada / por hoy ya no se rocía, terminado / acabo de terminar de rociar / recién terminé de rociar
    ahorita acabamos de rociar / a las 11 terminamos de rociar / apunta fin del rociado / anota fin de pistola
    che terminé con el soplete / mi hermano acabamos de tirar / le informo que terminó la aplicación con pistola
    se dio por terminado el rociado / ya acabamos de rociar xq se acabo la mezcla / ps ya acabe de rociar
    pos ya paro la pistola / finished with the gun / finished the spray / we're finished spraying
    quillo ya acabó la pistola / parce terminamos de rociar / boludo terminé con el soplete / mijo ya acabé de rociar
  `,
  'flush gun': `
    lavé la pistola / lavada la pistola / lavamos la pistola / lavé la pistola y la manguera / lavé la gun
    lavada la gun con acetona / ya lavé la gun / ya lavé la pistola / ya está lavada la pistola
    ya quedó lavada la pistola / se lavó la pistola / lavando la pistola con acetona / lavé el equipo de pistola
    lavé el vaso y la boquilla / limpié la pistola / limpié la gun / limpia la gun / limpiada la pistola
    limpiamos la pistola / limpia la pistola, acetona y alcohol / ya limpié la gun / ya está limpia la pistola
    ya quedó limpia la gun / quedó limpia la pistola / se limpió la pistola / limpiando la pistola
    limpié aguja y boquilla / limpié la copa de la pistola / enjuagué la pistola / enjuagada la gun
    enjuagamos la pistola / enjuagada la pistola con alcohol / enjuagué la manguera de la pistola / purgué la pistola
    purgué la gun / purgada la pistola con acetona / purgada la línea y la pistola / purga de pistola terminada
    drené y lavé la pistola / vacié la pistola y le pasé acetona / le pasé acetona a la gun
    le pasé alcohol a la pistola / le pasé solvente a la pistola / le pasé thinner a la gun
    le eché acetona a la pistola / le tiré acetona a la pistola / le corrí acetona a la gun
    le corrí solvente a la manguera / corrí acetona por la pistola / corrí alcohol por la gun
    pasé acetona y luego isopropílico por la pistola / primero acetona y después alcohol por la gun
    flush a la pistola / flush gun / flush gun listo / flushed the gun / flushed gun con acetona / flusheé la pistola
    flusheé la gun / flushié la pistola / flusheada la pistola / gun flushed ya / gun clean / gun cleaned / gun washed
    cleaned the gun / washed the gun / rinsed the gun / ran acetone through the gun / acetone y IPA en la gun
    ran solvent por la gun / desarmé la pistola y la limpié / desarmada y limpia la pistola
    armé la pistola, ya lavada / pistola limpia / pistola lavada ya / pistola limpia y armada
    pistola limpia con acetona / pistola enjuagada / pistola purgada / la pistola ya salió limpia
    sale limpio el solvente de la pistola / sale transparente la acetona de la gun / la HVLP lavada / HVLP limpia
    HVLP lavada con acetona / airless lavado / airless limpio / soplete limpio / Omar lavó la pistola
    Lia limpió la gun / el chavo le pasó acetona a la pistola / acabo de limpiar la gun
    acabo de pasarle acetona a la pistola / recién lavé la gun / ahorita lavé la pistola / hace rato limpié la pistola
    a las 12 lavé la pistola / apunta pistola limpia / anota lavado de la gun / pistola ok lavada / che lavé la pistola
    mi hermano la pistola ta lavá / le informo que la pistola fue lavada con acetona y alcohol
    se lavó la pistola según la secuencia / señor, ya quedó limpia la pistola / la lave xq ya acabamos, la gun
    ps ya lave la pistola / pos ya esta limpia la gun / nomas le pase acetona a la pistola y luego alcohol
    gun's clean / gun's flushed, acetone then IPA / cleaned out the gun / flushed it out, the gun
    quillo la pistola limpia / parce lavé la pistola / boludo enjuagué la pistola / mijo ya la lavé, la pistola
  `,
  'flush brush': `
    lavé la brocha / lavé las brochas / lavé el pincel / lavada la brocha con acetona / lavadas las brochas
    lavamos las brochas / ya lavé las brochas / ya lavé el pincel / ya está lavada la brocha / se lavaron las brochas
    se lavó la brocha / lavando el pincel / lavé mi brocha / limpié la brocha / limpié el pincel / limpia la brocha
    limpias las brochas / limpio el pincel / limpiada la brocha / limpiamos las brochas / ya limpié la brocha
    ya limpié el pincel / ya están limpias las brochas / quedó limpia la brocha / quedaron limpias las brochas
    se limpió la brocha / limpiando las brochas / enjuagué las brochas / enjuagué el pincel / enjuagadas las brochas
    enjuagado el pincel / le pasé solvente a la brocha / le pasé acetona a las brochas / le pasé alcohol al pincel
    le pasé thinner a la brocha / le di acetona a la brocha / metí la brocha en acetona y la limpié
    remojé y limpié la brocha / exprimí la brocha en acetona / brocha en alcohol y limpia / brush clean / brush washed
    brush flushed / brush cleaned ya / brushes clean / brushes washed / cleaned the brush / cleaned the brushes
    washed the brush / rinsed the brush con acetona / flush brush / flush a la brocha / flush al pincel
    flusheé la brocha / flusheada la brush con IPA / brocha limpia / brocha limpia ya / brocha lavada y colgada
    brocha enjuagada / brochas lavadas / brochas limpias y colgadas / brochitas limpias / brochita lavada
  `,
};
