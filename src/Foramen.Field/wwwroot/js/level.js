// @ts-check
/** How the phone is held. The angles are handed on as the sensor gives them; what they mean is worked out in C#. */

/** @type {((event: DeviceOrientationEvent) => void)|null} */
let handler = null;

/** Starts; answers "on", "refused" or "missing". @param {(beta: number, gamma: number) => void} callback degrees */
export async function start(callback) {
  const type = /** @type {any} */ (globalThis.DeviceOrientationEvent);
  if (!type) {
    return 'missing';
  }
  if (typeof type.requestPermission === 'function') {
    const answer = await type.requestPermission().catch(() => 'denied');
    if (answer !== 'granted') {
      return 'refused';
    }
  }
  stop();
  let last = 0;
  const seen = new Promise(resolve => {
    handler = event => {
      if (event.beta === null || event.gamma === null) {
        return;
      }
      resolve('on');
      // Ten times a second is enough for a hand.
      if (event.timeStamp - last > 100) {
        last = event.timeStamp;
        callback(event.beta, event.gamma);
      }
    };
  });
  addEventListener('deviceorientation', /** @type {any} */(handler));
  const answer = await Promise.race([seen, new Promise(resolve => setTimeout(() => resolve('missing'), 1500))]);
  if (answer === 'missing') {
    stop();
  }
  return answer;
}

export function stop() {
  if (handler) {
    removeEventListener('deviceorientation', handler);
    handler = null;
  }
}
