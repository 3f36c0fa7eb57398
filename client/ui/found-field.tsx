import { FOUND, type Found } from "../../model/fit/row.ts";
import { shareWords } from "../texts/share.ts";
import { ChoiceField } from "./choice-field.tsx";

/** How both ends of a tune were found, or that its owner does not know. */
export function FoundField(props: {
  value: Found | undefined;
  onValue: (found: Found | undefined) => void;
}) {
  return (
    <ChoiceField<Found | "">
      label={shareWords.found}
      name="found"
      value={props.value ?? ""}
      options={[
        ["", shareWords.foundUnknown],
        ...FOUND.map((found) => [found, shareWords.foundWays[found]] as const),
      ]}
      hint={shareWords.foundHint}
      onValue={(found) => props.onValue(found || undefined)}
    />
  );
}
