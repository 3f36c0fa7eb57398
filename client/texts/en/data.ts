/** Words of the Data view; fetched with it. */
export const dataWords = {
  pagesLabel: "Pages on the data",
  pages: {
    download: "Download",
    bands: "How well the bands hold",
    method: "Method",
    style: "Signs and colours",
  },
  title: "The data",
  intro:
    "Everything the atlas knows is open. Missing is empty, never nought; every figure carries its unit in its name.",
  files: [
    ["/api/tunes.csv", "All accepted tunes, CSV"],
    ["/api/tunes.geojson", "All accepted tunes, GeoJSON"],
    ["/api/dictionary.json", "What the columns mean, and the cautions"],
    ["/api/tunes.csv-metadata.json", "The same CSV's cautions and columns, for programs"],
    ["/api/fit", "The published fit"],
    ["/api/openapi.json", "Description of the API (OpenAPI 3.1)"],
  ] as [string, string][],
  method: "How it is made",
  methodText: [
    "Per heat class and end: ln(pump rate ÷ fan speed) = a + b · ln(air density ÷ 1.225). The fan moves volume, so air mass goes with fan speed times density; the pump moves volume per pulse. Perfect re-tuning would give b = 1; a crowd shows less.",
    "One voice per contributor; many in one place in one month share votes. Each row counts by how likely it is an honest tune; what lies beyond the scatter between heaters is set aside, with the reason, and comes back when later tunes support it. The page Method has all of it.",
  ],
  privacy: "Privacy",
  privacyText:
    "No account, no name, no address. A position becomes a map cell of about 250 km² in your browser. The contributor key is random and stored only as a keyed hash. Months, not dates; elevations to 10 m; no free text. Cells with fewer than three contributors are shown within a larger one. Withdrawn means gone.",
  licence: "Licences and credit",
  licences: [
    "Contributed tunes: CC0 1.0.",
    "Code: MIT.",
    "Places and elevations: GeoNames, CC BY 4.0.",
    "Coasts, borders, lakes, rivers: Natural Earth, public domain.",
    "Letters: Noto Sans, SIL Open Font License.",
  ],
};
