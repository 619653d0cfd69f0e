// Lines as a Spanish thumb types what it would say: first person, articles in between, the half of the day in words, Mexico's
// words and Spain's. Invented; common practice and our own choice, no source.

import type { MisreadCode } from '../../../bot/language/reading.ts';
import type { Command, Question } from '../../../core/commands.ts';
import {
  celsius,
  grams,
  litres,
  metresPerSecond,
  micrometres,
  minutes,
  percent,
  squareMetres,
} from '../../../core/units.ts';
import { utc } from './shop-at-ten.ts';
import type { ThumbTypedLine } from './thumb-typed-lines.ts';

const act = (line: string, command: Command, manner: object = {}): ThumbTypedLine => ({
  line,
  expected: { kind: 'command', command, ...manner },
});
const ask = (line: string, question: Question): ThumbTypedLine => ({ line, expected: { kind: 'question', question } });
const miss = (line: string, code: MisreadCode, token: string, offers?: string): ThumbTypedLine => ({
  line,
  expected: { kind: 'misread', code, token, ...(offers !== undefined && { offers }) },
});
const happenedAt = (iso: string) => ({ at: utc(iso), stance: { is: 'happened' } as const });

const mix2400: Command = { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } };
const air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };
const oven90: Command = { verb: 'cure', parts: ['impeller-7'], way: { kind: 'oven', setCelsius: celsius(90) } };
const filtered: Command = { verb: 'filter', batch: 1 };

