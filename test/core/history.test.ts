// What counts as an act: what people did, and not what the bot records of its own.

import { describe, expect, it } from 'vitest';
import { isActType } from '../../core/history.ts';
import { given } from './given.ts';

describe('an act', () => {
  it('given a shift with rings, heard and put off, then only what people did counts as an act', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:20 weigh 1 1201g 1198g']);
    await shift.when('10:10 snooze 5min');
    await shift.when('10:20 ok');
    const types = new Set((await shift.events()).map(({ body }) => body.type));
    expect([...types].filter((type) => !isActType(type)).sort()).toEqual(['Rang', 'RingAnswered', 'RingSnoozed']);
    expect([...types].filter(isActType).sort()).toEqual(['AirRead', 'BatchOpened', 'PartsWeighed']);
  });
});
