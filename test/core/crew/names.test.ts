// Names of people match whatever the thumb made of their capitals and accents, and are filed as the crew writes them. The
// crew is invented.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { foldCrew } from '../../../core/crew/crew.ts';
import type { Entry } from '../../../core/history.ts';
import { crewStream } from '../../../core/ids.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, given } from '../given.ts';

const spoken = { language: 'en', units: 'metric' } as const;
const crew: CrewFile = {
  ...demoCrew,
  people: [
    { name: 'Kari', role: 'crew', ...spoken },
    { name: 'Lía', role: 'crew', ...spoken },
    { name: 'Omar', role: 'lead', ...spoken },
    { name: 'Rosa', role: 'supervisor', ...spoken },
  ],
};
const filtered = ['08:00 @Kari: air 24C 48%', '08:00 @Kari: mix 2.4kg', '08:00 @Kari: weigh 1 1200g 1200g'];

describe('a name in whatever capitals', () => {
  it.each(['set sprayers kari omar', 'set sprayers KARI omar kari', 'set sprayers "Kari" "OMAR"'])(
    'given "%s", then Kari may spray',
    async (line) => {
      const shift = await given([...filtered, '09:42 @Omar: filter 1', `09:43 @Omar: ${line}`], { crew });
      expect((await shift.shop()).crew.spray.sprayers).toEqual(['Kari', 'Omar']);
      await shift.when('09:44 @Kari: brief 1 spray kari');
      for (const told of ['ack', 'fan on 0.6m/s', 'supplied yes', 'set booth 4m2'])
        await shift.when(`09:45 @Omar: ${told}`);
      await shift.when('09:45 @Kari: ack');
      await shift.when('09:46 @Kari: spray on');
      expect(shift.objections().map(({ code }) => code)).not.toContain('may-not-spray');
    },
  );

  it('given on a brief, then each is who the crew’s list has, and acknowledges as such', async () => {
    const shift = await given(
      [
        ...filtered,
        '09:44 @Kari: brief 1 spray KARI near lia kari outside oMAR',
        '09:45 @Kari: ack',
        '09:45 @Omar: ack LÍA',
        '09:46 @Omar: near lia out',
      ],
      { crew },
    );
    const session = (await shift.shop()).sessions.get(2);
    expect(session).toMatchObject({ sprayers: ['Kari'], movedOut: ['Lía'], attendant: 'Omar' });
    expect(session?.acknowledged.map(({ person }) => person)).toEqual(['Kari', 'Lía']);
  });

  it('given to a date, a role and a handover, then it is that person', async () => {
    const shift = await given(
      ['08:00 @Omar: fit lia 2026-05-01', '08:00 @Omar: set role KARI lead', '08:00 @Omar: handover kari'],
      { crew },
    );
    const { crew: now } = await shift.shop();
    expect([...now.spray.dates.keys()]).toEqual(['Lía']);
    expect(now.people.map(({ name, role }) => `${name} ${role}`).slice(0, 2)).toEqual(['Kari lead', 'Lía crew']);
    expect(await shift.when('08:01 @Kari: take over')).toEqual({ recorded: ['TakenOver'] });
  });

  it('given to somebody whom the list does not have, then the brief’s own spelling stands', async () => {
    const alone: CrewFile = { ...demoCrew, people: [] };
    const shift = await given(
      [...filtered, '09:44 brief 1 spray Pedro', '09:45 ack pedro', '09:45 fit PEDRO 2026-05-01'],
      {
        crew: alone,
      },
    );
    const { sessions, crew: now } = await shift.shop();
    expect(sessions.get(2)?.acknowledged.map(({ person }) => person)).toEqual(['Pedro']);
    expect([...now.spray.dates.keys()]).toEqual(['PEDRO']);
    await shift.when('09:46 fit pedro 2026-06-01');
    expect([...(await shift.shop()).crew.spray.dates.keys()]).toEqual(['PEDRO']);
  });
});

describe('a record that has the names as they were typed', () => {
  const entry = (seq: number, fact: Entry['fact']): Entry => ({
    ...{ seq, stream: crewStream, alsoUnder: [], by: 'Omar', request: `r${seq}`, edition: 1 },
    ...{ happenedAt: epochMs(seq), recordedAt: epochMs(seq), saidWith: { despite: [] }, fact, corrections: [] },
  });

  it('given sprayers and dates in small letters, then they are those of the crew’s list, the later date last', () => {
    const { spray } = foldCrew(crew, [
      entry(1, { type: 'SettingChanged', setting: { name: 'sprayers', people: ['kari', 'lía', 'Kari'] } }),
      entry(2, { type: 'QualificationDated', person: 'Kari', what: 'fit', until: '2026-05-01' }),
      entry(3, { type: 'QualificationDated', person: 'kari', what: 'fit', until: '2026-06-01' }),
    ]);
    expect(spray.sprayers).toEqual(['Kari', 'Lía']);
    expect([...spray.dates]).toEqual([['Kari', { fit: '2026-06-01' }]]);
  });

  it('given two who are alike but for an accent, then neither stands for the other', () => {
    const both: CrewFile = { ...crew, people: [...crew.people, { name: 'Lia', role: 'crew', ...spoken }] };
    const settled = entry(1, { type: 'SettingChanged', setting: { name: 'sprayers', people: ['Lía'] } });
    expect(foldCrew(both, [settled]).spray.sprayers).toEqual(['Lía']);
  });
});
