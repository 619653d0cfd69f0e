// What is put right of an older act in people's own words, and what is told of a lot: always a tap, which says what it does.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const coated = [
  ...[
    'open B lot 8820 5kg',
    'air 24C 48%',
    'mix 2.4kg',
    'weigh 2 1200g 1200g can 1',
    'mix 1kg',
    'weigh 3 500g 500g can 1',
  ],
  ...['wait 102m', 'filter 2', 'filter 3', 'coat new impeller-8 2 brush', 'hold impeller-8 run at the edge'],
];

async function asked(line: string, language: 'en' | 'es' = 'en') {
  const people = sprayCrew.people.map((person) => (person.name === 'omar' ? { ...person, language } : person));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  for (const each of coated) await talk.say(each);
  const { card, recorded } = await talk.say(line);
  return { recorded, lines: card.actions.map((action) => action.line), labels: card.actions.map(({ label }) => label) };
}

describe('an older coat', () => {
  it.each([
    ['en', 'impeller-8 was really out of batch 3', /^amend impeller-8 coat batch 3 /],
    ['en', 'impeller-8 was actually coated at 9:20', /^amend impeller-8 coat at 2026-03-02T09:20 /],
    ['en', 'impeller-8 was in fact dipped', /^amend impeller-8 coat dip /],
    ['es', 'la impeller-8 en realidad se pintó con la mezcla 3', /^amend impeller-8 coat batch 3 /],
  ] as const)(
    'given it is put right by its name (%s: "%s"), then one tap corrects that coat',
    async (language, line, amends) => {
      const { recorded, lines } = await asked(line, language);
      expect(recorded).toBe(false);
      expect(lines).toEqual([expect.stringMatching(amends)]);
    },
  );

  it('given its pot was wrong, then the tap says both pots', async () => {
    const { labels } = await asked('impeller-8 was really out of batch 3');
    expect(labels).toEqual([
      'Change: impeller-8 coated (brush, batch 3) instead of impeller-8 coated (brush, batch 2)',
    ]);
  });

  it.each([
    'was impeller-8 really out of batch 3',
    'impeller-8 was not really out of batch 3',
    'impeller-8 is really dry',
    'impeller-9 was really out of batch 3',
  ])('given it is asked, denied, or of something else ("%s"), then nothing of it is corrected', async (line) => {
    const { recorded, lines } = await asked(line);
    expect(recorded).not.toBe(true);
    expect(lines.filter((each) => each.startsWith('amend impeller-8 coat'))).toEqual([]);
  });
});

describe('a lot', () => {
  it.each([
    ['en', 'the maker is recalling lot 8820, it gels in the can', /^recall lot "8820"/],
    ['en', 'lot 8820 has been recalled', /^recall lot "8820"/],
    ['es', 'el fabricante retira el lote 8820 porque gelifica', /^recall lot "8820"/],
    ['en', 'the recall of lot 8820 is over, maker says it is fine', /^recall-over lot "8820"/],
    ['en', 'recall of lot 8820 is over', /^recall-over lot "8820"/],
    ['en', 'the lot on can 1 is 8802 not 8820', /^amend 1 open lot 8802 /],
    ['es', 'el lote de la lata 1 es 8802, no 8820', /^amend 1 open lot 8802 /],
  ] as const)('given "%s: %s", then the first tap says it, and nothing is recorded', async (language, line, tap) => {
    const { recorded, lines } = await asked(line, language);
    expect(recorded).not.toBe(true);
    expect(lines[0]).toMatch(tap);
  });

  it.each([
    'is lot 8820 recalled?',
    'has the maker recalled lot 8820',
    'lot 8820 is not recalled',
    'they might recall lot 8820',
    'is the lot on can 1 8802',
    '¿está retirado el lote 8820?',
  ])('given it is asked, denied or doubted ("%s"), then no tap calls it back or changes it', async (line) => {
    const { recorded, lines } = await asked(line);
    expect(recorded).not.toBe(true);
    expect(lines.filter((each) => /^(?:recall|amend)/.test(each))).toEqual([]);
  });
});
