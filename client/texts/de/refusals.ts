import type { RefusalWords } from "../en/refusals.ts";

const RELOAD = "Die Seite neu laden und noch einmal versuchen.";

/** What the atlas or the tune's schema refuses, in German. */
export const refusalWords: RefusalWords = {
  statuses: {
    400: `Der Atlas konnte die Anfrage nicht lesen. ${RELOAD}`,
    401: "Der Atlas erkennt das nicht an: Beleg oder Kennwort prüfen.",
    404: "Das hat der Atlas nicht, oder nicht mehr.",
    405: `Der Atlas nimmt das so nicht an. ${RELOAD}`,
    409: `Der Atlas hat inzwischen einen anderen Stand. ${RELOAD}`,
    413: "Das ist mehr, als der Atlas auf einmal annimmt.",
    414: "Das ist länger, als der Atlas annimmt. Kürzer eingeben.",
    415: `Der Atlas nimmt das so nicht an. ${RELOAD}`,
    422: "Der Atlas nimmt einige Angaben nicht an. Bitte prüfen.",
    429: "Beim Atlas kommt gerade zu viel auf einmal an. Nach einer Minute noch einmal versuchen.",
    503: "Der Atlas ist gerade beschäftigt. Nach einigen Sekunden noch einmal versuchen.",
    507: "Der Atlas hat gerade keinen Platz für neue Abstimmungen. Später noch einmal senden; Zurückziehen geht weiterhin.",
  },
  failed:
    "Der Atlas ist an dieser Anfrage gescheitert. Das liegt nicht an dir: später noch einmal versuchen.",
  fields: {
    heat_kW: "Heizungsgröße",
    dose_uL: "Kraftstoff je Takt",
    supply_V: "Bordspannung",
    elevation_m: "Höhe",
    elevation_sd_m: "Unsicherheit der Höhe",
    lat: "Breite",
    lon: "Länge",
    temperature_C: "Temperatur",
    pressure_hPa: "Luftdruck am Ort",
    qnh_hPa: "Luftdruck auf Meereshöhe (QNH)",
    humidity_pct: "Luftfeuchte",
    pump_Hz: "Pumpenfrequenz",
    fan_rpm: "Lüfterdrehzahl",
    co_ppm: "niedrigster CO-Wert",
    co_below_ppm: "kleinster Wert des Messgeräts",
    power: "Leistungsstufe",
    found: "Art der Suche",
    kind: "Art des Messgeräts",
    distance_m: "Abstand des Messgeräts",
    tuned_on: "Monat",
    q: "Ort",
  },
  codes: {
    missing: () => "fehlt.",
    invalid_type: () => "Das lässt sich nicht lesen. Zahl prüfen.",
    too_big: (limit) =>
      limit
        ? `Höchstens ${limit}. Zahl und Einheit prüfen.`
        : "So groß kann der Wert nicht sein. Zahl und Einheit prüfen.",
    too_small: (limit) =>
      limit
        ? `Mindestens ${limit}. Zahl und Einheit prüfen.`
        : "So klein kann der Wert nicht sein. Zahl und Einheit prüfen.",
    not_multiple_of: (limit) => `Nur in Schritten von ${limit || "0,5 kW"}.`,
    invalid_value: () => "Eine der Möglichkeiten aus der Liste wählen.",
    invalid_format: () => "Das lässt sich so nicht lesen. Schreibweise prüfen.",
    unknown_field: () => `Diese Angabe kennt der Atlas nicht. ${RELOAD}`,
  },
  together: {
    lat: "Breite und Länge nur zusammen angeben, oder keine von beiden.",
    qnh_hPa: "Nur einen Luftdruck angeben: am Ort oder auf Meereshöhe.",
    co_ppm:
      "Entweder den CO-Wert angeben oder, wenn das Messgerät nichts zeigt, seinen kleinsten Wert.",
  },
  of: (name, sentence) => `${name}: ${sentence}`,
};
