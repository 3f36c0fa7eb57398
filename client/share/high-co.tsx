import { type Advice, adviceOn } from "../../model/advice.ts";
import type { CoReading } from "../../model/co-reading.ts";
import { ENDS, type End } from "../../model/end.ts";
import { COMMON_PRACTICE, isHigh } from "../../model/sweep/common-practice.ts";
import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { format } from "../units.ts";

type About = Pick<Advice, "field" | "value">;

/** What both ends' final readings say of the heater; empty as a rule. Off the meter's scale it is at least its end. */
export function highReadings(ends: Partial<Record<End, CoReading | undefined>>): Advice[] {
  const shown = ENDS.map((end) => {
    const { co_ppm, co_above_ppm } = ends[end] ?? {};
    return [end, { co_ppm: co_ppm ?? co_above_ppm }] as const;
  });
  return adviceOn(Object.fromEntries(shown));
}

/** That a final reading is high, at which end, and what is usual: for the field itself. */
export function highReading({ field, value }: About): string {
  return high(field.startsWith("low") ? t.low : t.high, value);
}

function high(where: string, co_ppm: number): string {
  return shareWords.highCo(where, format(co_ppm), format(COMMON_PRACTICE.usual_below_ppm));
}

/** Which readings are high, what usually causes it, and that the heater should be looked at. Nothing when none is. */
export function HighCo({ advice }: { advice: readonly About[] }) {
  return <HighLines lines={advice.map(highReading)} />;
}

/** The same of a single reading, wherever in the power range it was taken. */
export function HighReading(props: { where: string; co_ppm: number | undefined }) {
  const { where, co_ppm } = props;
  if (co_ppm === undefined || !isHigh(co_ppm)) return null;
  return <HighLines lines={[high(where, co_ppm)]} />;
}

function HighLines({ lines }: { lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div class="warning high-co">
      {lines.map((line) => (
        <p key={line}>
          <strong>{line}</strong>
        </p>
      ))}
      <p>{shareWords.highCoCauses}</p>
    </div>
  );
}
