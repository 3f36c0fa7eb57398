import type { linkWords as english } from "../en/link.ts";

export const linkWords: typeof english = {
  send: "Diese Antwort senden",
  copy: "Link kopieren",
  copied: "Der Link ist kopiert.",
  copyByHand: "Von hier kopieren:",
  label: "Link mit dieser Antwort",
  holds:
    "Er enthält Höhe, Nacht, Heizung und Einheiten, und den Ort, wenn du ihn beim Namen gewählt hast. An den Atlas geht er nicht; wer ihn bekommt, kann ihn lesen.",
  ownTunes: (n) =>
    n === 1
      ? "Meine eigene Abstimmung in den Link aufnehmen."
      : `Meine ${n} eigenen Abstimmungen in den Link aufnehmen.`,
  withoutOwn: "Ohne sie zeigt er die mittlere Antwort für eine solche Heizung.",
  opened: "Aus einem Link geöffnet.",
  aside: "Deine eigene Heizung und deine eigene Frage bleiben, wie sie waren.",
  take: "Für meine Heizung fragen",
  leave: "Zurück zu meiner eigenen",
  refused: (label, given, instead) =>
    `${label}: Im Link steht „${given}“, das kann nicht sein. ${instead}`,
  instead: (value) => `Es gilt ${value}.`,
  usual: "Es gilt der übliche Wert.",
  yourUnits: "Es gelten deine eigenen Einheiten.",
  leftOut: "Der Wert bleibt weg.",
  labels: {
    lat: "Breite",
    lon: "Länge",
    elevation_sd_m: "Unsicherheit der Höhe",
    elevation_source: "Herkunft der Höhe",
    step_Hz: "Kleinster Schritt der Pumpenfrequenz, Hz",
    step_rpm: "Kleinster Schritt der Lüfterdrehzahl, U/min",
    end: "Kleinste oder größte Leistung",
    units: "Einheiten",
    own: "Eigene Abstimmungen",
  },
};
