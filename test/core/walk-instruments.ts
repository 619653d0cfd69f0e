// What a crew says of an instrument that fails its check: what was read with it speaks against a coat, before and after.

import type { Request } from '../../core/execute.ts';
import type { BatchNumber } from '../../core/ids.ts';
import { celsius } from '../../core/units.ts';

const asked = { is: 'asked' } as const;

export const checkedBadly = (batch: BatchNumber): readonly Pick<Request, 'by' | 'command' | 'stance'>[] => [
  { by: 'kari', stance: asked, command: { verb: 'calibrated', name: 'probe-9', result: 'ok' } },
  { by: 'kari', stance: asked, command: { verb: 'instrument', name: 'probe-9' } },
  { by: 'kari', stance: asked, command: { verb: 'instrument', name: 'probe-9', kind: 'thermometer' } },
  {
    ...{ by: 'kari', stance: asked },
    command: { verb: 'surface', asNew: true, part: 'hub-9', celsius: celsius(24), instrument: 'probe-9' },
  },
  { by: 'kari', stance: asked, command: { verb: 'calibrated', name: 'probe-9', result: 'failed' } },
  ...(['asked', 'happened'] as const).map((is) => ({
    ...{ by: 'kari', stance: { is } },
    command: { verb: 'coat' as const, asNew: true as const, parts: ['hub-9'], batch, method: 'brush' as const },
  })),
  // What is read from here on is read with none.
  { by: 'kari', stance: asked, command: { verb: 'instrument', name: 'probe-9', retired: true } },
];
