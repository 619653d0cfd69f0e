// `what mask for spraying demo-clear`, `respirator halfmask kari`, `mask kari half organic vapour cartridge`: a question, never an act.

import type { Question } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Mask } from '../../../core/session/mask.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { fillers, placings } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { sheetFrom } from './read-names.ts';

const words = (spaced: string): ReadonlySet<string> => new Set(spaced.split(' '));

const facepieces = new Map<string, Mask['facepiece']>([
  ...[...words('half halfmask half-mask')].map((word) => [word, 'half-mask'] as const),
  ...[...words('full fullface full-face full-mask whole')].map((word) => [word, 'full-facepiece'] as const),
  ...[...words('hood helmet')].map((word) => [word, 'helmet-or-hood'] as const),
]);
const types = new Map<string, Mask['type']>([
  ...[...words('cartridge cartridges filter filters organic vapour vapor a2')].map(
    (word) => [word, 'air-purifying'] as const,
  ),
  ...[...words('powered papr')].map((word) => [word, 'powered-air-purifying'] as const),
  ...[...words('supplied airline')].map((word) => [word, 'supplied-air-continuous-flow'] as const),
  ...[...words('scba self-contained')].map((word) => [word, 'self-contained-pressure-demand'] as const),
]);
/** Said round it. */
const around = words('mask masks respirator respirators what which wear worn is does air face');

export function readMask(act: ActLine): Question | Fault {
  const { tokens, context } = act;
  let facepiece: Mask['facepiece'] | undefined;
  let type: Mask['type'] | undefined;
  let person: string | undefined;
  let sheet: string | undefined;
  for (const token of tokens) {
    const word = wordIn(token);
    if (facepieces.has(word)) facepiece = facepieces.get(word);
    else if (types.has(word)) type = types.get(word);
    else if (around.has(word) || fillers.has(word) || placings.has(word)) continue;
    else if (token.kind !== 'word') return leftOver(token);
    else {
      const named = sheetNamed(act, token);
      if (named !== undefined) sheet = named;
      else {
        const who = person === undefined ? personTyped(token, context.hearing) : undefined;
        if (who === undefined) return leftOver(token);
        person = who;
      }
    }
  }
  return { ask: 'mask', ...known({ mask: maskOf(facepiece, type), person, sheet }) };
}

function sheetNamed(act: ActLine, token: Token): string | undefined {
  const sheet = token.kind === 'word' ? sheetFrom(act, [token]) : undefined;
  return sheet === undefined || isFailed(sheet) ? undefined : sheet;
}

/** A hood is fed with air, a mask has cartridges, unless the line says otherwise. */
function maskOf(facepiece: Mask['facepiece'] | undefined, type: Mask['type'] | undefined): Mask | undefined {
  if (facepiece === undefined && type === undefined) return undefined;
  const fed = type ?? (facepiece === 'helmet-or-hood' ? 'supplied-air-continuous-flow' : 'air-purifying');
  return {
    facepiece: facepiece ?? (fed === 'self-contained-pressure-demand' ? 'full-facepiece' : 'half-mask'),
    type: fed,
  };
}
