// Who sprayed a coat: who was said to, else the one sprayer of the session, else nobody is given and who typed it stands as
// that alone. Sheets and people invented.

import { describe, expect, it } from 'vitest';
import { whoApplied } from '../../../core/who-applied.ts';
import { given, type Shift } from '../given.ts';

// Stirred by 9:42 at 24 degC: see batch/pot-life.test.ts.
const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const aired = ['09:44 fan on 0.6m/s', '09:44 supplied yes'];
const briefed = (sprayers: string) => [
  ...[...filtered, '09:43 @omar: set booth 4m2', '09:43 @omar: prep new rail-1 sa2.5 50um salts 5mg/m2 dust 1'],
  ...[`09:43 @omar: brief 1 in booth spray ${sprayers}`, '09:43 ack', ...aired],
];

const applied = async (shift: Shift, part = 'rail-1') => {
  const shop = await shift.shop();
  const entry = shop.parts.get(part)?.coats.at(-1)?.entry;
  return entry && whoApplied(shop, entry);
};

describe('who sprayed', () => {
  it('given a name with the coat, then that one, as the crew writes it, whoever typed it', async () => {
    const shift = await given([...briefed('kari'), '09:45 spray on', '10:00 @omar: coat rail-1 1 spray by KARI']);
    expect(await applied(shift)).toEqual({ person: 'kari', typedBy: 'omar' });
  });

  it('given no name, then the only sprayer of the session; of two, nobody', async () => {
    const one = await given([...briefed('kari'), '09:45 spray on', '10:00 @omar: coat rail-1 1 spray']);
    expect(await applied(one)).toEqual({ person: 'kari', typedBy: 'omar' });
    const both = [...briefed('kari omar'), '09:44 @omar: ack', '09:45 spray on', '10:00 @omar: coat rail-1 1 spray'];
    expect(await applied(await given(both))).toEqual({ person: undefined, typedBy: 'omar' });
  });

  it('given a brush and no name, then whoever typed it, as ever', async () => {
    const shift = await given([...filtered, '09:50 @omar: coat new rail-1 1 brush']);
    expect(await applied(shift)).toEqual({ person: 'omar', typedBy: 'omar' });
  });

  it('given no session, then nobody is given: who typed is no sprayer by that', async () => {
    const lines = [...filtered, '09:43 @rosa: set brief off', '09:50 coat new rail-1 1 spray already'];
    expect(await applied(await given(lines))).toEqual({ person: undefined, typedBy: 'kari' });
  });

  it('given a correction, then the one whom it names', async () => {
    const shift = await given([...briefed('kari'), '09:45 spray on', '10:00 coat rail-1 1 spray']);
    await shift.when('10:01 amend rail-1 coat by Omar he held the gun');
    expect(await applied(shift)).toEqual({ person: 'omar', typedBy: 'kari' });
    expect(await shift.when('10:02 amend rail-1 coat by hugo again')).toEqual({ unclear: 'no-such-person' });
  });

  it('given a stranger, then it is asked whom that means', async () => {
    const shift = await given([...briefed('kari'), '09:45 spray on']);
    expect(await shift.when('10:00 coat rail-1 1 spray by hugo')).toEqual({ unclear: 'no-such-person' });
  });
});

describe('the rules on who may spray', () => {
  it('given a sprayer who is on no brief, then she has not read it, may not by the crew’s list, and her dates count', async () => {
    const rules = [
      '09:44 @omar: set sprayers kari',
      '09:44 @omar: medical rosa 2026-03-01',
      '09:44 @omar: medical kari 2027-03-01',
    ];
    const shift = await given([...briefed('kari'), ...rules, '09:45 spray on']);
    const codes = ['brief-not-acknowledged', 'may-not-spray', 'not-qualified'];
    expect(await shift.when('10:00 coat rail-1 1 spray by rosa')).toEqual({ objected: codes });
    await shift.when('10:00 coat rail-1 1 spray by rosa already');
    expect(await shift.deviations()).toEqual(codes.map((code) => `CoatApplied 10:00 ${code}`));
    // From then on she breathes there too, and the session knows it.
    expect((await shift.shop()).sessions.get(2)?.sprayers).toEqual(['kari', 'rosa']);
  });

  it('given one of the brief by name, then nothing is asked anew', async () => {
    const shift = await given([...briefed('kari'), '09:45 spray on']);
    expect(await shift.when('10:00 @omar: coat rail-1 1 spray by kari')).toEqual({ recorded: ['CoatApplied'] });
  });
});
