/** One of the two ends of a heater's power range. */
export type End = "low" | "high";
export const ENDS: readonly End[] = ["low", "high"];
