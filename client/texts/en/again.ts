/** Words of fitting the open data again in the browser; fetched with the page of downloads. */
export const again = {
  title: "Fit it again here",
  intro:
    "You need not take the published figures on trust: this browser can fetch all accepted tunes and make the fit itself, by the same method. Every figure must then be the same to the last digit.",
  button: "Fit it again here",
  working: "Fetching the tunes …",
  fitting: (done: number, of: number) => `Fitting sizes and powers: ${done} of ${of} done.`,
  same: (version: string, rows: string, groups: number) =>
    `The same to the last digit: every figure of ${groups === 1 ? "the one size and power" : `all ${groups} sizes and powers`} of fit ${version}, made again here from ${rows} rows.`,
  differs: (version: string, differing: number, of: number) =>
    `Not the same: in ${differing} of ${of} sizes and powers a figure differs from fit ${version}.`,
  moving: (version: string) =>
    `Tunes came or went since fit ${version} was made, and the next one is not published yet. That takes a moment as a rule, and up to a week where an alarm holds it back.`,
  otherCode: (version: string) =>
    `Fit ${version} was made with other settings than this page has. Reload the page and try again.`,
  nothing: "There are no accepted tunes yet, so there is nothing to fit.",
  unreachable: "The atlas cannot be reached. Try again when you are online.",
  failed: (status: number) =>
    `The atlas did not give its data (answer ${status}). Try again in a while.`,
  broken: "What came cannot be read: it may have been cut off on its way. Try again.",
  retry: "Try again",
  tableLabel: "Table: figures made here beside the published ones",
  group: "Size and power",
  columns: { intercept: "Intercept", slope: "Slope", spread: "Spread" },
  others: "All others",
  agrees: "same",
  published: (figure: string) => `published ${figure}`,
  differ: "differ",
  none: "none",
};
