/** As the stylesheet has it for charts. */
const SIZE_px = 13;
/** The page's font may still be on its way, and another may be wider. */
const SPARE = 1.05;

let pencil: CanvasRenderingContext2D | null | undefined;

/** How wide a chart's letters make a text, px. */
export function textWidth(text: string): number {
  pencil ??= document.createElement("canvas").getContext("2d");
  if (!pencil) return text.length * SIZE_px * 0.6;
  pencil.font = `${SIZE_px}px ${getComputedStyle(document.body).fontFamily}`;
  return Math.ceil(pencil.measureText(text).width * SPARE);
}
