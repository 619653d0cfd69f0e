// The settings for spraying and for need, as they are stored.

import { z } from 'zod';
import { CubicMetres, Minutes, Percent, SquareMetres } from '../unit-schemas.ts';
import { alarms } from './session-commands.ts';

const hour = z.number().int().min(0).max(23);

export const spraySettings = [
  z.object({ name: z.literal('brief'), on: z.boolean() }),
  z.object({ name: z.literal('brief-ahead'), minutes: Minutes }),
  z.object({ name: z.literal('sprayers'), people: z.array(z.string()).readonly() }),
  z.object({
    name: z.literal('booth'),
    place: z.string(),
    faceSquareMetres: SquareMetres,
    cubicMetres: CubicMetres.optional(),
  }),
  z.object({ name: z.literal('lel'), percent: Percent }),
  z.object({ name: z.literal('mixing'), factor: z.number().min(1).max(100) }),
  z.object({ name: z.literal('emergency'), field: z.enum(['call', ...alarms]), text: z.string() }),
  z.object({ name: z.literal('bell'), on: z.boolean() }),
  z.object({ name: z.literal('quiet'), fromHour: hour, toHour: hour }),
] as const;
