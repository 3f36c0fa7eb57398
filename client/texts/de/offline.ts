/** Working without a network, in German. */
export const offline: typeof import("../en/offline.ts").offline = {
  title: "Ohne Netz",
  restsOn: (version: string, age: string) => `Auswertung ${version}, ${age}.`,
  unable:
    "Dieser Browser speichert nichts für die Zeit ohne Netz (nötig sind HTTPS und erlaubter Speicher).",
  waiting: "Was du ohne Netz brauchst, wird gespeichert, wenn diese Seite eine Weile offen ist.",
  saveData:
    "Dein Gerät möchte Daten sparen; Karte und Orte werden deshalb nur auf Wunsch gespeichert.",
  keepNow: "Jetzt speichern",
  keeping: (done: number, of: number) =>
    `Karte und Orte werden gespeichert: ${done} von ${of} Dateien.`,
  cleared: "Dieser Browser hatte gelöscht, was hier gespeichert war; es wird wieder geholt.",
  wiped:
    "Dieser Browser hat gerade gelöscht, was die Seite gespeichert hatte: Abstimmungen, die aufs Senden warteten, und Belege, die nirgends sonst liegen, sind weg. Was auf dem Bildschirm steht, bleibt, bis du es verlässt.",
  kept: "In diesem Browser gespeichert: Startwerte, Diagramme, Orte mit über 15.000 Einwohnern, Höhen und die Karte von Weitem.",
  full: "Der Browser hat keinen Platz mehr für Karte und Orte. Startwerte gibt es trotzdem ohne Netz; Platz schaffen, dann noch einmal versuchen.",
  interrupted:
    "Seite, Karte und Orte sind noch nicht alle gespeichert: Die Verbindung ist abgebrochen.",
  retry: "Noch einmal versuchen",
  region: "Alle Orte eines Landes",
  regionHint: "Auch kleinere Orte, und die Karte eine Stufe näher. Bleibt, bis du es entfernst.",
  size: (places: string, megabytes: string) => `${places} Orte, ${megabytes} MB`,
  save: "Land speichern",
  saving: "Wird gespeichert …",
  saved: "Gespeichert",
  notSaved: "Es konnte nicht gespeichert werden: Die Verbindung ist abgebrochen.",
  remove: (country: string) => `${country} entfernen`,
  room: (used: string) => `Belegt: etwa ${used} MB.`,
  newRelease: "Eine neue Version dieser Seite liegt bereit.",
  newReleaseElsewhere:
    "Eine neue Version dieser Seite ist in Gebrauch. Was in diesem Tab noch nicht geöffnet war, kann bis zum Neuladen fehlen; Eingetipptes bleibt.",
  oldPage:
    "Ein Teil dieser Seite ist nicht mehr da: Der Atlas hat eine neuere Version. Eingetipptes bleibt.",
  reload: "Neu laden",
  notKept: (name) =>
    `„${name}“ ist nicht unter den Orten, die in diesem Browser gespeichert sind. Tippe die Höhe ein; wenn du wieder Netz hast, speichere das Land unter „Ohne Netz“.`,
  noPlacesKept:
    "In diesem Browser sind noch keine Orte gespeichert. Stattdessen die Höhe eintippen.",
  placesCredit: "Orte und Höhen: GeoNames, CC BY 4.0.",
  waits:
    "In diesem Browser gespeichert: Sie wird von selbst einmal gesendet, sobald der Atlas erreichbar und diese Seite offen ist.",
  waitingTitle: "Wartet aufs Senden",
  waitingCount: (n: number) =>
    n === 1 ? "1 Abstimmung wartet aufs Senden." : `${n} Abstimmungen warten aufs Senden.`,
  arrived: (n: number) =>
    n === 1
      ? "Die wartende Abstimmung ist angekommen; ihr Beleg steht in der Liste unter „Teilen“."
      : `${n} wartende Abstimmungen sind angekommen; ihre Belege stehen in der Liste unter „Teilen“.`,
  sendNow: "Jetzt senden",
  mend: "Zurück ins Formular",
  discard: "Verwerfen",
  discardSure: "Endgültig verwerfen",
};
