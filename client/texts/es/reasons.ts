import type { Figure, ReasonWords } from "../en/reasons.ts";

/** What the atlas says of a tune, in Spanish. */
export const reasonWords: ReasonWords = {
  quantities: { pump_Hz: "Frecuencia de la bomba", fan_rpm: "Velocidad del ventilador" },
  reasons: {
    temperature_in_fahrenheit: (_, meant) =>
      `En °C es más calor que en cualquier sitio donde se ajusta; en °F es normal. ¿Quería decir ${meant}?`,
    temperature_out_of_range: () =>
      "Esta temperatura no se da en ningún sitio donde se ajusta. Revise la cifra y su unidad.",
    dose_in_mL: (_, meant) =>
      `Con esta dosis no arde nada; en mL es normal. ¿Quería decir ${meant}?`,
    dose_decimal_slip: (_, meant) =>
      `Un pulso no puede mover tanto; con la coma corrida un lugar es normal. ¿Quería decir ${meant}?`,
    dose_out_of_range: () => "Un pulso no puede mover esta dosis. Revísela o déjela vacía.",
    tuned_in_the_future: () => "Ese mes aún no ha llegado. Revise el mes del ajuste.",
    elevation_in_feet: (_, meant) => `Parece una altitud en pies. ¿Quería decir ${meant}?`,
    elevation_metres_as_feet: (_, meant) =>
      `Esta altitud parece convertida desde pies una vez de más. ¿Quería decir ${meant}?`,
    elevation_out_of_range: () =>
      "Esta altitud queda fuera de donde se acampa. Revise la cifra y su unidad.",
    elevation_against_place: () =>
      "El suelo en este lugar está a otra altitud. Revise la altitud y el lugar.",
    pressure_against_elevation: () =>
      "Esta presión del lugar no casa con esta altitud. Revise ambas.",
    qnh_as_station_pressure: (_, meant) =>
      `Es una presión al nivel del mar (QNH). ¿Quería decir ${meant} en el lugar? O dela como QNH.`,
    pump_decimal_slip: (figure, meant) =>
      `${figure}: diez veces fuera de lo usual, como con la coma mal puesta. ¿Quería decir ${meant}?`,
    pump_pulses_per_minute: (figure, meant) =>
      `${figure}: parecen pulsos por minuto, no por segundo. ¿Quería decir ${meant}?`,
    fan_rpm_doubled: (figure, meant) =>
      `${figure}: parece el doble, como al contar mal los imanes. ¿Quería decir ${meant}?`,
    fan_rpm_halved: (figure, meant) =>
      `${figure}: parece la mitad, como al contar mal los imanes. ¿Quería decir ${meant}?`,
    fan_rpm_in_tens: (figure, meant) => `${figure}: parecen decenas. ¿Quería decir ${meant}?`,
    fan_rpm_in_hundreds: (figure, meant) => `${figure}: parecen centenas. ¿Quería decir ${meant}?`,
    ends_swapped: (figure, meant) =>
      `${figure}: es del otro extremo; los dos parecen cambiados. ¿Quería decir ${meant}?`,
    ends_out_of_order: (figure) =>
      `${figure}: debe ser menor que en el extremo alto. Revise ambas.`,
    fan_speed_out_of_range: (figure) => `${figure}: muy lejos de lo usual. Revísela.`,
    mixture_out_of_range: (figure) =>
      `${figure}: tan rica o tan pobre, la mezcla no arde en este aire. Revise la bomba y el ventilador de este extremo.`,
    held_by_steward: () =>
      "Quien cuida el atlas retiene este ajuste. La corrección se guarda y cuenta en cuanto se acepte.",
  },
  compared: (end, size, way) =>
    size === "0"
      ? `${end}: justo lo que se espera con esta densidad del aire.`
      : `${end}: un ${size} % más ${way === "rich" ? "rica" : "pobre"} de lo que se espera con esta densidad del aire.`,
};

/** Why a tune does not count, in Spanish. */
export const asideWords: Record<string, (figure: Figure) => string> = {
  far_richer: (figure) =>
    `Mucho más rico que otros ${figure("others")} ajustes comparables: un ${figure("off_pct")} % por encima de la media en este aire (${figure("pump_Hz_per_krpm")} frente a ${figure("average_Hz_per_krpm")} Hz por 1000 rpm).`,
  far_leaner: (figure) =>
    `Mucho más pobre que otros ${figure("others")} ajustes comparables: un ${figure("off_pct")} % por debajo de la media en este aire (${figure("pump_Hz_per_krpm")} frente a ${figure("average_Hz_per_krpm")} Hz por 1000 rpm).`,
  held_at_the_door: () =>
    "Retenido a la entrada: parece un error al teclear. Solo quien lo compartió sabe el motivo.",
};
