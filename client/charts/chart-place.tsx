import { useEffect, useRef, useState } from "preact/hooks";

/** A place for a chart, which is drawn anew for every width of it. */
export function ChartPlace({ draw }: { draw: (width: number) => SVGSVGElement }) {
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
    if (width > 0) place.current?.replaceChildren(draw(width));
  }, [draw, width]);
  return <div class="chart" ref={place} />;
}
