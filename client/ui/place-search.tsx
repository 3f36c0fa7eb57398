import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { countryName } from "../../model/geography/country.ts";
import type { FoundPlace, Place } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { language } from "../language.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";
import { whatWentWrong } from "./went-wrong.tsx";

const TYPING_PAUSE_ms = 150;

/** What was asked, and what is so called. */
interface Answered {
  asked: string;
  places: FoundPlace[];
  none?: string | undefined;
}

/** No place is chosen in advance. */
const NONE = -1;

/**
 * Place search as a combobox: type, choose with arrows or a tap. A place that is called otherwise than was typed is offered,
 * but never taken by Enter alone; that there is none is said until something else is typed.
 */
export function PlaceSearch(props: {
  chosen: string | null;
  unit: Unit;
  /** `name` is its own with region and country, as the page's language says them. */
  onPlace: (place: Place, name: string) => void;
}) {
  const id = useId();
  const [typedText, setText] = useState(props.chosen ?? "");
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [active, setActive] = useState(NONE);
  const [open, setOpen] = useState(false);
  const [failed, setFailed] = useState<ComponentChildren>(null);
  const typed = useRef(false);
  /** Enter was pressed before the answer had come. */
  const hurried = useRef(false);

  const seen = useRef(props.chosen);
  let text = typedText;
  if (seen.current !== props.chosen) {
    // Chosen elsewhere, on the map for instance: show that, and look for nothing.
    seen.current = props.chosen;
    typed.current = false;
    text = props.chosen ?? "";
    setText(text);
  }

  const choose = (place: Place | undefined) => {
    if (!place || place.elevation_m === null) return;
    setOpen(false);
    setAnswered(null);
    typed.current = false;
    const name = nameOf(place);
    setText(name);
    props.onPlace(place, name);
  };
  const take = useRef(choose);
  take.current = choose;
  useEffect(() => {
    if (!typed.current || text.trim().length < 2) {
      setAnswered(null);
      setFailed(null);
      return;
    }
    const asked = text.trim();
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const { places, none } = await api.places(asked, stop.signal);
        setAnswered({ asked, places, none });
        const sure = places[0] && places[0].match !== "nearly" ? places[0] : undefined;
        setActive(sure ? 0 : NONE);
        setFailed(null);
        if (hurried.current) take.current(sure);
        hurried.current = false;
      } catch (error) {
        if (!stop.signal.aborted) setFailed(whatWentWrong(error));
      }
    }, TYPING_PAUSE_ms);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [text]);

  const places = answered?.places ?? [];
  const onKey = (e: KeyboardEvent) => {
    // What is listed may still be what an earlier word found.
    const late = typed.current && answered?.asked !== text.trim();
    if (e.key === "Enter" && late) {
      hurried.current = true;
      e.preventDefault();
    }
    if (!places.length || late) return;
    if (e.key === "ArrowDown") setActive((active + 1) % places.length);
    else if (e.key === "ArrowUp")
      setActive((Math.max(active, 0) + places.length - 1) % places.length);
    else if (e.key === "Enter") choose(places[active]);
    else if (e.key === "Escape") setOpen(false);
    else return;
    e.preventDefault();
  };
  const shown = open && places.length > 0;
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
        aria-activedescendant={shown && active !== NONE ? `${id}-${active}` : undefined}
        placeholder={t.site.placeHint}
        value={text}
        onInput={(e) => {
          typed.current = true;
          hurried.current = false;
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
        hidden={!shown}
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
        {failed ?? (answered ? said(answered, shown) : "")}
      </p>
    </div>
  );
}

function nameOf({ name, region, country_code }: Place): string {
  const country = country_code && countryName(country_code, language);
  return [name, region, country].filter(Boolean).join(", ");
}

/** How many there are, while they are shown; that nothing is so called, until something else is asked. */
function said({ asked, places, none }: Answered, shown: boolean): string {
  if (places.length === 0) return none ?? t.site.noPlace(asked);
  if (places[0]?.match === "nearly") return t.site.similar(asked);
  return shown ? t.site.results(places.length) : "";
}
