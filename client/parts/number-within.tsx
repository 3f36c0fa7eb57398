import { useState } from "preact/hooks";
import { NumberField } from "./number-field.tsx";

type NumberWithinProps = Omit<Parameters<typeof NumberField>[0], "error"> & {
  /** What is taken, SI. */
  range: readonly [least: number, most: number];
  /** Whether it may be left empty. */
  optional?: boolean;
  outOfRange: (value: number | undefined) => string;
};

/** A number that is taken only while it lies in its range; until then the last good one stands, and the field says so. */
export function NumberWithin({ range, optional, outOfRange, onValue, ...rest }: NumberWithinProps) {
  const [wrong, setWrong] = useState<{ value: number | undefined } | null>(null);
  const [least, most] = range;
  return (
    <NumberField
      {...rest}
      onValue={(value) => {
        const good = value === undefined ? optional === true : value >= least && value <= most;
        setWrong(good ? null : { value });
        if (good) onValue(value);
      }}
      error={wrong ? outOfRange(wrong.value) : undefined}
    />
  );
}
