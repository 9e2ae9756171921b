// @ts-check
/** Draws the engine's pixels on a canvas with one copy. */

/** @type {WeakMap<HTMLCanvasElement, {context: CanvasRenderingContext2D, image: ImageData, words: Uint32Array}>} */
const surfaces = new WeakMap();
/** @type {Uint8Array} */
let greys = new Uint8Array(0);

/** @param {string} id @param {number} width @param {number} height */
function surface(id, width, height) {
  const canvas = /** @type {HTMLCanvasElement|null} */ (document.getElementById(id));
  if (!canvas) {
    return null;
  }
  let known = surfaces.get(canvas);
  if (!known || known.image.width !== width || known.image.height !== height) {
    canvas.width = width;
    canvas.height = height;
    const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d', { alpha: false }));
    const image = context.createImageData(width, height);
    known = { context, image, words: new Uint32Array(image.data.buffer) };
    surfaces.set(canvas, known);
  }
  return known;
}

/** One byte a pixel, rows downwards, sRGB grey. @param {string} id @param {number} width @param {number} height @param {any} view */
export function drawGrey(id, width, height, view) {
  const target = surface(id, width, height);
  if (!target) {
    return false;
  }
  if (greys.length !== width * height) {
    greys = new Uint8Array(width * height);
  }
  view.copyTo(greys);
  const { words } = target;
  for (let i = 0; i < greys.length; i++) {
    words[i] = 0xff000000 | (greys[i] * 0x010101);
  }
  target.context.putImageData(target.image, 0, 0);
  return true;
}
