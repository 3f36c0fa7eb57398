import type { FIT_SETTINGS } from "../../../model/fit/settings.ts";
import { formulas } from "./method-formulas.ts";

/** The method page, in German. */
export const m: typeof import("../en/method.ts").m = (S: typeof FIT_SETTINGS) => ({
  title: "Verfahren",
  screen: "Das Modell auf einem Bildschirm voll Mathematik",
  formula: {
    pump: "Pumpenfrequenz",
    fan: "Lüfterdrehzahl",
    heater: "Heizung",
    noise: "Rauschen",
    letters: [
      ["a", "Höhe: die mittlere Abstimmung in Luft von 1,225 kg/m³"],
      ["b", "wie die Abstimmung der Luft folgt; vollkommenes Nachstimmen ergibt 1"],
      ["ρ", "Dichte der Luft am Einlass, kg/m³"],
      ["Heizung", "was eine Heizung vom Mittel unterscheidet"],
      ["Rauschen", "was eine Abstimmung von einer anderen derselben Heizung unterscheidet"],
    ],
    where:
      "Pumpenfrequenz in Hz, Lüfterdrehzahl in 1.000 U/min; eine Formel je Leistungsklasse und Ende.",
  },
  short:
    "Unten ist y die linke Seite, x = ln(ρ/1,225), und r = y − a − b·x sagt, wie weit eine Zeile von der Linie liegt. φ ist die Normaldichte mit Standardabweichung s; t ist Students t.",
  formulas,
  sections: {
    air: {
      title: "Die Luft",
      text: [
        "Der Druck am Ort folgt aus der Höhe nach ISO 2533, die Dichte feuchter Luft nach CIPM-2007. Ein auf Meereshöhe bezogener Druck (QNH) wird nur unter eigenem Namen angenommen und mit der Höhe umgerechnet.",
        "Was nicht angegeben ist, wird angenommen, und der Zweifel als σ mitgeführt: 10 K für die Temperatur, 0,8 % für den Druck des Wetters und 0,5 % mehr je km, 25 Punkte Feuchte, und der Zweifel an der Höhe. Eine Zeile mit Zweifel zählt weniger; eine Frage mit Zweifel bekommt breitere Bänder.",
      ],
    },
    model: {
      title: "Warum diese Linie",
      text: [
        "Der Lüfter fördert Volumen, also folgt die Luftmasse der Drehzahl mal der Dichte; die Pumpe fördert Volumen je Takt. Bei gleicher Verbrennung folgt die Pumpenfrequenz je Drehzahl der Dichte der Luft: b = 1. Eine Menge von Leuten zeigt etwas weniger. Logarithmen, weil sich Heizungen um Faktoren unterscheiden.",
      ],
    },
    fit: {
      title: "Wozu jeder Teil da ist",
      text: [
        "Eine Stimme je Beitragenden, sonst ist ein Schlüssel, der überschwemmt, die Menge. √k an einem Ort zu einer Zeit: Ein Treffen oder eine erfundene Menge sind nicht k unabhängige Zeugen.",
        "Vertrauen nach eigener Varianz: Eine Zeile ohne Temperatur ist nicht falsch, sie weiß nur weniger. Ein Fehler der Dichte verschiebt eine Zeile entlang der Linie, also zählt er mal der Steigung. Um sein Kleinstes steigt CO mit dem Quadrat des Abstands; ein End-CO über dem üblichen sagt also, wie weit die Abstimmung daneben sein kann.",
        "Eine Mischung, kein Schnitt: Ein Versehen mit einem Mechanismus ist daran zu erkennen, wohin es die Zeile setzt, und was zwischen den Arten liegt, zählt nach seiner Wahrscheinlichkeit; so springt keine Zeile von Art zu Art, wenn eine andere kommt.",
        "Dichtestreifen als Stimmen: Hohe Orte haben wenige Zeilen und lange Hebel, und ein überfüllter Ort darf die Steigung nicht kaufen.",
        "Schritte: der eine Vergleich, in dem sich Heizungen nicht unterscheiden. Wo Zeilen ihnen widersprechen, gibt die Stimme der Zeilen zur Steigung nach, ihre Stimme zur Höhe bleibt, Zweifel kommt hinzu und ein Alarm wird gegeben.",
        `Ein Anfang durch Übereinstimmung: Gesucht wird eine Linie, auf die sich die meisten Stimmen einigen, über ein Gitter von Steigungen und Höhen, bei einer als bekannt genommenen Streuung (${100 * (S.start_spread ?? Number.NaN)} %), sodass eine dichte Menge durch ihre Dichte nichts gewinnt. Von da an werden Arten, Anteile, Streuungen und Linie reihum erneuert, bis die Linie stillsteht.`,
        "Gemeinsames: Jede Klasse wird mit jedem Ende zuerst allein angepasst; dann werden Steigungen anderer Klassen sowie Höhen und Streuungen anderer Klassen am selben Ende Teil ihrer Erwartung, mit den Unterschieden zwischen Klassen, die zu sehen waren. Eine Klasse, deren eigene Zeilen den anderen widersprechen, bleibt sich selbst überlassen.",
      ],
    },
    bands: {
      title: "Warum diese Bänder",
      text: [
        "Zeilen einer Person gehören zusammen, also wird die Kovarianz über Teile der Beitragenden gebildet; ohne die Berichtigung für kleine Stichproben ist sie für eine kleine Menge zu schmal. Wenige Teile können nicht sagen, wie sie streuen: Neben ihrer zählt die eigene Kovarianz des Modells.",
        "Eine Kovarianz spricht von Streuung. Was unerkannte falsche Zeilen mit der Linie machen, ist keine Streuung: Dafür ist der Zweifel darüber hinaus da.",
        "Die Streuung wird über das gemittelt, was die Zeilen möglich lassen: ihre Größe, ihr Wachstum abseits von x = 0, weil Heizungen eigene Steigungen haben, und ihre Ränder, weil manche Leute nachlässig sind.",
        "Jede Fassung veröffentlicht behauptete neben beobachteter Abdeckung: Jeder Teil der Beitragenden wird an der Linie der anderen gemessen.",
      ],
    },
    aside: {
      title: "Ausgenommene Zeilen",
      text: [
        "Das Ausnehmen hat keinen Anteil daran, wie die Linie entsteht. Es folgt allein aus der Zeile und der veröffentlichten Anpassung, mit einem Satz, der die Zahlen nennt; wenn spätere Abstimmungen die Linie verschieben oder die Streuung weiten, kommt die Zeile von selbst zurück.",
      ],
    },
    door: {
      title: "Was am Eingang geprüft wird",
      text: [
        "Grenzen, die die Physik setzt, und Versehen mit einem Namen: Höhe in Fuß, °F als °C, Takte je Minute als Hz, ein Komma, vertauschte Enden, Drehzahl verdoppelt, halbiert, in Zehnern oder Hundertern, Dosis in mL, ein auf Meereshöhe bezogener Druck als Druck am Ort. Ein Versehen wird genannt, wenn die Zeile glaubhaft wird, sobald man es rückgängig macht. Ein übersehenes Versehen ist besser als eine zurückgehaltene gute Zeile: Was durchgeht, bleibt der Anpassung überlassen.",
      ],
    },
    alarms: {
      title: "Alarme",
      text: [
        "Wer den Atlas betreut, wird benachrichtigt, wenn eine neue Fassung tut, was ehrliche Mengen selten tun: Die mittlere Abstimmung hat sich seit der vorigen Fassung verschoben; viele Beitragende kamen in einem Monat an einem Ort zusammen; Zeilen widersprechen den Schritten innerhalb der Personen; eine zweite Menge neben der Linie würde die Zeilen viel besser erklären. Simulierte ehrliche Mengen überschreiten jede Schwelle seltener als einmal in hundert Anpassungen.",
      ],
    },
    limits: {
      title: "Was es nicht wissen kann",
      text: [
        "Eine Lüge, die dort, wo sie erzählt wird, die Wahrheit überwiegt. Beitragende mit je zwei Abstimmungen, einer wahren am Meer und einer falschen in der Höhe, können dort mehr sein als die ehrlichen, und ihre eigenen Schritte stimmen mit ihren Zeilen überein. Heizungen mit kleinerer Steigung würden dasselbe senden; kein Schätzer, der nur diese Zeilen sieht, kann beides unterscheiden. Die Linie folgt ihnen, das mittlere Band verfehlt die Wahrheit, und was die Lesenden schützt, sind die Alarme und die Betreuung.",
        "Lügner mit einzelnen Zeilen, über Orte verteilt, haben keine Schritte auf ihrer Seite: Die Steigung hält, die Höhe gibt um etwa ein Prozent nach, das Band wird entsprechend breiter, und ein Alarm wird gegeben.",
        "Höhen in Fuß, denen kein Ort widerspricht, verschieben Zeilen entlang der Linie, wo sie fast ehrlich aussehen: Genauigkeit in der Höhe geht verloren, und nur manchmal wird ein Alarm gegeben.",
        "Versehen, die die Luft ändern und nicht die Abstimmung, °F als °C oder ein Druck auf Meereshöhe als der des Ortes, hinterlassen eine Verzerrung, die das mittlere Band nicht deckt. Eine Klasse, die allen anderen ungleich ist, neigt sich dem Erwarteten zu, bis genug ihrer Beitragenden hoch oben waren. Bei sehr schweren Rändern hält das Band für eine weitere Heizung etwas weniger, als es sagt. Leute, die früh aufhören und ihr CO nicht angeben, sehen aus wie andere Heizungen.",
        "Nichts im Modell biegt sich; jenseits der gesehenen Dichten rechnet es hoch und sagt es. Das Band für eine weitere Heizung gilt für eine wie die der Beitragenden. Verzerrungsterme und Schwellen wurden an selbst erfundenen Mengen eingestellt: Mengen, die anders irreführen, können schlimmer sein.",
      ],
    },
    again: {
      title: "Nachmachen",
      text: [
        `Der Zustand der Anpassung ist ein festes Gitter gewichteter Summen, für jeden von ${S.folds} Teilen. Jeder Summand ist auf 2⁻³² gerundet, also sind Summen genau: Zeilen können in beliebiger Reihenfolge hinein- und herausgezählt werden, und dieselben Zeilen geben dieselben Bits. Eine neue Abstimmung ändert die Summen ihrer Person und die ihrer Nachbarn, wenn sich deren Stimme ändert; das Gitter wächst nicht mit den Zeilen.`,
        "Jeder kann die veröffentlichten Zahlen mit npm run fit aus der CSV-Datei machen und die Untersuchung der Bänder mit npm run study; gleiches Programm, gleicher Umfang und gleiche Startzahl geben dieselben Zahlen. docs/method.md im Quelltext hat denselben Stoff auf Englisch mit allen gewählten Zahlen.",
      ],
    },
    references: {
      title: "Schriften",
      text: [
        "Beaton und Tukey 1974 (Bisquare). Bell und McCaffrey 2002 (CR2). Cameron und Miller 2015 (gruppierte Schlüsse). Dempster, Laird und Rubin 1977 (Erwartungswert-Maximierung). Gelman und Hill 2007 (teilweises Zusammenlegen). Holland und Welsch 1977 (Umgewichtung). Huber 1964. Mallows 1975 (Gewichte nach der Lage). Rousseeuw und Leroy 1987 (Bruchpunkt und Hebel). Satterthwaite 1946 (Freiheitsgrade). Theil 1950, Sen 1968. Varadhan und Roland 2008 (quadratische Extrapolation).",
        "ISO 2533:1975. CIPM-2007: Picard, Davis, Gläser und Fujii 2008.",
      ],
    },
  },
  figures: {
    title: "Zahlen",
    intro:
      "Simuliert wurden Mengen, deren Wahrheit bekannt ist. Fehler der mittleren Abstimmung auf 0 / 1.500 / 3.000 / 4.500 m, mittlerer quadratischer in %, je Schätzer; dann wie oft die Bänder von Hypsotune hielten, von 100, auf 0 / 4.500 m. Bisquare nach Stimmen nimmt die üblichen robusten Mittel zusammen: eine Stimme je Person, ein Anfang durch Übereinstimmung, Tukeys Bisquare mit einer Erwartung an die Steigung, ein Schnitt.",
    scenario: "Szenario",
    bands: { new_heater: "Weitere Heizung", mean: "Mittel" },
    band: (band: string, pct: string) => `${band} ${pct} %`,
    none: "–",
    table: "Tabelle: Fehler und Abdeckungen je Szenario",
    calibration: {
      intro:
        "Wie oft die Bänder hielten, von 100, in der schlechtesten und der besten von fünf Luftdichten (0 m bei −20 °C; 0, 1.500, 3.000, 4.500 m): ehrliche Mengen von so vielen Beitragenden, die Wahrheit jedes Laufs aus der Annahme gezogen.",
      contributors: "Beitragende",
      table: "Tabelle: Abdeckung der Bänder nach Zahl der Beitragenden",
    },
  },
});
