import type { Refill, StorePlan } from "../../model/trip/stores.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { trip as words } from "../texts/trip.ts";
import { formatDown, formatTenths, formatUp, ofUnit } from "../units.ts";
import type { Trip } from "./trip.ts";

/** Fuel against the tank and charge against the battery, each with what is left to spare, or where to fill up. */
export function TripSupply({ answer, trip }: { answer: TripAnswer; trip: Trip }) {
  const { total, tank, battery } = answer;
  const { tank_L, battery_Ah } = trip.heater;
  const name = (i: number) => answer.stops[i]?.stop.name ?? "";
  return (
    <div class="supply">
      <dl>
        <Line
          name={words.nights.fuelWord}
          needs={`${formatUp(total.fuel_L, 0.1)} L`}
          plan={tank}
          holds={tank_L}
          unit="L"
        />
        <Line
          name={words.nights.batteryWord}
          needs={`${formatUp(total.battery_Ah, 0.1)} Ah`}
          plan={battery}
          holds={battery_Ah}
          unit="Ah"
        />
      </dl>
      {tank && <FillUp of="tank" plan={tank} stopName={name} unit="L" />}
      {battery && <FillUp of="battery" plan={battery} stopName={name} unit="Ah" />}
    </div>
  );
}

function Line(props: {
  name: string;
  needs: string;
  plan: StorePlan | undefined;
  holds: number | undefined;
  unit: string;
}) {
  const { name, needs, plan, holds, unit } = props;
  return (
    <div>
      <dt>{name}</dt>
      <dd data-tight={plan && isShort(plan)}>
        <strong>{needs}</strong>
        {plan && holds !== undefined && <> {marginSaid(plan, holds, unit)}</>}
      </dd>
    </div>
  );
}

const isShort = ({ refills, left, tight }: StorePlan) =>
  tight || left === null || refills.length > 0;

function marginSaid({ refills, left, tight }: StorePlan, holds: number, unit: string): string {
  const full = ofUnit(formatTenths(holds), unit);
  if (left === null || refills.length > 0) return words.nights.notEnough(full);
  const share = formatDown((100 * left) / holds, 1);
  const said = words.nights[tight ? "spareTight" : "spare"];
  return said(full, share);
}

/** Where to fill up when it does not last, and why to do so sooner when it only just does. */
function FillUp(props: {
  of: "tank" | "battery";
  plan: StorePlan;
  stopName: (stop: number) => string;
  unit: string;
}) {
  const { of, plan, stopName, unit } = props;
  const said = words.nights[of];
  const short = plan.lasts.indexOf(0);
  if (short >= 0) return <p class="warning">{said.short(stopName(short))}</p>;
  if (plan.refills.length === 0) return plan.tight ? <p class="tight">{said.tightWhy}</p> : null;
  const left = ofUnit(formatDown(plan.left ?? 0, 0.1), unit);
  return (
    <>
      <p>
        <strong>{said.ends}</strong>
      </p>
      <ul class="refills" data-of={of}>
        {plan.refills.map((refill) => (
          <li key={refill.stop} data-tight={refill.tight}>
            {refillSaid(refill, stopName(refill.stop), unit)}
            {refill.tight && said.sooner}
          </li>
        ))}
      </ul>
      <p data-tight={plan.tight}>
        {words.nights[plan.tight ? "afterLastTight" : "afterLast"](left)}
      </p>
    </>
  );
}

function refillSaid({ night, every, left }: Refill, stop: string, unit: string): string {
  return [
    words.nights.refill(stop, night),
    every === null ? "" : words.nights.refillEvery(every),
    words.nights.leftThen(ofUnit(formatDown(left, 0.1), unit)),
  ].join("");
}
