/** One of the two ends of a heater's power range. */
export type End = "low" | "high";
export const ENDS: readonly End[] = ["low", "high"];

/** As it is said in a sentence. */
export const atPower = (end: End): string => `at ${end === "low" ? "lowest" : "highest"} power`;
