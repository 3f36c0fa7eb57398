import { recall, remember } from "../base/remember.ts";

const KEPT_AS = "onsite.signal";
/** Two short tones and two short buzzes, told apart from a message's (our own working values). */
const TONES_Hz = [660, 880];
const TONE_s = 0.25;
const BUZZ_ms = [250, 120, 250];
const LOUDNESS = 0.4;

let audio: AudioContext | undefined;

/** Whether this browser has either at all. */
export const CAN_SIGNAL = "AudioContext" in globalThis || "vibrate" in navigator;

/** Browsers allow neither before the page was touched; asked too early, they complain. */
function isAllowed(): boolean {
  return CAN_SIGNAL && (navigator.userActivation?.hasBeenActive ?? false);
}

/** Whether the end of a wait will be heard and felt: as chosen, and as far as the browser allows it by now. */
export function isSignalOn(): boolean {
  return (recall<boolean>(KEPT_AS) ?? true) && isAllowed();
}

/** Turned on, it is tried at once, so that its owner knows what to listen for. */
export function chooseSignal(isOn: boolean): void {
  remember(KEPT_AS, isOn);
  if (!isOn) return;
  readySignal();
  signal();
}

/** Some browsers let a page sound only once it was made ready by a press; so each press of a sweep does. */
export function readySignal(): void {
  if (!isSignalOn()) return;
  try {
    audio ??= new AudioContext();
    if (audio.state === "suspended") void audio.resume().catch(() => {});
  } catch {
    // No sound here.
  }
}

/** A sound and a vibration, as far as either can be had. */
export function signal(): void {
  if (!isSignalOn()) return;
  try {
    navigator.vibrate?.(BUZZ_ms);
    for (const [i, tone_Hz] of TONES_Hz.entries()) sound(tone_Hz, i * TONE_s);
  } catch {
    // The page says it too.
  }
}

/** One tone, without the click of a wave that is cut. */
function sound(tone_Hz: number, after_s: number): void {
  if (!audio) return;
  const wave = audio.createOscillator();
  const volume = audio.createGain();
  const from = audio.currentTime + after_s;
  wave.frequency.value = tone_Hz;
  volume.gain.setValueAtTime(LOUDNESS, from);
  volume.gain.exponentialRampToValueAtTime(0.001, from + TONE_s);
  wave.connect(volume).connect(audio.destination);
  wave.start(from);
  wave.stop(from + TONE_s);
}
