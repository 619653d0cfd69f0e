// An export says what each reading was made with, and the check that stood then.

import { expect, it } from 'vitest';
import { exportRows } from '../../../core/records/export-rows.ts';
import { given } from '../given.ts';

it('given a reading between two checks, then its row has the instrument with the check that stood when it was read', async () => {
  const shift = await given([
    ...['07:30 instrument hygro-1 hygrometer', '07:31 calibrated hygro-1 ok next 2026-12-01', '08:00 air 24C 48%'],
    ...['Tue 08:00 calibrated hygro-1 ok next 2027-06-01'],
  ]);
  const { crew } = await shift.shop();
  const span = { first: '2026-03-02', last: '2026-03-02', from: shift.time('Mon 00:00'), to: shift.time('Tue 00:00') };
  const rows = exportRows([await shift.events()], span, crew);
  expect(rows.find(({ type }) => type === 'AirRead')).toMatchObject({
    instrument: 'hygro-1',
    instrument_checked: '2026-03-02',
    instrument_check: 'ok',
    instrument_due: '2026-12-01',
  });
});
