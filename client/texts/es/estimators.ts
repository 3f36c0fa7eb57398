/** What the study's estimators are called on a page, in Spanish, by their names in its report. */
export const estimators: typeof import("../en/estimators.ts").estimators = {
  names: {
    "Least squares": "Mínimos cuadrados",
    "Least squares, 3·MAD cut": "Mínimos cuadrados, corte a 3·MAD",
    "Theil–Sen": "Theil–Sen",
    Huber: "Huber",
    "Bisquare by votes": "Bicuadrada por votos",
    Hypsotune: "Hypsotune",
    "Hypsotune, class and end alone": "Hypsotune, cada tamaño y potencia aparte",
  },
  /** Where there is little room. */
  short: {
    "Least squares": "mín. cuadr.",
    "Bisquare by votes": "por votos",
    "Least squares, 3·MAD cut": "corte 3·MAD",
    "Hypsotune, class and end alone": "cada uno aparte",
  },
};
