// Whether Slack is on, and how, from the environment.

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { slackCrewOf } from '../../../bot/slack/slack-crew.ts';
import { readSlackSettings } from '../../../bot/slack/slack-settings.ts';

const bot = { SLACK_BOT_TOKEN: 'xoxb-1' };

describe('the environment', () => {
  test('without any Slack token leaves Slack off', () => {
    expect(readSlackSettings({})).toBeUndefined();
    expect(readSlackSettings({ PORT: 'x', SLACK_BOT_TOKEN: '' })).toBeUndefined();
  });

  test('with an app token is Socket Mode, also where both are there', () => {
    expect(readSlackSettings({ ...bot, SLACK_APP_TOKEN: 'xapp-1' })).toMatchObject({ mode: 'socket', port: undefined });
    const both = { ...bot, SLACK_APP_TOKEN: 'xapp-1', SLACK_SIGNING_SECRET: 's', PORT: '8080' };
    expect(readSlackSettings(both)).toMatchObject({ mode: 'socket', port: 8080 });
  });

  test('with a signing secret is HTTP, on port 3000 unless another is named', () => {
    expect(readSlackSettings({ ...bot, SLACK_SIGNING_SECRET: 's' })).toMatchObject({ mode: 'http', port: 3000 });
    expect(readSlackSettings({ ...bot, SLACK_SIGNING_SECRET: 's', PORT: '8080' })).toMatchObject({ port: 8080 });
  });

  test('with neither beside the bot token is a fault that names both', () => {
    const read = readSlackSettings(bot);
    expect(read).toMatchObject({ failed: expect.stringContaining('SLACK_APP_TOKEN') });
    expect(read).toMatchObject({ failed: expect.stringContaining('SLACK_SIGNING_SECRET') });
  });

  test('without the bot token, with a bad address or a bad port is a fault that names it', () => {
    const faults: readonly (readonly [Record<string, string>, string])[] = [
      [{ SLACK_APP_TOKEN: 'xapp-1' }, 'SLACK_BOT_TOKEN'],
      [{ ...bot, SLACK_APP_TOKEN: 'xapp-1', SLACK_API_URL: 'http://127.0.0.1:1/' }, 'SLACK_API_URL'],
      [{ ...bot, SLACK_APP_TOKEN: 'xapp-1', SLACK_API_URL: 'stand-in' }, 'SLACK_API_URL'],
      [{ ...bot, SLACK_SIGNING_SECRET: 's', PORT: '70000' }, 'PORT'],
    ];
    for (const [environment, name] of faults) {
      expect(readSlackSettings(environment)).toMatchObject({ failed: expect.stringContaining(name) });
    }
  });
});

describe('where Slack is off', () => {
  test('none of its packages is loaded: nothing that main imports at its start reaches them', () => {
    const seen = new Set<string>();
    const reached = new Set<string>();
    const walk = (file: URL): void => {
      if (seen.has(file.href)) return;
      seen.add(file.href);
      const source = readFileSync(file, 'utf8');
      for (const [, types, named = ''] of source.matchAll(/^import (type )?[^;]*?from '([^']+)';/gms)) {
        if (types !== undefined) continue;
        if (named.startsWith('.')) walk(new URL(named, file));
        else reached.add(named);
      }
    };
    walk(new URL('../../../bot/run/choose-run.ts', import.meta.url));
    expect(seen.size).toBeGreaterThan(50);
    expect([...reached].filter((name) => name.startsWith('@slack/') || name === 'pino')).toEqual([]);
  });
});

describe("the crew's file", () => {
  test('says which channels are the crew’s, who is who, which groups give a role', () => {
    const file = {
      people: [
        { name: 'kari', slack: 'U1' },
        { name: 'jo', rings: 'direct' },
      ],
      slackChannels: ['C1'],
      slackGroups: { lead: ['S1'] },
    };
    expect(slackCrewOf('crew', file)).toEqual({
      crew: 'crew',
      channels: ['C1'],
      people: [
        { name: 'kari', slack: 'U1' },
        { name: 'jo', slack: undefined },
      ],
      groups: { lead: ['S1'] },
    });
  });

  test('that is not there says nothing', () => {
    expect(slackCrewOf('crew', undefined)).toEqual({ crew: 'crew', channels: [], people: [], groups: {} });
  });
});
