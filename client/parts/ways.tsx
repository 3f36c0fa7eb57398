import type { KeepFan, StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { format, formatPercent, formatRate } from "../units.ts";
import { FiguresTable } from "./figures-table.tsx";

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
      <h3>{t.answer.waysTitle}</h3>
      <FiguresTable
        label={t.answer.waysTitle}
        columns={[t.answer.way, t.low, t.high, t.answer.heatLeft]}
        class="ways"
      >
        {row(t.answer.keepFan, keep_fan)}
        {row(t.answer.keepHeat, keep_heat)}
      </FiguresTable>
      {!keep_heat.fan_suffices && (
        <p class="warning">{t.answer.fanShort(format(keep_heat.fan_limit_rpm))}</p>
      )}
    </div>
  );
}
