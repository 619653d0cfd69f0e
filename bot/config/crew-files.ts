// The crews that one process serves: one file is one crew, a folder holds a file for each, named by its key.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { CrewFile } from '../../core/crew/crew.ts';
import { type Failed, isFailed } from '../../core/failed.ts';
import { type CrewId, onlyCrew } from '../../core/ids.ts';
import { type Flags, readCrew } from './config.ts';

export interface CrewRead {
  readonly crew: CrewId;
  readonly crewFile: CrewFile;
  /** As it stands in the file, for the fields that only a chat platform reads. */
  readonly file: unknown;
}

/** Every fault at once, each with its file. */
export function readCrewFiles(flags: Flags): readonly CrewRead[] | Failed<string> {
  const path = flags.crew;
  if (path === undefined) {
    const crewFile = readCrew(undefined, undefined, flags);
    // Nobody sits at the terminal: whoever speaks first is crew, and the home tab asks who leads.
    return isFailed(crewFile) ? crewFile : [{ crew: onlyCrew, crewFile: { ...crewFile, people: [] }, file: undefined }];
  }
  try {
    const files = statSync(path).isDirectory()
      ? readdirSync(path)
          .filter((file) => file.endsWith('.json'))
          .sort()
          .map((file) => ({ crew: basename(file, '.json'), file: join(path, file) }))
      : [{ crew: onlyCrew, file: path }];
    if (files.length === 0) return { failed: `--crew: ${path} holds no crew's file` };
    return read(files, flags);
  } catch (error) {
    return { failed: `--crew: ${error instanceof Error ? error.message : String(error)}` };
  }
}

function read(files: readonly { crew: CrewId; file: string }[], flags: Flags): readonly CrewRead[] | Failed<string> {
  const crews: CrewRead[] = [];
  const faults: string[] = [];
  for (const { crew, file } of files) {
    const content = readFileSync(file, 'utf8');
    const crewFile = readCrew(file, content, flags);
    if (isFailed(crewFile)) faults.push(crewFile.failed);
    else crews.push({ crew, crewFile, file: JSON.parse(content) });
  }
  return faults.length > 0 ? { failed: faults.join('; ') } : crews;
}
