// A field of a form as Slack sends it back.

import type { InputBlock } from '@slack/types';

/** What Slack holds of a field: what was filled in, else what stood there. Several people are apart by a space. */
export function stateOf(element: InputBlock['element'], filled: string | undefined) {
  switch (element.type) {
    case 'static_select': {
      const value = filled ?? element.initial_option?.value;
      return { chosen: { type: element.type, selected_option: value === undefined ? null : { value } } };
    }
    case 'conversations_select':
      return { chosen: { type: element.type, selected_conversation: filled ?? element.initial_conversation ?? null } };
    case 'multi_users_select':
      return {
        chosen: {
          type: element.type,
          selected_users: filled?.split(' ').filter(Boolean) ?? element.initial_users ?? [],
        },
      };
    case 'plain_text_input':
      return { typed: { type: element.type, value: filled ?? element.initial_value ?? null } };
    default:
      return { typed: { type: element.type, value: filled ?? null } };
  }
}
