import { useState } from "preact/hooks";
import type { Question } from "../base/question.ts";
import { heaterWords } from "../texts/heater.ts";
import type { Unit } from "../units.ts";
import { later } from "./later.tsx";

const NearTunes = later(() => import("./near-tunes.tsx").then((m) => m.NearTunes));

/** Tunes like an answer, below it: neither they nor their part of the page are fetched before they are unfolded. */
export function NearFolded({ question, unit }: { question: Question; unit: Unit }) {
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={(e) => e.currentTarget.open && setOpened(true)}>
      <summary>{heaterWords.near.title}</summary>
      {opened && <NearTunes question={question} unit={unit} />}
    </details>
  );
}
