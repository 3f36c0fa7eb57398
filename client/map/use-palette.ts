import { useEffect, useState } from "preact/hooks";
import { darkTheme, PALETTES, type Palette } from "./palette.ts";

/** The map's colours in the theme the system is set to, also when it changes. */
export function usePalette(): Palette {
  const [dark, setDark] = useState(() => darkTheme().matches);
  useEffect(() => {
    const query = darkTheme();
    const hear = () => setDark(query.matches);
    query.addEventListener("change", hear);
    // It may have changed between the drawing and now.
    hear();
    return () => query.removeEventListener("change", hear);
  }, []);
  return dark ? PALETTES.dark : PALETTES.light;
}
