import type { StartTune } from "../../model/start.ts";
import { basisWords } from "../texts/basis.ts";
import { format } from "../units.ts";

/** Tunes, contributors, range and age behind an answer. */
export function Basis({ tune, publishedAt }: { tune: StartTune; publishedAt: string | null }) {
  const { basis } = tune;
  const range = basis.density_range;
  return (
    <section aria-labelledby="basis">
      <h3 id="basis">{basisWords.title}</h3>
      <p>
        {basis.prior_only
          ? basisWords.prior(format(basis.heat_kW))
          : basisWords.tunes(
              format(basis.tunes),
              format(basis.contributors),
              format(basis.heat_kW),
            )}{" "}
        {range && basisWords.range(format(range[0], 2), format(range[1], 2))}{" "}
        {range && !basis.extrapolated && basisWords.inside}
      </p>
      {range && basis.extrapolated && <p class="warning">{basisWords.extrapolated}</p>}
      <p class="note">
        {publishedAt ? basisWords.fit(basis.fit, age(publishedAt)) : basisWords.priorFit}
      </p>
    </section>
  );
}

/** How long ago a fit was published, in words. */
export function age(publishedAt: string): string {
  const minutes = Math.max(0, (Date.now() - Date.parse(publishedAt)) / 60_000);
  if (minutes < 1) return basisWords.ages.now;
  if (minutes < 60) return basisWords.ages.minutes(Math.round(minutes));
  if (minutes < 48 * 60) return basisWords.ages.hours(Math.round(minutes / 60));
  return basisWords.ages.days(Math.round(minutes / 1440));
}
