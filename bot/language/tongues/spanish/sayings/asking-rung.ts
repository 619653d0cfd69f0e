// How Spanish speakers ask what a bell was for that has just rung. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const spanishSayingsOfRung: Sayings<AskedMeaning> = {
  'last-ring': `
    por qué ha sonado / por qué sonó la campana / por qué me avisaste / para qué era esa campana / para qué fue el aviso / qué fue ese pitido
    qué sonó hace un momento / qué ha sonado / qué fue lo último que sonó / cuál fue el último aviso / cuál sonó / qué timbre era ese
    para quién era el aviso / era para mí esa campana / eso que sonó era de la 7 o de la mezcla / oí una campana, cuál era / oí que sonaba pero no vi qué
    me vibró el móvil, qué quiere / me sonó el cel, qué es / algo sonó, qué es / algo pitó / sonó una cuando no estaba, cuál fue
    me perdí el aviso, qué decía / qué decía el último aviso / repite el último aviso / repíteme lo que sonó / otra vez el último aviso
    a qué viene tanto timbre / por qué suena / por qué sigue sonando / por qué pita / qué está pitando
    acaba de sonar, por qué / sonó el aviso, cuál / y ese ruido qué era / qué quiso decir ese timbrazo / ring ring qué pasa ahora
  `,
};
