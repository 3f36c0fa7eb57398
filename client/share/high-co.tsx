import { type Advice, adviceOn } from "../../model/advice.ts";
import { ENDS, type End } from "../../model/fit/group.ts";
import { COMMON_PRACTICE } from "../../model/sweep/common-practice.ts";
import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { format } from "../units.ts";

type About = Pick<Advice, "field" | "value">;

/** A reading as the logbook has it too: at the meter's end it is at least that. */
interface Reading {
  co_ppm?: number | undefined;
  co_above_ppm?: number | undefined;
}

/** What both ends' final readings say of the heater; empty as a rule. */
export function highReadings(ends: Partial<Record<End, Reading | undefined>>): Advice[] {
  const shown = ENDS.map((end) => {
    const { co_ppm, co_above_ppm } = ends[end] ?? {};
    return [end, { co_ppm: co_ppm ?? co_above_ppm }] as const;
  });
  return adviceOn(Object.fromEntries(shown));
}

/** That a final reading is high, at which end, and what is usual: for the field itself. */
export function highReading({ field, value }: About): string {
  const end = field.startsWith("low") ? t.low : t.high;
  return shareWords.highCo(end, format(value), format(COMMON_PRACTICE.usual_below_ppm));
}

/** Which readings are high, what usually causes it, and that the heater should be looked at. Nothing when none is. */
export function HighCo({ advice }: { advice: readonly About[] }) {
  if (advice.length === 0) return null;
  return (
    <div class="warning high-co">
      {advice.map((about) => (
        <p key={about.field}>
          <strong>{highReading(about)}</strong>
        </p>
      ))}
      <p>{shareWords.highCoCauses}</p>
    </div>
  );
}
