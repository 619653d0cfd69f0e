// One command, one decision: sends each verb to the noun that knows.

import { decideMix, decidePotAct, decideWeigh } from './batch/batch-decide.ts';
import { decideCoat } from './coat/coat-decide.ts';
import type { Command, CommandOf, Verb } from './commands.ts';
import { decideAmend } from './corrections/amend.ts';
import { decideUndo } from './corrections/undo.ts';
import { decideOk, decideSet } from './crew/crew-decide.ts';
import { type Decision, type Said, unclear } from './decision.ts';
import {
  decideCure,
  decideDry,
  decideFilm,
  decideHold,
  decideOut,
  decidePart,
  decideRelease,
  decideTemp,
} from './part/part-decide.ts';
import { decideReading } from './place/place-decide.ts';
import type { Shop } from './shop.ts';

export function decide(shop: Shop, said: Said): Decision {
  if (said.at > said.now) return unclear({ code: 'in-the-future', at: said.at, now: said.now });
  const { command } = said;
  switch (command.verb) {
    case 'mix':
      return decideMix(shop, saidAs(said, command));
    case 'weigh':
      return decideWeigh(shop, saidAs(said, command));
    case 'stir':
    case 'stop':
    case 'filter':
    case 'thick':
    case 'gel':
    case 'empty':
      return decidePotAct(shop, saidAs(said, command));
    case 'part':
      return decidePart(saidAs(said, command));
    case 'coat':
      return decideCoat(shop, saidAs(said, command));
    case 'dry':
      return decideDry(shop, saidAs(said, command));
    case 'cure':
      return decideCure(shop, saidAs(said, command));
    case 'temp':
      return decideTemp(shop, saidAs(said, command));
    case 'out':
      return decideOut(shop, saidAs(said, command));
    case 'wet':
    case 'film':
      return decideFilm(shop, saidAs(said, command));
    case 'release':
      return decideRelease(shop, saidAs(said, command));
    case 'hold':
      return decideHold(shop, saidAs(said, command));
    case 'air':
    case 'surface':
    case 'night':
      return decideReading(shop, saidAs(said, command));
    case 'ok':
      return decideOk(shop, saidAs(said, command));
    case 'undo':
      return decideUndo(shop, saidAs(said, command));
    case 'amend':
      return decideAmend(shop, saidAs(said, command));
    case 'set':
      return decideSet(shop, saidAs(said, command));
  }
}

/** The same saying with its command narrowed to the verb at hand. */
function saidAs<V extends Verb>(said: Said<Command>, command: CommandOf<V>): Said<CommandOf<V>> {
  return { ...said, command };
}
