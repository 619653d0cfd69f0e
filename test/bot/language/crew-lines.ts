// Lines about the record and the crew as a thumb types them: corrections, settings, questions about the past. Invented; common
// practice and our own choice, no source.

import type { Command } from '../../../core/commands.ts';
import {
  celsius,
  grams,
  gramsFromOunces,
  litres,
  micrometres,
  milligramsPerSquareMetre,
  minutes,
  percent,
} from '../../../core/units.ts';
import type { Amount } from '../../../core/verbs/said.ts';
import { utc } from './shop-at-ten.ts';
import { act, ask, miss, type TypedLine } from './typed-line.ts';

const mass = (amount: number): Amount => ({ kind: 'mass', grams: grams(amount) });
const volume = (amount: number): Amount => ({ kind: 'volume', litres: litres(amount) });
const _mix2400: Command = { verb: 'mix', amount: mass(2400) };
const _air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const _weighed: Command = { verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) };
const _ounces = (pounds: number, more: number) => gramsFromOunces(pounds * 16 + more);
const _sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };
const usedAcetone: Command = { verb: 'used', material: 'acetone', amount: volume(0.5), use: 'gun-cleaning' };
const range = { kind: 'range', from: '2026-03-01', to: '2026-03-07' } as const;
const _dry: Command = { verb: 'dry', parts: ['impeller-7'] };
const _ovenCure: Command = { verb: 'cure', parts: ['impeller-7'], way: { kind: 'oven', setCelsius: celsius(90) } };
const _films = (...readings: readonly number[]): Command => ({
  verb: 'film',
  part: 'impeller-7',
  dryFilmMicrometres: readings.map(micrometres),
});
const _held: Command = { verb: 'hold', parts: ['impeller-7'], why: 'orange peel' };
const _stir1: Command = { verb: 'stir', batch: 1 };
const _filter1: Command = { verb: 'filter', batch: 1 };
const reweighed = (why: string): Command => ({
  verb: 'amend',
  of: { verb: 'weigh', batch: 1 },
  change: { partAGrams: grams(1201), partBGrams: grams(1189) },
  why,
});

