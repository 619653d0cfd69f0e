// How a dry film stands by its rule, and why not to touch one up, in Spanish.

import { ownValue } from '../../../../core/own-key.ts';
import type { DryToCome } from '../../../../core/part/dry-to-come.ts';
import type { Beyond, FilmFinding, FilmRuleNamed } from '../../../../core/part/film-acceptance.ts';
import type { FilmObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { atTime, capital, theTime, told } from './names.ts';
import type { Spoken } from './spoken.ts';
import { spanishSurfaceBreach } from './steel.ts';
import { spanishSurfaceAsked } from './surface.ts';

const findings: Readonly<Record<string, string>> = {
  'reading below': 'lectura por debajo',
  'reading above': 'lectura por encima',
  'mean-below': 'media por debajo',
  'mean-above': 'media por encima',
  'reading-below': 'lectura por debajo',
  'reading-above': 'lectura por encima',
  'spot-below': 'punto por debajo',
  'spot-above': 'punto por encima',
  'area-below': 'área por debajo',
  'area-above': 'área por encima',
};

const dryLies: Readonly<Record<DryToCome['lies'], string>> = {
  within: 'Dentro de la',
  thinner: 'Más fina que la',
  thicker: 'Más gruesa que la',
  both: 'Más fina y más gruesa que la',
};

export function spanishDryToCome(say: Spoken, dry: DryToCome, figures: Figures): string {
  const { meanMicrometres: mean, leastMicrometres: least, mostMicrometres: most, sheet } = dry;
  const range = least === most ? '' : ` (de ${figures.film(least)} a ${figures.film(most)})`;
  return `En seco serán ${figures.film(mean)}${range}, con un ${figures.percent(dry.solidsPercent, 1)} de sólidos, sin diluir. ${dryLies[dry.lies]} ${say.ofThe('sheet')}: de ${figures.film(sheet.leastMicrometres)} a ${figures.film(sheet.mostMicrometres)}.`;
}

export function spanishFilmObjection(say: Spoken, objection: FilmObjection, figures: Figures): string {
  switch (objection.code) {
    case 'film-drying': {
      const since =
        objection.openUntil === undefined
          ? `${say.the('sheet')} no da tiempo abierto`
          : `según ${say.the('sheet')} admitía otra pasada hasta ${theTime(figures, objection.openUntil)}`;
      const dry = objection.saidDry ? 'Ya se dijo seca. ' : '';
      return `${dry}La película ha empezado a secarse: ${since}. Un retoque encima no se funde y se despega. Déjela, y retenga la pieza si hay que repararla.`;
    }
    case 'dip-once':
      return told`Una sola inmersión: ya se aplicó ${atTime(figures, objection.coatedAt)}.`;
    case 'surface-life-over':
      return told`Preparada ${atTime(figures, objection.preparedAt)}; según ${say.the('sheet')} valía hasta ${theTime(figures, objection.endedAt)}. Prepárela otra vez.`;
    case 'not-prepared':
      return `Nadie ha dicho cómo se preparó. ${objection.asked.map((each) => `${spanishSurfaceAsked(say, each, figures)}.`).join(' ')} Dígalo antes con preparar.`;
    case 'surface-outside':
      return `${objection.breaches.map((breach) => `${spanishSurfaceBreach(say, breach, figures)}.`).join(' ')} Prepárela otra vez y mida.`;
  }
}

/** How the dry film stands by its rule, named. */
export function spanishFilm(say: Spoken, finding: FilmFinding, figures: Figures): string {
  const rule = finding.is === 'no-rule' || finding.is === 'not-coated' ? '' : ruleNamed(say, finding.rule, figures);
  switch (finding.is) {
    case 'not-coated':
      return 'No tiene anotada ninguna capa: diga primero la capa. Con estas cifras no se acepta nada.';
    case 'no-rule':
      return `${capital(say.the('sheet'))} no da regla para el espesor de película seca: son solo datos, y con ellos no se acepta nada.`;
    case 'within':
      return `Dentro de la regla: ${rule}.`;
    case 'outside':
      return `Fuera de la regla: ${rule}. ${capital(finding.findings.map((each) => beyondSaid(each, figures)).join('; '))}.`;
    case 'cannot-tell':
      return `No se puede decir si está dentro o fuera: ${rule}. Con lo que puede errar el medidor, cae a cualquiera de los dos lados.`;
    case 'too-few':
      return `Pocas lecturas: ${finding.given} de ${finding.needed}, ${rule}.`;
    case 'half':
      return `Van ${finding.told} de ${finding.needed} puntos, ${rule}: media serie no prueba nada.`;
    case 'area-unknown':
      return `${rule} pide lecturas según el área, y nadie ha dicho la de la pieza. Escriba: pieza NOMBRE ${figures.units === 'us' ? '8ft2' : `${figures.decimal(0.8)}m2`}.`;
    case 'does-not-apply':
      return `${rule} no se aplica aquí. Una película fina pide la regla propia del trabajo.`;
  }
}

function beyondSaid({ what, spot, measured, limit }: Beyond, figures: Figures): string {
  if (what === 'too-many-thin') return `la quinta parte de las lecturas o más por debajo de ${figures.film(limit)}`;
  const where =
    spot === undefined
      ? (ownValue(findings, what) ?? what)
      : `punto ${spot} por ${what.endsWith('below') ? 'debajo' : 'encima'}`;
  return `${where}: ${figures.film(measured)}, límite ${figures.film(limit)}`;
}

function ruleNamed(say: Spoken, rule: FilmRuleNamed, figures: Figures): string {
  switch (rule.by) {
    case 'own':
      return `la propia ${say.ofThe('sheet')}, de ${figures.film(rule.least)} a ${figures.film(rule.most)}, ${rule.readings} lecturas`;
    case 'iso-19840':
      return 'ISO 19840';
    case 'pa-2':
      return `SSPC-PA 2, nivel ${rule.level}`;
  }
}
