/** What the study's estimators are called on a page, by their names in its report. */
export const estimators = {
  names: {
    "Least squares": "Least squares",
    "Least squares, 3·MAD cut": "Least squares, 3·MAD cut",
    "Theil–Sen": "Theil–Sen",
    Huber: "Huber",
    "Bisquare by votes": "Bisquare by votes",
    Hypsotune: "Hypsotune",
    "Hypsotune, class and end alone": "Hypsotune, each size and power alone",
  } as Record<string, string>,
  /** Where there is little room. */
  short: {
    "Least squares": "Least squares",
    "Bisquare by votes": "by votes",
    "Least squares, 3·MAD cut": "3·MAD cut",
    "Hypsotune, class and end alone": "size alone",
  } as Record<string, string>,
};
