// @ts-check
/** Where the device is. Asked only when its owner touches the button; nothing is sent anywhere. */

let last = { latitude: 0, longitude: 0 };

/** True once the device has said where it is; false where it will not or cannot. */
export function ask() {
  return new Promise(resolve => {
    if (!navigator.geolocation) {
      resolve(false);
      return;
    }
    navigator.geolocation.getCurrentPosition(
      position => { last = position.coords; resolve(true); },
      () => resolve(false),
      { enableHighAccuracy: true, timeout: 30000, maximumAge: 10000 });
  });
}

export function latitude() { return last.latitude; }

export function longitude() { return last.longitude; }
