// Puts one crew's desk together: who is who, its messages, its threads and its bells.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Postbox } from '../../core/ports.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import type { Picture } from '../talk/picture-filing.ts';
import type { Desk } from './crew-desk.ts';
import type { FileUploads } from './file-uploads.ts';
import type { Outbox } from './outbox.ts';
import { createRings } from './rings.ts';
import { createRoster } from './roster.ts';
import type { Pace } from './sender.ts';
import type { Call } from './slack-client.ts';
import type { SlackCrew } from './slack-crew.ts';
import type { SlackLog } from './slack-log.ts';
import { createStandingMessages } from './standing-messages.ts';
import { createThreadEvents } from './thread-events.ts';
import { voiceWithoutRecord } from './voice-without-record.ts';
import { channelNote } from './which-crew.ts';

/** What a wired crew gives to its desk. */
export interface WiredCrew {
  readonly host: Pick<Host, 'handle'>;
  readonly overview: Overview;
  readonly filePicture: (picture: Picture) => Promise<Answer>;
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly papers: Pick<PaperTray, 'read'>;
  readonly wake: () => void;
}

export type RingsTo = Pick<FrontEnd, 'tell' | 'wasTold'>;

export interface DeskNeeds {
  /** Wires one crew over the store; its bells go to `rings`. */
  readonly wire: (crew: CrewId, crewFile: CrewFile, rings: RingsTo) => WiredCrew;
  readonly call: Call;
  readonly outbox: Outbox;
  readonly files: FileUploads;
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: SlackLog;
  readonly team: () => string | undefined;
  /** Something rang. */
  readonly rang: (desk: Desk) => void;
}

export function makeDesk(slackCrew: SlackCrew, file: CrewFile, needs: DeskNeeds): Desk {
  const { call, outbox, files, postbox, clock, pace, log, team } = needs;
  const { crew } = slackCrew;
  const settled = async () => {
    try {
      return (await wired.overview.crew()).people.map(({ name }) => name);
    } catch {
      return undefined;
    }
  };
  const roster = createRoster({ slackCrew, crewFile: file, settled, call, postbox, log });
  // The crew is wired with its bells, and its bells need the wired crew: bound once both are there.
  const rings: RingsTo = {
    tell: async (answer) => {
      const told = await bells.tell(answer);
      if (told === 'posted') needs.rang(desk);
      return told;
    },
    wasTold: (key) => bells.wasTold(key),
  };
  const wired = needs.wire(crew, roster.crewFile, rings);
  const voice = voiceWithoutRecord({ overview: wired.overview, crewFile: roster.crewFile, clock, log });
  const overview = { ...wired.overview, voice };
  const channel = () => slackCrew.channels[0] ?? postbox.note(channelNote(crew));
  const standing = createStandingMessages({
    crew,
    overview,
    outbox,
    postbox,
    team,
    channel,
    pace,
    now: clock.now,
    log,
  });
  const thread = createThreadEvents({ crew, outbox, postbox, team, pace, log });
  const voiceOf: Desk['voiceOf'] = async ({ team: of, user }) => voice(await roster.personOf(of, user));
  const desk: Desk = { ...wired, crew, slackCrew, roster, standing, thread, channel, overview, voiceOf };
  const bells = createRings({ desk, outbox, files, postbox, team, now: clock.now, log });
  return desk;
}
