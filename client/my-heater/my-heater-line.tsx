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
  const line = mine ? (
    <Facts mine={mine} />
  ) : (
    <NoHeater heat_kW={heat_kW} isNew={my.heaters.length === 0} />
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

/** Name, size, dose, own tunes; where there is room, fans and meter too. */
function Facts({ mine: { heater, own_tunes } }: { mine: MyHeater }) {
  const { name, heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, meter } = heater;
  const usual = usualFans(heat_kW);
  const fans = [low_fan_rpm ?? usual.low_fan_rpm, high_fan_rpm ?? usual.high_fan_rpm];
  const [low, high] = fans.map((rpm) => format(rpm)) as [string, string];
  const isUsual = low_fan_rpm === undefined && high_fan_rpm === undefined;
  const first = [
    name,
    t.heater.heatOption(heat_kW),
    dose_uL !== undefined && `${format(dose_uL)} µL`,
    words.own(own_tunes.length),
  ];
  const kind = meter?.kind !== "other" && meter?.kind;
  const more = [
    isUsual ? words.usual(low, high) : words.fans(low, high),
    meter?.name ?? (kind && heaterWords.meterKinds[kind]),
  ];
  return (
    <>
      <strong class="on-wide">{words.mine}</strong> {first.filter(Boolean).join(", ")}
      <span class="on-wide">{["", ...more.filter(Boolean)].join(", ")}</span>
    </>
  );
}

/** Without a heater: what a newcomer does first, and what is taken meanwhile. */
function NoHeater({ heat_kW, isNew }: { heat_kW: number; isNew: boolean }) {
  const { low_fan_rpm, high_fan_rpm } = usualFans(heat_kW);
  return (
    <>
      {isNew && <strong>{heaterWords.settings.add}</strong>}
      {isNew && " · "}
      {isNew ? words.none : <strong>{words.none}</strong>}
      <span class={isNew ? "on-wide" : undefined}>
        {`: ${words.usual(format(low_fan_rpm), format(high_fan_rpm))}`}
      </span>
    </>
  );
}
