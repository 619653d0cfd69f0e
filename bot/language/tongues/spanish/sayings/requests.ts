// How Spanish speakers say it: card, traveller, export, now, handover, find, papers, set units us, set units metric, set language es, set language en, set rings direct, undo, help, greeting. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfRequests: Sayings<SaidMeaning> = {
  card: `
    ponme delante cómo va la mezcla 1 / enséñame la 7 / muéstrame todo lo del impeller 3 / a ver la ficha del batch 2
    abre la tarjeta de la 8 / dame todo de la válvula 2 / saca la tarjeta del pot 1 / cómo va la bracket-8, enséñamela
    quiero ver el batch 1 / card de la 4 / show me la 5 / ábreme el batch 3 / pásame la info completa de la carcasa
    ver pieza 9 / ver mezcla 2 / deja veo la 10 / déjame ver cómo está la 6 / tráeme la ficha del flange
    muestra el pot 2 / todo sobre la placa 4 / el estado completo de la rail-03 / en qué va la 11, ponla aquí
    ponme la 12 en pantalla / que salga la mezcla de la mañana / enseñame en que paso anda el batch 1
    a ver qué tenemos de la housing / status de la valve 4 / estado del batch 2 porfa / la tarjeta de la 1
    quiero la tarjeta del tres / muestrame la valvula completa / mostrame la 7 che / abrime la mezcla 2
    lo que haya de la 8 / cuéntame todo de la mezcla 3 / échame la card del impeller / dame chance de ver el batch 4
    otra vez la ficha de la 5 / vuelve a poner el batch 1 / la 2, todo
    quiero ver lo que hay de la 6 / déjame echarle un ojo a la 4 / échale un ojo a la mezcla 2 y enséñamela
    dame los datos de la 9 / los detalles de la mezcla 1 / ponme los detalles de la 7 / saca la ficha de la 3
    saca la ficha del lote 2 / échame la ficha de la mezcla 3 / pásame la ficha de la válvula / quiero ver la 8
    quiero ver cómo va la carcasa / enséñame por dónde va la mezcla 1 / ponme delante la 5
    súbeme a pantalla la mezcla 2 / el historial de la 9 / pásame el historial de la brida
    todo lo que tengas de la mezcla 1 / a ver la 6 / a ver el bote de mezcla 2
  `,
  traveller: `
    mándame la hoja de ruta / imprime la hoja de ruta de la 7 / necesito el traveller del impeller 3
    sácame la hoja viajera de la válvula 2 / pásame la hoja de ruta de la 8 en papel / print el traveler de la bracket-8
    dame el traveler pa la 4 / manda el traveller de la carcasa / hoja de ruta del flange
    la hoja que va con la pieza 9 / hazme la hoja de proceso de la 5 / el cliente quiere la hoja de ruta de la 10
    ocupo el papel de la 11 pa mandarlo con el truck / imprímeme el seguimiento de la placa 4
    envíame el documento de la 6 / traveler 12 / traveller rail-03 / saca el papel que acompaña a la 1
    quiero imprimir lo de la valve 4 / necesito la hoja de acompañamiento de la bomba
    genera la hoja viajera del serial 4411 / prepárame la hoja de ruta para el inspector / la route sheet de la housing
    mándame el route sheet de la 3 / sácale su hoja a la 8 / mandame la hoja de la pieza al correo
    la hoja de fabricación de la 7, porfa / una copia de la hoja de ruta de la 2 / hoja viajera?
    pasame el traveller en pdf de la 5 / me hace falta la hoja de ruta antes de que salga el camión
    la pieza se va, dame su hoja / imprimí la hoja de la válvula / che mandame la hoja de ruta del impeller
    bájame el traveler de la 9 / quiero el traveler firmado de la 4 / dame el expediente de la 10 para imprimir
    los papeles que van con la carcasa, imprímelos / hoja de ruta ya / mándale a Bea el traveler de la 6
    imprímeme el papel de ruta de la 4 / el papel de ruta de la carcasa / imprime el papel que va con la 7
    ya viene el camión, sácame la hoja de la 9 / la documentación de la pieza 8 para el cliente
    prepara los papeles de la 3 para el envío / el cliente pide el papel de la brida
    hazme la hoja de ruta de la válvula
  `,
  export: `
    exporta la semana / mándame el registro en csv / sácame un csv del mes / dame el pdf de esta semana
    exporta marzo a csv / necesito todo lo de febrero en excel / el registro de la semana pasada en pdf
    bájame los datos del mes / export de la semana porfa / export csv / pásame los datos en una hoja de cálculo
    quiero el excel del mes pasado / la contable pide el registro del trimestre / el auditor quiere el pdf del mes
    saca el registro entero de enero / vuelca la semana a un archivo / descarga los datos de los últimos 7 días
    manda el record del mes en pdf / ocupo el reporte mensual en csv / genera el fichero de esta semana
    hazme un archivo con lo de la semana / un listado en csv del lunes al viernes / todo el registro desde el día 1
    dump de la semana / dame el log del mes / imprime el registro de la semana en pdf / sacar datos de abril / exportar
    exportame todo che / exporta del 1 al 15 / el pdf del cliente con lo de este mes / necesito bajar lo de mayo
    csv de ayer a hoy / me mandas el historial del mes en archivo / quiero los datos crudos de la semana
    pásale a Bea el csv de la semana / el registro completo en formato tabla
    reporte de la semana en pdf, lo pide oficina / archivo del mes pasado / extrae el registro de junio
    exporta todo / expórtame todo / exporta / pásame lo de este mes en csv / lo de hoy en un csv
    mándame todo en un archivo / sácame todo a un fichero / necesito el registro de ayer
    necesito la semana en csv para la oficina / me pasas el mes en una hoja de cálculo / todo lo de la semana en un csv
  `,
  now: `
    que esta corriendo / qué hay en marcha / muéstrame lo que corre / como vamos ahora / qué tenemos andando
    enséñame todo lo que está vivo / que relojes hay / a ver todos los relojes / qué está pasando ahora / what's running
    qué hay ahora mismo / ahora / el tablero / ponme el tablero / como esta todo / dame el panorama
    cómo anda el taller / estado general / status / status de todo / vista rápida / qué mezclas y piezas hay en curso
    qué está en proceso / lo que esta activo / que traemos corriendo ahorita / en qué estamos
    que onda ahorita con todo / qué hay abierto en este momento / enséñame cómo está la cosa / todo lo que corre, a ver
    lo que haya en curso / qué se está cociendo / acabo de volver, qué hay en marcha
    llego ahora, ponme al día de lo que corre / mostrame qué hay andando / qué está en marcha che / que tenemos vivo
    una foto de cómo está todo ahora / situación actual / dime que corre
    enséñame todo lo que hay en marcha / todo lo que está en marcha / ponme al día de lo que hay en marcha
    qué traemos en marcha / cómo va todo el taller / dame un vistazo de todo / todos los relojes que corren
    qué hay corriendo
  `,
  handover: `
    paso el turno / entrego el turno a Kari / hago el relevo / relevo de turno / cambio de turno
    le dejo el turno a Omar / les dejo el changarro / handover / hago handover a Jo / shift change / toma el turno Ola
    me voy, se queda Inés con todo / entrega de turno / prepara la entrega del turno / ya acabo mi turno, que siga Kari
    te paso el testigo, Ola / dejo el relevo hecho / el turno de noche se hace cargo / entregamos a los de la tarde
    traspaso el turno / doy el relevo / quiero entregar el turno / vamos a hacer el cambio de turno
    hand over al turno de la noche / pásale el turno a Jo / nos vamos, entra el segundo turno
    ahí se los dejo muchachos, entrego / saca la hoja de relevo / parte de relevo / les entrego la cabina
    entro yo de turno, recibo de Omar / me quedo yo con el turno / recibo el turno / listo el relevo con los de noche
    acá dejo el turno che / entrego guardia / cerramos y entregamos al siguiente / shift handover porfa
    resumen para el que entra, hago relevo / termino, el turno es de Kari ahora
  `,
  find: `
    busca la 4411 / búscame el serial 5520 / encuentra el job 88 / busca el lote 7731 / buscar lote B-220 / find 4411
    find job 90 / a ver si tienes la serie 4412 / mírame el serial 3907 / tienes algo del job 77? / localiza el lote 220
    encuéntrame la pieza con serie 61-A / busca todo lo del pedido 1203 / búscame qué pieza es la 4411
    quiero encontrar el job de los rieles / dame lo que salga con 7731 / que hay con ese numero, 5520
    checa el serial 4410 / revisa si existe el job 93 / saca lo del lote viejo 118
    un cliente llamó por la serie 8802, búscala / look up el 4411 / looking for lote A-31 / búsqueda: 4413
    busca impeller / busca entre las piezas la que acaba en 11 / qué aparece con job 88 / hay algo registrado como 6600
    buscame en el registro la serie 712 / rastrea el número 4420 en el sistema / consulta el serial 9001
    consulta lote 55-C / te suena la serie 4499 / fijate si está el serial 4411 / buscá el job 88
    encuentra ese lote, el 9920 / dame el resultado de buscar 3310 / pásame lo que haya del trabajo 101
    filtra por job 88 / teclea 4411 a ver qué sale
    búscame la serie 17 en los registros / mira a ver qué hay del lote 22 / mira si hay algo del trabajo 40
    búscame el trabajo 61 / búscame el pedido 9 / enséñame lo que hay del lote 505 / qué tenemos de la serie 88
    qué tenemos del pedido 31 / las piezas del trabajo 12, sácalas / lista lo del lote 73
    checa en los registros la serie 640
  `,
  papers: `
    que papeles hay / enséñame los papeles / lista de papeles / papeles del fabricante / dame la hoja técnica
    ábreme la ficha técnica / dónde está la hoja de seguridad / pásame la SDS / la msds porfa
    quiero ver la ficha de seguridad / los papers / show papers / documentos / qué documentos tenemos del producto
    muestra la documentación / la hoja del producto en pdf / data sheet / pásame el data sheet / necesito el tds
    ficha técnica del producto / manda los papeles del fabricante / tienes el papel de la B?
    el inspector quiere ver la hoja de seguridad / saca los documentos del fabricante / lista documentos
    qué fichas hay / mándame las instrucciones del fabricante / quiero leer el papel / abrir papeles
    hojas de seguridad / enseñame los docs / manuales que haya / el folleto técnico / mostrame las fichas che
    los pdf del producto / qué hojas técnicas tenemos / papeleo del producto / ver papeles / ocupo el safety data sheet
    la documentación de la A y la B
    tráeme las hojas de seguridad / tráeme la ficha técnica / dame la hoja de seguridad / las hojas técnicas por favor
    imprime la lista de papeles / tienes a mano la hoja de seguridad / enséñame la hoja del fabricante
    búscame la ficha de seguridad
  `,
  'set units us': `
    ponme libras y fahrenheit / quiero unidades americanas / cambia a fahrenheit / pásame a libras / en libras porfa
    units us / ponlo en pounds / unidades gringas / usa pulgadas y libras / háblame en fahrenheit / a mí en F
    los grados en farenheit / mejor en onzas y libras / set unidades us / prefiero lbs / pon sistema inglés
    sistema imperial / cambia mis unidades a imperial / yo trabajo en libras / dame todo en mils y F
    enséñame los pesos en pounds / quita los celsius, ponme F / no uso kilos, ponme libras
    cámbiame los kilos por libras / las temperaturas en F para mí / de métrico a americano / pies cuadrados y libras
    quiero verlo en square feet / switch a us units / ponme en unidades de acá de Texas / unidades de estados unidos
    medidas americanas / en medidas inglesas / libras en vez de kilos / fahrenheit en lugar de centigrados
    mis unidades: libras / que me salga en F / pasalo a imperial che / modo us / galones y libras porfa
    a mí dámelo en libras / dámelo todo en fahrenheit / ponme todo en libras y fahrenheit / mejor en libras
    mejor ponme fahrenheit / prefiero fahrenheit
    pásame a fahrenheit / dame fahrenheit / fahrenheit porfa / pon todo en fahrenheit
  `,
  'set units metric': `
    ponme kilos y grados / unidades métricas / quiero sistema métrico / pásame a celsius / cambia a gramos
    en kilos porfa / háblame en centígrados / ponlo en C / mejor en gramos / units metric / métrico / usa el métrico
    set unidades métrico / quita las libras / quita los fahrenheit / no entiendo las libras, ponme kilos
    a mí en celsius / los pesos en gramos / temperaturas en centígrados / prefiero metros y kilos / vuelve a métrico
    regrésame a kilos / pon las micras en vez de mils / metros cuadrados en vez de pies / yo trabajo en gramos
    switch a metric / mis unidades en métrico / que me salga en kilos / dame todo en grados C
    cámbialo a sistema internacional / SI, por favor, el sistema de unidades / unidades europeas
    medidas de aquí, métricas / grados normales, celsius / de libras a kilos / kilos en vez de libras
    pasame a metrico che / modo métrico / muéstrame litros y kilos / para mí gramos y celsius
    a mí dámelo en kilos / dámelo todo en centígrados / ponme todo en kilos y centígrados / mejor en kilos
    mejor ponme centígrados / prefiero los grados celsius
    pásame a kilos / dame celsius / celsius porfa / pon todo en celsius
  `,
  'set language es': `
    en español / habla español / háblame en español / ponlo en español / cambia a español / cambia el idioma a español
    idioma español / castellano porfa / en castellano / pónmelo en castellano / spanish please / español por favor
    contéstame en español / no hablo inglés / no entiendo inglés, en español / quiero que me hables en español
    set idioma español / language spanish / mi idioma es español / pasa al español / switch to español / a mí en español
    yo español / respondeme en español / mensajes en español / avísame en español / las tarjetas en español
    puedes hablar español / hablas español? ponlo así / en cristiano, que no sé inglés / traduce todo al español
    dímelo en español / quita el inglés / dejalo en español / vuelve al español / regresa a español
    hablame en castellano che / todo en español de aquí en adelante / en mi idioma, español / español
  `,
  'set language en': `
    en inglés / habla inglés / ponlo en inglés / cambia a inglés / idioma inglés / cambia mi idioma a inglés
    english please / english / in english porfa / contéstame en inglés / háblame en inglés / quiero inglés
    pásame a inglés / set idioma inglés / language english / switch to english / mejor en inglés / prefiero inglés
    a mí en inglés / quita el español / mensajes en inglés / las tarjetas en inglés / las campanas en inglés
    avísame en inglés / vuelve al inglés / regresa a english / mi idioma es inglés / respóndeme en inglés
    yo hablo inglés / no entiendo español, en inglés / todo en inglés de ahora en adelante / dejalo en inglés
    pónmelo en inglés que lo lea el cliente / dímelo en inglés / modo inglés / inglés por favor / hablame en ingles che
    mostrámelo en inglés / speak english / pasa todo al inglés
  `,
  'set rings direct': `
    mándame los avisos en privado / los avisos a mí directo / mis campanas por privado
    quiero los avisos por mensaje directo / avísame a mí solo / avísame por DM / rings direct / mis rings por dm
    ponme los avisos en directo / que me lleguen a mí los timbres / suéname a mí en privado
    no me menciones en el canal, escríbeme directo / mándame las alarmas al privado / las alarmas a mi chat
    prefiero que me escribas en privado cuando suene / escríbeme a mí cuando toque / avísame por privado
    pásame mis campanas aparte / que las campanas me lleguen directas / set avisos directo / campanas directas
    notificaciones en privado / quiero notificaciones directas / mis notificaciones por mensaje privado
    mejor por interno / por interno los avisos / tírame las alarmas al inbox / los bells a mi inbox
    dame los bells en direct message / cámbiame los avisos a directo / no en el hilo, a mí personalmente
    no quiero verlos en el grupo, mándamelos a mí / avisos personales para mí / hablame al privado cuando suene algo
    timbres a mi privado / mandame los avisos por privado che / haz que mis avisos vengan por DM
    en el grupo no, en privado / quiero mis recordatorios uno a uno / directo a mí los avisos
    los avisos mándamelos por privado / las alarmas solo a mí por privado
    los timbres por mensaje privado / que los avisos me lleguen solo a mí
    las campanas por interno
  `,
  undo: `
    borra eso / deshaz lo último / quita lo que acabo de poner / eso no, bórralo / me equivoqué, quítalo / bórralo
    deshacer / undo / undo eso / echa pa tras lo último / olvida lo último
    cancela eso / cancela lo último / anula eso / anula lo anterior / retira lo que apunté / no era eso, deshazlo
    quita la última / quítale lo último / quita eso porfa la regué / la cagué, bórralo / me colé, quita eso
    perdón, borra lo de recién / borrá eso / deshacé lo último / tachalo / táchalo / tacha lo último / elimina lo último
    elimina esa entrada / elimínalo / no no no, quítalo / ups, fuera eso / ay no, quita eso / scratch that / delete eso
    take it back / cancel lo último / borra la última línea / borra el último registro
    borra mi último mensaje / no lo apuntes / no lo guardes, fue un error / fue sin querer, quítalo
    le di sin querer, deshaz / se me fue el dedo, borra / con los guantes le di mal, quítalo / error mío, anúlalo
    eso estaba mal, fuera / eso fue un error, bórralo / da marcha atrás / marcha atrás / un paso atrás / vuelve atrás
    regrésate uno / regresa lo que hice / revierte / revierte lo último / lo de antes no vale, quítalo
    eso no cuenta, bórralo / hazte cuenta que no dije nada / como si no lo hubiera dicho / sácalo del registro
    saca lo último que metí / ctrl z / lo que acabo de decir, bórralo / reculo, quita eso / dictado mal, borra eso
    lo último no va / retráctalo
    tumba esa última línea / quita eso que lo puse sin querer / lo puse sin querer, bórralo / bórrale
    bórrale que no fue / nel, bórrale / quita lo último / eso no iba, quítalo / se me fue el dedo, borra eso
    olvida lo que dije / haz como que no dije nada / le di sin querer, quítalo / échalo para atrás
    hablé antes de tiempo / hablé demasiado pronto, quítalo / me adelanté, bórralo / me adelanté, quítalo
    lo dije antes de tiempo, quita eso / al final no, bórralo / resulta que no, quítalo / pues no está, bórralo
    échale para atrás a eso / mandé eso sin querer, quítalo
  `,
  help: `
    ayuda / ayúdame / help / cómo se usa esto / qué puedo decirte / que sabes hacer / qué comandos hay
    cómo te digo las cosas / no sé qué poner / no se usar esto / soy nuevo, cómo funciona / qué te escribo
    explícame cómo va esto / echame la mano, no le entiendo al bot / enséñame los comandos / lista de comandos
    qué opciones tengo / instrucciones de uso / cómo apunto una mezcla / cómo te digo que pinté una pieza
    con qué palabras se registra un bote / menú / ayuda porfa / necesito ayuda con el bot / cómo va este chisme
    cómo le hago pa apuntar / que puedo preguntarte / pa qué sirves / para qué más sirve esto / che cómo se usa el bot
    help me no le sé
    no sé qué escribir / no sé qué escribir, ayúdame / cómo te hablo
    enséñame qué puedo escribir / qué tengo que escribir aquí / es mi primera vez con esto, qué pongo
    no le entiendo a esta cosa, ayuda / dame una lista de lo que puedo decir
  `,
  greeting: `
    hola / buenas / buenos días / buen día / buenas tardes / buenas noches / hola bot / qué tal / qué onda / qué hubo
    quiubo / qué pasa / hey / ey / epa / holaa / hola equipo / buenos días a todos / buenas gente / muy buenas
    hola buenos dias ☀️ / hi / hello / gracias / muchas gracias / mil gracias / gracias bot / gracias crack / grax / thx
    ty / te lo agradezco / se agradece / gracias máquina / gracias jefe / adiós / hasta mañana / hasta luego / nos vemos
    chao / bye / cuídense / de nada / 👋 / 🙏 / saludos / qué lo que / cómo andan todos / todo bien che?
  `,
};
