import type { KeepFan, StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { basisWords } from "../texts/basis.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { format, formatPercent, formatRate } from "../units.ts";

/** Keep the fan or keep the heat, side by side. */
export function Ways({ tune }: { tune: StartTune }) {
  const { keep_fan, keep_heat } = tune.strategies;
  const cell = ({ pump_Hz, fan_rpm }: StartEnd) =>
    `${formatRate(pump_Hz)} Hz, ${format(fan_rpm)} ${t.rpm}`;
  const row = (name: string, way: KeepFan) => (
    <tr>
      <th scope="row">{name}</th>
      <td>{cell(way.low)}</td>
      <td>{cell(way.high)}</td>
      <td>{formatPercent(way.heat_fraction * 100)} %</td>
    </tr>
  );
  return (
    <div>
      <h3>{basisWords.waysTitle}</h3>
      <FiguresTable
        label={basisWords.waysTitle}
        columns={[basisWords.way, t.low, t.high, basisWords.heatLeft]}
        class="ways"
      >
        {row(basisWords.keepFan, keep_fan)}
        {row(basisWords.keepHeat, keep_heat)}
      </FiguresTable>
      {!keep_heat.fan_suffices && (
        <p class="warning">{basisWords.fanShort(format(keep_heat.fan_limit_rpm))}</p>
      )}
    </div>
  );
}
