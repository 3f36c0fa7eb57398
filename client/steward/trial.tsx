import { useEffect, useId, useRef } from "preact/hooks";
import type { WithoutAnswer } from "../../server/contract.ts";
import { t } from "../texts/app.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { format } from "../units.ts";
import { changeInWords, sizeOf } from "./shift-words.ts";

type Average = WithoutAnswer["compared"][number]["published"];

/** What the fit would be without some tunes, beside the published one, with both bands of each. */
export function Trial({
  trial,
  onClose,
}: {
  trial: WithoutAnswer | "working";
  onClose: () => void;
}) {
  const id = useId();
  const place = useRef<HTMLElement>(null);
  // Asked for by a key, it may lie below the screen.
  useEffect(() => place.current?.scrollIntoView({ block: "nearest" }), [trial]);
  return (
    <section class="sheet steward-trial" ref={place} aria-labelledby={id}>
      <h3 id={id}>{words.trialTitle}</h3>
      <div role="status">
        {trial === "working" ? (
          <p>{words.trialWorking}</p>
        ) : (
          <p>
            {trial.left_out === 0
              ? words.trialNone
              : words.trial(trial.left_out, format(trial.tunes))}
          </p>
        )}
      </div>
      {trial !== "working" && trial.left_out > 0 && (
        <>
          <FiguresTable label={words.trialTable} columns={words.trialColumns}>
            {trial.compared.map((one) => (
              <tr key={`${one.heat_kW} ${one.end} ${one.elevation_m}`}>
                <th scope="row">
                  {sizeOf(one.heat_kW)} kW, {t.endWord[one.end]}
                </th>
                <td>{format(one.elevation_m)}</td>
                <Here average={one.published} />
                <Here average={one.other} />
                <td>{changeInWords(one.change_pct)}</td>
              </tr>
            ))}
          </FiguresTable>
          <p class="hint">{words.trialHint}</p>
        </>
      )}
      <p>
        <button type="button" onClick={onClose}>
          {words.close}
        </button>
      </p>
    </section>
  );
}

/** Rates are per fan speed and nobody sets them: three decimals tell a change of a few per mille. */
function Here({ average }: { average: Average }) {
  const { mean_band: mean, new_heater_band: heaters } = average;
  return (
    <td>
      <strong>{format(average.pump_Hz_per_krpm, 3)}</strong>
      <br />
      {words.trialBand(format(mean[0], 3), format(mean[1], 3))}
      <br />
      {words.trialHeaters(format(heaters[0], 3), format(heaters[1], 3))}
    </td>
  );
}
