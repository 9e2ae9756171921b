// @ts-check
/** Requests to the Home behind this address. Nothing throws: what did not work is in the answer. */
import { getBlob, keptOf } from './journal-store.js';
import { fetchKept } from './photo.js';

const pieceBytes = 1 << 20;
let holding = false;

/** @param {string} token @param {Record<string, string>} [more] */
const headers = (token, more = {}) => token ? { ...more, authorization: `Bearer ${token}` } : more;

/**
 * @param {string} method @param {string} path @param {string} token
 * @param {string} mediaType of the body, or empty @param {string} body
 */
export async function ask(method, path, token, mediaType, body) {
  try {
    const response = await fetch(path, {
      method, headers: headers(token, mediaType ? { 'content-type': mediaType } : {}), body: mediaType ? body : undefined,
      cache: 'no-store', credentials: 'omit', redirect: 'error', signal: AbortSignal.timeout(60_000),
    });
    return JSON.stringify({ status: response.status, kind: (response.headers.get('content-type') ?? '').split(';')[0], text: await response.text() });
  } catch {
    // No network, or it was cut.
    return JSON.stringify({ status: 0, kind: '', text: '' });
  }
}

/** Of several tabs one meets Home; the next takes over when that one is closed. Resolves once it is known. */
export function hold() {
  if (!navigator.locks) {
    holding = true;
    return Promise.resolve();
  }
  return new Promise(resolve => {
    setTimeout(resolve, 1000);
    navigator.locks.request('foramen-home', () => {
      holding = true;
      resolve(undefined);
      return new Promise(() => { });
    }).catch(() => { holding = true; resolve(undefined); });
  });
}

export const holds = () => holding;

/** Sends a picture in pieces, from where Home has got to. @param {string} hash @param {string} token */
export async function sendPicture(hash, token) {
  try {
    const blob = await getBlob(hash);
    if (!blob) {
      return true;
    }
    let { offset, complete } = await (await fetch(`api/pictures/${hash}/progress`, { headers: headers(token), cache: 'no-store' })).json();
    while (!complete) {
      const response = await fetch(`api/pictures/${hash}?offset=${offset}&total=${blob.size}`, {
        method: 'PUT', headers: headers(token, { 'content-type': 'application/octet-stream' }), body: blob.slice(offset, offset + pieceBytes),
      });
      if (response.status === 400) {
        // Home takes no such picture; it stays on this device and keeps no other from Home.
        return true;
      }
      const answer = await response.json();
      if (!response.ok || (!answer.complete && answer.offset <= offset)) {
        return false;
      }
      ({ offset, complete } = answer);
    }
    return true;
  } catch {
    return false;
  }
}

/** @param {string} hash @param {string} token */
export const fetchPicture = (hash, token) => fetchKept(`api/pictures/${hash}`, hash, '', headers(token));

/** Which of these pictures are kept here. @param {string} hashes with spaces between */
export const keptPictures = async hashes => (await keptOf(hashes.split(' '))).join(' ');
