// Times as they are said in English words.

import type { TimesTyped } from '../typed.ts';

export const englishTimes: TimesTyped = {
  minutes: {
    'a minute': 1,
    'one minute': 1,
    'quarter of an hour': 15,
    'a quarter of an hour': 15,
    'half an hour': 30,
    'half a hour': 30,
    'half hour': 30,
    'an hour': 60,
    'one hour': 60,
    hour: 60,
    'hour and a half': 90,
    'an hour and a half': 90,
  },
  partLeads: 'in',
  partArticle: 'the',
  partsOfDay: {
    morning: { hours: [12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], afterNoon: false },
    afternoon: { hours: [12, 1, 2, 3, 4, 5, 6], afterNoon: true },
    evening: { hours: [4, 5, 6, 7, 8, 9, 10, 11], afterNoon: true },
  },
  spoken: {
    leads: ['at', 'since', '@'],
    roughly: ['around', 'at around', 'at about', 'roughly at', 'at roughly', 'sometime around'],
    minutes: { quarter: 15, 'a quarter': 15, half: 30 },
    past: ['past', 'after', 'minutes past', 'minutes after'],
    to: ['to', 'til', 'till', 'before', 'minutes to', 'minutes before', 'of'],
    mayLead: ['at', 'since'],
    halfOf: 'half',
    onTheHour: ["o'clock", 'oclock', 'o clock', 'sharp', 'on the dot'],
    back: ['back', 'ago'],
    ago: [],
    about: ['about', 'around', 'roughly', 'like', 'some', 'maybe'],
    vague: ['a while ago', 'a bit ago', 'a while back', 'a bit back', 'earlier', 'earlier today', 'a moment ago'],
  },
};
