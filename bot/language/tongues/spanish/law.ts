// Whose law is quoted, and what counts of a solvent: the limit, where it is from, and what is advised beyond it; in Spanish.

import type { englishLaw } from '../english/law.ts';
import { decimals, spanishSolvents } from './names.ts';
import type { Spoken } from './spoken.ts';

export const spanishLaw = (say: Spoken): typeof englishLaw => ({
  elsewhere: ({ frame, assumed }, locale) =>
    frame === 'elsewhere' || (assumed && locale !== 'es-US')
      ? 'Las normas citadas son de EE. UU.: pregunte cuáles rigen aquí.'
      : undefined,
  sayWhose: 'Nada dice bajo qué leyes se trabaja aquí: un supervisor escribe fijar ley eu, uk, mexico, us o elsewhere.',
  counted: (solvent, ppm, source, figures) =>
    `${spanishSolvents[solvent]}: cuentan ${figures.ppm(ppm)} de media al día (${source})`,
  advised: (advice, times, solvent, figures) =>
    decimals(
      say,
      `NIOSH aconseja ${figures.ppm(advice)}, que pide ${figures.decimal(times)} veces más aire: escriba fijar límite ${solvent} ${figures.ppm(advice)} y cuenta eso.`,
    ),
  standIn: (solvent, ppm, source, figures) =>
    `${spanishSolvents[solvent]}: no consta un límite propio del país. Vale el más bajo que se conoce, ${figures.ppm(ppm)} de media al día (${source}). Pregunte a quien lleve la prevención y fíjelo: fijar límite ${solvent}, y las ppm`,
  setHere: (solvent, ppm, figures) =>
    `${spanishSolvents[solvent]}: cuentan ${figures.ppm(ppm)} de media al día, como se fijó aquí`,
  diisocyanates: `Diisocianatos: quien pinta o se queda cerca tiene la formación que pide REACH (anexo XVII, entrada 74, cada cinco años; de memoria). Su fecha se anota como ${say.one('training')}.`,
  indicative:
    'Los límites de las directivas son indicativos: el del país puede ser más bajo. Pregunte a quien lleve la prevención y, si lo es, escriba fijar límite.',
  oldTable: (ids, figures) =>
    `Límite inferior de explosividad solo de la tabla antigua (29 CFR 1910.94, tabla G-11), que las nuevas suelen rebajar: ${figures.list(ids.map((id) => spanishSolvents[id]))}. Pregunte al fabricante.`,
});
