import { readdirSync, readFileSync } from "node:fs";
import { parseSync, Visitor } from "oxc-parser";
import { describe, expect, test } from "vitest";
import { unbroken } from "../../client/base/unbroken.ts";
import { LANGUAGES, type Language } from "../../client/language.ts";

/** Every text of a language as the page has it, all branches of it; "…" stands for what is put in. */
function textsOf(language: Language): [where: string, text: string][] {
  return readdirSync(`client/texts/${language}`).flatMap((section) => {
    const file = `client/texts/${language}/${section}`;
    const found: [string, string][] = [];
    const { program } = parseSync(file, unbroken(readFileSync(file, "utf8")));
    const keys = new Set<unknown>();
    new Visitor({
      ImportDeclaration: ({ source }) => void keys.add(source),
      ImportExpression: ({ source }) => void keys.add(source),
      TSImportType: ({ source }) => void keys.add(source),
      Property: ({ key }) => void keys.add(key),
      Literal(node) {
        if (typeof node.value === "string" && !keys.has(node)) found.push([section, node.value]);
      },
      TemplateLiteral({ quasis }) {
        found.push([section, quasis.map(({ value }) => value.cooked ?? "").join("…")]);
      },
    }).visit(program);
    return found;
  });
}

const TEXTS = Object.fromEntries(LANGUAGES.map((language) => [language, textsOf(language)]));
const OTHERS = LANGUAGES.filter((language) => language !== "en");

/** Which texts of a language a pattern is found in. */
const found = (language: Language, pattern: RegExp) =>
  (TEXTS[language] ?? []).filter(([, text]) => pattern.test(text)).map((each) => each.join(": "));

/** What nobody would say, or says something else than is meant; why, and what is said instead. */
const NEVER: Record<Language, [pattern: RegExp, why: string][]> = {
  en: [
    [/\b(low|high) end\b/i, "which end? lowest power, highest power"],
    [/\bheat class/i, "nobody's word: heater size"],
    [/\bstart tune/i, "starting settings"],
    [/\bdoses?\b/i, "fuel per pulse"],
    [/\bcontributor/i, "owner"],
    [/\bfinal CO\b/i, "lowest CO reading"],
    [/\bwindow towards|the window\b/i, "limits"],
    [/\bnought\b|\bmend|\bthereby\b|\bseldom\b/i, "archaic: 0, correct, so, rarely"],
    [/\bat no elevation/i, "nothing is there: doesn't occur at this temperature"],
    [/stand together|lay hands|hands are laid|at the door|like height does/i, "riddles"],
    [/heater (burns|is burning|on fire)/i, "it is not on fire: the heater runs, the flame burns"],
  ],
  de: [
    [
      /(Heizung|\bSie) brennt/,
      "heißt, dass sie in Flammen steht: Die Heizung läuft, die Flamme brennt",
    ],
    [/\b([Uu]nter|[Oo]ber)e[nrs]? Ende/, "wovon? kleinste Leistung, größte Leistung"],
    [/auf keiner Höhe/, "da ist nichts: kommt bei dieser Temperatur nicht vor"],
    [/klasse/i, "sagt niemand: Heizungsgröße"],
    [/Start(abstimmung|einstellung)/, "Startwerte"],
    [/Dosis|Pumpenhub/, "Kraftstoff je Takt"],
    [/Brennstoff/, "Kraftstoff"],
    [/Pumpenrate/, "Pumpenfrequenz"],
    [/\bAnpassung/, "klingt nach Umbau: Auswertung"],
    [/\bB(and|änder|ändern)\b/, "Spanne"],
    [/Beitragend/, "Besitzer"],
    [/Auspuff/, "gehört zum Fahrzeug: Abgasrohr"],
    [/Warner\b|Raummelder|Kohlenmonoxidmelder/, "ein Wort: CO-Melder"],
    [
      /zugelassene[nrs]? (CO|Kohlenmonoxid)|geprüfte[nrs]? (CO|Kohlenmonoxid)/,
      "ein Wort: zertifiziert",
    ],
    [/Kabine/, "Hütte"],
    [/\b(jeder|letzte[nr]?) Druck\b|auf Druck\b/, "Eingabe"],
    [/\bKarte (für|drucken|drucke)/, "neben der Landkarte: Merkblatt"],
    [/aufbewahr/, "speichern"],
    [/Ablesung|Anzeige(grenze|schwelle)/, "Messwert; kleinster Wert, den es anzeigt"],
    [/Fenster nach|des Fensters/, "Grenzen"],
    [/\bHalte?s?\b/, "Stopp"],
    [/Versorgungsspannung/, "Bordspannung"],
    [/\bLüften\b|\bLüfte\b/, "Luft hat keine Mehrzahl: Luftdichten"],
  ],
  es: [
    [/calefactor (arde|se quema|está ardiendo)|^Arde/, "está en llamas: está en marcha; hay llama"],
    [/a ninguna altitud/, "ahí no hay nada: no se da a esta temperatura"],
    [/estufa/i, "calefactor"],
    [/extremos? (bajo|alto)/i, "¿de qué? potencia mínima, potencia máxima"],
    [/\bclases?\b/i, "tamaño"],
    [/ajustes? de partida/i, "ajustes iniciales"],
    [/\bdosis\b/i, "combustible por pulso"],
    [/ajuste estadístico/i, "se confunde con un ajuste: cálculo"],
    [/\bbandas?\b/i, "intervalo"],
    [/participante|colaborador/i, "propietario"],
    [/\btienda\b(?! de campaña)/i, "es un comercio: tienda de campaña"],
    [/\bcabina/i, "cabaña"],
    [
      /alarmas? (de (CO|monóxido[^.]*?) )?(aparte|certificada|muda|en marcha)/i,
      "el aparato es un detector",
    ],
    [/\bfij(e|ar|ada|ado)\b/i, "pon, ajusta"],
    [/\bpulsación/i, "lo último"],
    [/\bdiario\b/i, "es un periódico: bitácora"],
    [/\btarjeta/i, "ficha"],
    [/\baltura\b/i, "altitud"],
    [/\baparato/i, "dispositivo"],
    [/\baires\b/i, "el aire no tiene plural: densidades del aire"],
    [
      /\bfíese\b|\bajuste (al aire libre|de nuevo)|\buse (el|la|otra|las|los)\b/i,
      "tú: fíate, ajusta, usa",
    ],
  ],
};

