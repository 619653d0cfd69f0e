// Every figure of every card of a whole shift can be asked about: `why` says how it is made, from what, and which way it errs.
// An invented shift on invented parts, by both of the demo's sheets.

import { expect, it } from 'vitest';
import { type FactId, factUnits } from '../../../bot/cards/fact-ids.ts';
import { english } from '../../../bot/language/tongues/english/sentences.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { sessionTalk } from './session-talk.ts';

const shift: readonly string[] = [
  ...['air 24C 48%', 'surface 23C', 'night 16C', '@rosa: set booth booth 4m2', '@rosa: set booth oven 0.1m2 2m3'],
  ...['open A lot 7731 5kg gas', 'prestir 1', 'purge can 1 5L/min', 'wait 5m'],
  ...['part impeller-7 cast-iron 12mm 0.8m2 max 120C', 'prep impeller-7 sa2.5 60um', 'surface impeller-7 23C'],
  ...['part plate-3 steel 6mm 0.5m2 max 150C', 'plan 6x0.8m2 spray 12um', 'mix 2.4kg', 'weigh 2 a 1201g'],
  ...['weigh 2 b 1150g', 'wait 1m', 'add 2 b 50g', 'uncover 2', 'wait 5m', 'cover 2', 'blanket 1', 'stock'],
  ...['stop 2', 'stir 2', 'wait 105m', 'air 24C 48%', 'stop 2', 'filter 2', 'already coat impeller-7 2 flow'],
  ...['catch 2 200g', 'wait 16m', 'dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 60C', 'wait 10m'],
  ...['temp impeller-7 91C', 'door impeller-7 2m', 'temp impeller-7 91C', 'wait 62m', 'temp impeller-7 92C'],
  ...['out impeller-7', 'film impeller-7 12 14 13um', 'release impeller-7', 'empty 2 90g', 'vent oven 800g 90C 2mps'],
  ...['vent purge argon 400L 30m3', 'mix 3kg demo-build', 'weigh 3 2520g 480g', 'wait 30m', 'air 24C 50%'],
  ...['prep plate-3 sa2.5 60um', 'already coat plate-3 3 brush', 'mix 1kg demo-clear', 'already weigh 4 500g 560g'],
  ...['brief 4 in booth spray kari out lia', '@kari: ack', 'fan on 0.6m/s', 'supplied yes', 'vent', 'already spray on'],
  ...['wait 5m', 'already spray off', 'flush gun acetone 300ml', 'flush', 'flush vessels', 'rags', 'close', 'wait 30m'],
  ...['dry plate-3', 'cure plate-3 room', 'find 7731', 'voc day'],
  ...['verify', 'day', 'week', 'trace 2'],
];

const { why } = english;
const isFactId = (id: string): id is FactId => isOwnKey(factUnits, id);

/** Only where a bell rang late, which no shift that is awake does; and where somebody else wrote the record. */
const neverShown: readonly FactId[] = ['happened-at', 'late-minutes', 'due-at'];

it('given any figure of a card, when it is asked why, then how it is made, its source and its errors are told', async () => {
  const { say, heard, close } = sessionTalk();
  const asked = new Map<FactId, readonly string[]>();
  let seen = 0;
  const askNew = async (): Promise<void> => {
    const last = heard.slice(seen).findLast(({ to, as }) => as === 'omar' || to.includes('omar'));
    const fresh = (last?.card.facts ?? []).flatMap(({ id }) => (isFactId(id) && !asked.has(id) ? [id] : []));
    for (const id of fresh) asked.set(id, (await say(`why ${id}`)).card.lines);
    seen = heard.length;
  };
  for (const line of shift) {
    const answer = await say(line);
    expect(['misread', 'error'], answer.text).not.toContain(answer.kind);
    await askNew();
  }
  const without = [...asked].filter(
    ([id, lines]) =>
      !lines.includes(why.how(why.formulas[id])) ||
      lines.includes(why.gone) ||
      !lines.some((line) => line.startsWith('Source: ')) ||
      !Object.values(why.errs).some((errs) => lines.includes(errs)),
  );
  expect(without).toEqual([]);
  const ids = Object.keys(factUnits).filter(isFactId);
  expect(ids.filter((id) => !asked.has(id) && !neverShown.includes(id))).toEqual([]);
  close();
});
