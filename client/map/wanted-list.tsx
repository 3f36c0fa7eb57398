import type { End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { groupOf } from "../../model/start.ts";
import { mostWanted, type OneMore } from "../../model/wanted.ts";
import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { useUnit } from "../ui/number-field.tsx";
import { format, formatIn, type Unit } from "../units.ts";

interface WantedListProps {
  fit: PublishedFit;
  heat_kW: number;
  end: End;
  unit: Unit;
  /** Whether the map's colours show the same. */
  open: boolean;
}

/** Where one more tune would tell the atlas most, in words. */
export function WantedList({ fit, heat_kW, end, unit, open }: WantedListProps) {
  const [degrees] = useUnit("temperature", "map.temperature");
  const words = mapWords.wanted;
  const wanted = mostWanted(groupOf(fit, heat_kW, end));
  // As few digits as show each difference.
  const shown = ({ before, after }: OneMore) => format(before, 1) !== format(after, 1);
  const decimals = wanted.every(shown) ? 1 : 2;
  return (
    <details open={open}>
      <summary>{words.title}</summary>
      {wanted.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <>
          <p>{words.means(`${format(heat_kW)} kW`, t.endWord[end])}</p>
          <ol class="wanted">
            {wanted.map(({ elevation_m, temperature_C, before, after }) => (
              <li key={elevation_m}>
                {words.row(
                  formatIn(elevation_m, unit),
                  formatIn(temperature_C, degrees),
                  format(before, decimals),
                  format(after, decimals),
                )}
              </li>
            ))}
          </ol>
        </>
      )}
    </details>
  );
}
