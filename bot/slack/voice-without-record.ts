// How somebody is spoken to (language, units, role), also while the record cannot be read: then by the crew's file,
// since whoever typed must hear of it at least.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { Clock, Log } from '../../core/ports.ts';
import { figuresFor } from '../language/figures.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { Overview } from '../talk/overview.ts';

interface VoiceDeps {
  readonly overview: Overview;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  readonly clock: Clock;
  readonly log: Log;
}

export function voiceWithoutRecord({ overview, crewFile, tongues, clock, log }: VoiceDeps): Overview['voice'] {
  return async (name) => {
    try {
      return await overview.voice(name);
    } catch (error) {
      log.error('voice-not-read', { error: String(error) });
      const filed = crewFile.people.find((person) => person.name === name);
      const { language, units } = filed ?? crewFile;
      const now = clock.now();
      const figures = figuresFor({ profile: tongues.profileOf(language, units), units, zone: crewFile.zone, now });
      const role = filed?.role ?? 'crew';
      const words = tongues.wordsIn(language, units);
      return { words, language, units, role, rings: filed?.rings ?? 'thread', figures, clock: figures.timeDown(now) };
    }
  };
}
