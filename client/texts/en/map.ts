/** Words of the map; fetched with it. */
export const mapWords = {
  title: "Suggested pump rate on the map",
  end: "End shown",
  legend: (end: string) => `Pump rate, ${end}, Hz`,
  hatched: "outside the air anyone has tuned in",
  cellMark: "tunes from here, with their number",
  none: "This browser draws no map (WebGL is off or missing). Everything else works without it.",
  lost: "The map lost its drawing context. The rest of the page works; reload to see it again.",
  loading: "Loading the map …",
  click: "Click or tap the map for a start tune there.",
  cells: "Where the tunes come from",
  cellsNone: "No tunes yet.",
  cellColumns: ["Cell near", "Mean elevation", "Tunes", "Contributors", "Low end", "High end"],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "as fitted"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "rich" : "lean"}`,
  use: "Use",
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Map of suggested pump rates",
};
