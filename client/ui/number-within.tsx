import { useEffect, useState } from "preact/hooks";
import { NumberField } from "./number-field.tsx";

type NumberWithinProps = Omit<Parameters<typeof NumberField>[0], "error"> & {
  /** What is taken, SI. */
  range: readonly [least: number, most: number];
  /** Whether it may be left empty. */
  optional?: boolean;
  /** Whether only whole numbers are taken. */
  whole?: boolean;
  outOfRange: (value: number | undefined) => string;
};

/** What was typed and is not taken, and what stood there then. */
interface Refused {
  typed: number | undefined;
  value: number | undefined;
}

/**
 * A number that is taken only while it lies in its range; until then the last good one stands, and the field says so. The
 * range may move, with the other end of a span for instance: then what was typed is judged again. A value from elsewhere ends it.
 */
export function NumberWithin(props: NumberWithinProps) {
  const { range, optional, whole, outOfRange, onValue, ...rest } = props;
  const [refused, setRefused] = useState<Refused | null>(null);
  const isGood = (value: number | undefined) => {
    if (value === undefined) return optional === true;
    const [least, most] = range;
    return value >= least && value <= most && !(whole && !Number.isInteger(value));
  };
  const stands = refused !== null && refused.value === rest.value;
  const isTaken = stands && isGood(refused.typed);
  useEffect(() => {
    if (!refused || (stands && !isTaken)) return;
    setRefused(null);
    if (isTaken) onValue(refused.typed);
  }, [refused, stands, isTaken]);
  return (
    <NumberField
      {...rest}
      onValue={(typed) => {
        const good = isGood(typed);
        setRefused(good ? null : { typed, value: rest.value });
        if (good) onValue(typed);
      }}
      error={stands && !isTaken ? outOfRange(refused.typed) : undefined}
    />
  );
}
