import { z } from "zod";
import type { Band } from "../../model/fit/bands.ts";

export const num = z.number();

export const end = z.enum(["low", "high"]);

export const byEnd = z.strictObject({ low: num, high: num });

/** That a tuple has so many items and no more, which the API's description would leave out. */
export const exactly = (many: number) => ({ minItems: many, maxItems: many, items: false });

export const pair = z.tuple([num, num]).meta(exactly(2));

/** An object that has no other fields, as its description says; ones that come along are dropped and not refused. */
export const trimmed = <Shape extends z.ZodRawShape>(shape: Shape) =>
  z.object(shape).meta({ additionalProperties: false });

export const band = z.strictObject({
  level: num,
  lower: num,
  upper: num,
}) satisfies z.ZodType<Band>;
