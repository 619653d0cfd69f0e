// What can be set, in Spanish: its name, and what it can be set to.

import type { SettingName } from '../../../../core/settings.ts';
import type { englishSettings, SettingWords } from '../english/settings.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';

const namesOf = (say: Spoken): Readonly<Record<SettingName, SettingWords>> => ({
  crew: { label: capital(say.one('crew')), asked: `nombre ${say.ofThe('crew')}` },
  zone: { label: 'Zona horaria', asked: 'zona horaria', hint: 'Europe/Madrid, o solo la ciudad' },
  'crew-language': {
    label: `Idioma ${say.ofThe('crew')}`,
    asked: 'un idioma',
    hint: 'El del mensaje de cada mezcla, que leen todos. Cada uno puede tener otro para sus respuestas.',
    typed: 'idioma-equipo, idioma-cuadrilla',
  },
  'crew-units': {
    label: `Unidades ${say.ofThe('crew')}`,
    asked: 'métricas o us',
    typed: 'unidades-equipo, unidades-cuadrilla',
  },
  role: { label: 'Puesto', asked: `quién; operario, ${say.one('lead')} o supervisor` },
  sheet: { label: capital(say.one('sheet')), asked: say.one('sheet') },
  prep: { label: 'Se anota la preparación', asked: 'sí o no', typed: 'preparacion' },
  'new-parts': {
    label: 'Una capa puede nombrar piezas nuevas',
    asked: 'sí o no',
    typed: 'piezas-nuevas, piezas nuevas',
  },
  job: {
    label: `Lo que pide ${say.the('job')}`,
    asked: `${say.one('job')}, y lo que pide: grado, ${say.one('profile')}, sales, polvo 2 tamaño 2 o rotura de agua de la superficie; espesor pa2 5 puntos, adherencia 4B, frotes 50, húmeda 60 80um, arrancamiento 5MPa, brillo 85GU, dureza 2H, poros 500V, aspecto u otros ojos antes de liberar`,
  },
  'air-limit': {
    label: 'Validez del aire',
    asked: 'cuánto tiempo vale una lectura del aire',
    typed: 'límite-aire, límite aire',
  },
  'voc-limit': { label: 'Límite de COV', asked: 'límite de COV', typed: 'límite-cov, límite cov' },
  digest: { label: 'Hora del resumen', asked: 'hora del resumen' },
  morning: { label: 'Hora de la lista de la mañana', asked: 'hora del repaso de la mañana' },
  quiet: { label: 'Silencio', asked: 'horas de silencio', hint: '22-6. Lo urgente avisa igual. Vacío: sin silencio.' },
  bell: { label: 'Prueba de avisos en cada turno', asked: 'sí o no, entra o sale' },
  emergency: {
    label: 'Emergencia',
    typed: 'emergencia',
    asked: 'teléfono, fuego, ahogo, caído, ojos, piel, derrame, caliente o emergencia',
  },
  brief: { label: `${capital(say.one('brief'))} antes de pintar`, asked: 'sí o no, entra o sale', typed: 'platica' },
  'brief-ahead': {
    label: `Antelación de la ${say.one('brief')}`,
    asked: 'con cuánta antelación',
    typed: 'charla-antes, plática-antes',
  },
  sprayers: { label: 'Pintores', asked: 'quiénes' },
  scale: { label: 'Báscula', asked: 'qué división marca, y hasta cuánto pesa', typed: 'bascula, balanza' },
  booth: { label: 'Cabina', asked: 'área' },
  confined: { label: 'Espacio confinado', asked: 'qué lugar; sí o no', typed: 'confinado' },
  lel: { label: 'Fracción del LIE', asked: 'fracción del LIE, en %' },
  mixing: { label: 'Factor de mezcla de aire', asked: 'factor de mezcla de aire', typed: 'factor-aire' },
  law: { label: 'Leyes que rigen', asked: 'us, eu, uk, mexico o elsewhere', typed: 'ley, leyes' },
  limit: {
    label: `Límite diario de ${say.a('solvent')}`,
    asked: `${say.one('solvent')} y su cifra`,
    typed: 'limite, limite-diario',
  },
  monitor: { label: 'Medidor de gas revisado', asked: 'hasta qué día', typed: 'medidor, medidor gas' },
  'gas-flow': { label: 'Caudal del gas', asked: 'caudal del gas', typed: 'caudal gas' },
  rate: { label: 'Ritmo', asked: 'ritmo de aplicación' },
  units: { label: 'Unidades', asked: 'métricas o us' },
  language: { label: 'Su idioma', asked: 'un idioma' },
  rings: { label: 'Sus avisos', asked: 'hilo o directo', hint: 'Adónde le llegan los avisos.' },
});

export const spanishSettings = (say: Spoken): typeof englishSettings => ({
  names: namesOf(say),
  laws: {
    us: 'Estados Unidos',
    eu: 'la Unión Europea',
    uk: 'Gran Bretaña',
    mexico: 'México',
    elsewhere: 'otro país, del que no consta nada',
  },
  units: { metric: 'métricas', us: 'EE. UU.' },
  rings: { thread: 'en el hilo de la mezcla', direct: 'por mensaje directo' },
  role: (person, role) => `${person} (${role})`,
});
