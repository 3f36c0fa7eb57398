import { useState } from "preact/hooks";
import type { CheckReading } from "../../model/sweep/middle.ts";
import type { MeterChoice } from "../onsite/plan.ts";
import { goToFirstMarked } from "../parts/first-marked.ts";
import { NumberField } from "../parts/number-field.tsx";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";

const MOST_ppm = 10_000;

/** What the meter shows: a figure, or one press when it cannot show any. */
export function Reading(props: {
  meter: MeterChoice;
  onReading: (reading: CheckReading, still: boolean) => void;
}) {
  const { meter, onReading } = props;
  const [co_ppm, setCo] = useState<number | undefined>();
  const [still, setStill] = useState(false);
  const [tried, setTried] = useState(false);
  const good = co_ppm !== undefined && co_ppm >= 0 && co_ppm <= MOST_ppm;
  const floor_ppm = Math.max(meter.floor_ppm, 1);
  return (
    <form
      class="reading"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        setTried(true);
        if (good) onReading({ co_ppm }, still);
        else goToFirstMarked(e.currentTarget);
      }}
    >
      <NumberField
        label={words.step.reading}
        field="co_ppm"
        value={co_ppm}
        onValue={setCo}
        hint={words.step.early}
        error={
          co_ppm === undefined
            ? tried && words.step.noReading
            : !good && words.step.outOfScale(format(MOST_ppm))
        }
      />
      <label class="check">
        <input
          type="checkbox"
          name="still"
          checked={still}
          onChange={(e) => setStill(e.currentTarget.checked)}
        />
        {words.step.still}
      </label>
      <button type="submit" class="main large">
        {words.step.take}
      </button>
      <div class="row pair">
        <button
          type="button"
          class="large"
          onClick={() => onReading({ co_below_ppm: floor_ppm }, still)}
        >
          {words.step.below(format(floor_ppm))}
        </button>
        <button type="button" class="large" onClick={() => onReading({ at_ceiling: true }, still)}>
          {words.step.above(format(meter.ceiling_ppm))}
        </button>
      </div>
    </form>
  );
}
