// Spanish sentences that carry a name, a number or a list agree with whatever stands there, and say what a tap does; what is
// typed in haste in Bilbao or in Houston is offered nothing that it does not mean. Invented.

import { afterEach, describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Answer } from '../../../bot/talk/answer.ts';

import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import { epochMs, micrometres, millimetres } from '../../../core/units.ts';
import { demoCrew } from '../../core/given.ts';
import { tallerALasDiez } from '../language/shop-at-ten.ts';
import { sessionTalk } from './session-talk.ts';

let talk: ReturnType<typeof sessionTalk>;
afterEach(() => talk?.close());

/** A shift of people who read Spanish; the answer to the last line. */
async function told(lines: readonly string[], units: UnitSystem = 'metric'): Promise<Answer> {
  const people = demoCrew.people.map((person) => ({ ...person, language: 'es', units }));
  talk = sessionTalk(':memory:', { ...demoCrew, people });
  let last: Answer | undefined;
  for (const line of lines) last = await talk.say(line);
  if (last === undefined) throw new Error('nothing was said');
  return last;
}

const filtered = ['aire 24C 48%', 'superficie 22C', 'mezclar 2,4kg', 'pesar 1 1201g 1198g', 'wait 105m', 'filtrar 1'];
const named = [...filtered, 'pieza impulsor-7 fundición 12mm'];
const coated = [...named, 'aplicar impulsor-7 1 flujo'];
const labels = ({ card }: Answer) => card.actions.map(({ label }) => label);

describe('a card about a part', () => {
  it.each([
    [coated, 'impulsor-7: capa aplicada (flujo, mezcla 1)'],
    [[...coated, 'wait 12m', 'seca impulsor-7'], 'impulsor-7: película seca al tacto'],
    [[...coated, 'retener impulsor-7 piel de naranja'], 'impulsor-7: pieza retenida, piel de naranja'],
    [[...named, 'preparar impulsor-7 sa2.5 60um'], 'impulsor-7: superficie preparada, Sa 2½'],
  ])('given %j, then what agrees is said of the film, the coat or the piece: "%s"', async (lines, title) => {
    expect((await told(lines)).card.title).toBe(title);
  });

  it('given it is taken back, then the act agrees, too', async () => {
    const answer = await told([...coated, 'deshacer']);
    expect(answer.card.lines).toContain(
      'Anulado; sigue en el registro como anulado: impulsor-7: capa aplicada (flujo, mezcla 1).',
    );
  });
});

describe('a name that nobody has used', () => {
  it('given a coat, then each tap says in words what it does', async () => {
    const answer = await told([...named, 'aplicar impulso-7 1 flujo']);
    expect(answer.card.lines[0]).toBe('impulso-7: no consta aquí. Nombres parecidos: impulsor-7. ¿Cuál es?');
    expect(labels(answer)).toEqual(['Capa en impulsor-7 (mezcla 1, flujo)', 'Pieza nueva impulso-7: con su capa']);
  });

  it('given two, then both verbs are in the plural', async () => {
    const answer = await told([...named, 'aplicar soporte-8 soporte-9 1 flujo']);
    expect(answer.card.lines[0]).toBe('soporte-8 y soporte-9: no constan aquí. ¿Son piezas nuevas?');
  });
});

