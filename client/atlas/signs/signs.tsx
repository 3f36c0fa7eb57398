import { THEMES, type Theme } from "../../base/theme.ts";
import { styleWords as words } from "../../texts/style.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { contrast, PAIRS } from "./contrast.ts";
import { StyleCharts, StyleControls } from "./sign-parts.tsx";
import { themes } from "./themes.ts";

/** The parts every view is made of: letters, colours with their contrast, controls, charts. */
export function DataStyle() {
  const colours = themes();
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="style-title">
        <h2 id="style-title">{words.title}</h2>
        <p>{words.intro}</p>
      </section>
      <section class="sheet" aria-labelledby="style-type">
        <h2 id="style-type">{words.type}</h2>
        <p class="verdict">{words.heading}</p>
        <h3>{words.subheading}</h3>
        <p>{words.text}</p>
        <p class="note">{words.note}</p>
        <p>
          {words.figures}
          <br />
          {format(1111.1, 2)}
          <br />
          {format(4808.5, 2)}
        </p>
      </section>
      <section class="sheet" aria-labelledby="style-colours">
        <h2 id="style-colours">{words.colours}</h2>
        <p class="note">{words.coloursNote}</p>
        <Contrasts colours={colours} />
        <h3 id="style-tints">{words.tints}</h3>
        <Tints colours={colours} />
      </section>
      <StyleControls />
      <StyleCharts />
    </div>
  );
}

interface Colours {
  colours: Record<Theme, Map<string, string>>;
}

function Contrasts({ colours }: Colours) {
  return (
    <FiguresTable
      label={words.table}
      columns={[
        words.columns.drawn,
        words.columns.on,
        words.columns.least,
        ...THEMES.map((theme) => words.themes[theme]),
      ]}
      class="contrasts"
    >
      {PAIRS.map(([drawn, on, least]) => (
        <tr key={`${drawn} ${on}`}>
          <td>
            <code>{drawn}</code>
          </td>
          <td>
            <code>{on}</code>
          </td>
          <td>{format(least, 1)}</td>
          {THEMES.map((theme) => {
            const ratio = contrast(colours[theme].get(drawn) ?? "", colours[theme].get(on) ?? "");
            return (
              <td key={theme} data-contrast={ratio}>
                {format(ratio, 1)}, {ratio >= least ? words.enough : words.short}
              </td>
            );
          })}
        </tr>
      ))}
    </FiguresTable>
  );
}

function Tints({ colours }: Colours) {
  return (
    <ul class="tints" aria-labelledby="style-tints">
      {[...colours.light.keys()].map((name) => (
        <li key={name}>
          {THEMES.map((theme) => (
            <svg key={theme} viewBox="0 0 40 24" aria-hidden="true">
              <rect width="40" height="24" fill={colours[theme].get(name)} />
            </svg>
          ))}
          <code>{name}</code>
        </li>
      ))}
    </ul>
  );
}
