// The developers' page lists every id that other programs and tests may rely on; these tables are made from the code.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { factUnits } from '../bot/cards/fact-ids.ts';
import { misreadCodes } from '../bot/language/reading.ts';
import { english } from '../bot/language/tongues/english/sentences.ts';
import { englishVerbs } from '../bot/language/tongues/english/verbs.ts';
import { allowed } from '../core/allowed.ts';
import { verbRows } from '../core/commands.ts';
import { type Deed, deeds, leastRole } from '../core/crew/who-may.ts';
import { reminderKinds } from '../core/wanted-reminder.ts';

const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

/** A noun keeps its own objections and questions beside it, each a union that the whole names. */
const unionSources = readdirSync('core', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(`core/${file}`, 'utf8'))
  .join('\n\n');

/** The codes of a tagged union, as its source has them: the type leaves nothing behind at run time. */
function codesOf(union: string): readonly string[] {
  const body = unionSources.split(`export type ${union} =`)[1]?.split('\n\n')[0];
  if (body === undefined) throw new Error(`no source has the union ${union}`);
  const members = [...body.matchAll(/^ {2}\| ([A-Z]\w+)$/gm)].flatMap((match) => codesOf(match[1] ?? ''));
  return [...body.matchAll(/code: '([a-z-]+)'/g)].map((match) => match[1] ?? '').concat(members);
}

const where: Readonly<Record<string, string>> = { place: 'place/room', crew: 'crew' };
const keyOf = (kind: string): string => {
  if (kind === 'morning') return '`crew/morning/2026-03-03`';
  if (kind === 'blanket') return '`can/3/blanket`';
  if (kind === 'can-stirred') return '`can/3/stir-done`';
  if (kind === 'bell-test') return '`crew/bell/12/kari`';
  if (kind === 'flush' || kind === 'vessels') return `\`session/4/${kind}/1\``;
  if (/^(brief|spell-end|air-recheck|fan-off)$/.test(kind)) return `\`session/4/${kind}\``;
  if (kind === 'held') return '`crew/held/kari`';
  if (kind === 'digest') return '`crew/digest/2026-03-02`';
  if (kind === 'air-due') return `\`${where.place}/air-due\``;
  return /^(stir|induction|pot|uncovered)/.test(kind) ? `\`batch/1/${kind}\`` : `\`part/impeller-7/${kind}\``;
};

/** What is noted with an act stands on its card by its slot. */
const notedSlots = Object.values(verbRows)
  .flatMap(({ fields }) => Object.values(fields))
  .filter(({ options }) => options?.noted === true)
  .flatMap(({ slots }) => slots)
  .filter(({ name }) => !Object.hasOwn(factUnits, name));

/** As it begins on a line; where a setting is put on and off by others, either way. */
function lineOf(deed: Deed): string {
  if ('say' in deed) return deed.say;
  return deed.off === undefined ? `set ${deed.set}` : `set ${deed.set} ${deed.off ? 'off' : 'on'}`;
}

function tables(): string {
  const rules = Object.entries(allowed).flatMap(([verb, rows]) =>
    rows.map(({ code, source, liftedBy }) => [verb, `\`${code}\``, source, liftedBy]),
  );
  return [
    '### Facts on cards',
    table(
      ['id', 'unit', 'label'],
      [
        ...Object.entries(factUnits).map(([id, unit]) => [
          `\`${id}\``,
          unit,
          english.facts[id as keyof typeof factUnits],
        ]),
        ...notedSlots.map(({ name, unit = 'count' }) => [`\`${name}\``, unit, english.slots[name]]),
      ],
    ),
    '### What is allowed when: objections, whose rule, who may lift it beforehand',
    table(['verb', 'code', 'source', 'lifted by'], rules),
    '### Who may say what (where nobody is one, whoever ranks highest; what is not here is anybody’s)',
    table(
      ['said', 'at least'],
      deeds.map((deed) => [`\`${lineOf(deed)}\``, leastRole(deed)]),
    ),
    '### Deviations that are never objections',
    table(
      ['code'],
      codesOf('Objection')
        .filter((code) => !rules.some((row) => row[1] === `\`${code}\``))
        .map((code) => [`\`${code}\``]),
    ),
    '### Questions back (kind `misread`)',
    table(
      ['code'],
      [...misreadCodes, ...codesOf('Unclear'), 'no-such-tap'].map((code) => [`\`${code}\``]),
    ),
    '### Reminder keys (a repeat carries its number: `batch/1/pot-end/2`)',
    table(
      ['key', 'title'],
      reminderKinds.map((kind) => [keyOf(kind), english.rings[kind].title('…', { date: (day) => day })]),
    ),
    '### What can be typed',
    table(
      ['verb', 'example'],
      Object.entries(englishVerbs).map(([name, { example }]) => [name, `\`${example}\``]),
    ),
  ].join('\n\n');
}

test('the tables of the developers’ page are those of the code', () => {
  const file = readFileSync('DEVELOPERS.md', 'utf8');
  const updated = file.replace(
    /<!-- tables -->[\s\S]*<!-- \/tables -->/,
    () => `<!-- tables -->\n${tables()}\n<!-- /tables -->`,
  );
  if (process.env.UPDATE_TABLES === '1') writeFileSync('DEVELOPERS.md', updated);
  expect(readFileSync('DEVELOPERS.md', 'utf8')).toBe(updated);
  expect(codesOf('Objection').length).toBeGreaterThan(20);
  expect(codesOf('Unclear')).toEqual(
    expect.arrayContaining(['which-batch', 'which-sheet', 'undo-too-late', 'may-not-settle']),
  );
});
