// Every method of Slack's Web API that is called, with the scopes that its token needs. The manifests ask for these and
// no others.

export const methodScopes = {
  'apps.connections.open': [],
  'auth.test': [],
  'chat.postMessage': ['chat:write'],
  'chat.update': ['chat:write'],
  'chat.postEphemeral': ['chat:write'],
  'conversations.open': ['im:write'],
  // Whether it has been invited into a channel that is to be the crew's.
  'conversations.info': ['channels:read', 'groups:read'],
  // Only to find an own message whose post had no answer.
  'conversations.history': ['channels:history', 'groups:history', 'im:history'],
  'conversations.replies': ['channels:history', 'groups:history', 'im:history'],
  // A file goes up in these two, with its bytes between them.
  'files.getUploadURLExternal': ['files:write'],
  'files.completeUploadExternal': ['files:write'],
  'users.info': ['users:read'],
  'usergroups.users.list': ['usergroups:read'],
  'views.open': [],
  'views.update': [],
  'views.publish': [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type SlackMethod = keyof typeof methodScopes;
