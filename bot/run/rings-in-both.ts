// Bells where a crew has both Slack and the page: each rings in both.

import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';

type Rings = Pick<FrontEnd, 'tell' | 'wasTold'>;

/** Slack wakes phones, so its outcome counts: a bell that it refused is told again there, and not again on the page. */
export function ringsInBoth(slack: Rings, page: Rings): Rings {
  async function onPage(answer: Answer): Promise<void> {
    const there = answer.key !== null && (await page.wasTold(answer.key)) === 'yes';
    if (!there) await page.tell(answer);
  }

  return {
    tell: async (answer) => {
      const [outcome] = await Promise.all([slack.tell(answer), onPage(answer)]);
      return outcome;
    },
    // The page's own copy wakes nobody: only Slack can say whether a phone was told.
    wasTold: slack.wasTold,
  };
}
