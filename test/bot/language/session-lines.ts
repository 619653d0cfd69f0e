// Lines round a spray session and in need, as a thumb types them. Invented.

import type { MisreadCode } from '../../../bot/language/reading.ts';
import type { Command, Question } from '../../../core/commands.ts';
import {
  celsius,
  cubicMetres,
  grams,
  litres,
  litresFromUsFluidOunces,
  metresPerSecond,
  metresPerSecondFromFeetPerMinute,
  minutes,
  percent,
  squareMetres,
} from '../../../core/units.ts';
import { utc } from './shop-at-ten.ts';
import type { ThumbTypedLine } from './thumb-typed-lines.ts';

const happenedAt = (iso: string) => ({ at: utc(iso), stance: { is: 'happened' } as const });
const act = (line: string, command: Command, manner: object = {}): ThumbTypedLine => ({
  line,
  expected: { kind: 'command', command, ...manner },
});
const ask = (line: string, question: Question): ThumbTypedLine => ({ line, expected: { kind: 'question', question } });
const miss = (line: string, code: MisreadCode, token: string, offers?: string): ThumbTypedLine => ({
  line,
  expected: { kind: 'misread', code, token, ...(offers !== undefined && { offers }) },
});
const assessed = { stance: { is: 'permitted', why: 'written assessment VA-2026-3, yard door open' } as const };

