import type { ScenarioTitles } from "../en/scenarios.ts";

const clean = (owners: string) => `${owners} Besitzer, keine Fehler`;
const drawn = (owners: string) => `${clean(owners)}, wahre Werte aus der Physik gezogen`;
const slips = (pct: string) =>
  `${pct} % der Abstimmungen: Fuß, Komma, das Halbe oder Doppelte, Unsinn`;
const feet = (pct: string) => `${pct} % der Abstimmungen: Höhe in Fuß als Meter angegeben`;
const spread = (pct: string, times: string) =>
  `${pct} % gefälschte Besitzer, auf hohe Orte verteilt, das ${times}-Fache`;
const careful = (owners: string) =>
  `${owners} sorgfältige Besitzer mit je einer Heizung; ein Viertel nennt keine Temperatur`;
const feetTyped = (pct: string) =>
  `Von 200 Besitzern tippen ${pct} % die Höhe in Fuß ein, wo Meter gefragt sind`;
const copies = (pct: string, before: string) =>
  `Nach ${before} ehrlichen Besitzern kommen 300 weitere; ${pct} % von ihnen stellen ein, was der Atlas vorschlägt, oder gehen den halben Weg dorthin`;

/** What the study's scenarios are called, in German. */
export const scenarioTitles: ScenarioTitles = {
  "clean-3": clean("3"),
  "clean-8": clean("8"),
  "clean-50": clean("50"),
  "clean-200": clean("200"),
  "clean-1000": clean("1.000"),
  "clean-drawn-3": drawn("3"),
  "clean-drawn-8": drawn("8"),
  "clean-drawn-30": drawn("30"),
  "clean-drawn-200": drawn("200"),
  "slips-10pct": slips("10"),
  "slips-20pct": slips("20"),
  "slips-30pct": slips("30"),
  "slips-40pct": slips("40"),
  "slip-feet-10pct": feet("10"),
  "slip-feet-20pct": feet("20"),
  "slip-feet-30pct": feet("30"),
  "slip-feet-40pct": feet("40"),
  "slip-ends-swapped-20pct": "20 % der Abstimmungen: kleinste und größte Leistung vertauscht",
  "slip-fahrenheit-20pct": "20 % der Abstimmungen: eine Temperatur in °F als °C angegeben",
  "lazy-40pct": "40 % der Besitzer stimmen nie nach",
  "flood-70pct": "Ein Besitzer sendet 70 % aller Abstimmungen, das 1,6-Fache auf 4.000 m",
  "fakes-one-place-1.6x-40pct": "40 % gefälschte Besitzer an einem Ort auf 4.000 m, das 1,6-Fache",
  "fakes-spread-1.25x-10pct": spread("10", "1,25"),
  "fakes-spread-1.25x-20pct": spread("20", "1,25"),
  "fakes-spread-1.25x-30pct": spread("30", "1,25"),
  "fakes-spread-1.25x-40pct": spread("40", "1,25"),
  "fakes-spread-1.6x-40pct": spread("40", "1,6"),
  "fakes-spread-1.1x-20pct": spread("20", "1,1"),
  "fakes-everywhere-1.35x-20pct": "20 % gefälschte Besitzer auf allen Höhen, das 1,35-Fache",
  "fakes-sly-two-high-20pct": `${spread("20", "1,25")}, mit je zwei Abstimmungen`,
  "fakes-sly-true-and-false-20pct": `${spread("20", "1,25")}, mit je einer wahren Abstimmung am Meer`,
  "spread-heavy-tails": "Schwere Ränder: Students t mit 3 Freiheitsgraden",
  "spread-unequal-care": "Die Hälfte der Heizungen streut dreimal so weit wie die anderen",
  "air-no-temperature": "Die Hälfte der Temperaturen fehlt",
  "air-co-stated": "Die Hälfte der Besitzer hört bei 30 bis 150 ppm auf und sagt es",
  "air-co-unstated": "Die Hälfte der Besitzer hört bei 30 bis 150 ppm auf und sagt es nicht",
  "pooling-alike-3": "Eine Heizungsgröße mit 3 Besitzern neben drei ähnlichen mit je 60",
  "pooling-apart-30":
    "Eine Heizungsgröße mit 30 Besitzern, anders als drei mit je 60, die übereinstimmen",
  "trade-clean-8": careful("8"),
  "trade-clean-30": careful("30"),
  "trade-clean-200": careful("200"),
  "trade-clean-1000": careful("1.000"),
  "trade-clubs":
    "Zehn Klubs von 12 stimmen bei je einem Treffen ab, mit Gewohnheiten, die sich um 6 % unterscheiden; 80 Besitzer stimmen allein ab",
  "trade-no-temperature-cold":
    "Niemand nennt eine Temperatur, und die Nächte sind 12 K kälter als üblich",
  "trade-stopped-early-30":
    "30 % der Abstimmungen hören auf, wenn es gut genug ist oder CO zum ersten Mal wieder steigt; sechs von zehn Besitzern sagen es",
  "trade-doses-two-sizes-stated-100":
    "Pumpen zweier Größen; 100 % der Besitzer nennen den Kraftstoff je Takt",
  "trade-doses-two-sizes-stated-0":
    "Pumpen zweier Größen; 0 % der Besitzer nennen den Kraftstoff je Takt",
  "trade-feet-as-metres-20": feetTyped("20"),
  "trade-feet-as-metres-40": feetTyped("40"),
  "trade-ends-swapped-20":
    "Von 200 Besitzern vertauschen 20 % in einer Abstimmung kleinste und größte Leistung",
  "trade-never-retuned-40":
    "Von 200 Besitzern stimmen 40 % einmal ab und melden überall dieselbe Einstellung",
  "trade-lies-everywhere-20":
    "Von 200 Besitzern melden 20 % überall das 1,25-Fache der wahren Pumpenfrequenz",
  "trade-lies-lean-20":
    "Von 200 Besitzern melden 20 % überall das 0,8-Fache der wahren Pumpenfrequenz",
  "trade-lies-high-40":
    "Von 200 Besitzern melden 40 % das 1,25-Fache der wahren Pumpenfrequenz und senden nur von hoch oben",
  "trade-lies-sea-true-high-false-20":
    "Von 200 Besitzern melden 20 % hoch oben das 1,4-Fache der wahren Pumpenfrequenz und am Meer die Wahrheit",
  "trade-copies-50-from-3": copies("50", "3"),
  "trade-copies-50-from-30": copies("50", "30"),
  "trade-copies-50-from-300": copies("50", "300"),
  "trade-copies-80-from-30": copies("80", "30"),
  "trade-as-people-are":
    "Von allem ein wenig: 10 % machen irgendeinen Fehler, 3 % lügen, 15 % der Abstimmungen hören zu früh auf, zwei Klubs",
};
