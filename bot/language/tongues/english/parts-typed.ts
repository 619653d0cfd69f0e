// How English-speaking crews tell of parts that come in, many at once.

import type { PartsInWords } from '../typed.ts';

export const englishPartsTyped: PartsInWords = {
  arrived:
    'customer dropped off, dropped off, just got here, got here, new in, have just come in, just came in, have come in, has come in, came in today, came in, come in, coming in, have arrived, just arrived, arrived, were delivered, delivered, are in now, got in',
  columns: {
    name: 'name, part, part name, part no, part number, part id, id, item, item no, mark, piece, piece mark, tag, ref, reference',
    serial: 'serial, serial no, serial number, s n, sn',
    job: 'job, job no, job number, order, order no, work order, wo',
    customer: 'customer, client',
    metal: 'material, metal, substrate, alloy',
    wall: 'thickness, wall, wall thickness, material thickness, thk, gauge',
    area: 'area, surface, surface area, coated area',
    highest: 'max, max temp, max temperature, max t, maximum temperature, temp max, highest temperature, bears, heat',
  },
};