describe.each(LANGUAGES)("%s", (language) => {
  test("its texts are read at all", () => {
    expect(TEXTS[language]?.length).toBeGreaterThan(700);
  });

  test("nothing is called what it is not", () => {
    const wrong = NEVER[language].flatMap(([pattern, why]) =>
      found(language, pattern).map((text) => `${text} (${why})`),
    );
    expect(wrong).toEqual([]);
  });

  test("quotation marks are the language's own", () => {
    const foreign = { en: /["„«»]|(^|\s)'/, de: /["”«»']/, es: /["“”„']/ };
    expect(found(language, foreign[language])).toEqual([]);
  });

  test("decimals are written in the language's way, and a unit stands apart from its figure", () => {
    // Versions and licences have points in every language.
    const plain = (TEXTS[language] ?? []).map(
      ([section, text]) =>
        [section, text.replace(/(CC0|BY|WCAG|OpenAPI|npm run \S+|GeoJSON) ?[\d.]*/g, "")] as const,
    );
    const foreign = { en: /\d,\d(?!\d\d)/, de: /\d\.\d(?!\d\d)/, es: /\d\.\d/ };
    for (const pattern of [foreign[language], /\d(%|°C|Hz|ppm|kW|rpm|µL|km²)/]) {
      expect(plain.filter(([, text]) => pattern.test(text)).map((each) => each.join(": "))).toEqual(
        [],
      );
    }
  });
});

/**
 * A figure, or what will be one, with an ordinary space before what looks like a unit: a sign, a fraction or a power, one or
 * two letters with a capital among them, or small letters that are no word of the three languages.
 */
