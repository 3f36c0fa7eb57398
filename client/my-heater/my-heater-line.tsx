import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { later } from "../ui/later.tsx";
import "./my-heater.css";
import { followMyHeaters, type MyHeater, type MyHeaters } from "../app/heater/my-heater.ts";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { format } from "../units.ts";

const words = heaterWords.line;

// Its forms bring the schema along, and nobody opens it before the answer.
const HeaterEditor = later(() => import("./heater-editor.tsx").then((m) => m.HeaterEditor));

/** My heater in one line at the head of every view; it opens to choose another, add one, or say what it is set to. */
export function MyHeaterLine(props: {
  fit: PublishedFit;
  heat_kW: number;
  /** The logbook has the same forms of its own. */
  opens: boolean;
  onHeaters: (now: MyHeaters) => void;
}) {
  const { fit, heat_kW, opens, onHeaters } = props;
  const [my, setMy] = useState<MyHeaters | null>(null);
  const [open, setOpen] = useState(false);
  const [wasOpen, setWasOpen] = useState(false);
  useEffect(
    () =>
      followMyHeaters(fit, (now) => {
        setMy(now);
        onHeaters(now);
      }),
    [fit],
  );
  if (!my) return <p class="my-heater-line">{t.loading}</p>;
  const show = (next: boolean) => {
    setOpen(next);
    setWasOpen(wasOpen || next);
  };
  const { mine } = my;
  const line = (
    <>
      <strong>{mine ? words.mine : words.none}</strong> {facts(mine, heat_kW)}
    </>
  );
  if (!opens) return <p class="my-heater-line">{line}</p>;
  return (
    <>
      <button
        type="button"
        class="my-heater-line"
        aria-expanded={open}
        data-own={mine?.own_tunes.length}
        onClick={() => show(!open)}
      >
        <span>{line}</span>
        <span aria-hidden="true">{open ? "▴" : "▾"}</span>
      </button>
      {wasOpen && <HeaterEditor fit={fit} my={my} open={open} onClose={() => show(false)} />}
    </>
  );
}

/** Name, size, fans, dose, how many own tunes; without a heater what is taken in their place. */
function facts(mine: MyHeater | null, heat_kW: number): string {
  if (!mine) {
    const { low_fan_rpm, high_fan_rpm } = usualFans(heat_kW);
    return words.usual(format(low_fan_rpm), format(high_fan_rpm));
  }
  const { heater, own_tunes } = mine;
  const usual = usualFans(heater.heat_kW);
  const [low, high] = [
    heater.low_fan_rpm ?? usual.low_fan_rpm,
    heater.high_fan_rpm ?? usual.high_fan_rpm,
  ].map((rpm) => format(rpm)) as [string, string];
  const isUsual = heater.low_fan_rpm === undefined && heater.high_fan_rpm === undefined;
  return [
    heater.name,
    t.heater.heatOption(heater.heat_kW),
    isUsual ? words.usual(low, high) : words.fans(low, high),
    heater.dose_uL !== undefined && `${format(heater.dose_uL)} µL`,
    words.own(own_tunes.length),
  ]
    .filter(Boolean)
    .join(", ");
}
