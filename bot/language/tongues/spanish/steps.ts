// Los pasos que pide el papel del fabricante: se preguntan una vez, se contestan con un toque, y se dicen antes del acto.

import type { FilteredInto, FilterMaterial, FilterTold } from '../../../../core/filters.ts';
import type { Protection, StirSpeed } from '../../../../core/products/sheet-steps.ts';
import { strengthAsked } from '../../../../core/steps/alcohol.ts';
import type { RunStep, WorkStep } from '../../../../core/steps/run.ts';
import type { VesselMaterial } from '../../../../core/vessels.ts';
import type { Figures } from '../../figures.ts';
import type { StepsWords } from '../english/steps.ts';
import { spanishGears } from './gears.ts';
import { atTime, capital, methodName, spanishSolvents, theTime, told } from './names.ts';
import { papersRevisionSaid } from './papers.ts';
import type { Spoken } from './spoken.ts';

const vesselMaterials: Readonly<Record<VesselMaterial, string>> = {
  glass: 'vidrio',
  stainless: 'acero inoxidable',
  hdpe: 'polietileno de alta densidad',
};

const protections = (say: Spoken): Readonly<Record<Protection, string>> => ({
  gloves: 'guantes',
  goggles: say.one('goggles'),
  'face-shield': 'pantalla facial',
  coverall: 'mono',
  apron: 'delantal',
  respirator: 'respirador',
});

const filterMaterials: Readonly<Record<FilterMaterial, string>> = {
  'glass-fibre': 'fibra de vidrio',
  nylon: 'nailon',
  polypropylene: 'polipropileno',
  'stainless-mesh': 'malla de acero inoxidable',
};

const filteredInto: Readonly<Record<FilteredInto, string>> = {
  'second-vessel': 'otro recipiente',
  'same-vessel': 'mismo recipiente',
};

function filterTold({ filterMicrometres: grade, filterOf, filteredInto: into }: FilterTold, figures: Figures): string {
  const through = [
    ...(filterOf === undefined ? [] : [filterMaterials[filterOf]]),
    ...(grade === undefined ? [] : [figures.filterGrade(grade)]),
  ];
  return [through.join(' '), into === undefined ? '' : filteredInto[into]].filter((text) => text !== '').join(', ');
}

const either = new Intl.ListFormat('es', { type: 'disjunction' });

const rowsOf = (say: Spoken): StepsWords['rows'] => ({
  equipment: {
    name: 'equipo clasificado para líquidos inflamables',
    asked: () =>
      '¿Está clasificado para líquidos inflamables todo lo que funciona junto a la mezcla (agitador, lámparas, ventilador)?',
    yes: 'Clasificado',
    no: 'Sin clasificar',
    instead: 'Use equipo clasificado, o mezcle donde lo haya.',
  },
  bonding: {
    name: 'recipientes puenteados y a tierra',
    asked: () => '¿Están la lata y el recipiente de metal puenteados entre sí y a tierra mientras se vierte?',
    yes: 'A tierra',
    no: 'No lo están',
    instead: 'Puentee la lata y el recipiente y póngalos a tierra antes de verter nada.',
  },
  papers: {
    name: `instrucciones y ${say.many('data-sheet')} leídas`,
    asked: (sheet, figures) =>
      `¿Ha leído las instrucciones de ${sheet.name} (${papersRevisionSaid(sheet, figures)}) y ${say.theMany('data-sheet')} de las dos partes?`,
    yes: 'Las he leído',
    no: 'Todavía no',
    instead: 'Léalas primero; verter puede esperar.',
  },
  vessel: {
    name: `recipiente y útiles de lo que admite ${say.the('sheet')}`,
    asked: ({ steps }) => {
      const materials = (steps?.vessel?.materials ?? []).map((material) => vesselMaterials[material]);
      return `¿Son el recipiente y los útiles de ${either.format(materials)}?`;
    },
    yes: 'Lo son',
    no: 'No lo son',
    instead: `Tome un recipiente y útiles de lo que nombra ${say.the('sheet')}.`,
  },
  'clean-oven': {
    name: 'horno limpio',
    asked: () => '¿Está limpio el horno: nada dentro que suelte polvo, aceite o silicona?',
    yes: 'Limpio',
    no: 'No está limpio',
    instead: `Limpie primero el horno, o deje curar en la sala si ${say.the('sheet')} lo admite.`,
  },
  'clean-room': {
    name: 'sitio limpio para curar',
    asked: () => '¿Hay un sitio limpio para curar, sin polvo ni corrientes?',
    yes: 'Lo hay',
    no: 'No lo hay',
    instead: 'Despeje primero un sitio sin polvo ni corrientes, o deje curar en el horno.',
  },
  alcohol: {
    name: `${say.one('solvent')} de lavado tan puro como pide ${say.the('sheet')}`,
    asked: (sheet, figures) => {
      const strength = strengthAsked(sheet);
      return strength === undefined
        ? `¿Es tan puro como pide ${say.the('sheet')}?`
        : `¿Es el ${spanishSolvents[strength.solvent]} en uso del ${figures.percent(strength.purityPercent)}? Se pregunta una vez por botella.`;
    },
    yes: 'Lo es',
    no: 'Menos, o no se sabe',
    instead: `Tome una botella tan pura como pide ${say.the('sheet')}, y escriba alcohol nuevo 99%.`,
  },
});

