// Keeps the emergency pages on this device, so that they open without a network, with the numbers they were last seen
// with. It serves nothing else of the program: its scope is /emergency.

const CACHE = 'emergency-1';
const PAGES = ['', '/missing', '/ill', '/hot', '/puffed-up', '/smell', '/vehicle', '/caller', '/record'].map((way) => `/emergency${way}`);
/** A network that answers later than this counts as none. */
const PATIENCE_MS = 3000;
/** Styles, type and scripts of the build: their names change with what is in them. */
const PARTS = /\/_next\/static\/[\w./~%-]+/g;

self.addEventListener('install', (event) => {
  self.skipWaiting();
  event.waitUntil(keepAll());
});
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', (event) => {
  if (event.data === 'renew') event.waitUntil(keepAll());
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  if (request.mode === 'navigate') event.respondWith(pageOf(request));
  else if (request.url.includes('/_next/static/')) event.respondWith(partOf(request));
});

/** The page as it is now, or as it was last seen. */
async function pageOf(request) {
  const cache = await caches.open(CACHE);
  const known = (await cache.match(request.url)) ?? (await cache.match(request.url, { ignoreSearch: true }));
  const fresh = fetch(request).then(async (response) => {
    if (response.ok && !response.redirected) await cache.put(request.url, response.clone());
    return response;
  });
  if (known === undefined) return fresh;
  const late = new Promise((resolve) => { setTimeout(resolve, PATIENCE_MS, known); });
  const working = fresh.then((response) => (response.status < 500 ? response : known), () => known);
  return Promise.race([working, late]);
}

async function partOf(request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(request.url)) ?? fetch(request);
}

/** Fetches every page with all its parts; what cannot be fetched stays as it was. Parts of an older build are let go. */
async function keepAll() {
  const cache = await caches.open(CACHE);
  const wanted = new Set();
  for (const page of PAGES) {
    const response = await fetch(page);
    if (!response.ok || response.redirected) return;
    await cache.put(page, response.clone());
    for (const [part] of (await response.text()).matchAll(PARTS)) await keepPart(cache, part, wanted);
  }
  for (const { url } of await cache.keys()) {
    const { pathname } = new URL(url);
    if (pathname.startsWith('/_next/') && !wanted.has(pathname)) await cache.delete(url);
  }
}

/** A style brings the type it names. */
async function keepPart(cache, part, wanted) {
  if (wanted.has(part)) return;
  wanted.add(part);
  const kept = await cache.match(part);
  const response = kept ?? (await fetch(part));
  if (!response.ok) return;
  if (kept === undefined) await cache.put(part, response.clone());
  if (!part.endsWith('.css')) return;
  for (const [, address] of (await response.text()).matchAll(/url\(["']?([^"')]+\.woff2)["']?\)/g)) {
    await keepPart(cache, new URL(address, new URL(part, self.location.origin)).pathname, wanted);
  }
}
