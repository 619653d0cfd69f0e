// Names that the record holds in one spelling, as an English reader is shown them; and the words and the example that the
// help prints of each row of the vocabulary.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { PlaceName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { ObjectionCode } from '../../../../core/objections.ts';
import type { FigureSourceId } from '../../../../core/session/brief-lines.ts';
import type { EmergencyField } from '../../../../core/session/session-commands.ts';
import type { VocabularyName } from '../../vocabulary.ts';
import { englishMethods } from './methods.ts';
import { englishSolvents } from './solvents.ts';
import { englishVerbs } from './verbs.ts';

const figureSources: Readonly<Record<FigureSourceId, string>> = {
  lel: '29 CFR 1910.94(c)(6)(ii); a quarter of the limit, or the stricter share that the crew has set',
  exposure:
    'vapour over the lowest published day limit (29 CFR 1910.1000, NIOSH Pocket Guide), times the mixing factor',
  fan: 'open face times measured velocity',
  face: '29 CFR 1910.107(b)(5)(i)',
  oven: '440 ft3/min a US gallon (NFPA 86, from memory), or the solvent’s own figure where it asks for more; as its fan moves it hot',
  'oven-purge': '29 CFR 1910.107(j)(4)(iii)(b); four volumes: NFPA 86, from memory',
  purge: '20.9 exp(-v/V), well mixed; 19.5 %: 29 CFR 1910.146(b)',
  settled: 'argon is 1.38 times as heavy as air (ideal gas) and lies in pits',
  flush: '29 CFR 1910.107(g)(5)',
};

export const englishNames = {
  method: (method: Method): string => englishMethods[method].name,
  methodWay: (method: Method): string => englishMethods[method].way,
  methodAsked: 'Before the coat tap its method: it says how that goes on, and what to wear.',
  methodFinish: (method: Method): string | undefined => englishMethods[method].finish,
  place: (place: PlaceName): string => place,
  metal: (metal: string): string => metal,
  solvent: (id: SolventId): string => englishSolvents[id],
  rule: (code: ObjectionCode): string => code.replaceAll('-', ' '),
  emergencyField: (field: EmergencyField): string => field,
  figureSource: (id: FigureSourceId): string => figureSources[id],
  /** Where a line comes from; what is quoted of a sheet stays as it is. */
  source: (source: string): string => source,
};

export const englishTyped = {
  words: (name: VocabularyName): readonly string[] => englishVerbs[name].words,
  example: (name: VocabularyName): string => englishVerbs[name].example,
  /** Of a pasted list, the list itself is the example. */
  listExample: 'part impeller-7 cast-iron 12mm; part valve-3 steel 6mm',
  /** What the examples call a part, where the crew has none. */
  namedPart: 'impeller-7',
};
