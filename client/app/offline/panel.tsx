import { useEffect, useState } from "preact/hooks";
import { countryName } from "../../../model/geography/country.ts";
import type { PackListing } from "../../../model/geography/place-packs.ts";
import {
  listCountries,
  removeCountry,
  saveCountry,
  savedFiles,
} from "../../base/answers/saved-countries.ts";
import { language } from "../../language.ts";
import { offline } from "../../texts/offline.ts";
import { format } from "../../units.ts";
import type { Keeping } from "./keep-geography.ts";
import { useStanding } from "./standing.ts";
import { keep, savesData } from "./start.ts";

const MEGABYTE = 1_000_000;

/** What this browser keeps for use without a network, and more of it on a press. */
export function OfflinePanel() {
  const { keeping } = useStanding();
  const [opened, setOpened] = useState(false);
  return (
    // One part of the page: the word below takes no room of its own while there is none.
    <div>
      <details
        class="sheet offline"
        data-offline={keeping.is}
        onToggle={(e) => setOpened(e.currentTarget.open || opened)}
      >
        <summary>{offline.title}</summary>
        <p>{sentence(keeping)}</p>
        {mayAsk(keeping) && (
          <p>
            <button type="button" onClick={() => void keep()}>
              {keeping.is === "waiting" ? offline.keepNow : offline.retry}
            </button>
          </p>
        )}
        {opened && keeping.is !== "unable" && <Countries />}
      </details>
      <div role="status">
        {keeping.is === "keeping" && keeping.cleared && <p class="note">{offline.cleared}</p>}
      </div>
    </div>
  );
}

function mayAsk({ is }: Keeping): boolean {
  return is === "interrupted" || is === "full" || (is === "waiting" && savesData());
}

function sentence(keeping: Keeping): string {
  if (keeping.is === "keeping") return offline.keeping(keeping.done, keeping.of);
  return keeping.is === "waiting" && savesData() ? offline.saveData : offline[keeping.is];
}

const nameOf = ({ country_code }: PackListing): string => countryName(country_code, language);

const byName = (listed: readonly PackListing[]): PackListing[] =>
  listed.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b), language));

/** Countries to save whole, and those saved. */
function Countries() {
  const [all, setAll] = useState<PackListing[]>([]);
  const [saved, setSaved] = useState<string[]>([]);
  const [chosen, setChosen] = useState("");
  const [note, setNote] = useState("");
  const [used, setUsed] = useState<number | null>(null);
  const look = async () => {
    setSaved(await savedFiles());
    setUsed((await navigator.storage?.estimate?.())?.usage ?? null);
  };
  useEffect(() => {
    listCountries().then(
      (listed) => setAll(byName(listed)),
      () => setNote(offline.notSaved),
    );
    void look();
  }, []);
  const country = all.find(({ file }) => file === chosen);
  const save = async () => {
    if (!country) return;
    setNote(offline.saving);
    try {
      await saveCountry(country);
      setNote(offline.saved);
    } catch (error) {
      const full = error instanceof DOMException && error.name === "QuotaExceededError";
      setNote(full ? offline.full : offline.notSaved);
    }
    await look();
  };
  return (
    <>
      <div class="field">
        <label for="offline-country">{offline.region}</label>
        <select
          id="offline-country"
          value={chosen}
          onChange={(e) => setChosen(e.currentTarget.value)}
        >
          <option value="" />
          {all.map((one) => (
            <option key={one.file} value={one.file}>
              {nameOf(one)}
            </option>
          ))}
        </select>
        <p class="hint">{offline.regionHint}</p>
      </div>
      {country && (
        <p>{offline.size(format(country.places), format(country.bytes / MEGABYTE, 1))}</p>
      )}
      <div class="row">
        <button type="button" aria-disabled={!country} onClick={() => void save()}>
          {offline.save}
        </button>
        {all
          .filter(({ file }) => saved.includes(file))
          .map((one) => (
            <button
              type="button"
              key={one.file}
              onClick={() =>
                void removeCountry(one)
                  .then(() => setNote(""))
                  .then(look)
              }
            >
              {offline.remove(nameOf(one))}
            </button>
          ))}
      </div>
      <p class="hint" role="status">
        {note}
      </p>
      {used !== null && <p class="hint">{offline.room(format(used / MEGABYTE, 1))}</p>}
    </>
  );
}
