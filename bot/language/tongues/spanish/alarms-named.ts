// The words by which an alarm is chosen in Spanish, without accents.

/** Which alarm, where it is chosen. */
export const alarmsNamed = {
  fire: 'fuego incendio',
  breathless: 'ahogo',
  down: 'caido caida',
  eyes: 'ojos ojo',
  'skin-burn': 'piel quemadura',
  spill: 'derrame',
  hot: 'caliente mezcla',
  emergency: 'emergencia',
};

export const alarmsToEnd = { ...alarmsNamed, drill: 'simulacro', all: 'todas todo todos' };
