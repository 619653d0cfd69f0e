// What else may be typed for a choice, by its slot: beside the word itself, which every tongue's small words lead to.

import type { SlotName } from '../../../../core/commands.ts';

/** By what is chosen, the words for it. */
type Choices = Readonly<Partial<Record<SlotName, Readonly<Record<string, string>>>>>;

const yesOrNo = { true: 'yes on running runs', false: 'no off none without' };

export const englishChoices: Choices = {
  pass: { 'same-coat': 'touchup touched-up' },
  whereabouts: { sprays: 'spray spraying joins', stays: 'stay staying exposed', out: 'moved left gone' },
  'yes-or-no': yesOrNo,
  'fan-state': yesOrNo,
  'rub-result': { 'no-effect': 'ok none', softened: 'soft marked' },
  coupon: { true: 'witness' },
};
