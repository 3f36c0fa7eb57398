import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Place } from "../../server/contract.ts";
import { api } from "../api.ts";
import { nameOf } from "../question.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";

const TYPING_PAUSE_ms = 150;

/** Place search as a combobox: type, choose with arrows or a tap. */
export function PlaceSearch(props: {
  chosen: string | null;
  unit: Unit;
  onPlace: (place: Place) => void;
}) {
  const id = useId();
  const [typedText, setText] = useState(props.chosen ?? "");
  const [places, setPlaces] = useState<Place[] | null>(null);
  const [active, setActive] = useState(0);
  const [open, setOpen] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const typed = useRef(false);

  const seen = useRef(props.chosen);
  let text = typedText;
  if (seen.current !== props.chosen) {
    // Chosen elsewhere, on the map for instance: show that, and look for nothing.
    seen.current = props.chosen;
    typed.current = false;
    text = props.chosen ?? "";
    setText(text);
  }

  useEffect(() => {
    if (!typed.current || text.trim().length < 2) {
      setPlaces(null);
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const found = await api.places(text.trim(), stop.signal);
        setPlaces(found.places);
        setActive(0);
        setFailed(null);
      } catch (error) {
        if (!stop.signal.aborted) setFailed((error as Error).message);
      }
    }, TYPING_PAUSE_ms);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [text]);

  const choose = (place: Place | undefined) => {
    if (!place || place.elevation_m === null) return;
    setOpen(false);
    setPlaces(null);
    typed.current = false;
    setText(nameOf(place));
    props.onPlace(place);
  };
  const onKey = (e: KeyboardEvent) => {
    if (!places?.length) return;
    if (e.key === "ArrowDown") setActive((active + 1) % places.length);
    else if (e.key === "ArrowUp") setActive((active + places.length - 1) % places.length);
    else if (e.key === "Enter") choose(places[active]);
    else if (e.key === "Escape") setOpen(false);
    else return;
    e.preventDefault();
  };
  const shown = open && places !== null;
  return (
    <div class="field place-search">
      <label for={id}>{t.site.place}</label>
      <input
        id={id}
        name="place"
        type="text"
        role="combobox"
        autoComplete="off"
        spellcheck={false}
        aria-expanded={shown}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={shown && places.length ? `${id}-${active}` : undefined}
        placeholder={t.site.placeHint}
        value={text}
        onInput={(e) => {
          typed.current = true;
          setText(e.currentTarget.value);
          setOpen(true);
        }}
        onKeyDown={onKey}
        onBlur={() => setOpen(false)}
      />
      <div
        id={`${id}-list`}
        role="listbox"
        aria-label={t.site.place}
        hidden={!shown || !places.length}
        // A press on the list must not take the focus: leaving the field closes the list.
        onMouseDown={(e) => e.preventDefault()}
      >
        {shown &&
          places.map((place, i) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the combobox above takes the keys
            <div
              role="option"
              key={`${place.lat} ${place.lon}`}
              id={`${id}-${i}`}
              tabIndex={-1}
              aria-selected={i === active}
              aria-disabled={place.elevation_m === null}
              onClick={() => choose(place)}
            >
              <span>{nameOf(place)}</span>
              <span class="figure">
                {place.elevation_m === null
                  ? t.site.unknownElevation
                  : formatIn(place.elevation_m, props.unit)}
              </span>
            </div>
          ))}
      </div>
      <p class={failed ? "error" : "hint"} aria-live="polite">
        {failed ?? (shown ? (places.length ? t.site.results(places.length) : t.site.noPlace) : "")}
      </p>
    </div>
  );
}
