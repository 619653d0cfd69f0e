// What Spanish-speaking crews say of the room, of the booth and of their tools, besides the verbs that begin a line.

import type { Acts } from '../said-words.ts';
import { formsOf, saidOf } from './conjugated.ts';
import {
  all,
  begun,
  bins,
  brushes,
  draws,
  ended,
  fans,
  given,
  guns,
  inEitherOrder,
  isOf,
  off,
  on,
  pistols,
  put,
  put_away,
  rags,
  rinsed,
  rollers,
  runs,
  spraying,
  stands,
  switched,
  washed,
  without,
} from './said-roots.ts';

const suppliedAir = [
  ...['aire suministrado', 'aire de linea', 'linea de aire', 'aire de manguera', 'aire de la manguera', 'aire externo'],
  ...[
    'aire respirable',
    'capucha con aire',
    'mascara con aire',
    'capucha de aire',
    'mascara de aire',
    'aire a mascara',
  ],
];
const trigger = ['gatillo', 'pistola'];

export const saidOfWork = (): Acts => ({
  air: all(
    'aire, clima, ambiente, higrometro marca, higrometro, en el taller, en taller, en cabina, en la cabina, aqui, aqui hace, hace aqui, aqui adentro, aqui dentro, en la nave, en nave, en la sala, en sala, en el shop, en shop, en la planta, traemos, traemos de aire, estamos a, estamos en, temperatura ambiente, hace, tenemos',
    saidOf(
      [...formsOf('mirar'), ...formsOf('checar'), ...formsOf('leer'), ...formsOf('tomar')],
      'ambiente',
      'higrometro',
      'aire',
      'clima',
    ),
    saidOf(['taller', 'nave', 'cabina', 'cuarto', 'sala'], 'anda en', 'esta a', 'esta en', 'anda a', 'marca', 'trae'),
  ),
  'fan on': all(saidOf(on, ...fans), isOf(fans, [...runs, ...draws])),
  'fan off': all(saidOf(off, ...fans), isOf(fans, stands)),
  'supplied yes': all(
    'con suministrado',
    saidOf(
      [
        ...put,
        'con',
        'llevo',
        'llevamos',
        'lleva',
        'llevan',
        'traigo',
        'traemos',
        'trae',
        'traen',
        'usando',
        'uso',
        'usamos',
      ],
      ...suppliedAir,
    ),
    saidOf([...switched, 'respiro', 'respiramos', 'respirando', 'tengo', 'tenemos'], ...suppliedAir),
    saidOf(
      suppliedAir,
      ...['puesto', 'puesta', 'conectado', 'conectada', 'en capucha', 'en mascara', 'a capucha', 'listo'],
    ),
    saidOf(
      ['mascara', 'mascaras', 'capucha', 'capuchas', 'caperuza'],
      ...suppliedAir.slice(0, 6).map((air) => `con ${air}`),
    ),
    saidOf(
      ['llevo', 'llevamos', 'traigo', 'traemos', ...put],
      ...['mascara', 'capucha'].flatMap((mask) => suppliedAir.slice(0, 6).map((air) => `${mask} con ${air}`)),
    ),
  ),
  'supplied no': saidOf(['sin', 'no hay', 'quitado', 'me quite', 'nos quitamos'], ...suppliedAir),
  'spray on': all(
    saidOf(begun, ...spraying.flatMap((each) => [each, `a ${each}`]), 'pistola', 'con pistola'),
    saidOf(['tirando', 'dandole', 'pintando', 'disparando', 'aplicando', 'rociando'], ...pistols),
    saidOf(formsOf('apretar', { stressed: 'apriet' }), 'gatillo'),
    saidOf(['pistola'], 'en marcha', 'arrancada', 'tirando', 'disparando'),
    'pistoleando, sopleteando, pulverizando, rociando',
  ),
  'spray off': all(
    saidOf(
      ended,
      ...spraying.map((each) => `de ${each}`),
      ...['con pistola', 'pistola', 'pistoleado', 'sopleteado', 'de disparar'],
    ),
    saidOf(
      [
        ...formsOf('soltar', { stressed: 'suelt' }),
        ...formsOf('colgar', { stressed: 'cuelg' }),
        ...formsOf('bajar'),
        ...off,
      ],
      ...trigger,
    ),
    saidOf(['pistola'], 'colgada', 'parada', 'apagada', 'quieta', 'en su gancho', 'guardada'),
  ),
  'flush brush': inEitherOrder(washed, brushes),
  'flush roller': inEitherOrder(washed, rollers),
  flush: saidOf(without(washed, 'limpio', 'limpia', 'limpios', 'limpias', 'purgar', 'purgado'), ''),
  'flush gun': all(inEitherOrder(washed, guns), saidOf(rinsed, ...guns)),
  rags: all(
    saidOf(put_away, ...rags, ...rags.flatMap((rag) => bins.map((bin) => `${rag} ${bin}`))),
    isOf(rags, [...bins, 'ya en bidon', 'recogidos', 'metidos', 'guardados', 'tirados', 'recogida', 'guardada']),
    saidOf(bins, 'con agua', 'con agua y tapado', 'con tapa', 'con agua y tapa', 'con tapa y agua', 'de trapos'),
  ),
  close: all(
    saidOf(
      [...formsOf('cerrar', { stressed: 'cierr' }), ...ended, ...given],
      ...['sesion', 'charla', 'platica', 'por terminada sesion', 'sesion por terminada', 'por cerrada sesion'],
    ),
    'sesion terminada, sesion cerrada, sesion acabada, todo recogido en cabina, recogido todo en cabina, cabina recogida, cabina lista y cerrada, se acabo la sesion',
  ),
  ack: all(
    saidOf(formsOf('firmar'), ''),
    saidOf(
      [
        'lei',
        'leida',
        'leido',
        'leimos',
        'ya lei',
        'he leido',
        'entendi',
        'entendida',
        'enterado de',
        'enterada de',
        'oi',
      ],
      ...[
        'charla',
        'platica',
        'instrucciones',
        'indicaciones',
        'riesgos',
        'platica de seguridad',
        'charla de seguridad',
      ],
    ),
    saidOf(['charla', 'platica', 'instrucciones'], 'leida', 'entendida', 'leidas', 'entendidas', 'firmada', 'clara'),
    'leido y entendido, leida y entendida, lei y entendi, he leido y entendido, ya lei, enterado de la charla, enterado y de acuerdo, enterado y firmo',
  ),
});
