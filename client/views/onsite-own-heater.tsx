import { useEffect, useState } from "preact/hooks";
import type { LogbookHeater } from "../logbook/entry.ts";
import { logbook } from "../logbook/store.ts";
import type { Preparation } from "../onsite/plan.ts";
import { ChoiceField } from "../parts/choice-field.tsx";
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
  const chosen = same.find(({ id }) => id === preparation.heater_id) ?? same[0];
  if (!chosen) return null;
  return (
    <ChoiceField
      label={words.prepare.heater}
      name="heater_id"
      value={chosen.id}
      options={same.map(({ id, name }) => [id, name] as const)}
      onValue={(heater_id) => onPreparation({ ...preparation, heater_id })}
    />
  );
}
