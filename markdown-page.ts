import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { Marked, type Tokens } from "marked";
import type { Plugin } from "vite";
import { unbroken } from "./client/base/unbroken.ts";

/** A part of a document, under a heading of the first three levels. */
export interface Part {
  id: string;
  html: string;
}

/** What of a document's headings and pictures the page cannot know. */
interface Surroundings {
  /** Added to each heading's level: the page has headings of its own above. */
  below: number;
  /** Text of an SVG file that the document shows. */
  picture: (file: string) => string;
}

/**
 * A Markdown document as parts of a page. What may be wider than the page scrolls and is reached by keyboard; pictures
 * stand in the page itself, so that they come with it. Comments and other HTML of the document are left out.
 */
export function partsOf(document: string, { below, picture }: Surroundings): Part[] {
  let heading = "";
  let scrolling = 0;
  const scrolls = (what: string, inner: string) =>
    `<section class="scrolls" tabindex="0" aria-label="${escaped(`${what} ${++scrolling}: ${heading}`)}">${inner}</section>\n`;
  const marked = new Marked({
    renderer: {
      html: () => "",
      heading({ tokens, depth, text }) {
        heading = text;
        const level = depth + below;
        return `<h${level} id="${idOf(text)}">${this.parser.parseInline(tokens)}</h${level}>\n`;
      },
      code: ({ text }) => scrolls("Formulas", `<pre><code>${escaped(text)}</code></pre>`),
      image: ({ href, text }) =>
        picture(href).replace("<svg ", `<svg role="img" aria-label="${escaped(text)}" `),
      table({ header, rows }) {
        const cells = (row: Tokens.TableCell[], begin: string, end: string) =>
          row.map(({ tokens }) => begin + this.parser.parseInline(tokens) + end).join("");
        const head = `<thead><tr>${cells(header, '<th scope="col">', "</th>")}</tr></thead>`;
        const body = rows.map((row) => `<tr>${cells(row, "<td>", "</td>")}</tr>`).join("\n");
        return scrolls("Table", `<table>${head}<tbody>${body}</tbody></table>`);
      },
    },
  });
  const parts: Tokens.Generic[][] = [];
  for (const token of marked.lexer(document)) {
    if (token.type === "heading" && token.depth <= 3) parts.push([]);
    parts.at(-1)?.push(token);
  }
  return parts.map((tokens) => ({
    id: idOf((tokens[0] as Tokens.Heading).text),
    html: marked.parser(tokens),
  }));
}

/** Lets the page import `document.md?page` as its parts, made when the page is built. */
export function markdownPages(): Plugin {
  return {
    name: "markdown-pages",
    enforce: "pre",
    load(id) {
      if (!id.endsWith(".md?page")) return null;
      const file = id.slice(0, -"?page".length);
      const read = (path: string) => {
        this.addWatchFile(path);
        return readFileSync(path, "utf8");
      };
      const parts = partsOf(unbroken(read(file)), {
        below: 1,
        picture: (href) => read(resolve(dirname(file), href)),
      });
      return `export const parts = ${JSON.stringify(parts)};`;
    },
  };
}

function idOf(heading: string): string {
  return `method-${heading.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-")}`;
}

const MARKS: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

function escaped(text: string): string {
  return text.replaceAll(/[&<>"]/g, (mark) => MARKS[mark] as string);
}
