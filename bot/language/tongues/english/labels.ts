// What stands on a can in English, and what people say round it when they read it off.

import type { LabelWords } from '../../labels/label-table.ts';

export const englishLabels: LabelWords = {
  component: 'part, component, comp, comp., pt, side',
  lot: 'lot, lot no, lot no., lot nr, lot number, lot num, lot code, lot is, lotnr, charge',
  lotElse: 'batch, batch no, batch no., batch number',
  expiry:
    'exp, exp., exp date, exp. date, expires, expires in, expires on, expiry, expiry date, expiration, expiration date, expiring, best before, best before end, best by, use by, use before, good until, good till, good til, good to, good thru, good through, til, till, until, bb, bbe, bbd, b/b, valid until, shelf life until, out of date',
  asOpen:
    'open, opened, opening, just opened, cracked open, cracked, popped open, popped, broke open, broached, busted open, unsealed, uncapped, broke the seal, seal broken, tapped, tapped a new',
  asReceived:
    'recieved, recived, receieved, received, arrived, came in, delivered, delivery, got in, in stock, took in, booked in, book in, booking in, took delivery, turned up, signed for, unloaded, unpacked, sealed, still sealed, unopened, not opened, not opened yet, not open yet, got new, got a new, new cans, new tins',
  gas: 'gas, argon, argons, nitrogen, nitrogens, n2, ar',
  gasThere:
    'on, in, at, to, hand, here, right, ready, by, next, beside, me, under, over, with, running, flowing, hooked, up, connected, plugged, going, it, its, have, got, put, yes, bottle, hose, some',
  rounds:
    'a, an, the, i, we, have, has, had, just, it, its, this, that, one, new, another, can, tin, cans, of, with, whose, label, says, say, said, reads, read, on, is, and, under, ready, at, hand, net, net wt, net weight, net wt., wt, wt., weight, contents, net contents, nt, mfg, batch, got, up, here, now, please, thanks, from, for, ok, okay, so, hi, today, date, full, off, our, my, did, over, in, to, pack, size, each, apiece, x, sticker, tag, fresh, right',
  dayJoints: 'of, in, the, end, date',
  vessels: 'tin, pail, bucket, drum, pot, jug, bottle',
  calledBack:
    'recall, recalls, recalled, recalling, calls back, called back, calling back, called it back, calls it back, calling it back, withdrew, withdrawn, withdraws, took back, takes back, pulled',
  calledOver: 'over, ended, lifted, cancelled, canceled, called off, fine again, good again',
};
