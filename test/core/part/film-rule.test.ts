// A job's own rule for its dry film, in place of its sheet's. SSPC-PA 2: three readings a spot, five spots an area, at level 3 a spot down to
// 80 % of the least; that level 3 holds where none is named, and ISO 12944-5's three times the nominal film: from memory.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const asks = (what: string) => `08:00 @omar: set job 88 asks ${what}`;
const cured = [
  ...['08:00 part a1 job 88', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
  '11:12 out a1',
];
const spots = (...micrometres: readonly number[]) =>
  micrometres.map((film, i) => `11:2${i} film a1 spot ${i + 1} ${film} ${film} ${film}um`);
const release = '11:40 @omar: release a1';

describe('the rule that a job names for its film', () => {
  it('given SSPC-PA 2 with its range and 5 spots, then the set is judged by it, and released when it is whole', async () => {
    const shift = await given([asks('film pa2 60 100um 5 spots'), ...cured, ...spots(70, 72, 71, 75)]);
    expect(await shift.when('11:30 @omar: release a1')).toEqual({ objected: ['not-given'] });
    await shift.when('11:31 film a1 spot 5 70 70 70um');
    expect(await shift.when(release)).toEqual({ recorded: ['PartReleased'] });
  });

  it('given a spot under four fifths of its least, then it fails at once and holds, though the sheet would have it otherwise', async () => {
    const shift = await given([asks('film SSPC-PA 2 60-100um'), ...cured]);
    expect(await shift.when('11:20 film a1 spot 1 47 47 47um')).toEqual({ recorded: ['FilmRead', 'PartHeld'] });
    const loose = await given([asks('film pa2 60-100um'), ...cured]);
    expect(await loose.when('11:20 film a1 spot 1 49 49 49um')).toEqual({ recorded: ['FilmRead'] });
    const strict = await given([asks('film pa2 level 1 60-100um'), ...cured]);
    expect(await strict.when('11:20 film a1 spot 1 49 49 49um')).toEqual({ recorded: ['FilmRead', 'PartHeld'] });
  });

  it('given ten spots are asked, then five are half', async () => {
    const shift = await given([asks('film pa2 60 100um 10 spots'), ...cured, ...spots(70, 72, 71, 75, 70)]);
    expect(await shift.when(release)).toEqual({ objected: ['not-given'] });
    expect(shift.objections()).toEqual([
      { code: 'not-given', job: '88', lacking: [{ of: 'film', read: true, half: { told: 5, needed: 10 } }] },
    ]);
  });

  it('given ISO 19840 with a nominal film, then five readings by it will do', async () => {
    const shift = await given([asks('film iso19840 60um 5 spots'), ...cured]);
    // Gauge on smooth plate, profile not known: 25 um come off each reading (from memory of ISO 19840).
    await shift.when('11:20 film a1 95 96 97 95 96um');
    expect(await shift.when(release)).toEqual({ recorded: ['PartReleased'] });
    const thin = await given([asks('film iso19840 60um 5 spots'), ...cured]);
    expect(await thin.when('11:20 film a1 spot 1 70um')).toEqual({ recorded: ['FilmRead', 'PartHeld'] });
  });

  it('given a rule is named and neither job nor sheet gives its range, then no reading is enough', async () => {
    const shift = await given([asks('film pa2 5 spots'), ...cured]);
    expect(await shift.when('11:20 film a1 10 11 12um')).toMatchObject({ recorded: ['FilmRead'] });
    expect(await shift.when(release)).toEqual({ objected: ['not-given'] });
  });
});
