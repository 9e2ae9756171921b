// @ts-check
/** A photograph from a file or the camera: kept whole in the store, and decoded small for the engine. */
import { getBlob, putBlob } from './journal-store.js';

/** The last one read: its bytes and its pixels, until they are fetched. @type {{bytes: Uint8Array, pixels: Uint8ClampedArray, width: number, height: number}|null} */
let last = null;

/** @param {Uint8Array} bytes */
async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, byte => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * @param {Blob} blob
 * @param {number} longSide
 */
async function decode(blob, longSide) {
  const full = await createImageBitmap(blob, { imageOrientation: 'from-image' });
  const scale = Math.min(1, longSide / Math.max(full.width, full.height));
  const width = Math.max(1, Math.round(full.width * scale));
  const height = Math.max(1, Math.round(full.height * scale));
  const canvas = new OffscreenCanvas(width, height);
  const context = /** @type {OffscreenCanvasRenderingContext2D} */ (canvas.getContext('2d', { willReadFrequently: true }));
  context.imageSmoothingQuality = 'high';
  context.drawImage(full, 0, 0, width, height);
  const size = { fullWidth: full.width, fullHeight: full.height };
  full.close();
  return { pixels: context.getImageData(0, 0, width, height).data, width, height, ...size };
}

/** @param {Blob} blob @param {string} mediaType @param {number} longSide @param {boolean} keep */
async function take(blob, mediaType, longSide, keep) {
  if (!globalThis.crypto?.subtle) {
    return JSON.stringify({ refusal: 'unavailable', detail: 'The page was not loaded from a secure address.' });
  }
  let picture;
  try {
    picture = await decode(blob, longSide);
  } catch {
    return JSON.stringify({ refusal: 'undecodable', detail: mediaType || 'unknown' });
  }
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const hash = await sha256(bytes);
  if (keep) {
    const kept = JSON.parse(await putBlob(hash, mediaType, new Blob([bytes], { type: mediaType })));
    if (kept.refusal) {
      return JSON.stringify(kept);
    }
  }
  last = { bytes, pixels: picture.pixels, width: picture.width, height: picture.height };
  return JSON.stringify({
    hash, mediaType, byteCount: bytes.length, width: picture.width, height: picture.height,
    fullWidth: picture.fullWidth, fullHeight: picture.fullHeight,
  });
}

/** Reads the file that the input holds, keeps it and decodes it. @param {string} inputId @param {number} longSide */
export async function fromInput(inputId, longSide) {
  const input = /** @type {HTMLInputElement|null} */ (document.getElementById(inputId));
  const file = input?.files?.[0];
  return file ? take(file, file.type || 'application/octet-stream', longSide, true) : JSON.stringify({ refusal: 'none', detail: '' });
}

/** Decodes a kept picture again. @param {string} hash @param {number} longSide */
export async function fromStore(hash, longSide) {
  const blob = await getBlob(hash);
  return blob ? take(blob, blob.type, longSide, false) : JSON.stringify({ refusal: 'none', detail: '' });
}

/**
 * Fetches a picture from the host and keeps it, if it holds what it should.
 * @param {string} address @param {string} hash @param {string} mediaType what the host says where it is empty
 * @param {Record<string, string>} [headers]
 */
export async function fetchKept(address, hash, mediaType, headers = {}) {
  try {
    const response = await fetch(address, { headers });
    const bytes = new Uint8Array(await response.arrayBuffer());
    mediaType ||= response.headers.get('content-type') ?? '';
    return response.ok && await sha256(bytes) === hash && !JSON.parse(await putBlob(hash, mediaType, new Blob([bytes], { type: mediaType }))).refusal;
  } catch {
    // No network, or no secure address: the sheet goes without its picture.
    return false;
  }
}

/** Copies the RGBA pixels of the last one into the engine's memory. @param {any} view */
export function copyPixels(view) { if (last) { view.set(new Uint8Array(last.pixels.buffer)); } }

/** Copies the bytes of the last file. @param {any} view */
export function copyBytes(view) { if (last) { view.set(last.bytes); } }

/** Lets go of the last one. */
export function forget() { last = null; }

/** The bytes of the file an input holds (an import). @param {string} inputId */
export async function readFile(inputId) {
  const input = /** @type {HTMLInputElement|null} */ (document.getElementById(inputId));
  const file = input?.files?.[0];
  if (!file) {
    return -1;
  }
  last = { bytes: new Uint8Array(await file.arrayBuffer()), pixels: new Uint8ClampedArray(0), width: 0, height: 0 };
  return last.bytes.length;
}
