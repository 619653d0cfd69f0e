// What begins or ends, by every form in which a thumb types it: `empieza a agitar`, `ya empezó el turno`, `terminamos de pintar`.

type Phrases = (...whats: readonly string[]) => string;

const formsOf = (forms: string): Phrases => {
  const all = forms.split(' ');
  return (...whats) => all.flatMap((form) => whats.map((what) => `${form} ${what}`)).join(', ');
};

export const begins = formsOf(
  'empezar empieza empiezo empezamos empecé empezó empezando comenzar comienza comienzo comenzamos comencé comenzó iniciar inicia inicio iniciamos inicié inició',
);

export const ends = formsOf(
  'terminar termina termino terminamos terminé terminó acabar acaba acabo acabamos acabé acabó',
);

/** What people say round a gas monitor’s figure. */
export const monitorWords = 'medidor, detector, gas, lectura, marca, nivel';
