/**
 * What the API takes and answers, said once. From these schemas follow the types, against which routes and page are compiled,
 * the checks of what comes in, and the description of the API; tests parse real answers with them. What the model makes has its
 * type there, and its schema is held to it (`satisfies`). This is their door for the page and for tests.
 */
export type { Advice } from "../model/advice.ts";
export type { ListedPlace as Place } from "../model/geography/listed-place.ts";
export type { ScalingCurvePoint } from "../model/scaling-curve.ts";
export type { Reason, Verdict } from "../model/screen.ts";
export * from "./contract/about.ts";
export * from "./contract/cells.ts";
export * from "./contract/data.ts";
export * from "./contract/fit.ts";
export * from "./contract/near.ts";
export * from "./contract/places.ts";
export * from "./contract/problem.ts";
export * from "./contract/scaling.ts";
export * from "./contract/start.ts";
export * from "./contract/steward-answers.ts";
export * from "./contract/tunes.ts";
