/** The Share view, in German. */
export const shareWords: typeof import("../en/share.ts").shareWords = {
  title: "Eine Abstimmung teilen",
  intro:
    "Was du mit dem Messgerät gefunden hast, damit die Nächsten schneller ans Ziel kommen. Kein Konto, kein Name: Ein Ort wird zu einer Kartenzelle von etwa 250 km², bevor irgendetwas gesendet wird.",
  whereTuned: "Wo du abgestimmt hast",
  thisPosition: "Standort dieses Geräts",
  sentPosition: (lat: string, lon: string) =>
    `Gesendet wird die Mitte der Kartenzelle, bei ${lat}, ${lon}: Genaueres verlässt diesen Browser nicht.`,
  withoutPosition: "Keinen Ort senden",
  pump: "Pumpenfrequenz, Hz",
  fan: "Lüfterdrehzahl, U/min",
  co: "Niedrigster CO-Wert, ppm",
  coHint: "Der niedrigste ruhige Messwert bei dieser Leistung.",
  highCo: (end: string, ppm: string, usual: string) =>
    `${end}: ${ppm} ppm ist viel. Üblich sind weniger als ${usual} (gängige Praxis, keine Quelle).`,
  highCoCauses:
    "Häufige Ursachen: Ruß im Brenner, verstopfte Luftansaugung, undichtes Abgasrohr, Messgerät zu nah am Abgasrohr. Das alles prüfen. Bleibt der Wert hoch, die Heizung prüfen lassen, bevor jemand daneben schläft.",
  coBelow: "Das Messgerät zeigt nichts an: CO liegt unter seinem kleinsten Wert",
  coFloor: "Kleinster Wert, den es anzeigt, ppm",
  power: "Eingestellte Leistung, als bloße Zahl (freiwillig)",
  doseHint: "Falls bekannt: Es steht auf der Pumpe, oder du hast es gemessen. Freiwillig.",
  found: "Wie bist du auf diese Werte gekommen?",
  foundWays: {
    bracketed: "Auf beiden Seiten über den niedrigsten CO-Wert hinaus",
    "stopped early": "Vorher aufgehört",
    "as suggested": "Beim Vorschlag belassen",
  },
  foundUnknown: "Weiß ich nicht",
  foundHint:
    "Auf beiden Seiten: CO stieg wieder, magerer wie fetter eingestellt, bei kleinster wie bei größter Leistung. Eine nur übernommene Einstellung sagt dem Atlas nichts Neues.",
  meter: "Messgerät und Monat (freiwillig)",
  meterKind: "Art des Messgeräts",
  meterDistance: "Abstand von der Mündung des Abgasrohrs, m",
  month: "Monat der Abstimmung",
  monthHint: "Jahr und Monat, zum Beispiel 2026-10.",
  supply: "Bordspannung, V (freiwillig)",
  notGiven: "keine Angabe",
  missing: "Bitte ausfüllen.",
  missingCo: "Den Messwert eintippen oder ankreuzen, dass das Messgerät nichts anzeigt.",
  missingFloor: "Den kleinsten Wert eintippen, den das Messgerät anzeigen kann.",
  badCo: "Bitte einen Messwert von 0 bis 10.000 ppm.",
  consent:
    "Ich gebe diese Abstimmung allen unter CC0 1.0: Jeder darf sie für alles verwenden, ohne mich zu nennen.",
  needConsent: "Zum Teilen ankreuzen: Der Atlas besteht aus offenen Daten.",
  send: "Abstimmung senden",
  sendAsIs: "Trotzdem so senden",
  sendRevision: "Berichtigung senden",
  sending: "Wird gesendet …",
  cancelRevision: "So lassen, wie sie war",
  revising: "Eine geteilte Abstimmung berichtigen",
  fix: "Bitte die markierten Felder prüfen.",
  slips: "Vor dem Senden: Das sieht vertippt aus",
  use: (value: string) => `${value} übernehmen`,
  useAll: (n: number) => `Alle ${n} Vorschläge übernehmen`,
  sendAnyway: "Du kannst sie so senden: Sie wird gespeichert, zählt aber nicht.",
  accepted: "Angenommen",
  held: "Zurückgehalten",
  removed: "Von der Betreuung entfernt, niemand sonst sieht sie",
  acceptedMeans:
    "Angenommen heißt: plausibel neben anderen Abstimmungen. Es heißt nicht: ungefährlich.",
  countsFrom: (day: string) =>
    `Zählt voraussichtlich ab ${day}: Wer neu ist, wartet ein paar Tage, damit niemand den Atlas überschwemmen kann.`,
  countsOnce: (owners: number) =>
    `Sie zählt, sobald ${owners} Besitzer dieser Heizungsgröße Abstimmungen geteilt haben, damit niemand allein den Durchschnitt bestimmt.`,
  heldMeans:
    "Sie ist gespeichert, zählt aber nicht. Einen Vorschlag übernehmen oder sie in der Liste unten berichtigen.",
  insideBand: "Das liegt in der Spanne von 95 von 100 Heizungen.",
  outsideBand: "Das liegt außerhalb der Spanne von 95 von 100 Heizungen.",
  receipt: "Beleg",
  receiptNote:
    "Er wird nur dieses eine Mal gezeigt. Mit ihm kannst du diese Abstimmung lesen, berichtigen und zurückziehen; auch dieser Browser speichert ihn für dich.",
  receiptLost:
    "Er wird nur dieses eine Mal gezeigt, und dieser Browser konnte ihn nicht speichern. Jetzt kopieren: Ohne ihn lässt sich die Abstimmung nie mehr berichtigen oder zurückziehen.",
  receiptIs: (receipt: string) => `Beleg ${receipt}`,
  copy: "Beleg kopieren",
  close: "Schließen",
  copied: "Kopiert",
  mine: "Aus diesem Browser geteilt",
  none: "Noch nichts.",
  tuneLine: (kW: string, place: string | null, elevation: string, low: string, high: string) =>
    `${kW} kW${place ? ` bei ${place}` : ""} auf ${elevation} m, ${low} Hz und ${high} Hz.`,
  download: "Belege herunterladen",
  revise: "Berichtigen",
  withdraw: "Zurückziehen",
  withdrawSure: "Endgültig zurückziehen",
  keep: "Nicht zurückziehen",
  withdrawn: "Zurückgezogen: weg aus Daten, Auswertung und Export.",
  check: "Zählt sie?",
  standing: {
    kept: "zählt",
    rejected: "zählt nicht: zu weit weg von anderen Abstimmungen",
    "not in it": "ist nicht in der Auswertung",
  },
  sees: (low: string, high: string, fit: string) =>
    `kleinste Leistung ${low}, größte Leistung ${high} (Auswertung ${fit}).`,
  key: "Dein Schlüssel",
  keyNote:
    "Ein zufälliger Schlüssel in diesem Browser sagt dem Atlas, dass deine Abstimmungen zusammengehören und sich eine Stimme teilen. Er sagt nichts über dich; der Atlas speichert davon nur einen verschlüsselten Hashwert. Er entsteht, wenn du zum ersten Mal eine Abstimmung sendest.",
  forgetKey: "Schlüssel löschen",
  keyForgotten: "Gelöscht. Mit der nächsten Abstimmung entsteht ein neuer.",
  keptForm: "Nichts ging verloren: Das Formular ist so, wie du es verlassen hast.",
};
