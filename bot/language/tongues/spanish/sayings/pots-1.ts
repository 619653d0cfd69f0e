// How Spanish speakers say it: mix, weigh, stir, stop, filter, thick, gel, empty, cover, uncover, catch. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfPots1: Sayings<SaidMeaning> = {
  mix: `
    hazme kilo y medio / preparame 2 kilos / vamos a necesitar 900 g / mezcla 1,2 kg para las bridas
    échale 800 gramos de mezcla nueva / un batch de 600 porfa / arráncame un batch de kilo / batch nuevo, 1.5 kg
    otro bote de 750 / empezamos mezcla de 3 kilos / voy haciendo 500 g / monto un kilo doscientos / nueva mezcla 400g
    necesito medio kilo mas / quiero 2 kg y cuarto para la carcasa-4 / me hacen falta 1100 gramos
    apúntame una mezcla de 950 / pon en marcha 1 kg / sacame un kilito / saca 1.8 kilos para el turno de la tarde
    vamos con otros 700 / dale con 2 kilos jefe / mezcla: 1400 g / start a mix de 800 gramos
    quiero un mix de 1 kg pa los impellers / mixea 900 gramos / mixeame un kilo porfis
    haz la mezcla pa la 7 y la 8, 650 g / preparando 1,3 kg ahora mismo / estamos preparando mezcla de dos kilos
    oye arranca kilo y cuarto que vienen las tapas / para hoy 2400 g de golpe / venga, kilo y pico, ponle 1150
    calcúlame 850 g y empezamos / cuanto antes 1,6 kg de mezcla / con 300 gramitos nos alcanza preparalos
    con medio kilo basta hazlo / hazte un kilo siete / hace un kilo y medio dale / preparate 900 che
    armá una mezcla de 1200 / ármame 2 kilos de mezcla / ármate un batch de 1.2 / avienta un batch de 1 kilo pal tanque
    échame un kilo ochocientos / éntrale con un batch de 700 gramos / ahorita mismo hago 500 g pa retocar la valvula 2
    mezcla chiquita, 250 g / mezcla grande 3 kilos y medio / un bote pequeño de 300 para brocha
    necesitamos 1 kg para pistola / quinientos gramos por favor / dos kilos y medio de mezcla nueva
    tres cuartos de kilo / un kilo justo / kilo cien / un litro de mezcla, vamos / hazme un litro y medio
    saca 800 ml para las placas / two kilos de mezcla please / 2 pounds de mezcla pa los brackets / hazme 3 libras
    libra y media de batch nuevo / una libra nomas es pa brocha / un cuarto de galon de mezcla
    medio galón pa los tanques / arranco bote nuevo de 1,1 kg / inicio lote de 2000 g
    lote nuevo de kilo y medio a las 8:20 / iniciamos la mezcla del dia 1.75 kg / primera mezcla de la mañana, 900 gr
    ultima mezcla del dia 450 g / segunda tanda, otro kilo / tanda de 1200 para la tarde / hagamos una tanda de 600
    pídeme 2 kilos de producto mezclado / producto para 1,5 kg total / total 1000 g A y B juntos
    entre A y B quiero 1600 / cantidad: 1.4 kg / mezclamos 2,2 / buenos dias 😴 venga un kilo para empezar
    ya llegó todo el mundo, hazme 1.9 kilos / ok listo el cuarto, preparen kilo y medio
    todo seco y limpio, vamos con 800 / jefe aqui estamos dame 2 kg / necesito producto, 700 g, para las bridas 2 y 3
    pa la housing ocupo 1300 gramos / ocupo 900 g mas / ocupamos dos kilos pa acabar el job
    ocupo un batch de medio kilo ya / la neta ocupo como 1.2 kg, arráncalo / nos falta pa terminar, haz otros 350
    hay que sacar otro pot de 800 / otro igual que el de antes, 1,25 kg / repite kilo y medio
    repite la mezcla con 1000 / otra mezcla mas, 600g / mezcla pal rodillo: 550 g / para inmersión hazme 4 kilos
    para la cubeta de inmersion 5 kg de mezcla / para colada 3,5 kilos / hay que hacer 1 kilo 300 y ya
    hay que preparar 2 kilos para el rodete-3 / toca mezclar, 900 / toca hacer otro kilo
    ponme kilo y medio en el segundo bote / ponme a hacer 750 gramos / dame un batch de 1.6 kg pa spray
    dame kilo y cuarto / dame la receta para 1,4 kg que empiezo / estoy empezando, son 900 en total
    ahí va la mezcla, 2 kilos / empiezo con 1100 g / comienzo una mezcla de 480 gramos / empezando batch de 2.5 kg
    ya empecé un kilo / estoy con un kilo setecientos / me pongo con 650 g / me pongo a ello 1,2 kilos
    nos ponemos con dos kilos / sea 2 kilos / que sean 1700 gramos / que sea kilo y medio y no se hable más
    échate uno de 800 mano / mete mezcla de 1.3 / mil gramos / mil doscientos gramos de mezcla
    novecientos gramos pa las dos tapas / uno punto cinco kilos / uno coma ocho kilos de mezcla nueva
    dos punto dos kilos para el impeller / hazme dos botes, este de 900 / menos mal que hay material, prepara 2,1 kg
    porfa kilo y medio de mexcla / preparame 1.2 kgs / mesclame 700 gramos / ocho cientos gramos de mezcla
    quiero empezar el bote de las rejillas, 1.35 kg / fija la mezcla en 1450 g / mezcla para 3 m2, ponle 600 gramos
    kilo y medio 🙏 / 1.5 kg mix / 1200 g mezcla / 2kg pa ya
  `,
  weigh: `
    A 620 B 622 / pesados 750 de A y 750 de B / pesé 500 de A y 501 de B en el bote 1 / eché 400 g de A y 398 de B
    bote 2: A 812, B 809 / en el pot 1 van 600 de A y 600 de B / A quedo en 455 y B en 456
    la bascula dio 702 de A y 699 de B / la scale marca 850 del A y 851 del B / básculas: A 0,748 kg, B 0,750 kg
    setecientos de A setecientos tres de B / listo el pesaje, A 1010 B 1008 / pesaje batch 3: 333 334
    ya esta pesado el bote 2, 640 y 641 / puse 905 de A y le añadi 903 de B / le metí 1.2 kilos de A y 1.2 kilos de B
    van 480 g de parte A y 479 de parte B / parte A 1,05 kg; parte B 1,05 kg / componente A 595 gramos, componente B 598
    resina 900 endurecedor 898 / base 1.4 kg, catalizador 1.4 kg / le eché 300 de base y 300 de catalizador al pot 4
    el A salió 755 y el B 752 / del A fueron 412 g y del B 415 / de la A 660 de la B 658 / 650 A + 650 B en el pot
    825 a y 826 b / a 990 b 987 / A=550 B=552 / A: 730. B: 731. / pesé todo, 1500 de A y 1498 de B
    acabo de pesar, A 505 y B 504 / recién pesé 870 de A y 868 del B en el segundo bote
    peso real A 602 peso real B 604 / al final fueron 715 de A y 712 de B / quedaron 1.01 de A y 1.00 de B
    pa que apuntes: A 444 B 446 / apunta 620 de A y 618 de B / anota bote 1: 500 A, 503 B
    toma nota, 1203 g de A, 1200 g de B / registra A ochocientos diez B ochocientos doce
    vertí 940 de A y luego 938 de B / vertidos 350 y 351 / vacié 600 de A y 602 de B en la olla
    en la olla: 780 de A con 778 de B / en el cubo 1 hay 900 de A y 901 de B / en la cubeta dos 670 de A y 672 de B
    cubeta 1 A 560 B 558 / al vaso 250 A 250 B / a la jarra le puse 410 g de A y 411 g de B
    le puse al pot 2 lo del A 835 y lo del B 830 / serví 300 del A y 300 del B
    despaché 505 de A y 505 de B en el batch 5 / weighed A 720 B 722 en el pot 1 / ya weighé, 615 de A y 614 de B
    le di scale: A 933 y B 930 / en la scale salieron 1.5 kilos de A y 1.49 de B / poured 800 de A y 803 del B
    A two pounds y B two pounds una onza / 1.1 libras de A y 1.1 de B / 18 onzas de A y 18 onzas de B al batch
    A 2.2 lb B 2.2 lb / uno punto dos de A y uno punto uno nueve de B
    dos punto cuatro kilos A dos punto cuatro kilos B / cero coma siete de A y cero coma siete de B
    medio kilo de A y medio kilo de B ya en el bote / kilo de A y kilo de B justitos
    un kilo doscientos del A, mil doscientos cinco del B / tres cuartos de kilo de cada uno, 750 y 750, adentro
    los dos a 640 clavados en bote 1 / clavado: 700 A y 700 B / me salio A 688 y B 690 lo clave
    me pasé poquito, A 607 y B 600 / se me fue la mano con el B: A 500, B 509 / me quedé corto, 795 de A y 790 de B
    por fin, 1004 de A y 1003 de B 😅 / ok ya quedó, A 577 B 575 en el pot 3 / ya quedaron los pesos 468 y 469
    ya quedo la pesada wey 850 A 852 B / ahí va, 905 A, 906 B / ahi te van los numeros: 721 de a y 719 de b
    aquí los pesos del batch 2: A 1330, B 1327 / mezcla 4 pesada con A 390 y B 391
    en el segundo eché 610 de uno y 611 del otro / primero A 820 despues B 818 / primero el A, 560, y encima el B, 561
    A dentro con 930 y B encima 933 / B 604 sobre A 602 / B en A: 455 sobre 454 / le añadi B 710 a los 708 de A
    sobre 980 de A cayeron 978 de B a las 9:40 / a las 10:15 pesamos 640 A y 642 B / hace diez minutos pese A 505 B 507
    hace un ratito eche 800 de A y 798 de B / ahora mismo A 690 y B 688
    lata 3: 740 de A, lata 5: 741 de B, todo al pot / de la lata 2 saqué 600 A y de la 6 puse 598 B, al bote 1
    del bote de A 520 y del de B 522, juntos ya / los dos componentes dentro 875 y 873
    ya están juntos A y B, 620 y 622 / A y B en el pot 1050 y 1052 / juntamos 430 A con 431 B
    combiné 990 g de A con 991 g de B / mezclados 285 de A y 286 de B / ya hice la pesada: 1125 A 1121 B
    pesada hecha, 680-682 / pesada del bote 2, 615 de A, 613 de B, tara quitada / con tara fuera A 777 B 775
    neto A 540 neto B 541 / netos: 965 y 966 / bruto aparte, quedan A 350 y B 352 / pepe pesó 805 de A y 802 de B
    el nuevo pesó el bote 3, A 455 B 453 / pesé yo y revisó luis: A 1200 B 1198 / doble chequeo hecho, A 640 y B 638
    comprobado en báscula 910 de A, 911 de B / cargado el pot 1 con 1.3 y 1.3 / cargamos el bote con A 760 y B 758
    cargué 502 de A, 500 de B / llené el pot con 605 de A y 606 de B / ya le puse los dos, A 415, B 417
    dale que ya está, 830 de A y 832 de B / listo jefe: seiscientos cuarenta A, seiscientos cuarenta y uno B
    listo, metí A 1.75 B 1.74 / che, pesé 700 de A y 698 de B / ya le eché al pote 480 de A y 482 de B
    pal pote 2 fueron 900 de A y 899 de B / pese 635 d A y 637 d B / peze 500 A 500 B / eche 1,1kg de a y 1,1kg de be
    a quinientos veinte be quinientos veintidos / parte a seis cientos parte b seis cientos dos
  `,
  stir: `
    encendí el agitador del bote 1 / agitador en marcha, pot 2 / agitador encendido mezcla 3 / stirrer on pot 1
    prendí el stirrer del batch 2 / prendí el mixer del pot 3 / mixer on batch 1 / mixer andando en el 4
    le di start al mixer, pot 2 / prendido el agitador bote 2 / arranque el agitador del bote 1
    arrancada la agitación, mezcla 2 / puse en marcha el batido del pot 4 / puse a agitar el bote 3
    puse a girar el batch 1 / puse la hélice en el bote 2 y girando / metí la varilla otra vez y a dar vueltas, el 1
    volví a encender el agitador del bote 2 / volví a prender el mixer, batch 3 / vuelve a girar el pot 1
    otra vez agitando la mezcla 2 / otra vez en marcha el bote 4 / otra vez prendido el mixer del 3
    reanudo agitación bote 1 / reanudado el batido, pot 2 / reenganché el agitador del bote 3
    enchufé el agitador del 2 / conecte el mixer del pot 1 / di aire al agitador neumático, bote 4
    abri el aire y ya gira mezcla 2 / placa magnética encendida, pot 1 / imán girando en el bote 2
    bajé el agitador al bote 1 y encendido / el bote 3 está removiéndose / removiendo el batch 1 con vórtice suave
    girando suave el pot 2 / batiendo la mezcla 3 / ya está dando vueltas el 1 / ya agita el bote 2
    ya prendí el stir del batch 4 / ya volvió la luz, agitador del 1 andando
    volvió la corriente y gira otra vez el pot 3 / a las 9:42 agitador encendido bote 1
    hace un minuto prendí el mixer del batch 2 / acabo de encender el agitador del bote 3
    recién prendí el agitador del pote 1 / he puesto el agitador en la mezcla 4 tapada / ok ya está removiendo el bote 2
    menos mal, agitador funcionando otra vez, el 1 / ensendi el ajitador del bote 3
  `,
  stop: `
    paré el agitador del bote 1 / agitador parado, pot 2 / agitador apagado en la mezcla 3 / apagué el mixer del batch 1
    stirrer off pot 2 / apagué el stirrer del pot 1 / paré el stir, batch 3 / le di stop al mixer, pot 2 / mixer off
    mixer parado en el 4 / ya apagué el mixer del batch 2 / corté el agitador del bote 3 / corto agitacion bote 1
    fin de agitación mezcla 2 / fin del batido, pot 4 / terminé de remover el bote 1 / termino de agitar el batch 2
    acabé de batir la mezcla 3 / acabada la agitacion del bote 5 / deje de remover el 2 / deja de girar el pot 1
    la varilla parada bote 2 / saqué la varilla del bote 1 / saqué la hélice del pot 3 / hélice fuera, mezcla 2
    agitador fuera del bote 4 / levanté el agitador del bote 1 / levante el mixer del pot 2
    levantada la paleta, batch 3 / subí el agitador, el 1 / subí la cabeza del mixer, pot 4
    quité el agitador del bote 2 / quitado el stirrer del batch 1 / retiro la varilla de la mezcla 3
    desenchufé el agitador del bote 2 / desconecté el mixer del pot 1 / le quité el aire al agitador del 3
    cerré el aire del agitador neumático, bote 2 / apago la placa magnética, pot 1 / imán parado, bote 4
    se paro el agitador del bote 1 / se apagó el mixer del pot 2 / se fue la luz y se paro el agitador bote 3
    saltó el diferencial, agitador del 1 parado / el motor del agitador se trabó, pot 2 quieto / el pot 3 ya está quieto
    mezcla 2 en reposo / la 1 quieta desde las 10:40 / a las 11:12 paré el agitador del bote 2
    hace dos minutos apagué el stirrer, batch 4 / acabo de parar el bote 1 / recién apagué el agitador del pote 2
    he parado el agitador un momento, bote 3 / hemos parado el batido de la mezcla 1
    ya cumplio los 100 minutos agitador apagado pot 2 / ok listo, dos horas y paré el bote 1
    por fin apagado el ruidito del mixer, batch 3 / menos mal, ya paré el agitador del 2 / pare el ajitador del bote 1
    paré la batidora, bote 5
  `,
  filter: `
    filtré el bote 1 / filtrado el pot 2 / batch 3 filtrado / mezcla 1 pasada por el filtro
    pasé la mezcla por el filtro de 1 micra / ya filtré el batch 2 / ya pasó por el filtro el bote 4
    ya está filtrada la 3 / filtro hecho pot 1 / filtrado listo bote 2 / filtrada toda la mezcla al segundo recipiente
    la pasé por la fibra de vidrio, bote 3 / por fibra de vidrio el batch 1 / filtree el pot 2 / filtered el batch 4
    le di filter al pot 1 / lo pasamos por el filter, batch 2 / run por el filtro de 1 micron, pot 3
    a través del filtro el bote 5 / colé la mezcla 2 / colado el bote 1 / colada la mezcla en un bote limpio
    la colé a otro vaso limpio, la 3 / tamizada la mezcla 4 / pasada por colador y filtro, bote 2
    strained el pot 1 al bote limpio / le pase el strainer al batch 3 / trasvase el bote 1 por el filtro
    trasvase filtrado hecho, pot 2 / del pot 1 al limpio por filtro listo / mezcla filtrada al vaso dos
    todo filtrado, salió limpio, bote 4 / salió limpita del filtro la mezcla 1
    el filtro se llevó unos grumos, batch 2 listo / cogió dos grumitos el filtro, bote 3 filtrado
    filtro un poco tapado pero pasó todo, pot 1 / cambié el filtro a media y terminé de filtrar el batch 2
    pasó lento pero ya está, filtrado el 5 / por fin acabó de gotear por el filtro, bote 2
    menos mal, ya pasó todo por el filtro, pot 3 / filtrando el bote 1 / filtrando batch 4 ahora
    estoy pasando el pot 2 por el filtro / ando filtrando la mezcla 3 / ahora mismo filtro el bote 2
    acabo de filtrar la mezcla 1 / acabo de pasar el batch 5 por el cartucho / recién filtré el pot 4
    recien colada la mezcla 2 / a las 10:50 filtrado bote 1 / 11:05 pot 2 por el filtro
    hace cinco minutos filtré el batch 3 / hace un ratito pasé la 1 por filtro / he filtrado el bote 4 con filtro nuevo
    he pasado la mezcla 2 por el de una micra / hemos filtrado los botes 1 y 2 / hemos colado el batch 3
    se filtró la mezcla 5 / se paso por filtro de 1 µm el bote 2 / carlos filtró el pot 1
    el chavo ya filtró el batch 2 👍 / con filtro nuevo pasó el bote 3 / con el embudo y filtro pasé la mezcla 4
    embudo, filtro y al vaso limpio, bote 1 / al vacío por el filtro, pot 2 pasado / ok filtrado el 1 a pintar
    listo el filtrado del batch 4 / apunta filtrado bote 2 / filtre la mexcla 3 / che, ya filtré el pote 1
  `,
  thick: `
    el bote 1 esta espeso / pot 2 ya espesó / se está poniendo espesa la mezcla 3 / la mezcla 1 va espesando
    batch 2 se puso grueso / está grueso el pot 1 / ya se siente gordo el batch 3 / se engordó la mezcla 2
    engordando el bote 4 / más densa la mezcla 1 / más densito el pot 2 / está densa la del bote 3
    la 2 pesa más al remover / cuesta más mover la varilla en el bote 1 / el agitador va forzado bote 2 mas espeso
    el mixer ya batalla, está thick el pot 3 / se puso thick el batch 1 / el pot 2 está bien thick / thick ya el batch 4
    está como miel el bote 1 / parece miel la mezcla 2 / como jarabe el pot 3 / ya parece atole el batch 2
    está tipo melaza, bote 1 / tipo maple syrup el pot 4 / como yogur líquido la mezcla 3 / cae en hilos gordos bote 2
    cae lento de la paleta, la 1 / escurre lento, pot 3 / corre menos el bote 1 / fluye menos que antes, batch 2
    ya no corre igual, más pesadita la mezcla 4 / la viscosidad subió en el bote 2 / subió la viscosidad, pot 1
    más viscoso el batch 3 / viscosa ya la mezcla 1 / la copa da 40 segundos, antes 25, bote 2
    copa en 38 s, se espesó el pot 1 / la mezcla 2 tiene más cuerpo / ha cogido cuerpo el bote 3
    agarró cuerpo el pot 1 / ha espesado un poco la 4 / un poco mas espeso el bote 2 todavia liquido
    espeso pero corre, pot 3 / todavía se deja pero está gruesa, batch 1 / todavia liquido aunque mas pesado el 2
    la brocha arrastra se espeso el bote 1 / el rodillo pega, mezcla 3 espesa / la pistola escupe, está gordo el pot 2
    ya jala pesado la brocha, batch 4 thick / uy se está espesando el 1 😬 / ojo bote 3 espesando rapido
    jefe se me espesa el pot 2 / con este calor ya espesó la mezcla 1 / la neta ya está bien espeso el batch 3
    a las 11:30 noté el bote 2 más espeso / hace cinco minutos empezó a espesar el pot 1
    acabo de ver que la 4 está más densa / espezo el bote 2 / che, el pote 1 se puso espeso
  `,
  gel: `
    el bote 1 se gelifico / pot 2 gelado / geló el batch 3 / mezcla 1 gelificada / gel en el bote 2 / ya es gel el pot 1
    se hizo gel la mezcla 4 / se puso duro el bote 3 / duro ya el pot 2 / se endureció el batch 1
    endurecida la mezcla 2 / fraguó el bote 1 / ha fraguado el pot 4 / cuajó la mezcla 3 / cuajado el bote 2
    se cuajo el batch 1 wey / parece gelatina el bote 3 / como gelatina el pot 1 / gelatina pura el batch 2
    está como flan la mezcla 1 / flan total, bote 4 / jello el pot 2 / se hizo jello el batch 3 / gelled el pot 1
    batch 2 gelled, bye / esta como goma el bote 2 / goma ya la mezcla 3 / se hizo chicle el pot 1
    chicloso ya cuajo el batch 4 / piedra el bote 2 / se quedó como piedra el pot 3 / ladrillo el bote 1
    se hizo bloque la mezcla 2 / un taco sólido el bote 3 / sólido ya el batch 1 / solidificó la mezcla 4
    la varilla se quedo clavada bote 2 gelificado / el palo se queda de pie en el pot 1
    volteo el bote 3 y no cae, gelado / se me fue el bote 1, está gel 😭 / se murió el batch 2, puro gel
    petó la mezcla 3, gelificada / kaput el pot 4, duro / ya valió el batch 1, se hizo gel
    la neta ya se cuajó el pot 2 / a las 12:10 gelifico el bote 3 / hace un minuto geló la mezcla 2
    acaba de gelificar el bote 1 y está caliente / se jelifico el pot 3 / che, el pote 2 se hizo gel
  `,
  empty: `
    bote 1 vacío / pot 2 acabado / se acabó el batch 1 / se termino el bote 2 / ya no queda nada en el pot 3
    gastado el bote 1 entero / usamos todo el batch 4 / lo gastamos todo, bote 2 / el 3 está vacío
    el pot 1 quedo vacio / quedó en ceros el batch 2 / quedó limpio el pot 4 / bote 2 terminado, 0 sobrante
    se usó todo del pot 1 / se consumió completa la mezcla 3 / consumida la mezcla 2 / consumido el bote 5
    agotado el batch 1 / agotada la mezcla, bote 3 / nos hemos acabado el bote 1 / nos acabamos el batch 2
    nos lo fundimos todo, pot 3 / nos chupamos el bote entero, el 2 / me acabé el pot 1 / me acabé lo que quedaba del 4
    me termine el batch 5 con la ultima brida / la última brida se llevó el resto del bote 2
    la carcasa se tragó lo que quedaba del pot 1 / lo ultimo del bote 3 fue a la tapa-4
    apurado hasta la ultima gota bote 1 / rebañado el bote 2 / exprimí el pot 3 hasta el fondo
    ni una gota queda en el batch 1 / seco el bote 4 / vaciado el 2 / vacié el bote 3 al bidón de residuos
    vacié el pot 1 en el waste, 120 g / tiré el resto del bote 2 / tiré 85 gramos del pot 1
    tiré lo que sobró del batch 3, como 200 g / tirado el sobrante de la mezcla 2 / tirados 60 g del bote 1
    sobraron 140 g del bote 2, al bidón / sobró un poco del pot 4, ya fue a residuos
    sobrante batch 1: 95 g a la basura de químicos / resto del bote 3 a residuos, 310 g / el resto del pot 2 al waste
    el resto del batch 1 al drum 75 gramos / lo que quedaba del bote 4 lo tiré / lo que sobraba del 2, 150 g, al tambo
    al tambo el resto del pot 3 / al tambo 200 gramos del batch 2 / al bidón lo del bote 1
    al bote de desechos 45 g del pot 2 / boté el resto del pot 1 / bote 130 gramos de la mezcla 2
    botado lo que quedó del batch 3 / deseché el bote 2, 180 g / desechado el sobrante del pot 4
    desechados 220 g del batch 1 / descartado el resto del bote 3 / descarté 90 gramos del 2
    eche el resto del pot 1 al bidon / echados al residuo 70 g del bote 3 / mandé a residuos lo del batch 2
    mandé el sobrante del pot 3 al drum de waste / dumpee el pot 2 / dumpeado el batch 1, 160 g
    le di dump al resto del pot 4 / toss al resto del batch 3 / tiramos el leftover del pot 1, 110 gramos
    leftover del batch 2 al waste drum / scrapeé el batch 3, quedaban 250 g / pot 1 empty / batch 2 done, vacío
    batch 4 all used / ya nos echamos todo el batch 1 / ya se acabó el bote, el segundo / ya esta vacio el pot 2
    ya tire lo del bote 1 / ya vacié el 3 en residuos / ya quedo vacio el pot 4 wey
    acabo de tirar el resto del bote 2, 65 g / acabo de acabar el batch 1 / recién tiré 100 g del pot 3
    hace diez minutos tiramos el resto de la mezcla 1 / a las 11:40 bote 2 vacío / a las 12:05 tiré 230 g del batch 3
    se pasó de tiempo y tiré el pot 1, 400 g / tiramos medio kilo del bote 2
    a la basura, tiré lo que quedaba del batch 4 / venció el pot 3 y fue al bidón con 350 g / ok por fin vacío el bote 1
    menos mal, dio justo, pot 2 vacío / alcanzó justito, batch 1 terminado / qué pena, 300 g del bote 3 a residuos 😢
    la neta sobró un chorro, tiré 500 g del batch 2 / apunta bote 4 vacío / anota 55 g del pot 1 tirados
    basio el bote 2 / tire el resto d la mezcla 3 / che se termino el pote 1 / fin del batch 5
  `,
  cover: `
    tapé el bote 1 / tapa sobre el pot 2 / bote 3 tapado / pot 1 cubierto / cubrí el batch 2 / cubierta la mezcla 3
    puse la tapa al pot 4 / le puse cover al pot 1 / covered el batch 2 / le eché la tapa al batch 3
    le puse film al bote 2 / film plástico sobre la mezcla 1 / le puse plastico encima al pot 3
    papel de aluminio encima del bote 1 / foil sobre el pot 2 / ya tape la mezcla 4 / ya está cubierto el bote 2
    la mezcla 1 va tapada / el pot 3 ya tiene tapa / tapado el bote con el agitador dentro, el 1
    acabo de tapar la mezcla 2 / recién cubrí el pote 1 / a las 9:48 tapado el bote 3
    hace dos minutos cubrí el batch 1 / he tapado el bote 4 mientras remueve / hemos cubierto la olla 2
    se cubrió la mezcla 5 / ok tapadito el pot 2 / menos mal, ya puse la tapa a la mezcla 1 / cubri el bote 3
  `,
  uncover: `
    destapé el bote 1 / bote 2 destapado / pot 3 sin tapa / tapa fuera del pot 1 / quite la tapa del batch 2
    quité el film del bote 3 / le quite el plastico a la mezcla 1 / foil fuera, pot 2 / cover off el batch 4
    le quite el cover al pot 1 / uncovered el batch 2 / descubrí la mezcla 3 / descubierto el bote 4
    la mezcla 2 esta al aire / el pot 1 está destapado / está abierta la mezcla 3
    levanté la tapa del bote 1 para mirar / levanto tapa del pot 2 / abrí la tapa de la olla 1 / ya destapé el batch 3
    ya le quité la tapa al bote 2 / acabo de destapar la mezcla 1 / recien destape el pote 2
    a las 10:10 destapado el bote 3 / hace un minuto quite la tapa del batch 1 / he destapado la mezcla 4
    se retiro la cubierta del bote 2 / se voló el plástico del pot 1, está descubierto / ok sin tapa el batch 2
    destape la mexcla 3
  `,
  catch: `
    recuperé 120 g del goteo / recogi 85 gramos de lo que escurrio / recuperados 200 g de la bandeja
    de la bandeja salieron 140 g / goteo recogido 60 g / lo que goteo de la 7 son 90 gramos
    escurrido de la carcasa: 310 g, recogido / escurrió 150 g y lo junté / junté 75 g de lo que chorreó
    lo chorreado, 110 g, de vuelta al bote / volvieron al bote 1 180 g de goteo / devolví 95 g de escurrido al pot 2
    vuelve al pot 250 g recuperado de la colada / recuperado de colada 400 g / retorno de flow coat 350 g
    del flow coat recupere 220 gramos / recovered 130 g del drip pan / drip tray 100 g recuperados
    el drip de la housing dio 160 g / catcheé 70 g de lo que goteó / agarre 145 g del drip
    caché 90 gramos debajo del impeller / cachamos 210 g en la charola / en la charola había 125 g, los recuperé
    charola 80 g de vuelta / bandeja de goteo: 55 g / bandeja pesada, 175 g recogidos, bote 3
    recogida la bandeja, 240 gramos / bajo las placas recogimos 300 g / debajo de las tapas se juntaron 65 g, recogidos
    cayeron 115 g en la cubeta y los rescaté / rescaté 50 g del escurrido del rodete
    rescatados ciento veinte gramos de la valvula 2 / a las 11:20 recogí 135 g de goteo
    acabo de recoger 190 g de debajo de la brida / ya recuperé el escurrido, 260 g
    menos mal, casi medio kilo recuperado de la bandeja / ok del goteo saque 105 g para filtrar otra vez
    recoji 40 g del goteo / che, junté 88 g de lo que escurrió
  `,
};
