import { useTheme } from "../base/theme.ts";
import { PALETTES, type Palette } from "./palette.ts";

/** The map's colours in the theme that the page shows, also when it changes. */
export function usePalette(): Palette {
  return PALETTES[useTheme().shown];
}
