// The same shift told to a Spanish reader in metric units and to one in the United States in English: whatever the card,
// the first holds no English, the second no Spanish; figures are in each one's own form. Invented.

import { beforeAll, describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';
import { sessionTalk } from './session-talk.ts';

const crewOf = (language: string, units: UnitSystem): CrewFile => ({
  ...demoCrew,
  people: [...demoCrew.people, { name: 'lia', role: 'crew' as const, language, units }].map((person) => ({
    ...person,
    language,
    units,
  })),
});

/** Half of it typed in Spanish, which a Spanish crew may mix with English. */
const shift = [
  'ayuda',
  'ayuda pesar',
  'help coat',
  'now',
  'coat new rail-9 1 spray',
  'aire 24C 48%',
  'superficie 22C',
  'abrir A lote 7731 5kg cad 2026-12 gas',
  'abrir A lote 7730 5kg cad 2026-01 entera',
  'open B lot 7802 5kg exp 2026-12',
  'preagitar 1',
  'wait 3m',
  'inertizar 1',
  'stock',
  'papers',
  'papers 1',
  'planear 6x0,8m2 pistola 12um lista 13:00',
  'plan 6x0.8m2 brush',
  'plan rail-1 spray',
  'part valve-3 serial 4411 job 88 customer inventado-A cast-iron 12mm 0.8m2 max 120C',
  'pieza plate-12',
  'prep valve-3 sa2.5 60um salts 12mg/m2 dust 1',
  'surface valve-3 5C',
  'surface valve-3 21C',
  // The crew has one series of numbers: cans 1 and 2, batches 3 and on.
  'mezclar 2,4kg',
  'mezclar 2,4kkg',
  'pesar 3 1,201g 1198g',
  'coat valve-3 3 spray',
  'weigh 3 b 1198g can 2',
  'weigh 3 a 1201g can 1',
  'weigh 3 b 1260g can 2',
  'amend 3 weigh 1201g 1198g báscula equivocada',
  'stop 3',
  'wait 12m',
  'stir 3',
  'uncover 3',
  'cover 3',
  'filter 3',
  'stir 9',
  'wait 115m',
  'enterado',
  'filter 3',
  '@rosa: set brief off',
  'coat valve-3 3 flow',
  'coat plate-12 3 brush',
  'coat valve-3 3 flow touch-up',
  'coat valve-3 3 dip',
  'catch 3 100g',
  'coat new plate-13 3 flow',
  'filter 3',
  'cure valve-3 oven 90C',
  'wet valve-3 60 65 58um',
  'wait 20m',
  'dry valve-3 plate-12',
  'cure valve-3 oven 150C',
  'cure valve-3 oven 90C',
  'cure plate-12 room',
  'temp valve-3 60C',
  'door valve-3 5m',
  'temp valve-3 90C',
  'now',
  'release valve-3',
  'wait 40m',
  'shift on',
  'handover kari',
  '@kari: take over',
  'snooze 5m',
  'wait 30m',
  'temp valve-3 91C',
  'out valve-3',
  'film valve-3 12 14 13 15 13um',
  'adhesion valve-3 4B',
  'rub valve-3 50 softened',
  'hold valve-3 piel de naranja',
  'release valve-3',
  '@rosa: release valve-3 permit visto con el cliente',
  'thick 3',
  'coat new rail-1 3 spray',
  'coat rail-1 3 spray already',
  'empty 3 200g',
  'mix 1kg build already',
  'weigh 4 500g 500g',
  'air 40C 95%',
  'wait 30m',
  'air 24C 48%',
  'set units metric',
  'set booth booth-2 4m2 30m3',
  'set emergency call 112, puerta 3',
  'fit kari 2026-02-01',
  'mix 1kg already',
  'weigh 5 500g 500g already',
  'set brief on',
  'coat new rail-2 5 spray',
  'brief 5 in booth-2 spray kari near lia outside omar',
  'spray on',
  'fan on',
  'fan on 0.3m/s',
  'vent',
  'supplied yes',
  'near lia out',
  '@kari: ack',
  'spray on',
  '@rosa: spray on permit evaluación escrita VA-3',
  'wait 65m',
  'spray off',
  'close',
  'flush gun acetone 300ml',
  'flush gun ipa 300ml',
  'wait 30m',
  'flush vessels',
  'rags',
  'close',
  'vent oven 800g 90C',
  'vent purge argon 2m3 30m3',
  'eyes',
  'spill',
  'fire',
  'down',
  'hot pot',
  'near miss manguera en el paso',
  'bell',
  'hazards dip',
  'used acetone 500ml gun-cleaning',
  'discard 1 gelificada',
  'undo',
  'help set',
  'help medical',
  '@kari: set brief off',
  '@kari: set quiet 0-23',
  '@kari: air 24C 48%',
  '@rosa: mix 1kg',
  '@kari: undo',
  'undo entry 1',
  '@kari: undo entry 99999',
  'wait until 17:05',
  'day',
  'week',
  'voc',
  'set voc-limit 1kg/month',
  'voc',
  'trace valve-3',
  'trace 3',
  'trace lot 7731',
  'find customer inventado-A',
  'export week csv',
  'traveller valve-3',
  'verify',
  'keep',
  'frobnicate 3',
  'mix 2kg nosuch',
  'stir 4 permit',
  'wait until 2026-03-03T09:00',
  'night 16C',
  'wait 24h',
  'temp plate-12 21C',
  'day yesterday',
  '@rosa: undo',
  '@kari: undo',
];

/** What a person reads. The lines of taps are the machine's and stay English. */
function wordsOf({ card }: Answer): readonly string[] {
  return [
    card.title,
    ...card.facts.flatMap(({ label, shown }) => [label, shown]),
    ...card.lines,
    ...card.hazards.flatMap(({ text, source }) => [text, source]),
    ...card.actions.map(({ label }) => label),
    ...card.fields.map(({ label }) => label),
  ];
}

/** A sheet is quoted as its maker wrote it; commands are named in the flags of the program. */
const quoted: readonly string[] = [...JSON.stringify([...demoShelf.values()]).matchAll(/"source":"([^"]+)"/g)]
  .map(([, source = '']) => source)
  .filter((source) => source.length > 30)
  .sort((one, other) => other.length - one.length);

const withoutQuotes = (text: string): string => quoted.reduce((rest, source) => rest.replaceAll(source, ''), text);

const englishWords =
  /\b(?:the|batch|batches|stirring|stirred|stirrer|done|until|recorded|weighed|with|and|of|by|from|not|part|parts|can|lot|coat|coated|cure|curing|oven|room|booth|film|wet|dry|air|surface|spray|brush|dip|flow|roller|released|held|hold|sheet|pot|ring|rings|gun|vessels|nobody|said|says?|read|left|over|light|crew|lead|session|fan|gas over|off|on|at|for|is|was|are|no source|steel|thick|gelled|empty|waste|metric|traveller|lowest|highest|mean|limit|found|events?|record|acetone|isopropyl|argon:)\b/i;
/** Spanish words that are spelt as English ones, and names. */
const sameInBoth = /\b(?:can|no|Demo Clear|Demo Build|Batchbell)\b/gi;
const spanish =
  /[ñ¿¡áéíóú]|\b(?:mezcla|ficha|pieza|lata|agitado|curado|oreo|retenida|liberada|charla|avisos?|nadie|según)\b/i;
const verdict =
  /\bsegur[oa]s?\b|\bapt[oa]s?\b|\bv[ií]a libre\b|\bvisto bueno\b|\bOK\b|\bsafe\b|\bcleared\b|\badelante\b/;
const inEnglish: Readonly<Record<string, string>> = {
  ayuda: 'help',
  'ayuda pesar': 'help weigh',
  'aire 24C 48%': 'air 24C 48%',
  'superficie 22C': 'surface 22C',
  'abrir A lote 7731 5kg cad 2026-12 gas': 'open A lot 7731 5kg exp 2026-12 gas',
  'abrir A lote 7730 5kg cad 2026-01 entera': 'open A lot 7730 5kg exp 2026-01 whole',
  'preagitar 1': 'prestir 1',
  'inertizar 1': 'blanket 1',
  'planear 6x0,8m2 pistola 12um lista 13:00': 'plan 6x0,8m2 spray 12um ready 13:00',
  'pieza plate-12': 'part plate-12',
  'mezclar 2,4kg': 'mix 2,4kg',
  'mezclar 2,4kkg': 'mix 2,4kkg',
  'pesar 3 1,201g 1198g': 'weigh 3 1,201g 1198g',
  enterado: 'ok',
};

/** What the shift's own lines put in: names, notes, what was typed. */
const own =
  /inventado-A|piel de naranja|báscula equivocada|visto con el cliente|evaluación escrita VA-3|manguera en el paso|gelificada|puerta 3|"[^"]*"|\S+\/\S+\.(?:csv|pdf)/gi;

