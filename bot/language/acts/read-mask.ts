// `what mask for spraying demo-clear`, `respirator halfmask kari`, `mask kari half organic vapour cartridge`: a question, never an act.

import type { Question } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Mask } from '../../../core/session/mask.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { fillers, maskFaces, maskTypes, placings, roundMask } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { sheetFrom } from './read-names.ts';

export function readMask(act: ActLine): Question | Fault {
  const { tokens, context } = act;
  let facepiece: Mask['facepiece'] | undefined;
  let type: Mask['type'] | undefined;
  let person: string | undefined;
  let sheet: string | undefined;
  for (const token of tokens) {
    const word = wordIn(token);
    if (maskFaces.has(word)) facepiece = maskFaces.get(word);
    else if (maskTypes.has(word)) type = maskTypes.get(word);
    else if (roundMask.has(word) || fillers.has(word) || placings.has(word)) continue;
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
  const mask = facepiece === undefined && type === undefined ? undefined : known({ facepiece, type });
  return { ask: 'mask', ...known({ mask, person, sheet }) };
}

function sheetNamed(act: ActLine, token: Token): string | undefined {
  const sheet = token.kind === 'word' ? sheetFrom(act, [token]) : undefined;
  return sheet === undefined || isFailed(sheet) ? undefined : sheet;
}
