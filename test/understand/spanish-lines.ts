// Lines as Spanish-speaking crews type them, of Spain and of the shops of the United States.

import { asks, type SpokenLine, says, saysNothing } from './spoken-line.ts';

const rocio = says('Rocio');
const beto = says('Beto');
const nothing = saysNothing('Rocio');
const asked = asks('Rocio');

export const spanishLines: readonly SpokenLine[] = [
  rocio('order', 'flashed', 'la bracket-8 ya está seca', 'dry bracket-8'),
  rocio('order', 'stirring', 'mezcla 1 filtrada', 'filter 1'),
  rocio('order', 'working', 'bracket 9 está a 91', 'temp bracket-9 91C'),
  rocio('order', 'unweighed', 'mezcla 1: 901 de A y 899 de B', 'weigh 1 901g 899g'),
  rocio('partname', 'flashed', 'la 8 está seca', 'dry bracket-8'),
  rocio('partname', 'working', 'pintar flange 2 con brocha mezcla 1', 'coat flange-2 1 brush'),
  rocio('units', 'bare', 'aire 24 46', 'air 24C 46%'),
  beto('units', 'bare', 'aire 74 48', 'air 74F 48%'),
  rocio('filler', 'stirring', 'oye ya filtré la mezcla 1', 'filter 1'),
  rocio('several', 'flashed', 'bracket 8 seca y al horno a 90', 'dry bracket-8 ; cure bracket-8 oven 90C'),
  nothing('negative', 'flashed', 'la bracket-8 todavía no está seca'),
  nothing('negative', 'stirring', 'no he filtrado la mezcla 1'),
  nothing('plan', 'working', 'voy a pintar flange-1 con la mezcla 1'),
  nothing('hedge', 'flashed', 'creo que bracket-8 está seca'),
  nothing('ask', 'flashed', '¿está seca bracket-8?'),
  nothing('ask', 'working', 'quién pintó bracket-9'),
  asked('working', '¿cómo va la mezcla 1?', /mezcla 1/i),
];
