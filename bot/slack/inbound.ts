// What Slack delivers, in one shape: who said, tapped or opened what, where, and when.

import type { Where } from '../messages/platform.ts';

export const setUps = ['crew', 'mine'] as const;
/** What is set up: of the crew, or of whoever opened it. */
export type SetUpOf = (typeof setUps)[number];

export interface Delivered {
  readonly id: string;
  readonly where: Where;
  /** By Slack's clock where it says so, else when it was taken in: work that waits must not make a clock run later. */
  readonly saidAt: number | undefined;
}

export interface TapPlace {
  /** As it was sent, the showing in it. */
  readonly block: string;
  /** Counted from 0; none of what was chosen from a menu. */
  readonly button?: number | undefined;
  /** Slack's name for this showing of the home tab. */
  readonly hash?: string | undefined;
}

export type Inbound = Delivered &
  (
    | {
        readonly kind: 'line';
        readonly text: string;
        /** The message that says it; a command is none. */
        readonly message: string | undefined;
      }
    /** A message that was changed after it had been said. */
    | { readonly kind: 'edited'; readonly text: string; readonly message: string }
    | {
        readonly kind: 'tap';
        readonly line: string;
        readonly label: string;
        /** The showing of a message that was tapped: the same tap on it twice is one act. */
        readonly showing: string;
        readonly message: string | undefined;
        /** Where on it the button stood, and which showing of it that was. Not there in what an earlier build took in. */
        readonly place?: TapPlace;
        /** Whose it is, where it says so itself. */
        readonly crew: string | undefined;
        readonly ephemeral: boolean;
        readonly trigger: string;
      }
    | {
        readonly kind: 'form';
        readonly view: string;
        readonly callback: string;
        readonly values: Readonly<Record<string, string>>;
        readonly carried: string;
      }
    | { readonly kind: 'home' }
    /** A button of the home tab that opens a form to set up. */
    | {
        readonly kind: 'set-up';
        readonly of: SetUpOf;
        readonly crew: string | undefined;
        readonly trigger: string;
      }
    | {
        readonly kind: 'picture';
        readonly text: string;
        readonly message: string | undefined;
        /** None where the same message comes once more, with its files. */
        readonly files: readonly { readonly id: string; readonly name: string }[];
        /** Said to us: directly or by a mention. Else it only lies in a thread. */
        readonly addressed: boolean;
        /** Its words come by themselves, as a mention. */
        readonly mentions: boolean;
      }
    | { readonly kind: 'joined' }
  );