export const spanishSpokenLines: readonly ThumbTypedLine[] = [
  act('mezclo 2,4kg', mix2400),
  act('mezcla nueva 2,4 kg', mix2400),
  act('hacer una mezcla de 2,4kg', mix2400),
  act('la mezcla 2,4kg', mix2400),
  act('vacié la 1 quedaron 200g', { verb: 'empty', batch: 1, leftGrams: grams(200) }),
  act('echo 14g de b', { verb: 'add', component: 'part-b', grams: grams(14) }),
  act('agrego 14 g de B', { verb: 'add', component: 'part-b', grams: grams(14) }),
  act('agitador en marcha 1', { verb: 'stir', batch: 1 }),
  act('prender el agitador', { verb: 'stir' }),
  act('revolver 1', { verb: 'stir', batch: 1 }),
  act('agitador parado', { verb: 'stop' }),
  act('apago el agitador', { verb: 'stop' }),
  // In Mexico to strain is colar; colada alone is a way to coat and is asked about.
  act('colar 1', filtered),
  act('tamizado 1', filtered),
  miss('colada 1', 'incomplete', ''),
  act('está espesa', { verb: 'thick' }),
  act('se cuajó la 1', { verb: 'gel', batch: 1 }),
  act('tirar la mezcla 1', { verb: 'empty', batch: 1 }),
  act('tirar lata 3 gelificada', { verb: 'discard', can: 3, why: 'gelificada' }),
  // Which of the two is thrown away is for the speaker to say.
  miss('tirar 1 espesa', 'unknown-verb', 'tirar', 'desechar 1 espesa'),
  // Put on, or taken off?
  miss('tapa 3', 'unknown-verb', 'tapa', 'tapar 3'),
  act('lata destapada 3', { verb: 'lid', can: 3 }),
  act('quito la tapa 3', { verb: 'lid', can: 3 }),
  act('gas puesto a la 3', { verb: 'blanket', can: 3 }),
  act('nitrógeno puesto 3', { verb: 'blanket', can: 3 }),
  act('agitando la lata 3', { verb: 'prestir', can: 3 }),
  act('abro A lote 7731 5kg caduca 12-2026 nitrogeno', {
    ...{ verb: 'open', component: 'part-a', lot: '7731', grams: grams(5000) },
    ...{ expires: '2026-12-31', handling: 'gas' },
  }),
  // When.
  act('filtrado 1 a las 9,40', filtered, happenedAt('2026-03-02T09:40')),
  act('filtrado 1 a las 9.40 h', filtered, happenedAt('2026-03-02T09:40')),
  act('filtrado 1 a las 9:40 hrs', filtered, happenedAt('2026-03-02T09:40')),
  act('filtrado 1 a las 9 h', filtered, happenedAt('2026-03-02T09:00')),
  act('filtrado 1 a la 1:30', filtered, happenedAt('2026-03-02T01:30')),
  act('filtrado 1 a las 9 de la mañana', filtered, happenedAt('2026-03-02T09:00')),
  act('filtrado 1 ayer a las 4 de la tarde', filtered, happenedAt('2026-03-01T16:00')),
  act('filtrado 1 ayer a las 4:15 de la tarde', filtered, happenedAt('2026-03-01T16:15')),
  act('filtrado 1 ayer a las 11 de la noche', filtered, happenedAt('2026-03-01T23:00')),
  act('filtrado 1 ayer a las 16:00 h de la tarde', filtered, happenedAt('2026-03-01T16:00')),
  act('filtrado 1 ayer a las 12 del mediodía', filtered, happenedAt('2026-03-01T12:00')),
  miss('filtrado 1 ayer a las 9 de la madrugada', 'impossible', '9'),
  act('filtrado 1 hace diez minutos', filtered, happenedAt('2026-03-02T09:50')),
  act('filtrado 1 10 min atrás', filtered, happenedAt('2026-03-02T09:50')),
  act('filtrado 1 hace tres cuartos de hora', filtered, happenedAt('2026-03-02T09:15')),
  act('filtrado 1 ayer a mediodía', filtered, happenedAt('2026-03-01T12:00')),
  // Parts. Nothing that rounds a sentence off becomes the name of a part.
  act('capa final impeller-7 1 pistola', sprayed),
  act('otra mano impeller-7 1 pistola', sprayed),
  miss('aplicar todo 1 pistola', 'left-over', 'todo'),
  miss('pinté eso 1 pistola', 'left-over', 'eso'),
  miss('coat hub impeller-7 1 spray', 'left-over', 'hub'),
  // What it reads is not what it bears.
  miss('pieza impeller-7 a 88C', 'left-over', '88C', 'sonda impeller-7 a 88C'),
  act('capa dada impeller-7 1 pistola', sprayed),
  act('doy una capa a impeller-7 1 pistola', sprayed),
  act('segunda capa impeller-7 1 pistola', sprayed),
  act('pinto impeller-7 1 airless', sprayed),
  act('aplico impeller-7 1 por vertido', { ...sprayed, method: 'flow' }),
  act('retocar impeller-7 1 pistola', { ...sprayed, pass: 'same-coat' }),
  act('retoque impeller-7 1 con pistola', { ...sprayed, pass: 'same-coat' }),
  act('ya está seca impeller-7', { verb: 'dry', parts: ['impeller-7'] }, { stance: { is: 'happened' } }),
  act('al horno impeller-7 90C', oven90),
  act('meto al horno impeller-7 90C', oven90),
  act('horno impeller-7 90C', oven90),
  act('curar impeller-7 a temperatura ambiente', { verb: 'cure', parts: ['impeller-7'], way: { kind: 'room' } }),
  act('pieza marca 88C', { verb: 'temp', celsius: celsius(88) }),
  act('abro la puerta del horno', { verb: 'door', parts: [] }),
  act('saco impeller-7', { verb: 'out', parts: ['impeller-7'] }),
  act('espesor húmedo impeller-7 60 65 micras', {
    ...{ verb: 'wet', part: 'impeller-7' },
    wetFilmMicrometres: [60, 65].map(micrometres),
  }),
  act('frotes MEK impeller-7 50 sin efecto', {
    ...{ verb: 'rub', part: 'impeller-7', doubleRubs: 50 },
    result: 'no-effect',
  }),
  act('bloquear impeller-7 burbujas', { verb: 'hold', parts: ['impeller-7'], why: 'burbujas' }),
  act('arenada impeller-7 sa2.5', { verb: 'prep', parts: ['impeller-7'], grade: 'sa2.5' }),
  act('pieza rodete-2 acero inox', { verb: 'part', part: 'rodete-2', details: { metal: 'stainless' } }),
  act('pieza rodete-2 fundición gris', { verb: 'part', part: 'rodete-2', details: { metal: 'grey-iron' } }),
  // The air.
  act('el aire 24C hr 48%', air24),
  act('24ºC y 48% de humedad', air24),
  act('mínima de la noche 16C', { verb: 'night', lowestCelsius: celsius(16) }),
  act('chapa 19C', { verb: 'surface', celsius: celsius(19) }),
  miss('aire 24 grados 48%', 'unit-missing', '24 grados', 'aire 24C 48%'),
  // People and a session.
  act('entro de turno', { verb: 'shift', on: true }),
  act('fin de turno', { verb: 'shift', on: false }),
  act('doy el relevo a kari', { verb: 'handover', to: 'kari' }),
  act('tomo el relevo', { verb: 'takeover' }),
  act('pospongo 10 min', { verb: 'snooze', minutes: minutes(10) }),
  act('charla 1 cabina pinta kari', { verb: 'brief', batch: 1, place: 'booth', sprayers: ['kari'] }),
  act('he leído', { verb: 'ack' }),
  act('extractor en marcha 0,6 m/s', { verb: 'fan', running: true, faceMetresPerSecond: metresPerSecond(0.6) }),
  act('apagué el extractor', { verb: 'fan', running: false }),
  act('prender extractor 0.6 m/s', { verb: 'fan', running: true, faceMetresPerSecond: metresPerSecond(0.6) }),
  act('sin extracción', { verb: 'fan', running: false }),
  act('sin aire suministrado', { verb: 'supplied', supplied: false }),
  act('empiezo a pintar', { verb: 'spray-on' }),
  act('parar la pistola', { verb: 'spray-off' }),
  act('dejo de pintar', { verb: 'spray-off' }),
  act('limpiar la pistola con acetona 300 ml', { verb: 'flush', gear: 'gun', solvent: 'acetone', litres: litres(0.3) }),
  act('recipientes lavados', { verb: 'flush', gear: 'vessels' }),
  act('trapos y filtros en su bote', { verb: 'rags' }),
  act('cerrar la sesión', { verb: 'close' }),
  act('usada acetona 500ml para limpiar la pistola', {
    ...{ verb: 'used', material: 'acetone', amount: { kind: 'volume', litres: litres(0.5) }, use: 'gun-cleaning' },
  }),
  act('prueba de ajuste kari 2026-05-01', { verb: 'fit', person: 'kari', until: '2026-05-01' }),
  act('reconocimiento médico kari 2026-09-30', { verb: 'medical', person: 'kari', until: '2026-09-30' }),
  act('prueba de avisos', { verb: 'bell' }),
  act('borrar', { verb: 'undo' }),
  // In need: no slip away from an alarm, and no coat on a part called suelo.
  miss('hoy', 'unknown-verb', 'hoy'),
  act('vertido en el suelo', { verb: 'spill', note: 'el suelo' }),
  act('se desmayó kari', { verb: 'down', note: 'kari' }),
  act('humo en la cabina', { verb: 'fire', note: 'en la cabina' }),
  miss('me salpicó en los ojos', 'unknown-verb', 'me', 'ojos'),
  miss('hay fuego', 'unknown-verb', 'hay', 'fuego'),
  miss('cabina 24C 48%', 'unknown-verb', 'cabina'),
  // Settings.
  act('poner ficha demo-build', { verb: 'set', setting: { name: 'sheet', sheet: 'demo-build' } }),
  act('fijar límite del aire 3 horas', { verb: 'set', setting: { name: 'air-limit', minutes: minutes(180) } }),
  act('fijar charla sí', { verb: 'set', setting: { name: 'brief', on: true } }),
  act('fijar silencio de 22 a 6', { verb: 'set', setting: { name: 'quiet', fromHour: 22, toHour: 6 } }),
  act('fijar teléfono 112', { verb: 'set', setting: { name: 'emergency', field: 'call', text: '112' } }),
  // Questions.
  ask('reporte de la semana', { ask: 'week', span: { kind: 'week', which: 'this' } }),
  ask('ayuda con la mezcla', { ask: 'help', verb: 'mix' }),
  ask('el día', { ask: 'day', day: { kind: 'today' } }),
  ask('resumen del día', { ask: 'day', day: { kind: 'today' } }),
  ask('la semana pasada', { ask: 'week', span: { kind: 'week', which: 'last' } }),
  ask('trazabilidad impeller-7', { ask: 'trace', of: { part: 'impeller-7' } }),
  ask('plan 6 piezas de 0,8m2 pistola para las 13:00', {
    ...{ ask: 'plan', parts: [{ count: 6, eachSquareMetres: squareMetres(0.8) }], method: 'spray' },
    readyAt: utc('2026-03-02T13:00'),
  }),
  ask('ayuda parar la pistola', { ask: 'help', verb: 'spray-off' }),
  // What is offered comes in the language of the line.
  miss('curar impeller-7', 'incomplete', '', 'curar impeller-7 horno'),
  miss('aplicar impeller-7 1', 'incomplete', '', 'aplicar impeller-7 1 vertido'),
  miss('turno', 'incomplete', '', 'turno entra'),
];
