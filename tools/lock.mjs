import { appendFileSync, mkdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';
import { kill, pid } from 'node:process';
import { setTimeout as sleep } from 'node:timers/promises';

/** How long a lock without a readable owner may stand: its maker needs only a moment to sign. */
const unsignedMs = 5_000;

/** No installation or build takes this long: by then the owner's number names another process. */
const oldestMs = 15 * 60_000;

const pollMs = 200;

/**
 * Runs `work` while no other process does so under the same lock folder. Waits as long as an owner
 * lives, saying so once through `onWait`; takes over when all have died. `work` is given a function
 * that signs the lock with a further process, a child that may outlive this one.
 */
export async function withLock(folder, { onWait, work }) {
  let told = false;
  while (!take(folder)) {
    if (isStale(folder)) {
      takeAway(folder);
      continue;
    }
    if (!told) onWait('waiting for another call that is preparing this checkout ...');
    told = true;
    await sleep(pollMs);
  }
  const release = () => rmSync(folder, { recursive: true, force: true });
  // `work` may end the process, so the lock is given back on exit as well.
  process.once('exit', release);
  try {
    return await work((child) => sign(folder, child));
  } finally {
    process.off('exit', release);
    release();
  }
}

function take(folder) {
  try {
    mkdirSync(folder);
  } catch (error) {
    if (error.code === 'EEXIST') return false;
    throw error;
  }
  sign(folder, pid);
  return true;
}

function sign(folder, owner) {
  appendFileSync(path.join(folder, 'owners'), `${owner}\n`);
}

function isStale(folder) {
  const made = statSync(folder, { throwIfNoEntry: false })?.mtimeMs;
  if (made === undefined) return false;
  const ageMs = Date.now() - made;
  const owners = readOwners(folder);
  if (owners.length === 0) return ageMs > unsignedMs;
  return ageMs > oldestMs || !owners.some(isAlive);
}

function readOwners(folder) {
  try {
    const signed = readFileSync(path.join(folder, 'owners'), 'utf8');
    return signed.split('\n').filter(Boolean).map(Number);
  } catch (error) {
    if (error.code === 'ENOENT') return [];
    throw error;
  }
}

/** Renaming first lets only one of several waiting processes take a dead lock away. */
function takeAway(folder) {
  const aside = `${folder}-${pid}`;
  try {
    renameSync(folder, aside);
  } catch (error) {
    if (error.code === 'ENOENT') return;
    throw error;
  }
  rmSync(aside, { recursive: true, force: true });
}

function isAlive(owner) {
  try {
    kill(owner, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}
