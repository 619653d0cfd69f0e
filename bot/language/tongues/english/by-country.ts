// What a country says otherwise in English: its own words, and its units in every example.

import { inCustomary } from '../../example-units.ts';
import type { Profile } from '../profile.ts';
import { englishChat } from './chat.ts';
import { englishMaterial } from './material.ts';
import { englishReplies } from './replies.ts';
import { englishOvertaken, englishRings } from './rings.ts';
import { english, type Words } from './sentences.ts';
import { englishSessionIn } from './session.ts';
import { englishSteps } from './steps.ts';

const american: Words = {
  ...english,
  ...inCustomary({ replies: englishReplies, material: englishMaterial, rings: englishRings }),
  ...inCustomary({ overtaken: englishOvertaken, chat: englishChat, session: englishSessionIn('en-US') }),
  steps: englishSteps('en-US'),
};

export const englishIn = (locale: Profile['locale']): Words => (locale === 'en-US' ? american : english);
