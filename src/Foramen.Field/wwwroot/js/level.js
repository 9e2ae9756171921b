// @ts-check
/** How the phone is held. The angles are handed on as the sensor gives them; what they mean is worked out in C#. */

/** @type {((event: DeviceOrientationEvent) => void)|null} */
let handler = null;

// The second only where the device knows north; it comes beside the first.
const kinds = ['deviceorientation', 'deviceorientationabsolute'];

/** Starts; answers "on", "refused" or "missing". @param {(beta: number, gamma: number, alpha: number) => void} callback degrees; alpha from north, NaN where that is not known */
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
  let knowsNorth = false;
  const seen = new Promise(resolve => {
    handler = event => {
      if (event.beta === null || event.gamma === null) {
        return;
      }
      resolve('on');
      const north = event.absolute && event.alpha !== null;
      if (knowsNorth && !north) {
        return;
      }
      knowsNorth = north;
      // Ten times a second is enough for a hand.
      if (event.timeStamp - last > 100) {
        last = event.timeStamp;
        callback(event.beta, event.gamma, north ? event.alpha : NaN);
      }
    };
  });
  kinds.forEach(kind => addEventListener(kind, /** @type {any} */(handler)));
  const answer = await Promise.race([seen, new Promise(resolve => setTimeout(() => resolve('missing'), 1500))]);
  if (answer === 'missing') {
    stop();
  }
  return answer;
}

export function stop() {
  if (handler) {
    kinds.forEach(kind => removeEventListener(kind, /** @type {any} */(handler)));
    handler = null;
  }
}
