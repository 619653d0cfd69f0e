// What to wear for wiping steel with solvent is said before it is wiped: with what the sheet wants off the part, once from one
// batch to the next; and where no part was noted first, as it is wiped. The demo clear asks for gloves and goggles: invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew, talkAfter } from './session-talk.ts';

const worn = 'Cleaning: wear gloves, goggles.';

describe('what to wear for wiping', () => {
  it('given a part is noted, then it is said with what must be off it, and not again', async () => {
    const { say } = await talkAfter('air 22C 50%');
    expect((await say('part lid-6')).card.lines).toContain(worn);
    expect((await say('part lid-7')).card.lines).not.toContain(worn);
    expect((await say('prep lid-6 degreased acetone')).card.lines).not.toContain(worn);
  });

  it('given no part was noted, then it is said as the first is wiped, and not at the next', async () => {
    const { say } = await talkAfter('air 22C 50%');
    expect((await say('prep new lid-6 degreased acetone')).card.lines).toContain(worn);
    expect((await say('prep lid-6 degreased acetone')).card.lines).not.toContain(worn);
    expect((await say('prep new lid-7 degreased acetone')).card.lines).not.toContain(worn);
  });

  it('given steel is blasted and nothing wiped, then nothing is said of it', async () => {
    const { say } = await talkAfter('air 22C 50%');
    expect((await say('prep new lid-6 sa2.5 60um')).card.lines).not.toContain(worn);
  });

  it('given whoever types Spanish, then it is said in it', async () => {
    const people = sprayCrew.people.map((person) => ({ ...person, language: 'es' }));
    const talk = sessionTalk(':memory:', { ...sprayCrew, language: 'es', people });
    onTestFinished(talk.close);
    expect((await talk.say('pieza tapa-6')).card.lines.join(' ')).toMatch(/guantes.*gafas/);
  });
});
