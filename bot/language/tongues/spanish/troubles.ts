// What to do in need, in Spanish: the first thing that is read, and what never to do.

import { isGasNote } from '../../../../core/calc/monitor-limits.ts';
import type { AlarmTold } from '../../../../core/crew/alarm-events.ts';
import type { Alarm } from '../../../../core/session/session-commands.ts';
import type { Figures } from '../../figures.ts';
import type { AlarmsOver } from '../english/alarms.ts';
import type { Trouble } from '../english/troubles.ts';
import type { Spoken } from './spoken.ts';

const practice = 'práctica común, sin fuente';

/** Lo que se calienta, si se dice algo más que eso. */
export function spanishHeats(say: Spoken): Readonly<Record<'smoking' | 'bulging', Trouble>> {
  const sheets = say.many('data-sheet').replace(/^\p{L}/u, (first) => first.toUpperCase());
  return {
    smoking: {
      title: 'Una mezcla o una lata echa humo',
      now: {
        text: 'Todos fuera del humo, ya. Déjela donde está, con la tapa suelta. Llamen al número desde fuera: puede arder.',
        source: practice,
      },
      section: `${sheets}: secciones 5 y 10, incendios, y estabilidad y reactividad`,
      never: ['No respire lo que suelta ni se incline sobre ella. No le eche agua. No la cierre hermética.'],
    },
    bulging: {
      title: 'Una mezcla o una lata se hincha',
      now: {
        text: 'Apártense todos: puede reventar. Se queda donde está; que nadie la abra, la mueva ni la enfríe. Llamen al número; ni una chispa cerca.',
        source:
          'se queda donde está: DGUV Information 213-078, presión en envases; lo demás: práctica común, sin fuente',
      },
      section: `${sheets}: secciones 7 y 10, manejo, y estabilidad y reactividad`,
      never: [
        'No se incline sobre la tapa. Quien quite la presión debe saber cómo: pregunte al fabricante. No vuelva a llenarla.',
      ],
    },
  };
}

