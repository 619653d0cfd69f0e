// The manifests: held to the SDK's type, asking for exactly what is used, the same but for the way in.

import { readdirSync, readFileSync } from 'node:fs';
import type { Manifest } from '@slack/web-api/dist/types/request/manifest.d.ts';
import { describe, expect, test } from 'vitest';
import { methodScopes } from '../../../bot/slack/slack-methods.ts';
import http from '../../../manifests/slack-http.json' with { type: 'json' };
import socket from '../../../manifests/slack-socket-mode.json' with { type: 'json' };

/** What arrives by itself, with the scopes that it needs. */
const eventScopes = {
  app_home_opened: [],
  app_mention: ['app_mentions:read'],
  'message.im': ['im:history'],
  // Pictures dropped in a batch's thread; nothing else of a channel is looked at. That a message's files come only with
  // files:read is from memory, no source.
  'message.channels': ['channels:history', 'files:read'],
  'message.groups': ['groups:history', 'files:read'],
  member_joined_channel: ['channels:read', 'groups:read'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** Slash commands. */
const commandScope = 'commands';

type Scope = NonNullable<NonNullable<NonNullable<Manifest['oauth_config']>['scopes']>['bot']>[number];
type Event = NonNullable<NonNullable<NonNullable<Manifest['settings']>['event_subscriptions']>['bot_events']>[number];

// A misspelt scope or event does not compile here; the files are then held to these lists.
const scopes = {
  'app_mentions:read': true,
  'channels:history': true,
  'channels:read': true,
  'chat:write': true,
  commands: true,
  'files:read': true,
  'files:write': true,
  'groups:history': true,
  'groups:read': true,
  'im:history': true,
  'im:write': true,
  'usergroups:read': true,
  'users:read': true,
} satisfies Partial<Record<Scope, true>>;
const events = {
  app_home_opened: true,
  app_mention: true,
  member_joined_channel: true,
  'message.channels': true,
  'message.groups': true,
  'message.im': true,
} satisfies Partial<Record<Event, true>>;
const shapes: readonly Omit<Manifest, 'oauth_config' | 'settings'>[] = [socket, http];

describe.each([
  ['socket', socket],
  ['http', http],
] as const)('the %s manifest', (name, manifest) => {
  test('asks for exactly the scopes that the methods and events used need', () => {
    const needed = [...Object.values(methodScopes), ...Object.values(eventScopes)].flat();
    expect([...manifest.oauth_config.scopes.bot].sort()).toEqual([...new Set([...needed, commandScope])].sort());
    expect([...manifest.oauth_config.scopes.bot].sort()).toEqual(Object.keys(scopes).sort());
  });

  test('listens to exactly the events that are read', () => {
    expect([...manifest.settings.event_subscriptions.bot_events].sort()).toEqual(Object.keys(eventScopes).sort());
    expect(Object.keys(events).sort()).toEqual(Object.keys(eventScopes).sort());
  });

  test('keeps within the lengths of the manifest schema', () => {
    const { display_information: shown, features } = manifest;
    expect(shown.name.length).toBeLessThanOrEqual(35);
    expect(shown.description.length).toBeLessThanOrEqual(140);
    expect(shown.long_description.length).toBeGreaterThanOrEqual(175);
    expect(shown.long_description.length).toBeLessThanOrEqual(4_000);
    const [command] = features.slash_commands;
    expect(command?.command).toMatch(/^\/[a-z]{1,31}$/);
    expect(command?.usage_hint.length).toBeLessThanOrEqual(1_000);
  });

  test('lets people write to the bot, and has addresses only where Slack calls', () => {
    expect(manifest.features.app_home.messages_tab_read_only_enabled).toBe(false);
    expect(manifest.settings.socket_mode_enabled).toBe(name === 'socket');
    expect(JSON.stringify(manifest).includes('https://')).toBe(name === 'http');
  });
});

test('both manifests have the shape of the type', () => {
  expect(shapes).toHaveLength(2);
});

test('every method of Slack that is called by name stands in the table, and the other way round', () => {
  const folder = new URL('../../../bot/slack/', import.meta.url);
  const source = readdirSync(folder)
    .filter((file) => file !== 'slack-methods.ts')
    .map((file) => readFileSync(new URL(file, folder), 'utf8'))
    .join('\n');
  const named = new Set(
    [...source.matchAll(/'((?:auth|chat|conversations|files|users|usergroups|views)(?:\.\w+)+)'/g)].map(
      ([, name]) => name,
    ),
  );
  // The SDK's socket client calls this one itself.
  expect([...named, 'apps.connections.open'].sort()).toEqual(Object.keys(methodScopes).sort());
});

test('container and unit start the service, and hold no token', () => {
  for (const file of ['Containerfile', 'batchbell.service']) {
    const text = readFileSync(new URL(`../../../manifests/${file}`, import.meta.url), 'utf8');
    expect(text.replaceAll(/[",]/g, '')).toMatch(/main\.js --serve --crew/);
    expect(text).not.toMatch(/xox[a-z]-\w|xapp-\w/);
  }
});
