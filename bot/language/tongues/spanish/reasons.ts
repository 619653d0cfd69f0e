// What the clause begins with that says why: `porque la brocha soltaba pelos`, `, ya que urge`; and what follows from what was said
// before it. Common practice and our own choice, no source.

import type { ReasonWords } from '../typed.ts';

export const spanishReasons: ReasonWords = {
  always: 'porque, ya que, puesto que, dado que, para que, por si, debido a',
  behindMark: 'pues, como',
  besides: 'asi que, que',
  hence: 'asi que, por eso, por lo que, de modo que',
  comesFirst: 'es lo que, es donde, son los que',
  toldOf: 'lo que, cuando yo',
  is: 'es, era',
};
