import { useState } from "preact/hooks";
import type { PointElevation } from "../../model/geography/terrain.ts";
import { t } from "../texts/app.ts";

/** Asks the device for its position, only on a press. Its elevation is worked out here: the position goes nowhere. */
export function PositionButton(props: { onPosition: (found: PointElevation) => void }) {
  const [note, setNote] = useState<string>(t.site.positionNote);
  const ask = () => {
    setNote(t.site.positionWait);
    const denied = () => setNote(t.site.positionDenied);
    if (!navigator.geolocation) return denied();
    navigator.geolocation.getCurrentPosition(
      async ({ coords }) => {
        try {
          const { elevationHere } = await import("../base/terrain-here.ts");
          props.onPosition(await elevationHere(coords.latitude, coords.longitude));
          setNote(t.site.positionNote);
        } catch {
          denied();
        }
      },
      denied,
      { timeout: 20_000, maximumAge: 60_000 },
    );
  };
  return (
    <div class="field">
      <span>{t.site.positionLabel}</span>
      <button type="button" onClick={ask}>
        {t.site.position}
      </button>
      <p class="hint" aria-live="polite">
        {note}
      </p>
    </div>
  );
}
