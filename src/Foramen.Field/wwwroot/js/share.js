// @ts-check
/** Hands a file on: by the share sheet where there is one, else as a download. */

/** @type {File|null} */
let file = null;

/** Copies the bytes out of the engine's memory. @param {string} name @param {string} mediaType @param {any} view */
export function prepare(name, mediaType, view) {
  file = new File([view.slice()], name, { type: mediaType });
}

/** Answers "shared", "saved" or "stopped" (the user closed the share sheet). @param {boolean} preferShare */
export async function hand(preferShare) {
  if (!file) {
    return 'stopped';
  }
  const handed = file;
  file = null;
  if (preferShare && navigator.canShare?.({ files: [handed] })) {
    try {
      await navigator.share({ files: [handed], title: handed.name });
      return 'shared';
    } catch (error) {
      if (/** @type {any} */ (error)?.name === 'AbortError') {
        return 'stopped';
      }
    }
  }
  const url = URL.createObjectURL(handed);
  const link = document.createElement('a');
  link.href = url;
  link.download = handed.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return 'saved';
}
