import type { Theme } from "../base/theme.ts";

/** Colours of the map in one theme. */
export interface Palette {
  /** From the least pump rate (thin air) to the most (dense air). */
  rate: readonly string[];
  /** From sure to unsure. */
  sure: readonly string[];
  /** From where one more tune makes no difference to where it makes the most. */
  wanted: readonly string[];
  sea: string;
  coast: string;
  river: string;
  border: string;
  text: string;
  halo: string;
  mark: string;
  stripe: string;
  /** Lines of equal pump rate. */
  contour: string;
}

/**
 * Our own ramps: drawn as curves in OKLab and cut into seven steps of equal difference, lightness falling throughout,
 * so that equal steps of the pump rate look equal and their order is seen without colour. The dark theme's lie lower.
 */
const LIGHT: Palette = {
  rate: ["#fbf3dd", "#fcd77b", "#e7ac3f", "#a59f35", "#5b8e42", "#286f4c", "#004e44"],
  sure: ["#f3ecde", "#e6c8b2", "#d8a393", "#c3807e", "#a86176", "#844971", "#5d3666"],
  wanted: ["#fbf3dd", "#fcd884", "#f7ac45", "#e98027", "#cd5823", "#a14029", "#742e28"],
  sea: "#b9cdd8",
  coast: "#6d8797",
  river: "#7f9bab",
  border: "#4b3a26",
  text: "#2c2216",
  halo: "#fbf8ef",
  mark: "#7a1f1f",
  stripe: "#282014",
  contour: "#1d1408",
};

const DARK: Palette = {
  rate: ["#e2d7ba", "#deb863", "#c49232", "#898321", "#46722e", "#185633", "#083628"],
  sure: ["#dad0bb", "#cdae96", "#be8c7b", "#ab6b68", "#914d60", "#71365c", "#4c2654"],
  wanted: ["#e2d7ba", "#deba69", "#d7902f", "#c76716", "#a94414", "#812d1a", "#581c17"],
  sea: "#2b3a45",
  coast: "#8fa5b3",
  river: "#33505f",
  border: "#1a150d",
  text: "#f6f0e2",
  halo: "#211c14",
  mark: "#8a2424",
  stripe: "#100c06",
  contour: "#0d0a05",
};

/** For bright sun: the light one with lines and letters as far from the land as they can be. */
const CONTRAST: Palette = {
  ...LIGHT,
  coast: "#000000",
  border: "#000000",
  text: "#000000",
  halo: "#ffffff",
  contour: "#000000",
};

export const PALETTES: Record<Theme, Palette> = { light: LIGHT, dark: DARK, contrast: CONTRAST };

/** Colour at a share of a ramp, 0–1; beyond its ends the ends' own. */
export function colourAt(share: number, ramp: readonly string[]): string {
  const at = Math.min(1, Math.max(0, share)) * (ramp.length - 1);
  const below = Math.min(ramp.length - 2, Math.floor(at));
  const [a, b] = [channels(ramp[below] as string), channels(ramp[below + 1] as string)];
  const mixed = a.map((value, i) => Math.round(value + (at - below) * ((b[i] as number) - value)));
  return `#${mixed.map((v) => v.toString(16).padStart(2, "0")).join("")}`;
}

export function channels(hex: string): number[] {
  return [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16));
}
