// A language is one folder: with a third one made from the English folder, a whole shift is typed and told in it, in the
// terminal, on the page and in Slack, and no English is left in what is said.

import { afterEach, describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';
import { bayTwo, openWorkshop } from '../slack/fake/workshop.ts';
import { openShop } from '../web/shop-page.ts';
import { visitor } from '../web/visitor.ts';
import { englishIn, pseudoShift, threeTongues } from './pseudo-shift.ts';
import { inPseudo, typedInPseudo } from './pseudo-tongue.ts';
import { shopAtTen } from './shop-at-ten.ts';

const crew: CrewFile = {
  ...sprayCrew,
  language: 'fi',
  people: sprayCrew.people.map((person) => ({ ...person, language: 'fi' })),
};

const closing: (() => unknown)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

/** Each English word once, with what it stands in. */
function left(texts: readonly string[]): readonly string[] {
  const found = new Map(texts.flatMap((text) => englishIn(text).map((word) => [word, text.slice(0, 120)] as const)));
  return [...found].map(([word, text]) => `${word} | ${text}`);
}

const textsOf = ({ card: { title, facts, lines, actions, fields } }: Answer): readonly string[] => [
  title,
  ...facts.flatMap(({ label, value }) => [label, String(value)]),
  ...lines,
  ...[...actions, ...(fields ?? [])].map(({ label }) => label),
];

/** Every text that a block holds, and none of its ids and values. */
function textsIn(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(textsIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) =>
    key === 'text' && typeof each === 'string' ? [each] : textsIn(each),
  );
}

const seen = (html: string): readonly string[] => [
  ...html
    .replace(/<(script|style|code)[\s\S]*?<\/\1>|<!--[\s\S]*?-->/g, ' ')
    .split(/<[^>]*>/)
    .map((text) => text.trim()),
  ...[...html.matchAll(/(?:aria-label|placeholder|title|alt)="([^"]*)"/g)].map(([, text = '']) => text),
];

/** What a line of the third tongue calls, whatever its speaker's own is. */
function calledBy(line: string, language: string): string {
  const read = readLine(inPseudo(line), { ...shopAtTen, hearing: threeTongues.hearingIn(language) });
  return read.kind === 'command' ? read.command.verb : read.kind === 'misread' ? read.misread.code : read.kind;
}

describe('a third tongue', () => {
  it.each([
    ['there is fire in the hall', 'fire'],
    ['fire, this is not a drill', 'fire'],
    ['my eyes are burning', 'eyes'],
    ['man down', 'down'],
    ['hes down', 'down'],
    ['someone fell', 'down'],
    ['acetone spill in the hall', 'spill'],
    ['batch is hot', 'hot'],
    ['fire extinguisher checked', 'no-cry'],
    ['fire drill at ten', 'no-cry'],
    ['help me', 'emergency'],
    ['call 112', 'emergency'],
    ['bad burn', 'which-cry'],
    ['the printer is down', 'unknown-verb'],
  ])('given "%s" said in it, then it is heard as %s, whoever says it', (line, called) => {
    expect(['en', 'es', 'fi'].map((language) => calledBy(line, language))).toEqual([called, called, called]);
  });

  it('given a shift typed and told in it at a terminal, then no English is left', async () => {
    const talk = sessionTalk(':memory:', crew, threeTongues);
    closing.push(talk.close);
    for (const { who, line } of pseudoShift) await talk.say(who === undefined ? line : `@${who}: ${line}`);
    expect(talk.heard.filter(({ recorded }) => recorded).length).toBeGreaterThan(60);
    expect(left(talk.heard.flatMap(textsOf))).toEqual([]);
  });

  it('given a language that is not here, then those that are here are named, this one by what it calls itself', async () => {
    const talk = sessionTalk(':memory:', crew, threeTongues);
    closing.push(talk.close);
    await talk.say(typedInPseudo('set language zz'));
    expect(talk.heard.at(-1)?.card.lines.join()).toContain(
      inPseudo('en, es, fi, en-GB, en-US, es-ES, es-MX, es-US, fi-FI'),
    );
    await talk.say(`${typedInPseudo('set language')} pseudo`);
    expect(JSON.stringify(talk.heard.at(-1)?.card)).toContain('Ꝑ');
  });

  it('given the page of that crew, then nothing on it is English', async () => {
    const people = ['Kari', 'Ola'].map((name) => ({ name, role: 'lead', language: 'fi', units: 'metric' }) as const);
    const shop = await openShop({ crew: { ...crew, people }, tongues: threeTongues, linesAtOnce: 1000 });
    closing.push(shop.stop);
    const kari = visitor(shop.address);
    const pages: string[] = [await (await kari.request('/join')).text()];
    await kari.enter('Kari');
    for (const { line } of pseudoShift) {
      const [, minutes] = /^wait (\d+)m$/.exec(line) ?? [];
      if (minutes !== undefined) await shop.wait(Number(minutes));
      else {
        // Each is answered, however fast they follow: what is looked at hangs on no pace.
        const { status, body } = await kari.say('Kari', line);
        expect(status, line).toBe(200);
        pages.push(body.html ?? '');
      }
    }
    for (const path of ['/', '/board', '/nowhere']) pages.push(await (await kari.request(path)).text());
    // What Kari typed stands there as typed.
    const typed = new Set(pseudoShift.map(({ line }) => line));
    expect(left(pages.flatMap(seen).filter((text) => !typed.has(text)))).toEqual([]);
  });

  it('given Slack, then no message, home or form is English, and none breaks a limit', async () => {
    const people = bayTwo.people.map((person) => ({ ...person, language: 'fi' }));
    const shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }], tongues: threeTongues });
    closing.push(shop.close);
    for (const { line } of pseudoShift) {
      const [, minutes] = /^wait (\d+)m$/.exec(line) ?? [];
      if (minutes !== undefined) await shop.passes(Number(minutes));
      else await shop.types(line);
    }
    await shop.opensHome();
    const { messages, whispers, homes, views } = shop.fake;
    const blocks = [...messages, ...whispers, ...homes.values(), ...views.values()];
    expect(messages.length).toBeGreaterThan(10);
    expect(left([...messages.map(({ text }) => text), ...blocks.flatMap((each) => textsIn(each.blocks))])).toEqual([]);
  });
});
