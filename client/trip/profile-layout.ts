import type { MixtureWindow } from "../../model/trip/window.ts";
import type { Shifts } from "./shown-plan.ts";

/** What a column of the drawing says of its stop. */
export interface ColumnTexts {
  name: string;
  /** At lowest and at highest power: beside each other where there is room, else one below the other. */
  rates: readonly [low: string, high: string];
  elevation: string;
  night: string;
  /** How many nights; nothing where it is one. */
  nights: string;
  /** The larger shift of both ends: its size and its side. */
  shift: readonly [size: string, side: string];
}

/** Where things stand in the drawing of a trip, px: a column a stop; elevation above, shift below. */
export interface Layout {
  width: number;
  height: number;
  column: number;
  /** Outline of the ground. */
  ground: string;
  points: { x: number; y: number }[];
  shiftY: (shift_pct: number) => number;
  /** The window's edges, rich and lean. */
  windowY: [number, number];
  /** Whether the rates stand beside each other. */
  beside: boolean;
  /** Baselines of the rows of text. */
  rows: Record<"tunes" | "name" | "rates" | "below" | "night" | "nights" | "size" | "side", number>;
}

const LINE = 16;
/** Ground below the lowest stop. */
const UNDER = 6;
const GAP = 6;
/** Heights of the ground and of the window to either side: the whole answer must fit a phone's first screen. */
const LOW = { ground: 60, reach: 22 };
const HIGH = { ground: 110, reach: 34 };
/** From so wide a drawing on there is height enough, px. */
const WIDE = 500;
/** Beside a column's texts. */
const MARGIN = 6;
/** Letters of rates against those of all else. */
const LARGER = 1.3;
/** Between the rates of both ends. */
export const BETWEEN = " / ";
/** A finger finds no narrower column. */
const LEAST_COLUMN = 60;

/** A flat trip must not look like mountains, m. */
const LEAST_RANGE_m = 300;

/** Of a drawing at least so wide; wider where the columns' texts need it. Names are cut to their column instead. */
export function layOut(
  stops: { elevations_m: readonly number[]; texts: readonly ColumnTexts[]; shifts: Shifts },
  { rich_pct, lean_pct }: MixtureWindow,
  drawing: { width: number; several: boolean; widthOf: (text: string) => number },
): Layout {
  const { elevations_m, texts, shifts } = stops;
  const widest = (all: readonly string[]) => Math.ceil(Math.max(...all.map(drawing.widthOf)));
  const others = widest(
    texts.flatMap(({ elevation, night, nights, shift }) => [elevation, night, nights, ...shift]),
  );
  const rate = LARGER * widest(texts.flatMap(({ rates }) => rates));
  const both = LARGER * widest(texts.map(({ rates }) => rates.join(BETWEEN)));
  const share = drawing.width / elevations_m.length;
  const beside = both + MARGIN <= share || elevations_m.length === 1;
  const column = Math.max(LEAST_COLUMN, Math.max(others, beside ? both : rate) + MARGIN, share);
  const width = column * elevations_m.length;

  const { ground: rise, reach } = drawing.width < WIDE ? LOW : HIGH;
  const tunes = drawing.several ? LINE - 2 : 0;
  const name = tunes + LINE - 1;
  const rates = name + LINE + 4;
  const below = rates + (beside ? 0 : LINE + 2);
  const top = below + LINE + 10;
  const bottom = top + rise;
  const night = bottom + UNDER + LINE;
  const nights = night + (texts.some((text) => text.nights !== "") ? LINE : 0);
  const zero = nights + GAP + reach;
  const size = zero + reach + LINE;
  const side = size + LINE;

  const lowest = Math.min(0, ...elevations_m);
  const range = Math.max(LEAST_RANGE_m, Math.max(...elevations_m) - lowest);
  const points = elevations_m.map((elevation, i) => ({
    x: (i + 0.5) * column,
    y: bottom - ((elevation - lowest) / range) * rise,
  }));
  const most = Math.max(5, rich_pct, lean_pct, ...[...shifts.low, ...shifts.high].map(Math.abs));
  const shiftY = (shift_pct: number) => zero - (shift_pct / most) * reach;
  const line = points.map(({ x, y }) => `L${x} ${y}`).join("");
  const foot = bottom + UNDER;
  return {
    width,
    height: side + 4,
    column,
    ground: `M0 ${foot}L0 ${points[0]?.y}${line}L${width} ${points.at(-1)?.y}L${width} ${foot}Z`,
    points,
    shiftY,
    windowY: [shiftY(rich_pct), shiftY(-lean_pct)],
    beside,
    rows: { tunes, name, rates, below, night, nights, size, side },
  };
}

/** A text cut to a width, with an ellipsis where something is left out. */
export function cutTo(text: string, width: number, widthOf: (text: string) => number): string {
  if (widthOf(text) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && widthOf(`${letters.join("").trimEnd()}…`) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}
