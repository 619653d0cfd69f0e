// How English-speaking crews tell of parts that come in, many at once.

import type { PartsInWords } from '../typed.ts';

export const englishPartsTyped: PartsInWords = {
  arrived:
    'customer dropped off, have landed, has landed, just landed, landed, off the truck, off the lorry, brought in, dropped off, just got here, got here, new in, have just come in, just came in, have come in, has come in, came in today, came in, come in, coming in, have arrived, just arrived, arrived, were delivered, delivered, are in now, got in',
  dozens: { 'half a dozen': 6, 'half dozen': 6, 'two dozen': 24, 'a dozen': 12, 'one dozen': 12 },
  numbered: 'numbered, marked, tagged, labelled, labeled, stamped, numbers, nos, called, from, being, named, them',
  isNew:
    "log, add, new part, new parts, new one, new in, new piece, another part, received, got, took in, took delivery, book in, booked in, booking in, check in, checked in, checking in, here's a new, here is a new, turned up, showed up, unloaded, offloaded",
  columns: {
    name: 'name, part, part name, part no, part number, part id, id, item, item no, mark, piece, piece mark, tag, ref, reference',
    serial: 'serial, serial no, serial number, s n, sn',
    job: 'job, job no, job number, order, order no, work order, wo',
    customer: 'customer, client',
    metal: 'material, metal, substrate, alloy',
    wall: 'thickness, thick, wall, wall thickness, material thickness, thk, gauge',
    area: 'area, surface, surface area, coated area',
    highest: 'max, max temp, max temperature, max t, maximum temperature, temp max, highest temperature, bears, heat',
  },
  told: {
    serial:
      'serial number is, serial number, serial no, serial is, serial, ser no, s/n, sn, its number is, number is, its serial is, stamped, tag number, tag reads, sticker says',
    job: 'which belong to job, that belong to job, they belong to job, belonging to job, belongs to job, belong to job, under job, job number, job no, job is, job, work order, wo, w/o, order number, order no, order',
    max: "max temp, max, maximum, good to, good for, good up to, rated to, rated for, bears up to, bears, bear, can bear, takes up to, takes, can take, take, handles, heat to, up to, no hotter than, no more than, not over, never over, never above, cant go over, can't go over, cannot go over, cant go above, can't go above, cant take over, can't take over, wont take over, won't take over, tops out at, limit, limit is",
  },
};