const PARTED =
  /[\d…] (?=[%‰°µΩ]|[\p{L}/]+[²³]|\p{L}+\/\p{L}|(?:\p{L}?\p{Lu}|\p{Lu}\p{L}|[hk]P?\p{Lu}\p{L}|inHg|[kcm]?m|ft|s|h|min|rpm|pp[mb])(?![\p{L}\d'’]))/u;

test.each(LANGUAGES)("no line ends between a figure and its unit: %s", (language) => {
  expect(found(language, /[\d…]\u00a0/).length).toBeGreaterThan(100);
  expect(found(language, PARTED)).toEqual([]);
});

test("figures and units are kept together in markup and templates, and nothing else is", () => {
  for (const [written, kept] of [
    ["{rate} Hz, 4.500 U/min", "{rate}_Hz, 4.500_U/min"],
    ["<output>{rate}</output> Hz", "<output>{rate}</output>_Hz"],
    ["−20 °C, 16 % denser, 1.2 kg/m³, 250 km²", "−20_°C, 16_% denser, 1.2_kg/m³, 250_km²"],
    ["8 in 10, 3 minutes, {all} my", "8 in 10, 3 minutes, {all} my"],
  ] as const) {
    expect(unbroken(written)).toBe(kept.replaceAll("_", "\u00a0"));
  }
});

test.each(OTHERS)("no English word is left in %s", (language) => {
  const ENGLISH =
    /\b(the|and|of|is|are|with|from|this|that|your|which|when|its|have|only|each|what|there|into|than|but|will|been|they|their|you)\b/i;
  expect(found(language, ENGLISH)).toEqual([]);
});

test("German says du: no formal address, which is told by its capital within a sentence", () => {
  expect(found("de", /[\p{Ll}\d%,;…)] (Sie|Ihnen|Ihr(e[mnrs]?)?)\b/u)).toEqual([]);
  expect(found("de", /(^|[.:!?] )\p{Lu}\p{Ll}+e?n Sie\b/u)).toEqual([]);
});

test("Spanish says tú: no usted, and no request in its form", () => {
  expect(found("es", /\busted(es)?\b/i)).toEqual([]);
  const FORMAL = [
    "abra|añada|anote|apague|aumente|baje|borre|busque|cambie|coloque|compártalo|compruebe|confirme|considere",
    "copie|cópielo|corrija|deje|dígalo|elija|empiece|encienda|escriba|escríbala|escríbalo|espere|exporte|guarde|guárdela",
    "guárdelos|haga|indique|inténtelo|lea|libere|llame|llene|llénelo|márquelo|marque|mire|mueva|permita|pida|ponga|pulse",
    "quite|recargue|reposte|revise|revíselas|señale|siga|suba|tenga|tome|traiga|vaya|vigile|vuelva",
  ].join("|");
  // At the beginning of a sentence or of one of its parts: within it some of them are other forms.
  const text = new RegExp(`(^|[.:;?!] |, (y )?|\\by )(no )?(${FORMAL})\\b`, "iu");
  expect(found("es", text)).toEqual([]);
});

test("Spanish questions and exclamations are opened as they are closed", () => {
  const count = (text: string, mark: string) => text.split(mark).length;
  const open = (TEXTS.es ?? []).filter(
    ([, text]) => count(text, "?") !== count(text, "¿") || count(text, "!") !== count(text, "¡"),
  );
  expect(open).toEqual([]);
});

test("what is put into a sentence is in it in every language", async () => {
  const MARKS = [11, 23, 37, 41, 53, 67];
  /** Which of a sentence's blanks are seen in it, filled with texts or else with numbers. */
  const seen = (sentence: (...all: never[]) => unknown): string => {
    for (const marks of [MARKS.map((mark) => `⟦${mark}⟧`), MARKS]) {
      try {
        const said = JSON.stringify(sentence(...(marks as never[])));
        if (said && !said.includes("NaN"))
          return MARKS.filter((_, i) => said.includes(String(marks[i]))).join(" ");
      } catch {
        // It wants numbers, or something else altogether.
      }
    }
    return "";
  };
  const walk = (value: unknown, path: string, into: Map<string, string>) => {
    if (typeof value === "function") into.set(path, seen(value as never));
    else if (typeof value === "object" && value !== null)
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`, into);
  };
  let blanks = 0;
  const inAll = readdirSync("client/texts/en").filter(
    (name) => !/^(reasons|refusals|scenarios)/.test(name),
  );
  for (const section of inAll) {
    const [english, ...others] = await Promise.all(
      ["en", ...OTHERS].map(async (language) => {
        const into = new Map<string, string>();
        walk(await import(`../../client/texts/${language}/${section}`), section, into);
        return into;
      }),
    );
    for (const other of others)
      expect(Object.fromEntries(other)).toEqual(Object.fromEntries(english ?? []));
    blanks += [...(english?.values() ?? [])].filter((marks) => marks !== "").length;
  }
  expect(blanks).toBeGreaterThan(200);
});

test("the list of terms for the next engineer is what the page says", () => {
  const page = readFileSync("DEVELOPERS.md", "utf8");
  const table = /\| in code \| English \| German \| Spanish \|\n\|[ |-]+\n((?:\|.*\n)+)/.exec(
    page,
  )?.[1];
  const rows = (table ?? "")
    .trim()
    .split("\n")
    .map((row) => row.split("|").slice(2, -1));
  expect(rows.length).toBeGreaterThan(15);
  for (const row of rows) {
    for (const [i, language] of LANGUAGES.entries()) {
      for (const term of (row[i] ?? "").split(/[,;]/).map((each) => each.trim())) {
        const said = TEXTS[language]?.some(([, text]) =>
          text.toLowerCase().includes(term.toLowerCase()),
        );
        expect(said, `${language}: ${term}`).toBe(true);
      }
    }
  }
});
