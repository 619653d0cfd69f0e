// Every tongue there is, heard together. What a name may be does not hang on who speaks: the record stays, and a crew's
// languages change.

import { type Hearing, hearingOf } from './hearing.ts';
import { englishTyped } from './tongues/english/typed.ts';
import { spanishTyped } from './tongues/spanish/typed.ts';

export const everyTongue: Hearing = hearingOf([englishTyped, spanishTyped], []);
