/**
 * A browser to print with: the one that is named, else an installed one, else that of a package.
 */
import { accessSync, constants, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { chromium, type Browser } from 'playwright-core';

/** There is no browser, or it does not start. */
export class BrowserError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'BrowserError';
  }
}

/** By what names browsers of the Chromium kind are called. */
const programs = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'msedge.exe',
  'chrome.exe',
];

/**
 * Starts a browser to print with.
 *
 * @throws BrowserError where none is found, or it does not start.
 */
export async function startPrintBrowser(
  env: Readonly<Record<string, string | undefined>>,
): Promise<Browser> {
  const executablePath = env['KEYTURN_BROWSER'] ?? installed(env['PATH']) ?? (await packaged());
  if (executablePath === undefined) {
    throw new BrowserError(
      'no browser was found that can print: name one with KEYTURN_BROWSER, or write --as html and print that',
    );
  }
  // Where everything runs as root, a browser has no sandbox to begin with.
  const isRoot = process.getuid?.() === 0;
  try {
    return await chromium.launch({
      executablePath,
      headless: true,
      args: [
        ...(isRoot ? ['--no-sandbox'] : []),
        '--no-zygote',
        '--disable-gpu',
        '--disable-dev-shm-usage',
        '--disable-background-networking',
      ],
    });
  } catch (cause) {
    const [first = ''] = (cause as Error).message.split('\n');
    throw new BrowserError(`${executablePath} does not start: ${first}`);
  }
}

function installed(folders = ''): string | undefined {
  return folders
    .split(path.delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => programs.map((program) => path.join(folder, program)))
    .find(isProgram);
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Unpacks the browser of the package, which there is for Linux on x64 alone. */
async function packaged(): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  // It unpacks to the temporary folder and takes whatever lies there, of any version.
  const own = path.join(tmpdir(), 'keyturn-browser-147.0.0');
  const before = process.env['TMPDIR'];
  try {
    mkdirSync(own, { recursive: true, mode: 0o700 });
    process.env['TMPDIR'] = own;
    const { default: packed } = await import('@sparticuz/chromium');
    return await packed.executablePath();
  } catch {
    return undefined;
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}
