// Nombres que nadie ha usado: lo que hace cada toque con ellos.

import type { Figures } from '../../figures.ts';
import type { englishNewParts, FewParts } from '../english/new-parts.ts';
import { methodName, spanishPlace } from './names.ts';
import type { Spoken } from './spoken.ts';

const few = ({ shown, more }: FewParts, figures: Figures): string =>
  more > 0 ? `${shown.join(', ')} y ${more} más` : figures.list(shown);
const areMany = ({ shown, more }: FewParts): boolean => shown.length + more > 1;
const newOnes = (parts: FewParts, figures: Figures): string =>
  parts.more > 0
    ? `Las ${parts.shown.length + parts.more} son nuevas`
    : `${areMany(parts) ? 'Piezas nuevas' : 'Pieza nueva'} ${few(parts, figures)}`;

const newThen =
  (one: string, many = one) =>
  (parts: FewParts, figures: Figures): string =>
    `${newOnes(parts, figures)}: ${areMany(parts) ? many : one}`;

export const spanishNewParts = (say: Spoken): typeof englishNewParts => ({
  coat: (parts, method, batch, figures) =>
    `Capa en ${few(parts, figures)} (${batch === undefined ? '' : `mezcla ${batch}, `}${methodName(say, method)})`,
  prep: (parts, figures) => `${areMany(parts) ? 'Preparadas' : 'Preparada'}: ${few(parts, figures)}`,
  surface: (part) => `Superficie de ${part}`,
  place: (name) => `${name} es un lugar: su sustrato`,
  newPlace: (place) => `Lugar nuevo: ${spanishPlace(place)}`,
  few,
  someNear: (pairs, others, figures) =>
    `${figures.list(pairs.map(([typed, near]) => `${typed} es ${near}`))}; ${others} ${others === 1 ? 'nueva' : 'nuevas'}`,
  asNew: {
    coat: newThen('con su capa'),
    prep: newThen('preparada', 'preparadas'),
    surface: newThen('su superficie'),
    dry: newThen('seca', 'secas'),
    cure: newThen('a curar'),
    temp: newThen('su temperatura'),
    wet: newThen('su película húmeda'),
    film: newThen('su película seca'),
    adhesion: newThen('su adherencia'),
    rub: newThen('sus frotes'),
    'pull-off': newThen('su arrancamiento'),
    gloss: newThen('su brillo'),
    hardness: newThen('su dureza'),
    holidays: newThen('sus poros'),
    visual: newThen('su aspecto'),
    shipped: newThen('fuera del taller'),
    hold: newThen('retenida', 'retenidas'),
  },
});
