import type { StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { format } from "../units.ts";

/** Tunes, contributors, range and age behind an answer. */
export function Basis({ tune, publishedAt }: { tune: StartTune; publishedAt: string | null }) {
  const { basis } = tune;
  const range = basis.density_range;
  return (
    <section aria-labelledby="basis">
      <h3 id="basis">{t.basis.title}</h3>
      <p>
        {basis.prior_only
          ? t.basis.prior(format(basis.heat_kW))
          : t.basis.tunes(
              format(basis.tunes),
              format(basis.contributors),
              format(basis.heat_kW),
            )}{" "}
        {range && t.basis.range(format(range[0], 2), format(range[1], 2))}{" "}
        {range && !basis.extrapolated && t.basis.inside}
      </p>
      {range && basis.extrapolated && <p class="warning">{t.basis.extrapolated}</p>}
      <p class="note">
        {publishedAt ? t.basis.fit(basis.fit, age(publishedAt)) : t.basis.priorFit}
      </p>
    </section>
  );
}

/** How long ago a fit was published, in words. */
export function age(publishedAt: string): string {
  const minutes = Math.max(0, (Date.now() - Date.parse(publishedAt)) / 60_000);
  if (minutes < 1) return t.basis.ages.now;
  if (minutes < 60) return t.basis.ages.minutes(Math.round(minutes));
  if (minutes < 48 * 60) return t.basis.ages.hours(Math.round(minutes / 60));
  return t.basis.ages.days(Math.round(minutes / 1440));
}
