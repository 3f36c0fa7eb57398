/** Names of the states and provinces whose codes the place data give; from ISO 3166-2:US and the data's own Canadian numbers. */
const UNITED_STATES =
  "AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,WV West Virginia,WI Wisconsin,WY Wyoming";
const CANADA =
  "01 AB Alberta,02 BC British Columbia,03 MB Manitoba,04 NB New Brunswick,05 NL Newfoundland and Labrador,07 NS Nova Scotia,08 ON Ontario,09 PE Prince Edward Island,10 QC Quebec,11 SK Saskatchewan,12 YT Yukon,13 NT Northwest Territories,14 NU Nunavut";

/** A state or province: its name and the short name its people write. */
export interface Region {
  name: string;
  short: string;
}

/**
 * Names that people write behind a place's, by the codes of the place data, where those give no name to show. From memory;
 * a test holds each to a city that lies there.
 */
const WRITTEN: Record<string, string> = {
  AT: "01 Burgenland,02 Kärnten|Carinthia,03 Niederösterreich|Lower Austria,04 Oberösterreich|Upper Austria,05 Salzburg,06 Steiermark|Styria,07 Tirol|Tyrol,08 Vorarlberg,09 Wien",
  AU: "01 Australian Capital Territory|ACT,02 New South Wales|NSW,03 Northern Territory,04 Queensland|QLD,05 South Australia,06 Tasmania|TAS,07 Victoria|VIC,08 Western Australia",
  CH: "AG Aargau,BE Bern|Berne,GL Glarus,GR Graubünden|Grisons|Grigioni,LU Luzern|Lucerne,NW Nidwalden,OW Obwalden,SG St. Gallen,SZ Schwyz,TI Ticino|Tessin,UR Uri,VD Vaud|Waadt,VS Wallis|Valais|Vallese,ZH Zürich",
  CN: "14 Tibet|Xizang,06 Qinghai,13 Xinjiang,32 Sichuan,29 Yunnan",
  DE: "01 Baden-Württemberg,02 Bayern|Bavaria,05 Hessen|Hesse,06 Niedersachsen|Lower Saxony,07 Nordrhein-Westfalen|NRW,08 Rheinland-Pfalz,10 Schleswig-Holstein,11 Brandenburg,13 Sachsen|Saxony,14 Sachsen-Anhalt,15 Thüringen|Thuringia",
  IT: "01 Abruzzo,06 Friuli-Venezia Giulia|Friuli,08 Liguria,09 Lombardia|Lombardy,12 Piemonte|Piedmont,16 Toscana|Tuscany,17 Trentino-Alto Adige|Südtirol|South Tyrol|Alto Adige|Trentino,19 Valle d'Aosta|Aosta Valley,20 Veneto",
};

const regions = new Map<string, Region>([
  ...UNITED_STATES.split(",").map((row): [string, Region] => {
    const [short = "", ...name] = row.split(" ");
    return [`US.${short}`, { short, name: name.join(" ") }];
  }),
  ...CANADA.split(",").map((row): [string, Region] => {
    const [code = "", short = "", ...name] = row.split(" ");
    return [`CA.${code}`, { short, name: name.join(" ") }];
  }),
]);
const writtenNames = new Map<string, string[]>(
  Object.entries(WRITTEN).flatMap(([country, rows]) =>
    rows.split(",").map((row): [string, string[]] => {
      const [code = "", ...names] = row.split(" ");
      return [`${country}.${code}`, names.join(" ").split("|")];
    }),
  ),
);

/** Name of a state or province by its country's code and its own; null elsewhere, where the data give numbers only. */
export function regionOf(country: string, code: string): Region | null {
  return regions.get(`${country}.${code}`) ?? null;
}

/** A state or province by the short name its people write; where they write none, by its name. */
export function regionNamed(country: string, named: string): Region | null {
  if (named === "") return null;
  const found = [...regions].find(([key, { short }]) => key.startsWith(country) && short === named);
  return found?.[1] ?? { name: named, short: country };
}

/** Names that people write for a region that has none to show. */
export function writtenNamesOf(country: string, code: string): readonly string[] {
  return writtenNames.get(`${country}.${code}`) ?? [];
}
