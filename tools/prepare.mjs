import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { argv, exit, stderr } from 'node:process';
import { fileURLToPath } from 'node:url';
import { hasOutputs, sourceFingerprint } from './build-state.mjs';
import { withLock } from './lock.mjs';
import { requireNode } from './require-node.mjs';

/** The folder of this checkout, absolute. */
export const root = fileURLToPath(new URL('..', import.meta.url));

const kept = path.join(root, '.prepared');
const builtFile = path.join(kept, 'built');

/**
 * Brings the packages of package-lock.json into node_modules when any is missing or of another
 * version. Says so on standard error; never touches standard input or output. Ends the process
 * with a message when Node is too old or the installation fails.
 */
export async function install() {
  requireNode();
  if (isInstalled()) return;
  await locked(async (sign) => {
    if (isInstalled()) return;
    say('installing the packages of package-lock.json (about half a minute, only this once) ...');
    const ci = ['ci', '--no-fund', '--no-audit', '--loglevel=error'];
    const npm = process.env.npm_execpath;
    const [program, args] = npm?.endsWith('npm-cli.js')
      ? [process.execPath, [npm, ...ci]]
      : ['npm', ci];
    if (await succeeds({ program, args, sign })) return;
    fail('The packages could not be installed; is the package registry within reach?');
  });
}

/**
 * Makes a checkout ready to run: installs as {@link install} does, then builds when a source file
 * has changed since the last build. A call that has nothing to do costs some milliseconds.
 */
export async function prepare() {
  await install();
  if (isBuilt()) return;
  await locked(async (sign) => {
    if (isBuilt()) return;
    say('building (about ten seconds, only after a change) ...');
    // Taken before the build, so that a source saved meanwhile is seen by the next call.
    const fingerprint = sourceFingerprint(root);
    const tsc = path.join(root, 'node_modules/typescript/bin/tsc');
    if (!(await succeeds({ program: process.execPath, args: [tsc, '-b'], sign }))) {
      fail('The sources do not build; the lines above name the places.');
    }
    for (const page of ['element', 'desk', 'counter']) {
      const build = path.join(root, `tools/build-${page}.mjs`);
      if (!(await succeeds({ program: process.execPath, args: [build], sign }))) {
        fail(`The page “${page}” does not build; the lines above say why.`);
      }
    }
    writeFileSync(builtFile, fingerprint);
  });
}

/**
 * npm writes what it installed to node_modules/.package-lock.json in the form of
 * package-lock.json, without the packages meant for other platforms: those are optional.
 */
function isInstalled() {
  const installed = readLock(path.join(root, 'node_modules/.package-lock.json'));
  const wanted = readLock(path.join(root, 'package-lock.json'));
  return Object.entries(wanted).every(([place, entry]) => {
    if (!place.startsWith('node_modules/')) return true;
    const present = installed[place];
    if (!present) return entry.optional === true;
    return present.version === entry.version && present.integrity === entry.integrity;
  });
}

function readLock(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {};
}

function isBuilt() {
  if (!existsSync(builtFile) || !hasOutputs(root)) return false;
  return readFileSync(builtFile, 'utf8') === sourceFingerprint(root);
}

async function locked(work) {
  mkdirSync(kept, { recursive: true });
  await withLock(path.join(kept, 'lock'), { onWait: say, work });
}

async function succeeds({ program, args, sign }) {
  const child = spawn(program, args, {
    cwd: root,
    // The caller's input belongs to the program that follows, and its output too.
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32' && program === 'npm',
  });
  const stop = (signal) => child.kill(signal);
  process.on('SIGINT', stop).on('SIGTERM', stop);
  if (child.pid) sign(child.pid);
  try {
    const [code] = await once(child, 'exit');
    return code === 0;
  } catch (error) {
    say(error.message);
    return false;
  } finally {
    process.off('SIGINT', stop).off('SIGTERM', stop);
  }
}

function fail(line) {
  say(line);
  exit(1);
}

function say(line) {
  stderr.write(`keyturn: ${line}\n`);
}

if (argv[1] === fileURLToPath(import.meta.url)) await prepare();
