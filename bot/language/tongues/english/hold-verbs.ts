// What an English speaker types of held parts and what becomes of them.

import { verbWords } from '../typed.ts';

export const englishHoldVerbs = {
  hold: verbWords('hold, held, quarantine', 'hold impeller-7 orange peel'),
  'see-to': verbWords('see-to, sees to, see to', 'see-to impeller-7 bea'),
  recall: verbWords('recall, recalled, call back, called back', 'recall lot 7731 the maker calls it back'),
  'recall-over': verbWords(
    'recall-over, recall over, recall ended, recall lifted',
    'recall-over lot 7731 the maker has lifted it',
  ),
  instrument: verbWords('instrument, keep instrument, new instrument', 'instrument gauge-2 gauge due 2027-03-01', '', {
    gauge: 'gage',
    due: 'expires',
  }),
  calibrated: verbWords(
    'calibrated, calibration, instrument-check, instrument check, recalibrated',
    'calibrated gauge-2 ok next 2027-03-01',
    'its, check',
    { passed: 'good fine', failed: 'fail fails' },
  ),
  instruments: verbWords('instruments, list instruments', 'instruments'),
  rework: verbWords('rework, reworked, redo', 'rework impeller-7 runs at the flange'),
  concession: verbWords(
    'concession, use as is, use-as-is',
    'concession impeller-7 person "Ms. Hale" document QA-118 dated 2026-03-02',
    'by, of, from',
  ),
  scrap: verbWords('scrap, scrapped, write off, written off', 'scrap impeller-7 cracked at the hub'),
  return: verbWords('return, returned, send back, sent back', 'return impeller-7 customer wrong alloy', 'to, supplier'),
};
