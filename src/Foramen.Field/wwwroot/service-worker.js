// Keeps the whole app on the device. A new version is fetched in the background, waits, and takes over only when the page asks for it.
self.importScripts('./service-worker-assets.js');

const prefix = 'foramen-';
const cacheName = prefix + self.assetsManifest.version;
const kept = /\.(wasm|dll|html|js|json|css|woff2|png|svg|dat|webmanifest|txt)$/;
const base = new URL('./', self.location.href);
const index = new URL('index.html', base).href;
const known = new Set(self.assetsManifest.assets.map(asset => new URL(asset.url, base).href));

self.addEventListener('install', event => event.waitUntil(install()));
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('message', event => { if (event.data === 'apply') { self.skipWaiting(); } });
self.addEventListener('fetch', event => {
  if (event.request.method === 'GET' && event.request.url.startsWith(base.href)) {
    event.respondWith(answer(event.request));
  }
});

async function install() {
  const requests = self.assetsManifest.assets
    .filter(asset => kept.test(asset.url) && !asset.url.endsWith('service-worker.js') && asset.url !== 'index.html')
    .map(asset => new Request(new URL(asset.url, base), { integrity: asset.hash, cache: 'no-cache' }));
  const cache = await caches.open(cacheName);
  await cache.addAll(requests);
  await cache.put(index, await page());
}

// Under a path of its own a host's index.html names that path in its base; apart from that it must be the one that was built.
async function page() {
  const response = await fetch(new Request(index, { cache: 'no-cache' }));
  const asset = self.assetsManifest.assets.find(one => one.url === 'index.html');
  const text = (await response.clone().text()).replace(/<base href="[^"]*"/, '<base href="/"');
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  if (!response.ok || asset?.hash !== `sha256-${btoa(String.fromCharCode(...digest))}`) {
    throw new TypeError('index.html is of another version than the rest; the browser tries again later.');
  }
  return response;
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(prefix) && name !== cacheName).map(name => caches.delete(name)));
  // The first page ever loaded is served from here too, so the network may go right after it.
  await self.clients.claim();
}

async function answer(request) {
  const url = new URL(request.url);
  url.hash = '';
  const isPage = request.mode === 'navigate' && !known.has(url.href);
  const cached = await caches.match(isPage ? index : request, { cacheName, ignoreSearch: isPage });
  return cached ?? await caches.match(plain(url), { cacheName }) ?? fetch(request);
}

// The page asks for some files by a name that holds a print of their content; the list of assets names them without it.
function plain(url) {
  return url.href.replace(/\.[a-z0-9]{10}(?=\.[a-z0-9]+$)/, '');
}
