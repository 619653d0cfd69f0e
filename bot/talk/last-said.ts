// What a person was asked last, by their own last card and by the bells that went to them: a bare answer counts for ten minutes.

import { amendTargetOf } from '../../core/corrections/act-corrected.ts';
import { ownLatest } from '../../core/corrections/undo.ts';
import { personIn } from '../../core/crew/crew.ts';
import { ringsOpen } from '../../core/crew/crew-decide.ts';
import type { PersonName, StreamId } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { ownValue } from '../../core/own-key.ts';
import type { Shop } from '../../core/shop.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { wouldLeave } from '../../core/would-leave.ts';
import { inUnitsOf } from '../cards/card-context.ts';
import { fieldsOf } from '../language/line-fields.ts';
import type { Last, Open, SaidAct } from '../language/said-of-last/last.ts';
import { isoLocal } from '../language/times/wall-clock.ts';
import { writeTarget } from '../language/write-amend.ts';
import type { Answer } from './answer.ts';

/** Our own choice, no source: whoever was asked longer ago has gone on to something else. */
const answeredWithinMs = 10 * 60_000;

export interface Asked {
  readonly shop: Shop;
  readonly as: PersonName;
  readonly at: EpochMs;
  /** In whose thread it is said: a card of another is not answered there. */
  readonly about?: StreamId | undefined;
}

/** `told`: to this person, newest first. */
export function lastSaid(told: readonly Answer[], { shop, as, at, about }: Asked): Last {
  const { units } = personIn(shop.crew, as);
  const recent = told.filter((answer) => at - Date.parse(answer.at) <= answeredWithinMs);
  const own = recent.find((answer) => answer.as === as && answer.key === null && (answer.recorded || asks(answer)));
  const bells = recent.filter((answer, i) => answer.key !== null && !isAnswered(answer, recent.slice(0, i)));
  const cards = [...(own === undefined ? [] : [own]), ...bells].filter((answer) => isOf(about, answer));
  return {
    open: cards.flatMap(openOn).map((open) => ({ ...open, line: inUnitsOf(open.line, units) })),
    said: () => saidAct(told, { shop, as, at }),
    objected: () => objectedLine(recent, { shop, as }),
    rings: () => ringsOpen(shop).some(({ rangAt }) => rangAt <= at),
  };
}

/** Without its time, where that was when it was said: later it would tell of what has happened. */
function objectedLine(recent: readonly Answer[], { shop, as }: Pick<Asked, 'shop' | 'as'>): string | undefined {
  const last = recent.find((answer) => answer.as === as && answer.key === null);
  const at = last && isoLocal(epochMs(Date.parse(last.at)), shop.crew.zone);
  return last?.actLine?.replace(/ at (\S+)$/, (told, when: string) =>
    when.slice(0, 16) === at?.slice(0, 16) ? '' : told,
  );
}

/** What the speaker's last act was recorded under, while it may be put right by its own words. */
export function movedLately(told: readonly Answer[], as: PersonName, now: EpochMs): readonly StreamId[] {
  const recorded = told.find((answer) => answer.as === as && answer.key === null && answer.recorded);
  return recorded !== undefined && now - Date.parse(recorded.at) <= answeredWithinMs ? (recorded.moved ?? []) : [];
}

/** Of any age: what would be put right is shown before it is. */
function saidAct(told: readonly Answer[], { shop, as, at }: Asked): SaidAct | undefined {
  const latest = ownLatest(shop, as);
  if (latest === undefined) return undefined;
  const { entry, corrected, entries } = latest;
  const own = told.filter((answer) => answer.as === as && answer.key === null);
  const recorded = own.find((answer) => answer.recorded);
  const said = recorded?.saidAct;
  const isIt = !corrected && said !== undefined && entries.some(({ seq }) => seq === said.entry);
  const of = amendTargetOf(entry);
  return {
    entry: corrected ? latest.seq : entry.seq,
    line: isIt ? said.line : undefined,
    happenedAt: entry.happenedAt,
    isFresh: recorded !== undefined && at - Date.parse(recorded.at) <= answeredWithinMs,
    at: at - entry.happenedAt < 60_000 ? undefined : entry.happenedAt,
    target:
      of &&
      writeTarget(of)
        .filter((piece) => piece !== '')
        .join(' '),
    corrects: (command) => {
      const [event] = wouldLeave({ shop, now: at }, command, at);
      return event?.body.type === 'Amended' && event.body.amends === entry.seq ? entry.seq : undefined;
    },
    isBeforeLast: own[0]?.recorded === false,
  };
}

/** A line that was not understood, or an answer that asks nothing, leaves open what was asked before it; an objection does not. */
const asks = (answer: Answer): boolean =>
  answer.kind === 'objection' ||
  openOn(answer).some(({ isAsked, bare, place }) => isAsked || bare.length > 0 || place !== undefined);

/** A tap each for what a line may have meant; what else may be done is no such tap. */
const asksWhich = ({ kind, code }: Answer): boolean =>
  kind === 'misread' && code !== 'unknown-verb' && code !== 'left-over';
const isOf = (about: StreamId | undefined, answer: Answer): boolean =>
  about === undefined || answer.about === undefined || answer.about.length === 0 || answer.about.includes(about);

/** Something was recorded since on what it rang for. */
const isAnswered = ({ about = [] }: Answer, later: readonly Answer[]): boolean =>
  later.some(
    (answer) => answer.recorded && answer.key === null && (answer.about ?? []).some((each) => about.includes(each)),
  );

/**
 * What is asked on a card: by its fields, by what a line lacks, by taps that say what answers them; the rest is only offered. A
 * bell asks for what its first tap says.
 */
function openOn(answer: Answer): readonly Open[] {
  const { kind, card, kept = {} } = answer;
  const fields = new Set(card.fields.map(({ id }) => id));
  const isAsked = (line: string, i: number): boolean => {
    const own = fieldsOf(line);
    const isOpen = kind === 'reply' ? own.every(({ id }) => fields.has(id)) : kind !== 'reminder' || i === 0;
    return own.length > 0 && isOpen;
  };
  const isWhich = asksWhich(answer);
  return [
    ...card.actions.map(({ id, line, label, bare = [], asks }, i) => ({
      ...{ line: ownValue(kept, id) ?? line, label, bare, isAsked: isAsked(line, i) },
      ...known({ asks }),
      ...(isWhich && { place: i + 1 }),
      ...(isWhich && card.actions.length === 1 && { isOnly: true as const }),
    })),
    ...(card.asksFor === undefined ? [] : [{ line: card.asksFor, label: '', bare: [], isAsked: true }]),
  ];
}
