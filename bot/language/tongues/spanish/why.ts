// What is said of why a figure is what it is, in Spanish.

import type { NoFigure } from '../../../../core/calc/dose.ts';
import { minutes } from '../../../../core/units.ts';
import type { WayToErr } from '../../../cards/why/told.ts';
import { type englishWhy, lastedTold } from '../english/why.ts';
import { atTime, capital } from './names.ts';
import type { Spoken } from './spoken.ts';
import { spanishFormulas } from './why-formulas.ts';

type Caution = 'at-least' | 'at-most';

const errsOf = (say: Spoken): Readonly<Record<WayToErr, string>> => ({
  late: 'Yerra por tarde: debe durar al menos eso, así que el tiempo sin lectura no cuenta y el minuto se redondea hacia arriba.',
  early: `Yerra por pronto: puede durar como mucho eso, así que el tiempo sin lectura corre a lo más rápido ${say.ofThe('sheet')} y el minuto se redondea hacia abajo.`,
  high: 'Yerra por exceso: redondeado hacia arriba.',
  low: 'Yerra por defecto: redondeado hacia abajo.',
  worst: 'Yerra por exceso: donde hay varias cifras, la que pide más; redondeado hacia arriba.',
  nearest: 'Ni por exceso ni por defecto: sale de lo leído, redondeado a lo más cercano.',
  'as-read': 'Tal como se leyó o se contó: no se le añade nada.',
});

const noFigureOf = (say: Spoken): Readonly<Record<NoFigure, string>> => ({
  unknown: 'sin lectura que sirva',
  below: `más frío de lo que abarca ${say.the('sheet')}`,
  above: `más caliente de lo que abarca ${say.the('sheet')}`,
});

const plainSourceOf = (say: Spoken) =>
  ({
    reading: `lo que alguien ${say.ofThe('crew')} leyó o dijo`,
    record: 'el propio registro',
    setting: 'los ajustes de aquí',
    memory: 'de memoria, sin publicación vista',
  }) as const;

