// What to weigh of each part, on which scale, why a scale will not do, and what so much in one pot does to its life, in Spanish.

import { endOf, partOf } from '../../../../core/calc/weighable.ts';
import type { Component } from '../../../../core/components.ts';
import { usualScale } from '../../../../core/setting-kinds.ts';
import type { Figures } from '../../figures.ts';
import type { englishWeighing, ScaleTooCoarse } from '../english/weighing.ts';
import { theTime, told } from './names.ts';
import type { Spoken } from './spoken.ts';

export const spanishComponents: Readonly<Record<Component, string>> = { 'part-a': 'Parte A', 'part-b': 'Parte B' };

const theScale = (name: string): string => (name === usualScale ? 'La báscula' : `La báscula ${name}`);

export const spanishWeighing = (say: Spoken): typeof englishWeighing => ({
  nextB: (pour, figures) =>
    `Ahora la Parte B: ${figures.toWeigh(endOf(pour, 'exact'))}; valen de ${figures.toWeigh(endOf(pour, 'least'))} a ${figures.toWeigh(endOf(pour, 'most'))}. Al tocar A empiezan a correr los tiempos.`,
  scaleSet: (scale, step, most, figures) =>
    `${scale === usualScale ? '' : `${scale}: `}${figures.scaleStep(step)}${most === undefined ? '' : `, hasta ${figures.mass(most)}`}`,
  onScales: (a, b, figures) =>
    `Parte A en ${a.scale} (${figures.scaleStep(a.stepGrams)}), Parte B en ${b.scale} (${figures.scaleStep(b.stepGrams)}). El peso del recipiente no se cuenta.`,
  weighToStep: (step, tolerancePercent, figures) =>
    `Tan poco pide una báscula que marque ${figures.scaleStep(step)} (de las divisiones corrientes: práctica común): otra más basta no guarda el ${figures.percent(tolerancePercent, 1)} ${say.ofThe('sheet')}.`,
  noScaleHolds: (smallest, tolerancePercent, figures) =>
    `Ninguna báscula corriente pesa tan poco dentro del ${figures.percent(tolerancePercent, 1)} ${say.ofThe('sheet')}. Lo mínimo que pesa una: ${figures.asRead(smallest)}.`,
  noScaleCarries: (scale, figures) =>
    `Ninguna báscula de aquí llega a tanto: pese por partes. ${theScale(scale.scale)} llega a ${figures.mass(scale.mostGrams ?? scale.stepGrams)}.`,
  coarseForIt: (scale, figures) =>
    `${theScale(scale.scale)} marca ${figures.scaleStep(scale.stepGrams)}: demasiado basta para eso. Use otra más fina.`,
  planBatch: (n, total, pair, figures) =>
    `Mezcla ${n}: mezclar ${figures.mass(total)}: A ${figures.toWeigh(partOf(pair, 'partA'))}, B ${figures.toWeigh(partOf(pair, 'partB'))}`,
  repairAdd: (amount, component, until, figures) =>
    told`Para recuperarla: añada ${figures.toWeigh(amount)} de ${spanishComponents[component]}, hasta ${theTime(figures, until)}. La agitación vuelve a empezar para todo; la vida de la mezcla no.`,
  repairNoRoom: `En este recipiente no se recupera: pregunte ${say.toThe('lead')}. Esta mezcla es residuo, salvo que quepa en uno mayor.`,
  repairRoomUnknown: (needed, figures) =>
    `Sin densidades en ${say.the('sheet')}: mire si en el recipiente caben ${figures.mass(needed)}, con sitio para agitar.`,
  potLifeByMass: (percent, figures) =>
    `Con tanta cantidad junta, ${say.the('sheet')} le da el ${figures.percent(percent)} de la vida normal de la mezcla.`,
  potLifeAhead: (life, isAirKnown, figures) =>
    `Con la Parte B dentro dura ${figures.minutesDown(life)}${isAirKnown ? ' con este aire' : ' en el peor caso: no consta el aire'}.`,
  potLifeTested: (tested, figures) =>
    `La vida de la mezcla que da ${say.the('sheet')} es para ${figures.mass(tested)}. Más cantidad junta dura menos; no da cifra.`,
  potLifeBeyondMass: `Es más de lo que contempla ${say.the('sheet')}: vale la vida de la mezcla más corta que da.`,
});

export function spanishScaleTooCoarse(say: Spoken, objection: ScaleTooCoarse, figures: Figures): string {
  const { scale, stepGrams, tolerancePercent, smallestGrams } = objection;
  const then =
    smallestGrams === undefined
      ? 'Use otra más fina.'
      : `La mezcla más pequeña que pesa: ${figures.asRead(smallestGrams)}.`;
  return `${theScale(scale)} marca ${figures.scaleStep(stepGrams)}: demasiado basta para tan poco, dentro del ${figures.percent(tolerancePercent, 1)} ${say.ofThe('sheet')}. ${then}`;
}
