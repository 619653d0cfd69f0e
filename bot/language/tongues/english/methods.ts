// The ways of applying a coat, in English: as they are called, as people type them, and what to look out for.

import { type Method, methods } from '../../../../core/methods.ts';

export interface MethodWords {
  readonly name: string;
  /** Words that mean it wherever a method may stand, without accents. */
  readonly typed: string;
  /** How it goes on, said before the coat. Common practice, no source: one line. */
  readonly way: string;
  /** What is to be expected of the film, said after it. */
  readonly finish?: string;
}

export const englishMethods: Readonly<Record<Method, MethodWords>> = {
  flow: {
    name: 'flow',
    typed: 'flow flowed flowing flowcoat flow-coat flowcoated pour poured',
    way: 'Flow: pour once; catch, filter and reuse what drains.',
  },
  dip: { name: 'dip', typed: 'dip dipped dipping dunked dunk immersed', way: 'Dip: once, and slowly.' },
  brush: { name: 'brush', typed: 'brush brushed brushing', way: 'Brush: slow and light, or it bubbles.' },
  roller: {
    name: 'roller',
    typed: 'roller roll rolled rolling rollered',
    way: 'Roller: slow and light, or it bubbles.',
  },
  spray: {
    name: 'spray',
    typed: 'spray sprayed spraying hvlp',
    way: 'Spray: light, even passes, each over half of the one before.',
    finish: 'Sprayed: a fine orange peel or mottle is to be expected.',
  },
};

const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** `flow, dip, brush, roller or spray`. */
export const englishMethodList = either.format(methods.map((method) => englishMethods[method].name));