export function spanishWhy(say: Spoken): typeof englishWhy {
  const noFigure = noFigureOf(say);
  const plainSource = plainSourceOf(say);
  const ofSheet = say.ofThe('sheet');
  const notCounted = (caution: Caution): string =>
    caution === 'at-least' ? 'no cuenta nada' : `a lo más rápido ${ofSheet}`;
  return {
    formulas: spanishFormulas(say),
    errs: errsOf(say),
    title: (label, shown) => `Por qué: ${label} ${shown}`.trim(),
    how: (formula) => `Cómo: ${formula}.`,
    read: (entries) => `Leído: ${entries.join('; ')}.`,
    by: (act, by, at, figures) => `${act} (${by}, ${figures.timeDown(at)})`,
    source: (source, quoted) =>
      source.is === 'sheet'
        ? `Fuente: ${source.sheet.name}, revisión ${source.sheet.revision}, ${source.field}: ${quoted}.`
        : `Fuente: ${source.is === 'published' ? quoted : plainSource[source.is]}.`,
    lawSource: (quoted) => `Fuente: ${quoted}.`,
    assumed: (lines) => `Supuesto: ${lines.map((line) => line.replace(/\.$/, '')).join('; ')}.`,
    nowIs: (shown) => `Según el registro tal como está ahora: ${shown}.`,
    gone: 'Aquello de lo que salió ya no está a mano aquí: lo tienen la traza y la exportación.',
    nothing:
      'No hay ninguna tarjeta suya por la que preguntar. Diga qué: por qué la vida, por qué el punto de rocío, por qué las 09:42.',
    notThere: (asked) =>
      `Nada de la última tarjeta, ni nada de lo que corre, se llama “${asked}”. Se puede preguntar por:`,
    which: 'Pregunte por una de ellas:',
    whichTitle: '¿Por qué qué?',
    whyNot: 'Por qué no',
    whyHeld: (part) => `Por qué está retenida ${part}`,
    noHold: (part) => `${part} no está retenida, y ninguna regla habla contra ella.`,
    lifted: {
      lead: `${capital(say.a('lead'))} puede permitirlo antes, con un motivo.`,
      supervisor: 'Un supervisor puede permitirlo antes, con un motivo.',
      nobody: 'Nadie lo levanta antes.',
    },
    ruleErrs: 'Lo que nadie leyó ni dijo habla en contra, no a favor.',
    deviates: (what, by, at, figures) => `${figures.timeDown(at)}, ${by}: ${what}`,
    cardIs: 'La tarjeta dice lo que se registró; nada de ella es un cálculo.',
    law: (duration, figures) => {
      const sheet = `${capital(say.one('sheet'))}:`;
      switch (duration.kind) {
        case 'plain': {
          const { range } = duration;
          const where =
            range === undefined
              ? 'a cualquier temperatura'
              : `de ${figures.temperature(range.lowestCelsius)} a ${figures.temperature(range.highestCelsius)}`;
          return `${sheet} ${figures.minutesUp(duration.minutes)} ${where}.`;
        }
        case 'table':
          return `${sheet} ${figures.list(duration.points.map((point) => `${figures.minutesUp(point.minutes)} a ${figures.temperature(point.celsius)}`))}, en línea recta entre ellos.`;
        case 'q10':
          return `${sheet} ${figures.minutesUp(duration.minutes)} a ${figures.temperature(duration.atCelsius)}, ${figures.decimal(duration.factorPerTenDegrees)} veces más rápido cada 10 °C más.`;
        case 'arrhenius':
          return `${sheet} ${figures.minutesUp(duration.minutes)} a ${figures.temperature(duration.atCelsius)}, según Arrhenius con ${figures.decimal(duration.activationKilojoulesPerMole)} kJ/mol.`;
      }
    },
    stretch: ({ lasted, celsius, whole, share, why, expected }, caution, figures) => {
      const at = celsius === undefined || why === 'unknown' ? noFigure[why ?? 'unknown'] : figures.temperature(celsius);
      const minutesOf = `${expected ? 'después ' : ''}${lastedTold(lasted, whole, figures)}, ${at}`;
      if (whole === undefined) return `${minutesOf}: ${notCounted(caution)}`;
      const slow =
        why === undefined ? '' : caution === 'at-most' ? `lo más rápido ${ofSheet}, ` : `lo más lento ${ofSheet}, `;
      return `${minutesOf}: ÷ ${slow}${lastedTold(minutes(whole), whole, figures)} = ${figures.percent(share * 100, 1)}`;
    },
    before: (count) => `(${count} tramos antes de estos)`,
    withoutFigure: (why, caution) => `${noFigure[why]}: ${notCounted(caution)}`,
    heldOn: 'la última lectura se da por válida hasta el final',
    toTheStep: 'se enseña al paso de la balanza',
    asScales: 'las dos balanzas se dan por buenas',
    throughDensities: `en peso, con las densidades ${ofSheet}`,
    metAt: (at, figures) => `B tocó A ${atTime(figures, at)}.`,
    byMass: (mass, figures) => `Para ${figures.mass(mass)} en un recipiente, según la masa que da ${say.the('sheet')}.`,
    shortened: (percent, lid, figures) =>
      `Recortada al ${figures.percent(percent)} de la ${ofSheet}: ${lid ? 'estuvo destapada demasiado' : 'el agitador giró demasiado rápido'}.`,
    margin: (end, margin, figures) => `${figures.timeDown(end)} − ${figures.minutesUp(margin)} para vaciar y lavar.`,
    humidityFromBefore: 'la humedad es de otra lectura que la temperatura',
    leastSpread: (least, figures) => `${capital(say.the('sheet'))} pide al menos ${figures.spread(least)}.`,
    warmthCountsNot: 'el calor ni lo acorta ni lo alarga',
    noCureOnSheet: `${say.the('sheet')} no tiene tal curado: avisa al cabo de un día, para preguntar`,
    bracketed: 'entre dos lecturas de la pieza cuenta la más fría; después de la última, nada',
    notMeasured: 'todavía no lo respalda ninguna lectura de la pieza',
    preStirPoints: (points, figures) =>
      `${capital(say.one('sheet'))}: ${figures.list(points.map((point) => `${figures.decimal(point.minutes)} min con ${figures.mass(point.partAGrams)}`))}, en línea recta entre ellos.`,
    noFigureKept: 'sin dato, no se cuenta',
    vapourOf: (vapour, figures) => `${figures.space(vapour)} de vapor por litro`,
    ofLel: (share, figures) => `hasta el ${figures.percent(share * 100)} del límite, por hora`,
    timesMixing: (factor, assumed, figures) =>
      `× factor de mezcla de aire ${figures.decimal(factor)}${assumed ? ' (supuesto, nadie lo ha fijado)' : ''}`,
    movedHot: (at, figures) => `tal como lo mueve el extractor a ${figures.temperature(at)}`,
    unknownTerm: (term) => `Aquí no hay ninguna palabra “${term}”.`,
    botDoes: (what) => `Aquí: ${what}`,
    inSheet: (field) => `En ${say.the('sheet')}: ${field}.`,
    standard: (name) => `Norma: ${name}. Las palabras son nuestras.`,
    planVolume: 'En las piezas + fuera de las piezas + en pistola y manguera:',
  };
}
