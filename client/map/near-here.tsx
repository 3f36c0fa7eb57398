import { useLayoutEffect, useRef } from "preact/hooks";
import type { Question } from "../base/question.ts";
import { heaterWords } from "../texts/heater.ts";
import { mapWords } from "../texts/map.ts";
import { goToHeading } from "../ui/go-to.ts";
import { later } from "../ui/later.tsx";
import type { Unit } from "../units.ts";

const NearTunes = later(() => import("../ui/near-tunes.tsx").then((m) => m.NearTunes));

interface NearHereProps {
  question: Question;
  unit: Unit;
  onClose: () => void;
}

/** Tunes like the answer that a tap came to, below the map: fetched once they are asked for. */
export function NearHere({ question, unit, onClose }: NearHereProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => goToHeading(heading.current), []);
  return (
    <section class="cell-tunes" aria-labelledby="near-here">
      <h3 id="near-here" ref={heading} tabIndex={-1}>
        {heaterWords.near.title}
      </h3>
      <NearTunes question={question} unit={unit} />
      <button type="button" onClick={onClose}>
        {mapWords.foot.close}
      </button>
    </section>
  );
}

/** Goes to tunes like the answer where they are on the page already: beside the map, or opened below it. */
export function goToNearBeside(): boolean {
  const beside = document.querySelector<HTMLElement>("#near-tunes, #near-here");
  beside?.scrollIntoView({ block: "start" });
  beside?.focus({ preventScroll: true });
  return beside !== null;
}
