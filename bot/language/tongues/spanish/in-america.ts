// What is typed otherwise in America than in Spain, by the readers' own word: as a tap and an example print it there.

export const printedInAmerica: Readonly<Record<string, string>> = {
  brief: 'plática',
  'brief-ahead': 'plática-antes',
  handover: 'entregar turno',
  takeover: 'recibir turno',
  spray: 'aspersión',
  'crew-language': 'idioma-cuadrilla',
  'crew-units': 'unidades-cuadrilla',
};