describe('a sentence with one thing or with many', () => {
  const { replies } = shipped.wordsIn('es');

  it('given one entry that does not read, then it is in the singular', () => {
    expect(replies.unreadMore(1)).toBe('Otra tampoco se puede leer: está en la bitácora.');
    expect(replies.unreadMore(2)).toBe('Otras 2 tampoco se pueden leer: están en la bitácora.');
  });

  it('given one rule or two, then the verb agrees with them', async () => {
    const one = await told([...filtered, 'mezclar 50kg']);
    expect(one.card.lines).toEqual(
      expect.arrayContaining([
        '50 kg pasan del máximo de la ficha: 10 kg de una vez. Mezcle menos cada vez.',
        'Lo pide: la ficha.',
      ]),
    );
    talk.close();
    const two = await told([...coated, 'liberar impulsor-7', 'sacar impulsor-7', 'salió impulsor-7']);
    expect(two.card.lines).toContain('Lo piden: el orden de los pasos y la ficha.');
  });

  it('given one painter of a brief, then whoever has not read it stands after a colon', async () => {
    const answer = await told([...filtered, 'charla 1 en cabina pintan kari fuera omar']);
    expect(answer.card.lines).toContain('Fuera de la zona: omar');
    expect(answer.card.lines).toContainEqual(expect.stringMatching(/^Falta por firmar: kari\. /));
  });

  it('given a part on hold, then what a lead types is said', async () => {
    const held = [...coated, 'retener impulsor-7 piel de naranja', 'liberar impulsor-7'];
    expect((await told(held)).card.lines).toContain(
      'Retenida: piel de naranja. La levanta un encargado: la misma línea, con permiso retención y el motivo; o dice qué se hace con ella.',
    );
  });

  it('given a hot pot and two that it may be, then each tap names a batch', async () => {
    const second = ['mezclar 1kg', 'pesar 2 500g 500g'];
    expect(labels(await told([...filtered, ...second, 'mezcla caliente']))).toEqual(['Mezcla 1', 'Mezcla 2']);
  });

  it('given a humidity that cannot be, then its limits have a decimal comma', async () => {
    expect((await told(['aire 24C 140%'])).card.lines).toContain('Tiene que estar entre 0,1 y 100 %.');
  });

  it('given films outside the rule and a rub that gives way, then each sentence begins with a capital', async () => {
    const read = [
      ...coated,
      'wait 12m',
      'seca impulsor-7',
      'curar impulsor-7 horno 90C',
      'espesor impulsor-7 30 31 32um',
    ];
    const film = await told(read);
    expect(film.card.lines).toContainEqual(
      expect.stringMatching(/3 lecturas\. Lectura por encima: 30 µm, límite 20 µm; lectura/),
    );
    const rub = await talk.say('frotes impulsor-7 50 atraviesa');
    expect(rub.card.lines).toContainEqual(
      expect.stringContaining('La película cedió a los 50 dobles frotes: así no pasa (práctica común, sin fuente).'),
    );
  });

  it('given what rests on an act, then a semicolon parts what has commas of its own', async () => {
    const answer = await told([
      ...filtered,
      '@kari: aire 24C 50%',
      '@omar: mezclar 1kg',
      'pesar 2 500g 500g',
      '@kari: deshacer',
    ]);
    expect(answer.card.lines[0]).toMatch(/En ello se apoya: mezcla 2 abierta, [^;]*, de omar; mezcla 2: pesadas /);
  });

  it('given one data sheet or several, then what goes before is neither singular nor feminine', async () => {
    const hot = await told([...filtered, 'caliente 1']);
    expect(hot.card.lines).toContain(
      'Fichas de datos de seguridad (FDS): secciones 7, manipulación y almacenamiento, y 10, estabilidad y reactividad. Eso y el programa de la empresa van antes que estas líneas.',
    );
  });

  it('given no usual sheet, then the line to type is Spanish', () => {
    const figures = figuresFor({
      profile: shipped.profileOf('es', 'metric'),
      units: 'metric',
      zone: 'UTC',
      now: epochMs(0),
    });
    const asked = shipped
      .wordsIn('es')
      .unclear({ code: 'which-sheet', known: ['taller-2k'], faults: [], invented: undefined }, figures);
    expect(asked).toBe('¿Qué producto? Las que hay: taller-2k. Nombre una, o fije la habitual: fijar ficha taller-2k.');
  });

  it('given the stirrer stands still, then what is to be done is what a line can do', () => {
    const act = 'Su tiempo no corre. Arránquelo otra vez, o vacíe la mezcla si ya no se usa.';
    expect(shipped.wordsIn('es').rings['stir-paused'].act).toBe(act);
    expect(shipped.wordsIn('en').rings['stir-paused'].act).not.toContain('say why');
  });
});

describe('films and walls in US units', () => {
  const figures = (language: string) =>
    figuresFor({
      profile: shipped.profileOf(language, 'us'),
      units: 'us',
      zone: 'UTC',
      now: epochMs(Date.UTC(2026, 2, 2, 8)),
    });

  it('given a Spanish reader, then mil is no thousand and "in" no preposition', () => {
    expect(figures('es').film(micrometres(25.4))).toBe('1 mil');
    expect(figures('es').film(micrometres(50.8))).toBe('2 mils');
    expect(figures('es').wall(millimetres(25.4))).toBe('1 pulg');
    expect(figures('en').film(micrometres(25.4))).toBe('1 mil');
    expect(figures('en').wall(millimetres(25.4))).toBe('1 in');
  });
});

describe('a line that does not read', () => {
  const offered = (line: string) => {
    const read = readLine(line, { ...tallerALasDiez, parts: [...tallerALasDiez.parts, 'impulsor-7'] });
    return read.kind === 'misread' ? read.misread.suggestions : read.kind;
  };

  it('given a part that is nearly dry, then no tap tells of a near miss', () => {
    expect(offered('casi seca impulsor-7')).toEqual([]);
    expect(offered('casi acidente manguera en el paso')).toEqual(['casi accidente acidente manguera en el paso']);
  });

  it.each(['se rompió el fusible', 'le falta pintura', 'hay poca luz'])(
    'given "%s", then its small word is no slip of a verb',
    (line) => expect([[], 'question']).toContainEqual(offered(line)),
  );

  it.each(['vertido', 'vertido disolvente en el bidón'])('given "%s", then a spill is one tap away', async (line) => {
    const asked = await told([line]);
    expect(asked.recorded).toBe(false);
    expect(asked.card.actions).toContainEqual(
      expect.objectContaining({ label: 'Pedir ayuda: Derrame', line: 'derrame' }),
    );
  });

  it('given the mix has gelled in a whole sentence, then it reads as that', () => {
    expect(readLine('se ha gelado', tallerALasDiez)).toMatchObject({ command: { verb: 'gel' } });
    expect(readLine('ha espesado 1', tallerALasDiez)).toMatchObject({ command: { verb: 'thick', batch: 1 } });
  });
});
