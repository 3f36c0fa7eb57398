import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { nightsAt } from "../../model/trip/stop.ts";
import type { StopAnswer, TripAnswer } from "../../model/trip/trip.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { textWidth } from "../ui/charts/text-width.ts";
import { format, formatIn, formatPercent } from "../units.ts";
import { BETWEEN, type ColumnTexts, cutTo, type Layout, layOut } from "./profile-layout.ts";
import { rateInWords } from "./rate-words.ts";
import { ShiftPatterns, ShiftSwatch } from "./shift-signs.tsx";
import { edgeInWords, type ShownPlan, shiftInWords } from "./shown-plan.ts";
import type { Trip } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface TripProfileProps {
  answer: TripAnswer;
  plan: ShownPlan;
  trip: Trip;
  units: TripUnits;
  /** The stop whose fields are open. */
  open: number | null;
  onOpen: (stop: number | null) => void;
}

const BAR = 12;

/**
 * The trip as one drawing: what to set at each stop, elevation, night, and the shift there, rich up and hatched, lean down
 * and dotted. Over each column lies a button that says the same and opens the stop.
 */
export function TripProfile({ answer, plan, trip, units, open, onOpen }: TripProfileProps) {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => setWidth(Math.floor(element.clientWidth));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const elevations_m = answer.stops.map(({ stop }) => stop.elevation_m);
  const texts = answer.stops.map((_, i) => textsOf(answer, plan, trip, units, i));
  const { low, high } = plan.fans_rpm;
  const layout =
    width > 0
      ? layOut({ elevations_m, texts, shifts: plan.shifts }, trip.window, {
          width,
          several: plan.changes.length > 0,
          widthOf: textWidth,
        })
      : null;
  return (
    <figure class="profile">
      <p class="axis-title">{words.profile.set(format(low), format(high))}</p>
      <div class="scrolls whole" ref={place}>
        {layout && (
          <div class="profile-place" style={{ "--drawn-width": `${layout.width}px` }}>
            <Drawing {...{ answer, plan, texts, layout, open }} />
            <ol class="profile-stops">
              {answer.stops.map((stop, i) => (
                <li key={i}>
                  <button
                    type="button"
                    data-stop-button={i}
                    aria-expanded={open === i}
                    onClick={() => onOpen(open === i ? null : i)}
                  >
                    <span class="visually-hidden">
                      {spoken(stop, i, { answer, plan, trip, units })}
                    </span>
                  </button>
                </li>
              ))}
            </ol>
          </div>
        )}
      </div>
    </figure>
  );
}

/** What the signs of the drawing mean: apart from it, so that fuel and charge are nearer to it. */
export function ProfileKey({
  answer,
  plan,
  trip,
}: Omit<TripProfileProps, "units" | "open" | "onOpen">) {
  return (
    <p class="axis-title profile-key">
      <span class="by-hand">{words.profile.tap} </span>
      <span class="signs">
        <ShiftSwatch side="rich" />
        {words.profile.richer} <ShiftSwatch side="lean" />
        {words.profile.leaner}. {words.profile.ends}{" "}
        {words.profile.window(
          formatPercent(trip.window.rich_pct),
          formatPercent(trip.window.lean_pct),
        )}
        {plan.changes.length > 0 && ` ${words.profile.change}`}
        {answer.stops.some(isGuessed) && ` ${words.profile.guessed}`}
      </span>
    </p>
  );
}

