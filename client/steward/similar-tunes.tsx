import { useEffect, useState } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import type { NearTune, StewardsTune } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { monthName } from "../base/month-name.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { format, formatOfRates } from "../units.ts";
import { besideAverage } from "./shift-words.ts";

/** Whoever goes through the list quickly asks for nothing. */
const REST_ms = 250;
const MOST = 5;

/** The accepted tunes nearest in air and place. */
export function SimilarTunes({ tune }: { tune: StewardsTune }) {
  const [near, setNear] = useState<NearTune[] | null>(null);
  const query = JSON.stringify(nearQuery(tune));
  useEffect(() => {
    let gone = false;
    const asked = JSON.parse(query);
    if (!asked) return setNear([]);
    const show = (tunes: NearTune[]) => !gone && setNear(tunes.slice(0, MOST));
    const timer = setTimeout(() => {
      api.near(asked).then(
        ({ tunes }) => show(tunes),
        () => show([]),
      );
    }, REST_ms);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [query]);
  const rate = formatOfRates(near?.flatMap(({ low, high }) => [low.pump_Hz, high.pump_Hz]) ?? []);
  return (
    <div data-state={near ? "seen" : "loading"}>
      <h4>{words.similar}</h4>
      {!near && <p>{words.loading}</p>}
      {near?.length === 0 && <p>{words.similarNone}</p>}
      {near && near.length > 0 && (
        <FiguresTable label={words.similar} columns={words.similarColumns}>
          {near.map((one) => (
            <tr key={one.id}>
              <th scope="row">{format(one.elevation_m)}</th>
              <td>{monthName(one.month)}</td>
              <td>{words.pair(rate(one.low.pump_Hz), rate(one.high.pump_Hz))}</td>
              <td>{words.pair(format(one.low.fan_rpm), format(one.high.fan_rpm))}</td>
              <td>
                {words.pair(
                  besideAverage(one.against_average_pct.low),
                  besideAverage(one.against_average_pct.high),
                )}
              </td>
            </tr>
          ))}
        </FiguresTable>
      )}
    </div>
  );
}

/** Where and in which air a tune was found, as screening thinks it was meant; null where that cannot be. */
function nearQuery({ tune, air, reasons }: StewardsTune): Record<string, number> | null {
  const { heater, site } = tune;
  const meant = reasons.find(({ field }) => field === "site.elevation_m")?.suggestion;
  const elevation_m = meant ?? site.elevation_m;
  const [lowest, highest] = ELEVATION_RANGE_m;
  if (elevation_m < lowest || elevation_m > highest) return null;
  const { lat, lon } = site;
  return {
    heat_kW: heater.heat_kW,
    elevation_m,
    // A temperature that cannot be was put to what can.
    temperature_C: air.temperature_C,
    ...(lat !== undefined && lon !== undefined && { lat, lon }),
  };
}
