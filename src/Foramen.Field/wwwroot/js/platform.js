// @ts-check
/** Small facts about the device, the page's look, and the app's own updates. */

const settingsKey = 'foramen.settings';
let session = '';

/** Minutes to add to UTC for the local time of that instant. @param {number} unixMilliseconds */
export function offsetMinutes(unixMilliseconds) { return -new Date(unixMilliseconds).getTimezoneOffset(); }

/** The signs this browser's language puts before tenths and between thousands, or empty. */
export function numberSigns() {
  const parts = new Intl.NumberFormat(navigator.languages, { minimumFractionDigits: 1 }).formatToParts(1234567.8);
  const sign = (/** @type {string} */ type) => parts.find(part => part.type === type)?.value ?? '';
  return [sign('decimal'), sign('group')];
}

/** Settings as JSON text, or empty. Where the browser refuses to keep them they last as long as the page. */
export function readSettings() {
  try { return localStorage.getItem(settingsKey) ?? session; } catch { return session; }
}

/** @param {string} json */
export function writeSettings(json) {
  session = json;
  try { localStorage.setItem(settingsKey, json); return true; } catch { return false; }
}

/** @param {string} theme "paper", "night" or "red" */
export function showTheme(theme) {
  document.documentElement.dataset.theme = theme;
  const colour = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', colour);
}

/** @type {ServiceWorker|null} */
let waiting = null;
/** @type {(state: string) => void} */
let report = () => { };

/** @param {(state: string) => void} callback gets "ready" (works offline) or "update" (a new version waits) */
export async function watchUpdates(callback) {
  report = callback;
  if (!('serviceWorker' in navigator)) {
    return;
  }
  const registration = await navigator.serviceWorker.getRegistration();
  if (!registration) {
    return;
  }
  if (registration.active) {
    report('ready');
  }
  const offer = (/** @type {ServiceWorker|null} */ worker) => {
    if (!worker) {
      return;
    }
    const look = () => {
      if (worker.state === 'installed' && registration.active && registration.active !== worker) {
        waiting = worker;
        report('update');
      } else if (worker.state === 'activated') {
        report('ready');
      }
    };
    worker.addEventListener('statechange', look);
    look();
  };
  offer(registration.waiting);
  offer(registration.installing);
  registration.addEventListener('updatefound', () => offer(registration.installing));
}

/** Lets the waiting version take over and starts it. */
export function applyUpdate() {
  if (!waiting) {
    return;
  }
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting.postMessage('apply');
}

/** Calls back when the page is shown again after being hidden. @param {() => void} callback */
export function onReturn(callback) {
  document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'visible') { callback(); } });
  addEventListener('pageshow', event => { if (event.persisted) { callback(); } });
}

/** Where an element was touched, each 0 to 1 from its top left. @param {string} id @param {number} clientX @param {number} clientY */
export function placeIn(id, clientX, clientY) {
  const box = document.getElementById(id)?.getBoundingClientRect();
  return box && box.width > 0 && box.height > 0
    ? [Math.min(1, Math.max(0, (clientX - box.left) / box.width)), Math.min(1, Math.max(0, (clientY - box.top) / box.height))]
    : [];
}

/** The browser's own print dialogue. */
export function printPage() { print(); }

// Where arrow keys move something, they do not scroll the page as well.
addEventListener('keydown', event => {
  if (event.key.startsWith('Arrow') && event.target instanceof Element && event.target.closest('[data-arrows]')) {
    event.preventDefault();
  }
});

/** The demo outing that Home offers, as JSON lines; empty where it offers none. */
export async function demoOuting() {
  try {
    const response = await fetch('demo/outing.jsonl');
    return response.ok && response.headers.get('content-type') === 'application/jsonl' ? await response.text() : '';
  } catch {
    // No network: then there is no demo either.
    return '';
  }
}
