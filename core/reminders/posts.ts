// What this process knows of its posts that the store may not: which reached people and are not in the record yet, and
// which were turned away or had no answer.

import type { Clock, Log, Messenger, RingingReminder, Told } from '../ports.ts';
import { movedMs } from '../ring-log.ts';
import type { EpochMs } from '../units.ts';
import type { PlannedReminder } from '../wanted-reminder.ts';

export interface Posted {
  readonly reminder: RingingReminder['reminder'];
  readonly at: EpochMs;
  readonly possibleRepeat: boolean;
}

export interface Tries {
  /** Of the time that they were for: a reminder that moves is not the one that was tried. */
  readonly dueAt: EpochMs;
  /** A try ended without an answer: somebody may have heard it. */
  readonly unsure: boolean;
  readonly rejections: number;
  /** Not to be tried before. */
  readonly waiting: EpochMs | undefined;
}

export interface Posts {
  /** Looks first for what may have arrived (`unsure`, or an unanswered try of this process), then posts once. Never throws. */
  readonly tell: (ringing: Omit<RingingReminder, 'possibleRepeat'>, unsure: boolean) => Promise<Told>;
  readonly unrecorded: () => readonly Posted[];
  readonly recorded: (numberedKey: string) => void;
  readonly isPosted: (numberedKey: string) => boolean;
  readonly triesOf: (reminder: Pick<PlannedReminder, 'numberedKey' | 'dueAt'>) => Tries;
  readonly wait: (reminder: Pick<PlannedReminder, 'numberedKey' | 'dueAt'>, until: EpochMs) => void;
}

interface PostsDeps {
  readonly messenger: Messenger;
  readonly clock: Clock;
  readonly log: Log;
}

interface Known extends PostsDeps {
  readonly posted: Map<string, Posted>;
  readonly tries: Map<string, Tries>;
}

type Unposted = Omit<RingingReminder, 'possibleRepeat'>;

export function createPosts(deps: PostsDeps): Posts {
  const known: Known = { ...deps, posted: new Map(), tries: new Map() };
  const { posted, tries } = known;
  return {
    tell: (ringing, unsure) => tell(known, ringing, unsure),
    unrecorded: () => [...posted.values()],
    recorded: (numberedKey) => void posted.delete(numberedKey),
    isPosted: (numberedKey) => posted.has(numberedKey),
    triesOf: (reminder) => triesOf(known, reminder),
    wait: (reminder, until) => void tries.set(reminder.numberedKey, { ...triesOf(known, reminder), waiting: until }),
  };
}

function triesOf({ tries }: Known, { numberedKey, dueAt }: Pick<PlannedReminder, 'numberedKey' | 'dueAt'>): Tries {
  const before = tries.get(numberedKey);
  const same = before !== undefined && Math.abs(before.dueAt - dueAt) <= movedMs;
  return same ? before : { dueAt, unsure: false, rejections: 0, waiting: undefined };
}

async function tell(known: Known, ringing: Unposted, unsure: boolean): Promise<Told> {
  const { reminder } = ringing;
  if (!unsure && !triesOf(known, reminder).unsure) return tellOnce(known, ringing, false);
  if ((await wasPosted(known, reminder)) !== 'yes') return tellOnce(known, ringing, true);
  note(known, reminder, 'posted', false);
  return 'posted';
}

/** Marked even where the platform knows nothing of the first try: that may still be on its way. */
async function tellOnce(known: Known, ringing: Unposted, possibleRepeat: boolean): Promise<Told> {
  const told = await post(known, { ...ringing, possibleRepeat });
  note(known, ringing.reminder, told, possibleRepeat);
  return told;
}

function note(known: Known, reminder: RingingReminder['reminder'], told: Told, possibleRepeat: boolean): void {
  const { posted, tries, clock, log } = known;
  const { numberedKey } = reminder;
  if (told === 'posted') {
    posted.set(numberedKey, { reminder, at: clock.now(), possibleRepeat });
    tries.delete(numberedKey);
    return;
  }
  log.error(told === 'rejected' ? 'post-rejected' : 'post-unanswered', { key: numberedKey });
  const before = triesOf(known, reminder);
  tries.set(numberedKey, {
    ...before,
    unsure: before.unsure || told === 'unknown',
    rejections: before.rejections + (told === 'rejected' ? 1 : 0),
  });
}

async function post({ messenger, log }: Known, ringing: RingingReminder): Promise<Told> {
  try {
    return await messenger.post(ringing);
  } catch (error) {
    // It may have gone out before it broke.
    log.error('post-broke', { key: ringing.reminder.numberedKey, error: String(error) });
    return 'unknown';
  }
}

async function wasPosted({ messenger, log }: Known, { crew, numberedKey }: RingingReminder['reminder']) {
  try {
    return await messenger.wasPosted(crew, numberedKey);
  } catch (error) {
    log.error('look-up-broke', { key: numberedKey, error: String(error) });
    return 'unknown';
  }
}
