import type { CardTable } from "../../model/card/card-table.ts";
import type { Nomogram } from "../../model/card/nomogram.ts";
import type { Tick } from "../../model/card/rate-ticks.ts";
import type { CardUnits } from "../app/link/card-choice.ts";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";
import { format, toShown } from "../units.ts";
import { SCALES } from "./card-figures.ts";
import { CodeDrawing, type CodeRoom } from "./code-drawing.tsx";

/** The reading that the drawing shows. */
export interface Example {
  elevation_m: number;
  temperature_C: number;
  low_Hz: number;
  high_Hz: number;
}

/** Room for figures beside the outer scales and for heads above, mm on A6. */
const BESIDE = 13.5;
const ABOVE = 8;
const BELOW = 1.5;
const LONG = 2.4;
const SHORT = 1.3;
/** Room for the figures of the middle scale, and between a scale and the code. */
const LABELS = 9;
const CLEAR = 1;

interface DrawingProps {
  drawing: Nomogram;
  table: CardTable;
  units: CardUnits;
  example: Example;
  /** Of this very card. */
  address: string;
}

/** Three upright scales, to scale; a tick carries its value in SI for whoever measures the drawing. */
export function NomogramDrawing({ drawing, table, units, example, address }: DrawingProps) {
  const { x, elevation, temperature, low, high } = drawing;
  const width = SCALES.width + 2 * BESIDE;
  const height = SCALES.height + ABOVE + BELOW;
  const shown = (si: number, unit: CardUnits["elevation"]) => format(toShown(si, unit));
  const decimals = (ticks: Tick[]) =>
    ticks.some(({ value, labelled }) => labelled && Math.abs((value * 10) % 1) > 1e-6) ? 2 : 1;
  const rate = (ticks: Tick[]) => {
    const places = decimals(ticks);
    return (value: number) => format(value, places);
  };
  return (
    <svg
      class="nomogram"
      viewBox={`${-BESIDE} ${-ABOVE} ${width} ${height}`}
      role="img"
      aria-label={words.nomogram.name(format(table.low.fan_rpm), format(table.high.fan_rpm))}
    >
      <Head x={-BESIDE} anchor="start" lines={words.elevation(units.elevation.name)} />
      <Head x={x.rate - 0.8} anchor="end" lines={`${t.low}, ${words.nomogram.rate}`} />
      <Head x={x.rate + 0.8} anchor="start" lines={`${t.high}, ${words.nomogram.rate}`} />
      <Head x={SCALES.width + BESIDE} anchor="end" lines={words.night(units.temperature.name)} />
      <path class="scale-line" d={`M${x.elevation} 0V${SCALES.height}`} />
      <path class="scale-line" d={`M${x.temperature} 0V${SCALES.height}`} />
      <RateLine drawing={drawing} />
      <Scale
        name="elevation"
        ticks={elevation}
        x={x.elevation}
        side={-1}
        label={(si) => shown(si, units.elevation)}
      />
      <Scale name="low" ticks={low} x={x.rate} side={-1} label={rate(low)} />
      <Scale name="high" ticks={high} x={x.rate} side={1} label={rate(high)} />
      <Scale
        name="temperature"
        ticks={temperature}
        x={x.temperature}
        side={1}
        label={(si) => shown(si, units.temperature)}
      />
      <ExampleLine drawing={drawing} example={example} />
      <CodeDrawing
        address={address}
        room={codeRoom(drawing, example)}
        withoutOwn={table.own_tunes > 0}
      />
    </svg>
  );
}

/** What a scale measures, on two lines: the thing and its unit. */
function Head(props: { x: number; anchor: "start" | "end"; lines: string }) {
  const [thing = "", unit = ""] = props.lines.split(", ");
  return (
    <text class="scale-head" text-anchor={props.anchor} y={-5.2}>
      <tspan x={props.x}>{thing}</tspan>
      <tspan x={props.x} dy="2.7">
        {unit}
      </tspan>
    </text>
  );
}

function Scale(props: {
  name: "elevation" | "temperature" | "low" | "high";
  ticks: Tick[];
  x: number;
  /** Which side of its line ticks and figures stand on. */
  side: -1 | 1;
  label: (si: number) => string;
}) {
  const { name, ticks, x, side, label } = props;
  return (
    <g data-scale={name}>
      {ticks.map(({ value, y, labelled }) => (
        <g key={value}>
          <line
            class="tick"
            data-value={value}
            x1={x}
            x2={x + side * (labelled ? LONG : SHORT)}
            y1={y}
            y2={y}
          />
          {labelled && (
            <text
              x={x + side * (LONG + 0.6)}
              y={y}
              dy="0.35em"
              text-anchor={side < 0 ? "end" : "start"}
            >
              {label(value)}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

/** The middle line: whole where the air has been tuned in, dashed beyond. */
function RateLine({ drawing: { x, known } }: { drawing: Nomogram }) {
  const { height } = SCALES;
  if (!known) return <path class="scale-line" d={`M${x.rate} 0V${height}`} />;
  const [from, to] = known;
  return (
    <>
      <path class="scale-line beyond" d={`M${x.rate} ${from}V0M${x.rate} ${to}V${height}`} />
      <path class="scale-line" d={`M${x.rate} ${from}V${to}`} />
    </>
  );
}

/** Where the example's line begins and ends, mm from the top. */
function exampleAt(drawing: Nomogram, example: Example) {
  const at = (ticks: Tick[], value: number) => ticks.find((tick) => tick.value === value)?.y;
  const left = at(drawing.elevation, example.elevation_m);
  const right = at(drawing.temperature, example.temperature_C);
  return left === undefined || right === undefined ? undefined : { left, right };
}

/** The widest empty room between the scales, off the example's line: a straight-edge may lie on the code. */
function codeRoom(drawing: Nomogram, example: Example): CodeRoom {
  const { x } = drawing;
  const rooms = [
    { from: x.elevation + CLEAR, to: x.rate - LABELS },
    { from: x.rate + LABELS, to: x.temperature - CLEAR },
  ] as const;
  const [left, right] = rooms;
  const room = left.to - left.from > right.to - right.from ? left : right;
  const line = exampleAt(drawing, example) ?? { left: SCALES.height, right: SCALES.height };
  const y = (at: number) =>
    line.left + ((at - x.elevation) / (x.temperature - x.elevation)) * (line.right - line.left);
  const [above, below] = [
    Math.min(y(room.from), y(room.to)),
    SCALES.height - Math.max(y(room.from), y(room.to)),
  ];
  return {
    x: room.from,
    y: above >= below ? 0 : SCALES.height - below + CLEAR,
    width: room.to - room.from,
  };
}

function ExampleLine({ drawing, example }: { drawing: Nomogram; example: Example }) {
  const line = exampleAt(drawing, example);
  if (!line) return null;
  const { left, right } = line;
  const { x } = drawing;
  return <path class="example-line" d={`M${x.elevation} ${left}L${x.temperature} ${right}`} />;
}
