import { useEffect, useState } from "preact/hooks";

/** From this width on, two things have room beside each other (as in style/wider.css). */
const WIDE = "(min-width: 64rem)";

/** Whether the screen has room for two things beside each other. */
export function useWideScreen(): boolean {
  const [isWide, setWide] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const query = matchMedia(WIDE);
    const onChange = () => setWide(query.matches);
    query.addEventListener("change", onChange);
    onChange();
    return () => query.removeEventListener("change", onChange);
  }, []);
  return isWide;
}
