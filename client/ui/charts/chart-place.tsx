import { useEffect, useRef, useState } from "preact/hooks";

/** What the axes measure, with units: as text of the page, which breaks its lines where a drawing would cut them off. */
export interface Axes {
  x: string;
  y: string;
}

/** In a narrower place a chart is drawn this wide and made smaller as a whole: its margins alone would fill it. */
const NARROWEST_px = 240;

/** A place for a chart between the titles of its axes; it is drawn anew for every width of it. */
export function ChartPlace(props: { draw: (width: number) => SVGSVGElement; axes: Axes }) {
  const { draw, axes } = props;
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setWidth(Math.floor(element.clientWidth)));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    if (width > 0) place.current?.replaceChildren(draw(Math.max(NARROWEST_px, width)));
  }, [draw, width]);
  return (
    <div>
      <p class="axis-title">{axes.y}</p>
      <div class="chart" ref={place} />
      <p class="axis-title below">{axes.x}</p>
    </div>
  );
}
