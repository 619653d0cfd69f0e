// Names that the record holds in one spelling, as an English reader is shown them; and the words and the example that the
// help prints of each row of the vocabulary.

import type { NoFigure } from '../../../../core/calc/dose.ts';
import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { PlaceName } from '../../../../core/ids.ts';
import type { Method } from '../../../../core/methods.ts';
import type { ObjectionCode } from '../../../../core/objections.ts';
import type { FigureSourceId } from '../../../../core/session/figure-sources.ts';
import type { EmergencyField } from '../../../../core/session/session-commands.ts';
import { firstUpper } from '../../first-upper.ts';
import type { HelpGroup } from '../../help-groups.ts';
import type { VocabularyName } from '../../vocabulary.ts';
import { englishHelpGroups } from './help-topics.ts';
import { englishMethods } from './methods.ts';
import { englishSolvents } from './solvents.ts';
import { englishVerbs } from './verbs.ts';

/** The formula round the rule that it rests on. */
const figureSources: Readonly<Record<FigureSourceId, (law: string) => string>> = {
  lel: (law) => `${law}; a quarter of the limit, or the stricter share that the crew has set`,
  exposure: (law) => `vapour over the day limit that counts here (${law}), times the mixing factor`,
  fan: () => 'open face times measured velocity',
  face: (law) => law,
  oven: (law) =>
    `440 ft3/min a US gallon (${law}), or the solvent’s own figure where it asks for more; as its fan moves it hot`,
  'oven-purge': (law) => law,
  purge: (law) => `20.9 exp(-v/V), well mixed; 19.5 %: ${law}`,
  settled: () => 'argon is 1.38 times as heavy as air (ideal gas) and lies in pits',
  flush: (law) => law,
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
  /** `law`: the rule that it rests on in the crew's country. */
  figureSource: (id: FigureSourceId, law: string): string => figureSources[id](law),
  /** Where a line comes from; what is quoted of a sheet stays as it is. */
  source: (source: string): string => source,
};

const firstOf = (words: string): string => words.split(' ')[0] ?? words;

export const englishTyped = {
  words: (name: VocabularyName): readonly string[] => englishVerbs[name].words,
  example: (name: VocabularyName): string => englishVerbs[name].example,
  helpGroup: (group: HelpGroup): string => firstUpper(firstOf(englishHelpGroups[group])),
  /** The line that asks for all of it. */
  helpAll: (group: HelpGroup): string => `help all ${firstOf(englishHelpGroups[group])}`,
  /** Of a pasted list, the list itself is the example. */
  listExample: 'part impeller-7 cast-iron 12mm; part valve-3 steel 6mm',
  /** What the examples call a part, where the crew has none. */
  namedPart: 'impeller-7',
};

/** Why a sheet has no figure for a temperature. */
export const englishNoFigure: Readonly<Record<NoFigure, string>> = {
  unknown: 'no temperature reading that is fresh enough',
  below: 'colder than the sheet gives a figure for: ask the maker, or warm the room',
  above: 'warmer than the sheet gives a figure for: ask the maker, or cool the room',
};
