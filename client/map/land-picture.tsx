import { useEffect, useRef, useState } from "preact/hooks";
import { mapWords } from "../texts/map.ts";
import { mercator, unMercator } from "./coasts.ts";
import { drawLand, HEIGHT_px, NORTH, SOUTH, WIDTH_px } from "./land-picture.ts";
import type { Palette } from "./palette.ts";
import type { Look } from "./relief.ts";

interface LandPictureProps {
  look: Look;
  palette: Palette;
  /** The chosen point. */
  lat: number | null;
  lon: number | null;
  onPoint: (lat: number, lon: number) => void;
}

/** The tinted land as a still picture, where the browser draws no map; a click on it asks for that point. */
export function LandPicture({ look, palette, lat, lon, onPoint }: LandPictureProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [drawn, setDrawn] = useState<"no" | "yes" | "failed">("no");
  const key = JSON.stringify([look, palette.sea]);
  useEffect(() => {
    if (!canvas.current) return;
    drawLand(canvas.current, look, palette).then(
      () => setDrawn("yes"),
      () => setDrawn("failed"),
    );
  }, [key]);
  const [x, y] = lat === null || lon === null ? [null, 0] : mercator(lat, lon);
  return (
    <div class="land-picture" data-drawn={drawn}>
      {/* The search for a place does the same by keyboard. */}
      <canvas
        ref={canvas}
        width={WIDTH_px}
        height={HEIGHT_px}
        role="img"
        aria-label={mapWords.picture}
        onClick={(e) => {
          const box = e.currentTarget.getBoundingClientRect();
          const down = (e.clientY - box.top) / box.height;
          onPoint(
            ...unMercator((e.clientX - box.left) / box.width, NORTH + down * (SOUTH - NORTH)),
          );
        }}
      />
      {x !== null && (
        <svg viewBox={`0 ${NORTH} 1 ${SOUTH - NORTH}`} aria-hidden="true">
          <circle class="cell-mark" cx={x} cy={y} r="0.012" stroke-width="0.004" />
        </svg>
      )}
      {drawn === "failed" && <p class="map-word">{mapWords.pictureFailed}</p>}
    </div>
  );
}
