// What makes a line calm that begins with an alarm's word, in Spanish, without accents. Common practice and our own choice, no source.

import type { CalmWords } from '../english/calm.ts';

export const spanishCalm: CalmWords = {
  summoned: '',
  comesToFire: '',
  oftenOfThem: '',
  summons: 'ya rapido aqui donde urgente',
  calmFire: 'lento controlado controlada',
  calmEyes: 'abiertos',
  calmDown: 'para por hasta de del',
  calmSpill: 'cerebral cero',
  calmHot: '',
  calmSkin: '',
  calmBreathless: 'con cuando',
  calmEmergency: 'luces luz salida probada probado revisada',
  contact: '',
  counts: '',
  ofHome: 'piloto sol pan barbacoa vecino camion campamento',
  fireItself: 'fuego incendio',
  // `llamas a kari por teléfono`; `ojo con la manguera`, `ojo todos`: a warning.
  calmPhrases: `
    llamas a, llamas al, fuego de campamento, ojo con, ojo al, ojo a, ojo que, ojo todos, ojo para, ojo y cuidado, ojos de pez, ojo de pez`,
  orders: '',
  kindled: '',
  suffers: '',
  byHowMuch: '',
  listed: '',
  onPaper: 'lista',
  illness: 'gripe fiebre resfriado',
  falls: 'foso escalera',
  cleaned: 'limpio limpiado limpiada recogido',
  notSeenTo: '',
  seenTo: 'bien correcto molde',
  spilledInJest: '',
  desperate: 'ayuda socorro auxilio atrapado atrapada atrapados respira inconsciente sangra',
  lookingAt: 'de',
  lookingInto: 'en',
  scales: 'bascula balanza',
  atHour: '',
  noons: '',
};
