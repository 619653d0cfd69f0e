// Units as people type them in Spanish, besides what stands on labels everywhere. A spelling of two words has one `_`.

import type { UnitSpellings } from '../english/units.ts';

export const spanishUnits: UnitSpellings = {
  kg: 'kilogramo kilogramos',
  g: 'gramo gramos',
  lb: 'libra libras',
  oz: 'onza onzas',
  L: 'litro litros',
  mL: 'mililitro mililitros',
  gal: 'galon galón galones',
  qt: '',
  'fl oz': 'onza_liquida onza_líquida onzas_liquidas onzas_líquidas',
  C: 'centigrados centígrados centigrado centígrado grados_c grados_celsius grados_centigrados grados_centígrados',
  F: 'grados_f grados_fahrenheit farenheit farenheits grados_farenheit',
  '%': 'por_ciento humedad %_humedad',
  mm: '',
  cm: '',
  in: 'pulgada pulgadas pulg',
  m2: 'metro_cuadrado metros_cuadrados',
  cm2: '',
  ft2: 'pie_cuadrado pies_cuadrados',
  um: 'micra micras micrometro micrómetro micrometros micrómetros',
  mil: 'milesima milésima milesimas milésimas',
  h: 'hora horas',
  min: 'minuto minutos',
  degree: 'grado grados',
};
