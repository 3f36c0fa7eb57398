/** What the study's estimators are called on a page, in German, by their names in its report. */
export const estimators: typeof import("../en/estimators.ts").estimators = {
  names: {
    "Least squares": "Kleinste Quadrate",
    "Least squares, 3·MAD cut": "Kleinste Quadrate, Schnitt bei 3·MAD",
    "Theil–Sen": "Theil–Sen",
    Huber: "Huber",
    "Bisquare by votes": "Bisquare nach Stimmen",
    Hypsotune: "Hypsotune",
    "Hypsotune, class and end alone": "Hypsotune, Größe und Leistung einzeln",
  },
  /** Where there is little room. */
  short: {
    "Least squares": "kl. Quadrate",
    "Bisquare by votes": "nach Stimmen",
    "Least squares, 3·MAD cut": "Schnitt 3·MAD",
    "Hypsotune, class and end alone": "Größe einzeln",
  },
};
