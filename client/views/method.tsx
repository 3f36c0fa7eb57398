import { m } from "../texts/method.ts";
import { MethodFigures } from "./method-figures.tsx";
import { MethodFormula } from "./method-formula.tsx";
import { MethodFormulas } from "./method-formulas.tsx";

type SectionName = keyof typeof m.sections;

const BEFORE_FIGURES = ["air", "model", "fit", "bands", "aside", "door", "alarms"] as const;
const AFTER_FIGURES = ["limits", "again", "references"] as const;

/** How it is made: formulas, reasons, figures and limits. */
export function Method() {
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="method-title">
        <h2 id="method-title">{m.title}</h2>
        <p>{m.screen}</p>
        <MethodFormula />
        <p>{m.short}</p>
        <MethodFormulas />
      </section>
      {BEFORE_FIGURES.map((name) => (
        <Section key={name} name={name} />
      ))}
      <MethodFigures />
      {AFTER_FIGURES.map((name) => (
        <Section key={name} name={name} />
      ))}
    </div>
  );
}

/** A heading and its paragraphs. */
function Section({ name }: { name: SectionName }) {
  const { title, text } = m.sections[name];
  if (text.length === 0) return null;
  return (
    <section class="sheet" aria-labelledby={`method-${name}`}>
      <h3 id={`method-${name}`}>{title}</h3>
      {text.map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
    </section>
  );
}
