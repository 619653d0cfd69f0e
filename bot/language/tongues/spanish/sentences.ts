// The Spanish catalogue, as one country says it: its terms stand in terms.ts. A person is `usted`, and told what to do as such.

import type { FactId } from '../../../cards/fact-ids.ts';
import { linesShownIn } from '../../line-shown.ts';
import type { Words } from '../english/sentences.ts';
import type { Profile } from '../profile.ts';
import { spanishAsked } from './asked.ts';
import { spanishButtons } from './buttons.ts';
import { spanishChat } from './chat.ts';
import { spanishFact } from './facts.ts';
import { spanishFirstShift } from './first-shift.ts';
import { spanishGlossary } from './glossary.ts';
import { spanishGuide } from './guide.ts';
import { spanishHoldReason } from './holds.ts';
import { spanishLaw } from './law.ts';
import { spanishMaterial } from './material.ts';
import { spanishMisread } from './misreads.ts';
import { capital, spanishNames, spanishTyped } from './names.ts';
import { spanishHeldBack, spanishNoFigure, spanishObjection, spanishRuleSources } from './objections.ts';
import { spanishPage } from './page.ts';
import { spanishPapers } from './papers.ts';
import { spanishParts } from './parts.ts';
import { spanishBlend, spanishPhases } from './phases.ts';
import { spanishPractice } from './practice.ts';
import { spanishRecords } from './records.ts';
import { spanishReminders } from './reminders.ts';
import { spanishReplies } from './replies.ts';
import { spanishLate, spanishOvertaken, spanishRings, spanishUnproved } from './rings.ts';
import { spanishSession } from './session.ts';
import { spanishSettings } from './settings.ts';
import { spanishSlots } from './slots.ts';
import { type Spoken, spokenIn } from './spoken.ts';
import { spanishSteps } from './steps.ts';
import { spanishTermNames } from './terms-typed.ts';
import { spanishTopics } from './topics.ts';
import { spanishTyped as spanishLines } from './typed.ts';
import { spanishUnclear } from './unclear.ts';
import { spanishUndo } from './undo.ts';
import { spanishWhy } from './why.ts';

