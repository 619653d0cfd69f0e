// How Spanish speakers say it: mix, weigh, stir, stop, filter. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots3: Sayings<SaidMeaning> = {
  mix: `
    póngame dos kilos y medio, por favor, que empezamos con las tapas
    quiero preparar otros 800 para lo que falta de la barandilla / se acabó lo de antes, bate otro kilo
    nos quedamos sin producto, prepara 600 más / faltó para la última, hazme 300 nomás
    arrancamos la jornada con un batch de dos kilos / ahí te va el primero del día: kilo y medio
    kilo y medio, el segundo del turno / make me un batch de 900 porfis / let's do un kilo y medio de mix
    start batch 1.2 kg pa la mañana / new batch dos libras y media / un pot nuevo de tres libras, please
    give me dos kilos de mix / hazme up un kilo trescientos / otro batch, same size, 1.5 / mixeo un kilo
    mixeando 700 ahorita / voy a mixear dos kilos ya, apunta / mixea tres libras y media pa la troca del cliente
    confecciona una mezcla de 1500 gramos / elabora dos kilos de producto catalizado
    solicito una preparación de 1,8 kg / se requiere una mezcla de 2,4 kilogramos para la carcasa
    proceda con una tanda de mil trescientos gramos / por favor, inicie una mezcla de 950 g
    buenos días, le agradecería una mezcla de dos kilos / empezaríamos con 1,6 kg si le parece / q sean 2 kg d mezcla
    hazme 1.2 xq ya vienen las tapas / ps hazme kilo y medio / pos dale con un kilo / nomás medio kilo pa acabar
    prepárese un kilito pa la reja / alístame dos kilos de mezcla / alísteme 900 gramos que ya vamos a pintar
    alisten kilo y cuarto / tenga listo un kilo ochocientos / vaya batiéndome 1.2 kilos
    váyame preparando dos kilos pues / vaya montando tres kilos / arme dos kilos, ingeniero
    armame un kilo y medio dale / armemos 700 que nos falta para el eje / armo 1,3 para la voluta
    mandale dos kilos de mezcla / mandate un kilo / metele kilo y medio / metele con 900 que quedan dos
    dale, hacé 1200 / haceme dos kilos, porfa / preparame 600 gramos que es una sola pieza / batime un kilo y cuarto
    poné en marcha 1,4 kg / dame dos kilos batidos pa después del almuerzo que ya arrancamos
    quinientos gramos nomás y terminamos / un poquito de mezcla, 250, pa las esquinas / una mezclita de 300
    una mezclita de medio kilo para la tapa chica / un bote chico, 400 gramos / una lata de mezcla de kilo y medio
    un tarro de 900 g de mezcla / una olla de tres kilos / un cubo de cuatro kilos pa la inmersión
    una cubetita de kilo doscientos / media cubeta, 5 kilos / un tambito de 6 kg pal dip
    necesito la mezcla de la tarde, 2,2 kg / la mezcla del turno, tres kilos / la mezcla para el tanque: 4,5 kilos
    la tanda de las once, un kilo / la de las doce son 800 gramos / próxima mezcla 1.4 kg, arranca
    siguiente tanda 2 kilos / abrimos mezcla de 1800 / abre mezcla, 750 g / ábreme un lote de kilo y pico, 1.1
    lanza una mezcla de 2 kg / lánzame otra de 900 / tira una mezcla de 1.2 kg / tírame un kilo más de mezcla
    túmbate un batch de 800 / sácate otro batch, 1 kg / aviéntate dos kilos / aviéntame kilo y medio pa los codos
    rífate un batch de 1.5 / chingale con un kilo y medio de mezcla / revuélveme dos kilos / revuelve kilo y cuarto
    bátete un kilo / bátanse dos kilos muchachos / batan 1.8 kg / catalízame un kilo / cataliza 700 gramos
    catalizamos dos kilos / activa kilo y medio / juntamos A y B pa un kilo doscientos / vamos a mezclar ya 1.2 kilos
    vamos a hacer un kilo y medio ahora mismo / vamos por 900 / vamos con la de 2 kilos / ya vamos a empezar, 1.3 kg
    nos arrancamos con dos / arranco con 650 / arrancamos ya, kilo y medio / arranque un batch de dos libras
    comenzamos mezcla de 1 kg / comienza el batch 1.7 / iniciando preparación de 2 kg / inicia mezcla 900 gramos
    doy inicio a 1.5 kg / me hace falta un kilo y medio para brocha / me falta mezcla, 500 más
    nos hacen falta dos kilos / nos harían falta 800 g, hazlos / hace falta kilo y cuarto
    falta mezcla para tres bridas, 600 g / falta poquito, 200 gramos y ya / hacen falta 700
    pal tanque grande cuatro kilos / pa las rejas medio kilo / para el eje 450 g / para la bomba, dos kilos justos
    para dos capas en la voluta, 2.6 kg / para rociar toda la fila, tres kilos / con pistola, así que 1.9 kg
    a brocha, con 400 basta / para 2 metros cuadrados ponme 500 g / para 12 rieles, kilo y medio
    para cuatro tapas, 700 / para las cinco que faltan 1 kg / como somos dos pintando, haz dos kilos
    como hace calor mejor chica, 600 g / que haga calor, pues pocas: 500 / dos mil gramos total / total de mezcla 1,75
    cantidad total: dos kilos / masa total 1250 g / peso de la mezcla 900 / 1.5 de mezcla / 2.4 kg batch / batch 3 lb
    mix de 2 lbs / mezcla 40 onzas / 32 oz de mix / five pounds de mix pal dip / cuatro libras
    tres libras y cuarto de batch / seis libras pa todo el rack / una libra y media pa touch up y ya
    un cuarto de kilo / trescientos cincuenta gramos / kilo y tres cuartos / dos kilos cien
    un kilo seiscientos cincuenta / kilo dos / kilo tres / kilo ocho / dos y medio / dos coma dos kilos nueva
    uno y medio de mezcla / tres y pico, ponle 3.2 kg / igual que ayer, dos kilos / lo de siempre, kilo y medio
    la misma cantidad, 1.2 / repíteme el de un kilo / otra ronda de 800 / duplica, hazme dos kilos
    la mitad que antes, 600 g / algo más grande, 2.8 kg / uno más chico, 450 g / calcula para kilo y medio y arrancamos
    dime cuánto de cada uno pa 1.6 kg que voy a mezclar / sácame los pesos para 900 g y empiezo
    dame los gramos de A y B para 2 kg, empiezo ya / divídeme 1400 entre A y B
    quiero pesar 1,2 kg en total, abre mezcla / el jefe quiere dos kilos ya / Kari dice que hagamos un kilo
    dice el lead que 1.5 kg / me pide Omar 800 gramos de mezcla / pidieron 700 gramos para el touch
    encargo: kilo y cuarto / pedido de mezcla: 2 kilos / orden de mezcla de 1,3 kg / ponte a preparar 1.1 kg
    ponte con dos kilos / ponte un kilito / ponle que sean 1600 y empezamos / ponla de dos kilos / hágase un kilo
    hágame el favor de preparar 900 / se va a hacer kilo y medio ahorita / se hace una de 2.2
    se empieza mezcla, mil gramos / se arranca batch de tres kilos / se necesita mezcla: 1.2 kg / se ocupa un kilo más
    hay que batir 1.4 kg ya / hay que armar otro de 600 / toca otra de kilo y medio / toca batch de 2 kilos
    va otro, 900 / va otra mezcla de dos kilos / va una chica de 300 / va un kilo / ahí va otro bote: 1.2 kg
    ahí vamos con 700 / acá empiezo con kilo y medio / aquí arrancando 1.9 kg / aquí le voy a dar a un batch de 800
    ando armando uno de 900 / ando preparando dos kilos / estoy armando 1.2 kg / estoy empezando un batch de 3 lb
    estamos por mezclar 1.8, ábrela / me dispongo a preparar 1 500 g / procedo a mezclar dos kilos
    voy a por kilo y medio, abre el lote / pues nada, 900 gramos y a correr / venga, otro kilo y a pintar
    hala, dos kilos / ea, kilo y medio / órale dos kilos / ándale, un kilo y medio / jálale con 800 / éntrale a 2 kilos
    sale, batch de 1.2 / sobres, kilo y medio / arre, 2 kg / dele con dos kilitos / hágale con un kilo
    hágale pues, 1.5 / listo, hagamos 1,2 / bueno dale, 900 / ok dos kilos
    may I have un batch de dos kilos y medio please / may I have a batch of kilo y medio
    can I have a batch de dos kilos please / can I get two and a half kilos de mezcla
    could you mix me dos kilos please / could I get medio kilo please / whip me up un batch de kilo y medio
    whip up two kilos compa / I need a batch of two kilos porfa / I need 900 g please
    let me have a batch of three pounds / give me a batch of a kilo and a half / we need two and a half kilos más
    one more batch of 800 g please / cook me up un batch de dos kilos / half a kilo please jefe
    buenos días, necesitaría que preparásemos una mezcla de dos kilos para las tapas del trabajo 94
    por favor prepare 1,5 kg para la carcasa / si es tan amable, una mezcla de 900 gramos
    ¿me preparas un kilo y cuarto? / hazme 2 kg xq son 5 piezas / ps otro kilo / pos kilo y medio nomas / q sea 1 kilo
    nomas 300 pa retocar / ocupo 2 kilos d mezcla ya / mezclame 800 q ya esta la pieza lista / mix 2 kilos pls
    make 1.5 kilos / make me two pounds / need a batch, 3 lbs / need another kilo / let's mix 900 g / new mix, 1.2 kg
    start mixing 2 kg / begin batch de 700 g / I'm mixing kilo y medio / we're mixing 2 kilos / going to mix 900 now
    quillo hazme kilo y medio / parce prepárese dos kilos / boludo armá un kilo / mi pana bátete 900 gramos
    mijo haz dos kilitos / coño otro kilo que no llega / hágame pues un kilo
  `,
  weigh: `
    ya pesé los dos, A 640 y B 643 / de A me dio 1201 y de B 1199 / la balanza dice 830 el A y 829 el B
    en la balanza: 500 A, 502 B / la romana marca 1.2 A y 1.21 B / la pesa dio 720 y 721
    en la pesa salieron 900 y 898 / peso final: A 655, B 654 / pesos finales 1.1 y 1.1
    pesaje terminado 1300 de A, 1302 de B / pesaje listo, bote 4: 480 y 481 / quedó en 700 la A y la B en 702
    la A quedó en 915 gramos y la B en 917 / se quedó el B en 505 y el A en 500 / se pesó A: 1205 g, B: 1200 g
    se pesaron 600 y 598 gramos / fueron pesados 750 g de A y 751 g de B / se vertieron 1000 g de A y 1003 de B
    se adicionaron 620 g de B sobre 618 de A / se agregó B 540 a los 541 de A / agregué 810 de B a 812 de A
    agregué el B, 640, ya estaba el A, 642 / le agregué 450 de B al pot, de A iban 452
    añadidos 905 de B, A iba con 903 / añadí 333 de uno y 334 del otro / adicioné 1.5 kg de B sobre 1.5 de A
    ya está el B adentro, 700, con 698 de A / ya cayó el B: 915 sobre 914 / ya va el B, 480, y el A 482
    B adentro 1198, A 1201 / ya están los dos adentro 850 y 852 / los dos en la olla, 730 y 728
    ambos componentes pesados: 990 y 992 / ambos a 600 / cada uno 750 / 620 de cada componente
    mitad y mitad, 500 y 500 / parejos, 1.2 kg y 1.2 kg / iguales los dos, 880 / de la chica 300 y de la otra 301
    uno 640 el otro 642 / primero 700 y luego 701 / el primero 810, el segundo 808 / comp A 1,200 comp B 1,198
    comp a: 455 / comp b: 457 y comp a: 455 / componente A=930, B=933 / pte A 610 pte B 612
    pintura 800 y endurecedor 802 / pintura 1.1 y catalizador 1.1 / endurecedor 640 con resina 642
    hardener 500 y base 501 / resin 900 g hardener 905 g / part A 2.1 lb part B 2.1 lb / weighed: 1.5 lbs y 1.5 lbs
    scale says 620 A 622 B / le eché twenty ounces de A y twenty de B / 16 oz de A 16 oz de B en el pot
    A 3 lb 2 oz B 3 lb 2 oz / poured A 700 y luego B 703 / I poured 640 de A and 641 de B / pouré 800 y 802 al batch 2
    scaled A 505 B 507 / pesé mezcla 1: 1201 y 1198 / la mezcla 2 lleva 640 de A y 644 de B
    al batch 1 le tocaron 900 y 901 / el 3 lleva 450 y 452 / bote 1 pesado, seiscientos y seiscientos dos
    pot dos pesado setecientos y setecientos uno / tanda pesada 1205/1201 / 1201 / 1198 en la báscula / 640-642 pesados
    905 con 903 / 1.2 + 1.2 al bote / 700/702 / 1500 y 1496 gramos / A mil doscientos uno B mil ciento noventa y ocho
    mil de a mil tres de b / quinientos cinco y quinientos siete / a seiscientos cuarenta b seiscientos treinta y nueve
    uno dos cero uno de a y uno uno nueve ocho de b / medí 800 de A y 805 de B / medidos en báscula 640 y 640
    midió 715 el A y 714 el B / tomé peso: A 910 B 912 / dosifiqué 1000 de A y 1001 de B / dosificado: 455 y 454
    dosis A 620 dosis B 621 / cargas: A 1330, B 1332 / descargué 700 de A y 700 de B en la olla
    bajé 600 de A y 602 de B al bote / deposité 900 A, 899 B / dejé caer 640 de B sobre 642 de A
    volqué 830 de A y 831 de B / volteé las latas: 1010 A y 1008 B al pot / le puse mil de A y mil dos de B
    le puse 500 gramos del primero y 502 del catalizador / le metí 715 y 716
    le eché al cubo 1.2 de una y 1.2 de la otra / le tiré 900 de A y después 903 de B / le clavé 640 y 640
    le vacié 480 del A y 481 del B a la cubeta / les saqué 750 a cada lata y al pot / me dio 610 A y 612 B la báscula
    me quedó en 1005 y 1003 / me quedaron 800 A, 797 B / me salieron 455 y 456 clavaditos / nos dio 902 y 904
    nos quedó A 1.35 y B 1.34 / nos fuimos a 650 y 655, tantito pasado el B / se pasó tantito el B: 612 contra 605
    quedó corto el B, 795 con 800 de A / un pelo de más de A, 1203, B 1198 / por tres gramos: A 603 B 600
    exactos 700 y 700 / justo justo 900 con 900 / al gramo, 640 y 640 / cabal, 500 y 500 / al centavo, 1200 y 1200
    tara a cero, 620 de A, 622 de B / con la tara descontada, 800 y 801 / sin el bote, 905 y 903
    ya con tara, A 740 y B 741 / neto 1.2 y 1.2 / peso neto A 1 003, B 1 001 / descontando la cubeta 655 y 656
    bruto menos tara: 470 y 472 / Ola pesó 1201 y 1198 / Lia echó 640 de A y 639 de B / entre Omar y yo: A 1010 B 1012
    el chavo pesó 505 y 506, yo lo vi / verificado por dos: 900 A 902 B / revisado en pantalla 715 y 713
    confirmo pesos 1201/1198 / confirmados, A 830 B 832 / registro de pesada: 640/641 / anótale 700 y 702
    apúntale A 915 B 917 / mételo así: A 480, B 482 / pon 1205 de A y 1200 de B / para el récord, A 600, B 601
    los pesos son 750 y 752 / los números de la báscula: 1102 y 1100 / lectura de báscula 640, 642
    van los pesos: 905 y 907 / van 620 y 621 / aquí van: 1.4 y 1.41 / ahí quedan, 500 A 499 B / ahí está, 733 y 735
    mira: 812 A, 815 B / oye, 640 y 642 del pot 2 / jefe, la pesada: 1201 y 1199 / compa, quedó 905/903
    a las 8:05 pesé, A 1201, B 1198 / 8:10 en contacto A 640 con B 642 / hace 3 minutos cayó el B, 700 sobre 701
    recién pesado 455 y 456 / ahorita pesé 900 y 902 / acabamos de pesar 1.2 y 1.2 / ahora quedó 655 con 654
    todavía caliente la báscula: 740 y 742 / terminado de pesar 610 y 612 / ya acabé de pesar, 830 y 833
    ya pesado todo 500 500 / listo el peso 1205 con 1203 / listas las dos partes, 640 y 641
    listo, A con 905 y B con 908 / hecho, 700 y 703 / le informo los pesos: parte A 1 201 g, parte B 1 198 g
    señor, se pesaron 640 g de A y 641 g de B / pesada concluida: A 905, B 903, dentro de tolerancia
    vaciados A 1.2 kg y B 1.2 kg en el recipiente limpio / eche 600 d A y 602 d B / ps 500 y 501
    pos kedo en 640 y 643 / ya pese son 905 y 903 xq pedia 900 / nomas me pase 3 gramos d B, 603 y 600 d A
    la A 700 la B 702 wey / weighed it, 640 A 641 B / A came out 1201, B 1198 / got 500 A and 502 B
    scale read 905 A and 903 B / A's 1.5 lb, B's 1.5 lb / both at 750 / dumped A 600 y B 601 en el pot
    ya weighé todo, 820 y 822 / la resina 640, el endurecedor 640 / de la pintura 1.2 y del secante 1.2
    del componente base 900 y del reactivo 902 / bote A 505 bote B 506 / lado A 700 lado B 701
    A: siete cincuenta, B: siete cincuenta y dos / A seis veinte B seis veintidós / quillo he echao 600 y 602
    parce quedó en 500 y 503 / boludo pesé 900 y 897 / mi pana 640 con 641 / mijo son 1200 y 1202
    coño clavao, 700 y 700
  `,
  stir: `
    ya le di al agitador / le prendí a la batidora en el bote 2 / le prendí al mezclador, va el 1
    prendido el mezclador, tanda 3 / agitando / agitando ya la 2 / revolviendo el bote 3
    revolviendo con la máquina el pot 1 / ya se está revolviendo el dos / ya está batiendo
    batidora andando en el bote 1 / batidora encendida pot 2 / bate ya la mezcla 3 / bate que bate el 1
    motor del agitador andando, pot 1 / motorcito encendido, el bote 2 gira / paleta girando en la mezcla 1
    aspa girando bote 4 / eché a andar el agitador del 2 / eché a andar la batidora, pot 3 / eché a girar la mezcla 1
    echado a andar el mixer / se prendió el agitador, mezcla 1 / se encendió el mezclador del bote 2
    se inició la agitación del lote 3 / se puso a batir el 4 / inicié agitación, batch 2
    iniciada la agitación a 300 rpm / comencé a revolver el bote 1 / comenzó el batido del pot 2
    empecé a mover el batch 3 / empecé a remover la 1 con el mixer / empezó a girar la mezcla 2
    empieza a batir el bote 4 / stirring on / stirring ya el pot 2 / ya está stirring el batch 1 / mixing ya, pot 3
    stirrer running, bote 1 / start stir pot 4 / prendí el drill con la paleta, batch 2
    el drill mixer ya anda en el pot 1 / turned on el mixer / le di on al stirrer
    ya tiene el agitador puesto y dando vueltas el bote 1 / con el agitador puesto y tapado, mezcla 2
    dando vueltas el pot 3 / a 250 vueltas el bote 1 / a 200 rpm girando la 2 / vórtice chiquito, girando el 3
    remolino suave en el pot 1 / lo dejé girando, bote 2 / la dejé batiendo, mezcla 3 / lo tengo revolviendo el pot 1
    la tengo en el agitador, la 4 / en el agitador el bote 3 / al agitador la mezcla 1
    montada en el agitador la 2 y andando / colgué el bote 4 en el mixer y ya bate / regresó la luz, ya gira el bote 1
    volvió a andar el agitador / otra vez batiendo, pot 2 / le volví a prender, bote 3 / retomé la agitación de la 1
    retomamos el batido, mezcla 2 / sigo batiendo, ya lo volví a prender el 3 / de nuevo girando la 4
    arreglado el agitador, ya mueve la 2 / cambié el motor y ya bate el bote 1 / destrabé la paleta y ya gira el pot 3
    puesto a agitar el bote uno / puesta a batir la mezcla dos / ponlo que ya está batiendo el pot 1
    apunta que ya agita la 2 / desde las 9:05 está batiendo el bote 1 / 8:20 agitador andando
    hace un ratito prendí el mezclador / ahorita le di vuelta al agitador / acabo de prender la batidora del bote 3
    acabo de poner a revolver la 1 / recién arrancó el mezclador / ya arrancó el agitador 2
    Omar prendió el mixer del 1 / Lia puso a batir la mezcla 2 / el nuevo encendió el agitador del bote 3
    che ya puse a batir el pote 2 / mi hermano la mezcla ta dando vueltas / tío ya bate el bote 1
    pana ya prendí el mezclador / el bote 1 está en agitación / lote 2 en agitación mecánica
    mezcla en agitación continua / en agitación y tapada la 3 / le informo que la agitación del bote 1 ha comenzado
    se inició el batido de la mezcla 2 con vórtice suave / señor, ya está en marcha el agitador
    ya lo prendi xq ya tiene la B / ps ya bate / pos ya ta girando / nomas lo prendi despacito / turned the mixer on
    mixer's on / stirrer's on pot 1 / it's stirring ya / got it stirring, pot 2 / paddle in and spinning
    metí el paddle y ya gira / quillo está batiendo el bote 1 / parce ya gira / boludo prendí la batidora
    mijo ya le prendí al que bate / ya canta el mixer, prendido
  `,
  stop: `
    ya no gira el bote 1 / ya no bate la mezcla 2 / ya lo paré / párale, ya está parado el mixer
    ya le paré al agitador / le apagué a la batidora / batidora apagada, bote 2 / apagada la batidora del pot 1
    mezclador apagado / mezclador parado, tanda 3 / apagué el mezclador del bote 1 / detuve el agitador
    detuve la agitación del lote 2 / detenida la agitación, mezcla 1 / agitación detenida 10:02
    agitación terminada, pot 2 / finalizó la agitación del bote 3 / finalizado el batido, 1
    se detuvo el agitador del pot 1 / se detuvo la batidora / se atoró la paleta y se paró, bote 2
    se trabó el mixer, ya no gira / se quemó el motor del agitador, parada la 3 / se desconectó el agitador, bote 1
    se botó el fusible y paró el mixer / se cortó la luz y no bate la 2 / no hay luz, agitador detenido
    se fue la corriente, el mixer quedó parado / stopped stirring pot 1 / stir stopped / stirring off batch 2
    mixer stopped / turned off el mixer / le di off al stirrer / killed el mixer, pot 3 / apagué el drill, batch 1
    saqué el drill del pot 2 / stir done pot 2, mixer off / done con el stir / terminamos de batir el bote 1
    terminé de batir la 2 / acabamos de agitar la mezcla 3 / ya acabó de batir el pot 1
    ya acabó su tiempo de batido, apagado / cumplió el tiempo y lo apagué, bote 2 / sonó la campana y paré el agitador
    sonó y ya le apagué al mixer / ya sonó, agitador fuera / a la campana paré la batidora
    pasó la hora y cuarenta, agitador apagado / sin agitar el bote 3 desde las 10 / dejó de batir el 2
    dejé de agitar la mezcla 1 / dejamos de revolver el pot 4 / ya no lo estoy revolviendo, el 1 / ya no se agita la 2
    paro de batir / paro la agitación / paro el mezclador un minuto / paré tantito para ver, mezcla 2
    pausa al agitador, pot 1 / pausé el mixer / en pausa el batido del bote 3 / lo paré porque salpicaba
    le bajé y lo apagué, hacía espuma / apagado porque metía aire / quité la paleta / quité el aspa del bote 2
    saqué la paleta de la mezcla 1 / saqué el agitador del pot 3 / fuera paleta, la 1 / levanté el aspa, bote 1
    subí la batidora / escurriendo la paleta, batido terminado / desmonté el agitador del pot 2 / a las 9:42 paré
    9:45 mixer off / hace cinco minutos apagué la batidora / ahorita apagué el mezclador del 2 / recién lo paré
    acabo de apagar el agitador / acabo de detener el batido de la 3 / acaba de parar la batidora / ahora paré el mixer
    Omar apagó el mixer del 1 / Lia paró la batidora / alguien desenchufó el agitador, está parado el bote 2
    che paré la batidora / mi hermano ya apagué el mezclador / tío, agitador fuera / ya estuvo el batido, apagado compa
    fin agitado / fin batido bote 2 / alto al mixer pot 1, ya parado / quieto el agitador / quieta la paleta del bote 1
    le informo que la agitación del bote 1 finalizó / se detuvo el agitador al cumplir el tiempo, mezcla 2
    señor, ya se apagó el mezclador / ya lo apague xq sono / ps ya pare el mixer / pos ya no bate
    nomas lo pare tantito / ya q cumplio apague el agitador / shut off el mixer / shut the stirrer off, pot 1
    mixer's off / stirrer's off ya / cut the mixer / it's done stirring / stopped the stir on pot 2 / paddle out, pot 1
    saqué el paddle / quillo parao el agitador / parce apagué el mezclador / boludo paré la batidora
    mijo ya apagué eso que bate / ya se calló el mixer, apagado
  `,
  filter: `
    ya la colé / colada / coladito el bote 2 / ya quedó colado el pot 1 / ya colamos la mezcla 3 / se coló la tanda 2
    ya pasó por la malla el bote 1 / por la malla fina la mezcla 2 / pasada por malla, lote 3
    le pasé el colador al pot 1 / por el cono de papel el bote 2 / con cono filtrante la 3
    por la media de filtrar el pot 1 / filtrada con manga la mezcla 2 / por el cartucho de una micra la 1
    cartucho nuevo y filtrada la 2 / filtro de fibra puesto y pasado el bote 3
    se pasó al recipiente limpio por el filtro / transferida por filtro a otra olla, mezcla 1
    traspasé el pot 2 filtrando / cambié de cubo filtrando, el 1 / pasé de la olla al bote limpio por filtro, la 2
    del cubo sucio al limpio con filtro / ya está en el segundo bote, filtrada
    ya en el limpio la mezcla 3, pasó por filtro / en el otro vaso, filtrada la 1 / filtración terminada, lote 2
    filtración completa / terminó la filtración del bote 1 / concluido el filtrado, mezcla 3 / terminé de filtrar
    terminamos de colar el pot 2 / acabé de pasarla por el filtro, la 1 / ya acabó de colarse el 3 / filtered
    filtered pot 1 a un bote clean / strained y listo batch 2 / ya la strainié / filtrié el batch / filtreado el pot 3
    le di su pasada por el filter / passed por el filter de 1 micra, pot 1 / through the filter el batch 2
  `,
};
