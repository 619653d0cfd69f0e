// The host as every front end uses it, with the page listening: what is said in the terminal, too, is seen by the crew.

import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { Conversation } from './conversation.ts';

/** `then`: after each answer, for the bells whose due time may have moved. */
export function overheardHost(host: Host, conversation: Conversation, then: (answer: Answer) => void): Host {
  return {
    ...host,
    handle: async (delivery) => {
      const answer = await host.handle(delivery);
      if (answer === undefined) return undefined;
      conversation.heard(delivery, answer);
      then(answer);
      return answer;
    },
  };
}
