// What the crew's file says for Slack: its channels, who is who, which user groups give a role.

import { z } from 'zod';
import { type Role, ringsTo, roles } from '../../core/crew/crew-commands.ts';
import type { CrewId, PersonName } from '../../core/ids.ts';

const userId = z.string().regex(/^[UW][A-Z0-9]+$/, 'a Slack user id begins with U or W');
const groupId = z.string().regex(/^S[A-Z0-9]+$/, 'the id of a Slack user group begins with S');
const channelId = z.string().regex(/^[CG][A-Z0-9]+$/, 'the id of a Slack channel begins with C or G');

/** Fields of a person in the crew's file. */
export const slackPersonFields = {
  slack: userId.optional(),
  /** Where bells go: into the batch's thread with a mention, or into a direct message. */
  rings: z.enum(ringsTo).optional(),
};

/** Fields of the crew's file itself. */
export const slackCrewFields = {
  slackChannels: z.array(channelId).optional(),
  slackGroups: z.partialRecord(z.enum(roles), z.array(groupId)).optional(),
};

export interface SlackPerson {
  readonly name: PersonName;
  readonly slack: string | undefined;
}

export interface SlackCrew {
  readonly crew: CrewId;
  /** None: the first channel into which it is invited. */
  readonly channels: readonly string[];
  readonly people: readonly SlackPerson[];
  readonly groups: Readonly<Partial<Record<Role, readonly string[]>>>;
}

const Fields = z.object({
  people: z.array(z.object({ name: z.string(), ...slackPersonFields })),
  ...slackCrewFields,
});

/** Of a crew's file that has been found sound. `undefined`: there is no file. */
export function slackCrewOf(crew: CrewId, file: unknown): SlackCrew {
  const read = Fields.safeParse(file).data;
  return {
    crew,
    channels: read?.slackChannels ?? [],
    people: (read?.people ?? []).map(({ name, slack }) => ({ name, slack })),
    groups: read?.slackGroups ?? {},
  };
}
