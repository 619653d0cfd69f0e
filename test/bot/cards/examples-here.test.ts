// What a card gives as an example is of this crew: the part, pot or can in hand, its people, its units, its country's words.

import { afterEach, describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { alarmNamed } from '../../../core/session/session-commands.ts';
import { demoCrew } from '../../core/given.ts';
import { shopAtTen } from '../language/shop-at-ten.ts';
import { vocabularyNames } from '../language/vocabulary-names.ts';
import { sessionTalk } from './session-talk.ts';

const crewOf = (language: string, units: 'metric' | 'us'): CrewFile => ({
  ...demoCrew,
  zone: 'America/Chicago',
  language,
  units,
  people: demoCrew.people.toReversed().map((person) => ({ ...person, language, units })),
});

const profiles = [
  ['en-GB', 'metric'],
  ['en-US', 'us'],
  ['es-ES', 'metric'],
  ['es-MX', 'metric'],
  ['es-US', 'us'],
] as const;

let talk: ReturnType<typeof sessionTalk>;
afterEach(() => talk?.close());

const shift = ['air 24C 48%', 'part bomb-9 steel', 'mix 1kg', 'weigh 500g 500g', 'wait 115m', 'filter'];
const inHand = [...shift, 'coat bomb-9 1 brush', 'open A lot 7731 5kg exp 12/26 gas'];

async function exampleFor(language: string, units: 'metric' | 'us', lines: readonly string[], line: string) {
  talk = sessionTalk(':memory:', crewOf(language, units));
  for (const each of lines) await talk.say(each);
  const { card } = await talk.say(line);
  return card.lines.map((each) => /^(?:For example|Por ejemplo): (.*)/.exec(each)?.[1]).find(Boolean);
}

describe('an example', () => {
  it.each([
    ['a part that waits', inHand, 'dry', 'dry bomb-9'],
    ['the pot', inHand, 'thicc x', 'thick 1'],
    ['the can', inHand, 'blanket x', 'blanket 2'],
    ['the crew', inHand, 'handover', 'handover rosa'],
    ['nobody’s part', [], 'dry', 'dry impeller-7'],
    ['what comes next, of a line that is near no act', [], 'xyzzy plugh', 'air 24C 48%'],
    [
      'the same behind the air',
      ['air 24C 48%', 'received 5kg A lot 1', 'received 5kg B lot 2'],
      'xyzzy plugh',
      'mix 2.4kg',
    ],
  ])('given %s, then that stands in it', async (_, lines, line, example) => {
    expect(await exampleFor('en-GB', 'metric', lines, line)).toBe(example);
  });

  it.each([
    // By where the crew works, Chicago, whatever its tongue.
    ['es-US', 'us', 'fijar emergencia', 'fijar emergencia teléfono 911'],
    ['en-GB', 'metric', 'set emergency', 'set emergency call 911'],
    ['en-US', 'us', 'set rate', 'set rate 43ft2/h'],
    ['es-ES', 'metric', 'fijar límite aire', 'fijar límite-aire 3h'],
    ['es-US', 'us', 'fijar zona', 'fijar zona America/Chicago'],
    ['es-US', 'us', 'mezclar', 'mezclar 5lb'],
    ['es-MX', 'metric', 'mezclar', 'mezclar 2.4kg'],
  ] as const)('given %s with %s units and "%s", then it is %s', async (language, units, line, example) => {
    expect(await exampleFor(language, units, [], line)).toBe(example);
  });

  it('given the list of all that can be said, then the crew’s own part, pot and people stand in it', async () => {
    talk = sessionTalk(':memory:', crewOf('en-US', 'us'));
    for (const each of inHand) await talk.say(each);
    const { lines } = (await talk.say('help all')).card;
    for (const own of ['dry bomb-9', 'thick 1', 'blanket 2', 'handover rosa', 'surface 72F'])
      expect(lines).toContain(own);
    expect(lines.join()).not.toMatch(/impeller-7/);
  });

  it.each(profiles)(
    'given the help of every act in %s, then what it shows reads as that act',
    async (language, units) => {
      talk = sessionTalk(':memory:', crewOf(language, units));
      for (const each of inHand) await talk.say(each);
      const context = {
        ...shopAtTen,
        hearing: shipped.hearingIn(language),
        country: shipped.profileOf(language, units),
      };
      const parts = [...context.parts, 'bomb-9', 'impeller-7', 'impulsor-7'];
      // Of an alarm the help says what to do.
      for (const name of vocabularyNames.filter((each) => alarmNamed(each) === undefined)) {
        const { tone, lines } = (await talk.say(`help ${name}`)).card;
        // What may be a cry is answered as one.
        if (tone !== 'plain') continue;
        const shown = lines[0] ?? '';
        const read = readLine(shown, { ...context, parts });
        expect(read.kind, `${name}: ${shown}`).not.toBe('misread');
        if (read.kind === 'command') expect(read.command.verb).toBe(name);
        if (language !== 'es-ES') expect(shown).not.toMatch(/charla|relevo/);
      }
    },
  );
});

describe('a figure without its unit', () => {
  it.each([
    ['en-GB', 'metric', 'mix 24', ['mix 24kg', 'mix 24L', 'mix 24g']],
    ['en-US', 'us', 'air 75', ['air 75F', 'air 75%']],
    ['en-GB', 'metric', 'air 24', ['air 24C', 'air 24%']],
  ] as const)('given %s with %s units and "%s", then own units come first', async (language, units, line, offered) => {
    talk = sessionTalk(':memory:', crewOf(language, units));
    const { card, recorded } = await talk.say(line);
    expect(recorded).toBe(false);
    expect(card.actions.map((action) => action.line)).toEqual(offered);
  });

  it('given only one that fits, then it is taken, and the card says as what', async () => {
    talk = sessionTalk(':memory:', crewOf('en-GB', 'metric'));
    await talk.say('air 24C 48%');
    const { card, recorded } = await talk.say('mix 2.4');
    expect(recorded).toBe(true);
    expect(card.lines).toContain('Taken as: mix 2.4kg');
  });
});

describe('an act that names no part', () => {
  it('given two parts that wait for it, then both and each are one tap, shown as the reader types them', async () => {
    talk = sessionTalk(':memory:', crewOf('es-ES', 'metric'));
    for (const each of [...shift, 'part a-2 steel', 'coat bomb-9 a-2 1 brush', 'wait 11m']) await talk.say(each);
    const { card } = await talk.say('secas');
    expect(card.actions.map(({ label, shown }) => [label, shown])).toEqual([
      ['Seca (2)', 'seca a-2 bomb-9'],
      ['Seca a-2', 'seca a-2'],
      ['Seca bomb-9', 'seca bomb-9'],
    ]);
    expect((await talk.say(`tap ${card.actions[0]?.id}`)).recorded).toBe(true);
  });

  it.each([
    ['alto', 'stop'],
    ['arranque', 'stir'],
    ['arranca', 'stir'],
  ])('given "%s" alone, then it is %s', (line, verb) => {
    expect(readLine(line, { ...shopAtTen, hearing: shipped.hearingIn('es') })).toMatchObject({ command: { verb } });
  });

  it('given a step half said in Spanish, then it is offered in Spanish', async () => {
    talk = sessionTalk(':memory:', crewOf('es-ES', 'metric'));
    const { card } = await talk.say('confirmar');
    expect(card.actions.map(({ line }) => line)).toEqual([
      'confirmar clasificado sí',
      'confirmar tierra sí',
      'confirmar recipiente sí',
    ]);
  });
});
