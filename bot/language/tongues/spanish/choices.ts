// What else may be typed in Spanish for a choice, by its slot.

import type { Choices } from '../tongue.ts';

const yesOrNo = { true: 'marcha funciona funcionando jalando', false: 'parada parado' };

export const spanishChoices: Choices = {
  'yes-or-no': yesOrNo,
  'fan-state': yesOrNo,
  'rub-result': { 'no-effect': 'efecto cambio' },
};
