// Puts one crew's desk together: who is who, its messages and its bells.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { CrewId } from '../../core/ids.ts';
import type { Clock, Postbox } from '../../core/ports.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { Files } from '../messages/files.ts';
import type { Mail } from '../messages/mail.ts';
import { createMessages } from '../messages/messages.ts';
import { createRings } from '../messages/rings.ts';
import { createToldAlone } from '../messages/told-alone.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import type { Picture } from '../talk/picture-filing.ts';
import type { Pace } from '../time/pace.ts';
import type { Desk } from './crew-desk.ts';
import { createRoster } from './roster.ts';
import type { Call } from './slack-client.ts';
import type { SlackCrew } from './slack-crew.ts';
import type { SlackLog } from './slack-log.ts';
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

export interface DeskDeps {
  /** Wires one crew over the store; its bells go to `rings`. */
  readonly wire: (crew: CrewId, crewFile: CrewFile, rings: RingsTo) => WiredCrew;
  readonly call: Call;
  readonly mail: Mail;
  readonly files: Files;
  readonly postbox: Postbox;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: SlackLog;
  readonly tongues: Tongues;
  readonly team: () => string | undefined;
  /** Something rang. */
  readonly rang: (desk: Desk) => void;
}

export function makeDesk(slackCrew: SlackCrew, file: CrewFile, deps: DeskDeps): Desk {
  const { call, postbox, clock, log, tongues } = deps;
  const { crew } = slackCrew;
  const now = clock.now;
  const settled = async () => {
    try {
      return (await wired.overview.crew()).people.map(({ name }) => name);
    } catch {
      return undefined;
    }
  };
  const roster = createRoster({ slackCrew, crewFile: file, tongues, settled, call, postbox, log });
  // The crew is wired with its bells, and its bells need the wired crew: bound once both are there.
  const rings: RingsTo = {
    tell: async (answer) => {
      const told = await bells.tell(answer);
      if (told === 'posted') deps.rang(desk);
      return told;
    },
    wasTold: (key) => bells.wasTold(key),
  };
  const wired = deps.wire(crew, roster.crewFile, rings);
  const voice = voiceWithoutRecord({ overview: wired.overview, crewFile: roster.crewFile, tongues, clock, log });
  const overview = { ...wired.overview, voice };
  const channel = () => slackCrew.channels[0] ?? postbox.note(channelNote(crew));
  const desk: Desk = {
    ...{ ...wired, crew, slackCrew, roster, channel, overview },
    messages: createMessages({ ...deps, crew, overview, channel, now }),
    toldAlone: createToldAlone(),
    isOurs: (other) => slackCrew.channels.includes(other) || other === channel(),
    voiceOf: async ({ team, user }) => voice(await roster.personOf(team, user)),
  };
  const bells = createRings({ ...deps, desk, now });
  return desk;
}
