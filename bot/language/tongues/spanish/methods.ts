// The ways of applying a coat, in Spanish.

import { type Method, methods } from '../../../../core/methods.ts';
import type { MethodWords } from '../english/methods.ts';

interface SpanishMethodWords extends MethodWords {
  /** Where Spain says otherwise than America. */
  readonly nameInAmerica?: string;
}

export const spanishMethods: Readonly<Record<Method, SpanishMethodWords>> = {
  flow: {
    // In Spain a vertido is a spill of chemicals: it is no method unless a coat's line says so.
    name: 'flujo',
    typed: 'flujo colada',
    tip: 'Flujo: verter, y después recoger, filtrar y volver a usar lo que escurre.',
  },
  dip: {
    name: 'inmersión',
    typed: 'inmersion sumergir sumergida sumergido banada banado',
    tip: 'Inmersión: una sola vez y despacio.',
  },
  brush: { name: 'brocha', typed: 'brocha pincel', tip: 'Brocha: despacio y suave, o salen burbujas.' },
  roller: { name: 'rodillo', typed: 'rodillo', tip: 'Rodillo: despacio y suave, o salen burbujas.' },
  spray: {
    name: 'pistola',
    nameInAmerica: 'aspersión',
    typed: 'pistola rociar rociada rociado aspersion airless atomizar atomizada pulverizar pulverizada pulverizado',
    tip: 'Pistola: es normal algo de piel de naranja fina o de moteado.',
  },
};

const either = new Intl.ListFormat('es', { type: 'disjunction' });

/** `flujo, inmersión, brocha, rodillo o pistola`. */
export const spanishMethodList = either.format(methods.map((method) => spanishMethods[method].name));
