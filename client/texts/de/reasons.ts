import type { Figure, ReasonWords } from "../en/reasons.ts";

/** What the atlas says of a tune, in German. */
export const reasonWords: ReasonWords = {
  quantities: { pump_Hz: "Pumpenfrequenz", fan_rpm: "Lüfterdrehzahl" },
  reasons: {
    temperature_in_fahrenheit: (_, meant) =>
      `Als °C wäre das heißer als überall, wo jemand abstimmt; als °F ist es üblich. Sind ${meant} gemeint?`,
    temperature_out_of_range: () =>
      "Diese Temperatur kommt nirgends vor, wo jemand abstimmt. Zahl und Einheit prüfen.",
    dose_in_mL: (_, meant) =>
      `Mit so wenig Kraftstoff je Takt läuft keine Heizung; als mL ist es üblich. Sind ${meant} gemeint?`,
    dose_decimal_slip: (_, meant) =>
      `So viel fördert kein Takt; mit dem Komma an anderer Stelle ist es üblich. Sind ${meant} gemeint?`,
    dose_out_of_range: () =>
      "So viel oder so wenig Kraftstoff fördert kein Takt. Prüfen oder leer lassen.",
    tuned_in_the_future: () => "Dieser Monat liegt in der Zukunft. Den Monat prüfen.",
    elevation_in_feet: (_, meant) => `Das sieht nach einer Höhe in Fuß aus. Sind ${meant} gemeint?`,
    elevation_metres_as_feet: (_, meant) =>
      `Diese Höhe sieht aus, als wäre sie einmal zu oft aus Fuß umgerechnet. Sind ${meant} gemeint?`,
    elevation_out_of_range: () =>
      "So hoch oder so tief übernachtet niemand. Zahl und Einheit prüfen.",
    elevation_against_place: () =>
      "Der Boden an diesem Ort liegt auf einer anderen Höhe. Höhe und Ort prüfen.",
    pressure_against_elevation: () =>
      "Dieser Druck am Ort passt nicht zu dieser Höhe. Beides prüfen.",
    qnh_as_station_pressure: (_, meant) =>
      `Das ist ein auf Meereshöhe bezogener Druck (QNH). Sind ${meant} am Ort gemeint? Sonst als QNH angeben.`,
    pump_decimal_slip: (figure, meant) =>
      `${figure}: zehnmal so groß oder so klein wie üblich, als wäre das Komma verrutscht. Sind ${meant} gemeint?`,
    pump_pulses_per_minute: (figure, meant) =>
      `${figure}: sieht nach Takten je Minute aus, nicht je Sekunde. Sind ${meant} gemeint?`,
    fan_rpm_doubled: (figure, meant) =>
      `${figure}: sieht doppelt so hoch aus, als wären die Magnete falsch gezählt. Sind ${meant} gemeint?`,
    fan_rpm_halved: (figure, meant) =>
      `${figure}: sieht halb so hoch aus, als wären die Magnete falsch gezählt. Sind ${meant} gemeint?`,
    fan_rpm_in_tens: (figure, meant) => `${figure}: sieht nach Zehnern aus. Sind ${meant} gemeint?`,
    fan_rpm_in_hundreds: (figure, meant) =>
      `${figure}: sieht nach Hundertern aus. Sind ${meant} gemeint?`,
    ends_swapped: (figure, meant) =>
      `${figure}: gehört zur anderen Leistung; die beiden sehen vertauscht aus. Sind ${meant} gemeint?`,
    ends_out_of_order: (figure) =>
      `${figure}: muss kleiner sein als bei größter Leistung. Beide prüfen.`,
    fan_speed_out_of_range: (figure) => `${figure}: weit weg vom Üblichen. Prüfen.`,
    mixture_out_of_range: (figure) =>
      `${figure}: So fett oder so mager brennt in dieser Luft nichts. Pumpenfrequenz und Lüfterdrehzahl dieser Leistung prüfen.`,
    held_by_steward: () =>
      "Die Betreuung des Atlas hält diese Abstimmung zurück. Deine Berichtigung ist gespeichert und zählt, sobald die Betreuung sie annimmt.",
    undone_by_steward: () => "Eine Entscheidung der Betreuung wurde zurückgenommen.",
    steward_can_be_right: () =>
      "Die Betreuung des Atlas hat die Werte angesehen: Sie können so stimmen.",
    steward_own_tunes_agree: () =>
      "Ungewöhnlich, aber andere Abstimmungen desselben Besitzers passen dazu.",
    steward_place_explains: () => "Ungewöhnlich, aber Ort und Wetter erklären es.",
    steward_asks_to_check: () =>
      "Bitte die Werte prüfen, dann die Abstimmung berichtigen oder zurückziehen.",
    steward_waits_for_more: () => "Zurückgehalten, bis mehr Abstimmungen dieser Art gekommen sind.",
    steward_many_alike_held: () =>
      "Eine von vielen gleichen, die zusammen kamen: zurückgehalten, bis klar ist, woher sie kommen.",
    steward_mistyped: () =>
      "Die Werte sind vertippt, und was gemeint war, lässt sich nicht erkennen.",
    steward_not_measured: () =>
      "Das sieht nicht nach etwas aus, das an einer Heizung gemessen wurde.",
    steward_shared_twice: () => "Dieselbe Abstimmung wurde mehr als einmal geteilt.",
    steward_many_alike: () =>
      "Eine von vielen gleichen, die zusammen unter neuen Schlüsseln kamen.",
  },
  compared: (end, size, way) =>
    size === "0"
      ? `${end}: genau, was bei dieser Luftdichte zu erwarten ist.`
      : `${end}: ${size} % ${way === "rich" ? "fetter" : "magerer"}, als bei dieser Luftdichte zu erwarten ist.`,
};

/** Why a tune does not count, in German. */
export const asideWords: Record<string, (figure: Figure) => string> = {
  far_richer: (figure) =>
    `Weit fetter als ${figure("others")} vergleichbare Abstimmungen: ${figure("off_pct")} % über dem Mittel in dieser Luft (${figure("pump_Hz_per_krpm")} statt ${figure("average_Hz_per_krpm")} Hz je 1.000 U/min).`,
  far_leaner: (figure) =>
    `Weit magerer als ${figure("others")} vergleichbare Abstimmungen: ${figure("off_pct")} % unter dem Mittel in dieser Luft (${figure("pump_Hz_per_krpm")} statt ${figure("average_Hz_per_krpm")} Hz je 1.000 U/min).`,
  held_at_the_door: () =>
    "Beim Eingang zurückgehalten: Sie sieht vertippt aus. Warum, erfährt nur, wer sie geteilt hat.",
};
