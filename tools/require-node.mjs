import { exit, stderr, versions } from 'node:process';

const oldest = [20, 19];

/** Ends the process with a message when Node is older than 20.19. */
export function requireNode() {
  const [major = 0, minor = 0] = versions.node.split('.').map(Number);
  if (major > oldest[0] || (major === oldest[0] && minor >= oldest[1])) return;
  stderr.write(`keyturn: needs Node ${oldest.join('.')} or newer, this is ${versions.node}.\n`);
  exit(1);
}
