// Where a line may be more than the strict reader takes it for: what that reader knows better stands as it asks it.

import type { Misunderstood } from '../misread-line.ts';
import type { MisreadCode } from '../reading.ts';
import type { VocabularyName } from '../vocabulary.ts';

/** What begins with these speaks of an act and is none: `amend 1 filter` filters nothing. */
const ofActs: ReadonlySet<VocabularyName> = new Set(['amend', 'set', 'help', 'find']);

/** Where the strict reader knows better what is wrong, what it asks stands. */
export const mayBeOtherwise = ({ failed: { failed: code, token }, verb }: Misunderstood): boolean =>
  // `set me up with 1.2 kilos` begins with no setting's name.
  (verb === undefined || !ofActs.has(verb.row.name) || (verb.row.name === 'set' && code === 'left-over')) &&
  (open.has(code) ||
    // `flange 4`, a name with a space; `at 0.6 m/s`, no hour; `90C, impeller-8`, no air; `mezcla 2, 602 gramos`, two numbers.
    (code === 'ambiguous-number' && /^(?:\p{L}|\d+[,;:] )/u.test(token?.text ?? '')) ||
    (code === 'impossible' && (/^\d+(?:\.\d+)?$/.test(token?.text ?? '') || token?.start === 0)));
const open: ReadonlySet<MisreadCode> = new Set([
  'unknown-verb',
  'left-over',
  'incomplete',
  'unit-missing',
  'ambiguous-name',
  // Here only of what warns: `ojo Lia, el 2 se espesa`.
  'no-cry',
]);