/** Paragraphs of the codes, numbers of standards, and what is typed as it stands (`sa2.5`, `mix 2.4kg`). */
const typedOrCited =
  /\b(?:29|40) CFR [\d.]+(?:\([\w]+\))*(?: y [\d.]+)*|\b1910\.94\(c\)\(6\)\(i\)|\bsa2\.5\b|MIL-HDBK-1110 [\d.]+|"[^"]*"/g;

async function told(crewFile: CrewFile): Promise<readonly Answer[]> {
  const { say, heard, close } = sessionTalk(':memory:', crewFile);
  for (const line of shift)
    await say(crewFile.people.some(({ language }) => language === 'es') ? line : (inEnglish[line] ?? line));
  close();
  return heard;
}

/** Every sentence of a catalogue that stands as it is, with its path. */
function leaves(node: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof node === 'string') return [[path, node]];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => leaves(value, `${path}/${key}`));
}

describe('the Spanish catalogue, leaf by leaf', () => {
  const told = new Map(leaves(shipped.wordsIn('es')));

  it('given every sentence that takes no figure, then none is left in English and none passes a verdict', () => {
    expect(told.size).toBeGreaterThan(500);
    // What people call a term is theirs to say, `pot life` among it.
    const said = [...told].filter(([path]) => !path.startsWith('/termNames/'));
    expect(said.filter(([, text]) => englishWords.test(text.replaceAll(sameInBoth, '')))).toEqual([]);
    expect([...told].filter(([, text]) => verdict.test(text))).toEqual([]);
  });

  it('given the English sentence beside it, then both have words or neither, and only names and units are the same', () => {
    const spoken = new Map(leaves(shipped.wordsIn('en')));
    expect([...told.keys()]).toEqual(expect.arrayContaining([...spoken.keys()]));
    const same = [...told].filter(([path, text]) => text !== '' && spoken.get(path) === text).map(([, text]) => text);
    const names =
      /^(?:Batchbell|English(?: \(U[KS]\))?|Español(?: \(.*\))?|°C|µm|ISO 19840|SSPC-PA 2|S[at] \d½?|SP \d+|supervisor|metal|gas|material|(?:e[ns](?:-[A-Z]{2})?(?:, )?)+)$/;
    expect(same.filter((text) => !names.test(text))).toEqual([]);
  });
});

