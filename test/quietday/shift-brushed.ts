// Batch 3: ten plates by brush, the demo's sheet.

import { named, type Said } from './parts-of-shift.ts';

const plates = named('plate', 10);
const [first, second] = [plates.slice(0, 5), plates.slice(5)];

/** Cans 1 and 2, batch 3: cans and batches are counted together. */
export const brushed: readonly Said[] = [
  [
    '06:20',
    'kari',
    plates.map((part, i) => `part ${part} serial invented-1${i} job invented-a steel 3mm 0.2m2 max 150C`).join('; '),
  ],
  ['06:30', 'kari', `prep ${plates.join(' ')} sa2.5 50um`],
  ['06:42', 'kari', 'open A demo-clear lot invented-71 5kg exp 2026-12 gas'],
  ['06:42', 'kari', 'open B demo-clear lot invented-72 5kg exp 2026-12'],
  ['06:43', 'kari', 'prestir 1'],
  ['06:44', 'kari', 'mix 2.4kg demo-clear'],
  ['06:45', 'kari', 'weigh 3 1200g 1201g cans 1 2'],
  ['06:46', 'kari', 'blanket 1'],
  ['08:33', 'kari', 'stop 3'],
  ['08:34', 'kari', 'filter 3'],
  ['08:39', 'kari', 'surface 21C'],
  ['08:40', 'kari', `coat ${first.join(' ')} 3 brush`],
  ['08:50', 'kari', `dry ${first.join(' ')}`],
  ['08:51', 'kari', `cure ${first.join(' ')} oven 90C`],
  ['08:54', 'kari', `coat ${second.join(' ')} 3 brush`],
  ['09:04', 'kari', `dry ${second.join(' ')}`],
  ['09:05', 'kari', 'empty 3 150g'],
  ['09:06', 'kari', 'flush brush acetone 100ml'],
  ['09:06', 'kari', 'flush brush isopropyl-alcohol 100ml'],
  ['09:06', 'kari', `cure ${second.join(' ')} oven 90C`],
  ...first.map((part): Said => ['09:08', 'kari', `temp ${part} 91C`]),
  ...second.map((part): Said => ['09:20', 'kari', `temp ${part} 91C`]),
  ...first.map((part): Said => ['10:09', 'kari', `temp ${part} 92C`]),
  ['10:10', 'kari', `out ${first.join(' ')}`],
  ...second.map((part): Said => ['10:21', 'kari', `temp ${part} 92C`]),
  ['10:22', 'kari', `out ${second.join(' ')}`],
  ...plates.map((part): Said => ['11:00', 'kari', `film ${part} 12 13 12um`]),
  ['11:10', 'ada', `release ${plates.join(' ')}`],
];
