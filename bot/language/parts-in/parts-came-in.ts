// Parts that came in, told by their names alone: `lug-1, lug-2 and lug-3`. It is always a tap first: they may be named for anything.

import type { Understands } from '../understood.ts';
import { bookedBy } from './part-told.ts';
import { isOnlyNames } from './parts-typed.ts';

export const partsCameIn: Understands = (line, context, strictly) => {
  if (!isOnlyNames(line, context.hearing)) return undefined;
  const booked = `parts in ${line}`;
  const isNews = bookedBy(booked, strictly).some((part) => !context.parts.includes(part));
  return isNews ? { is: 'likely', lines: [booked] } : undefined;
};
