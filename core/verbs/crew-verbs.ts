// What people say of themselves, of bells, of solvent and of the crew's settings.

import type { Setting } from '../settings.ts';
import { solventUses } from '../solvent-uses.ts';
import { amount, choice, duration, ownWay, ownWords, person, ring, spoken, text, unasked, yesOrNo } from './slot.ts';
import { verb } from './verb.ts';

export const crewVerbs = {
  /** Heard: answers what has rung for the speaker, or the bell of this key alone, with others that rang in one message. */
  ok: verb({ key: ring('ring'), also: unasked<readonly string[]>('rings') }),
  /** The last ring to the speaker, or the one of this key, again so much later. */
  snooze: verb({
    // Longer is no snooze: whoever puts a bell off for an hour has forgotten it.
    minutes: duration(
      'snooze-time',
      { required: true, offered: ['5m', '10m'] },
      { units: ['min'], lowest: 1, highest: 60, above: false },
    ),
    key: ring('ring'),
  }),
  /** A bell of one's own, whatever for. */
  remind: verb(
    {
      // What is further off than a shift is for a calendar.
      minutes: duration(
        'remind-time',
        { required: true, offered: ['10m', '30m'] },
        { units: ['min', 'h'], lowest: 1, highest: 720, above: false },
      ),
      text: ownWords('reminded', { orNone: true }),
    },
    { endsInWords: true },
  ),
  shift: verb({ on: yesOrNo('on-or-off', { required: true }) }),
  handover: verb({ to: person('person', { required: true }) }),
  takeover: verb({}),
  /** Whoever is new is led through it. */
  'first-shift': verb({}),
  'first-shift-done': verb({ person: person('person', { required: true }) }, { leastRole: 'lead', decision: true }),
  /** Left out, the speaker's own. */
  'first-shift-off': verb({ person: person('person') }),
  /** Solvent beside the coatings: thinner, cleaner. */
  used: verb({
    material: text('material', { required: true }),
    amount: amount('solvent-amount', { required: true }, { units: ['mL', 'L', 'g', 'kg', 'fl oz', 'gal', 'oz', 'lb'] }),
    use: choice('use', solventUses, { usual: 'other' }),
  }),
  set: verb({ setting: ownWay<Setting>()([spoken('setting')], { required: true }) }),
};
