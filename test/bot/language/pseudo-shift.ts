// A whole shift typed in the pseudo-tongue, and what of an answer is English all the same. Parts and people are invented.

import { englishTongue } from '../../../bot/language/tongues/english/tongue.ts';
import { spanishTongue } from '../../../bot/language/tongues/spanish/tongue.ts';
import { tonguesOf } from '../../../bot/language/tongues/tongues.ts';
import { pseudoTongue, typedInPseudo } from './pseudo-tongue.ts';

export const threeTongues = tonguesOf(englishTongue, spanishTongue, pseudoTongue);

const lines = [
  'help',
  'help weigh',
  'help set',
  'help coat',
  'now',
  'air 24C 48%',
  'surface 22C',
  'night 16C',
  'open A lot 7731 5kg exp 2026-12 gas',
  'open B lot 7802 5kg exp 2026-12',
  'prestir 1',
  'wait 3m',
  'blanket 1',
  'stock',
  'papers',
  'papers 1',
  'plan 6x0.8m2 spray 12um ready 13:00',
  'part valve-3 serial 4411 job 88 customer zz-1 cast-iron 12mm 0.8m2 max 120C',
  'part plate-12',
  'prep valve-3 sa2.5 60um salts 12mg/m2 dust 1',
  'surface valve-3 5C',
  'surface valve-3 21C',
  'mix 2.4kg',
  'mix 2.4',
  'weigh 3 1,201g 1198g',
  'weigh 3 b 1198g can 2',
  'weigh 3 a 1201g can 1',
  'stop 3',
  'wait 12m',
  'stir 3',
  'uncover 3',
  'cover 3',
  'filter 3',
  'wait 115m',
  'ok',
  'filter 3',
  '@rosa: set brief off',
  'coat valve-3 3 flow',
  'coat plate-12 3 brush',
  'coat zzz-9 3 flow',
  'catch 3 100g',
  'cure valve-3 oven 90C',
  'wet valve-3 60 65 58um',
  'wait 20m',
  'dry valve-3 plate-12',
  'cure valve-3 oven 90C',
  'cure plate-12 room',
  'temp valve-3 60C',
  'door valve-3 5m',
  'temp valve-3 90C',
  'now',
  'release valve-3',
  'wait 70m',
  'shift on',
  'handover kari',
  '@kari: take over',
  'snooze 5m',
  'temp valve-3 91C',
  'out valve-3',
  'film valve-3 12 14 13 15 13um',
  'adhesion valve-3 4B',
  'rub valve-3 50 ok',
  'hold valve-3 zz',
  '@rosa: release valve-3 permit zz',
  'thick 3',
  'empty 3 200g',
  'set booth booth-2 4m2 30m3',
  'fit kari 2026-02-01',
  'mix 1kg already',
  'weigh 4 500g 500g already',
  'set brief on',
  'coat new rail-2 4 spray',
  'brief 4 in booth-2 spray kari near lia outside omar',
  'spray on',
  'fan on 0.6m/s',
  'vent',
  'supplied yes',
  'near lia out',
  '@kari: ack',
  'spray on',
  'fit kari 2027-02-01',
  'spray on',
  'wait 65m',
  'spray off',
  'close',
  'flush gun acetone 300ml',
  'rags',
  'flush vessels',
  'close',
  'vent oven 800g 90C',
  'vent purge argon 2m3 30m3',
  'hazards dip',
  'used acetone 500ml gun-cleaning',
  'bell',
  'near miss zz',
  'eyes',
  'spill',
  'undo',
  'amend 3 weigh 1201g 1198g zz',
  'day',
  'week',
  'voc',
  'trace valve-3',
  'trace 3',
  'trace lot 7731',
  'find zz-1',
  'verify',
  'keep',
  'wibble',
  'weigh',
  'mix 2.4kg at 25:00',
  'filter 99',
];

/** Who says it where it is not said by the first of the crew, and the line as it is typed. */
export const pseudoShift = lines.map((line) => {
  const [, who, said = ''] = /^(?:@(\w+): )?(.*)$/.exec(line) ?? [];
  return { who, line: said.startsWith('wait ') ? said : typedInPseudo(said) };
});

/** Names, product text, units and codes: what no tongue says otherwise. */
const own = new RegExp(
  [
    'kari|omar|rosa|lia|valve-3|plate-12|rail-2|booth-2|zz-1|zzz-9|zz|wibble|Demo crew|Test crew|bay|invented|Kari|Ola|ines|jo|Demo|Clear|demo-clear|demo-build|crew',
    'min|mil|gal|lb|oz|um|kg|mm|fl|ppm|mg|vol|cpm|cfm|fpm|sa\\d|SP|SSPC|ISO|ASTM|CFR|NFPA|UTC|VOC|LEL|csv|jsonl',
  ].join('|'),
  'g',
);
export const englishIn = (text: string): readonly string[] =>
  (
    text
      .replace(/<[@#!][^>]*>|\b(?=[a-f]*\d)[\da-f]{8,}\b|&quot;|"[^"]*"|“[^”]*”|`[^`]*`|https?:\S+/g, ' ')
      .replace(own, ' ')
      .match(/[A-Za-z]{3,}/g) ?? []
  ).filter((word) => /[aeiouy]/i.test(word));
