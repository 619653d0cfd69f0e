// An event's body as it is stored: its type, then its figures.

import { z } from 'zod';

export const event = <const Type extends string, Figures extends z.ZodRawShape>(type: Type, figures: Figures) =>
  z.object({ type: z.literal(type), ...figures });
