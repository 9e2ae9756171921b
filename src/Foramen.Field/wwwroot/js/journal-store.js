// @ts-check
/**
 * The journal and the photographs in IndexedDB. One append is one call, one transaction with strict durability, one batch; it is acknowledged
 * only when the transaction is complete. Every function answers with JSON text: a refusal is an answer, not an exception.
 */

const version = 1;
const entries = 'entries';
const pictures = 'pictures';
const meta = 'meta';

/**
 * @typedef {{refusal: 'unavailable'|'full'|'failed'|'behind'|'blocked', detail: string}} Refusal
 * @typedef {{position: number, line: string, origin?: string}} StoredLine
 */

/**
 * A store. Tests hand in a factory that fails at the k-th request.
 * @param {{factory?: IDBFactory, name?: string, onChange?: () => void}} [options]
 */
export function createStore({ factory = globalThis.indexedDB, name = 'foramen', onChange = () => { } } = {}) {
  /** @type {Promise<IDBDatabase>|null} */
  let opening = null;
  /** @type {BroadcastChannel|null} */
  let channel = null;

  function database() {
    return opening ??= new Promise((resolve, reject) => {
      if (!factory) {
        reject(new DOMException('This browser keeps no data here.', 'NotSupportedError'));
        return;
      }
      const request = factory.open(name, version);
      request.onupgradeneeded = () => {
        const db = request.result;
        db.createObjectStore(entries, { keyPath: 'position', autoIncrement: true });
        db.createObjectStore(pictures, { keyPath: 'hash' });
        db.createObjectStore(meta);
      };
      request.onblocked = () => reject(new DOMException('Another tab holds an older version open.', 'BlockedError'));
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        const db = request.result;
        // A newer version in another tab may need to upgrade; this one reopens when it is next used.
        db.onversionchange = () => { db.close(); opening = null; };
        db.onclose = () => { opening = null; };
        resolve(db);
      };
    }).catch(error => { opening = null; throw error; });
  }

  /**
   * Runs requests in one transaction; resolves on complete with what the body left in the answer.
   * @param {string[]} stores
   * @param {IDBTransactionMode} mode
   * @param {(tx: IDBTransaction, answer: any) => void} body
   */
  async function transact(stores, mode, body) {
    try {
      const db = await database();
      return await new Promise((resolve, reject) => {
        const tx = db.transaction(stores, mode, { durability: 'strict' });
        /** @type {any} */
        const answer = {};
        tx.oncomplete = () => resolve(answer);
        tx.onabort = () => answer.refusal ? resolve(answer) : reject(tx.error ?? new DOMException('The write was stopped.', 'AbortError'));
        try {
          body(tx, answer);
        } catch (error) {
          try { tx.abort(); } catch { /* it is over already */ }
          reject(error);
        }
      });
    } catch (error) {
      return refusalOf(error);
    }
  }

  /** Device, its last number and every line; a new device is named in the same transaction. @param {string} newDevice */
  async function open(newDevice) {
    return JSON.stringify(await openAll(newDevice));
  }

  /** As {@link open}, not yet as text. @param {string} newDevice */
  async function openAll(newDevice) {
    const answer = await transact([entries, meta], 'readwrite', (tx, answer) => {
      answer.lines = [];
      const device = tx.objectStore(meta).get('device');
      device.onsuccess = () => {
        answer.device = device.result ?? newDevice;
        if (device.result === undefined) {
          tx.objectStore(meta).put(newDevice, 'device');
        }
      };
      const sequence = tx.objectStore(meta).get('sequence');
      sequence.onsuccess = () => { answer.sequence = sequence.result ?? 0; };
      const all = tx.objectStore(entries).getAll();
      all.onsuccess = () => { answer.lines = all.result; };
    });
    listen();
    return answer;
  }

  /** Lines after a position: what other tabs have written. @param {number} position */
  async function readAfter(position) {
    return JSON.stringify(await transact([entries, meta], 'readonly', (tx, answer) => {
      answer.lines = [];
      const sequence = tx.objectStore(meta).get('sequence');
      sequence.onsuccess = () => { answer.sequence = sequence.result ?? 0; };
      const rest = tx.objectStore(entries).getAll(IDBKeyRange.lowerBound(position, true));
      rest.onsuccess = () => { answer.lines = rest.result; };
    }));
  }

  /**
   * Appends lines whole or not at all. With a first number, the device's count must stand just before it, else the answer is "behind" (another
   * tab wrote first). With 0 the lines are another device's and the count stays.
   * @param {number} firstSequence
   * @param {string} lines one entry a line
   * @param {string} [origin] the Home they came from; empty where they came from none
   */
  async function append(firstSequence, lines, origin = '') {
    const batch = lines.split('\n');
    const answer = await transact([entries, meta], 'readwrite', (tx, answer) => {
      answer.positions = [];
      const counts = tx.objectStore(meta);
      const store = tx.objectStore(entries);
      const putAll = () => {
        for (const line of batch) {
          const request = store.add(origin ? { line, origin } : { line });
          request.onsuccess = () => answer.positions.push(request.result);
        }
      };
      if (firstSequence === 0) {
        putAll();
        return;
      }
      const sequence = counts.get('sequence');
      sequence.onsuccess = () => {
        if ((sequence.result ?? 0) !== firstSequence - 1) {
          answer.refusal = 'behind';
          answer.detail = 'Another tab wrote first.';
          tx.abort();
          return;
        }
        putAll();
        counts.put(firstSequence + batch.length - 1, 'sequence');
      };
    });
    if (!answer.refusal) {
      channel?.postMessage('appended');
    }
    return JSON.stringify(answer);
  }

  /** Keeps a picture under the hash of its bytes. @param {string} hash @param {string} mediaType @param {Blob} blob */
  async function putPicture(hash, mediaType, blob) {
    return JSON.stringify(await transact([pictures], 'readwrite', tx => {
      tx.objectStore(pictures).put({ hash, mediaType, blob });
    }));
  }

  /** @param {string} hash @returns {Promise<Blob|null>} */
  async function getPicture(hash) {
    const answer = await transact([pictures], 'readonly', (tx, answer) => {
      const request = tx.objectStore(pictures).get(hash);
      request.onsuccess = () => { answer.blob = request.result?.blob ?? null; };
    });
    return answer.blob ?? null;
  }

  /** A small text kept beside the journal. @param {string} name @returns {Promise<string>} */
  async function readNote(name) {
    const answer = await transact([meta], 'readonly', (tx, answer) => {
      const request = tx.objectStore(meta).get(`note-${name}`);
      request.onsuccess = () => { answer.text = request.result ?? ''; };
    });
    return answer.text ?? '';
  }

  /** @param {string} name @param {string} text */
  async function keepNote(name, text) {
    return JSON.stringify(await transact([meta], 'readwrite', tx => { tx.objectStore(meta).put(text, `note-${name}`); }));
  }

  /** Which of these pictures are here. @param {string[]} hashes @returns {Promise<string[]>} */
  async function keptOf(hashes) {
    const wanted = new Set(hashes);
    const answer = await transact([pictures], 'readonly', (tx, answer) => {
      const request = tx.objectStore(pictures).getAllKeys();
      request.onsuccess = () => { answer.keys = request.result.filter(key => wanted.has(/** @type {string} */ (key))); };
    });
    return answer.keys ?? [];
  }

  function listen() {
    if (!channel && 'BroadcastChannel' in globalThis) {
      channel = new BroadcastChannel(`${name}-journal`);
      channel.onmessage = () => onChange();
    }
  }

  return { open, openAll, readAfter, append, putPicture, getPicture, keptOf, readNote, keepNote };
}

