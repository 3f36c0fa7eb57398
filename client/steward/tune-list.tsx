import type { StewardsTune } from "../../server/contract.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { format } from "../units.ts";
import { signedPercent, sizeOf } from "./shift-words.ts";
import type { Desk } from "./use-desk.ts";

/** A tune by its size and elevation, in a line. */
export const lineOf = ({ tune }: StewardsTune) =>
  words.line(sizeOf(tune.heater.heat_kW), format(tune.site.elevation_m));

/** The tunes of a list: which one is looked at, and which are selected. */
export function TuneList({ desk }: { desk: Desk }) {
  const { tunes, selected } = desk;
  if (tunes.length === 0) return null;
  return (
    <section class="sheet steward-list" aria-label={words.listLabel}>
      <div class="row">
        <button type="button" onClick={desk.selectAll}>
          {words.selectAll}
        </button>
        {selected.size > 0 && (
          <button type="button" onClick={desk.clearSelection}>
            {words.clearSelection}
          </button>
        )}
      </div>
      <p role="status">{selected.size > 0 && words.selected(selected.size)}</p>
      <ol>
        {tunes.map((tune, at) => (
          <li key={tune.id}>
            <input
              type="checkbox"
              aria-label={words.selectLabel(lineOf(tune))}
              checked={selected.has(tune.id)}
              onChange={() => desk.select(tune.id)}
            />
            <button
              type="button"
              class="plain"
              aria-current={at === desk.at ? "true" : undefined}
              onClick={() => desk.goTo(at)}
            >
              {lineOf(tune)}
              <span class="shifts">{shiftsOf(tune)}</span>
            </button>
          </li>
        ))}
      </ol>
      {desk.next !== null && (
        <p>
          <button type="button" onClick={desk.showMore}>
            {words.more}
          </button>
        </p>
      )}
    </section>
  );
}

function shiftsOf({ compared }: StewardsTune): string {
  const [low = 0, high = 0] = compared.map(({ mixture_shift_pct }) => mixture_shift_pct);
  return words.shifts(signedPercent(low), signedPercent(high));
}
