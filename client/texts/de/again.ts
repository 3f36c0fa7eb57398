/** Fitting the open data again in the browser, in German. */
export const again: typeof import("../en/again.ts").again = {
  title: "Hier nachrechnen",
  intro:
    "Den veröffentlichten Zahlen muss niemand glauben: Dieser Browser kann alle angenommenen Abstimmungen laden und nach demselben Verfahren selbst rechnen. Jede Zahl muss dann bis zur letzten Stelle dieselbe sein.",
  button: "Hier nachrechnen",
  working: "Die Abstimmungen werden geladen …",
  fitting: (done: number, of: number) =>
    `Größen und Leistungen werden ausgewertet: ${done} von ${of} fertig.`,
  same: (version: string, rows: string, groups: number) =>
    `Gleich bis zur letzten Stelle: jede Zahl ${groups === 1 ? "der einen Größe und Leistung" : `aller ${groups} Größen und Leistungen`} der Auswertung ${version}, hier aus ${rows} Zeilen nachgerechnet.`,
  differs: (version: string, differing: number, of: number) =>
    `Nicht gleich: In ${differing} von ${of} Größen und Leistungen weicht eine Zahl von der Auswertung ${version} ab.`,
  moving: (version: string) =>
    `Seit Auswertung ${version} kamen oder gingen Abstimmungen, und die nächste ist noch nicht veröffentlicht. Das dauert meist nur kurz, bis zu einer Woche aber, wenn ein Alarm sie zurückhält.`,
  otherCode: (version: string) =>
    `Die Auswertung ${version} wurde mit anderen Einstellungen gemacht, als diese Seite hat. Die Seite neu laden und noch einmal versuchen.`,
  nothing: "Es gibt noch keine angenommenen Abstimmungen, also nichts auszuwerten.",
  unreachable: "Der Atlas ist nicht erreichbar. Noch einmal versuchen, sobald wieder Netz da ist.",
  failed: (status: number) =>
    `Der Atlas hat seine Daten nicht geliefert (Antwort ${status}). Später noch einmal versuchen.`,
  broken:
    "Die Daten sind nicht lesbar: Vielleicht sind sie unterwegs abgerissen. Noch einmal versuchen.",
  retry: "Noch einmal versuchen",
  tableLabel: "Tabelle: hier berechnete Zahlen neben den veröffentlichten",
  group: "Größe und Leistung",
  columns: { intercept: "Achsenabschnitt", slope: "Steigung", spread: "Streuung" },
  others: "Alle übrigen",
  agrees: "gleich",
  published: (figure: string) => `veröffentlicht ${figure}`,
  differ: "weichen ab",
  none: "keine",
};
