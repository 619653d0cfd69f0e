// Names that the record holds in one spelling, as an English reader is shown them; and the words and the example that the
// help prints of each row of the vocabulary.

import { type SolventId, solvents } from '../../../core/calc/solvents.ts';
import type { Method } from '../../../core/commands.ts';
import type { PlaceName } from '../../../core/ids.ts';
import type { ObjectionCode } from '../../../core/objections.ts';
import type { EmergencyField } from '../../../core/session/session-commands.ts';
import { type VocabularyName, vocabulary } from '../vocabulary.ts';

export const englishNames = {
  method: (method: Method): string => method,
  place: (place: PlaceName): string => place,
  metal: (metal: string): string => metal,
  solvent: (id: SolventId): string => solvents[id].name,
  rule: (code: ObjectionCode): string => code.replaceAll('-', ' '),
  emergencyField: (field: EmergencyField): string => field,
  /** Where a line or a figure comes from; what is quoted of a sheet stays as it is. */
  source: (source: string): string => source,
};

export const englishTyped = {
  words: (name: VocabularyName): readonly string[] => vocabulary[name].words,
  example: (name: VocabularyName): string => vocabulary[name].example,
};
