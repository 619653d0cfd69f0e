// Batch 6 by the shop's own sheet and batch 8 by the demo's: ten parts each, sprayed in the booth, each with its own brief.

import { named, type Said } from './parts-of-shift.ts';

const valves = named('valve', 10);
const housings = named('housing', 10);

/** Cans 4 and 5, batch 6, session 7. */
const ownSheet: readonly Said[] = [
  [
    '06:50',
    'omar',
    valves.map((part, i) => `part ${part} serial invented-2${i} job invented-b steel 4mm 0.1m2 max 150C`).join('; '),
  ],
  ['07:00', 'omar', `prep ${valves.join(' ')} sa2.5 50um`],
  ['07:10', 'omar', 'open A quay-coat lot invented-81 10kg exp 2026-12 gas'],
  ['07:11', 'omar', 'open B quay-coat lot invented-82 5kg exp 2026-12'],
  ['07:12', 'omar', 'prestir 4'],
  ['07:16', 'omar', 'mix 2kg quay-coat'],
  ['07:18', 'omar', 'weigh 6 1500g 500g cans 4 5'],
  ['07:20', 'ada', 'brief 6 in booth spray omar out kari outside lia'],
  ['07:22', 'omar', 'ack'],
  ['07:23', 'lia', 'ack'],
  ['07:24', 'lia', 'fan on 0.6m/s'],
  ['07:25', 'omar', 'supplied yes'],
  ['07:36', 'omar', 'filter 6'],
  ['07:37', 'omar', 'surface 21C'],
  ['07:38', 'omar', 'spray on'],
  ['07:43', 'lia', `coat ${valves.slice(0, 5).join(' ')} 6 spray`],
  ['07:50', 'lia', `coat ${valves.slice(5).join(' ')} 6 spray`],
  ['07:51', 'omar', 'spray off'],
  ['07:52', 'omar', 'flush gun xylene 300ml'],
  ['07:54', 'omar', 'flush vessels xylene 200ml'],
  ['07:55', 'omar', 'rags'],
  ['07:56', 'omar', 'empty 6 200g'],
  ['07:57', 'omar', 'close'],
  ['08:06', 'omar', `dry ${valves.join(' ')}`],
  ['08:08', 'omar', `cure ${valves.join(' ')} oven 80C`],
  ...valves.map((part): Said => ['08:26', 'omar', `temp ${part} 81C`]),
  ['08:27', 'lia', 'fan off'],
  ...valves.map((part): Said => ['09:11', 'omar', `temp ${part} 82C`]),
  ['09:12', 'omar', `out ${valves.join(' ')}`],
  ...valves.map((part): Said => ['10:00', 'omar', `film ${part} 55 60 58um`]),
  ['10:30', 'ada', `release ${valves.join(' ')}`],
];

/** The can of batch 1 once more, batch 8, session 9. */
const demoSheet: readonly Said[] = [
  [
    '10:40',
    'omar',
    housings.map((part, i) => `part ${part} serial invented-3${i} job invented-c steel 4mm 0.1m2 max 150C`).join('; '),
  ],
  ['10:50', 'omar', `prep ${housings.join(' ')} sa2.5 50um`],
  ['11:00', 'kari', 'lid 1 gas'],
  ['11:00', 'kari', 'prestir 1'],
  ['11:02', 'kari', 'mix 1.6kg demo-clear'],
  ['11:03', 'kari', 'weigh 8 800g 801g cans 1 2'],
  ['11:04', 'kari', 'blanket 1'],
  ['12:35', 'ada', 'brief 8 in booth spray kari out omar outside lia'],
  ['12:36', 'kari', 'ack'],
  ['12:37', 'lia', 'ack'],
  ['12:38', 'lia', 'fan on 0.6m/s'],
  ['12:39', 'kari', 'supplied yes'],
  ['12:52', 'kari', 'stop 8'],
  ['12:53', 'kari', 'filter 8'],
  ['12:54', 'kari', 'surface 22C'],
  ['12:55', 'kari', 'spray on'],
  ['12:59', 'lia', `coat ${housings.slice(0, 5).join(' ')} 8 spray`],
  ['13:04', 'lia', `coat ${housings.slice(5).join(' ')} 8 spray`],
  ['13:05', 'kari', 'spray off'],
  ['13:06', 'kari', 'flush gun acetone 300ml'],
  ['13:07', 'kari', 'flush gun isopropyl-alcohol 200ml'],
  ['13:08', 'kari', 'flush vessels acetone 200ml'],
  ['13:09', 'kari', 'flush vessels isopropyl-alcohol 200ml'],
  ['13:10', 'kari', 'rags'],
  ['13:11', 'kari', 'empty 8 100g'],
  ['13:12', 'kari', 'close'],
  ['13:09', 'kari', `dry ${housings.slice(0, 5).join(' ')}`],
  ['13:14', 'kari', `dry ${housings.slice(5).join(' ')}`],
  ['13:15', 'kari', `cure ${housings.join(' ')} oven 90C`],
  ...housings.map((part): Said => ['13:35', 'kari', `temp ${part} 91C`]),
  ['13:42', 'lia', 'fan off'],
  ...housings.map((part): Said => ['14:36', 'kari', `temp ${part} 92C`]),
  ['14:37', 'kari', `out ${housings.join(' ')}`],
  ...housings.map((part): Said => ['15:10', 'kari', `film ${part} 12 13 12um`]),
  ['15:20', 'ada', `release ${housings.join(' ')}`],
];

export const sprayed = { ownSheet, demoSheet };
