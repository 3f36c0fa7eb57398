/** What the atlas says of a tune, in the page's language. In English it is shown as the atlas says it. */
export interface ReasonWords {
  quantities: Record<"pump_Hz" | "fan_rpm", string>;
  /** By the reason's code; `figure` names the field, `meant` is the suggestion with its unit. */
  reasons: Record<string, (figure: string, meant: string) => string>;
  /** How a tune lies beside the fit; `size` in %, "0" where there is no difference. */
  compared: (end: string, size: string, way: "rich" | "lean") => string;
}

export const reasonWords: ReasonWords | null = null;

/** A figure of a reason by its name in the API, as people of the page's language write it. */
export type Figure = (name: string) => string;

/** Why a tune does not count, by the reason's code. */
export const asideWords: Record<string, (figure: Figure) => string> = {
  far_richer: (figure) =>
    `Far richer than ${figure("others")} similar tunes: ${figure("off_pct")} % above the average in this air (${figure("pump_Hz_per_krpm")} against ${figure("average_Hz_per_krpm")} Hz per 1,000 rpm).`,
  far_leaner: (figure) =>
    `Far leaner than ${figure("others")} similar tunes: ${figure("off_pct")} % below the average in this air (${figure("pump_Hz_per_krpm")} against ${figure("average_Hz_per_krpm")} Hz per 1,000 rpm).`,
  held_at_the_door: () => "Held when it came in: it looks mistyped. Only its owner is told why.",
};
