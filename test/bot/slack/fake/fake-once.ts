// What Slack gives for a while only: triggers for 3 s and one use, one-time addresses for half an hour and five uses.

import { counter } from './fake-slack.ts';

export const triggerMs = 3_000;
export const addressMs = 30 * 60_000;
export const addressUses = 5;

export function fakeOnce(now: () => number) {
  const next = counter();
  const triggers = new Map<string, { readonly madeAt: number; spent: boolean }>();
  const addresses = new Map<string, { readonly madeAt: number; uses: number }>();
  return {
    trigger: (): string => {
      const trigger = `trigger.${next()}`;
      triggers.set(trigger, { madeAt: now(), spent: false });
      return trigger;
    },
    /** Slack's word against it; `undefined` where it serves. */
    spend: (trigger: string): string | undefined => {
      const given = triggers.get(trigger);
      if (given?.spent === true) return 'exchanged_trigger_id';
      if (given === undefined || now() - given.madeAt > triggerMs) return 'expired_trigger_id';
      given.spent = true;
      return undefined;
    },
    address: (): string => {
      const path = `/respond/${next()}`;
      addresses.set(path, { madeAt: now(), uses: 0 });
      return path;
    },
    use: (path: string): string | undefined => {
      const given = addresses.get(path);
      if (given === undefined || now() - given.madeAt > addressMs) return 'expired_url';
      given.uses += 1;
      return given.uses > addressUses ? 'used_url' : undefined;
    },
  };
}
