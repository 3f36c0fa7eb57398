import { ENDS } from "../../model/end.ts";
import { type Steps, settablePairsOf } from "../../model/settable.ts";
import type { KeepFan, StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { basisWords } from "../texts/basis.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { format, formatPercent, formatRate, ofUnit } from "../units.ts";

/** Keep the fan or keep the heat, side by side. */
export function Ways({ tune, steps }: { tune: StartTune; steps: Steps }) {
  const { keep_fan, keep_heat } = tune.strategies;
  const cell = ({ pump_Hz, fan_rpm }: StartEnd) =>
    `${formatRate(pump_Hz, steps.step_Hz)} Hz, ${ofUnit(format(fan_rpm), t.rpm)}`;
  // Two fan speeds for one end would puzzle: the answer's makes up for the pump's step.
  const differs = ENDS.some(
    (end) => settablePairsOf(tune, end, steps)[0]?.fan_rpm !== tune[end].fan_rpm,
  );
  const row = (name: string, of: (way: KeepFan) => string) => (
    <tr>
      <th scope="row">{name}</th>
      <td>{of(keep_fan)}</td>
      <td>{of(keep_heat)}</td>
    </tr>
  );
  return (
    <div>
      <h3>{basisWords.waysTitle}</h3>
      <FiguresTable
        label={basisWords.waysTitle}
        columns={[basisWords.way, basisWords.keepFan, basisWords.keepHeat]}
        class="ways"
      >
        {row(t.low, (way) => cell(way.low))}
        {row(t.high, (way) => cell(way.high))}
        {row(basisWords.heatLeft, (way) => `${formatPercent(way.heat_fraction * 100)} %`)}
      </FiguresTable>
      {differs && <p class="hint">{basisWords.fanMakesUp}</p>}
      {!keep_heat.fan_suffices && (
        <p class="warning">{basisWords.fanShort(format(keep_heat.fan_limit_rpm))}</p>
      )}
    </div>
  );
}