const factsOf = (say: Spoken): Readonly<Record<FactId, string>> => ({
  'part-a': 'Parte A',
  'part-b': 'Parte B',
  'ratio-error': 'Desviación de la relación de mezcla',
  'ratio-tolerance': 'Desviación admitida',
  'stir-wanted': 'Agitación requerida',
  'stir-given': 'Agitación transcurrida',
  'stir-done-at': 'Fin de la agitación',
  'pot-life-ends': 'Fin de la vida de la mezcla',
  'pot-margin-at': 'Terminar antes de',
  'air-temperature': 'Aire',
  'air-read-at': 'Leído',
  humidity: 'Humedad',
  'dew-point': 'Punto de rocío',
  'surface-temperature': 'Sustrato',
  spread: 'Diferencial (ΔT) sobre el punto de rocío',
  'night-lowest': 'Mínima',
  'flash-least-at': 'Oreo, mínimo hasta',
  'flash-most-at': 'Oreo, máximo hasta',
  'open-until': 'Retocar hasta',
  'surface-ends-at': 'Aplicar antes de',
  'recoat-opens-at': 'Repintar desde',
  'recoat-closes-at': 'Repintar hasta',
  'part-temperature': 'Pieza',
  'cure-given': 'Curado transcurrido',
  'cure-done-at': 'Fin del tiempo de curado',
  'temp-due-at': 'A temperatura, estimado',
  'stage-handle-at': 'Se puede manipular desde',
  'stage-service-at': `Servicio según ${say.the('sheet')} desde`,
  'stage-full-at': 'Resistencia completa desde',
  'door-openings': 'Aperturas de puerta',
  'door-open': 'Puerta abierta, en total',
  'part-wall': 'Pared',
  'part-area': 'Área',
  'part-bears': 'Aguanta',
  profile: capital(say.one('profile')),
  'film-mean': 'Media',
  'film-lowest': 'Mínima',
  'film-highest': 'Máxima',
  'left-over': 'Sobrante',
  'can-left': 'Queda en la lata',
  headspace: 'Espacio libre',
  'gas-needed': 'Gas requerido',
  'blanket-by': 'Gas antes de',
  'can-stir-wanted': 'Agitar en su lata',
  'can-stir-done-at': 'Fin de la agitación',
  'part-b-exact': 'Parte B requerida',
  'add-part-a': 'Añadir Parte A',
  'add-part-b': 'Añadir Parte B',
  caught: 'Recogido',
  uncovered: 'Destapada',
  cans: 'Latas',
  'part-a-stock': 'Parte A en latas abiertas',
  'part-b-stock': 'Parte B en latas abiertas',
  'mixed-total': 'Mezclado',
  'caught-total': 'Recogido',
  'left-over-total': 'Sobrante',
  area: 'Área',
  'film-wanted': 'Espesor de película seca (EPS)',
  'wet-film-wanted': 'Espesor de película húmeda (EPH)',
  'mixed-volume': 'A mezclar, volumen',
  'mixed-mass': 'A mezclar, peso',
  'transfer-efficiency': 'Eficiencia de transferencia',
  'happened-at': 'Pasó',
  'late-minutes': 'Retraso',
  'due-at': 'Tocaba',
  batches: 'Mezclas',
  'part-a-total': 'Parte A pesada',
  'part-b-total': 'Parte B pesada',
  parts: 'Piezas recubiertas',
  'air-lowest': 'Aire, mínimo',
  'air-highest': 'Aire, máximo',
  'humidity-lowest': 'Humedad, mínima',
  'humidity-highest': 'Humedad, máxima',
  'solvent-per-hour': `${capital(say.one('solvent'))} por hora`,
  'sprayed-per-hour': `${capital(say.one('spraying'))} por hora`,
  'air-for-lel': 'Caudal mínimo por LIE',
  'air-for-exposure': 'Caudal mínimo por exposición',
  'fan-gives': 'Caudal disponible',
  'fan-over-lel': 'Caudal disponible ÷ requerido, LIE',
  'fan-over-exposure': 'Caudal disponible ÷ requerido, exposición',
  'fan-over-oven': 'Caudal disponible ÷ requerido, horno',
  'face-velocity': 'Velocidad frontal',
  'face-least': 'Velocidad frontal, mínima',
  'lel-share': 'Fracción del LIE',
  'mixing-factor': 'Factor de mezcla de aire',
  'spell-ends-at': 'Fin del tiempo de pistola',
  'fan-until': 'Extracción hasta',
  'solvent-logged': `${capital(say.one('solvent'))} de lavado`,
  'oxygen-left': 'Oxígeno que queda',
  'oven-air': 'Aire para el horno',
  'solvent-in-load': `${capital(say.one('solvent'))} en la carga`,
  rings: 'Avisos',
  'rings-late': 'Avisos tardíos',
  'rings-unanswered': 'Avisos sin contestar',
  deviations: 'Desviaciones',
  permissions: 'Con permiso previo',
  corrections: 'Correcciones',
  'planned-total': 'Previsto',
  'applied-total': 'Aplicado',
  'coated-area': 'Área recubierta',
  voc: 'COV',
  'materials-total': `Recubrimientos y ${say.many('solvent')} gastados`,
  'answer-median': 'Respuesta a avisos, mediana',
  events: 'Anotaciones',
  found: 'Encontrados',
});

/** What is typed is the same in every country. */
const lineShown = linesShownIn(spanishLines);

export function spanishIn(locale: Profile['locale']): Words {
  const say = spokenIn(locale);
  return {
    facts: factsOf(say),
    phases: spanishPhases,
    blend: spanishBlend,
    buttons: spanishButtons(say),
    names: spanishNames(say),
    typed: spanishTyped(say),
    session: spanishSession(say),
    law: spanishLaw(say),
    settings: spanishSettings(say),
    page: spanishPage(say),
    chat: spanishChat(say),
    replies: spanishReplies(say),
    material: spanishMaterial(say),
    records: spanishRecords(say),
    parts: spanishParts(say),
    objection: (objection, figures) => spanishObjection(say, objection, figures),
    unclear: (unclear, figures) => spanishUnclear(say, unclear, figures),
    ruleSources: spanishRuleSources(say),
    noFigure: spanishNoFigure(say),
    heldBack: (without, figures) => spanishHeldBack(say, without, figures),
    holdReason: (hold, figures) => spanishHoldReason(say, hold, figures),
    misread: spanishMisread(say),
    fact: (fact, figures) => spanishFact(say, fact, figures),
    slots: spanishSlots(say),
    rings: spanishRings(say),
    unproved: spanishUnproved,
    overtaken: spanishOvertaken(say),
    late: spanishLate,
    guide: spanishGuide(say),
    firstShift: spanishFirstShift(say),
    practice: spanishPractice,
    reminders: spanishReminders,
    undo: spanishUndo(say),
    steps: spanishSteps(say),
    papers: spanishPapers(say),
    asked: spanishAsked(say),
    topics: spanishTopics(say),
    why: spanishWhy(say),
    glossary: spanishGlossary,
    termNames: spanishTermNames,
    lineShown,
  };
}