describe('a shift told in Spanish and metric', () => {
  let heard: readonly Answer[];
  let texts: readonly string[];
  beforeAll(async () => {
    heard = await told(crewOf('es', 'metric'));
    texts = heard.flatMap((answer) => wordsOf(answer).map(withoutQuotes));
  });

  it('given its answers, then they are of every kind, with many objections and many bells', () => {
    expect(new Set(heard.map(({ kind }) => kind))).toEqual(
      new Set(['reply', 'objection', 'misread', 'reminder', 'digest']),
    );
    expect(texts.length).toBeGreaterThan(1500);
    expect(new Set(heard.flatMap(({ code }) => code ?? [])).size).toBeGreaterThanOrEqual(20);
    // By its key: the third piece is what rings.
    expect(new Set(heard.flatMap(({ key }) => key?.split('/')[2] ?? [])).size).toBeGreaterThanOrEqual(15);
  });

  it('given every card, then no English word is on it', () => {
    const left = texts.filter((text) => englishWords.test(text.replaceAll(sameInBoth, '').replaceAll(own, '')));
    expect([...new Set(left)]).toEqual([]);
  });

  it('given every figure, then it has a decimal comma', () => {
    expect(texts.filter((text) => /\d\.\d/.test(text.replaceAll(typedOrCited, '')))).toEqual([]);
    expect(texts.filter((text) => /\d,\d/.test(text)).length).toBeGreaterThan(20);
  });

  it('given every card, then no verdict and nothing unworded is on it', () => {
    expect(texts.filter((text) => verdict.test(text))).toEqual([]);
    expect(texts.filter((text) => /undefined|\[object|NaN|\$\{/.test(text))).toEqual([]);
  });
});

describe('the same shift told in English and US units', () => {
  let texts: readonly string[];
  beforeAll(async () => {
    const heard = await told(crewOf('en', 'us'));
    texts = heard.flatMap((answer) => wordsOf(answer).map(withoutQuotes));
  });

  it('given every card, then no Spanish and no verdict is on it', () => {
    expect([...new Set(texts.filter((text) => spanish.test(text.replaceAll(own, ''))))]).toEqual([]);
    expect(texts.filter((text) => verdict.test(text))).toEqual([]);
  });

  it('given its figures, then they are in US units', () => {
    expect(texts.filter((text) => /\d °F/.test(text)).length).toBeGreaterThan(20);
    expect(texts.filter((text) => /\d (?:lb|oz)\b/.test(text)).length).toBeGreaterThan(20);
  });
});
