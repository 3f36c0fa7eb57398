import { getDocumentProxy, getResolvedPDFJS } from "unpdf";

/** What a reader of a printed PDF sees of it: sizes of its pages, their letters, what is filled with a pattern. */
export interface PrintedPdf {
  /** Width and height of each page, mm. */
  pages_mm: [number, number][];
  /** All letters in the order drawn, spaces left out: a printer's spaces are gaps. */
  letters: string;
  /** The same of each page. */
  page_letters: string[];
  /** How many shapes are filled with a pattern. */
  patterns: number;
}

const POINT_mm = 25.4 / 72;

export async function readPdf(file: Uint8Array): Promise<PrintedPdf> {
  const { OPS } = await getResolvedPDFJS();
  const pdf = await getDocumentProxy(new Uint8Array(file));
  const printed: PrintedPdf = { pages_mm: [], letters: "", page_letters: [], patterns: 0 };
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const { width, height } = page.getViewport({ scale: POINT_mm });
    printed.pages_mm.push([width, height]);
    const { items } = await page.getTextContent({ disableNormalization: true });
    const letters = items.map((item) => ("str" in item ? item.str : "")).join("");
    printed.page_letters.push(letters.replaceAll(/\s/g, ""));
    const { fnArray, argsArray } = await page.getOperatorList();
    printed.patterns += fnArray.filter(
      (operator, i) => operator === OPS.setFillColorN && argsArray[i][0] === "TilingPattern",
    ).length;
  }
  printed.letters = printed.page_letters.join("");
  await pdf.destroy();
  return printed;
}
