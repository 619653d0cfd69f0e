// Names that nobody has used, in English: what each tap does with them.

import { filmTestNames } from '../../../../core/film-tests.ts';
import type { PartName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { Figures } from '../../figures.ts';

/** As many as a button has room for, and how many more there are. */
export interface FewParts {
  readonly shown: readonly PartName[];
  readonly more: number;
}

const few = ({ shown, more }: FewParts, figures: Figures): string =>
  more > 0 ? `${shown.join(', ')} and ${more} more` : figures.list(shown);
const areMany = ({ shown, more }: FewParts): boolean => shown.length + more > 1;
const newOnes = (parts: FewParts, figures: Figures): string =>
  parts.more > 0
    ? `All ${parts.shown.length + parts.more} are new`
    : `New ${areMany(parts) ? 'parts' : 'part'} ${few(parts, figures)}`;

/** What may be done to a part that nobody has named. */
export const namingVerbs = [
  ...(['coat', 'prep', 'surface', 'dry', 'cure', 'temp', 'wet', 'film', 'adhesion', 'rub', 'shipped', 'hold'] as const),
  ...filmTestNames,
] as const;
export type NamingVerb = (typeof namingVerbs)[number];

/** `one`: of a single part; `many`: of several. */
const newThen =
  (one: string, many = one) =>
  (parts: FewParts, figures: Figures): string =>
    `${newOnes(parts, figures)}: ${areMany(parts) ? many : one}`;

/** What a tap does, where a name was not known. */
export const englishNewParts = {
  coat: (parts: FewParts, method: Method, batch: number | undefined, figures: Figures) =>
    `Coat ${few(parts, figures)} (${batch === undefined ? '' : `batch ${batch}, `}${method})`,
  prep: (parts: FewParts, figures: Figures) => `Prepared: ${few(parts, figures)}`,
  surface: (part: string) => `Surface of ${part}`,
  place: (name: string) => `${name} is a place: its steel`,
  newPlace: (place: string) => `New place ${place}`,
  few,
  /** Those that are like a known one, and how many are like none. */
  someNear: (pairs: readonly (readonly [PartName, PartName])[], others: number, figures: Figures) =>
    `${figures.list(pairs.map(([typed, near]) => `${typed} is ${near}`))}; ${others} new`,
  asNew: {
    coat: newThen('coat it', 'coat them'),
    prep: newThen('prepared'),
    surface: newThen('its surface'),
    dry: newThen('dry'),
    cure: newThen('into cure'),
    temp: newThen('its temperature'),
    wet: newThen('its wet film'),
    film: newThen('its dry film'),
    adhesion: newThen('its adhesion'),
    rub: newThen('its solvent rub'),
    'pull-off': newThen('its pull-off'),
    gloss: newThen('its gloss'),
    hardness: newThen('its hardness'),
    holidays: newThen('its holiday test'),
    visual: newThen('how it looks'),
    shipped: newThen('left the shop'),
    hold: newThen('hold it', 'hold them'),
  } satisfies Readonly<Record<NamingVerb, ReturnType<typeof newThen>>>,
};
