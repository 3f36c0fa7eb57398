import { useEffect, useState } from "preact/hooks";

/** Widths that style/wider.css changes at: from a phone to all else, and to two things beside each other. */
export const TABLET = "(min-width: 40rem)";
export const LAPTOP = "(min-width: 64rem)";

/** Whether the screen is at least as wide. */
export function useScreen(least: typeof TABLET | typeof LAPTOP): boolean {
  const [isWide, setWide] = useState(() => matchMedia(least).matches);
  useEffect(() => {
    const query = matchMedia(least);
    const onChange = () => setWide(query.matches);
    query.addEventListener("change", onChange);
    onChange();
    return () => query.removeEventListener("change", onChange);
  }, [least]);
  return isWide;
}
