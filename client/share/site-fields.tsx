import { useState } from "preact/hooks";
import { NumberField, useUnit } from "../parts/number-field.tsx";
import { PlaceSearch } from "../parts/place-search.tsx";
import { PositionButton } from "../parts/position-button.tsx";
import { nameOf } from "../question.ts";
import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { formatIn } from "../units.ts";
import { coarsePosition } from "./coarse-position.ts";
import type { TuneForm } from "./use-tune-form.tsx";

/** Where the tune was made: an elevation, and a place that becomes a map cell at once. */
export function SiteFields({ form }: { form: TuneForm }) {
  const { draft, setDraft, errorOf } = form;
  const [unit, chooseUnit] = useUnit("elevation", "share.elevation");
  const [estimate, setEstimate] = useState<string | null>(null);

  const setPlace = async (
    at: { lat: number; lon: number; elevation_m: number | null },
    place: string,
    half_95_m: number | null,
  ) => {
    const { lat, lon } = await coarsePosition(at.lat, at.lon);
    // Other fields may have been filled in while the cell was looked up.
    setDraft((now) => ({
      ...now,
      place,
      site: { lat, lon, elevation_m: at.elevation_m ?? now.site.elevation_m },
    }));
    setEstimate(half_95_m === null ? null : t.site.estimate(formatIn(half_95_m, unit)));
  };
  const { lat, lon } = draft.site;
  return (
    <>
      <PlaceSearch
        chosen={draft.place}
        unit={unit}
        onPlace={(found) => void setPlace(found, nameOf(found), null)}
      />
      <NumberField
        label={t.site.elevation}
        field="site.elevation_m"
        quantity="elevation"
        unit={unit}
        onUnit={chooseUnit}
        value={draft.site.elevation_m}
        onValue={(elevation_m) => {
          setEstimate(null);
          setDraft({ ...draft, site: { ...draft.site, elevation_m } });
        }}
        hint={estimate ?? undefined}
        error={errorOf("site.elevation_m")}
      />
      <PositionButton
        onPosition={(found) =>
          void setPlace(found, shareWords.thisPosition, found.uncertainty_95_m)
        }
      />
      {lat !== undefined && lon !== undefined && (
        <p class="note wide">
          {shareWords.sentPosition(lat.toFixed(2), lon.toFixed(2))}{" "}
          <button
            type="button"
            class="plain"
            onClick={() =>
              setDraft({ ...draft, place: null, site: { elevation_m: draft.site.elevation_m } })
            }
          >
            {shareWords.withoutPosition}
          </button>
        </p>
      )}
    </>
  );
}
