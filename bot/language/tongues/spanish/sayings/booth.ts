// How Spanish speakers say it: air, fan on, fan off, supplied yes, supplied no, spray on, spray off, flush gun, flush brush, flush roller, ack, close. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfBooth: Sayings<SaidMeaning> = {
  air: `
    22 grados y 55 de humedad / aire 21, HR 48 / estamos a 23 con 60 / en la cabina 24 y 52 por ciento
    el taller a 19 y la humedad en 65 / hay 25 °C y 40 % en la nave / 75 F y 50 RH / 72 en el booth, humidity 45
    humedad 58 temp 20 / rh 62 a 70 grados F / el higrómetro marca 21,5 y 57 / el aparatito dice 23 grados 49 de humedad
    el termohigrometro da 18 y 70 / reloj de la pared: 26 y 38 por ciento / hace 28 y está húmedo, 74
    hace frío hoy, 14 grados con 60 de HR / calorón: 95 F y 30 de humedad / un bochorno que no veas, 31 y 80
    bien seco hoy, 24 y 22 por ciento / está lloviendo, 17 y 85 dentro / amaneció en 12 con 78
    esta mañana 16 grados, humedad relativa del 63 / a las ocho había 18 y 66 / 8:15 20 grados 54%
    medido hace cinco min: 22 y 51 / ahora mismo 23,4 y 46 / ahorita estamos a 80 F con 55 de humedad
    ahorita el shop anda en 78 y 60% / el shop está a 68, RH 40 / en el shop 85 grados y bien húmedo 72 / ambiente 22/50
    ambiental 19 y 61 / condiciones: 21 °C, 53 % HR / clima del taller 24 con 47 / el clima: 77F, 58
    temperatura del aire veintidós, humedad cincuenta / veintitrés grados y cincuenta y cinco por ciento
    setenta y cinco fahrenheit cuarenta y ocho de humedad / son 20 grados y la humedad en cuarenta y cuatro
    tenemos 25 en cabina y 43 de RH / tengo 22,8 y 56 en pantalla / me salen 21 y 59 / me da el bicho 24 y 50
    me marca 27 y 66 el sensor / nos marca 76 y 51 el hygrometer / leo 19,5 °C y 68 % / lectura de aire 23 y 52
    lectura cabina 2: 22, 49 / toma de datos 10:00, aire 20, humedad 55 / tomé el aire: 74 y 46
    cheque el aire 79 F 57 RH / chequeado el ambiente, 22 y 60 / he mirado el higrómetro, 21 y 64
    vi el medidor y está en 26 con 53 / miré el reloj de humedad: 45, y 23 de temp
    medí el aire en la cabina, 24,1 y 48,5 / subió la humedad a 70, seguimos en 22 / bajó la temperatura, 17 ya, hr 58
    ha subido a 26 y 61 con el sol / se puso húmedo, 77 por ciento a 24 grados
    se soltó el agua y la humedad ya va en 82, 23 grados / refrescó, 15 y 50 / ha cambiado el tiempo: 18 y 76
    con la puerta abierta 20 y 71 / con la calefaccion puesta 21 y 35 / con el deshumidificador andando 23 y 42
    prendimos el heater, 70 F y 38 / con el aire acondicionado 22 y 45 / el cuarto de mezcla a 21 y 50
    en la sala de pintura 22 y 55 / en la zona de secado 24 y 40 / el booth trae 73 y 52
    la cabina trae 23 y 57 por ciento / la cabina grande anda por los 20 y 48 / dentro de la nave 13 grados, humedad 69
    aquí adentro 88 F y 64% nos estamos asando / aqui 22 y 50 todo bien jefe / aquí estamos a 21 con 58 buenos días
    buenos dias, 19 y 62 para empezar / buenas! 20 grados y 57 de humedad en cabina / arrancamos la mañana con 66 F y 55
    empieza el turno: aire 18 humedad 60 / despues de comer 26 y 44 / por la tarde 27 °C 39 % / a media mañana 23 y 51
    a las 15:30 el aire está a 25 y 47 / a las dos de la tarde 90 y 35 / mediodia 24, hum 50 / turno noche 16 y 72
    de madrugada 11 grados y 81 / temp 22 hum 54 / temp aire 68 hum 49 / T 21 HR 60 / t 23.5 rh 51 / aire 70f 50rh
    22c 50 / 75/45 / 20 y 60 / 24 grados, 5 3 por ciento / aire de la cabina 23 / humedad en 58 / la humedad está en 49
    RH 63 / RH at 47 en el booth / hr del 55 / la humedad anda en sesenta / hay un 66 de humedad / el aire a 21
    el aire del taller está a 19 grados / estamos a 72 fahrenheit / veinte grados en la nave / hace 24 en el taller
    tamos a 29 y 78 mi hermano, tremenda humedad / ta en 30 con 75 de humedad aquí / acá hace 18 y hay 65 de humedad
    acá en el galpón 22 y 59 che / la neta está pegajoso, 27 y 71 / no manches qué calor, 98 F con 40 de humedad
    joder qué humedad, 79 con 23 grados / ok ya: 22 y 53 / listo, aire 20 hum 61 / por cierto, 21 y 56 en la sala
    oye el aire va en 76 y 59 / anota 23 y 50 / apunta aire 22 humedad 47 / apúntame 19,8 y 64
    registra ambiente 24 °C, 51 % HR / para el parte: 21 grados, 58 por ciento / te paso el aire, 77 y 53
    te mando lectura: 22.3 49 / ahí va, 20 y 55 / 🌡️ 22 💧 50 / 💧 61 🌡️ 20 / ☔ 17 grados y 83 / 23º 💧48
    rocío 11, aire 22, hr 50 / punto de rocío 9, aire 20 / 22 de aire con punto de rocio en 12
    psicrómetro: seco 22, húmedo 16 / bulbo seco 24 bulbo humedo 18 / el data logger de cabina indica 21,2 y 54
    el Logger dice 73 F 51% / promedio 22 y 50 en las dos esquinas
    en la esquina del fondo 21 y 60, junto a la puerta 19 y 66 / junto a las piezas 23 y 49
    a la altura de las piezas hay 22,5 y 53 / en el aire de la booth 2, 69 grados, 57
  `,
  'fan on': `
    el extractor de la cabina está en marcha / la extracción de la cabina está encendida / el ventilador de la cabina está andando
    la aspiración de la cabina ya está en marcha / el extractor del booth está prendido
    ya prendí el extractor / extractor en marcha / el ventilador está andando / fan on / prendido el fan
    fan prendido en el booth / puse el extractor / puesta la extracción / extracción encendida
    extracción funcionando, 0,5 m/s / extraccion a 0.6 metros por segundo / enciendo ventilación
    encendí el ventilador de la cabina / le di al botón del extractor y ya jala / ya jala el aire la campana
    jalando el extractor, 100 fpm / el abanico está prendido / abanico prendío mi hermano / ya prendí el abanico grande
    el blower ya está on / kickeado el blower / arranqué el blower a las 9:30 / arrancada la ventilación
    arrancó el fan / está chupando la cabina / ya chupa bien, el papel se pega a la rejilla
    el papelito se pega al filtro, tira bien / tira el extractor / tirando la extracción desde las diez
    sopla y chupa, todo ok / aire en movimiento / ya corre el aire en el booth / corriendo el exhaust / exhaust on
    exhaust fan running a 110 fpm / el exhaust ya anda / cabina ventilando / ventilando ya
    la cabina ya está en ventilación, 0,45 / velocidad de aire 0,5 m/s en cabina
    medí 0,55 m/s en el frente con el extractor puesto / anemómetro 0,48 con la ventilación
    cero coma cinco metros por segundo, extracción puesta / ciento diez pies por minuto en la cara del booth
    flujo de 0.5 en la cara de la cabina / presión de filtros bien y extractor girando / ya gira la turbina
    turbina en marcha, cabina 2 / motor de la campana encendido / campana encendida / la aspiración está conectada
    conectada la aspiración de la cabina / aspirando / con extractor ya / dale que ya prendí la extracción
    ok ya está el fan, se oye desde la calle / menos mal arrancó el extractor, ya va / che ya prendí la extracción
    tío ya está puesto el extractor / listo jefe fan andando / ahorita le prendí al fan
    acabo de poner en marcha los ventiladores / los dos ventiladores a tope / a toda mecha el extractor
    al máximo la extracción / zumbando el ventilador / hace cinco minutos que está la extracción / ventilador sí, 0,6
    💨 prendido / 💨 extractor ok / apunta extracción encendida 10:05
  `,
  'fan off': `
    apagué el extractor / extractor apagado / fan off / ya apagué el fan / fan apagado en booth 2 / ventilador parado
    se paró el ventilador / paré la extracción / extracción parada / extracción off a las 12 / corté la ventilación
    cortada la ventilación de la cabina / quité el extractor / quitada la aspiración / desconecté la aspiración
    la campana está apagada / campana off / el exhaust está off / exhaust down / se murió el exhaust
    se cayó el extractor / se botó el breaker y el fan se apagó / saltó el térmico y paró la extracción
    se fue la luz y el extractor se paró / se tronó la banda del extractor, parado / el blower se detuvo
    blower apagado / apagao el abanico / abanico parado mi hermano / ya no jala el extractor / ya no chupa la cabina
    el ventilador de la cabina está parado / la extracción de la cabina está parada / el extractor de la cabina está apagado
    la aspiración de la nave está parada / el extractor del booth está apagado / la extracción de la cabina no funciona
    no hay extracción / sin extracción / sin ventilación en cabina / la turbina está quieta / bajé el switch del fan
    ok ya le apagué al extractor, qué silencio / che apagué la extracción / acabo de apagar los ventiladores / 💨 off
  `,
  'supplied yes': `
    todos con aire suministrado / aire suministrado sí / supplied air on / supplied air puesto todos
    con aire de línea los dos / línea de aire conectada a las capuchas / capuchas con aire puestas
    capuchas puestas y soplando / ya traemos las hoods con aire / hoods on, air flowing / hood con aire en los tres
    máscaras con línea de aire puestas / mascarillas de aire fresco puestas / máscara de aire fresco, Beto y yo
    aire respirable conectado / aire respirable para los dos pintores / respirable ok, 2 personas / breathing air on
    breathing air conectado, se siente fresquito / ya estamos respirando de la línea / respirando por manguera todos
    manguera de aire a la máscara, lista / enchufado el aire a la careta / enchufados a la línea Lucía y yo
    caretas con aire para toda la cuadrilla / escafandra puesta con aire / escafandras con suministro, todos
    equipo semiautónomo puesto / semiautonomos en marcha los dos / aire asistido del compresor de respiración puesto
    compresor de aire respirable andando y capuchas conectadas / el airline ya está conectado a los masks
    airline respirators puestos / full face con supplied air / full face con línea de aire el Toño
    ya me puse la máscara de aire / me puse la capucha y corre el aire / nos pusimos las capuchas con aire
    llevamos todos aire suministrado / traigo supplied air / traen todos su air line
    tenemos aire de fuera en las caretas / ok jefe todos con su aire puesto / che estamos con aire de línea
    mi hermano to el mundo con su manguera de aire / listo, aire en las capuchas a las 9:55
    sí, con aire suministrado los que están dentro / 🤿 puesto con aire / apunta aire suministrado, sí
  `,
  'supplied no': `
    sin aire suministrado / aire suministrado no / no supplied air / sin supplied air hoy / no traemos aire de línea
    no llevamos capuchas con aire / las capuchas no están conectadas / sin línea de aire / sin aire respirable
    no hay aire respirable / no hay breathing air / breathing air off / el airline no está conectado
    el compresor de respirable está parado / se fue el aire de las capuchas / se cortó el aire de la careta
    desconectada la línea de aire / ya nos quitamos las hoods / ya me quité la capucha de aire
    nos hemos quitado las máscaras de aire / solo mascarilla de cartucho / con pura mascarilla de filtros
    nomás traemos cartuchos / cartridge mask nada más / vamos con máscara de filtro, sin manguera
    media cara con filtros, de línea nada / a pelo sin aire de línea / che no tenemos aire suministrado
    mi hermano no hay aire pa las caretas / apunta aire suministrado no
  `,
  'spray on': `
    empiezo a pintar a pistola / arranco con la pistola / empezamos a rociar / ya estoy rociando / spray on
    spraying ya / spraying started 9:50 / ya empezó el spray / ya le estamos tirando / tirando pistola ya
    dale gas, pistola en marcha / pistola abierta / gatillo apretado, vamos con la 7 / primer gatillazo a la 3
    primera pasada de pistola, ahora / gun on / gun is hot, empezamos / ya agarré la gun y le estoy dando
    ya está disparando Beto / Beto empezó a sprayar / Lucía ya pulveriza / pulverizando la 8 / comienza la pulverización
    inicio de pulverizado a las 10:12 / inicia el rociado del lote 2 / inicio spray batch 3
    inicio sesión de pistola ya rociando / comenzamos a soplete / ya sopleteando la reja / sopleteo en curso
    el soplete ya anda che / arrancó el pistolero jaja / el pintor ya está dentro y pintando
    ya está saliendo producto de la pistola / sale niebla, ya estamos pintando / hay overspray en el aire, ya empezaron
    ya se están pintando a pistola las bridas / se está rociando la carcasa / HVLP en marcha / HVLP andando con el pot 2
    airless dándole al tanque / con el bote 1 en la pistola y tirando / desde hace dos minutos estamos rociando
    a las once y cinco empezó el spray / ahorita arrancamos el spray / acabo de empezar con la pistola
    órale a pintar, gun prendida / ok ya le dimos inicio al spray / por fin pintando con pistola
    listo jefe ya está rociando el Toño / mi hermano ya tamo tirando spray / venga, pistola en mano y pintando
    la neta ya íbamos tarde, ya está tirando la gun / estamos en plena rociada / en faena con la pistola
    pintando en cabina / cabina ocupada, rociando / 🔫 on / 🔫 empezamos / 🎨 pistola dándole
    apunta inicio de rociado 14:20 / marca spray on
  `,
  'spray off': `
    terminé de rociar / pistola abajo / gun down / spray off / spray done / ya acabó el spray
    ya acabamos de pintar a pistola / se acabó el rociado / fin de pulverizado 10:40 / fin del spray lote 2
    pistola colgada / colgué la pistola / colgada la gun en su gancho / solté el gatillo, última pieza hecha
    suelto gatillo / último gatillazo dado / última pasada dada con la pistola / pistola cerrada
    cerré el aire de la pistola / pistola quieta ya / pistola descargada y abajo / ya bajé la gun / bajo la pistola
    ya paró Beto de tirar / Beto terminó de sprayar / Lucía ha dejado de pulverizar / dejé de rociar
    dejamos de tirar a las 11:20 / paré la pistola / paramos spray / parado el soplete / soplete apagado che
    terminado el sopleteo de la reja / ya estuvo el spray / ya quedó todo rociado, gun fuera / done spraying
    stopped spraying hace cinco / spraying over, pot vacío / se vació el vaso y ahí terminó el spray
    vaso vacío, fin de pistola / fin de faena con la pistola / ya salió el pintor, terminó / el pintor ha acabado
    airless parado, tanque hecho / HVLP off / hvlp terminado el pot 2 / hace un minuto acabé de rociar
    a las tres menos diez terminó el spray / ahorita terminamos de tirar / acabo de dejar la pistola
    por fin acabé con la pistola, me duele la mano / uf listo, ya no sale nada de la gun, terminado
    menos mal, rociado terminado sin líos / ok jefe spray terminado / mi hermano ya acabamos el spray
    la última brida rociada y pistola al soporte / pulverización finalizada / rociado concluido / 🔫 off / 🔫⬇️
    apunta fin de rociado 14:55
  `,
  'flush gun': `
    pistola lavada / lavé la pistola con acetona / flusheada la gun / flush de la gun con acetone y luego IPA
    ya le hice flush a la pistola / gun flushed / gun cleaned a las 11 / le pasé acetona a la pistola
    le tiré acetona y después alcohol a la gun / acetona primero, isopropílico después, pistola lista
    acetona por la pistola hasta salir limpia / alcohol por la pistola, sale clarito / enjuagada la pistola
    enjuagué la gun y la manguera / purgada la pistola / purgué pistola y línea con solvente / purga de la gun hecha
    manguera y pistola purgadas / limpia la pistola / limpié la pistola 1 / limpiando la gun
    limpieza de pistola terminada 12:10 / limpieza de pistola, secuencia completa / desarmé la gun y la lavé
    desmontada y lavada la pistola / boquilla y aguja limpias, pistola hecha
    boquilla, aguja y vaso lavados con acetona / lavado el vaso y la pistola / la copa y la gun ya lavadas
    la HVLP ya está limpia / la HVLP enjuagada dos veces / airless enjuagado con su solvente
    le di su baño de acetona a la gun / bañada en acetona la pistola / dos vasos de acetona y uno de alcohol por la gun
    medio litro de acetona por la pistola y luego IPA / con un litro de solvente lavé la línea / línea de spray lavada
    soplete lavado che / lavé el soplete con thinner / solvente pasado por el soplete / le pasé solvente a la pistolita
    pasado disolvente por la pistola / pistola con disolvente hasta que salió transparente / ya sale clara la pistola
    sale limpio el chorro, gun flushed / flush done en gun 2 / flusheo terminado, con el fan prendido
    flusheando la gun ahorita / ando lavando la pistola / estoy pasándole acetona a la gun / acabo de lavar la pistola
    he limpiado la pistola hace cinco minutos / recién lavada la gun / en cuanto acabé lavé la pistola
    nada más terminar, pistola limpia con acetona / ya quedó rechinando la gun / la pistola como nueva
    la pistola quedó de lujo, acetona y alcohol / por fin limpia la gun, ya me voy a comer
    menos mal lavé la pistola a tiempo, salió todo / ok jefe la gun ya se lavó / mi hermano ya lavé la pistola
    Beto lavó la pistola / Lucía ha hecho el lavado de la pistola / el chavo le dio flush a la gun conmigo
    las dos pistolas lavadas / 🧼 pistola / 🔫 limpia ✅ / apunta lavado pistola
  `,
  'flush brush': `
    brocha lavada / lavé la brocha con acetona / brochas limpias / limpié las brochas / limpias las dos brochas
    brush limpia / brush cleaned / flush a la brush / flusheada la brocha / le di flush a las brochas
    brush washed con IPA / enjuagué la brocha en solvente / enjuagada la brocha, acetona y alcohol / pinceles lavados
    lavé los pinceles / pincel limpio y colgado / pincelito limpio con acetona
    la brocha ya está en acetona y exprimida / sacudí la brocha en solvente hasta quedar limpia / cerdas limpias
    las cerdas quedaron suavecitas, lavadas / brocha ancha lavada a las 11:15 / brocha chica lavada
    peiné y lavé la brocha / lavado de brocha hecho / lavado de brochas terminado / limpieza de brochas ok
    limpieza de pinceles, secuencia completa / le pasé acetona a la brocha y luego isopropílico
    baño de acetona a la brocha / dos enjuagues a la brocha / la brocha como nueva / ya lavé mi brocha
    ya está lavada la brochita / ya quedó limpia la brocha jefe / recién lavada la brocha / acabo de limpiar la brocha
    he lavado las brochas hace cinco minutos / lavando la brocha / ando lavando brochas / Beto lavó su brocha
    el chavo limpió las brochas / Lucía ha limpiado los pinceles / por fin limpias todas las brochas, qué pringue
    la neta costó pero brocha limpia / che ya lavé el pincel / mi hermano la brocha ta limpia / 🧼 brocha / 🖌️ lavada
    apunta brocha lavada
  `,
  'flush roller': `
    rodillo lavado / lavé el rodillo con acetona / rodillos limpios / limpié el rodillo / roller limpio / roller cleaned
    flush al roller / flusheado el rodillo / ya le di flush al roller / roller washed, acetone e IPA
    enjuagué el rodillo / enjuagado el rodillo en solvente / exprimí el rodillo en acetona hasta salir claro
    escurrido y lavado el rodillo / felpa lavada / lavé la felpa del rodillo / la esponja del rodillo limpia con alcohol
    rodillito de espuma lavado / lavado de rodillo hecho / lavado de rodillos a las 11:30 / limpieza de rodillo ok
    limpieza del roller y la charola / rodillo y bandeja limpios / charola y rodillo lavados
    lavé el mango y el rodillo / le pasé acetona al rodillo y luego alcohol / baño de solvente al rodillo
    dos lavadas al roller / ya lavé mi rodillo / ya está limpio el rodillo jefe / acabo de lavar el rodillo
    he limpiado los rodillos / lavando el rodillo / Toño lavó el roller / el nuevo ha lavado los rodillos
    por fin limpio el rodillo, chupa solvente como loco / che lavé el rodillo / mi hermano el rodillo ta lavao
    🧼 rodillo / apunta rodillo lavado
  `,
  ack: `
    leído / leído y entendido / enterado / enterada jefe / entendido el brief / ya leí el brief / safety brief leído
    brief ok / got it, leí lo de seguridad / read it y entendí / ya lo leí todo y le entendí
    ya le eché ojo a todo el brief y entendido / he leído las normas de seguridad / he leído el aviso y lo entiendo
    lo he leído, conforme / conforme con el brief / acuso recibo del briefing / recibido y entendido / recibido el brief
    copiado / copiado jefe, ya leí lo del spray / me doy por enterado / me doy por enterada, Lucía
    queda claro lo de seguridad / clarísimo, leído de arriba abajo / todo claro con el brief
    entiendo los riesgos, leído / acepto el brief de seguridad / confirmo lectura
    confirmo que leí la charla de seguridad / Beto leyó y entendió / yo Toño, leído
    aquí el aprendiz, leído y entendido / ya estuvo, leí las reglas de la cabina / sale, leído / vale, leído
    dale, leído y entendido che / mi hermano ya leí eso y lo entendí / 👍 leído / ✅ brief
  `,
  close: `
    sesión cerrada / cierro la sesión de spray / cerrar sesión / cierra la sesión de pintura / spray session closed
    session closed / close session / close el spray / cerrada la sesión de pistola a las 12:30 / cerramos sesión
    ya cerramos el spray de hoy / damos por cerrada la sesión / doy por terminada la sesión / sesión terminada
    sesión finalizada, todos fuera / fin de la sesión / fin de sesión de rociado / final de la sesión, cabina despejada
    acabó la sesión / se acabó la sesión de spray / se cierra la sesión / queda cerrada la sesión de pulverizado
    ya quedó cerrada la session / cierre de sesión / cierre del spray, sin novedad / cerrando la sesión ahora
    cerrando el spray session jefe / puedes cerrar la sesión, todos salimos / pueden darle close a la sesión
    dale cierre a la sesión / dale por cerrada che / cabina libre, sesión cerrada / booth despejado, close it
    todos fuera, gun lavada, cierro / ok listo, sesión de pintura cerrada / por fin, sesión cerrada, a comer
    menos mal, cerramos sin sustos / mi hermano cierra la sesión esa / 🔒 sesión / apunta cierre de sesión 15:10
  `,
};
