/**
 * A real browser from the package registry, so that the tests run on a machine that has none.
 */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { env, platform, arch } from 'node:process';
import { setTimeout } from 'node:timers/promises';
import { chromium, type Browser } from 'playwright-core';

const root = path.join(import.meta.dirname, '../..');

/** Why there is no browser on this platform; undefined where there is one. */
export const whyNoBrowser: string | undefined =
  platform === 'linux' && arch === 'x64'
    ? undefined
    : `the browser that the registry has runs on Linux x64 only, and this is ${platform} ${arch}`;

/** How the tests of a page run: once more where the browser was late, which a machine at work makes it. */
export const again = { retry: 1 } as const;

/** So often a start is tried again while another process still unpacks, and so long between, ms. */
const [mostTries, pause] = [20, 500];

/** Starts the browser. Its first start unpacks it, which takes some seconds. */
export async function startBrowser(tries = 1): Promise<Browser> {
  try {
    return await launch(await unpacked());
  } catch (error) {
    // The program is still held open for writing.
    if (tries >= mostTries || !String(error).includes('ETXTBSY')) throw error;
    await setTimeout(pause);
    return startBrowser(tries + 1);
  }
}

function launch(executablePath: string): Promise<Browser> {
  return chromium.launch({
    executablePath,
    headless: true,
    // Those of the package let a second context hang, and hide faults of the policy.
    args: [
      '--no-sandbox',
      '--no-zygote',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--disable-background-networking',
    ],
  });
}

/** Where the browser lies once it is unpacked. */
async function unpacked(): Promise<string> {
  // It unpacks to the temporary folder and takes whatever lies there, of any version.
  const own = path.join(root, 'node_modules/.cache/keyturn-browser');
  mkdirSync(own, { recursive: true });
  const { TMPDIR: before } = env;
  env['TMPDIR'] = own;
  try {
    const { default: packed } = await import('@sparticuz/chromium');
    return await packed.executablePath();
  } finally {
    // The tests that follow in this process keep their own.
    if (before === undefined) delete env['TMPDIR'];
    else env['TMPDIR'] = before;
  }
}
