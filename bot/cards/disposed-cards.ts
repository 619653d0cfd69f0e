// What becomes of a part: the card of the decision, what of it was not told, and what stands against it.

import type { Command, CommandOf, Stance } from '../../core/commands.ts';
import { localDay } from '../../core/crew/local-day.ts';
import type { Request } from '../../core/execute.ts';
import type { Lift, LiftName } from '../../core/lift-names.ts';
import { liftedBy, namesOf } from '../../core/lifts.ts';
import type { Objection } from '../../core/objections.ts';
import type { PartNow } from '../../core/status.ts';
import type { Card, CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { concessionLines } from './concession-lines.ts';
import { partCard } from './part-cards.ts';

export type Disposing = CommandOf<'rework' | 'concession' | 'scrap' | 'return'>;

export const isDisposing = (command: Command): command is Disposing =>
  ['rework', 'concession', 'scrap', 'return'].includes(command.verb);

export function disposedCard(telling: Telling, status: PartNow, command: Disposing): Card {
  const { held } = telling.words.parts;
  const title = held.titles[command.verb](status.part.name);
  const why = 'why' in command && command.why !== undefined ? [held.told(command.why)] : [];
  switch (command.verb) {
    case 'rework': {
      const next = status.under?.recoat.rule === 'window' ? held.abradeIt : held.stripIt;
      return partCard(telling, status, title, [...why, next, held.startsAnew], 'warn');
    }
    case 'concession':
      return partCard(telling, status, title, concessionLines(telling, status.part.concession), 'good');
    case 'scrap':
    case 'return':
      return partCard(telling, status, title, [...why, held.nothingMore]);
  }
}

/** What was not told, each in a tap: as it stands on the hold, or to be typed. */
export function tellingTaps(telling: Telling, command: Command, objection: Objection): readonly CardAction[] {
  if (objection.code !== 'not-told' || !isDisposing(command)) return [];
  const line = (changed: Command) => lineOf(telling, { command: changed, stance: { is: 'asked' } });
  const held = objection.hold === undefined ? '' : telling.words.holdReason(objection.hold, telling.figures);
  switch (command.verb) {
    case 'rework':
    case 'scrap':
      return [
        ...(held === '' ? [] : [tap(telling, 'hold-why', line({ ...command, why: held }))]),
        tap(telling, command.verb, `${line(command)} {why}`),
      ];
    case 'return':
      return [
        tap(telling, 'return', backTo(command, 'customer', line)),
        tap(telling, 'return-supplier', backTo(command, 'supplier', line)),
      ].filter((_, i) => command.to === undefined || (command.to === 'customer') === (i === 0));
    case 'concession': {
      const { person, document } = command;
      const asked = [
        ...(person === undefined ? ['person {customer-person}'] : []),
        ...(document === undefined ? ['document {document}'] : []),
      ];
      const today = localDay(telling.shop.crew.zone, telling.now);
      const { date: _, ...undated } = command;
      return [
        ...(asked.length === 0 ? [tap(telling, 'dated-today', line({ ...command, date: today }))] : []),
        tap(
          telling,
          'concession',
          [
            line(objection.lacking.includes('date') ? undated : command),
            ...asked,
            ...(objection.lacking.includes('date') ? ['dated {concession-date}'] : []),
          ].join(' '),
        ),
      ];
    }
  }
}

function backTo(
  { parts, why }: CommandOf<'return'>,
  to: 'customer' | 'supplier',
  line: (command: Command) => string,
): string {
  const back = { verb: 'return' as const, parts, to };
  return why === undefined ? `${line(back)} {why}` : line({ ...back, why });
}

/** Each thing that stands against a decision and somebody may lift, with what was lifted in the same line before it. */
export function liftTaps(
  telling: Telling,
  { command, stance }: Pick<Request, 'command' | 'stance'>,
  objections: readonly Objection[],
  isLiftable: (objection: Objection) => boolean,
): readonly CardAction[] {
  if (objections.some((objection) => namesOf(objection).length === 0 || !isLiftable(objection))) return [];
  const lifts = stance.is === 'permitted' ? (stance.lifts ?? []) : [];
  const before: Stance = lifts.length === 0 ? { is: 'asked' } : { is: 'permitted', why: whyOf(lifts), lifts };
  const line = lineOf(telling, { command, stance: before });
  return objections
    .filter((objection) => liftedBy(lifts, objection) === undefined)
    .flatMap((objection) => {
      const [name, ...others] = namesOf(objection).filter((each) => !lifts.some(({ of }) => of === each));
      if (name === undefined) return [];
      const asks = [name, ...others].map((each, i) => `permit ${each} {${i === 0 ? 'why' : `why-${each}`}}`).join(' ');
      return [tap(telling, tapOf[name], `${line} ${asks}`)];
    });
}

const tapOf = {
  hold: 'lift',
  cure: 'lift-cure',
  film: 'lift-asked',
  adhesion: 'lift-asked',
  rub: 'lift-asked',
  prep: 'lift-asked',
  wet: 'lift-asked',
  'pull-off': 'lift-asked',
  gloss: 'lift-asked',
  hardness: 'lift-asked',
  holidays: 'lift-asked',
  visual: 'lift-asked',
  scrap: 'lift-disposed',
  return: 'lift-disposed',
} as const satisfies Readonly<Record<LiftName, string>>;

const whyOf = (lifts: readonly Lift[]): string => lifts.map(({ why }) => why).join('; ');
