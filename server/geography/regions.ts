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

/** Name of a state or province by its country's code and its own; null elsewhere, where the data give numbers only. */
export function regionOf(country: string, code: string): Region | null {
  return regions.get(`${country}.${code}`) ?? null;
}

const countryNames = new Intl.DisplayNames("en", { type: "region" });

/** English name of a country by its ISO 3166-1 code. */
export function countryName(code: string): string | null {
  return /^[A-Z]{2}$/.test(code) ? (countryNames.of(code) ?? code) : null;
}
