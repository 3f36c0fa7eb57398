import type { ComponentChildren } from "preact";
import { m } from "../texts/en-method.ts";
import { MethodFormula } from "./method-formula.tsx";

type SectionName = keyof typeof m.sections;

/** How it is made, section by section. */
export function Method() {
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="method-title">
        <h2 id="method-title">{m.title}</h2>
        <MethodFormula />
      </section>
      <Air />
      <Model />
      <Fit />
      <Bands />
      <Door />
      <Limits />
      <Again />
    </div>
  );
}

const Air = () => <Section name="air" />;
const Model = () => <Section name="model" />;
const Fit = () => <Section name="fit" />;
const Bands = () => <Section name="bands" />;
const Door = () => <Section name="door" />;
const Limits = () => <Section name="limits" />;
const Again = () => <Section name="again" />;

/** A heading, its paragraphs, and what a section has beside them. */
function Section({ name, children }: { name: SectionName; children?: ComponentChildren }) {
  const { title, text } = m.sections[name];
  if (text.length === 0 && !children) return null;
  return (
    <section class="sheet" aria-labelledby={`method-${name}`}>
      <h3 id={`method-${name}`}>{title}</h3>
      {text.map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
      {children}
    </section>
  );
}
