// A tap whose line is longer than any button takes, such as a list of parts with a serial each, names the answer that it stands on:
// that is kept with the line in it, and the line is said in its place.

import type { CrewId } from '../../core/ids.ts';
import { ownValue } from '../../core/own-key.ts';
import type { Store } from '../../core/ports.ts';
import type { Card } from '../cards/card.ts';
import { type Answer, answerFrom } from './answer.ts';

/** A page's form takes no more; a chat's button takes four times that. */
const longestTap = 450;

export function withLinesKept(request: string, card: Card): Pick<Answer, 'card' | 'kept'> {
  const long = card.actions.filter(({ line }) => line.length > longestTap);
  if (long.length === 0) return { card };
  const actions = card.actions.map(({ shown: _, ...action }) =>
    action.line.length > longestTap ? { ...action, line: `as-asked ${JSON.stringify(request)} ${action.id}` } : action,
  );
  return { card: { ...card, actions }, kept: Object.fromEntries(long.map(({ id, line }) => [id, line])) };
}

const named = /^as-asked ("(?:[^"\\]|\\.)+") ([\w-]+)$/;

/** The line that a tap stands for; any other as it is. */
export async function lineKept(
  { store, crew }: { readonly store: Pick<Store, 'answersTo'>; readonly crew: CrewId },
  text: string,
): Promise<string> {
  const [, request, id = ''] = named.exec(text.trim()) ?? [];
  if (request === undefined) return text;
  const asked = String(JSON.parse(request));
  const kept = (await store.answersTo(crew, [asked])).get(asked);
  return (kept === undefined ? undefined : ownValue(answerFrom(kept).kept ?? {}, id)) ?? text;
}
