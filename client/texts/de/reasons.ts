import type { Figure, ReasonWords } from "../en/reasons.ts";

/** What the atlas says of a tune, in German. */
export const reasonWords: ReasonWords = {
  quantities: { pump_Hz: "Pumpenfrequenz", fan_rpm: "Lüfterdrehzahl" },
  reasons: {
    temperature_in_fahrenheit: (_, meant) =>
      `Als °C ist das heißer als jeder Ort, an dem abgestimmt wird; als °F ist es gewöhnlich. Gemeint ${meant}?`,
    temperature_out_of_range: () =>
      "Diese Temperatur kommt nirgends vor, wo abgestimmt wird. Zahl und Einheit prüfen.",
    dose_in_mL: (_, meant) =>
      `Mit dieser Dosis brennt nichts; als mL ist sie gewöhnlich. Gemeint ${meant}?`,
    dose_decimal_slip: (_, meant) =>
      `So viel kann ein Takt nicht fördern; mit verschobenem Komma ist es gewöhnlich. Gemeint ${meant}?`,
    dose_out_of_range: () => "Diese Dosis kann ein Takt nicht fördern. Prüfen oder weglassen.",
    tuned_in_the_future: () => "Dieser Monat ist noch nicht gekommen. Den Monat prüfen.",
    elevation_in_feet: (_, meant) => `Das sieht nach einer Höhe in Fuß aus. Gemeint ${meant}?`,
    elevation_metres_as_feet: (_, meant) =>
      `Diese Höhe sieht aus, als wäre sie einmal zu viel aus Fuß umgerechnet. Gemeint ${meant}?`,
    elevation_out_of_range: () =>
      "Diese Höhe liegt außerhalb dessen, wo Menschen übernachten. Zahl und Einheit prüfen.",
    elevation_against_place: () =>
      "Der Boden an diesem Ort liegt auf einer anderen Höhe. Höhe und Ort prüfen.",
    pressure_against_elevation: () =>
      "Dieser Druck am Ort passt nicht zu dieser Höhe. Beides prüfen.",
    qnh_as_station_pressure: (_, meant) =>
      `Das ist ein auf Meereshöhe bezogener Druck (QNH). Gemeint ${meant} am Ort? Oder ihn als QNH angeben.`,
    pump_decimal_slip: (figure, meant) =>
      `${figure}: zehnfach neben dem Üblichen, wie bei einem falsch gesetzten Komma. Gemeint ${meant}?`,
    pump_pulses_per_minute: (figure, meant) =>
      `${figure}: sieht nach Takten je Minute aus, nicht je Sekunde. Gemeint ${meant}?`,
    fan_rpm_doubled: (figure, meant) =>
      `${figure}: sieht verdoppelt aus, wie bei falsch gezählten Magneten. Gemeint ${meant}?`,
    fan_rpm_halved: (figure, meant) =>
      `${figure}: sieht halbiert aus, wie bei falsch gezählten Magneten. Gemeint ${meant}?`,
    fan_rpm_in_tens: (figure, meant) => `${figure}: sieht nach Zehnern aus. Gemeint ${meant}?`,
    fan_rpm_in_hundreds: (figure, meant) =>
      `${figure}: sieht nach Hundertern aus. Gemeint ${meant}?`,
    ends_swapped: (figure, meant) =>
      `${figure}: gehört zum anderen Ende; beide sehen vertauscht aus. Gemeint ${meant}?`,
    ends_out_of_order: (figure) => `${figure}: muss kleiner sein als am oberen Ende. Beide prüfen.`,
    fan_speed_out_of_range: (figure) => `${figure}: weit vom Üblichen entfernt. Prüfen.`,
    mixture_out_of_range: (figure) =>
      `${figure}: So fett oder mager brennt in dieser Luft nichts. Pumpenfrequenz und Drehzahl dieses Endes prüfen.`,
    held_by_steward: () =>
      "Die Betreuung hält diese Abstimmung zurück. Die Berichtigung ist aufbewahrt und zählt, sobald die Betreuung sie annimmt.",
  },
  compared: (end, size, way) =>
    size === "0"
      ? `${end}: genau, was in dieser Luftdichte zu erwarten ist.`
      : `${end}: ${size} % ${way === "rich" ? "fetter" : "magerer"}, als in dieser Luftdichte zu erwarten ist.`,
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