const works: Readonly<Record<WorkStep, string>> = {
  air: 'aire leído',
  mix: 'mezcla abierta',
  'can-stir': 'agitada en la lata',
  weigh: 'A y B pesadas',
  'can-gas': 'gas puesto en la lata',
  blend: 'agitada',
  filter: 'filtrada',
  prep: 'superficie preparada',
  surface: 'temperatura del sustrato leída',
  coat: 'capa aplicada',
  clean: 'útiles limpios',
  dry: 'seca al tacto',
  cure: 'curado empezado',
  cured: 'fuera del curado',
  film: 'película medida',
  release: 'liberada',
};

const standings: Readonly<Record<Exclude<RunStep['stands'], 'done'>, string>> = {
  next: 'Sigue',
  'to-come': 'Por venir',
  passed: 'Sin anotar',
  kept: 'Se cumple',
  lacking: 'Falta',
  'not-answered': 'Nadie lo ha dicho',
};

const turns = (speed: StirSpeed, figures: Figures): string =>
  `${figures.count(speed.lowestRevolutionsPerMinute)} a ${figures.count(speed.highestRevolutionsPerMinute)} rpm`;

export function spanishSteps(say: Spoken): StepsWords {
  const rows = rowsOf(say);
  return {
    rows,
    run: {
      ofBatch: (batch) => `Recorrido de la mezcla ${batch}`,
      ofPart: (part) => `Recorrido de ${part}`,
      done: (at, said, by) => `${at} ${said} (${by})`,
      coatsBefore: (coats, figures) => `Capas anteriores: ${figures.count(coats)} más`,
      work: (step) => works[step],
      stands: (stands, what, figures) => `${standings[stands]}: ${figures.list(what)}`,
    },
    said: (said, figures) => {
      switch (said.step) {
        case 'protection': {
          const others = { mixing: 'Para mezclar', cleaning: 'Para limpiar' };
          const work =
            said.work === 'mixing' || said.work === 'cleaning'
              ? others[said.work]
              : capital(methodName(say, said.work));
          return `${work}: lleve ${figures.list(said.worn.map((each) => protections(say)[each]))}.`;
        }
        case 'vortex': {
          const range = said.speed === undefined ? '' : ` (${turns(said.speed, figures)})`;
          return `Agite tapado, con un vórtice ligero${range} y no más deprisa: el aire acorta la vida de la mezcla.`;
        }
        case 'filtering': {
          const grade = said.micrometres === undefined ? '' : ` de ${figures.filterGrade(said.micrometres)}`;
          const into = said.secondVessel ? ', a un segundo recipiente limpio' : '';
          return `Filtre por ${filterMaterials[said.through]}${grade}${into}: lo que no se filtra queda en la película como motas.`;
        }
      }
    },
    filterTold,
    filteredThrough: (told, of) => (of === undefined ? `Filtro: ${told}.` : `Mezcla ${of}: filtrada, ${told}`),
    filtered: (told, figures) => ['filtrada', filterTold(told, figures)].filter((text) => text !== '').join(', '),
    filterOther: ({ told, asked }, figures) =>
      `Filtrado dicho: ${filterTold(told, figures)}. ${capital(say.the('sheet'))}: ${filterTold(asked, figures)}. Lo que pasa queda en la película como motas: filtre como pide ${say.the('sheet')}.`,
    fact: ({ step, kept, purityPercent }, figures) => {
      const bottle = purityPercent === undefined ? '' : `, ${figures.percent(purityPercent)}`;
      return `${kept ? '' : 'falta: '}${rows[step].name}${bottle}`;
    },
    noted: (step, kept) => `${kept ? 'Anotado' : 'Falta'}: ${rows[step].name}`,
    potAtWorst: ({ endAt, readAt, againAt }, isPast, figures) =>
      told`En el peor caso la vida de la mezcla ${isPast ? 'terminó' : 'termina'} ${atTime(figures, endAt)}: el aire se leyó ${atTime(figures, readAt)} y otra vez, más cálido, ${atTime(figures, againAt)}.`,
    uncoveredTooLong: ({ openMinutes, mostMinutes }, figures) =>
      `Desde que B tocó A estuvo destapada ${figures.minutesUp(openMinutes)}; ${say.the('sheet')} admite ${figures.minutesDown(mostMinutes)} en total.`,
    speedOutside: ({ is, revolutionsPerMinute, lowest, highest }, cutTo, figures) => {
      const than = `${is === 'too-fast' ? 'más deprisa' : 'más despacio'} que lo que da ${say.the('sheet')} (${figures.count(lowest)} a ${figures.count(highest)} rpm)`;
      const said = `${figures.count(revolutionsPerMinute)} rpm, ${than}`;
      if (is === 'too-slow') return `${said}: un vórtice ligero muestra que se mueve todo.`;
      const cost = cutTo === undefined ? 'cuánto no lo dice' : `hasta el ${figures.percent(cutTo)}`;
      return `${said}: el aire que entra acorta la vida de la mezcla, ${cost}.`;
    },
    cleanedLate: ({ gear, afterMinutes, mostMinutes, costs }, figures) => {
      const cost =
        costs === undefined
          ? ''
          : costs === 'gear'
            ? ' Puede haberse echado a perder.'
            : ' Lo que endureció ahí puede soltarse en la película siguiente.';
      return `Limpieza de ${spanishGears[gear]}: ${figures.minutesUp(afterMinutes)} después del último uso; ${say.the('sheet')} admite ${figures.minutesDown(mostMinutes)}.${cost}`;
    },
    bearsAsked: (oven, figures) =>
      `¿Aguanta la pieza ${figures.temperature(oven)}? Nadie lo ha dicho. Si no, déjela curar en la sala si ${say.the('sheet')} lo admite.`,
    bears: (oven, figures) => `Aguanta ${figures.temperature(oven)}`,
    afterCure: (after, figures) => {
      const stages = { service: 'en servicio desde', full: 'propiedades plenas desde', improves: 'mejora hasta' };
      const said = after.map(({ stage, at }) => `${stages[stage]} ${theTime(figures, at, 'up')}`);
      return `Tras su curado, según ${say.the('sheet')}: ${figures.list(said)}. Eso no la libera.`;
    },
    lidMost: (most, figures) =>
      `Según ${say.the('sheet')}, destapada como mucho ${figures.minutesDown(most)} en total.`,
    lidCuts: (percent, figures) =>
      `Estuvo destapada demasiado tiempo: ${say.the('sheet')} le deja el ${figures.percent(percent)} de la vida normal de la mezcla.`,
    weakCost: 'Lo que dejó dentro endurece y puede echarla a perder. Lave otra vez.',
    lacking: ({ step, by, at }, figures) =>
      `Según ${by}, ${figures.timeDown(at)}, falta: ${rows[step].name}. ${rows[step].instead}`,
  };
}
