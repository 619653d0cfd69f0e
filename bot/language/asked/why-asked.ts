// A why in other words than the strict ones, and a word of the trade that is asked about: to the strict lines of both.

import type { ThingAsked } from '../../../core/commands.ts';
import type { Hearing } from '../hearing.ts';
import type { LineContext } from '../reading.ts';
import { termNamed } from '../terms-asked.ts';
import type { WhyTyped } from '../tongues/why-typed.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { thingsSaid } from './things-said.ts';

/** `what do you mean by flash off`: only of what is a word of the trade. */
export function meaningAsked(asked: string, { defines }: WhyTyped, hearing: Hearing): string | undefined {
  return defines.flatMap((each) => each.exec(asked)?.[1] ?? []).find((term) => termNamed(term, hearing) !== undefined);
}

/** What it is about, empty of the last card; `undefined` where it asks no why. */
export function whyAsked(asked: string, { said }: WhyTyped): string | undefined {
  const found = said.map((each) => each.exec(asked)).find((each) => each !== null);
  return found === undefined || found === null ? undefined : (found[1] ?? '');
}

/** `why can't I coat 8` as the question what stands against it; `undefined` where it is none. */
export function askedWhether(about: string, hearing: Hearing): string | undefined {
  const text = withoutAccents(about.toLowerCase()).replace(/[?!. ]+$/, '');
  const typed = hearing.tongues.map(({ questions }) => questions.why).find(({ not }) => not.test(text));
  return typed && text.replace(typed.not, typed.may).replace(/ +/g, ' ');
}

/** `why did it just ring`: it asks what rang. */
export const asksWhatRang = (text: string, { tongues }: Hearing): boolean =>
  tongues.some(({ questions }) => questions.rang.test(withoutAccents(text.toLowerCase())));

/** The parts, pots and cans that a why names. */
export function thingsOfWhy(about: string, context: LineContext): readonly ThingAsked[] {
  const tokens = tokenize(withoutAccents(about.toLowerCase()).replace(/(?<=\d)'?s\b/g, ''), context.hearing);
  const named = context.hearing.tongues.map(({ questions }) => thingsSaid(tokens, questions, context).things);
  return (named.find((things) => things.length > 0) ?? []).map(thingAsked);
}

function thingAsked(thing: string): ThingAsked {
  const [, noun, number] = /^(?:(batch|can|session) )?(\d+)$/.exec(thing) ?? [];
  if (number === undefined) return { is: 'name', name: thing };
  return noun === 'batch' || noun === 'can' || noun === 'session'
    ? { is: 'number', number: Number(number), noun }
    : { is: 'number', number: Number(number) };
}
