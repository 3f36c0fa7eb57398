import { useEffect, useState } from "preact/hooks";
import type { LogbookHeater } from "../logbook/entry.ts";
import { logbook } from "../logbook/store.ts";
import type { Preparation } from "../onsite/plan.ts";
import { onsite as words } from "../texts/onsite.ts";

/** Which heater of the logbook it is, where the logbook knows any. */
export function OwnHeater(props: {
  preparation: Preparation;
  onPreparation: (preparation: Preparation) => void;
  heat_kW: number;
}) {
  const { preparation, onPreparation, heat_kW } = props;
  const [heaters, setHeaters] = useState<LogbookHeater[]>([]);
  useEffect(() => {
    logbook().then(
      (kept) => setHeaters(kept.heaters),
      () => {},
    );
  }, []);
  const same = heaters.filter((heater) => heater.heat_kW === heat_kW);
  if (same.length === 0) return null;
  const chosen = same.find(({ id }) => id === preparation.heater_id) ?? same[0];
  return (
    <div class="field">
      <label for="own-heater">{words.prepare.heater}</label>
      <select
        id="own-heater"
        name="heater_id"
        value={chosen?.id}
        onChange={(e) => onPreparation({ ...preparation, heater_id: e.currentTarget.value })}
      >
        {same.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}
