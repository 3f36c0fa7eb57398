import { useMemo } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { ownStartTune } from "../../model/own-start.ts";
import { bandByTune_pct } from "../../model/own-steps.ts";
import type { StartQuestion } from "../../model/start.ts";
import type { OwnTune } from "../../model/tune.ts";
import { slipsOfEntry } from "../app/heater/mistyped.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { dayOf } from "../app/heater/own-words.ts";
import { logbookWords } from "../texts/logbook.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { formatPercent } from "../units.ts";

const words = logbookWords.ownSteps;

interface Step {
  name: string;
  half_pct: number;
  /** Against the step before. */
  said: string;
}

/** What each own tune did to the band of the answer, oldest first, asked at the site of the newest that does not look mistyped. */
export function OwnSteps({ fit, mine }: { fit: PublishedFit; mine: MyHeater }) {
  const steps = useMemo(() => stepsOf(fit, mine), [fit, mine]);
  if (!steps) return null;
  const widest = Math.max(...steps.map(({ half_pct }) => half_pct));
  return (
    <section class="sheet own-steps" aria-labelledby="own-steps">
      <h2 id="own-steps">{words.title}</h2>
      <p>{words.means}</p>
      <FiguresTable label={words.list} columns={words.columns}>
        {steps.map(({ name, half_pct, said }, i) => (
          <tr key={i}>
            <th scope="row">{name}</th>
            <td>
              <svg class="half-band" viewBox="0 0 100 10" aria-hidden="true">
                <rect
                  x={50 - (50 * half_pct) / widest}
                  width={(100 * half_pct) / widest}
                  y="1"
                  height="8"
                />
              </svg>{" "}
              ±{formatPercent(half_pct)} %
            </td>
            <td class="in-words">{said}</td>
          </tr>
        ))}
      </FiguresTable>
    </section>
  );
}

function stepsOf(fit: PublishedFit, { heater, own_tunes, found_at }: MyHeater): Step[] | null {
  const tunes = own_tunes.toReversed();
  const dates = found_at.toReversed();
  const newest = own_tunes.find((tune) => slipsOfEntry(tune, heater.heat_kW, { fit }).length === 0);
  if (!newest) return null;
  const question = questionAt(newest, heater);
  try {
    const halves = bandByTune_pct(fit, question, tunes);
    const { set_aside } = ownStartTune(fit, question, tunes).own_heater;
    const isAside = (i: number) => set_aside.some(({ tune }) => tune === i + 1);
    return halves.map((half_pct, i) => ({
      name: i === 0 ? words.before : dayOf(dates[i - 1] ?? ""),
      half_pct,
      said:
        i === 0
          ? words.average
          : isAside(i - 1)
            ? words.aside
            : changeIn((halves[i - 1] ?? half_pct) - half_pct),
    }));
  } catch {
    // Figures that cannot stand together are said by the answer itself.
    return null;
  }
}

function questionAt(
  { site, air }: OwnTune,
  { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL }: MyHeater["heater"],
): StartQuestion {
  const { elevation_m, elevation_sd_m = 0 } = site;
  return {
    ...{ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL },
    site: { elevation_m, elevation_sd_m, elevation_source: "given" },
    air: air ?? {},
  };
}

function changeIn(narrower_pct: number): string {
  const size = formatPercent(Math.abs(narrower_pct));
  if (size === formatPercent(0)) return words.same;
  return narrower_pct > 0 ? words.narrower(size) : words.wider(size);
}
