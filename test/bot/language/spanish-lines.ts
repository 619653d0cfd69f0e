// Lines as a Spanish thumb types them: with accents and without, Spain's words and Mexico's, both languages on one line.
// Invented; common practice and our own choice, no source.

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
const happened = { stance: { is: 'happened' } as const };
const happenedAt = (iso: string) => ({ at: utc(iso), ...happened });

const mix2400: Command = { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } };
const air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const weighed: Command = { verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) };
const sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };

export const spanishLines: readonly ThumbTypedLine[] = [
  act('mezclar 2,4kg', mix2400),
  act('Mezcla 2,4 kilos', mix2400),
  act('mezcla2,4kg', mix2400),
  act('mezclar 2,4kg build 24ºC', {
    ...{ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } },
    ...{ sheet: 'demo-build', air: { celsius: celsius(24) } },
  }),
  act('mezclar 2,4kg en 5 litros', {
    verb: 'mix',
    amount: { kind: 'mass', grams: grams(2400) },
    vesselLitres: litres(5),
  }),
  act('pesar 1 1201g 1198g', weighed),
  act('Pesé mezcla 1 A 1201g B 1198g', weighed),
  act('pesar 1 parte A 1201g parte B 1198g a las 9:40', weighed, happenedAt('2026-03-02T09:40')),
  act('pesar 1 a 1201g de la lata 3', { verb: 'weigh', batch: 1, partAGrams: grams(1201), cans: [3] }),
  act('añadir 1 b 14 gramos', { verb: 'add', batch: 1, component: 'part-b', grams: grams(14) }),
  act('agitar 1', { verb: 'stir', batch: 1 }),
  act('agitando la mezcla 1 hace 10 min', { verb: 'stir', batch: 1 }, happenedAt('2026-03-02T09:50')),
  act('parar agitador 1 ya', { verb: 'stop', batch: 1 }, happened),
  act('parar 1 hace media hora', { verb: 'stop', batch: 1 }, happenedAt('2026-03-02T09:30')),
  act('filtré 1 hace un cuarto de hora', { verb: 'filter', batch: 1 }, happenedAt('2026-03-02T09:45')),
  act('filtrar mezcla1', { verb: 'filter', batch: 1 }),
  act('gelificada 2', { verb: 'gel', batch: 2 }),
  act('vaciar 1 sobran 200g', { verb: 'empty', batch: 1, leftGrams: grams(200) }),
  act('tapar 1', { verb: 'cover', batch: 1 }),
  act('abrir lata A lote 7731 5kg caduca 2026-12 nitrógeno', {
    ...{ verb: 'open', component: 'part-a', lot: '7731', grams: grams(5000) },
    ...{ expires: '2026-12-31', handling: 'gas' },
  }),
  act('destapar lata 3', { verb: 'lid', can: 3 }),
  act('inertizar lata 3', { verb: 'blanket', can: 3 }),
  act('desechar lata 3 gelificada en el bote', { verb: 'discard', can: 3, why: 'gelificada en el bote' }),
  act('pieza rodete-2 serie 4411 orden 88 acero inoxidable pared 12mm 0,8 m2 máx 120 grados C', {
    ...{ verb: 'part', part: 'rodete-2' },
    details: {
      ...{ serial: '4411', job: '88', metal: 'stainless', wallMillimetres: 12, areaSquareMetres: 0.8 },
      ...{ highestCelsius: 120 },
    } as Extract<Command, { verb: 'part' }>['details'],
  }),
  act('aplicar impeller-7 1 pistola', sprayed),
  act('pistola impeller-7 mezcla 1', sprayed),
  act('pintada impeller-7 con pistola de la mezcla 1 a las 9:40', sprayed, happenedAt('2026-03-02T09:40')),
  act('aplicar capa a impeller-7 1 inmersión', { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'dip' }),
  act('capa impeller-7 y valve-3 1 brocha', {
    verb: 'coat',
    parts: ['impeller-7', 'valve-3'],
    batch: 1,
    method: 'brush',
  }),
  act('aplicar impeller-7 1 pistola retoque', { ...sprayed, pass: 'same-coat' }),
  act('seca la pieza impeller-7 al tacto', { verb: 'dry', parts: ['impeller-7'] }),
  act('curar impeller-7 horno 90C', {
    ...{ verb: 'cure', parts: ['impeller-7'] },
    way: { kind: 'oven', setCelsius: celsius(90) },
  }),
  act('curar impeller-7 en sala', { verb: 'cure', parts: ['impeller-7'], way: { kind: 'room' } }),
  act('sonda impeller-7 88 °C', { verb: 'temp', part: 'impeller-7', celsius: celsius(88) }),
  act('puerta impeller-7 5 minutos', { verb: 'door', parts: ['impeller-7'], openMinutes: minutes(5) }),
  act('sacar impeller-7 del horno', { verb: 'out', parts: ['impeller-7'] }),
  act('película húmeda impeller-7 60 65 58 micras', {
    ...{ verb: 'wet', part: 'impeller-7' },
    wetFilmMicrometres: [60, 65, 58].map(micrometres),
  }),
  act('espesor impeller-7 12 14 13um', {
    ...{ verb: 'film', part: 'impeller-7' },
    dryFilmMicrometres: [12, 14, 13].map(micrometres),
  }),
  act('liberar impeller-7', { verb: 'release', parts: ['impeller-7'] }),
  act('retener impeller-7 por piel de naranja', { verb: 'hold', parts: ['impeller-7'], why: 'piel de naranja' }),
  act('frotes impeller-7 50 nada', { verb: 'rub', part: 'impeller-7', doubleRubs: 50, result: 'no-effect' }),
  act('aire 24C 48%', air24),
  act('Aire 24 grados C y 48 % de humedad', air24),
  act('aire 24C 48% en cabina', { ...air24, place: 'booth' }),
  act('aire 24C 48% cabina-2', { ...air24, place: 'booth-2' }),
  act('superficie 22,5C', { verb: 'surface', celsius: celsius(22.5) }),
  act('noche 16C', { verb: 'night', lowestCelsius: celsius(16) }),
  act('enterado', { verb: 'ok' }),
  act('aplazar 5min', { verb: 'snooze', minutes: minutes(5) }),
  act('turno entra', { verb: 'shift', on: true }),
  act('relevo a kari', { verb: 'handover', to: 'kari' }),
  act('tomar relevo', { verb: 'takeover' }),
  act('deshacer', { verb: 'undo' }),
  act('corregir 1 pesar 1201g 1189g báscula equivocada', {
    ...{ verb: 'amend', of: { verb: 'weigh', batch: 1 } },
    ...{ change: { partAGrams: grams(1201), partBGrams: grams(1189) }, why: 'báscula equivocada' },
  }),
  act('aplicar impeller-7 1 pistola permiso lo vio la encargada', sprayed, {
    stance: { is: 'permitted', why: 'lo vio la encargada' },
  }),
  act('stir 1 hace 10 min', { verb: 'stir', batch: 1 }, happenedAt('2026-03-02T09:50')),
  act('coat impeller-7 mezcla 1 pistola ayer a las 16:00', sprayed, happenedAt('2026-03-01T16:00')),
  act('charla 1 en cabina pintan kari y omar fuera lia vigila rosa', {
    ...{ verb: 'brief', batch: 1, place: 'booth', sprayers: ['kari', 'omar'] },
    ...{ out: ['lia'], attendant: 'rosa' },
  }),
  act('leída', { verb: 'ack' }),
  act('extracción sí 0,6 m/s', { verb: 'fan', running: true, faceMetresPerSecond: metresPerSecond(0.6) }),
  act('extracción no', { verb: 'fan', running: false }),
  act('extractor encendido sin medir', { verb: 'fan', running: true }),
  act('aire suministrado sí', { verb: 'supplied', supplied: true }),
  act('empezar pistola', { verb: 'spray-on' }),
  act('parar pistola', { verb: 'spray-off' }),
  act('lavar pistola alcohol isopropílico 300ml', {
    ...{ verb: 'flush', gear: 'gun', solvent: 'isopropyl-alcohol' },
    litres: litres(0.3),
  }),
  act('usado acetona 500ml limpieza pistola', {
    ...{ verb: 'used', material: 'acetone', amount: { kind: 'volume', litres: litres(0.5) }, use: 'gun-cleaning' },
  }),
  act('¡fuego junto a la cabina!', { verb: 'fire', note: 'junto a la cabina' }),
  act('anónimo casi accidente manguera en el paso', {
    verb: 'near-miss',
    text: 'manguera en el paso',
    anonymous: true,
  }),
  act('fijar límite-aire 3h', { verb: 'set', setting: { name: 'air-limit', minutes: minutes(180) } }),
  act('fijar zona madrid', { verb: 'set', setting: { name: 'zone', zone: 'Europe/Madrid' } }),
  act('fijar puesto kari encargada', {
    verb: 'set',
    setting: { name: 'role', given: [{ person: 'kari', role: 'lead' }] },
  }),
  act('fijar cuadrilla Nave dos', { verb: 'set', setting: { name: 'crew', crewName: 'Nave dos' } }),
  act('fijar idioma español', { verb: 'set', setting: { name: 'language', language: 'es' } }),
  act('fijar avisos directo', { verb: 'set', setting: { name: 'rings', rings: 'direct' } }),
  act('fijar unidades métricas', { verb: 'set', setting: { name: 'units', units: 'metric' } }),
  act('fijar cabina 4m2', {
    verb: 'set',
    setting: { name: 'booth', place: 'booth', faceSquareMetres: squareMetres(4) },
  }),
  act('fijar límite-cov 300kg/mes', {
    verb: 'set',
    setting: { name: 'voc-limit', grams: grams(300_000), per: 'month' },
  }),
  ask('día ayer', { ask: 'day', day: { kind: 'yesterday' } }),
  ask('resumen', { ask: 'day', day: { kind: 'today' } }),
  ask('ahora', { ask: 'now' }),
  ask('ayuda pesar', { ask: 'help', verb: 'weigh' }),
  ask('¿mezclar?', { ask: 'help', verb: 'mix' }),
  ask('semana pasada', { ask: 'week', span: { kind: 'week', which: 'last' } }),
  ask('rastrear lote 7731', { ask: 'trace', of: { lot: '7731' } }),
  ask('rastrear mezcla 1', { ask: 'trace', of: { batch: 1 } }),
  ask('hoja de ruta impeller-7', { ask: 'traveller', of: { part: 'impeller-7' } }),
  ask('buscar cliente Astilleros del Norte', { ask: 'find', key: 'customer', value: 'Astilleros del Norte' }),
  ask('planear 6x0,8m2 pistola 12um', {
    ...{ ask: 'plan', parts: [{ count: 6, eachSquareMetres: squareMetres(0.8) }], method: 'spray' },
    dryFilmMicrometres: micrometres(12),
  }),
  ask('peligros inmersión', { ask: 'hazards', work: 'dip' }),
  // What must be asked, in either language.
  miss('mezclar 2,4', 'unit-missing', '2,4', 'mezclar 2,4kg'),
  miss('pesar 1 1,201g 1198g', 'ambiguous-number', '1,201g', 'pesar 1 1201g 1198g'),
  miss('mzeclar 2,4kg', 'unknown-verb', 'mzeclar', 'mezclar 2,4kg'),
  miss('aplicar impeller-7 1 pistola?', 'left-over', '?', 'aplicar impeller-7 1 pistola'),
  miss('parar 1 hace 10', 'unit-missing', '10', 'parar 1 hace 10min'),
  miss('agitar 1 a las 14:00', 'in-the-future', '14:00', 'agitar 1 a las 14:00 ayer'),
  // Four in the afternoon is still to come; four in the morning would have been recorded.
  miss('agitar 1 a las 4 de la tarde', 'in-the-future', '4'),
  miss('parar 1 no', 'left-over', 'no'),
];
