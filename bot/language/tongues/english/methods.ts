// The ways of applying a coat, in English: as they are called, as people type them, and what to look out for.

import { type Method, methods } from '../../../../core/methods.ts';

export interface MethodWords {
  readonly name: string;
  /** Words that mean it wherever a method may stand, without accents. */
  readonly typed: string;
  /** Common practice, no source: one line. */
  readonly tip: string;
}

export const englishMethods: Readonly<Record<Method, MethodWords>> = {
  flow: {
    name: 'flow',
    typed: 'flow flowed flowing flowcoat flow-coat flowcoated pour poured',
    tip: 'Flow: pour, then catch, filter and reuse what drains.',
  },
  dip: { name: 'dip', typed: 'dip dipped dipping', tip: 'Dip: once, and slowly.' },
  brush: { name: 'brush', typed: 'brush brushed brushing', tip: 'Brush: slow and light, or it bubbles.' },
  roller: { name: 'roller', typed: 'roller roll rolled rolling', tip: 'Roller: slow and light, or it bubbles.' },
  spray: {
    name: 'spray',
    typed: 'spray sprayed spraying hvlp',
    tip: 'Spray: a fine orange peel or mottle is to be expected.',
  },
};

const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** `flow, dip, brush, roller or spray`. */
export const englishMethodList = either.format(methods.map((method) => englishMethods[method].name));
