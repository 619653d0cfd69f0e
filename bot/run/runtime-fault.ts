// Which Node this runs on, and what to type where it is too old. Loads nothing, so that any Node can read it.

/** As in package.json's `engines`. */
const least = { major: 22, minor: 13 } as const;

/** `version`: as `process.versions.node` says it, "24.22.3". `undefined` where it serves. */
export function runtimeFault(version: string): string | undefined {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > least.major || (major === least.major && minor >= least.minor)) return undefined;
  return (
    `this is Node ${version}; it needs Node ${least.major}.${least.minor} or newer, and Node 24 is the one it is tested on. ` +
    'npm start and npm run chat bring their own; or install Node 24 and start it again.'
  );
}
