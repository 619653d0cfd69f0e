// What is noted with an act stands on its card and in the trace, by its slot's label. Invented figures.

import { describe, expect, it } from 'vitest';
import { sessionTalk, value } from './session-talk.ts';

describe('what is noted with an act', () => {
  it('given a preparation with salts and dust, then its card has both as facts, and the trace tells them', async () => {
    const talk = sessionTalk();
    await talk.say('part impeller-7');
    const told = await talk.say('prep impeller-7 sa2.5 60um salts 12mg/m2 dust 1');
    expect([value(told, 'profile'), value(told, 'salts'), value(told, 'dust')]).toEqual([60, 12, 1]);
    expect((await talk.say('trace impeller-7')).text).toContain(
      'prepared Sa 2½, profile 60 µm, salts 12 mg/m², dust 1',
    );
    expect((await talk.say('amend impeller-7 prep dust 2 misread')).text).toContain('dust 2');
    talk.close();
  });
});
