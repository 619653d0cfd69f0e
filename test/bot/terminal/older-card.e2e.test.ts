// `tap` presses the last card that its speaker saw; another may have recorded upon the same since.

import { describe, expect, test } from 'vitest';
import { chat, crewOfThree, file } from './chat.ts';

const crew = () => ({ flags: ['--crew', file('crew.json', crewOfThree)] });
/** Out of the oven; its card, before ada, offers the release. */
const out = [
  '@ada: mix 2.4kg 24C 48%',
  '@ada: weigh 1 1201g 1198g',
  'wait 103m',
  '@ada: filter 1',
  '@ada: coat new impeller-7 flow',
  'wait 12m',
  '@ada: dry impeller-7',
  '@ada: cure impeller-7 oven 90C',
  '@ada: temp impeller-7 91C',
  'wait 70m',
  '@ada: temp impeller-7 91C',
  '@ada: out impeller-7',
];

describe('a tap on the last card that its speaker saw', () => {
  test('where another has recorded upon that part since, asks before it releases', async () => {
    const { answers } = await chat(
      [...out, '@kari: film impeller-7 15 15 15um', '@ada: tap release', '@ada: tap pressed'],
      crew(),
    );
    const [asked, released] = answers.slice(-2);
    expect(asked).toMatchObject({ kind: 'misread', code: 'card-moved', recorded: false });
    expect(asked?.card.lines).toContain('Release: release impeller-7');
    expect(released).toMatchObject({ recorded: true });
  });

  test('where nobody has, or only upon another part, releases at once', async () => {
    const { answers } = await chat([...out, '@kari: part valve-9', '@ada: tap release'], crew());
    expect(answers.at(-1)).toMatchObject({ recorded: true });
    expect(answers.at(-1)?.card.title).toBe('impeller-7: released');
  });
});
