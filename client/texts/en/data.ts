/** Words of the Atlas and of its pages on the data; fetched with it. */
export const dataWords = {
  pagesLabel: "Pages of the atlas",
  pages: {
    map: "Map",
    scaling: "Scaling",
    bands: "Bands",
    method: "Method",
    download: "All tunes",
    share: "Share a tune",
    style: "Signs",
  },
  title: "The data",
  intro:
    "Everything the atlas knows is open. Blank means unknown, never 0; every column has its unit in its name.",
  files: {
    csv: "All accepted tunes, CSV",
    geojson: "All accepted tunes, GeoJSON",
    parquet: "All accepted tunes, Parquet",
    data: "Files of this state of the data that never change, with checksums and how to cite them",
    dictionary: "What the columns mean, and the cautions",
    metadata: "The same CSV's cautions and columns, for programs",
    fit: "The published fit",
    openapi: "Description of the API (OpenAPI 3.1)",
  },
  method: "How it is made",
  methodText: [
    "Per heater size and power: ln(pump rate ÷ fan speed) = a + b · ln(air density ÷ 1.225). The fan moves volume, so air mass goes with fan speed times density; the pump moves volume per pulse. Perfect re-tuning would give b = 1; a crowd shows less.",
    "Everything else is one statistical model: heaters differ, some owners never re-tune, some give feet for metres, some make other mistakes, and a few may have agreed on what to send. The model works out how likely each is and counts every owner once; many owners in one place in one month count less each. A tune that is probably a mistake is set aside, with the reason, and comes back when later tunes support it. The page Method explains it, first in plain words, then for statisticians.",
  ],
  /** Said above the page on the method, which comes in English alone. */
  methodLanguage: "",
  privacy: "Privacy",
  privacyText:
    "No account, no name, no address. A position becomes a map cell of about 250 km² in your browser. Your key is random and stored only as a keyed hash. Kept are months, not dates, elevations to 10 m, air to 1 °C and 1 hPa, and no free text. Shown are elevations to 100 m and cells of five owners or more; fewer are shown within a larger cell. Whoever has tuned in several places is shown in cells of about 87,000 km² alone, with the year: nobody can see finer than that where they went. The pseudonym is random and goes with your last tune. Two things in the file tell a day and are shown to nobody: since when a new owner waits, and which fit a tune was compared with. Withdrawn means gone.",
  licence: "Licences and credit",
  licences: [
    "Contributed tunes: CC0 1.0.",
    "Code: MIT.",
    "Places and elevations: GeoNames, CC BY 4.0.",
    "Elevations between places: a list of airfields and a topography of the earth, both public domain.",
    "Coasts, borders, lakes, rivers: Natural Earth, public domain.",
    "Font: Noto Sans, SIL Open Font License.",
  ],
};
