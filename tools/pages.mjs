import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { argv, exit, stderr, stdout } from 'node:process';
import { pathToFileURL } from 'node:url';
import { prepare, root } from './prepare.mjs';

/** What is served, by the beginning of its address; the first that fits. */
const sites = [
  ['/desk/', path.join(root, 'adapters/desk/dist/site')],
  ['/', path.join(root, 'adapters/element/dist/site')],
];

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** Everything from this place, no script and no style within a page. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; " +
  "manifest-src 'self'; worker-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'";

/** A server of the built pages, on loopback only. `port` 0 takes any that is free. */
export async function servePages(port = 0) {
  const server = createServer((request, response) => {
    const file = fileOf(request.url ?? '/');
    if (file === undefined) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('There is nothing here.\n');
      return;
    }
    const type = types[path.extname(file)] ?? 'application/octet-stream';
    // A typeface is packed already.
    const isPacked =
      !type.startsWith('font/') && /\bgzip\b/.test(request.headers['accept-encoding']);
    response.writeHead(200, {
      'content-type': type,
      ...(isPacked ? { 'content-encoding': 'gzip' } : {}),
      vary: 'accept-encoding',
      'content-security-policy': policy,
      'x-content-type-options': 'nosniff',
      'cache-control': 'no-cache',
    });
    if (isPacked) response.end(packed(file));
    else createReadStream(file).pipe(response);
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject).listen(port, '127.0.0.1', resolve);
  });
  return { url: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}

const kept = new Map();

/** A file as it is sent, packed once for as long as it stays as it is. */
function packed(file) {
  const { mtimeMs } = statSync(file);
  const known = kept.get(file);
  if (known?.mtimeMs === mtimeMs) return known.bytes;
  const bytes = gzipSync(readFileSync(file), { level: 9 });
  kept.set(file, { mtimeMs, bytes });
  return bytes;
}

/** The file behind an address; undefined outside the site, or where it is no address. */
function fileOf(url) {
  const pathname = pathOf(url);
  if (pathname === undefined) return undefined;
  const [beginning, site] = sites.find(([one]) => pathname.startsWith(one)) ?? [];
  if (site === undefined) return undefined;
  const asked = path.join(site, pathname.slice(beginning.length));
  if (asked !== site && !asked.startsWith(site + path.sep)) return undefined;
  const file = pathname.endsWith('/') ? path.join(asked, 'index.html') : asked;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

function pathOf(url) {
  try {
    const pathname = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    return pathname.includes('\0') ? undefined : pathname;
  } catch {
    return undefined;
  }
}

if (pathToFileURL(argv[1]).href === import.meta.url) {
  const asked = argv[2] ?? '8090';
  if (!/^\d{1,5}$/.test(asked) || Number(asked) > 65_535) {
    stderr.write(`keyturn: "${asked}" is no port: npm run pages -- PORT, from 0 (any) to 65535\n`);
    exit(1);
  }
  const port = Number(asked);
  await prepare();
  const { url } = await servePages(port).catch((error) => {
    stderr.write(`keyturn: the pages cannot be served at port ${port}: ${error.message}\n`);
    return exit(1);
  });
  stdout.write(
    [
      'Open in a browser (Ctrl-C ends it):',
      `  the driver's page                 ${url}driver/`,
      `  the dispatcher's desk             ${url}desk/`,
      `  the parts counter                 ${url}desk/counter.html`,
      `  the element in an invented shop   ${url}shop/`,
      '',
    ].join('\n'),
  );
}
