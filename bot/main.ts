// Starts Batchbell. The runtime is looked at before anything else is loaded: the database's built code ends an older Node
// with a segmentation fault, which tells nobody what to do.

import { exitCodes } from './run/exit-codes.ts';
import { runtimeFault } from './run/runtime-fault.ts';

// A full disk quota must end in "not recorded", not in the end of the process.
process.on('SIGXFSZ', () => undefined);
// Whoever reads the output may go first (`| head`): nothing is left to say then.
process.stdout.on('error', () => process.exit(exitCodes.done));

const fault = runtimeFault(process.versions.node);
if (fault === undefined) {
  const { chooseRun } = await import('./run/choose-run.ts');
  process.exitCode = await chooseRun(process.argv.slice(2));
} else {
  process.stderr.write(`batchbell: ${fault}\n`);
  process.exitCode = exitCodes.badFlagOrSheet;
}
