// What English speakers say of instruments and their checks.

import type { InstrumentWords } from '../instrument-words.ts';

export const englishInstrumentsTyped: InstrumentWords = {
  kinds: {
    gauge: 'gauge, gage, dft gauge, mil gauge, film gauge, thickness gauge',
    scale: 'scale, scales, balance',
    hygrometer: 'hygrometer, humidity meter, rh meter, hygro',
    thermometer: 'thermometer, probe, thermocouple, temp probe, infrared thermometer',
    'holiday-tester': 'holiday tester, holiday detector, spark tester, jeep, tester',
  },
  wasChecked: 'calibrated, recalibrated, checked, verified, rechecked',
  ofCheck: 'check, calibration, cal, verification, cal check, calibration check, test blocks, blocks, shims, tolerance',
  hasFailed:
    "failed, fails, fail, did not pass, didn't pass, didnt pass, does not pass, out of tolerance, out of calibration, out of cal, no good, reads wrong",
  hasPassed: 'passed, passes, pass, ok, okay, good, fine, in tolerance, within tolerance',
  upTo: 'good till, good until, good til, good to, good thru, good through, valid until, valid till, valid to, next, next due, due, until, till, through, next in, due in, in',
  untold:
    "not been calibrated, not calibrated, not checked, not been checked, never calibrated, never checked, needs, need, should, will, tomorrow, not yet, has not failed, hasn't failed, did not fail, didn't fail, due for, overdue, with, send, going to, gonna, might, may, if, unless, before it fails, expired",
};