function Drawing(props: {
  answer: TripAnswer;
  plan: ShownPlan;
  texts: readonly ColumnTexts[];
  layout: Layout;
  open: number | null;
}) {
  const { answer, plan, texts, layout, open } = props;
  const { width, height, column, ground, points, shiftY, windowY, rows } = layout;
  const zero = shiftY(0);
  const starts = [0, ...plan.changes];
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <ShiftPatterns />
      {open !== null && (
        <rect class="open-column" x={open * column} y="0" width={column} height={height} />
      )}
      <path class="ground" d={ground} />
      <line class="zero" x1="0" x2={width} y1={zero} y2={zero} />
      {windowY.map((y) => (
        <line key={y} class="window-edge" x1="0" x2={width} y1={y} y2={y} />
      ))}
      {starts.length > 1 &&
        starts.map((first, k) => {
          const next = starts[k + 1] ?? answer.stops.length;
          return (
            <g key={first}>
              {k > 0 && (
                <line
                  class="change-line"
                  x1={first * column}
                  x2={first * column}
                  y1="0"
                  y2={height}
                />
              )}
              <text class="tune-name" x={first * column + 5} y={rows.tunes}>
                {cutTo(words.plan.tune(k + 1), (next - first) * column - 8, textWidth)}
              </text>
            </g>
          );
        })}
      {texts.map(({ name, rates, elevation, night, nights, shift }, i) => {
        const { x, y } = points[i] as { x: number; y: number };
        const [low, high] = [plan.shifts.low[i] ?? 0, plan.shifts.high[i] ?? 0];
        const middle = (class_: string, at: number, text: string) => (
          <text class={class_} x={x} y={at} text-anchor="middle">
            {text}
          </text>
        );
        return (
          <g key={i}>
            {middle("name", rows.name, nameIn(column - 10, name, i))}
            {layout.beside ? (
              middle("rates", rows.rates, rates.join(BETWEEN))
            ) : (
              <>
                {middle("rates", rows.rates, rates[0])}
                {middle("rates", rows.below, rates[1])}
              </>
            )}
            <circle class="stop-dot" cx={x} cy={y} r="4" />
            {middle("elevation", y - 9, elevation)}
            {middle("night", rows.night, night)}
            {nights !== "" && middle("nights", rows.nights, nights)}
            <Bar x={x - BAR - 1} shift={low} y={shiftY(low)} zero={zero} />
            <Bar x={x + 1} shift={high} y={shiftY(high)} zero={zero} />
            {middle("shift", rows.size, shift[0])}
            {middle("shift", rows.side, shift[1])}
          </g>
        );
      })}
    </svg>
  );
}

/** A name that has to be cut is told by its number. */
function nameIn(width: number, name: string, stop: number): string {
  return textWidth(name) <= width ? name : cutTo(`${stop + 1} ${name}`, width, textWidth);
}

function Bar({ x, shift, y, zero }: { x: number; shift: number; y: number; zero: number }) {
  return (
    <rect
      class={`bar ${shift > 0 ? "rich" : "lean"}`}
      data-shift={shift}
      x={x}
      y={Math.min(y, zero)}
      width={BAR}
      height={Math.abs(y - zero)}
    />
  );
}

const isGuessed = ({ air }: StopAnswer) => air.assumed.includes("temperature");

function textsOf(
  answer: TripAnswer,
  plan: ShownPlan,
  trip: Trip,
  units: TripUnits,
  i: number,
): ColumnTexts {
  const at = answer.stops[i] as StopAnswer;
  const { stop, air } = at;
  const rate = (end: "low" | "high") => rateInWords(plan.rates_Hz[end][i] ?? 0, trip);
  const night = formatIn(air.temperature_C, units.temperature);
  const nights = nightsAt(stop);
  const larger = largerOf(plan, i);
  const size = `${formatPercent(Math.abs(larger))} %`;
  const side = larger === 0 ? "" : larger > 0 ? words.profile.richer : words.profile.leaner;
  return {
    name: stop.name,
    rates: [rate("low"), rate("high")],
    elevation: formatIn(stop.elevation_m, units.elevation),
    night: isGuessed(at) ? `≈ ${night}` : night,
    nights: nights > 1 ? words.profile.nights(nights) : "",
    shift: [size, side],
  };
}

/** The shift of the end that is farther off. */
function largerOf({ shifts }: ShownPlan, i: number): number {
  const [low, high] = [shifts.low[i] ?? 0, shifts.high[i] ?? 0];
  return Math.abs(low) > Math.abs(high) ? low : high;
}

/** All that a column shows, as a sentence or two. */
function spoken(
  at: StopAnswer,
  i: number,
  { answer, plan, trip, units }: Pick<TripProfileProps, "answer" | "plan" | "trip" | "units">,
): string {
  const { stop, shift_95_pct } = at;
  const night = formatIn(at.air.temperature_C, units.temperature);
  const ends = (["low", "high"] as const).map((end) => {
    const shift = plan.shifts[end][i] ?? 0;
    const edge = edgeInWords(shift, shift_95_pct[end], trip.window);
    return words.profile.spokenEnd(
      t.endWord[end],
      rateInWords(plan.rates_Hz[end][i] ?? 0, trip),
      shiftInWords(shift) + (edge ? `, ${edge}` : ""),
    );
  });
  return [
    `${words.list.stop(i + 1, stop.name)}.`,
    words.profile.spokenSite(
      formatIn(stop.elevation_m, units.elevation),
      isGuessed(at) ? `${night} (${words.result.guessed})` : night,
    ),
    `${words.nights.count(nightsAt(stop)).replace(/:$/, "")}.`,
    ...(plan.changes.includes(i) ? [words.plan.changeAt(stop.name)] : []),
    ...ends,
    ...(i === 0 && answer.stops.length > 1 ? [words.profile.press] : []),
  ].join(" ");
}
