import type { PublishedFit } from "../../model/fit/group.ts";
import { halfBand_pct } from "../../model/half-band.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { type OwnView, ownView } from "../app/heater/own-view.ts";
import { basisSentence } from "../app/heater/own-words.ts";
import { atStop, FIRST_QUESTION } from "../base/question.ts";
import type { Trip } from "./trip.ts";

/** What my heater's tunes and settings say at a stop; null where no heater is mine. */
export function ownAt(
  fit: PublishedFit,
  trip: Trip,
  mine: MyHeater | null | undefined,
  stop: number,
): OwnView | null {
  const at = trip.stops[stop];
  if (!mine || !at) return null;
  return ownView(fit, atStop(FIRST_QUESTION, at, trip.heater), mine);
}

/** What the bands rest on when they are my heater's, said of the stop where they are widest; null when they are not. */
export function ownBasis({ own, tune }: OwnView): string | null {
  return own && own.tunes > 0 ? basisSentence(own, tune.basis) : null;
}

export function widestStop({ stops }: TripAnswer): number {
  const halves = stops.map(({ start }) => halfBand_pct(start));
  return halves.indexOf(Math.max(...halves));
}
