import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { estimateHint } from "../ui/estimate-hint.ts";
import { NumberField, useUnit } from "../ui/number-field.tsx";
import { PlaceSearch } from "../ui/place-search.tsx";
import { PositionButton } from "../ui/position-button.tsx";
import { coarsePosition } from "./coarse-position.ts";
import { withValue } from "./draft.ts";
import type { TuneForm } from "./use-tune-form.tsx";

/** Where the tune was made: an elevation, and a place that becomes a map cell at once. */
export function SiteFields({ form }: { form: TuneForm }) {
  const { draft, setDraft, errorOf } = form;
  const [unit, chooseUnit] = useUnit("elevation", "share.elevation");

  const setPlace = async (
    at: { lat: number; lon: number; elevation_m: number | null; sd_m: number | null },
    place: string,
  ) => {
    const { lat, lon } = await coarsePosition(at.lat, at.lon);
    // Other fields may have been filled in while the cell was looked up.
    setDraft((now) => ({
      ...now,
      place,
      site: {
        ...(at.elevation_m === null
          ? now.site
          : { elevation_m: at.elevation_m, elevation_sd_m: at.sd_m ?? undefined }),
        lat,
        lon,
      },
    }));
  };
  const { lat, lon, elevation_m, elevation_sd_m } = draft.site;
  return (
    <>
      <PlaceSearch
        chosen={draft.place}
        unit={unit}
        onPlace={(found, name) => void setPlace({ ...found, sd_m: found.elevation_sd_m }, name)}
      />
      <NumberField
        label={t.site.elevation}
        field="site.elevation_m"
        quantity="elevation"
        unit={unit}
        onUnit={chooseUnit}
        value={elevation_m}
        onValue={(typed) => setDraft(withValue(draft, "site.elevation_m", typed))}
        hint={estimateHint(elevation_sd_m, unit)}
        error={errorOf("site.elevation_m")}
      />
      <PositionButton onPosition={(found) => void setPlace(found, shareWords.thisPosition)} />
      {lat !== undefined && lon !== undefined && (
        <p class="note wide">
          {shareWords.sentPosition(lat.toFixed(2), lon.toFixed(2))}{" "}
          <button
            type="button"
            class="plain"
            onClick={() =>
              setDraft({ ...draft, place: null, site: { elevation_m, elevation_sd_m } })
            }
          >
            {shareWords.withoutPosition}
          </button>
        </p>
      )}
    </>
  );
}
