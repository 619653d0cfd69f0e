// Which of the two parts of the material: told by its letter.

import { components } from '../components.ts';
import { choice } from './slot.ts';

export const component = choice('component', components, { required: true }, { 'part-a': 'A', 'part-b': 'B' });
