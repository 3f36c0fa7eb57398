import { useState } from "preact/hooks";
import type { CoReading } from "../../model/co-reading.ts";
import { coWords } from "../texts/co.ts";
import { onsite as words } from "../texts/onsite.ts";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { NumberField } from "../ui/number-field.tsx";
import { format } from "../units.ts";
import { Keys } from "./keys.tsx";
import type { MeterChoice } from "./plan.ts";

/** The meter shows no figure: nothing at all, or that it is off its scale. */
type Beyond = "floor" | "ceiling";

/** What the meter shows: a figure, or why it cannot show any. Nothing is taken before it stands there to be looked at. */
export function Reading(props: {
  meter: MeterChoice;
  onReading: (reading: CoReading, still: boolean) => void;
}) {
  const { meter, onReading } = props;
  const [co_ppm, setCo] = useState<number | undefined>();
  const [beyond, setBeyond] = useState<Beyond | undefined>();
  const [cleared, setCleared] = useState(0);
  const [still, setStill] = useState(false);
  const [tried, setTried] = useState(false);
  const floor_ppm = Math.max(meter.floor_ppm, 1);
  const [floor, ceiling] = [format(floor_ppm), format(meter.ceiling_ppm)];
  const says = {
    floor: { name: words.step.below(floor), typed: coWords.below(floor) },
    ceiling: { name: words.step.above(ceiling), typed: coWords.above(ceiling) },
  };
  const reading = readingOf(co_ppm, beyond, meter);
  const wrong =
    co_ppm === undefined
      ? tried && !beyond && words.step.noReading
      : co_ppm > meter.ceiling_ppm
        ? words.step.aboveCeiling(ceiling)
        : co_ppm < 0 && words.step.belowZero;
  const choose = (chosen: Beyond) => {
    setBeyond(beyond === chosen ? undefined : chosen);
    setCo(undefined);
    // What stood in the field, a figure or not, is gone.
    setCleared(cleared + 1);
  };
  return (
    <form
      class="reading"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        setTried(true);
        if (reading && !hasUnread(e.currentTarget)) onReading(reading, still);
        else goToFirstMarked(e.currentTarget);
      }}
    >
      <Keys
        decimal={!Number.isInteger(meter.resolution_ppm)}
        onEmpty={() => setBeyond(undefined)}
        more={(["floor", "ceiling"] as const).map((one) => (
          <button
            type="button"
            key={one}
            aria-pressed={beyond === one}
            data-beyond={one}
            onClick={() => choose(one)}
          >
            {says[one].name}
          </button>
        ))}
      >
        <NumberField
          key={cleared}
          label={words.step.reading}
          field="co_ppm"
          inputMode="none"
          placeholder={beyond && says[beyond].typed}
          value={co_ppm}
          onValue={(value) => {
            setCo(value);
            if (value !== undefined) setBeyond(undefined);
          }}
          error={wrong}
        />
      </Keys>
      <div class="take">
        <label class="check">
          <input
            type="checkbox"
            name="still"
            checked={still}
            onChange={(e) => setStill(e.currentTarget.checked)}
          />
          {words.step.still}
        </label>
        <button type="submit" class="main">
          {words.step.take}
        </button>
      </div>
    </form>
  );
}

/** What can be taken of it; undefined while that is nothing. */
function readingOf(
  co_ppm: number | undefined,
  beyond: Beyond | undefined,
  { floor_ppm, ceiling_ppm }: MeterChoice,
): CoReading | undefined {
  if (beyond === "floor") return { co_below_ppm: Math.max(floor_ppm, 1) };
  if (beyond === "ceiling") return { co_above_ppm: ceiling_ppm };
  return co_ppm !== undefined && co_ppm >= 0 && co_ppm <= ceiling_ppm ? { co_ppm } : undefined;
}
