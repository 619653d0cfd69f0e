// Tests of a coated part, in English: what was read, what a job asks and why one fails.

import {
  type Break,
  type FilmTestName,
  type Look,
  standardsOfTest,
  type TestAsked,
  type TestRead,
} from '../../../../core/film-tests.ts';
import type { Figures } from '../../figures.ts';

const breaks: Readonly<Record<Break, string>> = {
  glue: 'the glue let go',
  'in-coat': 'within the coat',
  'off-metal': 'off the metal',
};

const looks: Readonly<Record<Look, string>> = {
  good: 'nothing to see',
  specks: 'specks',
  'orange-peel': 'orange peel',
  mottle: 'mottle',
  runs: 'runs',
  lines: 'lines',
  bubbles: 'bubbles',
  craters: 'craters',
  'bare-spots': 'bare spots',
  dirt: 'dirt',
  blush: 'blush',
};

function read(test: TestRead, figures: Figures): string {
  switch (test.of) {
    case 'wet':
      return `wet film ${figures.list(test.micrometres.map((film) => figures.film(film)))}`;
    case 'pull-off':
      return `pull-off ${figures.pressure(test.megapascals)}${test.brokeAt === undefined ? '' : `, ${breaks[test.brokeAt]}`}`;
    case 'gloss':
      return `gloss ${figures.decimal(test.glossUnits)} GU`;
    case 'hardness':
      return `pencil hardness ${test.pencil}`;
    case 'holidays': {
      const at = test.volts === undefined ? 'voltage not told' : `at ${figures.count(test.volts)} V`;
      return `${test.found === 0 ? 'no holidays' : `holidays: ${test.found}`} ${at}`;
    }
    case 'visual':
      return `look: ${figures.list(test.looks.map((look) => looks[look]))}`;
  }
}

function asked(test: TestAsked, figures: Figures): string {
  switch (test.of) {
    case 'wet':
      return `wet film ${figures.film(test.leastMicrometres)} to ${figures.film(test.mostMicrometres)}`;
    case 'pull-off':
      return `pull-off ${figures.pressure(test.leastMegapascals)} or more`;
    case 'gloss':
      return test.mostUnits === undefined
        ? `gloss ${figures.decimal(test.leastUnits)} GU or more at 60°`
        : `gloss ${figures.decimal(test.leastUnits)} to ${figures.decimal(test.mostUnits)} GU at 60°`;
    case 'hardness':
      return `pencil hardness ${test.least} or harder`;
    case 'holidays':
      return test.volts === undefined ? 'no holidays' : `no holidays at ${figures.count(test.volts)} V or more`;
    case 'visual':
      return 'a look without blemish';
  }
}

const meanings: Readonly<Record<FilmTestName, string>> = {
  'pull-off': 'Where the glue let go, the film bears at least that much.',
  gloss: 'Read at 60°.',
  hardness: 'The hardest pencil that leaves no mark; 6B the softest, 9H the hardest.',
  holidays: 'Each one found is mended, cured and tested again.',
  visual: 'Of a spray a fine orange peel or mottle is to be expected (common practice, no source).',
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

export const englishFilmTests = {
  read,
  asked,
  title: (part: string, test: TestRead, figures: Figures): string => `${part}: ${read(test, figures)}`,
  meaning: (of: FilmTestName): string =>
    [...(standardsOfTest[of] === '' ? [] : [`${standardsOfTest[of]}, from memory.`]), meanings[of]].join(' '),
  fails: (test: TestRead, of: TestAsked | undefined, figures: Figures): string =>
    of === undefined
      ? `${capital(read(test, figures))}: none may be left.`
      : `${capital(read(test, figures))}: the job asks ${asked(of, figures)}.`,
  /** It neither passes nor fails. */
  lacking: (of: TestAsked, test: TestRead | undefined, figures: Figures): string =>
    `${asked(of, figures)}${test === undefined ? '' : ` (read: ${read(test, figures)})`}`,
  noneAsks: 'No job asks for it: it is noted, and nothing is judged by it.',
};
export type FilmTestWords = typeof englishFilmTests;
