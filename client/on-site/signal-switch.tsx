import { onsite as words } from "../texts/onsite.ts";
import { CAN_SIGNAL, chooseSignal, isSignalOn } from "./signal.ts";
import { useNow } from "./use-session.ts";

/** The switch of the sound and the vibration at the end of a wait; unticked while the browser allows neither. */
export function SignalSwitch() {
  // The browser may come to allow it at any press.
  useNow();
  if (!CAN_SIGNAL) return null;
  return (
    <label class="check">
      <input
        type="checkbox"
        name="signal"
        checked={isSignalOn()}
        onChange={(e) => chooseSignal(e.currentTarget.checked)}
      />
      {words.step.signal}
    </label>
  );
}
