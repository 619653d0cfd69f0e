// Words of a line that are no verb and have a place of their own in it: they round it off, mark a number, name a thing or a
// place, or choose. The readers know them as they stand here; the small words of every other tongue lead to them.

import type { Mask } from '../../../../core/session/mask.ts';
import type { EmergencyField } from '../../../../core/session/session-commands.ts';
import type { SolventUse } from '../../../../core/solvent-uses.ts';
import { usualPlaces } from '../../../../core/usual-places.ts';

const words = (spaced: string): ReadonlySet<string> => new Set(spaced.split(' '));

/** Rows of words and what each says. */
const saying = <Said>(...rows: readonly (readonly [words: string, said: Said])[]): ReadonlyMap<string, Said> =>
  new Map(rows.flatMap(([spaced, said]) => [...words(spaced)].map((word) => [word, said] as const)));

/** Dropped wherever nothing takes them. */
export const fillers = words(
  'please pls thanks thx the with of for and & + / is was by on in at into to now just from parts #',
);
/** `0.1g up to 2kg`: between what a scale shows and what it carries. */
export const reachJoints = words('up to until till');
/** Inside a verb of two words: `close the session`. */
export const smallInVerb = words('the of in to a');
/** Between the days of a stretch. */
export const spanJoints = words('of the for to until till and from - day');
/** `gun cleaning`: the second word adds nothing. */
export const roundsOffUse = words('cleaning clean');

/** The number after it is a batch. */
export const batchMarks = words('batch pot no #');
export const sessionMarks = words('session brief no # number');
export const canMarks = words('can cans tin tins');
export const nearMissWords = words('near miss nearmiss near-miss');

/** Where a part's name stands these never are one. */
export const notNames = words(
  'a new not no all both it them this that again everything same already permit ago before-now yesterday today at am pm noon midnight final hand here there',
);

export const metals = words(
  'steel stainless iron aluminium aluminum alu inox brass bronze copper zinc titanium nickel magnesium',
);
export const metalKinds = words(
  'cast ductile grey gray mild carbon galvanised galvanized stainless duplex tool forged wrought',
);
/** As a part carries it: some spellings meet in one. */
export const metalSpellings = saying(
  ['aluminum alu', 'aluminium'],
  // Spanish puts the metal before its kind: acero inoxidable.
  ['stainless-steel inox steel-stainless steel-inox', 'stainless'],
  ['iron-cast', 'cast-iron'],
  ['cast-iron-grey', 'grey-iron'],
  ['cast-iron-ductile', 'ductile-iron'],
  ['steel-carbon', 'carbon-steel'],
  ['steel-mild', 'mild-steel'],
  ['steel-galvanised galvanised galvanized', 'galvanised-steel'],
);

export const places = usualPlaces;
/** People stand in them, and they are coated. */
export const coatedPlaces = words('tank cabinet');
/** Nobody sprays inside one by this. */
export const insides = words('vessel tank inside');

/** What may stand between names and says what they do. */
export const placings = saying<'sprayers' | 'stays' | 'out' | 'attendant'>(
  ['spray sprays spraying sprayer sprayers', 'sprayers'],
  ['stays stay staying near exposed', 'stays'],
  ['out moved left', 'out'],
  ['outside attendant watch', 'attendant'],
);
export const whichStretch = saying<'this' | 'last'>(['this', 'this'], ['last previous past', 'last']);
export const emergencyCalls = saying<EmergencyField>(['call numbers number phone', 'call']);

export const usesCalled = saying<SolventUse>(
  ['thinner thin', 'thinning'],
  ['gun spray flush flushing', 'gun-cleaning'],
  // The ledger counts whatever is no gun with the vessels.
  ['vessel vessels brush brushes roller rollers', 'vessel-cleaning'],
  ['wipe degrease degreasing', 'wiping'],
);

/** What is worn over the face. */
export const maskFaces = saying<Mask['facepiece']>(
  ['half halfmask half-mask', 'half-mask'],
  ['full fullface full-face full-mask whole', 'full-facepiece'],
  ['hood helmet', 'helmet-or-hood'],
);
/** Where its air comes from. */
export const maskTypes = saying<Mask['type']>(
  ['cartridge cartridges filter filters organic vapour vapor a2', 'air-purifying'],
  ['powered papr', 'powered-air-purifying'],
  ['supplied airline', 'supplied-air-continuous-flow'],
  ['scba self-contained', 'self-contained-pressure-demand'],
);
/** Twice the air of ordinary work. */
export const hardWork = words('hard heavy');
/** Said round it. */
export const roundMask = words('mask masks respirator respirators what which wear worn is does air face');
