// What a Spanish speaker types for each row, besides the English words; with accents or without. The first word is the one printed.

import { done, type VerbsTyped, verbWords } from '../typed.ts';
import { alarmsNamed, alarmsToEnd } from './alarms-named.ts';
import { spanishAskedVerbs } from './asked-verbs.ts';
import { begins, ends, monitorWords } from './begun-and-ended.ts';
import { spanishFilmVerbs, spanishJobWords, spanishWaterWords } from './film-verbs.ts';
import { spanishFirstShiftVerbs } from './first-shift.ts';
import { spanishHoldVerbs } from './hold-verbs.ts';
import { spanishReminderVerbs } from './reminders.ts';

export const spanishVerbs: VerbsTyped = {
  mix: verbWords(
    'mezclar, mezcla, mezclado, mezclada, mezclando, mezclé, mezclo, mezclamos, mezcla nueva, nueva mezcla, hacer mezcla, hago mezcla, preparar mezcla, empezar mezcla, abrir mezcla',
    'mezclar 2,4kg',
    'aire, hr, hum, relativa, temperatura, leer',
  ),
  weigh: verbWords(
    'pesar, pesa, peso, pesado, pesada, pesé, pesos, pesadas, pesados, pesamos, pesaje',
    'pesar 1 1201g 1198g',
  ),
  drawn: verbWords('tomada, tomado, viene de, vino de', 'tomada 1 A lata 2', 'parte'),
  stir: done(
    'agitador en marcha',
    verbWords(
      `agitar, agitado, agitando, ${begins('agitar', 'agitación', 'agitado')}, remover, removido, removida, remuevo, agité, agito, agitamos, batir, batido, revolver, revolviendo, agitador marcha, arrancar agitador, arranco agitador, arranca agitador, arranque agitador, arranca, arranque, encender agitador, enciendo agitador, prender agitador, prendo agitador, revuelvo, revolví, bato, batí`,
      'agitar 1',
    ),
  ),
  stop: done(
    'agitador parado',
    verbWords(
      `parar, ${ends('agitar', 'agitación', 'agitado')}, para, pare, alto, parado, parada, paré, detener, parar agitador, paro, paramos, detenido, agitador parado, paro agitador, para agitador, detener agitador, apagar agitador, apago agitador, apagado agitador`,
      'parar 1',
    ),
  ),
  filter: verbWords(
    'filtrar, filtra, filtrado, filtrada, filtro, filtré, filtramos, colar, colado, cuelo, tamizar, tamizado, está filtrada',
    'filtrar 1',
    'filtro, limpio',
    { no: 'sin' },
  ),
  thick: verbWords(
    'espesa, espeso, espesando, espesado, espesó, se espesa, se espesó, ha espesado, está espesa, está espeso',
    'espesa 1',
  ),
  gel: verbWords(
    'gelificada, gelificado, cuajada, cuajado, se gelifica, gelificó, se gelificó, está gelificada, gelada, se geló, ha gelado, ha gelificado, ha cuajado, ha endurecido, cuajó, se cuajó, endurecida, endurecido, se endureció',
    'gelificada 1',
  ),
  empty: verbWords(
    'vaciar, vacía, vacío, vaciado, vaciada, vacié, vaciamos, tirar mezcla, tiro mezcla, tirada mezcla, tirar resto, tiro resto',
    'vaciar 1 200g',
    'quedaron',
  ),
  judge: verbWords('juzgar, juzgada, juzgado, rejuzgar', 'juzgar 12', 'mezcla, de, new'),
  add: verbWords(
    'añadir, añade, añadido, agregar, agrega, agregado, sumar, añado, añadí, añadimos, agrego, agregué, agregamos, echar, echo, eché, echado',
    'añadir 1 b 14g',
  ),
  cover: done('tapada', verbWords('tapar, tapada, tapado, tapo, tapé, tapamos', 'tapar 1')),
  uncover: done('destapada', verbWords('destapar, destapada, destapado, destapo, destapé', 'destapar 1')),
  catch: verbWords(
    'recoger, recogido, recogida, recuperar, recuperado, escurrido, recojo, recogí, recogidos, recogidas, recupero, escurridos',
    'recoger 12 300g',
  ),
  open: verbWords('abrir, abierta, abierto, abrí, abro, abrimos, abiertas', 'abrir A lote 7731 5kg cad 2026-12 gas'),
  received: verbWords(
    'recibidas, recibida, recibidos, recibir, recibí, recibimos, llegaron',
    'recibidas 4 x 5kg A lote 7731 cad 2026-12',
    'x, parte, lata, latas, bote, botes, cada, una, can, cans',
  ),
  lid: verbWords(
    'destapar lata, lata destapada, destapada lata, destapo lata, destapé lata, lata abierta, quitar tapa, quito tapa, sin tapa',
    'destapar lata 3 gas',
  ),
  shut: verbWords(
    'tapar lata, lata tapada, tapada lata, tapo lata, tapé lata, lata cerrada, cerrar lata, poner tapa, pongo tapa',
    'tapar lata 3 gas',
  ),
  blanket: done(
    'gas puesto y tapada',
    verbWords(
      'gas puesto, con gas, poner gas, pongo gas, meter gas, meto gas, nitrógeno puesto, argón puesto, inertizar, inertizada, inertizado',
      'gas puesto 3',
    ),
  ),
  check: verbWords('revisar, revisada, revisado, revisé, reviso, revisamos', 'revisar 3'),
  prestir: done(
    'agitándose en su lata',
    verbWords(
      'agitar lata, agito lata, agitando lata, agitada lata, remover lata, removida lata, removido lata, removido bote, batir lata, revolver lata, preagitar, preagitado, preagitada',
      'agitar lata 3',
    ),
  ),
  discard: verbWords(
    'desechar, desecha, desechada, desechado, desecho, descartar, descartada, tirar lata, tiro lata, tirada lata, tirado bote',
    'desechar 3 gelificada en la lata',
  ),
  papers: verbWords('documentos, papeles, fichas', 'documentos'),
  stock: verbWords('existencias, inventario, latas', 'existencias'),
  plan: verbWords('planear, planificar, calcular', 'planear 6x0,8m2 pistola 12um lista 13:00'),
  prep: verbWords(
    'preparar, preparada, preparado, chorreada, chorreado, granallada, granallado, chorrear, chorro, granallar, arenar, arenada, arenado, sandblast, sandblasteada, sandblasteado, lijada, lijado',
    'preparar impulsor-7 sa2.5 60um',
    'chorreada, chorreado, chorro, granallada, granallado, arenada, arenado, sandblast, vieja',
    { degreased: 'desengrasada desengrasado', off: 'fuera quitado quitada', without: 'sin', ...spanishWaterWords },
  ),
  door: verbWords(
    'puerta, puerta horno, puerta abierta, abrir puerta, abro puerta, abrí puerta, abierta puerta',
    'puerta impulsor-7 5min',
  ),
  adhesion: verbWords('adherencia, cuadrícula, corte enrejado', 'adherencia impulsor-7 5B'),
  rub: verbWords('frotes, frote, frotar', 'frotes impulsor-7 50 nada', 'frotes, sin', { none: 'efecto cambio' }),
  ...spanishReminderVerbs,
  shift: verbWords('turno', 'turno entra'),
  handover: verbWords(
    'relevo, entrega turno, entregar, entregar turno, dar relevo, entrego, entrego turno, entregar relevo, entrego relevo, doy relevo, doy turno, dar turno, pasar turno, paso turno, pasar relevo, paso relevo',
    'relevo kari',
    'relevo, turno',
  ),
  takeover: verbWords(
    'tomar relevo, tomo relevo, tomar turno, recibir turno, tomo turno, recibo turno, recibo relevo, recibir relevo, coger relevo, cojo relevo, cojo turno',
    'tomar relevo',
    'relevo, turno',
  ),
  ...spanishFirstShiftVerbs,
  part: verbWords(
    'pieza, pieza nueva, nueva pieza',
    'pieza impulsor-7 serie 4411 orden 88 fundición 12mm 0,8m2 máx 120C',
    '',
    { at: 'marca', job: 'obra trabajo' },
  ),
  coat: verbWords(
    'aplicar, aplica, aplicada, aplicado, capa, pintar, pintada, pintado, apliqué, pinté, recubrir, recubierta, aplico, aplicamos, aplicadas, aplicados, pinto, pintamos, pintadas, pintados, doy capa, dar capa, dada capa, doy mano, dar mano, primera capa, segunda capa, última capa, capas, recubro, recubiertas, di capa, dimos capa, otra capa, otra mano, primera mano, segunda mano, última mano, di mano, capa final',
    'aplicar impulsor-7 1 brocha',
    'capa, capas, mano, dada, dado, primera, segunda, tercera',
    { flow: 'vertido vertida verter' },
  ),
  dry: done(
    'película seca al tacto',
    verbWords('seca, seco, secas, secado, secos, está seca, está seco, están secas, secó', 'seca impulsor-7'),
  ),
  cure: verbWords(
    'curar, cura, curado, curada, curando, hornear, horneada, curo, horneo, horneado',
    'curar impulsor-7 horno 90C',
    'temperatura',
  ),
  temp: verbWords(
    'sonda, temperatura, temp pieza, marca, pieza marca, termopar, pirómetro, termómetro',
    'sonda impulsor-7 88C',
  ),
  out: done(
    'sale de curado',
    verbWords(
      'sacar, saca, sacada, sacado, fuera, afuera, saqué, salida, saco, sacamos, sacadas, sacados, salió',
      'sacar impulsor-7',
    ),
  ),
  ...spanishFilmVerbs,
  shipped: done('sale del taller', verbWords('entregada, entregado, embarcada, enviada', 'entregada impulsor-7')),
  release: done(
    'pieza liberada',
    verbWords(
      'liberar, libera, liberada, liberado, liberé, libero, liberamos, liberadas, liberados',
      'liberar impulsor-7',
    ),
  ),
  ...spanishHoldVerbs,
  air: verbWords(
    'aire, clima, ambiente, hr, leer aire, lectura aire, temperatura aire, aire leído',
    'aire 24C 48%',
    'aire, hr, hum, relativa, temperatura, leer, bulbo, seco',
  ),
  surface: verbWords(
    'superficie, sustrato, acero, sup, temperatura superficie, temperatura acero, chapa',
    'superficie 22C',
    'temperatura',
  ),
  lel: verbWords('lie', 'lie 12%', monitorWords),
  o2: verbWords('oxígeno', 'oxígeno 20,9%', monitorWords),
  co: verbWords('monóxido, monóxido carbono', 'monóxido 12ppm', monitorWords),
  gases: verbWords('gases, cuatro gases', 'gases oxígeno 20,9% lie 0%', monitorWords),
  h2s: verbWords('sulfhídrico', 'sulfhídrico 2ppm', monitorWords),
  night: verbWords('noche, mínima, mínima noche, anoche, temperatura mínima', 'noche 16C', 'noche'),
  ok: verbWords('enterado, enterada, oído, recibido, entendido, copiado, visto, okey', 'enterado'),
  undo: verbWords(
    'deshacer, deshecho, anular, deshago, deshaz, anulo, anula, borrar, borra, cancelar, cancela',
    'deshacer',
  ),
  amend: verbWords(
    'corregir, corrige, corregido, corrección, corrijo, rectificar, rectifico',
    'corregir 1 pesar 1201g 1189g báscula equivocada',
    '',
    { spot: 'punto' },
  ),
  set: verbWords(
    'fijar, ajustes, configurar, poner, pon, ajustar, cambiar',
    'fijar límite aire 3h',
    'pide, piden, quiere, grado, o, y, rotura, ensayo, menos, mínimo',
    { day: 'dia', breathless: 'ahogo', 'skin-burn': 'piel', ...spanishJobWords },
  ),
  day: verbWords('día, resumen, parte diario, resumen día, reporte', 'día ayer'),
  now: verbWords(
    'ahora, en marcha, corriendo, estado, qué hay, qué corre, estatus, status, qué falta, cuánto falta',
    'ahora',
  ),
  used: verbWords(
    'usado, usada, gastado, gasté, consumido, gastada, gasto, usé, consumida',
    'usado acetona 500ml limpieza pistola',
  ),
  week: verbWords('semana, esta semana, resumen semana, reporte semana', 'semana pasada'),
  month: verbWords('mes, este mes, resumen mes, reporte mes', 'mes'),
  from: verbWords('desde, del', 'desde 2026-03-01 hasta 2026-03-07'),
  card: verbWords('recorrido, tarjeta', 'recorrido impulsor-7', 'de'),
  trace: verbWords('rastrear, rastreo, traza, trazar, historial, trazabilidad, historia', 'rastrear impulsor-7'),
  find: verbWords('buscar, busca, busco, encontrar', 'buscar orden 88'),
  traveller: verbWords('hoja, hoja ruta, hoja viajera, certificado', 'hoja de ruta impulsor-7', 'ruta'),
  export: verbWords('exportar, exporta', 'exportar semana csv'),
  voc: verbWords('cov, emisiones, disolventes, solventes', 'cov mes'),
  verify: verbWords('verificar, comprobar', 'verificar'),
  backup: verbWords('copia, respaldo, respaldar', 'copia viernes.sqlite'),
  keep: verbWords('conservar, conservación', 'conservar'),
  brief: verbWords(
    'charla, plática, charla previa, dar charla, doy charla, dar plática, doy plática',
    'charla 1 en cabina pintan kari fuera lia vigila omar',
  ),
  near: verbWords('cerca', 'cerca lia fuera'),
  ack: verbWords('firmada, firmado, firmo, firmé, leída, leído, acuse, leí, he leído', 'firmada 4'),
  fan: verbWords('extracción, ventilador, extractor, abanico', 'extracción sí 0,6m/s', '', {
    on: 'marcha funciona funcionando jalando',
    off: 'parada parado',
    unmeasured: 'sin medir',
  }),
  supplied: verbWords(
    'suministrado, aire suministrado, aire respirable, aire línea, línea aire',
    'suministrado sí',
    'suministrado',
    { on: 'marcha funciona funcionando jalando', off: 'parada parado' },
  ),
  'from-outside': verbWords('desde-fuera, desde fuera, nadie dentro', 'desde-fuera 4', 'nadie, dentro, fuera, desde'),
  'spray-on': verbWords(
    `${begins('pistola', 'pintar', 'pintado', 'aspersión')}, pistola abierta, arrancar pistola, arranco pistola, abrir pistola, pistola marcha`,
    'empezar pistola 4',
  ),
  'spray-off': verbWords(
    `parar pistola, ${ends('pistola', 'pintar', 'pintado', 'aspersión')}, pistola cerrada, fin pistola, parar pintado, paro pistola, paramos pistola, cerrar pistola, dejar pintar, dejo pintar, dejamos pintar, parar pintar, paro pintar, pistola parada`,
    'parar pistola 4',
  ),
  flush: verbWords(
    'lavar, lavada, lavado, enjuagar, enjuagada, lavé, lavadas, lavados, lavo, lavamos, enjuago, limpiar, limpiar pistola, limpio pistola, limpia pistola, limpiada pistola, limpiar equipo, pistola lavada, pistola limpia',
    'lavar pistola acetona 300ml',
  ),
  rags: verbWords(
    'trapos, trapos dentro, trapos guardados',
    'trapos 4',
    'filtros, cerrado, guardados, recogidos, su, tirados',
  ),
  close: verbWords(
    'cerrar, cerrada, cerrar sesión, cierro, cerrado, cierro sesión, cerrar charla, fin sesión, terminar sesión',
    'cerrar 4',
  ),
  confirm: verbWords(
    'confirmo, confirmar, confirmado, confirmada',
    'confirmo tierra sí',
    'que, está, es, lo, toma, limpio, limpia, líquidos, inflamables, recipientes, fichas, hojas, hoja, datos, seguridad, fds, hds, sds, leídas, leídos, admite, técnica, curar, lavado, tan, puro, como, pide',
    { equipment: 'equipo', 'clean-room': 'sitio', alcohol: 'disolvente solvente' },
  ),
  'breathing-check': verbWords('calidad aire, prueba aire', 'calidad aire oxígeno 20,9% aceite 0,1mg'),
  exposure: verbWords('exposición, muestra personal', 'exposición kari 12ppm acetona 2h', 'medido, medida, durante'),
  exposures: verbWords('exposiciones, quién expuesto, quién respiró', 'exposiciones kari'),
  fit: verbWords('ajuste, prueba ajuste', 'ajuste kari 2026-05-01'),
  medical: verbWords('médico, reconocimiento, reconocimiento médico, examen médico', 'médico kari 2026-09-30'),
  training: verbWords('formación, capacitación, curso', 'formación kari 2027-01-31'),
  assess: verbWords(
    'evaluar, evaluado, evaluada',
    'evaluar demo-clear en cabina sin-aire-suministrado hasta 2027-01-31',
    'hasta',
  ),
  'near-miss': verbWords(
    'casi accidente, casi-accidente, incidente, cuasi accidente, cuasiaccidente',
    'casi accidente manguera en medio del paso',
    '',
    { near: 'casi', miss: 'accidente' },
  ),
  eyes: verbWords('ojos, ojo', 'ojos'),
  spill: verbWords('derrame, derramado, fuga, derramada, derramó, se derramó, vertido en, charco', 'derrame'),
  fire: verbWords('fuego, incendio, llamas, lumbre, arde, ardiendo, humo, se quema, se incendia', 'fuego'),
  down: verbWords('caído, caída, persona caída, desmayado, desmayada, cayó, inconsciente, se desmayó', 'caído'),
  hot: verbWords('mezcla caliente, caliente, se calienta, calienta, está calentando, hierve', 'mezcla caliente'),
  'skin-burn': verbWords('quemadura piel, salpicadura piel', 'quemadura en la piel'),
  breathless: verbWords('ahogo, me ahogo, asfixia, se ahoga', 'ahogo'),
  emergency: verbWords('emergencia, socorro, auxilio', 'emergencia'),
  'no-alarm': verbWords('sin alarma, falsa alarma', 'sin alarma'),
  'alarm-over': verbWords('fin alarma, terminó alarma, acabó alarma', 'fin de alarma', '', alarmsToEnd),
  drill: verbWords('empezar simulacro, empieza simulacro', 'empezar simulacro fuego', '', alarmsNamed),
  purge: verbWords('purgar, purga, barrer', 'purgar lata 3 5L/min', 'argon, nitrogen, left'),
  vent: verbWords('ventilación, cálculo aire', 'ventilación horno 800g 90C'),
  ...spanishAskedVerbs,
};
