// How Spanish speakers say it: temp. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfCure3: Sayings<SaidMeaning> = {
  temp: `
    por el lado gordo 84 y por el flaco 90, la voluta / en el centro de la tapa 87 / la brida del fondo 89
    el eje en 90 parejo / de las cuatro la más fría está en 88 / la más fría en 90 / la última que llegó a 90 fue la 6
    ya todas pasaron de 90 / está pelando la 7, 96 / quema, 93 la tapa / tibiecita, 50 la carcasa
    ya casi, 88 la brida / le faltan dos grados, 88 la 8 / le falta poquito, 86 la 9
    va lenta, 70 en media hora la voluta / subió diez grados, 80 la 5
  `,
};
