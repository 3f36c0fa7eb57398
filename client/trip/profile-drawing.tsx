import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { trip as words } from "../texts/trip.ts";
import { Scrolls } from "../ui/scrolls.tsx";
import { formatIn, type Unit } from "../units.ts";
import { COLUMN, layOut, SHIFT_ZERO } from "./profile-layout.ts";
import { ShiftPatterns, ShiftSwatch } from "./shift-signs.tsx";
import { type Shifts, shiftInWords } from "./shown-shift.ts";

interface TripProfileProps {
  answer: TripAnswer;
  shifts: Shifts;
  window: MixtureWindow;
  unit: Unit;
  label: string;
  /** Stops where the tune changes. */
  changes: readonly number[];
}

const BAR = 16;

/** Elevation from stop to stop, and under it the shift at each: rich up and hatched, lean down and dotted. */
export function TripProfile({ answer, shifts, window, unit, label, changes }: TripProfileProps) {
  const elevations = answer.stops.map(({ stop }) => stop.elevation_m);
  const { width, height, ground, points, shiftY, windowY } = layOut(elevations, shifts, window);
  return (
    <figure class="profile">
      <Scrolls label={words.profile.scrollLabel} whole>
        <svg
          class="drawing"
          role="img"
          aria-label={label}
          viewBox={`0 0 ${width} ${height}`}
          style={{ "--drawn-width": `${width}px` }}
        >
          <ShiftPatterns />
          <path class="ground" d={ground} />
          {changes.map((stop) => {
            const x = (points[stop]?.x ?? 0) - COLUMN / 2;
            return <line key={stop} class="change-line" x1={x} x2={x} y1="0" y2={height} />;
          })}
          <line class="zero" x1="0" x2={width} y1={SHIFT_ZERO} y2={SHIFT_ZERO} />
          {windowY.map((y) => (
            <line key={y} class="window-edge" x1="0" x2={width} y1={y} y2={y} />
          ))}
          {points.map(({ x, y }, i) => {
            const [low, high] = [shifts.low[i] ?? 0, shifts.high[i] ?? 0];
            const larger = Math.abs(low) > Math.abs(high) ? low : high;
            const reach = shiftY(larger);
            return (
              <g key={i}>
                <circle class="stop-dot" cx={x} cy={y} r="4" />
                <text x={x} y={y - 10} text-anchor="middle">
                  {i + 1}: {formatIn(elevations[i] ?? 0, unit)}
                </text>
                <Bar x={x - BAR - 1} shift={low} y={shiftY(low)} />
                <Bar x={x + 1} shift={high} y={shiftY(high)} />
                <text x={x} y={larger > 0 ? reach - 5 : reach + 14} text-anchor="middle">
                  {shiftInWords(larger)}
                </text>
              </g>
            );
          })}
        </svg>
      </Scrolls>
      <figcaption class="note">
        <ShiftSwatch side="rich" />
        {words.profile.rich}. <ShiftSwatch side="lean" />
        {words.profile.lean}. {words.profile.ends} – – {words.profile.window}
        {changes.length > 0 && <>, │ {words.profile.change}</>}.
      </figcaption>
    </figure>
  );
}

function Bar({ x, shift, y }: { x: number; shift: number; y: number }) {
  const [top, bottom] = [Math.min(y, SHIFT_ZERO), Math.max(y, SHIFT_ZERO)];
  return (
    <rect
      class={shift > 0 ? "bar rich" : "bar lean"}
      data-shift={shift}
      x={x}
      y={top}
      width={BAR}
      height={Math.max(0.5, bottom - top)}
    />
  );
}
