// Parts, surfaces, doors and tests as the reader takes them back.

import type { CommandOf } from '../../core/commands.ts';
import { writeDetails, written } from './write-quantities.ts';

export function writePart({ part, details, more = [] }: CommandOf<'part'>): readonly string[] {
  return [{ part, details }, ...more].map((named, i) =>
    [i === 0 ? '' : '; part', named.part, ...writeDetails(named.details)].filter((piece) => piece !== '').join(' '),
  );
}

export function writePrep(command: CommandOf<'prep'>): readonly string[] {
  const { parts, grade, profileMicrometres, saltsMilligramsPerSquareMetre, dustRating } = command;
  return [
    command.asNew === undefined ? '' : 'new',
    ...parts,
    grade,
    profileMicrometres === undefined ? '' : written(profileMicrometres, 'um'),
    saltsMilligramsPerSquareMetre === undefined ? '' : `salts ${written(saltsMilligramsPerSquareMetre, 'mg/m2')}`,
    dustRating === undefined ? '' : `dust ${dustRating}`,
  ];
}

export function writeTested(command: CommandOf<'adhesion' | 'rub'>): readonly string[] {
  const coupon = command.coupon === true ? 'coupon' : '';
  return command.verb === 'adhesion'
    ? [command.part, command.rating, coupon]
    : [command.part, String(command.doubleRubs), command.result, coupon];
}

/** A name of one plain word needs no quotes. */
export const writePerson = (name: string): string => (/^[a-z][a-z0-9-]*$/.test(name) ? name : JSON.stringify(name));