/** @param {any} error @returns {Refusal} */
function refusalOf(error) {
  const name = error?.name ?? '';
  const detail = `${name}: ${error?.message ?? error}`;
  return {
    refusal: name === 'QuotaExceededError' ? 'full'
      : name === 'BlockedError' || name === 'VersionError' ? 'blocked'
        : name === 'NotSupportedError' || name === 'SecurityError' || name === 'InvalidStateError' ? 'unavailable'
          : 'failed',
    detail,
  };
}

/** What the browser promises to keep and how much room there is; null where it does not say. */
export async function health() {
  const storage = navigator.storage;
  const room = await storage?.estimate?.().catch(() => null);
  const kept = await storage?.persisted?.().catch(() => null);
  return JSON.stringify({ persisted: kept ?? null, usedBytes: room?.usage ?? null, quotaBytes: room?.quota ?? null });
}

/** Asks that the data be kept under pressure; answers as {@link health}. */
export async function persist() {
  await navigator.storage?.persist?.().catch(() => false);
  return health();
}

// The app's own store, and the pictures that are shown from it.
/** @type {() => void} */
let changed = () => { };
const own = createStore({ onChange: () => changed() });
/** @type {Map<string, string>} */
const urls = new Map();

/** @param {() => void} callback called when another tab has appended */
export function onForeignAppend(callback) { changed = callback; }
/**
 * Device, its last number and every line, as lines: what was answered, then position, origin and entry of each, apart by tabs. As one JSON text, ten thousand
 * entries within it would be escaped here and read twice there.
 * @param {string} newDevice
 */
export async function open(newDevice) {
  const { lines = [], ...answer } = await own.openAll(newDevice);
  return [JSON.stringify(answer), ...lines.map((/** @type {StoredLine} */ one) => `${one.position}\t${one.origin ?? ''}\t${one.line}`)].join('\n');
}
/** @param {number} position */
export const readAfter = position => own.readAfter(position);
/** @param {number} firstSequence @param {string} lines @param {string} origin */
export const append = (firstSequence, lines, origin) => own.append(firstSequence, lines, origin);
/** @param {string[]} hashes */
export const keptOf = hashes => own.keptOf(hashes);
/** @param {string} name */
export const readNote = name => own.readNote(name);
/** @param {string} name @param {string} text */
export const keepNote = (name, text) => own.keepNote(name, text);
/** @param {string} hash @param {string} mediaType @param {Blob} blob */
export const putBlob = (hash, mediaType, blob) => own.putPicture(hash, mediaType, blob);
/** @param {string} hash */
export const getBlob = hash => own.getPicture(hash);

/** An address for an img element, or empty where the picture is not here. @param {string} hash */
export async function pictureUrl(hash) {
  const known = urls.get(hash);
  if (known) {
    return known;
  }
  const blob = await own.getPicture(hash);
  if (!blob) {
    return '';
  }
  const url = URL.createObjectURL(blob);
  urls.set(hash, url);
  return url;
}
