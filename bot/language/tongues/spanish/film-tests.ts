// Los ensayos de una pieza recubierta: lo leído, lo que pide la orden y por qué no pasa.

import {
  type Break,
  type FilmTestName,
  type Look,
  standardsOfTest,
  type TestAsked,
  type TestRead,
} from '../../../../core/film-tests.ts';
import type { Figures } from '../../figures.ts';
import type { FilmTestWords } from '../english/film-tests.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';

const breaks: Readonly<Record<Break, string>> = {
  glue: 'cedió el pegamento',
  'in-coat': 'dentro de la capa',
  'off-metal': 'del metal',
};

const looks: Readonly<Record<Look, string>> = {
  good: 'nada que señalar',
  specks: 'grumos',
  'orange-peel': 'piel de naranja',
  mottle: 'moteado',
  runs: 'descuelgues',
  lines: 'rayas',
  bubbles: 'burbujas',
  craters: 'cráteres',
  'bare-spots': 'calvas',
  dirt: 'suciedad',
  blush: 'velado',
};

function read(test: TestRead, figures: Figures): string {
  switch (test.of) {
    case 'wet':
      return `película húmeda ${figures.list(test.micrometres.map((film) => figures.film(film)))}`;
    case 'pull-off':
      return `arrancamiento ${figures.pressure(test.megapascals)}${test.brokeAt === undefined ? '' : `, ${breaks[test.brokeAt]}`}`;
    case 'gloss':
      return `brillo ${figures.decimal(test.glossUnits)} GU`;
    case 'hardness':
      return `dureza al lápiz ${test.pencil}`;
    case 'holidays': {
      const at = test.volts === undefined ? '(sin decir el voltaje)' : `a ${figures.count(test.volts)} V`;
      return `${test.found === 0 ? 'sin poros' : `poros: ${test.found}`} ${at}`;
    }
    case 'visual':
      return `aspecto: ${figures.list(test.looks.map((look) => looks[look]))}`;
  }
}

function asked(test: TestAsked, figures: Figures): string {
  switch (test.of) {
    case 'wet':
      return `película húmeda de ${figures.film(test.leastMicrometres)} a ${figures.film(test.mostMicrometres)}`;
    case 'pull-off':
      return `arrancamiento de ${figures.pressure(test.leastMegapascals)} o más`;
    case 'gloss':
      return test.mostUnits === undefined
        ? `brillo de ${figures.decimal(test.leastUnits)} GU o más a 60°`
        : `brillo de ${figures.decimal(test.leastUnits)} a ${figures.decimal(test.mostUnits)} GU a 60°`;
    case 'hardness':
      return `dureza al lápiz ${test.least} o más dura`;
    case 'holidays':
      return test.volts === undefined ? 'sin poros' : `sin poros a ${figures.count(test.volts)} V o más`;
    case 'visual':
      return 'aspecto sin defectos';
  }
}

const meanings: Readonly<Record<FilmTestName, string>> = {
  'pull-off': 'Donde cedió el pegamento, la película aguanta al menos eso.',
  gloss: 'Leído a 60°.',
  hardness: 'El lápiz más duro que no deja marca; 6B el más blando, 9H el más duro.',
  holidays: 'Cada poro se repara, se cura y se ensaya otra vez.',
  visual: 'A pistola es de esperar piel de naranja fina o moteado (práctica común, sin fuente).',
};

export const spanishFilmTests = (say: Spoken): FilmTestWords => ({
  read,
  asked,
  title: (part, test, figures) => `${part}: ${read(test, figures)}`,
  meaning: (of) =>
    [...(standardsOfTest[of] === '' ? [] : [`${standardsOfTest[of]}, de memoria.`]), meanings[of]].join(' '),
  fails: (test, of, figures) =>
    of === undefined
      ? `${capital(read(test, figures))}: no puede quedar ninguno.`
      : `${capital(read(test, figures))}: ${say.the('job')} pide ${asked(of, figures)}.`,
  lacking: (of, test, figures) =>
    `${asked(of, figures)}${test === undefined ? '' : ` (leído: ${read(test, figures)})`}`,
  noneAsks: `Ninguna ${say.one('job')} lo pide: queda anotado y nada se juzga por ello.`,
});
