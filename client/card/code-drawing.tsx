import { encode } from "uqr";
import { cardWords as words } from "../texts/card.ts";

/** Room that a code and the address beside it have on the card, mm on A6. */
export interface CodeRoom {
  x: number;
  y: number;
  width: number;
}

/** Side of the code with its quiet zone: about 0.4 mm a module, which phones read from a hand's breadth. */
export const CODE_mm = 19;
/** A reader wants so many empty modules around (ISO/IEC 18004, 6.3.8). */
const QUIET = 4;
const LINE_mm = 2.6;
/** Letters of the card's smallest type in a millimetre. */
const LETTERS_mm = 0.72;
const GAP_mm = 1;

/** What of an address somebody types who has no camera: the view. The rest, with what browsers add by themselves, is the code's. */
export function typedAddress(address: string): string {
  return address.replace(/^https?:\/\//, "").replace(/\?.*$/, "");
}

/** A card's address as a code, and beside or below it the view's own, short enough to type. */
export function CodeDrawing(props: {
  address: string;
  room: CodeRoom;
  /** Whether the card has figures that the address does not: those from own tunes. */
  withoutOwn: boolean;
}) {
  const { address, room, withoutOwn } = props;
  const { size, data } = encode(address, { ecc: "L", border: QUIET });
  const { x, y, width } = room;
  const isBeside = width - CODE_mm - GAP_mm > CODE_mm / 2;
  const [textX, textY, textWidth] = isBeside
    ? [x + CODE_mm + GAP_mm, y + LINE_mm + 0.6, width - CODE_mm - GAP_mm]
    : [x, y + CODE_mm + LINE_mm, width];
  const letters = Math.floor(textWidth / (1 / LETTERS_mm));
  const title = words.code[withoutOwn ? "titleWithoutOwn" : "title"];
  const lines = [...wrapped(title, letters), ...cut(typedAddress(address), letters)];
  return (
    <g class="card-code">
      <rect class="paper" x={x} y={y} width={CODE_mm} height={CODE_mm} />
      <svg
        class="code"
        role="img"
        aria-label={words.code.name}
        x={x}
        y={y}
        width={CODE_mm}
        height={CODE_mm}
        viewBox={`0 0 ${size} ${size}`}
        shape-rendering="crispEdges"
      >
        <path d={data.map(rowPath).join("")} />
      </svg>
      <text class="code-address" data-address={address}>
        {lines.map((line, i) => (
          <tspan key={i} x={textX} y={textY + i * LINE_mm}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** A row's dark modules, each run as one piece: printers leave hairs between squares that only touch. */
function rowPath(row: boolean[], y: number): string {
  let path = "";
  for (let x = 0; x < row.length; x++) {
    if (!row[x]) continue;
    let end = x;
    while (row[end]) end++;
    path += `M${x} ${y}h${end - x}v1h${x - end}z`;
    x = end;
  }
  return path;
}

function wrapped(text: string, letters: number): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const last = lines.at(-1) ?? "";
    const longer = last === "" ? word : `${last} ${word}`;
    if (longer.length <= letters || last === "") lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Broken where an address has a mark, if one fits; a piece longer than a line anywhere. */
function cut(address: string, letters: number): string[] {
  const lines = [""];
  for (const piece of address.split(/(?<=[/?&,])/)) {
    let rest = piece;
    if (`${lines.at(-1)}${rest}`.length > letters) lines.push("");
    while (rest.length > letters) {
      lines[lines.length - 1] = rest.slice(0, letters);
      lines.push("");
      rest = rest.slice(letters);
    }
    lines[lines.length - 1] += rest;
  }
  return lines.filter((line) => line !== "");
}