export const crewLines: readonly TypedLine[] = [
  // Amending, settings, questions.
  act('amend 1 weigh 1201g 1189g wrong scale', reweighed('wrong scale')),
  act('amend 1 weigh at 9:40 typed late', {
    verb: 'amend',
    of: { verb: 'weigh', batch: 1 },
    change: { at: utc('2026-03-02T09:40') },
    why: 'typed late',
  }),
  act('amend air 22C typo', { verb: 'amend', of: { verb: 'air' }, change: { celsius: celsius(22) }, why: 'typo' }),
  act('amend impeller-7 coat at 9:10 wrong time', {
    verb: 'amend',
    of: { verb: 'coat', part: 'impeller-7' },
    change: { at: utc('2026-03-02T09:10') },
    why: 'wrong time',
  }),
  miss('amend impeller-7 coat at 14:00', 'in-the-future', '14:00', 'amend impeller-7 coat at 14:00 yesterday'),
  miss('amend 1 weigh 1189g', 'ambiguous-number', '1189g', 'amend 1 weigh a 1189g'),
  miss('amend 1 weigh wrong scale', 'incomplete', ''),
  act('undo', { verb: 'undo' }),
  act('undo entry 37', { verb: 'undo', entry: 37 }),
  act('undo entry 37 despite 41', { verb: 'undo', entry: 37, despite: 41 }),
  miss('undo entry 37 and 38', 'left-over', 'and'),
  act('got it', { verb: 'ok' }),
  act('ok batch/1/stir-done', { verb: 'ok', key: 'batch/1/stir-done' }),
  act('ok part/a-1/flash-least part/a-2/flash-least', {
    verb: 'ok',
    key: 'part/a-1/flash-least',
    also: ['part/a-2/flash-least'],
  }),
  act('ok session/4/flush/1', { verb: 'ok', key: 'session/4/flush/1' }),
  act('ok “crew/bell/12/Ana María”', { verb: 'ok', key: 'crew/bell/12/Ana María' }),
  miss('ok 3', 'left-over', '3'),
  miss('👍', 'incomplete', '', 'ok'),
  miss('10m ago', 'incomplete', ''),
  miss('part A', 'incomplete', ''),
  miss('wait', 'unknown-verb', 'wait'),
  miss('exit', 'unknown-verb', 'exit'),
  act('job 88 asks profile 40-75um, salts 20mg/m2, grade Sa 2 1/2 or sp10, dust 2', {
    verb: 'set',
    setting: {
      ...{ name: 'job', job: '88', grades: ['sa2.5', 'sp10'], mostDustRating: 2 },
      profile: { leastMicrometres: micrometres(40), mostMicrometres: micrometres(75) },
      mostSaltsMilligramsPerSquareMetre: milligramsPerSquareMetre(20),
    },
  }),
  act('set job A-12 off', { verb: 'set', setting: { name: 'job', job: 'A-12' } }),
  miss('job 88 asks dust 6', 'impossible', '6'),
  miss('job 88 asks 40um', 'incomplete', ''),
  act('set air-limit 3h', { verb: 'set', setting: { name: 'air-limit', minutes: minutes(180) } }),
  act('set zone madrid', { verb: 'set', setting: { name: 'zone', zone: 'Europe/Madrid' } }),
  act('set zone america/new york', { verb: 'set', setting: { name: 'zone', zone: 'America/New_York' } }),
  act('set zone UTC', { verb: 'set', setting: { name: 'zone', zone: 'UTC' } }),
  miss('set zone madrit', 'left-over', 'madrit', 'set zone Europe/Madrid'),
  miss('set zone EST', 'left-over', 'EST'),
  act('set crew Bay two', { verb: 'set', setting: { name: 'crew', crewName: 'Bay two' } }),
  act('set role kari lead', { verb: 'set', setting: { name: 'role', given: [{ person: 'kari', role: 'lead' }] } }),
  act('set role lead supervisor', {
    verb: 'set',
    setting: { name: 'role', given: [{ person: 'lead', role: 'supervisor' }] },
  }),
  act('set role “Ana María” to Lead', {
    verb: 'set',
    setting: { name: 'role', given: [{ person: 'Ana María', role: 'lead' }] },
  }),
  act('set role kari lead ines supervisor', {
    verb: 'set',
    setting: {
      name: 'role',
      given: [
        { person: 'kari', role: 'lead' },
        { person: 'ines', role: 'supervisor' },
      ],
    },
  }),
  miss('set role kari boss', 'left-over', 'boss'),
  miss('set role kari', 'incomplete', ''),
  act('set language spanish', { verb: 'set', setting: { name: 'language', language: 'es' } }),
  miss('set language french', 'left-over', 'french'),
  act('set crew-language en', { verb: 'set', setting: { name: 'crew-language', language: 'en' } }),
  act('set rings direct', { verb: 'set', setting: { name: 'rings', rings: 'direct' } }),
  act('set digest 5pm', { verb: 'set', setting: { name: 'digest', hour: 17 } }),
  ask('day', { ask: 'day', day: { kind: 'today' } }),
  ask('day 2026-3-2', { ask: 'day', day: { kind: 'date', date: '2026-03-02' } }),
  miss('dya yesterday', 'unknown-verb', 'dya', 'day yesterday'),

  // The past: stretches, traces, finding, paper, solvent, proof.
  act('used acetone 500ml gun-cleaning', usedAcetone),
  act('used acetone 500ml gun cleaning', usedAcetone),
  act('Used 500 mL acetone flush', usedAcetone),
  act('used isopropyl alcohol 2l', {
    verb: 'used',
    material: 'isopropyl-alcohol',
    amount: volume(2),
    use: 'other',
  }),
  act('ipa 99%', { verb: 'confirm', step: 'alcohol', purityPercent: percent(99) }),
  act('alcohol 99%', { verb: 'confirm', step: 'alcohol', purityPercent: percent(99) }),
  act('new ipa 99.5 %', { verb: 'confirm', step: 'alcohol', purityPercent: percent(99.5) }),
  act('confirm alcohol no', { verb: 'confirm', step: 'alcohol', kept: false }),
  miss('new ipa', 'incomplete', '', 'new ipa 99%'),
  miss('ipa 120%', 'impossible', '120%'),
  miss('used acetone', 'incomplete', ''),
  miss('used 500ml', 'incomplete', ''),
  act('set voc-limit 300kg/month', {
    verb: 'set',
    setting: { name: 'voc-limit', grams: grams(300_000), per: 'month' },
  }),
  act('set voc-limit 12 kg a day', { verb: 'set', setting: { name: 'voc-limit', grams: grams(12_000), per: 'day' } }),
  miss('set voc-limit 300kg', 'unit-missing', '300kg'),
  ask('week', { ask: 'week', span: { kind: 'week', which: 'this' } }),
  ask('week last', { ask: 'week', span: { kind: 'week', which: 'last' } }),
  ask('month', { ask: 'month', span: { kind: 'month', which: 'this' } }),
  ask('from 2026-03-01 to 2026-03-07', { ask: 'from', span: range }),
  miss('from 2026-03-07 to 2026-03-01', 'impossible', '2026-03-01'),
  miss('from 2026-02-30 to 2026-03-01', 'impossible', '2026-02-30'),
  miss('from', 'incomplete', ''),
  ask('trace impeller-7', { ask: 'trace', of: { part: 'impeller-7' } }),
  ask('Trace Impeller-7.', { ask: 'trace', of: { part: 'impeller-7' } }),
  ask('trace lot 7731', { ask: 'trace', of: { lot: '7731' } }),
  ask('trace lot B-44/2', { ask: 'trace', of: { lot: 'B-44/2' } }),
  ask('trace 1', { ask: 'trace', of: { batch: 1 } }),
  ask('trace batch 12', { ask: 'trace', of: { batch: 12 } }),
  ask('trace can 3', { ask: 'trace', of: { can: 3 } }),
  ask('card tin 3', { ask: 'card', of: { can: 3 } }),
  miss('trace', 'incomplete', ''),
  ask('what is flash-off', { ask: 'what-is', term: 'flash-off' }),
  ask("what's the dew point?", { ask: 'how-hot', of: [] }),
  ask('what does induction mean', { ask: 'what-is', term: 'induction' }),
  ask('define spread', { ask: 'what-is', term: 'spread' }),
  ask('why', { ask: 'why' }),
  ask('why?', { ask: 'why' }),
  ask('Why is that?', { ask: 'why' }),
  ask('why 09:42', { ask: 'why', about: '09:42' }),
  ask('why 24 °C?', { ask: 'why', about: '24 °C' }),
  ask('why is the dew point so low', { ask: 'why', about: 'dew point so low' }),
  ask('but why', { ask: 'why' }),
  ask('where does air against fire come from', { ask: 'why', about: 'air against fire' }),
  miss('why is the pot on fire', 'unknown-verb', 'why', 'fire'),
  ask('why not', { ask: 'why', about: 'not' }),
  ask('how come 9:42', { ask: 'why', about: '9:42' }),
  ask('where does 9:42 come from?', { ask: 'why', about: '9:42' }),
  ask('why is impeller-7 held', { ask: 'why', about: 'impeller-7 held', of: [{ is: 'name', name: 'impeller-7' }] }),
  ask('find 4411', { ask: 'find', key: 'any', value: '4411' }),
  ask('find job 88', { ask: 'find', key: 'job', value: '88' }),
  ask('find customer Invented Customer A', { ask: 'find', key: 'customer', value: 'Invented Customer A' }),
  ask('find 2026-03-02', { ask: 'find', key: 'date', value: '2026-03-02' }),
  miss('fnid 4411', 'unknown-verb', 'fnid', 'find 4411'),
  miss('find', 'incomplete', ''),
  ask('traveller impeller-7', { ask: 'traveller', of: { part: 'impeller-7' } }),
  ask('traveller job 88', { ask: 'traveller', of: { job: '88' } }),
  ask('export', { ask: 'export', span: { kind: 'day', day: 'today' }, form: 'csv' }),
  ask('export week jsonl', { ask: 'export', span: { kind: 'week', which: 'this' }, form: 'jsonl' }),
  ask('export 2026-03-01 to 2026-03-07 csv', { ask: 'export', span: range, form: 'csv' }),
  ask('voc', { ask: 'voc', span: { kind: 'month', which: 'this' } }),
  ask('voc year', { ask: 'voc', span: { kind: 'year' } }),
  ask('voc last month', { ask: 'voc', span: { kind: 'month', which: 'last' } }),
  ask('verify', { ask: 'verify' }),
  ask('verify 3F9A 12c4…', { ask: 'verify', hash: '3f9a12c4' }),
  miss('verify harder', 'left-over', 'harder'),
  ask('backup friday.sqlite', { ask: 'backup', file: 'friday.sqlite' }),
  miss('backup', 'incomplete', ''),
  ask('keep', { ask: 'keep' }),
  ask('papers', { ask: 'papers' }),
  ask('Papers of demo-clear 2', { ask: 'papers', sheet: 'demo-clear', paper: 2 }),
  miss('papers ghost-clear', 'unknown-sheet', 'ghost-clear', 'papers demo-clear'),
  miss('papers demo-clear 2 3', 'left-over', '3'),
  ask('mix?', { ask: 'help', verb: 'mix' }),
  ask('Practice on', { ask: 'practice' }),
  ask('i want to practise please', { ask: 'practice' }),
  miss('practice mix 2kg', 'left-over', 'mix'),
  ask('practice off', { ask: 'practice-off' }),
  ask('stop practising', { ask: 'practice-off' }),
  ask('can-i coat impeller-7', { ask: 'can-i', act: 'coat', of: [{ is: 'name', name: 'impeller-7' }] }),
  ask('how-long 1', { ask: 'how-long', of: [{ is: 'number', number: 1 }] }),
  ask('how-long impeller-7 dry', { ask: 'how-long', act: 'dry', of: [{ is: 'name', name: 'impeller-7' }] }),
  ask('who-did batch 2', { ask: 'who-did', of: [{ is: 'number', number: 2, noun: 'batch' }] }),
  ask('where-is oven', { ask: 'where-is', of: [{ is: 'name', name: 'oven' }] }),
  ask('how-hot', { ask: 'how-hot', of: [] }),
  ask('how-much can 3', { ask: 'how-much', of: [{ is: 'number', number: 3, noun: 'can' }] }),
  ask('to-do impeller-7', { ask: 'to-do', of: [{ is: 'name', name: 'impeller-7' }] }),
  ask('what-late', { ask: 'what-late' }),
  ask('went-wrong', { ask: 'went-wrong' }),
  ask('at-risk', { ask: 'at-risk' }),
  ask('how-stands expiry can 3', {
    ask: 'how-stands',
    topic: 'expiry',
    of: [{ is: 'number', number: 3, noun: 'can' }],
  }),
  { line: '# scale is back', expected: { kind: 'silence' } },
];
