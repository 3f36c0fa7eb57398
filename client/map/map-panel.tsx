import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Cell, ElevationAnswer } from "../../server/contract.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { api } from "../base/answers/api.ts";
import type { Question } from "../base/question.ts";
import { cellInAddress } from "../base/tune-address.ts";
import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { useAddressChange } from "../ui/address-change.ts";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import type { Unit } from "../units.ts";
import { CellList } from "./cell-list.tsx";
import { CellFoot, CellTunes, useCellTunes } from "./cell-tunes.tsx";
import { Legend } from "./legend.tsx";
import { MapCanvas } from "./map-canvas.tsx";
import { MapFoot } from "./map-foot.tsx";
import { goToNearBeside, NearHere } from "./near-here.tsx";
import { NightField } from "./night-field.tsx";
import { PointFoot } from "./point-foot.tsx";
import { ASPECTS, type Aspect } from "./tint.ts";
import { useCells } from "./use-cells.ts";
import { usePalette } from "./use-palette.ts";
import { WantedList } from "./wanted-list.tsx";

interface MapPanelProps {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  unit: Unit;
  onPoint: (found: ElevationAnswer) => void;
  onQuestion: (question: Question) => void;
}

const NO_CELLS: readonly Cell[] = [];

/** What the last tap on the map has come to. */
type Tapped =
  | { is: "asking" }
  | { is: "point"; found: ElevationAnswer }
  | { is: "failed"; why: ComponentChildren }
  | { is: "cell" };

/** The map, loaded after the answer: what it shows and for which night, its legend and its twin in text. */
export function MapPanel(props: MapPanelProps) {
  const { fit, question, mine, unit, onPoint, onQuestion } = props;
  const palette = usePalette();
  const [aspect, setAspect] = useState<Aspect>("rate");
  const [tapped, setTapped] = useState<Tapped | null>(null);
  const [open, setOpen] = useState<{ cell: string; listed: boolean } | null>(null);
  const [nearOpen, setNearOpen] = useState(false);
  const { lat, lon, place, air, end = "low" } = question;
  const asked = { fit, question, end, aspect };

  // A cell asked for by the address is opened, and shown from near.
  const [named, setNamed] = useState(() => cellInAddress(location.hash));
  useAddressChange(() => setNamed(cellInAddress(location.hash)));
  useEffect(() => {
    if (named) setOpen({ cell: named, listed: true });
  }, [named]);
  const { cells, sought, open: openWide } = useCells(fit.version, named);
  const namedCell = cells?.find(({ cell }) => cell === named);

  const openCell = cells?.find(({ cell }) => cell === open?.cell);
  const seen = useCellTunes(openCell?.cell);
  const aboutCell = openCell && { cell: openCell, seen, unit };
  const list = (cell: string) => {
    setTapped(null);
    setOpen({ cell, listed: true });
  };

  const pick = async (pickedLat: number, pickedLon: number) => {
    setTapped({ is: "asking" });
    if (named) {
      setNamed(undefined);
      history.replaceState(null, "", "#/map");
    }
    try {
      const found = await api.elevation(pickedLat, pickedLon);
      onPoint(found);
      setTapped({ is: "point", found });
    } catch (error) {
      setTapped({ is: "failed", why: whatWentWrong(error) });
    }
  };
  const setNight = (temperature_C: number | undefined) => {
    const { temperature_C: _, ...rest } = air;
    onQuestion({
      ...question,
      air: temperature_C === undefined ? rest : { ...rest, temperature_C },
    });
  };

  const foot = () => {
    switch (tapped?.is) {
      case "asking":
        return <p>{mapWords.foot.asking}</p>;
      case "failed":
        return (
          <p class="error" role="alert">
            {tapped.why}
          </p>
        );
      case "cell":
        return aboutCell && <CellFoot {...aboutCell} onShow={() => list(aboutCell.cell.cell)} />;
      case "point": {
        // Another place may have been asked for since, by its name.
        const { found } = tapped;
        if (found.lat !== lat || found.lon !== lon) return null;
        return (
          <PointFoot
            {...{ fit, question, mine, found, unit }}
            onNear={() => goToNearBeside() || setNearOpen(true)}
          />
        );
      }
      default:
        return null;
    }
  };
  const shownFoot = foot();

  return (
    <section class="map-side sheet" aria-labelledby="map">
      <h2 id="map">{mapWords.title}</h2>
      <div class="map-aspect field">
        <label for="map-aspect">{mapWords.shown}</label>
        <select
          id="map-aspect"
          value={aspect}
          onChange={(e) => setAspect(e.currentTarget.value as Aspect)}
        >
          {ASPECTS.map((one) => (
            <option key={one} value={one}>
              {mapWords.aspects[one]}
            </option>
          ))}
        </select>
      </div>
      <MapCanvas
        asked={asked}
        palette={palette}
        unit={unit}
        cells={cells ?? NO_CELLS}
        onWide={openWide}
        point={
          namedCell
            ? { lat: namedCell.lat, lon: namedCell.lon, near: true }
            : { lat, lon, near: place !== null }
        }
        takeMiddle={mapWords.takeMiddle}
        onPoint={(pickedLat, pickedLon) => void pick(pickedLat, pickedLon)}
        onCell={(cell) => {
          setTapped({ is: "cell" });
          setOpen({ cell, listed: false });
        }}
      >
        {shownFoot && <MapFoot onClose={() => setTapped(null)}>{shownFoot}</MapFoot>}
      </MapCanvas>
      <div class="map-head">
        <div class="field">
          <label for="map-end">{mapWords.end}</label>
          <select
            id="map-end"
            value={end}
            onChange={(e) => onQuestion({ ...question, end: e.currentTarget.value as End })}
          >
            <option value="low">{t.low}</option>
            <option value="high">{t.high}</option>
          </select>
        </div>
        <NightField temperature_C={air.temperature_C} onTemperature={setNight} />
      </div>
      {named && sought && !namedCell && <p class="note">{mapWords.cell.gone}</p>}
      {aboutCell && open?.listed && <CellTunes {...aboutCell} onClose={() => setOpen(null)} />}
      {tapped?.is === "point" && nearOpen && (
        <NearHere question={question} unit={unit} onClose={() => setNearOpen(false)} />
      )}
      {mine && mine.own_tunes.length > 0 && <p class="note">{mapWords.ofAverage}</p>}
      <Legend asked={asked} palette={palette} unit={unit} />
      <p class="hint">
        {mapWords.click} {mapWords.estimated} {mapWords.credit}.
      </p>
      <WantedList
        fit={fit}
        heat_kW={question.heat_kW}
        end={end}
        unit={unit}
        open={aspect === "wanted"}
      />
      <CellList cells={cells} unit={unit} onOpen={list} onWide={(cell) => openWide([cell])} />
    </section>
  );
}
