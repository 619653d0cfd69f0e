// What is heard in Bilbao, in Monterrey and in Houston: each country's words, units and rules, and no order given as an
// infinitive. Lines typed, text heard. Invented.

import { afterEach, describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk } from './session-talk.ts';

let talk: ReturnType<typeof sessionTalk>;
afterEach(() => talk?.close());

const places = { bilbao: ['es-ES', 'metric'], monterrey: ['es-MX', 'metric'], houston: ['es-US', 'us'] } as const;
type Place = keyof typeof places;

async function heard(place: Place, lines: readonly string[]): Promise<string> {
  const [language, units]: readonly [string, UnitSystem] = places[place];
  const people = demoCrew.people.map((person) => ({ ...person, language, units }));
  talk = sessionTalk(':memory:', { ...demoCrew, language, units, people });
  let last: Answer | undefined;
  for (const line of lines) last = await talk.say(line);
  if (last === undefined) throw new Error('nothing was said');
  const { card } = last;
  return [
    card.title,
    ...card.facts.map(({ label, shown }) => `${label}: ${shown}`),
    ...card.lines,
    ...card.hazards.map(({ text, source }) => `${text} (${source})`),
    ...card.actions.map(({ label }) => `[${label}]`),
  ].join('\n');
}

const filtered = ['aire 24C 48%', 'superficie 22C', 'mezclar 2,4kg', 'pesar 1 1201g 1198g', 'wait 105m', 'filtrar 1'];
const coated = [...filtered, 'pieza impulsor-7 fundición 12mm', 'aplicar impulsor-7 1 flujo'];
const weighed = [...filtered.slice(0, 3), 'pesar 1 1,201g 1,198g'];
const held = ['pieza impulsor-7 acero', 'retener impulsor-7 gotas', 'permiso el cliente lo acepta'];
const briefed = [...filtered, 'charla 1 en cabina pintan kari, rosa fuera omar'];
const allLines = [...briefed, 'tap brief-rest'];

describe('a line typed', () => {
  it.each<[Place, readonly string[], string]>([
    // Each country's own word for the same thing.
    ['bilbao', ['mezclar 50kg'], 'Lo pide: la ficha.'],
    ['monterrey', ['mezclar 50kg'], 'Lo pide: la hoja técnica.'],
    ['bilbao', allLines, 'las fichas de datos de seguridad (FDS)'],
    ['monterrey', allLines, 'las hojas de datos de seguridad (HDS)'],
    ['houston', allLines, 'las hojas de datos de seguridad (SDS)'],
    ['bilbao', ['derrame'], 'sección 6, medidas en caso de vertido accidental'],
    ['monterrey', ['derrame'], 'sección 6, medidas en caso de derrame accidental'],
    ['bilbao', ['turno entra', 'relevo kari'], 'Relevo a kari'],
    ['monterrey', ['turno entra', 'relevo kari'], 'Entrega de turno a kari'],
    ['bilbao', ['turno entra', 'relevo kari'], 'cuando tome el relevo'],
    ['monterrey', ['turno entra', 'relevo kari'], 'cuando reciba el turno'],
    ['houston', ['ya empezó'], '[¿agitar, ya hecho?]'],
    ['bilbao', ['empiezo'], '[¿agitar?]\n[¿empezar pistola?]'],
    ['houston', ['empezar pistola'], 'Escriba: plática, y quién pinta.'],
    ['bilbao', briefed, 'Lave primero con acetona y después con alcohol isopropílico'],
    // Whose law is quoted.
    ['bilbao', allLines, '(Directiva 1999/92/CE, de memoria; 6 m: EE. UU., 29 CFR 1910.107(c)(2))'],
    ['monterrey', allLines, '(NOM-002-STPS-2010, de memoria; 6 m: EE. UU., 29 CFR 1910.107(c)(2))'],
    ['houston', allLines, '(29 CFR 1910.107(c)(2))'],
    ['bilbao', ['peligros mezclar'], '(Directiva 1999/92/CE, de memoria)'],
    // Units, decimals and clocks.
    ['houston', ['aire 75F 48%'], 'Aire: 75 °F'],
    ['houston', filtered, 'Fin de la vida de la mezcla: 12:33 p.m.'],
    ['monterrey', ['aire 24,5C 48%'], 'Aire: 24.5 °C'],
    ['houston', filtered.slice(0, 4), 'a.m. ¿Se vertió antes de anotarlo?'],
    ['houston', briefed, 'extracción sí 120ft/min,'],
    ['monterrey', briefed, 'extracción sí 0.6m/s,'],
    ['houston', ['cov mes'], 'solventes exentos'],
    ['houston', ['cov mes'], 'fijar límite cov 660lb/mes'],
    ['bilbao', allLines, 'a menos de 6 m,'],
    ['houston', allLines, 'a menos de 20 ft,'],
    // Agreement.
    ['bilbao', briefed, 'Pintan: kari y rosa'],
    ['bilbao', briefed, 'Falta por firmar: kari y rosa.'],
    ['bilbao', [...coated, 'liberar impulsor-7'], 'Lo pide: la ficha.'],
    ['bilbao', ['mezclar 50kg'], '50 kg pasan del máximo de la ficha: 10 kg de una vez.'],
    // What can never be is not put off.
    ['bilbao', [...coated, 'aplicar impulsor-7 1 inmersión'], 'No se puede'],
    ['bilbao', [...filtered.slice(0, 4), 'filtrar 1'], 'Todavía no'],
    // Of what does not read: what is missing, and on the tap what it will do.
    ['bilbao', ['mezcal 2,4kg'], '[Mezcla 1 abierta, 2400 g de Demo Clear'],
    // What nobody can say as done yet is told as the reader would type it.
    ['bilbao', ['COMPONENTE A LOTE 7802 CAD 11/2026'], '[¿abrir A lote 7802 cad 2026-11-30?]'],
    ['bilbao', ['zzz'], 'No entendí «zzz».'],
    ['bilbao', ['se nos rompió la tapa'], 'No entendí «se nos rompió la tapa».'],
    ['bilbao', ['xyzzy 24C plugh'], 'No entendí «xyzzy».'],
    ['bilbao', weighed, '¿1201 g o 1,201 g?'],
    ['bilbao', weighed, '[¿pesar 1 1201g 1198g?]'],
    ['houston', weighed, '¿1201 g o 1.201 g?'],
    ['bilbao', ['mezclar 2kg a la 1'], '¿A la 1:00 o a las 13:00?'],
    ['houston', ['mezclar 2kg a la 1'], '¿A la 1:00 a.m. o a la 1:00 p.m.?'],
    ['bilbao', [...briefed, 'lavar pistola acetona 10oz'], '«10oz» puede ser de peso'],
    // Nothing is said twice.
    ['bilbao', ['fijar cabina 4m2'], 'Cabina: 4 m²'],
    ['bilbao', ['fijar emergencia teléfono 112'], 'Emergencia: teléfono 112'],
    // Examples to copy are the country's.
    ['houston', ['ayuda todo cabina'], 'lavar pistola acetona 10 fl oz'],
    ['monterrey', ['ayuda todo mezclas'], 'mezclar 2.4kg'],
    // A permission alone: what it may release, on a tap that says what it does.
    ['bilbao', held, '[¿liberar impulsor-7 permiso el cliente lo acepta?]'],
    ['bilbao', held, 'la libera un encargado, con permiso y el motivo detrás.'],
    ['houston', held, 'la libera un líder, con permiso y el motivo detrás.'],
    ['bilbao', ['ayuda pesar'], 'a las 9:40'],
  ])('in %s, given %j, then "%s" is heard', async (place, lines, text) => {
    expect(await heard(place, lines)).toContain(text);
  });

  it('given what a brief asks to be written, then that line reads', async () => {
    await heard('bilbao', briefed);
    expect((await talk.say('@kari: firmada')).recorded).toBe(true);
  });
});