export function spanishTroubles(say: Spoken): Readonly<Record<Alarm, Trouble>> {
  const sheets = say.many('data-sheet').replace(/^\p{L}/u, (first) => first.toUpperCase());
  const sheet = say.one('data-sheet').replace(/^\p{L}/u, (first) => first.toUpperCase());
  // As the sixteen headings are printed there.
  const release =
    say.locale === 'es-ES' ? 'medidas en caso de vertido accidental' : 'medidas en caso de derrame accidental';
  const handling = say.locale === 'es-ES' ? 'manipulación y almacenamiento' : 'manejo y almacenamiento';
  return {
    eyes: {
      title: 'Salpicadura en los ojos',
      now: {
        text: 'Lave ya con mucha agua, con los párpados abiertos, 15 minutos como mínimo: en el lavaojos o con cualquier agua limpia. Mientras se lava, otra persona pide ayuda.',
        source: '15 minutos: norma ANSI/ISEA Z358 de lavaojos, y práctica de primeros auxilios',
      },
      section: `${sheet} de lo que salpicó: sección 4, primeros auxilios`,
      never: ['No frote. No se pare a buscar primero la hoja.'],
    },
    spill: {
      title: 'Derrame',
      now: {
        text: 'Fuera quien no haga falta. Ni chispas ni interruptores. Corte lo que sale si puede desde donde está.',
        source: practice,
      },
      section: `${sheet} de lo derramado: sección 6, ${release}`,
      never: [
        'No encienda ni apague nada entre el vapor. No cierre con tapa hermética lo que reacciona con la humedad.',
      ],
    },
    fire: {
      title: 'Fuego',
      now: {
        text: 'Todos fuera, ya. Den la alarma, llamen al número desde fuera, salgan a recibir a quien venga.',
        source: practice,
      },
      section: `${sheets}: sección 5, medidas de lucha contra incendios`,
      never: [`No vuelva a entrar. No eche agua ${say.toThe('solvent')} que arde.`],
    },
    down: {
      title: 'Persona caída',
      now: {
        text: 'No entre sin equipo de respiración autónomo (ERA): el segundo que entra es el siguiente en caer. Llame ya al número y mire desde fuera qué pudo pasarle: vapor, gas inerte, un golpe, la electricidad.',
        source: practice,
      },
      section: `${sheets}: sección 4, primeros auxilios`,
      never: ['No la toque mientras pueda estar bajo tensión.'],
    },
    'skin-burn': {
      title: 'Quemadura o salpicadura en la piel',
      now: {
        text: 'Lave ya con mucha agua corriente fresca y quite la ropa empapada: 15 minutos como mínimo, 20 si es quemadura. Mientras se lava, otra persona pide ayuda.',
        source:
          '15 minutos: norma ANSI/ISEA Z358 de duchas; 20 en quemaduras: European Resuscitation Council 2021, de memoria',
      },
      section: `${sheet} de lo que salpicó: sección 4, primeros auxilios`,
      never: [`Ni cremas, ni hielo, ni ${say.many('solvent')}. No arranque lo que se haya pegado a una quemadura.`],
    },
    breathless: {
      title: 'Alguien no puede respirar bien',
      now: {
        text: 'Sáquenlo ya al aire libre, sentado y con el cuello suelto; quien lo saque, con equipo de respiración. Llame ya al número: puede empeorar durante horas. No lo deje solo.',
        source: practice,
      },
      section: `${sheets}: sección 4, primeros auxilios`,
      never: ['No entre en el vapor sin equipo de respiración. No lo mande solo a casa.'],
    },
    emergency: {
      title: 'Alguien necesita ayuda',
      now: {
        text: 'Vaya y mire primero qué podría tumbarle a usted también. Llame ya al número, diga dónde y no cuelgue.',
        source: practice,
      },
      section: `${sheets}: sección 4, primeros auxilios`,
      never: ['No entre sin equipo de respiración donde pueda haber vapor o gas.'],
    },
    hot: {
      title: 'Una mezcla se calienta',
      now: {
        text: 'Lejos de la gente y de lo que arde, con la tapa suelta, si todavía se puede mover. Después, apártese.',
        source: practice,
      },
      section: `${sheets}: secciones 7, ${handling}, y 10, estabilidad y reactividad`,
      never: ['No la cierre hermética. No respire lo que suelta.'],
    },
  };
}

/** Por lo que se vio, y de qué: una lata que se hincha no es una mezcla que se calienta. */
/** With its place, where there are several. */
export function spanishAlarmPlaced(say: Spoken, alarm: AlarmTold & { readonly isDrill: boolean }): string {
  if (alarm.isDrill) return 'el simulacro';
  return `${spanishAlarmName(say, alarm)}${alarm.place === undefined ? '' : ` (${alarm.place})`}`;
}

export function spanishAlarmName(say: Spoken, { what, seen, can, batch, note }: AlarmTold): string {
  if (isGasNote(what, note)) return `gas fuera de límite, ${note}`;
  if (what !== 'hot') return spanishTroubles(say)[what].title.toLowerCase();
  const thing = can === undefined ? `la mezcla ${batch}` : `la lata ${can}`;
  const does = { hot: 'se calienta', smoking: 'echa humo', bulging: 'se hincha' }[seen ?? 'hot'];
  if (can !== undefined || batch !== undefined) return `${thing} ${does}`;
  return seen === undefined || seen === 'hot' ? 'una mezcla se calienta' : `una mezcla o una lata ${does}`;
}

export function spanishAlarmsOver(say: Spoken, { ends, drills, of }: AlarmsOver, figures: Figures): string {
  const listed = (whats: typeof ends) => whats.map((what) => spanishTroubles(say)[what].title.toLowerCase());
  const ended = of === undefined ? listed(ends) : [...new Set(of.map((each) => spanishAlarmName(say, each)))];
  const over = [
    ...(ended.length > 0 ? [figures.list(ended)] : []),
    ...(drills.length > 0 ? [`simulacro (${figures.list(listed(drills))})`] : []),
  ];
  return `terminado: ${over.join(', ')}`;
}
