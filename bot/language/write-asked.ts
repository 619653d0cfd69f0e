// The line of a question about how things stand, as the reader takes it back.

import type { StateQuestion, ThingAsked } from '../../core/commands.ts';

export const writeThing = (thing: ThingAsked): string =>
  thing.is === 'name' ? thing.name : [thing.noun ?? '', `${thing.number}`].filter(Boolean).join(' ');

const thingsOf = (question: StateQuestion): readonly ThingAsked[] => ('of' in question ? question.of : []);

/** `of`: of these in place of what was named. */
export function writeAsked(question: StateQuestion, of = thingsOf(question)): string {
  const act = 'act' in question && question.act !== undefined ? [question.act] : [];
  const method = 'method' in question && question.method !== undefined ? [question.method] : [];
  const things = of.map(writeThing);
  const topic = question.ask === 'how-stands' ? [question.topic] : [];
  return [
    question.ask,
    ...topic,
    ...(question.ask === 'can-i' ? [...act, ...things, ...method] : [...things, ...act]),
  ].join(' ');
}