describe('a wait', () => {
  it('given a language set since, then its end is told in that', async () => {
    talk = sessionTalk();
    await talk.say('set language es');
    expect((await talk.say('wait 5m')).card.title).toBe('En espera hasta las 8:05');
  });
});

describe('what a tap says', () => {
  it.each<[Place, readonly string[], string]>([
    // The wrong batch: the line to press is told as it would be typed.
    ['bilbao', ['aire 24C 48%', 'mezclar 2,4kg', 'pesar 3 A 42oz lata 1'], 'pesar 1 A 42oz lata 1'],
    ['houston', filtered.slice(0, 4).concat('filtrar 1'), 'filtrar 1 a las 8:00am'],
    ['bilbao', filtered.slice(0, 3), 'deshacer'],
    ['bilbao', briefed, 'suministrado 2 no'],
    [
      'bilbao',
      [...filtered, 'charla 3 pintan kari fuera rosa vigila lia'],
      'charla 1 pintan kari fuera rosa vigila lia',
    ],
    ['houston', ['mezclar 2kg'], 'aire [Aire]F [Humedad]%'],
    ['bilbao', ['mezclar 2kg'], 'aire [Aire]C [Humedad]%'],
  ])('given %s and %j, then "%s" is shown, and the tap says the canonical line', async (place, lines, shown) => {
    await heard(place, lines);
    const { card, text } = talk.heard.findLast(({ in: line }) => line !== null) ?? expect.fail();
    const action = card.actions.find((each) => each.shown === shown);
    expect(text).toContain(`: ${shown}`);
    expect(action?.line).toMatch(/^[a-z-]+ /);
    expect(action?.line).not.toBe(shown);
  });
});

describe('a record proved', () => {
  it.each<[Place, string]>([
    ['bilbao', 'la última: 8:00;'],
    ['houston', 'la última: 8:00 a.m.;'],
  ])('given %s, then its last entry is told as "%s"', async (place, sentence) => {
    expect((await heard(place, ['aire 24C 48%', 'verificar'])).replaceAll('\u00a0', ' ')).toContain(sentence);
  });

  it.each<[Place, string]>([
    ['bilbao', 'hoja de ruta'],
    ['monterrey', 'hoja viajera'],
  ])('given %s, then a hash given on paper was given in a %s', (place, paper) => {
    const [language] = places[place];
    expect(shipped.wordsIn(language).records.givenFound(1)).toContain(paper);
  });
});

it.each([
  ['bilbao', 'Tomar relevo', 'Dar el relevo…'],
  ['monterrey', 'Recibir turno', 'Entregar el turno…'],
  ['houston', 'Recibir turno', 'Entregar el turno…'],
] as const)('given %s, then who takes the shift taps "%s"', (place, takes, gives) => {
  const [language, units] = places[place];
  const { takeover, handover } = shipped.wordsIn(language, units).buttons;
  expect([takeover, handover]).toEqual([takes, gives]);
});
