/** Working without a network, in German. */
export const offline: typeof import("../en/offline.ts").offline = {
  title: "Ohne Netz",
  restsOn: (version: string, age: string) =>
    `Anpassung ${version}, ${age}. Ohne den Atlas zeigen Diagramme deren Kurve und Bänder, und die Abstimmungen, wie sie zuletzt zu sehen waren.`,
  unable:
    "Dieser Browser bewahrt nichts für die Zeit ohne Netz auf (nötig sind HTTPS und erlaubter Speicher).",
  waiting: "Was ohne Netz nötig ist, wird aufbewahrt, wenn diese Seite eine Weile offen ist.",
  saveData:
    "Das Gerät möchte Daten sparen; Karte und Orte werden deshalb nur auf Wunsch aufbewahrt.",
  keepNow: "Jetzt aufbewahren",
  keeping: (done: number, of: number) =>
    `Karte und Orte werden aufbewahrt: ${done} von ${of} Dateien.`,
  cleared: "Dieser Browser hatte das Aufbewahrte gelöscht; es wird wieder geholt.",
  wiped:
    "Dieser Browser hat gerade gelöscht, was die Seite aufbewahrt hatte: Abstimmungen, die warteten, und Belege, die nirgends sonst liegen, sind weg. Was auf dem Bildschirm steht, bleibt, bis Sie es verlassen.",
  kept: "In diesem Browser aufbewahrt: Startabstimmungen, Diagramme, Orte über 15.000 Einwohner, Höhen und die Karte von Weitem.",
  full: "Der Browser hat keinen Platz mehr für Karte und Orte. Startabstimmungen gehen trotzdem ohne Netz; Platz schaffen, dann noch einmal versuchen.",
  interrupted:
    "Seite, Karte und Orte sind noch nicht alle aufbewahrt: Die Verbindung ist abgebrochen.",
  retry: "Noch einmal",
  region: "Alle Orte eines Landes",
  regionHint: "Auch kleinere Orte, und die Karte eine Stufe näher. Bleibt, bis man es entfernt.",
  size: (places: string, megabytes: string) => `${places} Orte, ${megabytes} MB`,
  save: "Land aufbewahren",
  saving: "Wird gespeichert …",
  saved: "Gespeichert",
  notSaved: "Es konnte nicht gespeichert werden: Die Verbindung ist abgebrochen.",
  remove: (country: string) => `${country} entfernen`,
  room: (used: string) => `Belegt: etwa ${used} MB.`,
  newRelease: "Eine neue Fassung dieser Seite liegt bereit.",
  newReleaseElsewhere:
    "Eine neue Fassung dieser Seite ist in Gebrauch. Was hier noch nicht geöffnet war, kann bis zum Neuladen fehlen; Eingetipptes bleibt.",
  oldPage:
    "Ein Teil dieser Seite ist nicht mehr da: Der Atlas hat eine neuere Fassung. Eingetipptes bleibt.",
  reload: "Neu laden",
  noPlacesKept: "In diesem Browser sind noch keine Orte aufbewahrt.",
  placesCredit: "Orte und Höhen: GeoNames, CC BY 4.0.",
  waits:
    "In diesem Browser aufbewahrt: Es wird von selbst einmal gesendet, sobald der Atlas erreichbar und diese Seite offen ist.",
  waitingTitle: "Wartet aufs Senden",
  waitingCount: (n: number) =>
    n === 1 ? "1 Abstimmung wartet aufs Senden." : `${n} Abstimmungen warten aufs Senden.`,
  arrived: (n: number) =>
    n === 1
      ? "Die wartende Abstimmung ist angekommen; ihr Beleg steht in der Liste unter Teilen."
      : `${n} wartende Abstimmungen sind angekommen; ihre Belege stehen in der Liste unter Teilen.`,
  sendNow: "Jetzt senden",
  mend: "Zurück ins Formular",
  discard: "Verwerfen",
  discardSure: "Endgültig verwerfen",
};
