// The forms in which a verb is said of work that is done or being done: present, past, participle and gerund, as Spain and America say
// them. No future and no conditional: what is still to come is no act. Accents are left to the readers, which pass over them.

/** Stem changes of the present: `cierro`, `cuelo`. */
interface Conjugation {
  /** The stem of `yo` where it is stressed. */
  readonly stressed?: string;
  /** Of the past, where it is another: `puse`, `hice`. */
  readonly past?: string;
  readonly participle?: string;
  /** The first person of the present, where it is another: `hago`, `pongo`. */
  readonly first?: string;
}

const arForms = ['as', 'a', 'amos', 'an', 'aste', 'o', 'aron', 'ando', 'ar'];
const erForms = ['es', 'e', 'emos', 'en', 'i', 'iste', 'io', 'imos', 'ieron', 'iendo'];
const participles = (stem: string): readonly string[] => ['o', 'a', 'os', 'as'].map((ending) => stem + ending);

/** `qu` before an e where the sound is that of c; `gu`, `c` likewise. */
const beforeE = (stem: string): string =>
  stem.endsWith('c')
    ? `${stem.slice(0, -1)}qu`
    : stem.endsWith('g')
      ? `${stem}u`
      : stem.endsWith('z')
        ? `${stem.slice(0, -1)}c`
        : stem;

/** Every form once, the infinitive among them. */
export function formsOf(
  infinitive: string,
  { stressed, past, participle, first }: Conjugation = {},
): readonly string[] {
  const stem = infinitive.slice(0, -2);
  const strong = stressed ?? stem;
  const isAr = infinitive.endsWith('ar');
  const regular = isAr
    ? [
        ...arForms.map((ending) => stem + ending),
        ...['o', 'as', 'a', 'an'].map((ending) => strong + ending),
        `${beforeE(stem)}e`,
      ]
    : [
        ...erForms.map((ending) => stem + ending),
        ...['o', 'es', 'e', 'en'].map((ending) => strong + ending),
        infinitive,
      ];
  // `sopletié`: as much of America says what ends in ear.
  const spoken = infinitive.endsWith('ear') ? [`${stem.slice(0, -1)}ie`, `${stem.slice(0, -1)}io`] : [];
  const strongPast = past === undefined ? [] : ['e', 'o', 'imos', 'ieron', 'iste'].map((ending) => past + ending);
  const done = participles(participle ?? (isAr ? `${stem}ad` : `${stem}id`));
  return [
    ...new Set([infinitive, ...regular, ...spoken, ...strongPast, ...done, ...(first === undefined ? [] : [first])]),
  ];
}

/** Each form with each of what it is said of: `eche gas`, `echamos gas`. */
export const saidOf = (forms: readonly string[], ...whats: readonly string[]): string =>
  forms.flatMap((form) => whats.map((what) => (what === '' ? form : `${form} ${what}`))).join(', ');
