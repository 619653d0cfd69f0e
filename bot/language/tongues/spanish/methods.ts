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
    way: 'Flujo: vierta una sola vez; recoja, filtre y vuelva a usar lo que escurre.',
  },
  dip: {
    name: 'inmersión',
    typed:
      'inmersion sumergir sumergida sumergido sumergidas sumergidos banada banado banadas banados remojada sumergi sumergio sumergimos sumergieron sumergiendo inmersiones bano bane banamos banaron banando chapuzon zambullir zambulli zambullo zambullimos zambullida zambullido zambullidas zambullidos remojar remoje remojo remojamos remojado remojadas remojados chapuce chapuzo chapuzada',
    way: 'Inmersión: una sola vez y despacio.',
  },
  brush: {
    name: 'brocha',
    typed:
      'brocha brochas pincel pinceles brochazo brocheada brocheado brocheadas brocheados brochee brocheo brochearon',
    way: 'Brocha: despacio y suave, o salen burbujas.',
  },
  roller: {
    name: 'rodillo',
    typed: 'rodillo rodillos rodillazo rodillada rodillado rodilladas rodillados rodille rodillaron',
    way: 'Rodillo: despacio y suave, o salen burbujas.',
  },
  spray: {
    name: 'pistola',
    nameInAmerica: 'aspersión',
    typed:
      'pistola pistolas rociar rociada rociado aspersion airless atomizar atomizada pulverizar pulverizada pulverizado sopletear sopleteo sopletea sopletee sopletie sopletio sopleteamos sopletearon sopleteando sopleteada sopleteado pistolear pistolee pistoleamos pistoleada pistoleado sopleteadas sopleteados',
    way: 'Pistola: pasadas ligeras e iguales, cada una sobre la mitad de la anterior.',
    finish: 'Con pistola es normal algo de piel de naranja fina o de moteado.',
  },
};

const either = new Intl.ListFormat('es', { type: 'disjunction' });

/** `flujo, inmersión, brocha, rodillo o pistola`. */
export const spanishMethodList = either.format(methods.map((method) => spanishMethods[method].name));
