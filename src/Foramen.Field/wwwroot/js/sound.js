// @ts-check
/** Signals by WebAudio. Browsers allow sound only after a touch; scheduled signals run on the audio clock, which hidden pages do not slow. */

/** @type {AudioContext|null} */
let context = null;
/** @type {{oscillator: OscillatorNode}[]} */
let scheduled = [];
let report = () => { };

/** @param {() => void} callback called when sound becomes possible */
export function watch(callback) { report = callback; }

function unlock() {
  // It runs for as long as the app does, for the sake of a signal now and then: with few samples and long buffers it takes 0.9 % of a core instead of 1.4 %.
  if (!context) {
    context = new AudioContext({ sampleRate: 8000, latencyHint: 'playback' });
    const made = context;
    made.onstatechange = () => {
      if (made.state === 'running') {
        report();
      }
    };
  }
  if (context.state === 'suspended') {
    context.resume().catch(() => { });
  }
}

for (const touch of ['pointerdown', 'keydown']) {
  addEventListener(touch, unlock, { passive: true });
}

/** Whether a signal would be heard now. */
export function ready() { return context?.state === 'running'; }

/** @param {number} at seconds on the audio clock @param {number} hertz @param {number} seconds @param {number} gain */
function tone(at, hertz, seconds, gain) {
  if (!context) {
    return;
  }
  const oscillator = new OscillatorNode(context, { frequency: hertz, type: 'triangle' });
  const volume = new GainNode(context, { gain: 0 });
  volume.gain.setValueAtTime(0, at);
  volume.gain.linearRampToValueAtTime(gain, at + 0.01);
  volume.gain.setValueAtTime(gain, at + seconds - 0.03);
  volume.gain.linearRampToValueAtTime(0, at + seconds);
  oscillator.connect(volume).connect(context.destination);
  oscillator.start(at);
  oscillator.stop(at + seconds);
  scheduled.push({ oscillator });
  oscillator.onended = () => { scheduled = scheduled.filter(one => one.oscillator !== oscillator); };
}

const signals = {
  /** @param {number} at */ tick: at => tone(at, 1200, 0.05, 0.25),
  /** @param {number} at */ cue: at => { tone(at, 660, 0.18, 0.5); tone(at + 0.25, 660, 0.18, 0.5); },
  /** @param {number} at */ end: at => {
    for (let i = 0; i < 4; i++) {
      tone(at + i * 0.5, 880, 0.22, 0.8);
      tone(at + i * 0.5 + 0.24, 1320, 0.22, 0.8);
    }
  },
};

/** Plays "tick", "cue" or "end" after so many seconds. @param {'tick'|'cue'|'end'} signal @param {number} seconds */
export function play(signal, seconds) {
  if (context && context.state === 'running') {
    signals[signal](context.currentTime + Math.max(0, seconds));
  }
}

/** Takes back what has not been heard yet. */
export function cancel() {
  for (const { oscillator } of scheduled) {
    oscillator.stop();
  }
  scheduled = [];
}

/** @param {string} pattern milliseconds on, off, on… with commas */
export function vibrate(pattern) {
  return navigator.vibrate?.(pattern.split(',').map(Number)) ?? false;
}
