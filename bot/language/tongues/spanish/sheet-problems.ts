// What is wrong with a sheet's file, in Spanish. The names of fields are those of the file.

import type { SheetProblem, SheetRule, ValueKind } from '../../../../core/products/sheet-fault.ts';
import type { Spoken } from './spoken.ts';

const rules = (say: Spoken): Readonly<Record<SheetRule, string>> => ({
  'lowest-below-highest': 'el mínimo debe quedar por debajo del máximo',
  'lowest-not-above-highest': 'el mínimo no debe superar el máximo',
  'opens-below-closes': 'opensMinutes debe quedar por debajo de closesMinutes',
  'least-not-above-most': 'leastMinutes no debe superar mostMinutes',
  'at-not-above-highest': 'atCelsius no debe superar highestCelsius',
  'temperatures-rise': 'las temperaturas deben subir de punto a punto',
  'masses-rise-factors-fall': 'de punto a punto, las masas deben subir y los factores no',
  'ring-not-above-most': 'ringMinutes no puede pasar de mostMinutes',
  'ring-lead-doubtful': 'ringMinutes debe quedar por debajo de leadMinutes, y este por debajo de doubtfulMinutes',
  'above-0': 'debe ser mayor que 0',
  'solvents-to-100': `${say.theMany('solvent')} no deben sumar más del 100 %`,
  'something-left': `no queda más que ${say.one('solvent')} exento y agua`,
  'file-or-address': 'un documento necesita su archivo o bien su dirección https',
  'oven-or-room': 'el curado necesita un tiempo de horno o de sala',
});

const kinds: Readonly<Record<ValueKind, string>> = {
  number: 'un número',
  string: 'un texto entre comillas',
  boolean: 'true o false',
  array: 'una lista entre [ ]',
  object: 'campos entre { }',
};

export function spanishSheetProblem(say: Spoken, problem: SheetProblem): string {
  switch (problem.is) {
    case 'no-files':
      return 'ningún archivo NOMBRE.json en esta carpeta';
    case 'not-json':
      return 'no es JSON';
    case 'not-files-id':
      return `debe ser "${problem.id}", el nombre del archivo`;
    case 'demos-own': {
      const instead =
        problem.what === 'id' ? 'dar otro nombre al archivo y a su id' : 'dar al producto su propio nombre';
      return `"${problem.value}" es de la demostración: ${instead}`;
    }
    case 'broken':
      return rules(say)[problem.rule];
    case 'missing':
      return 'falta';
    case 'other-kind':
      return problem.wanted === undefined ? 'no es del tipo que debe ser' : `debe ser ${kinds[problem.wanted]}`;
    case 'one-of':
      return `debe ser uno de ${problem.known.join(', ')}`;
    case 'unknown-fields':
      return `${say.by('sheet', 'ningún', 'ninguna')} ${say.one('sheet')} tiene aquí ${problem.fields.join(', ')}`;
    case 'too-low':
      return `${lengthOf(problem.of)} debe ser ${problem.itself ? 'al menos' : 'mayor que'} ${problem.limit}`.trim();
    case 'too-high':
      return `${lengthOf(problem.of)} debe ser ${problem.itself ? 'como mucho' : 'menor que'} ${problem.limit}`.trim();
    case 'wrong':
      return 'no está escrito como debe';
  }
}

function lengthOf(kind: ValueKind | undefined): string {
  return kind === 'array' ? 'la cantidad' : kind === 'string' ? 'la longitud' : '';
}
