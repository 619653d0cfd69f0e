// How Spanish speakers say it: card, traveller, export, now, handover, find, papers, set units us, set units metric, set language es, set language en, set rings direct, undo, help. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfRequests2: Sayings<SaidMeaning> = {
  card: `
    muéstrame la 7 / muéstrame la tapa / muéstrame la mezcla 1 / muéstrame el bote 2 / muéstrame cómo va la 8
    muéstrame el pot 1 / enséñame la tapa / enséñame la mezcla 2 / enséñame el bote 1 / enséñame la ficha de la voluta
    enséñame cómo va la brida / déjame ver la 7 / déjame ver la mezcla 1 / déjame ver el pot / quiero ver la tapa
    quiero ver la mezcla 2 / tarjeta de la 7 / tarjeta de la tapa / tarjeta de la mezcla 1 / tarjeta del bote 2
    tarjeta 7 / tarjeta mezcla 1 / ficha de la 8 / ficha de la mezcla 2 / ficha del bote 1 / ficha pieza 9
    la ficha de la voluta por favor / la tarjeta de la brida por favor / abre la 7 / abre la mezcla 1
    abre la ficha de la tapa / abre la tarjeta del pot 2 / card 7 / card la tapa / card del batch 1 / card mezcla 2
    show la 7 / show me the card de la tapa / show me batch 1 / show batch 2 / pull up la 8 / pull up el batch 3
    open la card de la voluta / ver la 7 / ver la tapa / ver el bote 1 / ver cómo va la carcasa
    ver en qué va la brida / ponme la 7 / ponme la tapa / ponme la mezcla 1 / ponme el pot 2 en pantalla / sácame la 8
    sácame la ficha de la tapa / sácame la tarjeta de la mezcla 2 / pásame la ficha de la 7
    pásame la tarjeta del bote 1 / dame la tarjeta de la 8 / dame la ficha de la mezcla 1
    dame los datos de la mezcla 2 / cómo va la 7, muéstrala / estado de la tapa / estado de la mezcla 1
    estado del bote 2 / todo de la 7 / todo de la mezcla 1 / lo de la 8 / lo de la mezcla 2, a ver
  `,
  traveller: `
    hoja de ruta de la tapa / hoja de ruta de la 7 por favor / hoja de ruta de la carcasa en pdf / hoja viajera de la 8
    hoja viajera de la brida / hoja de viaje de la voluta / hoja de proceso de la tapa / hoja de la 7
    hoja de la tapa para el cliente / hoja de la voluta para imprimir / la hoja de la brida, por favor
    la hoja de la 5 que se va / imprime la hoja de la 7 / imprime la hoja viajera / imprime la hoja de la tapa
    imprime el traveller de la 8 / imprímeme la hoja de la carcasa / imprímela, la hoja de la voluta
    mándame la hoja de la brida / mándame el traveler de la 7 / mándame el traveller de la tapa
    mándale al cliente la hoja de la 8 / envía la hoja de la carcasa / envíame el traveler de la voluta
    traveller de la 7 / traveller la tapa / traveler de la 8 / traveler de la brida / traveller 7 / traveler tapa
    print traveller la 7 / print traveler 8 / print the traveller / give me the traveller de la tapa
    I need the traveler de la carcasa / send me the traveller la voluta / need the traveler la brida
    el traveler de la 5 please / el traveller de la 6 en papel / necesito la hoja de ruta de la 7
    necesito la hoja de la tapa / necesito la hoja viajera de la 8 / necesito el papel de la carcasa
    necesito los papeles de la voluta para el envío / el cliente pide la hoja de la brida
    el cliente quiere el traveler de la 5 / el inspector pide la hoja de la 6 / el chofer pide la hoja de la tapa
    dame la hoja de ruta de la 8 / dame el traveller de la carcasa / sácame la hoja de ruta de la voluta
    hazme la hoja de la brida / genera la hoja de ruta de la 5 / genérame el traveler de la 6
    prepara la hoja de la tapa
  `,
  export: `
    exporta el día / exporta hoy / exporta la semana pasada / exporta el mes / exporta el año / exporta todo a csv
    exporta a excel / exporta en pdf / exporta los registros / exporta el registro / exporta lo de ayer
    exporta desde el lunes / exporta del 1 al 31 / exporta enero / exporta el trimestre / expórtame la semana
    expórtame el mes / expórtame ayer / expórtalo / export / export all / export today / export week / export the month
    export last week / export to csv / export to excel / export pdf / export everything / dame un export
    dame el export de la semana / necesito un export / haz un export del mes / download the log / download la semana
    mándame el csv / mándame el excel / mándame el csv de hoy / mándame el registro del día
    mándame el registro del mes / pásame el csv / pásame el csv de la semana / pásame el excel de ayer
    pásame el registro en excel / dame el csv del mes / dame el excel de la semana / dame el registro en pdf
    sácame el excel / sácame el registro del mes / sácame el reporte en csv / descarga el registro / descarga la semana
    descarga todo / descárgame el mes / baja el registro / bájame la semana / bájame el csv / saca los datos del mes
    saca la semana en excel / saca el registro en pdf / genera el csv / genera el reporte mensual
    genera el registro de la semana en pdf / necesito el csv / necesito el excel del mes
    necesito los datos de la semana / el contador pide el excel / el auditor pide los registros en csv
    respaldo del mes en csv / copia del registro en excel / archivo csv de la semana / archivo de hoy
    hoja de cálculo del mes
  `,
  now: `
    qué corre / qué corre ahora / qué está corriendo ahora / qué hay corriendo ahora / qué hay vivo / qué hay activo
    qué hay andando / qué hay en proceso / qué hay abierto / qué hay ahorita / qué tenemos activo
    qué tenemos corriendo / qué tenemos en proceso / qué tenemos en marcha / cómo va todo / cómo vamos
    cómo está el taller / cómo anda todo / cómo va la cosa / cómo está todo ahorita / cómo estamos / estado
    estado de todo / estado actual / estado del taller / estatus / estatus general / estatus de todo / situación
    situación del taller / panorama / panorama general / vista general / resumen de lo que corre / lo que corre
    lo que está corriendo / todo lo vivo / now / right now / what's going on / what's on / what's live / what's active
    what's in process / status now / shop status / board / show the board / the board please / enséñame el tablero
    muéstrame el tablero / muéstrame todo / muéstrame lo que hay / muéstrame lo que está en marcha
    muéstrame los relojes / ponme el panorama / dame el estado / dame el estatus / dame todos los relojes / relojes
    los relojes / qué relojes corren / qué relojes hay corriendo / todos los tiempos / los tiempos que corren
    acabo de entrar, cómo está todo / acabo de llegar, qué hay corriendo
  `,
  handover: `
    entrego turno / entrego / entrego el turno a Lia / entregamos turno / entrega de turno por favor
    entrega del turno a Omar / paso turno / paso el turno a Lia / pasamos el turno / le paso el turno a Kari
    le entrego a Omar / les entrego el turno / ahí les dejo el turno / dejo el turno / dejo el turno a Lia
    me voy, dejo el turno / relevo / relevo a Omar / relevo con Lia / hago relevo / hacemos relevo / hacer relevo
    hacer el cambio de turno / cambio de turno ya / cambiamos de turno / toca cambio de turno / ya es cambio de turno
    vamos a relevar / me relevan / me releva Omar / viene el relevo / llegó el relevo / llegó mi relevo, entrego
    handover ya / handover please / handover a Lia / handing over / handing over a Omar / hand over / hand off
    hand off a Kari / hand off del turno / shift handover / shift change ya / end of shift, handover
    passing the shift / recibo turno / recibo el turno de Omar / recibimos el turno / tomo el turno
    tomo el turno de Lia / me hago cargo del turno / entro de turno / entro yo / quedo a cargo del turno
    prepara la entrega / prepara el relevo / nota de entrega de turno / hoja de entrega de turno
    pendientes para el que entra / qué le dejo al otro turno, relevo
  `,
  find: `
    busca la serie 4411 / busca el trabajo 94 / busca el pedido 1210 / busca la pieza 4412 / busca el número 5520
    busca todo del job 88 / busca la válvula del cliente / busca lote 4480 / buscar 4411 / buscar serie 5077
    buscar trabajo 60 / buscar job 33 / búscame la 4411 / búscame el job 94 / búscame el trabajo 60
    búscame el lote 7750 / búscame lo del pedido 61 / encuentra la serie 5520 / encuentra el trabajo 41
    encuentra la pieza con serie 881 / encuéntrame el job 33 / encuéntrame la serie B771 / encuéntrame lo del lote 4471
    localízame la serie 3012 / localiza el trabajo 72 / localízame el pedido 12 / ubícame la serie 909
    ubica el trabajo 17 / rastrea la serie 4411 / rastréame el lote 7745 / consulta la serie 5521
    consulta el trabajo 88 / find serie 4411 / find lot 4471 / find job 94 / find serial 5077 / find part 4412
    find me el job 33 / look up job 88 / look up serial 881 / look for lot 7750 / search 4411 / search job 60
    search serial B771 / search lot 909 / looking for serial 3012 / looking for job 41 / lookup 5520
    qué hay del trabajo 94 / qué hay de la serie 4411 / qué hay del lote 4480 / qué tenemos del trabajo 60
    qué tenemos del lote 7750 / qué tienes del job 33 / qué tienes de la serie 881 / tienes la serie 5077
    tienes algo del trabajo 41 / hay algo del pedido 1210 / existe la serie 3012 / existe el trabajo 72
    aparece la serie 909 / sale algo con 4411 / mira la serie 5521 / mira el trabajo 17 / revisa la serie 4412
    revisa el job 94 / checa la serie 881 / checa el job 60 / checa el lote 4471 / a ver la serie 4411
    a ver el trabajo 88 / dame lo del trabajo 94 / dame lo de la serie 5077 / dame lo del lote 7745
    lista el trabajo 60 / lista las piezas del job 33
  `,
  papers: `
    papeles / los papeles / los papeles del producto / papeles por favor / papeles de la A / papeles de la B
    papeles del fabricante por favor / qué papeles tenemos / qué papeles hay del producto / dame los papeles
    dame los papeles del fabricante / muéstrame los papeles / pásame los papeles / ábreme los papeles
    abre los papeles / quiero ver los papeles / necesito los papeles del producto / lista los papeles
    hoja de seguridad / hoja de seguridad de la A / hoja de seguridad de la acetona / hoja de seguridad por favor
    la hoja de datos de seguridad / hojas de datos / la hoja técnica / hoja técnica de la B / la hoja técnica en pdf
    la ficha técnica por favor / ficha técnica de la A / ficha de seguridad / ficha de seguridad de la B
    fichas técnicas / fichas del fabricante / las fichas del producto / la ficha del fabricante / SDS / SDS de la A
    SDS please / la SDS de la B / MSDS / msds de la acetona / TDS / tds de la A / la TDS please / data sheet de la A
    data sheets / safety sheet / safety data sheet please / product papers / papers please / show me the papers
    open the papers / open the SDS / list papers / where's the SDS / I need the SDS / I need the data sheet
    manual del producto / el manual / el manual del fabricante / instructivo del fabricante
    instrucciones del fabricante / instrucciones del producto / boletín técnico / el boletín del producto
    documentos del fabricante / documentos del producto / documentación / documentación del producto
    documentación técnica / dame la documentación / muéstrame la documentación / muéstrame la hoja de seguridad
    muéstrame la ficha técnica / pásame la hoja de seguridad / pásame la ficha de seguridad / pásame la hoja técnica
    ábreme la hoja de seguridad / abre la ficha técnica / mándame la ficha técnica / mándame la hoja de seguridad
    el inspector pide los papeles del fabricante / el inspector pide la hoja técnica / necesito la hoja de seguridad
    necesito la ficha técnica / tienes la hoja de seguridad / tienes la ficha técnica / dónde están los papeles
  `,
  'set units us': `
    libras / libras por favor / en libras / ponme libras / ponme todo en libras / ponlo en libras / pásalo a libras
    cámbialo a libras / cambia a libras / cámbiame a libras / quiero libras / quiero verlo en libras / prefiero libras
    uso libras / trabajo en libras / a mí en libras / muéstrame libras / dámelo en libras / mejor libras
    fahrenheit por favor / en fahrenheit / ponme fahrenheit por favor / ponlo en fahrenheit / pásalo a fahrenheit
    cámbialo a fahrenheit / cámbiame a fahrenheit / quiero fahrenheit / quiero ver fahrenheit / uso fahrenheit
    trabajo en fahrenheit / a mí en fahrenheit / muéstrame fahrenheit / mejor fahrenheit / grados fahrenheit por favor
    no le entiendo a los celsius, ponme fahrenheit / unidades americanas / unidades americanas por favor
    ponme unidades americanas / cambia a unidades americanas / unidades inglesas / unidades imperiales
    sistema americano / sistema americano por favor / sistema imperial por favor / medidas gringas / medidas imperiales
    ponme en medidas gringas / pásame al sistema americano / set units us / set us units / US units / US units please
    switch to pounds / switch to fahrenheit / pounds please / in pounds / in fahrenheit please / give me pounds
    show me pounds / give me F / show F / mils y libras / onzas y fahrenheit / onzas por favor / en onzas
    en pulgadas y libras / en mils y fahrenheit / yo soy de libras / aquí usamos libras
    acá en Houston usamos libras, ponme así
  `,
  'set units metric': `
    kilos / kilos por favor / en kilos / ponme kilos / ponme todo en kilos / ponlo en kilos / pásalo a kilos
    cámbialo a kilos / cambia a kilos / cámbiame a kilos / quiero kilos / quiero verlo en kilos / uso kilos
    trabajo en kilos / muéstrame kilos / dámelo en kilos / mejor kilos / gramos por favor / en gramos / ponme gramos
    pásalo a gramos / quiero gramos / uso gramos / mejor gramos / celsius por favor / en celsius / ponme celsius
    ponlo en celsius / pásalo a celsius / cámbialo a celsius / cámbiame a celsius / quiero celsius / uso celsius
    mejor celsius / muéstrame celsius / centígrados / centígrados por favor / en centígrados / ponme centígrados
    pásalo a centígrados / quiero centígrados / uso centígrados / grados centígrados por favor
    no le entiendo a los fahrenheit, ponme centígrados / métrico por favor / sistema métrico
    sistema métrico por favor / ponme el sistema métrico / ponme en métrico / pásame al métrico / cambia a métrico
    cámbiame a métrico / quiero métrico / uso métrico / unidades métricas por favor / ponme unidades métricas
    cambia a unidades métricas / medidas métricas / set units metric / set metric / metric / metric please
    metric units / switch to kilos / switch to celsius / kilos please / in kilos / in celsius / in metric
    give me kilos / show me kilos / show C / micras y kilos / micras por favor / en micras y gramos
    litros y kilos por favor / yo soy de kilos / aquí usamos kilos / en España usamos kilos, ponme así
  `,
  'set language es': `
    en español por favor / en español porfa / ponlo en español por favor / ponme español / ponme en español
    pásame a español / pásalo al español / cámbialo a español / cámbiame a español / cambia al español
    cambia a español por favor / quiero español / quiero todo en español / prefiero español / prefiero en español
    mejor español / mejor en español / háblame español / habla en español / hablemos en español / contéstame español
    contesta en español / respóndeme en español por favor / responde en español / escríbeme en español
    dime en español / dímelo en español por favor / mándame todo en español / muéstrame en español
    muéstramelo en español / avísame en español por favor / los avisos en español / las campanas en español
    las tarjetas en español por favor / todo en español / todo en español por favor / idioma español por favor
    lengua española / castellano / en castellano por favor / ponlo en castellano / cambia a castellano
    háblame en castellano / spanish / spanish por favor / in spanish / in spanish please / switch to spanish
    set language spanish / set language es / set spanish / change to spanish / speak spanish / talk to me in spanish
    no english, español / no sé inglés / no sé inglés, ponme español / no entiendo el inglés / no le entiendo al inglés
    no leo inglés, español / no hablo inglés, en español / yo hablo español / yo solo hablo español
    mi lengua es el español / soy de habla hispana, en español
  `,
  'set language en': `
    inglés / en inglés por favor / en inglés porfa / ponlo en inglés por favor / ponme inglés / ponme en inglés
    pásame al inglés / pásalo al inglés / cámbialo a inglés / cámbiame a inglés / cambia al inglés
    cambia a inglés por favor / quiero todo en inglés / quiero verlo en inglés / prefiero en inglés / mejor inglés
    háblame inglés / habla en inglés / contesta en inglés / responde en inglés / escríbeme en inglés / dime en inglés
    mándame todo en inglés / muéstrame en inglés / muéstramelo en inglés / los avisos en inglés
    las tarjetas en inglés por favor / todo en inglés / todo en inglés por favor / idioma inglés por favor / en english
    en english please / ponlo en english / english por favor / english only / in english / switch to english please
    set language english / set language en / set english / change to english / change language to english
    speak english please / talk to me in english / I want english / no español, english / no sé español
    no entiendo el español / no leo español, inglés / no hablo español / yo solo hablo inglés / mi lengua es el inglés
    el jefe lee en inglés, ponlo así / pon inglés para el supervisor
  `,
  'set rings direct': `
    avisos en privado / avisos directos / avisos por privado / avisos por mensaje directo / los avisos directo a mí
    los avisos a mi privado / los avisos solo a mí / los avisos por DM / avísame en privado / avísame directo
    avísame por mensaje directo / avísame a mí directo / avísame por interno / avísame solo a mí / avísame aparte
    campanas en privado / campanas por privado / campanas a mi DM / las campanas por mensaje directo
    las campanas a mí directo / las campanas solo a mí / las campanas por DM / mis campanas directo
    mis campanas por mensaje directo / mis campanas en privado / que las campanas me lleguen en privado
    que me lleguen por privado / que me lleguen directo / que suene en mi privado / suéname directo
    alarmas en privado / alarmas por DM / alarmas directas / las alarmas directo a mí / las alarmas en privado
    mis alarmas por privado / mis alarmas por DM / notificaciones por privado / notificaciones directas
    mis notificaciones directo / mis notificaciones por DM / timbres en privado / timbres directos / los timbres por DM
    mis timbres por privado / mándame las campanas por privado / mándame las alarmas en privado
    mándame los timbres directo / mándame los avisos directo / mándame mis avisos por DM
    mándamelo por privado cuando suene / mándame mensaje directo cuando suene / set rings direct / rings direct please
    my rings by DM / send my rings direct / direct rings / ring me direct / ring me by DM / DM me the bells
    bells by DM / bells direct / bells to my DM / alerts by DM / direct message me / DM me when it rings
    ping me directo / pinguéame por privado / no me avises en el grupo, en privado / no en el canal, en privado
    no en el hilo, mándame directo / fuera del grupo mis avisos / prefiero avisos directos / prefiero avisos en privado
    quiero campanas directas / quiero mis avisos por privado / quiero que me avises directo
    cambia mis avisos a privado / cambia mis campanas a directo / pon mis avisos en privado
    ponme las campanas directo
  `,
  undo: `
    bórralo por favor / borra lo último / borra lo que puse / borra lo anterior / borra ese registro / borra esa línea
    borra la anterior / borra eso último / bórrame eso / bórrame lo último / bórrame la última / borrar
    borrar lo último / borrar eso / bórrenlo / quítalo / quítame eso / quita eso / quita ese registro
    quita la anterior / quita lo anterior / quitar lo último / quita eso último / quítalo de ahí / deshaz / deshazlo
    deshaz eso / deshaz la última / deshaz lo anterior / deshacer lo último / deshacer por favor / deshace
    deshace eso / anula / anúlalo / anula la última / anula ese registro / anula el último / anular / anular lo último
    cancela / cancélalo / cancela lo anterior / cancela ese / cancela la última / cancelar / cancelar lo último
    revertir / revertir lo último / reviértelo / elimina / elimina eso / elimina lo anterior / elimina la última
    eliminar / suprime eso / suprime lo último / undo ya / undo that / undo please / undo it / undo last
    undo lo último / delete / delete that / delete last / delete lo último / erase that / erase it / cancel that
    cancel it / take that back / take back lo último / remove that / remove lo último / scratch it / scratch eso
    strike that / nevermind eso, bórralo / oops undo / oops, quita eso / my bad, bórralo / my bad undo
    no era, bórralo / no era ese, quítalo / no iba, bórralo / no va eso / no va, quítalo / no vale, bórralo
    no cuenta, quítalo / no debí poner eso, bórralo / puse mal, bórralo / puse eso por error, quítalo
    lo mandé por error, bórralo / lo mandé sin querer, quítalo / le piqué sin querer, deshaz / le piqué mal, bórralo
    toqué el botón sin querer, deshaz / apreté sin querer, quítalo / me equivoqué, bórralo / me equivoqué, deshaz
    me equivoqué de botón, deshaz / fue error, quítalo / fue un error, deshaz / error, bórralo / error, quita eso
    la regué, bórralo / la regué, quítalo / la cagué, quita eso / chin, bórralo / ay, bórralo / uy, quita eso
    perdón, borra eso / perdón, deshaz / disculpa, bórralo / eso no pasó, bórralo / eso no fue, quítalo
    eso nunca pasó, bórralo / no registres eso / no lo registres / no lo guardes / no guardes eso / regresa / regrésalo
    regresa uno / échalo pa tras / échale reversa / reversa / dale para atrás / dale atrás / vuelve a como estaba
    déjalo como estaba / ponlo como estaba
  `,
  help: `
    ayuda por favor / ayuda, no sé qué poner / ayúdame por favor / ayúdame con esto / me ayudas / me puedes ayudar
    necesito ayuda / necesito ayuda con esto / ocupo ayuda / auxilio con el bot / help por favor / help me
    help please / help con el bot / how do I use this / how does this work / what can I say / what can you do
    what do I type / commands / command list / show commands / cómo funciona esto / cómo funcionas / cómo se usa el bot
    cómo te uso / cómo le hago / cómo le hago para registrar / cómo le digo que ya pinté / cómo le digo que ya mezclé
    cómo se apunta una pieza / cómo se apunta / cómo se registra / cómo registro una mezcla / cómo registro una lata
    cómo anoto una pieza / cómo anoto el aire / cómo escribo las cosas / cómo te escribo / cómo se pone una mezcla
    cómo meto una pieza / qué puedo escribir / qué puedo decir / qué puedo poner / qué te digo / qué te puedo pedir
    qué te puedo preguntar / qué haces / qué sabes hacer tú / qué entiendes / qué comandos tienes / qué comandos uso
    qué palabras entiendes / qué opciones hay / opciones / comandos / los comandos / menú por favor / el menú
    instrucciones / instrucciones del bot / guía / guía de uso / manual del bot / tutorial / no sé usarlo
    no sé usar el bot / no sé cómo se usa / no sé cómo escribirte / no entiendo cómo se usa / no le sé a esto
    no le hallo a esto / soy nuevo en esto / soy nueva en esto, ayuda / es la primera vez que lo uso
  `,
};
