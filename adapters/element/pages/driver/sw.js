// Keeps the whole page at the first visit, so that it opens where there is no signal. A new version
// is fetched whole before it takes the place of the old one.
const version = 'built-version';
const files = ['built-files'];

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(version)
      .then((cache) => cache.addAll(files.map((file) => new Request(file, { cache: 'reload' }))))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => name.startsWith('keyturn-') && name !== version)
            .map((name) => caches.delete(name)),
        ),
      )
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  event.respondWith(
    caches
      .open(version)
      .then((cache) => cache.match(event.request, { ignoreSearch: true }))
      .then((found) => found ?? fetch(event.request)),
  );
});
