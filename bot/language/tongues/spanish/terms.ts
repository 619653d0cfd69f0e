// The terms of the trade in Spanish, with their gender; what Mexico and the United States say otherwise than Spain.

import type { Terms } from '../term.ts';

const trade = 'del taller';
const heard = 'oído a dos encargados, en Bilbao y en Monterrey';
const dataSheet = 'una carta técnica mexicana';
const utility = 'CFE D8500-02';

export const spanishTerms: Terms = {
  batch: { one: 'mezcla', many: 'mezclas', gender: 'f', typed: 'mezcla', source: trade },
  booth: { one: 'cabina', many: 'cabinas', gender: 'f', typed: 'cabina', source: trade },
  brief: {
    one: 'charla',
    many: 'charlas',
    gender: 'f',
    in: {
      'es-MX': { one: 'plática', many: 'pláticas', gender: 'f' },
      'es-US': { one: 'plática', many: 'pláticas', gender: 'f' },
    },
    typed: 'charla plática',
    source: heard,
  },
  can: { one: 'lata', many: 'latas', gender: 'f', typed: 'lata bote cubeta', source: trade },
  coupon: { one: 'probeta', many: 'probetas', gender: 'f', typed: 'probeta testigo', source: trade },
  crew: {
    one: 'equipo',
    many: 'equipos',
    gender: 'm',
    in: {
      'es-MX': { one: 'cuadrilla', many: 'cuadrillas', gender: 'f' },
      'es-US': { one: 'cuadrilla', many: 'cuadrillas', gender: 'f' },
    },
    typed: 'cuadrilla equipo operario operaria',
    source: heard,
  },
  customer: { one: 'cliente', many: 'clientes', gender: 'm', typed: 'cliente', source: trade },
  'data-sheet': {
    one: 'ficha de datos de seguridad (FDS)',
    many: 'fichas de datos de seguridad (FDS)',
    gender: 'f',
    in: {
      'es-MX': { one: 'hoja de datos de seguridad (HDS)', many: 'hojas de datos de seguridad (HDS)', gender: 'f' },
      'es-US': { one: 'hoja de datos de seguridad (SDS)', many: 'hojas de datos de seguridad (SDS)', gender: 'f' },
    },
    typed: '',
    source: 'Reglamento (CE) 1907/2006, anexo II; NOM-018-STPS-2015',
  },
  'dew-point': { one: 'punto de rocío', many: 'puntos de rocío', gender: 'm', typed: '', source: trade },
  dust: { one: 'polvo', many: 'polvos', gender: 'm', typed: 'polvo', source: trade },
  earthed: { one: 'a tierra', many: 'a tierra', gender: 'f', typed: '', source: trade },
  film: { one: 'película', many: 'películas', gender: 'f', typed: 'película', source: dataSheet },
  'flash-off': { one: 'oreo', many: 'oreos', gender: 'm', typed: '', source: heard },
  goggles: {
    one: 'gafas cerradas',
    many: 'gafas cerradas',
    gender: 'f',
    in: {
      'es-MX': { one: 'goggles', many: 'goggles', gender: 'm' },
      'es-US': { one: 'goggles', many: 'goggles', gender: 'm' },
    },
    typed: '',
    source: heard,
  },
  handover: {
    one: 'relevo',
    many: 'relevos',
    gender: 'm',
    in: {
      'es-MX': { one: 'entrega de turno', many: 'entregas de turno', gender: 'f' },
      'es-US': { one: 'entrega de turno', many: 'entregas de turno', gender: 'f' },
    },
    typed: '',
    source: heard,
  },
  humidity: { one: 'humedad', many: 'humedades', gender: 'f', typed: 'humedad', source: trade },
  induction: { one: 'inducción', many: 'inducciones', gender: 'f', typed: '', source: trade },
  job: { one: 'orden', many: 'órdenes', gender: 'f', typed: 'orden pedido', source: trade },
  lead: {
    one: 'encargado',
    many: 'encargados',
    gender: 'm',
    in: {
      'es-MX': { one: 'líder', many: 'líderes', gender: 'm' },
      'es-US': { one: 'líder', many: 'líderes', gender: 'm' },
    },
    typed: 'encargado encargada líder',
    source: heard,
  },
  lot: { one: 'lote', many: 'lotes', gender: 'm', typed: 'lote', source: trade },
  medical: {
    one: 'reconocimiento médico',
    many: 'reconocimientos médicos',
    gender: 'm',
    in: {
      'es-MX': { one: 'examen médico', many: 'exámenes médicos', gender: 'm' },
      'es-US': { one: 'examen médico', many: 'exámenes médicos', gender: 'm' },
    },
    typed: '',
    source: heard,
  },
  oven: { one: 'horno', many: 'hornos', gender: 'm', typed: 'horno', source: trade },
  part: { one: 'pieza', many: 'piezas', gender: 'f', typed: 'pieza', source: trade },
  'pot-life': { one: 'vida de la mezcla', many: 'vidas de la mezcla', gender: 'f', typed: '', source: dataSheet },
  profile: {
    one: 'perfil de rugosidad',
    many: 'perfiles de rugosidad',
    gender: 'm',
    in: {
      'es-MX': { one: 'perfil de anclaje', many: 'perfiles de anclaje', gender: 'm' },
      'es-US': { one: 'perfil de anclaje', many: 'perfiles de anclaje', gender: 'm' },
    },
    typed: 'perfil rugosidad anclaje',
    source: 'UNE-EN ISO 8503, de memoria',
  },
  'recoat-window': {
    one: 'intervalo de repintado',
    many: 'intervalos de repintado',
    gender: 'm',
    in: {
      'es-MX': { one: 'ventana de repinte', many: 'ventanas de repinte', gender: 'f' },
      'es-US': { one: 'ventana de repinte', many: 'ventanas de repinte', gender: 'f' },
    },
    typed: '',
    source: heard,
  },
  room: { one: 'sala', many: 'salas', gender: 'f', typed: 'sala ambiente cuarto', source: trade },
  salts: { one: 'sales', many: 'sales', gender: 'f', typed: 'sales', source: trade },
  session: { one: 'sesión', many: 'sesiones', gender: 'f', typed: 'sesión', source: trade },
  sheet: {
    one: 'ficha',
    many: 'fichas',
    gender: 'f',
    in: {
      'es-MX': { one: 'hoja técnica', many: 'hojas técnicas', gender: 'f' },
      'es-US': { one: 'hoja técnica', many: 'hojas técnicas', gender: 'f' },
    },
    typed: 'ficha',
    source: dataSheet,
  },
  solvent: {
    one: 'disolvente',
    many: 'disolventes',
    gender: 'm',
    in: {
      'es-MX': { one: 'solvente', many: 'solventes', gender: 'm' },
      'es-US': { one: 'solvente', many: 'solventes', gender: 'm' },
    },
    typed: '',
    source: dataSheet,
  },
  spraying: {
    one: 'pulverización',
    many: 'pulverizaciones',
    gender: 'f',
    in: {
      'es-MX': { one: 'aspersión', many: 'aspersiones', gender: 'f' },
      'es-US': { one: 'aspersión', many: 'aspersiones', gender: 'f' },
    },
    typed: '',
    source: utility,
  },
  spread: { one: 'diferencial (ΔT)', many: 'diferenciales (ΔT)', gender: 'm', typed: '', source: heard },
  stirrer: { one: 'agitador', many: 'agitadores', gender: 'm', typed: 'agitador', source: trade },
  stirring: { one: 'agitación', many: 'agitaciones', gender: 'f', typed: '', source: heard },
  substrate: { one: 'sustrato', many: 'sustratos', gender: 'm', typed: '', source: utility },
  supervisor: { one: 'supervisor', many: 'supervisores', gender: 'm', typed: 'supervisora', source: trade },
  training: {
    one: 'formación de pintor',
    many: 'formaciones de pintor',
    gender: 'f',
    in: {
      'es-MX': { one: 'capacitación de pintor', many: 'capacitaciones de pintor', gender: 'f' },
      'es-US': { one: 'capacitación de pintor', many: 'capacitaciones de pintor', gender: 'f' },
    },
    typed: '',
    source: heard,
  },
  traveller: {
    one: 'hoja de ruta',
    many: 'hojas de ruta',
    gender: 'f',
    in: {
      'es-MX': { one: 'hoja viajera', many: 'hojas viajeras', gender: 'f' },
      'es-US': { one: 'hoja viajera', many: 'hojas viajeras', gender: 'f' },
    },
    typed: '',
    source: heard,
  },
  vessel: { one: 'recipiente', many: 'recipientes', gender: 'm', typed: 'recipiente', source: trade },
  wall: { one: 'pared', many: 'paredes', gender: 'f', typed: 'pared', source: trade },
};
