// Words of the trade that are no verbs, after the word for help: `ayuda bote`, `ayuda gas`. Without accents.

export const helpTopics: Readonly<Record<string, string>> = {
  stock: 'lata bote botes',
  blanket: 'gas nitrogeno argon',
  weigh: 'bascula balanza',
  emergency: 'alarma alarmas',
  'hot-pot': 'hinchada hinchado abombada',
  respirator: 'mascarilla respirador',
};
