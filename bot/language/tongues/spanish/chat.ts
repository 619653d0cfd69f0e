// What only a chat platform needs to say, in Spanish: a batch's one message, the home tab, who and where.

import type { englishChat } from '../english/chat.ts';
import { capital, counted, decimals } from './names.ts';
import type { Spoken } from './spoken.ts';

/** Where nobody's own figures are at hand. */
const listed = (names: readonly string[]): string => names.join(', ');

export const spanishRoles = (say: Spoken) => ({ crew: 'operario', lead: say.one('lead'), supervisor: 'supervisor' });

export const spanishChat = (say: Spoken): typeof englishChat => ({
  standing: (batch, sheet, state) => `Mezcla ${batch} ${sheet}: ${state}`,
  finished: 'terminada',
  takenBack: (batch) => `Mezcla ${batch}: anulada`,
  briefTakenBack: 'anulada',
  act: (at, who, what, figures) => `${figures.timeDown(at)} ${who}: ${what}`,
  earlierActs: (count) => `${counted(count, 'anterior', 'anteriores')}, en el hilo y en el registro`,
  moreTaps: 'Más…',
  by: (who) => `Lo dice ${who}`,
  notInSlack: (names) => `Es para ${listed(names)}, sin usuario de Slack aquí: avíseles.`,
  told: (names) => `Avisados: ${listed(names)}`,
  notReached: (names) => `Sin avisar: ${listed(names)}. Avíseles de viva voz o por teléfono.`,
  tapped: (who, label, time) => `${who}: ${label}, ${time}`,
  more: (count) => `${counted(count, 'línea más', 'líneas más')}; están todas en el registro.`,
  takenTo: (title) => `${title}. Sigue en su hilo.`,
  form: {
    submit: 'Anotar',
    close: 'Dejarlo',
    loading: 'Un momento…',
    fill: 'Completar esto',
    notOpened: 'Slack no abrió el formulario',
    typeInstead: (line) => `Toque otra vez, o escriba: ${line}`,
    tapAgain: 'Toque otra vez.',
  },
  linesLeft: (most, left) =>
    `De un mensaje se toman ${most} líneas como mucho. ${counted(left, 'línea quedó', 'líneas quedaron')} sin anotar: envíe otra vez lo que falta.`,
  editNotRead:
    'Cambiar un mensaje no cambia nada en el registro. Corrija con corregir o deshacer; lo nuevo, en otro mensaje.',
  numberWanted: 'Aquí va un número.',
  homeTitle: 'Ahora',
  airTitle: 'Aire',
  startTitle: 'Empezar',
  ringsTitle: 'Próximos avisos',
  ring: (time, what, to) => `${time} ${what}${to.length === 0 ? '' : ` (${listed(to)})`}`,
  settingsTitle: 'Ajustes',
  you: (you, role) => `Usted: ${you}. Puesto: ${spanishRoles(say)[role]}.`,
  whoSets: {
    crew: 'Lo fija cualquiera:',
    lead: `Lo fija ${say.a('lead')} o un supervisor:`,
    supervisor: 'Lo fija un supervisor:',
  },
  notSet: 'sin fijar',
  noUsualSheet: 'ninguna es la habitual',
  cansTitle: 'Latas por atender',
  roles: spanishRoles(say),
  setTaps: {
    metric: 'Unidades métricas',
    us: 'Unidades de EE. UU.',
  },
  setUp: {
    crewButton: `Preparar ${say.the('crew')}…`,
    mineButton: 'Mis ajustes…',
    crewTitle: capital(say.the('crew')),
    mineTitle: 'Mis ajustes',
    submit: 'Fijar',
    channel: 'Canal de las mezclas',
    channelHint: 'Antes, invite a Batchbell a ese canal: /invite @batchbell.',
    leads: capital(say.many('lead')),
    leadsHint: `Les llega lo que nadie contesta, y pueden permitir lo que ${say.the('sheet')} deja ${say.toThe('lead')}.`,
    supervisors: 'Supervisores',
    supervisorsHint: `Reciben el resumen del día, y pueden permitir lo que ${say.a('lead')} no.`,
    forLead: (who) => `Eso lo fija ${say.a('lead')} o un supervisor: ${who}.`,
    channelFaults: {
      taken: `Ese canal es de ${say.by('crew', 'otro', 'otra')} ${say.one('crew')}.`,
      'not-invited': 'Batchbell no está en ese canal. Invítelo y vuelva a fijarlo: /invite @batchbell.',
      'not-asked': 'Slack no dijo si Batchbell está en ese canal. Vuelva a fijarlo dentro de un minuto.',
    },
    nobodyLeads: `${capital(say.this('crew'))} aún no tiene ${say.one('lead')}: lo que nadie contesta no llega a nadie más.`,
    noChannel: 'Aún no hay canal: los avisos van a cada uno por mensaje directo.',
  },
  welcomeTitle: 'Para empezar',
  welcome: [
    `Llevo los tiempos, los cálculos y el registro de cada mezcla. Cada mezcla tiene un solo mensaje en el canal ${say.ofThe('crew')}; lo que le pasa queda en su hilo.`,
    'Escriba /bell y lo que pasó, mencióneme en un hilo, o escríbame aquí sin más. Casi todos los pasos son un toque.',
    `Antes de nada, mire los ajustes ${say.ofThe('crew')} y los suyos: un toque cada uno, aquí abajo.`,
  ],
  joined: [
    `Aquí llevo las mezclas ${say.ofThe('crew')}: un mensaje para cada una, que se va actualizando.`,
    say.locale === 'es-US'
      ? 'Para empezar: /bell aire 75F 48%, y después /bell mezclar 5lb. Ayuda: /bell ayuda.'
      : decimals(say, 'Para empezar: /bell aire 24C 48%, y después /bell mezclar 2,4kg. Ayuda: /bell ayuda.'),
  ],
  noCrewHere: (channel) =>
    `Este canal no es de ${say.by('crew', 'ningún', 'ninguna')} ${say.one('crew')}. Su id es ${channel}: va en slackChannels, en el archivo ${say.ofThe('crew')}.`,
  noCrewOfYours: `No sé cuál es su ${say.one('crew')}. Escriba en su canal, o pida que pongan su id de Slack en el archivo.`,
  paperHere: (file) => `${file} llega aquí enseguida.`,
  paperAlone: (file) => `${file} le llega por mensaje directo, solo a usted.`,
  paperMissing: (file) => `${file} no llegó`,
  paperMissingLine: 'No se pudo traer a Slack. Pídalo otra vez.',
  paperUnsure: (file) => `${file}: puede que no haya llegado`,
  paperUnsureLine: 'Slack no contestó. Si no aparece aquí, pídalo otra vez.',
  pictureNotFiled: 'Foto sin archivar',
  pictureWhere: 'Súbala en el hilo de su mezcla: ahí queda archivada con ella.',
  captionNotRecorded: (line) => `Sin anotar, solo guardado con la foto: ${line}`,
  recordCaption: 'Anotar lo escrito',
  pictureFiled: (subject) => `Foto archivada con ${subject}`,
});
