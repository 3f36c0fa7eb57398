import type { Page } from "playwright-core";

/** Text of a drawing that reaches beyond it, and titles of axes that are wider than their place: a reader sees a part. */
export function cutTexts(page: Page): Promise<string[]> {
  return page.locator("main svg text, main .axis-title").evaluateAll((texts) =>
    texts.flatMap((text) => {
      const box = text.getBoundingClientRect();
      const around = text.closest("svg, .axis-title") as Element;
      const edge = around.getBoundingClientRect();
      if (box.width === 0 || edge.width === 0) return [];
      if (text !== around && getComputedStyle(around).overflow === "visible") return [];
      // Half a pixel is how letters are smoothed.
      const cut =
        text === around
          ? text.scrollWidth > text.clientWidth
          : box.left < edge.left - 0.5 ||
            box.right > edge.right + 0.5 ||
            box.top < edge.top - 0.5 ||
            box.bottom > edge.bottom + 0.5;
      return cut ? [`${around.getAttribute("class")}: ${text.textContent}`] : [];
    }),
  );
}

/** Text of a drawing that lies over other text of it. */
export function overlappingTexts(page: Page): Promise<string[]> {
  return page.locator("main :is(svg[role=img], .profile .drawing)").evaluateAll((drawings) =>
    drawings.flatMap((drawing) => {
      const texts = [...drawing.querySelectorAll("text")].map((text) => ({
        text: text.textContent ?? "",
        box: text.getBoundingClientRect(),
      }));
      return texts.flatMap(({ text, box: a }, i) =>
        texts
          .slice(i + 1)
          .filter(
            ({ box: b }) =>
              a.left < b.right - 1 &&
              b.left < a.right - 1 &&
              a.top < b.bottom - 3 &&
              b.top < a.bottom - 3,
          )
          .map((other) => `${drawing.getAttribute("class")}: ${text} over ${other.text}`),
      );
    }),
  );
}

/** Heads of tables by their height, px. */
export function tallHeads(page: Page, most_px: number): Promise<string[]> {
  return page
    .locator("main thead")
    .evaluateAll(
      (heads, most) =>
        heads
          .filter((head) => head.getBoundingClientRect().height > most)
          .map(
            (head) => `${Math.round(head.getBoundingClientRect().height)} px: ${head.textContent}`,
          ),
      most_px,
    );
}

/** Tables wider than their place that do not scroll in it by keyboard, or do not show that there is more. */
export function cutTables(page: Page): Promise<string[]> {
  return page.locator("main table").evaluateAll((tables) =>
    tables.flatMap((table) => {
      const place = table.parentElement as HTMLElement;
      if (table.getBoundingClientRect().width === 0 || place.scrollWidth <= place.clientWidth)
        return [];
      const hinted = getComputedStyle(place).backgroundImage.includes("gradient");
      if (place.tabIndex === 0 && place.getAttribute("aria-label") && hinted) return [];
      return [`${place.className}: ${table.textContent?.slice(0, 60)}`];
    }),
  );
}

/** Choices of a chart whose chosen option is wider than the field that shows it. */
export function cutChoices(page: Page): Promise<string[]> {
  return page.locator("main .choices select").evaluateAll((selects) => {
    const pencil = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
    /** The arrow that opens it. */
    const ARROW_px = 16;
    return (selects as HTMLSelectElement[]).flatMap((select) => {
      const { font, paddingInlineStart, paddingInlineEnd } = getComputedStyle(select);
      pencil.font = font;
      const text = select.selectedOptions[0]?.textContent ?? "";
      const room =
        select.clientWidth -
        Number.parseFloat(paddingInlineStart) -
        Number.parseFloat(paddingInlineEnd) -
        ARROW_px;
      return pencil.measureText(text).width > room ? [`${text}: ${Math.round(room)} px`] : [];
    });
  });
}

/** Figures of drawings, tables and formulas with another language's decimal mark. Three digits after it: a thousand. */
export function foreignDecimals(page: Page, foreign: "." | ","): Promise<string[]> {
  return page.locator("main :is(svg text, td, tbody th, mn, .rate output)").evaluateAll(
    (figures, mark) =>
      figures
        .filter(
          (figure) =>
            !figure.closest("code, [lang=en]:not(html)") && !figure.querySelector("[lang=en]"),
        )
        .map((figure) => figure.textContent ?? "")
        .filter((text) => new RegExp(`\\d\\${mark}(\\d{1,2}|\\d{4,})(?!\\d)`).test(text)),
    foreign,
  );
}
