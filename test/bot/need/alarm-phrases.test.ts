// Every alarm phrase that was thought of, in both languages: whom it calls and how soon, and that what to do now is read first,
// with what it rests on. Nobody is called by a line that only holds such words.

import { describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { sessionTalk, sprayCrew, taps } from '../cards/session-talk.ts';
import { type Cried, cried, mixed, quiet } from './alarm-phrases.ts';

const shop = [
  'air 22C 48%',
  'mix 2.4kg',
  'weigh 1 1200g 1200g',
  'open A lot 7731 5kg gas',
  'brief in bay-2 spray kari',
];

async function hear(language: string, line: string): Promise<Answer> {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  try {
    for (const each of shop) await talk.say(each);
    return await talk.say(`@kari: ${line}`);
  } finally {
    talk.close();
  }
}

const apart = (lines: string): readonly string[] => lines.replace(/\s+/g, ' ').trim().split(' / ');

function comesTo({ recorded, to, card, ...answer }: Answer): Cried['comes'] | 'nothing' {
  const offered = Object.keys(taps({ recorded, to, card, ...answer }));
  if (recorded) return offered.includes('no-alarm') ? 'countdown' : to.length > 1 ? 'rings' : 'nothing';
  if (offered[0] === 'ring-everybody') return 'help';
  return card.actions.some(({ line }) => line === 'emergency' || line === 'emergencia') ? 'asks' : 'nothing';
}

describe.each(['en', 'es'] as const)('in need, in %s', (language) => {
  const each = cried[language].flatMap(({ comes, of, lines }) => apart(lines).map((line) => ({ line, comes, of })));

  it.each(each)('given "$line", then $comes, with what to do now of $of first', async ({ line, comes, of }) => {
    const answer = await hear(language, line);
    expect(comesTo(answer)).toBe(comes);
    if (of === undefined) return;
    const { heats, troubles } = shipped.wordsIn(language).session;
    const { now } = of === 'smoking' || of === 'bulging' ? heats[of] : troubles[of];
    expect(answer.card.lines[0]).toBe(`${now.text} (${now.source})`);
  });

  it('given there are many, then at least forty of each language are tried', () => {
    expect(each.length).toBeGreaterThan(40);
  });

  it.each(apart(quiet[language]))('given "%s", then nobody is called', async (line) => {
    expect(['nothing', 'asks', 'help']).toContain(comesTo(await hear(language, line)));
  });
});

it.each(mixed)('given "%s" in an English or a Spanish crew, then everybody is called', async (line) => {
  expect(comesTo(await hear('en', line))).toBe('rings');
  expect(comesTo(await hear('es', line))).toBe('rings');
});
