import { inflateSync } from "node:zlib";

/** What a reader of a PDF that Chromium printed would see of it: sizes of its pages, their letters, what is filled with a pattern. */
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

export function readPdf(file: Buffer): PrintedPdf {
  const objects = objectsOf(file);
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b/.test(head));
  const page_letters = pages.map((page) => lettersOf(page, objects));
  return {
    pages_mm: pages.map(({ head }) => {
      const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(head) ?? [];
      return [Number(width) * POINT_mm, Number(height) * POINT_mm];
    }),
    letters: page_letters.join(""),
    page_letters,
    patterns: pages
      .map((page) => [...contentOf(page, objects).matchAll(/\/P\d+ scn\b/g)].length)
      .reduce((sum, some) => sum + some, 0),
  };
}

interface PdfObject {
  head: string;
  stream: string;
}

function objectsOf(file: Buffer): Map<string, PdfObject> {
  const text = file.toString("latin1");
  const found = new Map<string, PdfObject>();
  for (const { index, 1: number = "", 2: body = "" } of text.matchAll(
    /(?:^|\n)(\d+) 0 obj\n([\s\S]*?)endobj/g,
  )) {
    const opens = body.indexOf("stream\n");
    const head = opens < 0 ? body : body.slice(0, opens);
    const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
    const from = text.indexOf("stream\n", index) + "stream\n".length;
    const packed = Buffer.from(text.slice(from, from + length), "latin1");
    const isText = opens >= 0 && head.includes("FlateDecode") && !head.includes("/Subtype /Image");
    found.set(number, { head, stream: isText ? inflateSync(packed).toString("latin1") : "" });
  }
  return found;
}

function contentOf(page: PdfObject, objects: Map<string, PdfObject>): string {
  return objects.get(/\/Contents (\d+) 0 R/.exec(page.head)?.[1] ?? "")?.stream ?? "";
}

function lettersOf(page: PdfObject, objects: Map<string, PdfObject>): string {
  const at = (reference: string | undefined) => objects.get(reference ?? "");
  const content = contentOf(page, objects);
  const fonts = new Map(
    [...page.head.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = "", number]) => {
      const meanings = at(/\/ToUnicode (\d+) 0 R/.exec(at(number)?.head ?? "")?.[1])?.stream ?? "";
      return [name, meaningsOf(meanings)];
    }),
  );
  let font = new Map<number, string>();
  let letters = "";
  for (const [, name, glyphs] of content.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-F]+)>/gi)) {
    if (name) font = fonts.get(name) ?? new Map();
    for (const [glyph] of (glyphs ?? "").matchAll(/.{4}/g)) {
      letters += font.get(Number.parseInt(glyph, 16)) ?? "\uFFFD";
    }
  }
  return letters.replaceAll(/\s/g, "");
}

/** Which letters a font's glyphs stand for, from its table of ranges and single glyphs. */
function meaningsOf(table: string): Map<number, string> {
  const meanings = new Map<number, string>();
  const hex = (digits: string) => Number.parseInt(digits, 16);
  for (const [, block = ""] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from = "", to = "", first = ""] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      for (let glyph = hex(from); glyph <= hex(to); glyph++) {
        meanings.set(glyph, String.fromCodePoint(hex(first) + glyph - hex(from)));
      }
    }
  }
  for (const [, block = ""] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph = "", letters = ""] of block.matchAll(/<(\w+)> <(\w+)>/g)) {
      const codes = letters.match(/.{4}/g) ?? [];
      meanings.set(hex(glyph), String.fromCharCode(...codes.map(hex)));
    }
  }
  return meanings;
}
