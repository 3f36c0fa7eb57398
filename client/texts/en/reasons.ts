/** What the atlas says of a tune, in the page's language. In English it is shown as the atlas says it. */
export interface ReasonWords {
  quantities: Record<"pump_Hz" | "fan_rpm", string>;
  /** By the reason's code; `figure` names the field, `meant` is the suggestion with its unit. */
  reasons: Record<string, (figure: string, meant: string) => string>;
  /** How a tune lies beside the fit; `size` in %, "0" where there is no difference. */
  compared: (end: string, size: string, way: "rich" | "lean") => string;
}

export const reasonWords: ReasonWords | null = null;