export const sessionLines: readonly ThumbTypedLine[] = [
  act('brief', { verb: 'brief' }),
  act('Brief 1 in booth spray Kari and omar', { verb: 'brief', batch: 1, place: 'booth', sprayers: ['kari', 'omar'] }),
  act('brief 1 kari near lia out noor outside rosa 1.2kg an hour', {
    ...{ verb: 'brief', batch: 1, sprayers: ['kari'], stays: ['lia'], out: ['noor'] },
    ...{ attendant: 'rosa', gramsPerHour: grams(1200) },
  }),
  act('brief 13:30', { verb: 'brief', startsAt: utc('2026-03-02T13:30') }),
  act('brief at 13:30 kari', { verb: 'brief', startsAt: utc('2026-03-02T13:30'), sprayers: ['kari'] }),
  act('brief 2pm', { verb: 'brief', startsAt: utc('2026-03-02T14:00') }),
  act('brief at 9:40 kari', { verb: 'brief', sprayers: ['kari'] }, happenedAt('2026-03-02T09:40')),
  act('brief kari inside a tank', { verb: 'brief', sprayers: ['kari'], insideVessel: true }),
  act('brief in tank kari', { verb: 'brief', sprayers: ['kari'], insideVessel: true }),
  act('near lia out', { verb: 'near', people: ['lia'], goes: 'out' }),
  act('near 4 lia and noor moved out', { verb: 'near', session: 4, people: ['lia', 'noor'], goes: 'out' }),
  act('near lia stays', { verb: 'near', people: ['lia'], goes: 'stays' }),
  miss('near lia', 'incomplete', '', 'near lia out'),
  act('ack', { verb: 'ack' }),
  act('ack 4', { verb: 'ack', session: 4 }),
  act('acknowledged lia, noor', { verb: 'ack', people: ['lia', 'noor'] }),
  act('fan on', { verb: 'fan', running: true }),
  act('fan on not measured', { verb: 'fan', running: true }),
  act('extraction no', { verb: 'fan', running: false }),
  act('fan 0.6m/s', { verb: 'fan', running: true, faceMetresPerSecond: metresPerSecond(0.6) }),
  act('fan 4 on 0,6 m/s', { verb: 'fan', session: 4, running: true, faceMetresPerSecond: metresPerSecond(0.6) }),
  act('fan 120 fpm', { verb: 'fan', running: true, faceMetresPerSecond: metresPerSecondFromFeetPerMinute(120) }),
  miss('fan 0.6', 'unit-missing', '0.6', 'fan 0.6m/s'),
  miss('fan 60m/s', 'impossible', '60m/s'),
  miss('fan', 'incomplete', '', 'fan on'),
  act('supplied air yes', { verb: 'supplied', supplied: true }),
  act('supplied no', { verb: 'supplied', supplied: false }),
  act('spray on', { verb: 'spray-on' }),
  act('spray on 4 in booth-2', { verb: 'spray-on', session: 4, place: 'booth-2' }),
  act('spray on permit written assessment VA-2026-3, yard door open', { verb: 'spray-on' }, assessed),
  act('stop spraying', { verb: 'spray-off' }),
  act('spray off 4 10m ago', { verb: 'spray-off', session: 4 }, happenedAt('2026-03-02T09:50')),
  act('flush', { verb: 'flush', gear: 'gun' }),
  act('flushed gun acetone 300ml', { verb: 'flush', gear: 'gun', solvent: 'acetone', litres: litres(0.3) }),
  act('flush 4 ipa 10 fl oz', {
    ...{ verb: 'flush', session: 4, gear: 'gun', solvent: 'isopropyl-alcohol' },
    litres: litresFromUsFluidOunces(10),
  }),
  act('flush vessels', { verb: 'flush', gear: 'vessels' }),
  miss('flush gun water', 'left-over', 'water'),
  act('rags in closed can', { verb: 'rags' }),
  act('close 4', { verb: 'close', session: 4 }),
  act('fit kari 2026-05-01', { verb: 'fit', person: 'kari', until: '2026-05-01' }),
  act('fit test kari until 2026-05', { verb: 'fit', person: 'kari', until: '2026-05-31' }),
  act('medical lia 2026-09-30', { verb: 'medical', person: 'lia', until: '2026-09-30' }),
  act('training kari 2027-01-31', { verb: 'training', person: 'kari', until: '2027-01-31' }),
  miss('fit kari 2026-02-30', 'impossible', '2026-02-30'),
  miss('fit 2026-05-01', 'incomplete', ''),
  act('near miss hose lay across the walkway', {
    ...{ verb: 'near-miss', text: 'hose lay across the walkway', anonymous: false },
  }),
  act('near miss anonymous nobody watched the door', {
    ...{ verb: 'near-miss', text: 'nobody watched the door', anonymous: true },
  }),
  act('anonymous near miss fan was off at 9:40', { verb: 'near-miss', text: 'fan was off at 9:40', anonymous: true }),
  miss('near miss', 'incomplete', ''),
  act('eyes', { verb: 'eyes' }),
  act('EYES!!', { verb: 'eyes' }),
  act('spill 2l acetone by the door', { verb: 'spill', note: '2l acetone by the door' }),
  act('fire in booth at 9', { verb: 'fire', note: 'in booth at 9' }),
  act('man down', { verb: 'down' }),
  act('hot pot 12', { verb: 'hot', note: '12' }),
  act('bell', { verb: 'bell' }),
  act('set brief on', { verb: 'set', setting: { name: 'brief', on: true } }),
  act('set brief-ahead 10min', { verb: 'set', setting: { name: 'brief-ahead', minutes: minutes(10) } }),
  act('set sprayers kari and omar', { verb: 'set', setting: { name: 'sprayers', people: ['kari', 'omar'] } }),
  act('set sprayers nobody', { verb: 'set', setting: { name: 'sprayers', people: [] } }),
  act('set booth booth-2 4m2 30 m3', {
    verb: 'set',
    setting: { name: 'booth', place: 'booth-2', faceSquareMetres: squareMetres(4), cubicMetres: cubicMetres(30) },
  }),
  act('set lel 20%', { verb: 'set', setting: { name: 'lel', percent: percent(20) } }),
  miss('set lel 40%', 'impossible', '40%'),
  act('set mixing 5', { verb: 'set', setting: { name: 'mixing', factor: 5 } }),
  act('set emergency call 112, gate 2', {
    verb: 'set',
    setting: { name: 'emergency', field: 'call', text: '112, gate 2' },
  }),
  act('set emergency hot pot out to the yard', {
    verb: 'set',
    setting: { name: 'emergency', field: 'hot', text: 'out to the yard' },
  }),
  act('set quiet 22-6', { verb: 'set', setting: { name: 'quiet', fromHour: 22, toHour: 6 } }),
  act('set quiet off', { verb: 'set', setting: { name: 'quiet', fromHour: 0, toHour: 0 } }),
  act('set bell on', { verb: 'set', setting: { name: 'bell', on: true } }),
  ask('vent', { ask: 'vent', asked: { of: 'session' } }),
  ask('vent 4', { ask: 'vent', asked: { of: 'session', session: 4 } }),
  ask('vent oven 800g 90C 0.5m/s', {
    ask: 'vent',
    asked: { of: 'oven', grams: grams(800), celsius: celsius(90), faceMetresPerSecond: metresPerSecond(0.5) },
  }),
  ask('vent purge argon 500l room 12m3', {
    ask: 'vent',
    asked: { of: 'purge', gas: 'argon', gasLitres: litres(500), roomLitres: litres(12_000) },
  }),
  ask('hazards dip', { ask: 'hazards', work: 'dip' }),
  ask('hazards brush', { ask: 'hazards', work: 'wipe' }),
];
