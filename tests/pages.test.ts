import { get } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';

let site: Awaited<ReturnType<typeof servePages>>;
beforeAll(async () => {
  await prepare();
  site = await servePages();
}, 180_000);
afterAll(() => {
  site.close();
});

/** The status of an address sent as it is: no client tidies it up first. */
function statusOf(address: string): Promise<number | undefined> {
  const { hostname, port } = new URL(site.url);
  return new Promise((resolve, reject) => {
    get({ hostname, port, path: address }, (response) => {
      response.resume();
      resolve(response.statusCode);
    }).on('error', reject);
  });
}

test.each([
  ['/', 200],
  ['/driver/', 200],
  ['/driver/?lang=de', 200],
  ['/shop/', 200],
  ['/desk/counter.html', 200],
  ['/desk/', 200],
  ['/desk/?lang=de', 200],
  ['/desk/desk-worker.js', 200],
  ['/element/keyturn.js', 200],
  ['/driver', 404],
  ['/desk', 404],
  ['/desk/../../package.json', 404],
  ['/desk/%2e%2e/%2e%2e/package.json', 404],
  ['/nothing', 404],
  ['/../../package.json', 404],
  ['/%2e%2e/%2e%2e/package.json', 404],
  ['/%ZZ', 404],
  ['/%00', 404],
])('the pages answer %s with %i', async (address, status) => {
  expect(await statusOf(address)).toBe(status);
});
