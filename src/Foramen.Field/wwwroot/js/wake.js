// @ts-check
/** Keeps the screen awake while something runs; says what came of it, so that the page can show it. */

/** @type {WakeLockSentinel|null} */
let lock = null;
let wanted = false;
/** @type {(state: string) => void} */
let report = () => { };

/** @param {(state: string) => void} callback gets "held", "refused", "missing" or "off" */
export function watch(callback) { report = callback; }

export async function hold() {
  wanted = true;
  if (!('wakeLock' in navigator)) {
    report('missing');
    return;
  }
  try {
    lock = await navigator.wakeLock.request('screen');
    lock.addEventListener('release', () => { lock = null; if (wanted) { report('refused'); } });
    report('held');
  } catch {
    report('refused');
  }
}

export async function release() {
  wanted = false;
  await lock?.release().catch(() => { });
  lock = null;
  report('off');
}

// The browser takes the lock away when the page is hidden; take it again on return.
document.addEventListener('visibilitychange', () => {
  if (wanted && !lock && document.visibilityState === 'visible') {
    hold();
  }
});
